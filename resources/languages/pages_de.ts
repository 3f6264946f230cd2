<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>core</name>
    <message>
        <source>%1 cannot be &quot;%2&quot;</source>
        <translation>%1 kann nicht „%2“ sein</translation>
    </message>
    <message>
        <source>take a key that foldyard kinds shows</source>
        <translation>einen Schlüssel nehmen, den foldyard kinds zeigt</translation>
    </message>
    <message>
        <source>write it like --length &quot;23.4 m&quot;</source>
        <translation>etwa --length &quot;23.4 m&quot; schreiben</translation>
    </message>
    <message>
        <source>the file is there already</source>
        <translation>die Datei gibt es schon</translation>
    </message>
    <message>
        <source>name another; it was left as it is</source>
        <translation>eine andere nennen; sie blieb, wie sie ist</translation>
    </message>
    <message>
        <source>the job has no roll &quot;%1&quot;</source>
        <translation>das Projekt hat keine Rolle „%1“</translation>
    </message>
    <message>
        <source>its rolls are %1</source>
        <translation>seine Rollen sind %1</translation>
    </message>
    <message>
        <source>this job does not plan the way &quot;%1&quot;</source>
        <translation>dieses Projekt plant die Faltart „%1“ nicht</translation>
    </message>
    <message>
        <source>take one of %1, or give a larger longest_fan in the job</source>
        <translation>eine von %1 nehmen oder im Projekt longest_fan erhöhen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>the plan has no pattern &quot;%1&quot;</source>
        <translation>der Plan hat kein Schnittbild „%1“</translation>
    </message>
    <message>
        <source>its only one is A</source>
        <translation>sein einziges ist A</translation>
    </message>
    <message>
        <source>it has A to %1</source>
        <translation>er hat A bis %1</translation>
    </message>
    <message>
        <source>the job has no panel &quot;%1&quot;</source>
        <translation>das Projekt hat kein Teil „%1“</translation>
    </message>
    <message>
        <source>name one as it stands in the job</source>
        <translation>eines nennen, wie es im Projekt steht</translation>
    </message>
    <message>
        <source>the plan has no panels to make templates of</source>
        <translation>der Plan hat keine Teile für Schablonen</translation>
    </message>
    <message>
        <source>name one with --panel</source>
        <translation>eines mit --panel nennen</translation>
    </message>
    <message>
        <source>the sheet has no page %1</source>
        <translation>das Blatt hat keine Seite %1</translation>
    </message>
    <message>
        <source>it has %1</source>
        <translation>es hat %1</translation>
    </message>
    <message>
        <source>a template of %1 takes %2 pages of %3, and %4 is the most</source>
        <translation>eine Schablone von %1 braucht %2 Seiten %3, und höchstens %4 sind möglich</translation>
    </message>
    <message>
        <source>take larger paper, or leave this template out</source>
        <translation>größeres Papier nehmen oder diese Schablone weglassen</translation>
    </message>
    <message>
        <source>a quote is not closed</source>
        <translation>ein Anführungszeichen ist nicht geschlossen</translation>
    </message>
    <message>
        <source>a quote stands within a field</source>
        <translation>ein Anführungszeichen steht mitten in einem Feld</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>write the table out again from the spreadsheet as CSV</source>
        <translation>die Tabelle aus der Tabellenkalkulation noch einmal als CSV ausgeben</translation>
    </message>
    <message>
        <source>null</source>
        <translation>null</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true oder false</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>ein Text</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>ein Objekt</translation>
    </message>
    <message>
        <source>no such field is known</source>
        <translation>ein solches Feld ist nicht bekannt</translation>
    </message>
    <message>
        <source>use one of %1, or leave it out</source>
        <translation>eines von %1 verwenden oder es weglassen</translation>
    </message>
    <message>
        <source>the field is missing</source>
        <translation>das Feld fehlt</translation>
    </message>
    <message>
        <source>%1 is not a text</source>
        <translation>%1 ist kein Text</translation>
    </message>
    <message>
        <source>write it between quotes</source>
        <translation>zwischen Anführungszeichen schreiben</translation>
    </message>
    <message>
        <source>%1 is neither true nor false</source>
        <translation>%1 ist weder true noch false</translation>
    </message>
    <message>
        <source>write true or false</source>
        <translation>true oder false schreiben</translation>
    </message>
    <message>
        <source>%1 is not a length</source>
        <translation>%1 ist keine Länge</translation>
    </message>
    <message>
        <source>write it as text with its unit, like &quot;45 cm&quot;</source>
        <translation>als Text mit Einheit schreiben, etwa &quot;45 cm&quot;</translation>
    </message>
    <message>
        <source>write it like &quot;45 cm&quot; or &quot;17 3/4 in&quot;</source>
        <translation>etwa &quot;45 cm&quot; oder &quot;17 3/4 in&quot; schreiben</translation>
    </message>
    <message>
        <source>%1 is not a number</source>
        <translation>%1 ist keine Zahl</translation>
    </message>
    <message>
        <source>write it like %1</source>
        <translation>etwa %1 schreiben</translation>
    </message>
    <message>
        <source>%1 is not a whole number that is 0 or more and below 1000000000</source>
        <translation>%1 ist keine ganze Zahl ab 0 und unter 1000000000</translation>
    </message>
    <message>
        <source>%1 is not a number with at most %2 decimals that is 0 or more and below 1000000000</source>
        <translation>%1 ist keine Zahl mit höchstens %2 Nachkommastellen ab 0 und unter 1000000000</translation>
    </message>
    <message>
        <source>%1 is not one of the words known here</source>
        <translation>%1 ist keines der hier bekannten Wörter</translation>
    </message>
    <message>
        <source>write one of %1</source>
        <translation>eines von %1 schreiben</translation>
    </message>
    <message>
        <source>%1 is not a group of fields</source>
        <translation>%1 ist keine Gruppe von Feldern</translation>
    </message>
    <message>
        <source>write it between { and }</source>
        <translation>zwischen { und } schreiben</translation>
    </message>
    <message>
        <source>write a list between [ and ]</source>
        <translation>eine Liste zwischen [ und ] schreiben</translation>
    </message>
    <message>
        <source>%1 is not a list</source>
        <translation>%1 ist keine Liste</translation>
    </message>
    <message>
        <source>write it between [ and ]</source>
        <translation>zwischen [ und ] schreiben</translation>
    </message>
    <message>
        <source>no such field is known in a file of version 1</source>
        <translation>ein solches Feld ist in einer Datei der Version 1 nicht bekannt</translation>
    </message>
    <message>
        <source>write &quot;foldyard_job&quot;: 2 at the head of the file, or leave the field out</source>
        <translation>&quot;foldyard_job&quot;: 2 an den Anfang der Datei schreiben oder das Feld weglassen</translation>
    </message>
    <message>
        <source>write &quot;foldyard_job&quot;: %1 at the head of the file</source>
        <translation>&quot;foldyard_job&quot;: %1 an den Anfang der Datei schreiben</translation>
    </message>
    <message>
        <source>the file has version %1 and this program reads up to version %2</source>
        <translation>die Datei hat Version %1, und dieses Programm liest bis Version %2</translation>
    </message>
    <message>
        <source>open it with a newer Foldyard</source>
        <translation>mit einem neueren Foldyard öffnen</translation>
    </message>
    <message>
        <source>there is no version 0</source>
        <translation>es gibt keine Version 0</translation>
    </message>
    <message>
        <source>write %1</source>
        <translation>%1 schreiben</translation>
    </message>
    <message>
        <source>give the panel a name</source>
        <translation>dem Teil einen Namen geben</translation>
    </message>
    <message>
        <source>give its size from selvedge to selvedge, like &quot;45 cm&quot;</source>
        <translation>sein Maß von Webkante zu Webkante angeben, etwa &quot;45 cm&quot;</translation>
    </message>
    <message>
        <source>give its size in the direction of the roll, like &quot;90 cm&quot;</source>
        <translation>sein Maß in Richtung der Rolle angeben, etwa &quot;90 cm&quot;</translation>
    </message>
    <message>
        <source>some panels name a worth and this one does not</source>
        <translation>manche Teile nennen einen Wert, dieses nicht</translation>
    </message>
    <message>
        <source>give every panel a worth, or none</source>
        <translation>jedem Teil einen Wert geben oder keinem</translation>
    </message>
    <message>
        <source>the file is larger than 4 MiB</source>
        <translation>die Datei ist größer als 4 MiB</translation>
    </message>
    <message>
        <source>a job file is far smaller; choose another</source>
        <translation>eine Projektdatei ist weit kleiner; eine andere wählen</translation>
    </message>
    <message>
        <source>the file cannot be read as JSON (%1)</source>
        <translation>die Datei lässt sich nicht als JSON lesen (%1)</translation>
    </message>
    <message>
        <source>correct it</source>
        <translation>berichtigen</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>eine solche Datei gibt es nicht</translation>
    </message>
    <message>
        <source>check its name and folder</source>
        <translation>Namen und Ordner prüfen</translation>
    </message>
    <message>
        <source>this is not a file</source>
        <translation>das ist keine Datei</translation>
    </message>
    <message>
        <source>choose a job file</source>
        <translation>eine Projektdatei wählen</translation>
    </message>
    <message>
        <source>the file may not be read</source>
        <translation>die Datei darf nicht gelesen werden</translation>
    </message>
    <message>
        <source>ask for the right to read it</source>
        <translation>das Recht erbitten, sie zu lesen</translation>
    </message>
    <message>
        <source>the disk could not read the file</source>
        <translation>der Datenträger konnte die Datei nicht lesen</translation>
    </message>
    <message>
        <source>try again or use a copy</source>
        <translation>noch einmal versuchen oder eine Kopie nehmen</translation>
    </message>
    <message>
        <source>there is no panel of this name</source>
        <translation>ein Teil dieses Namens gibt es nicht</translation>
    </message>
    <message>
        <source>write the name of a panel of this job</source>
        <translation>den Namen eines Teils dieses Projekts schreiben</translation>
    </message>
    <message>
        <source>say where it is cut, like &quot;45 cm&quot;</source>
        <translation>sagen, wo geschnitten wird, etwa &quot;45 cm&quot;</translation>
    </message>
    <message>
        <source>write &quot;cut&quot;, &quot;take&quot; or &quot;leave&quot;</source>
        <translation>&quot;cut&quot;, &quot;take&quot; oder &quot;leave&quot; schreiben</translation>
    </message>
    <message>
        <source>a part is cut, taken or left</source>
        <translation>ein Stück wird geschnitten, genommen oder gelassen</translation>
    </message>
    <message>
        <source>write true</source>
        <translation>true schreiben</translation>
    </message>
    <message>
        <source>name the roll that it is cut from</source>
        <translation>die Rolle nennen, von der sie geschnitten wird</translation>
    </message>
    <message>
        <source>say how long it is, without its allowance</source>
        <translation>sagen, wie lang sie ist, ohne ihre Zugabe</translation>
    </message>
    <message>
        <source>no way of folding is called so</source>
        <translation>so heißt keine Faltart</translation>
    </message>
    <message>
        <source>write one like open or thirds</source>
        <translation>eine wie open oder thirds schreiben</translation>
    </message>
    <message>
        <source>name a panel</source>
        <translation>ein Teil nennen</translation>
    </message>
    <message>
        <source>there is no panel &quot;%1&quot;</source>
        <translation>es gibt kein Teil „%1“</translation>
    </message>
    <message>
        <source>name a product</source>
        <translation>ein Produkt nennen</translation>
    </message>
    <message>
        <source>there is no product &quot;%1&quot;</source>
        <translation>es gibt kein Produkt „%1“</translation>
    </message>
    <message>
        <source>write the name of a product of this job</source>
        <translation>den Namen eines Produkts dieses Projekts schreiben</translation>
    </message>
    <message>
        <source>name a webbing</source>
        <translation>ein Gurtband nennen</translation>
    </message>
    <message>
        <source>there is no webbing &quot;%1&quot;</source>
        <translation>es gibt kein Gurtband „%1“</translation>
    </message>
    <message>
        <source>write the name of a webbing of this job</source>
        <translation>den Namen eines Gurtbands dieses Projekts schreiben</translation>
    </message>
    <message>
        <source>say how long each is cut, like &quot;55 cm&quot;</source>
        <translation>sagen, wie lang jedes geschnitten wird, etwa &quot;55 cm&quot;</translation>
    </message>
    <message>
        <source>give the webbing a name</source>
        <translation>dem Gurtband einen Namen geben</translation>
    </message>
    <message>
        <source>say how long a full roll of it is, like &quot;50 m&quot;</source>
        <translation>sagen, wie lang eine volle Rolle davon ist, etwa &quot;50 m&quot;</translation>
    </message>
    <message>
        <source>name a cloth or a mark of your rolls</source>
        <translation>einen Stoff oder ein Merkmal der Rollen nennen</translation>
    </message>
    <message>
        <source>say what a piece of it is sold for</source>
        <translation>sagen, wofür ein Stück davon verkauft wird</translation>
    </message>
    <message>
        <source>say what is done</source>
        <translation>sagen, was getan wird</translation>
    </message>
    <message>
        <source>give this order of operations a name, like &quot;edges first&quot;</source>
        <translation>dieser Arbeitsfolge einen Namen geben, etwa &quot;Kanten zuerst&quot;</translation>
    </message>
    <message>
        <source>name the cloth that the panels are cut from</source>
        <translation>den Stoff nennen, aus dem die Teile geschnitten sind</translation>
    </message>
    <message>
        <source>give the product a name</source>
        <translation>dem Produkt einen Namen geben</translation>
    </message>
    <message>
        <source>say what a piece is worth to you, like &quot;24&quot;</source>
        <translation>sagen, was ein Stück wert ist, etwa &quot;24&quot;</translation>
    </message>
    <message>
        <source>this is no aim that is known here</source>
        <translation>dieses Ziel ist hier nicht bekannt</translation>
    </message>
    <message>
        <source>give it as measured, like %1</source>
        <translation>wie gemessen angeben, etwa %1</translation>
    </message>
    <message>
        <source>say by how much it may be off either way, 0 if by nothing</source>
        <translation>sagen, um wie viel es nach oben oder unten abweichen kann, 0 wenn gar nicht</translation>
    </message>
    <message>
        <source>18400 (grams)</source>
        <translation>18400 (Gramm)</translation>
    </message>
    <message>
        <source>900 (grams)</source>
        <translation>900 (Gramm)</translation>
    </message>
    <message>
        <source>340.5 (grams)</source>
        <translation>340.5 (Gramm)</translation>
    </message>
    <message>
        <source>say where the flaw begins, from the free end, like &quot;3.2 m&quot;</source>
        <translation>sagen, wo der Fehler beginnt, vom freien Ende aus, etwa &quot;3.2 m&quot;</translation>
    </message>
    <message>
        <source>say where the flaw ends, from the free end, like &quot;3.26 m&quot;</source>
        <translation>sagen, wo der Fehler endet, vom freien Ende aus, etwa &quot;3.26 m&quot;</translation>
    </message>
    <message>
        <source>say how much cloth is on the roll, like &quot;23.4 m&quot;, or what was &quot;measured&quot;</source>
        <translation>sagen, wie viel Stoff auf der Rolle ist, etwa &quot;23.4 m&quot;, oder was gemessen wurde (&quot;measured&quot;)</translation>
    </message>
    <message>
        <source>give the roll a name</source>
        <translation>der Rolle einen Namen geben</translation>
    </message>
    <message>
        <source>the file is saved, but a power cut could still take it: the disk reported a fault</source>
        <translation>die Datei ist gespeichert, doch ein Stromausfall könnte sie noch kosten: der Datenträger meldete einen Fehler</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>der Datenträger ist voll</translation>
    </message>
    <message>
        <source>make room or save elsewhere</source>
        <translation>Platz schaffen oder anderswo speichern</translation>
    </message>
    <message>
        <source>writing is not allowed there</source>
        <translation>dort darf nicht geschrieben werden</translation>
    </message>
    <message>
        <source>ask for the right to write or save elsewhere</source>
        <translation>das Recht zu schreiben erbitten oder anderswo speichern</translation>
    </message>
    <message>
        <source>the disk can only be read</source>
        <translation>der Datenträger lässt sich nur lesen</translation>
    </message>
    <message>
        <source>save elsewhere</source>
        <translation>anderswo speichern</translation>
    </message>
    <message>
        <source>the folder does not exist</source>
        <translation>den Ordner gibt es nicht</translation>
    </message>
    <message>
        <source>make it or save elsewhere</source>
        <translation>ihn anlegen oder anderswo speichern</translation>
    </message>
    <message>
        <source>the file name is too long</source>
        <translation>der Dateiname ist zu lang</translation>
    </message>
    <message>
        <source>choose a shorter one</source>
        <translation>einen kürzeren wählen</translation>
    </message>
    <message>
        <source>the disk reported a fault and the file was not saved</source>
        <translation>der Datenträger meldete einen Fehler, und die Datei wurde nicht gespeichert</translation>
    </message>
    <message>
        <source>this is a link to nothing</source>
        <translation>das ist eine Verknüpfung ins Leere</translation>
    </message>
    <message>
        <source>remove the link or save elsewhere</source>
        <translation>die Verknüpfung entfernen oder anderswo speichern</translation>
    </message>
    <message>
        <source>this is a folder or a device, not a file</source>
        <translation>das ist ein Ordner oder ein Gerät, keine Datei</translation>
    </message>
    <message>
        <source>choose another name</source>
        <translation>einen anderen Namen wählen</translation>
    </message>
    <message>
        <source>the file is write-protected</source>
        <translation>die Datei ist schreibgeschützt</translation>
    </message>
    <message>
        <source>allow writing or save elsewhere</source>
        <translation>das Schreiben erlauben oder anderswo speichern</translation>
    </message>
    <message>
        <source>save once more, or elsewhere</source>
        <translation>noch einmal speichern oder anderswo</translation>
    </message>
    <message>
        <source>give the allowance at a seam, like &quot;12 mm&quot;</source>
        <translation>die Zugabe an einer Naht angeben, etwa &quot;12 mm&quot;</translation>
    </message>
    <message>
        <source>give all that is turned in, like &quot;4 cm&quot;</source>
        <translation>alles angeben, was eingeschlagen wird, etwa &quot;4 cm&quot;</translation>
    </message>
    <message>
        <source>give the finished width and height; they do not follow from this piece</source>
        <translation>fertige Breite und Höhe angeben; aus diesem Teil folgen sie nicht</translation>
    </message>
    <message>
        <source>give the finished width, like &quot;38 cm&quot;</source>
        <translation>die fertige Breite angeben, etwa &quot;38 cm&quot;</translation>
    </message>
    <message>
        <source>give the finished height, like &quot;40 cm&quot;</source>
        <translation>die fertige Höhe angeben, etwa &quot;40 cm&quot;</translation>
    </message>
    <message>
        <source>no column &quot;%1&quot; is known</source>
        <translation>eine Spalte „%1“ ist nicht bekannt</translation>
    </message>
    <message>
        <source>use %1</source>
        <translation>%1 verwenden</translation>
    </message>
    <message>
        <source>no column holds the names of the rolls</source>
        <translation>keine Spalte enthält die Namen der Rollen</translation>
    </message>
    <message>
        <source>call it name</source>
        <translation>sie name nennen</translation>
    </message>
    <message>
        <source>the table holds no roll</source>
        <translation>die Tabelle enthält keine Rolle</translation>
    </message>
    <message>
        <source>give a row for each roll below the columns</source>
        <translation>unter den Spalten für jede Rolle eine Zeile angeben</translation>
    </message>
    <message>
        <source>the file starts with a byte order mark</source>
        <translation>die Datei beginnt mit einer Byte-Reihenfolge-Marke</translation>
    </message>
    <message>
        <source>a job file starts with {</source>
        <translation>eine Projektdatei beginnt mit {</translation>
    </message>
    <message>
        <source>something stands after the closing }</source>
        <translation>hinter dem schließenden } steht noch etwas</translation>
    </message>
    <message>
        <source>correct the file there</source>
        <translation>die Datei dort berichtigen</translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation>Zeile %1, Spalte %2</translation>
    </message>
    <message>
        <source>a %1 is missing</source>
        <translation>es fehlt ein %1</translation>
    </message>
    <message>
        <source>the file is nested too deep</source>
        <translation>die Datei ist zu tief verschachtelt</translation>
    </message>
    <message>
        <source>a field name holds a backslash</source>
        <translation>ein Feldname enthält einen umgekehrten Schrägstrich</translation>
    </message>
    <message>
        <source>the field &quot;%1&quot; stands twice</source>
        <translation>das Feld „%1“ steht zweimal da</translation>
    </message>
    <message>
        <source>a text is not closed by &quot;</source>
        <translation>ein Text ist nicht durch &quot; geschlossen</translation>
    </message>
    <message>
        <source>a line break or control character stands in a text</source>
        <translation>in einem Text steht ein Zeilenumbruch oder Steuerzeichen</translation>
    </message>
    <message>
        <source>an unknown escape follows the backslash</source>
        <translation>auf den umgekehrten Schrägstrich folgt ein unbekanntes Zeichen</translation>
    </message>
    <message>
        <source>half of a surrogate pair stands alone</source>
        <translation>ein halbes Surrogatpaar steht allein</translation>
    </message>
    <message>
        <source>four hexadecimal digits must follow \u</source>
        <translation>auf \u müssen vier hexadezimale Ziffern folgen</translation>
    </message>
    <message>
        <source>an unknown word</source>
        <translation>ein unbekanntes Wort</translation>
    </message>
    <message>
        <source>a value or a digit is missing</source>
        <translation>ein Wert oder eine Ziffer fehlt</translation>
    </message>
    <message>
        <source>a number starts with a needless 0</source>
        <translation>eine Zahl beginnt mit einer unnötigen 0</translation>
    </message>
    <message>
        <source>the file is not UTF-8 text</source>
        <translation>die Datei ist kein UTF-8-Text</translation>
    </message>
    <message>
        <source>save it as UTF-8</source>
        <translation>sie als UTF-8 speichern</translation>
    </message>
    <message>
        <source>%1 is too large</source>
        <translation>%1 ist zu groß</translation>
    </message>
    <message>
        <source>the diagram could not be painted</source>
        <translation>der Zuschnittplan ließ sich nicht zeichnen</translation>
    </message>
    <message>
        <source>choose another file type, or fewer pages</source>
        <translation>eine andere Dateiart wählen oder weniger Seiten</translation>
    </message>
    <message>
        <source>a stack has at least one layer</source>
        <translation>ein Stapel hat mindestens eine Lage</translation>
    </message>
    <message>
        <source>count them again</source>
        <translation>noch einmal zählen</translation>
    </message>
    <message>
        <source>Canvas</source>
        <translation>Segeltuch</translation>
    </message>
    <message>
        <source>common practice, no source; 350 g/m² and more is heavy cloth (fabric-online.co.uk)</source>
        <translation>allgemeiner Brauch, ohne Quelle; ab 350 g/m² ist Stoff schwer (fabric-online.co.uk)</translation>
    </message>
    <message>
        <source>Chenille</source>
        <translation>Chenille</translation>
    </message>
    <message>
        <source>common practice, no source; its pile lies one way</source>
        <translation>allgemeiner Brauch, ohne Quelle; sein Flor liegt in einer Richtung</translation>
    </message>
    <message>
        <source>Coated cloth</source>
        <translation>Beschichteter Stoff</translation>
    </message>
    <message>
        <source>common practice, no source; do not crease it, look whether folds press out</source>
        <translation>allgemeiner Brauch, ohne Quelle; nicht knicken, prüfen, ob sich Brüche ausbügeln lassen</translation>
    </message>
    <message>
        <source>Corduroy</source>
        <translation>Cord</translation>
    </message>
    <message>
        <source>Cotton duck No. 10</source>
        <translation>Baumwoll-Duck Nr. 10</translation>
    </message>
    <message>
        <source>9 oz a piece of 36 × 22 in (duck numbers: sizes.com/materials/duck.htm); thickness from memory, no source</source>
        <translation>9 oz auf ein Stück von 36 × 22 in (Duck-Nummern: sizes.com/materials/duck.htm); Dicke aus dem Gedächtnis, ohne Quelle</translation>
    </message>
    <message>
        <source>Cotton duck No. 12</source>
        <translation>Baumwoll-Duck Nr. 12</translation>
    </message>
    <message>
        <source>7 oz a piece of 36 × 22 in (duck numbers: sizes.com/materials/duck.htm); thickness from memory, no source</source>
        <translation>7 oz auf ein Stück von 36 × 22 in (Duck-Nummern: sizes.com/materials/duck.htm); Dicke aus dem Gedächtnis, ohne Quelle</translation>
    </message>
    <message>
        <source>Flat weave</source>
        <translation>Flachgewebe</translation>
    </message>
    <message>
        <source>54 in is the most usual width (orangechair513.wordpress.com, October 2012); the rest is common practice, no source</source>
        <translation>54 in ist die häufigste Breite (orangechair513.wordpress.com, Oktober 2012); das Übrige ist allgemeiner Brauch, ohne Quelle</translation>
    </message>
    <message>
        <source>Jacquard</source>
        <translation>Jacquard</translation>
    </message>
    <message>
        <source>common practice, no source; its pattern may be one-way: look at yours</source>
        <translation>allgemeiner Brauch, ohne Quelle; sein Muster kann eine Richtung haben: den eigenen Stoff ansehen</translation>
    </message>
    <message>
        <source>Furnishing linen</source>
        <translation>Möbelleinen</translation>
    </message>
    <message>
        <source>furnishing prints are 135 to 145 cm wide (designandmake.net, glossary, width); the rest is common practice, no source</source>
        <translation>bedruckte Möbelstoffe sind 135 bis 145 cm breit (designandmake.net, Glossar, width); das Übrige ist allgemeiner Brauch, ohne Quelle</translation>
    </message>
    <message>
        <source>Cotton lining</source>
        <translation>Baumwollfutter</translation>
    </message>
    <message>
        <source>up to 150 g/m² is light cloth (fabric-online.co.uk); the rest is common practice, no source</source>
        <translation>bis 150 g/m² ist Stoff leicht (fabric-online.co.uk); das Übrige ist allgemeiner Brauch, ohne Quelle</translation>
    </message>
    <message>
        <source>Velvet</source>
        <translation>Samt</translation>
    </message>
    <message>
        <source>the figure or its give is below zero</source>
        <translation>der Wert oder seine Abweichung liegt unter null</translation>
    </message>
    <message>
        <source>give zero or more</source>
        <translation>null oder mehr angeben</translation>
    </message>
    <message>
        <source>the figure or its give is too large</source>
        <translation>der Wert oder seine Abweichung ist zu groß</translation>
    </message>
    <message>
        <source>measure again</source>
        <translation>noch einmal messen</translation>
    </message>
    <message>
        <source>zero gives no length</source>
        <translation>null ergibt keine Länge</translation>
    </message>
    <message>
        <source>give more than zero</source>
        <translation>mehr als null angeben</translation>
    </message>
    <message>
        <source>with its give the figure could be zero</source>
        <translation>mit seiner Abweichung könnte der Wert null sein</translation>
    </message>
    <message>
        <source>give a smaller give</source>
        <translation>eine kleinere Abweichung angeben</translation>
    </message>
    <message>
        <source>the tube is as wide as the roll, so no cloth is left</source>
        <translation>die Hülse ist so breit wie die Rolle, es bleibt also kein Stoff</translation>
    </message>
    <message>
        <source>the tube is as heavy as the roll, so no cloth is left</source>
        <translation>die Hülse ist so schwer wie die Rolle, es bleibt also kein Stoff</translation>
    </message>
    <message>
        <source>correct tube or %1</source>
        <translation>tube oder %1 berichtigen</translation>
    </message>
    <message>
        <source>with the gives the tube could be as wide as the roll</source>
        <translation>mit den Abweichungen könnte die Hülse so breit sein wie die Rolle</translation>
    </message>
    <message>
        <source>with the gives the tube could be as heavy as the roll</source>
        <translation>mit den Abweichungen könnte die Hülse so schwer sein wie die Rolle</translation>
    </message>
    <message>
        <source>give smaller gives, or correct tube or %1</source>
        <translation>kleinere Abweichungen angeben oder tube oder %1 berichtigen</translation>
    </message>
    <message>
        <source>by these figures the roll could be longer than 1 km</source>
        <translation>nach diesen Werten könnte die Rolle länger als 1 km sein</translation>
    </message>
    <message>
        <source>measure again or give smaller gives</source>
        <translation>noch einmal messen oder kleinere Abweichungen angeben</translation>
    </message>
    <message>
        <source>by these figures the roll could be bare</source>
        <translation>nach diesen Werten könnte die Rolle leer sein</translation>
    </message>
    <message>
        <source>the roll is, or with the gives could be, larger than when it was full</source>
        <translation>die Rolle ist, oder könnte mit den Abweichungen, größer sein als voll</translation>
    </message>
    <message>
        <source>correct outer or full_outer, or give smaller gives</source>
        <translation>outer oder full_outer berichtigen oder kleinere Abweichungen angeben</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>selvedge to selvedge</source>
        <translation>Webkante auf Webkante</translation>
    </message>
    <message>
        <source>off-centre</source>
        <translation>außermittig</translation>
    </message>
    <message>
        <source>both edges in</source>
        <translation>beide Kanten nach innen</translation>
    </message>
    <message>
        <source>in thirds</source>
        <translation>in Dritteln</translation>
    </message>
    <message>
        <source>fan of %1</source>
        <translation>%1-fach gefächert</translation>
    </message>
    <message>
        <source>in quarters</source>
        <translation>in Vierteln</translation>
    </message>
    <message>
        <source>%1, edges meeting</source>
        <translation>%1, Kanten auf Stoß</translation>
    </message>
    <message>
        <source>%1, equal legs</source>
        <translation>%1, gleich breit</translation>
    </message>
    <message>
        <source>%1, end to end</source>
        <translation>%1, Ende auf Ende</translation>
    </message>
    <message>
        <source>a %1 needs more than zero here</source>
        <translation>%1: hier ist mehr als null nötig</translation>
    </message>
    <message>
        <source>a %1 has no such size</source>
        <translation>%1: ein solches Maß gibt es nicht</translation>
    </message>
    <message>
        <source>leave it out</source>
        <translation>es weglassen</translation>
    </message>
    <message>
        <source>there are less than none</source>
        <translation>das sind weniger als keine</translation>
    </message>
    <message>
        <source>give 0 or more</source>
        <translation>0 oder mehr angeben</translation>
    </message>
    <message>
        <source>a %1 has no handles</source>
        <translation>%1: hat keine Griffe</translation>
    </message>
    <message>
        <source>leave them out</source>
        <translation>sie weglassen</translation>
    </message>
    <message>
        <source>half of it is no whole number of 1/320 mm</source>
        <translation>die Hälfte davon ist keine ganze Zahl von 1/320 mm</translation>
    </message>
    <message>
        <source>give a depth that can be halved, such as one in whole millimetres</source>
        <translation>eine Tiefe angeben, die sich halbieren lässt, etwa in ganzen Millimetern</translation>
    </message>
    <message>
        <source>half of width and overlap is no whole number of 1/320 mm</source>
        <translation>die Hälfte von Breite und Überlappung ist keine ganze Zahl von 1/320 mm</translation>
    </message>
    <message>
        <source>give both in whole millimetres or in eighths of an inch</source>
        <translation>beide in ganzen Millimetern oder in Achtelzoll angeben</translation>
    </message>
    <message>
        <source>a %1 has no such piece</source>
        <translation>%1: ein solches Teil gibt es nicht</translation>
    </message>
    <message>
        <source>a %1 has no lining</source>
        <translation>%1: hat kein Futter</translation>
    </message>
    <message>
        <source>give a size in whole millimetres or in eighths of an inch</source>
        <translation>ein Maß in ganzen Millimetern oder in Achtelzoll angeben</translation>
    </message>
    <message>
        <source>the half of it that the goods need is no whole number of 1/320 mm</source>
        <translation>die Hälfte davon, die die Fertigware braucht, ist keine ganze Zahl von 1/320 mm</translation>
    </message>
    <message>
        <source>the quarter of it that the goods need is no whole number of 1/320 mm</source>
        <translation>das Viertel davon, das die Fertigware braucht, ist keine ganze Zahl von 1/320 mm</translation>
    </message>
    <message>
        <source>seams, hems and depth take all of the panel</source>
        <translation>Nähte, Säume und Tiefe nehmen das ganze Teil ein</translation>
    </message>
    <message>
        <source>give a larger panel or smaller turnings</source>
        <translation>ein größeres Teil oder kleinere Zugaben angeben</translation>
    </message>
    <message>
        <source>Box cushion</source>
        <translation>Kastenkissen</translation>
    </message>
    <message>
        <source>Carrier</source>
        <translation>Tragetasche</translation>
    </message>
    <message>
        <source>Cushion cover</source>
        <translation>Kissenbezug</translation>
    </message>
    <message>
        <source>Half-yard carrier</source>
        <translation>Tragetasche aus einem halben Yard</translation>
    </message>
    <message>
        <source>Lined tote</source>
        <translation>Gefütterte Einkaufstasche</translation>
    </message>
    <message>
        <source>Peg bag</source>
        <translation>Klammerbeutel</translation>
    </message>
    <message>
        <source>Pouch</source>
        <translation>Täschchen</translation>
    </message>
    <message>
        <source>Strap</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>Tote</source>
        <translation>Einkaufstasche</translation>
    </message>
    <message>
        <source>back</source>
        <translation>Rückseite</translation>
    </message>
    <message>
        <source>front</source>
        <translation>Vorderseite</translation>
    </message>
    <message>
        <source>strip</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>top and bottom</source>
        <translation>Ober- und Unterseite</translation>
    </message>
    <message>
        <source>one-piece bag</source>
        <translation>einteilige Tasche</translation>
    </message>
    <message>
        <source>flat pouch</source>
        <translation>flaches Täschchen</translation>
    </message>
    <message>
        <source>two-panel bag</source>
        <translation>zweiteilige Tasche</translation>
    </message>
    <message>
        <source>wrap-round bag</source>
        <translation>umlaufende Tasche</translation>
    </message>
    <message>
        <source>cushion cover</source>
        <translation>Kissenbezug</translation>
    </message>
    <message>
        <source>box cover</source>
        <translation>Kastenbezug</translation>
    </message>
    <message>
        <source>strap</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>lining</source>
        <translation>Futter</translation>
    </message>
    <message>
        <source>lining of the %1</source>
        <translation>Futter (%1)</translation>
    </message>
    <message>
        <source>the roll was never measured</source>
        <translation>die Rolle wurde nie gemessen</translation>
    </message>
    <message>
        <source>change its length</source>
        <translation>ihre Länge ändern</translation>
    </message>
    <message>
        <source>no roll is so long</source>
        <translation>so lang ist keine Rolle</translation>
    </message>
    <message>
        <source>give %1</source>
        <translation>%1 angeben</translation>
    </message>
    <message>
        <source>nothing is asked for</source>
        <translation>es ist nichts in Auftrag gegeben</translation>
    </message>
    <message>
        <source>add a line to the order</source>
        <translation>dem Auftrag eine Zeile hinzufügen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be cut, and it is too short to be cut at all</source>
        <translation>„%1“ muss geschnitten werden und ist zu kurz, um überhaupt geschnitten zu werden</translation>
    </message>
    <message>
        <source>let the batch choose</source>
        <translation>die Serie wählen lassen</translation>
    </message>
    <message>
        <source>no roll is of a cloth that may serve %1</source>
        <translation>keine Rolle ist aus einem Stoff, der für %1 in Frage kommt</translation>
    </message>
    <message>
        <source>name a cloth or a mark of a roll</source>
        <translation>einen Stoff oder ein Merkmal einer Rolle nennen</translation>
    </message>
    <message>
        <source>let one of them go and plan again</source>
        <translation>eine von ihnen freigeben und neu planen</translation>
    </message>
    <message>
        <source>lengths kept on &quot;%1&quot; find no room</source>
        <translation>beibehaltene Bahnen auf „%1“ finden keinen Platz</translation>
    </message>
    <message>
        <source>lengths kept on &quot;%1&quot; do not find room on it</source>
        <translation>für beibehaltene Bahnen auf „%1“ ist darauf kein Platz</translation>
    </message>
    <message>
        <source>the order takes up to %1 of %2, and at most %3 may be cut</source>
        <translation>der Auftrag braucht bis zu %1 von %2, und höchstens %3 dürfen geschnitten werden</translation>
    </message>
    <message>
        <source>order less, or take the limit off the panel</source>
        <translation>weniger in Auftrag geben oder die Grenze des Teils aufheben</translation>
    </message>
    <message>
        <source>The machine&apos;s manual, local rules and trained people come first; these lines replace none.</source>
        <translation>Die Betriebsanleitung der Maschine, die örtlichen Vorschriften und unterwiesene Personen gehen vor; diese Zeilen ersetzen nichts davon.</translation>
    </message>
    <message>
        <source>Guard down to just above the plies before the blade turns.</source>
        <translation>Den Schutz bis knapp über die Lagen senken, bevor das Messer läuft.</translation>
    </message>
    <message>
        <source>Free hand away from the line of cut and never in front of the blade.</source>
        <translation>Die freie Hand von der Schnittlinie fernhalten und nie vor das Messer halten.</translation>
    </message>
    <message>
        <source>Cut-resistant or chain-mail glove if the maker&apos;s manual calls for one.</source>
        <translation>Schnittfesten Handschuh oder Kettenhandschuh tragen, wenn die Betriebsanleitung es verlangt.</translation>
    </message>
    <message>
        <source>Switch off after each cut; never leave the cutter running.</source>
        <translation>Nach jedem Schnitt ausschalten; das Schneidegerät nie laufend liegen lassen.</translation>
    </message>
    <message>
        <source>Unplug it or take the battery out before you touch the blade.</source>
        <translation>Netzstecker ziehen oder Akku herausnehmen, bevor das Messer berührt wird.</translation>
    </message>
    <message>
        <source>Never cut a stack above the rated height.</source>
        <translation>Nie einen Stapel schneiden, der höher ist als zugelassen.</translation>
    </message>
    <message>
        <source>A firm table, good light, a clear floor.</source>
        <translation>Ein fester Tisch, gutes Licht, freier Boden.</translation>
    </message>
    <message numerus="yes">
        <source>The cutter of this job is rated for a stack of %2 and at most %n plies.</source>
        <translation>
            <numerusform>Das Schneidegerät dieses Projekts ist für einen Stapel von %2 und höchstens %n Lage zugelassen.</numerusform>
            <numerusform>Das Schneidegerät dieses Projekts ist für einen Stapel von %2 und höchstens %n Lagen zugelassen.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>1 fold line is needed, and %1 given</source>
        <translation>1 Faltlinie ist nötig, und %1 sind angegeben</translation>
    </message>
    <message>
        <source>%1 fold lines are needed, and %2 given</source>
        <translation>%1 Faltlinien sind nötig, und %2 sind angegeben</translation>
    </message>
    <message>
        <source>the fold line at %1 does not lie between %2 and %3</source>
        <translation>die Faltlinie bei %1 liegt nicht zwischen %2 und %3</translation>
    </message>
    <message>
        <source>it has one place, with the folds at %1</source>
        <translation>es gibt nur eine Stelle, mit den Brüchen bei %1</translation>
    </message>
    <message>
        <source>the flaps of %1 and %2 overlap on the %3 between the folds</source>
        <translation>die Einschläge von %1 und %2 überlappen auf den %3 zwischen den Brüchen</translation>
    </message>
    <message>
        <source>an end leg of %1 is longer than the inner legs of %2</source>
        <translation>ein Endschenkel von %1 ist länger als die inneren Schenkel von %2</translation>
    </message>
    <message>
        <source>the inner legs differ: %1 and %2</source>
        <translation>die inneren Schenkel sind verschieden: %1 und %2</translation>
    </message>
    <message>
        <source>folded so it is %1 deep, and %2 fit the table and can be reached</source>
        <translation>so gefaltet ist es %1 tief, und %2 passen auf den Tisch und sind erreichbar</translation>
    </message>
    <message>
        <source>the name &quot;%1&quot; stands twice</source>
        <translation>der Name „%1“ steht zweimal da</translation>
    </message>
    <message>
        <source>give each its own</source>
        <translation>jedem einen eigenen geben</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1 fits the usable cloth of no roll in any way it may lie</source>
        <translation>%1 passt auf den nutzbaren Stoff keiner Rolle, wie es auch liegen darf</translation>
    </message>
    <message>
        <source>%1, %2, fits the usable cloth of no roll in any way it may lie</source>
        <translation>%1, %2, passt auf den nutzbaren Stoff keiner Rolle, wie es auch liegen darf</translation>
    </message>
    <message>
        <source>give a smaller panel, a larger roll, or may_turn</source>
        <translation>ein kleineres Teil, eine größere Rolle oder may_turn angeben</translation>
    </message>
    <message>
        <source>cut %1 × %2 on roll &quot;%3&quot; for its shrinkage</source>
        <translation>auf Rolle „%3“ wegen ihres Einlaufs als %1 × %2 zugeschnitten</translation>
    </message>
    <message>
        <source>the roll holds more than 1000000 of the smallest panel</source>
        <translation>die Rolle fasst mehr als 1000000 Stück des kleinsten Teils</translation>
    </message>
    <message>
        <source>plan a shorter roll or larger panels</source>
        <translation>eine kürzere Rolle oder größere Teile planen</translation>
    </message>
    <message>
        <source>the flaws do not stand in the order in which they begin</source>
        <translation>die Fehler stehen nicht in der Reihenfolge, in der sie beginnen</translation>
    </message>
    <message>
        <source>put them in that order</source>
        <translation>sie in diese Reihenfolge bringen</translation>
    </message>
    <message>
        <source>it names no panel of the job</source>
        <translation>es nennt kein Teil des Projekts</translation>
    </message>
    <message>
        <source>choose a panel</source>
        <translation>ein Teil wählen</translation>
    </message>
    <message>
        <source>it names no product of the job</source>
        <translation>es nennt kein Produkt des Projekts</translation>
    </message>
    <message>
        <source>choose a product</source>
        <translation>ein Produkt wählen</translation>
    </message>
    <message>
        <source>it names no webbing of the job</source>
        <translation>es nennt kein Gurtband des Projekts</translation>
    </message>
    <message>
        <source>choose a webbing</source>
        <translation>ein Gurtband wählen</translation>
    </message>
    <message>
        <source>the panels are of the cloth &quot;%1&quot; and have other marks than its rolls</source>
        <translation>die Teile sind aus dem Stoff „%1“ und haben andere Merkmale als seine Rollen</translation>
    </message>
    <message>
        <source>give them the same marks</source>
        <translation>ihnen dieselben Merkmale geben</translation>
    </message>
    <message>
        <source>the roll is of the cloth &quot;%1&quot; as &quot;%2&quot; is, but has other marks</source>
        <translation>die Rolle ist aus dem Stoff „%1“ wie „%2“, hat aber andere Merkmale</translation>
    </message>
    <message>
        <source>give rolls of one cloth the same marks</source>
        <translation>Rollen desselben Stoffs dieselben Merkmale geben</translation>
    </message>
    <message>
        <source>the panel stands twice</source>
        <translation>das Teil steht zweimal da</translation>
    </message>
    <message>
        <source>count both together</source>
        <translation>beide zusammen zählen</translation>
    </message>
    <message>
        <source>%1 is longer than a full roll of &quot;%2&quot;</source>
        <translation>%1 ist länger als eine volle Rolle „%2“</translation>
    </message>
    <message>
        <source>give a longer roll or cut it shorter</source>
        <translation>eine längere Rolle angeben oder kürzer schneiden</translation>
    </message>
    <message>
        <source>no roll is of the cloth &quot;%1&quot; or has it as a mark</source>
        <translation>keine Rolle ist aus dem Stoff „%1“ oder hat ihn als Merkmal</translation>
    </message>
    <message>
        <source>write the cloth or a mark of a roll</source>
        <translation>den Stoff oder ein Merkmal einer Rolle schreiben</translation>
    </message>
    <message>
        <source>the line asks for no piece</source>
        <translation>die Zeile verlangt kein Stück</translation>
    </message>
    <message>
        <source>say how many</source>
        <translation>sagen, wie viele</translation>
    </message>
    <message>
        <source>%1 is more than the %2 that may be made of it</source>
        <translation>%1 ist mehr als die %2, die davon gefertigt werden dürfen</translation>
    </message>
    <message>
        <source>ask for fewer, or take more</source>
        <translation>weniger verlangen oder mehr nehmen</translation>
    </message>
    <message>
        <source>%1 of each of %2 cloths is more than the %3 pieces of the line</source>
        <translation>%1 aus jedem von %2 Stoffen ist mehr als die %3 Stück der Zeile</translation>
    </message>
    <message>
        <source>ask for fewer of each, or for more pieces</source>
        <translation>weniger von jedem verlangen oder mehr Stück</translation>
    </message>
    <message>
        <source>the aim stands twice</source>
        <translation>das Ziel steht zweimal da</translation>
    </message>
    <message>
        <source>name each once</source>
        <translation>jedes einmal nennen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is of a cloth that may not serve this line</source>
        <translation>„%1“ ist aus einem Stoff, der für diese Zeile nicht in Frage kommt</translation>
    </message>
    <message>
        <source>name its cloth in &quot;from&quot; too, or another roll</source>
        <translation>seinen Stoff auch in &quot;from&quot; nennen oder eine andere Rolle</translation>
    </message>
    <message>
        <source>no roll is called &quot;%1&quot;</source>
        <translation>keine Rolle heißt „%1“</translation>
    </message>
    <message>
        <source>name a roll of the job</source>
        <translation>eine Rolle des Projekts nennen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is left out of batches</source>
        <translation>„%1“ bleibt von Serien ausgenommen</translation>
    </message>
    <message>
        <source>let it be cut, or name another roll</source>
        <translation>sie schneiden lassen oder eine andere Rolle nennen</translation>
    </message>
    <message>
        <source>the way has another number of folds</source>
        <translation>die Faltart hat eine andere Zahl von Brüchen</translation>
    </message>
    <message>
        <source>give each its place</source>
        <translation>jedem seine Stelle geben</translation>
    </message>
    <message>
        <source>they end before all of the length is told of</source>
        <translation>sie enden, bevor die ganze Bahn beschrieben ist</translation>
    </message>
    <message>
        <source>say what becomes of each part</source>
        <translation>sagen, was aus jedem Stück wird</translation>
    </message>
    <message>
        <source>all of the length is told of before</source>
        <translation>die ganze Bahn ist vorher schon beschrieben</translation>
    </message>
    <message>
        <source>the cut lies outside its cloth</source>
        <translation>der Schnitt liegt außerhalb seines Stoffs</translation>
    </message>
    <message>
        <source>say where</source>
        <translation>sagen, wo</translation>
    </message>
    <message>
        <source>the cloth may be as short as %1</source>
        <translation>der Stoff kann so kurz sein wie %1</translation>
    </message>
    <message>
        <source>measure more closely, or give the length that is found; a roll has %1</source>
        <translation>genauer messen oder die gefundene Länge angeben; eine Rolle hat %1</translation>
    </message>
    <message>
        <source>it is not the low end of what was measured</source>
        <translation>es ist nicht das untere Ende des Gemessenen</translation>
    </message>
    <message>
        <source>give the length that was found, or what was measured alone</source>
        <translation>die gefundene Länge angeben oder nur das Gemessene</translation>
    </message>
    <message>
        <source>the length counts as found and nothing was measured before</source>
        <translation>die Länge gilt als gefunden, und vorher wurde nichts gemessen</translation>
    </message>
    <message>
        <source>give what was measured</source>
        <translation>angeben, was gemessen wurde</translation>
    </message>
    <message>
        <source>less than one repeat</source>
        <translation>weniger als einen Rapport</translation>
    </message>
    <message>
        <source>the flaw begins before the cloth</source>
        <translation>der Fehler beginnt vor dem Stoff</translation>
    </message>
    <message>
        <source>give 0 cm or more</source>
        <translation>0 cm oder mehr angeben</translation>
    </message>
    <message>
        <source>the flaw is empty: it goes from %1 to %2</source>
        <translation>der Fehler ist leer: er geht von %1 bis %2</translation>
    </message>
    <message>
        <source>give more than its &quot;%1&quot;</source>
        <translation>mehr angeben als sein „%1“</translation>
    </message>
    <message>
        <source>the flaw goes to %1 and the cloth ends at %2</source>
        <translation>der Fehler geht bis %1, und der Stoff endet bei %2</translation>
    </message>
    <message>
        <source>correct the flaw or %1</source>
        <translation>den Fehler oder %1 berichtigen</translation>
    </message>
    <message>
        <source>what was measured of the roll (its low end counts)</source>
        <translation>was an der Rolle gemessen wurde (das untere Ende zählt)</translation>
    </message>
    <message>
        <source>the length of the roll</source>
        <translation>die Länge der Rolle</translation>
    </message>
    <message>
        <source>the width of the roll</source>
        <translation>die Breite der Rolle</translation>
    </message>
    <message>
        <source>no pattern repeats along there, so none begins</source>
        <translation>längs wiederholt sich dort kein Muster, also beginnt keines</translation>
    </message>
    <message>
        <source>no pattern repeats across there, so none begins</source>
        <translation>quer wiederholt sich dort kein Muster, also beginnt keines</translation>
    </message>
    <message>
        <source>give repeat.%1, or leave the start out</source>
        <translation>repeat.%1 angeben oder den Anfang weglassen</translation>
    </message>
    <message>
        <source>a repeat of %1 begins before %2</source>
        <translation>ein Rapport von %1 beginnt vor %2</translation>
    </message>
    <message>
        <source>give where the first one begins, less than one repeat</source>
        <translation>angeben, wo der erste beginnt, weniger als einen Rapport</translation>
    </message>
    <message>
        <source>correct it, or let no panel match</source>
        <translation>berichtigen oder kein Teil passen lassen</translation>
    </message>
    <message>
        <source>a repeat of %1 is longer than the table of %2, and panels are to match it</source>
        <translation>ein Rapport von %1 ist länger als der Tisch von %2, und Teile sollen zu ihm passen</translation>
    </message>
    <message>
        <source>a repeat of %1 is wider than the cloth of %2, and panels are to match it</source>
        <translation>ein Rapport von %1 ist breiter als der Stoff von %2, und Teile sollen zu ihm passen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a colour</source>
        <translation>„%1“ ist keine Farbe</translation>
    </message>
    <message>
        <source>write it like &quot;#3a6ea5&quot;</source>
        <translation>etwa &quot;#3a6ea5&quot; schreiben</translation>
    </message>
    <message>
        <source>two selvedges of %1 take the whole width of %2</source>
        <translation>zwei Webkanten von %1 nehmen die ganze Breite von %2 ein</translation>
    </message>
    <message>
        <source>give a smaller selvedge or a larger width</source>
        <translation>eine schmalere Webkante oder eine größere Breite angeben</translation>
    </message>
    <message>
        <source>one ply of %1 is over the cutter&apos;s height of %2</source>
        <translation>eine Lage von %1 übersteigt die Höhe des Schneidegeräts von %2</translation>
    </message>
    <message>
        <source>correct it or cutter.height</source>
        <translation>sie oder cutter.height berichtigen</translation>
    </message>
    <message>
        <source>squaring both ends and the allowance of a length take the whole %1</source>
        <translation>das Begradigen beider Enden und die Zugabe einer Bahn nehmen die ganzen %1 ein</translation>
    </message>
    <message>
        <source>leave the roll out or give a smaller losses.squaring or losses.allowance</source>
        <translation>die Rolle weglassen oder kleinere losses.squaring oder losses.allowance angeben</translation>
    </message>
    <message>
        <source>give at most %1</source>
        <translation>höchstens %1 angeben</translation>
    </message>
    <message>
        <source>%1 is not the %2 that the %3 needs</source>
        <translation>%1 sind nicht die %2, die nötig sind (%3)</translation>
    </message>
    <message>
        <source>leave across and along out, or correct them or sewn</source>
        <translation>across und along weglassen oder sie oder sewn berichtigen</translation>
    </message>
    <message>
        <source>%1 of %2 are asked for, but the job wants at most %3</source>
        <translation>verlangt sind %1 von %2, doch das Projekt will höchstens %3</translation>
    </message>
    <message>
        <source>there is no way to get %1 of %2 from this roll: at most %3, proved</source>
        <translation>%1 von %2 lassen sich aus dieser Rolle nicht gewinnen: höchstens %3, bewiesen</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>with what is set by hand it reaches the bound that has a price for every copy; none gives more</source>
        <translation>mit dem von Hand Gesetzten erreicht er die Schranke, die für jedes Stück einen Preis hat; keiner ergibt mehr</translation>
    </message>
    <message>
        <source>this is the best found with what is set by hand, not proved best; the bound has a price for every copy</source>
        <translation>das Beste, was mit dem von Hand Gesetzten gefunden wurde, nicht als Bestes bewiesen; die Schranke hat für jedes Stück einen Preis</translation>
    </message>
    <message>
        <source>this is the best found with what is set by hand, not proved best; the bound counts every bit of usable cloth</source>
        <translation>das Beste, was mit dem von Hand Gesetzten gefunden wurde, nicht als Bestes bewiesen; die Schranke zählt jeden Rest nutzbaren Stoffs</translation>
    </message>
    <message>
        <source>planning was stopped before this way</source>
        <translation>das Planen wurde vor dieser Faltart angehalten</translation>
    </message>
    <message>
        <source>with what is set by hand no plan within the limits on copies was found</source>
        <translation>mit dem von Hand Gesetzten fand sich innerhalb der Stückgrenzen kein Plan</translation>
    </message>
    <message>
        <source>no plan with at least %1 was found; that there is none is not proved</source>
        <translation>ein Plan mit mindestens %1 fand sich nicht; dass es keinen gibt, ist nicht bewiesen</translation>
    </message>
    <message>
        <source>furnishing prints are 135 to 145 cm wide (designandmake.net, glossary, width)</source>
        <translation>bedruckte Möbelstoffe sind 135 bis 145 cm breit (designandmake.net, Glossar, width)</translation>
    </message>
    <message>
        <source>between the 13 mm a side that cutters deduct (fashion-incubator.com, What is cuttable width) and the 20 mm a selvedge may have (textileglossary.com, selvedge)</source>
        <translation>zwischen den 13 mm je Seite, die Zuschneider abziehen (fashion-incubator.com, What is cuttable width), und den 20 mm, die eine Webkante haben kann (textileglossary.com, selvedge)</translation>
    </message>
    <message>
        <source>assumption: flat-weave upholstery cloth has 0.7 to 1.1 mm, from memory, no source; measure ten plies and take a tenth</source>
        <translation>Annahme: Möbelstoff in Flachgewebe hat 0,7 bis 1,1 mm, aus dem Gedächtnis, ohne Quelle; zehn Lagen messen und ein Zehntel nehmen</translation>
    </message>
    <message>
        <source>assumption: look at the cloth turned end for end</source>
        <translation>Annahme: den Stoff um 180° gedreht ansehen</translation>
    </message>
    <message>
        <source>assumption: for pictures only</source>
        <translation>Annahme: nur für Bilder</translation>
    </message>
    <message>
        <source>assumption: most cloth is woven with its pattern along the roll</source>
        <translation>Annahme: die meisten Stoffe sind mit dem Muster längs der Rolle gewebt</translation>
    </message>
    <message>
        <source>assumption: plain cloth; measure from motif to motif</source>
        <translation>Annahme: ungemusterter Stoff; von Motiv zu Motiv messen</translation>
    </message>
    <message>
        <source>assumption: the roll was cut at a repeat</source>
        <translation>Annahme: die Rolle wurde an einem Rapport abgeschnitten</translation>
    </message>
    <message>
        <source>assumption: the cloth begins with a repeat</source>
        <translation>Annahme: der Stoff beginnt mit einem Rapport</translation>
    </message>
    <message>
        <source>assumption: look at the motif in a mirror</source>
        <translation>Annahme: das Motiv im Spiegel ansehen</translation>
    </message>
    <message>
        <source>assumption: wash a piece and measure it</source>
        <translation>Annahme: ein Stück waschen und messen</translation>
    </message>
    <message>
        <source>assumption: the pattern is to stand upright in use</source>
        <translation>Annahme: das Muster soll im Gebrauch aufrecht stehen</translation>
    </message>
    <message>
        <source>assumption: plain cloth, or a pattern that may fall as it falls</source>
        <translation>Annahme: ungemusterter Stoff, oder ein Muster, das fallen darf, wie es fällt</translation>
    </message>
    <message>
        <source>assumption: panels keep the direction of the cloth</source>
        <translation>Annahme: Teile behalten die Richtung des Stoffs</translation>
    </message>
    <message>
        <source>assumption: a crease presses out</source>
        <translation>Annahme: ein Knick bügelt sich aus</translation>
    </message>
    <message>
        <source>assumption: put in what your cloth costs</source>
        <translation>Annahme: eintragen, was der eigene Stoff kostet</translation>
    </message>
    <message>
        <source>assumption: a roll as bought is cut askew</source>
        <translation>Annahme: eine Rolle ist beim Kauf schief abgeschnitten</translation>
    </message>
    <message>
        <source>assumption: a lockstitched seam takes 2.5 to 3 times its length in thread, from memory, no source</source>
        <translation>Annahme: eine Steppstichnaht braucht das 2,5- bis 3-Fache ihrer Länge an Faden, aus dem Gedächtnis, ohne Quelle</translation>
    </message>
    <message>
        <source>assumption: look at your reels</source>
        <translation>Annahme: die eigenen Fadenrollen ansehen</translation>
    </message>
    <message>
        <source>assumption: put in what you pay</source>
        <translation>Annahme: eintragen, was gezahlt wird</translation>
    </message>
    <message>
        <source>assumption: three hours at the machine in one go</source>
        <translation>Annahme: drei Stunden am Stück an der Maschine</translation>
    </message>
    <message>
        <source>assumption: a table of one room, no source</source>
        <translation>Annahme: ein Tisch in einem Zimmer, ohne Quelle</translation>
    </message>
    <message>
        <source>a table should be at least 20 cm wider than the cloth (I. Vilumsone-Nemes, Industrial Cutting of Textile Materials, p. 56): 140 cm and 20 cm</source>
        <translation>ein Tisch sollte mindestens 20 cm breiter sein als der Stoff (I. Vilumsone-Nemes, Industrial Cutting of Textile Materials, S. 56): 140 cm und 20 cm</translation>
    </message>
    <message>
        <source>assumption: half of the table&apos;s depth; measure your own</source>
        <translation>Annahme: die halbe Tiefe des Tischs; selbst messen</translation>
    </message>
    <message>
        <source>assumption: one can walk around the table</source>
        <translation>Annahme: man kann um den Tisch herumgehen</translation>
    </message>
    <message>
        <source>no more than about a quarter of the blade of a round knife, of which 100 mm is among the most used (I. Vilumsone-Nemes, Industrial Cutting of Textile Materials, p. 106 and 107)</source>
        <translation>nicht mehr als etwa ein Viertel des Messers eines Rundmessers, von denen 100 mm zu den meistbenutzten gehört (I. Vilumsone-Nemes, Industrial Cutting of Textile Materials, S. 106 und 107)</translation>
    </message>
    <message>
        <source>1 to 12 plies are usual for a round knife (fashion2apparel.blogspot.com, January 2018)</source>
        <translation>1 bis 12 Lagen sind für ein Rundmesser üblich (fashion2apparel.blogspot.com, Januar 2018)</translation>
    </message>
    <message>
        <source>assumption: first and last trim of a roll, from memory, no source</source>
        <translation>Annahme: erster und letzter Beschnitt einer Rolle, aus dem Gedächtnis, ohne Quelle</translation>
    </message>
    <message>
        <source>up to 2 cm at each end or 4 cm a ply (mytextilenotes.blogspot.com, October 2012)</source>
        <translation>bis 2 cm an jedem Ende oder 4 cm je Lage (mytextilenotes.blogspot.com, Oktober 2012)</translation>
    </message>
    <message>
        <source>assumption: room for the bend, 2 to 5 mm, from memory, no source</source>
        <translation>Annahme: Platz für die Biegung, 2 bis 5 mm, aus dem Gedächtnis, ohne Quelle</translation>
    </message>
    <message>
        <source>assumption: as large as a small panel</source>
        <translation>Annahme: so groß wie ein kleines Teil</translation>
    </message>
    <message>
        <source>assumption: time your own</source>
        <translation>Annahme: die eigene Zeit nehmen</translation>
    </message>
    <message>
        <source>3 m a minute: a round knife cuts 1250 to 1500 m in 7 h with handling, which is 3.0 to 3.6 m a minute (encyclopaedia text copied at m.weldtec.com.vn/cutting-machine.html)</source>
        <translation>3 m je Minute: ein Rundmesser schneidet mit Handhabung 1250 bis 1500 m in 7 h, das sind 3,0 bis 3,6 m je Minute (Lexikontext, kopiert auf m.weldtec.com.vn/cutting-machine.html)</translation>
    </message>
    <message>
        <source>assumption: for one person standing, from memory, no source; put on basic time</source>
        <translation>Annahme: für eine Person im Stehen, aus dem Gedächtnis, ohne Quelle; auf die Grundzeit gerechnet</translation>
    </message>
    <message>
        <source>assumption: put in what your hour is worth</source>
        <translation>Annahme: eintragen, was die eigene Stunde wert ist</translation>
    </message>
    <message>
        <source>assumption: more folds are hard to keep square by hand</source>
        <translation>Annahme: mehr Falten lassen sich von Hand kaum im Winkel halten</translation>
    </message>
    <message>
        <source>%1 is too small</source>
        <translation>%1 ist zu klein</translation>
    </message>
    <message>
        <source>a negative number</source>
        <translation>eine negative Zahl</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>the list is empty</source>
        <translation>die Liste ist leer</translation>
    </message>
    <message>
        <source>give at least one</source>
        <translation>mindestens eines angeben</translation>
    </message>
    <message numerus="yes">
        <source>the list has %n entries</source>
        <translation>
            <numerusform>die Liste hat %n Eintrag</numerusform>
            <numerusform>die Liste hat %n Einträge</numerusform>
        </translation>
    </message>
    <message>
        <source>use at most %1</source>
        <translation>höchstens %1 verwenden</translation>
    </message>
    <message>
        <source>the name is empty</source>
        <translation>der Name ist leer</translation>
    </message>
    <message>
        <source>give it one</source>
        <translation>ihm einen geben</translation>
    </message>
    <message numerus="yes">
        <source>the name has %n characters</source>
        <translation>
            <numerusform>der Name hat %n Zeichen</numerusform>
            <numerusform>der Name hat %n Zeichen</numerusform>
        </translation>
    </message>
    <message>
        <source>the name holds a line break or another control character</source>
        <translation>der Name enthält einen Zeilenumbruch oder ein anderes Steuerzeichen</translation>
    </message>
    <message>
        <source>this is the best found, not proved best; the bound counts every bit of usable cloth</source>
        <translation>das Beste, was gefunden wurde, nicht als Bestes bewiesen; die Schranke zählt jeden Rest nutzbaren Stoffs</translation>
    </message>
    <message>
        <source>the flaws leave no more: what lies between them was searched at every place</source>
        <translation>die Fehler lassen nicht mehr zu: was zwischen ihnen liegt, wurde an jeder Stelle durchsucht</translation>
    </message>
    <message>
        <source>every place of the lengths searched was tried around the flaws; the bound counts the roll as if narrow flaws were not there</source>
        <translation>jede Stelle der durchsuchten Bahnen wurde um die Fehler herum versucht; die Schranke rechnet die Rolle, als gäbe es schmale Fehler nicht</translation>
    </message>
    <message>
        <source>this is the best found around the flaws, not proved best; the bound counts the roll as if narrow flaws were not there</source>
        <translation>das Beste, was um die Fehler herum gefunden wurde, nicht als Bestes bewiesen; die Schranke rechnet die Rolle, als gäbe es schmale Fehler nicht</translation>
    </message>
    <message>
        <source>the length kept on &quot;%1&quot; can no longer be cut so: %2</source>
        <translation>die auf „%1“ beibehaltene Bahn lässt sich so nicht mehr schneiden: %2</translation>
    </message>
    <message>
        <source>let it go and plan again</source>
        <translation>sie freigeben und neu planen</translation>
    </message>
    <message>
        <source>its ends cannot meet</source>
        <translation>ihre Enden können nicht aufeinandertreffen</translation>
    </message>
    <message>
        <source>the roll is too short for it</source>
        <translation>die Rolle ist zu kurz für sie</translation>
    </message>
    <message>
        <source>a cut lies outside its cloth</source>
        <translation>ein Schnitt liegt außerhalb seines Stoffs</translation>
    </message>
    <message>
        <source>a panel has another size now</source>
        <translation>ein Teil hat jetzt ein anderes Maß</translation>
    </message>
    <message>
        <source>every place where a fold or a cut can matter was searched; within the limits on copies none gives more</source>
        <translation>jede Stelle, an der ein Bruch oder ein Schnitt etwas ändern kann, wurde durchsucht; innerhalb der Stückgrenzen ergibt keine mehr</translation>
    </message>
    <message>
        <source>this is the best found within the limits on copies, not proved best; the bound has a price for every copy instead of a limit</source>
        <translation>das Beste, was innerhalb der Stückgrenzen gefunden wurde, nicht als Bestes bewiesen; die Schranke hat für jedes Stück einen Preis statt einer Grenze</translation>
    </message>
    <message>
        <source>this is the best found within the limits on copies, not proved best; the bound counts every bit of usable cloth</source>
        <translation>das Beste, was innerhalb der Stückgrenzen gefunden wurde, nicht als Bestes bewiesen; die Schranke zählt jeden Rest nutzbaren Stoffs</translation>
    </message>
    <message>
        <source>within the limits on copies no panel was found that is worth the time of cutting it</source>
        <translation>innerhalb der Stückgrenzen fand sich kein Teil, das die Zeit für seinen Zuschnitt wert ist</translation>
    </message>
    <message>
        <source>within the limits on copies no panel can be cut so</source>
        <translation>innerhalb der Stückgrenzen lässt sich so kein Teil schneiden</translation>
    </message>
    <message>
        <source>no way was found to cut within the limits on copies</source>
        <translation>es fand sich keine Art, innerhalb der Stückgrenzen zu schneiden</translation>
    </message>
    <message>
        <source>1 cm to 10 m</source>
        <translation>1 cm bis 10 m</translation>
    </message>
    <message>
        <source>0 cm to 1 m</source>
        <translation>0 cm bis 1 m</translation>
    </message>
    <message>
        <source>0.05 mm to 50 mm</source>
        <translation>0,05 mm bis 50 mm</translation>
    </message>
    <message>
        <source>1 cm to 1 km (1000 m)</source>
        <translation>1 cm bis 1 km (1000 m)</translation>
    </message>
    <message>
        <source>1 cm to 5 m</source>
        <translation>1 cm bis 5 m</translation>
    </message>
    <message>
        <source>0 cm to 5 m</source>
        <translation>0 cm bis 5 m</translation>
    </message>
    <message>
        <source>1 mm to 10 m</source>
        <translation>1 mm bis 10 m</translation>
    </message>
    <message>
        <source>5 mm to 10 m</source>
        <translation>5 mm bis 10 m</translation>
    </message>
    <message>
        <source>5 mm to 1 km (1000 m)</source>
        <translation>5 mm bis 1 km (1000 m)</translation>
    </message>
    <message>
        <source>10 cm to 1 km (1000 m)</source>
        <translation>10 cm bis 1 km (1000 m)</translation>
    </message>
    <message>
        <source>10 cm to 10 m</source>
        <translation>10 cm bis 10 m</translation>
    </message>
    <message>
        <source>1 mm to 50 cm</source>
        <translation>1 mm bis 50 cm</translation>
    </message>
    <message>
        <source>0 cm to 10 m</source>
        <translation>0 cm bis 10 m</translation>
    </message>
    <message>
        <source>0.1 mm to 10 cm</source>
        <translation>0,1 mm bis 10 cm</translation>
    </message>
    <message>
        <source>0 cm to 1 km (1000 m)</source>
        <translation>0 cm bis 1 km (1000 m)</translation>
    </message>
    <message>
        <source>1 m to 1 km (1000 m)</source>
        <translation>1 m bis 1 km (1000 m)</translation>
    </message>
    <message>
        <source>the shelf would hold more than %1 rolls</source>
        <translation>das Regal würde mehr als %1 Rollen fassen</translation>
    </message>
    <message>
        <source>take away remnants you do not need, then mark again</source>
        <translation>nicht benötigte Reststücke wegnehmen, dann noch einmal vermerken</translation>
    </message>
    <message>
        <source>no lay is marked as cut</source>
        <translation>kein Stapel ist als geschnitten vermerkt</translation>
    </message>
    <message>
        <source>name at least one</source>
        <translation>mindestens einen nennen</translation>
    </message>
    <message>
        <source>the plan has no lay %1</source>
        <translation>der Plan hat keinen Stapel %1</translation>
    </message>
    <message>
        <source>it has 1 to %1</source>
        <translation>er hat 1 bis %1</translation>
    </message>
    <message>
        <source>lay %1 is marked twice</source>
        <translation>Stapel %1 ist zweimal vermerkt</translation>
    </message>
    <message>
        <source>name it once</source>
        <translation>ihn einmal nennen</translation>
    </message>
    <message>
        <source>on &quot;%1&quot; a length is marked as cut that lies behind one that is not</source>
        <translation>auf „%1“ ist eine Bahn als geschnitten vermerkt, die hinter einer ungeschnittenen liegt</translation>
    </message>
    <message>
        <source>mark the lays of the lengths before it too, since this cloth has flaws or a repeat</source>
        <translation>auch die Stapel der Bahnen davor vermerken, denn dieser Stoff hat Fehler oder einen Rapport</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is said to hold more than before it was cut</source>
        <translation>„%1“ soll mehr enthalten als vor dem Schneiden</translation>
    </message>
    <message>
        <source>measure it again</source>
        <translation>noch einmal messen</translation>
    </message>
    <message numerus="yes">
        <source>%n panels are said to be spoilt of the %2 that were cut from %3</source>
        <translation>
            <numerusform>%n Teil soll verdorben sein von den %2, die aus %3 geschnitten wurden</numerusform>
            <numerusform>%n Teile sollen verdorben sein von den %2, die aus %3 geschnitten wurden</numerusform>
        </translation>
    </message>
    <message>
        <source>on a ply turned over by a fold along the roll the pattern runs the other way across</source>
        <translation>auf einer Lage, die durch einen Bruch längs der Rolle gewendet ist, läuft das Muster quer andersherum</translation>
    </message>
    <message>
        <source>on a ply turned over end to end the pattern runs the other way along</source>
        <translation>auf einer Lage, die Ende auf Ende gewendet ist, läuft das Muster längs andersherum</translation>
    </message>
    <message>
        <source>%1, so no panel that must match is cut there; %2</source>
        <translation>%1, daher wird dort kein Teil geschnitten, das passen muss; %2</translation>
    </message>
    <message>
        <source>%1; panels that must match are left out: %2</source>
        <translation>%1; Teile, die passen müssen, bleiben aus: %2</translation>
    </message>
    <message>
        <source>no panel that matches the pattern, and no other, can be cut from this roll so that it is worth it</source>
        <translation>weder ein Teil, das zum Muster passt, noch ein anderes lässt sich aus dieser Rolle so schneiden, dass es sich lohnt</translation>
    </message>
    <message>
        <source>every place where a fold or a cut can matter was searched, with each panel that must match in cloth whose phase is kept; none gives more</source>
        <translation>jede Stelle, an der ein Bruch oder ein Schnitt etwas ändern kann, wurde durchsucht, jedes Teil, das passen muss, in Stoff mit gehaltenem Rapport; keine ergibt mehr</translation>
    </message>
    <message>
        <source>this is the best found, not proved best; the bound is what the roll gives where nothing need match</source>
        <translation>das Beste, was gefunden wurde, nicht als Bestes bewiesen; die Schranke ist, was die Rolle ergibt, wenn nichts passen muss</translation>
    </message>
    <message>
        <source>it is the last panel of the job</source>
        <translation>es ist das letzte Teil des Projekts</translation>
    </message>
    <message>
        <source>add another before you take it away</source>
        <translation>vor dem Entfernen ein anderes hinzufügen</translation>
    </message>
    <message>
        <source>the product &quot;%1&quot; is sewn from it</source>
        <translation>das Produkt „%1“ wird daraus genäht</translation>
    </message>
    <message>
        <source>take it out of the product first</source>
        <translation>es erst aus dem Produkt nehmen</translation>
    </message>
    <message>
        <source>some of it are cut, on hand or in the records</source>
        <translation>einige davon sind geschnitten, vorrätig oder im Verlauf</translation>
    </message>
    <message>
        <source>keep it, or use them up and clear the records first</source>
        <translation>es behalten oder sie erst aufbrauchen und den Verlauf leeren</translation>
    </message>
    <message>
        <source>a length that is kept on &quot;%1&quot; has it</source>
        <translation>eine auf „%1“ beibehaltene Bahn enthält es</translation>
    </message>
    <message>
        <source>let that length go first</source>
        <translation>diese Bahn erst freigeben</translation>
    </message>
    <message>
        <source>no plan that makes as much costs less: prices of panels prove it</source>
        <translation>kein Plan, der ebenso viel fertigt, kostet weniger: Preise der Teile beweisen es</translation>
    </message>
    <message>
        <source>this is the best found; prices of panels bound what any plan costs</source>
        <translation>das Beste, was gefunden wurde; Preise der Teile begrenzen, was jeder Plan kostet</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>%1 must match the pattern of %2, so a batch cuts none of it there, and more of that kind</source>
        <translation>%1 muss zum Muster von %2 passen, daher schneidet eine Serie dort keines davon, und ebenso in weiteren Fällen</translation>
    </message>
    <message>
        <source>%1 must match the pattern of %2, so a batch cuts none of it there</source>
        <translation>%1 muss zum Muster von %2 passen, daher schneidet eine Serie dort keines davon</translation>
    </message>
    <message>
        <source>planning was stopped before a plan was found</source>
        <translation>das Planen wurde angehalten, bevor ein Plan gefunden war</translation>
    </message>
    <message>
        <source>no panel of the order can be cut from any roll</source>
        <translation>kein Teil des Auftrags lässt sich aus irgendeiner Rolle schneiden</translation>
    </message>
    <message>
        <source>the plan found does not pass inspection: %1</source>
        <translation>der gefundene Plan besteht die Prüfung nicht: %1</translation>
    </message>
    <message>
        <source>this is a fault of the program; please report it with the job file</source>
        <translation>das ist ein Fehler des Programms; bitte mit der Projektdatei melden</translation>
    </message>
    <message>
        <source>&quot;%1&quot; must be cut, and no panel of the order can be cut from it</source>
        <translation>„%1“ muss geschnitten werden, und kein Teil des Auftrags lässt sich daraus schneiden</translation>
    </message>
    <message>
        <source>let the batch choose, or order what this cloth can serve</source>
        <translation>die Serie wählen lassen oder in Auftrag geben, wofür dieser Stoff taugt</translation>
    </message>
    <message>
        <source>the lengths that serve the order give %1 of %2, and at most %3 may be cut</source>
        <translation>die Bahnen, die dem Auftrag dienen, ergeben %1 von %2, und höchstens %3 dürfen geschnitten werden</translation>
    </message>
    <message>
        <source>take the limit off the panel, or let lengths go that are kept</source>
        <translation>die Grenze des Teils aufheben oder beibehaltene Bahnen freigeben</translation>
    </message>
    <message>
        <source>the best plan passes a limit on copies, and plans within limits are not searched where panels must match or folds are put by hand</source>
        <translation>der beste Plan überschreitet eine Stückgrenze, und Pläne innerhalb von Grenzen werden nicht gesucht, wo Teile passen müssen oder Brüche von Hand gesetzt sind</translation>
    </message>
    <message>
        <source>raise the limits</source>
        <translation>die Grenzen erhöhen</translation>
    </message>
    <message>
        <source>planning was stopped before the search was done; this is the best found by then; the bound counts every bit of usable cloth</source>
        <translation>das Planen wurde angehalten, bevor die Suche fertig war; das ist das Beste, was bis dahin gefunden wurde; die Schranke zählt jeden Rest nutzbaren Stoffs</translation>
    </message>
    <message>
        <source>this size follows from the goods it is sewn into</source>
        <translation>dieses Maß folgt aus der Fertigware, in die es eingenäht wird</translation>
    </message>
    <message>
        <source>change that of their body, which is not a lining, back or strip</source>
        <translation>das Maß ihres Hauptteils ändern, das weder Futter noch Rückseite noch Streifen ist</translation>
    </message>
    <message>
        <source>the panels match a pattern; there folds are not put by hand</source>
        <translation>die Teile passen zu einem Muster; dort werden Brüche nicht von Hand gesetzt</translation>
    </message>
    <message>
        <source>the plan found does not keep to what is set: %1</source>
        <translation>der gefundene Plan hält sich nicht an das Gesetzte: %1</translation>
    </message>
    <message>
        <source>it reaches the bound of all plans of this way, whatever is set by hand</source>
        <translation>er erreicht die Schranke aller Pläne dieser Faltart, was auch von Hand gesetzt ist</translation>
    </message>
    <message>
        <source>this is the best found with what is set by hand, not proved best; the bound is that of all plans of this way</source>
        <translation>das Beste, was mit dem von Hand Gesetzten gefunden wurde, nicht als Bestes bewiesen; die Schranke ist die aller Pläne dieser Faltart</translation>
    </message>
    <message>
        <source>the panels match a pattern; there nothing is set by hand</source>
        <translation>die Teile passen zu einem Muster; dort wird nichts von Hand gesetzt</translation>
    </message>
    <message>
        <source>the cloth is one-way: folded end to end, every second ply would lie against the nap</source>
        <translation>der Stoff hat einen Strich: Ende auf Ende gefaltet läge jede zweite Lage gegen den Strich</translation>
    </message>
    <message>
        <source>the cloth is one-way and its nap runs from selvedge to selvedge: folded along the roll, every second ply would lie against the nap</source>
        <translation>der Stoff hat einen Strich, der von Webkante zu Webkante läuft: längs der Rolle gefaltet läge jede zweite Lage gegen den Strich</translation>
    </message>
    <message>
        <source>every place where a fold or a cut can matter was searched; none gives more</source>
        <translation>jede Stelle, an der ein Bruch oder ein Schnitt etwas ändern kann, wurde durchsucht; keine ergibt mehr</translation>
    </message>
    <message>
        <source>with the folds at any place where the worth can change, every place where a cut can matter was searched; none gives more</source>
        <translation>mit den Brüchen an jeder Stelle, an der sich der Wert ändern kann, wurde jede Stelle durchsucht, an der ein Schnitt etwas ändern kann; keine ergibt mehr</translation>
    </message>
    <message>
        <source>with the folds where they are, every place where a cut can matter was searched; none gives more</source>
        <translation>mit den Brüchen, wo sie sind, wurde jede Stelle durchsucht, an der ein Schnitt etwas ändern kann; keine ergibt mehr</translation>
    </message>
    <message numerus="yes">
        <source>%n plies make a stack of %2; the cutter takes %3 and %4 plies at most</source>
        <translation>
            <numerusform>%n Lage ergibt einen Stapel von %2; das Schneidegerät nimmt höchstens %3 und %4 Lagen</numerusform>
            <numerusform>%n Lagen ergeben einen Stapel von %2; das Schneidegerät nimmt höchstens %3 und %4 Lagen</numerusform>
        </translation>
    </message>
    <message>
        <source>the roll is no longer than its end losses</source>
        <translation>die Rolle ist nicht länger als ihre Endverluste</translation>
    </message>
    <message>
        <source>folded so it is too deep for the table</source>
        <translation>so gefaltet ist es zu tief für den Tisch</translation>
    </message>
    <message>
        <source>folded so it is deeper than the %1 that fit the table and can be reached</source>
        <translation>so gefaltet ist es tiefer als die %1, die auf den Tisch passen und erreichbar sind</translation>
    </message>
    <message>
        <source>planning was stopped before a plan of this way was found</source>
        <translation>das Planen wurde angehalten, bevor ein Plan dieser Faltart gefunden war</translation>
    </message>
    <message>
        <source>no panel fits</source>
        <translation>kein Teil passt</translation>
    </message>
    <message>
        <source>no panel that fits is worth the time of cutting it</source>
        <translation>kein passendes Teil ist die Zeit für seinen Zuschnitt wert</translation>
    </message>
    <message>
        <source>every panel that fits would touch a flaw</source>
        <translation>jedes passende Teil würde einen Fehler berühren</translation>
    </message>
    <message>
        <source>with what is set by hand, every place where a cut can matter was searched, and the other folds at any place where the worth can change; none gives more</source>
        <translation>mit dem von Hand Gesetzten wurde jede Stelle durchsucht, an der ein Schnitt etwas ändern kann, und die anderen Brüche an jeder Stelle, an der sich der Wert ändern kann; keine ergibt mehr</translation>
    </message>
    <message>
        <source>lengths of %1 are longer than the %2 that fit the table and the roll</source>
        <translation>Bahnen von %1 sind länger als die %2, die auf Tisch und Rolle passen</translation>
    </message>
    <message>
        <source>a length of %1 cannot be halved in whole units</source>
        <translation>eine Bahn von %1 lässt sich nicht in ganzen Einheiten halbieren</translation>
    </message>
    <message>
        <source>no panel fits lengths of %1</source>
        <translation>kein Teil passt in Bahnen von %1</translation>
    </message>
    <message>
        <source>the folds cannot lie so with the pinned lines where they are</source>
        <translation>die Brüche können so nicht liegen, wenn die angehefteten Linien bleiben, wo sie sind</translation>
    </message>
    <message>
        <source>cut for an order; the bound counts every bit of usable cloth of this roll</source>
        <translation>für einen Auftrag geschnitten; die Schranke zählt jeden Rest nutzbaren Stoffs dieser Rolle</translation>
    </message>
    <message>
        <source>the length of this roll is no estimate</source>
        <translation>die Länge dieser Rolle ist keine Schätzung</translation>
    </message>
    <message>
        <source>plan it as it is</source>
        <translation>sie planen, wie sie ist</translation>
    </message>
    <message>
        <source>planning was stopped before all lengths were tried</source>
        <translation>das Planen wurde angehalten, bevor alle Längen versucht waren</translation>
    </message>
    <message>
        <source>plan again</source>
        <translation>noch einmal planen</translation>
    </message>
    <message>
        <source>it is longer than 1 km</source>
        <translation>es ist länger als 1 km</translation>
    </message>
    <message>
        <source>give a shorter length</source>
        <translation>eine kürzere Länge angeben</translation>
    </message>
    <message>
        <source>it is not a whole number of 1/320 mm</source>
        <translation>es ist keine ganze Zahl von 1/320 mm</translation>
    </message>
    <message>
        <source>round it to 0.1 mm or to 1/64 in</source>
        <translation>auf 0,1 mm oder 1/64 in runden</translation>
    </message>
    <message>
        <source>a digit is missing after the decimal point</source>
        <translation>nach dem Dezimalzeichen fehlt eine Ziffer</translation>
    </message>
    <message>
        <source>it has more than one point or comma in a number</source>
        <translation>eine Zahl hat mehr als einen Punkt oder ein Komma</translation>
    </message>
    <message>
        <source>write one point for the decimals and no thousands marks</source>
        <translation>ein Zeichen für die Dezimalstellen schreiben und keine Tausenderzeichen</translation>
    </message>
    <message>
        <source>three digits after a comma may be thousands or decimals</source>
        <translation>drei Ziffern nach einem Komma können Tausender oder Dezimalstellen sein</translation>
    </message>
    <message>
        <source>write a point for decimals, or the number without a comma</source>
        <translation>für Dezimalstellen einen Punkt schreiben oder die Zahl ohne Komma</translation>
    </message>
    <message>
        <source>a number is missing under the fraction line</source>
        <translation>unter dem Bruchstrich fehlt eine Zahl</translation>
    </message>
    <message>
        <source>a fraction cannot have 0 below its line</source>
        <translation>unter dem Bruchstrich darf keine 0 stehen</translation>
    </message>
    <message>
        <source>a fraction after a whole number must be less than one</source>
        <translation>ein Bruch nach einer ganzen Zahl muss kleiner als eins sein</translation>
    </message>
    <message>
        <source>it has a sign</source>
        <translation>es hat ein Vorzeichen</translation>
    </message>
    <message>
        <source>give a length of zero or more, without a sign</source>
        <translation>eine Länge ab null ohne Vorzeichen angeben</translation>
    </message>
    <message>
        <source>it does not start with a number</source>
        <translation>es beginnt nicht mit einer Zahl</translation>
    </message>
    <message>
        <source>write it as 45 cm or 17 3/4 in</source>
        <translation>etwa 45 cm oder 17 3/4 in schreiben</translation>
    </message>
    <message>
        <source>there is no such unit as &quot;%1&quot;</source>
        <translation>die Einheit „%1“ gibt es nicht</translation>
    </message>
    <message>
        <source>there is no such unit</source>
        <translation>diese Einheit gibt es nicht</translation>
    </message>
    <message>
        <source>use mm, cm, m, in, ft or yd</source>
        <translation>mm, cm, m, in, ft oder yd verwenden</translation>
    </message>
    <message>
        <source>it has two numbers with no unit between them</source>
        <translation>zwei Zahlen stehen ohne Einheit dazwischen</translation>
    </message>
    <message>
        <source>give one number and its unit</source>
        <translation>eine Zahl und ihre Einheit angeben</translation>
    </message>
    <message>
        <source>a number has no unit</source>
        <translation>eine Zahl hat keine Einheit</translation>
    </message>
    <message>
        <source>write mm, cm, m, in, ft or yd after it</source>
        <translation>mm, cm, m, in, ft oder yd dahinter schreiben</translation>
    </message>
    <message>
        <source>only feet or yards and then inches make one length of two</source>
        <translation>nur Fuß oder Yards und danach Zoll ergeben zusammen eine Länge</translation>
    </message>
    <message>
        <source>feet or yards with inches after them must be whole</source>
        <translation>Fuß oder Yards mit Zoll dahinter müssen ganze Zahlen sein</translation>
    </message>
    <message>
        <source>the inches make another whole foot or yard</source>
        <translation>die Zoll ergeben noch einen ganzen Fuß oder ein ganzes Yard</translation>
    </message>
    <message>
        <source>carry them over</source>
        <translation>sie übertragen</translation>
    </message>
    <message>
        <source>it is empty</source>
        <translation>es ist leer</translation>
    </message>
    <message>
        <source>something follows the length</source>
        <translation>hinter der Länge steht noch etwas</translation>
    </message>
    <message>
        <source>give the length alone</source>
        <translation>nur die Länge angeben</translation>
    </message>
    <message>
        <source>this text</source>
        <translation>dieser Text</translation>
    </message>
    <message>
        <source>%1 is not a length: %2</source>
        <translation>%1 ist keine Länge: %2</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <source>sewing all pieces takes more than %1 sittings</source>
        <translation>das Nähen aller Stücke braucht mehr als %1 Nähetappen</translation>
    </message>
    <message>
        <source>ask for fewer pieces, or correct the seconds of their steps</source>
        <translation>weniger Stück verlangen oder die Sekunden ihrer Arbeitsschritte berichtigen</translation>
    </message>
    <message>
        <source>more was cut off the roll since than it could hold by these figures</source>
        <translation>seither wurde mehr von der Rolle abgeschnitten, als nach diesen Angaben darauf sein konnte</translation>
    </message>
    <message>
        <source>measure it again, or give the length that is found</source>
        <translation>neu messen oder die gefundene Länge angeben</translation>
    </message>
    <message>
        <source>cloth is cut off since the roll was measured, and nothing was measured</source>
        <translation>es wurde Stoff abgeschnitten, seit die Rolle gemessen wurde, und gemessen wurde nichts</translation>
    </message>
    <message>
        <source>give what was measured, or leave it out</source>
        <translation>angeben, was gemessen wurde, oder weglassen</translation>
    </message>
    <message>
        <source>name the roll that was cut</source>
        <translation>die Rolle nennen, von der geschnitten wurde</translation>
    </message>
    <message>
        <source>cutting all rolls may take more than %1 hours</source>
        <translation>das Schneiden aller Rollen kann mehr als %1 Stunden dauern</translation>
    </message>
    <message>
        <source>plan fewer rolls or larger panels, or correct the seconds of the steps</source>
        <translation>weniger Rollen oder größere Teile planen oder die Sekunden der Arbeitsschritte berichtigen</translation>
    </message>
    <message>
        <source>side by side across all rolls lie more than %1 panels of all kinds</source>
        <translation>nebeneinander liegen quer über alle Rollen mehr als %1 Teile aller Arten</translation>
    </message>
    <message>
        <source>plan fewer rolls or fewer kinds of panels at once</source>
        <translation>weniger Rollen oder weniger Arten von Teilen auf einmal planen</translation>
    </message>
