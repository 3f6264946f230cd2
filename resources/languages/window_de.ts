<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>ClothColours</name>
    <message>
        <source>Chalk</source>
        <translation>Kreide</translation>
    </message>
    <message>
        <source>Linen</source>
        <translation>Leinen</translation>
    </message>
    <message>
        <source>Straw</source>
        <translation>Stroh</translation>
    </message>
    <message>
        <source>Mustard</source>
        <translation>Senf</translation>
    </message>
    <message>
        <source>Rust</source>
        <translation>Rost</translation>
    </message>
    <message>
        <source>Brick</source>
        <translation>Ziegel</translation>
    </message>
    <message>
        <source>Plum</source>
        <translation>Pflaume</translation>
    </message>
    <message>
        <source>Denim</source>
        <translation>Jeansblau</translation>
    </message>
    <message>
        <source>Teal</source>
        <translation>Petrol</translation>
    </message>
    <message>
        <source>Moss</source>
        <translation>Moos</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Flaschengrün</translation>
    </message>
    <message>
        <source>Slate</source>
        <translation>Schiefer</translation>
    </message>
    <message>
        <source>Bark</source>
        <translation>Rinde</translation>
    </message>
    <message>
        <source>Charcoal</source>
        <translation>Anthrazit</translation>
    </message>
</context>
<context>
    <name>OrderEdits</name>
    <message>
        <source>Product %1</source>
        <translation>Produkt %1</translation>
    </message>
    <message>
        <source>Webbing %1</source>
        <translation>Gurtband %1</translation>
    </message>
</context>
<context>
    <name>RollEdits</name>
    <message>
        <source>This is the only roll, and a job has at least one</source>
        <translation>Dies ist die einzige Rolle, und ein Projekt hat mindestens eine</translation>
    </message>
    <message>
        <source>add another roll before you take it away</source>
        <translation>eine andere Rolle hinzufügen, bevor diese weggenommen wird</translation>
    </message>
</context>
<context>
    <name>SewingEdits</name>
    <message>
        <source>Step %1</source>
        <translation>Schritt %1</translation>
    </message>
    <message>
        <source>Order %1</source>
        <translation>Folge %1</translation>
    </message>
</context>
<context>
    <name>fields</name>
    <message>
        <source>across</source>
        <translation>quer</translation>
    </message>
    <message>
        <source>across percent</source>
        <translation>quer Prozent</translation>
    </message>
    <message>
        <source>along</source>
        <translation>längs</translation>
    </message>
    <message>
        <source>along percent</source>
        <translation>längs Prozent</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>höchstens</translation>
    </message>
    <message>
        <source>cloth</source>
        <translation>Stoff</translation>
    </message>
    <message>
        <source>colour</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>core</source>
        <translation>Hülse</translation>
    </message>
    <message>
        <source>count</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>cuts</source>
        <translation>Schnitte</translation>
    </message>
    <message>
        <source>diameters</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>each at least</source>
        <translation>von jedem mindestens</translation>
    </message>
    <message>
        <source>ends</source>
        <translation>Enden</translation>
    </message>
    <message>
        <source>flaws</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>full length</source>
        <translation>volle Länge</translation>
    </message>
    <message>
        <source>grain</source>
        <translation>Fadenlauf</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>beibehalten</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>labels</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>lines</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>loss</source>
        <translation>Verlust</translation>
    </message>
    <message>
        <source>marks</source>
        <translation>Merkmale</translation>
    </message>
    <message>
        <source>match</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <source>may</source>
        <translation>darf</translation>
    </message>
    <message>
        <source>may turn</source>
        <translation>darf gedreht werden</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>must</source>
        <translation>muss</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>nap</source>
        <translation>Strich</translation>
    </message>
    <message>
        <source>of</source>
        <translation>von</translation>
    </message>
    <message>
        <source>on fold</source>
        <translation>im Bruch</translation>
    </message>
    <message>
        <source>on hand</source>
        <translation>Vorrat</translation>
    </message>
    <message>
        <source>order</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>panel</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>panels</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>price per metre</source>
        <translation>Preis je Meter</translation>
    </message>
    <message>
        <source>prices</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>product</source>
        <translation>Produkt</translation>
    </message>
    <message>
        <source>products</source>
        <translation>Produkt</translation>
    </message>
    <message>
        <source>railroaded</source>
        <translation>quer gemustert</translation>
    </message>
    <message>
        <source>repeat</source>
        <translation>Rapport</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>roll</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>rolls</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>rules</source>
        <translation>Regel</translation>
    </message>
    <message>
        <source>seam</source>
        <translation>Naht</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>Sekunden</translation>
    </message>
    <message>
        <source>selvedge</source>
        <translation>Webkante</translation>
    </message>
    <message>
        <source>sewing</source>
        <translation>Arbeitsfolge</translation>
    </message>
    <message>
        <source>sewn</source>
        <translation>genäht</translation>
    </message>
    <message>
        <source>shrinkage</source>
        <translation>Einlauf</translation>
    </message>
    <message>
        <source>squared</source>
        <translation>rechtwinklig</translation>
    </message>
    <message>
        <source>start across</source>
        <translation>Anfang quer</translation>
    </message>
    <message>
        <source>start along</source>
        <translation>Anfang längs</translation>
    </message>
    <message>
        <source>steps</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>symmetric</source>
        <translation>symmetrisch</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>timed</source>
        <translation>gestoppt</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>webbing</source>
        <translation>Gurtband</translation>
    </message>
    <message>
        <source>width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>worth</source>
        <translation>Wert</translation>
    </message>
