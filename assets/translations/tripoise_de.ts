<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de">
<context>
    <name>AboutSheet</name>
    <message>
        <source>Which size, which parts, for this rider. Under the MIT licence.</source>
        <translation>Welche Größe, welche Teile, für diesen Fahrer. Unter der MIT-Lizenz.</translation>
    </message>
    <message>
        <source>Made with Qt 6 (LGPL 3), Eigen (MPL 2.0) and nlohmann/json (MIT); words in DejaVu Sans (Bitstream Vera licence).</source>
        <translation>Gemacht mit Qt 6 (LGPL 3), Eigen (MPL 2.0) und nlohmann/json (MIT); Schrift DejaVu Sans (Lizenz Bitstream Vera).</translation>
    </message>
    <message>
        <source>What it gives are starting positions. The makers&apos; limits, local rules and health professionals have the last word.</source>
        <translation>Was es gibt, sind Anfangspositionen. Die Grenzen der Hersteller, örtliche Regeln und Arzt oder Therapeut haben das letzte Wort.</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Weglegen</translation>
    </message>
</context>
<context>
    <name>AbovePane</name>
    <message>
        <source>Drawing, %1</source>
        <translation>Zeichnung, %1</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Lenker</translation>
    </message>
    <message>
        <source>Right crank</source>
        <translation>Rechte Kurbel</translation>
    </message>
    <message>
        <source>Pull at bar, wheel or shoe, or use the arrow keys. Dark is what meets at the height of the toe; dashed, all the room the wheel takes.</source>
        <translation>An Lenker, Rad oder Schuh ziehen oder die Pfeiltasten nehmen. Dunkel ist, was sich auf Höhe der Zehen trifft; gestrichelt der ganze Raum, den das Rad braucht.</translation>
    </message>
    <message>
        <source>Where they come nearest</source>
        <translation>Wo sie sich am nächsten kommen</translation>
    </message>
</context>
<context>
    <name>BicycleSection</name>
    <message>
        <source>The bicycle</source>
        <translation>Das Fahrrad</translation>
    </message>
    <message>
        <source>Wheels of the bicycle</source>
        <translation>Räder des Fahrrads</translation>
    </message>
    <message>
        <source>Mudguards</source>
        <translation>Schutzbleche</translation>
    </message>
    <message>
        <source>kind of bar wanted</source>
        <translation>gewünschte Art des Lenkers</translation>
    </message>
    <message>
        <source>Flat bar</source>
        <translation>Flacher Lenker</translation>
    </message>
    <message>
        <source>Swept</source>
        <translation>Gebogen</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>Rennlenker</translation>
    </message>
    <message>
        <source>Crank, pedals, saddle</source>
        <translation>Kurbel, Pedale, Sattel</translation>
    </message>
    <message>
        <source>Sold under a safety standard</source>
        <translation>Nach einer Sicherheitsnorm verkauft</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
</context>
<context>
    <name>BoardControls</name>
    <message>
        <source>Drawn</source>
        <translation>Gezeichnet</translation>
    </message>
    <message>
        <source>Rider</source>
        <translation>Fahrer</translation>
    </message>
    <message>
        <source>Angles</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>Dimensions</source>
        <translation>Maße</translation>
    </message>
    <message>
        <source>Wheels</source>
        <translation>Räder</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>Size beside</source>
        <translation>Größe daneben</translation>
    </message>
    <message>
        <source>Ridden today</source>
        <translation>Heute gefahren</translation>
    </message>
    <message>
        <source>The two sizes stand</source>
        <translation>So stehen die beiden Größen</translation>
    </message>
    <message>
        <source>Both on one ground, rear wheels aligned</source>
        <translation>Beide auf einem Boden, Hinterräder übereinander</translation>
    </message>
    <message>
        <source>Both on the rider&apos;s contacts, bottom brackets together</source>
        <translation>Beide an den Kontaktpunkten, Tretlager übereinander</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>Further away</source>
        <translation>Weiter weg</translation>
    </message>
    <message>
        <source>All of it</source>
        <translation>Alles</translation>
    </message>
    <message>
        <source>Nearer</source>
        <translation>Näher</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Ansicht von</translation>
    </message>
    <message>
        <source>From the side</source>
        <translation>Von der Seite</translation>
    </message>
    <message>
        <source>From above: shoe and front wheel</source>
        <translation>Von oben: Schuh und Vorderrad</translation>
    </message>
</context>
<context>
    <name>BoardPane</name>
    <message>
        <source>Drawing, %1</source>
        <translation>Zeichnung, %1</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Zeichnung</translation>
    </message>
</context>
<context>
    <name>BoardReadout</name>
    <message>
        <source>Pull at the grips, the saddle or the spacers to try another set-up; arrow keys move what is chosen by 1 mm.</source>
        <translation>An Griffen, Sattel oder Spacern ziehen, um eine andere Einstellung zu versuchen; Pfeiltasten bewegen das Gewählte um 1 mm.</translation>
    </message>
    <message>
        <source>Back to advised</source>
        <translation>Zurück zur Empfehlung</translation>
    </message>
</context>
<context>
    <name>BoardWords</name>
    <message>
        <source>grips: %1 ahead of the bottom bracket, %2 above it</source>
        <translation>Griffe: %1 vor dem Tretlager, %2 darüber</translation>
    </message>
    <message>
        <source>saddle: %1 high, %2 behind the bottom bracket</source>
        <translation>Sattel: %1 hoch, %2 hinter dem Tretlager</translation>
    </message>
    <message>
        <source>spacers: %1</source>
        <translation>Spacer: %1</translation>
    </message>
    <message>
        <source>The bicycle stands here, with the rider on it, as soon as there is enough to decide on.</source>
        <translation>Hier steht das Fahrrad mit dem Fahrer darauf, sobald es genug zu entscheiden gibt.</translation>
    </message>
    <message>
        <source>knee</source>
        <translation>Knie</translation>
    </message>
    <message>
        <source>hip</source>
        <translation>Hüfte</translation>
    </message>
    <message>
        <source>over a turn of the crank: knee from %1 to %2, hip from %3 to %4</source>
        <translation>über eine Kurbelumdrehung: Knie von %1 bis %2, Hüfte von %3 bis %4</translation>
    </message>
    <message>
        <source>comfortable</source>
        <translation>bequem</translation>
    </message>
    <message>
        <source>quill raised %1</source>
        <translation>Schaft %1 ausgezogen</translation>
    </message>
</context>
<context>
    <name>BoxSection</name>
    <message>
        <source>Box of parts</source>
        <translation>Teilekasten</translation>
    </message>
    <message>
        <source>What is ticked may be used. The box is remembered from one rider to the next.</source>
        <translation>Was angehakt ist, darf verbaut werden. Der Kasten bleibt von einem Fahrer zum nächsten erhalten.</translation>
    </message>
    <message>
        <source>Stems</source>
        <translation>Vorbauten</translation>
    </message>
    <message>
        <source>Add a stem</source>
        <translation>Vorbau dazu</translation>
    </message>
    <message>
        <source>Bars</source>
        <translation>Lenker</translation>
    </message>
    <message>
        <source>Add a bar</source>
        <translation>Lenker dazu</translation>
    </message>
    <message>
        <source>Spacers</source>
        <translation>Spacer</translation>
    </message>
    <message>
        <source>Add a spacer</source>
        <translation>Spacer dazu</translation>
    </message>
    <message>
        <source>Cranks</source>
        <translation>Kurbeln</translation>
    </message>
    <message>
        <source>Add a crank</source>
        <translation>Kurbel dazu</translation>
    </message>
</context>
<context>
    <name>BriefPane</name>
    <message>
        <source>Brief</source>
        <translation>Auftrag</translation>
    </message>
</context>
<context>
    <name>Built</name>
    <message>
        <source>Saddle height</source>
        <translation>Sattelhöhe</translation>
    </message>
    <message>
        <source>Saddle nose</source>
        <translation>Sattelnase</translation>
    </message>
    <message>
        <source>Bar clamp, against saddle</source>
        <translation>Lenkerklemmung, zum Sattel</translation>
    </message>
    <message>
        <source>Nose to bar clamp</source>
        <translation>Nase zur Lenkerklemmung</translation>
    </message>
    <message>
        <source>Stem</source>
        <translation>Vorbau</translation>
    </message>
    <message>
        <source>Stem&apos;s angle</source>
        <translation>Winkel des Vorbaus</translation>
    </message>
    <message>
        <source>Spacers under the stem</source>
        <translation>Distanzringe unter dem Vorbau</translation>
    </message>
    <message>
        <source>Cranks</source>
        <translation>Kurbeln</translation>
    </message>
    <message>
        <source>%1: %2 instead of %3.</source>
        <comment>a place, as built, as advised</comment>
        <translation>%1: %2 statt %3.</translation>
    </message>
    <message>
        <source>%1: %2, as it should be.</source>
        <comment>a place, as built</comment>
        <translation>%1: %2, wie es sein soll.</translation>
    </message>
    <message>
        <source>The back rises %1 instead of %2.</source>
        <translation>Der Rücken steht bei %1 statt bei %2.</translation>
    </message>
    <message>
        <source>The knee is bent %1 instead of %2 at the lowest pedal.</source>
        <translation>Das Knie ist am tiefsten Pedal um %1 statt um %2 gebeugt.</translation>
    </message>
    <message>
        <source>As built: %1</source>
        <comment>a bicycle</comment>
        <translation>Wie gebaut: %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>model, size</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a bicycle, a day</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>as it should be</source>
        <translation>wie es sein soll</translation>
    </message>
    <message>
        <source>%1 off</source>
        <comment>readings</comment>
        <translation>%1 daneben</translation>
    </message>
    <message>
        <source>no longer among the sizes</source>
        <translation>nicht mehr unter den Größen</translation>
    </message>
    <message>
        <source>%1, as built</source>
        <comment>what was read off</comment>
        <translation>%1, wie gebaut</translation>
    </message>
    <message>
        <source>remarks on the finished bicycle</source>
        <translation>Bemerkungen zum fertigen Rad</translation>
    </message>
    <message>
        <source>clearing what was read off the finished bicycle</source>
        <translation>Leeren der Ablesungen am fertigen Rad</translation>
    </message>
</context>
<context>
    <name>BuiltSection</name>
    <message>
        <source>Handed over</source>
        <translation>Übergabe</translation>
    </message>
    <message>
        <source>Write the set-up sheet…</source>
        <translation>Einstellblatt schreiben …</translation>
    </message>
    <message>
        <source>As built: %1</source>
        <translation>Wie gebaut: %1</translation>
    </message>
    <message>
        <source>Nothing is decided yet that could be built.</source>
        <translation>Noch ist nichts entschieden, das gebaut werden könnte.</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Leeren</translation>
    </message>
    <message>
        <source>As if nothing had been read off</source>
        <translation>Als wäre nichts abgelesen worden</translation>
    </message>
</context>
<context>
    <name>ChoiceSection</name>
    <message>
        <source>Chosen</source>
        <translation>Gewählt</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>As advised</source>
        <translation>Wie empfohlen</translation>
    </message>
    <message>
        <source>As pulled</source>
        <translation>Wie gezogen</translation>
    </message>
    <message>
        <source>Why, in your own words</source>
        <translation>Warum, in eigenen Worten</translation>
    </message>
</context>
<context>
    <name>Columns</name>
    <message>
        <source>beside the drawing</source>
        <translation>neben der Zeichnung</translation>
    </message>
    <message>
        <source>what stands here</source>
        <translation>was hier steht</translation>
    </message>
    <message>
        <source>Brief</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Zeichnung</translation>
    </message>
</context>
<context>
    <name>CrankStrip</name>
    <message>
        <source>Crank</source>
        <translation>Kurbel</translation>
    </message>
    <message>
        <source>Pedal at the bottom of its turn</source>
        <translation>Pedal am tiefsten Punkt</translation>
    </message>
</context>
<context>
    <name>DecisionPane</name>
    <message>
        <source>Decision</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <source>Working it out…</source>
        <translation>Wird gerechnet …</translation>
    </message>
    <message>
        <source>Advised</source>
        <translation>Empfohlen</translation>
    </message>
    <message>
        <source>No decision yet</source>
        <translation>Noch keine Entscheidung</translation>
    </message>
    <message>
        <source>The decision stands here as soon as it can be made.</source>
        <translation>Hier steht die Entscheidung, sobald sie getroffen werden kann.</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>Gezeigt</translation>
    </message>
    <message>
        <source>Beside it</source>
        <translation>Daneben</translation>
    </message>
    <message>
        <source>For and against</source>
        <translation>Für und Wider</translation>
    </message>
    <message>
        <source>Set it up</source>
        <translation>Einstellmaße</translation>
    </message>
    <message>
        <source>One frame, two kinds of riding</source>
        <translation>Ein Rahmen, zwei Einsätze</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>What every advice is given under</source>
        <translation>Unter denen jeder Rat steht</translation>
    </message>
    <message>
        <source>Copy the decision as text</source>
        <translation>Als Text kopieren</translation>
    </message>
    <message>
        <source>Ctrl+C in this column</source>
        <translation>Strg+C in dieser Spalte</translation>
    </message>
    <message>
        <source>How it rides</source>
        <translation>Wie es sich fährt</translation>
    </message>
    <message>
        <source>Every consideration, and how much it counts</source>
        <translation>Alle Gesichtspunkte, und wie viel sie zählen</translation>
    </message>
    <message>
        <source>To see the difference</source>
        <translation>Den Unterschied sehen</translation>
    </message>
    <message>
        <source>Toe room, steadiness, weight on the wheels</source>
        <translation>Zehenfreiheit, Stabilität, Last auf den Rädern</translation>
    </message>
    <message>
        <source>Look at these as well</source>
        <translation>Auch dies ansehen</translation>
    </message>
    <message>
        <source>Cranks, published rules, the frame asked for, sources</source>
        <translation>Kurbeln, veröffentlichte Regeln, der gesuchte Rahmen, Quellen</translation>
    </message>
    <message>
        <source>Other cautions</source>
        <translation>Weitere Vorbehalte</translation>
    </message>
</context>
<context>
    <name>DeleteSheet</name>
    <message>
        <source>Delete “%1” and all that is kept of this rider?</source>
        <translation>„%1“ löschen, mit allem, was von diesem Fahrer aufgehoben ist?</translation>
    </message>
    <message>
        <source>This cannot be undone. What others have copied, and backups, stay as they are.</source>
        <translation>Das lässt sich nicht rückgängig machen. Was andere kopiert haben und Datensicherungen bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
</context>
<context>
    <name>Drawing</name>
    <message>
        <source>hands on the grips</source>
        <translation>Hände an den Griffen</translation>
    </message>
    <message>
        <source>hands on the hoods</source>
        <translation>Hände an den Bremsgriffen</translation>
    </message>
    <message>
        <source>hands on the tops</source>
        <translation>Hände am Oberlenker</translation>
    </message>
    <message>
        <source>hands in the drops</source>
        <translation>Hände am Unterlenker</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>model and size of a frame</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>elbow</source>
        <translation>Ellbogen</translation>
    </message>
    <message>
        <source>knee</source>
        <translation>Knie</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>joint and its angle</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 at the bottom</source>
        <translation>%1 am tiefsten Punkt</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation>%1°</translation>
    </message>
    <message>
        <source>bar %1 higher</source>
        <translation>Lenker %1 höher</translation>
    </message>
    <message>
        <source>bar %1 lower</source>
        <translation>Lenker %1 tiefer</translation>
    </message>
    <message>
        <source>bar %1 further away</source>
        <translation>Lenker %1 weiter weg</translation>
    </message>
    <message>
        <source>stem %1 longer</source>
        <translation>Vorbau %1 länger</translation>
    </message>
    <message>
        <source>stem %1 shorter</source>
        <translation>Vorbau %1 kürzer</translation>
    </message>
    <message>
        <source>head tube %1 higher</source>
        <translation>Steuerrohr %1 höher</translation>
    </message>
    <message>
        <source>head tube %1 lower</source>
        <translation>Steuerrohr %1 tiefer</translation>
    </message>
    <message>
        <source>top tube %1 higher</source>
        <translation>Oberrohr %1 höher</translation>
    </message>
    <message>
        <source>top tube %1 lower</source>
        <translation>Oberrohr %1 tiefer</translation>
    </message>
    <message>
        <source>front wheel %1 further</source>
        <translation>Vorderrad %1 weiter</translation>
    </message>
    <message>
        <source>saddle %1 higher</source>
        <translation>Sattel %1 höher</translation>
    </message>
    <message>
        <source>saddle %1 lower</source>
        <translation>Sattel %1 tiefer</translation>
    </message>
    <message>
        <source>saddle %1 further back</source>
        <translation>Sattel %1 weiter hinten</translation>
    </message>
    <message>
        <source>saddle %1 further forward</source>
        <translation>Sattel %1 weiter vorn</translation>
    </message>
    <message>
        <source>crank %1 longer</source>
        <translation>Kurbel %1 länger</translation>
    </message>
    <message>
        <source>crank %1 shorter</source>
        <translation>Kurbel %1 kürzer</translation>
    </message>
    <message>
        <source>%1 against %2</source>
        <translation>%1 gegenüber %2</translation>
    </message>
    <message>
        <source>%1, side view to scale</source>
        <translation>%1, Seitenansicht im Maßstab</translation>
    </message>
    <message>
        <source>Side view to scale</source>
        <translation>Seitenansicht im Maßstab</translation>
    </message>
    <message>
        <source>saddle height</source>
        <translation>Sattelhöhe</translation>
    </message>
    <message>
        <source>setback</source>
        <translation>Sattelversatz</translation>
    </message>
    <message>
        <source>stem</source>
        <translation>Vorbau</translation>
    </message>
    <message>
        <source>spacers</source>
        <translation>Spacer</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>Lenker</translation>
    </message>
    <message>
        <source>crank</source>
        <translation>Kurbel</translation>
    </message>
    <message>
        <source>position: %1, %2</source>
        <translation>Haltung: %1, %2</translation>
    </message>
    <message>
        <source>shaded at a joint: its comfortable range</source>
        <translation>schattiert am Gelenk: sein bequemer Bereich</translation>
    </message>
    <message>
        <source>bar %1 nearer</source>
        <translation>Lenker %1 näher</translation>
    </message>
    <message>
        <source>saddle height %1</source>
        <translation>Sattelhöhe %1</translation>
    </message>
    <message>
        <source>setback %1</source>
        <translation>Sattelversatz %1</translation>
    </message>
    <message>
        <source>grip reach %1</source>
        <translation>Griffweite %1</translation>
    </message>
    <message>
        <source>grip height %1</source>
        <translation>Griffhöhe %1</translation>
    </message>
    <message>
        <source>stack %1</source>
        <translation>Stack %1</translation>
    </message>
    <message>
        <source>frame reach %1</source>
        <translation>Reach %1</translation>
    </message>
    <message>
        <source>front-centre %1</source>
        <translation>Front-Center %1</translation>
    </message>
    <message>
        <source>wheelbase %1</source>
        <translation>Radstand %1</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>ridden today</source>
        <translation>heute gefahren</translation>
    </message>
    <message>
        <source>%1 drawn whole, %2 as a dashed outline.</source>
        <translation>%1 ganz gezeichnet, %2 als gestrichelter Umriss.</translation>
    </message>
    <message>
        <source>%1 drawn whole.</source>
        <translation>%1 ganz gezeichnet.</translation>
    </message>
    <message>
        <source>%1 (comfortable %2)</source>
        <translation>%1 (bequem %2)</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>… and %1 more</source>
        <translation>… und %1 weitere</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 (chosen)</source>
        <comment>a size, by the builder</comment>
        <translation>%1 (gewählt)</translation>
    </message>
    <message>
        <source>back</source>
        <translation>Rücken</translation>
    </message>
    <message>
        <source>arms to back</source>
        <translation>Arme zum Rücken</translation>
    </message>
    <message>
        <source>%1 more spacers</source>
        <translation>%1 mehr Spacer</translation>
    </message>
    <message>
        <source>%1 fewer spacers</source>
        <translation>%1 weniger Spacer</translation>
    </message>
    <message>
        <source>front wheel %1 nearer</source>
        <translation>Vorderrad %1 näher</translation>
    </message>
    <message>
        <source>bar %1</source>
        <comment>19 mm below the saddle</comment>
        <translation>Lenker %1</translation>
    </message>
    <message>
        <source>nose %1</source>
        <comment>58 mm behind</comment>
        <translation>Nase %1</translation>
    </message>
    <message>
        <source>nose to clamp %1</source>
        <translation>Nase zur Klemmung %1</translation>
    </message>
    <message>
        <source>clamp %1</source>
        <comment>of the bar; 19 mm below the saddle</comment>
        <translation>Klemmung %1</translation>
    </message>
    <message>
        <source>clamp %1 ahead</source>
        <comment>of the bar</comment>
        <translation>Klemmung %1 davor</translation>
    </message>
    <message>
        <source>clamp %1 up</source>
        <comment>of the bar</comment>
        <translation>Klemmung %1 darüber</translation>
    </message>
    <message>
        <source>inside its range</source>
        <translation>in seinem Bereich</translation>
    </message>
    <message>
        <source>near the edge of its range</source>
        <translation>nahe am Rand seines Bereichs</translation>
    </message>
    <message>
        <source>outside its range</source>
        <translation>außerhalb seines Bereichs</translation>
    </message>
</context>
<context>
    <name>FileNames</name>
    <message>
        <source>fitting</source>
        <comment>name of a file</comment>
        <translation>anpassung</translation>
    </message>
</context>
<context>
    <name>FilePicker</name>
    <message>
        <source>Save the fitting</source>
        <translation>Die Anpassung speichern</translation>
    </message>
    <message>
        <source>Open a geometry table</source>
        <translation>Eine Geometrietabelle öffnen</translation>
    </message>
    <message>
        <source>Open a fitting, a frame file or a table</source>
        <translation>Eine Anpassung, eine Rahmendatei oder eine Tabelle öffnen</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Eine Ebene höher</translation>
    </message>
    <message>
        <source>files and folders</source>
        <translation>Dateien und Ordner</translation>
    </message>
    <message>
        <source>folder %1</source>
        <translation>Ordner %1</translation>
    </message>
    <message>
        <source>Name, or where to and name</source>
        <translation>Name, oder wohin und Name</translation>
    </message>
    <message>
        <source>Name, or where it is and name</source>
        <translation>Name, oder wo und Name</translation>
    </message>
    <message>
        <source>%1 is there already. What it holds is kept as an earlier version if you replace it.</source>
        <translation>%1 gibt es schon. Wird sie ersetzt, bleibt ihr Inhalt als frühere Fassung aufgehoben.</translation>
    </message>
    <message>
        <source>Replace</source>
        <translation>Ersetzen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Another name</source>
        <translation>Anderer Name</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Write the set-up sheet</source>
        <translation>Einstellblatt schreiben</translation>
    </message>
    <message>
        <source>%1 is there already.</source>
        <translation>%1 gibt es schon.</translation>
    </message>
    <message>
        <source>The folder of the fittings</source>
        <translation>Der Ordner der Anpassungen</translation>
    </message>
    <message>
        <source>Another folder, or where it is</source>
        <translation>Ein anderer Ordner, oder wo er liegt</translation>
    </message>
    <message>
        <source>Take this folder</source>
        <translation>Diesen Ordner nehmen</translation>
    </message>
</context>
<context>
    <name>FittingsSheet</name>
    <message>
        <source>Fittings</source>
        <translation>Anpassungen</translation>
    </message>
    <message>
        <source>Earlier versions of “%1”</source>
        <translation>Frühere Fassungen von „%1“</translation>
    </message>
    <message>
        <source>Another folder…</source>
        <translation>Anderer Ordner …</translation>
    </message>
    <message>
        <source>Search by rider, frame or date</source>
        <translation>Suche nach Fahrer, Rahmen oder Datum</translation>
    </message>
    <message>
        <source>fittings</source>
        <translation>Anpassungen</translation>
    </message>
    <message>
        <source>earlier versions</source>
        <translation>frühere Fassungen</translation>
    </message>
    <message>
        <source>The rider&apos;s name</source>
        <translation>Der Name des Fahrers</translation>
    </message>
    <message>
        <source>Rename</source>
        <translation>Umbenennen</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Duplizieren</translation>
    </message>
    <message>
        <source>Rename…</source>
        <translation>Umbenennen …</translation>
    </message>
    <message>
        <source>Earlier versions…</source>
        <translation>Frühere Fassungen …</translation>
    </message>
    <message>
        <source>Export…</source>
        <translation>Exportieren …</translation>
    </message>
    <message>
        <source>Delete…</source>
        <translation>Löschen …</translation>
    </message>
    <message>
        <source>Import…</source>
        <translation>Importieren …</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Weglegen</translation>
    </message>
    <message>
        <source>Back to the list</source>
        <translation>Zurück zur Liste</translation>
    </message>
</context>
<context>
    <name>Fold</name>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>folded</source>
        <translation>zugeklappt</translation>
    </message>
</context>
<context>
    <name>FrameRow</name>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>folded</source>
        <translation>zugeklappt</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>The rest of the table</source>
        <translation>Der Rest der Tabelle</translation>
    </message>
    <message>
        <source>Wheels</source>
        <translation>Laufräder</translation>
    </message>
    <message>
        <source>Headset and steerer</source>
        <translation>Steuersatz und Gabelschaft</translation>
    </message>
    <message>
        <source>Steerer made of</source>
        <translation>Gabelschaft aus</translation>
    </message>
    <message>
        <source>Steel</source>
        <translation>Stahl</translation>
    </message>
    <message>
        <source>Aluminium</source>
        <translation>Aluminium</translation>
    </message>
    <message>
        <source>Carbon</source>
        <translation>Carbon</translation>
    </message>
    <message>
        <source>Seat post</source>
        <translation>Sattelstütze</translation>
    </message>
    <message>
        <source>Weights and price</source>
        <translation>Gewichte und Preis</translation>
    </message>
    <message>
        <source>≈ follows from the other figures. ? is what is usual, until it is given.</source>
        <translation>≈ folgt aus den anderen Angaben. ? ist das Übliche, bis es angegeben ist.</translation>
    </message>
    <message>
        <source>Same again</source>
        <translation>Noch einmal</translation>
    </message>
    <message>
        <source>Another size with these figures</source>
        <translation>Eine weitere Größe mit diesen Maßen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Delete, on the size&apos;s line</source>
        <translation>Entf, auf der Zeile der Größe</translation>
    </message>
    <message>
        <source>Sold with</source>
        <translation>Verkauft mit</translation>
    </message>
</context>
<context>
    <name>FramesSection</name>
    <message>
        <source>Candidate sizes</source>
        <translation>Rahmengrößen zur Wahl</translation>
    </message>
    <message>
        <source>Add a size</source>
        <translation>Größe dazu</translation>
    </message>
    <message>
        <source>From a file…</source>
        <translation>Aus Datei …</translation>
    </message>
    <message>
        <source>From a table…</source>
        <translation>Aus einer Tabelle…</translation>
    </message>
    <message>
        <source>The maker&apos;s geometry table, copied off its page or out of a file (Ctrl+T)</source>
        <translation>Die Geometrietabelle des Herstellers, von seiner Seite kopiert oder aus einer Datei (Strg+T)</translation>
    </message>
    <message>
        <source>Frames kept…</source>
        <translation>Gemerkte Rahmen…</translation>
    </message>
    <message>
        <source>Frames read before (Ctrl+K)</source>
        <translation>Früher gelesene Rahmen (Strg+K)</translation>
    </message>
    <message>
        <source>A frame file or a table; it can be dropped on the window too</source>
        <translation>Eine Rahmendatei oder eine Tabelle; sie kann auch auf das Fenster gezogen werden</translation>
    </message>
    <message>
        <source>The last sizes again</source>
        <translation>Die letzten Größen wieder</translation>
    </message>
    <message>
        <source>Ctrl+Shift+K</source>
        <translation>Strg+Umschalt+K</translation>
    </message>
</context>
<context>
    <name>Header</name>
    <message>
        <source>Fitting</source>
        <translation>Anpassung</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Neu</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>Millimetres</source>
        <translation>Millimeter</translation>
    </message>
    <message>
        <source>Inches for the body and the hands</source>
        <translation>Zoll für Körper und Hände</translation>
    </message>
    <message>
        <source>Ink on paper</source>
        <translation>Tinte auf Papier</translation>
    </message>
    <message>
        <source>Chalk on slate</source>
        <translation>Kreide auf Schiefer</translation>
    </message>
    <message>
        <source>Larger letters</source>
        <translation>Größere Schrift</translation>
    </message>
    <message>
        <source>Smaller letters</source>
        <translation>Kleinere Schrift</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Wiederholen: %1</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Show the rider</source>
        <translation>Dem Fahrer zeigen</translation>
    </message>
    <message>
        <source>Delete this rider…</source>
        <translation>Diesen Fahrer löschen …</translation>
    </message>
    <message>
        <source>Set-up sheet…</source>
        <translation>Einstellblatt …</translation>
    </message>
    <message>
        <source>Sheets on A4</source>
        <translation>Blätter auf A4</translation>
    </message>
    <message>
        <source>Sheets on Letter</source>
        <translation>Blätter auf Letter</translation>
    </message>
    <message>
        <source>About Tripoise</source>
        <translation>Über Tripoise</translation>
    </message>
    <message>
        <source>Fittings…</source>
        <translation>Anpassungen …</translation>
    </message>
    <message>
        <source>Export…</source>
        <translation>Exportieren …</translation>
    </message>
</context>
<context>
    <name>KeysSheet</name>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Weglegen</translation>
    </message>
</context>
<context>
    <name>Leaf</name>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>folded</source>
        <translation>zugeklappt</translation>
    </message>
</context>
<context>
    <name>LedgerList</name>
    <message>
        <source>The longer a bar, the more speaks against.</source>
        <translation>Je länger ein Balken, desto mehr spricht dagegen.</translation>
    </message>
    <message>
        <source>For and against</source>
        <translation>Für und Wider</translation>
    </message>
    <message>
        <source>Weigh it otherwise</source>
        <translation>Anders gewichten</translation>
    </message>
    <message>
        <source>How much each of these counts</source>
        <translation>Wie viel jeder dieser Punkte zählt</translation>
    </message>
    <message>
        <source>Weights as usual</source>
        <translation>Übliche Gewichte</translation>
    </message>
    <message numerus="yes">
        <source>%n that decide nothing</source>
        <comment>lines of for and against</comment>
        <translation>
            <numerusform>%n Punkt entscheidet nichts</numerusform>
            <numerusform>%n Punkte entscheiden nichts</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LibrarySheet</name>
    <message>
        <source>Frames kept</source>
        <translation>Gemerkte Rahmen</translation>
    </message>
    <message>
        <source>None yet. A frame is kept when its geometry table is read.</source>
        <translation>Noch keine. Ein Rahmen wird gemerkt, wenn seine Geometrietabelle gelesen wird.</translation>
    </message>
    <message>
        <source>Keep %1 no longer</source>
        <translation>%1 nicht länger merken</translation>
    </message>
    <message>
        <source>From a table…</source>
        <translation>Aus einer Tabelle…</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Weglegen</translation>
    </message>
    <message>
        <source>Add all sizes</source>
        <translation>Alle Größen dazu</translation>
    </message>
    <message>
        <source>Add all sizes of %1</source>
        <translation>Alle Größen von %1 dazu</translation>
    </message>
</context>
<context>
    <name>MeaningMenu</name>
    <message>
        <source>What this column is</source>
        <translation>Was diese Spalte ist</translation>
    </message>
</context>
<context>
    <name>Notice</name>
    <message>
        <source>Put away</source>
        <translation>Weglegen</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>To the newest</source>
        <translation>Zur neuesten</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Duplizieren</translation>
    </message>
</context>
<context>
    <name>Opening</name>
    <message numerus="yes">
        <source>%1 (and %n more)</source>
        <translation>
            <numerusform>%1 (und %n weiteres)</numerusform>
            <numerusform>%1 (und %n weitere)</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 was not opened: it is too large to be a fitting.</source>
        <translation>%1 wurde nicht geöffnet: Die Datei ist zu groß für eine Anpassung.</translation>
    </message>
    <message>
        <source>%1 was not opened: %2.</source>
        <translation>%1 wurde nicht geöffnet: %2.</translation>
    </message>
    <message>
        <source>%1 was not opened: %2</source>
        <translation>%1 wurde nicht geöffnet: %2</translation>
    </message>
    <message>
        <source>The file is left as it is, and a copy is in %1.</source>
        <translation>Die Datei bleibt, wie sie ist; eine Kopie liegt in %1.</translation>
    </message>
    <message>
        <source>%1 was written by a newer Tripoise. It is shown as far as this one understands it, and is not written over.</source>
        <translation>%1 stammt aus einer neueren Fassung von Tripoise. Gezeigt wird, was diese davon versteht; die Datei wird nicht überschrieben.</translation>
    </message>
    <message>
        <source>%1 was not added: a fitting holds %2 sizes at most.</source>
        <translation>%1 wurde nicht dazugenommen: Eine Anpassung fasst höchstens %2 Größen.</translation>
    </message>
    <message numerus="yes">
        <source>%n size(s) from %1 added.</source>
        <translation>
            <numerusform>%n Größe aus %1 dazugenommen.</numerusform>
            <numerusform>%n Größen aus %1 dazugenommen.</numerusform>
        </translation>
    </message>
    <message>
        <source>The sizes in %1 are here already.</source>
        <translation>Die Größen aus %1 sind schon da.</translation>
    </message>
    <message>
        <source>%1 is gone from its folder. This is what was kept of it last; saving writes it again.</source>
        <translation>%1 ist nicht mehr in ihrem Ordner. Dies ist, was zuletzt davon aufgehoben wurde; Speichern schreibt sie neu.</translation>
    </message>
</context>
<context>
    <name>PartBench</name>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Kind of bar</source>
        <translation>Art des Lenkers</translation>
    </message>
    <message>
        <source>Flat</source>
        <translation>Gerade</translation>
    </message>
    <message>
        <source>Swept</source>
        <translation>Gekröpft</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>Rennlenker</translation>
    </message>
    <message>
        <source>Put in the box</source>
        <translation>In den Kasten</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Can be flipped</source>
        <translation>Lässt sich umdrehen</translation>
    </message>
</context>
<context>
    <name>PartsList</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Change (F2)</source>
        <translation>Ändern (F2)</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>%1 ändern</translation>
    </message>
    <message>
        <source>Out of the shop&apos;s box (Delete)</source>
        <translation>Aus dem Kasten der Werkstatt nehmen (Entf)</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Noch nichts</translation>
    </message>
    <message>
        <source>%1 is out of the box.</source>
        <translation>%1 ist aus dem Kasten.</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation>Zurücklegen</translation>
    </message>
    <message>
        <source>only</source>
        <translation>nur</translation>
    </message>
    <message>
        <source>This one alone, and all again (O)</source>
        <translation>Nur dieses, und wieder alle (O)</translation>
    </message>
    <message>
        <source>%1 alone</source>
        <translation>%1 allein</translation>
    </message>
</context>
<context>
    <name>QFile</name>
    <message>
        <source>not an ordinary file</source>
        <translation>keine gewöhnliche Datei</translation>
    </message>
    <message>
        <source>Is a directory</source>
        <translation>Ist ein Ordner</translation>
    </message>
</context>
<context>
    <name>QShortcut</name>
    <message>
        <source>Ctrl</source>
        <translation>Strg</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Umschalt</translation>
    </message>