</context>
<context>
    <name>foldyard</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>%1, an offcut</source>
        <translation>%1, Abschnitt</translation>
    </message>
    <message>
        <source>Lays, in cutting order</source>
        <translation>Stapel in der Reihenfolge des Schneidens</translation>
    </message>
    <message>
        <source>lay</source>
        <translation>Stapel</translation>
    </message>
    <message>
        <source>lengths, bottom to top</source>
        <translation>Bahnen, von unten nach oben</translation>
    </message>
    <message>
        <source>each</source>
        <translation>je</translation>
    </message>
    <message>
        <source>folded</source>
        <translation>Faltung</translation>
    </message>
    <message>
        <source>plies</source>
        <translation>Lagen</translation>
    </message>
    <message>
        <source>high</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>cuts</source>
        <translation>Schnitte</translation>
    </message>
    <message>
        <source>gives</source>
        <translation>ergibt</translation>
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
        <source>lengths</source>
        <translation>Bahnen</translation>
    </message>
    <message>
        <source>cut off</source>
        <translation>abgeschnitten</translation>
    </message>
    <message>
        <source>left on it</source>
        <translation>Rest darauf</translation>
    </message>
    <message>
        <source>Remnants to keep</source>
        <translation>Reststücke zum Aufheben</translation>
    </message>
    <message>
        <source>cloth</source>
        <translation>Stoff</translation>
    </message>
    <message>
        <source>size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>%1 × a roll of %2</source>
        <translation>%1 × eine Rolle von %2</translation>
    </message>
    <message>
        <source>the end of %1</source>
        <translation>das Ende von %1</translation>
    </message>
    <message>
        <source>Before you cut</source>
        <translation>Vor dem Schneiden</translation>
    </message>
    <message>
        <source>Lay %1: %2</source>
        <translation>Stapel %1: %2</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Serie</translation>
    </message>
    <message>
        <source>Batch: %1</source>
        <translation>Serie: %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <comment>a remnant from a roll</comment>
        <translation>von %1</translation>
    </message>
    <message>
        <source>What is made</source>
        <translation>Was gefertigt wird</translation>
    </message>
    <message>
        <source>product</source>
        <translation>Produkt</translation>
    </message>
    <message>
        <source>What lacks</source>
        <translation>Was fehlt</translation>
    </message>
    <message>
        <source>cloth to get</source>
        <translation>fehlender Stoff</translation>
    </message>
    <message>
        <source>about</source>
        <translation>etwa</translation>
    </message>
    <message>
        <source>About: by the best yield of one length, a guide and no plan.</source>
        <translation>Etwa: nach der besten Ausbeute einer Bahn, ein Anhalt und kein Plan.</translation>
    </message>
    <message>
        <source>Webbing</source>
        <translation>Gurtband</translation>
    </message>
    <message>
        <source>webbing</source>
        <translation>Gurtband</translation>
    </message>
    <message>
        <source>cut</source>
        <comment>lengths of webbing</comment>
        <translation>zugeschnitten</translation>
    </message>
    <message>
        <source>left</source>
        <translation>Rest</translation>
    </message>
    <message>
        <source>Boards to wind it round</source>
        <translation>Bretter zum Wickeln</translation>
    </message>
    <message>
        <source>girth of the board</source>
        <translation>Umfang des Bretts</translation>
    </message>
    <message>
        <source>turns</source>
        <translation>Windungen</translation>
    </message>
    <message>
        <source>Turns lie side by side and are cut through at one edge; the girth is the length with its loss.</source>
        <translation>Die Windungen liegen nebeneinander und werden an einer Kante durchgeschnitten; der Umfang ist die Länge mit ihrem Verlust.</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>Zu kaufen</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>%1, rolls of %2</source>
        <translation>%1, Rollen von %2</translation>
    </message>
    <message>
        <source>%1 (%2 may do)</source>
        <translation>%1 (%2 könnten reichen)</translation>
    </message>
    <message>
        <source>thread, reels of %1</source>
        <translation>Faden, Rollen von %1</translation>
    </message>
    <message>
        <source>labels</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>Time and money</source>
        <translation>Zeit und Geld</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>wie viel</translation>
    </message>
    <message>
        <source>cutting</source>
        <translation>Zuschneiden</translation>
    </message>
    <message>
        <source>sewing</source>
        <translation>Nähen</translation>
    </message>
    <message>
        <source>sold for</source>
        <translation>verkauft für</translation>
    </message>
    <message>
        <source>cloth cut off</source>
        <translation>abgeschnittener Stoff</translation>
    </message>
    <message>
        <source>webbing, thread, labels</source>
        <translation>Gurtband, Faden, Etiketten</translation>
    </message>
    <message>
        <source>left for the work</source>
        <translation>bleibt für die Arbeit</translation>
    </message>
    <message>
        <source>for an hour of it</source>
        <translation>für eine Stunde davon</translation>
    </message>
    <message>
        <source>Steps that have never been timed count with their assumed times.</source>
        <translation>Nie gemessene Arbeitsschritte zählen mit ihrer angenommenen Zeit.</translation>
    </message>
    <message>
        <source>Sittings</source>
        <translation>Nähetappen</translation>
    </message>
    <message>
        <source>no</source>
        <comment>column</comment>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>takes</source>
        <translation>dauert</translation>
    </message>
    <message>
        <source>cut</source>
        <comment>what is done in a sitting</comment>
        <translation>zuschneiden</translation>
    </message>
    <message>
        <source>sew %1</source>
        <translation>%1 nähen</translation>
    </message>
    <message>
        <source>Pieces worth %1 of what must be made are there; no plan makes more than %2.</source>
        <translation>Gefertigt sind Stücke im Wert von %1 dessen, was sein muss; kein Plan fertigt mehr als %2.</translation>
    </message>
    <message>
        <source>No plan does better (proved).</source>
        <translation>Kein Plan ist besser (bewiesen).</translation>
    </message>
    <message>
        <source>No plan can be better by more than %1.</source>
        <translation>Kein Plan kann um mehr als %1 besser sein.</translation>
    </message>
    <message>
        <source>No plan can be better by more than %1, %2 % of that cloth.</source>
        <translation>Kein Plan kann um mehr als %1 besser sein, das sind %2 % dieses Stoffs.</translation>
    </message>
    <message>
        <source>%1 from %2: %3 in %4, %5 at the table.</source>
        <translation>%1 aus %2: %3 in %4, %5 am Tisch.</translation>
    </message>
    <message numerus="yes">
        <source>%n roll(s)</source>
        <translation>
            <numerusform>%n Rolle</numerusform>
            <numerusform>%n Rollen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n length(s)</source>
        <translation>
            <numerusform>%n Bahn</numerusform>
            <numerusform>%n Bahnen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lay(s)</source>
        <comment>in so many lays</comment>
        <translation>
            <numerusform>%n Stapel</numerusform>
            <numerusform>%n Stapeln</numerusform>
        </translation>
    </message>
    <message>
        <source>Cloth worth %1 is cut off.</source>
        <translation>Stoff im Wert von %1 wird abgeschnitten.</translation>
    </message>
    <message>
        <source>The order cannot be filled; see what lacks.</source>
        <translation>Der Auftrag lässt sich nicht erfüllen; siehe, was fehlt.</translation>
    </message>
    <message>
        <source>fold line, on the flat cloth</source>
        <translation>Faltlinie, auf dem flachen Stoff</translation>
    </message>
    <message>
        <source>fold edge, on the folded cloth</source>
        <translation>Bruchkante, am gefalteten Stoff</translation>
    </message>
    <message>
        <source>selvedge</source>
        <translation>Webkante</translation>
    </message>
    <message>
        <source>cut, numbered in the order of cutting</source>
        <translation>Schnitt, in der Reihenfolge des Schneidens</translation>
    </message>
    <message>
        <source>where a repeat of the pattern begins</source>
        <translation>Beginn eines Rapports</translation>
    </message>
    <message>
        <source>panel: colour and hatch by kind</source>
        <translation>Teil: Farbe und Schraffur je Art</translation>
    </message>
    <message>
        <source>offcut or loss</source>
        <translation>Abschnitt oder Verlust</translation>
    </message>
    <message>
        <source>remnant, back to the shelf</source>
        <translation>Reststück, zurück ins Regal</translation>
    </message>
    <message>
        <source>flaw; crossed out: panel lost to it</source>
        <translation>Fehler; durchgestrichen: verlorenes Teil</translation>
    </message>
    <message>
        <source>where the blade goes through the plies</source>
        <translation>wo das Messer durch die Lagen geht</translation>
    </message>
    <message>
        <source>nap, on one-way cloth; in the table: this plan</source>
        <translation>Strich, bei Stoff mit Strich; in der Tabelle: dieser Plan</translation>
    </message>
    <message>
        <source>in the table: no way beats it in worth and time</source>
        <translation>in der Tabelle: in Wert und Zeit unübertroffen</translation>
    </message>
    <message>
        <source>in the table: folded end to end, too</source>
        <translation>in der Tabelle: auch Ende auf Ende gefaltet</translation>
    </message>
    <message>
        <source>Is the print true to scale?</source>
        <translation>Stimmt der Maßstab?</translation>
    </message>
    <message>
        <source>Print at 100 % (actual size); this square must measure 100 mm on each side. Numbers: centimetres above, inches at the left.</source>
        <translation>Mit 100 % drucken (tatsächliche Größe); dieses Quadrat muss an jeder Seite 100 mm messen. Zahlen: oben Zentimeter, links Zoll.</translation>
    </message>
    <message>
        <source>Signs</source>
        <translation>Zeichen</translation>
    </message>
    <message>
        <source>fold way</source>
        <translation>Faltart</translation>
    </message>
    <message>
        <source>ends</source>
        <comment>column: folded end to end</comment>
        <translation>Enden</translation>
    </message>
    <message>
        <source>panels</source>
        <comment>column</comment>
        <translation>Teile</translation>
    </message>
    <message>
        <source>use</source>
        <comment>column</comment>
        <translation>genutzt</translation>
    </message>
    <message>
        <source>cuts</source>
        <comment>column</comment>
        <translation>Schn.</translation>
    </message>
    <message>
        <source>lift</source>
        <comment>column</comment>
        <translation>Stap.</translation>
    </message>
    <message>
        <source>min</source>
        <comment>column</comment>
        <translation>min</translation>
    </message>
    <message>
        <source>worth</source>
        <comment>column</comment>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Not possible: %1. Reason: %2</source>
        <translation>Nicht möglich: %1. Grund: %2</translation>
    </message>
    <message>
        <source>proved</source>
        <translation>bewiesen</translation>
    </message>
    <message>
        <source>not proved</source>
        <translation>nicht bewiesen</translation>
    </message>
    <message>
        <source>worth less time</source>
        <translation>Wert abzüglich Zeit</translation>
    </message>
    <message>
        <source>cloth used, %</source>
        <translation>Stoff genutzt, %</translation>
    </message>
    <message>
        <source>lengths in a lift</source>
        <translation>Bahnen je Stapel</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>best of its way</source>
        <translation>das Beste der Faltart</translation>
    </message>
    <message>
        <source>not possible: %1</source>
        <translation>nicht möglich: %1</translation>
    </message>
    <message>
        <source>cut</source>
        <comment>column</comment>
        <translation>Schnitt</translation>
    </message>
    <message>
        <source>runs</source>
        <comment>column</comment>
        <translation>Lauf</translation>
    </message>
    <message>
        <source>at</source>
        <comment>column</comment>
        <translation>bei</translation>
    </message>
    <message>
        <source>from</source>
        <comment>column</comment>
        <translation>von</translation>
    </message>
    <message>
        <source>to</source>
        <comment>column</comment>
        <translation>bis</translation>
    </message>
    <message>
        <source>length</source>
        <comment>column</comment>
        <translation>Länge</translation>
    </message>
    <message>
        <source>along</source>
        <translation>längs</translation>
    </message>
    <message>
        <source>across</source>
        <translation>quer</translation>
    </message>
    <message>
        <source>%1 from left</source>
        <translation>%1 von links</translation>
    </message>
    <message>
        <source>%1 from near end</source>
        <translation>%1 vom nahen Ende</translation>
    </message>
    <message>
        <source>%1 turned</source>
        <comment>a size</comment>
        <translation>%1 gedreht</translation>
    </message>
    <message>
        <source>%1: %2 in all</source>
        <translation>%1: %2 insgesamt</translation>
    </message>
    <message>
        <source>Cuts, in this order</source>
        <translation>Schnitte, in dieser Reihenfolge</translation>
    </message>
    <message>
        <source>None: the length is used as it is.</source>
        <translation>Keine: die Bahn wird so verwendet, wie sie ist.</translation>
    </message>
    <message>
        <source>In %1, measured on the folded cloth from its left edge (%2) and its near end (%3). Each cut goes through all plies. The blade travels %4 through one lay.</source>
        <translation>In %1, am gefalteten Stoff von der linken Kante (%2) und vom nahen Ende (%3) gemessen. Jeder Schnitt geht durch alle Lagen. Das Messer läuft %4 durch einen Stapel.</translation>
    </message>
    <message>
        <source>no.</source>
        <comment>column</comment>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>where</source>
        <comment>column</comment>
        <translation>wo</translation>
    </message>
    <message>
        <source>from – to</source>
        <comment>column</comment>
        <translation>von – bis</translation>
    </message>
    <message>
        <source>Panels from one length</source>
        <translation>Teile aus einer Bahn</translation>
    </message>
    <message>
        <source>Left over from one length</source>
        <translation>Rest einer Bahn</translation>
    </message>
    <message>
        <source>offcut</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>remnant</source>
        <translation>Reststück</translation>
    </message>
    <message>
        <source>Lengths with flaws, measured from each near end</source>
        <translation>Bahnen mit Fehlern, jeweils vom nahen Ende gemessen</translation>
    </message>
    <message>
        <source>Cautions for the cutter</source>
        <translation>Sicherheit am Schneidegerät</translation>
    </message>
    <message>
        <source>diameters</source>
        <comment>by its diameters</comment>
        <translation>Durchmessern</translation>
    </message>
    <message>
        <source>turns</source>
        <comment>by its turns</comment>
        <translation>Windungen</translation>
    </message>
    <message>
        <source>weight</source>
        <comment>by its weight</comment>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>%1 (the first from %2)</source>
        <translation>%1 (der erste ab %2)</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
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
        <source>a repeat of %1, the same mirrored</source>
        <translation>ein Rapport von %1, gespiegelt gleich</translation>
    </message>
    <message>
        <source>a repeat of %1</source>
        <translation>ein Rapport von %1</translation>
    </message>
    <message>
        <source>shrinks %1</source>
        <translation>läuft ein: %1</translation>
    </message>
    <message>
        <source>%1, by its %2; found %3 long</source>
        <translation>%1, nach %2; gefunden: %3 Länge</translation>
    </message>
    <message>
        <source>%1, by its %2; plans count on %3</source>
        <translation>%1, nach %2; Pläne rechnen mit %3</translation>
    </message>
    <message>
        <source>flaw</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>%1 from %2 to %3, the whole width</source>
        <translation>%1 von %2 bis %3, über die ganze Breite</translation>
    </message>
    <message>
        <source>%1 from %2 to %3, %4 to %5 from the left edge</source>
        <translation>%1 von %2 bis %3, %4 bis %5 von der linken Kante</translation>
    </message>
    <message>
        <source>one-way</source>
        <translation>mit Strich</translation>
    </message>
    <message>
        <source>railroaded</source>
        <translation>quer gemustert</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>keeps to the warp</source>
        <translation>hält sich an die Kette</translation>
    </message>
    <message>
        <source>begins with a repeat</source>
        <translation>beginnt mit einem Rapport</translation>
    </message>
    <message>
        <source>has the motif in its middle</source>
        <translation>hat das Motiv in der Mitte</translation>
    </message>
    <message>
        <source>%1, turned</source>
        <translation>%1, gedreht</translation>
    </message>
    <message>
        <source>near end</source>
        <translation>nahes Ende</translation>
    </message>
    <message>
        <source>%1 is lost</source>
        <translation>%1 geht verloren</translation>
    </message>
    <message>
        <source>%1 are lost</source>
        <translation>%1 gehen verloren</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>length %1</source>
        <translation>Bahn %1</translation>
    </message>
    <message>
        <source>lengths %1</source>
        <translation>Bahnen %1</translation>
    </message>
    <message>
        <source>%1 and cloth cut out, between panels</source>
        <translation>%1 und herausgeschnittener Stoff, zwischen Teilen</translation>
    </message>
    <message>
        <source>%1, between panels</source>
        <translation>%1, zwischen Teilen</translation>
    </message>
    <message>
        <source>cut out</source>
        <translation>herausgeschnitten</translation>
    </message>
    <message>
        <source>in what is left of the roll</source>
        <translation>in dem, was von der Rolle bleibt</translation>
    </message>
    <message>
        <source>in a squared end</source>
        <translation>in einem begradigten Ende</translation>
    </message>
    <message>
        <source>over the whole width</source>
        <translation>über die ganze Breite</translation>
    </message>
    <message>
        <source>%1 from the left</source>
        <translation>%1 von links</translation>
    </message>
    <message>
        <source>%1, cut but lost</source>
        <translation>%1, geschnitten, aber verloren</translation>
    </message>
    <message>
        <source>%1 of the roll, cut out</source>
        <translation>%1 der Rolle, herausgeschnitten</translation>
    </message>
    <message>
        <source>%1, and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message numerus="yes">
        <source>%n flaw(s) cost(s) %1.</source>
        <translation>
            <numerusform>%n Fehler kostet %1.</numerusform>
            <numerusform>%n Fehler kosten %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>no panel</source>
        <translation>kein Teil</translation>
    </message>
    <message>
        <source>%1 at %2, %3: %4</source>
        <translation>%1 bei %2, %3: %4</translation>
    </message>
    <message>
        <source>length %1: %2 at %3, %4: %5</source>
        <translation>Bahn %1: %2 bei %3, %4: %5</translation>
    </message>
    <message>
        <source>no panel is lost</source>
        <translation>kein Teil geht verloren</translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) on the four-point scale, %1 per 100 square yards</source>
        <translation>
            <numerusform>%n Punkt nach dem Vier-Punkte-System, %1 je 100 Quadratyard</numerusform>
            <numerusform>%n Punkte nach dem Vier-Punkte-System, %1 je 100 Quadratyard</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) on the four-point scale, %1 per 100 square metres</source>
        <translation>
            <numerusform>%n Punkt nach dem Vier-Punkte-System, %1 je 100 m²</numerusform>
            <numerusform>%n Punkte nach dem Vier-Punkte-System, %1 je 100 m²</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 on the fold</source>
        <comment>× 4 on the fold</comment>
        <translation>%1 im Bruch</translation>
    </message>
    <message>
        <source>%1, %2 on the fold</source>
        <translation>%1, davon %2 im Bruch</translation>
    </message>
    <message numerus="yes">
        <source>%n ply(ies)</source>
        <translation>
            <numerusform>%n Lage</numerusform>
            <numerusform>%n Lagen</numerusform>
        </translation>
    </message>
    <message>
        <source>near end: %1 · left: %2</source>
        <translation>nahes Ende: %1 · links: %2</translation>
    </message>
    <message>
        <source>and %1 more, on the roll below</source>
        <translation>und %1 weitere, auf der Rolle unten</translation>
    </message>
    <message>
        <source> What to cut first stands on a page of its own.</source>
        <translation> Was zuerst zu schneiden ist, steht auf einer eigenen Seite.</translation>
    </message>
    <message>
        <source>Patterns</source>
        <translation>Schnittbilder</translation>
    </message>
    <message>
        <source>%1 × %2, in %3</source>
        <translation>%1 × %2, in %3</translation>
    </message>
    <message>
        <source>The roll</source>
        <translation>Die Rolle</translation>
    </message>
    <message>
        <source>scale %1; from the free end, tape and cross-cuts in %2</source>
        <translation>Maßstab %1; vom freien Ende, Maßband und Ablängschnitte in %2</translation>
    </message>
    <message>
        <source>Fold ways compared, best first</source>
        <translation>Faltarten im Vergleich, die beste zuerst</translation>
    </message>
    <message>
        <source>Fold ways compared, continued</source>
        <translation>Faltarten im Vergleich, Fortsetzung</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>print at 100 % (actual size)</source>
        <translation>mit 100 % drucken (tatsächliche Größe)</translation>
    </message>
    <message>
        <source>Goods the panels of this plan are enough for</source>
        <translation>Fertigware, für die die Teile dieses Plans reichen</translation>
    </message>
    <message>
        <source>Handles: %1 × %2, %3 of webbing for one; their middles at %4 and %5 from the left edge of the panel.</source>
        <translation>Griffe: %1 × %2, %3 Gurtband für ein Stück; ihre Mitten bei %4 und %5 von der linken Kante des Teils.</translation>
    </message>
    <message>
        <source>%1, %2 deep</source>
        <translation>%1, %2 tief</translation>
    </message>
    <message>
        <source>%1 litres</source>
        <translation>%1 Liter</translation>
    </message>
    <message>
        <source>Bottom corners: stitch across %1 from the tip, or cut out squares of %2.</source>
        <translation>Bodenecken: %1 von der Spitze quer abnähen oder Quadrate von %2 ausschneiden.</translation>
    </message>
    <message>
        <source>for one: %1</source>
        <translation>für ein Stück: %1</translation>
    </message>
    <message>
        <source>fold edge</source>
        <translation>Bruchkante</translation>
    </message>
    <message>
        <source>cut end</source>
        <translation>Schnittkante</translation>
    </message>
    <message>
        <source>face and back</source>
        <translation>rechte und linke Seite</translation>
    </message>
    <message>
        <source>face</source>
        <comment>of cloth</comment>
        <translation>rechte Seite</translation>
    </message>
    <message>
        <source>back</source>
        <comment>of cloth</comment>
        <translation>linke Seite</translation>
    </message>
    <message numerus="yes">
        <source>Pattern %1: %n length(s) of %2, in %3</source>
        <translation>
            <numerusform>Schnittbild %1: %n × %2, in %3</numerusform>
            <numerusform>Schnittbild %1: %n × %2, in %3</numerusform>
        </translation>
    </message>
    <message>
        <source>One length gives %1. %2 %3</source>
        <translation>Eine Bahn ergibt %1. %2 %3</translation>
    </message>
    <message>
        <source>Flat and folded cloth: scale %1</source>
        <translation>Flacher und gefalteter Stoff: Maßstab %1</translation>
    </message>
    <message>
        <source>%1 (continued)</source>
        <translation>%1 (Forts.)</translation>
    </message>
    <message>
        <source>Section across</source>
        <translation>Querschnitt</translation>
    </message>
    <message>
        <source>Section along</source>
        <translation>Längsschnitt</translation>
    </message>
    <message>
        <source>seen from the near end</source>
        <translation>vom nahen Ende gesehen</translation>
    </message>
    <message>
        <source>seen from the right edge</source>
        <translation>von der rechten Kante gesehen</translation>
    </message>
    <message>
        <source>scale %1 across the page</source>
        <translation>Maßstab %1 quer über die Seite</translation>
    </message>
    <message>
        <source>plies drawn thicker than they are; heavy line: face; ▼ blade</source>
        <translation>Lagen verdickt; dicke Linie: rechte Seite; ▼ Messer</translation>
    </message>
    <message>
        <source>Flat</source>
        <translation>Flach</translation>
    </message>
    <message>
        <source>%1, face up</source>
        <translation>%1, rechte Seite oben</translation>
    </message>
    <message>
        <source>Folded</source>
        <translation>Gefaltet</translation>
    </message>
    <message>
        <source>%1, %2 up; %3</source>
        <comment>size, face or back, unit</comment>
        <translation>%1, %2 oben; %3</translation>
    </message>
    <message>
        <source>worth</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>What to cut first</source>
        <translation>Was zuerst zu schneiden ist</translation>
    </message>
    <message>
        <source>what is left, from</source>
        <translation>Rest, ab</translation>
    </message>
    <message>
        <source>What the roll gives by its length</source>
        <translation>Was die Rolle je nach Länge ergibt</translation>
    </message>
    <message>
        <source>roll, from</source>
        <translation>Rolle, ab</translation>
    </message>
    <message>
        <source>If the roll is longer</source>
        <translation>Wenn die Rolle länger ist</translation>
    </message>
    <message>
        <source>%1 on a tube of %2</source>
        <translation>%1 auf einer Hülse von %2</translation>
    </message>
    <message>
        <source>its diameters: %1, one ply %2</source>
        <translation>ihren Durchmessern: %1, eine Lage %2</translation>
    </message>
    <message>
        <source>its turns: %1 of them, %2</source>
        <translation>ihren Windungen: %1 Stück, %2</translation>
    </message>
    <message>
        <source>its weight: %1 with a tube of %2, cloth of %3</source>
        <translation>ihrem Gewicht: %1 mit einer Hülse von %2, Stoff von %3</translation>
    </message>
    <message>
        <source>%1 to %2%3 (%4 most likely)</source>
        <translation>%1 bis %2%3 (%4 am wahrscheinlichsten)</translation>
    </message>
    <message>
        <source>worth %1</source>
        <translation>Wert %1</translation>
    </message>
    <message>
        <source>worth, after your time, %1</source>
        <translation>Wert abzüglich der eigenen Zeit %1</translation>
    </message>
    <message>
        <source>worth %1 to %2, most likely %3</source>
        <translation>Wert %1 bis %2, am wahrscheinlichsten %3</translation>
    </message>
    <message>
        <source>worth, after your time, %1 to %2, most likely %3</source>
        <translation>Wert abzüglich der eigenen Zeit %1 bis %2, am wahrscheinlichsten %3</translation>
    </message>
    <message>
        <source>(new)</source>
        <translation>(neu)</translation>
    </message>
    <message>
        <source>(pattern %1)</source>
        <translation>(Schnittbild %1)</translation>
    </message>
    <message>
        <source>%1 to %2, most likely %3</source>
        <translation>%1 bis %2, am wahrscheinlichsten %3</translation>
    </message>
    <message>
        <source>Its length is estimated: %1, from %2. The plan can be cut even from the least of it.</source>
        <translation>Ihre Länge ist geschätzt: %1, aus %2. Der Plan lässt sich auch aus dem Kürzesten davon schneiden.</translation>
    </message>
    <message>
        <source>By its length the roll gives %1; %2.</source>
        <translation>Je nach Länge ergibt die Rolle %1; %2.</translation>
    </message>
    <message>
        <source>Within the estimate no length gives more.</source>
        <translation>Innerhalb der Schätzung ergibt keine Länge mehr.</translation>
    </message>
    <message>
        <source>These are all lengths at which the best plan gets better.</source>
        <translation>Das sind alle Längen, bei denen der beste Plan besser wird.</translation>
    </message>
    <message>
        <source>The best plan gets better at more lengths than these; each of these is the least length for what stands beside it.</source>
        <translation>Der beste Plan wird bei mehr Längen besser als bei diesen; jede hier ist die kleinste Länge für das, was daneben steht.</translation>
    </message>
    <message>
        <source>%1 Not all of these plans are proved best.</source>
        <translation>%1 Nicht alle diese Pläne sind als Bestes bewiesen.</translation>
    </message>
    <message numerus="yes">
        <source>Cut all %n length(s) of the plan first: even the shortest roll has them. Then measure what is left, from the last cross-cut to the end of the roll. It is %1 to %2; if it is as much as below or more, cut what stands beside it.</source>
        <translation>
            <numerusform>Zuerst die %n Bahn des Plans schneiden: auch die kürzeste Rolle enthält sie. Dann den Rest messen, vom letzten Ablängschnitt bis zum Ende der Rolle. Es sind %1 bis %2; ist es so viel wie unten oder mehr, schneiden, was daneben steht.</numerusform>
            <numerusform>Zuerst alle %n Bahnen des Plans schneiden: auch die kürzeste Rolle enthält sie. Dann den Rest messen, vom letzten Ablängschnitt bis zum Ende der Rolle. Es sind %1 bis %2; ist es so viel wie unten oder mehr, schneiden, was daneben steht.</numerusform>
        </translation>
    </message>
    <message>
        <source>No length of it gives more.</source>
        <translation>Keine Länge davon ergibt mehr.</translation>
    </message>
    <message>
        <source>Whatever the length, this is worth as much as having known it.</source>
        <translation>Wie lang sie auch ist, das ist so viel wert, als wäre die Länge bekannt gewesen.</translation>
    </message>
    <message>
        <source>Whatever the length, this is worth at most %1 less than having known it.</source>
        <translation>Wie lang sie auch ist, das ist höchstens um %1 weniger wert, als wäre die Länge bekannt gewesen.</translation>
    </message>
    <message>
        <source>Between these there are more: give the job the length found and plan again.</source>
        <translation>Dazwischen gibt es weitere: dem Projekt die gefundene Länge geben und neu planen.</translation>
    </message>
    <message>
        <source>For the cuts of a new length, give the job the length found and plan again.</source>
        <translation>Für die Schnitte einer neuen Bahn dem Projekt die gefundene Länge geben und neu planen.</translation>
    </message>
    <message>
        <source>every %1 along the roll, one begins %2 from its free end</source>
        <translation>alle %1 längs der Rolle, einer beginnt %2 vom freien Ende</translation>
    </message>
    <message>
        <source>every %1 across, one begins %2 from the left edge</source>
        <translation>alle %1 quer, einer beginnt %2 von der linken Kante</translation>
    </message>
    <message>
        <source>The pattern repeats %1.</source>
        <translation>Das Muster wiederholt sich %1.</translation>
    </message>
    <message>
        <source>Matching the pattern costs %1: where nothing need match, this way gives %2.</source>
        <translation>Das Muster passen zu lassen kostet %1: wo nichts passen muss, ergibt diese Faltart %2.</translation>
    </message>
    <message>
        <source>Matching the pattern costs no worth.</source>
        <translation>Das Muster passen zu lassen kostet keinen Wert.</translation>
    </message>
    <message>
        <source> %1 of the cloth ends in panels, %2 where nothing need match.</source>
        <translation> %1 des Stoffs werden zu Teilen, %2 wo nichts passen muss.</translation>
    </message>
    <message numerus="yes">
        <source> %1 of the roll, in %n place(s), are skipped so that lengths begin where the pattern lets them.</source>
        <translation>
            <numerusform> %1 der Rolle, an %n Stelle, werden übersprungen, damit Bahnen dort beginnen, wo das Muster es zulässt.</numerusform>
            <numerusform> %1 der Rolle, an %n Stellen, werden übersprungen, damit Bahnen dort beginnen, wo das Muster es zulässt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Repeats begin elsewhere on each length: no panel here must match.</source>
        <translation>Rapporte beginnen auf jeder Bahn anderswo: hier muss kein Teil passen.</translation>
    </message>
    <message>
        <source>Each length begins with a repeat of the pattern.</source>
        <translation>Jede Bahn beginnt mit einem Rapport des Musters.</translation>
    </message>
    <message>
        <source>On each length the first repeat of the pattern begins %1 from the near end.</source>
        <translation>Auf jeder Bahn beginnt der erste Rapport des Musters %1 vom nahen Ende.</translation>
    </message>
    <message>
        <source>%1 lay %2</source>
        <comment>pattern, number</comment>
        <translation>%1 St. %2</translation>
    </message>
    <message>
        <source>ply %1</source>
        <translation>Lage %1</translation>
    </message>
    <message>
        <source>face down</source>
        <translation>linke Seite oben</translation>
    </message>
    <message>
        <source>face up</source>
        <translation>rechte Seite oben</translation>
    </message>
    <message>
        <source>The answer and the roll</source>
        <translation>Die Antwort und die Rolle</translation>
    </message>
    <message>
        <source>Pattern %1</source>
        <translation>Schnittbild %1</translation>
    </message>
    <message>
        <source>Template %1</source>
        <translation>Schablone %1</translation>
    </message>
    <message>
        <source>%1, page %2</source>
        <translation>%1, Seite %2</translation>
    </message>
    <message>
        <source>%1 wide; %2 of %3 under the cutter (dashed); heights drawn %4 times</source>
        <translation>%1 breit; %2 von %3 unter dem Schneidegerät (gestrichelt); Höhen %4-fach gezeichnet</translation>
    </message>
    <message>
        <source>nap</source>
        <translation>Strich</translation>
    </message>
    <message>
        <source>cut %1</source>
        <translation>%1 zuschneiden</translation>
    </message>
    <message>
        <source>none of them on this plan</source>
        <translation>keines davon in diesem Plan</translation>
    </message>
    <message numerus="yes">
        <source> Of this panel %n go(es) into each %1.</source>
        <translation>
            <numerusform> Von diesem Teil gehört %n in jedes Stück (%1).</numerusform>
            <numerusform> Von diesem Teil gehören %n in jedes Stück (%1).</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 oder %2</translation>
    </message>
    <message>
        <source>long dashes are seam lines, %1 inside</source>
        <translation>lange Striche sind Nahtlinien, %1 innen</translation>
    </message>
    <message>
        <source>dots are the last fold of hems, %1 inside</source>
        <translation>Punkte sind der letzte Umbruch von Säumen, %1 innen</translation>
    </message>
    <message>
        <source>The arrow runs along the roll, away from its free end; all panels lie the same way, as the nap runs one way.</source>
        <translation>Der Pfeil läuft längs der Rolle, weg von ihrem freien Ende; alle Teile liegen gleich herum, da der Strich in einer Richtung läuft.</translation>
    </message>
    <message>
        <source>The arrow runs along the roll, either way up; this panel may also lie across it.</source>
        <translation>Der Pfeil läuft längs der Rolle, gleich wie herum; dieses Teil darf auch quer dazu liegen.</translation>
    </message>
    <message>
        <source>The arrow runs along the roll, either way up.</source>
        <translation>Der Pfeil läuft längs der Rolle, gleich wie herum.</translation>
    </message>
    <message>
        <source>The template stands on the next page. Cut along the full line.</source>
        <translation>Die Schablone steht auf der nächsten Seite. An der durchgezogenen Linie schneiden.</translation>
    </message>
    <message numerus="yes">
        <source>The template stands on the next %1 pages, in %n row(s) by %2. Cut each page along the thin frame at its left and at its top, lay it over its neighbour up to the dashed line, so that crosses of the same name meet, and tape. Then cut along the full line.</source>
        <translation>
            <numerusform>Die Schablone steht auf den nächsten %1 Seiten, in %n Reihe zu je %2. Jede Seite links und oben am dünnen Rahmen abschneiden, bis zur gestrichelten Linie über die Nachbarseite legen, sodass gleichnamige Kreuze aufeinandertreffen, und festkleben. Dann an der durchgezogenen Linie schneiden.</numerusform>
            <numerusform>Die Schablone steht auf den nächsten %1 Seiten, in %n Reihen zu je %2. Jede Seite links und oben am dünnen Rahmen abschneiden, bis zur gestrichelten Linie über die Nachbarseite legen, sodass gleichnamige Kreuze aufeinandertreffen, und festkleben. Dann an der durchgezogenen Linie schneiden.</numerusform>
        </translation>
    </message>
    <message>
        <source>The full line is the cut line.</source>
        <translation>Die durchgezogene Linie ist die Schnittlinie.</translation>
    </message>
    <message>
        <source>The pages, row · column</source>
        <translation>Die Seiten, Reihe · Spalte</translation>
    </message>
    <message>
        <source>row %1, column %2</source>
        <translation>Reihe %1, Spalte %2</translation>
    </message>
    <message>
        <source>Template %1: row %2 of %3, column %4 of %5</source>
        <translation>Schablone %1: Reihe %2 von %3, Spalte %4 von %5</translation>
    </message>
    <message>
        <source>grain</source>
        <translation>Fadenlauf</translation>
    </message>
    <message numerus="yes">
        <source>%n length(s) of %1</source>
        <translation>
            <numerusform>%n Bahn von %1</numerusform>
            <numerusform>%n Bahnen von %1</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing is left of the roll</source>
        <translation>von der Rolle bleibt nichts</translation>
    </message>
    <message>
        <source>the remnant is %1</source>
        <translation>es bleibt das Reststück %1</translation>
    </message>
    <message>
        <source>an offcut of %1 is left</source>
        <translation>es bleibt ein Abschnitt von %1</translation>
    </message>
    <message>
        <source>Lay the cloth open</source>
        <translation>Stoff offen legen</translation>
    </message>
    <message>
        <source>Fold %1</source>
        <translation>Faltung: %1</translation>
    </message>
    <message>
        <source>cut %1, finishes %2</source>
        <translation>Zuschnitt %1, fertig %2</translation>
    </message>
    <message>
        <source>nap away from you</source>
        <translation>Strich vom Körper weg</translation>
    </message>
    <message>
        <source>nap towards you</source>
        <translation>Strich zum Körper hin</translation>
    </message>
    <message>
        <source>nap to the right</source>
        <translation>Strich nach rechts</translation>
    </message>
    <message>
        <source>nap to the left</source>
        <translation>Strich nach links</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>Millimetern</translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation>Zentimetern</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>Metern</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>yards and inches</source>
        <translation>Yards und Zoll</translation>
    </message>
    <message numerus="yes">
        <source>Under the blade lie at most %n ply(ies) of one length.</source>
        <translation>
            <numerusform>Unter dem Messer liegt von einer Bahn höchstens %n Lage.</numerusform>
            <numerusform>Unter dem Messer liegen von einer Bahn höchstens %n Lagen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Under the blade lie at most %n ply(ies) of one length, %1 of a lay of %2.</source>
        <translation>
            <numerusform>Unter dem Messer liegt von einer Bahn höchstens %n Lage, %1 von einem Stapel mit %2.</numerusform>
            <numerusform>Unter dem Messer liegen von einer Bahn höchstens %n Lagen, %1 von einem Stapel mit %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lay(s) of %1</source>
        <translation>
            <numerusform>%n Stapel mit %1</numerusform>
            <numerusform>%n Stapeln mit %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>lays of so many lengths</comment>
        <translation>%1 mit %2</translation>
    </message>
    <message>
        <source>Roll %1: %2 of cloth %3 wide, %4 usable between the selvedges</source>
        <translation>Rolle %1: %2 Stoff, %3 breit, %4 nutzbar zwischen den Webkanten</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>, one-way nap</source>
        <translation>, mit Strich</translation>
    </message>
    <message>
        <source>, railroaded (pattern and nap run from selvedge to selvedge)</source>
        <translation>, quer gemustert (Muster und Strich laufen von Webkante zu Webkante)</translation>
    </message>
    <message>
        <source>, shrinks %1 % along and %2 % across</source>
        <translation>, läuft längs %1 % und quer %2 % ein</translation>
    </message>
    <message>
        <source>%1 %2 of at most %3</source>
        <translation>%1 %2 von höchstens %3</translation>
    </message>
    <message>
        <source> Limits: %1.</source>
        <translation> Grenzen: %1.</translation>
    </message>
    <message>
        <source>%1. %2; cross-cut %3; %4, %5, %6. %7 of the cloth ends in panels; %8.</source>
        <translation>%1. %2; abgelängt: %3; %4, %5, %6. %7 des Stoffs werden zu Teilen; %8.</translation>
    </message>
    <message>
        <source>No panels</source>
        <translation>Keine Teile</translation>
    </message>
    <message numerus="yes">
        <source>%n lay(s)</source>
        <translation>
            <numerusform>%n Stapel</numerusform>
            <numerusform>%n Stapel</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n cut(s)</source>
        <translation>
            <numerusform>%n Schnitt</numerusform>
            <numerusform>%n Schnitte</numerusform>
        </translation>
    </message>
    <message>
        <source>Proved. %1</source>
        <translation>Bewiesen. %1</translation>
    </message>
    <message>
        <source>Not proved best: this plan is worth %1, no plan can be worth more than %2. %3</source>
        <translation>Nicht als Bestes bewiesen: dieser Plan ist %1 wert, kein Plan kann mehr als %2 wert sein. %3</translation>
    </message>
    <message>
        <source>Lay the length open, face up.</source>
        <translation>Die Bahn offen auflegen, rechte Seite oben.</translation>
    </message>
    <message>
        <source>Fold the left side over the right, selvedge on selvedge.</source>
        <translation>Die linke Hälfte über die rechte falten, Webkante auf Webkante.</translation>
    </message>
    <message>
        <source>Fold the right side over the left, selvedge on selvedge.</source>
        <translation>Die rechte Hälfte über die linke falten, Webkante auf Webkante.</translation>
    </message>
    <message>
        <source>Fold the left side over to the right.</source>
        <translation>Von links nach rechts hinüberfalten.</translation>
    </message>
    <message>
        <source>Fold the right side over to the left.</source>
        <translation>Von rechts nach links hinüberfalten.</translation>
    </message>
    <message>
        <source>Fold both sides in over the middle.</source>
        <translation>Beide Kanten über die Mitte einschlagen.</translation>
    </message>
    <message>
        <source>Fold to and fro into %1 plies.</source>
        <translation>Hin und her in %1 Lagen falten.</translation>
    </message>
    <message>
        <source>Fold double, then double again.</source>
        <translation>Doppelt falten, dann noch einmal doppelt.</translation>
    </message>
    <message>
        <source> Then bring the near end over onto the far end.</source>
        <translation> Dann das nahe Ende auf das ferne Ende legen.</translation>
    </message>
    <message>
        <source>either edge</source>
        <translation>jeder Kante</translation>
    </message>
    <message>
        <source>the left edge</source>
        <translation>der linken Kante</translation>
    </message>
    <message>
        <source>the right edge</source>
        <translation>der rechten Kante</translation>
    </message>
    <message>
        <source>fold line %1: %2 from %3</source>
        <translation>Faltlinie %1: %2 von %3</translation>
    </message>
    <message>
        <source>last fold, across: %1 from either end</source>
        <translation>letzter Bruch, quer: %1 von jedem Ende</translation>
    </message>
    <message>
        <source>The tickets could not be drawn; try another kind of file.</source>
        <translation>Die Zuschnittzettel ließen sich nicht zeichnen; eine andere Dateiart versuchen.</translation>
    </message>
    <message>
        <source>Written to %1.
