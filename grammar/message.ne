# grammar/message.ne: how keepers write of birds. Reads top down; one parse reads one saying, small words left out before.
@preprocessor esmodule
@{%
import { terminals } from './terminals.ts'
import * as body from './build/body.ts'
import * as change from './build/change.ts'
import * as feature from './build/feature.ts'
import * as kin from './build/kinship.ts'
import * as list from './build/list.ts'
import * as mating from './build/mating.ts'
import * as saying from './build/saying.ts'
import * as wanted from './build/wanted.ts'
%}
@lexer terminals

# What can be said in one breath. The reader takes the longest that fits and goes on behind it.
saying -> matings   {% saying.matings %}
        | offspring {% id %}
        | wanted    {% id %}
        | told      {% id %}
        | tally     {% id %}
        | change    {% id %}
        | birds     {% saying.mentioned %}
        | asked     {% id %}

# --- matings -----------------------------------------------------------------------------------------------------

matings -> mating              {% mating.one %}
         | matings next mating {% mating.more %}            # RIR over BR vs BR over RIR

mating -> %cross mated %together        {% mating.crossTogether %} # breed my sex-links together
        | mated %together               {% mating.together %}
        | %cross mated                  {% mating.crossTwo %}      # breed two black sex-links
        | mated %cross %together        {% mating.together %}
        | mated %is %cross              {% mating.twoTogether %} # two rumpless Araucanas are mated
        | mated over mates             {% mating.maleFirst %}    # RIR roo over barred rock hens; A x B hen over C
        | mated under mated            {% mating.femaleFirst %}  # barred hens under a Sussex roo
        | mated join mated             {% mating.eitherFirst %}  # RIR and BR
        | mated %is mated              {% mating.headed %}       # my Sussex hens: a RIR or a Buckeye rooster
        | mated %by mated              {% mating.genesBy %}      # P/p+ by p+/p+
        | bird bird                    {% mating.sideBySide %}   # RIR roo BR hens
        | %cross mated over mates      {% mating.crossMaleFirst %} # cross RIR with Delaware
        | %cross of mated join mated   {% mating.crossEither %}  # cross between RIR and Delaware; mix of A and B
        | mated join mated %cross      {% mating.eitherCross %}  # RIR and BR cross

over -> %over | %and %over | %cross | %cross %over | %comma %over | aside %over | %is %over | %over %over | %over %and %over | %over %between
under -> %under | %comma %under | %is %under
join -> %and | %plus | %comma | %slash | %comma %and | %or
of -> %of | %between | null
next -> %is %same | %same | %is | %comma | %and | %or | %plus | %comma %and | %comma %or
aside -> %aspect | %sexlink | %goal                                  # RIR roo sexable over BR hens?

mated -> birds {% id %} | crossbred {% id %}
mates -> mated            {% id %}
       | mates next %over mated {% mating.andOver %}             # over BR, over Australorp, over Brahma

# A cross-bred bird: RIR x BR hen; (Delaware x NH) hen; RIR/BR cross.
crossbred -> bird tight bird        {% mating.crossbred %}
           | halves                  {% id %}
           | bird tight bird %cross {% mating.crossbred %}
           | bird tight bird %cross sex {% mating.crossbredOfSex %} # a Leghorn/RIR cross hen
           | bird %outOf bird tight bird {% mating.childOf %}    # F1 hen from Delaware x NH
           | bird %outOf bird %by bird   {% mating.childOfBy %}  # pullet out of a Sussex hen by a RIR cock
           | %generation %of bird tight bird {% mating.generationOf %} # F2 of A x B
tight -> %over | %slash | %cross | %plus
halves -> %half bird %half bird     {% mating.halves %}           # half Silkie half Cochin
        | %half bird %and %half bird {% mating.halvesJoined %}