</context>
<context>
    <name>RideSection</name>
    <message>
        <source>How it rides</source>
        <translation>Wie es sich fährt</translation>
    </message>
    <message>
        <source>Shoe and wheel from above</source>
        <translation>Schuh und Rad von oben</translation>
    </message>
    <message>
        <source>Turn bar and cranks, and see where they meet</source>
        <translation>Lenker und Kurbeln drehen und sehen, wo sie sich treffen</translation>
    </message>
    <message>
        <source>The figures behind it</source>
        <translation>Die Zahlen dahinter</translation>
    </message>
    <message>
        <source>Steering, clearances, loads</source>
        <translation>Lenkung, Abstände, Lasten</translation>
    </message>
</context>
<context>
    <name>RiderSection</name>
    <message>
        <source>Rider</source>
        <translation>Fahrer</translation>
    </message>
    <message>
        <source>name of the rider</source>
        <translation>Name des Fahrers</translation>
    </message>
    <message>
        <source>body statistics of</source>
        <translation>Körperstatistik</translation>
    </message>
    <message>
        <source>women</source>
        <translation>Frauen</translation>
    </message>
    <message>
        <source>what was not measured is inferred from women&apos;s bodies</source>
        <translation>Was nicht gemessen ist, wird aus Körpern von Frauen geschlossen</translation>
    </message>
    <message>
        <source>men</source>
        <translation>Männer</translation>
    </message>
    <message>
        <source>what was not measured is inferred from men&apos;s bodies</source>
        <translation>Was nicht gemessen ist, wird aus Körpern von Männern geschlossen</translation>
    </message>
    <message>
        <source>both</source>
        <translation>beide</translation>
    </message>
    <message>
        <source>not stated: inferred from both at equal weight, with more uncertainty</source>
        <translation>Ohne Angabe: aus beiden zu gleichen Teilen geschlossen, mit mehr Unsicherheit</translation>
    </message>
    <message>
        <source>how %1 was taken</source>
        <translation>%1: wie gemessen</translation>
    </message>
    <message>
        <source>once</source>
        <translation>einmal</translation>
    </message>
    <message>
        <source>twice</source>
        <translation>zweimal</translation>
    </message>
    <message>
        <source>guess</source>
        <translation>geschätzt</translation>
    </message>
    <message>
        <source>fewer measurements</source>
        <translation>weniger Maße</translation>
    </message>
    <message>
        <source>more measurements</source>
        <translation>mehr Maße</translation>
    </message>
    <message>
        <source>suppleness of the back</source>
        <translation>Beweglichkeit des Rückens</translation>
    </message>
    <message>
        <source>stiff</source>
        <translation>steif</translation>
    </message>
    <message>
        <source>a straight leg rises less than 60°, lying on the back</source>
        <translation>ein gestrecktes Bein hebt sich im Liegen um weniger als 60°</translation>
    </message>
    <message>
        <source>ordinary</source>
        <translation>üblich</translation>
    </message>
    <message>
        <source>60° to 80°</source>
        <translation>60° bis 80°</translation>
    </message>
    <message>
        <source>supple</source>
        <translation>beweglich</translation>
    </message>
    <message>
        <source>more than 80°</source>
        <translation>mehr als 80°</translation>
    </message>
    <message>
        <source>heel at the lowest pedal</source>
        <translation>Ferse bei tiefstem Pedal</translation>
    </message>
    <message>
        <source>low</source>
        <translation>tief</translation>
    </message>
    <message>
        <source>toe down</source>
        <translation>Spitze tief</translation>
    </message>
    <message>
        <source>notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>the second behind a semicolon: 842; 846</source>
        <translation>die zweite hinter einem Strichpunkt: 842; 846</translation>
    </message>
    <message>
        <source>by a question mark behind the number</source>
        <translation>durch ein Fragezeichen hinter der Zahl</translation>
    </message>
    <message>
        <source>Back, heel, shoes, notes</source>
        <translation>Rücken, Ferse, Schuhe, Notizen</translation>
    </message>
</context>
<context>
    <name>RiderView</name>
    <message>
        <source>For the rider</source>
        <translation>Für den Fahrer</translation>
    </message>
    <message>
        <source>Which bicycle</source>
        <translation>Welches Fahrrad</translation>
    </message>
    <message>
        <source>Back to the bench (Esc)</source>
        <translation>Zurück zur Werkbank (Esc)</translation>
    </message>
</context>
<context>
    <name>RiderWords</name>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Your bicycle today</source>
        <translation>Das Rad von heute</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>You on: %1. %2.</source>
        <translation>Auf dem Rad: %1. %2.</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>As we would set it up for you.</source>
        <translation>So würden wir es einstellen.</translation>
    </message>
    <message>
        <source>%1 higher</source>
        <translation>%1 höher</translation>
    </message>
    <message>
        <source>%1 lower</source>
        <translation>%1 tiefer</translation>
    </message>
    <message>
        <source>%1 further away</source>
        <translation>%1 weiter weg</translation>
    </message>
    <message>
        <source>%1 closer to you</source>
        <translation>%1 näher</translation>
    </message>
    <message>
        <source>Your hands are where they are on the %1.</source>
        <translation>Die Hände sind, wo sie auf Rahmen %1 sind.</translation>
    </message>
    <message>
        <source>Back and arms</source>
        <translation>Rücken und Arme</translation>
    </message>
    <message>
        <source>Knee</source>
        <translation>Knie</translation>
    </message>
    <message>
        <source>Bar and saddle</source>
        <translation>Lenker und Sattel</translation>
    </message>
    <message>
        <source>Your arms are almost locked.</source>
        <translation>Die Arme sind fast durchgestreckt.</translation>
    </message>
    <message>
        <source>More upright on the %1.</source>
        <translation>Auf Rahmen %1 aufrechter.</translation>
    </message>
    <message>
        <source>Lower on the %1.</source>
        <translation>Auf Rahmen %1 tiefer.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>two sentences</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>On the %1 as well.</source>
        <translation>Auf Rahmen %1 ebenso.</translation>
    </message>
    <message>
        <source>On the %1 they are not.</source>
        <translation>Auf Rahmen %1 nicht.</translation>
    </message>
    <message>
        <source>The bar is %1 below the saddle.</source>
        <translation>Der Lenker ist %1 unter dem Sattel.</translation>
    </message>
    <message>
        <source>The bar is level with the saddle.</source>
        <translation>Der Lenker ist auf Sattelhöhe.</translation>
    </message>
    <message>
        <source>The bar is %1 above the saddle.</source>
        <translation>Der Lenker ist %1 über dem Sattel.</translation>
    </message>
    <message>
        <source>The bar is %1 below the saddle, on the %2 as well.</source>
        <translation>Der Lenker ist %1 unter dem Sattel, auf Rahmen %2 ebenso.</translation>
    </message>
    <message>
        <source>The bar is level with the saddle, on the %2 as well.</source>
        <translation>Der Lenker ist auf Sattelhöhe, auf Rahmen %2 ebenso.</translation>
    </message>
    <message>
        <source>The bar is %1 above the saddle, on the %2 as well.</source>
        <translation>Der Lenker ist %1 über dem Sattel, auf Rahmen %2 ebenso.</translation>
    </message>
    <message>
        <source>The bar is %1 below the saddle, on the %2 %3.</source>
        <translation>Der Lenker ist %1 unter dem Sattel, auf Rahmen %2 %3.</translation>
    </message>
    <message>
        <source>The bar is %1 below the saddle, on the %2 level with it.</source>
        <translation>Der Lenker ist %1 unter dem Sattel, auf Rahmen %2 auf Sattelhöhe.</translation>
    </message>
    <message>
        <source>The bar is %1 below the saddle, on the %2 %3 above it.</source>
        <translation>Der Lenker ist %1 unter dem Sattel, auf Rahmen %2 %3 darüber.</translation>
    </message>
    <message>
        <source>The bar is level with the saddle, on the %2 %3 below it.</source>
        <translation>Der Lenker ist auf Sattelhöhe, auf Rahmen %2 %3 darunter.</translation>
    </message>
    <message>
        <source>The bar is level with the saddle, on the %2 %3 above it.</source>
        <translation>Der Lenker ist auf Sattelhöhe, auf Rahmen %2 %3 darüber.</translation>
    </message>
    <message>
        <source>The bar is %1 above the saddle, on the %2 %3 below it.</source>
        <translation>Der Lenker ist %1 über dem Sattel, auf Rahmen %2 %3 darunter.</translation>
    </message>
    <message>
        <source>The bar is %1 above the saddle, on the %2 level with it.</source>
        <translation>Der Lenker ist %1 über dem Sattel, auf Rahmen %2 auf Sattelhöhe.</translation>
    </message>
    <message>
        <source>The bar is %1 above the saddle, on the %2 %3.</source>
        <translation>Der Lenker ist %1 über dem Sattel, auf Rahmen %2 %3.</translation>
    </message>
    <message>
        <source>Your hands are %1 than on the %2.</source>
        <translation>Die Hände sind %1 als auf Rahmen %2.</translation>
    </message>
    <message>
        <source>Knee and bar</source>
        <translation>Knie und Lenker</translation>
    </message>
    <message>
        <source>Your back is comfortable.</source>
        <translation>Bequem für den Rücken.</translation>
    </message>
    <message>
        <source>You lean lower than is comfortable.</source>
        <translation>Der Rücken ist tiefer, als bequem wäre.</translation>
    </message>
    <message>
        <source>You sit more upright than your riding asks for.</source>
        <translation>Der Rücken ist aufrechter, als es fürs Fahren nötig wäre.</translation>
    </message>
    <message>
        <source>Comfortable on the %1.</source>
        <translation>Auf Rahmen %1 bequem.</translation>
    </message>
    <message>
        <source>Too low on the %1.</source>
        <translation>Auf Rahmen %1 zu tief.</translation>
    </message>
    <message>
        <source>Too upright on the %1.</source>
        <translation>Auf Rahmen %1 zu aufrecht.</translation>
    </message>
    <message>
        <source>Your knee bends as it should.</source>
        <translation>Das Knie beugt sich, wie es soll.</translation>
    </message>
    <message>
        <source>Your leg is stretched too far.</source>
        <translation>Das Bein ist zu weit gestreckt.</translation>
    </message>
    <message>
        <source>Your knee bends too much.</source>
        <translation>Das Knie ist zu stark gebeugt.</translation>
    </message>
    <message>
        <source>As it should on the %1.</source>
        <translation>Auf Rahmen %1, wie es soll.</translation>
    </message>
    <message>
        <source>Stretched too far on the %1.</source>
        <translation>Auf Rahmen %1 zu weit gestreckt.</translation>
    </message>
    <message>
        <source>Bent too much on the %1.</source>
        <translation>Auf Rahmen %1 zu stark gebeugt.</translation>
    </message>
    <message>
        <source>Your knee would touch the bar.</source>
        <translation>Das Knie würde den Lenker berühren.</translation>
    </message>
    <message>
        <source>On the %1 it has %2 of room.</source>
        <translation>Auf Rahmen %1 hat es %2 Platz.</translation>
    </message>
    <message>
        <source>Your knee has %1 of room to the bar.</source>
        <translation>Das Knie hat %1 Platz bis zum Lenker.</translation>
    </message>
    <message>
        <source>On the %1 it would touch it.</source>
        <translation>Auf Rahmen %1 würde es ihn berühren.</translation>
    </message>
    <message>
        <source>Your knee has %1 of room to the bar, on the %2 %3.</source>
        <translation>Das Knie hat %1 Platz bis zum Lenker, auf Rahmen %2 %3.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a size and a length on it</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Shoe and wheel</source>
        <translation>Schuh und Rad</translation>
    </message>
    <message>
        <source>In tight turns your shoe meets the front wheel.</source>
        <translation>In engen Kurven stößt der Schuh ans Vorderrad.</translation>
    </message>
    <message>
        <source>In tight turns your shoe clears the front wheel by %1.</source>
        <translation>In engen Kurven bleibt der Schuh %1 vom Vorderrad frei.</translation>
    </message>
    <message>
        <source>Your shoe passes beside the front wheel.</source>
        <translation>Der Schuh geht am Vorderrad vorbei.</translation>
    </message>
    <message>
        <source>On the %1 it clears it by %2.</source>
        <translation>Auf Rahmen %1 bleibt er %2 frei.</translation>
    </message>
    <message>
        <source>On the %1 they meet.</source>
        <translation>Auf Rahmen %1 stoßen sie aneinander.</translation>
    </message>
    <message>
        <source>On the %1 it passes beside it.</source>
        <translation>Auf Rahmen %1 geht er daran vorbei.</translation>
    </message>
    <message>
        <source>In tight turns your shoe only just clears the front wheel.</source>
        <translation>In engen Kurven geht der Schuh nur knapp am Vorderrad vorbei.</translation>
    </message>
    <message>
        <source>On the %1 it only just clears it.</source>
        <translation>Auf Rahmen %1 geht er nur knapp vorbei.</translation>
    </message>
    <message>
        <source>None of these fits you.</source>
        <translation>Keines davon passt Ihnen.</translation>
    </message>
    <message>
        <source>This one does not fit you.</source>
        <translation>Dieses passt Ihnen nicht.</translation>
    </message>
    <message>
        <source>The %1 fits you.</source>
        <comment>a size</comment>
        <translation>Rahmen %1 passt Ihnen.</translation>
    </message>
    <message>
        <source>Either fits you, the %1 and the %2.</source>
        <comment>two sizes</comment>
        <translation>Beide passen Ihnen, Rahmen %1 und Rahmen %2.</translation>
    </message>
    <message>
        <source>The %1 fits you best.</source>
        <comment>a size</comment>
        <translation>Rahmen %1 passt Ihnen am besten.</translation>
    </message>
    <message>
        <source>The %1 fits you better.</source>
        <comment>a size</comment>
        <translation>Rahmen %1 passt Ihnen besser.</translation>
    </message>
    <message>
        <source>Standing over it</source>
        <translation>Stand über dem Rad</translation>
    </message>
    <message>
        <source>The whole bicycle</source>
        <translation>Das ganze Rad</translation>
    </message>
    <message>
        <source>Chosen with you. Set up as just tried.</source>
        <translation>Gemeinsam gewählt. Eingestellt wie eben versucht.</translation>
    </message>
    <message>
        <source>Set up as just tried.</source>
        <translation>Eingestellt wie eben versucht.</translation>
    </message>
    <message>
        <source>Chosen with you, and set up as chosen.</source>
        <translation>Gemeinsam gewählt, und so eingestellt.</translation>
    </message>
    <message>
        <source>Chosen with you. As we would set it up for you.</source>
        <translation>Gemeinsam gewählt. So würden wir es einstellen.</translation>
    </message>
</context>
<context>
    <name>RidingSection</name>
    <message>
        <source>Riding</source>
        <translation>Einsatz</translation>
    </message>
    <message>
        <source>Ctrl+%1</source>
        <translation>Strg+%1</translation>
    </message>
    <message>
        <source>in traffic</source>
        <translation>im Verkehr</translation>
    </message>
    <message>
        <source>narrower bars count for more; toe room counts double</source>
        <translation>schmale Lenker zählen mehr; Fußfreiheit zählt doppelt</translation>
    </message>
    <message>
        <source>one toe</source>
        <translation>eine Fußspitze</translation>
    </message>
    <message>
        <source>toes</source>
        <translation>Fußspitzen</translation>
    </message>
    <message>
        <source>flat feet</source>
        <translation>ganze Füße</translation>
    </message>
    <message>
        <source>feet on the ground, seated</source>
        <translation>Füße am Boden, im Sitzen</translation>
    </message>
    <message>
        <source>saddle a little lower</source>
        <translation>Sattel etwas tiefer</translation>
    </message>
    <message>
        <source>saddle lower</source>
        <translation>Sattel tiefer</translation>
    </message>
    <message>
        <source>About the riding</source>
        <translation>Zum Fahren</translation>
    </message>
    <message>
        <source>clipless or straps</source>
        <translation>Klickpedale oder Riemen</translation>
    </message>
    <message>
        <source>belly or thighs in the way</source>
        <translation>Bauch oder Schenkel im Weg</translation>
    </message>
    <message>
        <source>the hands come up and a shorter crank is tried</source>
        <translation>die Hände kommen höher, und eine kürzere Kurbel wird versucht</translation>
    </message>
    <message>
        <source>luggage</source>
        <translation>Gepäck</translation>
    </message>
    <message>
        <source>feet on the ground</source>
        <translation>Füße auf dem Boden</translation>
    </message>
    <message>
        <source>something hurts</source>
        <translation>etwas schmerzt</translation>
    </message>
    <message>
        <source>what bothers</source>
        <translation>was stört</translation>
    </message>
</context>
<context>
    <name>Saving</name>
    <message>
        <source>%1 is there already and was not replaced.</source>
        <translation>%1 gibt es schon und wurde nicht ersetzt.</translation>
    </message>
    <message>
        <source>%1 was not saved: a copy of what stands there cannot be kept (%2). Everything is still here; save it under another name.</source>
        <translation>%1 wurde nicht gespeichert: Von dem, was dort steht, lässt sich keine Kopie aufheben (%2). Alles ist noch da; bitte unter anderem Namen speichern.</translation>
    </message>
    <message>
        <source>%1 was not saved: %2. Everything is still here; save it under another name.</source>
        <translation>%1 wurde nicht gespeichert: %2. Alles ist noch da; bitte unter anderem Namen speichern.</translation>
    </message>
    <message>
        <source>%1 was saved, but it is not sure that it has reached the disk (%2). Save it in another place too.</source>
        <translation>%1 wurde gespeichert, aber es ist nicht sicher, dass alles auf der Platte angekommen ist (%2). Bitte auch an einem anderen Ort speichern.</translation>
    </message>
    <message>
        <source>%1 was saved, but it cannot be opened again as it is: %2</source>
        <translation>%1 wurde gespeichert, lässt sich so aber nicht wieder öffnen: %2</translation>
    </message>
    <message>
        <source>Saved. What %1 held before is kept in %2.</source>
        <translation>Gespeichert. Was vorher in %1 stand, liegt in %2.</translation>
    </message>
    <message>
        <source>Saved. Another program had changed %1 meanwhile; what it wrote is kept in %2.</source>
        <translation>Gespeichert. Ein anderes Programm hatte %1 inzwischen geändert; dessen Fassung liegt in %2.</translation>
    </message>
    <message>
        <source>Saved as a new file: %1 was one file under several names, and the others keep what it held.</source>
        <translation>Als neue Datei gespeichert: %1 war eine Datei unter mehreren Namen, und unter den anderen bleibt der alte Inhalt.</translation>
    </message>
    <message>
        <source>Others can read %1: its disk knows no permissions.</source>
        <translation>Andere können %1 lesen: Der Datenträger kennt keine Zugriffsrechte.</translation>
    </message>
    <message>
        <source>The shop&apos;s box of parts was not kept: %1.</source>
        <translation>Die Teilekiste der Werkstatt wurde nicht aufgehoben: %1.</translation>
    </message>
    <message>
        <source>Another window had changed the shop&apos;s box of parts; what it held is kept in %1.</source>
        <translation>Ein anderes Fenster hatte die Teilekiste der Werkstatt geändert; was darin stand, liegt in %1.</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Stem</source>
        <translation>Vorbau</translation>
    </message>
    <message>
        <source>worked out for the places above; take the nearest that is made</source>
        <translation>für die Plätze oben ausgerechnet; den nächsten nehmen, den es gibt</translation>
    </message>
    <message>
        <source>to order</source>
        <translation>zu bestellen</translation>
    </message>
    <message>
        <source>turned over, its marks upside down</source>
        <translation>umgedreht, seine Aufschrift steht kopf</translation>
    </message>
    <message>
        <source>the way up its marks are read</source>
        <translation>so, dass seine Aufschrift lesbar ist</translation>
    </message>
    <message>
        <source>Quill</source>
        <translation>Schaft</translation>
    </message>
    <message>
        <source>raised %1</source>
        <comment>a quill</comment>
        <translation>%1 herausgezogen</translation>
    </message>
    <message>
        <source>its mark stays inside the steerer</source>
        <translation>seine Marke bleibt im Gabelschaft</translation>
    </message>
    <message>
        <source>Spacers under the stem</source>
        <translation>Distanzringe unter dem Vorbau</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <comment>pieces: 10 + 5</comment>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>Steerer, crown to end</source>
        <translation>Gabelschaft, Krone bis Ende</translation>
    </message>
    <message>
        <source>leave it %1 mm longer until the second visit, under spacers on top of the stem</source>
        <translation>bis zum zweiten Besuch %1 mm länger lassen, unter Ringen über dem Vorbau</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Lenker</translation>
    </message>
    <message>
        <source>%1 wide; cut to %2 where its maker allows it</source>
        <translation>%1 breit; auf %2 kürzen, wo der Hersteller es erlaubt</translation>
    </message>
    <message>
        <source>%1 wide, not cut</source>
        <translation>%1 breit, nicht gekürzt</translation>
    </message>
    <message>
        <source>Post inside the frame</source>
        <translation>Stütze im Rahmen</translation>
    </message>
    <message>
        <source>post&apos;s mark wants %1, the frame %2: %3</source>
        <translation>die Marke der Stütze will %1, der Rahmen %2: %3</translation>
    </message>
    <message>
        <source>%1 too little</source>
        <comment>of a post</comment>
        <translation>%1 zu wenig</translation>
    </message>
    <message>
        <source>%1 to spare</source>
        <comment>of a post</comment>
        <translation>%1 übrig</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>model, size</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>for %1</source>
        <comment>a rider</comment>
        <translation>für %1</translation>
    </message>
    <message>
        <source>Set-up sheet for the workshop</source>
        <translation>Einstellblatt für die Werkstatt</translation>
    </message>
    <message>
        <source>For %1, as advised.</source>
        <comment>kinds of riding</comment>
        <translation>Für %1, wie empfohlen.</translation>
    </message>
    <message>
        <source>For %1, as the builder chose.</source>
        <comment>kinds of riding</comment>
        <translation>Für %1, wie in der Werkstatt gewählt.</translation>
    </message>
    <message>
        <source>For %1, as the builder chose: “%2”.</source>
        <comment>kinds of riding, why</comment>
        <translation>Für %1, wie in der Werkstatt gewählt: „%2“.</translation>
    </message>
    <message>
        <source>Set, in this order</source>
        <translation>Einstellen, in dieser Reihenfolge</translation>
    </message>
    <message>
        <source>Saddle tilt</source>
        <translation>Sattelneigung</translation>
    </message>
    <message>
        <source>level</source>
        <comment>a saddle&apos;s tilt</comment>
        <translation>waagrecht</translation>
    </message>
    <message>
        <source>spirit level over the whole saddle</source>
        <translation>Wasserwaage über den ganzen Sattel</translation>
    </message>
    <message>
        <source>Saddle height</source>
        <translation>Sattelhöhe</translation>
    </message>
    <message>
        <source>tape from the middle of the bottom bracket, straight to the top of the saddle where it is 80 mm wide</source>
        <translation>Band von der Mitte des Tretlagers gerade zur Oberseite des Sattels, wo er 80 mm breit ist</translation>
    </message>
    <message>
        <source>Saddle nose</source>
        <translation>Sattelnase</translation>
    </message>
    <message>
        <source>plumb line from the nose, level to the middle of the bottom bracket</source>
        <translation>Lot von der Nase, waagrecht zur Mitte des Tretlagers</translation>
    </message>
    <message>
        <source>Saddle setback</source>
        <translation>Sattelversatz</translation>
    </message>
    <message>
        <source>the same, at the point where it is 80 mm wide</source>
        <translation>dasselbe, wo der Sattel 80 mm breit ist</translation>
    </message>
    <message>
        <source>Bar clamp, against saddle</source>
        <translation>Lenkerklemmung, zum Sattel</translation>
    </message>
    <message>
        <source>straightedge level from the top of the saddle, plumb to the middle of the bar at the stem</source>
        <translation>Richtlatte waagrecht von der Oberseite des Sattels, lotrecht zur Mitte des Lenkers am Vorbau</translation>
    </message>
    <message>
        <source>Nose to bar clamp</source>
        <translation>Nase zur Lenkerklemmung</translation>
    </message>
    <message>
        <source>tape from the nose, straight to the middle of the bar at the stem</source>
        <translation>Band von der Nase gerade zur Mitte des Lenkers am Vorbau</translation>
    </message>
    <message>
        <source>Bar clamp, from bracket</source>
        <translation>Lenkerklemmung, vom Tretlager</translation>
    </message>
    <message>
        <source>%1 ahead, %2 up</source>
        <comment>of a bar</comment>
        <translation>%1 davor, %2 darüber</translation>
    </message>
    <message>
        <source>the same middle of the bar, level and plumb, where there is a jig</source>
        <translation>dieselbe Mitte des Lenkers, waagrecht und lotrecht, wo es eine Lehre gibt</translation>
    </message>
    <message>
        <source>Hands, against saddle</source>
        <translation>Hände, zum Sattel</translation>
    </message>
    <message>
        <source>the palm at its main place, to check by</source>
        <translation>die Handfläche am Hauptgriff, zur Kontrolle</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Montieren</translation>
    </message>
    <message>
        <source>Cranks</source>
        <translation>Kurbeln</translation>
    </message>
    <message>
        <source>Tyres</source>
        <translation>Reifen</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>a tyre&apos;s width, its rim&apos;s bead seat</comment>
        <translation>%1 auf %2</translation>
    </message>
    <message>
        <source>pressure, between the marks on tyre and rim: ……  ……</source>
        <translation>Druck, zwischen den Angaben auf Reifen und Felge: ……  ……</translation>
    </message>
    <message>
        <source>as built</source>
        <translation>wie gebaut</translation>
    </message>
    <message>
        <source>N·m, as marked</source>
        <translation>N·m, wie angegeben</translation>
    </message>
    <message>
        <source>Before it leaves</source>
        <translation>Bevor es hinausgeht</translation>
    </message>
    <message>
        <source>hoses and cables free at full lock, both ways</source>
        <translation>Leitungen und Züge frei bei vollem Einschlag, nach beiden Seiten</translation>
    </message>
    <message>
        <source>bar and levers clear of the top tube</source>
        <translation>Lenker und Hebel frei vom Oberrohr</translation>
    </message>
    <message>
        <source>levers within this hand&apos;s reach</source>
        <translation>Hebel in Reichweite dieser Hand</translation>
    </message>
    <message>
        <source>headset without play, turning freely</source>
        <translation>Steuersatz ohne Spiel und leichtgängig</translation>
    </message>
    <message>
        <source>every bolt at the torque marked on its part</source>
        <translation>jede Schraube mit dem Moment, das auf ihrem Teil steht</translation>
    </message>
    <message>
        <source>marks of post and stem inside</source>
        <translation>Marken von Stütze und Vorbau im Rohr</translation>
    </message>
    <message>
        <source>both brakes hold, from the saddle and standing</source>
        <translation>beide Bremsen halten, im Sitzen und im Stehen</translation>
    </message>
    <message>
        <source>shoe and front wheel, pedals level, bar turned, in the rider&apos;s own shoes</source>
        <translation>Schuh und Vorderrad, Pedale waagrecht, Lenker eingeschlagen, in den eigenen Schuhen</translation>
    </message>
    <message>
        <source>mudguards clear of tyre and shoe; stays that break away</source>
        <translation>Schutzbleche frei von Reifen und Schuh; Streben, die sich lösen</translation>
    </message>
    <message>
        <source>ridden, with the load it will carry</source>
        <translation>gefahren, mit der Last, die es tragen wird</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Marks and limits on parts and the makers&apos; instructions rule over this sheet, local regulations over both. After any change at the bar: hoses, levers, torque, brakes and a ride again.</source>
        <translation>Marken und Grenzen auf Teilen und die Anleitungen der Hersteller gehen diesem Blatt vor, örtliche Vorschriften beidem. Nach jeder Änderung am Lenker: Leitungen, Hebel, Momente, Bremsen und wieder eine Probefahrt.</translation>
    </message>
    <message>
        <source>Your bicycle, and how it is set up</source>
        <translation>Ihr Rad, und wie es eingestellt ist</translation>
    </message>
    <message>
        <source>It is close with %1: ride both, set up alike, before one is ordered.</source>
        <comment>the other size</comment>
        <translation>Es ist knapp, %1 kommt nah heran: fahren Sie beide, gleich eingestellt, bevor bestellt wird.</translation>
    </message>
    <message>
        <source>Little sets %1 and %2 apart for you: ride both, set up alike, before one is ordered.</source>
        <comment>two sizes</comment>
        <translation>Für Sie liegen %1 und %2 nah beisammen: fahren Sie beide, gleich eingestellt, bevor bestellt wird.</translation>
    </message>
    <message>
        <source>What you should feel</source>
        <translation>Was Sie spüren sollten</translation>
    </message>
    <message>
        <source>What to change first</source>
        <translation>Was zuerst geändert wird</translation>
    </message>
    <message>
        <source>Numb hands, a stiff neck or an aching lower back: the bar %1 higher, %2.</source>
        <comment>how far, by what</comment>
        <translation>Taube Hände, ein steifer Nacken oder ein schmerzendes Kreuz: den Lenker %1 höher, %2.</translation>
    </message>
    <message>
        <source>by a stem with more rise</source>
        <translation>durch einen Vorbau, der mehr steigt</translation>
    </message>
    <message>
        <source>by raising the quill</source>
        <translation>durch Herausziehen des Schafts</translation>
    </message>
    <message>
        <source>by spacers from above the stem to below it</source>
        <translation>durch Ringe von über dem Vorbau nach unten</translation>
    </message>
    <message>
        <source>Pain at the front of the knee: the saddle %1 higher. Behind the knee: as much lower.</source>
        <translation>Schmerz vorn am Knie: den Sattel %1 höher. Hinten am Knie: um so viel tiefer.</translation>
    </message>
    <message>
        <source>A sore seat: the saddle&apos;s tilt, a little at a time; then another saddle.</source>
        <translation>Ein wundes Gesäß: die Neigung des Sattels, immer nur wenig; dann ein anderer Sattel.</translation>
    </message>
    <message>
        <source>One thing at a time, then a week of riding. Come back after four weeks, sooner if anything hurts, and bring this sheet. Numbness that lasts after the ride, or comes back after one change, belongs to a health professional.</source>
        <translation>Immer nur eines, dann eine Woche fahren. Kommen Sie nach vier Wochen wieder, früher, wenn etwas schmerzt, und bringen Sie dieses Blatt mit. Taubheit, die nach der Fahrt bleibt oder nach einer Änderung wiederkommt, gehört zu Arzt oder Therapeut.</translation>
    </message>
    <message>
        <source>Mind</source>
        <translation>Achten Sie darauf</translation>
    </message>
    <message>
        <source>This is where to start, not a prescription: one change at a time, of %1 or less or one part.</source>
        <translation>Das ist ein Anfang, keine Vorschrift: immer nur eine Änderung, um höchstens %1 oder ein Teil.</translation>
    </message>
    <message>
        <source>What the makers of the parts allow rules over this sheet, local rules of the road over both.</source>
        <translation>Was die Hersteller der Teile erlauben, geht diesem Blatt vor, die örtlichen Verkehrsregeln gehen beidem vor.</translation>
    </message>
    <message>
        <source>At walking pace, with the bar turned, your shoe may touch the front wheel or its mudguard: keep that foot back or down.</source>
        <translation>Bei Schritttempo und eingeschlagenem Lenker kann Ihr Schuh das Vorderrad oder sein Schutzblech berühren: halten Sie diesen Fuß hinten oder unten.</translation>
    </message>
    <message>
        <source>Shown to me, and accepted</source>
        <translation>Mir gezeigt, und angenommen</translation>
    </message>
    <message>
        <source>My shoe may touch the front wheel or its mudguard when I turn at walking pace.</source>
        <translation>Mein Schuh kann das Vorderrad oder sein Schutzblech berühren, wenn ich bei Schritttempo wende.</translation>
    </message>
    <message>
        <source>Standing over the frame in my shoes I have %1 of room.</source>
        <translation>Über dem Rahmen stehend habe ich in meinen Schuhen %1 Platz.</translation>
    </message>
    <message>
        <source>Date, signature:</source>
        <translation>Datum, Unterschrift:</translation>
    </message>
    <message>
        <source>Set today, in this order</source>
        <translation>Heute einstellen, in dieser Reihenfolge</translation>
    </message>
    <message>
        <source>This is the first step of the way to a saddle height of %1 and a nose %2; the bar comes with it. The rest at later visits, when that has been ridden.</source>
        <comment>how high; 58 mm behind</comment>
        <translation>Das ist der erste Schritt auf dem Weg zu einer Sattelhöhe von %1 und einer Nase %2; der Lenker kommt mit. Der Rest bei späteren Besuchen, wenn das gefahren ist.</translation>
    </message>
    <message>
        <source>Standing over the frame in my shoes, it is %1 too high for me.</source>
        <translation>Über dem Rahmen stehend ist er mir in meinen Schuhen um %1 zu hoch.</translation>
    </message>
    <message>
        <source>Too stretched or too cramped: the next shorter or the next longer stem.</source>
        <translation>Zu gestreckt oder zu gedrängt: der nächstkürzere oder der nächstlängere Vorbau.</translation>
    </message>
    <message>
        <source>For %1. None of the sizes fits: this one comes nearest, to try and not to order.</source>
        <comment>kinds of riding</comment>
        <translation>Für %1. Keine der Größen passt: diese kommt am nächsten, zum Probieren und nicht zum Bestellen.</translation>
    </message>
    <message>
        <source>This one comes nearest: to try, and not to order.</source>
        <translation>Diese kommt am nächsten: zum Probieren, nicht zum Bestellen.</translation>
    </message>
</context>
<context>
    <name>SizeChips</name>
    <message>
        <source>Not yet</source>
        <translation>Noch offen</translation>
    </message>
</context>
<context>
    <name>TableGrid</name>
    <message>
        <source>What is understood of the table stands here, with every figure as it is given, as it follows from the others, or as it contradicts them.</source>
        <translation>Hier steht, was von der Tabelle verstanden ist, mit jeder Zahl, wie sie angegeben ist, wie sie aus den anderen folgt oder wie sie ihnen widerspricht.</translation>
    </message>
    <message>
        <source>Geometry table, %1</source>
        <translation>Geometrietabelle, %1</translation>
    </message>
    <message>
        <source>becomes a candidate</source>
        <translation>wird ein Kandidat</translation>
    </message>
    <message>
        <source>As printed · as understood</source>
        <translation>Wie gedruckt · wie verstanden</translation>
    </message>
    <message>
        <source>Say what this column is</source>
        <translation>Sagen, was diese Spalte ist</translation>
    </message>
    <message>
        <source>not understood</source>
        <translation>nicht verstanden</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>≈ follows from the other figures · ? assumed · framed: contradicts its size, a click takes what would agree · underlined: the fault could be here as well · dotted: out of the run of sizes</source>
        <translation>≈ folgt aus den anderen Zahlen · ? angenommen · umrahmt: widerspricht seiner Größe, ein Klick nimmt, was passen würde · unterstrichen: der Fehler könnte ebenso hier liegen · gepunktet: fällt aus der Reihe der Größen</translation>
    </message>
</context>
<context>
    <name>TableSheet</name>
    <message>
        <source>Geometry table</source>
        <translation>Geometrietabelle</translation>
    </message>
    <message>
        <source>Back (Esc); the text stays here</source>
        <translation>Zurück (Esc); der Text bleibt hier</translation>
    </message>
    <message>
        <source>what stands here</source>
        <translation>was hier steht</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>Keep the frame for other riders</source>
        <translation>Den Rahmen für andere Fahrer merken</translation>
    </message>
    <message>
        <source>It is kept under its model&apos;s name</source>
        <translation>Er wird unter dem Namen seines Modells gemerkt</translation>
    </message>
    <message>
        <source>which model</source>
        <translation>welches Modell</translation>
    </message>