</source>
        <translation>Geschrieben nach %1.
</translation>
    </message>
    <message>
        <source>Marked %1 of %2 lays as cut; the job with what is left is in %3.
</source>
        <translation>%1 von %2 Stapeln als geschnitten vermerkt; das Projekt mit dem, was bleibt, ist in %3.
</translation>
    </message>
    <message>
        <source>The shelf is in %1.
</source>
        <translation>Das Regal ist in %1.
</translation>
    </message>
    <message>
        <source>%1: the file cannot be read; check its name and folder.</source>
        <translation>%1: die Datei lässt sich nicht lesen; Namen und Ordner prüfen.</translation>
    </message>
    <message>
        <source>The job with %1 rolls is in %2.
</source>
        <translation>Das Projekt mit %1 Rollen ist in %2.
</translation>
    </message>
    <message>
        <source>width</source>
        <comment>column</comment>
        <translation>Breite</translation>
    </message>
    <message>
        <source>thickness</source>
        <comment>column</comment>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>shrinks</source>
        <comment>column</comment>
        <translation>läuft ein</translation>
    </message>
    <message>
        <source>Cloth: starting values, to be measured on your own
</source>
        <translation>Stoff: Ausgangswerte, am eigenen Stoff nachzumessen
</translation>
    </message>
    <message>
        <source>