</context>
<context>
    <name>foldyard</name>
    <message>
        <source>%1 × %2 of %3</source>
        <translation>%1 × %2 aus %3</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Lays</source>
        <translation>Stapel</translation>
    </message>
    <message>
        <source>Gave</source>
        <translation>Ergab</translation>
    </message>
    <message>
        <source>Least cloth, by its worth</source>
        <translation>Am wenigsten Stoff, nach seinem Wert</translation>
    </message>
    <message>
        <source>Fewest lays under the cutter</source>
        <translation>Am wenigsten Stapel unter dem Schneidegerät</translation>
    </message>
    <message>
        <source>Least time at the cutting table</source>
        <translation>Am wenigsten Zeit am Zuschneidetisch</translation>
    </message>
    <message>
        <source>Most worth in remnants that are kept</source>
        <translation>Größter Wert in aufbewahrten Reststücken</translation>
    </message>
    <message>
        <source>lengths kept on “%1”</source>
        <translation>Bahnen auf „%1“</translation>
    </message>
    <message>
        <source>let go of %1</source>
        <translation>%1 freigeben</translation>
    </message>
    <message>
        <source>Lengths</source>
        <translation>Bahnen</translation>
    </message>
    <message>
        <source>So many of them are kept</source>
        <translation>So viele davon bleiben, wie sie sind</translation>
    </message>
    <message>
        <source>Roll</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>The roll they are cut from</source>
        <translation>Die Rolle, aus der sie geschnitten werden</translation>
    </message>
    <message>
        <source>Long</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Each, along the roll, without its allowance</source>
        <translation>Je Bahn, längs der Rolle, ohne ihre Zugabe</translation>
    </message>
    <message>
        <source>Folded</source>
        <translation>Gefaltet</translation>
    </message>
    <message>
        <source>How they are folded</source>
        <translation>Wie sie gefaltet sind</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Schnitt</translation>
    </message>
    <message>
        <source>Places that are cut in one, each through all plies below it</source>
        <translation>Stellen, die in einem Zug geschnitten werden, jede durch alle Lagen darunter</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>move the aim %1</source>
        <translation>Ziel %1 verschieben</translation>
    </message>
    <message>
        <source>What counts when the order is filled, most important first</source>
        <translation>Was zählt, wenn der Auftrag erfüllt ist, das Wichtigste zuerst</translation>
    </message>
    <message>
        <source>What comes first is never given up for what comes later</source>
        <translation>Was zuerst kommt, wird nie für Späteres aufgegeben</translation>
    </message>
    <message>
        <source>“%1” of %2</source>
        <translation>„%1“ aus %2</translation>
    </message>
    <message>
        <source>take %1 from what is on hand</source>
        <translation>%1 aus dem Vorrat nehmen</translation>
    </message>
    <message>
        <source>On hand</source>
        <translation>Vorhanden</translation>
    </message>
    <message>
        <source>Cut and not yet sewn; they serve the order</source>
        <translation>Zugeschnitten und noch nicht genäht; sie dienen dem Auftrag</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>A panel that is cut</source>
        <translation>Ein Teil, das zugeschnitten wird</translation>
    </message>
    <message>
        <source>Cloth</source>
        <translation>Stoff</translation>
    </message>
    <message>
        <source>The cloth it was cut from</source>
        <translation>Der Stoff, aus dem es geschnitten wurde</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produkt</translation>
    </message>
    <message>
        <source>What is to be made</source>
        <translation>Was gefertigt werden soll</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Aus</translation>
    </message>
    <message>
        <source>Cloths or marks that may serve, set apart by semicolons; empty: any cloth</source>
        <translation>Stoffe oder Merkmale, die infrage kommen, getrennt durch Semikolon; leer: jeder Stoff</translation>
    </message>
    <message>
        <source>any</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <source>All pieces of the line come from this roll</source>
        <translation>Alle Stücke der Zeile kommen aus dieser Rolle</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>Regeln</translation>
    </message>
    <message>
        <source>How many of a cloth or mark there are to be; they stand in the table below</source>
        <translation>Wie viele es von einem Stoff oder Merkmal sein sollen; sie stehen in der Tabelle darunter</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>the rule for “%1”</source>
        <translation>Regel für „%1“</translation>
    </message>
    <message>
        <source>add a rule</source>
        <translation>Regel hinzufügen</translation>
    </message>
    <message>
        <source>take away %1</source>
        <translation>%1 wegnehmen</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>A cloth, or a mark that rolls have</source>
        <translation>Ein Stoff oder ein Merkmal, das Rollen haben</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Mindestens</translation>
    </message>
    <message>
        <source>So many pieces of it at least</source>
        <translation>So viele Stücke davon mindestens</translation>
    </message>
    <message>
        <source>At most</source>
        <translation>Höchstens</translation>
    </message>
    <message>
        <source>So many pieces of it at most; empty: as many as there are</source>
        <translation>So viele Stücke davon höchstens; leer: so viele es gibt</translation>
    </message>
    <message>
        <source>add a line to the order</source>
        <translation>Zeile zum Auftrag hinzufügen</translation>
    </message>
    <message>
        <source>take %1 out of the order</source>
        <translation>%1 aus dem Auftrag nehmen</translation>
    </message>
    <message>
        <source>Must</source>
        <translation>Muss</translation>
    </message>
    <message>
        <source>How many pieces are to be made</source>
        <translation>Wie viele Stücke gefertigt werden sollen</translation>
    </message>
    <message>
        <source>May</source>
        <translation>Darf</translation>
    </message>
    <message>
        <source>How many more may be made, where they are worth more than their cloth</source>
        <translation>Wie viele mehr gefertigt werden dürfen, wo sie mehr wert sind als ihr Stoff</translation>
    </message>
    <message>
        <source>Of each</source>
        <translation>Von jedem</translation>
    </message>
    <message>
        <source>At least so many pieces of every cloth that may serve</source>
        <translation>Mindestens so viele Stücke von jedem Stoff, der infrage kommt</translation>
    </message>
    <message>
        <source>at least %1 of %2</source>
        <translation>mindestens %1 von %2</translation>
    </message>
    <message>
        <source>at most %1 of %2</source>
        <translation>höchstens %1 von %2</translation>
    </message>
    <message>
        <source>Line %1, “%2”</source>
        <translation>Zeile %1, „%2“</translation>
    </message>
    <message>
        <source>Product “%1”</source>
        <translation>Produkt „%1“</translation>
    </message>
    <message>
        <source>“%1” is not a number of pieces</source>
        <translation>„%1“ ist keine Stückzahl</translation>
    </message>
    <message>
        <source>write a whole number such as 12</source>
        <translation>eine ganze Zahl wie 12 schreiben</translation>
    </message>
    <message>
        <source>What is sewn and sold, piece by piece</source>
        <translation>Was genäht und verkauft wird, Stück für Stück</translation>
    </message>
    <message>
        <source>Worth</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>What a piece is worth to you</source>
        <translation>Was Ihnen ein Stück wert ist</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>What a piece is sold for; empty: its worth</source>
        <translation>Wofür ein Stück verkauft wird; leer: sein Wert</translation>
    </message>
    <message>
        <source>worth</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Seams</source>
        <translation>Nähte</translation>
    </message>
    <message>
        <source>The length of all seams of a piece together, for the thread</source>
        <translation>Die Länge aller Nähte eines Stücks zusammen, für den Faden</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>How many labels go into a piece</source>
        <translation>Wie viele Etiketten an ein Stück kommen</translation>
    </message>
    <message>
        <source>A panel that goes into a piece</source>
        <translation>Ein Teil, das in ein Stück kommt</translation>
    </message>
    <message>
        <source>Cloths or marks it is cut from, set apart by semicolons, such as a lining&apos;s; empty: the piece&apos;s own</source>
        <translation>Stoffe oder Merkmale, aus denen es geschnitten wird, getrennt durch Semikolon, etwa ein Futter; leer: wie das Stück selbst</translation>
    </message>
    <message>
        <source>the piece&apos;s own</source>
        <translation>wie das Stück</translation>
    </message>
    <message>
        <source>Webbing</source>
        <translation>Gurtband</translation>
    </message>
    <message>
        <source>What is cut to length for a piece</source>
        <translation>Was für ein Stück abgelängt wird</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>How long each is cut</source>
        <translation>Wie lang jedes geschnitten wird</translation>
    </message>
    <message>
        <source>A cloth, or a mark that rolls have; the first row that answers counts</source>
        <translation>Ein Stoff oder ein Merkmal, das Rollen haben; die erste Zeile, die passt, zählt</translation>
    </message>
    <message>
        <source>What a piece of that cloth is sold for</source>
        <translation>Wofür ein Stück aus diesem Stoff verkauft wird</translation>
    </message>
    <message>
        <source>add a product</source>
        <translation>Produkt hinzufügen</translation>
    </message>
    <message>
        <source>take the product %1 away</source>
        <translation>Produkt %1 wegnehmen</translation>
    </message>
    <message>
        <source>the panel “%1”</source>
        <translation>Teil „%1“</translation>
    </message>
    <message>
        <source>add a panel to a product</source>
        <translation>Teil zu einem Produkt hinzufügen</translation>
    </message>
    <message>
        <source>take %1 out of a product</source>
        <translation>%1 aus einem Produkt nehmen</translation>
    </message>
    <message>
        <source>the webbing “%1”</source>
        <translation>Gurtband „%1“</translation>
    </message>
    <message>
        <source>add webbing to a product</source>
        <translation>Gurtband zu einem Produkt hinzufügen</translation>
    </message>
    <message>
        <source>the price of “%1”</source>
        <translation>Preis für „%1“</translation>
    </message>
    <message>
        <source>add a price</source>
        <translation>Preis hinzufügen</translation>
    </message>
    <message>
        <source>%1, must be cut</source>
        <translation>%1, muss geschnitten werden</translation>
    </message>
    <message>
        <source>Rolls</source>
        <translation>Rollen</translation>
    </message>
    <message>
        <source>roll</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>cloth</source>
        <translation>Stoff</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>not cut</source>
        <translation>nicht geschnitten</translation>
    </message>
    <message>
        <source>Order of operations</source>
        <translation>Arbeitsfolge</translation>
    </message>
    <message>
        <source>The first is the one that is used</source>
        <translation>Die erste ist die, nach der gearbeitet wird</translation>
    </message>
    <message>
        <source>A piece</source>
        <translation>Ein Stück</translation>
    </message>
    <message>
        <source>Minutes a piece, with the allowance</source>
        <translation>Minuten je Stück, mit dem Zuschlag</translation>
    </message>
    <message>
        <source>The batch</source>
        <translation>Die Serie</translation>
    </message>
    <message>
        <source>For all pieces of the batch</source>
        <translation>Für alle Stücke der Serie</translation>
    </message>
    <message>
        <source>Saves</source>
        <translation>Spart</translation>
    </message>
    <message>
        <source>What it saves over the batch against the one that is used, at your rate</source>
        <translation>Was sie über die Serie gegenüber der verwendeten spart, zu Ihrem Stundensatz</translation>
    </message>
    <message>
        <source>used</source>
        <translation>verwendet</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>What is done</source>
        <translation>Was getan wird</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>Angenommen</translation>
    </message>
    <message>
        <source>Minutes and seconds a piece, until it is timed</source>
        <translation>Minuten und Sekunden je Stück, bis die Zeit genommen ist</translation>
    </message>
    <message>
        <source>Timed</source>
        <translation>Gestoppt</translation>
    </message>
    <message>
        <source>Times that were taken, set apart by semicolons; their median counts</source>
        <translation>Gestoppte Zeiten, getrennt durch Semikolon; ihr Median zählt</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>Counts</source>
        <translation>Zählt</translation>
    </message>
    <message>
        <source>The time that is reckoned with, without the allowance</source>
        <translation>Die Zeit, mit der gerechnet wird, ohne den Zuschlag</translation>
    </message>
    <message>
        <source>A tenth less</source>
        <translation>Ein Zehntel weniger</translation>
    </message>
    <message>
        <source>What it saves over the batch, at your rate, if this step takes a tenth less</source>
        <translation>Was es über die Serie spart, zu Ihrem Stundensatz, wenn dieser Schritt ein Zehntel weniger dauert</translation>
    </message>
    <message>
        <source>the order “%1”</source>
        <translation>Arbeitsfolge „%1“</translation>
    </message>
    <message>
        <source>add an order of operations</source>
        <translation>Arbeitsfolge hinzufügen</translation>
    </message>
    <message>
        <source>the step “%1”</source>
        <translation>Schritt „%1“</translation>
    </message>
    <message>
        <source>add a step</source>
        <translation>Schritt hinzufügen</translation>
    </message>
    <message>
        <source>move %1</source>
        <translation>%1 verschieben</translation>
    </message>
    <message>
        <source>%1, assumed</source>
        <translation>%1, angenommen</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>a piece</source>
        <translation>je Stück</translation>
    </message>
    <message>
        <source>with allowance</source>
        <translation>mit Zuschlag</translation>
    </message>
    <message>
        <source>Webbing, tape, cord or zip: anything that is cut to length</source>
        <translation>Gurtband, Band, Kordel oder Reißverschluss: alles, was abgelängt wird</translation>
    </message>
    <message>
        <source>Of a full roll</source>
        <translation>Für eine volle Rolle</translation>
    </message>
    <message>
        <source>Ends on hand, set apart by semicolons; they are cut first</source>
        <translation>Vorhandene Enden, getrennt durch Semikolon; sie werden zuerst geschnitten</translation>
    </message>
    <message>
        <source>“%1” is not a factor; write a number such as 2.8.</source>
        <translation>„%1“ ist kein Faktor; eine Zahl wie 2,8 schreiben.</translation>
    </message>
    <message>
        <source>Thread: so many times the length of the seams</source>
        <translation>Faden: so oft die Länge der Nähte</translation>
    </message>
    <message>
        <source>Thread on a reel</source>
        <translation>Faden auf einer Spule</translation>
    </message>
    <message>
        <source>Price of a reel</source>
        <translation>Preis einer Spule</translation>
    </message>
    <message>
        <source>Price of a label</source>
        <translation>Preis eines Etiketts</translation>
    </message>
    <message>
        <source>Price of a square metre of cloth, where a roll has none</source>
        <translation>Preis eines Quadratmeters Stoff, wo eine Rolle keinen hat</translation>
    </message>
    <message>
        <source>A sitting, minutes</source>
        <translation>Eine Nähetappe, Minuten</translation>
    </message>
    <message>
        <source>add a webbing</source>
        <translation>Gurtband hinzufügen</translation>
    </message>
    <message>
        <source>take the webbing %1 away</source>
        <translation>Gurtband %1 wegnehmen</translation>
    </message>
    <message>
        <source>Full roll</source>
        <translation>Volle Rolle</translation>
    </message>
    <message>
        <source>How long a roll is as it is bought</source>
        <translation>Wie lang eine Rolle ist, wie man sie kauft</translation>
    </message>
    <message>
        <source>Loss</source>
        <translation>Verlust</translation>
    </message>
    <message>
        <source>What each cut takes besides, such as a sealed end</source>
        <translation>Was jeder Schnitt zusätzlich kostet, etwa ein verschweißtes Ende</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Angabe</translation>
    </message>
    <message>
        <source>What goes into goods besides, and what it costs</source>
        <translation>Was sonst in die Ware kommt, und was es kostet</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Zahl</translation>
    </message>
    <message>
        <source>As you measure and buy it</source>
        <translation>Wie Sie es messen und kaufen</translation>
    </message>
    <message>
        <source>%1 along</source>
        <translation>%1 längs</translation>
    </message>
    <message>
        <source>%1 across</source>
        <translation>%1 quer</translation>
    </message>
    <message>
        <source>repeats every %1</source>
        <translation>Rapport %1</translation>
    </message>
    <message>
        <source>%1, symmetric</source>
        <translation>%1, symmetrisch</translation>
    </message>
    <message>
        <source>shrinks %1</source>
        <translation>läuft ein: %1</translation>
    </message>
    <message>
        <source>length found when unrolled</source>
        <translation>Länge beim Abrollen gefunden</translation>
    </message>
    <message>
        <source>length estimated</source>
        <translation>Länge geschätzt</translation>
    </message>
    <message>
        <source>about %1 (%2 to %3)</source>
        <translation>etwa %1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>one-way nap</source>
        <translation>Strich in einer Richtung</translation>
    </message>
    <message>
        <source>railroaded</source>
        <translation>quer gemustert</translation>
    </message>
    <message>
        <source>%1: %2 wide, %3 long</source>
        <translation>%1: %2 breit, %3 lang</translation>
    </message>
    <message>
        <source>on the table</source>
        <translation>auf dem Tisch</translation>
    </message>
    <message>
        <source>%1 on the fold</source>
        <translation>%1 im Bruch</translation>
    </message>
    <message>
        <source>%1, %2 on the fold</source>
        <translation>%1, davon %2 im Bruch</translation>
    </message>
    <message>
        <source>remnant, %1</source>
        <translation>Reststück, %1</translation>
    </message>
    <message>
        <source>offcut, %1</source>
        <translation>Abschnitt, %1</translation>
    </message>
    <message>
        <source>Roll “%1”</source>
        <translation>Rolle „%1“</translation>
    </message>
    <message>
        <source>Panel “%1”</source>
        <translation>Teil „%1“</translation>
    </message>
    <message>
        <source>“%1” is not a worth</source>
        <translation>„%1“ ist kein Wert</translation>
    </message>
    <message>
        <source>write a number such as 7.50, with at most four decimals</source>
        <translation>eine Zahl wie 7,50 schreiben, mit höchstens vier Nachkommastellen</translation>
    </message>
    <message>
        <source>“%1” is not a limit</source>
        <translation>„%1“ ist keine Grenze</translation>
    </message>
    <message>
        <source>write a whole number, or nothing for no limit</source>
        <translation>eine ganze Zahl schreiben, oder nichts für keine Grenze</translation>
    </message>
    <message>
        <source>In a piece</source>
        <translation>Je Stück</translation>
    </message>
    <message>
        <source>How many of it go into one piece</source>
        <translation>Wie viele davon in ein Stück kommen</translation>
    </message>
    <message numerus="yes">
        <source>%1, timed %n time(s)</source>
        <translation>
            <numerusform>%1, einmal gestoppt</numerusform>
            <numerusform>%1, Median aus %n</numerusform>
        </translation>
    </message>
    <message>
        <source>the tickets could not be painted</source>
        <translation>die Zuschnittzettel konnten nicht gezeichnet werden</translation>
    </message>
    <message>
        <source>try again with fewer lines in the order</source>
        <translation>mit weniger Zeilen im Auftrag noch einmal versuchen</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 along and %2 across</source>
        <translation>%1 längs und %2 quer</translation>
    </message>
    <message numerus="yes">
        <source>%n flaw(s)</source>
        <translation>
            <numerusform>%n Fehler</numerusform>
            <numerusform>%n Fehler</numerusform>
        </translation>
    </message>
    <message>
        <source>My roll</source>
        <translation>Meine Rolle</translation>
    </message>
    <message>
        <source>job</source>
        <translation>Projekt</translation>
    </message>
    <message>
        <source>the side file of an unsaved job is damaged</source>
        <translation>die Nebendatei eines ungespeicherten Projekts ist beschädigt</translation>
    </message>
    <message>
        <source>it was put aside; open the job&apos;s own file</source>
        <translation>sie wurde beiseitegelegt; die eigene Datei des Projekts öffnen</translation>
    </message>
    <message>
        <source>“%1” is not a time</source>
        <translation>„%1“ ist keine Zeit</translation>
    </message>
    <message>
        <source>write minutes and seconds such as 1:50, or 90 s</source>
        <translation>Minuten und Sekunden wie 1:50 schreiben, oder 90 s</translation>
    </message>
    <message>
        <source>the unsaved job is no longer there</source>
        <translation>das ungespeicherte Projekt ist nicht mehr da</translation>
    </message>
    <message>
        <source>another window may have it</source>
        <translation>ein anderes Fenster hat es vielleicht</translation>
    </message>
    <message>
        <source>at least %1 of %3 and at most %2 of %3</source>
        <translation>mindestens %1 von %3 und höchstens %2 von %3</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation>
            <numerusform>%n Stück</numerusform>
            <numerusform>%n Stück</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2 cut off, none left</source>
        <translation>%1: %2 abgeschnitten, nichts übrig</translation>
    </message>
    <message>
        <source>%1: %2 cut off, %3 left</source>
        <translation>%1: %2 abgeschnitten, %3 übrig</translation>
    </message>
    <message>
        <source>Spoilt</source>
        <translation>Verdorben</translation>
    </message>