</context>
<context>
    <name>TableTextPane</name>
    <message>
        <source>Paste</source>
        <translation>Einfügen</translation>
    </message>
    <message>
        <source>In place of what stands here</source>
        <translation>Anstelle dessen, was hier steht</translation>
    </message>
    <message>
        <source>From a file…</source>
        <translation>Aus einer Datei…</translation>
    </message>
    <message>
        <source>Away with this text</source>
        <translation>Diesen Text wegnehmen</translation>
    </message>
    <message>
        <source>The table&apos;s text</source>
        <translation>Der Text der Tabelle</translation>
    </message>
    <message>
        <source>Copy the geometry table off the maker&apos;s page, and paste it here. Sizes across or down, in any units, with headings in English, German, French, Italian, Spanish or Dutch.</source>
        <translation>Die Geometrietabelle von der Seite des Herstellers kopieren und hier einfügen. Größen nebeneinander oder untereinander, in beliebigen Einheiten, mit Überschriften auf Englisch, Deutsch, Französisch, Italienisch, Spanisch oder Niederländisch.</translation>
    </message>
    <message>
        <source>Only the beginning is shown.</source>
        <translation>Nur der Anfang ist zu sehen.</translation>
    </message>
</context>
<context>
    <name>TodaySection</name>
    <message>
        <source>Ridden today</source>
        <translation>Heute gefahren</translation>
    </message>
    <message>
        <source>Measured from</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Each contact from the bottom bracket</source>
        <translation>Jeder Kontaktpunkt ab dem Tretlager</translation>
    </message>
    <message>
        <source>From the saddle</source>
        <translation>Ab Sattel</translation>
    </message>
    <message>
        <source>With plumb line, straightedge and tape</source>
        <translation>Mit Lot, Richtlatte und Bandmaß</translation>
    </message>
    <message>
        <source>Its bar</source>
        <translation>Sein Lenker</translation>
    </message>
    <message>
        <source>Flat bar</source>
        <translation>Gerade</translation>
    </message>
    <message>
        <source>Swept</source>
        <translation>Gekröpft</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>Rennlenker</translation>
    </message>
    <message>
        <source>Ridden for long without complaint</source>
        <translation>Lange ohne Beschwerden gefahren</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Leeren</translation>
    </message>
    <message>
        <source>As if nothing had been measured</source>
        <translation>Als wäre nichts gemessen</translation>
    </message>
    <message>
        <source>its riding</source>
        <translation>gefahren für</translation>
    </message>
    <message>
        <source>for how long</source>
        <translation>wie lange</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>Wochen</translation>
    </message>
    <message>
        <source>a season</source>
        <translation>eine Saison</translation>
    </message>
    <message>
        <source>years</source>
        <translation>Jahre</translation>
    </message>
    <message>
        <source>this position</source>
        <translation>diese Position</translation>
    </message>
    <message>
        <source>keep</source>
        <translation>behalten</translation>
    </message>
    <message>
        <source>the new bicycle gets it, as far as parts allow</source>
        <translation>das neue Rad bekommt sie, soweit die Teile es erlauben</translation>
    </message>
    <message>
        <source>advise</source>
        <translation>beraten</translation>
    </message>
    <message>
        <source>it counts beside the body measures</source>
        <translation>sie zählt neben den Körpermaßen</translation>
    </message>
    <message>
        <source>if liked</source>
        <translation>wenn bequem</translation>
    </message>
    <message>
        <source>kept where it is comfortable and the riding alike</source>
        <translation>behalten, wo sie bequem ist und das Fahren gleich</translation>
    </message>
    <message>
        <source>From the bottom bracket</source>
        <translation>Vom Tretlager aus</translation>
    </message>
</context>
<context>
    <name>Traces</name>
    <message>
        <source>the file %1</source>
        <translation>die Datei %1</translation>
    </message>
    <message numerus="yes">
        <source>%n earlier version(s)</source>
        <translation>
            <numerusform>%n frühere Fassung</numerusform>
            <numerusform>%n frühere Fassungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n draft(s) that were not saved</source>
        <translation>
            <numerusform>%n Entwurf, der nicht gespeichert war</numerusform>
            <numerusform>%n Entwürfe, die nicht gespeichert waren</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n damaged file(s) set aside</source>
        <translation>
            <numerusform>%n beiseitegelegte beschädigte Datei</numerusform>
            <numerusform>%n beiseitegelegte beschädigte Dateien</numerusform>
        </translation>
    </message>
    <message>
        <source>The same rider is also in %1; that stays.</source>
        <translation>Derselbe Fahrer steht auch in %1; das bleibt.</translation>
    </message>
    <message>
        <source>The file has other names; under those it stays.</source>
        <translation>Die Datei hat noch andere Namen; unter diesen bleibt sie.</translation>
    </message>
    <message>
        <source>The rider is also open in another window; what is not saved there stays.</source>
        <translation>Der Fahrer ist auch in einem anderen Fenster geöffnet; was dort nicht gespeichert ist, bleibt.</translation>
    </message>
    <message>
        <source>a draft that was not saved</source>
        <translation>ein Entwurf, der nicht gespeichert war</translation>
    </message>
    <message>
        <source>Nothing was kept of “%1”.</source>
        <translation>Von „%1“ war nichts aufgehoben.</translation>
    </message>
    <message>
        <source>“%1” is deleted: %2.</source>
        <translation>„%1“ ist gelöscht: %2.</translation>
    </message>
    <message>
        <source>This could not be deleted: %1.</source>
        <translation>Dies ließ sich nicht löschen: %1.</translation>
    </message>
</context>
<context>
    <name>TrialWords</name>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>No stem reaches back that far.</source>
        <translation>So weit zurück reicht kein Vorbau.</translation>
    </message>
    <message>
        <source>A %1 stem would have to sit %2 lower than without any spacer.</source>
        <translation>Ein Vorbau von %1 müsste %2 tiefer sitzen als ganz ohne Spacer.</translation>
    </message>
    <message>
        <source>A %1 stem without spacers would put it there.</source>
        <translation>Ein Vorbau von %1 ohne Spacer brächte ihn dorthin.</translation>
    </message>
    <message>
        <source>A %1 stem on %2 of spacers would put it there.</source>
        <translation>Ein Vorbau von %1 auf %2 Spacern brächte ihn dorthin.</translation>
    </message>
    <message>
        <source>%1 without spacers</source>
        <translation>%1 ohne Spacer</translation>
    </message>
    <message>
        <source>%1 on %2 of spacers</source>
        <translation>%1 auf %2 Spacern</translation>
    </message>
    <message>
        <source>%1 with the bar %2</source>
        <translation>%1 mit dem Lenker %2</translation>
    </message>
    <message>
        <source>In the box: %1.</source>
        <translation>Im Kasten: %1.</translation>
    </message>
    <message>
        <source>Nearest in the box: %1, %2 off.</source>
        <translation>Am nächsten im Kasten: %1, %2 daneben.</translation>
    </message>
    <message>
        <source>Grips %1 ahead of the steering axis</source>
        <translation>Griffe %1 vor der Lenkachse</translation>
    </message>
    <message>
        <source>Grips %1 behind the steering axis</source>
        <translation>Griffe %1 hinter der Lenkachse</translation>
    </message>
    <message>
        <source>%1, as advised.</source>
        <translation>%1, wie empfohlen.</translation>
    </message>
    <message>
        <source>%1, %2 further forward than advised.</source>
        <translation>%1, %2 weiter vorn als empfohlen.</translation>
    </message>
    <message>
        <source>%1, %2 further back than advised.</source>
        <translation>%1, %2 weiter hinten als empfohlen.</translation>
    </message>
    <message>
        <source>saddle moved</source>
        <translation>Sattel bewegt</translation>
    </message>
    <message>
        <source>bar moved</source>
        <translation>Lenker bewegt</translation>
    </message>
    <message>
        <source>back to the advised set-up</source>
        <translation>zurück zur empfohlenen Einstellung</translation>
    </message>
    <message>
        <source>The front wheel carries %1, as advised.</source>
        <translation>Das Vorderrad trägt %1, wie empfohlen.</translation>
    </message>
    <message>
        <source>The front wheel carries %1, %2 more than advised.</source>
        <translation>Das Vorderrad trägt %1, %2 mehr als empfohlen.</translation>
    </message>
    <message>
        <source>The front wheel carries %1, %2 less than advised.</source>
        <translation>Das Vorderrad trägt %1, %2 weniger als empfohlen.</translation>
    </message>
    <message>
        <source>Chosen. %1</source>
        <comment>a set-up, how it was pulled about</comment>
        <translation>Gewählt. %1</translation>
    </message>
    <message>
        <source>A %1 stem would have to sit %2 lower than its quill goes.</source>
        <translation>Ein Vorbau von %1 müsste %2 tiefer sitzen, als sein Schaft geht.</translation>
    </message>
    <message>
        <source>A %1 stem with its quill raised %2 would put it there.</source>
        <translation>Ein Vorbau von %1 mit %2 ausgezogenem Schaft brächte ihn dorthin.</translation>
    </message>
    <message>
        <source>%1, its quill raised %2</source>
        <translation>%1, Schaft %2 ausgezogen</translation>
    </message>
    <message>
        <source>bar %1 further</source>
        <translation>Lenker %1 weiter</translation>
    </message>
    <message>
        <source>%1 further</source>
        <translation>%1 weiter</translation>
    </message>
    <message>
        <source>bar %1 nearer</source>
        <translation>Lenker %1 näher</translation>
    </message>
    <message>
        <source>%1 nearer</source>
        <translation>%1 näher</translation>
    </message>
    <message>
        <source>bar %1 higher</source>
        <translation>Lenker %1 höher</translation>
    </message>
    <message>
        <source>%1 higher</source>
        <translation>%1 höher</translation>
    </message>
    <message>
        <source>bar %1 lower</source>
        <translation>Lenker %1 tiefer</translation>
    </message>
    <message>
        <source>%1 lower</source>
        <translation>%1 tiefer</translation>
    </message>
    <message>
        <source>saddle %1 forward</source>
        <translation>Sattel %1 vor</translation>
    </message>
    <message>
        <source>%1 forward</source>
        <translation>%1 vor</translation>
    </message>
    <message>
        <source>saddle %1 back</source>
        <translation>Sattel %1 zurück</translation>
    </message>
    <message>
        <source>%1 back</source>
        <translation>%1 zurück</translation>
    </message>
    <message>
        <source>saddle %1 higher</source>
        <translation>Sattel %1 höher</translation>
    </message>
    <message>
        <source>saddle %1 lower</source>
        <translation>Sattel %1 tiefer</translation>
    </message>
    <message>
        <source>Knee to bar %1, as advised.</source>
        <translation>Knie zum Lenker %1, wie empfohlen.</translation>
    </message>
    <message>
        <source>Knee to bar %1, %2 more than advised.</source>
        <translation>Knie zum Lenker %1, %2 mehr als empfohlen.</translation>
    </message>
    <message>
        <source>Knee to bar %1, %2 less than advised.</source>
        <translation>Knie zum Lenker %1, %2 weniger als empfohlen.</translation>
    </message>
    <message>
        <source>Shoe and front wheel: %1, as advised.</source>
        <translation>Schuh und Vorderrad: %1, wie empfohlen.</translation>
    </message>
    <message>
        <source>The knee meets the bar.</source>
        <translation>Das Knie stößt an den Lenker.</translation>
    </message>
</context>
<context>
    <name>UnsavedSheet</name>
    <message>
        <source>“%1” has changes that were not saved.</source>
        <translation>„%1“ hat Änderungen, die nicht gespeichert sind.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Nicht speichern</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Duplizieren</translation>
    </message>
</context>
<context>
    <name>UsesSection</name>
    <message>
        <source>One kind of riding</source>
        <translation>Ein Einsatz</translation>
    </message>
    <message>
        <source>The other</source>
        <translation>Der andere</translation>
    </message>
</context>
<context>
    <name>Visits</name>
    <message>
        <source>saddle&apos;s tilt</source>
        <translation>Neigung des Sattels</translation>
    </message>
    <message>
        <source>another saddle</source>
        <translation>ein anderer Sattel</translation>
    </message>
    <message>
        <source>grips</source>
        <translation>Griffe</translation>
    </message>
    <message>
        <source>levers</source>
        <translation>Hebel</translation>
    </message>
    <message>
        <source>shoes</source>
        <translation>Schuhe</translation>
    </message>
    <message>
        <source>foot further back</source>
        <translation>Fuß weiter hinten</translation>
    </message>
    <message>
        <source>foot further forward</source>
        <translation>Fuß weiter vorn</translation>
    </message>
    <message>
        <source>shorter cranks</source>
        <translation>kürzere Kurbeln</translation>
    </message>
    <message>
        <source>headset, tyres and load looked at</source>
        <translation>Steuersatz, Reifen und Last angesehen</translation>
    </message>
    <message>
        <source>The bar %1 higher, by spacers or a stem with more rise.</source>
        <translation>Den Lenker %1 höher, durch Ringe oder einen Vorbau, der mehr steigt.</translation>
    </message>
    <message>
        <source>The saddle %1 higher.</source>
        <translation>Den Sattel %1 höher.</translation>
    </message>
    <message>
        <source>The saddle %1 lower.</source>
        <translation>Den Sattel %1 tiefer.</translation>
    </message>
    <message>
        <source>The saddle %1 further back.</source>
        <translation>Den Sattel %1 weiter nach hinten.</translation>
    </message>
    <message>
        <source>The saddle %1 further forward.</source>
        <translation>Den Sattel %1 weiter nach vorn.</translation>
    </message>
    <message>
        <source>The saddle&apos;s tilt: level over its whole length, then its nose down by a degree or two.</source>
        <translation>Die Neigung des Sattels: waagrecht über die ganze Länge, dann die Nase um ein oder zwei Grad tiefer.</translation>
    </message>
    <message>
        <source>Another saddle, of another width or shape.</source>
        <translation>Ein anderer Sattel, von anderer Breite oder Form.</translation>
    </message>
    <message>
        <source>Grips that spread the palm, or a bar of another width or sweep.</source>
        <translation>Griffe, die die Hand breiter stützen, oder ein Lenker von anderer Breite oder Kröpfung.</translation>
    </message>
    <message>
        <source>The levers&apos; slope and reach, wrist and forearm in line.</source>
        <translation>Neigung und Griffweite der Hebel, Handgelenk und Unterarm in einer Linie.</translation>
    </message>
    <message>
        <source>Shoes that are wider, or laced less tight.</source>
        <translation>Schuhe, die weiter oder weniger fest geschnürt sind.</translation>
    </message>
    <message>
        <source>The foot further back on the pedal.</source>
        <translation>Den Fuß weiter hinten auf das Pedal.</translation>
    </message>
    <message>
        <source>The foot further forward on the pedal.</source>
        <translation>Den Fuß weiter vorn auf das Pedal.</translation>
    </message>
    <message>
        <source>Shorter cranks, the saddle higher by as much.</source>
        <translation>Kürzere Kurbeln, den Sattel um so viel höher.</translation>
    </message>
    <message>
        <source>The headset&apos;s play, the tyres&apos; pressure, the load lower and further back.</source>
        <translation>Das Spiel des Steuersatzes, der Druck der Reifen, die Last tiefer und weiter hinten.</translation>
    </message>
    <message>
        <source>as it is taught, from memory</source>
        <translation>wie gelehrt wird, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>saddle %1 higher</source>
        <translation>Sattel %1 höher</translation>
    </message>
    <message>
        <source>saddle %1 lower</source>
        <translation>Sattel %1 tiefer</translation>
    </message>
    <message>
        <source>saddle %1 back</source>
        <translation>Sattel %1 zurück</translation>
    </message>
    <message>
        <source>saddle %1 forward</source>
        <translation>Sattel %1 vor</translation>
    </message>
    <message>
        <source>bar %1 higher</source>
        <translation>Lenker %1 höher</translation>
    </message>
    <message>
        <source>bar %1 lower</source>
        <translation>Lenker %1 tiefer</translation>
    </message>
    <message>
        <source>bar %1 nearer</source>
        <translation>Lenker %1 näher</translation>
    </message>
    <message>
        <source>bar %1 further</source>
        <translation>Lenker %1 weiter</translation>
    </message>
    <message>
        <source>nothing changed</source>
        <translation>nichts geändert</translation>
    </message>
    <message>
        <source>changed: %1</source>
        <comment>at a visit</comment>
        <translation>geändert: %1</translation>
    </message>
    <message>
        <source>Visit %1, %2</source>
        <comment>number, day</comment>
        <translation>Besuch %1, %2</translation>
    </message>
    <message>
        <source>Visit %1</source>
        <comment>number</comment>
        <translation>Besuch %1</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between complaints</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>One change at a visit. Pain or an injury: a health professional first.</source>
        <translation>Eine Änderung je Besuch. Schmerz oder Verletzung: zuerst zu Arzt oder Therapeut.</translation>
    </message>
    <message>
        <source>saddle, squares of %1</source>
        <translation>Sattel, Kästchen von %1</translation>
    </message>
    <message>
        <source>hands</source>
        <translation>Hände</translation>
    </message>
    <message>
        <source>a visit</source>
        <translation>ein Besuch</translation>
    </message>
    <message>
        <source>removing a visit</source>
        <translation>Entfernen eines Besuchs</translation>
    </message>
    <message>
        <source>what the rider says</source>
        <translation>was der Fahrer sagt</translation>
    </message>
    <message>
        <source>what was changed</source>
        <translation>was geändert wurde</translation>
    </message>
    <message>
        <source>remarks of a visit</source>
        <translation>Bemerkungen eines Besuchs</translation>
    </message>
    <message>
        <source>%1, still after a change: look at the frame&apos;s size and the parts again.</source>
        <comment>a complaint</comment>
        <translation>%1, auch nach einer Änderung: Rahmengröße und Teile noch einmal ansehen.</translation>
    </message>
    <message>
        <source>%1, still after a change: this belongs to a health professional before anything else is moved.</source>
        <comment>a complaint</comment>
        <translation>%1, auch nach einer Änderung: das gehört zu Arzt oder Therapeut, bevor sonst etwas bewegt wird.</translation>
    </message>
    <message>
        <source>First as on the sheet. %1</source>
        <comment>a reading of the finished bicycle</comment>
        <translation>Zuerst wie auf dem Blatt. %1</translation>
    </message>
    <message>
        <source>The next step of the way: saddle and bar %1 on, as on the sheet.</source>
        <translation>Der nächste Schritt auf dem Weg: Sattel und Lenker %1 weiter, wie auf dem Blatt.</translation>
    </message>
    <message>
        <source>The bar %1 nearer: turned in its clamp, or on the next shorter stem.</source>
        <translation>Den Lenker %1 näher: in der Klemmung gedreht oder auf dem nächstkürzeren Vorbau.</translation>
    </message>
    <message>
        <source>The bar %1 further: turned in its clamp, or on the next longer stem.</source>
        <translation>Den Lenker %1 weiter: in der Klemmung gedreht oder auf dem nächstlängeren Vorbau.</translation>
    </message>
</context>
<context>
    <name>VisitsSection</name>
    <message>
        <source>Visits</source>
        <translation>Besuche</translation>
    </message>
    <message>
        <source>The rider is here</source>
        <translation>Der Fahrer ist da</translation>
    </message>
    <message>
        <source>A new visit, today</source>
        <translation>Ein neuer Besuch, heute</translation>
    </message>
    <message>
        <source>Nothing is decided yet that could be built.</source>
        <translation>Noch ist nichts entschieden, das gebaut werden könnte.</translation>
    </message>
    <message>
        <source>what the rider says</source>
        <translation>was der Fahrer sagt</translation>
    </message>
    <message>
        <source>Also changed, in your own words</source>
        <translation>Auch geändert, in eigenen Worten</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Remove this visit</source>
        <translation>Diesen Besuch entfernen</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