What they rest on
</source>
        <translation>
Worauf sie beruhen
</translation>
    </message>
    <message>
        <source>kind and finished size</source>
        <comment>column</comment>
        <translation>Art und fertiges Maß</translation>
    </message>
    <message>
        <source>handles</source>
        <comment>column</comment>
        <translation>Griffe</translation>
    </message>
    <message>
        <source>
Goods
</source>
        <translation>
Fertigware
</translation>
    </message>
    <message>
        <source>%1 begun with %2 rolls and %3 panels. Measure your cloth and put your own figures in (docs/job-file.md), then: foldyard plan %1
</source>
        <translation>%1 mit %2 Rollen und %3 Teilen begonnen. Den eigenen Stoff messen und die eigenen Werte eintragen (docs/job-file.md), dann: foldyard plan %1
</translation>
    </message>
    <message>
        <source>%1 knows no option %2</source>
        <translation>%1 kennt keine Option %2</translation>
    </message>
    <message>
        <source>leave it out</source>
        <translation>sie weglassen</translation>
    </message>
    <message>
        <source>use one of %1</source>
        <translation>eines von %1 verwenden</translation>
    </message>
    <message>
        <source>%1 stands twice</source>
        <translation>%1 steht zweimal da</translation>
    </message>
    <message>
        <source>give it once</source>
        <translation>einmal angeben</translation>
    </message>
    <message>
        <source>%1 takes no value</source>
        <translation>%1 nimmt keinen Wert</translation>
    </message>
    <message>
        <source>%1 has no value</source>
        <translation>%1 hat keinen Wert</translation>
    </message>
    <message>
        <source>put it behind the option</source>
        <translation>ihn hinter die Option setzen</translation>
    </message>
    <message>
        <source>kinds takes no job file</source>
        <translation>kinds nimmt keine Projektdatei</translation>
    </message>
    <message>
        <source>no job file is named</source>
        <translation>keine Projektdatei ist genannt</translation>
    </message>
    <message>
        <source>write foldyard %1 JOB</source>
        <translation>foldyard %1 JOB schreiben</translation>
    </message>
    <message>
        <source>more than one job file is named: %1</source>
        <translation>mehr als eine Projektdatei ist genannt: %1</translation>
    </message>
    <message>
        <source>name one; quote names with spaces</source>
        <translation>eine nennen; Namen mit Leerzeichen in Anführungszeichen setzen</translation>
    </message>
    <message>
        <source>%1 cannot be &quot;%2&quot;</source>
        <translation>%1 kann nicht „%2“ sein</translation>
    </message>
    <message>
        <source>there is no way of folding &quot;%1&quot;</source>
        <translation>es gibt keine Faltart „%1“</translation>
    </message>
    <message>
        <source>take a key that foldyard compare JOB shows</source>
        <translation>einen Schlüssel nehmen, den foldyard compare JOB zeigt</translation>
    </message>
    <message>
        <source>draw does not know where to write</source>
        <translation>draw weiß nicht, wohin geschrieben werden soll</translation>
    </message>
    <message>
        <source>add --to FILE.pdf, FILE.svg or FILE.png</source>
        <translation>--to DATEI.pdf, DATEI.svg oder DATEI.png hinzufügen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; names no kind of drawing</source>
        <translation>„%1“ nennt keine Art von Zeichnung</translation>
    </message>
    <message>
        <source>let the name end in .pdf, .svg or .png</source>
        <translation>den Namen auf .pdf, .svg oder .png enden lassen</translation>
    </message>
    <message>
        <source>--pages cannot be &quot;%1&quot;</source>
        <translation>--pages kann nicht „%1“ sein</translation>
    </message>
    <message>
        <source>write pages like 2-4, 3 or 2-</source>
        <translation>Seiten wie 2-4, 3 oder 2- schreiben</translation>
    </message>
    <message>
        <source>--panel names a template</source>
        <translation>--panel nennt eine Schablone</translation>
    </message>
    <message>
        <source>add --templates</source>
        <translation>--templates hinzufügen</translation>
    </message>
    <message>
        <source>--templates draws no patterns</source>
        <translation>--templates zeichnet keine Schnittbilder</translation>
    </message>
    <message>
        <source>leave --patterns out</source>
        <translation>--patterns weglassen</translation>
    </message>
    <message>
        <source>--lays cannot be &quot;%1&quot;</source>
        <translation>--lays kann nicht „%1“ sein</translation>
    </message>
    <message>
        <source>write lays like 1-3,5</source>
        <translation>Stapel wie 1-3,5 schreiben</translation>
    </message>
    <message>
        <source>&quot;%1&quot; names no kind of paper</source>
        <translation>„%1“ nennt keine Art von Papier</translation>
    </message>
    <message>
        <source>let the name end in .pdf or .csv</source>
        <translation>den Namen auf .pdf oder .csv enden lassen</translation>
    </message>
    <message>
        <source>there is no word of where to write the job</source>
        <translation>es ist nicht gesagt, wohin das Projekt geschrieben werden soll</translation>
    </message>
    <message>
        <source>add --to FILE.json</source>
        <translation>--to DATEI.json hinzufügen</translation>
    </message>
    <message>
        <source>begin needs %1</source>
        <translation>begin braucht %1</translation>
    </message>
    <message>
        <source>write foldyard begin JOB --cloth KEY --goods KEY --length &quot;20 m&quot;; foldyard kinds shows the keys</source>
        <translation>foldyard begin JOB --cloth SCHLÜSSEL --goods SCHLÜSSEL --length &quot;20 m&quot; schreiben; foldyard kinds zeigt die Schlüssel</translation>
    </message>
    <message>
        <source>nothing was asked for</source>
        <translation>es ist nichts verlangt</translation>
    </message>
    <message>
        <source>see foldyard --help</source>
        <translation>siehe foldyard --help</translation>
    </message>
    <message>
        <source>there is no verb &quot;%1&quot;</source>
        <translation>es gibt kein Verb „%1“</translation>
    </message>
    <message>
        <source>use one of %1, or see foldyard --help</source>
        <translation>eines von %1 verwenden, oder siehe foldyard --help</translation>
    </message>
    <message>
        <source>Foldyard plans how to cross-cut, fold and cut rolls of cloth into rectangular