</context>
<context>
    <name>foldyard::AskStrip</name>
    <message>
        <source>Message</source>
        <translation>Meldung</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>foldyard::Autosave</name>
    <message>
        <source>Changes cannot be kept for the case of a crash: %1</source>
        <translation>Änderungen können nicht für den Fall eines Absturzes aufbewahrt werden: %1</translation>
    </message>
</context>
<context>
    <name>foldyard::BatchDrag</name>
    <message>
        <source>Let go to let the batch cut from the roll</source>
        <translation>Loslassen, damit die Serie aus der Rolle schneidet</translation>
    </message>
</context>
<context>
    <name>foldyard::BatchFigures</name>
    <message>
        <source>proved</source>
        <translation>bewiesen</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>pieces, and %1 more</source>
        <translation>Stück, und %1 mehr</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>for cloth</source>
        <translation>für Stoff</translation>
    </message>
    <message>
        <source>for cloth, %1</source>
        <translation>für Stoff, %1</translation>
    </message>
    <message>
        <source>to cut it</source>
        <translation>für den Zuschnitt</translation>
    </message>
    <message>
        <source>at most %1 % too much</source>
        <translation>höchstens %1 % zu viel</translation>
    </message>
    <message numerus="yes">
        <source>lay(s)</source>
        <translation>
            <numerusform>Stapel</numerusform>
            <numerusform>Stapel</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>foldyard::BatchPage</name>
    <message>
        <source>What the batch is planned from</source>
        <translation>Woraus die Serie geplant wird</translation>
    </message>
    <message>
        <source>Make an order from the panels</source>
        <translation>Auftrag aus den Teilen machen</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Products</source>
        <translation>Produkte</translation>
    </message>
    <message>
        <source>Sewing</source>
        <translation>Nähen</translation>
    </message>
    <message>
        <source>Webbing</source>
        <translation>Gurtband</translation>
    </message>
    <message>
        <source>By hand</source>
        <translation>Von Hand</translation>
    </message>
    <message>
        <source>Cut so far</source>
        <translation>Bisher geschnitten</translation>
    </message>
    <message>
        <source>There is no order yet. Say how many pieces of which product are to be made, and the batch is planned over all rolls of the shelf.</source>
        <translation>Es gibt noch keinen Auftrag. Sagen Sie, wie viele Stücke welchen Produkts gefertigt werden sollen, und die Serie wird über alle Rollen des Regals geplant.</translation>
    </message>
    <message>
        <source>Make an order from the products</source>
        <translation>Auftrag aus den Produkten machen</translation>
    </message>
    <message>
        <source>leave “%1” out of the batch</source>
        <translation>„%1“ aus der Serie lassen</translation>
    </message>
    <message>
        <source>cut from “%1” in any case</source>
        <translation>auf jeden Fall aus „%1“ schneiden</translation>
    </message>
    <message>
        <source>let the batch cut from “%1”</source>
        <translation>Serie aus „%1“ schneiden lassen</translation>
    </message>
    <message>
        <source>keep lay %1</source>
        <translation>Stapel %1 beibehalten</translation>
    </message>
    <message>
        <source>Write the tickets</source>
        <translation>Zuschnittzettel schreiben</translation>
    </message>
    <message>
        <source>Tickets as PDF (*.pdf);;Pages as SVG (*.svg);;Pages as PNG (*.png)</source>
        <translation>Zuschnittzettel als PDF (*.pdf);;Seiten als SVG (*.svg);;Seiten als PNG (*.png)</translation>
    </message>
</context>
<context>
    <name>foldyard::BatchPlanner</name>
    <message>
        <source>The batch could not be planned: %1.</source>
        <translation>Die Serie konnte nicht geplant werden: %1.</translation>
    </message>
</context>
<context>
    <name>foldyard::BatchView</name>
    <message>
        <source>Made</source>
        <translation>Gefertigt</translation>
    </message>
    <message>
        <source>Lacking</source>
        <translation>Es fehlt</translation>
    </message>
    <message>
        <source>Lays</source>
        <translation>Stapel</translation>
    </message>
    <message>
        <source>Rolls</source>
        <translation>Rollen</translation>
    </message>
    <message>
        <source>Webbing</source>
        <translation>Gurtband</translation>
    </message>
    <message>
        <source>Boards</source>
        <translation>Wickelbretter</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>Zu kaufen</translation>
    </message>
    <message>
        <source>Remnants</source>
        <translation>Reststücke</translation>
    </message>
    <message>
        <source>Money</source>
        <translation>Geld</translation>
    </message>
    <message>
        <source>Sittings</source>
        <translation>Nähetappen</translation>
    </message>
    <message>
        <source>Keep this lay</source>
        <translation>Diesen Stapel beibehalten</translation>
    </message>
    <message>
        <source>Must be cut</source>
        <translation>Muss geschnitten werden</translation>
    </message>
    <message>
        <source>Mark as cut…</source>
        <translation>Als geschnitten vermerken…</translation>
    </message>
    <message>
        <source>Tickets…</source>
        <translation>Zuschnittzettel…</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Copy the table</source>
        <translation>Tabelle kopieren</translation>
    </message>
    <message>
        <source>Table of the batch</source>
        <translation>Tabelle der Serie</translation>
    </message>
    <message>
        <source>Tell what was cut: the shelf becomes shorter, and the panels are on hand</source>
        <translation>Angeben, was geschnitten wurde: Das Regal wird kürzer, und die Teile sind vorhanden</translation>
    </message>
    <message>
        <source>Write the papers for the cutting table as PDF, SVG or PNG</source>
        <translation>Die Zettel für den Zuschneidetisch als PDF, SVG oder PNG schreiben</translation>
    </message>
    <message>
        <source>Copy the table that is shown, for a spreadsheet</source>
        <translation>Die gezeigte Tabelle kopieren, für eine Tabellenkalkulation</translation>
    </message>
    <message>
        <source>The lengths of the chosen lay are cut so, whatever else is planned</source>
        <translation>Die Bahnen des gewählten Stapels werden so geschnitten, was auch sonst geplant wird</translation>
    </message>
    <message>
        <source>The batch cuts from the chosen roll in any case</source>
        <translation>Die Serie schneidet auf jeden Fall aus der gewählten Rolle</translation>
    </message>
    <message>
        <source>A roll that is not ticked stays out of the batch.</source>
        <translation>Eine Rolle ohne Häkchen bleibt aus der Serie.</translation>
    </message>
</context>
<context>
    <name>foldyard::BoardView</name>
    <message>
        <source>%1 (%2 across, %3 along)</source>
        <translation>%1 (%2 quer, %3 längs)</translation>
    </message>
</context>
<context>
    <name>foldyard::BusyRow</name>
    <message>
        <source>Fold ways planned</source>
        <translation>Geplante Faltarten</translation>
    </message>
    <message>
        <source>End planning now and show the best found so far (Ctrl+.)</source>
        <translation>Planung jetzt beenden und das Beste bisher zeigen (Strg+.)</translation>
    </message>
    <message>
        <source>Ctrl+.</source>
        <translation>Ctrl+.</translation>
    </message>
    <message>
        <source>Planning: %1 of %2 fold ways done</source>
        <translation>Planung: %1 von %2 Faltarten fertig</translation>
    </message>
    <message>
        <source>Planning</source>
        <translation>Planung</translation>
    </message>
</context>
<context>
    <name>foldyard::ByHand</name>
    <message>
        <source>the yield changes here</source>
        <translation>hier ändert sich die Ausbeute</translation>
    </message>
    <message>
        <source>tape mark</source>
        <translation>Strich des Maßbands</translation>
    </message>
    <message>
        <source>&amp;Back to the best folds</source>
        <translation>&amp;Zurück zur besten Faltung</translation>
    </message>
    <message>
        <source>Takes out all that is set by hand for this way; fold lines can be dragged on the flat cloth</source>
        <translation>Nimmt alles heraus, was für diese Faltart von Hand gesetzt ist; Faltlinien lassen sich auf dem flachen Stoff ziehen</translation>
    </message>
    <message>
        <source>planning…</source>
        <translation>wird geplant…</translation>
    </message>
    <message>
        <source>Fold line %1 at %2: %3</source>
        <translation>Faltlinie %1 bei %2: %3</translation>
    </message>
    <message>
        <source>Move fold line %1 to %2</source>
        <translation>Faltlinie %1 nach %2 verschieben</translation>
    </message>
    <message>
        <source>Back to the best folds</source>
        <translation>Zurück zur besten Faltung</translation>
    </message>
    <message>
        <source>Take the pin out of fold line %1</source>
        <translation>Faltlinie %1 lösen</translation>
    </message>
    <message>
        <source>Pin fold line %1 at %2</source>
        <translation>Faltlinie %1 bei %2 anheften</translation>
    </message>
    <message>
        <source>Keep lengths of %1</source>
        <translation>Bahnen von %1 beibehalten</translation>
    </message>
    <message>
        <source>Let the lengths be free</source>
        <translation>Bahnen freigeben</translation>
    </message>
    <message>
        <source>At least %1 of “%2”</source>
        <translation>Mindestens %1 von „%2“</translation>
    </message>
    <message>
        <source>Any number of “%1”</source>
        <translation>Beliebig viele von „%1“</translation>
    </message>
</context>
<context>
    <name>foldyard::CardDelegate</name>
    <message numerus="yes">
        <source>%n panel(s)</source>
        <translation>
            <numerusform>%n Teil</numerusform>
            <numerusform>%n Teile</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>foldyard::ClothTable</name>
    <message>
        <source>Flat cloth</source>
        <translation>Flacher Stoff</translation>
    </message>
    <message>
        <source>Folded cloth on the table</source>
        <translation>Gefalteter Stoff auf dem Tisch</translation>
    </message>
</context>
<context>
    <name>foldyard::ColourChoice</name>
    <message>
        <source>Colour of the cloth</source>
        <translation>Farbe des Stoffs</translation>
    </message>
    <message>
        <source>Ot&amp;her…</source>
        <translation>Andere &amp;Farbe…</translation>
    </message>
    <message>
        <source>Any other colour; it is for pictures only</source>
        <translation>Jede andere Farbe; sie gilt nur für Bilder</translation>
    </message>
    <message>
        <source>Ot&amp;her: %1…</source>
        <translation>Andere &amp;Farbe: %1…</translation>
    </message>
</context>
<context>
    <name>foldyard::CompareLarge</name>
    <message>
        <source>Compare large</source>
        <translation>Groß vergleichen</translation>
    </message>
    <message>
        <source>Two or three fold ways beside each other; pin them on their cards, or with C</source>
        <translation>Zwei oder drei Faltarten nebeneinander; anheften auf ihren Karten oder mit C</translation>
    </message>
    <message>
        <source>%1, by hand</source>
        <translation>%1, von Hand</translation>
    </message>
    <message>
        <source>Take the way &amp;out of the comparison	C</source>
        <translation>Faltart aus dem &amp;Vergleich nehmen	C</translation>
    </message>
    <message>
        <source>&amp;Pin the way to compare	C</source>
        <translation>Faltart zum &amp;Vergleich anheften	C</translation>
    </message>
    <message>
        <source>Compare lar&amp;ge</source>
        <translation>&amp;Groß vergleichen</translation>
    </message>