</context>
<context>
    <name>WindowKeys</name>
    <message>
        <source>new fitting</source>
        <translation>neue Anpassung</translation>
    </message>
    <message>
        <source>save</source>
        <translation>speichern</translation>
    </message>
    <message>
        <source>undo</source>
        <translation>rückgängig</translation>
    </message>
    <message>
        <source>redo</source>
        <translation>wiederholen</translation>
    </message>
    <message>
        <source>to the brief</source>
        <translation>zum Auftrag</translation>
    </message>
    <message>
        <source>to the drawing</source>
        <translation>zur Zeichnung</translation>
    </message>
    <message>
        <source>to the decision</source>
        <translation>zur Entscheidung</translation>
    </message>
    <message>
        <source>show the rider, and back</source>
        <translation>dem Fahrer zeigen, und zurück</translation>
    </message>
    <message>
        <source>back to the advised set-up</source>
        <translation>zurück zur empfohlenen Einstellung</translation>
    </message>
    <message>
        <source>day or night</source>
        <translation>Tag oder Nacht</translation>
    </message>
    <message>
        <source>millimetres or inches</source>
        <translation>Millimeter oder Zoll</translation>
    </message>
    <message>
        <source>larger letters</source>
        <translation>größere Schrift</translation>
    </message>
    <message>
        <source>smaller letters</source>
        <translation>kleinere Schrift</translation>
    </message>
    <message>
        <source>this list</source>
        <translation>diese Liste</translation>
    </message>
    <message>
        <source>the usual mixes of riding</source>
        <translation>die üblichen Einsätze</translation>
    </message>
    <message>
        <source>on a share of riding: that many tens of per cent</source>
        <translation>auf einem Anteil: so viele Zehner Prozent</translation>
    </message>
    <message>
        <source>in a number: one step up or down</source>
        <translation>in einer Zahl: einen Schritt hinauf oder hinunter</translation>
    </message>
    <message>
        <source>on a handle of the drawing: move it 1 mm, with Shift 5 mm</source>
        <translation>auf einem Griff der Zeichnung: 1&#xa0;mm bewegen, mit Umschalt 5&#xa0;mm</translation>
    </message>
    <message>
        <source>in the drawing: nearer, further, all of it</source>
        <translation>in der Zeichnung: näher, weiter weg, alles</translation>
    </message>
    <message>
        <source>in a number: what stood there before</source>
        <translation>in einer Zahl: was vorher dort stand</translation>
    </message>
    <message>
        <source>Ctrl+1 … 6</source>
        <translation>Strg+1 … 6</translation>
    </message>
    <message>
        <source>sizes from a geometry table</source>
        <translation>Größen aus einer Geometrietabelle</translation>
    </message>
    <message>
        <source>sizes of a frame that was kept</source>
        <translation>Größen eines gemerkten Rahmens</translation>
    </message>
    <message>
        <source>write the set-up sheet</source>
        <translation>Einstellblatt schreiben</translation>
    </message>
    <message>
        <source>the sizes of the fitting before</source>
        <translation>die Größen der Anpassung davor</translation>
    </message>
    <message>
        <source>why not another size; again: the next one</source>
        <translation>warum keine andere Größe; nochmals: die nächste</translation>
    </message>
    <message>
        <source>what if the riding were another</source>
        <translation>was, wenn anders gefahren würde</translation>
    </message>
    <message>
        <source>what another choice costs</source>
        <translation>was eine andere Wahl kostet</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>in a number: on to the next one</source>
        <translation>in einer Zahl: weiter zur nächsten</translation>
    </message>
    <message>
        <source>in a body measure: a second reading, 842; 846</source>
        <translation>in einem Körpermaß: eine zweite Ablesung, 842; 846</translation>
    </message>
    <message>
        <source>behind a body measure: it is a guess</source>
        <translation>hinter einem Körpermaß: es ist geschätzt</translation>
    </message>
    <message>
        <source>the fittings: open, duplicate, import</source>
        <translation>die Anpassungen: öffnen, duplizieren, importieren</translation>
    </message>
    <message>
        <source>export a copy</source>
        <translation>eine Kopie exportieren</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Frame model</source>
        <translation>Rahmenmodell</translation>
    </message>
    <message>
        <source>Name of a size</source>
        <translation>Name einer Größe</translation>
    </message>
    <message>
        <source>Mudguards</source>
        <translation>Schutzbleche</translation>
    </message>
    <message>
        <source>Steerer material</source>
        <translation>Material des Gabelschafts</translation>
    </message>
    <message>
        <source>the size&apos;s name</source>
        <translation>Name der Größe</translation>
    </message>
    <message>
        <source>stack</source>
        <translation>Stack</translation>
    </message>
    <message>
        <source>frame reach</source>
        <translation>Reach</translation>
    </message>
    <message>
        <source>head angle</source>
        <translation>Lenkwinkel</translation>
    </message>
    <message>
        <source>seat angle or effective top tube</source>
        <translation>Sitzwinkel oder horizontales Oberrohr</translation>
    </message>
    <message>
        <source>%1 removed</source>
        <translation>%1 entfernt</translation>
    </message>
    <message>
        <source>%1 added</source>
        <translation>%1 dazugenommen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>size: what of it</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Stems in the box</source>
        <translation>Vorbauten im Kasten</translation>
    </message>
    <message>
        <source>Bars in the box</source>
        <translation>Lenker im Kasten</translation>
    </message>
    <message>
        <source>Spacers in the box</source>
        <translation>Spacer im Kasten</translation>
    </message>
    <message>
        <source>Cranks in the box</source>
        <translation>Kurbeln im Kasten</translation>
    </message>
    <message>
        <source>%1 ticked in</source>
        <translation>%1 ausgewählt</translation>
    </message>
    <message>
        <source>%1 ticked out</source>
        <translation>%1 abgewählt</translation>
    </message>
    <message>
        <source>%1 put back</source>
        <translation>%1 zurückgelegt</translation>
    </message>
    <message>
        <source>%1 wants a value</source>
        <translation>%1 braucht einen Wert</translation>
    </message>
    <message>
        <source>unknown option %1</source>
        <translation>unbekannte Option %1</translation>
    </message>
    <message>
        <source>which fitting?</source>
        <translation>welche Anpassung?</translation>
    </message>
    <message>
        <source>a folder</source>
        <translation>ein Ordner</translation>
    </message>
    <message>
        <source>unknown format %1</source>
        <translation>unbekanntes Format %1</translation>
    </message>
    <message>
        <source>-o wants a picture ending in .svg or .png</source>
        <translation>-o braucht ein Bild, das auf .svg oder .png endet</translation>
    </message>
    <message>
        <source>no display for the window; what to do without?</source>
        <translation>kein Bildschirm für das Fenster; was soll ohne geschehen?</translation>
    </message>
    <message>
        <source>unknown command %1</source>
        <translation>unbekannter Befehl %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>a consideration, how it counts</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>With weights of your own: %1.</source>
        <comment>how they count</comment>
        <translation>Mit eigenen Gewichten: %1.</translation>
    </message>
    <message>
        <source>weight of %1</source>
        <comment>an edit</comment>
        <translation>Gewicht: %1</translation>
    </message>
    <message>
        <source>weights as usual</source>
        <comment>an edit</comment>
        <translation>übliche Gewichte</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a line of a set-up</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 differs: %2 %3, %4 %5</source>
        <comment>a line of two set-ups: size, value</comment>
        <translation>%1 verschieden: %2 %3, %4 %5</translation>
    </message>
    <message>
        <source>%1: both %2</source>
        <comment>a line of two set-ups</comment>
        <translation>%1: beide %2</translation>
    </message>
    <message>
        <source>%1, rank %2</source>
        <comment>a size</comment>
        <translation>%1, Rang %2</translation>
    </message>
    <message>
        <source>Only one kind of riding is asked for. Give a second one a share, and the two set-ups stand here side by side.</source>
        <translation>Nur ein Einsatz ist gefragt. Bekommt ein zweiter einen Anteil, stehen hier beide Einstellungen nebeneinander.</translation>
    </message>
    <message>
        <source>thickness of the sole</source>
        <translation>Dicke der Sohle</translation>
    </message>
    <message>
        <source>length of the shoe, outside</source>
        <translation>Länge des Schuhs, außen</translation>
    </message>
    <message>
        <source>luggage in front</source>
        <translation>Gepäck vorn</translation>
    </message>
    <message>
        <source>luggage behind</source>
        <translation>Gepäck hinten</translation>
    </message>
    <message>
        <source>≈ %1 ± %2</source>
        <comment>inferred value and its uncertainty</comment>
        <translation>≈ %1 ± %2</translation>
    </message>
    <message>
        <source>inseam %1</source>
        <translation>Schrittlänge %1</translation>
    </message>
    <message numerus="yes">
        <source>%n more</source>
        <comment>measurements</comment>
        <translation>
            <numerusform>%n weiteres</numerusform>
            <numerusform>%n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>, </source>
        <comment>between items of a list</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>Set it up</source>
        <translation>Einstellmaße</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Stack</translation>
    </message>
    <message>
        <source>Bottom bracket up to the top of the head tube, level.</source>
        <translation>Vom Tretlager hinauf zur Oberkante des Steuerrohrs, lotrecht.</translation>
    </message>
    <message>
        <source>Frame reach</source>
        <translation>Reach</translation>
    </message>
    <message>
        <source>Bottom bracket forward to the top of the head tube, level.</source>
        <translation>Vom Tretlager nach vorn zur Oberkante des Steuerrohrs, waagerecht.</translation>
    </message>
    <message>
        <source>Head angle</source>
        <translation>Lenkwinkel</translation>
    </message>
    <message>
        <source>Of the steering axis, from the horizontal.</source>
        <translation>Der Lenkachse zur Waagerechten.</translation>
    </message>
    <message>
        <source>Seat angle</source>
        <translation>Sitzwinkel</translation>
    </message>
    <message>
        <source>From the horizontal, at the rider&apos;s saddle height.</source>
        <translation>Zur Waagerechten, auf Sattelhöhe des Fahrers.</translation>
    </message>
    <message>
        <source>Head tube</source>
        <translation>Steuerrohr</translation>
    </message>
    <message>
        <source>Length of the tube, without the headset.</source>
        <translation>Länge des Rohrs, ohne Steuersatz.</translation>
    </message>
    <message>
        <source>Top tube, effective</source>
        <translation>Oberrohr, horizontal</translation>
    </message>
    <message>
        <source>Level, from the top of the head tube to the seat axis.</source>
        <translation>Waagerecht, von der Oberkante des Steuerrohrs zur Sitzachse.</translation>
    </message>
    <message>
        <source>Seat tube</source>
        <translation>Sitzrohr</translation>
    </message>
    <message>
        <source>Middle of the bottom bracket to the top of the tube.</source>
        <translation>Mitte Tretlager bis Oberkante des Rohrs.</translation>
    </message>
    <message>
        <source>Chainstay</source>
        <translation>Kettenstrebe</translation>
    </message>
    <message>
        <source>Bottom bracket to rear axle; on an adjustable dropout, the shortest.</source>
        <translation>Tretlager bis Hinterachse; bei verstellbarem Ausfallende die kürzeste.</translation>
    </message>
    <message>
        <source>Chainstay, longest</source>
        <translation>Kettenstrebe, längste</translation>
    </message>
    <message>
        <source>Only where the dropout can be moved.</source>
        <translation>Nur wo sich das Ausfallende verstellen lässt.</translation>
    </message>
    <message>
        <source>Bottom-bracket drop</source>
        <translation>Tretlagerabsenkung</translation>
    </message>
    <message>
        <source>Bottom bracket below the axles; negative where above.</source>
        <translation>Tretlager unter den Achsen; negativ, wenn darüber.</translation>
    </message>
    <message>
        <source>Wheelbase</source>
        <translation>Radstand</translation>
    </message>
    <message>
        <source>Axle to axle.</source>
        <translation>Von Achse zu Achse.</translation>
    </message>
    <message>
        <source>Front-centre</source>
        <translation>Front-Center</translation>
    </message>
    <message>
        <source>Bottom bracket to front axle, straight.</source>
        <translation>Tretlager bis Vorderachse, gerade gemessen.</translation>
    </message>
    <message>
        <source>Fork length</source>
        <translation>Gabellänge</translation>
    </message>
    <message>
        <source>Crown seat to axle, straight.</source>
        <translation>Konussitz bis Achse, gerade gemessen.</translation>
    </message>
    <message>
        <source>Fork offset (rake)</source>
        <translation>Gabelvorbiegung</translation>
    </message>
    <message>
        <source>Axle ahead of the steering axis, square to it.</source>
        <translation>Achse vor der Lenkachse, rechtwinklig zu ihr.</translation>
    </message>
    <message>
        <source>Standover</source>
        <translation>Überstandshöhe</translation>
    </message>
    <message>
        <source>Ground to the top tube, half way along.</source>
        <translation>Boden bis Oberrohr, in der Mitte gemessen.</translation>
    </message>
    <message>
        <source>Rim size</source>
        <translation>Felgengröße</translation>
    </message>
    <message>
        <source>Bead seat, the second figure on the tyre: 622, 584 …</source>
        <translation>Felgenmaß, die zweite Zahl auf dem Reifen: 622, 584 …</translation>
    </message>
    <message>
        <source>Tyre</source>
        <translation>Reifen</translation>
    </message>
    <message>
        <source>Width, the first figure on the tyre.</source>
        <translation>Breite, die erste Zahl auf dem Reifen.</translation>
    </message>
    <message>
        <source>Widest tyre</source>
        <translation>Breitester Reifen</translation>
    </message>
    <message>
        <source>That the frame&apos;s maker allows.</source>
        <translation>Den der Rahmenbauer erlaubt.</translation>
    </message>
    <message>
        <source>Gap to the tyre</source>
        <translation>Abstand zum Reifen</translation>
    </message>
    <message>
        <source>Tyre to the outside of the mudguard.</source>
        <translation>Reifen bis Außenseite des Schutzblechs.</translation>
    </message>
    <message>
        <source>Mudguard width</source>
        <translation>Breite Schutzblech</translation>
    </message>
    <message>
        <source>Headset, above</source>
        <translation>Steuersatz, oben</translation>
    </message>
    <message>
        <source>From the head tube&apos;s top to where spacers or stem begin.</source>
        <translation>Von der Oberkante des Steuerrohrs bis zum Beginn von Spacern oder Vorbau.</translation>
    </message>
    <message>
        <source>Headset, below</source>
        <translation>Steuersatz, unten</translation>
    </message>
    <message>
        <source>From the head tube&apos;s lower end to the crown seat.</source>
        <translation>Von der Unterkante des Steuerrohrs bis zum Konussitz.</translation>
    </message>
    <message>
        <source>Steerer diameter</source>
        <translation>Schaftdurchmesser</translation>
    </message>
    <message>
        <source>Outside, where the stem clamps: 28.6, 25.4 …</source>
        <translation>Außen, wo der Vorbau klemmt: 28,6, 25,4 …</translation>
    </message>
    <message>
        <source>Steerer length</source>
        <translation>Schaftlänge</translation>
    </message>
    <message>
        <source>Crown seat to the end, as it is now.</source>
        <translation>Konussitz bis zum Ende, so wie er jetzt ist.</translation>
    </message>
    <message>
        <source>Most spacers</source>
        <translation>Meiste Spacer</translation>
    </message>
    <message>
        <source>Below the stem, that the fork&apos;s maker allows.</source>
        <translation>Unter dem Vorbau, die der Gabelhersteller erlaubt.</translation>
    </message>
    <message>
        <source>Post diameter</source>
        <translation>Ø Stütze</translation>
    </message>
    <message>
        <source>Post length</source>
        <translation>Stützenlänge</translation>
    </message>
    <message>
        <source>All of it, to the middle of the rail clamp.</source>
        <translation>Die ganze, bis zur Mitte der Sattelklemme.</translation>
    </message>
    <message>
        <source>Post offset</source>
        <translation>Stützenversatz</translation>
    </message>
    <message>
        <source>Rail clamp behind the post&apos;s axis.</source>
        <translation>Sattelklemme hinter der Achse der Stütze.</translation>
    </message>
    <message>
        <source>Insertion, post</source>
        <translation>Einstecktiefe, Stütze</translation>
    </message>
    <message>
        <source>Least, by the post&apos;s own mark.</source>
        <translation>Mindestens, nach der Marke auf der Stütze.</translation>
    </message>
    <message>
        <source>Insertion, frame</source>
        <translation>Einstecktiefe, Rahmen</translation>
    </message>
    <message>
        <source>Least, that the frame&apos;s maker wants.</source>
        <translation>Mindestens, nach dem Rahmenbauer.</translation>
    </message>
    <message>
        <source>Most weight in all</source>
        <translation>Gesamtgewicht, höchstens</translation>
    </message>
    <message>
        <source>Bicycle, rider and luggage, that the maker allows.</source>
        <translation>Fahrrad, Fahrer und Gepäck, das der Hersteller erlaubt.</translation>
    </message>
    <message>
        <source>Bicycle&apos;s weight</source>
        <translation>Gewicht des Rads</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>In any currency, the same for all sizes.</source>
        <translation>In einer beliebigen Währung, für alle Größen derselben.</translation>
    </message>
    <message>
        <source>Stem length</source>
        <translation>Vorbaulänge</translation>
    </message>
    <message>
        <source>Middle of the steerer to the middle of the bar, straight.</source>
        <translation>Mitte Gabelschaft bis Mitte Lenker, gerade gemessen.</translation>
    </message>
    <message>
        <source>Stem angle</source>
        <translation>Vorbauwinkel</translation>
    </message>
    <message>
        <source>Square to the steerer is 0, rise positive.</source>
        <translation>Rechtwinklig zum Schaft ist 0, nach oben positiv.</translation>
    </message>
    <message>
        <source>Bar clamp</source>
        <translation>Lenkerklemmung</translation>
    </message>
    <message>
        <source>Diameter: 31.8, 25.4 …</source>
        <translation>Durchmesser: 31,8, 25,4 …</translation>
    </message>
    <message>
        <source>Steerer clamp</source>
        <translation>Schaftklemmung</translation>
    </message>
    <message>
        <source>Diameter: 28.6, 25.4 …</source>
        <translation>Durchmesser: 28,6, 25,4 …</translation>
    </message>
    <message>
        <source>Clamp height</source>
        <translation>Klemmhöhe</translation>
    </message>
    <message>
        <source>Of steerer that the stem takes up.</source>
        <translation>So viel Schaft, wie der Vorbau einnimmt.</translation>
    </message>
    <message>
        <source>Bar width</source>
        <translation>Lenkerbreite</translation>
    </message>
    <message>
        <source>Flat and swept: end to end. Drop: middle to middle.</source>
        <translation>Gerade und gekröpft: Ende zu Ende. Rennlenker: Mitte zu Mitte.</translation>
    </message>
    <message>
        <source>Clamp diameter</source>
        <translation>Klemmdurchmesser</translation>
    </message>
    <message>
        <source>In the middle: 31.8, 25.4 …</source>
        <translation>In der Mitte: 31,8, 25,4 …</translation>
    </message>
    <message>
        <source>Backsweep</source>
        <translation>Rückbiegung</translation>
    </message>
    <message>
        <source>Bar rise</source>
        <translation>Lenkererhöhung</translation>
    </message>
    <message>
        <source>Grip above the clamp.</source>
        <translation>Griff über der Klemmung.</translation>
    </message>
    <message>
        <source>Grip behind clamp</source>
        <translation>Griff hinter Klemmung</translation>
    </message>
    <message>
        <source>Middle of the palm; instead of the backsweep.</source>
        <translation>Mitte der Handfläche; anstelle der Rückbiegung.</translation>
    </message>
    <message>
        <source>Bar reach</source>
        <translation>Lenker-Reach</translation>
    </message>
    <message>
        <source>Clamp forward to the middle of the bend.</source>
        <translation>Von der Klemmung nach vorn zur Mitte des Bogens.</translation>
    </message>
    <message>
        <source>Bar drop</source>
        <translation>Lenker-Drop</translation>
    </message>
    <message>
        <source>Tops down to the drops, middle to middle.</source>
        <translation>Vom Oberlenker hinunter zum Unterlenker, Mitte zu Mitte.</translation>
    </message>
    <message>
        <source>Hood, forward</source>
        <translation>Bremsgriff, vor</translation>
    </message>
    <message>
        <source>Middle of the palm, beyond the bar&apos;s reach.</source>
        <translation>Mitte der Handfläche, über den Reach des Lenkers hinaus.</translation>
    </message>
    <message>
        <source>Hood, up</source>
        <translation>Bremsgriff, hoch</translation>
    </message>
    <message>
        <source>Middle of the palm, above the clamp.</source>
        <translation>Mitte der Handfläche, über der Klemmung.</translation>
    </message>
    <message>
        <source>Spacer</source>
        <translation>Spacer</translation>
    </message>
    <message>
        <source>Crank</source>
        <translation>Kurbel</translation>
    </message>
    <message>
        <source>Middle of the bottom bracket to middle of the pedal.</source>
        <translation>Mitte Tretlager bis Mitte Pedal.</translation>
    </message>
    <message>
        <source>Crank fitted</source>
        <translation>Montierte Kurbel</translation>
    </message>
    <message>
        <source>On the bicycle already; others in the box would be a swap.</source>
        <translation>Schon am Fahrrad; andere im Kasten wären ein Tausch.</translation>
    </message>
    <message>
        <source>Saddle length</source>
        <translation>Sattellänge</translation>
    </message>
    <message>
        <source>Nose to tail.</source>
        <translation>Von der Nase bis zum Heck.</translation>
    </message>
    <message>
        <source>Saddle stack</source>
        <translation>Sattelbauhöhe</translation>
    </message>
    <message>
        <source>Rails up to the top where it is 80 mm wide.</source>
        <translation>Vom Gestell hinauf bis dort, wo der Sattel 80 mm breit ist.</translation>
    </message>
    <message>
        <source>Rail travel</source>
        <translation>Klemmweg</translation>
    </message>
    <message>
        <source>That the clamp can use, in all.</source>
        <translation>Den die Klemmung am Sattelgestell nutzen kann, insgesamt.</translation>
    </message>
    <message>
        <source>Pedal stack</source>
        <translation>Pedalbauhöhe</translation>
    </message>
    <message>
        <source>Spindle up to the tread.</source>
        <translation>Von der Achse hinauf zur Trittfläche.</translation>
    </message>
    <message>
        <source>Pedal to the side</source>
        <translation>Pedal zur Seite</translation>
    </message>
    <message>
        <source>Middle of the pedal from the bicycle&apos;s middle.</source>
        <translation>Mitte des Pedals ab der Mitte des Fahrrads.</translation>
    </message>
    <message>
        <source>Saddle height</source>
        <translation>Sattelhöhe</translation>
    </message>
    <message>
        <source>Bottom bracket to the saddle&apos;s top where it is 80 mm wide.</source>
        <translation>Tretlager bis Satteloberseite, wo sie 80 mm breit ist.</translation>
    </message>
    <message>
        <source>Saddle setback</source>
        <translation>Sattelversatz</translation>
    </message>
    <message>
        <source>That same point behind the bottom bracket, level.</source>
        <translation>Derselbe Punkt hinter dem Tretlager, waagerecht.</translation>
    </message>
    <message>
        <source>Grip reach</source>
        <translation>Griffweite</translation>
    </message>
    <message>
        <source>Bottom bracket forward to the middle of the palm.</source>
        <translation>Vom Tretlager nach vorn zur Mitte der Handfläche.</translation>
    </message>
    <message>
        <source>Grip height</source>
        <translation>Griffhöhe</translation>
    </message>
    <message>
        <source>Bottom bracket up to the middle of the palm.</source>
        <translation>Vom Tretlager hinauf zur Mitte der Handfläche.</translation>
    </message>
    <message>
        <source>Plumb line from the saddle&apos;s nose; negative when ahead.</source>
        <translation>Lot von der Sattelnase; negativ, wenn davor.</translation>
    </message>
    <message>
        <source>Bar below saddle</source>
        <translation>Lenker unter Sattel</translation>
    </message>
    <message>
        <source>Straightedge level on the saddle, down to the middle of the bar at the stem; negative when higher.</source>
        <translation>Richtlatte waagerecht auf dem Sattel, hinunter zur Lenkermitte am Vorbau; negativ, wenn höher.</translation>
    </message>
    <message>
        <source>Nose to bar</source>
        <translation>Nase bis Lenker</translation>
    </message>
    <message>
        <source>Tape from the saddle&apos;s nose to the middle of the bar.</source>
        <translation>Bandmaß von der Sattelnase zur Mitte des Lenkers.</translation>
    </message>
    <message>
        <source>Stamped on its inside.</source>
        <translation>Auf der Innenseite eingeprägt.</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>datum, plausible range</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 ?</source>
        <comment>assumed</comment>
        <translation>%1 ?</translation>
    </message>
    <message>
        <source>≈ %1</source>
        <comment>follows</comment>
        <translation>≈ %1</translation>
    </message>
    <message>
        <source>New size</source>
        <translation>Neue Größe</translation>
    </message>
    <message>
        <source>%1, new size</source>
        <translation>%1, neue Größe</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>model and size</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 / %2 mm, %3°</source>
        <comment>stack / reach, head angle</comment>
        <translation>%1 / %2 mm, %3°</translation>
    </message>
    <message>
        <source>No size yet</source>
        <translation>Noch keine Größe</translation>
    </message>
    <message>
        <source>Still needed: %1.</source>
        <translation>Noch nötig: %1.</translation>
    </message>
    <message>
        <source>There is a %1 already.</source>
        <translation>%1 gibt es schon.</translation>
    </message>
    <message>
        <source>The front-centre is as long as the wheelbase; one of the two is wrong.</source>
        <translation>Das Front-Center ist so lang wie der Radstand; eines von beiden stimmt nicht.</translation>
    </message>
    <message>
        <source>%1, %2°</source>
        <comment>stem: length, angle</comment>
        <translation>%1, %2°</translation>
    </message>
    <message>
        <source>%1 / %2</source>
        <comment>bar clamp / steerer</comment>
        <translation>%1 / %2</translation>
    </message>
    <message>
        <source>Fits none of the candidates: their steerers are %1 mm.</source>
        <translation>Passt zu keinem der Rahmen: Ihre Gabelschäfte haben %1 mm.</translation>
    </message>
    <message>
        <source>No bar of %1 in the box.</source>
        <translation>Kein Lenker mit %1 im Kasten.</translation>
    </message>
    <message>
        <source>No stem of %1 in the box.</source>
        <translation>Kein Vorbau mit %1 im Kasten.</translation>
    </message>
    <message>
        <source>stems %1, bars %2, spacers %3, cranks %4</source>
        <translation>Vorbauten %1, Lenker %2, Spacer %3, Kurbeln %4</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>number and unit</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>m</source>
        <comment>metres</comment>
        <translation>m</translation>
    </message>
    <message>
        <source>in</source>
        <comment>inches</comment>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>ft</source>
        <comment>feet</comment>
        <translation>Fuß</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>g</source>
        <comment>grams</comment>
        <translation>g</translation>
    </message>
    <message>
        <source>lb</source>
        <comment>pounds</comment>
        <translation>lb</translation>
    </message>
    <message>
        <source>oz</source>
        <comment>ounces</comment>
        <translation>oz</translation>
    </message>
    <message>
        <source>st</source>
        <comment>stones, the weight</comment>
        <translation>st</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>read as millimetres</source>
        <translation>als Millimeter gelesen</translation>
    </message>
    <message>
        <source>read as centimetres</source>
        <translation>als Zentimeter gelesen</translation>
    </message>
    <message>
        <source>read as metres</source>
        <translation>als Meter gelesen</translation>
    </message>
    <message>
        <source>read as inches</source>
        <translation>als Zoll gelesen</translation>
    </message>
    <message>
        <source>read as feet and inches</source>
        <translation>als Fuß und Zoll gelesen</translation>
    </message>
    <message>
        <source>read as kilograms</source>
        <translation>als Kilogramm gelesen</translation>
    </message>
    <message>
        <source>read as pounds</source>
        <translation>als englische Pfund gelesen</translation>
    </message>
    <message>
        <source>A number is needed here: %1.</source>
        <translation>Hier fehlt eine Zahl: %1.</translation>
    </message>
    <message>
        <source>“%1” is no unit for this. It takes %2.</source>
        <translation>„%1“ ist hier keine Einheit. Möglich: %2.</translation>
    </message>
    <message>
        <source>The second number is too large for its unit. It takes %1.</source>
        <translation>Die zweite Zahl ist zu groß für ihre Einheit. Möglich: %1.</translation>
    </message>
    <message>
        <source>That can be %1 or %2; write it with its unit.</source>
        <translation>Das kann %1 oder %2 sein; bitte mit Einheit.</translation>
    </message>
    <message>
        <source>%1 is less than can be; it takes %2.</source>
        <translation>%1 ist weniger, als sein kann; möglich: %2.</translation>
    </message>
    <message>
        <source>%1 is more than can be; it takes %2.</source>
        <translation>%1 ist mehr, als sein kann; möglich: %2.</translation>
    </message>
    <message>
        <source>%1 cannot be; was it in %2? It takes %3.</source>
        <translation>%1 kann nicht sein; war es in %2? Möglich: %3.</translation>
    </message>
    <message>
        <source>That is no number. It takes %1.</source>
        <translation>Das ist keine Zahl. Möglich: %1.</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>take care</source>
        <translation>Achtung</translation>
    </message>
    <message>
        <source>limit broken</source>
        <translation>Grenze verletzt</translation>
    </message>
    <message numerus="yes">
        <source>%n limit(s) broken</source>
        <translation>
            <numerusform>%n Grenze verletzt</numerusform>
            <numerusform>%n Grenzen verletzt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to look at</source>
        <translation>
            <numerusform>%n Punkt zu prüfen</numerusform>
            <numerusform>%n Punkte zu prüfen</numerusform>
        </translation>
    </message>
    <message>
        <source>Measure the %1 again: the readings run from %2 to %3.</source>
        <translation>Noch einmal messen: %1. Die Messungen reichen von %2 bis %3.</translation>
    </message>
    <message>
        <source>These measurements together are rare (%1): a slip of the tape, or a body that formulas know little of.</source>
        <translation>Diese Maße zusammen sind selten (%1): ein Messfehler, oder ein Körper, von dem Formeln wenig wissen.</translation>
    </message>
    <message>
        <source>The saddle ridden without complaint at %1 counts: body measures alone would say %2, so the target moves by %3.</source>
        <translation>Der Sattel, der mit %1 ohne Beschwerden gefahren wird, zählt: Die Körpermaße allein ergäben %2, das Ziel rückt also um %3.</translation>
    </message>
    <message>
        <source>Sex is not stated, so what was not measured is inferred for either, less sharply.</source>
        <translation>Ein Geschlecht ist nicht angegeben; was nicht gemessen ist, wird für beide geschlossen, weniger scharf.</translation>
    </message>
    <message>
        <source>The table does not give the %1; %2 is assumed.</source>
        <translation>In der Tabelle fehlt: %1. Angenommen ist %2.</translation>
    </message>
    <message>
        <source>The %1, %2, follows from the rest of the table.</source>
        <translation>%1: %2 folgt aus dem Rest der Tabelle.</translation>
    </message>
    <message>
        <source>Nothing in the box of parts fits this size&apos;s steerer and a bar.</source>
        <translation>Nichts im Teilekasten passt zum Gabelschaft dieser Größe und zu einem Lenker.</translation>
    </message>
    <message>
        <source>The seat post is too short by %1: at least %2 of it must stay inside.</source>
        <translation>Die Sattelstütze ist um %1 zu kurz: Mindestens %2 müssen im Rahmen bleiben.</translation>
    </message>
    <message>
        <source>The saddle cannot go low enough: with the seat post all the way in it is still %1 too high.</source>
        <translation>Der Sattel kommt nicht tief genug: Auch mit ganz versenkter Stütze ist er noch %1 zu hoch.</translation>
    </message>
    <message>
        <source>%1 of spacers is more than the %2 allowed.</source>
        <translation>%1 Spacer sind mehr als die erlaubten %2.</translation>
    </message>
    <message>
        <source>The steerer is too short: this set-up needs %1 of it, and it is %2 long.</source>
        <translation>Der Gabelschaft ist zu kurz: Diese Einstellung braucht %1 davon, er ist %2 lang.</translation>
    </message>
    <message>
        <source>A %1 tyre is wider than the %2 the frame allows.</source>
        <translation>Ein Reifen von %1 ist breiter als die %2, die der Rahmen erlaubt.</translation>
    </message>
    <message>
        <source>Rider, bicycle and luggage weigh %1; the frame allows %2.</source>
        <translation>Fahrer, Rad und Gepäck wiegen %1; der Rahmen erlaubt %2.</translation>
    </message>
    <message>
        <source>The top tube is %1 too high to stand over.</source>
        <translation>Das Oberrohr ist %1 zu hoch, um darüber zu stehen.</translation>
    </message>
    <message>
        <source>The knee asks for %1 of saddle setback; rails and post reach %2.</source>
        <translation>Das Knie verlangt %1 Sattelversatz; Sattelgestell und Stütze reichen bis %2.</translation>
    </message>
    <message>
        <source>A %1 stem is outside the %2 mm usual for %3.</source>
        <translation>Ein Vorbau von %1 liegt außerhalb der %2 mm, die für %3 üblich sind.</translation>
    </message>
    <message>
        <source>The bar is %1 out of reach for %2.</source>
        <translation>Der Lenker ist %1 außer Reichweite für %2.</translation>
    </message>
    <message>
        <source>The back, at %1 from the horizontal, is outside the %2° comfortable for %3.</source>
        <translation>Der Rücken liegt mit %1 zur Waagerechten außerhalb der %2°, die für %3 bequem sind.</translation>
    </message>
    <message>
        <source>The knee, bent %1 at the bottom, is outside the comfortable %2°.</source>
        <translation>Das Knie ist bei tiefstem Pedal %1 gebeugt, außerhalb der bequemen %2°.</translation>
    </message>
    <message>
        <source>The %1 cranks come off; %2 goes on.</source>
        <translation>Die Kurbeln mit %1 kommen ab; %2 kommen dran.</translation>
    </message>
    <message>
        <source>The bar, %1 wide, wants cutting to %2 where its maker allows it.</source>
        <translation>Der Lenker ist %1 breit und sollte auf %2 gekürzt werden, wo der Hersteller es erlaubt.</translation>
    </message>
    <message>
        <source>Leave the steerer %1 mm long above the stem on the first build, under a spacer; cut to %2 after the second visit.</source>
        <translation>Den Gabelschaft beim ersten Aufbau %1 mm über dem Vorbau stehen lassen, unter einem Spacer; nach dem zweiten Besuch auf %2 kürzen.</translation>
    </message>
    <message>
        <source>Rails and post let the saddle stand %1 behind, not %2.</source>
        <translation>Sattelgestell und Stütze lassen den Sattel %1 nach hinten, nicht %2.</translation>
    </message>
    <message>
        <source>Without any spacer, a stem at this angle still holds the bar %1 too high: another angle, or a lower bar.</source>
        <translation>Auch ohne Spacer hält ein Vorbau in diesem Winkel den Lenker %1 zu hoch: anderer Winkel oder tieferer Lenker.</translation>
    </message>
    <message>
        <source>Stems are ordinarily made from %1 to %2 mm; this would want %3.</source>
        <translation>Vorbauten gibt es üblicherweise von %1 bis %2 mm; hier wären es %3.</translation>
    </message>
    <message>
        <source>Say what it will be ridden for.</source>
        <translation>Angeben, wofür das Rad gefahren wird.</translation>
    </message>
    <message>
        <source>Give a frame size with its stack, reach, head angle, and seat angle or top tube.</source>
        <translation>Eine Rahmengröße angeben, mit Stack, Reach, Lenkwinkel und Sitzwinkel oder Oberrohr.</translation>
    </message>
    <message>
        <source>a stem with its length</source>
        <comment>to put in the box</comment>
        <translation>ein Vorbau mit seiner Länge</translation>
    </message>
    <message>
        <source>a bar with its width</source>
        <comment>to put in the box</comment>
        <translation>ein Lenker mit seiner Breite</translation>
    </message>
    <message>
        <source>cranks</source>
        <comment>to put in the box</comment>
        <translation>Kurbeln</translation>
    </message>
    <message>
        <source>No stem in the box joins these frames to a bar: look at the clamp and steerer sizes.</source>
        <translation>Kein Vorbau im Kasten verbindet diese Rahmen mit einem Lenker: Klemmmaße und Gabelschäfte prüfen.</translation>
    </message>
    <message>
        <source>Some figures contradict each other: look at the fields that are marked.</source>
        <translation>Einige Angaben widersprechen sich: die markierten Felder prüfen.</translation>
    </message>
    <message>
        <source>Put %1 in the box of parts.</source>
        <comment>parts</comment>
        <translation>Im Teilekasten fehlt: %1.</translation>
    </message>
    <message>
        <source>Type %1.</source>
        <comment>measurements</comment>
        <translation>Noch einzutragen: %1.</translation>
    </message>
    <message>
        <source>in its place</source>
        <comment>the knee</comment>
        <translation>am Platz</translation>
    </message>
    <message>
        <source>%1 too far forward</source>
        <comment>the knee</comment>
        <translation>%1 zu weit vorn</translation>
    </message>
    <message>
        <source>%1 too far back</source>
        <comment>the knee</comment>
        <translation>%1 zu weit hinten</translation>
    </message>
    <message>
        <source>%1 of %2 ways</source>
        <comment>a bar can still be moved</comment>
        <translation>%1 von %2 Richtungen</translation>
    </message>
    <message>
        <source>hands</source>
        <comment>for and against</comment>
        <translation>Hände</translation>
    </message>
    <message>
        <source>knee over pedal</source>
        <comment>for and against</comment>
        <translation>Knie über Pedal</translation>
    </message>
    <message>
        <source>stem length</source>
        <comment>for and against</comment>
        <translation>Vorbaulänge</translation>
    </message>
    <message>
        <source>spacers</source>
        <comment>for and against</comment>
        <translation>Spacer</translation>
    </message>
    <message>
        <source>stem angle</source>
        <comment>for and against</comment>
        <translation>Vorbauwinkel</translation>
    </message>
    <message>
        <source>seat post showing</source>
        <comment>for and against</comment>
        <translation>Stützenauszug</translation>
    </message>
    <message>
        <source>agile or steady: wheelbase</source>
        <comment>for and against</comment>
        <translation>wendig/ruhig: Radstand</translation>
    </message>
    <message>
        <source>small to carry: stack + reach</source>
        <comment>for and against</comment>
        <translation>handlich: Stack + Reach</translation>
    </message>
    <message>
        <source>room to adjust</source>
        <comment>for and against</comment>
        <translation>Verstellreserve</translation>
    </message>
    <message>
        <source>crank length</source>
        <comment>for and against</comment>
        <translation>Kurbellänge</translation>
    </message>
    <message>
        <source>bar width</source>
        <comment>for and against</comment>
        <translation>Lenkerbreite</translation>
    </message>
    <message>
        <source>%1 off</source>
        <comment>the hands</comment>
        <translation>%1 daneben</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>seat post showing</comment>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>How far the hands are from where back, arms and elbows would be easiest, over all of the riding. The box of parts seldom meets that place exactly.</source>
        <translation>Wie weit die Hände von dort weg sind, wo es für Rücken, Arme und Ellbogen am leichtesten wäre, über alle Einsätze. Der Teilekasten trifft diesen Platz selten genau.</translation>
    </message>
    <message>
        <source>Where the knee comes to stand over the level pedal, against what suits the riding. Rails and seat post may not let the saddle go there.</source>
        <translation>Wo das Knie über dem waagerechten Pedal steht, verglichen mit dem, was zum Einsatz passt. Sattelgestell und Stütze lassen den Sattel nicht immer dorthin.</translation>
    </message>
    <message>
        <source>The stem this size needs. A stem of the length usual for the riding steers as one expects; far longer or shorter ones do not.</source>
        <translation>Der Vorbau, den diese Größe braucht. Mit der für den Einsatz üblichen Länge lenkt es sich wie erwartet, mit einer viel längeren oder kürzeren nicht.</translation>
    </message>
    <message>
        <source>The stem&apos;s angle as mounted. A steep one says that the frame is too low or too high for the rider.</source>
        <translation>Der Winkel des Vorbaus, wie montiert. Ein steiler zeigt, dass der Rahmen für den Fahrer zu tief oder zu hoch ist.</translation>
    </message>
    <message>
        <source>Seat post between seat tube and saddle. Little leaves no room for a bag, a shorter rider or a suspension post; much flexes and looks tall.</source>
        <translation>Stütze zwischen Sitzrohr und Sattel. Wenig lässt keinen Platz für Tasche, kleineren Fahrer oder Federstütze; viel biegt sich und sieht hoch aus.</translation>
    </message>
    <message>
        <source>Room between the rider and the top tube when standing over it, shoes on.</source>
        <translation>Platz zwischen Fahrer und Oberrohr beim Stehen darüber, in Schuhen.</translation>
    </message>
    <message>
        <source>A short wheelbase turns quickly, a long one holds its line. Quick riding in traffic wants the one, touring with bags the other.</source>
        <translation>Ein kurzer Radstand lenkt schnell ein, ein langer hält die Spur. Zügiges Fahren im Verkehr verlangt das eine, Reisen mit Taschen das andere.</translation>
    </message>
    <message>
        <source>Stack and reach together stand for how much bicycle there is to lift, park and lock.</source>
        <translation>Stack und Reach zusammen stehen dafür, wie viel Fahrrad zu heben, abzustellen und anzuschließen ist.</translation>
    </message>
    <message>
        <source>Whether the bar can still go up, down, nearer and further with what is in the box, should the rider ask for it after a month.</source>
        <translation>Ob der Lenker mit dem, was im Kasten ist, noch höher, tiefer, näher und weiter kann, falls der Fahrer nach einem Monat danach fragt.</translation>
    </message>
    <message>
        <source>Cranks against what suits the length of the leg. Those in the box that come nearest are taken.</source>
        <translation>Kurbeln verglichen mit dem, was zur Beinlänge passt. Genommen werden die nächsten aus dem Kasten.</translation>
    </message>
    <message>
        <source>The bar&apos;s width against the rider&apos;s shoulders, or what the riding is used to. A wide bar can often be cut down.</source>
        <translation>Die Lenkerbreite verglichen mit den Schultern des Fahrers oder dem im Einsatz Gewohnten. Ein breiter Lenker lässt sich oft kürzen.</translation>
    </message>
    <message>
        <source>Weighing more, it lets the best place for the hands decide over all else.</source>
        <translation>Mit mehr Gewicht entscheidet der beste Platz der Hände vor allem anderen.</translation>
    </message>
    <message>
        <source>Weighing more, it favours the size whose saddle can go where the knee wants it.</source>
        <translation>Mit mehr Gewicht gewinnt die Größe, deren Sattel dorthin kann, wo das Knie ihn braucht.</translation>
    </message>
    <message>
        <source>Weighing more, it favours the size that takes a stem of usual length.</source>
        <translation>Mit mehr Gewicht gewinnt die Größe, die einen Vorbau üblicher Länge nimmt.</translation>
    </message>
    <message>
        <source>Weighing more, it favours the size that does without a steep stem.</source>
        <translation>Mit mehr Gewicht gewinnt die Größe, die ohne steilen Vorbau auskommt.</translation>
    </message>
    <message>
        <source>Weighing more, it favours the size that shows an ordinary length of post.</source>
        <translation>Mit mehr Gewicht gewinnt die Größe, die einen üblichen Stützenauszug zeigt.</translation>
    </message>
    <message>
        <source>Weighing more, it favours the size that handles as this riding wants.</source>
        <translation>Mit mehr Gewicht gewinnt die Größe, die sich fährt, wie der Einsatz es verlangt.</translation>
    </message>
    <message>
        <source>Weighing more, it favours the smaller size.</source>
        <translation>Mit mehr Gewicht gewinnt die kleinere Größe.</translation>
    </message>
    <message>
        <source>Weighing more, it favours the size whose bar can still be moved.</source>
        <translation>Mit mehr Gewicht gewinnt die Größe, deren Lenker sich noch versetzen lässt.</translation>
    </message>
    <message>
        <source>Weighing more, it favours cranks that suit the leg over those fitted.</source>
        <translation>Mit mehr Gewicht gewinnen Kurbeln, die zum Bein passen, vor den montierten.</translation>
    </message>
    <message>
        <source>Weighing more, it favours a bar of the right width.</source>
        <translation>Mit mehr Gewicht gewinnt ein Lenker in der richtigen Breite.</translation>
    </message>
    <message>
        <source>does not count</source>
        <comment>a weight</comment>
        <translation>zählt nicht</translation>
    </message>
    <message>
        <source>counts half</source>
        <comment>a weight</comment>
        <translation>zählt halb</translation>
    </message>
    <message>
        <source>counts as usual</source>
        <comment>a weight</comment>
        <translation>zählt wie üblich</translation>
    </message>
    <message>
        <source>counts twice</source>
        <comment>a weight</comment>
        <translation>zählt doppelt</translation>
    </message>
    <message>
        <source>counts %1 times</source>
        <comment>a weight</comment>
        <translation>zählt %1-fach</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a consideration, its value</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 against %3</source>
        <comment>a consideration, two values</comment>
        <translation>%1: %2 gegen %3</translation>
    </message>
    <message>
        <source>speaks for %1</source>
        <comment>a size</comment>
        <translation>spricht für %1</translation>
    </message>
    <message>
        <source>floor to the top of the head, barefoot</source>
        <translation>Boden bis Scheitel, barfuß</translation>
    </message>
    <message>
        <source>floor to the crotch, barefoot</source>
        <translation>Boden bis Schritt, barfuß</translation>
    </message>
    <message>
        <source>floor to the notch above the breastbone, barefoot</source>
        <translation>Boden bis zur Grube über dem Brustbein, barfuß</translation>
    </message>
    <message>
        <source>floor to the bony tip of the shoulder, barefoot</source>
        <translation>Boden bis zur knöchernen Spitze der Schulter, barfuß</translation>
    </message>
    <message>
        <source>floor to the bony knob at the side of the hip, barefoot</source>
        <translation>Boden bis zum Knochenhöcker seitlich an der Hüfte, barfuß</translation>
    </message>
    <message>
        <source>floor to the middle of the kneecap, standing, barefoot</source>
        <translation>Boden bis Mitte der Kniescheibe, stehend, barfuß</translation>
    </message>
    <message>
        <source>floor to the outer ankle bone, barefoot</source>
        <translation>Boden bis zum Außenknöchel, barfuß</translation>
    </message>
    <message>
        <source>seat to the top of the head</source>
        <translation>Sitzfläche bis Scheitel</translation>
    </message>
    <message>
        <source>floor to the top of the knee, seated, barefoot</source>
        <translation>Boden bis Oberseite des Knies, sitzend, barfuß</translation>
    </message>
    <message>
        <source>back of the buttock to the front of the knee, seated</source>
        <translation>Rückseite des Gesäßes bis Vorderseite des Knies, sitzend</translation>
    </message>
    <message>
        <source>bony tip of the shoulder to the elbow</source>
        <translation>knöcherne Spitze der Schulter bis Ellbogen</translation>
    </message>
    <message>
        <source>elbow to the wrist</source>
        <translation>Ellbogen bis Handgelenk</translation>
    </message>
    <message>
        <source>wrist crease to the tip of the middle finger</source>
        <translation>Falte des Handgelenks bis Spitze des Mittelfingers</translation>
    </message>
    <message>
        <source>wrist to the middle of a rod held in the fist</source>
        <translation>Handgelenk bis Mitte eines Stabs in der Faust</translation>
    </message>
    <message>
        <source>back of the bent elbow to the middle of a rod held in the fist</source>
        <translation>Rückseite des gebeugten Ellbogens bis Mitte eines Stabs in der Faust</translation>
    </message>
    <message>
        <source>heel to the longest toe, barefoot, standing</source>
        <translation>Ferse bis längste Zehe, barfuß, stehend</translation>
    </message>
    <message>
        <source>heel to the joint of the big toe, barefoot</source>
        <translation>Ferse bis Gelenk der großen Zehe, barfuß</translation>
    </message>
    <message>
        <source>bony tip to bony tip of the shoulders</source>
        <translation>von Schulterspitze zu Schulterspitze, Knochen zu Knochen</translation>
    </message>
    <message>
        <source>widest across the hips, standing</source>
        <translation>breiteste Stelle der Hüften, stehend</translation>
    </message>
    <message>
        <source>finger tip to finger tip, arms stretched out</source>
        <translation>von Fingerspitze zu Fingerspitze, Arme ausgestreckt</translation>
    </message>
    <message>
        <source>in light clothes, without shoes</source>
        <translation>in leichter Kleidung, ohne Schuhe</translation>
    </message>
    <message>
        <source>bony tip of the shoulder to the middle of a rod held in the fist</source>
        <translation>knöcherne Spitze der Schulter bis Mitte eines Stabs in der Faust</translation>
    </message>
    <message>
        <source>Heels, seat and back against a wall, eyes level. Lay a book on the head, its spine square to the wall, and mark under it.</source>
        <translation>Fersen, Gesäß und Rücken an die Wand, Blick waagerecht. Ein Buch auf den Kopf legen, den Rücken des Buchs rechtwinklig zur Wand, und darunter anzeichnen.</translation>
    </message>
    <message>
        <source>Back to a wall, feet a hand apart. Pull a book up between the legs as firmly as a saddle presses, its spine square to the wall, and mark its top. Take it twice.</source>
        <translation>Rücken an die Wand, Füße eine Handbreit auseinander. Ein Buch so fest zwischen den Beinen hochziehen, wie ein Sattel drückt, den Rücken des Buchs rechtwinklig zur Wand, und die Oberkante anzeichnen. Zweimal messen.</translation>
    </message>
    <message>
        <source>Standing upright against the wall; feel for the hollow between the collarbones and mark level with its lowest point.</source>
        <translation>Aufrecht an der Wand stehen; die Grube zwischen den Schlüsselbeinen tasten und auf Höhe ihres tiefsten Punkts anzeichnen.</translation>
    </message>
    <message>
        <source>Arms hanging. Follow the collarbone outwards to the flat bony end and mark level with its top.</source>
        <translation>Arme hängen. Das Schlüsselbein nach außen bis zum flachen Knochenende verfolgen und auf Höhe seiner Oberseite anzeichnen.</translation>
    </message>
    <message>
        <source>Let the rider lift the knee a little and feel at the side of the hip for the knob that moves; mark its top with both feet on the floor.</source>
        <translation>Den Fahrer das Knie etwas heben lassen und seitlich an der Hüfte den Höcker tasten, der sich bewegt; die Oberseite anzeichnen, wenn beide Füße am Boden sind.</translation>
    </message>
    <message>
        <source>Leg straight, muscles loose.</source>
        <translation>Bein gestreckt, Muskeln locker.</translation>
    </message>
    <message>
        <source>To the point of the ankle bone that stands out most.</source>
        <translation>Bis zu der Stelle des Knöchels, die am weitesten vorsteht.</translation>
    </message>
    <message>
        <source>On a hard stool, back against the wall, eyes level; a book on the head.</source>
        <translation>Auf einem harten Hocker, Rücken an der Wand, Blick waagerecht; ein Buch auf dem Kopf.</translation>
    </message>
    <message>
        <source>Knee and ankle at right angles; a book laid on the thigh just behind the knee.</source>
        <translation>Knie und Knöchel im rechten Winkel; ein Buch auf den Oberschenkel legen, gleich hinter dem Knie.</translation>
    </message>
    <message>
        <source>Back against the wall, knee at a right angle; to a board held against the knee.</source>
        <translation>Rücken an der Wand, Knie im rechten Winkel; bis zu einem Brett, das ans Knie gehalten wird.</translation>
    </message>
    <message>
        <source>Elbow bent at a right angle; along the outside of the arm to the outer bone of the elbow.</source>
        <translation>Ellbogen im rechten Winkel gebeugt; außen am Arm entlang bis zum äußeren Knochen des Ellbogens.</translation>
    </message>
    <message>
        <source>Elbow bent, palm inwards; from the outer bone of the elbow to the bone at the thumb&apos;s side of the wrist.</source>
        <translation>Ellbogen gebeugt, Handfläche nach innen; vom äußeren Knochen des Ellbogens bis zum Knochen auf der Daumenseite des Handgelenks.</translation>
    </message>
    <message>
        <source>Hand flat, fingers together, on the palm&apos;s side.</source>
        <translation>Hand flach, Finger geschlossen, auf der Innenseite der Hand.</translation>
    </message>
    <message>
        <source>Wrist straight, a pencil held as one holds a bar.</source>
        <translation>Handgelenk gerade, einen Bleistift gehalten wie einen Lenker.</translation>
    </message>
    <message>
        <source>Elbow at a right angle against a wall, a pencil upright in the fist.</source>
        <translation>Ellbogen im rechten Winkel an der Wand, ein Bleistift aufrecht in der Faust.</translation>
    </message>
    <message>
        <source>Heel against a wall, weight on the foot; mark in front of the longest toe.</source>
        <translation>Ferse an der Wand, Gewicht auf dem Fuß; vor der längsten Zehe anzeichnen.</translation>
    </message>
    <message>
        <source>Heel against a wall, weight on the foot; to the middle of the joint that stands out at the inner side.</source>
        <translation>Ferse an der Wand, Gewicht auf dem Fuß; bis zur Mitte des Gelenks, das an der Innenseite vorsteht.</translation>
    </message>
    <message>
        <source>From behind, shoulders loose; straight across, not along the back.</source>
        <translation>Von hinten, Schultern locker; gerade hinüber, nicht am Rücken entlang.</translation>
    </message>
    <message>
        <source>Feet together, straight across, between two boards.</source>
        <translation>Füße zusammen, gerade hinüber, zwischen zwei Brettern.</translation>
    </message>
    <message>
        <source>Back to a wall, arms level; mark both middle fingers and measure between.</source>
        <translation>Rücken an die Wand, Arme waagerecht; beide Mittelfinger anzeichnen und dazwischen messen.</translation>
    </message>
    <message>
        <source>It counts for the load limits of bicycle and parts.</source>
        <translation>Es zählt für die Belastungsgrenzen von Fahrrad und Teilen.</translation>
    </message>
    <message>
        <source>Arm straight at the side, a pencil held in the fist as one holds a bar; along the arm to the middle of the pencil.</source>
        <translation>Arm gerade an der Seite, einen Bleistift in der Faust gehalten wie einen Lenker; am Arm entlang bis zur Mitte des Bleistifts.</translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation>Zentimetern</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>Metern</translation>
    </message>
    <message>
        <source>pounds</source>
        <translation>englischen Pfund</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 oder %2</translation>
    </message>
    <message>
        <source>1 entry</source>
        <translation>1 Eintrag</translation>
    </message>
    <message>
        <source>%1 entries</source>
        <translation>%1 Einträge</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a number, %1</source>
        <translation>eine Zahl, %1</translation>
    </message>
    <message>
        <source>text in quotes</source>
        <translation>Text in Anführungszeichen</translation>
    </message>
    <message>
        <source>an object { … }</source>
        <translation>ein Objekt { … }</translation>
    </message>
    <message>
        <source>a list [ … ]</source>
        <translation>eine Liste [ … ]</translation>
    </message>
    <message>
        <source>a value in mm</source>
        <translation>ein Wert in mm</translation>
    </message>
    <message>
        <source>a value in degrees</source>
        <translation>ein Wert in Grad</translation>
    </message>
    <message>
        <source>a value in kg</source>
        <translation>ein Wert in kg</translation>
    </message>
    <message>
        <source>missing; accepted: this or %1</source>
        <translation>fehlt; möglich: dies oder %1</translation>
    </message>
    <message>
        <source>missing; accepted: %1, or %2 in its place</source>
        <translation>fehlt; möglich: %1, oder stattdessen %2</translation>
    </message>
    <message>
        <source>missing; a fitting needs it</source>
        <translation>fehlt; eine Anpassung braucht es</translation>
    </message>
    <message>
        <source>missing; accepted: %1</source>
        <translation>fehlt; möglich: %1</translation>
    </message>
    <message>
        <source>%1 contradicts %2; accepted: two that agree</source>
        <translation>%1 widerspricht %2; möglich: zwei, die zusammenpassen</translation>
    </message>
    <message>
        <source>%1 looks like a figure in %2; accepted: %3</source>
        <translation>%1 sieht nach einer Angabe in %2 aus; möglich: %3</translation>
    </message>
    <message>
        <source>%1 bytes is too large; accepted: %2</source>
        <translation>%1 Bytes sind zu groß; möglich: %2</translation>
    </message>
    <message>
        <source>%1 is too long; accepted: %2</source>
        <translation>%1 ist zu lang; möglich: %2</translation>
    </message>
    <message>
        <source>cannot be read: %1; accepted: a file with one fitting</source>
        <translation>nicht lesbar: %1; möglich: eine Datei mit einer Anpassung</translation>
    </message>
    <message>
        <source>not JSON at %1; accepted: a fitting, as whole JSON</source>
        <translation>kein JSON bei %1; möglich: eine Anpassung, als vollständiges JSON</translation>
    </message>
    <message>
        <source>nested too deeply; accepted: %1 levels</source>
        <translation>zu tief verschachtelt; möglich: %1 Ebenen</translation>
    </message>
    <message>
        <source>stands twice in one object; accepted: each key once</source>
        <translation>steht zweimal in einem Objekt; möglich: jeder Schlüssel einmal</translation>
    </message>
    <message>
        <source>%1 is another kind of document; accepted: %2</source>
        <translation>%1 ist eine andere Art Dokument; möglich: %2</translation>
    </message>
    <message>
        <source>version %1 is newer than this program knows; accepted: %2</source>
        <translation>Version %1 ist neuer, als dieses Programm kennt; möglich: %2</translation>
    </message>
    <message>
        <source>%1 is of the wrong kind; accepted: %2</source>
        <translation>%1 ist von falscher Art; möglich: %2</translation>
    </message>
    <message>
        <source>unknown key, with the value %1; accepted: nothing here</source>
        <translation>unbekannter Schlüssel, mit dem Wert %1; möglich: hier nichts</translation>
    </message>
    <message>
        <source>unknown key, with the value %1; did you mean %2?</source>
        <translation>unbekannter Schlüssel, mit dem Wert %1; gemeint war %2?</translation>
    </message>
    <message>
        <source>%1 is out of range; accepted: %2</source>
        <translation>%1 liegt außerhalb des Bereichs; möglich: %2</translation>
    </message>
    <message>
        <source>%1 is not known; accepted: %2</source>
        <translation>%1 ist nicht bekannt; möglich: %2</translation>
    </message>
    <message>
        <source>none of them is in stock; accepted: at least one with &quot;in_stock&quot;: true</source>
        <translation>keiner davon ist auf Lager; möglich: mindestens einer mit &quot;in_stock&quot;: true</translation>
    </message>
    <message>
        <source>%1, too few; accepted: %2</source>
        <translation>%1, zu wenig; möglich: %2</translation>
    </message>
    <message>
        <source>%1, too many; accepted: %2</source>
        <translation>%1, zu viel; möglich: %2</translation>
    </message>
    <message>
        <source>the shares sum to %1; accepted: shares that sum to 1</source>
        <translation>die Anteile ergeben zusammen %1; möglich: Anteile, die zusammen 1 ergeben</translation>
    </message>
    <message>
        <source>%1 stands at %2 already; accepted: each size of a model once</source>
        <translation>%1 steht schon bei %2; möglich: jede Größe eines Modells einmal</translation>
    </message>
    <message>
        <source>no stem in stock joins a frame to a bar, steerer/clamp being %1 mm; accepted: a steerer of %2 mm with a clamp of %3 mm</source>
        <translation>kein Vorbau auf Lager verbindet einen Rahmen mit einem Lenker, Schaft/Klemmung ist %1 mm; möglich: ein Schaft von %2 mm mit einer Klemmung von %3 mm</translation>
    </message>
    <message>
        <source>the document</source>
        <translation>das Dokument</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 brings the hands within %2 of their best place; on %3 they end up %4 away.</source>
        <translation>%1 bringt die Hände bis auf %2 an ihren besten Platz; auf %3 bleiben sie %4 davon weg.</translation>
    </message>
    <message>
        <source>%1 lets the saddle go where the knee wants it; on %2 it stays %3 off.</source>
        <translation>%1 lässt den Sattel dorthin, wo das Knie ihn braucht; auf %2 bleibt er %3 daneben.</translation>
    </message>
    <message>
        <source>%1 takes a %2 stem, usual for this riding; %3 would want %4.</source>
        <translation>%1 nimmt einen Vorbau von %2, üblich für diesen Einsatz; %3 bräuchte %4.</translation>
    </message>
    <message>
        <source>%1 does with a stem of %2; %3 needs one of %4.</source>
        <translation>%1 kommt mit einem Vorbau von %2 aus; %3 braucht einen von %4.</translation>
    </message>
    <message>
        <source>%1 shows %2 of seat post, %3 shows %4.</source>
        <translation>%1 zeigt %2 Sattelstütze, %3 zeigt %4.</translation>
    </message>
    <message>
        <source>%1 is the quicker of the two: its wheelbase is %2 shorter, and this riding wants a bike that turns.</source>
        <translation>%1 ist der wendigere der beiden: Sein Radstand ist %2 kürzer, und dieser Einsatz verlangt ein Rad, das leicht einlenkt.</translation>
    </message>
    <message>
        <source>%1 is the steadier of the two: its wheelbase is %2 longer, and this riding wants a bike that holds its line.</source>
        <translation>%1 ist der ruhigere der beiden: Sein Radstand ist %2 länger, und dieser Einsatz verlangt ein Rad, das die Spur hält.</translation>
    </message>
    <message>
        <source>%1 is the smaller bike to carry, park and lock.</source>
        <translation>%1 gibt das kleinere Rad zum Tragen, Abstellen und Anschließen.</translation>
    </message>
    <message>
        <source>%1 leaves more room to move the bar later; %2 is nearer the end of it.</source>
        <translation>%1 lässt mehr Spielraum, den Lenker später zu versetzen; %2 ist näher am Ende.</translation>
    </message>
    <message>
        <source>%1 goes with %2 cranks, %3 with %4.</source>
        <translation>%1 nimmt Kurbeln von %2, %3 von %4.</translation>
    </message>
    <message>
        <source>%1 takes a bar %2 wide, %3 one of %4.</source>
        <translation>%1 nimmt einen Lenker von %2 Breite, %3 einen von %4.</translation>
    </message>
    <message>
        <source>For %1 the back lies at %2 (%3° is comfortable), the arms at %4 to it (%5°).</source>
        <translation>Für %1 liegt der Rücken bei %2 (bequem sind %3°), die Arme liegen bei %4 dazu (%5°).</translation>
    </message>
    <message>
        <source>the bar %1 higher</source>
        <translation>den Lenker %1 höher</translation>
    </message>
    <message>
        <source>the bar %1 lower</source>
        <translation>den Lenker %1 tiefer</translation>
    </message>
    <message>
        <source>the bar %1 further away</source>
        <translation>den Lenker %1 weiter weg</translation>
    </message>
    <message>
        <source>the bar %1 nearer</source>
        <translation>den Lenker %1 näher</translation>
    </message>
    <message>
        <source>the wheels %1 further apart</source>
        <translation>die Räder %1 weiter auseinander</translation>
    </message>
    <message>
        <source>the wheels %1 closer together</source>
        <translation>die Räder %1 näher beisammen</translation>
    </message>
    <message>
        <source>the top tube %1 higher</source>
        <translation>das Oberrohr %1 höher</translation>
    </message>
    <message>
        <source>the top tube %1 lower</source>
        <translation>das Oberrohr %1 tiefer</translation>
    </message>
    <message>
        <source>Side by side with the same parts the two differ by less than %1 anywhere.</source>
        <translation>Nebeneinander mit gleichen Teilen unterscheiden sich die beiden nirgends um %1 oder mehr.</translation>
    </message>
    <message>
        <source>With the same parts on both, %1 has %2 than %3.</source>
        <translation>Mit gleichen Teilen an beiden hat %1 %2 als %3.</translation>
    </message>
    <message>
        <source>For %1.</source>
        <comment>a mix of uses</comment>
        <translation>Für %1.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>a rider, a mix of uses</comment>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>How it sits</source>
        <translation>Wie es sitzt</translation>
    </message>
    <message>
        <source>What little speaks for %1</source>
        <comment>a size</comment>
        <translation>Das Wenige, was für %1 spricht</translation>
    </message>
    <message>
        <source>Why %1</source>
        <comment>a size</comment>
        <translation>Warum %1</translation>
    </message>
    <message>
        <source>What you give up</source>
        <translation>Was dabei aufgegeben wird</translation>
    </message>
    <message>
        <source>To see it</source>
        <translation>Woran man es sieht</translation>
    </message>
    <message>
        <source>What would change it</source>
        <translation>Was es ändern würde</translation>
    </message>
    <message>
        <source>If %1 mattered twice as much, it would be %2.</source>
        <translation>Zählte „%1“ doppelt, wäre es %2.</translation>
    </message>
    <message>
        <source>If %1 mattered half as much, it would be %2.</source>
        <translation>Zählte „%1“ halb, wäre es %2.</translation>
    </message>
    <message>
        <source>Other cranks, against %1</source>
        <translation>Andere Kurbeln, gegenüber %1</translation>
    </message>
    <message>
        <source>%1: %2 % leverage, hip %3° at the top, toe %4 further from the front wheel.</source>
        <translation>%1: %2 % Hebel, Hüfte oben %3°, Zehen %4 weiter vom Vorderrad.</translation>
    </message>
    <message>
        <source>%1: %2 % leverage, hip %3° at the top, toe %4 nearer to the front wheel.</source>
        <translation>%1: %2 % Hebel, Hüfte oben %3°, Zehen %4 näher am Vorderrad.</translation>
    </message>
    <message>
        <source>Against the bike ridden today</source>
        <translation>Gegenüber dem heute gefahrenen Rad</translation>
    </message>
    <message>
        <source>saddle %1 higher</source>
        <translation>Sattel %1 höher</translation>
    </message>
    <message>
        <source>saddle %1 lower</source>
        <translation>Sattel %1 tiefer</translation>
    </message>
    <message>
        <source>saddle %1 further back</source>
        <translation>Sattel %1 weiter hinten</translation>
    </message>
    <message>
        <source>saddle %1 further forward</source>
        <translation>Sattel %1 weiter vorn</translation>
    </message>
    <message>
        <source>grips %1 higher</source>
        <translation>Griffe %1 höher</translation>
    </message>
    <message>
        <source>grips %1 lower</source>
        <translation>Griffe %1 tiefer</translation>
    </message>
    <message>
        <source>grips %1 further away</source>
        <translation>Griffe %1 weiter weg</translation>
    </message>
    <message>
        <source>grips %1 nearer</source>
        <translation>Griffe %1 näher</translation>
    </message>
    <message>
        <source>cranks %1 longer</source>
        <translation>Kurbeln %1 länger</translation>
    </message>
    <message>
        <source>cranks %1 shorter</source>
        <translation>Kurbeln %1 kürzer</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>a published rule, its saddle height</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Saddle height by the published rules</source>
        <translation>Sattelhöhe nach bekannten Formeln</translation>
    </message>
    <message>
        <source>%1; here %2. The rules know the inseam alone, or clipless shoes; here thigh, shank, foot, shoe, pedal and crank count as well, so a centimetre apart is ordinary.</source>
        <translation>%1; hier %2. Die Formeln kennen nur die Schrittlänge oder Klickpedale; hier zählen auch Ober- und Unterschenkel, Fuß, Schuh, Pedal und Kurbel, ein Zentimeter Unterschied ist also üblich.</translation>
    </message>
    <message>
        <source>The frame this rider asks for</source>
        <translation>Der Rahmen, den dieser Fahrer braucht</translation>
    </message>
    <message>
        <source>Stack %1 mm and reach %2 mm, on up to %3 of spacers and the stems usual for this riding.</source>
        <translation>Stack %1 mm und Reach %2 mm, mit bis zu %3 Spacern und den für diesen Einsatz üblichen Vorbauten.</translation>
    </message>
    <message>
        <source>Look at these</source>
        <translation>Zu prüfen</translation>
    </message>
    <message>
        <source>A starting position, not a prescription: change one thing at a time by %1 or less, ride, adjust.</source>
        <translation>Ein Ausgangspunkt, keine Vorschrift: eines auf einmal ändern, um höchstens %1, fahren, nachstellen.</translation>
    </message>
    <message>
        <source>Pain, numbness or an injury belongs with a health professional. Children, pregnancy, recent surgery, a replaced joint or a marked difference in leg length need a person, not a formula.</source>
        <translation>Schmerz, Taubheit oder eine Verletzung gehören zu Arzt oder Therapeut. Kinder, Schwangerschaft, eine frische Operation, ein ersetztes Gelenk oder deutlich ungleiche Beine brauchen einen Menschen, keine Formel.</translation>
    </message>
    <message>
        <source>Marks and limits on parts and the makers&apos; instructions rule over this advice, local regulations over both.</source>
        <translation>Markierungen und Grenzen auf Teilen und die Anleitungen der Hersteller gehen diesem Rat vor, örtliche Vorschriften beiden.</translation>
    </message>
    <message>
        <source>After any change at the bar: hoses at full lock, bar against top tube, reach of the levers, torque, brakes, a loaded test ride.</source>
        <translation>Nach jeder Änderung am Lenker: Leitungen bei vollem Einschlag, Lenker gegen Oberrohr, Griffweite der Hebel, Drehmomente, Bremsen, Probefahrt mit Last.</translation>
    </message>
    <message>
        <source>One kind of riding at a time, on %1</source>
        <comment>a size</comment>
        <translation>Ein Einsatz auf einmal, auf %1</translation>
    </message>
    <message>
        <source>only %1</source>
        <comment>one use alone</comment>
        <translation>nur %1</translation>
    </message>
    <message>
        <source>%1 further</source>
        <comment>where a use holds the bar</comment>
        <translation>%1 weiter</translation>
    </message>
    <message>
        <source>%1 nearer</source>
        <comment>where a use holds the bar</comment>
        <translation>%1 näher</translation>
    </message>
    <message>
        <source>%1 higher</source>
        <comment>where a use holds the bar</comment>
        <translation>%1 höher</translation>
    </message>
    <message>
        <source>%1 lower</source>
        <comment>where a use holds the bar</comment>
        <translation>%1 tiefer</translation>
    </message>
    <message>
        <source>At the hand, %1 and %2 are the same.</source>
        <comment>two uses</comment>
        <translation>An der Hand sind %1 und %2 gleich.</translation>
    </message>
    <message>
        <source>At the hand, %1 is %2 than %3.</source>
        <comment>a use, how it differs, another use</comment>
        <translation>An der Hand: %1 %2 als %3.</translation>
    </message>
    <message>
        <source>%1 (%2 is comfortable)</source>
        <translation>%1 (bequem sind %2)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>the back, what is comfortable</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>saddle height, BB to top</source>
        <translation>Sattelhöhe ab Tretlager</translation>
    </message>
    <message>
        <source>From the middle of the bottom bracket straight to the top of the saddle where it is 80 mm wide.</source>
        <translation>Von der Mitte des Tretlagers gerade zur Satteloberseite, wo sie 80 mm breit ist.</translation>
    </message>
    <message>
        <source>saddle setback, behind BB</source>
        <translation>Sattelversatz hinter Tretlager</translation>
    </message>
    <message>
        <source>The same point of the saddle, level behind the middle of the bottom bracket.</source>
        <translation>Derselbe Punkt des Sattels, waagerecht hinter der Mitte des Tretlagers.</translation>
    </message>
    <message>
        <source>saddle nose, behind BB</source>
        <translation>Sattelnase hinter Tretlager</translation>
    </message>
    <message>
        <source>The saddle&apos;s nose behind a plumb line through the bottom bracket.</source>
        <translation>Die Sattelnase hinter einem Lot durch das Tretlager.</translation>
    </message>
    <message>
        <source>stem</source>
        <translation>Vorbau</translation>
    </message>
    <message>
        <source>Length, and its angle as mounted, up from a right angle to the steerer.</source>
        <translation>Länge und Winkel, wie montiert, vom rechten Winkel zum Schaft nach oben.</translation>
    </message>
    <message>
        <source>spacers under it</source>
        <translation>Spacer darunter</translation>
    </message>
    <message>
        <source>All spacers between headset and stem together, out of the pieces in the box.</source>
        <translation>Alle Spacer zwischen Steuersatz und Vorbau zusammen, aus den Stücken im Kasten.</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>Lenker</translation>
    </message>
    <message>
        <source>Out of the box of parts.</source>
        <translation>Aus dem Teilekasten.</translation>
    </message>
    <message>
        <source>cranks</source>
        <translation>Kurbeln</translation>
    </message>
    <message>
        <source>Out of the box of parts; the fitted ones stay unless others suit the legs better.</source>
        <translation>Aus dem Teilekasten; die montierten bleiben, außer andere passen besser zu den Beinen.</translation>
    </message>
    <message>
        <source>grip from BB, ahead and up</source>
        <translation>Griff ab Tretlager, vor und hoch</translation>
    </message>
    <message>
        <source>The middle of the palm from the middle of the bottom bracket: level ahead, and plumb up.</source>
        <translation>Die Mitte der Handfläche ab der Mitte des Tretlagers: waagerecht nach vorn und lotrecht nach oben.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>ahead, up</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>bar below saddle</source>
        <translation>Lenker unter Sattel</translation>
    </message>
    <message>
        <source>steerer, crown to top</source>
        <translation>Gabelschaft ab Konussitz</translation>
    </message>
    <message>
        <source>Where the steerer ends for this stem and these spacers, from the crown seat. Leave it longer on a first build.</source>
        <translation>Wo der Gabelschaft mit diesem Vorbau und diesen Spacern endet, ab dem Konussitz. Beim ersten Aufbau länger lassen.</translation>
    </message>
    <message>
        <source>knee, lowest pedal</source>
        <translation>Knie, Pedal unten</translation>
    </message>
    <message>
        <source>back, %1</source>
        <translation>Rücken, %1</translation>
    </message>
    <message>
        <source>back</source>
        <translation>Rücken</translation>
    </message>
    <message>
        <source>The same parts on both.</source>
        <translation>Die gleichen Teile an beiden.</translation>
    </message>
    <message>
        <source>Parts that differ: %1.</source>
        <translation>Verschiedene Teile: %1.</translation>
    </message>
    <message>
        <source>%1 in</source>
        <comment>inches</comment>
        <translation>%1 Zoll</translation>
    </message>
    <message>
        <source>%1 ft %2%3 in</source>
        <comment>feet, inches, fraction of an inch</comment>
        <translation>%1′ %2%3″</translation>
    </message>
    <message>
        <source>%1 kg</source>
        <translation>%1 kg</translation>
    </message>
    <message>
        <source>%1 lb</source>
        <translation>%1 lb</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation>%1°</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <comment>from, to</comment>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>less than 1 in a million</source>
        <translation>weniger als 1 zu einer Million</translation>
    </message>
    <message>
        <source>1 in %1</source>
        <translation>1 zu %1</translation>
    </message>
    <message>
        <source>Not taken</source>
        <translation>Nicht gemessen</translation>
    </message>
    <message>
        <source>saddle %1</source>
        <translation>Sattel %1</translation>
    </message>
    <message>
        <source>grip %1 forward, %2 up</source>
        <translation>Griff %1 vor, %2 hoch</translation>
    </message>
    <message>
        <source>crank %1</source>
        <translation>Kurbel %1</translation>
    </message>
    <message>
        <source>comfortable</source>
        <translation>bequem</translation>
    </message>
    <message>
        <source>Nothing measured yet</source>
        <translation>Noch nichts gemessen</translation>
    </message>
    <message>
        <source>The nose is taken to be %1 ahead of the saddle point (saddle %2 long).</source>
        <translation>Die Nase wird %1 vor dem Sattelpunkt angenommen (Sattel %2 lang).</translation>
    </message>
    <message>
        <source>The nose is taken to be %1 ahead of the saddle point (saddle %2 long, as they usually are).</source>
        <translation>Die Nase wird %1 vor dem Sattelpunkt angenommen (Sattel %2 lang, wie üblich).</translation>
    </message>
    <message>
        <source>For the grip still needed: %1.</source>
        <translation>Für den Griff noch nötig: %1.</translation>
    </message>
    <message>
        <source>The tape from nose to bar cannot be shorter than the bar is low or high.</source>
        <translation>Das Maß von der Nase zum Lenker kann nicht kürzer sein, als der Lenker tiefer oder höher liegt.</translation>
    </message>
    <message>
        <source>These four do not go together on a bicycle; one of them is wrong.</source>
        <translation>Diese vier passen an keinem Fahrrad zusammen; eines davon stimmt nicht.</translation>
    </message>
    <message>
        <source>Today&apos;s bicycle: %1</source>
        <translation>Rad von heute: %1</translation>
    </message>
    <message>
        <source>kind of bar</source>
        <translation>Art des Lenkers</translation>
    </message>
    <message>
        <source>comfortable or not</source>
        <translation>bequem oder nicht</translation>
    </message>
    <message>
        <source>cleared</source>
        <translation>geleert</translation>
    </message>
    <message>
        <source>the %1 bar</source>
        <comment>after: with</comment>
        <translation>Lenker %1</translation>
    </message>
    <message>
        <source>the flat bar of %1</source>
        <comment>after: with</comment>
        <translation>geradem Lenker %1</translation>
    </message>
    <message>
        <source>the swept bar of %1</source>
        <comment>after: with</comment>
        <translation>gekröpftem Lenker %1</translation>
    </message>
    <message>
        <source>the drop bar of %1</source>
        <comment>after: with</comment>
        <translation>Rennlenker %1</translation>
    </message>
    <message>
        <source>the %1 stem</source>
        <comment>after: with</comment>
        <translation>Vorbau %1</translation>
    </message>
    <message>
        <source>no spacers</source>
        <comment>after: with</comment>
        <translation>ohne Spacer</translation>
    </message>
    <message>
        <source>%1 of spacers</source>
        <comment>after: with</comment>
        <translation>%1 Spacern</translation>
    </message>
    <message>
        <source>with %1</source>
        <comment>parts of a set-up</comment>
        <translation>mit %1</translation>
    </message>
    <message>
        <source>Nothing in the box of parts makes a bicycle of these sizes.</source>
        <translation>Nichts im Teilekasten macht aus diesen Größen ein Fahrrad.</translation>
    </message>
    <message>
        <source>%1, %2.</source>
        <comment>size, with its parts</comment>
        <translation>%1, %2.</translation>
    </message>
    <message>
        <source>Slightly %1, %2.</source>
        <comment>size, with its parts</comment>
        <translation>Knapp %1, %2.</translation>
    </message>
    <message>
        <source>Either will do for %1: %2 %3, or %4 with the %5 stem.</source>
        <comment>uses; size, with its parts; the other size, its stem</comment>
        <translation>Für %1 geht beides: %2 %3, oder %4 mit Vorbau %5.</translation>
    </message>
    <message>
        <source>Nothing fits</source>
        <translation>Nichts passt</translation>
    </message>
    <message>
        <source>Not %1</source>
        <comment>a size</comment>
        <translation>Nicht %1</translation>
    </message>
    <message>
        <source>Clear: it stays so with any weight halved or doubled.</source>
        <translation>Klar: Es bleibt dabei, auch wenn ein Gewicht halbiert oder verdoppelt wird.</translation>
    </message>
    <message>
        <source>Slightly %1</source>
        <comment>a size</comment>
        <translation>Knapp %1</translation>
    </message>
    <message>
        <source>Slight: with one weight halved or doubled it would be %1.</source>
        <comment>a size</comment>
        <translation>Knapp: Mit einem halbierten oder verdoppelten Gewicht wäre es %1.</translation>
    </message>
    <message>
        <source>Either will do</source>
        <translation>Beides geht</translation>
    </message>
    <message>
        <source>%1 %2, or %3 with the %4 stem, for %5.</source>
        <comment>size, with its parts; the other size, its stem; uses</comment>
        <translation>%1 %2, oder %3 mit Vorbau %4, für %5.</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>city riding</source>
        <translation>Stadtfahrten</translation>
    </message>
    <message>
        <source>commuting</source>
        <translation>Pendeln</translation>
    </message>
    <message>
        <source>fast commuting</source>
        <translation>schnelles Pendeln</translation>
    </message>
    <message>
        <source>touring</source>
        <translation>Touren</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>share of a use in a mix: 70 % touring</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Körpergröße</translation>
    </message>
    <message>
        <source>inseam</source>
        <translation>Schrittlänge</translation>
    </message>
    <message>
        <source>height of the notch above the breastbone</source>
        <translation>Höhe der Grube über dem Brustbein</translation>
    </message>
    <message>
        <source>shoulder height</source>
        <translation>Schulterhöhe</translation>
    </message>
    <message>
        <source>hip-bone height</source>
        <translation>Höhe des Hüftknochens</translation>
    </message>
    <message>
        <source>knee height</source>
        <translation>Kniehöhe</translation>
    </message>
    <message>
        <source>ankle height</source>
        <translation>Knöchelhöhe</translation>
    </message>
    <message>
        <source>sitting height</source>
        <translation>Sitzhöhe</translation>
    </message>
    <message>
        <source>knee height, seated</source>
        <translation>Kniehöhe, sitzend</translation>
    </message>
    <message>
        <source>buttock to knee</source>
        <translation>Gesäß bis Knie</translation>
    </message>
    <message>
        <source>upper arm</source>
        <translation>Oberarm</translation>
    </message>
    <message>
        <source>forearm</source>
        <translation>Unterarm</translation>
    </message>
    <message>
        <source>hand</source>
        <translation>Hand</translation>
    </message>
    <message>
        <source>wrist to grip</source>
        <translation>Handgelenk bis Griff</translation>
    </message>
    <message>
        <source>elbow to grip</source>
        <translation>Ellbogen bis Griff</translation>
    </message>
    <message>
        <source>foot length</source>
        <translation>Fußlänge</translation>
    </message>
    <message>
        <source>heel to ball of the foot</source>
        <translation>Ferse bis Fußballen</translation>
    </message>
    <message>
        <source>shoulder breadth</source>
        <translation>Schulterbreite</translation>
    </message>
    <message>
        <source>hip breadth</source>
        <translation>Hüftbreite</translation>
    </message>
    <message>
        <source>arm span</source>
        <translation>Armspannweite</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>arm, shoulder to grip</source>
        <translation>Arm, Schulter bis Griff</translation>
    </message>
    <message>
        <source>hands off their best place</source>
        <translation>Hände neben ihrem besten Platz</translation>
    </message>
    <message>
        <source>knee off its place</source>
        <translation>Knie neben seinem Platz</translation>
    </message>
    <message>
        <source>an ordinary stem length</source>
        <translation>eine übliche Vorbaulänge</translation>
    </message>
    <message>
        <source>an ordinary stem angle</source>
        <translation>ein üblicher Vorbauwinkel</translation>
    </message>
    <message>
        <source>seat post showing</source>
        <translation>Stützenauszug</translation>
    </message>
    <message>
        <source>agile or steady handling</source>
        <translation>wendiges oder ruhiges Fahrverhalten</translation>
    </message>
    <message>
        <source>a small bicycle to carry and lock</source>
        <translation>ein kleines Rad zum Tragen und Anschließen</translation>
    </message>
    <message>
        <source>room to move the bar later</source>
        <translation>Spielraum, den Lenker später zu versetzen</translation>
    </message>
    <message>
        <source>crank length</source>
        <translation>Kurbellänge</translation>
    </message>
    <message>
        <source>bar width</source>
        <translation>Lenkerbreite</translation>
    </message>
    <message>
        <source>seat angle</source>
        <translation>Sitzwinkel</translation>
    </message>
    <message>
        <source>bottom-bracket drop</source>
        <translation>Tretlagerabsenkung</translation>
    </message>
    <message>
        <source>chainstay</source>
        <translation>Kettenstrebe</translation>
    </message>
    <message>
        <source>fork offset (rake)</source>
        <translation>Gabelvorbiegung</translation>
    </message>
    <message>
        <source>head tube</source>
        <translation>Steuerrohr</translation>
    </message>
    <message>
        <source>rim size</source>
        <translation>Felgengröße</translation>
    </message>
    <message>
        <source>tyre</source>
        <translation>Reifen</translation>
    </message>
    <message>
        <source>standover</source>
        <translation>Überstandshöhe</translation>
    </message>
    <message>
        <source>The %1</source>
        <comment>a size of frame, opening a sentence</comment>
        <translation>Rahmen %1</translation>
    </message>
    <message>
        <source>the %1</source>
        <comment>a size of frame, within a sentence</comment>
        <translation>Rahmen %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>model and size of a frame</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a stem</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>flat, %1</source>
        <comment>a bar</comment>
        <translation>gerade, %1</translation>
    </message>
    <message>
        <source>swept, %1</source>
        <comment>a bar</comment>
        <translation>gekröpft, %1</translation>
    </message>
    <message>
        <source>drop, %1</source>
        <comment>a bar</comment>
        <translation>Rennlenker, %1</translation>
    </message>
    <message>
        <source>%1 degrees</source>
        <translation>%1 Grad</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>%1 contradicts %2; accepted: less than %3, unless that one is wrong</source>
        <translation>%1 widerspricht %2; möglich: weniger als %3, außer jenes ist falsch</translation>
    </message>
    <message>
        <source>%1 contradicts %2; accepted: at least %3, unless that one is wrong</source>
        <translation>%1 widerspricht %2; möglich: mindestens %3, außer jenes ist falsch</translation>
    </message>
    <message>
        <source>The hand is %1 behind and %2 below the bar&apos;s middle (%3).</source>
        <translation>Die Hand liegt %1 hinter und %2 unter der Lenkermitte (%3).</translation>
    </message>
    <message>
        <source>The hand is %1 ahead of and %2 below the bar&apos;s middle (%3).</source>
        <translation>Die Hand liegt %1 vor und %2 unter der Lenkermitte (%3).</translation>
    </message>
    <message>
        <source>The hand is %1 behind and %2 above the bar&apos;s middle (%3).</source>
        <translation>Die Hand liegt %1 hinter und %2 über der Lenkermitte (%3).</translation>
    </message>
    <message>
        <source>The hand is %1 ahead of and %2 above the bar&apos;s middle (%3).</source>
        <translation>Die Hand liegt %1 vor und %2 über der Lenkermitte (%3).</translation>
    </message>
    <message>
        <source>saddle height</source>
        <translation>Sattelhöhe</translation>
    </message>
    <message>
        <source>nose to bar</source>
        <translation>Nase bis Lenker</translation>
    </message>
    <message>
        <source>1.09 × inseam</source>
        <translation>1,09 × Schrittlänge</translation>
    </message>
    <message>
        <source>0.883 × inseam</source>
        <translation>0,883 × Schrittlänge</translation>
    </message>
    <message>
        <source>a size begun</source>
        <translation>eine angefangene Größe</translation>
    </message>
    <message>
        <source>further off, yet easier on back and arms</source>
        <comment>the hands</comment>
        <translation>weiter weg, doch leichter für Rücken und Arme</translation>
    </message>
    <message>
        <source>for %1</source>
        <comment>a size; over what speaks for it</comment>
        <translation>für %1</translation>
    </message>
    <message>
        <source>Leverage is what the foot gains at the same gear. The hip&apos;s angle is between back and thigh at the top of the stroke; more is more open. The toe&apos;s room is towards the front wheel.</source>
        <translation>Hebel ist, was der Fuß beim gleichen Gang gewinnt. Der Hüftwinkel liegt oben im Tritt zwischen Rücken und Oberschenkel; mehr ist offener. Der Platz der Zehen ist der zum Vorderrad.</translation>
    </message>
    <message>
        <source>All from the middle of the bottom bracket to the top of the saddle. The rules are told to compare with; none of them decides.</source>
        <translation>Alle von der Mitte des Tretlagers zur Satteloberseite. Die Formeln stehen zum Vergleich da; keine entscheidet.</translation>
    </message>
    <message>
        <source>From the first to the last figure is what stems of usual length and the spacers can make up for. A frame within both can bring the hands to their best place.</source>
        <translation>Vom ersten bis zum letzten Wert reicht, was übliche Vorbaulängen und die Spacer ausgleichen. Ein Rahmen innerhalb von beiden kann die Hände an ihren besten Platz bringen.</translation>
    </message>
    <message>
        <source>one file at a time, not also %1</source>
        <translation>eine Datei auf einmal, nicht auch %1</translation>
    </message>
    <message>
        <source>which table?</source>
        <translation>welche Tabelle?</translation>
    </message>
    <message>
        <source>not a text; accepted: a geometry table, copied as text or saved as CSV</source>
        <translation>kein Text; möglich: eine Geometrietabelle, als Text kopiert oder als CSV gespeichert</translation>
    </message>
    <message>
        <source>the source of a page; accepted: the table as the page shows it, copied from there</source>
        <translation>der Quelltext einer Seite; möglich: die Tabelle, wie die Seite sie zeigt, von dort kopiert</translation>
    </message>
    <message>
        <source>no table in this text; accepted: headings with a number for each size</source>
        <translation>keine Tabelle in diesem Text; möglich: Überschriften mit einer Zahl für jede Größe</translation>
    </message>
    <message>
        <source>a table, but no heading of a frame&apos;s geometry in it; accepted: stack, reach, head angle …, or columns assigned by hand</source>
        <translation>eine Tabelle, aber ohne eine Überschrift der Rahmengeometrie; möglich: Stack, Reach, Lenkwinkel … oder von Hand zugeordnete Spalten</translation>
    </message>
    <message>
        <source>the sizes have no names and were counted; accepted: a line or column that names them</source>
        <translation>die Größen haben keine Namen und wurden gezählt; möglich: eine Zeile oder Spalte, die sie nennt</translation>
    </message>
    <message>
        <source>the size %1 stands twice, the second is called %2; accepted: each once</source>
        <translation>die Größe %1 steht zweimal da, die zweite heißt %2; möglich: jede einmal</translation>
    </message>
    <message>
        <source>%1 means the same as %2 on %3, which was taken; accepted: one of them</source>
        <translation>%1 bedeutet dasselbe wie %2 auf %3, das genommen wurde; möglich: eines von beiden</translation>
    </message>
    <message>
        <source>%1 is in more than one unit, and %2 was taken in the one that fits; accepted: one unit in a column</source>
        <translation>%1 steht in mehr als einer Einheit, und %2 wurde in der passenden gelesen; möglich: eine Einheit je Spalte</translation>
    </message>
    <message>
        <source>%1 is said to be in %2 but looks like %3, and was taken so; accepted: the unit that the numbers are in</source>
        <translation>%1 soll in %2 angegeben sein, sieht aber nach %3 aus und wurde so gelesen; möglich: die Einheit, in der die Zahlen stehen</translation>
    </message>
    <message>
        <source>the numbers of %1 cannot be %2 and were taken for %3; accepted: either, assigned by hand</source>
        <translation>die Zahlen von %1 können nicht %2 sein und wurden als %3 gelesen; möglich: eines von beiden, von Hand zugeordnet</translation>
    </message>
    <message>
        <source>%1 is no number; accepted: one, or nothing</source>
        <translation>%1 ist keine Zahl; möglich: eine oder nichts</translation>
    </message>
    <message>
        <source>%1 is no number; accepted: %2, or nothing</source>
        <translation>%1 ist keine Zahl; möglich: %2 oder nichts</translation>
    </message>
    <message>
        <source>cannot be read: %1; accepted: a text file with one geometry table</source>
        <translation>nicht lesbar: %1; möglich: eine Textdatei mit einer Geometrietabelle</translation>
    </message>
    <message>
        <source>%1 lines or sizes, too many for a geometry table; accepted: %2</source>
        <translation>%1 Zeilen oder Größen, zu viele für eine Geometrietabelle; möglich: %2</translation>
    </message>
    <message>
        <source>a candidate of this size</source>
        <translation>ein Kandidat dieser Größe</translation>
    </message>
    <message>
        <source>the saddle&apos;s place</source>
        <translation>der Ort des Sattels</translation>
    </message>
    <message>
        <source>heights above the ground</source>
        <translation>Höhen über dem Boden</translation>
    </message>
    <message>
        <source>wheelbase and balance</source>
        <translation>Radstand und Gleichgewicht</translation>
    </message>
    <message>
        <source>trail</source>
        <translation>Nachlauf</translation>
    </message>
    <message>
        <source>toe clearance</source>
        <translation>Fußfreiheit</translation>
    </message>
    <message>
        <source>the length to cut the steerer to</source>
        <translation>das Maß, auf das der Gabelschaft zu kürzen ist</translation>
    </message>
    <message>
        <source>the post&apos;s insertion</source>
        <translation>die Einstecktiefe der Stütze</translation>
    </message>
    <message>
        <source>standover clearance</source>
        <translation>Freiheit über dem Oberrohr</translation>
    </message>
    <message>
        <source>%1: %2, %3, contradicts the rest of the size; %4 would agree.</source>
        <translation>%1: %2, %3, widerspricht dem Rest der Größe; %4 würde passen.</translation>
    </message>
    <message>
        <source>By this size&apos;s numbers alone the fault could be here as well: %1.</source>
        <translation>Nach den Zahlen dieser Größe allein könnte der Fehler ebenso hier liegen: %1.</translation>
    </message>
    <message>
        <source>%1: %2, %3, is out of the run of sizes, which would have %4.</source>
        <translation>%1: %2, %3, fällt aus der Reihe der Größen, in der %4 zu erwarten wäre.</translation>
    </message>
    <message>
        <source>Taken by another definition: %1 for %2.</source>
        <translation>Nach einer anderen Definition gelesen: %1 als %2.</translation>
    </message>
    <message>
        <source>Taken by another definition: %1 for %2, as %3 of %4 sizes contradict it otherwise, and so taken %5.</source>
        <translation>Nach einer anderen Definition gelesen: %1 als %2, da sonst %3 von %4 Größen widersprechen, so aber %5.</translation>
    </message>
    <message>
        <source>Without %1 this cannot be told: %2.</source>
        <translation>Unbekannt: %1. Deshalb lässt sich dies nicht sagen: %2.</translation>
    </message>
    <message>
        <source>* follows from the other numbers
