// grammar/words/languages.ts: the words of the trade in other languages, by their part in a sentence. Parted by commas.

type Words = {
  readonly cock: string
  readonly cocks: string
  readonly hen: string
  readonly hens: string
  readonly chick: string
  readonly over: string
  readonly under: string
  readonly and: string
  readonly or: string
  readonly which: string
  readonly for: string
  readonly my: string
  readonly is: string
  readonly sexing: string
  readonly chicks: string
  readonly eggs: string
  readonly shell: string
  readonly reverse: string
  readonly why: string
  /** Small words that tell the language and nothing else. */
  readonly small: string
}

export const languages: Readonly<Record<'de' | 'nl' | 'fr' | 'es' | 'it' | 'pt' | 'ru', Words>> = {
  de: {
    cock: 'hahn, gockel, junghahn, zuchthahn',
    cocks: 'hähne, haehne, junghähne',
    hen: 'henne, junghenne, legehenne, huhn',
    hens: 'hennen, junghennen, legehennen, hühner, huehner',
    chick: 'küken, kueken, nachzucht, nachkommen',
    over: 'auf, über, ueber, mit, an, gekreuzt mit, verpaart mit, kreuzen mit, mal, auf die, auf den, zu',
    under: 'unter, gedeckt von, getreten von',
    and: 'und, sowie',
    or: 'oder, gegen',
    which: 'welche, welcher, welches, welchen, was für, was fuer, was für eine, was für einen',
    for: 'für, fuer, zu meinem, zu meinen, zu meiner',
    my: 'mein, meine, meinen, meinem, meiner, unser, unsere, ich habe, habe',
    is: 'ist, sind, wird, werden',
    sexing:
      'geschlecht, geschlechter, geschlecht erkennen, unterscheiden, kennfarbig, kennfarbige, kennfarbigkeit, sexen, geschlechtsbestimmung, hahn oder henne, kennhühner, kennküken, kennkueken, am ersten tag',
    chicks: 'farbe, farben, welche farbe, aussehen, kükenfarbe, sehen aus, küken aussehen, wie sehen',
    eggs: 'eier, legeleistung, legen, ei, legt, gelegt',
    shell: 'eierfarbe, eifarbe, welche eierfarbe, schalenfarbe',
    reverse: 'umgekehrt, andersrum, anders herum, andersherum',
    why: 'warum, wieso, weshalb',
    small:
      'der, die, das, den, dem, ein, eine, einen, einer, einem, kann, man, ich, bei, beim, aus, sich, wenn, was, wie, am, im, die küken, noch, nicht, sein, dann, gibt, kommt, raus, heraus, bekomme, haben, kreuzung',
  },
  nl: {
    cock: 'haan, haantje, jonge haan',
    cocks: 'hanen, haantjes',
    hen: 'hen, henne, kip, hennetje, jonge hen',
    hens: 'hennen, kippen, hennetjes',
    chick: 'kuiken, kuikens, nakomelingen',
    over: 'op, over, met, bij, gekruist met, kruisen met, maal',
    under: 'onder, gedekt door',
    and: 'en, alsook',
    or: 'of toch, tegen',
    which: 'welke, welk, wat voor, wat voor een',
    for: 'voor, bij mijn',
    my: 'mijn, onze, ik heb, heb',
    is: 'zijn, worden, wordt',
    sexing: 'geslacht, geslachten, sexen, seksen, verschil zien, onderscheiden, haan of hen, geslacht zien, op dag een',
    chicks: 'kleur, kleuren, welke kleur, hoe zien, zien eruit, uiterlijk',
    eggs: 'eieren, ei, leg, leggen, legt, eitjes',
    shell: 'eikleur, kleur eieren, eierkleur, welke kleur eieren',
    reverse: 'andersom, omgekeerd',
    why: 'waarom',
    small:
      'het, een, de, kan, je, ik, van, er, uit, hoe, wat, dan, nog, niet, zie, zien, kun, krijg, ik krijg, komen, kruising',
  },
  fr: {
    cock: 'coq, coquelet, mâle',
    cocks: 'coqs, mâles',
    hen: 'poule, poulette, femelle',
    hens: 'poules, poulettes, femelles',
    chick: 'poussin, poussins, descendance, petits',
    over: 'sur, avec, croisé avec, croise avec, croisé à, croiser avec, croisé sur, fois, et une, accouplé avec',
    under: 'sous, couverte par, couvertes par',
    and: 'et, ainsi que',
    or: 'ou, contre',
    which: 'quel, quelle, quels, quelles, quel type de, quelle race de',
    for: 'pour, pour mon, pour mes, pour ma',
    my: 'mon, ma, mes, notre, nos, j ai, jai',
    is: 'est, sont, sera, seront',
    sexing:
      'sexer, sexe, sexage, sexable, sexables, sexer les poussins, autosexable, distinguer, mâle ou femelle, coq ou poule, reconnaître le sexe, à la naissance, à l éclosion, sexé',
    chicks:
      'couleur, couleurs, quelle couleur, de quelle couleur, ressemblent, ça donne, donne quoi, qu est ce que ça donne',
    eggs: 'œuf, œufs, oeuf, oeufs, ponte, pondent, pondre, pond, pondra, pondront, pondraient, pondait',
    shell: 'couleur des œufs, couleur des oeufs, couleur d œuf, coquille, couleur de coquille, couleur de l œuf',
    reverse: 'inverse, à l inverse, dans l autre sens, l inverse, vice versa',
    why: 'pourquoi',
    small:
      'le, la, les, un, une, des, du, de, on, peut, je, que, dans, est ce que, qu, quoi, si, pas, plus, ça, avec une, avec un, croisement, peut on',
  },
  es: {
    cock: 'gallo, macho, gallito',
    cocks: 'gallos, machos',
    hen: 'gallina, hembra, polla, pollita',
    hens: 'gallinas, hembras, pollas, pollitas',
    chick: 'pollito, pollitos, crías, pollos',
    over: 'sobre, con, cruzado con, cruzar con, por, encima de, cruce con, con una, con unas',
    under: 'bajo, debajo de, cubierta por, cubiertas por',
    and: 'y, e',
    or: 'o, contra',
    which: 'qué, cuál, cuáles, que gallinas, que gallo, qué tipo de',
    for: 'para, para mi, para mis',
    my: 'mi, mis, tengo, nuestro, nuestras',
    is: 'es, son, será, serán',
    sexing:
      'sexar, sexo, sexado, se puede sexar, distinguir, macho o hembra, autosexado, autosexables, sexables, sexable, al nacer, gallo o gallina, distinguir el sexo',
    chicks: 'color, colores, qué color, de qué color, cómo salen, salen, saldrán',
    eggs: 'huevo, huevos, puesta, ponen, poner, pone, pondrán, pondran, pondrá, pondra',
    shell: 'color de los huevos, color del huevo, color huevo, cáscara, color de huevo',
    reverse: 'al revés, al reves, a la inversa, viceversa',
    why: 'por qué, porqué',
    small: 'el, la, los, las, un, una, unas, unos, del, de, se, puede, que, cómo, como, si, en, me, lo, cruce, cruzo',
  },
  it: {
    cock: 'gallo, galletto, maschio',
    cocks: 'galli, maschi',
    hen: 'gallina, pollastra, femmina',
    hens: 'galline, pollastre, femmine',
    chick: 'pulcino, pulcini',
    over: 'su, con, incrociato con, sopra',
    under: 'sotto, coperta da',
    and: 'e',
    or: 'oppure',
    which: 'quale, quali, che',
    for: 'per, per il mio, per le mie',
    my: 'mio, mia, mie, miei, ho',
    is: 'è, sono',
    sexing: 'sessare, sesso, distinguere, sessabili, maschio o femmina, autosessabile, autosessabili, alla schiusa',
    chicks: 'colore, colori, di che colore, come vengono',
    eggs: 'uovo, uova, deposizione',
    shell: 'colore delle uova, colore uova, guscio',
    reverse: 'al contrario, viceversa, contrario',
    why: 'perché',
    small: 'il, la, le, lo, un, una, di, del, della, si, può, posso, come, che, ottengo, incrocio',
  },
  pt: {
    cock: 'galo, macho, frango',
    cocks: 'galos, machos',
    hen: 'galinha, fêmea, franga',
    hens: 'galinhas, fêmeas, frangas',
    chick: 'pintinho, pintinhos, pinto, pintos, pintainho, pintainhos',
    over: 'com, sobre, em cima de, cruzado com, cruzar com',
    under: 'debaixo de, coberta por',
    and: 'e',
    or: 'ou',
    which: 'qual, quais, que galo, que galinhas',
    for: 'para, para minhas, para meu',
    my: 'meu, minha, minhas, meus, tenho',
    is: 'é, são',
    sexing: 'sexar, sexagem, sexo, distinguir, dá para sexar, ao nascer, macho ou fêmea',
    chicks: 'cor, cores, que cor, de que cor',
    eggs: 'ovo, ovos, postura',
    shell: 'cor dos ovos, cor do ovo, casca',
    reverse: 'ao contrário, vice versa',
    why: 'por quê, por que',
    small: 'o, os, as, um, uma, umas, do, da, dos, das, dá, pode, posso, que, como, se, em, no, na, cruzamento',
  },
  ru: {
    cock: 'петух, петуха, петухом, петушок, петушка, самец',
    cocks: 'петухи, петухов, петушки, петушков, самцы',
    hen: 'курица, курицу, курицей, курочка, курочку, несушка, самка',
    hens: 'куры, кур, курами, куриц, курочки, курочек, несушки, несушек',
    chick: 'цыпленок, цыплёнок, цыплята, цыплят, потомство, птенцы',
    over: 'на, с, х, со, скрестить с, и курица',
    under: 'под',
    and: 'и',
    or: 'или, против',
    which: 'какой, какая, какие, какую, каких, какого',
    for: 'для, к, к моему, к моим',
    my: 'мой, мои, моего, моих, моя, у меня',
    is: 'это, есть, будет, будут',
    sexing:
      'пол, пол цыплят, определить пол, различить, аутосексные, аутосекс, по полу, пол суточных, пол в сутки, отличить, пол при вылупе, сексировать, пол цыплёнка',
    chicks: 'цвет, окрас, какого цвета, какой цвет, какие будут, какой окрас',
    eggs: 'яйцо, яйца, яиц, яйценоскость, несутся',
    shell: 'цвет яйца, цвет яиц, цвет скорлупы, скорлупа',
    reverse: 'наоборот',
    why: 'почему, зачем',
    small: 'как, что, если, можно, ли, в, от, из, по, у, будет ли, получится, при, скрещивание',
  },
}
export type Language = keyof typeof languages