</context>
<context>
    <name>foldyard::CutDialog</name>
    <message>
        <source>Panel</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Cloth</source>
        <translation>Stoff</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Geschnitten</translation>
    </message>
    <message>
        <source>Spoilt</source>
        <translation>Verdorben</translation>
    </message>
    <message>
        <source>Roll</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>Left, as reckoned</source>
        <translation>Rest, berechnet</translation>
    </message>
    <message>
        <source>Really left</source>
        <translation>Rest, gemessen</translation>
    </message>
    <message>
        <source>&amp;All</source>
        <translation>&amp;Alle</translation>
    </message>
    <message>
        <source>&amp;None</source>
        <translation>&amp;Keine</translation>
    </message>
    <message>
        <source>Mark as cut</source>
        <translation>Als geschnitten vermerken</translation>
    </message>
    <message>
        <source>Lay</source>
        <translation>Stapel</translation>
    </message>
    <message>
        <source>Lengths, bottom to top</source>
        <translation>Bahnen, von unten nach oben</translation>
    </message>
    <message>
        <source>Each</source>
        <translation>Je Bahn</translation>
    </message>
    <message>
        <source>Gives</source>
        <translation>Ergibt</translation>
    </message>
    <message>
        <source>&amp;When</source>
        <translation>&amp;Wann</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Tick the lays that were cut.</source>
        <translation>Die geschnittenen Stapel ankreuzen.</translation>
    </message>
    <message>
        <source>Lays that were cut</source>
        <translation>Geschnittene Stapel</translation>
    </message>
    <message>
        <source>Panels that came out spoilt; empty: none.</source>
        <translation>Teile, die verdorben sind; leer: keine.</translation>
    </message>
    <message>
        <source>Spoilt panels</source>
        <translation>Verdorbene Teile</translation>
    </message>
    <message>
        <source>Measure the rolls, if you can; empty: as reckoned.</source>
        <translation>Die Rollen messen, wenn es geht; leer: wie berechnet.</translation>
    </message>
    <message>
        <source>What is left on the rolls</source>
        <translation>Was auf den Rollen bleibt</translation>
    </message>
    <message>
        <source>nothing to keep</source>
        <translation>nichts aufzubewahren</translation>
    </message>
    <message numerus="yes">
        <source>mark %n lay(s) as cut</source>
        <translation>
            <numerusform>einen Stapel als geschnitten vermerken</numerusform>
            <numerusform>%n Stapel als geschnitten vermerken</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>foldyard::CutPage</name>
    <message>
        <source>What was cut</source>
        <translation>Was geschnitten wurde</translation>
    </message>
    <message>
        <source>Panels on hand</source>
        <translation>Vorhandene Teile</translation>
    </message>
    <message>
        <source>Take away</source>
        <translation>Wegnehmen</translation>
    </message>
    <message>
        <source>Panels on hand, cut and not yet sewn</source>
        <translation>Vorhandene Teile, zugeschnitten und noch nicht genäht</translation>
    </message>
    <message>
        <source>Nothing was cut yet. Mark lays of the plan as cut, and they stand here.</source>
        <translation>Noch wurde nichts geschnitten. Stapel des Plans als geschnitten vermerken, und sie stehen hier.</translation>
    </message>
    <message>
        <source>What was cut, the last time first. Undo takes back what was marked last.</source>
        <translation>Was geschnitten wurde, das Letzte zuerst. „Rückgängig“ nimmt den letzten Vermerk zurück.</translation>
    </message>
