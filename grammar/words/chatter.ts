// grammar/words/chatter.ts: everyday words of a chat that no list of familiar words has: never respelt as a name.

export const chatter: readonly string[] =
  `able abt actually greetings lurker lurkers lurking newbie allegedly already alright although altogether amazing anyways apart apparently appreciate april around
  gday tainted taint articles asap asking assume august aunt auto aware awesome bantam based basically basket basics batch beginner believe
  better birthday bloke blood blurry boil boring bottom brand breast brooder brooders brought bucket budget bump bumble
  bummer cage camp cancel candled candling cannot car casa cause center chance cheaper check clear clue clutch coat coop
  coops copy cost course crate crazy crowing cull culled culls currently cute damn daylight december deal decent dirt disease
  dose double doubt draft duck ducks dude dunno dust easily either elder email else enough especially estimate ever evil
  exact exactly except expect expected experience expert explain extra eyes facebook fairly february feather fence fertile
  fertility figure final finally finished flock flocks foot footage forum fox fraction friend friday fridge frizz frost
  funny further gain gene generally genetic genetics geno given goat going gonna google gotta grandkids group guess gutted
  half halves happen happy harder hatched hatchery hatches hatching haven havent having hawk heard heavy hello hence hidden
  hobby holiday honest hoping horse huge hurt husband idea ill image immediately incubate incubator india info instead
  internet issue january journal july june keeper keepers kids kinda know known lady lately later laugh law layer least
  legal legend level likely lineage lineages literally local location looking loose lose lost lots lucky luck mainly market
  mate math matter maybe mean means meant message method mine mites mixed moment monday mondays money months morning mostly
  mouth move names near neat need neighbor neighbour neither nest night none normal normally nothing november number
  october odds offer okay online only opinion option options order others ought ourselves outside owner parent parents part
  particular past pasture patch pattern people percent perhaps person phone photo photos pic pics picture plan plans plus
  possible possibly post posts predator preferably price prices probability probably problem problems produce program
  project proof prove proven quality question questions quick quickly quite raccoon random range rather ratio read ready
  real reality really reason recently reckon regular regarding rehome remember reply results right role room rough rule
  runs sadly safe sale saturday save saw saying school scratch screen season second seem seems seller selling september
  seriously settle several share shed sheet should show shown shows sick sign signs silly similar simple since single sites
  skill smart smell social someone something sometimes soon sorry sound space spare special spend split stage start state
  stay step stick still stop store story straight strain strong stuff stupid success suck sudden suggest sunday super
  supply suppose sure surely swear swollen sword table take talk tall tank tell term terms test texas thanks their theory
  there therefore these thing things think third though thought through throw thursday time times tired today together
  told tomorrow tonight total touch tractor trait traits treat tried trouble true trust truth trying tuesday turkey turkeys
  twice type typical under unless until update used useful useless usual usually value vary version video visible visit
  vote wait walk wanna warm watch water wednesday week weekend weeks weird well went were what when where which while whole
  whose wife wild wing winner winter wish within without woman women wonder wondering work works world worm worms worried
  worry worse worst worth would wouldnt write wrong yard yeah year years yellow yesterday young youll youre yours youtube
  ya yall yep yup nah omg wtf idk imo imho btw tbh fyi lmao rofl gosh heck crap shit fuck fucking hell bloody bugger geez
  thats whats hes shes theyre theyll theyve weve ive im ill id youve wont cant couldnt shouldnt dont doesnt didnt isnt
  arent wasnt werent hasnt havent hadnt aint lets theres heres wheres hows whos somebody anybody everybody nobody
  phenotype genotype heterozygous homozygous recessive dominant allele alleles chromosome offspring percentage sibling
  ruin ruins ruined ruining mammal mammals crossbreeding outcrossing siblings daughter daughters sons mother father parent progeny lineage shipping shipped incubation candle hatchability
  dual purpose meat eggs brooding molting moulting broody laying layers bully barn barns gran nan granny auntie uncle
  brand brands crowed crow crows spring summer autumn fall winter rain snow storm power camera blurry blur shot shots
  script alert select from where breeds drop table insert null undefined true false html body head href img src
  sharp brick stripes stripe sandy tiny wondered compare comparing compared versus difference different differences
  regards regard concerning consider considering thru tho thx cheers mate bird birds chook chooks fowl
  tell apart sort out figure swap switch flip flipped reverse opposite direction directions instead cover covered covers
  lines line strains breeder breeders judge judges standard standards winner champion club clubs society poultry rare
  colony colonies horned herd herds tractor goose geese quail guinea guineas duck turkey pheasant pigeon pigeons parrot
  dog dogs cat cats kid kids child children family families home house garden acre acres farm farms farmer stall farmhouse
  hundred thousand million dozen dozens couple pair pairs trio trios quad pounds pound kilo kilos grams ounces dollars
  cents euros bucks quid pence cheap expensive profit cost costs costing feed feeding grain corn maize wheat oats layer
  pellets mash crumble grower starter medicated vet vets medicine antibiotic treatment cure infection infected disease
  avian flu salmonella coccidiosis mareks respiratory sneezing cough limping lame scab swelling bumblefoot prolapse crop
  impacted sour worming wormer lice mite fleas dust bath ointment spray bleeding blood wound injured died dying dead death
  coyote raccoon hawk owl weasel mink stoat badger ferret rat rats snake bobcat eagle predators killed attack attacked
  skull skulls vault vaulted brain brains dome domed bone bones
  council county city town laws permit permits license zoning ordinance legal illegal allowed noise complaint complaints
  weather mondays lunch dinner recipe recipes cook cooking soup pizza coffee beer football soccer basketball movie music`
    .split(/\s+/u)
    .filter(Boolean)