</source>
        <translation>* folgt aus den anderen Zahlen
</translation>
    </message>
    <message>
        <source>~ assumed, as nothing in the table tells it
</source>
        <translation>~ angenommen, da nichts in der Tabelle es sagt
</translation>
    </message>
    <message>
        <source>The angles agree only if they are rounded to half degrees.</source>
        <translation>Die Winkel passen nur, wenn sie auf halbe Grad gerundet sind.</translation>
    </message>
    <message>
        <source>Line %1 is not understood: %2</source>
        <translation>Zeile %1 ist nicht verstanden: %2</translation>
    </message>
    <message>
        <source>seat tube</source>
        <translation>Sitzrohr</translation>
    </message>
    <message>
        <source>effective top tube</source>
        <translation>Oberrohr, effektiv</translation>
    </message>
    <message>
        <source>wheelbase</source>
        <translation>Radstand</translation>
    </message>
    <message>
        <source>front-centre</source>
        <translation>Abstand Tretlager – Vorderachse</translation>
    </message>
    <message>
        <source>fork length</source>
        <translation>Gabellänge</translation>
    </message>
    <message>
        <source>seat angle of the tube itself</source>
        <translation>Winkel des Sitzrohrs selbst</translation>
    </message>
    <message>
        <source>top tube along the tube</source>
        <translation>Oberrohr, am Rohr gemessen</translation>
    </message>
    <message>
        <source>seat tube, centre to centre</source>
        <translation>Sitzrohr, Mitte bis Mitte</translation>
    </message>
    <message>
        <source>chainstay, horizontal</source>
        <translation>Kettenstrebe, waagerecht</translation>
    </message>
    <message>
        <source>chainstay at its longest</source>
        <translation>Kettenstrebe, längste Stellung</translation>
    </message>
    <message>
        <source>bottom-bracket height</source>
        <translation>Tretlagerhöhe</translation>
    </message>
    <message>
        <source>bottom bracket above the axles</source>
        <translation>Tretlager über den Achsen</translation>
    </message>
    <message>
        <source>wheelbase at its longest</source>
        <translation>Radstand, längste Stellung</translation>
    </message>
    <message>
        <source>front-centre, horizontal</source>
        <translation>Abstand Tretlager – Vorderachse, waagerecht</translation>
    </message>
    <message>
        <source>fork length along the axis</source>
        <translation>Gabellänge entlang der Lenkachse</translation>
    </message>
    <message>
        <source>lower headset</source>
        <translation>Steuersatz unten</translation>
    </message>
    <message>
        <source>upper headset</source>
        <translation>Steuersatz oben</translation>
    </message>
    <message>
        <source>widest tyre</source>
        <translation>breitester Reifen</translation>
    </message>
    <message>
        <source>steerer</source>
        <translation>Gabelschaft</translation>
    </message>
    <message>
        <source>seat post, diameter</source>
        <translation>Sattelstütze, Durchmesser</translation>
    </message>
    <message>
        <source>seat post, length</source>
        <translation>Sattelstütze, Länge</translation>
    </message>
    <message>
        <source>seat post, offset</source>
        <translation>Sattelstütze, Versatz</translation>
    </message>
    <message>
        <source>system weight allowed</source>
        <translation>zulässiges Gesamtgewicht</translation>
    </message>
    <message>
        <source>price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>follows from the other figures</source>
        <translation>folgt aus den anderen Zahlen</translation>
    </message>
    <message>
        <source>assumed, as nothing in the table tells it</source>
        <translation>angenommen, da nichts in der Tabelle es sagt</translation>
    </message>
    <message>
        <source>not understood, and left out</source>
        <translation>nicht verstanden und ausgelassen</translation>
    </message>
    <message>
        <source>taken as %1; a click goes back to the printed %2</source>
        <translation>als %1 genommen; ein Klick geht zurück zu den gedruckten %2</translation>
    </message>
    <message>
        <source>A click takes %1.</source>
        <translation>Ein Klick nimmt %1.</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>size, column: figure</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Take %1</source>
        <translation>%1 nehmen</translation>
    </message>
    <message>
        <source>Read as headed</source>
        <translation>Wie überschrieben lesen</translation>
    </message>
    <message>
        <source>Take the other</source>
        <translation>Die andere nehmen</translation>
    </message>
    <message>
        <source>Say what it is…</source>
        <translation>Sagen, was es ist…</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Merken</translation>
    </message>
    <message>
        <source>Add sizes</source>
        <translation>Größen dazu</translation>
    </message>
    <message numerus="yes">
        <source>%1; %n in place of another of its name</source>
        <translation>
            <numerusform>%1; %n an Stelle einer anderen dieses Namens</numerusform>
            <numerusform>%1; %n an Stelle anderer ihres Namens</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Add %n size(s) and keep the frame</source>
        <translation>
            <numerusform>%n Größe dazu, und den Rahmen merken</numerusform>
            <numerusform>%n Größen dazu, und den Rahmen merken</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Add %n size(s)</source>
        <translation>
            <numerusform>%n Größe dazu</numerusform>
            <numerusform>%n Größen dazu</numerusform>
        </translation>
    </message>
    <message>
        <source>“%1” is not understood, and left out.</source>
        <translation>„%1“ ist nicht verstanden und ausgelassen.</translation>
    </message>
    <message numerus="yes">
        <source>… and %n more line(s) that are not understood</source>
        <translation>
            <numerusform>… und %n weitere Zeile, die nicht verstanden ist</numerusform>
            <numerusform>… und %n weitere Zeilen, die nicht verstanden sind</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n size(s)</source>
        <translation>
            <numerusform>%n Größe</numerusform>
            <numerusform>%n Größen</numerusform>
        </translation>
    </message>
    <message>
        <source>No candidate without %1.</source>
        <translation>Kein Kandidat ohne %1.</translation>
    </message>
    <message>
        <source>leave it out</source>
        <translation>auslassen</translation>
    </message>
    <message>
        <source>%1 out of a table</source>
        <translation>%1 aus einer Tabelle</translation>
    </message>
    <message>
        <source>%1 of %2 out of a table</source>
        <comment>2 sizes of Weir</comment>
        <translation>%1 von %2 aus einer Tabelle</translation>
    </message>
    <message>
        <source>%1 of %2, kept</source>
        <comment>2 sizes of Weir</comment>
        <translation>%1 von %2, gemerkt</translation>
    </message>
    <message>
        <source>Read as headed, %1 contradicts %2 of %3 sizes; taken for %4 it would contradict %5.</source>
        <translation>Wie überschrieben gelesen, widerspricht %1 %2 von %3 Größen; als %4 genommen wären es %5.</translation>
    </message>
    <message>
        <source>%1: %2 is taken as %3; %4 is printed.</source>
        <translation>%1: %2 ist als %3 genommen; gedruckt ist %4.</translation>
    </message>
    <message>
        <source>The text: %1</source>
        <translation>Der Text: %1</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
    <message>
        <source>Line %1, %2: %3</source>
        <comment>line, column, what is wrong</comment>
        <translation>Zeile %1, %2: %3</translation>
    </message>
    <message>
        <source>Back to %1</source>
        <translation>Zurück zu %1</translation>
    </message>
    <message>
        <source>How it rides</source>
        <translation>Wie es sich fährt</translation>
    </message>
    <message>
        <source>toe overlap</source>
        <comment>for and against</comment>
        <translation>Schuh ins Vorderrad</translation>
    </message>
    <message>
        <source>none</source>
        <comment>toe overlap</comment>
        <translation>keine Berührung</translation>
    </message>
    <message>
        <source>How far the shoe reaches into where tyre or mudguard turns: a hazard at walking pace. In traffic it counts twice.</source>
        <translation>Wie weit der Schuh in den Raum reicht, in dem Reifen oder Schutzblech einschlagen: eine Gefahr im Schritttempo. Im Verkehr zählt sie doppelt.</translation>
    </message>
    <message>
        <source>Weighing more, it favours the size and the cranks that keep the shoe clear of the front wheel.</source>
        <translation>Zählt es mehr, gewinnen Rahmen und Kurbeln, die den Schuh vom Vorderrad frei halten.</translation>
    </message>
    <message>
        <source>straight ahead</source>
        <comment>how the bar is turned</comment>
        <translation>geradeaus</translation>
    </message>
    <message>
        <source>%1 to the left</source>
        <comment>how the bar is turned</comment>
        <translation>%1 nach links</translation>
    </message>
    <message>
        <source>%1 to the right</source>
        <comment>how the bar is turned</comment>
        <translation>%1 nach rechts</translation>
    </message>
    <message>
        <source>%1 clear</source>
        <comment>shoe and front wheel</comment>
        <translation>%1 frei</translation>
    </message>
    <message>
        <source>%1 into the mudguard</source>
        <comment>the shoe</comment>
        <translation>%1 ins Schutzblech</translation>
    </message>
    <message>
        <source>%1 into the tyre</source>
        <comment>the shoe</comment>
        <translation>%1 in den Reifen</translation>
    </message>
    <message>
        <source>seen from above: bar %1, right crank at %2, shoe %3</source>
        <comment>how the bar is turned; an angle; how near the shoe comes to the wheel</comment>
        <translation>von oben: Lenker %1, rechte Kurbel bei %2, Schuh %3</translation>
    </message>
    <message>
        <source>%1 lets the shoe reach %2 into where the front wheel turns, %3 lets it reach %4.</source>
        <translation>%1 lässt den Schuh %2 in den Raum des Vorderrads reichen, %3 lässt ihn %4 hinein.</translation>
    </message>
    <message>
        <source>%1 keeps the shoe clear of the front wheel; on %2 it reaches %3 into where that turns.</source>
        <translation>%1 hält den Schuh vom Vorderrad frei; auf %2 reicht er %3 in dessen Raum.</translation>
    </message>
    <message>
        <source>bottom bracket %1 higher</source>
        <translation>Tretlager %1 höher</translation>
    </message>
    <message>
        <source>bottom bracket %1 lower</source>
        <translation>Tretlager %1 tiefer</translation>
    </message>
    <message>
        <source>%1 more trail</source>
        <translation>%1 mehr Nachlauf</translation>
    </message>
    <message>
        <source>%1 less trail</source>
        <translation>%1 weniger Nachlauf</translation>
    </message>
    <message>
        <source>wheelbase %1 longer</source>
        <translation>Radstand %1 länger</translation>
    </message>
    <message>
        <source>wheelbase %1 shorter</source>
        <translation>Radstand %1 kürzer</translation>
    </message>
    <message>
        <source>all gears %1 %</source>
        <translation>alle Gänge %1 %</translation>
    </message>
    <message>
        <source>leverage %1 %</source>
        <translation>Hebel %1 %</translation>
    </message>
    <message>
        <source>the pedal meets the ground at %1 of lean</source>
        <translation>das Pedal setzt bei %1 Schräglage auf</translation>
    </message>
    <message>
        <source>the saddle follows the foot</source>
        <translation>der Sattel folgt dem Fuß</translation>
    </message>
    <message>
        <source>A %1 tyre</source>
        <translation>Reifen von %1</translation>
    </message>
    <message>
        <source>Rims of %1</source>
        <translation>Felgen von %1</translation>
    </message>
    <message>
        <source>Cranks of %1</source>
        <translation>Kurbeln von %1</translation>
    </message>
    <message>
        <source>Ball of the foot over the spindle</source>
        <translation>Fußballen über der Pedalachse</translation>
    </message>
    <message>
        <source>No front mudguard</source>
        <translation>Vorn kein Schutzblech</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>what is changed, room of the shoe</comment>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1: %2; %3.</source>
        <comment>what is changed, room of the shoe, what else changes</comment>
        <translation>%1: %2; %3.</translation>
    </message>
    <message>
        <source>More room for the toe on %1</source>
        <comment>a size</comment>
        <translation>Mehr Fußfreiheit auf %1</translation>
    </message>
    <message>
        <source>One change at a time, each with the room it leaves between shoe and front wheel, and what else it does.</source>
        <translation>Jeweils eine Änderung, mit dem Platz, den sie zwischen Schuh und Vorderrad lässt, und was sie sonst bewirkt.</translation>
    </message>
    <message>
        <source>steady by itself</source>
        <comment>speeds in a picture</comment>
        <translation>von selbst stabil</translation>
    </message>
    <message>
        <source>falls</source>
        <comment>a bicycle left to itself</comment>
        <translation>fällt</translation>
    </message>
    <message>
        <source>rights itself</source>
        <comment>a bicycle left to itself</comment>
        <translation>fängt sich</translation>
    </message>
    <message>
        <source>swinging</source>
        <comment>how a bicycle falls or rights itself</comment>
        <translation>pendelnd</translation>
    </message>
    <message>
        <source>leaning</source>
        <comment>how a bicycle falls or rights itself</comment>
        <translation>kippend</translation>
    </message>
    <message>
        <source>%1 steady by itself %2</source>
        <comment>a size; speeds, or at no speed</comment>
        <translation>%1 von selbst stabil %2</translation>
    </message>
    <message>
        <source>Falling and righting over the speed: %1</source>
        <comment>sizes</comment>
        <translation>Fallen und Fangen über dem Tempo: %1</translation>
    </message>
    <message>
        <source>%1 up</source>
        <comment>the middle of all weight</comment>
        <translation>%1 hoch</translation>
    </message>
    <message>
        <source>The middle of all weight is %1 up; the front wheel carries %2, the rear one %3.</source>
        <translation>Der Schwerpunkt liegt %1 hoch; das Vorderrad trägt %2, das Hinterrad %3.</translation>
    </message>
    <message>
        <source>Sit the rider on in the shoes that will be worn, pedals level, and turn the bar both ways.</source>
        <translation>Fahrer in den Schuhen, die getragen werden, aufsitzen lassen, Pedale waagerecht, und den Lenker nach beiden Seiten einschlagen.</translation>
    </message>
    <message>
        <source>The shoe reaches %1 into where the mudguard turns.</source>
        <translation>Der Schuh reicht %1 in den Raum, in dem das Schutzblech einschlägt.</translation>
    </message>
    <message>
        <source>The shoe reaches %1 into where the front tyre turns.</source>
        <translation>Der Schuh reicht %1 in den Raum, in dem der Vorderreifen einschlägt.</translation>
    </message>
    <message>
        <source>A hazard at walking pace that the rider has to know of.</source>
        <translation>Eine Gefahr im Schritttempo, die der Fahrer kennen muss.</translation>
    </message>
    <message>
        <source>The mudguard&apos;s stays must break away.</source>
        <translation>Die Streben des Schutzblechs müssen sich ausrasten lassen.</translation>
    </message>
    <message>
        <source>Only %1 between shoe and mudguard as worked out, and shoes differ by as much.</source>
        <translation>Errechnet sind nur %1 zwischen Schuh und Schutzblech, und so viel unterscheiden sich Schuhe.</translation>
    </message>
    <message>
        <source>Only %1 between shoe and front tyre as worked out, and shoes differ by as much.</source>
        <translation>Errechnet sind nur %1 zwischen Schuh und Vorderreifen, und so viel unterscheiden sich Schuhe.</translation>
    </message>
    <message>
        <source>The heel strikes a large rear bag by %1: hang it further back, or take a smaller one.</source>
        <translation>Die Ferse stößt um %1 an eine große Hinterradtasche: weiter hinten einhängen oder eine kleinere nehmen.</translation>
    </message>
    <message>
        <source>The heel passes a large rear bag by %1; %2 is wanted. Hang it as far back as the carrier lets it.</source>
        <translation>Die Ferse geht mit %1 an einer großen Hinterradtasche vorbei; erwünscht sind %2. So weit hinten einhängen, wie der Träger es zulässt.</translation>
    </message>
    <message>
        <source>The knee meets the bar when it is turned by %1.</source>
        <translation>Das Knie trifft den Lenker, wenn er um %1 eingeschlagen ist.</translation>
    </message>
    <message>
        <source>The knee comes within %1 of the bar turned by %2; %3 is wanted.</source>
        <translation>Das Knie kommt dem um %2 eingeschlagenen Lenker auf %1 nahe; erwünscht sind %3.</translation>
    </message>
    <message>
        <source>The knee meets the bar at the top of the stroke.</source>
        <translation>Das Knie trifft oben den Lenker.</translation>
    </message>
    <message>
        <source>The knee comes within %1 of the bar; %2 is wanted.</source>
        <translation>Das Knie kommt dem Lenker auf %1 nahe; erwünscht sind %2.</translation>
    </message>
    <message>
        <source>Pedalling seated, the front wheel lifts from a gradient of %1 on; roads of %2 are met with. A bag in front helps.</source>
        <translation>Im Sitzen getreten hebt sich das Vorderrad ab %1 Steigung; Straßen von %2 kommen vor. Gepäck vorn hilft.</translation>
    </message>
    <message>
        <source>By the model there is no speed at which the bicycle keeps itself upright. Many good ones do not; it compares sizes and certifies nothing.</source>
        <translation>Nach dem Modell hält sich das Rad bei keinem Tempo von selbst aufrecht. Viele gute tun es nicht; es vergleicht Rahmen und bescheinigt nichts.</translation>
    </message>
    <message>
        <source>By the model the bicycle keeps itself upright from %1 on, however fast; that compares sizes and certifies nothing.</source>
        <translation>Nach dem Modell hält sich das Rad ab %1 von selbst aufrecht, wie schnell auch immer; das vergleicht Rahmen und bescheinigt nichts.</translation>
    </message>
    <message>
        <source>never</source>
        <comment>the shoe touches the front wheel</comment>
        <translation>nie</translation>
    </message>
    <message>
        <source>from %1 on</source>
        <comment>the shoe touches, steered so far</comment>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>%1, turned %2</source>
        <comment>knee to bar: bar straight, bar turned</comment>
        <translation>%1, eingeschlagen %2</translation>
    </message>
    <message>
        <source>%1 short</source>
        <comment>a foot, of the ground</comment>
        <translation>%1 fehlen</translation>
    </message>
    <message>
        <source>reaches</source>
        <comment>a foot, the ground</comment>
        <translation>reicht</translation>
    </message>
    <message>
        <source>%1, %2 too much</source>
        <comment>weight of all, over the limit</comment>
        <translation>%1, %2 zu viel</translation>
    </message>
    <message>
        <source>%1, %2 left</source>
        <comment>weight of all, up to the limit</comment>
        <translation>%1, %2 übrig</translation>
    </message>
    <message>
        <source>beside the wheel</source>
        <comment>where the shoe passes</comment>
        <translation>neben dem Rad</translation>
    </message>
    <message>
        <source>%1 overlap</source>
        <comment>shoe and front wheel</comment>
        <translation>%1 ineinander</translation>
    </message>
    <message>
        <source>The shoe passes beside the front wheel at every angle.</source>
        <translation>Der Schuh geht bei jedem Winkel neben dem Vorderrad vorbei.</translation>
    </message>
    <message>
        <source>at no speed</source>
        <comment>steady by itself</comment>
        <translation>bei keinem Tempo</translation>
    </message>
    <message>
        <source>from %1 on</source>
        <comment>steady by itself</comment>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>shoe to front wheel</source>
        <translation>Schuh zum Vorderrad</translation>
    </message>
    <message>
        <source>Shoe to tyre or mudguard over the whole turn of cranks and bar, where they come nearest. Real shoes differ by some 10 mm.</source>
        <translation>Schuh zu Reifen oder Schutzblech über die ganze Drehung von Kurbeln und Lenker, wo sie sich am nächsten kommen. Echte Schuhe unterscheiden sich um etwa 10 mm.</translation>
    </message>
    <message>
        <source>touches when steered</source>
        <translation>berührt bei Einschlag</translation>
    </message>
    <message>
        <source>How far the bar has to be turned while pedalling before the shoe touches, and how fast a rider goes who turns so tightly.</source>
        <translation>Wie weit der Lenker beim Treten eingeschlagen sein muss, bis der Schuh berührt, und wie schnell man in so engen Kurven fährt.</translation>
    </message>
    <message>
        <source>steady by itself</source>
        <translation>von selbst stabil</translation>
    </message>
    <message>
        <source>The deceleration that lifts the rear wheel, rider seated, on the level.</source>
        <translation>Die Verzögerung, bei der sich das Hinterrad hebt, sitzend, in der Ebene.</translation>
    </message>
    <message>
        <source>front wheel carries</source>
        <translation>Vorderrad trägt</translation>
    </message>
    <message>
        <source>Of rider, bicycle and luggage together, seated.</source>
        <translation>Von Fahrer, Rad und Gepäck zusammen, sitzend.</translation>
    </message>
    <message>
        <source>front wheel lifts, climbing</source>
        <translation>Vorderrad hebt sich bergauf</translation>
    </message>
    <message>
        <source>The gradient from which pedalling hard in the saddle lifts the front wheel.</source>
        <translation>Die Steigung, ab der kräftiges Treten im Sattel das Vorderrad hebt.</translation>
    </message>
    <message>
        <source>from %1 on</source>
        <comment>a gradient</comment>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>How far the front wheel touches the ground behind the steering axis. More holds a line, less turns in quicker.</source>
        <translation>Wie weit das Vorderrad den Boden hinter der Lenkachse berührt. Mehr hält die Spur, weniger lenkt schneller ein.</translation>
    </message>
    <message>
        <source>heel to rear bag</source>
        <translation>Ferse zur Hinterradtasche</translation>
    </message>
    <message>
        <source>To a large side bag hung as far back as an ordinary carrier lets it.</source>
        <translation>Zu einer großen Seitentasche, so weit hinten eingehängt, wie ein üblicher Träger es zulässt.</translation>
    </message>
    <message>
        <source>knee to bar</source>
        <translation>Knie zum Lenker</translation>
    </message>
    <message>
        <source>Over the turn of the cranks, the bar straight, and turned as for turning round in a narrow lane.</source>
        <translation>Über die Kurbelumdrehung, der Lenker gerade und eingeschlagen wie zum Wenden auf schmalem Weg.</translation>
    </message>
    <message>
        <source>tiptoe, seated</source>
        <translation>Fußspitze im Sitzen</translation>
    </message>
    <message>
        <source>Whether the ball of the foot reaches the ground from the saddle, the bicycle upright.</source>
        <translation>Ob der Fußballen vom Sattel aus den Boden erreicht, das Rad aufrecht.</translation>
    </message>
    <message>
        <source>trail, square to the axis</source>
        <translation>Nachlauf, quer zur Achse</translation>
    </message>
    <message>
        <source>The lever by which the ground turns the wheel straight.</source>
        <translation>Der Hebel, mit dem der Boden das Rad geradestellt.</translation>
    </message>
    <message>
        <source>wheel flop</source>
        <translation>Abkippen des Lenkers</translation>
    </message>
    <message>
        <source>How strongly the bar falls to one side when it is turned at walking pace.</source>
        <translation>Wie stark der Lenker im Schritttempo zur Seite fällt, wenn man ihn einschlägt.</translation>
    </message>
    <message>
        <source>grips ahead of steering axis</source>
        <translation>Griffe vor der Lenkachse</translation>
    </message>
    <message>
        <source>Square to the axis. A longer stem moves the grips forward: the bar then swings sideways as it turns.</source>
        <translation>Quer zur Achse. Ein längerer Vorbau rückt die Griffe vor: Dann schwenkt der Lenker beim Einschlagen zur Seite.</translation>
    </message>
    <message>
        <source>hands&apos; lever</source>
        <translation>Hebel der Hände</translation>
    </message>
    <message>
        <source>From steering axis to grip. Longer turns slower for the same movement.</source>
        <translation>Von der Lenkachse zum Griff. Länger lenkt langsamer bei gleicher Bewegung.</translation>
    </message>
    <message>
        <source>At both ends of an adjustable dropout.</source>
        <translation>An beiden Enden eines verstellbaren Ausfallendes.</translation>
    </message>
    <message>
        <source>Its middle from the ground.</source>
        <translation>Seine Mitte über dem Boden.</translation>
    </message>
    <message>
        <source>pedal meets ground at</source>
        <translation>Pedal setzt auf bei</translation>
    </message>
    <message>
        <source>%1 of lean</source>
        <translation>%1 Schräglage</translation>
    </message>
    <message>
        <source>pedal to front wheel, level</source>
        <translation>Pedal zum Vorderrad, waagerecht</translation>
    </message>
    <message>
        <source>As the standards measure it: middle of the pedal straight ahead to where tyre or mudguard turns, crank level. The shoe is not in it.</source>
        <translation>Wie die Normen messen: von der Pedalmitte gerade nach vorn bis dorthin, wo Reifen oder Schutzblech einschlagen, Kurbel waagerecht. Der Schuh ist nicht dabei.</translation>
    </message>
    <message>
        <source>the same at any crank angle</source>
        <translation>dasselbe bei jeder Kurbelstellung</translation>
    </message>
    <message>
        <source>The least over the turn.</source>
        <translation>Der kleinste Wert über die Umdrehung.</translation>
    </message>
    <message>
        <source>over the bars, downhill</source>
        <translation>über den Lenker, bergab</translation>
    </message>
    <message>
        <source>The same deceleration on a steep descent.</source>
        <translation>Dieselbe Verzögerung in steilem Gefälle.</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>a deceleration, on a gradient</comment>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>front wheel, fully back</source>
        <translation>Vorderrad, ganz hinten sitzend</translation>
    </message>
    <message>
        <source>hands carry at most</source>
        <translation>Hände tragen höchstens</translation>
    </message>
    <message>
        <source>Of the rider&apos;s weight, if back and legs held nothing: a coarse upper bound.</source>
        <translation>Vom Körpergewicht, wenn Rücken und Beine nichts hielten: eine grobe Obergrenze.</translation>
    </message>
    <message>
        <source>rider, bicycle, luggage</source>
        <translation>Fahrer, Rad, Gepäck</translation>
    </message>
    <message>
        <source>Together; what is left of the maker&apos;s limit where one is given.</source>
        <translation>Zusammen; was vom zulässigen Gewicht bleibt, wo eines angegeben ist.</translation>
    </message>
    <message>
        <source>wider tyre possible</source>
        <translation>breiterer Reifen möglich</translation>
    </message>
    <message>
        <source>What the maker&apos;s limit leaves.</source>
        <translation>Was die Grenze des Herstellers übrig lässt.</translation>
    </message>
    <message>
        <source>flat foot, seated</source>
        <translation>Fußsohle im Sitzen</translation>
    </message>
    <message>
        <source>The bicycle upright.</source>
        <translation>Das Rad aufrecht.</translation>
    </message>
    <message>
        <source>In shoes.</source>
        <translation>Mit Schuhen.</translation>
    </message>
    <message>
        <source>the shoe %1 instead of %2</source>
        <comment>13 mm clear; 5 mm overlap</comment>
        <translation>der Schuh %1 statt %2</translation>
    </message>
    <message>
        <source>steady by itself %1 instead of %2</source>
        <comment>18–28 km/h; at no speed</comment>
        <translation>von selbst stabil %1 statt %2</translation>
    </message>
    <message>
        <source>%1 rides like %2 in all that is worked out here.</source>
        <translation>%1 fährt sich in allem, was hier errechnet wird, wie %2.</translation>
    </message>
    <message>
        <source>%1 against %2: %3.</source>
        <comment>a size, another, how they ride differently</comment>
        <translation>%1 gegen %2: %3.</translation>
    </message>
    <message>
        <source>Masses are estimated and riders move: these figures compare sizes and certify nothing.</source>
        <translation>Massen sind geschätzt, und Fahrer bewegen sich: Diese Zahlen vergleichen Rahmen und bescheinigen nichts.</translation>
    </message>
    <message>
        <source>The rider has been shown where the shoe touches</source>
        <translation>Es wurde gezeigt, wo der Schuh berührt</translation>
    </message>
    <message>
        <source>toe shown to the rider</source>
        <comment>an edit</comment>
        <translation>Berührung des Schuhs gezeigt</translation>
    </message>
    <message>
        <source>A shoe that touches tyre or mudguard is a hazard at walking pace: sit the rider on in their shoes, pedals level, turn the bar, and show them. Mudguards need stays that break away.</source>
        <translation>Ein Schuh, der Reifen oder Schutzblech berührt, ist eine Gefahr im Schritttempo: Fahrer in den eigenen Schuhen aufsitzen lassen, Pedale waagerecht, Lenker einschlagen und es zeigen. Schutzbleche brauchen Streben, die sich ausrasten lassen.</translation>
    </message>
    <message>
        <source>Figures of steadiness, balance and braking compare sizes; they certify nothing.</source>
        <translation>Zahlen zu Ruhe, Last und Bremsen vergleichen Rahmen; sie bescheinigen nichts.</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 ft</source>
        <translation>%1 ft</translation>
    </message>
    <message>
        <source>%1 km/h</source>
        <translation>%1 km/h</translation>
    </message>
    <message>
        <source>%1 mph</source>
        <translation>%1 mph</translation>
    </message>
    <message>
        <source>%1 g</source>
        <comment>a deceleration, in accelerations of gravity</comment>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>room for the toe</source>
        <translation>Fußfreiheit</translation>
    </message>
    <message>
        <source>just touching</source>
        <comment>shoe and front wheel</comment>
        <translation>gerade berührend</translation>
    </message>
    <message>
        <source>While pedalling it touches from %1 of steering on, in turns of %2 and tighter, ridden below about %3: a hazard when going slowly that the rider has to know of.</source>
        <translation>Beim Treten berührt er ab %1 Lenkeinschlag, in Kurven von %2 Radius und enger, die man unter etwa %3 fährt: eine Gefahr beim langsamen Fahren, die der Fahrer kennen muss.</translation>
    </message>
    <message>
        <source>%1, below %2</source>
        <comment>steered so far, ridden below a speed</comment>
        <translation>%1, unter %2</translation>
    </message>
    <message>
        <source>Over all angles of bar and crank %1 are left straight ahead of the shoe.</source>
        <translation>Über alle Stellungen von Lenker und Kurbel bleiben gerade vor dem Schuh %1.</translation>
    </message>
    <message>
        <source>Over all angles of bar and crank the shoe would have to go %1 straight back to stay clear; it touches %2.</source>
        <comment>a length; from an angle on, at a speed</comment>
        <translation>Über alle Stellungen von Lenker und Kurbel müsste der Schuh %1 gerade zurück, um frei zu bleiben; er berührt %2.</translation>
    </message>
    <message>
        <source>wheel, outside</source>
        <translation>Laufrad, außen</translation>
    </message>
    <message>
        <source>%1 on the same cranks</source>
        <comment>a size</comment>
        <translation>%1 mit denselben Kurbeln</translation>
    </message>
    <message>
        <source>Not added: a fitting holds %1 sizes at most.</source>
        <translation>Nicht dazugenommen: Eine Anpassung fasst höchstens %1 Größen.</translation>
    </message>
    <message>
        <source>the window</source>
        <translation>das Fenster</translation>
    </message>
    <message>
        <source>more on a command</source>
        <translation>mehr zu einem Befehl</translation>
    </message>
    <message>
        <source>which Tripoise this is</source>
        <translation>welches Tripoise dies ist</translation>
    </message>
    <message>
        <source>Exit codes: 0 done; 2 the command was wrong, or the result could not be written;