</context>
<context>
    <name>foldyard::DocumentActions</name>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Neu</translation>
    </message>
    <message>
        <source>&amp;Begin with your own roll…</source>
        <translation>Mit &amp;eigener Rolle beginnen…</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Open the &amp;demo</source>
        <translation>Be&amp;ispiel öffnen</translation>
    </message>
    <message>
        <source>Restore another &amp;unsaved job</source>
        <translation>Weiteres &amp;ungespeichertes Projekt wiederherstellen</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Speichern un&amp;ter…</translation>
    </message>
    <message>
        <source>The demo job is missing from the program; install it again.</source>
        <translation>Das Beispielprojekt fehlt im Programm; bitte neu installieren.</translation>
    </message>
    <message>
        <source>Open a job</source>
        <translation>Projekt öffnen</translation>
    </message>
    <message>
        <source>Jobs (*.foldyard *.json);;All files (*)</source>
        <translation>Projekte (*.foldyard *.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Save the job</source>
        <translation>Projekt speichern</translation>
    </message>
    <message>
        <source>Jobs (*.foldyard *.json)</source>
        <translation>Projekte (*.foldyard *.json)</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Ungespeicherte Änderungen</translation>
    </message>
    <message>
        <source>The job has changes that are not saved.</source>
        <translation>Das Projekt hat Änderungen, die nicht gespeichert sind.</translation>
    </message>
    <message>
        <source>&amp;Discard the changes</source>
        <translation>Änderungen &amp;verwerfen</translation>
    </message>
    <message>
        <source>&amp;Go on editing</source>
        <translation>&amp;Weiter bearbeiten</translation>
    </message>
    <message>
        <source>%1  in %2</source>
        <translation>%1  in %2</translation>
    </message>
    <message>
        <source>Missing, take off the list: %1</source>
        <translation>Fehlt, von der Liste nehmen: %1</translation>
    </message>
    <message>
        <source>&amp;Clear the list</source>
        <translation>Liste &amp;leeren</translation>
    </message>
    <message>
        <source>No job was opened yet</source>
        <translation>Noch kein Projekt geöffnet</translation>
    </message>
    <message>
        <source>New job</source>
        <translation>Neues Projekt</translation>
    </message>
    <message>
        <source>An unsaved job could not be read again; what is left of it is kept as %1.</source>
        <translation>Ein ungespeichertes Projekt konnte nicht wieder gelesen werden; was davon übrig ist, liegt als %1 bereit.</translation>
    </message>
    <message>
        <source>The program ended without saving. “%1” is back as it was at %2; it is not saved yet.</source>
        <translation>Das Programm endete ohne zu speichern. „%1“ ist wieder da, wie es am %2 war; es ist noch nicht gespeichert.</translation>
    </message>
    <message>
        <source>Restore it</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Keep it aside</source>
        <translation>Beiseitelegen</translation>
    </message>
    <message>
        <source>Open the saved file</source>
        <translation>Gespeicherte Datei öffnen</translation>
    </message>
    <message>
        <source>The program ended twice without saving “%1”. The unsaved job of %2 is still there.</source>
        <translation>Das Programm endete zweimal, ohne „%1“ zu speichern. Das ungespeicherte Projekt vom %2 ist noch da.</translation>
    </message>
    <message>
        <source>The unsaved job is kept as %1.</source>
        <translation>Das ungespeicherte Projekt liegt als %1 bereit.</translation>
    </message>
    <message>
        <source>Save mine over it</source>
        <translation>Meines darüber speichern</translation>
    </message>
    <message>
        <source>Keep mine</source>
        <translation>Meines behalten</translation>
    </message>
    <message>
        <source>%1 is no longer there: it was moved or removed.</source>
        <translation>%1 ist nicht mehr da: Es wurde verschoben oder gelöscht.</translation>
    </message>
    <message>
        <source>Not saved: %1 was changed by another program at %2.</source>
        <translation>Nicht gespeichert: %1 wurde am %2 von einem anderen Programm geändert.</translation>
    </message>
    <message>
        <source>%1 was changed by another program at %2.</source>
        <translation>%1 wurde am %2 von einem anderen Programm geändert.</translation>
    </message>
    <message>
        <source>Read it again</source>
        <translation>Neu einlesen</translation>
    </message>
    <message>
        <source>read the file again</source>
        <translation>Datei neu einlesen</translation>
    </message>
    <message>
        <source>%1 is open in another window too; saving asks before it writes over what was saved there.</source>
        <translation>%1 ist auch in einem anderen Fenster offen; vor dem Überschreiben des dort Gespeicherten wird gefragt.</translation>
    </message>
</context>
<context>
    <name>foldyard::Figures</name>
    <message>
        <source>%1 sq yd</source>
        <translation>%1 sq yd</translation>
    </message>
    <message>
        <source>%1 m²</source>
        <translation>%1 m²</translation>
    </message>
    <message>
        <source>of the cloth used</source>
        <translation>des Stoffs genutzt</translation>
    </message>
    <message>
        <source>of waste</source>
        <translation>Verschnitt</translation>
    </message>
    <message>
        <source>to cut it</source>
        <translation>für den Zuschnitt</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message numerus="yes">
        <source>panel(s)</source>
        <translation>
            <numerusform>Teil</numerusform>
            <numerusform>Teile</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>foldyard::FirstSteps</name>
    <message>
        <source>Show the &amp;first steps</source>
        <translation>&amp;Erste Schritte zeigen</translation>
    </message>
</context>
<context>
    <name>foldyard::FlawModel</name>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>Where it begins, from the free end of the roll</source>
        <translation>Wo er beginnt, vom freien Ende der Rolle</translation>
    </message>
    <message>
        <source>Where it ends, from the free end of the roll</source>
        <translation>Wo er endet, vom freien Ende der Rolle</translation>
    </message>
    <message>
        <source>Its left side, from the left edge of the cloth</source>
        <translation>Seine linke Seite, von der linken Stoffkante</translation>
    </message>
    <message>
        <source>Its right side, from the left edge of the cloth</source>
        <translation>Seine rechte Seite, von der linken Stoffkante</translation>
    </message>
    <message>
        <source>In your own words: stain, hole, crease</source>
        <translation>In eigenen Worten: Fleck, Loch, Falte</translation>
    </message>
    <message>
        <source>Flaw %1: %2</source>
        <translation>Fehler %1: %2</translation>
    </message>
</context>
<context>
    <name>foldyard::FlawTable</name>
    <message>
        <source>Add a &amp;flaw</source>
        <translation>Fehler &amp;hinzufügen</translation>
    </message>
    <message>
        <source>Ta&amp;ke the flaw away</source>
        <translation>Fehle&amp;r wegnehmen</translation>
    </message>
    <message>
        <source>Flaws</source>
        <translation>Fehler</translation>
    </message>
</context>
<context>
    <name>foldyard::FoldHand</name>
    <message>
        <source>The plan could not be made: %1.</source>
        <translation>Der Plan konnte nicht gemacht werden: %1.</translation>
    </message>
</context>
<context>
    <name>foldyard::FrontierView</name>
    <message>
        <source>Cloth used against minutes</source>
        <translation>Genutzter Stoff gegen Minuten</translation>
    </message>
    <message>
        <source>; by hand %1, %2</source>
        <translation>; von Hand %1, %2</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>cloth used against minutes</source>
        <translation>genutzter Stoff gegen Minuten</translation>
    </message>
    <message>
        <source>%1, by hand</source>
        <translation>%1, von Hand</translation>
    </message>
</context>
<context>
    <name>foldyard::GuideStrip</name>
    <message>
        <source>Put a roll on the table</source>
        <translation>Eine Rolle auf den Tisch legen</translation>
    </message>
    <message>
        <source>Say what you sew</source>
        <translation>Angeben, was Sie nähen</translation>
    </message>
    <message>
        <source>Print the diagram</source>
        <translation>Zuschnittplan drucken</translation>
    </message>
    <message>
        <source>Begin with your own roll…</source>
        <translation>Mit eigener Rolle beginnen…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>First steps</source>
        <translation>Erste Schritte</translation>
    </message>
    <message>
        <source>Its width and length and what you sew: then there is a plan</source>
        <translation>Ihre Breite und Länge und was Sie nähen: dann gibt es einen Plan</translation>
    </message>
    <message>
        <source>Help brings the first steps back</source>
        <translation>Die Hilfe bringt die ersten Schritte zurück</translation>
    </message>
    <message>
        <source>Close the first steps</source>
        <translation>Erste Schritte schließen</translation>
    </message>
    <message>
        <source>Step %1 of 3, done: %2</source>
        <translation>Schritt %1 von 3, erledigt: %2</translation>
    </message>
    <message>
        <source>Step %1 of 3: %2</source>
        <translation>Schritt %1 von 3: %2</translation>
    </message>
</context>
<context>
    <name>foldyard::HandMenu</name>
    <message>
        <source>By ha&amp;nd</source>
        <translation>&amp;Von Hand</translation>
    </message>
    <message>
        <source>Choose a fold way that is possible</source>
        <translation>Eine Faltart wählen, die möglich ist</translation>
    </message>
    <message>
        <source>&amp;Back to the best folds</source>
        <translation>&amp;Zurück zur besten Faltung</translation>
    </message>
    <message>
        <source>Take the &amp;pin out of fold line %1	P</source>
        <translation>Faltlinie %1 &amp;lösen	P</translation>
    </message>
    <message>
        <source>&amp;Pin fold line %1 where it lies	P</source>
        <translation>Faltlinie %1 an ihrer Stelle an&amp;heften	P</translation>
    </message>
    <message>
        <source>Let the lengths be &amp;free</source>
        <translation>Bahnen &amp;freigeben</translation>
    </message>
    <message>
        <source>&amp;Keep lengths of %1</source>
        <translation>Bahnen von %1 &amp;beibehalten</translation>
    </message>
    <message>
        <source>At &amp;least so many of</source>
        <translation>&amp;Mindestens so viele von</translation>
    </message>
    <message>
        <source>%1…</source>
        <translation>%1…</translation>
    </message>
    <message>
        <source>At &amp;least so many of “%1”…</source>
        <translation>&amp;Mindestens so viele von „%1“…</translation>
    </message>
    <message>
        <source>Any number of “%1”</source>
        <translation>Beliebig viele von „%1“</translation>
    </message>
    <message>
        <source>At least so many</source>
        <translation>Mindestens so viele</translation>
    </message>
    <message>
        <source>How many of “%1” must come out of this roll?</source>
        <translation>Wie viele von „%1“ müssen aus dieser Rolle kommen?</translation>
    </message>
</context>
<context>
    <name>foldyard::HandPage</name>
    <message>
        <source>Lengths that are kept</source>
        <translation>Bahnen, die bleiben</translation>
    </message>
    <message>
        <source>Let go</source>
        <translation>Freigeben</translation>
    </message>
    <message>
        <source>What counts first</source>
        <translation>Was zuerst zählt</translation>
    </message>
    <message>
        <source>Lengths that are cut as they are, whatever else is planned. Choose a lay of the plan and keep it, and it stands here.</source>
        <translation>Bahnen, die so geschnitten werden, was auch sonst geplant wird. Einen Stapel des Plans wählen und beibehalten, und er steht hier.</translation>
    </message>
</context>
<context>
    <name>foldyard::JobListEdit</name>
    <message>
        <source>Up</source>
        <translation>Nach oben</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Nach unten</translation>
    </message>
    <message>
        <source>Move the chosen row up</source>
        <translation>Gewählte Zeile nach oben</translation>
    </message>
    <message>
        <source>Move the chosen row down</source>
        <translation>Gewählte Zeile nach unten</translation>
    </message>
</context>
<context>
    <name>foldyard::JobTable</name>
    <message>
        <source>change “%1” of %2</source>
        <translation>%2: „%1“ ändern</translation>
    </message>
    <message>
        <source>There is no “%1”; choose one of: %2.</source>
        <translation>„%1“ gibt es nicht; eines wählen von: %2.</translation>
    </message>
</context>
<context>
    <name>foldyard::LanguageMenu</name>
    <message>
        <source>Lang&amp;uage</source>
        <translation>S&amp;prache</translation>
    </message>
    <message>
        <source>&amp;As the system</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>The language changes when the program is started again.</source>
        <translation>Die Sprache wechselt, wenn das Programm neu gestartet wird.</translation>
    </message>
</context>
<context>
    <name>foldyard::MainWindow</name>
    <message>
        <source>Bat&amp;ch</source>
        <translation>&amp;Serie</translation>
    </message>
    <message>
        <source>&amp;Cut from the chosen roll</source>
        <translation>&amp;Aus der gewählten Rolle schneiden</translation>
    </message>
    <message>
        <source>Cut from it in &amp;any case</source>
        <translation>Auf &amp;jeden Fall aus ihr schneiden</translation>
    </message>
    <message>
        <source>Ctrl+Shift+B</source>
        <translation>Ctrl+Shift+B</translation>
    </message>
    <message>
        <source>&amp;Keep the chosen lay</source>
        <translation>Gewählten Stapel &amp;beibehalten</translation>
    </message>
    <message>
        <source>&amp;Mark lays as cut…</source>
        <translation>Stapel als &amp;geschnitten vermerken…</translation>
    </message>
    <message>
        <source>&amp;Tickets…</source>
        <translation>Zuschnitt&amp;zettel…</translation>
    </message>
    <message>
        <source>&amp;Write the shelf for a spreadsheet…</source>
        <translation>&amp;Regal als Tabelle schreiben…</translation>
    </message>
    <message>
        <source>Take the shelf &amp;from a spreadsheet…</source>
        <translation>Regal aus Tabelle über&amp;nehmen…</translation>
    </message>
    <message>
        <source>Write the shelf</source>
        <translation>Regal schreiben</translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <translation>Tabelle (*.csv)</translation>
    </message>
    <message>
        <source>Take the shelf from a table</source>
        <translation>Regal aus einer Tabelle übernehmen</translation>
    </message>
    <message>
        <source>%1 cannot be read; choose a table of at most 4 MiB.</source>
        <translation>%1 kann nicht gelesen werden; eine Tabelle von höchstens 4 MiB wählen.</translation>
    </message>
    <message>
        <source>take the shelf from a spreadsheet</source>
        <translation>Regal aus einer Tabelle übernehmen</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>One roll</source>
        <translation>Eine Rolle</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Serie</translation>
    </message>
    <message>
        <source>An order planned over all rolls of the shelf (Ctrl+B)</source>
        <translation>Ein Auftrag, über alle Rollen des Regals geplant (Strg+B)</translation>
    </message>
    <message>
        <source>&amp;Show the batch</source>
        <translation>S&amp;erie zeigen</translation>
    </message>
    <message>
        <source>Ctrl+B</source>
        <translation>Ctrl+B</translation>
    </message>
    <message>
        <source>&amp;Most worth</source>
        <translation>&amp;Maximaler Wert</translation>
    </message>
    <message>
        <source>The most worth out of the roll; among equals the fewest cuts</source>
        <translation>Der größte Wert aus der Rolle; bei gleichem die wenigsten Schnitte</translation>
    </message>
    <message>
        <source>Worth less t&amp;ime</source>
        <translation>Wert abzügl&amp;ich Zeit</translation>
    </message>
    <message>
        <source>The most of worth less the maker&apos;s time at their rate</source>
        <translation>Der größte Wert abzüglich der Arbeitszeit zum Stundensatz</translation>
    </message>
    <message>
        <source>The shelf</source>
        <translation>Das Regal</translation>
    </message>
    <message>
        <source>Panels</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>✓ no other way beats it in both worth and time</source>
        <translation>✓ keine andere schlägt sie in Wert und Zeit zugleich</translation>
    </message>
    <message>
        <source>Fold ways shown as</source>
        <translation>Faltarten gezeigt als</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Graph</source>
        <translation>Schaubild</translation>
    </message>
    <message>
        <source>Best for</source>
        <translation>Am besten für</translation>
    </message>
    <message>
        <source>planning…</source>
        <translation>wird geplant…</translation>
    </message>
    <message>
        <source>Pr&amp;int…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>Diagram as &amp;PDF…</source>
        <translation>Zuschnittplan als &amp;PDF…</translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation>Ctrl+E</translation>
    </message>
    <message>
        <source>Diagram as S&amp;VG…</source>
        <translation>Zuschnittplan als S&amp;VG…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+E</source>
        <translation>Ctrl+Shift+E</translation>
    </message>
    <message>
        <source>Diagram as PN&amp;G…</source>
        <translation>Zuschnittplan als PN&amp;G…</translation>
    </message>
    <message>
        <source>Copy the &amp;picture</source>
        <translation>&amp;Bild kopieren</translation>
    </message>
    <message>
        <source>Copy the ta&amp;ble</source>
        <translation>&amp;Tabelle kopieren</translation>
    </message>
    <message>
        <source>Ctrl+Shift+C</source>
        <translation>Ctrl+Shift+C</translation>
    </message>
    <message>
        <source>Copy the cut &amp;list</source>
        <translation>Schnitt&amp;liste kopieren</translation>
    </message>
    <message>
        <source>There is no plan to draw yet; choose a fold way that is possible.</source>
        <translation>Es gibt noch keinen Plan zu zeichnen; eine Faltart wählen, die möglich ist.</translation>
    </message>
    <message>
        <source>The picture could not be copied; write the diagram as PNG.</source>
        <translation>Das Bild konnte nicht kopiert werden; den Zuschnittplan als PNG schreiben.</translation>
    </message>
    <message>
        <source>The cuts are those of a pattern; choose its tab first.</source>
        <translation>Die Schnitte gehören zu einem Schnittbild; zuerst dessen Reiter wählen.</translation>
    </message>
    <message>
        <source>&amp;Roll</source>
        <translation>&amp;Rolle</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>&amp;Add a panel</source>
        <translation>Teil &amp;hinzufügen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+N</source>
        <translation>Ctrl+Shift+N</translation>
    </message>
    <message>
        <source>&amp;Take the panel away</source>
        <translation>Teil weg&amp;nehmen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Del</source>
        <translation>Ctrl+Shift+Del</translation>
    </message>
    <message>
        <source>Table, &amp;cutter and pace…</source>
        <translation>Tisch, &amp;Schneidegerät und Tempo…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+W</source>
        <translation>Ctrl+Shift+W</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>Best for &amp;most worth</source>
        <translation>Am besten für &amp;maximalen Wert</translation>
    </message>
    <message>
        <source>Ctrl+1</source>
        <translation>Ctrl+1</translation>
    </message>
    <message>
        <source>Best for worth &amp;less time</source>
        <translation>Am besten für &amp;Wert abzüglich Zeit</translation>
    </message>
    <message>
        <source>Ctrl+2</source>
        <translation>Ctrl+2</translation>
    </message>
    <message>
        <source>&amp;Nearer</source>
        <translation>Ver&amp;größern</translation>
    </message>
    <message>
        <source>&amp;Farther</source>
        <translation>Ver&amp;kleinern</translation>
    </message>
    <message>
        <source>Fit the &amp;cloth</source>
        <translation>Sto&amp;ff einpassen</translation>
    </message>
    <message>
        <source>Ctrl+0</source>
        <translation>Ctrl+0</translation>
    </message>
    <message>
        <source>Mea&amp;sure between two points</source>
        <translation>&amp;Zwischen zwei Punkten messen</translation>
    </message>
    <message>
        <source>Ctrl+M</source>
        <translation>Ctrl+M</translation>
    </message>
    <message>
        <source>&amp;Pin the way to compare, or take it out</source>
        <translation>Faltart zum &amp;Vergleich anheften oder lösen</translation>
    </message>
    <message>
        <source>Compare lar&amp;ge, or back</source>
        <translation>Gr&amp;oß vergleichen oder zurück</translation>
    </message>
    <message>
        <source>&amp;Dark colours</source>
        <translation>&amp;Dunkle Farben</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>Write the cutting diagram</source>
        <translation>Zuschnittplan schreiben</translation>
    </message>
    <message>
        <source>Diagram (*%1)</source>
        <translation>Zuschnittplan (*%1)</translation>
    </message>
    <message>
        <source>The table is empty. Put a roll of the shelf on it: press Enter, double-click it or drag it here.</source>
        <translation>Der Tisch ist leer. Eine Rolle des Regals darauf legen: Eingabetaste drücken, doppelklicken oder hierher ziehen.</translation>
    </message>
    <message>
        <source>New job</source>
        <translation>Neues Projekt</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Rückgängig: %1</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>&amp;Wiederholen: %1</translation>
    </message>
    <message>
        <source>The table</source>
        <translation>Der Tisch</translation>
    </message>
</context>
<context>
    <name>foldyard::MeasureDialog</name>
    <message>
        <source>Measure “%1”</source>
        <translation>„%1“ messen</translation>
    </message>
    <message>
        <source>By its diameters</source>
        <translation>Nach den Durchmessern</translation>
    </message>
    <message>
        <source>By counting its turns</source>
        <translation>Nach gezählten Windungen</translation>
    </message>
    <message>
        <source>By its weight</source>
        <translation>Nach dem Gewicht</translation>
    </message>
    <message>
        <source>Way of measuring</source>
        <translation>Art der Messung</translation>
    </message>
    <message>
        <source>It was &amp;unrolled and is %1 long</source>
        <translation>Sie wurde &amp;abgerollt und ist %1 lang</translation>
    </message>
    <message>
        <source>&amp;Put the figures right by the %1 found</source>
        <translation>Die &amp;Zahlen nach den gefundenen %1 berichtigen</translation>
    </message>
    <message>
        <source>&amp;Across the roll</source>
        <translation>Durchmesser der &amp;Rolle</translation>
    </message>
    <message>
        <source>Across the &amp;tube</source>
        <translation>Durchmesser der &amp;Hülse</translation>
    </message>
    <message>
        <source>One ply, as &amp;wound</source>
        <translation>Eine Lage, wie &amp;gewickelt</translation>
    </message>
    <message>
        <source>Turns on the &amp;rim</source>
        <translation>&amp;Windungen an der Stirnseite</translation>
    </message>
    <message>
        <source>&amp;Roll with its tube</source>
        <translation>&amp;Rolle mit Hülse</translation>
    </message>
    <message>
        <source> kg</source>
        <translation> kg</translation>
    </message>
    <message>
        <source>Bare &amp;tube</source>
        <translation>Leere &amp;Hülse</translation>
    </message>
    <message>
        <source>&amp;Cloth</source>
        <translation>&amp;Stoff</translation>
    </message>
    <message>
        <source> g/m²</source>
        <translation> g/m²</translation>
    </message>
    <message>
        <source>%1, give</source>
        <translation>%1, Spielraum</translation>
    </message>
    <message>
        <source>%1; plans use the length found.</source>
        <translation>%1; geplant wird mit der gefundenen Länge.</translation>
    </message>
    <message>
        <source>%1; plans use the least of it.</source>
        <translation>%1; geplant wird mit der kleinsten.</translation>
    </message>
</context>
<context>
    <name>foldyard::OrderTable</name>
    <message>
        <source>Order</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Add a line</source>
        <translation>Zeile hinzufügen</translation>
    </message>
    <message>
        <source>Take away</source>
        <translation>Wegnehmen</translation>
    </message>
    <message>
        <source>Rules of the line</source>
        <translation>Regeln der Zeile</translation>
    </message>
    <message>
        <source>Add a rule</source>
        <translation>Regel hinzufügen</translation>
    </message>
    <message>
        <source>Take the rule away</source>
        <translation>Regel wegnehmen</translation>
    </message>
    <message>
        <source>Rules for “%1”: how many of a cloth or a mark</source>
        <translation>Regeln für „%1“: wie viele von einem Stoff oder Merkmal</translation>
    </message>
    <message>
        <source>Choose a line to see and to make its rules.</source>
        <translation>Eine Zeile wählen, um ihre Regeln zu sehen und zu setzen.</translation>
    </message>
    <message>
        <source>There is no product yet; add one under Products</source>
        <translation>Es gibt noch kein Produkt; eines unter „Produkte“ hinzufügen</translation>
    </message>
    <message>
        <source>Choose a line of the order first</source>
        <translation>Zuerst eine Zeile des Auftrags wählen</translation>
    </message>
    <message>
        <source>make an order from the panels</source>
        <translation>Auftrag aus den Teilen machen</translation>
    </message>
    <message>
        <source>make an order from the products</source>
        <translation>Auftrag aus den Produkten machen</translation>
    </message>
</context>
<context>
    <name>foldyard::OwnRollDialog</name>
    <message>
        <source>Width of the roll</source>
        <translation>Breite der Rolle</translation>
    </message>
    <message>
        <source>Length on the roll</source>
        <translation>Länge auf der Rolle</translation>
    </message>
    <message>
        <source>Make the plan</source>
        <translation>Plan machen</translation>
    </message>
    <message>
        <source>Your own roll</source>
        <translation>Ihre eigene Rolle</translation>
    </message>
    <message>
        <source>What you sew</source>
        <translation>Was Sie nähen</translation>
    </message>
    <message>
        <source>&amp;Width, selvedge to selvedge</source>
        <translation>&amp;Breite, von Webkante zu Webkante</translation>
    </message>
    <message>
        <source>&amp;Length on the roll</source>
        <translation>&amp;Länge auf der Rolle</translation>
    </message>
    <message>
        <source>What you &amp;sew</source>
        <translation>Was Sie &amp;nähen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>foldyard::PanelModel</name>
    <message>
        <source>Panel</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Across</source>
        <translation>Quer</translation>
    </message>
    <message>
        <source>Along</source>
        <translation>Längs</translation>
    </message>
    <message>
        <source>Worth</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>Drehen</translation>
    </message>
    <message>
        <source>On fold</source>
        <translation>Im Bruch</translation>
    </message>
    <message>
        <source>At most</source>
        <translation>Höchstens</translation>
    </message>
    <message>
        <source>Match</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <source>Grain</source>
        <translation>Fadenlauf</translation>
    </message>
    <message>
        <source>The name of the panel</source>
        <translation>Der Name des Teils</translation>
    </message>
    <message>
        <source>Its size from selvedge to selvedge, seams and hems included</source>
        <translation>Sein Maß von Webkante zu Webkante, Nähte und Säume eingeschlossen</translation>
    </message>
    <message>
        <source>Its size in the roll&apos;s direction, seams and hems included</source>
        <translation>Sein Maß in Richtung der Rolle, Nähte und Säume eingeschlossen</translation>
    </message>
    <message>
        <source>What one is worth to the maker</source>
        <translation>Was eines dem Hersteller wert ist</translation>
    </message>
    <message>
        <source>It may also lie turned by a quarter</source>
        <translation>Es darf auch um ein Viertel gedreht liegen</translation>
    </message>
    <message>
        <source>It may be cut double across a fold edge, with a crease in its middle</source>
        <translation>Es darf doppelt im Stoffbruch geschnitten werden, mit einer Bruchlinie in der Mitte</translation>
    </message>
    <message>
        <source>No plan cuts more of them; empty: as many as are worth it</source>
        <translation>Kein Plan schneidet mehr davon; leer: so viele sich lohnen</translation>
    </message>
    <message>
        <source>On cloth with a repeat: it begins at the start of a repeat, or with the motif centred in it</source>
        <translation>Bei Stoff mit Rapport: Es beginnt am Anfang eines Rapports, oder das Motiv sitzt mittig</translation>
    </message>
    <message>
        <source>On railroaded cloth: its along size runs with the pattern or with the warp</source>
        <translation>Bei quer gemustertem Stoff: Das Längsmaß läuft mit dem Muster oder mit der Kette</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ohne</translation>
    </message>
    <message>
        <source>start</source>
        <translation>Anfang</translation>
    </message>
    <message>
        <source>centred</source>
        <translation>mittig</translation>
    </message>
    <message>
        <source>pattern</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>warp</source>
        <translation>Kette</translation>
    </message>
    <message>
        <source>Panel %1</source>
        <translation>Teil %1</translation>
    </message>
    <message>
        <source>add “%1”</source>
        <translation>„%1“ hinzufügen</translation>
    </message>
    <message>
        <source>take away “%1”</source>
        <translation>„%1“ wegnehmen</translation>
    </message>
    <message>
        <source>“%1” is none of these: %2.</source>
        <translation>„%1“ ist keines von diesen: %2.</translation>
    </message>
    <message>
        <source>rename “%1”</source>
        <translation>„%1“ umbenennen</translation>
    </message>
    <message>
        <source>change “%1” of “%2”</source>
        <translation>„%2“: „%1“ ändern</translation>
    </message>
    <message>
        <source>Sewn into: %1</source>
        <translation>Genäht zu: %1</translation>
    </message>
    <message>
        <source>Sewn as %1 into: %2</source>
        <translation>Genäht als %1 zu: %2</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>ohne Grenze</translation>
    </message>
</context>
<context>
    <name>foldyard::PanelTable</name>
    <message>
        <source>&amp;Add a panel</source>
        <translation>&amp;Teil hinzufügen</translation>
    </message>
    <message>
        <source>Add &amp;goods</source>
        <translation>&amp;Fertigware hinzufügen</translation>
    </message>
    <message>
        <source>Ta&amp;ke away</source>
        <translation>Weg&amp;nehmen</translation>
    </message>
    <message>
        <source>More columns: limit, match, grain</source>
        <translation>Mehr Spalten: Grenze, Anschluss, Fadenlauf</translation>
    </message>
    <message>
        <source>Panels</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Panels of ready goods, from their finished sizes</source>
        <translation>Teile einer Fertigware, aus ihren fertigen Maßen</translation>
    </message>
    <message>
        <source>The most that is cut of a panel, how it lies to a repeat, and its grain on railroaded cloth</source>
        <translation>Wie viel von einem Teil höchstens geschnitten wird, wie es zum Rapport liegt, und sein Fadenlauf auf quer gemustertem Stoff</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>More columns; in use: %1</source>
        <translation>Mehr Spalten; in Gebrauch: %1</translation>
    </message>
</context>
<context>
    <name>foldyard::PlanView</name>
    <message>
        <source>%1: %2 × %3</source>
        <translation>%1: %2 × %3</translation>
    </message>
    <message>
        <source>Picture of the roll</source>
        <translation>Bild der Rolle</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Schnittbild</translation>
    </message>
    <message>
        <source>“%1” is not possible here: %2.</source>
        <translation>„%1“ ist hier nicht möglich: %2.</translation>
    </message>
    <message>
        <source>Roll</source>
        <translation>Rolle</translation>
    </message>
</context>
<context>
    <name>foldyard::Planner</name>
    <message>
        <source>The plan could not be made: %1.</source>
        <translation>Der Plan konnte nicht gemacht werden: %1.</translation>
    </message>
</context>
<context>
    <name>foldyard::ProductPage</name>
    <message>
        <source>Products</source>
        <translation>Produkte</translation>
    </message>
    <message>
        <source>Add a product</source>
        <translation>Produkt hinzufügen</translation>
    </message>
    <message>
        <source>Take away</source>
        <translation>Wegnehmen</translation>
    </message>
    <message>
        <source>Panels of a piece</source>
        <translation>Teile eines Stücks</translation>
    </message>
    <message>
        <source>Add a panel</source>
        <translation>Teil hinzufügen</translation>
    </message>
    <message>
        <source>Take the panel out</source>
        <translation>Teil herausnehmen</translation>
    </message>
    <message>
        <source>Webbing of a piece</source>
        <translation>Gurtband eines Stücks</translation>
    </message>
    <message>
        <source>Add webbing</source>
        <translation>Gurtband hinzufügen</translation>
    </message>
    <message>
        <source>Take the webbing out</source>
        <translation>Gurtband herausnehmen</translation>
    </message>
    <message>
        <source>Prices by cloth</source>
        <translation>Preise nach Stoff</translation>
    </message>
    <message>
        <source>Add a price</source>
        <translation>Preis hinzufügen</translation>
    </message>
    <message>
        <source>Take the price away</source>
        <translation>Preis wegnehmen</translation>
    </message>
    <message>
        <source>What goes into a piece of “%1”, and what it is sold for</source>
        <translation>Was in ein Stück „%1“ kommt, und wofür es verkauft wird</translation>
    </message>
    <message>
        <source>Choose a product to see what goes into it.</source>
        <translation>Ein Produkt wählen, um zu sehen, was hineinkommt.</translation>
    </message>
    <message>
        <source>Choose a product first</source>
        <translation>Zuerst ein Produkt wählen</translation>
    </message>
    <message>
        <source>There is no panel to make one of</source>
        <translation>Es gibt kein Teil, aus dem eines werden könnte</translation>
    </message>
    <message>
        <source>There is no webbing yet; add one under Webbing</source>
        <translation>Es gibt noch kein Gurtband; eines unter „Gurtband“ hinzufügen</translation>
    </message>
</context>
<context>
    <name>foldyard::ProgressRow</name>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
</context>
<context>
    <name>foldyard::RangeLine</name>
    <message>
        <source>Yield by the length of the roll</source>
        <translation>Ausbeute nach der Länge der Rolle</translation>
    </message>
    <message>
        <source>The length of this roll is estimated; what it may yield is being worked out…</source>
        <translation>Die Länge dieser Rolle ist geschätzt; was sie ergeben kann, wird gerade berechnet…</translation>
    </message>
    <message numerus="yes">
        <source>Cut the %n length(s) of the plan first: even the shortest roll has them.</source>
        <translation>
            <numerusform>Zuerst die Bahn des Plans schneiden: Selbst die kürzeste Rolle hat sie.</numerusform>
            <numerusform>Zuerst die %n Bahnen des Plans schneiden: Selbst die kürzeste Rolle hat sie.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>foldyard::RangeTeller</name>
    <message>
        <source>What the roll yields could not be found: %1.</source>
        <translation>Die Ausbeute der Rolle konnte nicht gefunden werden: %1.</translation>
    </message>
</context>
<context>
    <name>foldyard::RollDialog</name>
    <message>
        <source>&amp;Width</source>
        <translation>&amp;Breite</translation>
    </message>
    <message>
        <source>&amp;Length</source>
        <translation>&amp;Länge</translation>
    </message>
    <message>
        <source>&amp;Selvedge, each side</source>
        <translation>&amp;Webkante je Seite</translation>
    </message>
    <message>
        <source>&amp;Thickness of a ply</source>
        <translation>&amp;Dicke einer Lage</translation>
    </message>
    <message>
        <source>Repeats &amp;along every</source>
        <translation>Rapport längs &amp;alle</translation>
    </message>
    <message>
        <source>the first &amp;begins at</source>
        <translation>der erste be&amp;ginnt bei</translation>
    </message>
    <message>
        <source>Repeats a&amp;cross every</source>
        <translation>Rapport quer all&amp;e</translation>
    </message>
    <message>
        <source>the first be&amp;gins at</source>
        <translation>der erste beginn&amp;t bei</translation>
    </message>
    <message>
        <source>First repeat along begins at</source>
        <translation>Erster Rapport längs beginnt bei</translation>
    </message>
    <message>
        <source>First repeat across begins at</source>
        <translation>Erster Rapport quer beginnt bei</translation>
    </message>
    <message>
        <source>Meas&amp;ured…</source>
        <translation>Ge&amp;messen…</translation>
    </message>
    <message>
        <source>One-way na&amp;p or print</source>
        <translation>&amp;Strich oder Muster in einer Richtung</translation>
    </message>
    <message>
        <source>&amp;Railroaded: the pattern runs across</source>
        <translation>Quer gemustert: Das Muster läuft quer &amp;zur Rolle</translation>
    </message>
    <message>
        <source>Looks the same &amp;mirrored</source>
        <translation>Sieht ges&amp;piegelt gleich aus</translation>
    </message>
    <message>
        <source>All about “%1”</source>
        <translation>Alles über „%1“</translation>
    </message>
    <message>
        <source>Flaws, from the free end and the left edge</source>
        <translation>Fehler, vom freien Ende und der linken Kante</translation>
    </message>
    <message>
        <source>Change the roll</source>
        <translation>Rolle ändern</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>Shr&amp;inks along by</source>
        <translation>Läuft längs ein &amp;um</translation>
    </message>
    <message>
        <source>Shrinks acr&amp;oss by</source>
        <translation>Läuft quer e&amp;in um</translation>
    </message>
    <message>
        <source>0 where nothing repeats or shrinks.</source>
        <translation>0, wo kein Rapport ist oder nichts einläuft.</translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>Found so long; estimated at %1.</source>
        <translation>So lang gefunden; geschätzt auf %1.</translation>
    </message>
    <message>
        <source>Estimated: %1. Plans use the least of it.</source>
        <translation>Geschätzt: %1. Geplant wird mit der kleinsten Länge.</translation>
    </message>
</context>
<context>
    <name>foldyard::RollDrop</name>
    <message>
        <source>Let go to put the roll on the table</source>
        <translation>Loslassen, um die Rolle auf den Tisch zu legen</translation>
    </message>
</context>
<context>
    <name>foldyard::RollForm</name>
    <message>
        <source>&amp;Width</source>
        <translation>Br&amp;eite</translation>
    </message>
    <message>
        <source>change the width of “%1”</source>
        <translation>Breite von „%1“ ändern</translation>
    </message>
    <message>
        <source>&amp;Length</source>
        <translation>&amp;Länge</translation>
    </message>
    <message>
        <source>change the length of “%1”</source>
        <translation>Länge von „%1“ ändern</translation>
    </message>
    <message>
        <source>&amp;Selvedge</source>
        <translation>&amp;Webkante</translation>
    </message>
    <message>
        <source>change the selvedge of “%1”</source>
        <translation>Webkante von „%1“ ändern</translation>
    </message>
    <message>
        <source>&amp;Thickness</source>
        <translation>Dic&amp;ke</translation>
    </message>
    <message>
        <source>change the thickness of “%1”</source>
        <translation>Dicke von „%1“ ändern</translation>
    </message>
    <message>
        <source>&amp;One-way nap or print</source>
        <translation>Strich oder Muster in einer Richt&amp;ung</translation>
    </message>
    <message>
        <source>Meas&amp;ured…</source>
        <translation>&amp;Gemessen…</translation>
    </message>
    <message>
        <source>For a roll that nobody has unrolled: by its diameters, its turns or its weight.</source>
        <translation>Für eine Rolle, die niemand abgerollt hat: nach ihren Durchmessern, ihren Windungen oder ihrem Gewicht.</translation>
    </message>
    <message>
        <source>The cloth looks different turned end for end, so it is never folded end to end.</source>
        <translation>Der Stoff sieht umgekehrt anders aus, darum wird er nie Ende auf Ende gefaltet.</translation>
    </message>
    <message>
        <source>measure “%1”</source>
        <translation>„%1“ messen</translation>
    </message>
    <message>
        <source>Found so long; estimated at %1.</source>
        <translation>So lang gefunden; geschätzt auf %1.</translation>
    </message>
    <message>
        <source>Estimated: %1. Plans use the least of it.</source>
        <translation>Geschätzt: %1. Geplant wird mit der kleinsten Länge.</translation>
    </message>
    <message>
        <source>change the nap of “%1”</source>
        <translation>Strich von „%1“ ändern</translation>
    </message>
</context>
<context>
    <name>foldyard::RollList</name>
    <message>
        <source>Rolls</source>
        <translation>Rollen</translation>
    </message>
</context>
<context>
    <name>foldyard::RoundRow</name>
    <message>
        <source>Rounds of betterment done</source>
        <translation>Fertige Runden der Verbesserung</translation>
    </message>
    <message>
        <source>End planning now and keep the best plan found so far</source>
        <translation>Planung jetzt beenden und den besten Plan bisher behalten</translation>
    </message>
    <message>
        <source>Looking for better plans: round %1 of %2</source>
        <translation>Suche nach besseren Plänen: Runde %1 von %2</translation>
    </message>
    <message>
        <source>Planning the batch</source>
        <translation>Die Serie wird geplant</translation>
    </message>
</context>
<context>
    <name>foldyard::SectionStrip</name>
    <message>
        <source>Section through the plies</source>
        <translation>Schnitt durch die Lagen</translation>
    </message>
    <message>
        <source>Section at %1, seen from the near end; plies drawn thicker than they are</source>
        <translation>Schnitt bei %1, vom nahen Ende gesehen; Lagen dicker gezeichnet, als sie sind</translation>
    </message>
</context>
<context>
    <name>foldyard::SewingPage</name>
    <message>
        <source>Orders of operations</source>
        <translation>Arbeitsfolgen</translation>
    </message>
    <message>
        <source>Add an order</source>
        <translation>Folge hinzufügen</translation>
    </message>
    <message>
        <source>Take away</source>
        <translation>Wegnehmen</translation>
    </message>
    <message>
        <source>Use this one</source>
        <translation>Danach arbeiten</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>Add a step</source>
        <translation>Schritt hinzufügen</translation>
    </message>
    <message>
        <source>Take the step away</source>
        <translation>Schritt wegnehmen</translation>
    </message>
    <message>
        <source>Orders of operations side by side</source>
        <translation>Arbeitsfolgen nebeneinander</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produkt</translation>
    </message>
    <message>
        <source>Product that is sewn</source>
        <translation>Produkt, das genäht wird</translation>
    </message>
    <message>
        <source>Reckon with this order of operations from now on</source>
        <translation>Von nun an mit dieser Arbeitsfolge rechnen</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <source>There is no product yet; add one under Products</source>
        <translation>Es gibt noch kein Produkt; eines unter „Produkte“ hinzufügen</translation>
    </message>
    <message>
        <source>Steps of “%1”</source>
        <translation>Schritte von „%1“</translation>
    </message>
    <message>
        <source>There is no order of operations yet; add one and say its steps.</source>
        <translation>Es gibt noch keine Arbeitsfolge; eine hinzufügen und ihre Schritte angeben.</translation>
    </message>
    <message>
        <source>Add an order of operations first</source>
        <translation>Zuerst eine Arbeitsfolge hinzufügen</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>use the order “%1”</source>
        <translation>nach Arbeitsfolge „%1“ arbeiten</translation>
    </message>
    <message>
        <source>time the step “%1”: %2</source>
        <translation>Schritt „%1“ stoppen: %2</translation>
    </message>
</context>
<context>
    <name>foldyard::Shelf</name>
    <message>
        <source>&amp;Put on the table</source>
        <translation>Auf den Tis&amp;ch legen</translation>
    </message>
    <message>
        <source>A&amp;dd a roll</source>
        <translation>R&amp;olle hinzufügen</translation>
    </message>
    <message>
        <source>All about it…</source>
        <translation>Alles darüber…</translation>
    </message>
    <message>
        <source>Find a roll: its name, “one-way”, “flaw”…</source>
        <translation>Rolle suchen: Name, „Strich“, „Fehler“…</translation>
    </message>
    <message>
        <source>Find a roll</source>
        <translation>Rolle suchen</translation>
    </message>
    <message>
        <source>Plan this roll: Enter, a double click, or drag it onto the table</source>
        <translation>Diese Rolle planen: Eingabetaste, Doppelklick oder auf den Tisch ziehen</translation>
    </message>
    <message>
        <source>A roll of a kind of cloth, with starting values to be measured on your own</source>
        <translation>Eine Rolle einer Stoffart, mit Anfangswerten, die an der eigenen nachzumessen sind</translation>
    </message>
    <message>
        <source>Name, colour, repeat, shrinkage, flaws and all else of the chosen roll</source>
        <translation>Name, Farbe, Rapport, Einlauf, Fehler und alles andere der gewählten Rolle</translation>
    </message>
    <message>
        <source>No roll has “%1”; clear the line above to see all %2.</source>
        <translation>Keine Rolle hat „%1“; die Zeile darüber leeren, um alle %2 zu sehen.</translation>
    </message>
    <message>
        <source>add “%1”</source>
        <translation>„%1“ hinzufügen</translation>
    </message>
    <message>
        <source>duplicate “%1”</source>
        <translation>„%1“ duplizieren</translation>
    </message>
    <message>
        <source>take “%1” away</source>
        <translation>„%1“ wegnehmen</translation>
    </message>
    <message>
        <source>move “%1”</source>
        <translation>„%1“ verschieben</translation>
    </message>
    <message>
        <source>change “%1”</source>
        <translation>„%1“ ändern</translation>
    </message>
</context>
<context>
    <name>foldyard::ShelfActions</name>
    <message>
        <source>&amp;Put on the table</source>
        <translation>&amp;Auf den Tisch legen</translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <translation>Ctrl+T</translation>
    </message>
    <message>
        <source>&amp;All about this roll…</source>
        <translation>Alles über diese &amp;Rolle…</translation>
    </message>
    <message>
        <source>Ctrl+I</source>
        <translation>Ctrl+I</translation>
    </message>
    <message>
        <source>&amp;Measured…</source>
        <translation>&amp;Gemessen…</translation>
    </message>
    <message>
        <source>&amp;Duplicate</source>
        <translation>&amp;Duplizieren</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>&amp;Take away</source>
        <translation>&amp;Wegnehmen</translation>
    </message>
    <message>
        <source>Move &amp;up</source>
        <translation>Nach &amp;oben</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Up</source>
        <translation>Ctrl+Shift+Up</translation>
    </message>
    <message>
        <source>Move d&amp;own</source>
        <translation>Nach &amp;unten</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Down</source>
        <translation>Ctrl+Shift+Down</translation>
    </message>
    <message>
        <source>&amp;Find a roll</source>
        <translation>Rolle &amp;suchen</translation>
    </message>
</context>
<context>
    <name>foldyard::SideBySide</name>
    <message>
        <source>%1 used</source>
        <translation>%1 genutzt</translation>
    </message>
    <message>
        <source>%1 waste</source>
        <translation>%1 Verschnitt</translation>
    </message>
    <message numerus="yes">
        <source>%n panel(s)</source>
        <translation>
            <numerusform>%n Teil</numerusform>
            <numerusform>%n Teile</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>foldyard::StackView</name>
    <message>
        <source>The lay as it is stacked, top to bottom</source>
        <translation>Der Stapel, wie er liegt, von oben nach unten</translation>
    </message>
</context>
<context>
    <name>foldyard::WatchRow</name>
    <message>
        <source>Lap</source>
        <translation>Zwischenzeit</translation>
    </message>
    <message>
        <source>Stopwatch</source>
        <translation>Stoppuhr</translation>
    </message>
    <message>
        <source>Keep the time for this step and go on with the next (F8)</source>
        <translation>Zeit für diesen Schritt behalten und mit dem nächsten fortfahren (F8)</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Stop without keeping this lap (F7)</source>
        <translation>Anhalten, ohne diese Zwischenzeit zu behalten (F7)</translation>
    </message>
    <message>
        <source>Start timing the chosen step (F7)</source>
        <translation>Zeit für den gewählten Schritt nehmen (F7)</translation>
    </message>
    <message>
        <source>Choose a step to time it.</source>
        <translation>Einen Schritt wählen, um seine Zeit zu nehmen.</translation>
    </message>
    <message>
        <source>Timing %1</source>
        <translation>Zeit läuft: %1</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Als Nächstes: %1</translation>
    </message>
</context>
<context>
    <name>foldyard::WayCards</name>
    <message>
        <source>best</source>
        <translation>beste</translation>
    </message>
    <message>
        <source>Fold ways side by side</source>
        <translation>Faltarten nebeneinander</translation>
    </message>
</context>
<context>
    <name>foldyard::WayModel</name>
    <message>
        <source>Fold way</source>
        <translation>Faltart</translation>
    </message>
    <message>
        <source>Panels</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Worth</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Less time</source>
        <translation>Abz. Zeit</translation>
    </message>
    <message>
        <source>Use</source>
        <translation>Nutzung</translation>
    </message>
    <message>
        <source>Lengths</source>
        <translation>Bahnen</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>Cuts</source>
        <translation>Schnitte</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Proof</source>
        <translation>Beweis</translation>
    </message>
    <message>
        <source>How the cloth is folded before it is cut</source>
        <translation>Wie der Stoff vor dem Schneiden gefaltet wird</translation>
    </message>
    <message>
        <source>Panels that come out of the roll</source>
        <translation>Teile, die aus der Rolle kommen</translation>
    </message>
    <message>
        <source>What all panels are worth</source>
        <translation>Was alle Teile wert sind</translation>
    </message>
    <message>
        <source>What they are worth less the maker&apos;s time at their rate</source>
        <translation>Was sie wert sind, abzüglich der Arbeitszeit zum Stundensatz</translation>
    </message>
    <message>
        <source>Share of the roll that ends in panels</source>
        <translation>Anteil der Rolle, der zu Teilen wird</translation>
    </message>
    <message>
        <source>Lengths that are cross-cut from the roll</source>
        <translation>Bahnen, die von der Rolle abgeschnitten werden</translation>
    </message>
    <message>
        <source>Lengths that may lie in one lift, by the cutter&apos;s height and most plies</source>
        <translation>Bahnen, die in einem Durchgang liegen dürfen, nach Schnitthöhe und höchster Lagenzahl des Schneidegeräts</translation>
    </message>
    <message>
        <source>Cuts through lays; cross-cuts are not counted</source>
        <translation>Schnitte durch Stapel; Querschnitte der Rolle zählen nicht</translation>
    </message>
    <message>
        <source>Time that cutting takes one person, by the pace of the job</source>
        <translation>Zeit, die eine Person zum Zuschneiden braucht, nach dem Tempo des Projekts</translation>
    </message>
    <message>
        <source>Whether no plan of this way can be better</source>
        <translation>Ob kein Plan dieser Faltart besser sein kann</translation>
    </message>
    <message>
        <source>proved</source>
        <translation>bewiesen</translation>
    </message>
    <message>
        <source>bound %1</source>
        <translation>Schranke %1</translation>
    </message>
    <message>
        <source>No other fold way beats it in both worth and time.</source>
        <translation>Keine andere Faltart schlägt sie in Wert und Zeit zugleich.</translation>
    </message>
</context>
<context>
    <name>foldyard::WayTable</name>
    <message>
        <source>Fold ways</source>
        <translation>Faltarten</translation>
    </message>
</context>
<context>
    <name>foldyard::WebbingPage</name>
    <message>
        <source>Webbing, tape, cord and zips</source>
        <translation>Gurtband, Bänder, Kordeln und Reißverschlüsse</translation>
    </message>
    <message>
        <source>Add webbing</source>
        <translation>Gurtband hinzufügen</translation>
    </message>
    <message>
        <source>Take away</source>
        <translation>Wegnehmen</translation>
    </message>
    <message>
        <source>Thread, labels and prices</source>
        <translation>Faden, Etiketten und Preise</translation>
    </message>
</context>
<context>
    <name>foldyard::WorkshopDialog</name>
    <message>
        <source>The job</source>
        <translation>Das Projekt</translation>
    </message>
    <message>
        <source>Table and cutter</source>
        <translation>Tisch und Schneidegerät</translation>
    </message>
    <message>
        <source>What is lost and kept</source>
        <translation>Was verloren geht und was bleibt</translation>
    </message>
    <message>
        <source>The maker&apos;s pace</source>
        <translation>Das Arbeitstempo</translation>
    </message>
    <message>
        <source>One can stand on both sides</source>
        <translation>Man kann an beiden Seiten stehen</translation>
    </message>
    <message>
        <source>Table, cutter and pace</source>
        <translation>Tisch, Schneidegerät und Tempo</translation>
    </message>
    <message>
        <source>Change the workshop</source>
        <translation>Werkstatt ändern</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Name of the job</source>
        <translation>Name des Projekts</translation>
    </message>
    <message>
        <source>For what is shown; lengths may be typed in any unit</source>
        <translation>Für die Anzeige; Längen dürfen in jeder Einheit eingegeben werden</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>The reach of the cutter then counts from either long side</source>
        <translation>Die Reichweite des Schneidegeräts zählt dann von beiden Längsseiten</translation>
    </message>
    <message>
        <source>Default: %1</source>
        <translation>Vorgabe: %1</translation>
    </message>
    <message>
        <source>change the workshop</source>
        <translation>Werkstatt ändern</translation>
    </message>
    <message>
        <source>Assumed: %1</source>
        <translation>Angenommen: %1</translation>
    </message>
    <message>
        <source>Table, along the roll</source>
        <translation>Tisch, längs der Rolle</translation>
    </message>
    <message>
        <source>No length is cut longer than this</source>
        <translation>Keine Bahn wird länger geschnitten</translation>
    </message>
    <message>
        <source>Table, depth</source>
        <translation>Tisch, Tiefe</translation>
    </message>
    <message>
        <source>From the near edge to the far edge</source>
        <translation>Von der nahen zur fernen Kante</translation>
    </message>
    <message>
        <source>Reach of the cutter</source>
        <translation>Reichweite des Schneidegeräts</translation>
    </message>
    <message>
        <source>How far from an edge the cutter can be led</source>
        <translation>Wie weit von einer Kante sich das Schneidegerät führen lässt</translation>
    </message>
    <message>
        <source>Cutter&apos;s rated height</source>
        <translation>Zulässige Schnitthöhe</translation>
    </message>
    <message>
        <source>The thickest stack the cutter is rated for</source>
        <translation>Der dickste Stapel, für den das Schneidegerät zugelassen ist</translation>
    </message>
    <message>
        <source>Squaring, each end</source>
        <translation>Winkelschnitt je Ende</translation>
    </message>
    <message>
        <source>Cut off each end of a roll</source>
        <translation>An jedem Ende einer Rolle abgeschnitten</translation>
    </message>
    <message>
        <source>Allowance, each length</source>
        <translation>Zugabe je Bahn</translation>
    </message>
    <message>
        <source>Cut off with each length, both its ends together</source>
        <translation>Mit jeder Bahn abgeschnitten, beide Enden zusammen</translation>
    </message>
    <message>
        <source>Trim at a fold edge</source>
        <translation>Beschnitt an der Bruchkante</translation>
    </message>
    <message>
        <source>A cut along a fold edge keeps at least this from it</source>
        <translation>Ein Schnitt längs einer Bruchkante hält mindestens diesen Abstand</translation>
    </message>
    <message>
        <source>Remnant kept from, across</source>
        <translation>Reststück ab, quer</translation>
    </message>
    <message>
        <source>A rest at least so wide, and so long, is a remnant</source>
        <translation>Ein Rest, der mindestens so breit und so lang ist, ist ein Reststück</translation>
    </message>
    <message>
        <source>Remnant kept from, along</source>
        <translation>Reststück ab, längs</translation>
    </message>
    <message>
        <source>A rest at least so long, and so wide, is a remnant</source>
        <translation>Ein Rest, der mindestens so lang und so breit ist, ist ein Reststück</translation>
    </message>
    <message>
        <source>Longest fan, plies</source>
        <translation>Längste Fächerfaltung, Lagen</translation>
    </message>
    <message>
        <source>Fans of more plies are not tried</source>
        <translation>Fächer mit mehr Lagen werden nicht versucht</translation>
    </message>
    <message>
        <source>Cloth, worth of a m²</source>
        <translation>Stoff, Wert eines m²</translation>
    </message>
    <message>
        <source>Of rolls that have no price of their own</source>
        <translation>Von Rollen ohne eigenen Preis</translation>
    </message>
    <message>
        <source>Plies at most</source>
        <translation>Lagen höchstens</translation>
    </message>
    <message>
        <source>However thin the cloth</source>
        <translation>Wie dünn der Stoff auch ist</translation>
    </message>
    <message>
        <source>Unroll, once a roll</source>
        <translation>Abrollen, einmal je Rolle</translation>
    </message>
    <message>
        <source>Fetch the roll and lay it up</source>
        <translation>Die Rolle holen und auflegen</translation>
    </message>
    <message>
        <source> s</source>
        <translation> s</translation>
    </message>
    <message>
        <source>Cross-cut a length</source>
        <translation>Bahn abschneiden</translation>
    </message>
    <message>
        <source>Measure and mark it; the cutter&apos;s travel comes on top</source>
        <translation>Messen und anzeichnen; der Weg des Schneidegeräts kommt dazu</translation>
    </message>
    <message>
        <source>Make a fold</source>
        <translation>Falten</translation>
    </message>
    <message>
        <source>One fold of one length</source>
        <translation>Ein Bruch einer Bahn</translation>
    </message>
    <message>
        <source>Lift a lay</source>
        <translation>Stapel vorlegen</translation>
    </message>
    <message>
        <source>Bring one lay under the cutter</source>
        <translation>Einen Stapel unter das Schneidegerät bringen</translation>
    </message>
    <message>
        <source>Mark a cut</source>
        <translation>Schnitt anzeichnen</translation>
    </message>
    <message>
        <source>One cut through a lay</source>
        <translation>Ein Schnitt durch einen Stapel</translation>
    </message>
    <message>
        <source>Cut a metre</source>
        <translation>Einen Meter schneiden</translation>
    </message>
    <message>
        <source>Travel of the cutter</source>
        <translation>Weg des Schneidegeräts</translation>
    </message>
    <message>
        <source>Handle a panel</source>
        <translation>Teil ablegen</translation>
    </message>
    <message>
        <source>Take it off and stack it</source>
        <translation>Abnehmen und stapeln</translation>
    </message>
    <message>
        <source>Rest and delays</source>
        <translation>Erholung und Störungen</translation>
    </message>
    <message>
        <source>Put on all other time</source>
        <translation>Auf alle andere Zeit aufgeschlagen</translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>Worth of an hour</source>
        <translation>Wert einer Stunde</translation>
    </message>
    <message>
        <source>What an hour of the maker is worth</source>
        <translation>Was eine Arbeitsstunde wert ist</translation>
    </message>
</context>
</TS>
