// grammar/words/nicknames.ts: what keepers type for one variety, beyond the aliases of the catalogue: short forms, slips, dictation.

/** Canonical catalogue name -> phrases, parted by commas. */
export const nicknames: Readonly<Record<string, string>> = {
  'Rhode Island Red':
    'rir, rirs, ri red, ri reds, rhode island red, rhode island reds, rhode island, rhode islands, rhode islander, rhode islanders, rhodie, rhodies, rhody, rhodys, rhodes, rhode red, rhode reds, rhode is red, rhodeisland, road island, road island red, rode island, rode island red, rose island red, rhode iland, rhod island, rhode island read, road island read, rhodeislander, prod red, prod reds, production red, production reds, island red, island reds, rhodelander, rhodelaender, rode island rood, red rhode, род айленд, родайленд, род айланд',
  'Rhode Island White':
    'riw, riws, ri white, ri whites, rhode island white, rhode island whites, rhode white, road island white, rhodie white',
  'New Hampshire':
    'nh, nhs, nhr, nhrs, new hamp, new hamps, new hampshire, new hampshires, new hampshire red, new hampshire reds, hampshire red, hampshire reds, hampshire, hampshires, new hamster, new hamsters, new hamster red, nu hampshire, new hampster, new hamshire, newhamp, newhampshire, n hampshire, new hampsire, hamp reds, нью гемпшир, ньюгемпшир',
  'Barred Plymouth Rock':
    'amrock, amrocks, bpr, bprs, br, brs, pbr, barred rock, barred rocks, bar rock, bar rocks, barred plymouth, barred plymouths, barred plymouth rock, barred plymouth rocks, plymouth barred, plymouth barred rock, barred rok, bard rock, barded rock, barrock, board rock, bored rock, barb rock, barb rocks, bark rock, birch rock, barbed rock, bird rock, bared rocks, bareds, plymouth rock barre, plymouth rock gestreift, gestreepte plymouth, плимутрок полосатый, полосатый плимутрок',
  'White Plymouth Rock':
    'wr, wrs, wpr, wprs, white rock, white rocks, white plymouth, white plymouths, white plymouth rocks',
  'Buff Plymouth Rock': 'buff rock, buff rocks, buff plymouth, buff plymouths, bfr',
  'Columbian Plymouth Rock':
    'columbian rock, columbian rocks, columbian plymouth, columbian plymouths, col rock, col rocks, columbia rock',
  'Partridge Plymouth Rock': 'partridge rock, partridge rocks, partridge plymouth, ppr',
  'Silver Pencilled Plymouth Rock':
    'spr, sprs, sppr, silver pencilled rock, silver penciled rock, silver pencil rock, silver rock, silver rocks',
  Delaware:
    'del, dels, dela, delas, delaware, delawares, delly, dellies, delawere, dellaware, deleware, delawear, delaware bantam, della wear, della ware, dell aware, dela ware, делавэр',
  'Light Sussex':
    'ls, lss, lsx, lt sussex, light sussex, lite sussex, lite susex, light susex, light sussexes, lights sussex, sussex light, light suss, light suffolk, light suffolks, light sue sex, sussex licht, sussex herminee, суссекс светлый, суссекс',
  'Speckled Sussex': 'ss, sps, spsx, speckled sussex, speckled susex, speckledy sussex, tricolour sussex',
  'Red Sussex': 'red sussex',
  'Buff Sussex': 'buff sussex',
  'White Leghorn':
    'layer white, layer whites, wl, wls, wlh, scwl, wlhs, white leghorn, white leghorns, white leg, white legs, leghorn white, livornese bianca, weisse leghorn, leghorn blanche, leghorn blanca, леггорн',
  'Brown Leghorn': 'brl, lbl, dbl, brown leghorn, brown leghorns, light brown leghorn, dark brown leghorn, brown leg',
  'Exchequer Leghorn': 'exl, exchequer, exchequers, exchequer leghorn',
  'Cuckoo Leghorn': 'barred leghorn, barred leghorns, cuckoo leghorn, cuckoo leghorns',
  'Silver Leghorn': 'silver leghorn, silver leghorns, silver duckwing leghorn, sdl',
  'Black Orpington': 'black orp, black orps, blk orp, blko, black orpies, black orpington, black orpingtons',
  'Buff Orpington':
    'bo, bos, buff orp, buff orps, buffo, buff orpies, buff orpy, buff orpie, buff orpington, buff orpingtons, buff or pington, buff orpingten, buff orpingtin',
  'Lavender Orpington': 'lav orp, lav orps, lo, los, lavender orp, lavender orps, self blue orpington, lavender orpies',
  'Chocolate Orpington': 'choc orp, choc orps, chocolate orp, chocolate orps, choccy orp',
  'Blue Orpington': 'blue orp, blue orps, bbs orp, bbs orps, bbs orpington, bbs orpingtons',
  'White Orpington': 'white orp, white orps',
  'Splash Orpington': 'splash orp, splash orps',
  'Black Australorp':
    'black australorp, black australorps, black aussie, black aussies, australop black, blk australorp',
  'Black Jersey Giant': 'jg, jgs, bjg, bjgs, black giant, black giants, black jersey, black jerseys',
  'White Jersey Giant': 'wjg, white giant, white giants, white jersey, white jerseys',
  'Blue Jersey Giant': 'bluejg, bbs giant, blue giant, blue giants, blue jersey',
  'Splash Jersey Giant': 'splash giant, splash jersey',
  'Silver Laced Wyandotte':
    'slw, slws, silver lace wyandotte, silver laced wyandotte, silver laced wyandottes, silver wyandotte, silver wyandottes, silver laced wyan, silver lace wine dot, sliver laced wyandotte, silver laced dottes, sl wyandotte, sl wyandottes, sl wy',
  'Golden Laced Wyandotte':
    'glw, glws, gold laced wyandotte, golden laced wyandotte, golden laced wyandottes, gold lace wyandotte, golden lace wyandotte, gold wyandotte, golden wyandotte, gl wyandotte, gl wyandottes',
  'White Wyandotte': 'ww, wws, white wyandotte, white wyandottes, white dottes',
  'Columbian Wyandotte': 'cw, cws, columbian wyandotte, columbian wyandottes, columbia wyandotte',
  'Blue Laced Red Wyandotte': 'blrw, blrws, blr, blrs, blue laced red wyandotte, blue laced reds wyandotte',
  'Partridge Wyandotte': 'pw, pws, partridge wyandotte',
  'Buff Wyandotte': 'bfw, buff wyandotte',
  'Cuckoo Marans':
    'cm, cms, cuckoo maran, cuckoo marans, coco marans, cookoo marans, coucou marans, coucou de marans, coucous de marans, cuckoo morans, coo coo morans, cuckoo moran, marans coucou, barred marans, barred maran, koekoek marans, kuckuck marans',
  'Black Copper Marans':
    'bcm, bcms, black copper maran, black copper marans, black copper morans, blk copper marans, copper marans, copper maran, copper black marans, black copper mirrors, black cooper marans, black copper moran, black copper merans, black copper marines, marans noir cuivre, marans schwarz kupfer, marans zwart koper, marans schwarzkupfer, schwarz kupfer marans, kupferhalsige marans, zwartkoper marans, маран медно черный, маран черно медный',
  'Wheaten Marans': 'wheaten marans, wheaten maran',
  'White Marans': 'white marans, white maran',
  'Blue Copper Marans': 'blue copper marans, blue copper maran',
  Welsummer:
    'wels, welsum, welsummer, welsummers, wellie, wellies, welly, welsie, welsies, wellsummer, well summer, wealth summer, welt summer, wells summer, welsomer, welsumer, wellsumer, wellsummers, well summers, wel summer, welsomers, will summer, wellsomer, wellsy, велзумер, вельзумер',
  Barnevelder:
    'barnie, barnies, barney, barneys, barnevelder, barnevelders, barnvelder, barnevelter, barneveld, double laced barnevelder, dlb, barney velder, barn of elder, barn velder, barn a velder, barneveldar, barny velder, barnevelda',
  'Salmon Faverolles':
    'sf, sfs, fav, favs, faves, faverolle, faverolles, favorelle, favorolle, salmon fav, salmon favs, salmon faverolle, salmon faverolles, deutsches lachshuhn, lachshuhn, lachshuhner, german salmon, faverol, faverols, favoroles, favor rolls, favor roll, faverolls, favourolles, favaroles, faveroles, faverole, фавероль',
  'Light Brahma': 'lb, lbs brahma, lt brahma, light brahma, light brahmas, lite brahma, brahma light, brahma hermine',
  'Dark Brahma': 'db, dark brahma, dark brahmas, silver pencilled brahma',
  'Buff Brahma': 'buff brahma, buff brahmas, bb, bbs brahma',
  'Black Cochin': 'black cochin, black cochins, cochin black',
  'Black Minorca': 'black minorca',
  'Blue Andalusian': 'blue andalusian',
  'Silver Spangled Hamburg': 'ssh, sshs, silver spangled hamburg',
  'Golden Spangled Hamburg': 'gsh, gold spangled hamburg, golden spangled hamburg',
  'Golden Campine': 'gold campine, golden campine',
  'Silver Campine': 'silver campine',
  'Egyptian Fayoumi': 'fayoumi, fayoumis, bigawi, fayoumy, fayumi, egyptian fayoumi, egyptian',
  Araucana: 'araucana',
  'Black Ameraucana': 'black am, black ameraucana',
  'Blue Ameraucana': 'blue am, blue ameraucana, bbs ameraucana, bbs am',
  'Wheaten Ameraucana': 'wheaten am, wheaten ameraucana, bw ameraucana',
  'Lavender Ameraucana': 'lav am, lavender ameraucana, lav ameraucana',
  'White Ameraucana': 'white am, white ameraucana',
  'Easter Egger':
    'ee, ees, easter egger, easter eggers, easter eager, easter eagers, easteregger, eastereggers, easter eger, easter egar, easter eggar,  easter egg chicken, easter egg chickens, easter egg layer, easter edgar, easter agar, ester egger, eater egger, easter aggers, easter agger, easter egg, americana, americanas, hatchery americana, hatchery ameraucana, osterleger, rainbow layer, rainbow layers, rainbow egger',
  'Olive Egger':
    'oe, oes, olive egger, olive eggers, olive eager, olive eagers, oliveegger, olive edgar, all of eager, olive agger, olive aggers, oliver egger, f1 olive egger, f1 oe, oliveleger',
  'Cream Legbar':
    'ccl, ccls, cl, cls, clb, cream legbar, cream legbars, crested cream legbar, crested cream legbars, crested legbar, cream leg bar, legbar creme, crele legbar',
  'Gold Legbar': 'gold legbar, golden legbar',
  Rhodebar: 'rhodebar, rhodebars, rhode bar, road bar',
  Welbar: 'welbar, welbars, wellbar, wel bar',
  Bielefelder:
    'bielefelder, bielefelders, biel, biels, bielie, bielies, beilefelder, bielefeld, bielfelder, bella felder, billy felder, belly felder, bielefelda, kennhuhn, bielefelder kennhuhn, bealefelder, bielfeld',
  Dominique:
    'dom, doms, dominique, dominiques, dominecker, dominic, dominics, domineker, dominick, dominicker, dominickers, dominiker, dominckers, domineckers, dominque, dominquie',
  Buckeye: 'buckeye, buckeyes, buck eye, buck eyes',
  'White Chantecler': 'white chantecler',
  'Silver Grey Dorking': 'sgd, silver gray dorking, silver grey dorking, silver dorking',
  'White Silkie': 'white silkie',
  'Black Silkie': 'black silkie, black silkies',
  'White Crested Black Polish': 'wcb, wcbp, white crested black polish',
  'Naked Neck':
    'nn, nns, nekkid neck, naked neck, naked necks, nakedneck, turken, turkens, transylvanian, transylvanian naked neck, bare neck, turkin, bowtie, bow tie, naked nek, cou nu, nackthals, naakthals',
  'White Cornish': 'white cornish, wc',
  'Dark Cornish': 'dc, dark cornish, indian game, cornish game, indian games, dark cornishes',
  'White Laced Red Cornish': 'wlrc, wlr, white laced red cornish, jubilee cornish',
  'Scots Dumpy': 'dumpy, dumpies, scots dumpies, scottish dumpy',
  'Cornish Cross':
    'cornish cross, cornish x, cornishx, cx, cornish rock, cornish rocks, cornish crosses, broiler, broilers, meat bird, meat birds, meaties, meatie, meat chicken, meat chickens, jumbo cornish, fast growing meat birds, masthuhn',
  'Black Java': 'black java',
  'Mottled Java': 'mottled java',
  Sulmtaler: 'sulmtaler, sulmtalers, sulmthaler',
  'Norwegian Jaerhon': 'jaerhon, jaer, jaerhons, norwegian jaerhon, jaerhone',
  'Croad Langshan': 'croad, croads',
  'Black Langshan': 'black langshan, australian langshan, australian langshans, black langshans, aussie langshan',
  'Mottled Houdan': 'mottled houdan',
  Lakenvelder: 'lakenvelder, lakenvelders, lakenfelder',
  Vorwerk: 'vorwerk, vorwerks, vorwerck',
  'White Bresse': 'bresse, american bresse, bresse gauloise, bress, white bresse, bresse white',
  'Black-breasted Red Old English Game':
    'oeg, oegb, bbr, bb red, old english, old english game, oldenglish, old english game bantam, gamecock, game cock, game bird, game hen, game fowl',
  'Icelandic landrace': 'icelandic, icelandics, icie, icies, icelandik',
  'Swedish Flower Hen': 'sfh, swedish flower hen, swedish flower hens, swedish flower, flower hen',
  'Potchefstroom Koekoek': 'koekoek, kk, koekkoek, potch koekoek, potchefstroom koekoek, potchefstroom',
  'Golden Montazah': 'montazah, montaza, golden montazah',
  Dandarawi: 'dandarawi, dandarawy',
  Ancona: 'ancona, anconas, ancorna, ankona',
  'Black sex-link':
    'bsl, bsls, black sex link, black sex links, black sexlink, black sexlinks, blacksexlink, black sexlinc, black sex lynx, black sexlinked, black sex linked, black link, blk sex link, blk sexlink, black hybrid, black hybrids, sex link black, black 6 link',
  'Red sex-link':
    'rsl, rsls, red sex link, red sex links, red sexlink, red sexlinks, redsexlink, red sexlinc, red sexlinked, red sex linked, brown hybrid, brown hybrids, brown hybrid layer, brown hybrid layers, production hybrid, hybrid layer, hybrid layers, hybrid brown, sex link red, gold sex link, golden sex link, red sex lynx, red hybrid, red hybrids, brown layers, commercial hybrid, commercial hybrids, commercial brown, ex batts, ex batt, ex battery, brown egg layer hybrid, legehybriden, hybridhuhn, hybridhenne, braune hybriden',
  'Mixed breed':
    'mutt, mutts, mongrel, mongrels, barnyard mix, barnyard mixes, barn yard mix, barnyard mutt, barnyard mutts, mixed breed, mixed breeds, backyard mix, crossbreed hen, crossbreeds, bitsa, bitza, heinz 57, barnyard, moggy, mixed bag, mischling, kruising',
  'Blue-egg layer':
    'blue egg layer, blue egg layers, blue layer, blue layers, blue egger, blue eggers, blue egg hen, blue egg hens',
  'Green-egg layer': 'green egg layer, green egg layers, green layer, green layers',
  'Olive-egg layer': 'olive egg layer, olive egg layers, olive layer, olive layers',
  'White-egg layer': 'white egg layer, white egg layers, white layer, white layers',
  'Brown-egg layer':
    'brown egg layer, brown egg layers, brown layer, brown egger, brown eggers, brown egg hen, brown egg hens',
  'Dark-egg layer': 'dark egg layer, dark egg layers, dark brown egg layer, dark brown egg layers, dark layers',
}
