// grammar/words/species.ts: breeds kept in several colours: how the bare name is typed, and what it usually means.

export type Species = {
  /** The end (or the whole) of its canonical names. */
  readonly name: string
  /** The bare name as typed, parted by commas. */
  readonly said: string
  /** The variety that the bare name usually means, likeliest first; a firm one is taken without asking. */
  readonly usual: readonly string[]
  readonly firm: boolean
}

export const species: readonly Species[] = [
  {
    name: 'Plymouth Rock',
    said: 'plymouth rock, plymouth rocks, plymouth, plymouths, rock, rocks, rok, roks, roc, rocs, plymoth, plimuth, plimouth, plymoth rock, plimouth rock, plymuth, prock, plym, plymouth roc, плимутрок, плимут',
    usual: [
      'Barred Plymouth Rock',
      'White Plymouth Rock',
      'Buff Plymouth Rock',
      'Columbian Plymouth Rock',
      'Partridge Plymouth Rock',
      'Silver Pencilled Plymouth Rock',
    ],
    firm: false,
  },
  {
    name: 'Sussex',
    said: 'sussex, sussexes, susex, sussux, sussix, suss, sx',
    usual: ['Light Sussex', 'Speckled Sussex', 'Red Sussex', 'Buff Sussex'],
    firm: false,
  },
  {
    name: 'Leghorn',
    said: 'leghorn, leghorns, legorn, leghorne, leg horn, leg horns, lego horn, lake horn, lake horns, legorns, leghrn, livornese, livorno, legghorn, leghon, livournaise',
    usual: [
      'White Leghorn',
      'Brown Leghorn',
      'Buff Leghorn',
      'Black Leghorn',
      'Exchequer Leghorn',
      'Silver Leghorn',
      'Cuckoo Leghorn',
    ],
    firm: true,
  },
  {
    name: 'Orpington',
    said: 'orpington, orpingtons, orp, orps, orpie, orpies, orpy, orpinton, orphington, orpingtin, orpingten, or pington, or pinkton, orphingtons, orpintons, orping ton, orpingtn, орпингтон',
    usual: [
      'Buff Orpington',
      'Black Orpington',
      'Lavender Orpington',
      'Blue Orpington',
      'White Orpington',
      'Chocolate Orpington',
    ],
    firm: false,
  },
  {
    name: 'Wyandotte',
    said: 'wyandotte, wyandottes, wyandot, wyandots, wyandott, wyan, wyans, dotte, dottes, wy, wine dot, wine dots, why and dot, why and dots, wyndotte, wyandotts, wyandote, wiandotte, wynadotte, wyondotte, whyandotte, winedot, weinddot, wind dot, виандот',
    usual: [
      'Silver Laced Wyandotte',
      'Golden Laced Wyandotte',
      'White Wyandotte',
      'Columbian Wyandotte',
      'Blue Laced Red Wyandotte',
      'Partridge Wyandotte',
      'Buff Wyandotte',
    ],
    firm: false,
  },
  {
    name: 'Jersey Giant',
    said: 'jersey giant, jersey giants, giants, jersey, jerseys, giant, jersy giant, jersey gaint, jersy gaint',
    usual: ['Black Jersey Giant', 'White Jersey Giant', 'Blue Jersey Giant', 'Splash Jersey Giant'],
    firm: true,
  },
  {
    name: 'Marans',
    said: 'marans, maran, marrans, marran, morans, moran, marens, maron, marons, merans, marands, marins, meran, mirans, maranz, maranns, маран, маранс',
    usual: ['Black Copper Marans', 'Cuckoo Marans', 'Wheaten Marans', 'White Marans'],
    firm: false,
  },
  {
    name: 'Brahma',
    said: 'brahma, brahmas, bramha, brahama, brama, bramas, brahms, bhrama, brahmer, брама',
    usual: ['Light Brahma', 'Dark Brahma', 'Buff Brahma'],
    firm: false,
  },
  {
    name: 'Cochin',
    said: 'cochin, cochins, conchin, cochen, cochine, kochin, coachin, coach in, cochi, кохинхин',
    usual: ['Black Cochin', 'Buff Cochin', 'Blue Cochin', 'White Cochin', 'Partridge Cochin'],
    firm: false,
  },
  {
    name: 'Pekin bantam',
    said: 'pekin, pekins, pekin bantam, pekin bantams, peking bantam, cochin bantam, cochin bantams',
    usual: [
      'Black Pekin bantam',
      'Buff Pekin bantam',
      'Blue Pekin bantam',
      'White Pekin bantam',
      'Partridge Pekin bantam',
    ],
    firm: false,
  },
  {
    name: 'Hamburg',
    said: 'hamburg, hamburgs, hamburgh, hamburger, hamberg, hamburghs',
    usual: ['Silver Spangled Hamburg', 'Golden Spangled Hamburg'],
    firm: true,
  },
  { name: 'Campine', said: 'campine, campines, campin', usual: ['Golden Campine', 'Silver Campine'], firm: false },
  {
    name: 'Ameraucana',
    said: 'am, ameraucana, ameraucanas, ameracauna, amercauna, amaraucana, amaracauna, ameracana, amerucana, amerauncana, ameraucauna, emma rock anna, emma rocana, emma rock ana, ama rock anna, america anna, amera cana, a mare a cana, amber rock anna, amer a cana, emerald cana, amerikana, amaricana, amricana, ameraucanna, americuana, america rock anna',
    usual: ['Black Ameraucana', 'Blue Ameraucana', 'Wheaten Ameraucana', 'Lavender Ameraucana', 'White Ameraucana'],
    firm: true,
  },
  {
    name: 'Legbar',
    said: 'legbar, legbars, leg bar, leg bars, lake bar, lego bar, legbarr, legbart, leg barr, лэгбар, легбар',
    usual: ['Cream Legbar', 'Gold Legbar'],
    firm: true,
  },
  {
    name: 'Chantecler',
    said: 'chant, chants, chantecler, chanteclers, chanticleer, chantecleer, shantecler, chanticlear',
    usual: ['White Chantecler', 'Partridge Chantecler'],
    firm: true,
  },
  { name: 'Dorking', said: 'dorking, dorkings, dorkin', usual: ['Silver Grey Dorking', 'White Dorking'], firm: true },
  {
    name: 'Silkie',
    said: 'silkie, silkies, silky, silkys, silkey, silki, selkie, silkie bantam, silk hen',
    usual: ['White Silkie', 'Black Silkie'],
    firm: false,
  },
  {
    name: 'Polish',
    said: 'polish, polishes, pollish, poland, polands, polish crested',
    usual: ['White Crested Black Polish'],
    firm: true,
  },
  {
    name: 'Cornish',
    said: 'cornish, cornishes, cornis',
    usual: ['Dark Cornish', 'White Cornish', 'White Laced Red Cornish'],
    firm: true,
  },
  { name: 'Java', said: 'java, javas, jave', usual: ['Black Java', 'Mottled Java'], firm: true },
  {
    name: 'Langshan',
    said: 'langshan, langshans, croad langshan, langshang',
    usual: ['Croad Langshan', 'Black Langshan'],
    firm: true,
  },
  {
    name: 'Australorp',
    said: 'ba, bas, aus, aussie, aussies, australorp, australorps, aussielorp, lorp, lorps, austalorp, australop, austrolorp, astralorp, australorpe, aussie lorp, aussie orp, australian orpington, austral orp, austra lorp, austria lorp, australia lorp, australia up, austral up, australia orp, australia lop, austrialorp, australian lorp, ostrich lorp, a stralorp, oz lorp, австралорп',
    usual: ['Black Australorp'],
    firm: true,
  },
  {
    name: 'Araucana',
    said: 'ara, araucana, araucanas, arucana, aracuana, auracana, auracauna, a rock anna, aracana, araucauna, arrow canna, arakana',
    usual: ['Araucana'],
    firm: true,
  },
  { name: 'Minorca', said: 'minorca, minorcas, menorca, minorka, minorcan', usual: ['Black Minorca'], firm: true },
  { name: 'Houdan', said: 'houdan, houdans, hoodan', usual: ['Mottled Houdan'], firm: true },
  {
    name: 'Andalusian',
    said: 'andalusian, andalusians, anda, andalucian, andalusion',
    usual: ['Blue Andalusian'],
    firm: true,
  },
]
