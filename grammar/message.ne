# grammar/message.ne: how keepers write of birds. Reads top down; one parse reads one saying, small words left out before.
@preprocessor esmodule
@{%
import { terminals } from './terminals.ts'
import * as build from './build.ts'
%}
@lexer terminals

# What can be said in one breath. The reader takes the longest that fits and goes on behind it.
saying -> matings   {% build.matings %}
        | offspring {% id %}
        | wanted    {% id %}
        | told      {% id %}
        | tally     {% id %}
        | change    {% id %}
        | birds     {% build.mentioned %}
        | asked     {% id %}

# --- matings -----------------------------------------------------------------------------------------------------

matings -> mating              {% build.one %}
         | matings next mating {% build.more %}            # RIR over BR vs BR over RIR

mating -> %cross mated %together        {% build.crossTogether %} # breed my sex-links together
        | mated %together               {% build.together %}
        | mated %cross %together        {% build.together %}
        | mated over mates             {% build.maleFirst %}    # RIR roo over barred rock hens; A x B hen over C
        | mated under mated            {% build.femaleFirst %}  # barred hens under a Sussex roo
        | mated join mated             {% build.eitherFirst %}  # RIR and BR
        | bird bird                    {% build.sideBySide %}   # RIR roo BR hens
        | %cross mated over mates      {% build.crossMaleFirst %} # cross RIR with Delaware
        | %cross of mated join mated   {% build.crossEither %}  # cross between RIR and Delaware; mix of A and B
        | mated join mated %cross      {% build.eitherCross %}  # RIR and BR cross

over -> %over | %and %over | %cross | %comma %over | aside %over | %is %over | %over %over | %over %and %over | %over %between
under -> %under | %comma %under | %is %under
join -> %and | %plus | %comma | %slash | %comma %and | %or
of -> %of | %between | null
next -> %comma | %and | %or | %plus | %comma %and | %comma %or
aside -> %aspect | %sexlink | %goal                                  # RIR roo sexable over BR hens?

mated -> birds {% id %} | crossbred {% id %}
mates -> mated            {% id %}
       | mates next %over mated {% build.andOver %}             # over BR, over Australorp, over Brahma

# A cross-bred bird: RIR x BR hen; (Delaware x NH) hen; RIR/BR cross.
crossbred -> bird tight bird        {% build.crossbred %}
           | bird tight bird %cross {% build.crossbred %}
           | bird %outOf bird tight bird {% build.childOf %}    # F1 hen from Delaware x NH
           | bird %outOf bird %by bird   {% build.childOfBy %}  # pullet out of a Sussex hen by a RIR cock
           | %generation %of bird tight bird {% build.generationOf %} # F2 of A x B
tight -> %over | %slash | %cross | %plus

# Chicks and hens out of a mating: pullets from RIR x BR; chick out of a Sussex hen by a RIR cock.
offspring -> bird %outOf matings         {% build.outOfMating %}
           | %chick %outOf matings       {% build.chickOfMating %}
           | %outOf matings              {% build.ofMating %}
           | bird %outOf bird %by bird   {% build.outOfBy %}
           | %chick %outOf bird %by bird {% build.chickOutOfBy %}
           | %outOf bird %by bird        {% build.ofBy %}
           | bird %outOf bird            {% build.outOfOne %}
           | %chick %outOf bird          {% build.chickOfOne %}

# --- birds -------------------------------------------------------------------------------------------------------

birds -> bird           {% build.list %}
       | birds sep bird {% build.listed %}                      # BR, SLW and EE hens
sep -> %comma | %and | %or | %plus | %slash | %comma %and | %comma %or

bird -> lead body {% build.led %} | body {% build.bird %}
lead -> whose:? %number:?                                       # my 3
whose -> %my | %his | %her | %their | %my %his | %my %their
body -> piece      {% build.body %}
      | body piece {% build.grown %}
piece -> name | egg_bird | %line | sex | %gene | %generation | carried | without | noted

egg_bird -> %goal sex {% build.eggBird %}                        # blue egg rooster
name -> %breed | %family | %colour | %trait
look_name -> %colour | %trait
sex -> %cock | %hen | %kin
without -> %not look_name {% build.without %}                        # no bars
carried -> %carries what {% build.carriesOne %}                 # split to lavender
         | %pure what    {% build.carriesTwo %}                 # pure for barring
         | %single what  {% build.carriesOne %}
         | %split        {% build.split %}                      # lav x split
what -> name | %gene | %sexlink

# In brackets: (show line, blue), (white), (Delaware x NH); after a comma: , s+/s+ Co/Co
noted -> %open notes %close      {% build.noted %}
       | %open mating %close     {% build.bracketed %}
       | %outOf %goal             {% build.fromEgg %}             # from a blue egg
       | %comma %gene            {% build.afterComma %}
       | %comma carried          {% build.afterComma %}
       | %comma %trait            {% build.afterComma %}
       | %comma %number %trait    {% build.afterComma %}         # , one barring gene
       | %is %gene                {% build.thatIs %}             # that is Lav+/lav
       | %over %trait             {% build.having %}              # with muffs
       | %over carried            {% build.having %}
       | %over %colour            {% build.havingColour %}        # with bars