# Chicks and hens out of a mating: pullets from RIR x BR; chick out of a Sussex hen by a RIR cock.
offspring -> bird %outOf matings         {% saying.outOfMating %}
           | %chick %outOf matings       {% saying.chickOfMating %}
           | %outOf matings              {% saying.ofMating %}
           | bird %outOf bird %by bird   {% saying.outOfBy %}
           | %chick %outOf bird %by bird {% saying.chickOutOfBy %}
           | %outOf bird %by bird        {% saying.ofBy %}
           | bird %outOf bird            {% saying.outOfOne %}
           | %chick %outOf bird          {% saying.chickOfOne %}

# --- birds -------------------------------------------------------------------------------------------------------

birds -> bird           {% list.list %}
       | birds sep bird {% list.listed %}                      # BR, SLW and EE hens
sep -> %comma | %and | %or | %plus | %slash | %comma %and | %comma %or

bird -> lead body {% body.led %} | body {% body.bird %}
lead -> whose:? %number:?                                       # my 3
whose -> %my | %his | %her | %their | %my %his | %my %their
body -> piece      {% body.begun %}
      | body piece {% body.grown %}
piece -> name | egg_bird | %line | sex | %gene | %generation | carried | without | noted

egg_bird -> %goal sex {% feature.eggBird %}                        # blue egg rooster
name -> %breed | %family | %colour | %trait
look_name -> %colour | %trait
sex -> %cock | %hen | %kin
without -> %not look_name {% feature.without %}                        # no bars
carried -> %carries what {% feature.carriesOne %}                 # split to lavender
         | %pure what    {% feature.carriesTwo %}                 # pure for barring
         | %single what  {% feature.carriesOne %}
         | look_name %carries {% feature.splitBehind %}           # lavender split hens
         | look_name %split   {% feature.splitBehind %}
         | %split        {% feature.split %}                      # lav x split
what -> name | %gene

# In brackets: (show line, blue), (white), (Delaware x NH); after a comma: , s+/s+ Co/Co
noted -> %open notes %close      {% feature.noted %}
       | %open mating %close     {% feature.bracketed %}
       | %outOf %goal             {% feature.fromEgg %}             # from a blue egg
       | %outOf %line             {% feature.fromLine %}            # from show stock
       | %is %outOf %line         {% feature.isFromLine %}          # are from a hatchery
       | %comma %gene            {% feature.afterComma %}
       | %and %gene              {% feature.afterComma %}           # I/i+ and E/E
       | %comma carried          {% feature.afterComma %}
       | %comma %trait            {% feature.afterComma %}
       | %comma %number %trait    {% feature.afterNumber %}         # , one barring gene
       | %is %gene                {% feature.thatIs %}             # that is Lav+/lav
       | %is carried              {% feature.thatCarries %}            # who is split for chocolate
       | %over %trait             {% feature.having %}              # with muffs
       | %over carried            {% feature.having %}
       | %over %colour            {% feature.havingColour %}        # with bars
notes -> note | notes note | notes %comma note
note -> name | %line | sex | %gene | carried | without | %generation

# --- who is who, and who is wanted ---------------------------------------------------------------------------------

told -> bird %is halves {% saying.toldCross %}
      | bird %is birds {% saying.told %}                         # rooster is the Australorp; hens: BR and SLW
      | bird %is %not birds {% saying.toldNot %}

