// SPDX-License-Identifier: MIT
//
// What tables call their columns: the words of the printer (printer.h). Written apart from the
// reader's (assets/headings.json) and not to be made alike, so that reading can fail. Terms of the
// trade, common practice, no source; "machine" words are what a translation by machine makes of the
// English ones. One line a language and column, forms parted by bars.
#pragma once

namespace tripoise::test {

inline constexpr const char* printedWords = R"(
en size: Size | Frame size | Sizes |
en stack_mm: Stack | Stack height | Frame stack height | STACK | Vertical stack
en reach_mm: Reach | Frame reach | REACH | Horizontal reach
en head_angle_deg: Head angle | Head tube angle | Headtube angle | HT angle | Head-tube angle | Angle, head tube | Steering axis angle
en seat_angle_deg: Seat angle | Seat tube angle | Effective seat tube angle | ST angle (effective) | Seat-tube angle, effective | Eff. seat angle | Seat tube angle virtual
en top_tube_effective_mm: Top tube effective | Effective top tube | TT length (effective) | Top tube length, horizontal | Horizontal TT | Top tube (horizontal) | Effective TT length | Top tube effective length | ETT
en seat_tube_mm: Seat tube | Seat tube length | Seat tube C-to-Top | Seat tube (center to top) | ST length C-T | Seat tube length, centre to top | Seat-tube length | Seat tube C-T
en head_tube_mm: Head tube | Head tube length | HT length | Headtube length | Head-tube length
en chainstay_mm: Chainstay | Chain stay length | Chainstay length | Chain stay length, actual | Rear center | Chain-stay | CS length | Rear centre length
en bb_drop_mm: BB drop | Bottom bracket drop | Drop (bottom bracket) | B.B. drop | BB-drop
en bb_height_mm: BB height | Bottom bracket height | Ground clearance of bottom bracket | Height of bottom bracket
en wheelbase_mm: Wheelbase | Wheel base | Wheelbase length | Wheel-base
en front_centre_mm: Front center | Front centre | Front-center | Front center length | Front centre distance
en fork_length_mm: Fork length | Fork axle to crown | Axle to crown | Fork length (A-C) | Fork length axle-to-crown | Fork A-C length
en fork_offset_mm: Fork offset | Fork rake | Rake | Fork offset/rake | Offset of fork | Fork rake / offset
en trail_mm: Trail | Trail length | Ground trail
en standover_mm: Standover | Standover height | Stand-over height | Stand over | Stand over height
en seat_tube_centre_mm: Seat tube C-C | Seat tube centre to centre | Seat tube length (center to center) | ST length C-C
en seat_angle_actual_deg: Actual seat tube angle | Seat tube angle (actual) | Seat angle, real
en rider_height_mm: Rider height | Recommended rider height | Suggested rider height | Your height | Height of rider
en stem_length_mm: Stem length | Stem
en bar_width_mm: Handlebar width | Bar width
en crank_length_mm: Crank length | Crank arm length | Crank arms
en tyre_mm: Tyre width | Tire width

de size: Größe | Rahmengröße | Rahmengrösse |
de stack_mm: Stack | Stackhöhe | Rahmen-Stack | Stack (Höhe)
de reach_mm: Reach | Reach horizontal | Rahmen-Reach
de head_angle_deg: Lenkwinkel | Steuerrohrwinkel | Steuerwinkel | Lenkkopfwinkel | Winkel Steuerrohr | Winkel des Steuerrohrs
de seat_angle_deg: Sitzwinkel | Sitzrohrwinkel | Sitzwinkel effektiv | Effektiver Sitzrohrwinkel | Winkel Sitzrohr (effektiv) | Sitzrohrwinkel, effektiv
de top_tube_effective_mm: Oberrohrlänge horizontal | Oberrohr effektiv | Oberrohr (horizontal) | Horizontale Länge Oberrohr | Oberrohrlänge, effektiv | Effektive Länge des Oberrohrs
de seat_tube_mm: Sitzrohrlänge | Sitzrohr | Sattelrohrlänge | Länge Sitzrohr Mitte-Oberkante | Sitzrohr C-T | Sitzrohrlänge (c-t) | Sattelrohr Länge
de head_tube_mm: Steuerrohrlänge | Steuerrohr | Länge Steuerrohr | Steuerkopfrohr Länge | Länge des Steuerrohrs
de chainstay_mm: Kettenstrebenlänge | Kettenstrebe | Hinterbaulänge | Länge Kettenstreben | Länge Hinterbau | Kettenstreben Länge
de bb_drop_mm: Tretlagerabsenkung | BB Drop | Absenkung Tretlager | Innenlagerabsenkung | Tretlager-Absenkung | Absenkung des Innenlagers
de bb_height_mm: Tretlagerhöhe | Innenlagerhöhe | Höhe des Tretlagers
de wheelbase_mm: Radstand | Radabstand
de front_centre_mm: Front-Center | Vorderbaulänge | Abstand Tretlager - Vorderachse
de fork_length_mm: Gabellänge | Gabel-Einbaulänge | Einbauhöhe Gabel | Länge Gabel | Einbaulänge der Gabel
de fork_offset_mm: Gabelvorbiegung | Vorbiegung | Gabel-Offset | Offset Gabel | Vorlauf Gabel (Offset)
de trail_mm: Nachlauf | Trail (Nachlauf)
de standover_mm: Überstandshöhe | Überstandhöhe | Schrittfreiheit | Standover-Höhe
de seat_tube_centre_mm: Sitzrohr C-C | Sitzrohrlänge Mitte-Mitte | Sitzrohr (Mitte - Mitte)
de seat_angle_actual_deg: Sitzwinkel real | Tatsächlicher Sitzrohrwinkel
de rider_height_mm: Körpergröße | Fahrergröße | Empfohlene Körpergröße
de stem_length_mm: Vorbaulänge | Vorbau
de bar_width_mm: Lenkerbreite | Breite Lenker
de crank_length_mm: Kurbellänge | Kurbelarmlänge
de tyre_mm: Reifenbreite | Breite Reifen

fr size: Taille | Taille de cadre |
fr stack_mm: Stack | Hauteur (stack) | Stack (hauteur) | Hauteur du stack
fr reach_mm: Reach | Portée (reach) | Longueur du reach
fr head_angle_deg: Angle de direction | Angle du tube de direction | Angle tube direction | Angle de douille | Direction (angle)
fr seat_angle_deg: Angle de selle | Angle tube de selle | Angle de tube de selle effectif | Angle effectif du tube de selle | Tube de selle (angle)
fr top_tube_effective_mm: Tube supérieur effectif | Tube horizontal effectif | Longueur tube supérieur (horizontale) | Tube supérieur - horizontal | Longueur virtuelle du tube supérieur
fr seat_tube_mm: Tube de selle | Longueur tube de selle | Longueur du tube de selle C-T | Tube de selle (longueur) | Hauteur du tube de selle
fr head_tube_mm: Douille de direction | Tube de direction | Longueur douille | Longueur de la douille de direction | Hauteur tube de direction
fr chainstay_mm: Longueur des bases | Bases | Longueur bases arrière | Base (longueur) | Longueur des haubans inférieurs
fr bb_drop_mm: Drop boîtier | Abaissement du boîtier | Chute du boîtier de pédalier | Abaissement de boîtier (drop)
fr bb_height_mm: Hauteur de boîtier | Hauteur du boîtier de pédalier | Boîtier de pédalier, hauteur
fr wheelbase_mm: Empattement | Longueur d'empattement
fr front_centre_mm: Avant-centre | Distance centre-avant | Front center
fr fork_length_mm: Longueur fourche | Longueur de la fourche | Hauteur de la fourche
fr fork_offset_mm: Déport fourche | Déport de la fourche | Offset fourche | Cintrage fourche
fr trail_mm: Chasse | Chasse au sol
fr standover_mm: Hauteur d'enjambement | Enjambement | Hauteur de standover | Hauteur au-dessus du tube supérieur
fr seat_tube_centre_mm: Tube de selle C-C | Tube de selle axe-axe | Tube de selle (centre à centre)
fr seat_angle_actual_deg: Angle de selle réel | Angle réel tube de selle
fr rider_height_mm: Taille du cycliste | Taille cycliste | Taille recommandée du cycliste
fr stem_length_mm: Longueur potence | Potence
fr bar_width_mm: Largeur cintre | Largeur du guidon
fr crank_length_mm: Longueur manivelles | Manivelles
fr tyre_mm: Largeur pneu | Section pneu

it size: Taglia | Misura |
it stack_mm: Stack | Altezza stack | Stack (altezza)
it reach_mm: Reach | Reach orizzontale | Reach del telaio
it head_angle_deg: Angolo sterzo | Angolo del tubo di sterzo | Angolo tubo sterzo | Sterzo (angolo)
it seat_angle_deg: Angolo sella | Angolo piantone | Angolo tubo sella effettivo | Angolo virtuale piantone | Angolo del piantone
it top_tube_effective_mm: Tubo orizzontale virtuale | Orizzontale virtuale | Tubo superiore effettivo | Lunghezza virtuale tubo orizzontale | Top tube virtuale
it seat_tube_mm: Tubo piantone | Piantone | Lunghezza del piantone | Tubo sella centro-fine | Altezza piantone
it head_tube_mm: Tubo sterzo | Lunghezza tubo sterzo | Altezza sterzo | Tubo di sterzo (lunghezza)
it chainstay_mm: Carro | Lunghezza carro | Foderi orizzontali | Lunghezza foderi bassi | Carro posteriore
it bb_drop_mm: Drop movimento centrale | Abbassamento movimento centrale | Drop scatola | Abbassamento della scatola
it bb_height_mm: Altezza movimento centrale | Altezza scatola movimento | Altezza da terra movimento centrale
it wheelbase_mm: Interasse | Passo | Interasse ruote
it front_centre_mm: Interasse anteriore | Front center | Centro anteriore
it fork_length_mm: Lunghezza forcella | Altezza forcella
it fork_offset_mm: Rake forcella | Offset forcella | Rake | Avanzamento della forcella
it trail_mm: Avancorsa | Trail
it standover_mm: Standover | Altezza standover | Altezza cavalcamento | Altezza di scavalco
it seat_tube_centre_mm: Piantone C-C | Piantone centro-centro | Tubo sella (centro centro)
it seat_angle_actual_deg: Angolo piantone reale | Angolo reale sella
it rider_height_mm: Altezza ciclista | Statura | Statura consigliata | Altezza del ciclista
it stem_length_mm: Attacco manubrio | Lunghezza attacco
it bar_width_mm: Larghezza manubrio | Manubrio
it crank_length_mm: Lunghezza pedivelle | Pedivelle
it tyre_mm: Larghezza copertone | Larghezza pneumatico

es size: Talla | Talla de cuadro |
es stack_mm: Stack | Altura stack | Stack (altura)
es reach_mm: Reach | Alcance (reach) | Alcance
es head_angle_deg: Ángulo de dirección | Ángulo dirección | Ángulo tubo de dirección | Dirección (ángulo)
es seat_angle_deg: Ángulo de sillín | Ángulo tubo de sillín | Ángulo sillín efectivo | Ángulo del tubo de asiento | Ángulo virtual del tubo de sillín
es top_tube_effective_mm: Tubo superior efectivo | Tubo superior horizontal | Tubo horizontal virtual | Longitud horizontal tubo superior | Top tube efectivo
es seat_tube_mm: Tubo de sillín | Tubo de asiento | Longitud del tubo de sillín | Tubo sillín C-T | Longitud tubo de asiento | Tubo vertical
es head_tube_mm: Tubo de dirección | Pipa de dirección | Longitud pipa | Longitud del tubo de dirección | Tubo dirección
es chainstay_mm: Vainas | Longitud de vainas | Longitud vaina | Vainas (longitud) | Longitud de las vainas
es bb_drop_mm: Caída pedalier | Caída de pedalier | Drop pedalier | Caída eje pedalier | Caída del eje de pedalier
es bb_height_mm: Altura pedalier | Altura eje de pedalier | Altura del eje de pedalier
es wheelbase_mm: Distancia entre ejes | Batalla | Distancia ejes
es front_centre_mm: Distancia al eje delantero | Centro delantero | Front center
es fork_length_mm: Longitud de horquilla | Altura horquilla | Longitud horquilla
es fork_offset_mm: Avance de horquilla | Offset horquilla | Avance horquilla | Rake de horquilla
es trail_mm: Trail | Avance (trail)
es standover_mm: Altura de paso | Standover | Altura standover | Altura de entrepierna del cuadro
es seat_tube_centre_mm: Tubo de sillín C-C | Tubo sillín (centro a centro)
es seat_angle_actual_deg: Ángulo de sillín real | Ángulo real tubo sillín
es rider_height_mm: Altura ciclista | Altura del ciclista | Estatura | Altura recomendada del ciclista
es stem_length_mm: Longitud potencia | Potencia
es bar_width_mm: Ancho manillar | Anchura de manillar
es crank_length_mm: Longitud de bielas | Bielas
es tyre_mm: Ancho neumático | Anchura de cubierta

nl size: Maat | Framemaat |
nl stack_mm: Stack | Stackhoogte | Stack (hoogte)
nl reach_mm: Reach | Frame reach
nl head_angle_deg: Balhoofdhoek | Hoek balhoofdbuis | Balhoofd hoek | Stuurhoek
nl seat_angle_deg: Zitbuishoek | Zithoek | Effectieve zitbuishoek | Hoek zadelbuis | Zitbuis hoek (effectief)
nl top_tube_effective_mm: Bovenbuis effectief | Bovenbuis horizontaal | Effectieve lengte bovenbuis | Horizontale bovenbuislengte | Bovenbuislengte (effectief)
nl seat_tube_mm: Zitbuis | Zitbuislengte | Lengte zitbuis | Zadelbuis lengte | Zitbuis C-T
nl head_tube_mm: Balhoofdbuis | Balhoofdlengte | Lengte balhoofdbuis | Balhoofdbuis lengte
nl chainstay_mm: Liggende achtervork | Achtervorklengte | Lengte achtervork | Lengte liggende achtervork
nl bb_drop_mm: BB-drop | Bracketdrop | Trapas drop | Drop trapas
nl bb_height_mm: Trapashoogte | Hoogte trapas | Brackethoogte
nl wheelbase_mm: Wielbasis
nl front_centre_mm: Front center | Voorcentrum | Afstand trapas - vooras
nl fork_length_mm: Vorklengte | Lengte voorvork | Inbouwlengte voorvork
nl fork_offset_mm: Vorksprong | Offset voorvork | Vork offset | Voorsprong vork
nl trail_mm: Naloop
nl standover_mm: Stahoogte | Standover hoogte | Overstaphoogte
nl seat_tube_centre_mm: Zitbuis C-C | Zitbuis hart-hart
nl seat_angle_actual_deg: Werkelijke zithoek | Zitbuishoek (werkelijk)
nl rider_height_mm: Lichaamslengte | Lengte rijder | Aanbevolen lichaamslengte
nl stem_length_mm: Stuurpenlengte | Stuurpen
nl bar_width_mm: Stuurbreedte | Breedte stuur
nl crank_length_mm: Cranklengte | Lengte crank
nl tyre_mm: Bandbreedte | Breedte band

cs size: Velikost | Velikost rámu |
cs stack_mm: Stack | Výška stack
cs reach_mm: Reach | Délka reach
cs head_angle_deg: Úhel hlavy | Úhel hlavové trubky | Hlavový úhel
cs seat_angle_deg: Úhel sedla | Úhel sedlové trubky | Sedlový úhel | Efektivní úhel sedlové trubky
cs top_tube_effective_mm: Efektivní délka horní trubky | Horní trubka horizontálně | Horní trubka (efektivní) | Horizontální délka horní trubky
cs seat_tube_mm: Délka sedlové trubky | Sedlová trubka | Sedlová trubka C-T
cs head_tube_mm: Délka hlavové trubky | Hlavová trubka | Délka hlavy
cs chainstay_mm: Délka řetězové vzpěry | Řetězová vzpěra | Délka zadní stavby | Zadní stavba
cs bb_drop_mm: Pokles středu | Pokles středové osy | BB drop
cs bb_height_mm: Výška středu | Výška středové osy
cs wheelbase_mm: Rozvor | Rozvor kol
cs fork_length_mm: Délka vidlice | Stavební výška vidlice
cs fork_offset_mm: Předsazení vidlice | Offset vidlice
cs trail_mm: Závlek | Stopa
cs standover_mm: Výška rámu nad zemí | Překrok | Standover
cs rider_height_mm: Výška jezdce | Výška postavy

pl size: Rozmiar | Rozmiar ramy |
pl stack_mm: Stack | Wysokość stack
pl reach_mm: Reach | Długość reach
pl head_angle_deg: Kąt główki | Kąt główki ramy | Kąt rury sterowej
pl seat_angle_deg: Kąt rury podsiodłowej | Kąt podsiodłowy | Efektywny kąt rury podsiodłowej
pl top_tube_effective_mm: Efektywna długość górnej rury | Górna rura efektywna | Rura górna pozioma | Pozioma długość górnej rury
pl seat_tube_mm: Długość rury podsiodłowej | Rura podsiodłowa | Rura podsiodłowa C-T
pl head_tube_mm: Długość główki | Główka ramy | Długość główki ramy
pl chainstay_mm: Długość tylnych widełek | Tylny trójkąt | Dolne widełki
pl bb_drop_mm: Obniżenie suportu | BB drop | Opad suportu
pl bb_height_mm: Wysokość suportu
pl wheelbase_mm: Rozstaw osi | Baza kół
pl fork_length_mm: Długość widelca | Wysokość widelca
pl fork_offset_mm: Offset widelca | Wyprzedzenie widelca
pl trail_mm: Trail | Ślad
pl standover_mm: Przekrok | Wysokość przekroku | Standover
pl rider_height_mm: Wzrost | Wzrost rowerzysty

pt size: Tamanho | Tamanho do quadro |
pt stack_mm: Stack | Altura stack
pt reach_mm: Reach | Alcance
pt head_angle_deg: Ângulo de direção | Ângulo do tubo de direção | Ângulo da caixa de direção
pt seat_angle_deg: Ângulo do selim | Ângulo do tubo do selim | Ângulo efetivo do tubo de selim
pt top_tube_effective_mm: Tubo superior efetivo | Tubo superior horizontal | Comprimento efetivo do tubo superior
pt seat_tube_mm: Tubo do selim | Comprimento do tubo de selim | Tubo de selim C-T
pt head_tube_mm: Tubo de direção | Comprimento do tubo de direção | Caixa de direção
pt chainstay_mm: Escoras | Comprimento das escoras | Escora inferior
pt bb_drop_mm: Queda do movimento central | Queda do eixo pedaleiro | BB drop
pt bb_height_mm: Altura do movimento central | Altura do eixo pedaleiro
pt wheelbase_mm: Distância entre eixos | Entre-eixos
pt fork_length_mm: Comprimento da forqueta | Comprimento do garfo | Altura do garfo
pt fork_offset_mm: Offset do garfo | Avanço do garfo | Avanço da forqueta
pt trail_mm: Trail | Arrasto
pt standover_mm: Altura de standover | Standover | Altura do cavalo
pt rider_height_mm: Altura do ciclista | Altura recomendada

sv size: Storlek | Ramstorlek |
sv stack_mm: Stack | Stackhöjd
sv reach_mm: Reach
sv head_angle_deg: Styrvinkel | Styrrörsvinkel | Vinkel styrrör
sv seat_angle_deg: Sadelrörsvinkel | Sitsvinkel | Sittrörsvinkel | Effektiv sadelrörsvinkel
sv top_tube_effective_mm: Överrör effektivt | Effektiv överrörslängd | Horisontell överrörslängd | Överrör horisontellt
sv seat_tube_mm: Sadelrör | Sadelrörslängd | Sittrörslängd | Längd sadelrör
sv head_tube_mm: Styrrör | Styrrörslängd | Längd styrrör
sv chainstay_mm: Kedjestag | Kedjestagslängd | Längd kedjestag
sv bb_drop_mm: Vevlagersänkning | Vevlagerdrop | BB drop
sv bb_height_mm: Vevlagerhöjd | Höjd vevlager
sv wheelbase_mm: Hjulbas
sv fork_length_mm: Gaffellängd | Längd gaffel
sv fork_offset_mm: Gaffeloffset | Gaffelns offset | Offset gaffel
sv trail_mm: Försprång (trail) | Trail
sv standover_mm: Ståhöjd | Grensle höjd | Standoverhöjd
sv rider_height_mm: Kroppslängd | Cyklistens längd

da size: Størrelse | Stelstørrelse |
da stack_mm: Stack | Stackhøjde
da reach_mm: Reach
da head_angle_deg: Styrvinkel | Kronrørsvinkel | Vinkel kronrør
da seat_angle_deg: Sadelrørsvinkel | Sædevinkel | Effektiv sadelrørsvinkel
da top_tube_effective_mm: Overrør effektiv | Effektiv overrørslængde | Vandret overrør | Overrør vandret
da seat_tube_mm: Sadelrør | Sadelrørslængde | Længde sadelrør
da head_tube_mm: Kronrør | Kronrørslængde | Længde kronrør
da chainstay_mm: Kædestræber | Kædestagslængde | Kædestag
da bb_drop_mm: Krankboks drop | BB drop | Krankdrop
da bb_height_mm: Krankhøjde | Krankbokshøjde
da wheelbase_mm: Akselafstand | Hjulafstand
da fork_length_mm: Gaffellængde | Længde forgaffel
da fork_offset_mm: Gaffeloffset | Offset gaffel
da trail_mm: Trail | Efterløb
da standover_mm: Skridthøjde stel | Ståhøjde | Standover
da rider_height_mm: Kropshøjde | Rytterens højde

ja size: サイズ | フレームサイズ |
ja stack_mm: スタック | スタックハイト
ja reach_mm: リーチ
ja head_angle_deg: ヘッドアングル | ヘッド角 | ヘッドチューブ角度 | ヘッドチューブアングル
ja seat_angle_deg: シートアングル | シート角 | シートチューブ角度 | シートチューブアングル
ja top_tube_effective_mm: トップチューブ長(水平) | 水平トップチューブ長 | トップチューブ(ホリゾンタル) | ホリゾンタルトップチューブ
ja seat_tube_mm: シートチューブ | シートチューブ長 | シートチューブ長(C-T)
ja head_tube_mm: ヘッドチューブ | ヘッドチューブ長
ja chainstay_mm: チェーンステー | チェーンステー長 | チェーンステイ長 | リアセンター
ja bb_drop_mm: BBドロップ | BB下がり | ハンガードロップ
ja bb_height_mm: BBハイト | BB高 | ハンガー高
ja wheelbase_mm: ホイールベース
ja front_centre_mm: フロントセンター
ja fork_length_mm: フォーク長 | フォーク肩下寸法
ja fork_offset_mm: フォークオフセット | オフセット
ja trail_mm: トレイル | トレール
ja standover_mm: スタンドオーバーハイト | スタンドオーバー
ja rider_height_mm: 適応身長 | 身長 | 推奨身長

machine size: Größe | Taille | Talla | Taglia | Size
machine stack_mm: Stapel | Stapelhöhe | Pile | Hauteur de pile | Pila | Altura de pila | Stos
machine reach_mm: Reichweite | Portée | Alcance | Portata | Bereik | Zasięg | Dosah
machine head_angle_deg: Kopfwinkel | Kopfrohrwinkel | Angle du tube de tête | Ángulo del tubo de la cabeza | Angolo della testa | Hoofdbuishoek
machine seat_angle_deg: Sitzrohrwinkel | Sitzwinkel | Angle du tube de siège | Ángulo del tubo de asiento | Angolo del tubo della sede | Zitbuishoek
machine top_tube_effective_mm: Effektives Oberrohr | Oberrohrlänge effektiv | Tube supérieur efficace | Tubo superior efectivo | Tubo superiore efficace
machine seat_tube_mm: Sitzrohrlänge | Longueur du tube de siège | Tube de siège | Longitud del tubo del asiento | Tubo della sede
machine head_tube_mm: Kopfrohr | Kopfrohrlänge | Tube de tête | Longueur du tube de tête | Tubo de la cabeza | Tubo della testa
machine chainstay_mm: Kettenstrebenlänge | Longueur de la chaîne de séjour | Longitud de la vaina | Lunghezza del fodero
machine bb_drop_mm: BB-Abfall | Goutte de BB | Caída BB | Caduta BB
machine wheelbase_mm: Radstand | Empattement | Distancia entre ejes | Interasse
machine fork_offset_mm: Gabelversatz | Rechen | Râteau de fourche | Rastrillo | Rastrello | Gabel-Rechen
machine trail_mm: Spur | Pfad | Sentier | Sendero | Sentiero | Traînée
machine standover_mm: Überstandshöhe | Stehhöhe | Hauteur d'enjambement | Altura de pie | Altezza in piedi
machine rider_height_mm: Fahrergröße | Taille du coureur | Altura del ciclista | Altezza del pilota
)";

} // namespace tripoise::test