panels, and proves how good each plan is.

  foldyard plan JOB     the best plan of each roll, with every cut
  foldyard compare JOB  all ways of folding each roll, ranked
  foldyard draw JOB --to FILE.pdf|.svg|.png
                        the cutting diagram of one roll, true to scale
  foldyard check JOB    reads the job, plans it in every way and inspects all plans
  foldyard batch JOB    the order of the job over all its rolls: lays, webbing, what to
                        buy, time and money; --to FILE.pdf: the tickets, FILE.csv: tables
  foldyard cut JOB --to FILE.json
                        the job after its batch, or some lays of it, is cut
  foldyard shelf JOB    the rolls as a table for a spreadsheet; --from FILE.csv --to
                        FILE.json: the job with the rolls of a table
  foldyard begin JOB --cloth KEY --goods KEY --length LENGTH
                        a first job file from ready kinds of cloth and goods
  foldyard kinds        what there is to begin from
  foldyard [JOB]        the window, where there is a display
  foldyard --help       this text
  foldyard --version    the version

Options
  --roll NAME    this roll only (draw: the first roll, if none is named)
  --way KEY      this way of folding, by a key that compare shows (plan, draw)
  --aim AIM      most-worth: the most worth, then the fewest cuts (if none is named)
                 worth-less-time: the most worth after your minutes at your rate
  --json         the answer as JSON (plan, compare, batch)
  --paper PAPER  a4 (if none is named), a3, letter, legal or tabloid (draw)
  --landscape    the long side of the paper lies across (draw)
  --patterns LETTERS
                 pages of these patterns only, like A,C (draw)
  --no-comparison
                 the first page without the comparison of the fold ways (draw)
  --pages PAGES  these pages only, like 2-4, 3 or 2- (draw)
  --templates    instead of the diagram: panels in full size, over several pages
                 with marks to join them, and a square to check the print (draw)
  --panel NAME   the template of this panel only (draw --templates)
  --lays LAYS    only these are cut, like 1-3,5; all if none are named (cut)
  --when WORDS   kept in the job&apos;s history (cut)
  --cloth, --goods
                 keys that kinds shows; several with commas (begin)
  --length LENGTH
                 cloth on each roll, like &quot;23.4 m&quot; (begin)
  --unit UNIT    mm, cm, m, in or yd: of the new job, cm if none is named (begin);
                 of all words of the drawing, if not the job&apos;s (draw)