wanted -> %which bare                 {% wanted.whichBare %}     # which hens
        | %which bare link birds      {% wanted.whichFor %}      # what rooster for SLW hens
        | %which link birds           {% wanted.whatFor %}       # what to put over my Rocks
        | %which %is bare             {% saying.whichIs %}       # which is the rooster
        | %which %is bare link birds  {% wanted.whichIsFor %}    # which is the better roo over SLW hens
        | %which matings              {% saying.askedMatings %}  # what does an RIR roo on BR hens give
        | %which %cross birds         {% wanted.whichCross %}    # what can I cross my RIR roo
        | %which %cross birds %over   {% wanted.whichCross %}    # ... with
        | %which link %their          {% wanted.whatForHim %}    # who should I put under him
        | %which %cross %their %over  {% wanted.whatForHim %}    # what do I breed her to
        | %want birds                 {% wanted.mateFor %}       # a good match for my Brown Leghorn
        | %want bare                  {% wanted.wantBare %}      # need a rooster
        | %want bare link birds       {% wanted.wantFor %}       # need hens for my RIR
        | bare %forWhom birds             {% wanted.bareFor %}       # hens for a RIR roo?
        | bare %forWhom aside             {% wanted.bareForGoal %}   # hens for sexable chicks
        | bare %forWhom %their            {% wanted.bareForGoal %}   # girls for him
        | %forWhom birds %which bare      {% wanted.forWhich %}      # for my RIR roo which hens
        | %which bare %want           {% wanted.whichWant %}     # which hens should I get
bare -> sex | %number sex | %line sex | %which sex | %colour sex | %of %my sex | %of %their sex
link -> %forWhom | %over | %under | %want %forWhom | %over %over | %over %under | %is %forWhom | %want

# --- hatches told, and turns of a conversation ------------------------------------------------------------------------

tally -> %number %of %number look    {% saying.ofAll %}          # 4 of 7 white
       | %number %is look            {% saying.countIs %}        # 10 are hens
       | %number %outOf %number look {% saying.ofAll %}
       | %number look %outOf %number {% saying.lookOf %}         # 3 white out of 14
       | %number look %of %number    {% saying.lookOf %}
       | %number %not look           {% saying.clear %}          # 6 not white
       | %number %carries            {% saying.clear %}
look -> %chick | %chick %colour | %chick %trait | %colour | sex | %trait | %colour %colour | %colour %chick | %colour sex | sex %chick

change -> %swap part %forWhom birds      {% change.swapped %}        # swap the cock for a Buff Orp
        | %swap part over birds      {% change.swapped %}
        | %swap part %is birds       {% change.swapped %}
        | %swap part birds           {% change.made %}        # make him a Sussex
        | %same birds                {% change.sameBut %}        # same but blue hens
        | %about told                {% change.correction %}     # what if the hens were Brahmas
        | %about birds               {% change.whatAbout %}      # what about a Sussex
        | %about over birds          {% change.whatAboutWith %}
        | %not told                  {% change.correction %}     # no, the roo is the Sussex
        | birds %instead             {% change.instead %}
part -> sex | %my sex | %their

asked -> %aspect {% saying.aspect %}
       | %goal   {% saying.goal %}
       | %sexlink {% saying.sexlink %}

# --- a flock told by name: a clause by itself, read whole ----------------------------------------------------------

kinship -> %name is_out_of %name %by %name        {% kin.outOfNamed %}    # Bert is out of Daisy by Sid
         | %name is_out_of %name pairing %name    {% kin.outOfPair %}     # Bert is out of Sid x Daisy
         | %name is_out_of %name                  {% kin.outOfNamedOne %} # Bert is a son of Sid
         | %name is_by %name                      {% kin.byNamed %}       # Bert is by Sid
         | %name parent %is %name                 {% kin.parentIs %}      # Bert's dad is Sid
         | %name %is %name parent                 {% kin.isParentOf %}    # Sid is Bert's dad
         | %name %is bird                         {% kin.namedIs %}       # Daisy is a lavender Orpington hen
         | %name %is %not bird                    {% kin.namedIsNot %}    # Sid isn't lavender
         | %name bird                             {% kin.namedIsBeside %} # Sid carries lav; Daisy the lavender hen
         | %name %not bird                        {% kin.namedNot %}    # Sid doesn't carry lav
         | bird %is %name                         {% kin.isNamedSo %}    # my RIR roo is called Rex
         | bird %name                             {% kin.namedAfter %}    # my RIR roo Sid
         | %name %comma kinship                   {% kin.calledFirst %}
is_out_of -> %is %outOf | %outOf
is_by -> %is %by | %by
pairing -> %over | %and | %plus
parent -> %cock | %hen