3 the input was wrong, with every problem on standard error, one a line;
4 no size fits or keeps the limits, and the result is written all the same.
</source>
        <translation>Rückgabewerte: 0 erledigt; 2 der Befehl war falsch, oder das Ergebnis konnte nicht geschrieben werden;
3 die Eingabe war falsch, mit jedem Fehler auf der Standardfehlerausgabe, einer je Zeile;
4 keine Größe passt oder hält die Grenzen ein, und das Ergebnis wird trotzdem geschrieben.
</translation>
    </message>
    <message>
        <source>this text</source>
        <translation>dieser Text</translation>
    </message>
    <message>
        <source>For example:
</source>
        <translation>Zum Beispiel:
</translation>
    </message>
    <message>
        <source>tripoise: the result could not be written</source>
        <translation>tripoise: Das Ergebnis konnte nicht geschrieben werden</translation>
    </message>
    <message>
        <source>tripoise: %1</source>
        <translation>tripoise: %1</translation>
    </message>
    <message>
        <source>the decision</source>
        <translation>die Entscheidung</translation>
    </message>
    <message>
        <source>text, as without it, or json for other programs</source>
        <translation>text, wie ohne diese Angabe, oder json für andere Programme</translation>
    </message>
    <message>
        <source>the side view</source>
        <translation>die Seitenansicht</translation>
    </message>
    <message>
        <source>the picture to write; its ending says which kind</source>
        <translation>das Bild, das geschrieben wird; seine Endung sagt, welcher Art</translation>
    </message>
    <message>
        <source>a geometry table</source>
        <translation>eine Geometrietabelle</translation>
    </message>
    <message>
        <source>text, as without it, json or csv for other programs</source>
        <translation>text, wie ohne diese Angabe, json oder csv für andere Programme</translation>
    </message>
    <message>
        <source>stems</source>
        <comment>to take out of the box</comment>
        <translation>Vorbauten</translation>
    </message>
    <message>
        <source>bars</source>
        <comment>to take out of the box</comment>
        <translation>Lenker</translation>
    </message>
    <message>
        <source>spacers</source>
        <comment>to take out of the box</comment>
        <translation>Spacer</translation>
    </message>
    <message>
        <source>cranks</source>
        <comment>to take out of the box</comment>
        <translation>Kurbeln</translation>
    </message>
    <message>
        <source>sizes</source>
        <comment>to take off the list</comment>
        <translation>Größen</translation>
    </message>
    <message>
        <source>Sizes and box make more set-ups than can be compared: take out what is not meant for this rider.</source>
        <translation>Größen und Teilekasten ergeben mehr Einstellungen, als sich vergleichen lassen: herausnehmen, was nicht für diesen Fahrer gedacht ist.</translation>
    </message>
    <message>
        <source>Sizes and box make more set-ups than can be compared: take out %1 or %2 that are not meant for this rider.</source>
        <comment>the longest lists</comment>
        <translation>Größen und Teilekasten ergeben mehr Einstellungen, als sich vergleichen lassen: %1 oder %2 herausnehmen, die nicht für diesen Fahrer gedacht sind.</translation>
    </message>
    <message>
        <source>with the sizes and the rest of the box %1 set-ups, more than can be compared; accepted: %2; thin this list or %3</source>
        <translation>mit den Größen und dem übrigen Teilekasten %1 Einstellungen, mehr als sich vergleichen lassen; möglich: %2; diese Liste oder %3 kürzen</translation>
    </message>
    <message>
        <source>an ordinary height of spacers</source>
        <translation>eine übliche Höhe der Spacer</translation>
    </message>
    <message>
        <source>Spacers under the stem. A tall stack says that the frame is low for the rider; with none the bar cannot go lower later.</source>
        <translation>Spacer unter dem Vorbau. Ein hoher Turm sagt, dass der Rahmen für den Fahrer niedrig ist; ohne Spacer kann der Lenker später nicht tiefer.</translation>
    </message>
    <message>
        <source>Weighing more, it favours the size that takes an ordinary height of spacers.</source>
        <translation>Mit mehr Gewicht spricht es für die Größe, die mit einer üblichen Höhe der Spacer auskommt.</translation>
    </message>
    <message>
        <source>%1 takes %2 of spacers under the stem, %3 takes %4.</source>
        <translation>%1 nimmt %2 Spacer unter dem Vorbau, %3 nimmt %4.</translation>
    </message>
    <message>
        <source>parts together</source>
        <comment>for and against</comment>
        <translation>Teile zusammen</translation>
    </message>
    <message>
        <source>the maker&apos;s word on riders&apos; heights</source>
        <translation>die Körpergrößen, die der Hersteller nennt</translation>
    </message>
    <message>
        <source>maker&apos;s rider heights</source>
        <comment>for and against</comment>
        <translation>Körpergrößen des Herstellers</translation>
    </message>
    <message>
        <source>Whether the rider&apos;s height is one the maker names this size for. It counts for less where the legs are long or short for the height.</source>
        <translation>Ob der Hersteller diese Größe für die Körpergröße des Fahrers nennt. Es zählt weniger, wo die Beine für die Körpergröße lang oder kurz sind.</translation>
    </message>
    <message>
        <source>Weighing more, it favours the size whose maker names it for riders of this height.</source>
        <translation>Mit mehr Gewicht spricht es für die Größe, die der Hersteller für diese Körpergröße nennt.</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>maker&apos;s rider heights</comment>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>inside</source>
        <comment>maker&apos;s rider heights</comment>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>rider %1 taller</source>
        <comment>than the maker&apos;s heights</comment>
        <translation>Fahrer %1 größer</translation>
    </message>
    <message>
        <source>rider %1 shorter</source>
        <comment>than the maker&apos;s heights</comment>
        <translation>Fahrer %1 kleiner</translation>
    </message>
    <message>
        <source>The rider is %1 taller than those the maker names %2 for.</source>
        <translation>Der Fahrer ist %1 größer als die, für die der Hersteller %2 nennt.</translation>
    </message>
    <message>
        <source>The rider is %1 shorter than those the maker names %2 for.</source>
        <translation>Der Fahrer ist %1 kleiner als die, für die der Hersteller %2 nennt.</translation>
    </message>
    <message>
        <source>The top tube is %1 higher than the rider standing over it in shoes; %2 of room is wanted.</source>
        <translation>Das Oberrohr ist %1 höher als der Schritt des Fahrers in Schuhen; gewünscht sind %2 Platz.</translation>
    </message>
    <message>
        <source>%1 is too small: %2 of seat post show.</source>
        <translation>%1 ist zu klein: %2 der Sattelstütze schauen heraus.</translation>
    </message>
    <message>
        <source>%1 is too large: the saddle cannot go as low as this rider needs.</source>
        <translation>%1 ist zu groß: der Sattel kommt nicht so tief, wie dieser Fahrer ihn braucht.</translation>
    </message>
    <message>
        <source>fits</source>
        <comment>a size</comment>
        <translation>passt</translation>
    </message>
    <message>
        <source>fits with parts to order</source>
        <comment>a size</comment>
        <translation>passt mit bestellten Teilen</translation>
    </message>
    <message>
        <source>too small</source>
        <comment>a size</comment>
        <translation>zu klein</translation>
    </message>
    <message>
        <source>too large</source>
        <comment>a size</comment>
        <translation>zu groß</translation>
    </message>
    <message>
        <source>breaks a limit</source>
        <comment>a size</comment>
        <translation>verletzt eine Grenze</translation>
    </message>
    <message>
        <source>To order: a %1 stem of %2. Nothing in the box goes on this frame.</source>
        <translation>Zu bestellen: ein Vorbau von %1 mit %2. Nichts aus der Teilekiste passt an diesen Rahmen.</translation>
    </message>
    <message>
        <source>To order: a %1 stem of %2. Nothing in the box comes nearer to there than %3.</source>
        <translation>Zu bestellen: ein Vorbau von %1 mit %2. Nichts aus der Teilekiste kommt näher dorthin als %3.</translation>
    </message>
    <message>
        <source>Why none of them</source>
        <translation>Warum keine davon</translation>
    </message>
    <message>
        <source>Why not %1</source>
        <comment>a size</comment>
        <translation>Warum nicht %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a size, why it does not fit</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>a %1 stem to order</source>
        <comment>after: with</comment>
        <translation>einem zu bestellenden Vorbau von %1</translation>
    </message>
    <message>
        <source>This rider wants a frame with a stack of %1 mm and a reach of %2 mm.</source>
        <translation>Dieser Fahrer braucht einen Rahmen mit einem Stack von %1 mm und einem Reach von %2 mm.</translation>
    </message>
    <message>
        <source>None of these fits</source>
        <translation>Keine davon passt</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>a title, what stands under it</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>the saddle %1 higher</source>
        <translation>Sattel %1 höher</translation>
    </message>
    <message>
        <source>the saddle %1 further back</source>
        <translation>Sattel %1 weiter hinten</translation>
    </message>
    <message>
        <source>the hand %1 further ahead</source>
        <translation>Hand %1 weiter vorn</translation>
    </message>
    <message>
        <source>the hand %1 higher</source>
        <translation>Hand %1 höher</translation>
    </message>
    <message>
        <source>the saddle %1 lower</source>
        <translation>Sattel %1 tiefer</translation>
    </message>
    <message>
        <source>the saddle %1 further forward</source>
        <translation>Sattel %1 weiter vorn</translation>
    </message>
    <message>
        <source>the hand %1 nearer</source>
        <translation>Hand %1 näher</translation>
    </message>
    <message>
        <source>the hand %1 lower</source>
        <translation>Hand %1 tiefer</translation>
    </message>
    <message>
        <source>Of the kept position these parts miss: %1.</source>
        <translation>Von der behaltenen Position weicht ab: %1.</translation>
    </message>
    <message>
        <source>Measure the %1 again: %2 does not go with the rest, which foretells about %3 (odds %4). It is left out until then.</source>
        <translation>Noch einmal messen: %1. %2 passt nicht zum Rest, der etwa %3 erwarten lässt (Wahrscheinlichkeit %4). Bis dahin bleibt es weg.</translation>
    </message>
    <message>
        <source>The size is provisional: the inseam is inferred from the height. Measure it before anything is ordered.</source>
        <translation>Die Größe ist vorläufig: Die Schrittlänge ist aus der Körpergröße geschlossen. Messen, bevor bestellt wird.</translation>
    </message>
    <message>
        <source>The saddle ridden today, %1 high, is doubted: on it the knee would be bent %2 at the lowest pedal. It is not kept; measure it again.</source>
        <translation>Der heute gefahrene Sattel, %1 hoch, ist zweifelhaft: Darauf wäre das Knie am tiefsten Pedal %2 gebeugt. Er wird nicht behalten; noch einmal messen.</translation>
    </message>
    <message>
        <source>A setback of %1 is that of a saddle&apos;s nose; it is taken for the nose&apos;s, so that the saddle point is %2 behind the bottom bracket. Measure again where the plumb line hung.</source>
        <translation>Ein Nachsitz von %1 ist der einer Sattelnase; er gilt als ihrer, der Sattelpunkt liegt also %2 hinter dem Tretlager. Noch einmal messen, wo das Lot hing.</translation>
    </message>
    <message>
        <source>Today&apos;s saddle is kept: %1 high, %2 back.</source>
        <translation>Der Sattel von heute bleibt: %1 hoch, %2 hinten.</translation>
    </message>
    <message>
        <source>Today&apos;s position is kept: saddle %1 high, %2 back; the hand %3 ahead of the saddle point, %4 below it.</source>
        <translation>Die Position von heute bleibt: Sattel %1 hoch, %2 hinten; die Hand %3 vor dem Sattelpunkt, %4 darunter.</translation>
    </message>
    <message>
        <source>Today&apos;s position is kept: saddle %1 high, %2 back; the hand %3 ahead of the saddle point, %4 above it.</source>
        <translation>Die Position von heute bleibt: Sattel %1 hoch, %2 hinten; die Hand %3 vor dem Sattelpunkt, %4 darüber.</translation>
    </message>
    <message>
        <source>For a foot on the ground the saddle is %1 lower, and the knee bent %3 at the lowest pedal instead of %2.</source>
        <translation>Für einen Fuß auf dem Boden steht der Sattel %1 tiefer, und das Knie ist am tiefsten Pedal %3 gebeugt statt %2.</translation>
    </message>
    <message>
        <source>Today the saddle to %1 high, %2 back, the hand %3 forward and %4 up; the rest when that has been ridden.</source>
        <translation>Heute den Sattel auf %1 Höhe und %2 Nachsitz, die Hand %3 nach vorn und %4 hoch; der Rest, wenn das gefahren ist.</translation>
    </message>
    <message>
        <source>Sitting on this saddle the feet are still %1 above the ground: feet down from the saddle is another kind of frame.</source>
        <translation>Im Sattel sind die Füße noch %1 über dem Boden: Füße auf den Boden im Sitzen ist eine andere Art von Rahmen.</translation>
    </message>
    <message>
        <source>How far the knee is bent at the lowest pedal: riding, and as a goniometer reads it on a rider held still with the heel as it pedals, give or take 5°. With the foot held level it reads some 8° to 10° less again.</source>
        <translation>Wie weit das Knie am tiefsten Pedal gebeugt ist: im Fahren, und wie ein Winkelmesser es liest, wenn der Fahrer mit der Ferse wie beim Treten stillhält, auf etwa 5°. Mit waagerechtem Fuß liest er noch einmal 8° bis 10° weniger.</translation>
    </message>
    <message>
        <source>%1 riding, %2 held still</source>
        <translation>%1 im Fahren, %2 stillgehalten</translation>
    </message>
    <message>
        <source>what it is ridden for</source>
        <translation>wofür es gefahren wird</translation>
    </message>
    <message>
        <source>how long it has been ridden</source>
        <translation>wie lange es gefahren wird</translation>
    </message>
    <message>
        <source>keep the position or advise one</source>
        <translation>Position behalten oder beraten</translation>
    </message>
    <message>
        <source>Measure the %1 again: until then the rest of the body suggests %2, and the size is provisional.</source>
        <comment>a measurement; what is expected of it</comment>
        <translation>Noch einmal messen: %1. Bis dahin lässt der übrige Körper %2 erwarten, und die Größe ist vorläufig.</translation>
    </message>
    <message>
        <source>Provisional: only the height says how long the legs are.</source>
        <translation>Vorläufig: Nur die Körpergröße sagt, wie lang die Beine sind.</translation>
    </message>
    <message>
        <source>%1 is too small: with an ordinary stem and spacers the bar is %2 lower than on a frame of this rider&apos;s size.</source>
        <translation>%1 ist zu klein: mit üblichem Vorbau und üblichen Spacern ist der Lenker %2 tiefer als auf einem Rahmen in der Größe dieses Fahrers.</translation>
    </message>
    <message>
        <source>%1 is too small: with an ordinary stem the bar is %2 nearer than on a frame of this rider&apos;s size.</source>
        <translation>%1 ist zu klein: mit üblichem Vorbau ist der Lenker %2 näher als auf einem Rahmen in der Größe dieses Fahrers.</translation>
    </message>
    <message>
        <source>%1 is too large: with an ordinary stem and spacers the bar is %2 higher than on a frame of this rider&apos;s size.</source>
        <translation>%1 ist zu groß: mit üblichem Vorbau und üblichen Spacern ist der Lenker %2 höher als auf einem Rahmen in der Größe dieses Fahrers.</translation>
    </message>
    <message>
        <source>%1 is too large: with an ordinary stem the bar is %2 further away than on a frame of this rider&apos;s size.</source>
        <translation>%1 ist zu groß: mit üblichem Vorbau ist der Lenker %2 weiter weg als auf einem Rahmen in der Größe dieses Fahrers.</translation>
    </message>
    <message>
        <source>%1 leaves more room between shoe and front wheel; on %2 they come near to touching.</source>
        <translation>%1 lässt mehr Platz zwischen Schuh und Vorderrad; auf %2 berühren sie sich beinahe.</translation>
    </message>
    <message>
        <source>how it rides, the rules, the cautions and the rest as well</source>
        <translation>auch wie es fährt, die Regeln, die Hinweise und den Rest</translation>
    </message>
    <message>
        <source>the hands at their best place</source>
        <comment>what a size is taken for</comment>
        <translation>die Hände an ihrer besten Stelle</translation>
    </message>
    <message>
        <source>the knee in its place</source>
        <comment>what a size is taken for</comment>
        <translation>das Knie an seiner Stelle</translation>
    </message>
    <message>
        <source>a stem of ordinary length</source>
        <comment>what a size is taken for</comment>
        <translation>ein Vorbau von üblicher Länge</translation>
    </message>
    <message>
        <source>%1 takes a %2 stem; %3 would want %4, which is further from what is usual for this riding.</source>
        <translation>%1 nimmt einen Vorbau von %2; %3 bräuchte %4, weiter weg vom hier Üblichen.</translation>
    </message>
    <message>
        <source>an ordinary height of spacers</source>
        <comment>what a size is taken for</comment>
        <translation>eine übliche Höhe der Spacer</translation>
    </message>
    <message>
        <source>an ordinary stem angle</source>
        <comment>what a size is taken for</comment>
        <translation>ein üblicher Vorbauwinkel</translation>
    </message>
    <message>
        <source>parts that suit each other</source>
        <translation>Teile, die zueinander passen</translation>
    </message>
    <message>
        <source>Weighing more, it favours the size whose parts suit each other.</source>
        <translation>Mit mehr Gewicht begünstigt es die Größe, deren Teile zueinander passen.</translation>
    </message>
    <message>
        <source>suit each other</source>
        <comment>parts together</comment>
        <translation>passen zueinander</translation>
    </message>
    <message>
        <source>suit each other less</source>
        <comment>parts together</comment>
        <translation>passen weniger zueinander</translation>
    </message>
    <message>
        <source>parts that suit each other</source>
        <comment>what a size is taken for</comment>
        <translation>Teile, die zueinander passen</translation>
    </message>
    <message>
        <source>parts in stock</source>
        <translation>Teile auf Lager</translation>
    </message>
    <message>
        <source>parts in stock</source>
        <comment>for and against</comment>
        <translation>Teile auf Lager</translation>
    </message>
    <message>
        <source>Weighing more, it favours the size that does with a stem in stock.</source>
        <translation>Mit mehr Gewicht begünstigt es die Größe, die mit einem Vorbau vom Lager auskommt.</translation>
    </message>
    <message>
        <source>all there</source>
        <comment>parts in stock</comment>
        <translation>alles da</translation>
    </message>
    <message>
        <source>a stem that is in stock</source>
        <comment>what a size is taken for</comment>
        <translation>ein Vorbau, der auf Lager ist</translation>
    </message>
    <message>
        <source>the seat post</source>
        <comment>what a size is taken for</comment>
        <translation>die Sattelstütze</translation>
    </message>
    <message>
        <source>how it handles</source>
        <comment>what a size is taken for</comment>
        <translation>wie es sich lenkt</translation>
    </message>
    <message>
        <source>a smaller bike to carry and lock</source>
        <comment>what a size is taken for</comment>
        <translation>ein kleineres Rad zum Tragen und Abschließen</translation>
    </message>
    <message>
        <source>more room to move the bar later</source>
        <comment>what a size is taken for</comment>
        <translation>mehr Spielraum am Lenker für später</translation>
    </message>
    <message>
        <source>cranks that suit the leg</source>
        <comment>what a size is taken for</comment>
        <translation>Kurbeln, die zum Bein passen</translation>
    </message>
    <message>
        <source>the bar&apos;s width</source>
        <comment>what a size is taken for</comment>
        <translation>die Breite des Lenkers</translation>
    </message>
    <message>
        <source>a shoe that stays clear of the front wheel</source>
        <comment>what a size is taken for</comment>
        <translation>ein Schuh, der das Vorderrad nicht berührt</translation>
    </message>
    <message>
        <source>the maker&apos;s word on heights</source>
        <comment>what a size is taken for</comment>
        <translation>die Angabe des Herstellers zur Körpergröße</translation>
    </message>
    <message>
        <source>How it rides, more cautions and the rest: the same with --all.</source>
        <translation>Wie es fährt, weitere Hinweise und der Rest: dasselbe mit --all.</translation>
    </message>
    <message>
        <source>The bike ridden today is another kind of bike: its saddle height counts, where its bar is does not.</source>
        <translation>Das heutige Rad ist ein Rad anderer Art: seine Sattelhöhe zählt, die Stelle seines Lenkers nicht.</translation>
    </message>
    <message>
        <source>%1 is too large: only %2 of seat post show.</source>
        <translation>%1 ist zu groß: nur %2 der Sattelstütze sind zu sehen.</translation>
    </message>
    <message>
        <source>a stem %1 longer</source>
        <translation>einen %1 längeren Vorbau</translation>
    </message>
    <message>
        <source>a stem %1 shorter</source>
        <translation>einen %1 kürzeren Vorbau</translation>
    </message>
    <message>
        <source>To sit the same on %1, the same parts do.</source>
        <translation>Für denselben Sitz auf %1 genügen dieselben Teile.</translation>
    </message>
    <message>
        <source>To sit the same on %1 takes %2.</source>
        <translation>Derselbe Sitz auf %1 verlangt %2.</translation>
    </message>
    <message>
        <source>a bar that sits %1 lower still</source>
        <comment>than without any spacers</comment>
        <translation>einen noch %1 tieferen Lenker</translation>
    </message>
    <message>
        <source>level</source>
        <comment>the bar, against the saddle</comment>
        <translation>auf gleicher Höhe</translation>
    </message>
    <message>
        <source>%1 below</source>
        <comment>the bar, against the saddle</comment>
        <translation>%1 tiefer</translation>
    </message>
    <message>
        <source>%1 above</source>
        <comment>the bar, against the saddle</comment>
        <translation>%1 höher</translation>
    </message>
    <message>
        <source>bar against saddle</source>
        <translation>Lenker gegen Sattel</translation>
    </message>
    <message>
        <source>The palm below or above the top of the saddle, plumb.</source>
        <translation>Die Handfläche unter oder über der Satteloberseite, im Lot.</translation>
    </message>
    <message>
        <source>Slight: little sets them apart.</source>
        <translation>Knapp: wenig unterscheidet sie.</translation>
    </message>
    <message>
        <source>Ask the rider: %1, then %2; or %3, then %4.</source>
        <comment>what a size is taken for; the size; the same of the other</comment>
        <translation>Die Frage an den Fahrer: %1, dann %2; oder %3, dann %4.</translation>
    </message>
    <message>
        <source>Even: nothing that a rider notices sets them apart.</source>
        <translation>Gleichauf: nichts, was ein Fahrer merkt, unterscheidet sie.</translation>
    </message>
    <message>
        <source>%1 leaves %2 between shoe and front wheel; on %3 it reaches %4 into where that turns.</source>
        <translation>%1 lässt %2 zwischen Schuh und Vorderrad; bei %3 reicht er %4 dorthin, wo es schwenkt.</translation>
    </message>
    <message>
        <source>another number of cells in %1 than there are sizes or headings, and nothing says whose the numbers are, so they were not taken; accepted: a blank or a dash in each empty place</source>
        <translation>in %1 eine andere Zahl von Zellen als Größen oder Überschriften, und nichts sagt, wessen Zahlen es sind, darum wurden sie nicht genommen; angenommen wird: eine Lücke oder ein Strich an jeder leeren Stelle</translation>
    </message>
    <message>
        <source>a size has no name, so which numbers belong to which size is a guess; accepted: a name for each, or your word that it is right</source>
        <translation>eine Größe hat keinen Namen, darum ist vermutet, welche Zahlen zu welcher Größe gehören; angenommen wird: ein Name für jede, oder Ihre Bestätigung</translation>
    </message>
    <message>
        <source>%1 is printed once for two settings, so for %2 it is a guess; accepted: the same, or it is left out</source>
        <translation>%1 steht nur einmal für zwei Stellungen, ist also für %2 vermutet; angenommen wird: dasselbe, oder es wird ausgelassen</translation>
    </message>
    <message>
        <source>%1 was taken for %2, which is a guess; accepted: the same or another meaning, assigned by hand</source>
        <translation>%1 wurde für %2 gehalten, das ist vermutet; angenommen wird: dieselbe oder eine andere Bedeutung, von Hand zugewiesen</translation>
    </message>
    <message>
        <source>%1 cells in the page&apos;s tables, too many; accepted: %2</source>
        <translation>%1 Zellen in den Tabellen der Seite, zu viele; angenommen wird: %2</translation>
    </message>
    <message>
        <source>%1 tables within each other, too many; accepted: %2</source>
        <translation>%1 Tabellen ineinander, zu viele; angenommen wird: %2</translation>
    </message>
    <message>
        <source>It is right</source>
        <translation>Es stimmt so</translation>
    </message>
    <message>
        <source>Figures without a heading are not understood.</source>
        <translation>Zahlen ohne Überschrift werden nicht verstanden.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>sizes, headings</comment>
        <translation>%1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n heading(s) understood</source>
        <translation>
            <numerusform>%n Überschrift verstanden</numerusform>
            <numerusform>%n Überschriften verstanden</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 and %2 are printed alike in every figure; one of them is likely a copy.</source>
        <translation>%1 und %2 sind in jeder Zahl gleich gedruckt; eine davon ist wohl eine Kopie.</translation>
    </message>
    <message>
        <source>%1 is shifted by one size: with each size&apos;s neighbour&apos;s figure all agrees.</source>
        <translation>%1 ist um eine Größe verschoben: mit der Zahl der Nachbargröße stimmt alles.</translation>
    </message>
    <message>
        <source>%1 and %2 are swapped: the other way round all agrees.</source>
        <translation>%1 und %2 sind vertauscht: andersherum stimmt alles.</translation>
    </message>
    <message>
        <source>wheel radius</source>
        <translation>Radius des Laufrads</translation>
    </message>
    <message>
        <source>stem as sold</source>
        <translation>Vorbau ab Werk</translation>
    </message>
    <message>
        <source>bar width as sold</source>
        <translation>Lenkerbreite ab Werk</translation>
    </message>
    <message>
        <source>cranks as sold</source>
        <translation>Kurbeln ab Werk</translation>
    </message>
    <message>
        <source>rider height</source>
        <translation>Körpergröße</translation>
    </message>
    <message>
        <source>rider inseam</source>
        <translation>Schrittlänge</translation>
    </message>
    <message>
        <source>another part</source>
        <translation>ein anderes Teil</translation>
    </message>
    <message>
        <source>follows from the other figures with an ordinary head tube</source>
        <translation>folgt aus den übrigen Zahlen mit einem üblichen Steuerrohr</translation>
    </message>
    <message>
        <source>follows from the other figures with an ordinary lower headset</source>
        <translation>folgt aus den übrigen Zahlen mit einem üblichen Steuersatz unten</translation>
    </message>
    <message>
        <source>ISO 4210, city</source>
        <translation>ISO 4210, Stadt</translation>
    </message>
    <message>
        <source>ISO 4210, young adults</source>
        <translation>ISO 4210, Jugend</translation>
    </message>
    <message>
        <source>ISO 4210, mountain</source>
        <translation>ISO 4210, Gelände</translation>
    </message>
    <message>
        <source>ISO 4210, racing</source>
        <translation>ISO 4210, Rennen</translation>
    </message>
    <message>
        <source>The builder chose %1, which is no longer among the sizes</source>
        <comment>a size</comment>
        <translation>Gewählt ist %1, nicht mehr unter den Größen</translation>
    </message>
    <message>
        <source>The builder chose %1, as advised, with a set-up of their own</source>
        <comment>a size</comment>
        <translation>Gewählt ist %1, wie empfohlen, mit eigener Einstellung</translation>
    </message>
    <message>
        <source>The builder chose %1 with a set-up of their own</source>
        <comment>a size</comment>
        <translation>Gewählt ist %1 mit eigener Einstellung</translation>
    </message>
    <message>
        <source>The builder chose %1, as advised</source>
        <comment>a size</comment>
        <translation>Gewählt ist %1, wie empfohlen</translation>
    </message>
    <message>
        <source>The builder chose %1</source>
        <comment>a size</comment>
        <translation>Gewählt ist %1</translation>
    </message>
    <message>
        <source>%1.</source>
        <comment>what the builder chose</comment>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1: “%2”.</source>
        <comment>what the builder chose, why</comment>
        <translation>%1: „%2“.</translation>
    </message>
    <message>
        <source>Against %1 that costs:</source>
        <comment>a size</comment>
        <translation>Gegen %1 kostet das:</translation>
    </message>
    <message>
        <source>Against %1 it costs nothing that a rider notices.</source>
        <comment>a size</comment>
        <translation>Gegen %1 kostet das nichts, was ein Fahrer merkt.</translation>
    </message>
    <message>
        <source>Against the advised set-up:</source>
        <translation>Gegen die empfohlene Einstellung:</translation>
    </message>
    <message>
        <source>choice of the size</source>
        <translation>Wahl der Größe</translation>
    </message>
    <message>
        <source>choice of the set-up</source>
        <translation>Wahl der Einstellung</translation>
    </message>
    <message>
        <source>reason of the choice</source>
        <translation>Grund der Wahl</translation>
    </message>
    <message>
        <source>standover clearance</source>
        <comment>for and against</comment>
        <translation>Freiheit über dem Oberrohr</translation>
    </message>
    <message>
        <source>Weighing more, it favours the size with more standover clearance.</source>
        <translation>Mit mehr Gewicht gewinnt die Größe mit mehr Freiheit über dem Oberrohr.</translation>
    </message>
    <message>
        <source>not known</source>
        <comment>standover clearance</comment>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>standover clearance</source>
        <comment>what a size is taken for</comment>
        <translation>Freiheit über dem Oberrohr</translation>
    </message>
    <message>
        <source>%1 leaves %2 of standover clearance, %3 only %4.</source>
        <translation>%1 lässt %2 Freiheit über dem Oberrohr, %3 nur %4.</translation>
    </message>
    <message>
        <source>%1 only just keeps the shoe clear of the front wheel; on %2 it reaches %3 into where that turns.</source>
        <translation>%1 hält den Schuh gerade eben frei vom Vorderrad; auf %2 reicht er %3 in dessen Raum.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Vorbehalte</translation>
    </message>
    <message>
        <source>Nose behind bottom bracket</source>
        <translation>Nase hinter Tretlager</translation>
    </message>
    <message>
        <source>The pedal meets the ground at %1 of lean; at least %2 is required.</source>
        <translation>Das Pedal setzt bei %1 Schräglage auf; verlangt sind mindestens %2.</translation>
    </message>
    <message>
        <source>Only %1 of standover clearance; %2 is wanted.</source>
        <translation>Nur %1 Freiheit über dem Oberrohr; gewünscht sind %2.</translation>
    </message>
    <message>
        <source>The arms, at %1 to the back, are outside the %2° comfortable for %3.</source>
        <translation>Die Arme, bei %1 zum Rücken, liegen außerhalb der %2°, die für %3 bequem sind.</translation>
    </message>
    <message>
        <source>%1 more spacers</source>
        <translation>%1 mehr Spacer</translation>
    </message>
    <message>
        <source>%1 fewer spacers</source>
        <translation>%1 weniger Spacer</translation>
    </message>
    <message>
        <source>From pedal to front wheel there are %1; at least %2 is required.</source>
        <translation>Vom Pedal zum Vorderrad sind es %1; verlangt sind mindestens %2.</translation>
    </message>
    <message>
        <source>Hard braking lifts the rear wheel sooner than one counts on. Weight lower or further back helps.</source>
        <translation>Scharfes Bremsen hebt das Hinterrad früher, als man rechnet. Gewicht tiefer oder weiter hinten hilft.</translation>
    </message>
    <message>
        <source>With the rider sitting fully back the front wheel carries %1 of the load; at least %2 is asked for.</source>
        <translation>Sitzt der Fahrer ganz hinten, trägt das Vorderrad %1 der Last; gefordert sind mindestens %2.</translation>
    </message>
    <message>
        <source>Head angle %1; plumb under the front axle the steering axis passes at %2 of the wheel&apos;s radius. The advice is %3° and %4 %; many touring and small-wheeled bicycles lie outside.</source>
        <translation>Lenkwinkel %1; lotrecht unter der Vorderachse läuft die Lenkachse auf %2 des Radhalbmessers. Empfohlen sind %3° und %4 %; viele Reiseräder und Räder mit kleinen Laufrädern liegen außerhalb.</translation>
    </message>
    <message>
        <source>Between these speeds the bicycle keeps itself upright, hands off, worked out with estimated masses. It compares sizes and certifies nothing.</source>
        <translation>Zwischen diesen Geschwindigkeiten hält sich das Rad freihändig selbst aufrecht, mit geschätzten Massen gerechnet. Das vergleicht Größen und bescheinigt nichts.</translation>
    </message>
    <message>
        <source>Lean at which the lower pedal touches; at least 25°.</source>
        <translation>Schräglage, bei der das untere Pedal aufsetzt; mindestens 25°.</translation>
    </message>
    <message>
        <source>over the bars at</source>
        <translation>Überschlag bei</translation>
    </message>
    <message>
        <source>What it carries with saddle and rider as far back as they go; 25 % is asked for.</source>
        <translation>Was es trägt, wenn Sattel und Fahrer so weit hinten sind, wie sie können; gefordert sind 25 %.</translation>
    </message>
    <message>
        <source>Bead seat and twice the tyre; loaded it rolls 1 to 3 % less.</source>
        <translation>Felgenmaß und zweimal der Reifen; belastet rollt es 1 bis 3 % weniger.</translation>
    </message>
    <message>
        <source>harder braking before the rear wheel lifts</source>
        <translation>stärkeres Bremsen, ehe das Hinterrad abhebt</translation>
    </message>
    <message>
        <source>less braking before the rear wheel lifts</source>
        <translation>weniger Bremsen, ehe das Hinterrad abhebt</translation>
    </message>
    <message>
        <source>more of the weight on the front wheel</source>
        <translation>mehr Gewicht auf dem Vorderrad</translation>
    </message>
    <message>
        <source>less of the weight on the front wheel</source>
        <translation>weniger Gewicht auf dem Vorderrad</translation>
    </message>
    <message>
        <source>%1 (from memory: check a bought copy)</source>
        <comment>clause of a standard</comment>
        <translation>%1 (aus dem Gedächtnis: in einer gekauften Ausgabe nachsehen)</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>Pedal and ground, lean: %1.</source>
        <translation>Pedal und Boden, Schräglage: %1.</translation>
    </message>
    <message>
        <source>Pedal to front wheel: %1.</source>
        <translation>Pedal zum Vorderrad: %1.</translation>
    </message>
    <message>
        <source>Load on the front wheel, sitting fully back: %1.</source>
        <translation>Last auf dem Vorderrad, ganz hinten sitzend: %1.</translation>
    </message>
    <message>
        <source>Head angle and steering axis: %1.</source>
        <translation>Lenkwinkel und Lenkachse: %1.</translation>
    </message>
    <message>
        <source>Size of a wheel: %1.</source>
        <translation>Größe eines Laufrads: %1.</translation>
    </message>
    <message>
        <source>Steady by itself: the linear model of Whipple and Carvallo, masses estimated.</source>
        <translation>Von selbst stabil: das lineare Modell von Whipple und Carvallo, mit geschätzten Massen.</translation>
    </message>
    <message>
        <source>How far the back rises from the horizontal, hip to shoulder, hands at the bar&apos;s main place. In brackets what is comfortable for this riding.</source>
        <translation>Wie weit der Rücken über der Waagerechten liegt, Hüfte bis Schulter, Hände am Hauptgriff. In Klammern, was für diesen Einsatz bequem ist.</translation>
    </message>
    <message>
        <source>nose behind bottom bracket</source>
        <translation>Nase hinter Tretlager</translation>
    </message>
    <message>
        <source>the flipped %1 stem</source>
        <comment>after: with</comment>
        <translation>umgedrehtem Vorbau %1</translation>
    </message>
    <message>
        <source>a smaller bike</source>
        <comment>what a size is taken for</comment>
        <translation>ein kleineres Rad</translation>
    </message>
    <message>
        <source>a larger one</source>
        <comment>what a size is taken for</comment>
        <translation>ein größeres</translation>
    </message>
    <message>
        <source>gravel riding</source>
        <translation>Gravel</translation>
    </message>
    <message>
        <source>road riding</source>
        <translation>Straße</translation>
    </message>
    <message>
        <source>%1, %2, flipped</source>
        <comment>a stem</comment>
        <translation>%1, %2, umgedreht</translation>
    </message>
    <message>
        <source>%1 higher</source>
        <translation>%1 höher</translation>
    </message>
    <message>
        <source>%1 lower</source>
        <translation>%1 tiefer</translation>
    </message>
    <message>
        <source>%1 nearer</source>
        <translation>%1 näher</translation>
    </message>
    <message>
        <source>%1 further</source>
        <translation>%1 weiter vor</translation>
    </message>
    <message>
        <source>Look at the saddle&apos;s tilt, the bar&apos;s sweep and width and the grips first.</source>
        <translation>Zuerst Sattelneigung, Biegung und Breite des Lenkers und die Griffe ansehen.</translation>
    </message>
    <message>
        <source>Look at the saddle&apos;s tilt, the helmet and the glasses first.</source>
        <translation>Zuerst Sattelneigung, Helm und Brille ansehen.</translation>
    </message>
    <message>
        <source>Look at the saddle&apos;s height and tilt first.</source>
        <translation>Zuerst Höhe und Neigung des Sattels ansehen.</translation>
    </message>
    <message>
        <source>Look at the saddle&apos;s setback and the reach of the levers first.</source>
        <translation>Zuerst den Nachsitz und die Griffweite der Hebel ansehen.</translation>
    </message>
    <message>
        <source>%1: where the bar of today is, is not known or is another kind of bike&apos;s; measure it, and the hands go away from there.</source>
        <comment>a complaint</comment>
        <translation>%1: wo der heutige Lenker ist, ist nicht bekannt oder gehört zu einer anderen Art Rad; messen, dann rücken die Hände von dort weg.</translation>
    </message>
    <message>
        <source>%1: today the bar is already further that way than this body asks for, and the hands come %2.</source>
        <comment>a complaint, where the hands go</comment>
        <translation>%1: heute ist der Lenker schon weiter in dieser Richtung, als dieser Körper ihn braucht, und die Hände kommen %2.</translation>
    </message>
    <message>
        <source>%1: against today the hands come %2.</source>
        <comment>a complaint, where they go</comment>
        <translation>%1: gegen heute kommen die Hände %2.</translation>
    </message>
    <message>
        <source>Of that %1 is for the complaint, the rest for the body.</source>
        <comment>where to</comment>
        <translation>Davon %1 wegen der Beschwerde, der Rest für den Körper.</translation>
    </message>
    <message>
        <source>%1: the saddle stays as high as it is; look at its setback, the cranks and the gears.</source>
        <comment>a complaint</comment>
        <translation>%1: der Sattel bleibt so hoch, wie er ist; Nachsitz, Kurbeln und Gänge ansehen.</translation>
    </message>
    <message>
        <source>%1: the saddle comes %2 higher than today.</source>
        <comment>a complaint</comment>
        <translation>%1: der Sattel kommt %2 höher als heute.</translation>
    </message>
    <message>
        <source>%1: the saddle comes %2 lower than today.</source>
        <comment>a complaint</comment>
        <translation>%1: der Sattel kommt %2 tiefer als heute.</translation>
    </message>
    <message>
        <source>Numbness that lasts after the ride, or is back after one change, belongs to a health professional.</source>
        <translation>Taubheit, die nach der Fahrt bleibt oder nach einer Änderung wiederkommt, gehört zu Fachleuten für Gesundheit.</translation>
    </message>
    <message>
        <source>Pain that lasts belongs to a health professional.</source>
        <translation>Schmerz, der bleibt, gehört zu Fachleuten für Gesundheit.</translation>
    </message>
    <message>
        <source>Numb hands</source>
        <translation>Taube Hände</translation>
    </message>
    <message>
        <source>Neck</source>
        <translation>Nacken</translation>
    </message>
    <message>
        <source>Lower back</source>
        <translation>Unterer Rücken</translation>
    </message>
    <message>
        <source>Too stretched</source>
        <translation>Zu gestreckt</translation>
    </message>
    <message>
        <source>Too cramped</source>
        <translation>Zu gedrängt</translation>
    </message>
    <message>
        <source>Also: %1. Nothing is made of this.</source>
        <comment>own words</comment>
        <translation>Außerdem: %1. Das wird nicht ausgewertet.</translation>
    </message>
    <message>
        <source>For a quill of</source>
        <translation>Für Schaft von</translation>
    </message>
    <message>
        <source>Inside of a threaded steerer; empty where the stem clamps round it.</source>
        <translation>Innen im Gewinde-Gabelschaft; leer, wo der Vorbau außen klemmt.</translation>
    </message>
    <message>
        <source>Quill</source>
        <translation>Schaft</translation>
    </message>
    <message>
        <source>Diameter of what goes into a threaded steerer; empty where the stem clamps round it.</source>
        <translation>Durchmesser dessen, was in den Gewinde-Gabelschaft geht; leer, wo der Vorbau außen klemmt.</translation>
    </message>
    <message>
        <source>Quill out by</source>
        <translation>Schaft heraus</translation>
    </message>
    <message>
        <source>From all the way in to its mark.</source>
        <translation>Von ganz innen bis zu seiner Marke.</translation>
    </message>
    <message>
        <source>Of the saddle ridden today; without it, that of the box.</source>
        <translation>Des heute gefahrenen Sattels; ohne sie gilt der aus der Kiste.</translation>
    </message>
    <message>
        <source>quill %1</source>
        <translation>Schaft %1</translation>
    </message>
    <message>
        <source>Raise the quill by %1; its mark stays inside the steerer, here %2 at most.</source>
        <translation>Den Schaft %1 herausziehen; seine Marke bleibt im Gabelschaft, hier höchstens %2.</translation>
    </message>
    <message>
        <source>the size is judged with it</source>
        <comment>a remedy</comment>
        <translation>die Größe ist damit beurteilt</translation>
    </message>
    <message>
        <source>With the wheel at the back of its dropouts it still strikes.</source>
        <translation>Mit dem Rad ganz hinten in den Ausfallenden streift sie noch immer.</translation>
    </message>
    <message>
        <source>With the wheel at the back of its dropouts it passes by %1.</source>
        <translation>Mit dem Rad ganz hinten in den Ausfallenden bleiben %1.</translation>
    </message>
    <message>
        <source>quill raised %1</source>
        <translation>Schaft %1 heraus</translation>
    </message>
    <message>
        <source>as it is</source>
        <comment>a steerer</comment>
        <translation>wie er ist</translation>
    </message>
    <message>
        <source>what bothers</source>
        <translation>was stört</translation>
    </message>
    <message>
        <source>its quill %1 out</source>
        <comment>after: with</comment>
        <translation>%1 herausgezogenem Schaft</translation>
    </message>
    <message>
        <source>%1, %2, on a quill of %3</source>
        <comment>a stem</comment>
        <translation>%1, %2, auf Schaft %3</translation>
    </message>
    <message>
        <source>%1, %2, quill %3</source>
        <comment>a stem</comment>
        <translation>%1, %2, Schaft %3</translation>
    </message>
    <message>
        <source>Sore seat</source>
        <translation>Wundes Gesäß</translation>
    </message>
    <message>
        <source>Front of the knee</source>
        <translation>Knie vorn</translation>
    </message>
    <message>
        <source>Back of the knee</source>
        <translation>Knie hinten</translation>
    </message>
    <message>
        <source>Sore seat: the saddle&apos;s tilt and width first, then its height; another saddle is tried before anything else is moved.</source>
        <translation>Wundes Gesäß: zuerst Neigung und Breite des Sattels, dann seine Höhe; ein anderer Sattel wird versucht, ehe sonst etwas verstellt wird.</translation>
    </message>
    <message>
        <source>more trail (it holds its line)</source>
        <translation>mehr Nachlauf (hält besser die Spur)</translation>
    </message>
    <message>
        <source>less trail (it turns in quicker)</source>
        <translation>weniger Nachlauf (lenkt schneller ein)</translation>
    </message>
    <message>
        <source>a %1 stem of %2</source>
        <comment>to order</comment>
        <translation>ein Vorbau von %1 mit %2</translation>
    </message>
    <message>
        <source>a shim for a %1 stem</source>
        <comment>to order</comment>
        <translation>eine Hülse für einen Vorbau von %1</translation>
    </message>
    <message>
        <source>a quill adaptor for a %1 stem</source>
        <comment>to order</comment>
        <translation>ein Schaftadapter für einen Vorbau von %1</translation>
    </message>
    <message>
        <source>a seat post of at least %1</source>
        <comment>to order</comment>
        <translation>eine Sattelstütze von mindestens %1</translation>
    </message>
    <message>
        <source>%1 fits with parts to order: %2.</source>
        <comment>a size, parts</comment>
        <translation>%1 passt mit bestellten Teilen: %2.</translation>
    </message>
    <message>
        <source>%1 fits with a part to order: %2.</source>
        <comment>a size, a part</comment>
        <translation>%1 passt mit einem bestellten Teil: %2.</translation>
    </message>
    <message>
        <source>Whether the parts suit each other: a stem that points down does not suit a bar that rises, or tall spacers; nor does such a bar where a plain one is wanted.</source>
        <translation>Ob die Teile zueinander passen: ein Vorbau nach unten passt nicht zu einem ansteigenden Lenker oder zu hohen Spacern; ein solcher Lenker nicht, wo ein gerader gewünscht ist.</translation>
    </message>
    <message>
        <source>%1 does with parts that suit each other; on %2 they do so less: a bar that rises where a plain one is wanted, or a stem that points down under it or over tall spacers.</source>
        <translation>%1 kommt mit Teilen aus, die zueinander passen; bei %2 tun sie das weniger: ein ansteigender Lenker, wo ein gerader gewünscht ist, oder ein Vorbau, der darunter oder über hohen Spacern nach unten zeigt.</translation>
    </message>
    <message>
        <source>Whether the stem is in stock, or it or an adaptor for it has to be ordered.</source>
        <translation>Ob der Vorbau da ist, oder er oder ein Adapter für ihn bestellt werden muss.</translation>
    </message>
    <message>
        <source>part to order</source>
        <comment>parts in stock</comment>
        <translation>Teil zu bestellen</translation>
    </message>
    <message>
        <source>%1 does with a stem in stock; for %2 a stem or an adaptor has to be ordered.</source>
        <translation>%1 kommt mit einem Vorbau aus dem Bestand aus; für %2 muss ein Vorbau oder ein Adapter bestellt werden.</translation>
    </message>
    <message>
        <source>unknown document %1</source>
        <translation>unbekanntes Dokument %1</translation>
    </message>
    <message>
        <source>the JSON Schema of a document</source>
        <translation>das JSON-Schema eines Dokuments</translation>
    </message>
    <message>
        <source>of which document, fitting or frame?</source>
        <translation>von welchem Dokument, fitting oder frame?</translation>
    </message>
    <message>
        <source>%1 tyres</source>
        <translation>Reifen %1</translation>
    </message>
    <message>
        <source>%1 and mudguards</source>
        <translation>%1 und Schutzbleche</translation>
    </message>
    <message>
        <source>flat bar</source>
        <translation>flacher Lenker</translation>
    </message>
    <message>
        <source>swept bar</source>
        <translation>gebogener Lenker</translation>
    </message>
    <message>
        <source>drop bar</source>
        <translation>Rennlenker</translation>
    </message>
    <message>
        <source>cranks of %1</source>
        <translation>Kurbeln %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>size: its wheels</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>; </source>
        <comment>between items of a list that have commas</comment>
        <translation>; </translation>
    </message>
    <message>
        <source>the sizes are on different wheels</source>
        <translation>die Größen stehen auf verschiedenen Rädern</translation>
    </message>
    <message>
        <source>Kind of bar</source>
        <translation>Art des Lenkers</translation>
    </message>
    <message>
        <source>the same wheels on all sizes</source>
        <translation>dieselben Räder an allen Größen</translation>
    </message>
    <message>
        <source>Other rim size</source>
        <translation>Andere Felgengröße</translation>
    </message>
    <message>
        <source>Only where it is not the size&apos;s own: 584 on a frame for 622.</source>
        <translation>Nur wo es nicht die der Größe ist: 584 in einem Rahmen für 622.</translation>
    </message>
    <message>
        <source>Stem, sold with</source>
        <translation>Vorbau, verkauft mit</translation>
    </message>
    <message>
        <source>Its length, where the maker sells the size complete.</source>
        <translation>Seine Länge, wenn der Hersteller die Größe komplett verkauft.</translation>
    </message>
    <message>
        <source>Bar width, sold with</source>
        <translation>Lenkerbreite, verkauft mit</translation>
    </message>
    <message>
        <source>Crank, sold with</source>
        <translation>Kurbel, verkauft mit</translation>
    </message>
    <message>
        <source>Tyre, sold with</source>
        <translation>Reifen, verkauft mit</translation>
    </message>
    <message>
        <source>It counts until the bicycle&apos;s own tyre is given.</source>
        <translation>Er zählt, bis der Reifen des Fahrrads angegeben ist.</translation>
    </message>
    <message>
        <source>Some of the sizes have mudguards and some have none, so it is not only the frames that are compared: say which the bicycle has.</source>
        <translation>Manche Größen haben Schutzbleche und manche keine, also werden nicht nur die Rahmen verglichen: Geben Sie an, was das Fahrrad hat.</translation>
    </message>
    <message>
        <source>%1 stood here in version 1; accepted: once, at %2</source>
        <translation>%1 stand in Version 1 hier; angenommen wird: einmal, unter %2</translation>
    </message>
    <message>
        <source>none of them is the bicycle&apos;s kind, %1; accepted: at least one that is, or another kind at /bicycle/bar_kind</source>
        <translation>keiner ist von der Art des Fahrrads, %1; angenommen wird: mindestens einer davon, oder eine andere Art unter /bicycle/bar_kind</translation>
    </message>
    <message>
        <source>The sizes are on different wheels (%1), so it is not only the frames that are compared. Which wheels does the bicycle have?</source>
        <translation>Die Größen stehen auf verschiedenen Rädern (%1), also werden nicht nur die Rahmen verglichen. Welche Räder hat das Fahrrad?</translation>
    </message>
    <message>
        <source>The sizes are on different tyres, %1 to %2, so it is not only the frames that are compared: say which the bicycle has.</source>
        <translation>Die Größen stehen auf verschiedenen Reifen, %1 bis %2, also werden nicht nur die Rahmen verglichen: Geben Sie an, welche das Fahrrad hat.</translation>
    </message>
    <message>
        <source>a quill %1 higher</source>
        <translation>einen %1 höheren Schaft</translation>
    </message>
    <message>
        <source>a quill %1 lower</source>
        <translation>einen %1 tieferen Schaft</translation>
    </message>
    <message>
        <source>tyres not stated</source>
        <translation>Reifen nicht angegeben</translation>
    </message>
    <message>
        <source>-o wants a sheet ending in .pdf</source>
        <translation>-o will ein Blatt, das auf .pdf endet</translation>
    </message>
    <message>
        <source>unknown paper %1</source>
        <translation>unbekanntes Papier %1</translation>
    </message>
    <message>
        <source>unknown page %1</source>
        <translation>unbekannte Seite %1</translation>
    </message>
    <message>
        <source>%1: nothing in the box of parts makes a bicycle of this size; there is no sheet</source>
        <translation>%1: nichts in der Teilekiste macht aus dieser Größe ein Rad; es gibt kein Blatt</translation>
    </message>
    <message>
        <source>the set-up sheet</source>
        <translation>das Einstellblatt</translation>
    </message>
    <message>
        <source>the sheet to write, a PDF</source>
        <translation>das Blatt, ein PDF</translation>
    </message>
    <message>
        <source>mechanic, rider, or both, as without it</source>
        <translation>mechanic, rider oder both, wie ohne Angabe</translation>
    </message>
    <message>
        <source>a4, as without it, or letter</source>
        <translation>a4, wie ohne Angabe, oder letter</translation>
    </message>
    <message>
        <source>Numb feet</source>
        <translation>Taube Füße</translation>
    </message>
    <message>
        <source>Nervous steering</source>
        <translation>Nervöse Lenkung</translation>
    </message>
    <message>
        <source>Toe touches the wheel</source>
        <translation>Zehe berührt das Rad</translation>
    </message>
    <message>
        <source>Numb feet: shoes that are wider or less tight first, then the foot further forward on the pedal; saddle and bar stay.</source>
        <translation>Taube Füße: zuerst Schuhe, die weiter oder weniger fest sind, dann den Fuß weiter vorn auf das Pedal; Sattel und Lenker bleiben.</translation>
    </message>
    <message>
        <source>Nervous steering: the play of the headset, the tyres&apos; pressure and the luggage first; how calmly each size steers is told where it rides.</source>
        <translation>Nervöse Lenkung: zuerst das Spiel des Steuersatzes, der Druck der Reifen und das Gepäck; wie ruhig jede Größe lenkt, steht beim Fahrverhalten.</translation>
    </message>
    <message>
        <source>Toe touches the wheel: the room between shoe and wheel is worked out for each size, and what gives more of it.</source>
        <translation>Zehe berührt das Rad: der Platz zwischen Schuh und Rad ist für jede Größe ausgerechnet, und was mehr davon gibt.</translation>
    </message>
    <message>
        <source>Stem</source>
        <translation>Vorbau</translation>
    </message>
    <message>
        <source>Length, as marked on it.</source>
        <translation>Länge, wie auf ihm angegeben.</translation>
    </message>
    <message>
        <source>Stem&apos;s angle</source>
        <translation>Winkel des Vorbaus</translation>
    </message>
    <message>
        <source>As mounted: negative when it slopes down.</source>
        <translation>Wie montiert: negativ, wenn er fällt.</translation>
    </message>
    <message>
        <source>Spacers under the stem</source>
        <translation>Distanzringe unter dem Vorbau</translation>
    </message>
    <message>
        <source>All together.</source>
        <translation>Alle zusammen.</translation>
    </message>
    <message>
        <source>The bar is about %1 from where it is as sold: hoses and cables may be short.</source>
        <translation>Der Lenker ist etwa %1 von dort entfernt, wo er im Verkauf steht: Leitungen und Züge können zu kurz sein.</translation>
    </message>
    <message>
        <source>%1 is no day; accepted: year, month and day as 2026-03-05</source>
        <translation>%1 ist kein Tag; möglich: Jahr, Monat und Tag wie 2026-03-05</translation>
    </message>
    <message>
        <source>%1 is before %2 at %3; accepted: that day or a later one</source>
        <translation>%1 liegt vor %2 bei %3; möglich: dieser Tag oder ein späterer</translation>
    </message>
    <message>
        <source>plumb over it</source>
        <comment>the saddle&apos;s nose, against the bottom bracket</comment>
        <translation>lotrecht darüber</translation>
    </message>
    <message>
        <source>%1 behind</source>
        <comment>the saddle&apos;s nose, against the bottom bracket</comment>
        <translation>%1 dahinter</translation>
    </message>
    <message>
        <source>%1 ahead</source>
        <comment>the saddle&apos;s nose, against the bottom bracket</comment>
        <translation>%1 davor</translation>
    </message>
    <message>
        <source>this is no ordinary file</source>
        <translation>das ist keine gewöhnliche Datei</translation>
    </message>
    <message>
        <source>another table begins here and was not read; accepted: tables of a frame&apos;s geometry</source>
        <translation>hier beginnt eine weitere Tabelle, sie wurde nicht gelesen; möglich: Tabellen mit Rahmengeometrie</translation>
    </message>
    <message>
        <source>the page holds more tables than are read at once; accepted: fewer</source>
        <translation>die Seite hat mehr Tabellen, als auf einmal gelesen werden; möglich: weniger</translation>
    </message>
    <message>
        <source>table %1</source>
        <comment>of several in a text</comment>
        <translation>Tabelle %1</translation>
    </message>
    <message>
        <source>%1, table %2</source>
        <comment>a model</comment>
        <translation>%1, Tabelle %2</translation>
    </message>
    <message>
        <source>all ticked in</source>
        <translation>alle angehakt</translation>
    </message>
    <message>
        <source>%1 alone</source>
        <translation>%1 allein</translation>
    </message>
    <message>
        <source>Not the kind of bar wanted.</source>
        <translation>Nicht die gewünschte Lenkerart.</translation>
    </message>
    <message>
        <source>The saddle about %1 from the bracket to its top.</source>
        <translation>Der Sattel etwa %1 vom Tretlager bis zu seiner Oberseite.</translation>
    </message>
    <message>
        <source>not a fitting that can be read</source>
        <translation>keine lesbare Anpassung</translation>
    </message>
    <message>
        <source>Not decided yet</source>
        <translation>Noch nicht entschieden</translation>
    </message>
    <message>
        <source>Either the %1 or the %2</source>
        <comment>sizes</comment>
        <translation>%1 oder %2</translation>
    </message>
    <message>
        <source>Chosen: the %1</source>
        <comment>a size</comment>
        <translation>Gewählt: %1</translation>
    </message>
    <message>
        <source>That is for %1; for %2 it fits.</source>
        <comment>kinds of riding</comment>
        <translation>Das gilt für %1; für %2 passt sie.</translation>
    </message>