The program ends with 0 if all was done, with 1 if the job cannot be planned,
and with 2 if the call or the job file is wrong; then nothing is written.
Job files are described in docs/job-file.md, the JSON answers in docs/output.md.
</source>
        <translation>Foldyard plant, wie Stoffrollen abgelängt, gefaltet und in rechteckige Teile
zugeschnitten werden, und beweist, wie gut jeder Plan ist.

  foldyard plan JOB     der beste Plan jeder Rolle, mit jedem Schnitt
  foldyard compare JOB  alle Faltarten jeder Rolle, nach Rang
  foldyard draw JOB --to DATEI.pdf|.svg|.png
                        der Zuschnittplan einer Rolle, maßstabsgetreu
  foldyard check JOB    liest das Projekt, plant es in jeder Faltart, prüft alle Pläne
  foldyard batch JOB    der Auftrag des Projekts über alle Rollen: Stapel, Gurtband,
                        Einkauf, Zeit und Geld; --to DATEI.pdf: die Zuschnittzettel,
                        DATEI.csv: Tabellen
  foldyard cut JOB --to DATEI.json
                        das Projekt, nachdem seine Serie oder ein Teil der Stapel
                        geschnitten ist
  foldyard shelf JOB    die Rollen als Tabelle für eine Tabellenkalkulation; --from
                        DATEI.csv --to DATEI.json: das Projekt mit Rollen einer Tabelle
  foldyard begin JOB --cloth SCHLÜSSEL --goods SCHLÜSSEL --length LÄNGE
                        eine erste Projektdatei aus Stoffarten und Fertigwaren
  foldyard kinds        womit sich beginnen lässt
  foldyard [JOB]        das Fenster, wo es eine Anzeige gibt
  foldyard --help       dieser Text
  foldyard --version    die Version