notes -> note | notes note | notes %comma note
note -> name | %line | sex | %gene | carried | without | %generation

# --- who is who, and who is wanted ---------------------------------------------------------------------------------

told -> bird %is birds {% build.told %}                         # rooster is the Australorp; hens: BR and SLW
      | bird %is %not birds {% build.toldNot %}

wanted -> %which bare                 {% build.whichBare %}     # which hens
        | %which bare link birds      {% build.whichFor %}      # what rooster for SLW hens
        | %which link birds           {% build.whatFor %}       # what to put over my Rocks
        | %which %is bare             {% build.whichIs %}       # which is the rooster
        | %which %is bare link birds  {% build.whichIsFor %}    # which is the better roo over SLW hens
        | %which matings              {% build.whichMatings %}  # what does an RIR roo on BR hens give
        | %which %cross birds         {% build.whichCross %}    # what can I cross my RIR roo
        | %which %cross birds %over   {% build.whichCross %}    # ... with
        | %which %cross mated over mates {% build.whichMating %} # what do I get if I cross A with B
        | %want bare                  {% build.wantBare %}      # need a rooster
        | %want bare link birds       {% build.wantFor %}       # need hens for my RIR
        | bare %forWhom birds             {% build.bareFor %}       # hens for a RIR roo?
        | bare %forWhom aside             {% build.bareForGoal %}   # hens for sexable chicks
        | bare %forWhom %their            {% build.bareForGoal %}   # girls for him
        | %which %cross mated %together {% build.whichTogether %}
        | %forWhom birds %which bare      {% build.forWhich %}      # for my RIR roo which hens
        | %which bare %want           {% build.whichWant %}     # which hens should I get
bare -> sex | %number sex | %line sex | %which sex | %colour sex
link -> %forWhom | %over | %under | %want %forWhom | %over %over | %is %forWhom | %want

# --- hatches told, and turns of a conversation ------------------------------------------------------------------------

tally -> %number %of %number look    {% build.ofAll %}          # 4 of 7 white
       | %number %outOf %number look {% build.ofAll %}
       | %number look %outOf %number {% build.lookOf %}         # 3 white out of 14
       | %number look %of %number    {% build.lookOf %}
       | %number %not look           {% build.clear %}          # 6 not white
       | %number %carries            {% build.clear %}
look -> %chick | %chick %colour | %chick %trait | %colour | sex | %trait | %colour %colour | %colour %chick | %colour sex | sex %chick

change -> %swap part %forWhom birds      {% build.swapped %}        # swap the cock for a Buff Orp
        | %swap part over birds      {% build.swapped %}
        | %swap part %is birds       {% build.swapped %}
        | %swap part birds           {% build.swapped %}
        | %same birds                {% build.sameBut %}        # same but blue hens
        | %about told                {% build.correction %}     # what if the hens were Brahmas
        | %about birds               {% build.whatAbout %}      # what about a Sussex
        | %about over birds          {% build.whatAboutWith %}
        | %not told                  {% build.correction %}     # no, the roo is the Sussex
        | birds %instead             {% build.instead %}
part -> sex | %my sex | %their

asked -> %aspect {% build.aspect %}
       | %goal   {% build.goal %}
       | %sexlink {% build.sexlink %}

# --- a flock told by name: a clause by itself, read whole ----------------------------------------------------------

kinship -> %name is_out_of %name %by %name        {% build.outOfNamed %}    # Bert is out of Daisy by Sid
         | %name is_out_of %name pairing %name    {% build.outOfPair %}     # Bert is out of Sid x Daisy
         | %name is_out_of %name                  {% build.outOfNamedOne %} # Bert is a son of Sid
         | %name is_by %name                      {% build.byNamed %}       # Bert is by Sid
         | %name parent %is %name                 {% build.parentIs %}      # Bert's dad is Sid
         | %name %is %name parent                 {% build.isParentOf %}    # Sid is Bert's dad
         | %name %is bird                         {% build.namedIs %}       # Daisy is a lavender Orpington hen
         | %name %is %not bird                    {% build.namedIsNot %}    # Sid isn't lavender
         | %name bird                             {% build.namedIsBeside %} # Sid carries lav; Daisy the lavender hen
         | %name %not bird                        {% build.namedIsNot %}    # Sid doesn't carry lav
         | bird %is %name                         {% build.isNamedSo %}    # my RIR roo is called Rex
         | bird %name                             {% build.namedAfter %}    # my RIR roo Sid
         | brood                                  {% id %}
         | %name %comma kinship                   {% build.lastOf %}
is_out_of -> %is %outOf | %outOf
is_by -> %is %by | %by
pairing -> %over | %and | %plus
parent -> %cock | %hen
brood -> %name pairing %name counts               {% build.broodOf %}       # Sid x Daisy: 12 chicks, 3 lavender
counts -> count | counts count | counts sep count
count -> counting:? %number look | counting:? %number %chick | counting:? %number %not look | counting:? %number %of %number look | counting:? %number look %of %number
       | %number %chick %comma:? look | %number %chick %comma:? %not of_them:? look   # 7 chicks, all black; 8 chicks, none of them white
of_them -> %of %their
counting -> %is | %comma | %my