</context>
<context>
    <name>tripoise::BicycleModel</name>
    <message>
        <source>standard</source>
        <translation>Norm</translation>
    </message>
</context>
<context>
    <name>tripoise::Documents</name>
    <message>
        <source>Work that was not saved last time is kept. It comes back when Tripoise is started without a file.</source>
        <translation>Was letztes Mal nicht gespeichert wurde, ist aufgehoben. Es kommt wieder, wenn Tripoise ohne Datei gestartet wird.</translation>
    </message>
    <message>
        <source>What was not saved last time cannot be read (%1). It is kept in %2.</source>
        <translation>Was letztes Mal nicht gespeichert wurde, lässt sich nicht lesen (%1). Es liegt in %2.</translation>
    </message>
    <message>
        <source>What was not saved last time is back. There is more of it: it comes back when Tripoise is started again.</source>
        <translation>Was letztes Mal nicht gespeichert wurde, ist wieder da. Es gibt noch mehr davon: Es kommt, wenn Tripoise wieder gestartet wird.</translation>
    </message>
    <message>
        <source>What was not saved last time is back.</source>
        <translation>Was letztes Mal nicht gespeichert wurde, ist wieder da.</translation>
    </message>
    <message>
        <source>%1 is not a file on this computer.</source>
        <translation>%1 ist keine Datei auf diesem Rechner.</translation>
    </message>
    <message>
        <source>sizes from %1</source>
        <translation>Größen aus %1</translation>
    </message>
    <message>
        <source>What you enter cannot be kept safe meanwhile: %1. Save the fitting often.</source>
        <translation>Was eingegeben wird, lässt sich zwischendurch nicht sichern: %1. Die Anpassung oft speichern.</translation>
    </message>
    <message>
        <source>%1 is gone from its folder. Everything is still here; saving writes it again.</source>
        <translation>%1 ist aus dem Ordner verschwunden. Alles ist noch da; Speichern schreibt die Datei neu.</translation>
    </message>
    <message>
        <source>Another program has changed %1. Here it is as you had it; saving keeps what the other wrote as history.</source>
        <translation>Ein anderes Programm hat %1 geändert. Hier steht der bisherige Stand; Speichern hebt die andere Fassung als Vorgeschichte auf.</translation>
    </message>
    <message>
        <source>%1 is back in its folder.</source>
        <translation>%1 ist wieder im Ordner.</translation>
    </message>
    <message>
        <source>New fitting</source>
        <translation>Neue Anpassung</translation>
    </message>
    <message>
        <source>%1 (to look at only)</source>
        <translation>%1 (nur zum Ansehen)</translation>
    </message>
    <message>
        <source>%1 · not saved</source>
        <comment>name of a fitting</comment>
        <translation>%1 · nicht gespeichert</translation>
    </message>
    <message>
        <source>Others who use this computer can read what Tripoise keeps in %1: its disk knows no permissions.</source>
        <translation>Andere, die diesen Rechner benutzen, können lesen, was Tripoise in %1 aufhebt: Der Datenträger kennt keine Zugriffsrechte.</translation>
    </message>
    <message>
        <source>what is on the screen and was not saved</source>
        <translation>was auf dem Bildschirm steht und nicht gespeichert ist</translation>
    </message>
    <message>
        <source>There is no set-up sheet before something is decided that can be set up.</source>
        <translation>Es gibt kein Einstellblatt, bevor etwas entschieden ist, das sich einstellen lässt.</translation>
    </message>
    <message>
        <source>nothing in the box of parts makes a bicycle of this size</source>
        <translation>nichts in der Teilekiste macht aus dieser Größe ein Rad</translation>
    </message>
    <message>
        <source>The set-up sheet was not written to %1: %2.</source>
        <translation>Das Einstellblatt wurde nicht nach %1 geschrieben: %2.</translation>
    </message>
    <message>
        <source>The set-up sheet is at %1.</source>
        <translation>Das Einstellblatt ist in %1.</translation>
    </message>
    <message>
        <source>the last sizes</source>
        <translation>die letzten Größen</translation>
    </message>
    <message>
        <source>%1 was written by a newer Tripoise and is not written over; duplicate it.</source>
        <translation>%1 stammt von einem neueren Tripoise und wird nicht überschrieben; ein Duplikat lässt sich bearbeiten.</translation>
    </message>
    <message>
        <source>“%1” is open in another window: this one writes nothing. Go on there, or with a duplicate here.</source>
        <translation>„%1“ ist in einem anderen Fenster geöffnet: Dieses schreibt nichts. Dort weiterarbeiten, oder hier mit einem Duplikat.</translation>
    </message>
    <message>
        <source>“%1” as it was on %2, to look at: nothing is written.</source>
        <translation>„%1“, wie sie am %2 war, zum Ansehen: Es wird nichts geschrieben.</translation>
    </message>
    <message>
        <source>No name yet</source>
        <translation>Noch kein Name</translation>
    </message>
    <message>
        <source>“%1” cannot be kept in %2: %3. Everything is still here; export it, or choose another folder on the page of the fittings.</source>
        <translation>„%1“ lässt sich nicht in %2 aufheben: %3. Es ist noch alles da; exportieren oder auf der Seite der Anpassungen einen anderen Ordner wählen.</translation>
    </message>
    <message>
        <source>%1 was not written: %2.</source>
        <translation>%1 wurde nicht geschrieben: %2.</translation>
    </message>
    <message>
        <source>it is the fitting itself</source>
        <translation>es ist die Anpassung selbst</translation>
    </message>
    <message>
        <source>A copy is at %1.</source>
        <translation>Eine Kopie liegt unter %1.</translation>
    </message>
    <message>
        <source>duplicate</source>
        <translation>Duplikat</translation>
    </message>
    <message>
        <source>This is a duplicate; it is kept in %1.</source>
        <translation>Dies ist ein Duplikat; es liegt unter %1.</translation>
    </message>
    <message>
        <source>%1 is imported; the file itself stays as it is.</source>
        <translation>%1 ist importiert; die Datei selbst bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>Nothing can be written in %1.</source>
        <translation>In %1 lässt sich nichts schreiben.</translation>
    </message>
    <message>
        <source>Fittings are kept in %1 from now on; those in %2 stay there.</source>
        <translation>Anpassungen liegen von nun an in %1; die in %2 bleiben dort.</translation>
    </message>
    <message>
        <source>rider</source>
        <translation>Fahrer</translation>
    </message>
    <message>
        <source>“%1” is open in another window; rename it there.</source>
        <translation>„%1“ ist in einem anderen Fenster geöffnet; dort umbenennen.</translation>
    </message>
    <message>
        <source>This is as it was on %1; what stood there is kept as an earlier version.</source>
        <translation>Dies ist der Stand vom %1; was bisher dort stand, bleibt als frühere Fassung.</translation>
    </message>