Optionen
  --roll NAME    nur diese Rolle (draw: die erste Rolle, wenn keine genannt ist)
  --way SCHLÜSSEL
                 diese Faltart, nach einem Schlüssel, den compare zeigt (plan, draw)
  --aim ZIEL     most-worth: der meiste Wert, dann die wenigsten Schnitte (wenn keines
                 genannt ist)
                 worth-less-time: der meiste Wert abzüglich der eigenen Minuten zum
                 eigenen Satz
  --json         die Antwort als JSON, auf Englisch (plan, compare, batch)
  --paper PAPIER a4 (wenn keines genannt ist), a3, letter, legal oder tabloid (draw)
  --landscape    die lange Seite des Papiers liegt quer (draw)
  --patterns BUCHSTABEN
                 nur Seiten dieser Schnittbilder, etwa A,C (draw)
  --no-comparison
                 die erste Seite ohne den Vergleich der Faltarten (draw)
  --pages SEITEN nur diese Seiten, etwa 2-4, 3 oder 2- (draw)
  --templates    statt des Zuschnittplans: Teile in Originalgröße, über mehrere Seiten
                 mit Marken zum Zusammensetzen, und ein Prüfquadrat (draw)
  --panel NAME   nur die Schablone dieses Teils (draw --templates)
  --lays STAPEL  nur diese sind geschnitten, etwa 1-3,5; alle, wenn keine genannt (cut)
  --when WORTE   wird im Verlauf des Projekts behalten (cut)
  --cloth, --goods
                 Schlüssel, die kinds zeigt; mehrere mit Kommas (begin)
  --length LÄNGE Stoff auf jeder Rolle, etwa &quot;23.4 m&quot; (begin)
  --unit EINHEIT mm, cm, m, in oder yd: des neuen Projekts, cm, wenn keine genannt ist
                 (begin); aller Angaben der Zeichnung, wenn nicht die des Projekts (draw)

Das Programm endet mit 0, wenn alles getan ist, mit 1, wenn sich das Projekt nicht
planen lässt, und mit 2, wenn der Aufruf oder die Projektdatei falsch ist; dann wird
nichts geschrieben. Projektdateien beschreibt docs/job-file.md, die JSON-Antworten
docs/output.md.
</translation>
    </message>
    <message>
        <source>Roll %1, %2</source>
        <translation>Rolle %1, %2</translation>
    </message>
    <message>
        <source>Roll %1: %2.
</source>
        <translation>Rolle %1: %2.
</translation>
    </message>
    <message>
        <source>Panel %1: %2.
</source>
        <translation>Teil %1: %2.
</translation>
    </message>
    <message>
        <source>%1 rolls and %2 panels read. %3 plans made for both aims, %4 of them proved best; %5 were inspected and sound. %6 times a way could not be planned (foldyard compare says why).
</source>
        <translation>%1 Rollen und %2 Teile gelesen. %3 Pläne für beide Ziele gemacht, %4 davon als Bestes bewiesen; %5 wurden geprüft und sind in Ordnung. %6-mal ließ sich eine Faltart nicht planen (foldyard compare sagt, warum).
</translation>
    </message>
    <message>
        <source>all</source>
        <comment>plans</comment>
        <translation>alle</translation>
    </message>
    <message numerus="yes">
        <source>Roll %1: %n flaw(s), %2.
</source>
        <translation>
            <numerusform>Rolle %1: %n Fehler, %2.
</numerusform>
            <numerusform>Rolle %1: %n Fehler, %2.
</numerusform>
        </translation>
    </message>
    <message>
        <source>no roll can be planned in any way</source>
        <translation>keine Rolle lässt sich in irgendeiner Faltart planen</translation>
    </message>
    <message>
        <source>a plan is not sound; this is a fault of Foldyard, do not cut by it</source>
        <translation>ein Plan ist nicht in Ordnung; das ist ein Fehler von Foldyard, nicht danach schneiden</translation>
    </message>
    <message>
        <source>way of folding</source>
        <translation>Faltart</translation>
    </message>
    <message>
        <source>net</source>
        <comment>column</comment>
        <translation>netto</translation>
    </message>
    <message>
        <source>used</source>
        <comment>column</comment>
        <translation>genutzt</translation>
    </message>
    <message>
        <source>lifts</source>
        <comment>column</comment>
        <translation>Stapel</translation>
    </message>
    <message>
        <source>a lift</source>
        <comment>column</comment>
        <translation>je Stapel</translation>
    </message>
    <message>
        <source>gives up</source>
        <comment>column</comment>
        <translation>entgeht</translation>
    </message>
    <message>
        <source>best?</source>
        <comment>column</comment>
        <translation>bestes?</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>so many of the lengths a lift may hold</comment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>From most worth to least time: %1.
</source>
        <translation>Vom meisten Wert zur wenigsten Zeit: %1.
</translation>
    </message>
    <message>
        <source>Not planned, because %1: %2.
</source>
        <translation>Nicht geplant, weil %1: %2.
</translation>
    </message>
    <message>
        <source>most worth, then fewest cuts</source>
        <translation>meister Wert, dann wenigste Schnitte</translation>
    </message>
    <message>
        <source>most worth after your time</source>
        <translation>meister Wert abzüglich der eigenen Zeit</translation>
    </message>
    <message>
        <source>Panels
</source>
        <translation>Teile
</translation>
    </message>
    <message>
        <source>  %1 %2, %3, worth %4
</source>
        <translation>  %1 %2, %3, Wert %4
</translation>
    </message>
    <message>
        <source>Roll %1: %2 of cloth %3 wide. Aim: %4.
</source>
        <translation>Rolle %1: %2 Stoff, %3 breit. Ziel: %4.
</translation>
    </message>
    <message numerus="yes">
        <source>Drew templates for roll %1 on %n page(s) to %2. Print it at 100 %.
</source>
        <translation>
            <numerusform>Schablonen für Rolle %1 auf %n Seite nach %2 gezeichnet. Mit 100 % drucken.
</numerusform>
            <numerusform>Schablonen für Rolle %1 auf %n Seiten nach %2 gezeichnet. Mit 100 % drucken.
</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Drew roll %1, folded %2, on %n page(s) to %3. Print it at 100 %.
</source>
        <translation>
            <numerusform>Rolle %1, Faltung: %2, auf %n Seite nach %3 gezeichnet. Mit 100 % drucken.
</numerusform>
            <numerusform>Rolle %1, Faltung: %2, auf %n Seiten nach %3 gezeichnet. Mit 100 % drucken.
</numerusform>
        </translation>
    </message>
    <message>
        <source>Roll %1 cannot be planned: %2</source>
        <translation>Rolle %1 lässt sich nicht planen: %2</translation>
    </message>
    <message>
        <source>The diagram could not be drawn; try another kind of file.</source>
        <translation>Der Zuschnittplan ließ sich nicht zeichnen; eine andere Dateiart versuchen.</translation>
    </message>
    <message>
        <source>; %1 of webbing for all</source>
        <translation>; %1 Gurtband für alle</translation>
    </message>
    <message>
        <source>Goods
</source>
        <translation>Fertigware
</translation>
    </message>
    <message>
        <source>
Goods these panels are enough for
</source>
        <translation>
Fertigware, für die diese Teile reichen
</translation>
    </message>
    <message>
        <source>planning was stopped; this is the best found by then.</source>
        <translation>das Planen wurde angehalten; das ist das Beste, was bis dahin gefunden wurde.</translation>
    </message>
    <message>
        <source>
Without its flaws the roll would give %1 this way, worth %2:
the flaws cost %3.
</source>
        <translation>
Ohne ihre Fehler ergäbe die Rolle in dieser Faltart %1, Wert %2:
die Fehler kosten %3.
</translation>
    </message>
    <message>
        <source>
Without its flaws the roll would give %1 this way, after your time %2:
the flaws cost %3.
</source>
        <translation>
Ohne ihre Fehler ergäbe die Rolle in dieser Faltart %1, abzüglich der eigenen Zeit %2:
die Fehler kosten %3.
</translation>
    </message>
    <message>
        <source>Roll %1 cannot be planned: %2

</source>
        <translation>Rolle %1 lässt sich nicht planen: %2

</translation>
    </message>
    <message>
        <source>The roll is not cut across.
</source>
        <translation>Die Rolle wird nicht abgelängt.
</translation>
    </message>
    <message>
        <source>Cut the roll across, measured from its free end, at %1.</source>
        <translation>Die Rolle ablängen, vom freien Ende gemessen bei %1.</translation>
    </message>
    <message>
        <source>%1 As bought the roll has %2.</source>
        <translation>%1 Im Kauf hat die Rolle %2.</translation>
    </message>
    <message>
        <source>Cut out and set aside what lies from %1 to %2.</source>
        <translation>Herausschneiden und beiseitelegen, was von %1 bis %2 liegt.</translation>
    </message>
    <message>
        <source>Each length has %1 more than its pattern: trim half of it off each end as you lay it.</source>
        <translation>Jede Bahn hat %1 mehr als ihr Schnittbild: beim Auflegen die Hälfte davon an jedem Ende abschneiden.</translation>
    </message>
    <message>
        <source>from the left edge</source>
        <translation>von der linken Kante</translation>
    </message>
    <message>
        <source>from the near end</source>
        <translation>vom nahen Ende</translation>
    </message>
    <message>
        <source>along the roll at</source>
        <translation>längs der Rolle bei</translation>
    </message>
    <message>
        <source>across it at</source>
        <translation>quer dazu bei</translation>
    </message>
    <message>
        <source>over</source>
        <translation>über</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>  No cut.
</source>
        <translation>  Kein Schnitt.
</translation>
    </message>
    <message>
        <source>  Cuts, in this order, through all plies, measured on the folded cloth:
</source>
        <translation>  Schnitte, in dieser Reihenfolge, durch alle Lagen, am gefalteten Stoff gemessen:
</translation>
    </message>
    <message>
        <source>%1 as they lie turned</source>
        <translation>%1, so wie sie gedreht liegen</translation>
    </message>
    <message>
        <source>, %1 on the fold</source>
        <translation>, %1 im Bruch</translation>
    </message>
    <message>
        <source>, %1 turned</source>
        <translation>, %1 gedreht</translation>
    </message>
    <message>
        <source>  Panels from each length:
</source>
        <translation>  Teile aus jeder Bahn:
</translation>
    </message>
    <message>
        <source>%1 face up, %2</source>
        <translation>%1 rechte Seite oben, %2</translation>
    </message>
    <message>
        <source>%1 face down, %2</source>
        <translation>%1 linke Seite oben, %2</translation>
    </message>
    <message>
        <source>Plies from the table up: %1.</source>
        <translation>Lagen vom Tisch aufwärts: %1.</translation>
    </message>
    <message>
        <source>remnant to keep</source>
        <translation>Reststück zum Aufheben</translation>
    </message>
    <message>
        <source>  What is left of each length:
</source>
        <translation>  Was von jeder Bahn bleibt:
</translation>
    </message>
    <message numerus="yes">
        <source>Pattern %1: %n length(s) of %2, in %3, %4
</source>
        <translation>
            <numerusform>Schnittbild %1: %n Bahn von %2, in %3, %4
</numerusform>
            <numerusform>Schnittbild %1: %n Bahnen von %2, in %3, %4
</numerusform>
        </translation>
    </message>
    <message>
        <source>1 ply</source>
        <translation>1 Lage</translation>
    </message>
    <message>
        <source>up to %1 plies each</source>
        <translation>je bis zu %1 Lagen</translation>
    </message>
    <message>
        <source>  Lengths with flaws, measured from each near end:
</source>
        <translation>  Bahnen mit Fehlern, jeweils vom nahen Ende gemessen:
</translation>
    </message>
    <message>
        <source>  Folded it measures %1.
</source>
        <translation>  Gefaltet misst es %1.
</translation>
    </message>
    <message>
        <source>Worth %1; %2 after your time.

</source>
        <translation>Wert %1; abzüglich der eigenen Zeit %2.

</translation>
    </message>
    <message>
        <source>  from %1  %2</source>
        <comment>a length, what it is worth more</comment>
        <translation>  ab %1  %2</translation>
    </message>
    <message>
        <source>If the roll is longer than its least
</source>
        <translation>Wenn die Rolle länger ist als ihr Kürzestes
</translation>
    </message>
    <message>
        <source>
What to do first
</source>
        <translation>
Was zuerst zu tun ist
</translation>
    </message>
    <message>
        <source>the answer could not be written out; give its target room.</source>
        <translation>die Antwort ließ sich nicht ausgeben; dem Ziel Platz schaffen.</translation>
    </message>
    <message>
        <source>None that makes as much is better by more than %1, %2 % of that cloth.</source>
        <translation>Keiner, der so viel ergibt, ist um mehr als %1 besser, das sind %2 % dieses Stoffs.</translation>
    </message>
    <message>
        <source>%1, continued</source>
        <translation>%1, Fortsetzung</translation>
    </message>
</context>
<context>
    <name>foldyard::PageColumn</name>
    <message>
        <source>The pages</source>
        <translation>Die Seiten</translation>
    </message>
    <message>
        <source>No pages.</source>
        <translation>Keine Seiten.</translation>
    </message>
    <message>
        <source>Page %1 of %2: %3</source>
        <translation>Seite %1 von %2: %3</translation>
    </message>
</context>
<context>
    <name>foldyard::PrintDialog</name>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>P&amp;DF…</source>
        <translation>PD&amp;F…</translation>
    </message>
    <message>
        <source>S&amp;VG…</source>
        <translation>S&amp;VG…</translation>
    </message>
    <message>
        <source>P&amp;NG…</source>
        <translation>P&amp;NG…</translation>
    </message>
    <message>
        <source>Cop&amp;y the page</source>
        <translation>Seite &amp;kopieren</translation>
    </message>
    <message>
        <source>Clo&amp;se</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <source>Print the diagram</source>
        <translation>Zuschnittplan drucken</translation>
    </message>
    <message>
        <source>Print at 100 % (actual size), then check that the square on the first page measures 100 mm.</source>
        <translation>Mit 100 % drucken (tatsächliche Größe), dann prüfen, dass das Quadrat auf der ersten Seite 100 mm misst.</translation>
    </message>
    <message>
        <source>No printer is set up here: write a PDF and print that.</source>
        <translation>Hier ist kein Drucker eingerichtet: eine PDF schreiben und diese drucken.</translation>
    </message>
    <message>
        <source>Written to %1.</source>
        <translation>Geschrieben nach %1.</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>An den Drucker gesendet.</translation>
    </message>
    <message>
        <source>The printer did not take the pages; see whether it is on, or write a PDF.</source>
        <translation>Der Drucker hat die Seiten nicht angenommen; nachsehen, ob er an ist, oder eine PDF schreiben.</translation>
    </message>
    <message>
        <source>Page %1 is on the clipboard.</source>
        <translation>Seite %1 ist in der Zwischenablage.</translation>
    </message>
    <message>
        <source>The page could not be copied; write it as PNG.</source>
        <translation>Die Seite ließ sich nicht kopieren; sie als PNG schreiben.</translation>
    </message>
    <message>
        <source>Write the pages</source>
        <translation>Seiten schreiben</translation>
    </message>
    <message>
        <source>Pages (*%1)</source>
        <translation>Seiten (*%1)</translation>
    </message>
</context>
<context>
    <name>foldyard::PrintForm</name>
    <message>
        <source>The cutting dia&amp;gram</source>
        <translation>Der &amp;Zuschnittplan</translation>
    </message>
    <message>
        <source>&amp;Compare the fold ways</source>
        <translation>Faltarten ve&amp;rgleichen</translation>
    </message>
    <message>
        <source>Portrait</source>
        <translation>Hochformat</translation>
    </message>
    <message>
        <source>Landscape</source>
        <translation>Querformat</translation>
    </message>
    <message>
        <source>%1: %2 × %3</source>
        <translation>%1: %2 × %3</translation>
    </message>
    <message>
        <source>Pap&amp;er</source>
        <translation>&amp;Papier</translation>
    </message>
    <message>
        <source>Or&amp;ientation</source>
        <translation>A&amp;usrichtung</translation>
    </message>
    <message>
        <source>&amp;Lengths in</source>
        <translation>&amp;Längen in</translation>
    </message>
    <message>
        <source>Pages of pa&amp;tterns</source>
        <translation>Seiten der Schnitt&amp;bilder</translation>
    </message>
    <message>
        <source>Te&amp;mplates in full size</source>
        <translation>Schablonen in &amp;Originalgröße</translation>
    </message>
    <message>
        <source>P&amp;ages</source>
        <translation>S&amp;eiten</translation>
    </message>
    <message>
        <source>t&amp;o</source>
        <translation>b&amp;is</translation>
    </message>
    <message>
        <source>Pages of patterns</source>
        <translation>Seiten der Schnittbilder</translation>
    </message>
    <message>
        <source>Templates in full size</source>
        <translation>Schablonen in Originalgröße</translation>
    </message>
    <message>
        <source>First page</source>
        <translation>Erste Seite</translation>
    </message>
    <message>
        <source>Last page</source>
        <translation>Letzte Seite</translation>
    </message>
    <message>
        <source>%1 %2: %3 pages</source>
        <translation>%1 %2: %3 Seiten</translation>
    </message>
    <message>
        <source>There is nothing to print</source>
        <translation>Es gibt nichts zu drucken</translation>
    </message>
    <message>
        <source>tick the diagram or a template</source>
        <translation>den Zuschnittplan oder eine Schablone ankreuzen</translation>
    </message>
</context>
</TS>