</context>
<context>
    <name>tripoise::FittingsModel</name>
    <message>
        <source>The folder of the fittings cannot be read: %1. Bring its disk back, or choose another folder.</source>
        <translation>Der Ordner der Anpassungen lässt sich nicht lesen: %1. Den Datenträger anschließen oder einen anderen Ordner wählen.</translation>
    </message>
    <message>
        <source>None: it was not changed since it is kept.</source>
        <translation>Keine: Sie wurde nicht geändert, seit sie aufgehoben wird.</translation>
    </message>
    <message>
        <source>None yet. Leave this page and type: a fitting is kept here by itself from the first entry on. Those that lie elsewhere can be imported.</source>
        <translation>Noch keine. Diese Seite verlassen und eintippen: Von der ersten Eingabe an wird eine Anpassung hier von selbst aufgehoben. Andere lassen sich importieren.</translation>
    </message>
    <message>
        <source>No fitting has all of these words.</source>
        <translation>Keine Anpassung hat alle diese Wörter.</translation>
    </message>
    <message>
        <source>No name yet</source>
        <translation>Noch kein Name</translation>
    </message>
</context>
<context>
    <name>tripoise::FolderModel</name>
    <message>
        <source>Home</source>
        <translation>Eigene Dateien</translation>
    </message>
    <message>
        <source>Documents</source>
        <translation>Dokumente</translation>
    </message>
    <message>
        <source>There is no folder %1.</source>
        <translation>Den Ordner %1 gibt es nicht.</translation>
    </message>
    <message>
        <source>%1 is a folder.</source>
        <translation>%1 ist ein Ordner.</translation>
    </message>
    <message>
        <source>There is no file %1.</source>
        <translation>Die Datei %1 gibt es nicht.</translation>
    </message>
</context>
<context>
    <name>tripoise::LibraryModel</name>
    <message>
        <source>It is still kept: %1.</source>
        <translation>Er ist noch gemerkt: %1.</translation>
    </message>
</context>
<context>
    <name>tripoise::RiderModel</name>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>body statistics</source>
        <translation>Körperstatistik</translation>
    </message>
    <message>
        <source>suppleness</source>
        <translation>Beweglichkeit</translation>
    </message>
    <message>
        <source>heel</source>
        <translation>Ferse</translation>
    </message>
</context>
<context>
    <name>tripoise::RidingModel</name>
    <message>
        <source>mix of riding</source>
        <translation>Einsatz</translation>
    </message>
    <message>
        <source>traffic</source>
        <translation>Verkehr</translation>
    </message>
    <message>
        <source>pedals</source>
        <translation>Pedale</translation>
    </message>
    <message>
        <source>feet on the ground</source>
        <translation>Füße auf dem Boden</translation>
    </message>
    <message>
        <source>bending</source>
        <translation>Beugen</translation>
    </message>
    <message>
        <source>luggage</source>
        <translation>Gepäck</translation>
    </message>
</context>
<context>
    <name>tripoise::TablePage</name>
    <message>
        <source>There is no text in the clipboard.</source>
        <translation>In der Zwischenablage ist kein Text.</translation>
    </message>
    <message>
        <source>%1 is not a file on this computer.</source>
        <translation>%1 ist keine Datei auf diesem Rechner.</translation>
    </message>
    <message>
        <source>%1 was not opened: it is too large to be a geometry table.</source>
        <translation>%1 wurde nicht geöffnet: zu groß für eine Geometrietabelle.</translation>
    </message>
    <message>
        <source>%1 was not opened: %2.</source>
        <translation>%1 wurde nicht geöffnet: %2.</translation>
    </message>
    <message>
        <source>%1 was not opened: it holds no text.</source>
        <translation>%1 wurde nicht geöffnet: es ist kein Text darin.</translation>
    </message>
    <message>
        <source>The frame could not be kept: %1. Without keeping it, the sizes can be added.</source>
        <translation>Der Rahmen konnte nicht gemerkt werden: %1. Ohne ihn zu merken, können die Größen dazu.</translation>
    </message>
    <message>
        <source>The table is being read…</source>
        <translation>Die Tabelle wird gelesen …</translation>
    </message>
</context>
</TS>
