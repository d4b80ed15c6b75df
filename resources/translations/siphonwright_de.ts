<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Actions</name>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Neu</translation>
    </message>
    <message>
        <source>Start an empty drawing</source>
        <translation>Leere Zeichnung beginnen</translation>
    </message>
    <message>
        <source>New from &amp;template…</source>
        <translation>Neu aus Vor&amp;lage…</translation>
    </message>
    <message>
        <source>Choose an engine by its picture and start a drawing with it</source>
        <translation>Motor nach seinem Bild wählen und damit eine Zeichnung beginnen</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Open a sketch file</source>
        <translation>Zeichnungsdatei öffnen</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>Save the sketch</source>
        <translation>Zeichnung speichern</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;unter…</translation>
    </message>
    <message>
        <source>Save the sketch under another name</source>
        <translation>Zeichnung unter anderem Namen speichern</translation>
    </message>
    <message>
        <source>&amp;Export sheet…</source>
        <translation>Blatt &amp;exportieren…</translation>
    </message>
    <message>
        <source>Write the sheet as PDF, SVG or PNG</source>
        <translation>Blatt als PDF, SVG oder PNG schreiben</translation>
    </message>
    <message>
        <source>Export &amp;warm-up…</source>
        <translation>Aufheizen exp&amp;ortieren…</translation>
    </message>
    <message>
        <source>Write the warm-up as CSV, PNG or SVG</source>
        <translation>Aufheizen als CSV, PNG oder SVG schreiben</translation>
    </message>
    <message>
        <source>Print pre&amp;view…</source>
        <translation>Druck&amp;vorschau…</translation>
    </message>
    <message>
        <source>See the sheet as it will be printed</source>
        <translation>Das Blatt so zeigen, wie es gedruckt wird</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>Print the sheet at true scale</source>
        <translation>Blatt maßstäblich drucken</translation>
    </message>
    <message>
        <source>Sheet in &amp;colour</source>
        <translation>Blatt in &amp;Farbe</translation>
    </message>
    <message>
        <source>Print and export in colour instead of black and white</source>
        <translation>In Farbe statt in Schwarzweiß drucken und exportieren</translation>
    </message>
    <message>
        <source>Parts &amp;list behind the sheet</source>
        <translation>Teileliste &amp;hinter dem Blatt</translation>
    </message>
    <message>
        <source>Print and export the parts list and the cuts on pages after the drawing</source>
        <translation>Teileliste und Zuschnitt auf Seiten nach der Zeichnung drucken und exportieren</translation>
    </message>
    <message>
        <source>Student sheet: no &amp;findings</source>
        <translation>Übungsblatt: &amp;keine Befunde</translation>
    </message>
    <message>
        <source>Print and export without findings, pockets and margins, with lines for answers; off: the answer sheet</source>
        <translation>Ohne Befunde, Lufteinschlüsse und Reserven, mit Zeilen für Antworten drucken und exportieren; aus: das Lösungsblatt</translation>
    </message>
    <message>
        <source>P&amp;hoto on the sheet</source>
        <translation>F&amp;oto auf dem Blatt</translation>
    </message>
    <message>
        <source>Print and export the photo under the drawing too, as faded as on the screen</source>
        <translation>Auch das Foto unter der Zeichnung drucken und exportieren, so blass wie am Bildschirm</translation>
    </message>
    <message>
        <source>&amp;Blank survey form…</source>
        <translation>&amp;Leeres Aufmaßblatt…</translation>
    </message>
    <message>
        <source>A page to be filled in with a pen at the vehicle, as PDF</source>
        <translation>Eine Seite zum Ausfüllen mit dem Stift am Fahrzeug, als PDF</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>Close the program</source>
        <translation>Programm schließen</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>Aus&amp;schneiden</translation>
    </message>
    <message>
        <source>Take what is selected away, to be put down elsewhere</source>
        <translation>Auswahl herausnehmen, um sie anderswo einzufügen</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>Take a copy of what is selected, for this or another window</source>
        <translation>Auswahl kopieren, für dieses oder ein anderes Fenster</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>&amp;Einfügen</translation>
    </message>
    <message>
        <source>Put parts down where the pointer is, else beside what is there</source>
        <translation>Teile beim Mauszeiger einfügen, sonst neben dem Vorhandenen</translation>
    </message>
    <message>
        <source>D&amp;uplicate</source>
        <translation>D&amp;uplizieren</translation>
    </message>
    <message>
        <source>Put what is selected down once more, beside it</source>
        <translation>Auswahl noch einmal daneben einfügen</translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation>&amp;Löschen</translation>
    </message>
    <message>
        <source>Remove what is selected</source>
        <translation>Auswahl entfernen</translation>
    </message>
    <message>
        <source>Select &amp;all</source>
        <translation>&amp;Alles auswählen</translation>
    </message>
    <message>
        <source>Select every part of the drawing</source>
        <translation>Alle Teile der Zeichnung auswählen</translation>
    </message>
    <message>
        <source>&amp;Keep selected</source>
        <translation>Ausgewählt &amp;halten</translation>
    </message>
    <message>
        <source>Keep the part selected while Tab goes on to the next; again: no longer</source>
        <translation>Das Teil bleibt ausgewählt, während Tab zum nächsten weitergeht; nochmals: nicht mehr</translation>
    </message>
    <message>
        <source>&amp;Find by name…</source>
        <translation>Nach Name su&amp;chen…</translation>
    </message>
    <message>
        <source>Find a part of the drawing by its name</source>
        <translation>Ein Teil der Zeichnung nach seinem Namen suchen</translation>
    </message>
    <message>
        <source>&amp;Go to the drawing</source>
        <translation>&amp;Zur Zeichnung</translation>
    </message>
    <message>
        <source>Put the keyboard on the elevation, from wherever it is</source>
        <translation>Tastatur auf die Seitenansicht setzen, von überall her</translation>
    </message>
    <message>
        <source>Detai&amp;ls</source>
        <translation>&amp;Details</translation>
    </message>
    <message>
        <source>Show and change what is known of the selected part (Enter on the drawing)</source>
        <translation>Zeigen und ändern, was vom ausgewählten Teil bekannt ist (Eingabetaste auf der Zeichnung)</translation>
    </message>
    <message>
        <source>Re&amp;name</source>
        <translation>&amp;Umbenennen</translation>
    </message>
    <message>
        <source>Go to the name of the selected part</source>
        <translation>Zum Namen des ausgewählten Teils gehen</translation>
    </message>
    <message>
        <source>Go to its c&amp;orners</source>
        <translation>Zu de&amp;n Ecken</translation>
    </message>
    <message>
        <source>Select the first corner of the outline; Tab goes from corner to corner, Escape back</source>
        <translation>Erste Ecke des Umrisses auswählen; Tab geht von Ecke zu Ecke, Esc zurück</translation>
    </message>
    <message>
        <source>Add a &amp;point here</source>
        <translation>&amp;Punkt hier einfügen</translation>
    </message>
    <message>
        <source>Add a point to the hose, or a corner to the outline</source>
        <translation>Punkt in den Schlauch oder Ecke in den Umriss einfügen</translation>
    </message>
    <message>
        <source>Add a &amp;valve here</source>
        <translation>&amp;Absperrventil hier einfügen</translation>
    </message>
    <message>
        <source>Put an isolation valve into the hose</source>
        <translation>Absperrventil in den Schlauch setzen</translation>
    </message>
    <message>
        <source>Add a &amp;bleed here</source>
        <translation>En&amp;tlüftung hier einfügen</translation>
    </message>
    <message>
        <source>Put a bleed point into the hose</source>
        <translation>Entlüftung in den Schlauch setzen</translation>
    </message>
    <message>
        <source>Add a cl&amp;ip here</source>
        <translation>&amp;Halteschelle hier einfügen</translation>
    </message>
    <message>
        <source>Clip the hose to the frame</source>
        <translation>Schlauch am Rahmen befestigen</translation>
    </message>
    <message>
        <source>&amp;Open or close</source>
        <translation>Ö&amp;ffnen oder schließen</translation>
    </message>
    <message>
        <source>Open or close the selected valve, bleed or drain</source>
        <translation>Ausgewähltes Ventil, Entlüftung oder Ablass öffnen oder schließen</translation>
    </message>
    <message>
        <source>Conn&amp;ect to the next opening</source>
        <translation>Mit nächster Öffnung &amp;verbinden</translation>
    </message>
    <message>
        <source>Connect the hose&apos;s end to the nearest port or nozzle, again: to the next</source>
        <translation>Schlauchende mit dem nächstgelegenen Anschluss oder Stutzen verbinden, nochmals: mit dem nächsten</translation>
    </message>
    <message>
        <source>Turn c&amp;lockwise</source>
        <translation>&amp;Rechtsherum drehen</translation>
    </message>
    <message>
        <source>Turn a heater or port by 15 degrees</source>
        <translation>Heizgerät oder Anschluss um 15 Grad drehen</translation>
    </message>
    <message>
        <source>Turn &amp;back</source>
        <translation>&amp;Zurückdrehen</translation>
    </message>
    <message>
        <source>Turn a heater or port by 15 degrees the other way</source>
        <translation>Heizgerät oder Anschluss um 15 Grad andersherum drehen</translation>
    </message>
    <message>
        <source>&amp;Left edges</source>
        <translation>&amp;Linke Kanten</translation>
    </message>
    <message>
        <source>Line up with the leftmost</source>
        <translation>Am äußersten linken Teil ausrichten</translation>
    </message>
    <message>
        <source>&amp;Middles above each other</source>
        <translation>&amp;Mitten übereinander</translation>
    </message>
    <message>
        <source>Line up on one plumb line of the drawing</source>
        <translation>Auf einer Lotlinie der Zeichnung ausrichten</translation>
    </message>
    <message>
        <source>&amp;Right edges</source>
        <translation>&amp;Rechte Kanten</translation>
    </message>
    <message>
        <source>Line up with the rightmost</source>
        <translation>Am äußersten rechten Teil ausrichten</translation>
    </message>
    <message>
        <source>&amp;Top edges</source>
        <translation>&amp;Obere Kanten</translation>
    </message>
    <message>
        <source>Line up with the highest</source>
        <translation>Am höchsten Teil ausrichten</translation>
    </message>
    <message>
        <source>M&amp;iddles at one height</source>
        <translation>M&amp;itten auf einer Höhe</translation>
    </message>
    <message>
        <source>Line up at one height</source>
        <translation>Auf einer Höhe ausrichten</translation>
    </message>
    <message>
        <source>&amp;Bottom edges</source>
        <translation>&amp;Untere Kanten</translation>
    </message>
    <message>
        <source>Line up with the lowest</source>
        <translation>Am tiefsten Teil ausrichten</translation>
    </message>
    <message>
        <source>Space evenly &amp;along</source>
        <translation>Gleichmäßig läng&amp;s</translation>
    </message>
    <message>
        <source>Even distances along the engine between the outermost</source>
        <translation>Gleiche Abstände längs des Motors zwischen den äußersten</translation>
    </message>
    <message>
        <source>Space evenly &amp;up</source>
        <translation>Gleichmäßig &amp;hoch</translation>
    </message>
    <message>
        <source>Even distances in height between lowest and highest</source>
        <translation>Gleiche Höhenabstände zwischen tiefstem und höchstem</translation>
    </message>
    <message>
        <source>Select &amp;next part</source>
        <translation>&amp;Nächstes Teil wählen</translation>
    </message>
    <message>
        <source>Go through all parts of the drawing</source>
        <translation>Durch alle Teile der Zeichnung gehen</translation>
    </message>
    <message>
        <source>Select &amp;previous part</source>
        <translation>&amp;Voriges Teil wählen</translation>
    </message>
    <message>
        <source>Go back through all parts of the drawing</source>
        <translation>Rückwärts durch alle Teile der Zeichnung gehen</translation>
    </message>
    <message>
        <source>Next &amp;finding</source>
        <translation>Nächster &amp;Befund</translation>
    </message>
    <message>
        <source>Go to the next finding on the drawing</source>
        <translation>Zum nächsten Befund auf der Zeichnung gehen</translation>
    </message>
    <message>
        <source>About this &amp;rule…</source>
        <translation>Über diese Re&amp;gel…</translation>
    </message>
    <message>
        <source>Read what the selected finding&apos;s rule rests on, and its limits</source>
        <translation>Lesen, worauf die Regel des ausgewählten Befunds beruht, und ihre Grenzwerte</translation>
    </message>
    <message>
        <source>Zoom to &amp;fit</source>
        <translation>Ein&amp;passen</translation>
    </message>
    <message>
        <source>Show the whole drawing</source>
        <translation>Die ganze Zeichnung zeigen</translation>
    </message>
    <message>
        <source>Zoom to &amp;selection</source>
        <translation>Aus&amp;wahl zeigen</translation>
    </message>
    <message>
        <source>Show what is selected</source>
        <translation>Zeigen, was ausgewählt ist</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>Ver&amp;größern</translation>
    </message>
    <message>
        <source>Closer</source>
        <translation>Näher</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>Ver&amp;kleinern</translation>
    </message>
    <message>
        <source>Farther</source>
        <translation>Weiter weg</translation>
    </message>
    <message>
        <source>&amp;Grid</source>
        <translation>&amp;Raster</translation>
    </message>
    <message>
        <source>Show the grid</source>
        <translation>Raster zeigen</translation>
    </message>
    <message>
        <source>S&amp;napping</source>
        <translation>&amp;Einrasten</translation>
    </message>
    <message>
        <source>Points snap to the grid and to level and plumb</source>
        <translation>Punkte rasten am Raster, waagrecht und lotrecht ein</translation>
    </message>
    <message>
        <source>Points go to the lines of the grid</source>
        <translation>Punkte gehen auf die Linien des Rasters</translation>
    </message>
    <message>
        <source>&amp;Points</source>
        <translation>&amp;Punkte</translation>
    </message>
    <message>
        <source>Points go onto ports, nozzles, route points and corners</source>
        <translation>Punkte gehen auf Anschlüsse, Stutzen, Schlauchpunkte und Ecken</translation>
    </message>
    <message>
        <source>&amp;Level</source>
        <translation>&amp;Waagrecht</translation>
    </message>
    <message>
        <source>Points go level with their neighbours</source>
        <translation>Punkte gehen auf gleiche Höhe mit ihren Nachbarn</translation>
    </message>
    <message>
        <source>P&amp;lumb</source>
        <translation>&amp;Lotrecht</translation>
    </message>
    <message>
        <source>Points go plumb over or under their neighbours, on a grade too</source>
        <translation>Punkte gehen lotrecht über oder unter ihre Nachbarn, auch bei Neigung</translation>
    </message>
    <message>
        <source>Constant &amp;rise</source>
        <translation>Gleiche &amp;Steigung</translation>
    </message>
    <message>
        <source>Pieces of a hose take the slope chosen below</source>
        <translation>Stücke eines Schlauchs nehmen die unten gewählte Steigung an</translation>
    </message>
    <message>
        <source>&amp;Bend radius</source>
        <translation>&amp;Biegeradius</translation>
    </message>
    <message>
        <source>Points stop where the bends still take the hose&apos;s least radius</source>
        <translation>Punkte halten an, wo die Bögen noch den kleinsten Radius des Schlauchs einhalten</translation>
    </message>
    <message>
        <source>&amp;In line with the last piece</source>
        <translation>&amp;In Flucht mit dem letzten Stück</translation>
    </message>
    <message>
        <source>Pieces of a hose go straight on</source>
        <translation>Stücke eines Schlauchs gehen geradeaus weiter</translation>
    </message>
    <message>
        <source>Li&amp;mits</source>
        <translation>&amp;Grenzen</translation>
    </message>
    <message>
        <source>Parts stop where a rule&apos;s limit is just kept: level, hump, ground, area</source>
        <translation>Teile halten an, wo der Grenzwert einer Regel gerade eingehalten ist: Kühlmittelstand, Buckel, Boden, Sperrbereich</translation>
    </message>
    <message>
        <source>&amp;Slope to snap to…</source>
        <translation>S&amp;teigung zum Einrasten…</translation>
    </message>
    <message>
        <source>Choose the slope of the constant rise</source>
        <translation>Das Maß der gleichen Steigung wählen</translation>
    </message>
    <message>
        <source>Running fig&amp;ures</source>
        <translation>&amp;Betriebswerte</translation>
    </message>
    <message>
        <source>Show flow, temperatures and heads beside each heater</source>
        <translation>Durchfluss, Temperaturen und Druckhöhen neben jedem Heizgerät zeigen</translation>
    </message>
    <message>
        <source>&amp;Tint hoses by temperature</source>
        <translation>&amp;Schläuche nach Temperatur färben</translation>
    </message>
    <message>
        <source>Colour the hoses by the coolant&apos;s temperature in them</source>
        <translation>Schläuche nach der Temperatur des Kühlmittels darin färben</translation>
    </message>
    <message>
        <source>&amp;End view</source>
        <translation>Stirnansic&amp;ht</translation>
    </message>
    <message>
        <source>Show the drawing along the engine too, beside the elevation</source>
        <translation>Die Zeichnung auch längs des Motors zeigen, neben der Seitenansicht</translation>
    </message>
    <message>
        <source>End view at the same &amp;heights</source>
        <translation>Stirnansicht g&amp;leich hoch</translation>
    </message>
    <message>
        <source>Zoom and heights of the elevation and the end view go together</source>
        <translation>Zoom und Höhen von Seiten- und Stirnansicht gehen zusammen</translation>
    </message>
    <message>
        <source>Third-angle &amp;projection</source>
        <translation>Pro&amp;jektionsmethode 3</translation>
    </message>
    <message>
        <source>The end view shows the end it stands beside, on the sheet too; off: first-angle projection, which shows the other end</source>
        <translation>Die Stirnansicht zeigt das Ende, neben dem sie steht, auch auf dem Blatt; aus: Projektionsmethode 1, die das andere Ende zeigt</translation>
    </message>
    <message>
        <source>&amp;mm and °C</source>
        <translation>&amp;mm und °C</translation>
    </message>
    <message>
        <source>Metric units</source>
        <translation>Metrische Einheiten</translation>
    </message>
    <message>
        <source>&amp;inch and °F</source>
        <translation>&amp;Zoll und °F</translation>
    </message>
    <message>
        <source>Inch units</source>
        <translation>Zolleinheiten</translation>
    </message>
    <message>
        <source>As the des&amp;ktop</source>
        <translation>Wie die &amp;Arbeitsfläche</translation>
    </message>
    <message>
        <source>Light, dark or high contrast, as the desktop has it</source>
        <translation>Hell, dunkel oder hoher Kontrast, wie es die Arbeitsfläche hat</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>Dark lines on light ground</source>
        <translation>Dunkle Linien auf hellem Grund</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>Light lines on dark ground</source>
        <translation>Helle Linien auf dunklem Grund</translation>
    </message>
    <message>
        <source>&amp;High contrast</source>
        <translation>Hoher &amp;Kontrast</translation>
    </message>
    <message>
        <source>Black on white, for bright sun and weak eyes</source>
        <translation>Schwarz auf Weiß, für pralle Sonne und schwache Augen</translation>
    </message>
    <message>
        <source>Text 100 %</source>
        <translation>Schrift 100 %</translation>
    </message>
    <message>
        <source>Text of the usual size</source>
        <translation>Schrift in üblicher Größe</translation>
    </message>
    <message>
        <source>Text 125 %</source>
        <translation>Schrift 125 %</translation>
    </message>
    <message>
        <source>Larger text</source>
        <translation>Größere Schrift</translation>
    </message>
    <message>
        <source>Text 150 %</source>
        <translation>Schrift 150 %</translation>
    </message>
    <message>
        <source>Text 175 %</source>
        <translation>Schrift 175 %</translation>
    </message>
    <message>
        <source>Text 200 %</source>
        <translation>Schrift 200 %</translation>
    </message>
    <message>
        <source>Text twice as large</source>
        <translation>Doppelt so große Schrift</translation>
    </message>
    <message>
        <source>Default la&amp;yout</source>
        <translation>Stan&amp;dardanordnung</translation>
    </message>
    <message>
        <source>Put window, panels and tools back where they were at first</source>
        <translation>Fenster, Teilfenster und Werkzeuge dorthin zurücksetzen, wo sie anfangs waren</translation>
    </message>
    <message>
        <source>&amp;Warm-up</source>
        <translation>Auf&amp;heizen</translation>
    </message>
    <message>
        <source>Show temperatures, flow and power over the hours</source>
        <translation>Temperaturen, Durchfluss und Leistung über die Stunden zeigen</translation>
    </message>
    <message>
        <source>Table by &amp;bore</source>
        <translation>Tabelle nach I&amp;nnen-Ø</translation>
    </message>
    <message>
        <source>Show what each stock bore of hose would do</source>
        <translation>Zeigen, was jeder erhältliche Innendurchmesser des Schlauchs brächte</translation>
    </message>
    <message>
        <source>Table on &amp;grades</source>
        <translation>Tabelle nach Ne&amp;igung</translation>
    </message>
    <message>
        <source>Show how the job runs parked at the ends of the grades judged</source>
        <translation>Zeigen, wie die Anlage läuft, wenn an den Enden der beurteilten Neigungen geparkt wird</translation>
    </message>
    <message>
        <source>Heater si&amp;ze and supply</source>
        <translation>Heizgeräte&amp;größe und Versorgung</translation>
    </message>
    <message>
        <source>Show power needed, electrical load, cost of a night, and coolant to mix</source>
        <translation>Nötige Leistung, elektrische Last, Kosten einer Nacht und zu mischendes Kühlmittel zeigen</translation>
    </message>
    <message>
        <source>Propose la&amp;youts</source>
        <translation>Anordnungen &amp;vorschlagen</translation>
    </message>
    <message>
        <source>Let the program lay heater and hoses so that no rule is broken</source>
        <translation>Das Programm Heizgerät und Schläuche so legen lassen, dass keine Regel verletzt wird</translation>
    </message>
    <message>
        <source>C&amp;ommissioning</source>
        <translation>In&amp;betriebnahme</translation>
    </message>
    <message>
        <source>Work through the checklist, judge readings, diagnose what is wrong</source>
        <translation>Checkliste abarbeiten, Messwerte beurteilen, Fehler finden</translation>
    </message>
    <message>
        <source>Print the chec&amp;klist…</source>
        <translation>Checkliste &amp;drucken…</translation>
    </message>
    <message>
        <source>Steps, cautions and a table for readings, to be filled in by hand</source>
        <translation>Schritte, Sicherheitshinweise und eine Tabelle für Messwerte, zum Ausfüllen von Hand</translation>
    </message>
    <message>
        <source>Save the checklist as PD&amp;F…</source>
        <translation>Checkliste als PD&amp;F speichern…</translation>
    </message>
    <message>
        <source>Write the checklist&apos;s pages to a file</source>
        <translation>Die Seiten der Checkliste in eine Datei schreiben</translation>
    </message>
    <message>
        <source>&amp;Keep this curve</source>
        <translation>Diese &amp;Kurve behalten</translation>
    </message>
    <message>
        <source>Lay the warm-up as it is now under those to come</source>
        <translation>Das jetzige Aufheizen unter die kommenden legen</translation>
    </message>
    <message>
        <source>Take kept &amp;curves away</source>
        <translation>Behaltene Kurven &amp;entfernen</translation>
    </message>
    <message>
        <source>Show the present warm-up alone</source>
        <translation>Nur das jetzige Aufheizen zeigen</translation>
    </message>
    <message>
        <source>&amp;Parts and cuts…</source>
        <translation>&amp;Teile und Zuschnitt…</translation>
    </message>
    <message>
        <source>List what the drawing takes, and how the hose is cut</source>
        <translation>Auflisten, was die Zeichnung braucht und wie der Schlauch zugeschnitten wird</translation>
    </message>
    <message>
        <source>&amp;Estimate…</source>
        <translation>Kalk&amp;ulation…</translation>
    </message>
    <message>
        <source>Reckon what the job costs, with prices, hours and other heaters</source>
        <translation>Die Kosten des Auftrags berechnen, mit Preisen, Stunden und anderen Heizgeräten</translation>
    </message>
    <message>
        <source>&amp;Rules…</source>
        <translation>Regel&amp;n…</translation>
    </message>
    <message>
        <source>Read every rule, and change its limits for this drawing</source>
        <translation>Alle Regeln lesen und ihre Grenzwerte für diese Zeichnung ändern</translation>
    </message>
    <message>
        <source>&amp;Assumptions…</source>
        <translation>&amp;Annahmen…</translation>
    </message>
    <message>
        <source>See every figure that is assumed, and change it for this drawing</source>
        <translation>Alle angenommenen Zahlen sehen und für diese Zeichnung ändern</translation>
    </message>
    <message>
        <source>Select</source>
        <translation>Auswahl</translation>
    </message>
    <message>
        <source>Select and drag parts</source>
        <translation>Teile auswählen und ziehen</translation>
    </message>
    <message>
        <source>Supply hose</source>
        <translation>Vorlaufschlauch</translation>
    </message>
    <message>
        <source>Draw the hose from the engine to the heater</source>
        <translation>Den Schlauch vom Motor zum Heizgerät zeichnen</translation>
    </message>
    <message>
        <source>Return hose</source>
        <translation>Rücklaufschlauch</translation>
    </message>
    <message>
        <source>Draw the hose from the heater to the engine</source>
        <translation>Den Schlauch vom Heizgerät zum Motor zeichnen</translation>
    </message>
    <message>
        <source>Port</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <source>Mark an opening into the water jacket</source>
        <translation>Eine Öffnung in den Wassermantel markieren</translation>
    </message>
    <message>
        <source>Heater</source>
        <translation>Heizgerät</translation>
    </message>
    <message>
        <source>Place a tank heater</source>
        <translation>Ein Kühlmittel-Heizgerät setzen</translation>
    </message>
    <message>
        <source>Valve</source>
        <translation>Ventil</translation>
    </message>
    <message>
        <source>Put an isolation valve into a hose</source>
        <translation>Ein Absperrventil in einen Schlauch setzen</translation>
    </message>
    <message>
        <source>Bleed</source>
        <translation>Entlüftung</translation>
    </message>
    <message>
        <source>Put a bleed point into a hose</source>
        <translation>Eine Entlüftung in einen Schlauch setzen</translation>
    </message>
    <message>
        <source>Clip</source>
        <translation>Schelle</translation>
    </message>
    <message>
        <source>Clip a hose to the frame</source>
        <translation>Einen Schlauch mit einer Halteschelle am Rahmen befestigen</translation>
    </message>
    <message>
        <source>Keep-clear area</source>
        <translation>Sperrbereich</translation>
    </message>
    <message>
        <source>Outline something hot or moving</source>
        <translation>Etwas Heißes oder Bewegtes umranden</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation>Behälter</translation>
    </message>
    <message>
        <source>Place the surge tank with the coolant levels</source>
        <translation>Den Ausgleichsbehälter mit den Kühlmittelständen setzen</translation>
    </message>
    <message>
        <source>Dimension</source>
        <translation>Maß</translation>
    </message>
    <message>
        <source>Measure between any two things; it follows them and prints</source>
        <translation>Zwischen zwei beliebigen Dingen messen; das Maß folgt ihnen und wird gedruckt</translation>
    </message>
    <message>
        <source>S&amp;helf of parts</source>
        <translation>&amp;Teileregal</translation>
    </message>
    <message>
        <source>Parts to drag onto the drawing; Enter puts one in the middle</source>
        <translation>Teile zum Ziehen auf die Zeichnung; die Eingabetaste setzt eines in die Mitte</translation>
    </message>
    <message>
        <source>S&amp;urvey…</source>
        <translation>&amp;Aufmaß…</translation>
    </message>
    <message>
        <source>Type what was measured at the vehicle and draw the engine from it</source>
        <translation>Am Fahrzeug Gemessenes eingeben und daraus den Motor zeichnen</translation>
    </message>
    <message>
        <source>&amp;Engine…</source>
        <translation>&amp;Motor…</translation>
    </message>
    <message>
        <source>Choose an engine by its picture and place it</source>
        <translation>Einen Motor nach seinem Bild wählen und setzen</translation>
    </message>
    <message>
        <source>&amp;Heater…</source>
        <translation>&amp;Heizgerät…</translation>
    </message>
    <message>
        <source>Choose a heater by its picture and place it under the jacket</source>
        <translation>Ein Heizgerät nach seinem Bild wählen und unter den Wassermantel setzen</translation>
    </message>
    <message>
        <source>&amp;Photo…</source>
        <translation>&amp;Foto…</translation>
    </message>
    <message>
        <source>Put a photo of the engine under the drawing, to draw over</source>
        <translation>Ein Foto des Motors unter die Zeichnung legen, um darüber zu zeichnen</translation>
    </message>
    <message>
        <source>Photo from the &amp;clipboard</source>
        <translation>Foto aus der &amp;Zwischenablage</translation>
    </message>
    <message>
        <source>Put the picture that was copied elsewhere under the drawing</source>
        <translation>Das anderswo kopierte Bild unter die Zeichnung legen</translation>
    </message>
    <message>
        <source>&amp;Straighten by a rectangle…</source>
        <translation>Am &amp;Rechteck entzerren…</translation>
    </message>
    <message>
        <source>Click the corners of a rectangle of known size in a photo taken at an angle</source>
        <translation>Die Ecken eines Rechtecks bekannter Größe in einem schräg aufgenommenen Foto anklicken</translation>
    </message>
    <message>
        <source>S&amp;cale by two points…</source>
        <translation>&amp;Skalieren mit zwei Punkten…</translation>
    </message>
    <message>
        <source>Click two points in the photo and type how far apart they are</source>
        <translation>Zwei Punkte im Foto anklicken und ihren Abstand eingeben</translation>
    </message>
    <message>
        <source>&amp;Level by two points</source>
        <translation>&amp;Waagrecht über zwei Punkte</translation>
    </message>
    <message>
        <source>Click two points along something level in the photo</source>
        <translation>Zwei Punkte entlang etwas Waagrechtem im Foto anklicken</translation>
    </message>
    <message>
        <source>Loc&amp;k the photo</source>
        <translation>Foto s&amp;perren</translation>
    </message>
    <message>
        <source>Keep the photo where it is while you draw over it</source>
        <translation>Das Foto bleibt, wo es ist, während Sie darüber zeichnen</translation>
    </message>
    <message>
        <source>Select the &amp;photo</source>
        <translation>Foto &amp;auswählen</translation>
    </message>
    <message>
        <source>Show place, scale, turn and fade of the photo in the details</source>
        <translation>Lage, Maßstab, Drehung und Blässe des Fotos in den Details zeigen</translation>
    </message>
    <message>
        <source>Supply port, low at the front</source>
        <translation>Vorlaufanschluss, unten vorn</translation>
    </message>
    <message>
        <source>Add a port at the jacket&apos;s lowest level</source>
        <translation>Einen Anschluss an der tiefsten Stelle des Wassermantels setzen</translation>
    </message>
    <message>
        <source>Return port, high at the rear</source>
        <translation>Rücklaufanschluss, oben hinten</translation>
    </message>
    <message>
        <source>Add a port near the jacket&apos;s highest level</source>
        <translation>Einen Anschluss nahe der höchsten Stelle des Wassermantels setzen</translation>
    </message>
    <message>
        <source>Supply hose, port to heater</source>
        <translation>Vorlaufschlauch, Anschluss zum Heizgerät</translation>
    </message>
    <message>
        <source>Add a straight hose to be shaped</source>
        <translation>Einen geraden Schlauch setzen, der noch geformt wird</translation>
    </message>
    <message>
        <source>Return hose, heater to port</source>
        <translation>Rücklaufschlauch, Heizgerät zum Anschluss</translation>
    </message>
    <message>
        <source>Point in the selected hose</source>
        <translation>Punkt im ausgewählten Schlauch</translation>
    </message>
    <message>
        <source>Add a route point in the middle of the hose</source>
        <translation>Einen Schlauchpunkt in der Mitte des Schlauchs einfügen</translation>
    </message>
    <message>
        <source>Isolation valve in the selected hose</source>
        <translation>Absperrventil im ausgewählten Schlauch</translation>
    </message>
    <message>
        <source>Add a valve near the hose&apos;s start</source>
        <translation>Ein Ventil nahe dem Anfang des Schlauchs setzen</translation>
    </message>
    <message>
        <source>Bleed at the selected hose&apos;s crest</source>
        <translation>Entlüftung am Scheitel des ausgewählten Schlauchs</translation>
    </message>
    <message>
        <source>Add a bleed point where the hose is highest</source>
        <translation>Eine Entlüftung setzen, wo der Schlauch am höchsten ist</translation>
    </message>
    <message>
        <source>Surge tank over the engine</source>
        <translation>Ausgleichsbehälter über dem Motor</translation>
    </message>
    <message>
        <source>Add the tank with its coolant levels</source>
        <translation>Den Behälter mit seinen Kühlmittelständen setzen</translation>
    </message>
    <message>
        <source>Add a square area to be shaped</source>
        <translation>Einen rechteckigen Bereich setzen, der noch geformt wird</translation>
    </message>
    <message>
        <source>&amp;Teaching air locks</source>
        <translation>Luftsäcke im &amp;Unterricht</translation>
    </message>
    <message>
        <source>Lessons, faults to find and their answers, for a trainer</source>
        <translation>Lektionen, Fehler zum Finden und ihre Lösungen, für Ausbilder</translation>
    </message>
    <message>
        <source>&amp;Demonstrate</source>
        <translation>&amp;Vorführen</translation>
    </message>
    <message>
        <source>Play filling, engine run and warm-up on the drawing</source>
        <translation>Füllen, Motorlauf und Aufheizen auf der Zeichnung ablaufen lassen</translation>
    </message>
    <message>
        <source>&amp;Hide findings</source>
        <translation>&amp;Befunde verbergen</translation>
    </message>
    <message>
        <source>Let the class guess first</source>
        <translation>Die Klasse zuerst raten lassen</translation>
    </message>
    <message>
        <source>&amp;Ask the class</source>
        <translation>&amp;Klasse fragen</translation>
    </message>
    <message>
        <source>Count hands, then reveal whether it circulates</source>
        <translation>Hände zählen, dann zeigen, ob es zirkuliert</translation>
    </message>
    <message>
        <source>&amp;Second drawing beside…</source>
        <translation>&amp;Zweite Zeichnung daneben…</translation>
    </message>
    <message>
        <source>Play a drawing from a file by the same clock</source>
        <translation>Eine Zeichnung aus einer Datei im selben Takt ablaufen lassen</translation>
    </message>
    <message>
        <source>&amp;Full screen</source>
        <translation>V&amp;ollbild</translation>
    </message>
    <message>
        <source>Large, to be read from the back of the room</source>
        <translation>Groß, auch von ganz hinten lesbar</translation>
    </message>
    <message>
        <source>Export this &amp;moment…</source>
        <translation>Diesen &amp;Moment exportieren…</translation>
    </message>
    <message>
        <source>Write what is shown now as PNG or SVG</source>
        <translation>Das jetzt Gezeigte als PNG oder SVG schreiben</translation>
    </message>
    <message>
        <source>Export all &amp;pictures…</source>
        <translation>Alle B&amp;ilder exportieren…</translation>
    </message>
    <message>
        <source>Write the demonstration as numbered PNG pictures</source>
        <translation>Die Vorführung als nummerierte PNG-Bilder schreiben</translation>
    </message>
    <message>
        <source>Hand&amp;out…</source>
        <translation>&amp;Handout…</translation>
    </message>
    <message>
        <source>Write one page with six moments and their captions as PDF</source>
        <translation>Eine Seite mit sechs Momenten und ihren Texten als PDF schreiben</translation>
    </message>
    <message>
        <source>Find a co&amp;mmand…</source>
        <translation>&amp;Befehl suchen…</translation>
    </message>
    <message>
        <source>Search all commands by their words, and run one</source>
        <translation>Alle Befehle nach Wörtern durchsuchen und einen ausführen</translation>
    </message>
    <message>
        <source>&amp;Shortcuts…</source>
        <translation>&amp;Tastenkürzel…</translation>
    </message>
    <message>
        <source>See the keys of every command, and change them</source>
        <translation>Die Tasten aller Befehle sehen und ändern</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Sicherheitshinweise</translation>
    </message>
    <message>
        <source>What to heed before and during the work</source>
        <translation>Was vor und während der Arbeit zu beachten ist</translation>
    </message>
    <message>
        <source>&amp;First sketch, step by step</source>
        <translation>&amp;Erste Zeichnung, Schritt für Schritt</translation>
    </message>
    <message>
        <source>Be led through a first drawing, from the engine to the saved file</source>
        <translation>Durch eine erste Zeichnung führen, vom Motor bis zur gespeicherten Datei</translation>
    </message>
    <message>
        <source>&amp;About Siphonwright</source>
        <translation>Über Siphon&amp;wright</translation>
    </message>
    <message>
        <source>Version, licences and what the figures are</source>
        <translation>Version, Lizenzen und was die Zahlen bedeuten</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>Texts, numbers and dates as the system has them, from the next start on</source>
        <translation>Texte, Zahlen und Datum wie im System, ab dem nächsten Start</translation>
    </message>
    <message>
        <source>English texts, from the next start on</source>
        <translation>Englische Texte, ab dem nächsten Start</translation>
    </message>
    <message>
        <source>Spanish texts, from the next start on</source>
        <translation>Spanische Texte, ab dem nächsten Start</translation>
    </message>
    <message>
        <source>French texts, from the next start on</source>
        <translation>Französische Texte, ab dem nächsten Start</translation>
    </message>
    <message>
        <source>German texts, from the next start on</source>
        <translation>Deutsche Texte, ab dem nächsten Start</translation>
    </message>
    <message>
        <source>Fi&amp;x the finding</source>
        <translation>Befund be&amp;heben</translation>
    </message>
    <message>
        <source>Change the drawing as is offered under the list of findings</source>
        <translation>Die Zeichnung so ändern, wie es unter der Liste der Befunde angeboten wird</translation>
    </message>
    <message>
        <source>&amp;Checklist behind the sheet</source>
        <translation>&amp;Checkliste hinter dem Blatt</translation>
    </message>
    <message>
        <source>Print and export the checklist and the table of readings after the drawing</source>
        <translation>Checkliste und Tabelle der Messwerte hinter der Zeichnung drucken und ausgeben</translation>
    </message>
    <message>
        <source>&amp;Estimate behind the sheet</source>
        <translation>&amp;Kostenvoranschlag hinter dem Blatt</translation>
    </message>
    <message>
        <source>Print and export the estimate after the drawing, where prices are there</source>
        <translation>Kostenvoranschlag hinter der Zeichnung drucken und ausgeben, wenn Preise da sind</translation>
    </message>
    <message>
        <source>&amp;Assumptions behind the sheet</source>
        <translation>&amp;Annahmen hinter dem Blatt</translation>
    </message>
    <message>
        <source>Print and export what the figures rest on, after the drawing</source>
        <translation>Drucken und ausgeben, worauf die Zahlen beruhen, hinter der Zeichnung</translation>
    </message>
    <message>
        <source>&amp;Logo on the sheet…</source>
        <translation>&amp;Logo auf dem Blatt…</translation>
    </message>
    <message>
        <source>Choose a picture for the title block; chosen again, it comes off</source>
        <translation>Ein Bild für das Schriftfeld wählen; noch einmal gewählt, kommt es weg</translation>
    </message>
    <message>
        <source>Recover &amp;drawings…</source>
        <translation>&amp;Zeichnungen wiederherstellen…</translation>
    </message>
    <message>
        <source>See what was not saved when the program ended unexpectedly, or was put aside</source>
        <translation>Zeigen, was beim unerwarteten Ende des Programms nicht gespeichert war oder beiseitegelegt wurde</translation>
    </message>
    <message>
        <source>High contrast, &amp;white on black</source>
        <translation>Hoher Kontrast, &amp;weiß auf schwarz</translation>
    </message>
    <message>
        <source>White on black, for eyes that a bright ground blinds</source>
        <translation>Weiß auf Schwarz, für Augen, die ein heller Grund blendet</translation>
    </message>
</context>
<context>
    <name>Canvas</name>
    <message>
        <source>%1 wide, %2 high</source>
        <translation>%1 breit, %2 hoch</translation>
    </message>
    <message>
        <source>Height %1</source>
        <translation>Höhe %1</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>%1 verschieben</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation>%1 drehen</translation>
    </message>
    <message>
        <source>%1 parts</source>
        <translation>%1 Teile</translation>
    </message>
</context>
<context>
    <name>Drawing</name>
    <message>
        <source>The photo cannot be shown</source>
        <translation>Das Foto kann nicht gezeigt werden</translation>
    </message>
    <message>
        <source>Coolant in the hoses</source>
        <translation>Kühlmittel in den Schläuchen</translation>
    </message>
</context>
<context>
    <name>DrawingKeys</name>
    <message>
        <source>Arrow keys</source>
        <translation>Pfeiltasten</translation>
    </message>
    <message>
        <source>Nudge what is selected, move the cross-hair, or move the paper</source>
        <translation>Auswahl schrittweise verschieben, Fadenkreuz oder Papier bewegen</translation>
    </message>
    <message>
        <source>Shift + arrow keys</source>
        <translation>Umschalt + Pfeiltasten</translation>
    </message>
    <message>
        <source>A fine step</source>
        <translation>Ein feiner Schritt</translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Umschalt+Tab</translation>
    </message>
    <message>
        <source>Next and previous point of what is selected, or place to put it</source>
        <translation>Nächster und voriger Punkt der Auswahl oder Platz zum Setzen</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Put down at the cross-hair; finish a hose</source>
        <translation>Am Fadenkreuz setzen; einen Schlauch beenden</translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation>Rücktaste</translation>
    </message>
    <message>
        <source>Take the last point of a hose back</source>
        <translation>Den letzten Punkt eines Schlauchs zurücknehmen</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Stop what was begun; back to selecting</source>
        <translation>Begonnenes abbrechen; zurück zum Auswählen</translation>
    </message>
    <message>
        <source>Space + drag, middle button</source>
        <translation>Leertaste + Ziehen, mittlere Maustaste</translation>
    </message>
    <message>
        <source>Move the paper</source>
        <translation>Papier bewegen</translation>
    </message>
    <message>
        <source>Wheel</source>
        <translation>Mausrad</translation>
    </message>
    <message>
        <source>Zoom to the pointer</source>
        <translation>Auf den Mauszeiger zoomen</translation>
    </message>
    <message>
        <source>Alt while dragging</source>
        <translation>Alt beim Ziehen</translation>
    </message>
    <message>
        <source>No snapping</source>
        <translation>Kein Einrasten</translation>
    </message>
</context>
<context>
    <name>PartMenu</name>
    <message>
        <source>&amp;Align</source>
        <translation>Ausr&amp;ichten</translation>
    </message>
    <message>
        <source>Selected &amp;part</source>
        <translation>Ausgewähltes &amp;Teil</translation>
    </message>
</context>
<context>
    <name>Photo</name>
    <message>
        <source>Its data are damaged: they are no Base64.</source>
        <translation>Die Daten sind beschädigt: kein gültiges Base64.</translation>
    </message>
</context>
<context>
    <name>SlowCall</name>
    <message>
        <source>%1 is being saved…</source>
        <translation>%1 wird gespeichert…</translation>
    </message>
    <message>
        <source>%1 is being opened…</source>
        <translation>%1 wird geöffnet…</translation>
    </message>
    <message>
        <source>%1 is not saved yet: its place does not answer.</source>
        <translation>%1 ist noch nicht gespeichert: Der Ort antwortet nicht.</translation>
    </message>
    <message>
        <source>%1 is not open yet: its place does not answer.</source>
        <translation>%1 ist noch nicht geöffnet: Der Ort antwortet nicht.</translation>
    </message>
    <message>
        <source>A network drive may be busy or gone. This closes by itself when the drawing is saved after all. If you save in another place, or stop waiting, the file there stays as it was, and your drawing stays on the table.</source>
        <translation>Vielleicht ist ein Netzlaufwerk beschäftigt oder nicht mehr da. Das Fenster schließt sich von selbst, wenn die Zeichnung doch gespeichert ist. Wenn Sie an einem anderen Ort speichern oder nicht mehr warten, bleibt die Datei dort, wie sie war, und Ihre Zeichnung bleibt auf dem Tisch.</translation>
    </message>
    <message>
        <source>A network drive may be busy or gone. This closes by itself when the file is read after all. If you stop waiting, the drawing on the table stays as it is.</source>
        <translation>Vielleicht ist ein Netzlaufwerk beschäftigt oder nicht mehr da. Das Fenster schließt sich von selbst, wenn die Datei doch gelesen ist. Wenn Sie nicht mehr warten, bleibt die Zeichnung auf dem Tisch, wie sie ist.</translation>
    </message>
    <message>
        <source>Siphonwright</source>
        <translation>Siphonwright</translation>
    </message>
    <message>
        <source>This closes by itself when it is done.</source>
        <translation>Das Fenster schließt sich von selbst, wenn es fertig ist.</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;unter…</translation>
    </message>
    <message>
        <source>&amp;Stop waiting</source>
        <translation>&amp;Nicht mehr warten</translation>
    </message>
    <message>
        <source>%1 is being written…</source>
        <translation>%1 wird geschrieben…</translation>
    </message>
    <message>
        <source>%1 is not written yet: its place does not answer.</source>
        <translation>%1 ist noch nicht geschrieben: Der Ort antwortet nicht.</translation>
    </message>
    <message>
        <source>A network drive may be busy or gone. This closes by itself when the file is written after all. If you stop waiting, what stands there stays as it was; write it again in another place.</source>
        <translation>Vielleicht ist ein Netzlaufwerk beschäftigt oder nicht mehr da. Das Fenster schließt sich von selbst, wenn die Datei doch geschrieben ist. Wenn Sie nicht mehr warten, bleibt, was dort steht, wie es war; schreiben Sie die Datei an einem anderen Ort noch einmal.</translation>
    </message>
    <message>
        <source>A network drive may be busy or gone. This closes by itself when the logo is read after all. If you stop waiting, the sheet is made without it.</source>
        <translation>Vielleicht ist ein Netzlaufwerk beschäftigt oder nicht mehr da. Das Fenster schließt sich von selbst, wenn das Logo doch gelesen ist. Wenn Sie nicht mehr warten, entsteht das Blatt ohne Logo.</translation>
    </message>
</context>
<context>
    <name>Snap</name>
    <message>
        <source>Snapped: %1</source>
        <translation>Eingerastet: %1</translation>
    </message>
    <message>
        <source>level</source>
        <translation>waagrecht</translation>
    </message>
    <message>
        <source>plumb</source>
        <translation>lotrecht</translation>
    </message>
</context>
<context>
    <name>Teaching</name>
    <message>
        <source>Teaching air locks</source>
        <translation>Luftsäcke im Unterricht</translation>
    </message>
</context>
<context>
    <name>WriteFailure</name>
    <message>
        <source>Another program has changed %1 since it was opened here. Neither version is lost: choose what is to be done with them.</source>
        <translation>Ein anderes Programm hat %1 geändert, seit die Datei hier geöffnet wurde. Keine Fassung geht verloren: wählen Sie, was mit ihnen geschehen soll.</translation>
    </message>
    <message>
        <source>There is no room left on the disk for %1. Make room and try again, or save in another place. (%2)</source>
        <translation>Für %1 ist kein Platz mehr auf dem Datenträger. Schaffen Sie Platz und versuchen Sie es noch einmal, oder speichern Sie an einem anderen Ort. (%2)</translation>
    </message>
    <message>
        <source>%1 is in a place that may only be read. Save in another place. (%2)</source>
        <translation>%1 liegt an einem Ort, der nur gelesen werden darf. Speichern Sie an einem anderen Ort. (%2)</translation>
    </message>
    <message>
        <source>The folder of %1 cannot be reached. Connect the drive again and try again, or save in another place. (%2)</source>
        <translation>Der Ordner von %1 ist nicht zu erreichen. Verbinden Sie das Laufwerk wieder und versuchen Sie es noch einmal, oder speichern Sie an einem anderen Ort. (%2)</translation>
    </message>
    <message>
        <source>%1 cannot be written: the disk reports an error. Try again, or save in another place. (%2)</source>
        <translation>%1 kann nicht geschrieben werden: der Datenträger meldet einen Fehler. Versuchen Sie es noch einmal, oder speichern Sie an einem anderen Ort. (%2)</translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>a hose has no length</source>
        <translation>ein Schlauch hat keine Länge</translation>
    </message>
    <message>
        <source>a hose has no bore</source>
        <translation>ein Schlauch hat keinen Innendurchmesser</translation>
    </message>
    <message>
        <source>an opening has no bore</source>
        <translation>eine Öffnung hat keinen Innendurchmesser</translation>
    </message>
    <message>
        <source>a chamber has no volume</source>
        <translation>eine Kammer hat kein Volumen</translation>
    </message>
    <message>
        <source>a valve has no place</source>
        <translation>ein Ventil hat keinen Platz</translation>
    </message>
    <message>
        <source>a bleed has no place</source>
        <translation>eine Entlüftung hat keinen Platz</translation>
    </message>
    <message>
        <source>the element has no height</source>
        <translation>das Heizelement hat keine Höhe</translation>
    </message>
    <message>
        <source>the jacket&apos;s volume needs two levels</source>
        <translation>das Volumen des Wassermantels braucht zwei Höhen</translation>
    </message>
    <message>
        <source>the jacket&apos;s volume must rise with its level</source>
        <translation>das Volumen des Wassermantels muss mit der Höhe zunehmen</translation>
    </message>
    <message>
        <source>the target level is no number</source>
        <translation>die Zielhöhe ist keine Zahl</translation>
    </message>
    <message>
        <source>density and pressures must be over zero</source>
        <translation>Dichte und Drücke müssen über null liegen</translation>
    </message>
    <message>
        <source>the air in pre-filled hoses must not be under zero</source>
        <translation>die Luft in vorgefüllten Schläuchen darf nicht unter null liegen</translation>
    </message>
    <message>
        <source>the vacuum must lie under the atmosphere</source>
        <translation>das Vakuum muss unter dem Luftdruck liegen</translation>
    </message>
    <message>
        <source>there is no loop to feed</source>
        <translation>es gibt keinen Kreislauf zum Füllen</translation>
    </message>
    <message>
        <source>there is no such valve</source>
        <translation>ein solches Ventil gibt es nicht</translation>
    </message>
    <message>
        <source>the level is not reached from where coolant is fed</source>
        <translation>die Höhe ist von der Füllstelle aus nicht erreichbar</translation>
    </message>
    <message>
        <source>no state of rest was found</source>
        <translation>kein Ruhezustand wurde gefunden</translation>
    </message>
    <message>
        <source>nothing has been filled</source>
        <translation>nichts wurde gefüllt</translation>
    </message>
    <message>
        <source>the level is no number</source>
        <translation>die Höhe ist keine Zahl</translation>
    </message>
    <message>
        <source>coolant shrinks to between half and all of its volume</source>
        <translation>das Kühlmittel kann nur auf die Hälfte bis das Ganze seines Volumens schrumpfen</translation>
    </message>
    <message>
        <source>a pump&apos;s flow must not be under zero</source>
        <translation>der Förderstrom einer Pumpe darf nicht unter null liegen</translation>
    </message>
    <message>
        <source>%1 Filled as planned, none closes the bore.</source>
        <translation>%1 Wie geplant gefüllt, verschließt keine Luft den Querschnitt.</translation>
    </message>
    <message>
        <source>Fill so every time, or lower the hump by at least {0}.</source>
        <translation>Jedes Mal so füllen oder den Buckel um mindestens {0} absenken.</translation>
    </message>
    <message>
        <source>Lower the hump by at least {0}. A bleed {1} along {a}, filled with the valves open, would let its air out; re-routing is the better cure.</source>
        <translation>Den Buckel um mindestens {0} absenken. Eine Entlüftung bei {1} entlang von {a} ließe, mit offenen Ventilen gefüllt, die Luft hinaus; neu verlegen ist die bessere Abhilfe.</translation>
    </message>
    <message>
        <source>A bleed {0} along {a}, filled with the valves open, would let it out; re-routing is the better cure.</source>
        <translation>Eine Entlüftung bei {0} entlang von {a} ließe, mit offenen Ventilen gefüllt, die Luft hinaus; neu verlegen ist die bessere Abhilfe.</translation>
    </message>
    <message>
        <source>%1 right side up</source>
        <translation>%1 rechte Seite hoch</translation>
    </message>
    <message>
        <source>%1 left side up</source>
        <translation>%1 linke Seite hoch</translation>
    </message>
    <message>
        <source>%1 and %2 right side up</source>
        <translation>%1 und %2 rechte Seite hoch</translation>
    </message>
    <message>
        <source>%1 and %2 left side up</source>
        <translation>%1 und %2 linke Seite hoch</translation>
    </message>
    <message>
        <source>Parked from %1</source>
        <translation>Geparkt ab %1</translation>
    </message>
    <message>
        <source>Parked %1</source>
        <translation>Geparkt mit %1</translation>
    </message>
    <message>
        <source>%1 on (figures at %2)</source>
        <translation>%1 (Werte bei %2)</translation>
    </message>
    <message>
        <source>over {0}</source>
        <translation>über {0}</translation>
    </message>
    <message>
        <source>%1 nose-down to %2</source>
        <translation>%1 Front tief bis %2</translation>
    </message>
    <message>
        <source>over {1}</source>
        <translation>über {1}</translation>
    </message>
    <message>
        <source>%1 nose-up.</source>
        <translation>%1 Front hoch.</translation>
    </message>
    <message>
        <source>{a} may sag more than {0}.</source>
        <translation>{a} darf mehr als {0} durchhängen.</translation>
    </message>
    <message>
        <source>{a} may sag {0} before it holds air or coolant.</source>
        <translation>{a} darf {0} durchhängen, bevor Luft oder Kühlmittel darin stehen bleibt.</translation>
    </message>
    <message>
        <source>%1 (typical)</source>
        <translation>%1 (typisch)</translation>
    </message>
    <message>
        <source>%1 (assumed)</source>
        <translation>%1 (angenommen)</translation>
    </message>
    <message>
        <source>flow %1</source>
        <translation>Durchfluss %1</translation>
    </message>
    <message>
        <source>outlet %1 at most while it warms up</source>
        <translation>Auslass höchstens %1 beim Erwärmen</translation>
    </message>
    <message>
        <source>%1 after %2</source>
        <translation>%1 nach %2</translation>
    </message>
    <message>
        <source>{a}: not computed: {b}</source>
        <translation>{a}: nicht berechnet: {b}</translation>
    </message>
    <message>
        <source>{a}: {0}, {1} in, {2} out, {3} drives</source>
        <translation>{a}: {0}, ein {1}, aus {2}, Antrieb {3}</translation>
    </message>
    <message>
        <source>{a}: {0} backward, {1} in, {2} out, {3} drives</source>
        <translation>{a}: {0} rückwärts, ein {1}, aus {2}, Antrieb {3}</translation>
    </message>
    <message>
        <source>%1: no flow: %2</source>
        <translation>%1: kein Durchfluss: %2</translation>
    </message>
    <message>
        <source>Warm-up: not computed: {a}</source>
        <translation>Aufheizen: nicht berechnet: {a}</translation>
    </message>
    <message>
        <source>Warm-up: not computed: {0} is under the coolant&apos;s freezing point</source>
        <translation>Aufheizen: nicht berechnet: {0} liegt unter dem Gefrierpunkt des Kühlmittels</translation>
    </message>
    <message>
        <source>Warm-up: not computed: its inputs do not hold together</source>
        <translation>Aufheizen: nicht berechnet: die Eingaben passen nicht zusammen</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>Aufheizen</translation>
    </message>
    <message>
        <source>%1 not reached</source>
        <translation>%1 nicht erreicht</translation>
    </message>
    <message>
        <source>{a}: never on</source>
        <translation>{a}: nie eingeschaltet</translation>
    </message>
    <message>
        <source>{a}: coolant leaves at %1 at most</source>
        <translation>{a}: Kühlmittel tritt mit höchstens %1 aus</translation>
    </message>
    <message>
        <source>boils</source>
        <translation>siedet</translation>
    </message>
    <message>
        <source>%1 under boiling</source>
        <translation>%1 unter dem Siedepunkt</translation>
    </message>
    <message>
        <source>{a}, where 9 in 10 lie over what is assumed</source>
        <translation>{a}, in 9 von 10 Fällen über alle Annahmen</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>coolant leaves at %1</source>
        <translation>Kühlmittel tritt aus mit %1</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>ein: %1</translation>
    </message>
    <message>
        <source>%1 times in the worst hour</source>
        <translation>%1-mal in der ungünstigsten Stunde</translation>
    </message>
    <message>
        <source>target after %1</source>
        <translation>Ziel nach %1</translation>
    </message>
    <message>
        <source>{a} is air-locked: {0} of air stays in it and takes {1} of head; the loop can raise {2}.</source>
        <translation>{a} ist durch Luft gesperrt: {0} Luft bleiben darin und kosten {1} Druckhöhe; der Kreislauf kann {2} aufbringen.</translation>
    </message>
    <message>
        <source>{a} is air-locked: {0} of air stays in it, takes {1} of head and turns the flow round.</source>
        <translation>{a} ist durch Luft gesperrt: {0} Luft bleiben darin, kosten {1} Druckhöhe und kehren den Durchfluss um.</translation>
    </message>
    <message>
        <source>Air in {a} takes {0} of head and weakens the flow by {1}.</source>
        <translation>Luft in {a} kostet {0} Druckhöhe und schwächt den Durchfluss um {1}.</translation>
    </message>
    <message>
        <source>Air in {a} leaves {0} of the bore open and weakens the flow by {1}.</source>
        <translation>Luft in {a} lässt {0} des Querschnitts frei und schwächt den Durchfluss um {1}.</translation>
    </message>
    <message>
        <source>the top of the element of %1</source>
        <translation>die Oberkante des Heizelements von %1</translation>
    </message>
    <message>
        <source>the top of the element of %1 is not entered</source>
        <translation>die Oberkante des Heizelements von %1 ist nicht eingegeben</translation>
    </message>
    <message>
        <source>{a} keeps {0} of air in its chamber after filling.</source>
        <translation>{a} behält nach dem Füllen {0} Luft in der Kammer.</translation>
    </message>
    <message>
        <source>{a} keeps {0} of air in its chamber after filling, and its element is not covered.</source>
        <translation>{a} behält nach dem Füllen {0} Luft in der Kammer, und das Heizelement ist nicht bedeckt.</translation>
    </message>
    <message>
        <source>Running the engine leaves the air in {a}: {0} in the hose, and {1} to {2} clear it.</source>
        <translation>Der Motorlauf lässt die Luft in {a}: {0} im Schlauch, zum Austreiben braucht es {1} bis {2}.</translation>
    </message>
    <message>
        <source>Running the engine may clear the air in {a}: {0} in the hose, and {1} to {2} clear it.</source>
        <translation>Der Motorlauf treibt die Luft in {a} vielleicht aus: {0} im Schlauch, nötig sind {1} bis {2}.</translation>
    </message>
    <message>
        <source>Running the engine clears the air in {a} ({0} in the hose, {1} to {2} clear it): look again after the first night.</source>
        <translation>Der Motorlauf treibt die Luft in {a} aus ({0} im Schlauch, nötig sind {1} bis {2}): nach der ersten Nacht nochmals nachsehen.</translation>
    </message>
    <message>
        <source>the coldest ambient temperature is not entered</source>
        <translation>die tiefste Umgebungstemperatur ist nicht eingegeben</translation>
    </message>
    <message>
        <source>the coldest ambient temperature</source>
        <translation>die tiefste Umgebungstemperatur</translation>
    </message>
    <message>
        <source>At {1} the coolant shrinks to {0} under its cold minimum.</source>
        <translation>Bei {1} schrumpft das Kühlmittel auf {0} unter den Kaltmindeststand.</translation>
    </message>
    <message>
        <source>{a} leaves its hose end at an angle of {0}: it would kink there.</source>
        <translation>{a} verlässt die Schlauchtülle im Winkel von {0}: dort würde der Schlauch knicken.</translation>
    </message>
    <message>
        <source>Lead the hose straight out of its end before it bends, or turn the elbow.</source>
        <translation>Den Schlauch gerade aus der Tülle führen, bevor er sich biegt, oder den Winkel drehen.</translation>
    </message>
    <message>
        <source>{a} bends to a radius of {0} at its centre; it needs {1}.</source>
        <translation>{a} ist auf einen Mittenradius von {0} gebogen; nötig sind {1}.</translation>
    </message>
    <message>
        <source>Open the bend to {0} or more, or use a moulded elbow.</source>
        <translation>Den Bogen auf {0} oder mehr öffnen oder einen Formbogen verwenden.</translation>
    </message>
    <message>
        <source>the bore of %1 is not entered</source>
        <translation>der Innendurchmesser von %1 ist nicht eingegeben</translation>
    </message>
    <message>
        <source>{a} has no room for a bend of radius {0}: only {1} fits between its neighbours.</source>
        <translation>{a} hat keinen Platz für einen Bogen mit Radius {0}: zwischen die Nachbarn passt nur {1}.</translation>
    </message>
    <message>
        <source>{a} turns straight back on itself.</source>
        <translation>{a} kehrt geradewegs auf sich selbst zurück.</translation>
    </message>
    <message>
        <source>the least hose bore in the manual of %1 is not entered</source>
        <translation>der kleinste Schlauch-Innendurchmesser laut Handbuch von %1 ist nicht eingegeben</translation>
    </message>
    <message>
        <source>the least hose bore in the manual of %1</source>
        <translation>der kleinste Schlauch-Innendurchmesser laut Handbuch von %1</translation>
    </message>
    <message>
        <source>{a} has a bore of {0}; the heater&apos;s manual asks for {1} or more.</source>
        <translation>{a} hat einen Innendurchmesser von {0}; das Handbuch des Heizgeräts verlangt {1} oder mehr.</translation>
    </message>
    <message>
        <source>Use hose of {0} bore or more.</source>
        <translation>Schlauch mit {0} Innendurchmesser oder mehr verwenden.</translation>
    </message>
    <message>
        <source>the port</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <source>the heater&apos;s nozzle</source>
        <translation>Stutzen des Heizgeräts</translation>
    </message>
    <message>
        <source>the hose end</source>
        <translation>Schlauchtülle</translation>
    </message>
    <message>
        <source>the isolation valve</source>
        <translation>Absperrventil</translation>
    </message>
    <message>
        <source>the bleed</source>
        <translation>Entlüftung</translation>
    </message>
    <message>
        <source>the drain</source>
        <translation>Ablass</translation>
    </message>
    <message>
        <source>the check valve</source>
        <translation>Rückschlagventil</translation>
    </message>
    <message>
        <source>the reducer</source>
        <translation>Reduzierung</translation>
    </message>
    <message>
        <source>a part</source>
        <translation>Bauteil</translation>
    </message>
    <message>
        <source>%1 is not entered</source>
        <translation>%1 ist nicht eingegeben</translation>
    </message>
    <message>
        <source>the bore of %1</source>
        <translation>der Innendurchmesser von %1</translation>
    </message>
    <message>
        <source>the bore of the inlet of %1</source>
        <translation>der Innendurchmesser des Einlasses von %1</translation>
    </message>
    <message>
        <source>the bore of the outlet of %1</source>
        <translation>der Innendurchmesser des Auslasses von %1</translation>
    </message>
    <message>
        <source>{a} narrows from {0} to {1} at {b}.</source>
        <translation>{a} verengt sich von {0} auf {1} (Stelle: {b}).</translation>
    </message>
    <message>
        <source>Use a part with a bore of {0} or more.</source>
        <translation>Ein Teil mit {0} Innendurchmesser oder mehr verwenden.</translation>
    </message>
    <message>
        <source>{a} reaches {0} under the ground at lowest ride height.</source>
        <translation>{a} reicht bei tiefster Fahrhöhe {0} unter den Boden.</translation>
    </message>
    <message>
        <source>{a} is only {0} over the ground at lowest ride height.</source>
        <translation>{a} liegt bei tiefster Fahrhöhe nur {0} über dem Boden.</translation>
    </message>
    <message>
        <source>Raise it by at least {0}.</source>
        <translation>Um mindestens {0} anheben.</translation>
    </message>
    <message>
        <source>{a} is only {0} from {b}.</source>
        <translation>{a} ist nur {0} entfernt von {b}.</translation>
    </message>
    <message>
        <source>{a} touches {b}.</source>
        <translation>{a} berührt {b}.</translation>
    </message>
    <message>
        <source>{a} crosses {b} in the side view; how deep that lies is not entered.</source>
        <translation>{a} kreuzt {b} in der Seitenansicht; in welcher Tiefe das liegt, ist nicht eingegeben.</translation>
    </message>
    <message>
        <source>{a} is only {0} from {b} in the side view; how deep that lies is not entered.</source>
        <translation>{a} ist in der Seitenansicht nur {0} entfernt von {b}; in welcher Tiefe das liegt, ist nicht eingegeben.</translation>
    </message>
    <message>
        <source>Move it at least {0} away.</source>
        <translation>Mindestens {0} wegrücken.</translation>
    </message>
    <message>
        <source>Enter how deep {a} lies, or move it at least {0} away.</source>
        <translation>Eingeben, in welcher Tiefe {a} liegt, oder mindestens {0} wegrücken.</translation>
    </message>
    <message>
        <source>the ground at lowest ride height is not entered</source>
        <translation>der Boden bei tiefster Fahrhöhe ist nicht eingegeben</translation>
    </message>
    <message>
        <source>{a} has a heater at both ends: this end belongs on an engine port.</source>
        <translation>{a} hat an beiden Enden ein Heizgerät: dieses Ende gehört an einen Motoranschluss.</translation>
    </message>
    <message>
        <source>{a} has an engine port at both ends: this end belongs on the heater.</source>
        <translation>{a} hat an beiden Enden einen Motoranschluss: dieses Ende gehört an das Heizgerät.</translation>
    </message>
    <message>
        <source>{a} ends on the heater&apos;s outlet: it belongs on the inlet.</source>
        <translation>{a} endet am Auslass des Heizgeräts: das Ende gehört an den Einlass.</translation>
    </message>
    <message>
        <source>{a} starts at the heater&apos;s inlet: it belongs on the outlet.</source>
        <translation>{a} beginnt am Einlass des Heizgeräts: der Anfang gehört an den Auslass.</translation>
    </message>
    <message>
        <source>{a} is connected to nothing.</source>
        <translation>{a} ist mit nichts verbunden.</translation>
    </message>
    <message>
        <source>{a} has no hoses yet.</source>
        <translation>{a} hat noch keine Schläuche.</translation>
    </message>
    <message>
        <source>{a} has no hose on its outlet.</source>
        <translation>{a} hat keinen Schlauch am Auslass.</translation>
    </message>
    <message>
        <source>{a} has no hose on its inlet.</source>
        <translation>{a} hat keinen Schlauch am Einlass.</translation>
    </message>
    <message>
        <source>{a} is {0} long, {1} more than square from end to end.</source>
        <translation>{a} ist {0} lang, {1} mehr als rechtwinklig von Ende zu Ende.</translation>
    </message>
    <message>
        <source>Take at least {0} out of it.</source>
        <translation>Mindestens {0} herausnehmen.</translation>
    </message>
    <message>
        <source>{a} is open at its start.</source>
        <translation>{a} ist am Anfang offen.</translation>
    </message>
    <message>
        <source>{a} is open at its end.</source>
        <translation>{a} ist am Ende offen.</translation>
    </message>
    <message>
        <source>the kind of antifreeze is not entered</source>
        <translation>die Art des Frostschutzmittels ist nicht eingegeben</translation>
    </message>
    <message>
        <source>the share of antifreeze in the coolant is not entered</source>
        <translation>der Frostschutzanteil im Kühlmittel ist nicht eingegeben</translation>
    </message>
    <message>
        <source>freezing points are known only up to 60 % of antifreeze</source>
        <translation>Gefrierpunkte sind nur bis 60 % Frostschutz bekannt</translation>
    </message>
    <message>
        <source>the share of antifreeze in the coolant</source>
        <translation>der Frostschutzanteil im Kühlmittel</translation>
    </message>
    <message>
        <source>The coolant holds {0} of antifreeze by volume; more than {1} carries heat worse and protects less.</source>
        <translation>Das Kühlmittel enthält {0} Frostschutz (Volumen); mehr als {1} leitet Wärme schlechter ab und schützt weniger.</translation>
    </message>
    <message>
        <source>Drain some and top up with water to {0} or less.</source>
        <translation>Etwas ablassen und mit Wasser auf {0} oder weniger auffüllen.</translation>
    </message>
    <message>
        <source>The coolant freezes at {0}, and it gets as cold as {1}.</source>
        <translation>Das Kühlmittel gefriert bei {0}, und es wird {1} kalt.</translation>
    </message>
    <message>
        <source>Mix the coolant to freeze at {0} or below.</source>
        <translation>Das Kühlmittel so mischen, dass es erst bei {0} oder darunter gefriert.</translation>
    </message>
    <message>
        <source>The kind of antifreeze in the engine is not known.</source>
        <translation>Die Art des Frostschutzmittels im Motor ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Of the antifreeze only the colour is entered ({a}), which does not tell its kind.</source>
        <translation>Vom Frostschutzmittel ist nur die Farbe eingegeben ({a}), die nichts über die Art sagt.</translation>
    </message>
    <message>
        <source>Bleed at every fill, or lower the hump by at least {0}.</source>
        <translation>Bei jedem Füllen entlüften oder den Buckel um mindestens {0} absenken.</translation>
    </message>
    <message>
        <source>Lower the hump by at least {0}, or put a bleed at its crest.</source>
        <translation>Den Buckel um mindestens {0} absenken oder eine Entlüftung an den Scheitel setzen.</translation>
    </message>
    <message>
        <source>{a} dips {0} below its rim: {1} of coolant stays there and slows the flow.</source>
        <translation>{a} hat eine Senke, {0} unter dem Rand: {1} Kühlmittel stehen dort und bremsen den Durchfluss.</translation>
    </message>
    <message>
        <source>{a} dips {0} below its rim: {1} of coolant fills the bore there and no air can pass.</source>
        <translation>{a} hat eine Senke, {0} unter dem Rand: {1} Kühlmittel füllen dort den Querschnitt, und Luft kommt nicht vorbei.</translation>
    </message>
    <message>
        <source>Raise the dip by at least {0}, so that the hose rises all the way.</source>
        <translation>Die Senke um mindestens {0} anheben, damit der Schlauch durchgehend steigt.</translation>
    </message>
    <message>
        <source>it is not entered whether the coolant is plain water</source>
        <translation>ob das Kühlmittel reines Wasser ist, ist nicht eingegeben</translation>
    </message>
    <message>
        <source>{a} dips {0}: {1} of coolant stays in it when drained.</source>
        <translation>{a} hat eine Senke von {0}: {1} Kühlmittel bleiben beim Ablassen darin.</translation>
    </message>
    <message>
        <source>{a} dips {0}: {1} of plain water stays in it when drained and can freeze.</source>
        <translation>{a} hat eine Senke von {0}: {1} reines Wasser bleiben beim Ablassen darin und können gefrieren.</translation>
    </message>
    <message>
        <source>Raise the dip by at least {0}, or put a drain at its lowest point.</source>
        <translation>Die Senke um mindestens {0} anheben oder einen Ablass an den tiefsten Punkt setzen.</translation>
    </message>
    <message>
        <source>{a} climbs {0} on its way to the heater.</source>
        <translation>{a} steigt auf dem Weg zum Heizgerät um {0}.</translation>
    </message>
    <message>
        <source>{a} ends {0} above the supply port: cold coolant does not run up to the heater.</source>
        <translation>{a} endet {0} über dem Vorlaufanschluss: kaltes Kühlmittel läuft nicht zum Heizgerät hinauf.</translation>
    </message>
    <message>
        <source>Lower the heater by at least {0}, or take a lower supply port.</source>
        <translation>Das Heizgerät um mindestens {0} absenken oder einen tieferen Vorlaufanschluss nehmen.</translation>
    </message>
    <message>
        <source>the place of %1</source>
        <translation>der Platz von %1</translation>
    </message>
    <message>
        <source>the outline of the water jacket</source>
        <translation>der Umriss des Wassermantels</translation>
    </message>
    <message>
        <source>the coolant level at cold minimum</source>
        <translation>der Kaltmindeststand des Kühlmittels</translation>
    </message>
    <message>
        <source>the coolant level at cold full</source>
        <translation>der Kaltfüllstand des Kühlmittels</translation>
    </message>
    <message>
        <source>the place of the surge tank</source>
        <translation>der Platz des Ausgleichsbehälters</translation>
    </message>
    <message>
        <source>{a} stands upright, which its manual does not allow.</source>
        <translation>{a} steht aufrecht, was das Handbuch nicht erlaubt.</translation>
    </message>
    <message>
        <source>{a} lies level, which its manual does not allow.</source>
        <translation>{a} liegt waagrecht, was das Handbuch nicht erlaubt.</translation>
    </message>
    <message>
        <source>{a} is inclined, which its manual does not allow.</source>
        <translation>{a} liegt schräg, was das Handbuch nicht erlaubt.</translation>
    </message>
    <message>
        <source>{a} hangs upside down, which no heater allows.</source>
        <translation>{a} hängt kopfüber, was kein Heizgerät erlaubt.</translation>
    </message>
    <message>
        <source>{a} has its outlet {0} above {b}: warm coolant would have to sink.</source>
        <translation>{a} hat den Auslass {0} über {b}: warmes Kühlmittel müsste sinken.</translation>
    </message>
    <message>
        <source>{a} is {0} to the side of {b} and only {1} below it.</source>
        <translation>{a} liegt {0} seitlich von {b} und nur {1} darunter.</translation>
    </message>
    <message>
        <source>Move the heater at least {0} towards {a}.</source>
        <translation>Das Heizgerät mindestens {0} näher rücken an {a}.</translation>
    </message>
    <message>
        <source>the outline of the water jacket is not entered</source>
        <translation>der Umriss des Wassermantels ist nicht eingegeben</translation>
    </message>
    <message>
        <source>{a} has its top only {0} below the lowest point of the water jacket.</source>
        <translation>{a} hat die Oberkante nur {0} unter dem tiefsten Punkt des Wassermantels.</translation>
    </message>
    <message>
        <source>{a} has its top {0} above the lowest point of the water jacket.</source>
        <translation>{a} hat die Oberkante {0} über dem tiefsten Punkt des Wassermantels.</translation>
    </message>
    <message>
        <source>Lower the heater by at least {0}.</source>
        <translation>Das Heizgerät um mindestens {0} absenken.</translation>
    </message>
    <message>
        <source>the bore of the outlet of %1 is not entered</source>
        <translation>der Innendurchmesser des Auslasses von %1 ist nicht eingegeben</translation>
    </message>
    <message>
        <source>{a} has a chamber that reaches {0} above its outlet: {1} of air stays in it.</source>
        <translation>{a} hat eine Kammer, die {0} über den Auslass reicht: {1} Luft bleiben darin.</translation>
    </message>
    <message>
        <source>{a} has a chamber that reaches {0} above its outlet: {1} of air bares the element.</source>
        <translation>{a} hat eine Kammer, die {0} über den Auslass reicht: {1} Luft legen das Heizelement frei.</translation>
    </message>
    <message>
        <source>the positions that the manual of %1 allows</source>
        <translation>die laut Handbuch von %1 erlaubten Einbaulagen</translation>
    </message>
    <message>
        <source>the positions that the manual of %1 allows are not entered</source>
        <translation>die laut Handbuch von %1 erlaubten Einbaulagen sind nicht eingegeben</translation>
    </message>
    <message>
        <source>what %1 is mounted to</source>
        <translation>der Befestigungsort von %1</translation>
    </message>
    <message>
        <source>it is not entered what %1 is mounted to</source>
        <translation>der Befestigungsort von %1 ist nicht eingegeben</translation>
    </message>
    <message>
        <source>{a} is mounted to the engine.</source>
        <translation>{a} ist am Motor befestigt.</translation>
    </message>
    <message>
        <source>advice</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>{a} reaches {0} above the coolant&apos;s cold minimum level: it can run dry of coolant.</source>
        <translation>{a} reicht {0} über den Kaltmindeststand des Kühlmittels: dort kann Kühlmittel fehlen.</translation>
    </message>
    <message>
        <source>{a} reaches {0} above the coolant&apos;s cold full level: coolant never fills it.</source>
        <translation>{a} reicht {0} über den Kaltfüllstand des Kühlmittels: dorthin gelangt nie Kühlmittel.</translation>
    </message>
    <message>
        <source>Lower it by at least {0}, or keep the coolant level higher.</source>
        <translation>Um mindestens {0} absenken oder den Kühlmittelstand höher halten.</translation>
    </message>
    <message>
        <source>the coolant level at cold minimum is not entered</source>
        <translation>der Kaltmindeststand des Kühlmittels ist nicht eingegeben</translation>
    </message>
    <message>
        <source>the thermostat&apos;s side is not entered</source>
        <translation>die Thermostatseite ist nicht eingegeben</translation>
    </message>
    <message>
        <source>the thermostat&apos;s side</source>
        <translation>die Thermostatseite</translation>
    </message>
    <message>
        <source>{a} is in the lower radiator hose, and the thermostat on the engine&apos;s inlet side cuts it off from the block while the engine is cold.</source>
        <translation>{a} sitzt im unteren Kühlerschlauch, und der Thermostat auf der Eintrittsseite des Motors trennt diesen vom Block, solange der Motor kalt ist.</translation>
    </message>
    <message>
        <source>it is not entered whether the shut-off of %1 is open</source>
        <translation>ob die Absperrung von %1 offen ist, ist nicht eingegeben</translation>
    </message>
    <message>
        <source>{a} is in an open cabin heater line, a second way round for the coolant: results for one loop do not hold.</source>
        <translation>{a} sitzt in einer offenen Leitung der Fahrerhausheizung, einem zweiten Weg für das Kühlmittel: Ergebnisse für einen Kreislauf gelten nicht.</translation>
    </message>
    <message>
        <source>{a} has {0} hose ends on it.</source>
        <translation>{a} trägt {0} Schlauchtüllen.</translation>
    </message>
    <message>
        <source>{a} and {b} are on the same bank: the other bank stays cold.</source>
        <translation>{a} und {b} liegen auf derselben Zylinderbank: die andere bleibt kalt.</translation>
    </message>
    <message>
        <source>{a} is {0} above the lowest point of the water jacket, high for a supply.</source>
        <translation>{a} liegt {0} über dem tiefsten Punkt des Wassermantels, hoch für einen Vorlauf.</translation>
    </message>
    <message>
        <source>{a} is {0} below the highest point of the water jacket, low for a return.</source>
        <translation>{a} liegt {0} unter dem höchsten Punkt des Wassermantels, tief für einen Rücklauf.</translation>
    </message>
    <message>
        <source>Take a port at least {0} lower.</source>
        <translation>Einen mindestens {0} tieferen Anschluss nehmen.</translation>
    </message>
    <message>
        <source>Take a port at least {0} higher.</source>
        <translation>Einen mindestens {0} höheren Anschluss nehmen.</translation>
    </message>
    <message>
        <source>{a}, a supply port, is {0} back from the front of the water jacket, in its rear half.</source>
        <translation>{a}, ein Vorlaufanschluss, liegt {0} hinter der Vorderkante des Wassermantels, in der hinteren Hälfte.</translation>
    </message>
    <message>
        <source>{a}, a return port, is {0} back from the front of the water jacket, in its front half.</source>
        <translation>{a}, ein Rücklaufanschluss, liegt {0} hinter der Vorderkante des Wassermantels, in der vorderen Hälfte.</translation>
    </message>
    <message>
        <source>{a} and {b} are only {0} apart: most of the engine would stay cold.</source>
        <translation>{a} und {b} sind nur {0} voneinander entfernt: der größte Teil des Motors bliebe kalt.</translation>
    </message>
    <message>
        <source>Choose ports at least {0} apart.</source>
        <translation>Anschlüsse mit mindestens {0} Abstand wählen.</translation>
    </message>
    <message>
        <source>the engine&apos;s thermostat housing is not entered</source>
        <translation>das Thermostatgehäuse des Motors ist nicht eingegeben</translation>
    </message>
    <message>
        <source>the place of the thermostat housing</source>
        <translation>der Platz des Thermostatgehäuses</translation>
    </message>
    <message>
        <source>{a} is only {0} from the thermostat housing.</source>
        <translation>{a} ist nur {0} vom Thermostatgehäuse entfernt.</translation>
    </message>
    <message>
        <source>{a} is only {0} from {b}, whose warm coolant misleads the sensor.</source>
        <translation>{a} ist nur {0} entfernt von {b}; das warme Kühlmittel von dort täuscht den Fühler.</translation>
    </message>
    <message>
        <source>the port of the remote thermostat of %1 is not entered</source>
        <translation>der Anschluss des Fernthermostats von %1 ist nicht eingegeben</translation>
    </message>
    <message>
        <source>common practice, no published source</source>
        <translation>gängige Praxis, keine veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>own choice: air or coolant narrows the bore up to one bore of height and closes it from there</source>
        <translation>eigene Festlegung: Luft oder Kühlmittel verengt den Querschnitt bis zu einer Höhe von einem Innendurchmesser und verschließt ihn ab da</translation>
    </message>
    <message>
        <source>High point in the supply hose</source>
        <translation>Hochpunkt im Vorlaufschlauch</translation>
    </message>
    <message>
        <source>Air gathers at a high point and holds up the cold coolant on its way to the heater.</source>
        <translation>Am Hochpunkt sammelt sich Luft und hält das kalte Kühlmittel auf dem Weg zum Heizgerät auf.</translation>
    </message>
    <message>
        <source>Lower the hump, or put a bleed at its crest.</source>
        <translation>Den Buckel absenken oder eine Entlüftung an den Scheitel setzen.</translation>
    </message>
    <message>
        <source>High point in the return hose</source>
        <translation>Hochpunkt im Rücklaufschlauch</translation>
    </message>
    <message>
        <source>Air gathers at a high point and stops the warm coolant, which has only a few millimetres of head.</source>
        <translation>Am Hochpunkt sammelt sich Luft und hält das warme Kühlmittel auf, das nur wenige Millimeter Druckhöhe hat.</translation>
    </message>
    <message>
        <source>Dip in the return hose</source>
        <translation>Senke im Rücklaufschlauch</translation>
    </message>
    <message>
        <source>Cold coolant lies in a dip, and air from the heater cannot pass it.</source>
        <translation>Kaltes Kühlmittel liegt in der Senke, und Luft aus dem Heizgerät kommt nicht vorbei.</translation>
    </message>
    <message>
        <source>Raise the dip, so that the hose rises all the way.</source>
        <translation>Die Senke anheben, damit der Schlauch durchgehend steigt.</translation>
    </message>
    <message>
        <source>Dip in the supply hose</source>
        <translation>Senke im Vorlaufschlauch</translation>
    </message>
    <message>
        <source>own choice: what a catch pan takes without a second trip</source>
        <translation>eigene Festlegung: was eine Auffangwanne ohne zweiten Gang fasst</translation>
    </message>
    <message>
        <source>What lies in a dip does not drain; plain water freezes there.</source>
        <translation>Was in einer Senke liegt, läuft nicht ab; reines Wasser gefriert dort.</translation>
    </message>
    <message>
        <source>Raise the dip, or put a drain at its lowest point.</source>
        <translation>Die Senke anheben oder einen Ablass an den tiefsten Punkt setzen.</translation>
    </message>
    <message>
        <source>Supply hose climbs to the heater</source>
        <translation>Vorlaufschlauch steigt zum Heizgerät</translation>
    </message>
    <message>
        <source>Cold coolant runs down to the heater by its own weight and does not climb to it.</source>
        <translation>Kaltes Kühlmittel läuft durch sein Gewicht zum Heizgerät hinab und steigt nicht zu ihm auf.</translation>
    </message>
    <message>
        <source>Lower the heater, or take a lower supply port.</source>
        <translation>Das Heizgerät absenken oder einen tieferen Vorlaufanschluss nehmen.</translation>
    </message>
    <message>
        <source>Return hose too flat</source>
        <translation>Rücklaufschlauch zu flach</translation>
    </message>
    <message>
        <source>own choice: 1 in 50, near the drain practice of 1/4 in per ft (1 in 48)</source>
        <translation>eigene Festlegung: 1 zu 50, nahe der Abwasserpraxis von 1/4 in je ft (1 zu 48)</translation>
    </message>
    <message>
        <source>Air rises to the engine by itself only along a hose that rises all the way.</source>
        <translation>Luft steigt nur in einem durchgehend steigenden Schlauch von selbst zum Motor.</translation>
    </message>
    <message>
        <source>Give the hose more rise.</source>
        <translation>Dem Schlauch mehr Steigung geben.</translation>
    </message>
    <message>
        <source>Above the coolant level</source>
        <translation>Über dem Kühlmittelstand</translation>
    </message>
    <message>
        <source>What stands above the coolant level does not stay full, and the loop breaks there.</source>
        <translation>Was über dem Kühlmittelstand liegt, bleibt nicht gefüllt, und dort reißt der Kreislauf ab.</translation>
    </message>
    <message>
        <source>Lower it, or keep the coolant level higher.</source>
        <translation>Absenken oder den Kühlmittelstand höher halten.</translation>
    </message>
    <message>
        <source>Heater too high under the jacket</source>
        <translation>Heizgerät zu hoch unter dem Wassermantel</translation>
    </message>
    <message>
        <source>The cold column between engine and heater drives the flow; a short one drives little.</source>
        <translation>Die kalte Säule zwischen Motor und Heizgerät treibt den Durchfluss an; eine kurze treibt wenig an.</translation>
    </message>
    <message>
        <source>Lower the heater.</source>
        <translation>Das Heizgerät absenken.</translation>
    </message>
    <message>
        <source>Heater not under the return port</source>
        <translation>Heizgerät nicht unter dem Rücklaufanschluss</translation>
    </message>
    <message>
        <source>common practice (directly under it), no published source; ratios 1 and 2 are our own choice</source>
        <translation>gängige Praxis (direkt darunter), keine veröffentlichte Quelle; die Verhältnisse 1 und 2 sind unsere Festlegung</translation>
    </message>
    <message>
        <source>Warm coolant rises best straight up; a long flat return is slow and hard to purge.</source>
        <translation>Warmes Kühlmittel steigt am besten gerade nach oben; ein langer flacher Rücklauf ist träge und schwer zu entlüften.</translation>
    </message>
    <message>
        <source>Move the heater under the return port.</source>
        <translation>Das Heizgerät unter den Rücklaufanschluss rücken.</translation>
    </message>
    <message>
        <source>Air stays in the heater chamber</source>
        <translation>Luft bleibt in der Heizgerätekammer</translation>
    </message>
    <message>
        <source>hydrostatics: air cannot leave by an opening below it</source>
        <translation>Hydrostatik: Luft entweicht nicht durch eine Öffnung unter ihr</translation>
    </message>
    <message>
        <source>Air over the outlet never leaves; an element bared by it burns out.</source>
        <translation>Luft über dem Auslass entweicht nie; ein davon freigelegtes Heizelement brennt durch.</translation>
    </message>
    <message>
        <source>Turn the heater so that its outlet is at the top of the chamber.</source>
        <translation>Das Heizgerät so drehen, dass der Auslass oben an der Kammer liegt.</translation>
    </message>
    <message>
        <source>Heater in a position its manual forbids</source>
        <translation>Heizgerät in unzulässiger Einbaulage</translation>
    </message>
    <message>
        <source>the heater&apos;s manual</source>
        <translation>das Handbuch des Heizgeräts</translation>
    </message>
    <message>
        <source>The element is covered only in the positions that the manual allows.</source>
        <translation>Das Heizelement ist nur in den Einbaulagen bedeckt, die das Handbuch erlaubt.</translation>
    </message>
    <message>
        <source>Mount the heater in a position that its manual allows.</source>
        <translation>Das Heizgerät in einer Lage einbauen, die das Handbuch erlaubt.</translation>
    </message>
    <message>
        <source>Heater mounted to the engine</source>
        <translation>Heizgerät am Motor befestigt</translation>
    </message>
    <message>
        <source>The engine shakes heater, element and hose ends loose.</source>
        <translation>Der Motor rüttelt Heizgerät, Heizelement und Schlauchtüllen los.</translation>
    </message>
    <message>
        <source>Mount the heater to the frame.</source>
        <translation>Das Heizgerät am Rahmen befestigen.</translation>
    </message>
    <message>
        <source>Supply port not low enough</source>
        <translation>Vorlaufanschluss nicht tief genug</translation>
    </message>
    <message>
        <source>common practice (the lowest port), no published source; one fifth is our own choice</source>
        <translation>gängige Praxis (der tiefste Anschluss), keine veröffentlichte Quelle; ein Fünftel ist unsere Festlegung</translation>
    </message>
    <message>
        <source>Coolant below the supply port stays cold.</source>
        <translation>Kühlmittel unter dem Vorlaufanschluss bleibt kalt.</translation>
    </message>
    <message>
        <source>Take a lower port.</source>
        <translation>Einen tieferen Anschluss nehmen.</translation>
    </message>
    <message>
        <source>Return port not high enough</source>
        <translation>Rücklaufanschluss nicht hoch genug</translation>
    </message>
    <message>
        <source>common practice (a high port), no published source; one third is our own choice</source>
        <translation>gängige Praxis (ein hoher Anschluss), keine veröffentlichte Quelle; ein Drittel ist unsere Festlegung</translation>
    </message>
    <message>
        <source>Warm coolant stays above where it enters; a low return leaves little to drive the flow.</source>
        <translation>Warmes Kühlmittel bleibt oberhalb der Einmündung; ein tiefer Rücklauf lässt wenig Antrieb für den Durchfluss.</translation>
    </message>
    <message>
        <source>Take a higher port.</source>
        <translation>Einen höheren Anschluss nehmen.</translation>
    </message>
    <message>
        <source>Supply port in the rear half</source>
        <translation>Vorlaufanschluss in der hinteren Hälfte</translation>
    </message>
    <message>
        <source>Supply from the front and return to the rear warm the whole length of the engine.</source>
        <translation>Vorlauf von vorn und Rücklauf nach hinten wärmen den Motor auf ganzer Länge.</translation>
    </message>
    <message>
        <source>Take a port toward the front.</source>
        <translation>Einen Anschluss weiter vorn nehmen.</translation>
    </message>
    <message>
        <source>Return port in the front half</source>
        <translation>Rücklaufanschluss in der vorderen Hälfte</translation>
    </message>
    <message>
        <source>Take a port toward the rear.</source>
        <translation>Einen Anschluss weiter hinten nehmen.</translation>
    </message>
    <message>
        <source>Ports too close together</source>
        <translation>Anschlüsse zu nah beieinander</translation>
    </message>
    <message>
        <source>common practice (as far apart as practical), no published source; shares of the jacket&apos;s diagonal are our own choice</source>
        <translation>gängige Praxis (so weit auseinander wie möglich), keine veröffentlichte Quelle; Anteile der Diagonale des Wassermantels sind unsere Festlegung</translation>
    </message>
    <message>
        <source>Warm coolant takes the short way back and most of the engine stays cold.</source>
        <translation>Warmes Kühlmittel nimmt den kurzen Weg zurück, und der größte Teil des Motors bleibt kalt.</translation>
    </message>
    <message>
        <source>Choose ports farther apart.</source>
        <translation>Weiter auseinanderliegende Anschlüsse wählen.</translation>
    </message>
    <message>
        <source>Return port near the thermostat</source>
        <translation>Rücklaufanschluss nahe dem Thermostat</translation>
    </message>
    <message>
        <source>common practice (away from it), no published source; the distance is our own choice</source>
        <translation>gängige Praxis (weit weg davon), keine veröffentlichte Quelle; der Abstand ist unsere Festlegung</translation>
    </message>
    <message>
        <source>Warm coolant opens the thermostat and the heat goes to the radiator.</source>
        <translation>Warmes Kühlmittel öffnet den Thermostat, und die Wärme geht in den Kühler.</translation>
    </message>
    <message>
        <source>Choose a return port farther from the thermostat housing.</source>
        <translation>Einen Rücklaufanschluss weiter weg vom Thermostatgehäuse wählen.</translation>
    </message>
    <message>
        <source>Remote sensor near the return port</source>
        <translation>Fernfühler nahe dem Rücklaufanschluss</translation>
    </message>
    <message>
        <source>The sensor feels the heater&apos;s own warm coolant and turns it off while the engine is cold.</source>
        <translation>Der Fühler spürt das warme Kühlmittel des Heizgeräts und schaltet es ab, während der Motor kalt ist.</translation>
    </message>
    <message>
        <source>Move the sensor farther from the return port.</source>
        <translation>Den Fühler weiter vom Rücklaufanschluss weg versetzen.</translation>
    </message>
    <message>
        <source>Supply cut off by the thermostat</source>
        <translation>Vorlauf durch den Thermostat abgesperrt</translation>
    </message>
    <message>
        <source>how the cooling circuit is laid: the thermostat lies between the lower hose and the block</source>
        <translation>Aufbau des Kühlkreises: der Thermostat sitzt zwischen unterem Kühlerschlauch und Block</translation>
    </message>
    <message>
        <source>A closed thermostat on the inlet side lets no cold coolant from the block to the lower hose.</source>
        <translation>Ein geschlossener Thermostat auf der Eintrittsseite lässt kein kaltes Kühlmittel vom Block in den unteren Kühlerschlauch.</translation>
    </message>
    <message>
        <source>Take the supply from a port in the block.</source>
        <translation>Den Vorlauf von einem Anschluss am Block nehmen.</translation>
    </message>
    <message>
        <source>Second way round through the cabin heater</source>
        <translation>Zweiter Weg durch die Fahrerhausheizung</translation>
    </message>
    <message>
        <source>flow divides between ways in parallel</source>
        <translation>der Durchfluss teilt sich auf parallele Wege auf</translation>
    </message>
    <message>
        <source>Coolant that goes round by the cabin heater does not pass the engine; how much is not known.</source>
        <translation>Kühlmittel, das durch die Fahrerhausheizung läuft, umgeht den Motor; wie viel, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Use a port in the engine, or keep the cabin heater line shut and use another port.</source>
        <translation>Einen Anschluss am Motor verwenden, oder die Leitung der Fahrerhausheizung geschlossen halten und einen anderen Anschluss verwenden.</translation>
    </message>
    <message>
        <source>Port shared by hoses</source>
        <translation>Anschluss von mehreren Schläuchen genutzt</translation>
    </message>
    <message>
        <source>own choice: one port, one hose</source>
        <translation>eigene Festlegung: ein Anschluss, ein Schlauch</translation>
    </message>
    <message>
        <source>Hoses on one port take coolant from each other, and two heaters can push against each other.</source>
        <translation>Schläuche an einem Anschluss nehmen einander Kühlmittel weg, und zwei Heizgeräte können gegeneinander drücken.</translation>
    </message>
    <message>
        <source>Give every hose a port of its own.</source>
        <translation>Jedem Schlauch einen eigenen Anschluss geben.</translation>
    </message>
    <message>
        <source>Loop on one bank only</source>
        <translation>Kreislauf nur auf einer Zylinderbank</translation>
    </message>
    <message>
        <source>Coolant led from one bank to the other warms both.</source>
        <translation>Kühlmittel, das von einer Zylinderbank zur anderen geführt wird, wärmt beide.</translation>
    </message>
    <message>
        <source>Take the return port on the other bank.</source>
        <translation>Den Rücklaufanschluss auf der anderen Zylinderbank nehmen.</translation>
    </message>
    <message>
        <source>Hose smaller than the manual asks for</source>
        <translation>Schlauch kleiner als im Handbuch verlangt</translation>
    </message>
    <message>
        <source>A hose that is too small lets too little through, and the heater overheats.</source>
        <translation>Ein zu kleiner Schlauch lässt zu wenig durch, und das Heizgerät überhitzt.</translation>
    </message>
    <message>
        <source>Use a larger hose.</source>
        <translation>Einen größeren Schlauch verwenden.</translation>
    </message>
    <message>
        <source>Narrow place in a hose</source>
        <translation>Engstelle in einem Schlauch</translation>
    </message>
    <message>
        <source>own choice: hose ends usually leave 0.70 to 0.82 of the hose&apos;s bore</source>
        <translation>eigene Festlegung: Schlauchtüllen lassen meist 0,70 bis 0,82 des Schlauch-Innendurchmessers frei</translation>
    </message>
    <message>
        <source>A few millimetres of head push little through a narrow place.</source>
        <translation>Wenige Millimeter Druckhöhe drücken wenig durch eine Engstelle.</translation>
    </message>
    <message>
        <source>Use a part with a larger bore.</source>
        <translation>Ein Teil mit größerem Innendurchmesser verwenden.</translation>
    </message>
    <message>
        <source>Bend too tight</source>
        <translation>Bogen zu eng</translation>
    </message>
    <message>
        <source>common practice (6 bores to the inside of the bend where the hose gives none), no published source</source>
        <translation>gängige Praxis (6 Innendurchmesser zur Bogeninnenseite, wo der Schlauch nichts vorgibt), keine veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>A hose bent tighter than it allows flattens, kinks and cracks.</source>
        <translation>Ein enger als zulässig gebogener Schlauch wird platt, knickt und reißt.</translation>
    </message>
    <message>
        <source>Open the bend, or use a moulded elbow.</source>
        <translation>Den Bogen öffnen oder einen Formbogen verwenden.</translation>
    </message>
    <message>
        <source>Bend does not fit</source>
        <translation>Bogen passt nicht</translation>
    </message>
    <message>
        <source>geometry: an arc needs its length on both neighbours</source>
        <translation>Geometrie: ein Bogen braucht seine Länge auf beiden Nachbarstücken</translation>
    </message>
    <message>
        <source>The hose cannot be laid as drawn.</source>
        <translation>Der Schlauch lässt sich so nicht verlegen.</translation>
    </message>
    <message>
        <source>Move the points apart, or ask for a smaller radius.</source>
        <translation>Die Punkte auseinanderrücken oder einen kleineren Radius vorgeben.</translation>
    </message>
    <message>
        <source>Hose longer than it needs to be</source>
        <translation>Schlauch länger als nötig</translation>
    </message>
    <message>
        <source>common practice (short hoses), no published source; 250 mm is our own choice</source>
        <translation>gängige Praxis (kurze Schläuche), keine veröffentlichte Quelle; 250 mm sind unsere Festlegung</translation>
    </message>
    <message>
        <source>Every length of hose loses heat and slows the flow.</source>
        <translation>Jedes Stück Schlauch verliert Wärme und bremst den Durchfluss.</translation>
    </message>
    <message>
        <source>Lead the hose more directly.</source>
        <translation>Den Schlauch direkter führen.</translation>
    </message>
    <message>
        <source>Hose not held up</source>
        <translation>Schlauch nicht gehalten</translation>
    </message>
    <message>
        <source>own choice: 300 mm and 450 mm, for stretches within 30 degrees of level</source>
        <translation>eigene Festlegung: 300 mm und 450 mm, für Strecken bis 30 Grad zur Waagrechten</translation>
    </message>
    <message>
        <source>A warm hose sags between its clips, and a sag is a dip with a hump behind it.</source>
        <translation>Ein warmer Schlauch hängt zwischen seinen Halteschellen durch, und ein Durchhang ist eine Senke mit einem Buckel dahinter.</translation>
    </message>
    <message>
        <source>Put a clip in the middle of the span.</source>
        <translation>Eine Halteschelle in die Mitte der Spannweite setzen.</translation>
    </message>
    <message>
        <source>No slack between frame and engine</source>
        <translation>Kein Spiel zwischen Rahmen und Motor</translation>
    </message>
    <message>
        <source>common practice (hoses follow the engine), no published source; 3 % and 45 degrees are our own choice</source>
        <translation>gängige Praxis (Schläuche folgen dem Motor), keine veröffentlichte Quelle; 3 % und 45 Grad sind unsere Festlegung</translation>
    </message>
    <message>
        <source>The engine moves on its mounts and pulls a taut hose off its hose ends.</source>
        <translation>Der Motor bewegt sich in seinen Lagern und zieht einen straffen Schlauch von den Tüllen.</translation>
    </message>
    <message>
        <source>Lead the hose round a bend, or make it longer.</source>
        <translation>Den Schlauch um einen Bogen führen oder länger machen.</translation>
    </message>
    <message>
        <source>Too near the ground</source>
        <translation>Zu nah am Boden</translation>
    </message>
    <message>
        <source>own choice: 200 mm at lowest ride height</source>
        <translation>eigene Festlegung: 200 mm bei tiefster Fahrhöhe</translation>
    </message>
    <message>
        <source>What hangs low is torn off by kerbs, stones and snow.</source>
        <translation>Was tief hängt, wird von Bordsteinen, Steinen und Schnee abgerissen.</translation>
    </message>
    <message>
        <source>Raise it.</source>
        <translation>Anheben.</translation>
    </message>
    <message>
        <source>Too near something hot or moving</source>
        <translation>Zu nah an Heißem oder Bewegtem</translation>
    </message>
    <message>
        <source>own choice: 150 mm from exhaust and turbo, 75 mm behind a heat shield, 50 mm from all else</source>
        <translation>eigene Festlegung: 150 mm von Auspuff und Turbolader, 75 mm hinter einem Hitzeschild, 50 mm von allem anderen</translation>
    </message>
    <message>
        <source>Heat hardens a hose and what moves cuts it; either empties the cooling system.</source>
        <translation>Hitze härtet einen Schlauch, Bewegtes schneidet ihn durch; beides entleert das Kühlsystem.</translation>
    </message>
    <message>
        <source>Lead it farther away.</source>
        <translation>Weiter weg führen.</translation>
    </message>
    <message>
        <source>Open hose end</source>
        <translation>Offenes Schlauchende</translation>
    </message>
    <message>
        <source>a loop has no open end</source>
        <translation>ein Kreislauf hat kein offenes Ende</translation>
    </message>
    <message>
        <source>Coolant runs out of an open end.</source>
        <translation>Aus einem offenen Ende läuft Kühlmittel aus.</translation>
    </message>
    <message>
        <source>Connect the end to a port or to the heater.</source>
        <translation>Das Ende mit einem Anschluss oder dem Heizgerät verbinden.</translation>
    </message>
    <message>
        <source>Not connected to a loop</source>
        <translation>Nicht mit einem Kreislauf verbunden</translation>
    </message>
    <message>
        <source>a loop leads from a port through the heater to a port</source>
        <translation>ein Kreislauf führt von einem Anschluss durch das Heizgerät zu einem Anschluss</translation>
    </message>
    <message>
        <source>Nothing circulates unless supply hose, heater and return hose make one loop.</source>
        <translation>Nichts zirkuliert, solange Vorlaufschlauch, Heizgerät und Rücklaufschlauch keinen Kreislauf bilden.</translation>
    </message>
    <message>
        <source>Lead the supply hose from a port to the inlet and the return hose from the outlet to a port.</source>
        <translation>Den Vorlaufschlauch von einem Anschluss zum Einlass führen und den Rücklaufschlauch vom Auslass zu einem Anschluss.</translation>
    </message>
    <message>
        <source>Isolation valve missing</source>
        <translation>Absperrventil fehlt</translation>
    </message>
    <message>
        <source>common practice (valves at both ends of the loop), no published source; 300 mm is our own choice</source>
        <translation>gängige Praxis (Ventile an beiden Enden des Kreislaufs), keine veröffentlichte Quelle; 300 mm sind unsere Festlegung</translation>
    </message>
    <message>
        <source>Without valves at the engine the heater is serviced only with the cooling system drained.</source>
        <translation>Ohne Ventile am Motor lässt sich das Heizgerät nur bei entleertem Kühlsystem warten.</translation>
    </message>
    <message>
        <source>Put an isolation valve near the port.</source>
        <translation>Ein Absperrventil nahe an den Anschluss setzen.</translation>
    </message>
    <message>
        <source>Valve closed</source>
        <translation>Ventil geschlossen</translation>
    </message>
    <message>
        <source>A closed valve stops the flow and the element overheats; two make a sealed vessel under pressure.</source>
        <translation>Ein geschlossenes Ventil sperrt den Durchfluss, und das Heizelement überhitzt; zwei machen daraus einen verschlossenen Druckbehälter.</translation>
    </message>
    <message>
        <source>Open the valve whenever the heater is on.</source>
        <translation>Das Ventil öffnen, wann immer das Heizgerät eingeschaltet ist.</translation>
    </message>
    <message>
        <source>Check valve in the loop</source>
        <translation>Rückschlagventil im Kreislauf</translation>
    </message>
    <message>
        <source>common practice, no published source: check valves open on far more than a few millimetres of head</source>
        <translation>gängige Praxis, keine veröffentlichte Quelle: Rückschlagventile öffnen erst bei weit mehr als wenigen Millimetern Druckhöhe</translation>
    </message>
    <message>
        <source>A few millimetres of head do not lift a disc or swing a flap against its own weight.</source>
        <translation>Wenige Millimeter Druckhöhe heben keinen Teller und schwenken keine Klappe gegen ihr Eigengewicht.</translation>
    </message>
    <message>
        <source>Take the check valve out.</source>
        <translation>Das Rückschlagventil ausbauen.</translation>
    </message>
    <message>
        <source>Too much antifreeze</source>
        <translation>Zu viel Frostschutz</translation>
    </message>
    <message>
        <source>Past 60 % antifreeze carries heat worse, flows worse and freezes sooner.</source>
        <translation>Über 60 % leitet Frostschutz Wärme schlechter ab, fließt schlechter und gefriert früher.</translation>
    </message>
    <message>
        <source>Add water.</source>
        <translation>Wasser zugeben.</translation>
    </message>
    <message>
        <source>Coolant may freeze</source>
        <translation>Kühlmittel kann gefrieren</translation>
    </message>
    <message>
        <source>own choice: 5 K; freezing points after the ASHRAE Handbook Fundamentals (2001)</source>
        <translation>eigene Festlegung: 5 K; Gefrierpunkte nach ASHRAE Handbook Fundamentals (2001)</translation>
    </message>
    <message>
        <source>Slush does not circulate, and ice breaks hoses and block.</source>
        <translation>Eisbrei zirkuliert nicht, und Eis sprengt Schläuche und Block.</translation>
    </message>
    <message>
        <source>Add antifreeze.</source>
        <translation>Frostschutzmittel zugeben.</translation>
    </message>
    <message>
        <source>Kind of antifreeze not known</source>
        <translation>Art des Frostschutzmittels nicht bekannt</translation>
    </message>
    <message>
        <source>Kinds of antifreeze that do not go together gel, foam or lose their protection from corrosion.</source>
        <translation>Unverträgliche Arten von Frostschutzmittel gelieren, schäumen oder verlieren ihren Korrosionsschutz.</translation>
    </message>
    <message>
        <source>The engine maker&apos;s specification rules: fill that and nothing else, and do not mix kinds.</source>
        <translation>Die Vorgabe des Motorherstellers gilt: nur diese Sorte einfüllen und keine Arten mischen.</translation>
    </message>
    <message>
        <source>the power of %1</source>
        <translation>die Leistung von %1</translation>
    </message>
    <message>
        <source>{a} stalls: its warm coolant stands no higher than the cold, and nothing drives it round.</source>
        <translation>{a} steht still: das warme Kühlmittel steht nicht höher als das kalte, und nichts treibt es an.</translation>
    </message>
    <message>
        <source>{a} stalls: it can raise {0} of head, and air withstands {1}.</source>
        <translation>{a} steht still: {0} Druckhöhe lassen sich aufbringen, und Luft hält {1} dagegen.</translation>
    </message>
    <message>
        <source>{a} runs backward: warm coolant leaves by the supply hose.</source>
        <translation>{a} läuft rückwärts: warmes Kühlmittel verlässt das Gerät durch den Vorlaufschlauch.</translation>
    </message>
    <message>
        <source>{a} takes {0} of the loop&apos;s head.</source>
        <translation>{a} verbraucht {0} der Druckhöhe des Kreislaufs.</translation>
    </message>
    <message>
        <source>the balance of driving and resisting heads, computed from the drawing (core/physics/circulation.h)</source>
        <translation>das Gleichgewicht der treibenden und bremsenden Druckhöhen, aus der Zeichnung berechnet (core/physics/circulation.h)</translation>
    </message>
    <message>
        <source>Loop stalls</source>
        <translation>Kreislauf steht still</translation>
    </message>
    <message>
        <source>A heater whose coolant stands still overheats while the engine stays cold.</source>
        <translation>Ein Heizgerät mit stehendem Kühlmittel überhitzt, während der Motor kalt bleibt.</translation>
    </message>
    <message>
        <source>Raise the return port over the heater, lower the heater, and lead the return so that it rises.</source>
        <translation>Den Rücklaufanschluss über das Heizgerät legen, das Heizgerät absenken und den Rücklauf steigend führen.</translation>
    </message>
    <message>
        <source>Loop runs backward</source>
        <translation>Kreislauf läuft rückwärts</translation>
    </message>
    <message>
        <source>Warm coolant that leaves by the supply hose comes to the engine at its lowest port and drives little.</source>
        <translation>Warmes Kühlmittel, das durch den Vorlaufschlauch austritt, erreicht den Motor am tiefsten Anschluss und treibt wenig an.</translation>
    </message>
    <message>
        <source>Lead the return straight up from the outlet and the supply straight down to the inlet.</source>
        <translation>Den Rücklauf vom Auslass gerade nach oben und den Vorlauf gerade nach unten zum Einlass führen.</translation>
    </message>
    <message>
        <source>One part takes much of the loop&apos;s head</source>
        <translation>Ein Teil verbraucht viel von der Druckhöhe des Kreislaufs</translation>
    </message>
    <message>
        <source>own choice: 30 %; losses after Hooper (1981, 1988)</source>
        <translation>eigene Festlegung: 30 %; Verluste nach Hooper (1981, 1988)</translation>
    </message>
    <message>
        <source>The loop has a few millimetres of head; a part that takes a third of it rules the flow.</source>
        <translation>Der Kreislauf hat wenige Millimeter Druckhöhe; ein Teil, das ein Drittel davon verbraucht, bestimmt den Durchfluss.</translation>
    </message>
    <message>
        <source>Much power for heaters without a pump</source>
        <translation>Viel Leistung für Heizgeräte ohne Pumpe</translation>
    </message>
    <message>
        <source>own choice: 5 kW in all</source>
        <translation>eigene Festlegung: 5 kW insgesamt</translation>
    </message>
    <message>
        <source>So much heat is hard to carry away by a few millimetres of head.</source>
        <translation>So viel Wärme ist mit wenigen Millimetern Druckhöhe schwer abzuführen.</translation>
    </message>
    <message>
        <source>Consider a heater with a pump.</source>
        <translation>Ein Heizgerät mit Pumpe erwägen.</translation>
    </message>
    <message>
        <source>Air locks the loop</source>
        <translation>Luft sperrt den Kreislauf</translation>
    </message>
    <message>
        <source>filling computed from the drawing; the head of a pocket after May, Allen and Nelson (2018)</source>
        <translation>Füllen aus der Zeichnung berechnet; Druckhöhe eines Lufteinschlusses nach May, Allen und Nelson (2018)</translation>
    </message>
    <message>
        <source>Air that closes the bore takes more head than the loop can raise, and nothing moves.</source>
        <translation>Luft, die den Querschnitt verschließt, kostet mehr Druckhöhe, als der Kreislauf aufbringen kann, und nichts bewegt sich.</translation>
    </message>
    <message>
        <source>Re-route the hose so that it rises all the way; a bleed at the crest is the next best.</source>
        <translation>Den Schlauch durchgehend steigend neu verlegen; eine Entlüftung am Scheitel ist die zweitbeste Lösung.</translation>
    </message>
    <message>
        <source>Air weakens the flow</source>
        <translation>Luft schwächt den Durchfluss</translation>
    </message>
    <message>
        <source>own choice: 5 %; filling computed from the drawing</source>
        <translation>eigene Festlegung: 5 %; Füllen aus der Zeichnung berechnet</translation>
    </message>
    <message>
        <source>Air that stays in a hose takes part of the few millimetres of head.</source>
        <translation>Luft, die in einem Schlauch bleibt, kostet einen Teil der wenigen Millimeter Druckhöhe.</translation>
    </message>
    <message>
        <source>Re-route the hose so that it rises all the way, or put a bleed at the crest.</source>
        <translation>Den Schlauch durchgehend steigend neu verlegen oder eine Entlüftung an den Scheitel setzen.</translation>
    </message>
    <message>
        <source>Heater chamber not full</source>
        <translation>Heizgerätekammer nicht voll</translation>
    </message>
    <message>
        <source>filling computed from the drawing; the element has to be covered (common practice)</source>
        <translation>Füllen aus der Zeichnung berechnet; das Heizelement muss bedeckt sein (gängige Praxis)</translation>
    </message>
    <message>
        <source>An element that is not covered by coolant burns out.</source>
        <translation>Ein nicht von Kühlmittel bedecktes Heizelement brennt durch.</translation>
    </message>
    <message>
        <source>Fill higher, let the air out, or turn the heater so that its outlet is at the top.</source>
        <translation>Höher füllen, die Luft ablassen oder das Heizgerät so drehen, dass der Auslass oben liegt.</translation>
    </message>
    <message>
        <source>Air to be cleared</source>
        <translation>Luft auszutreiben</translation>
    </message>
    <message>
        <source>clearing velocities after Kalinske and Bliss (1943), Wisner (1975), Kent (1952), Escarameia (2007), which scatter</source>
        <translation>Austreibgeschwindigkeiten nach Kalinske und Bliss (1943), Wisner (1975), Kent (1952), Escarameia (2007), die streuen</translation>
    </message>
    <message>
        <source>What the engine&apos;s pump does not push out stays, and air comes out of cold coolant again when it warms.</source>
        <translation>Was die Motorpumpe nicht hinausdrückt, bleibt, und aus kaltem Kühlmittel tritt beim Erwärmen wieder Luft aus.</translation>
    </message>
    <message>
        <source>Bleed at the crest, or re-route; run the engine, top up, and look again after the first night.</source>
        <translation>Am Scheitel entlüften oder neu verlegen; Motor laufen lassen, nachfüllen und nach der ersten Nacht nochmals nachsehen.</translation>
    </message>
    <message>
        <source>Coolant falls under its minimum in the cold</source>
        <translation>Kühlmittel sinkt in der Kälte unter das Minimum</translation>
    </message>
    <message>
        <source>shrinkage of the coolant to the coldest ambient, from its density</source>
        <translation>Schrumpfen des Kühlmittels bis zur tiefsten Umgebungstemperatur, aus seiner Dichte</translation>
    </message>
    <message>
        <source>A level that falls lets air into what stood just under it.</source>
        <translation>Ein sinkender Stand lässt Luft in das, was knapp darunter lag.</translation>
    </message>
    <message>
        <source>Fill higher, or have a larger tank.</source>
        <translation>Höher füllen oder einen größeren Behälter vorsehen.</translation>
    </message>
    <message>
        <source>Coolant leaves the heater too hot</source>
        <translation>Kühlmittel verlässt das Heizgerät zu heiß</translation>
    </message>
    <message>
        <source>Coolant hotter than 180 degF at the outlet boils on the element and ages hoses and coolant.</source>
        <translation>Kühlmittel über 82 °C (180 °F) am Auslass siedet am Heizelement und lässt Schläuche und Kühlmittel altern.</translation>
    </message>
    <message>
        <source>Let more coolant flow: a larger bore, shorter hoses, a lower heater, ports farther apart.</source>
        <translation>Mehr Kühlmittel fließen lassen: größerer Innendurchmesser, kürzere Schläuche, tieferes Heizgerät, weiter auseinanderliegende Anschlüsse.</translation>
    </message>
    <message>
        <source>Close to boiling</source>
        <translation>Nahe am Sieden</translation>
    </message>
    <message>
        <source>own choice: 5 K; boiling point after Raoult&apos;s law</source>
        <translation>eigene Festlegung: 5 K; Siedepunkt nach dem Raoultschen Gesetz</translation>
    </message>
    <message>
        <source>Steam drives the coolant out of the chamber and bares the element.</source>
        <translation>Dampf treibt das Kühlmittel aus der Kammer und legt das Heizelement frei.</translation>
    </message>
    <message>
        <source>Let more coolant flow, and check the pressure cap.</source>
        <translation>Mehr Kühlmittel fließen lassen und den Druckdeckel prüfen.</translation>
    </message>
    <message>
        <source>Hose starves the flow</source>
        <translation>Schlauch drosselt den Durchfluss</translation>
    </message>
    <message>
        <source>computed: the smallest stock bore with which outlet and cycles keep to their limits</source>
        <translation>berechnet: der kleinste erhältliche Innendurchmesser, bei dem Auslass und Schaltspiele ihre Grenzwerte einhalten</translation>
    </message>
    <message>
        <source>A hose too small for this heater and these heights lets too little through.</source>
        <translation>Ein für dieses Heizgerät und diese Höhen zu kleiner Schlauch lässt zu wenig durch.</translation>
    </message>
    <message>
        <source>Use a larger hose and larger hose ends.</source>
        <translation>Größeren Schlauch und größere Schlauchtüllen verwenden.</translation>
    </message>
    <message>
        <source>Heater cycles too often</source>
        <translation>Heizgerät schaltet zu oft</translation>
    </message>
    <message>
        <source>A heater that turns itself off and on warms itself, not the engine, and wears out its thermostat.</source>
        <translation>Ein Heizgerät, das sich ständig aus- und einschaltet, wärmt sich selbst statt den Motor und verschleißt seinen Thermostat.</translation>
    </message>
    <message>
        <source>Choose ports farther apart, a larger bore, or a smaller heater.</source>
        <translation>Weiter auseinanderliegende Anschlüsse, einen größeren Innendurchmesser oder ein kleineres Heizgerät wählen.</translation>
    </message>
    <message>
        <source>Engine does not get warm enough</source>
        <translation>Motor wird nicht warm genug</translation>
    </message>
    <message>
        <source>computed from heat loss and power</source>
        <translation>aus Wärmeverlust und Leistung berechnet</translation>
    </message>
    <message>
        <source>In this cold and wind the engine loses what the heater gives before it is warm enough.</source>
        <translation>Bei dieser Kälte und diesem Wind verliert der Motor, was das Heizgerät gibt, bevor er warm genug ist.</translation>
    </message>
    <message>
        <source>Take a larger heater, keep the wind off the engine, or be content with less.</source>
        <translation>Ein größeres Heizgerät nehmen, den Motor vor Wind schützen oder sich mit weniger begnügen.</translation>
    </message>
    <message>
        <source>{a} rises only {0} over {1}.</source>
        <translation>{a} steigt nur {0} auf {1}.</translation>
    </message>
    <message>
        <source>{a} falls {0} over {1}, where it should rise.</source>
        <translation>{a} fällt {0} auf {1}, wo Steigung nötig wäre.</translation>
    </message>
    <message>
        <source>{a} is level over {0}, where it should rise.</source>
        <translation>{a} verläuft auf {0} waagrecht, wo Steigung nötig wäre.</translation>
    </message>
    <message>
        <source>Give it at least {0} more rise over {1}.</source>
        <translation>Mindestens {0} mehr Steigung auf {1} geben.</translation>
    </message>
    <message>
        <source>{a} spans {0}, near level, without a clip.</source>
        <translation>{a} überspannt {0} fast waagrecht ohne Halteschelle.</translation>
    </message>
    <message>
        <source>{a} has {1} long spans, near level, without a clip; the longest is {0}.</source>
        <translation>{a} hat {1} lange, fast waagrechte Spannweiten ohne Halteschelle; die längste misst {0}.</translation>
    </message>
    <message>
        <source>Put a clip at least every {0}.</source>
        <translation>Mindestens alle {0} eine Halteschelle setzen.</translation>
    </message>
    <message>
        <source>{a}, from frame to engine, is only {0} longer than straight and has no bend: the engine pulls at its ends.</source>
        <translation>{a}, vom Rahmen zum Motor, ist nur {0} länger als gerade und hat keinen Bogen: der Motor zieht an den Enden.</translation>
    </message>
    <message>
        <source>Make it at least {0} longer, or lead it round a bend of {1}.</source>
        <translation>Mindestens {0} länger machen oder um einen Bogen von {1} führen.</translation>
    </message>
    <message>
        <source>{a} has no isolation valve near {b}.</source>
        <translation>{a} hat kein Absperrventil in der Nähe von {b}.</translation>
    </message>
    <message>
        <source>{a} has its isolation valve {0} from {b}.</source>
        <translation>{a} hat das Absperrventil {0} entfernt von {b}.</translation>
    </message>
    <message>
        <source>Put an isolation valve within {0} of {a}.</source>
        <translation>Ein Absperrventil höchstens {0} entfernt setzen von {a}.</translation>
    </message>
    <message>
        <source>{a} has a closed isolation valve: nothing circulates.</source>
        <translation>{a} hat ein geschlossenes Absperrventil: nichts zirkuliert.</translation>
    </message>
    <message>
        <source>{a} has a closed isolation valve, and so has the heater&apos;s other hose: the heater is a sealed vessel and builds dangerous pressure when heated.</source>
        <translation>{a} hat ein geschlossenes Absperrventil, ebenso der andere Schlauch des Heizgeräts: das Heizgerät ist ein verschlossener Behälter und baut beim Heizen gefährlichen Druck auf.</translation>
    </message>
    <message>
        <source>Turn the heater off, let it cool, then open both valves.</source>
        <translation>Heizgerät ausschalten, abkühlen lassen, dann beide Ventile öffnen.</translation>
    </message>
    <message>
        <source>{a} is a cabin heater line with its shut-off closed: nothing circulates.</source>
        <translation>{a} ist eine Leitung der Fahrerhausheizung mit geschlossener Absperrung: nichts zirkuliert.</translation>
    </message>
    <message>
        <source>Open the shut-off whenever the heater is on, or use another port.</source>
        <translation>Die Absperrung öffnen, wann immer das Heizgerät eingeschaltet ist, oder einen anderen Anschluss verwenden.</translation>
    </message>
    <message>
        <source>{a} has a lift check valve, which does not open on a few mm of head.</source>
        <translation>{a} hat ein Hub-Rückschlagventil, das bei wenigen mm Druckhöhe nicht öffnet.</translation>
    </message>
    <message>
        <source>{a} has a swing check valve, which does not open on a few mm of head unless it is hung to fall open.</source>
        <translation>{a} hat ein Klappen-Rückschlagventil, das bei wenigen mm Druckhöhe nicht öffnet, außer es hängt so, dass es auffällt.</translation>
    </message>
    <message>
        <source>where the thermostat turns on</source>
        <translation>der Einschaltpunkt des Thermostats</translation>
    </message>
    <message>
        <source>where the thermostat turns off</source>
        <translation>der Ausschaltpunkt des Thermostats</translation>
    </message>
    <message>
        <source>the ambient temperature</source>
        <translation>die Umgebungstemperatur</translation>
    </message>
    <message>
        <source>the engine&apos;s mass</source>
        <translation>die Masse des Motors</translation>
    </message>
    <message>
        <source>the coolant is slush at the start, so no warm-up can be computed</source>
        <translation>das Kühlmittel ist zu Beginn Eisbrei, daher lässt sich kein Aufheizen berechnen</translation>
    </message>
    <message>
        <source>no warm-up could be computed: %1</source>
        <translation>kein Aufheizen ließ sich berechnen: %1</translation>
    </message>
    <message>
        <source>{a} comes within {0} of boiling.</source>
        <translation>{a} kommt bis auf {0} an den Siedepunkt.</translation>
    </message>
    <message>
        <source>{a} boils its coolant.</source>
        <translation>{a} bringt das Kühlmittel zum Sieden.</translation>
    </message>
    <message>
        <source>{a} starves on hoses of {0}: with {1} its outlet and its cycles would keep to their limits.</source>
        <translation>{a} bekommt durch Schläuche mit {0} zu wenig Kühlmittel: mit {1} würden Auslass und Schaltspiele ihre Grenzwerte einhalten.</translation>
    </message>
    <message>
        <source>Use hose of {0} bore or more, with hose ends and valves to match.</source>
        <translation>Schlauch mit {0} Innendurchmesser oder mehr verwenden, samt passenden Schlauchtüllen und Ventilen.</translation>
    </message>
    <message>
        <source>the wind</source>
        <translation>der Wind</translation>
    </message>
    <message>
        <source>The engine gets to {0} in {1} hours, and {2} is wanted.</source>
        <translation>Der Motor kommt in {1} Stunden auf {0}, verlangt sind {2}.</translation>
    </message>
    <message>
        <source>The engine may not get to {0} in {1} hours.</source>
        <translation>Der Motor kommt in {1} Stunden vielleicht nicht auf {0}.</translation>
    </message>
    <message>
        <source>Lock out the heater&apos;s power</source>
        <translation>Heizgerät freischalten und sichern</translation>
    </message>
    <message>
        <source>Mains voltage. Switch off, lock, tag, and try it: a heater that is off by its thermostat is not dead.</source>
        <translation>Netzspannung. Ausschalten, gegen Wiedereinschalten sichern, Schild anbringen, prüfen: ein vom Thermostat abgeschaltetes Heizgerät ist nicht spannungsfrei.</translation>
    </message>
    <message>
        <source>Disconnect and lock out the battery</source>
        <translation>Batterie abklemmen und sichern</translation>
    </message>
    <message>
        <source>Somebody may crank the engine while hands are at belts and fan.</source>
        <translation>Jemand könnte den Anlasser betätigen, während Hände an Riemen und Lüfter sind.</translation>
    </message>
    <message>
        <source>Inhibit the generator&apos;s automatic start</source>
        <translation>Automatikstart des Aggregats sperren</translation>
    </message>
    <message>
        <source>A generator set starts by itself when the mains fail. Where there is none, tick and go on.</source>
        <translation>Ein Stromaggregat startet bei Netzausfall von selbst. Wo keines ist, abhaken und weiter.</translation>
    </message>
    <message>
        <source>Chock the wheels</source>
        <translation>Räder mit Keilen sichern</translation>
    </message>
    <message>
        <source>Never work under a vehicle that is not supported.</source>
        <translation>Nie unter einem nicht abgestützten Fahrzeug arbeiten.</translation>
    </message>
    <message>
        <source>Block the air suspension</source>
        <translation>Luftfederung blockieren</translation>
    </message>
    <message>
        <source>Air suspension sinks without warning. Where there is none, tick and go on.</source>
        <translation>Luftfederung sinkt ohne Vorwarnung ab. Wo keine ist, abhaken und weiter.</translation>
    </message>
    <message>
        <source>Open the pressure cap, cold</source>
        <translation>Druckdeckel öffnen, kalt</translation>
    </message>
    <message>
        <source>Hot coolant under pressure scalds. Open it only when a bare hand can stay on the upper hose.</source>
        <translation>Heißes Kühlmittel unter Druck verbrüht. Erst öffnen, wenn die bloße Hand am oberen Schlauch liegen bleiben kann.</translation>
    </message>
    <message>
        <source>Drain and flush</source>
        <translation>Ablassen und spülen</translation>
    </message>
    <message>
        <source>Antifreeze is poisonous: catch all of it, keep it from animals, have it disposed of properly.</source>
        <translation>Frostschutzmittel ist giftig: alles auffangen, von Tieren fernhalten, fachgerecht entsorgen lassen.</translation>
    </message>
    <message>
        <source>Mount the heater on the frame</source>
        <translation>Heizgerät am Rahmen montieren</translation>
    </message>
    <message>
        <source>Support the heater while it hangs free. Look behind a rail before drilling it.</source>
        <translation>Das Heizgerät abstützen, solange es frei hängt. Vor dem Bohren hinter den Träger schauen.</translation>
    </message>
    <message>
        <source>Route and clamp the hoses</source>
        <translation>Schläuche verlegen und anklemmen</translation>
    </message>
    <message>
        <source>Keep clear of exhaust, belts, fan and shafts. Return rising all the way, supply without a high point.</source>
        <translation>Abstand zu Auspuff, Riemen, Lüfter und Wellen. Rücklauf durchgehend steigend, Vorlauf ohne Hochpunkt.</translation>
    </message>
    <message>
        <source>Open the isolation valves</source>
        <translation>Absperrventile öffnen</translation>
    </message>
    <message>
        <source>A heater between two closed valves is a sealed vessel and bursts.</source>
        <translation>Ein Heizgerät zwischen zwei geschlossenen Ventilen ist ein verschlossener Behälter und platzt.</translation>
    </message>
    <message>
        <source>Mix the coolant</source>
        <translation>Kühlmittel mischen</translation>
    </message>
    <message>
        <source>Wear gloves and goggles. Poisonous; mark the can.</source>
        <translation>Handschuhe und Schutzbrille tragen. Giftig; Kanister kennzeichnen.</translation>
    </message>
    <message>
        <source>Fill slowly</source>
        <translation>Langsam füllen</translation>
    </message>
    <message>
        <source>The element burns out without coolant: the heater stays locked out.</source>
        <translation>Ohne Kühlmittel brennt das Heizelement durch: das Heizgerät bleibt freigeschaltet.</translation>
    </message>
    <message>
        <source>Run the engine until its thermostat opens</source>
        <translation>Motor laufen lassen, bis der Thermostat öffnet</translation>
    </message>
    <message>
        <source>Outdoors or with extraction only. Hands, hair and sleeves away from belts and fan. The heater stays locked out.</source>
        <translation>Nur im Freien oder mit Absaugung. Hände, Haare und Ärmel weg von Riemen und Lüfter. Das Heizgerät bleibt freigeschaltet.</translation>
    </message>
    <message>
        <source>Stop the engine and let it cool</source>
        <translation>Motor abstellen und abkühlen lassen</translation>
    </message>
    <message>
        <source>Do not open the cap to hurry it.</source>
        <translation>Den Deckel nicht öffnen, um es zu beschleunigen.</translation>
    </message>
    <message>
        <source>Inspect every joint</source>
        <translation>Alle Verbindungen prüfen</translation>
    </message>
    <message>
        <source>Engine off, battery locked out again. Hot parts.</source>
        <translation>Motor aus, Batterie wieder abgeklemmt und gesichert. Heiße Teile.</translation>
    </message>
    <message>
        <source>Top up, cold</source>
        <translation>Nachfüllen, kalt</translation>
    </message>
    <message>
        <source>Open the cap only when a bare hand can stay on the upper hose.</source>
        <translation>Den Deckel erst öffnen, wenn die bloße Hand am oberen Schlauch liegen bleiben kann.</translation>
    </message>
    <message>
        <source>Have the power connected</source>
        <translation>Strom anschließen lassen</translation>
    </message>
    <message>
        <source>Grounded supply by the local electrical code and a licensed electrician. Still locked out.</source>
        <translation>Versorgung mit Schutzleiter nach örtlicher Elektrovorschrift durch eine Elektrofachkraft. Noch freigeschaltet.</translation>
    </message>
    <message>
        <source>Energise the heater</source>
        <translation>Heizgerät einschalten</translation>
    </message>
    <message>
        <source>Never without coolant in the chamber, never with a valve closed.</source>
        <translation>Nie ohne Kühlmittel in der Kammer, nie mit geschlossenem Ventil.</translation>
    </message>
    <message>
        <source>Verify: take readings</source>
        <translation>Prüfen: Messwerte aufnehmen</translation>
    </message>
    <message>
        <source>Hot coolant and pressure: read by instrument before you touch. Switch off before a valve is closed.</source>
        <translation>Heißes Kühlmittel und Druck: mit dem Messgerät ablesen, bevor Sie etwas berühren. Ausschalten, bevor ein Ventil geschlossen wird.</translation>
    </message>
    <message>
        <source>Recheck after the first night</source>
        <translation>Nach der ersten Nacht nachprüfen</translation>
    </message>
    <message>
        <source>Lock out the power before a clamp is tightened.</source>
        <translation>Freischalten und sichern, bevor eine Schlauchschelle nachgezogen wird.</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>The next who works here must know that the heater can turn on by itself: leave the label.</source>
        <translation>Wer als Nächster hier arbeitet, muss wissen, dass das Heizgerät von selbst einschalten kann: das Schild hängen lassen.</translation>
    </message>
    <message>
        <source>There is no step &quot;{a}&quot;.</source>
        <translation>Den Schritt „{a}“ gibt es nicht.</translation>
    </message>
    <message>
        <source>Not yet. First: {a}.</source>
        <translation>Noch nicht. Zuerst: {a}.</translation>
    </message>
    <message>
        <source>Done out of order, and recorded as such. Still open: {a}.</source>
        <translation>Außer der Reihe erledigt und so vermerkt. Noch offen: {a}.</translation>
    </message>
    <message>
        <source>It is not ticked.</source>
        <translation>Der Schritt ist nicht abgehakt.</translation>
    </message>
    <message>
        <source>These rest on it and may no longer hold: {a}.</source>
        <translation>Diese Schritte bauen darauf auf und gelten womöglich nicht mehr: {a}.</translation>
    </message>
    <message>
        <source>Wait until a bare hand can stay on the upper hose.</source>
        <translation>Warten, bis die bloße Hand am oberen Schlauch liegen bleiben kann.</translation>
    </message>
    <message>
        <source>{a}: {0}. Measure that no conductor carries it any more.</source>
        <translation>{a}: {0}. Nachmessen, dass kein Leiter mehr Spannung führt.</translation>
    </message>
    <message>
        <source>{a}: its voltage is not entered. Measure that no conductor is live.</source>
        <translation>{a}: die Spannung ist nicht eingegeben. Nachmessen, dass kein Leiter Spannung führt.</translation>
    </message>
    <message>
        <source>The engine holds about {0}: have vessels for it.</source>
        <translation>Der Motor fasst etwa {0}: Gefäße dafür bereitstellen.</translation>
    </message>
    <message>
        <source>How much the engine holds is not entered: have vessels enough.</source>
        <translation>Wie viel der Motor fasst, ist nicht eingegeben: genug Gefäße bereitstellen.</translation>
    </message>
    <message>
        <source>Flush until the water runs clear: sediment settles in the heater, the lowest place.</source>
        <translation>Spülen, bis das Wasser klar läuft: Schlamm setzt sich im Heizgerät ab, der tiefsten Stelle.</translation>
    </message>
    <message>
        <source>{a}: its top {0} under the lowest point of the water jacket.</source>
        <translation>{a}: Oberkante {0} unter dem tiefsten Punkt des Wassermantels.</translation>
    </message>
    <message>
        <source>{a} is drawn on the engine: it would shake with it. The frame is better.</source>
        <translation>{a} ist am Motor gezeichnet: das Gerät würde mitgerüttelt. Der Rahmen ist besser.</translation>
    </message>
    <message>
        <source>No isolation valve is drawn.</source>
        <translation>Es ist kein Absperrventil gezeichnet.</translation>
    </message>
    <message>
        <source>Open the shut-off of {a}.</source>
        <translation>Die Absperrung öffnen: {a}.</translation>
    </message>
    <message>
        <source>Kind and share of antifreeze are not entered.</source>
        <translation>Art und Anteil des Frostschutzmittels sind nicht eingegeben.</translation>
    </message>
    <message>
        <source>Plain water is drawn: it freezes.</source>
        <translation>Es ist reines Wasser gezeichnet: es gefriert.</translation>
    </message>
    <message>
        <source>{0} antifreeze by volume ({a} glycol), at most {1}; the rest deionised or distilled water.</source>
        <translation>{0} Frostschutz (Volumen, {a}glykol), höchstens {1}; der Rest entionisiertes oder destilliertes Wasser.</translation>
    </message>
    <message>
        <source>ethylene</source>
        <translation>Ethylen</translation>
    </message>
    <message>
        <source>propylene</source>
        <translation>Propylen</translation>
    </message>
    <message>
        <source>How much hoses and heater take is not computed.</source>
        <translation>Wie viel Schläuche und Heizgerät fassen, ist nicht berechnet.</translation>
    </message>
    <message>
        <source>To come to {0} of antifreeze ({a} glycol): drain {1}, add {2} of antifreeze and {3} of distilled water{b}.</source>
        <translation>Für {0} Frostschutz ({a}glykol): {1} ablassen, {2} Frostschutzmittel und {3} destilliertes Wasser zugeben{b}.</translation>
    </message>
    <message>
        <source>in %1 rounds</source>
        <translation>in %1 Durchgängen</translation>
    </message>
    <message>
        <source>Filling is not computed: fill to the cold full mark.</source>
        <translation>Das Füllen ist nicht berechnet: bis zur Kaltfüllmarke füllen.</translation>
    </message>
    <message>
        <source>{0} was let out of the engine before: {1} to pour in altogether.</source>
        <translation>{0} wurden vorher aus dem Motor abgelassen: insgesamt {1} einfüllen.</translation>
    </message>
    <message>
        <source>Bleed {a} at its crest, {0} up and {1} along it: {2} of air stay there.</source>
        <translation>{a} am Scheitel entlüften, Höhe {0}, bei {1} entlang des Schlauchs: dort bleiben {2} Luft.</translation>
    </message>
    <message>
        <source>Filled as drawn no air stays that closes a bore.</source>
        <translation>Wie gezeichnet gefüllt, bleibt keine Luft, die einen Querschnitt verschließt.</translation>
    </message>
    <message>
        <source>Until the upper hose turns hot, at about {0}; cabin heater open.</source>
        <translation>Bis der obere Schlauch heiß wird, bei etwa {0}; Fahrerhausheizung auf.</translation>
    </message>
    <message>
        <source>Every clamp, thread and valve, with light and mirror; the heater&apos;s fastening; hoses off what is hot or moves.</source>
        <translation>Jede Schlauchschelle, jedes Gewinde und Ventil, mit Licht und Spiegel; die Befestigung des Heizgeräts; Schläuche weg von Heißem und Bewegtem.</translation>
    </message>
    <message>
        <source>To the cold full mark.</source>
        <translation>Bis zur Kaltfüllmarke.</translation>
    </message>
    <message>
        <source>The cold full mark is not entered: to the tank&apos;s own mark.</source>
        <translation>Die Kaltfüllmarke ist nicht eingegeben: bis zur Marke am Behälter.</translation>
    </message>
    <message>
        <source>{a}: power or voltage is not entered, so its current is not known.</source>
        <translation>{a}: Leistung oder Spannung ist nicht eingegeben, daher ist der Strom nicht bekannt.</translation>
    </message>
    <message>
        <source>{a}: {0} at {1}, three phases, {2} in each conductor.</source>
        <translation>{a}: {0} bei {1}, drei Phasen, {2} in jedem Leiter.</translation>
    </message>
    <message>
        <source>{a}: {0} at {1}, {2}.</source>
        <translation>{a}: {0} bei {1}, {2}.</translation>
    </message>
    <message>
        <source>These are load figures for the electrician, not an instruction to wire.</source>
        <translation>Das sind Lastangaben für die Elektrofachkraft, keine Anleitung zum Anschließen.</translation>
    </message>
    <message>
        <source>Both hose ends of the heater full, level at the mark. Note the time.</source>
        <translation>Beide Schlauchtüllen des Heizgeräts voll, Stand an der Marke. Uhrzeit notieren.</translation>
    </message>
    <message>
        <source>{a}: the return hose is warm to the hand at the engine after about {0} min.</source>
        <translation>{a}: der Rücklaufschlauch ist am Motor nach etwa {0} min handwarm.</translation>
    </message>
    <message>
        <source>Readings after 15, 30, 60 and 120 min: ambient, inlet, outlet, return hose, current, level.</source>
        <translation>Messwerte nach 15, 30, 60 und 120 min: Umgebung, Einlass, Auslass, Rücklaufschlauch, Strom, Stand.</translation>
    </message>
    <message>
        <source>Limits: outlet at most {0} the whole time, at most {1} cycles an hour.</source>
        <translation>Grenzwerte: Auslass durchgehend höchstens {0}, höchstens {1} Schaltspiele je Stunde.</translation>
    </message>
    <message>
        <source>Engine at its target of {0} after about {1}.</source>
        <translation>Motor auf der Zieltemperatur von {0} nach etwa {1}.</translation>
    </message>
    <message>
        <source>The target of {0} is not reached, or not computed.</source>
        <translation>Die Zieltemperatur von {0} wird nicht erreicht oder ist nicht berechnet.</translation>
    </message>
    <message>
        <source>{a}: what to expect is not computed.</source>
        <translation>{a}: was zu erwarten ist, ist nicht berechnet.</translation>
    </message>
    <message>
        <source>Expected of {a}: outlet {0} at its hottest ({1-2}), cycles in the worst hour: {3} ({4-5}).</source>
        <translation>Zu erwarten bei {a}: Auslass am heißesten {0} ({1-2}), Schaltspiele in der ungünstigsten Stunde: {3} ({4-5}).</translation>
    </message>
    <message>
        <source>Expected of {a}: outlet {0} at its hottest, cycles in the worst hour: {1}.</source>
        <translation>Zu erwarten bei {a}: Auslass am heißesten {0}, Schaltspiele in der ungünstigsten Stunde: {1}.</translation>
    </message>
    <message>
        <source>Level, clamps, and the return hose warm at the engine.</source>
        <translation>Stand, Schlauchschellen, und der Rücklaufschlauch warm am Motor.</translation>
    </message>
    <message>
        <source>Best after a night near {0}.</source>
        <translation>Am besten nach einer Nacht um {0}.</translation>
    </message>
    <message>
        <source>it was stopped</source>
        <translation>es wurde abgebrochen</translation>
    </message>
    <message>
        <source>the loop of this heater is not closed</source>
        <translation>der Kreislauf dieses Heizgeräts ist nicht geschlossen</translation>
    </message>
    <message>
        <source>there is no heater yet</source>
        <translation>es gibt noch kein Heizgerät</translation>
    </message>
    <message>
        <source>there is no heater &quot;%1&quot;</source>
        <translation>es gibt kein Heizgerät „%1“</translation>
    </message>
    <message>
        <source>when the heater was energised is not entered</source>
        <translation>wann das Heizgerät eingeschaltet wurde, ist nicht eingegeben</translation>
    </message>
    <message>
        <source>there are no readings of this heater yet</source>
        <translation>von diesem Heizgerät gibt es noch keine Messwerte</translation>
    </message>
    <message>
        <source>no reading has a time after the heater was energised</source>
        <translation>kein Messwert hat eine Uhrzeit nach dem Einschalten des Heizgeräts</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Nothing wrong: it runs as drawn</source>
        <translation>Kein Fehler: läuft wie gezeichnet</translation>
    </message>
    <message>
        <source>Take another reading in half an hour and see whether it still fits.</source>
        <translation>In einer halben Stunde nochmals messen und sehen, ob es noch passt.</translation>
    </message>
    <message>
        <source>Nothing to do.</source>
        <translation>Nichts zu tun.</translation>
    </message>
    <message>
        <source>air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Air in {a}</source>
        <translation>Luft in {a}</translation>
    </message>
    <message>
        <source>Heater off and locked out, system cold: open a bleed or loosen the hose at its crest; air comes first, then coolant.</source>
        <translation>Heizgerät aus und freigeschaltet, System kalt: eine Entlüftung öffnen oder den Schlauch am Scheitel lösen; erst kommt Luft, dann Kühlmittel.</translation>
    </message>
    <message>
        <source>Let the air out at the crest, top up, and give the hose a rise all the way.</source>
        <translation>Die Luft am Scheitel ablassen, nachfüllen und den Schlauch durchgehend steigend verlegen.</translation>
    </message>
    <message>
        <source>The valve in {a} is closed</source>
        <translation>Das Ventil in {a} ist geschlossen</translation>
    </message>
    <message>
        <source>Heater off first. Look at the handle: across the hose means closed.</source>
        <translation>Zuerst Heizgerät aus. Griff ansehen: quer zum Schlauch heißt geschlossen.</translation>
    </message>
    <message>
        <source>Open it fully, then energise.</source>
        <translation>Ganz öffnen, dann einschalten.</translation>
    </message>
    <message>
        <source>The valve in {a} is half closed</source>
        <translation>Das Ventil in {a} ist halb geschlossen</translation>
    </message>
    <message>
        <source>Look at the handle: it has to lie along the hose.</source>
        <translation>Griff ansehen: er muss längs zum Schlauch liegen.</translation>
    </message>
    <message>
        <source>Open it fully.</source>
        <translation>Ganz öffnen.</translation>
    </message>
    <message>
        <source>{a} has collapsed inside</source>
        <translation>{a} ist innen zusammengefallen</translation>
    </message>
    <message>
        <source>Heater off, cold: press the hose between two fingers along its length; a soft or flat place gives way.</source>
        <translation>Heizgerät aus, kalt: den Schlauch der Länge nach zwischen zwei Fingern drücken; eine weiche oder flache Stelle gibt nach.</translation>
    </message>
    <message>
        <source>Replace the hose.</source>
        <translation>Schlauch ersetzen.</translation>
    </message>
    <message>
        <source>Hoses are a size smaller than drawn</source>
        <translation>Schläuche sind eine Größe kleiner als gezeichnet</translation>
    </message>
    <message>
        <source>Read the size printed on the hose, and measure the bore of a hose end.</source>
        <translation>Die auf dem Schlauch aufgedruckte Größe ablesen und den Innendurchmesser einer Schlauchtülle messen.</translation>
    </message>
    <message>
        <source>Fit the drawn size.</source>
        <translation>Die gezeichnete Größe einbauen.</translation>
    </message>
    <message>
        <source>The ports at the engine are swapped</source>
        <translation>Die Anschlüsse am Motor sind vertauscht</translation>
    </message>
    <message>
        <source>Follow the hose from the heater&apos;s inlet: it has to lead to the low port.</source>
        <translation>Den Schlauch vom Einlass des Heizgeräts verfolgen: er muss zum tiefen Anschluss führen.</translation>
    </message>
    <message>
        <source>Change the hoses over.</source>
        <translation>Schläuche tauschen.</translation>
    </message>
    <message>
        <source>The hoses at the heater are exchanged, the flow runs backward</source>
        <translation>Die Schläuche am Heizgerät sind vertauscht, der Durchfluss läuft rückwärts</translation>
    </message>
    <message>
        <source>Follow the hose from the heater&apos;s upper nozzle: it has to lead to the high port.</source>
        <translation>Den Schlauch vom oberen Stutzen des Heizgeräts verfolgen: er muss zum hohen Anschluss führen.</translation>
    </message>
    <message>
        <source>Change the hoses over at the heater.</source>
        <translation>Schläuche am Heizgerät tauschen.</translation>
    </message>
    <message>
        <source>Coolant is under the return port</source>
        <translation>Kühlmittel steht unter dem Rücklaufanschluss</translation>
    </message>
    <message>
        <source>Cold: look at the level in the surge tank; under the mark means low.</source>
        <translation>Kalt: den Stand im Ausgleichsbehälter ansehen; unter der Marke heißt zu niedrig.</translation>
    </message>
    <message>
        <source>Power off. Find the leak, fill, bleed, top up.</source>
        <translation>Strom aus. Leck suchen, füllen, entlüften, nachfüllen.</translation>
    </message>
    <message>
        <source>The supply has half the heater&apos;s voltage</source>
        <translation>Die Versorgung hat die halbe Spannung des Heizgeräts</translation>
    </message>
    <message>
        <source>An electrician compares the voltage at the heater with its rating plate.</source>
        <translation>Eine Elektrofachkraft vergleicht die Spannung am Heizgerät mit dem Typenschild.</translation>
    </message>
    <message>
        <source>Have the heater supplied with its rated voltage.</source>
        <translation>Das Heizgerät mit seiner Nennspannung versorgen lassen.</translation>
    </message>
    <message>
        <source>The supply is a phase voltage: 0.87 of what is drawn</source>
        <translation>Die Versorgung ist eine Strangspannung: das 0,58-Fache</translation>
    </message>
    <message>
        <source>Have it supplied with its rated voltage, or take a heater made for this one.</source>
        <translation>Mit der Nennspannung versorgen lassen oder ein Heizgerät für diese Spannung nehmen.</translation>
    </message>
    <message>
        <source>One phase is missing</source>
        <translation>Eine Phase fehlt</translation>
    </message>
    <message>
        <source>An electrician measures the current in each of the three conductors.</source>
        <translation>Eine Elektrofachkraft misst den Strom in jedem der drei Leiter.</translation>
    </message>
    <message>
        <source>Have fuse, contactor and terminals looked at.</source>
        <translation>Sicherung, Schütz und Klemmen prüfen lassen.</translation>
    </message>
    <message>
        <source>The element is dead</source>
        <translation>Das Heizelement ist defekt</translation>
    </message>
    <message>
        <source>Locked out: measure the resistance across the element; open means dead.</source>
        <translation>Freigeschaltet: den Widerstand des Heizelements messen; unterbrochen heißt defekt.</translation>
    </message>
    <message>
        <source>Replace the element.</source>
        <translation>Heizelement ersetzen.</translation>
    </message>
    <message>
        <source>The thermostat is stuck on</source>
        <translation>Der Thermostat hängt eingeschaltet fest</translation>
    </message>
    <message>
        <source>Watch whether it ever turns off above its point.</source>
        <translation>Beobachten, ob er über seinem Schaltpunkt je abschaltet.</translation>
    </message>
    <message>
        <source>Replace the thermostat.</source>
        <translation>Thermostat ersetzen.</translation>
    </message>
    <message>
        <source>The thermostat is stuck off</source>
        <translation>Der Thermostat hängt ausgeschaltet fest</translation>
    </message>
    <message>
        <source>Locked out and cold: measure across the thermostat; open below its turn-on point means stuck.</source>
        <translation>Freigeschaltet und kalt: über dem Thermostat messen; unter dem Einschaltpunkt offen heißt, er hängt.</translation>
    </message>
    <message>
        <source>The element is scaled</source>
        <translation>Das Heizelement ist verkalkt</translation>
    </message>
    <message>
        <source>Drain and take the element out: a crust is scale. The other readings hardly show it.</source>
        <translation>Ablassen und das Heizelement herausnehmen: eine Kruste ist Kalk. Die anderen Messwerte zeigen es kaum.</translation>
    </message>
    <message>
        <source>Replace the element; flush; deionised or distilled water only.</source>
        <translation>Heizelement ersetzen; spülen; nur entionisiertes oder destilliertes Wasser.</translation>
    </message>
    <message>
        <source>The over-temperature cut-out has tripped</source>
        <translation>Der Temperaturbegrenzer hat ausgelöst</translation>
    </message>
    <message>
        <source>Locked out: measure across the cut-out; open means tripped. Find out why before it is reset.</source>
        <translation>Freigeschaltet: über dem Begrenzer messen; offen heißt ausgelöst. Die Ursache finden, bevor er zurückgesetzt wird.</translation>
    </message>
    <message>
        <source>Mend what made it hot, then reset it.</source>
        <translation>Beheben, was ihn heiß machte, dann zurücksetzen.</translation>
    </message>
    <message>
        <source>The breaker or the ground-fault device has tripped</source>
        <translation>Leitungsschutz- oder FI-Schutzschalter hat ausgelöst</translation>
    </message>
    <message>
        <source>Look at the breaker and the ground-fault device. An electrician measures insulation before it is reset.</source>
        <translation>Leitungsschutz- und FI-Schutzschalter ansehen. Eine Elektrofachkraft misst die Isolation, bevor zurückgesetzt wird.</translation>
    </message>
    <message>
        <source>Have the fault to ground found first.</source>
        <translation>Zuerst den Erdschluss suchen lassen.</translation>
    </message>
    <message>
        <source>Scale or sediment blocks {a}</source>
        <translation>Kalk oder Schlamm verstopft {a}</translation>
    </message>
    <message>
        <source>Cold and drained: probe the opening through the fitting.</source>
        <translation>Kalt und entleert: die Öffnung durch das Anschlussstück sondieren.</translation>
    </message>
    <message>
        <source>Clean the opening, flush the engine.</source>
        <translation>Öffnung reinigen, Motor spülen.</translation>
    </message>
    <message>
        <source>{a} is kinked</source>
        <translation>{a} ist geknickt</translation>
    </message>
    <message>
        <source>Follow the hose by eye and hand, behind brackets too.</source>
        <translation>Den Schlauch mit Auge und Hand verfolgen, auch hinter Haltern.</translation>
    </message>
    <message>
        <source>Reroute with a larger bend, or an elbow.</source>
        <translation>Mit größerem Bogen oder einem Winkel neu verlegen.</translation>
    </message>
    <message>
        <source>There is a check valve in {a}</source>
        <translation>In {a} sitzt ein Rückschlagventil</translation>
    </message>
    <message>
        <source>Look for an arrow on a fitting in the hose.</source>
        <translation>Nach einem Pfeil auf einem Anschlussstück im Schlauch suchen.</translation>
    </message>
    <message>
        <source>Take it out: a few mm of head do not open it.</source>
        <translation>Ausbauen: wenige mm Druckhöhe öffnen es nicht.</translation>
    </message>
    <message>
        <source>The engine&apos;s own thermostat is stuck open</source>
        <translation>Der Thermostat des Motors hängt offen fest</translation>
    </message>
    <message>
        <source>Feel the upper radiator hose: warm with the engine cold means that it lets coolant through.</source>
        <translation>Den oberen Kühlerschlauch befühlen: warm bei kaltem Motor heißt, dass er Kühlmittel durchlässt.</translation>
    </message>
    <message>
        <source>Replace the engine&apos;s thermostat.</source>
        <translation>Den Thermostat des Motors ersetzen.</translation>
    </message>
    <message>
        <source>The remote sensor hangs in the air</source>
        <translation>Der Fernfühler hängt in der Luft</translation>
    </message>
    <message>
        <source>Look at the sensor: it has to sit tight on the engine, away from the return port.</source>
        <translation>Fühler ansehen: er muss fest am Motor sitzen, weg vom Rücklaufanschluss.</translation>
    </message>
    <message>
        <source>Fasten it.</source>
        <translation>Fühler befestigen.</translation>
    </message>
    <message>
        <source>Air in {a}, {0} up</source>
        <translation>Luft in {a}, Höhe {0}</translation>
    </message>
    <message>
        <source>inlet</source>
        <translation>Einlass</translation>
    </message>
    <message>
        <source>clip-on thermometer on the metal at the heater&apos;s inlet</source>
        <translation>Anlegethermometer am Metall des Heizgeräte-Einlasses</translation>
    </message>
    <message>
        <source>outlet</source>
        <translation>Auslass</translation>
    </message>
    <message>
        <source>clip-on thermometer on the metal at the heater&apos;s outlet</source>
        <translation>Anlegethermometer am Metall des Heizgeräte-Auslasses</translation>
    </message>
    <message>
        <source>return hose</source>
        <translation>Rücklaufschlauch</translation>
    </message>
    <message>
        <source>infrared thermometer on the rubber of the return hose at the engine</source>
        <translation>Infrarotthermometer auf dem Gummi des Rücklaufschlauchs am Motor</translation>
    </message>
    <message>
        <source>engine block</source>
        <translation>Motorblock</translation>
    </message>
    <message>
        <source>infrared thermometer on the block beside the return port</source>
        <translation>Infrarotthermometer auf dem Block neben dem Rücklaufanschluss</translation>
    </message>
    <message>
        <source>current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>clamp meter round one conductor</source>
        <translation>Stromzange um einen Leiter</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>voltmeter at the heater, by an electrician</source>
        <translation>Spannungsmesser am Heizgerät, durch eine Elektrofachkraft</translation>
    </message>
    <message>
        <source>coolant level</source>
        <translation>Kühlmittelstand</translation>
    </message>
    <message>
        <source>rule at the surge tank, from the cold full mark</source>
        <translation>Maßstab am Ausgleichsbehälter, ab der Kaltfüllmarke</translation>
    </message>
    <message>
        <source>feel the supply hose one hand from the heater</source>
        <translation>den Vorlaufschlauch eine Handbreit vor dem Heizgerät befühlen</translation>
    </message>
    <message>
        <source>feel the return hose at the engine</source>
        <translation>den Rücklaufschlauch am Motor befühlen</translation>
    </message>
    <message>
        <source>Now %1</source>
        <translation>Jetzt %1</translation>
    </message>
    <message>
        <source>In %1 min %2</source>
        <translation>In %1 min %2</translation>
    </message>
    <message>
        <source>%1: cold means &quot;%2&quot;, warm means &quot;%3&quot;.</source>
        <translation>%1: kalt heißt „%2“, warm heißt „%3“.</translation>
    </message>
    <message>
        <source>read the %1 (%2): about %3 means &quot;%4&quot;, about %5 means &quot;%6&quot;.</source>
        <translation>%1 ablesen (%2): etwa %3 heißt „%4“, etwa %5 heißt „%6“.</translation>
    </message>
    <message>
        <source>Only whether power was on was read.</source>
        <translation>Abgelesen wurde nur, ob Strom da war.</translation>
    </message>
    <message>
        <source>Speaks against it: the {a} was {0} after {1} min, where {2} is expected.</source>
        <translation>Spricht dagegen ({a}): {0} nach {1} min, wo {2} zu erwarten ist.</translation>
    </message>
    <message>
        <source>All is near what is expected; farthest off is the {a}: {0} after {1} min, where {2} is expected.</source>
        <translation>Alles liegt nahe am Erwarteten; am weitesten weg ist: {a}, {0} nach {1} min, wo {2} zu erwarten ist.</translation>
    </message>
    <message>
        <source>The {a} was {0} after {1} min: this fault gives {2}, the job as drawn {3}.</source>
        <translation>{a}: {0} nach {1} min; dieser Fehler ergibt {2}, die Anlage wie gezeichnet {3}.</translation>
    </message>
    <message>
        <source>Speaks against it: the {a} was {0} after {1} min: this fault gives {2}, the job as drawn {3}.</source>
        <translation>Spricht dagegen ({a}): {0} nach {1} min; dieser Fehler ergibt {2}, die Anlage wie gezeichnet {3}.</translation>
    </message>
    <message>
        <source>Not judged against the drawing.</source>
        <translation>Nicht an der Zeichnung gemessen.</translation>
    </message>
    <message>
        <source>Over the limit of {0}. Switch off and find out why.</source>
        <translation>Über dem Grenzwert von {0}. Ausschalten und die Ursache suchen.</translation>
    </message>
    <message>
        <source>Fits: {0} to {1} expected.</source>
        <translation>Passt: {0} bis {1} zu erwarten.</translation>
    </message>
    <message>
        <source>Lower than expected: {0} to {1}.</source>
        <translation>Tiefer als erwartet: {0} bis {1}.</translation>
    </message>
    <message>
        <source>Higher than expected: {0} to {1}.</source>
        <translation>Höher als erwartet: {0} bis {1}.</translation>
    </message>
    <message>
        <source>Not judged: the cold marks of the surge tank are not entered.</source>
        <translation>Nicht beurteilt: die Kaltmarken des Ausgleichsbehälters sind nicht eingegeben.</translation>
    </message>
    <message>
        <source>Under the cold minimum, {0} under the full mark. Power off, find the leak, top up.</source>
        <translation>Unter dem Kaltmindeststand, {0} unter der Füllmarke. Strom aus, Leck suchen, nachfüllen.</translation>
    </message>
    <message>
        <source>Over the hot mark.</source>
        <translation>Über der Heißmarke.</translation>
    </message>
    <message>
        <source>Between the marks.</source>
        <translation>Zwischen den Marken.</translation>
    </message>
    <message>
        <source>Not judged: rated power or rated voltage is not entered.</source>
        <translation>Nicht beurteilt: Nennleistung oder Nennspannung ist nicht eingegeben.</translation>
    </message>
    <message>
        <source>Fits: {0} is its rated power at {1}.</source>
        <translation>Passt: {0} ist die Nennleistung bei {1}.</translation>
    </message>
    <message>
        <source>Too little: its rated power at {1} would be {0}.</source>
        <translation>Zu wenig: die Nennleistung bei {1} wäre {0}.</translation>
    </message>
    <message>
        <source>Too much: its rated power at {1} would be {0}.</source>
        <translation>Zu viel: die Nennleistung bei {1} wäre {0}.</translation>
    </message>
    <message>
        <source>Off: its thermostat may well be open then.</source>
        <translation>Aus: der Thermostat kann dann durchaus offen sein.</translation>
    </message>
    <message>
        <source>Draws nothing, where it should be on and draw {0}.</source>
        <translation>Nimmt nichts auf, obwohl es ein sein und {0} aufnehmen müsste.</translation>
    </message>
    <message>
        <source>Cycles: not judged, no switching off was noted.</source>
        <translation>Schaltspiele: nicht beurteilt, kein Ausschalten wurde notiert.</translation>
    </message>
    <message>
        <source>Cycles: not judged, it was not seen to turn on again.</source>
        <translation>Schaltspiele: nicht beurteilt, kein Wiedereinschalten wurde gesehen.</translation>
    </message>
    <message>
        <source>On {0} times within an hour, over the limit of {1}.</source>
        <translation>In einer Stunde {0}-mal ein, über dem Grenzwert von {1}.</translation>
    </message>
    <message>
        <source>On {0} times within an hour at most.</source>
        <translation>In einer Stunde höchstens {0}-mal ein.</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>passt</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>fraglich</translation>
    </message>
    <message>
        <source>off</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>the loop of this heater is not computed</source>
        <translation>der Kreislauf dieses Heizgeräts ist nicht berechnet</translation>
    </message>
    <message>
        <source>the coolant&apos;s properties are not known</source>
        <translation>die Eigenschaften des Kühlmittels sind nicht bekannt</translation>
    </message>
    <message>
        <source>Supply hose</source>
        <translation>Vorlaufschlauch</translation>
    </message>
    <message>
        <source>Return hose</source>
        <translation>Rücklaufschlauch</translation>
    </message>
    <message>
        <source>hose</source>
        <translation>Schlauch</translation>
    </message>
    <message>
        <source>Port %1</source>
        <translation>Anschluss %1</translation>
    </message>
    <message>
        <source>Heater</source>
        <translation>Heizgerät</translation>
    </message>
    <message>
        <source>heater</source>
        <translation>Heizgerät</translation>
    </message>
    <message>
        <source>Area %1</source>
        <translation>Bereich %1</translation>
    </message>
    <message>
        <source>neither the coolant of the whole system nor that of the engine is entered</source>
        <translation>weder das Kühlmittel der ganzen Anlage noch das des Motors ist eingegeben</translation>
    </message>
    <message>
        <source>The kind of antifreeze to add is not entered.</source>
        <translation>Die Art des zuzugebenden Frostschutzmittels ist nicht eingegeben.</translation>
    </message>
    <message>
        <source>The kind of antifreeze in it now is not known, and kinds must not be mixed: find it out, or drain and flush all of it and choose a fill from empty.</source>
        <translation>Die Art des jetzigen Frostschutzmittels ist nicht bekannt, und Arten dürfen nicht gemischt werden: ermitteln oder alles ablassen und spülen und das Füllen aus dem Leeren wählen.</translation>
    </message>
    <message>
        <source>In it now is another kind of antifreeze, and kinds must not be mixed: drain and flush all of it and choose a fill from empty.</source>
        <translation>Jetzt ist eine andere Art Frostschutzmittel darin, und Arten dürfen nicht gemischt werden: alles ablassen und spülen und das Füllen aus dem Leeren wählen.</translation>
    </message>
    <message>
        <source>chloride</source>
        <translation>Chlorid</translation>
    </message>
    <message>
        <source>sulphate</source>
        <translation>Sulfat</translation>
    </message>
    <message>
        <source>hardness as CaCO3</source>
        <translation>Härte als CaCO3</translation>
    </message>
    <message>
        <source>total solids</source>
        <translation>Feststoffe gesamt</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH-Wert</translation>
    </message>
    <message>
        <source>ASTM D6210, appendix X1 (from memory); same figures in TM 5-3895-383-24, table 15 (US Army)</source>
        <translation>ASTM D6210, Anhang X1 (aus dem Gedächtnis); gleiche Werte in TM 5-3895-383-24, Tabelle 15 (US-Armee)</translation>
    </message>
    <message>
        <source>more than %1 lines</source>
        <translation>mehr als %1 Zeilen</translation>
    </message>
    <message>
        <source>more than %1 fields in a line</source>
        <translation>mehr als %1 Felder in einer Zeile</translation>
    </message>
    <message>
        <source>a field of more than %1 bytes</source>
        <translation>ein Feld mit mehr als %1 Bytes</translation>
    </message>
    <message>
        <source>a quote inside a field that does not begin with one</source>
        <translation>ein Anführungszeichen in einem Feld, das nicht mit einem beginnt</translation>
    </message>
    <message>
        <source>a control character that ends no line</source>
        <translation>ein Steuerzeichen, das keine Zeile beendet</translation>
    </message>
    <message>
        <source>text behind the quote that ends a field</source>
        <translation>Text hinter dem Anführungszeichen, das ein Feld beendet</translation>
    </message>
    <message>
        <source>a field in quotes that does not end</source>
        <translation>ein Feld in Anführungszeichen, das nicht endet</translation>
    </message>
    <message>
        <source>a line of %1 fields, where the first has %2</source>
        <translation>eine Zeile mit %1 Feldern, wo die erste %2 hat</translation>
    </message>
    <message>
        <source>Line %1, column %2: %3</source>
        <translation>Zeile %1, Spalte %2: %3</translation>
    </message>
    <message>
        <source>a file of more than %1 MiB</source>
        <translation>eine Datei mit mehr als %1 MiB</translation>
    </message>
    <message>
        <source>a byte that is not UTF-8 text</source>
        <translation>ein Byte, das kein UTF-8-Text ist</translation>
    </message>
    <message>
        <source>Nothing is to be cut.</source>
        <translation>Nichts ist zuzuschneiden.</translation>
    </message>
    <message>
        <source>No length of roll is entered.</source>
        <translation>Keine Rollenlänge ist eingegeben.</translation>
    </message>
    <message>
        <source>A length is not over 0 and at most 10 km, or there are too many cuts.</source>
        <translation>Eine Länge liegt nicht über 0 und höchstens bei 10 km, oder es sind zu viele Zuschnitte.</translation>
    </message>
    <message>
        <source>A cut is longer than the longest roll.</source>
        <translation>Ein Zuschnitt ist länger als die längste Rolle.</translation>
    </message>
    <message>
        <source>A volume has to be from 0 to {0}.</source>
        <translation>Ein Volumen muss von 0 bis {0} liegen.</translation>
    </message>
    <message>
        <source>There is nothing to fill.</source>
        <translation>Es ist nichts zu füllen.</translation>
    </message>
    <message>
        <source>The share of antifreeze has to be from 0 to 100 %.</source>
        <translation>Der Frostschutzanteil muss von 0 bis 100 % liegen.</translation>
    </message>
    <message>
        <source>{0} is not planned for: over {1} antifreeze by volume coolant carries less heat and freezes earlier again.</source>
        <translation>{0} wird nicht geplant: über {1} Frostschutz (Volumen) trägt Kühlmittel weniger Wärme und gefriert wieder früher.</translation>
    </message>
    <message>
        <source>{0} is not reached: coolant would have to be drained, and nothing runs out at the drains.</source>
        <translation>{0} wird nicht erreicht: Kühlmittel müsste abgelassen werden, und an den Ablässen läuft nichts aus.</translation>
    </message>
    <message>
        <source>{0} is not reached: only {1} runs out at once, and after {2} rounds of draining and filling with antifreeze the coolant is at {3}. Drain elsewhere too, or flush and fill afresh.</source>
        <translation>{0} wird nicht erreicht: nur {1} laufen auf einmal aus, und nach {2} Durchgängen Ablassen und Auffüllen mit Frostschutzmittel ist das Kühlmittel bei {3}. Auch anderswo ablassen oder spülen und neu füllen.</translation>
    </message>
    <message>
        <source>{0} is not reached: only {1} runs out at once, each round leaves antifreeze behind, and after {2} the coolant is at {3}. Drain elsewhere too, or flush and fill afresh.</source>
        <translation>{0} wird nicht erreicht: nur {1} laufen auf einmal aus, jeder Durchgang lässt Frostschutzmittel zurück, und nach {2} ist das Kühlmittel bei {3}. Auch anderswo ablassen oder spülen und neu füllen.</translation>
    </message>
    <message>
        <source>Draining all of the {0} that runs out at once is not enough: it gives {1}. {2} rounds are needed, with the engine run in between until its thermostat opens.</source>
        <translation>Alle {0} abzulassen, die auf einmal auslaufen, genügt nicht: das ergibt {1}. {2} Durchgänge sind nötig, dazwischen Motorlauf, bis der Thermostat öffnet.</translation>
    </message>
    <message>
        <source>Drain {0}, then fill.</source>
        <translation>{0} ablassen, dann füllen.</translation>
    </message>
    <message>
        <source>Drain {0}, then fill. How much runs out at the drains is not entered: see that so much does.</source>
        <translation>{0} ablassen, dann füllen. Wie viel an den Ablässen ausläuft, ist nicht eingegeben: darauf achten, dass es so viel ist.</translation>
    </message>
    <message>
        <source>Nothing has to be drained: fill the new hoses and chambers as stated.</source>
        <translation>Nichts ist abzulassen: die neuen Schläuche und Kammern wie angegeben füllen.</translation>
    </message>
    <message>
        <source>The coolant is as wanted.</source>
        <translation>Das Kühlmittel ist wie gewünscht.</translation>
    </message>
    <message>
        <source>its power is not entered</source>
        <translation>die Leistung ist nicht eingegeben</translation>
    </message>
    <message>
        <source>neither the supply&apos;s voltage nor its own is entered</source>
        <translation>weder die Spannung der Versorgung noch die eigene ist eingegeben</translation>
    </message>
    <message>
        <source>its rated voltage is not entered</source>
        <translation>die Nennspannung ist nicht eingegeben</translation>
    </message>
    <message>
        <source>it needs three phases and the supply has one</source>
        <translation>nötig sind drei Phasen, und die Versorgung hat eine</translation>
    </message>
    <message>
        <source>Single-phase heaters on three phases: counted as if all were on the same two conductors, the most that any carries. Shared out as evenly as can be it is {0}, {1} at 125 %.</source>
        <translation>Einphasige Heizgeräte an drei Phasen: gerechnet, als lägen alle an denselben zwei Leitern, das Höchste, was einer führt. So gleichmäßig wie möglich verteilt sind es {0}, {1} bei 125 %.</translation>
    </message>
    <message>
        <source>The supply&apos;s voltage is not entered: the current of all heaters together is not computed.</source>
        <translation>Die Spannung der Versorgung ist nicht eingegeben: der Strom aller Heizgeräte zusammen ist nicht berechnet.</translation>
    </message>
    <message>
        <source>The supply&apos;s phases are not entered.</source>
        <translation>Die Phasenzahl der Versorgung ist nicht eingegeben.</translation>
    </message>
    <message>
        <source>The conductor&apos;s size is not entered: the voltage drop is not computed.</source>
        <translation>Der Leiterquerschnitt ist nicht eingegeben: der Spannungsfall ist nicht berechnet.</translation>
    </message>
    <message>
        <source>The length of the run is not entered: the voltage drop is not computed.</source>
        <translation>Die Leitungslänge ist nicht eingegeben: der Spannungsfall ist nicht berechnet.</translation>
    </message>
    <message>
        <source>{a} is not a size of the tables; 12 AWG or 4 mm2 are.</source>
        <translation>{a} ist keine Größe der Tabellen; 12 AWG oder 4 mm2 sind welche.</translation>
    </message>
    <message>
        <source>{a} is rated for {0}. On {1} it would take {2}: do not connect it, the element burns out.</source>
        <translation>{a} ist für {0} bemessen. An {1} würde das Gerät {2} aufnehmen: nicht anschließen, das Heizelement brennt durch.</translation>
    </message>
    <message>
        <source>The warm-up of {a} is computed at {0}, which is entered with the heater; the supply has {1}.</source>
        <translation>Das Aufheizen von {a} ist mit {0} berechnet, wie beim Heizgerät eingegeben; die Versorgung hat {1}.</translation>
    </message>
    <message>
        <source>The drop is over the {0} that is advised for a branch circuit.</source>
        <translation>Der Spannungsfall liegt über den {0}, die für einen Endstromkreis empfohlen sind.</translation>
    </message>
    <message>
        <source>The mark-up on materials is not entered.</source>
        <translation>Der Aufschlag auf Material ist nicht eingegeben.</translation>
    </message>
    <message>
        <source>The prices of materials are not final.</source>
        <translation>Die Materialpreise sind nicht endgültig.</translation>
    </message>
    <message>
        <source>The amounts are too large to reckon with.</source>
        <translation>Die Beträge sind zu groß zum Rechnen.</translation>
    </message>
    <message>
        <source>The currency is not entered.</source>
        <translation>Die Währung ist nicht eingegeben.</translation>
    </message>
    <message>
        <source>Travel</source>
        <translation>Anfahrt</translation>
    </message>
    <message>
        <source>Consumables</source>
        <translation>Verbrauchsmaterial</translation>
    </message>
    <message>
        <source>Disposal of old coolant</source>
        <translation>Entsorgung des alten Kühlmittels</translation>
    </message>
    <message>
        <source>not priced</source>
        <translation>ohne Preis</translation>
    </message>
    <message>
        <source>quantity not known</source>
        <translation>Menge nicht bekannt</translation>
    </message>
    <message>
        <source>priced by &quot;%1&quot;, which is no measure of it</source>
        <translation>Preis je „%1“, das kein Maß dafür ist</translation>
    </message>
    <message>
        <source>Tank heater: {a}</source>
        <translation>Kühlmittel-Heizgerät: {a}</translation>
    </message>
    <message>
        <source>Item %1, %2: %3.</source>
        <translation>Position %1, %2: %3.</translation>
    </message>
    <message>
        <source>The labour rate is not entered.</source>
        <translation>Der Stundensatz ist nicht eingegeben.</translation>
    </message>
    <message>
        <source>labour rate not entered</source>
        <translation>Stundensatz nicht eingegeben</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>nicht eingegeben</translation>
    </message>
    <message>
        <source>%1: not entered.</source>
        <translation>%1: nicht eingegeben.</translation>
    </message>
    <message>
        <source>The tax is not entered.</source>
        <translation>Die Steuer ist nicht eingegeben.</translation>
    </message>
    <message>
        <source>The bore is not entered.</source>
        <translation>Der Innendurchmesser ist nicht eingegeben.</translation>
    </message>
    <message>
        <source>Make safe, drain and catch the coolant</source>
        <translation>Sichern, Kühlmittel ablassen und auffangen</translation>
    </message>
    <message>
        <source>Clean ports, fit adapters and hose ends</source>
        <translation>Anschlüsse reinigen, Adapter und Schlauchtüllen einbauen</translation>
    </message>
    <message>
        <source>Cut, route and clamp the hoses</source>
        <translation>Schläuche zuschneiden, verlegen und anklemmen</translation>
    </message>
    <message>
        <source>Fit valves and other in-line parts</source>
        <translation>Ventile und andere Einbauteile einsetzen</translation>
    </message>
    <message>
        <source>Run and connect the supply, by a licensed electrician</source>
        <translation>Versorgung verlegen und anschließen, durch eine Elektrofachkraft</translation>
    </message>
    <message>
        <source>Flush, fill, purge and top up</source>
        <translation>Spülen, füllen, entlüften und nachfüllen</translation>
    </message>
    <message>
        <source>Energise, take readings, check for leaks</source>
        <translation>Einschalten, Messwerte aufnehmen, auf Lecks prüfen</translation>
    </message>
    <message>
        <source>Hand over with sheet and checklist</source>
        <translation>Mit Blatt und Checkliste übergeben</translation>
    </message>
    <message>
        <source>not a number such as 1250 or 12.5, without a sign for thousands</source>
        <translation>keine Zahl wie 1250 oder 12.5, ohne Zeichen für Tausender</translation>
    </message>
    <message>
        <source>a whole number is wanted here</source>
        <translation>hier wird eine ganze Zahl erwartet</translation>
    </message>
    <message>
        <source>at most %1 decimals are wanted here</source>
        <translation>hier werden höchstens %1 Nachkommastellen erwartet</translation>
    </message>
    <message>
        <source>too large a number</source>
        <translation>eine zu große Zahl</translation>
    </message>
    <message>
        <source>Tank heater</source>
        <translation>Kühlmittel-Heizgerät</translation>
    </message>
    <message>
        <source>Mounting kit</source>
        <translation>Montagesatz</translation>
    </message>
    <message>
        <source>Hose</source>
        <translation>Schlauch</translation>
    </message>
    <message>
        <source>Hose end</source>
        <translation>Schlauchtülle</translation>
    </message>
    <message>
        <source>Adapter</source>
        <translation>Adapter</translation>
    </message>
    <message>
        <source>Core plug adapter</source>
        <translation>Froststopfen-Adapter</translation>
    </message>
    <message>
        <source>Tee for lower radiator hose</source>
        <translation>T-Stück für unteren Kühlerschlauch</translation>
    </message>
    <message>
        <source>Tee for cabin heater line</source>
        <translation>T-Stück für Leitung der Fahrerhausheizung</translation>
    </message>
    <message>
        <source>Elbow</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>Moulded elbow</source>
        <translation>Formbogen</translation>
    </message>
    <message>
        <source>Reducer</source>
        <translation>Reduzierung</translation>
    </message>
    <message>
        <source>Isolation valve</source>
        <translation>Absperrventil</translation>
    </message>
    <message>
        <source>Bleed</source>
        <translation>Entlüftung</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Ablass</translation>
    </message>
    <message>
        <source>Lift check valve</source>
        <translation>Hub-Rückschlagventil</translation>
    </message>
    <message>
        <source>Swing check valve</source>
        <translation>Klappen-Rückschlagventil</translation>
    </message>
    <message>
        <source>Hose clamp</source>
        <translation>Schlauchschelle</translation>
    </message>
    <message>
        <source>Hose clip</source>
        <translation>Halteschelle</translation>
    </message>
    <message>
        <source>Hose insulation</source>
        <translation>Schlauchisolierung</translation>
    </message>
    <message>
        <source>Thread sealant</source>
        <translation>Gewindedichtmittel</translation>
    </message>
    <message>
        <source>antifreeze</source>
        <translation>Frostschutz</translation>
    </message>
    <message>
        <source>Antifreeze concentrate</source>
        <translation>Frostschutzkonzentrat</translation>
    </message>
    <message>
        <source>Distilled water</source>
        <translation>Destilliertes Wasser</translation>
    </message>
    <message>
        <source>The start of {a} is on nothing: what it is pushed onto is not counted.</source>
        <translation>Der Anfang von {a} sitzt auf nichts: worauf er geschoben wird, ist nicht mitgezählt.</translation>
    </message>
    <message>
        <source>The end of {a} is on nothing: what it is pushed onto is not counted.</source>
        <translation>Das Ende von {a} sitzt auf nichts: worauf es geschoben wird, ist nicht mitgezählt.</translation>
    </message>
    <message>
        <source>%1, inlet</source>
        <translation>%1, Einlass</translation>
    </message>
    <message>
        <source>%1, outlet</source>
        <translation>%1, Auslass</translation>
    </message>
    <message>
        <source>size of the line not entered</source>
        <translation>Größe der Leitung nicht eingegeben</translation>
    </message>
    <message>
        <source>thread not entered</source>
        <translation>Gewinde nicht eingegeben</translation>
    </message>
    <message>
        <source>rated voltage not entered</source>
        <translation>Nennspannung nicht eingegeben</translation>
    </message>
    <message>
        <source>power not entered</source>
        <translation>Leistung nicht eingegeben</translation>
    </message>
    <message>
        <source>power and rated voltage not entered</source>
        <translation>Leistung und Nennspannung nicht eingegeben</translation>
    </message>
    <message>
        <source>{0}, {1}, three phases</source>
        <translation>{0}, {1}, drei Phasen</translation>
    </message>
    <message>
        <source>bore of %1 not entered</source>
        <translation>Innendurchmesser von %1 nicht eingegeben</translation>
    </message>
    <message>
        <source>Chamber volume of {a} is not entered: taken from its drawn chamber.</source>
        <translation>Das Kammervolumen von {a} ist nicht eingegeben: es ist der gezeichneten Kammer entnommen.</translation>
    </message>
    <message>
        <source>{a} glycol</source>
        <translation>{a}glykol</translation>
    </message>
    <message>
        <source>kind of antifreeze not entered</source>
        <translation>Art des Frostschutzmittels nicht eingegeben</translation>
    </message>
    <message>
        <source>Brackets, bolts and washers as the heater&apos;s manual has them.</source>
        <translation>Halter, Schrauben und Scheiben laut Handbuch des Heizgeräts.</translation>
    </message>
    <message>
        <source>Not needed where adapter or nozzle has its own.</source>
        <translation>Nicht nötig, wo Adapter oder Stutzen eine eigene hat.</translation>
    </message>
    <message>
        <source>One container, for {0} threads; fit for coolant.</source>
        <translation>Ein Gebinde, für {0} Gewinde; für Kühlmittel geeignet.</translation>
    </message>
    <message>
        <source>To come to {0} of antifreeze in {1}; drain {2} first.</source>
        <translation>Für {0} Frostschutz in {1}; zuerst {2} ablassen.</translation>
    </message>
    <message>
        <source>Fills the new hoses and heater only: top up what is lost in the work.</source>
        <translation>Füllt nur die neuen Schläuche und das Heizgerät: nachfüllen, was bei der Arbeit verloren geht.</translation>
    </message>
    <message>
        <source>share of antifreeze not entered</source>
        <translation>Frostschutzanteil nicht eingegeben</translation>
    </message>
    <message>
        <source>bore not entered</source>
        <translation>Innendurchmesser nicht eingegeben</translation>
    </message>
    <message>
        <source>bore {0}, wall {1}</source>
        <translation>Innen-Ø {0}, Wand {1}</translation>
    </message>
    <message>
        <source>hose&apos;s bore not entered</source>
        <translation>Innendurchmesser des Schlauchs nicht eingegeben</translation>
    </message>
    <message>
        <source>Two on each hose end: common practice.</source>
        <translation>Zwei je Schlauchtülle: gängige Praxis.</translation>
    </message>
    <message>
        <source>{0} to {1}</source>
        <translation>{0} bis {1}</translation>
    </message>
    <message>
        <source>Of one piece with the hose; bought singly it also takes joiners and clamps.</source>
        <translation>In einem Stück mit dem Schlauch; einzeln gekauft kommen Verbinder und Schlauchschellen dazu.</translation>
    </message>
    <message>
        <source>{a} wants one more than is drawn, by the spacing rule.</source>
        <translation>{a} braucht nach der Abstandsregel eine mehr als gezeichnet.</translation>
    </message>
    <message>
        <source>{a} wants {0} more than are drawn, by the spacing rule.</source>
        <translation>{a} braucht nach der Abstandsregel {0} mehr als gezeichnet.</translation>
    </message>
    <message>
        <source>for {0}, {1} thick</source>
        <translation>für {0}, {1} dick</translation>
    </message>
    <message>
        <source>no column named &quot;%1&quot;; fields have to be set apart by commas, not by semicolons</source>
        <translation>keine Spalte namens „%1“; Felder sind durch Kommas zu trennen, nicht durch Semikolons</translation>
    </message>
    <message>
        <source>no column named &quot;%1&quot;</source>
        <translation>keine Spalte namens „%1“</translation>
    </message>
    <message>
        <source>a second column named &quot;%1&quot;</source>
        <translation>eine zweite Spalte namens „%1“</translation>
    </message>
    <message>
        <source>the price &quot;%1&quot; was not understood: %2</source>
        <translation>der Preis „%1“ wurde nicht verstanden: %2</translation>
    </message>
    <message>
        <source>a price under nothing</source>
        <translation>ein Preis unter null</translation>
    </message>
    <message>
        <source>too large a price</source>
        <translation>ein zu großer Preis</translation>
    </message>
    <message>
        <source>no currency</source>
        <translation>keine Währung</translation>
    </message>
    <message>
        <source>the currency &quot;%1&quot; in a list of %2</source>
        <translation>die Währung „%1“ in einer Liste in %2</translation>
    </message>
    <message>
        <source>an item without a key of 1 to 200 bytes</source>
        <translation>ein Artikel ohne Schlüssel von 1 bis 200 Bytes</translation>
    </message>
    <message>
        <source>a second line for the item &quot;%1&quot;</source>
        <translation>eine zweite Zeile für den Artikel „%1“</translation>
    </message>
    <message>
        <source>a description of more than 500 bytes</source>
        <translation>eine Beschreibung von mehr als 500 Bytes</translation>
    </message>
    <message>
        <source>the unit &quot;%1&quot; is none of %2</source>
        <translation>die Einheit „%1“ ist keine von %2</translation>
    </message>
    <message>
        <source>an empty file</source>
        <translation>eine leere Datei</translation>
    </message>
    <message>
        <source>more than %1 prices</source>
        <translation>mehr als %1 Preise</translation>
    </message>
    <message>
        <source>a list without a price</source>
        <translation>eine Liste ohne Preis</translation>
    </message>
    <message>
        <source>The list is in %1, the estimate in %2.</source>
        <translation>Die Liste ist in %1, die Kalkulation in %2.</translation>
    </message>
    <message>
        <source>Amounts are entered with %1 decimals, and %2 has %3.</source>
        <translation>Beträge sind mit %1 Nachkommastellen eingegeben, und %2 hat %3.</translation>
    </message>
    <message>
        <source>the ambient temperature is not entered</source>
        <translation>die Umgebungstemperatur ist nicht eingegeben</translation>
    </message>
    <message>
        <source>There is nothing to sample.</source>
        <translation>Es gibt keine Stichproben zu ziehen.</translation>
    </message>
    <message>
        <source>Bands take 20 to 100000 samples.</source>
        <translation>Bänder brauchen 20 bis 100000 Stichproben.</translation>
    </message>
    <message>
        <source>The range of {a} does not hold together.</source>
        <translation>Die Spanne von {a} passt nicht zusammen.</translation>
    </message>
    <message>
        <source>The bands were stopped.</source>
        <translation>Die Bänder wurden abgebrochen.</translation>
    </message>
    <message>
        <source>circulates on {2} of head, into the heater at {0} and out at {1}</source>
        <translation>zirkuliert mit {2} Druckhöhe, in das Heizgerät mit {0} und hinaus mit {1}</translation>
    </message>
    <message>
        <source>circulates in reverse on {2} of head, into the heater at {0} and out at {1}</source>
        <translation>zirkuliert rückwärts mit {2} Druckhöhe, in das Heizgerät mit {0} und hinaus mit {1}</translation>
    </message>
    <message>
        <source>the balance was not found within {a} Pa</source>
        <translation>das Gleichgewicht wurde nicht auf {a} Pa genau gefunden</translation>
    </message>
    <message>
        <source>air takes {0} of head, and the loop can raise {1} at most</source>
        <translation>Luft kostet {0} Druckhöhe, und der Kreislauf kann höchstens {1} aufbringen</translation>
    </message>
    <message>
        <source>nothing drives it: the warm column is not above the cold one ({0} of head)</source>
        <translation>nichts treibt an: die warme Säule steht nicht über der kalten ({0} Druckhöhe)</translation>
    </message>
    <message>
        <source>the coolant would be under {0}, where it freezes</source>
        <translation>das Kühlmittel läge unter {0}, wo es gefriert</translation>
    </message>
    <message>
        <source>the coolant would reach {0} before enough of it flows</source>
        <translation>das Kühlmittel würde {0} erreichen, bevor genug davon fließt</translation>
    </message>
    <message>
        <source>a closed valve withstands the {0} of head that drives</source>
        <translation>ein geschlossenes Ventil hält den treibenden {0} Druckhöhe stand</translation>
    </message>
    <message>
        <source>the resistance is that of a loop of {a} elements</source>
        <translation>der Widerstand gehört zu einem Kreislauf mit {a} Elementen</translation>
    </message>
    <message>
        <source>boiling in degC must be over the freezing point, not {a}</source>
        <translation>der Siedepunkt in °C muss über dem Gefrierpunkt liegen, nicht {a}</translation>
    </message>
    <message>
        <source>the coolant has no range of temperature with properties over 0</source>
        <translation>das Kühlmittel hat keinen Temperaturbereich mit Eigenschaften über 0</translation>
    </message>
    <message>
        <source>element {a}: {b}, not {c}</source>
        <translation>Element {a}: {b}, nicht {c}</translation>
    </message>
    <message>
        <source>length in metres must be 0 or more</source>
        <translation>die Länge in Metern muss 0 oder mehr sein</translation>
    </message>
    <message>
        <source>rise in metres must be a number</source>
        <translation>die Steigung in Metern muss eine Zahl sein</translation>
    </message>
    <message>
        <source>bore in metres must be over 0</source>
        <translation>der Innendurchmesser in Metern muss über 0 liegen</translation>
    </message>
    <message>
        <source>area in square metres must be over 0, or 0 for a round bore</source>
        <translation>die Fläche in Quadratmetern muss über 0 liegen, oder 0 für runden Querschnitt</translation>
    </message>
    <message>
        <source>power in watts must be a number</source>
        <translation>die Leistung in Watt muss eine Zahl sein</translation>
    </message>
    <message>
        <source>heat exchange in W/K must be 0 or more</source>
        <translation>der Wärmeaustausch in W/K muss 0 oder mehr sein</translation>
    </message>
    <message>
        <source>temperature of surroundings in degC must be over -273.15</source>
        <translation>die Temperatur der Umgebung in °C muss über -273,15 liegen</translation>
    </message>
    <message>
        <source>share at outlet temperature must be from 0 to 1</source>
        <translation>der Anteil mit Auslasstemperatur muss von 0 bis 1 liegen</translation>
    </message>
    <message>
        <source>pocket&apos;s head in metres must be 0 or more</source>
        <translation>die Druckhöhe des Lufteinschlusses in Metern muss 0 oder mehr sein</translation>
    </message>
    <message>
        <source>a loss&apos;s bore in metres must be over 0</source>
        <translation>der Innendurchmesser eines Verlusts in Metern muss über 0 liegen</translation>
    </message>
    <message>
        <source>the loop has no elements</source>
        <translation>der Kreislauf hat keine Elemente</translation>
    </message>
    <message>
        <source>the loop has too many elements: {a}</source>
        <translation>der Kreislauf hat zu viele Elemente: {a}</translation>
    </message>
    <message>
        <source>the loop does not close: its rises add up to {a} m</source>
        <translation>der Kreislauf schließt sich nicht: die Höhenunterschiede ergeben {a} m</translation>
    </message>
    <message>
        <source>no element of the loop resists flow</source>
        <translation>kein Element des Kreislaufs bremst den Durchfluss</translation>
    </message>
    <message>
        <source>start temperature in degC must be over -273.15, not {a}</source>
        <translation>die Starttemperatur in °C muss über -273,15 liegen, nicht {a}</translation>
    </message>
    <message>
        <source>no element of the loop takes heat out, and {a} W are put in</source>
        <translation>kein Element des Kreislaufs entnimmt Wärme, und {a} W werden zugeführt</translation>
    </message>
    <message>
        <source>The voltage has to be over 0.</source>
        <translation>Die Spannung muss über 0 liegen.</translation>
    </message>
    <message>
        <source>Nothing is computed over {0}: that is no low voltage.</source>
        <translation>Über {0} wird nichts berechnet: das ist keine Niederspannung.</translation>
    </message>
    <message>
        <source>A supply has 1 or 3 phases.</source>
        <translation>Eine Versorgung hat 1 oder 3 Phasen.</translation>
    </message>
    <message>
        <source>The power has to be over 0.</source>
        <translation>Die Leistung muss über 0 liegen.</translation>
    </message>
    <message>
        <source>Nothing is computed over {0}.</source>
        <translation>Über {0} wird nichts berechnet.</translation>
    </message>
    <message>
        <source>No conductor is that cold or hot.</source>
        <translation>So kalt oder heiß ist kein Leiter.</translation>
    </message>
    <message>
        <source>{a} is not in the tables in aluminium.</source>
        <translation>{a} steht nicht in den Tabellen für Aluminium.</translation>
    </message>
    <message>
        <source>Current and resistance have to be over 0.</source>
        <translation>Strom und Widerstand müssen über 0 liegen.</translation>
    </message>
    <message>
        <source>The run&apos;s length has to be over 0 and at most {0}.</source>
        <translation>Die Leitungslänge muss über 0 und höchstens bei {0} liegen.</translation>
    </message>
    <message>
        <source>The conductor is far too small for this run: more than a third of the voltage would be lost.</source>
        <translation>Der Leiter ist für diese Leitung viel zu klein: mehr als ein Drittel der Spannung ginge verloren.</translation>
    </message>
    <message>
        <source>Power and hours must not be negative.</source>
        <translation>Leistung und Stunden dürfen nicht negativ sein.</translation>
    </message>
    <message>
        <source>a loss coefficient must be 0 or more</source>
        <translation>ein Verlustbeiwert muss 0 oder mehr sein</translation>
    </message>
    <message>
        <source>a coefficient&apos;s exponent of the Reynolds number must be from 0, under 2</source>
        <translation>der Exponent der Reynoldszahl eines Beiwerts muss von 0 bis unter 2 liegen</translation>
    </message>
    <message>
        <source>a length must be 0 or more</source>
        <translation>eine Länge muss 0 oder mehr sein</translation>
    </message>
    <message>
        <source>roughness must be 0 or more and less than the bore</source>
        <translation>die Rauheit muss 0 oder mehr und kleiner als der Innendurchmesser sein</translation>
    </message>
    <message>
        <source>a bend&apos;s angle must be 0 or more</source>
        <translation>der Winkel eines Bogens muss 0 oder mehr sein</translation>
    </message>
    <message>
        <source>a bend&apos;s centre-line radius must be at least half the bore</source>
        <translation>der Mittenradius eines Bogens muss mindestens der halbe Innendurchmesser sein</translation>
    </message>
    <message>
        <source>a hose end&apos;s own bore must be over 0 and at most the hose&apos;s</source>
        <translation>der Innendurchmesser einer Schlauchtülle muss über 0 und höchstens bei dem des Schlauchs liegen</translation>
    </message>
    <message>
        <source>a bore must be over 0</source>
        <translation>ein Innendurchmesser muss über 0 liegen</translation>
    </message>
    <message>
        <source>an area must be over 0</source>
        <translation>eine Fläche muss über 0 liegen</translation>
    </message>
    <message>
        <source>a factor must be over 0</source>
        <translation>ein Faktor muss über 0 liegen</translation>
    </message>
    <message>
        <source>The coolant&apos;s properties are not known over any range.</source>
        <translation>Die Eigenschaften des Kühlmittels sind in keinem Bereich bekannt.</translation>
    </message>
    <message>
        <source>At {0} the coolant is slush: it freezes at {1}. Nothing circulates.</source>
        <translation>Bei {0} ist das Kühlmittel Eisbrei: es gefriert bei {1}. Nichts zirkuliert.</translation>
    </message>
    <message>
        <source>The heater&apos;s rated power has to be over 0.</source>
        <translation>Die Nennleistung des Heizgeräts muss über 0 liegen.</translation>
    </message>
    <message>
        <source>The heater&apos;s rated voltage has to be over 0.</source>
        <translation>Die Nennspannung des Heizgeräts muss über 0 liegen.</translation>
    </message>
    <message>
        <source>The supply voltage must not be negative.</source>
        <translation>Die Versorgungsspannung darf nicht negativ sein.</translation>
    </message>
    <message>
        <source>The heater&apos;s chamber has to hold coolant.</source>
        <translation>Die Kammer des Heizgeräts muss Kühlmittel fassen.</translation>
    </message>
    <message>
        <source>The heater&apos;s own heat capacity must not be negative.</source>
        <translation>Die Wärmekapazität des Heizgeräts selbst darf nicht negativ sein.</translation>
    </message>
    <message>
        <source>The chamber&apos;s own convection has to be over 0.</source>
        <translation>Die Eigenkonvektion der Kammer muss über 0 liegen.</translation>
    </message>
    <message>
        <source>The thermostat has to switch on at a lower temperature than off.</source>
        <translation>Der Thermostat muss bei tieferer Temperatur ein- als ausschalten.</translation>
    </message>
    <message>
        <source>The thermostat&apos;s sensing fraction has to be from 0 to 1.</source>
        <translation>Der Fühleranteil des Thermostats muss von 0 bis 1 liegen.</translation>
    </message>
    <message>
        <source>The thermostat&apos;s lag has to be over 0.</source>
        <translation>Die Verzögerung des Thermostats muss über 0 liegen.</translation>
    </message>
    <message>
        <source>The cut-out&apos;s trip temperature is not a number.</source>
        <translation>Die Auslösetemperatur des Begrenzers ist keine Zahl.</translation>
    </message>
    <message>
        <source>The cut-out has to reset at a lower temperature than it trips.</source>
        <translation>Der Begrenzer muss bei tieferer Temperatur zurücksetzen als auslösen.</translation>
    </message>
    <message>
        <source>The element&apos;s diameter and flux have to be over 0.</source>
        <translation>Durchmesser und Heizflächenbelastung des Heizelements müssen über 0 liegen.</translation>
    </message>
    <message>
        <source>Chamber, hoses and jacket each need an element.</source>
        <translation>Kammer, Schläuche und Wassermantel brauchen je ein Element.</translation>
    </message>
    <message>
        <source>Return and supply hose have to have a length.</source>
        <translation>Rücklauf- und Vorlaufschlauch müssen eine Länge haben.</translation>
    </message>
    <message>
        <source>A hose&apos;s own heat capacity must not be negative.</source>
        <translation>Die Wärmekapazität eines Schlauchs selbst darf nicht negativ sein.</translation>
    </message>
    <message>
        <source>The share of temperature at a hose&apos;s surface has to be from 0 to 1.</source>
        <translation>Der Temperaturanteil an der Schlauchoberfläche muss von 0 bis 1 liegen.</translation>
    </message>
    <message>
        <source>The factor on pressure losses has to be over 0.</source>
        <translation>Der Faktor auf Druckverluste muss über 0 liegen.</translation>
    </message>
    <message>
        <source>The share of the block that a loop sweeps has to be from 0.02 to 0.98.</source>
        <translation>Der Anteil des Blocks, den ein Kreislauf erfasst, muss von 0,02 bis 0,98 liegen.</translation>
    </message>
    <message>
        <source>The duration has to be over 0.</source>
        <translation>Die Dauer muss über 0 liegen.</translation>
    </message>
    <message>
        <source>Power has to come at 0 or later, and to go after it came.</source>
        <translation>Strom muss bei 0 oder später kommen und danach gehen.</translation>
    </message>
    <message>
        <source>The relative tolerance has to be from 1e-12 to 1e-2.</source>
        <translation>Die relative Toleranz muss von 1e-12 bis 1e-2 liegen.</translation>
    </message>
    <message>
        <source>The absolute tolerance has to be from 1e-12 to 1 K.</source>
        <translation>Die absolute Toleranz muss von 1e-12 bis 1 K liegen.</translation>
    </message>
    <message>
        <source>The tolerance of switching times has to be from 1e-9 to 10 s.</source>
        <translation>Die Toleranz der Schaltzeiten muss von 1e-9 bis 10 s liegen.</translation>
    </message>
    <message>
        <source>The time between samples must not be negative.</source>
        <translation>Die Zeit zwischen Stichproben darf nicht negativ sein.</translation>
    </message>
    <message>
        <source>Hoses and jacket take 2 to 20 cells.</source>
        <translation>Schläuche und Wassermantel brauchen 2 bis 20 Zellen.</translation>
    </message>
    <message>
        <source>There is no heater.</source>
        <translation>Es gibt kein Heizgerät.</translation>
    </message>
    <message>
        <source>The block&apos;s heat capacity has to be over 0.</source>
        <translation>Die Wärmekapazität des Blocks muss über 0 liegen.</translation>
    </message>
    <message>
        <source>The engine has to hold coolant.</source>
        <translation>Der Motor muss Kühlmittel fassen.</translation>
    </message>
    <message>
        <source>The block&apos;s heat loss must not be negative.</source>
        <translation>Der Wärmeverlust des Blocks darf nicht negativ sein.</translation>
    </message>
    <message>
        <source>Conduction within the block must not be negative.</source>
        <translation>Die Wärmeleitung im Block darf nicht negativ sein.</translation>
    </message>
    <message>
        <source>The loops together sweep more than 0.98 of the block.</source>
        <translation>Die Kreisläufe zusammen erfassen mehr als 0,98 des Blocks.</translation>
    </message>
    <message>
        <source>Temperatures have to be from -100 to 200 degC.</source>
        <translation>Temperaturen müssen von -100 bis 200 °C liegen.</translation>
    </message>
    <message>
        <source>The start is at the boiling point already.</source>
        <translation>Der Start liegt schon am Siedepunkt.</translation>
    </message>
    <message>
        <source>A warm return has to be over the start.</source>
        <translation>Ein warmer Rücklauf muss über dem Start liegen.</translation>
    </message>
    <message>
        <source>After {0} s the heater&apos;s chamber boils, at {1}; the heater was stopped.</source>
        <translation>Nach {0} s siedet die Kammer des Heizgeräts, bei {1}; das Heizgerät wurde gestoppt.</translation>
    </message>
    <message>
        <source>The engine is at {0} after {1} s.</source>
        <translation>Der Motor ist nach {1} s bei {0}.</translation>
    </message>
    <message>
        <source>The warm-up was given up: it took more steps than allowed.</source>
        <translation>Das Aufheizen wurde aufgegeben: es brauchte mehr Schritte als erlaubt.</translation>
    </message>
    <message>
        <source>The warm-up could not be followed past {0} s.</source>
        <translation>Das Aufheizen ließ sich nicht über {0} s hinaus verfolgen.</translation>
    </message>
    <message>
        <source>After {0} s coolant is under its freezing point, {1}.</source>
        <translation>Nach {0} s liegt Kühlmittel unter seinem Gefrierpunkt, {1}.</translation>
    </message>
    <message>
        <source>No bore is left: of those in stock, {0} fell to &quot;{a}&quot;.</source>
        <translation>Kein Innendurchmesser bleibt: von den erhältlichen scheiterten {0} an „{a}“.</translation>
    </message>
    <message>
        <source>No pair of ports is left: {0} fell to &quot;{a}&quot;.</source>
        <translation>Kein Anschlusspaar bleibt: {0} scheiterten an „{a}“.</translation>
    </message>
    <message>
        <source>No place for the heater is left: {0} fell to &quot;{a}&quot; ({b}).</source>
        <translation>Kein Platz für das Heizgerät bleibt: {0} scheiterten an „{a}“ ({b}).</translation>
    </message>
    <message>
        <source>No place for the heater is left: {0} fell to &quot;{a}&quot;.</source>
        <translation>Kein Platz für das Heizgerät bleibt: {0} scheiterten an „{a}“.</translation>
    </message>
    <message>
        <source>No way for the supply hose is left: {0} of those tried fell to &quot;{a}&quot; ({b}).</source>
        <translation>Kein Weg für den Vorlaufschlauch bleibt: {0} der versuchten scheiterten an „{a}“ ({b}).</translation>
    </message>
    <message>
        <source>No way for the supply hose is left: {0} of those tried fell to &quot;{a}&quot;.</source>
        <translation>Kein Weg für den Vorlaufschlauch bleibt: {0} der versuchten scheiterten an „{a}“.</translation>
    </message>
    <message>
        <source>No way for the return hose is left: {0} of those tried fell to &quot;{a}&quot; ({b}).</source>
        <translation>Kein Weg für den Rücklaufschlauch bleibt: {0} der versuchten scheiterten an „{a}“ ({b}).</translation>
    </message>
    <message>
        <source>No way for the return hose is left: {0} of those tried fell to &quot;{a}&quot;.</source>
        <translation>Kein Weg für den Rücklaufschlauch bleibt: {0} der versuchten scheiterten an „{a}“.</translation>
    </message>
    <message>
        <source>Every hose is sound by itself, but {0} of the loops they make fell to &quot;{a}&quot;.</source>
        <translation>Jeder Schlauch für sich ist in Ordnung, aber {0} der Kreisläufe daraus scheiterten an „{a}“.</translation>
    </message>
    <message>
        <source>Drawn soundly, but filled, warmed up and tilted {0} of the loops fell to &quot;{a}&quot;.</source>
        <translation>Gezeichnet in Ordnung, aber gefüllt, aufgeheizt und geneigt scheiterten {0} der Kreisläufe an „{a}“.</translation>
    </message>
    <message>
        <source>the coolant has to be mixed anew</source>
        <translation>das Kühlmittel muss neu gemischt werden</translation>
    </message>
    <message>
        <source>what is in the engine has to be found out</source>
        <translation>was im Motor ist, muss ermittelt werden</translation>
    </message>
    <message>
        <source>the tank has to be larger or filled higher</source>
        <translation>der Behälter muss größer sein oder höher gefüllt werden</translation>
    </message>
    <message>
        <source>it takes another kind of heater</source>
        <translation>eine andere Art Heizgerät ist nötig</translation>
    </message>
    <message>
        <source>it takes a larger heater or less wind, or is not to be had</source>
        <translation>ein größeres Heizgerät oder weniger Wind ist nötig, oder es ist nicht zu erreichen</translation>
    </message>
    <message>
        <source>with the bends next to it.</source>
        <translation>samt den Bögen daneben.</translation>
    </message>
    <message>
        <source>and lay its hoses anew.</source>
        <translation>und die Schläuche neu verlegen.</translation>
    </message>
    <message>
        <source>Set {a} upright</source>
        <translation>{a} aufrecht stellen</translation>
    </message>
    <message>
        <source>Lay {a} level, its top to the right</source>
        <translation>{a} waagrecht legen, Oberseite nach rechts</translation>
    </message>
    <message>
        <source>Lay {a} level, its top to the left</source>
        <translation>{a} waagrecht legen, Oberseite nach links</translation>
    </message>
    <message>
        <source>Lower {a} by {0}</source>
        <translation>{a} um {0} absenken</translation>
    </message>
    <message>
        <source>Move {a} to the left by {0}</source>
        <translation>{a} um {0} nach links rücken</translation>
    </message>
    <message>
        <source>Move {a} to the right by {0}</source>
        <translation>{a} um {0} nach rechts rücken</translation>
    </message>
    <message>
        <source>Move {a} towards you by {0}</source>
        <translation>{a} um {0} zu Ihnen hin rücken</translation>
    </message>
    <message>
        <source>Move {a} away from you by {0}</source>
        <translation>{a} um {0} von Ihnen weg rücken</translation>
    </message>
    <message>
        <source>Raise the filler or surge tank by {0}, and fill to match.</source>
        <translation>Einfüllstutzen oder Ausgleichsbehälter um {0} anheben und entsprechend füllen.</translation>
    </message>
    <message>
        <source>Mount {a} to the frame.</source>
        <translation>{a} am Rahmen befestigen.</translation>
    </message>
    <message>
        <source>Move {a} towards {b} by {0}</source>
        <translation>{a} um {0} näher an {b} rücken</translation>
    </message>
    <message>
        <source>Raise {a} by {0}</source>
        <translation>{a} um {0} anheben</translation>
    </message>
    <message>
        <source>Lay both hoses of {a} anew, straight out of their ends.</source>
        <translation>Beide Schläuche von {a} neu verlegen, gerade aus ihren Enden heraus.</translation>
    </message>
    <message>
        <source>Lower this bend of {a} by {0}.</source>
        <translation>Diesen Bogen von {a} um {0} absenken.</translation>
    </message>
    <message>
        <source>Raise this bend of {a} by {0}.</source>
        <translation>Diesen Bogen von {a} um {0} anheben.</translation>
    </message>
    <message>
        <source>Lower {1} bends of {a}, the highest by {0}.</source>
        <translation>{1} Bögen von {a} absenken, den höchsten um {0}.</translation>
    </message>
    <message>
        <source>Raise {1} bends of {a}, the lowest by {0}.</source>
        <translation>{1} Bögen von {a} anheben, den tiefsten um {0}.</translation>
    </message>
    <message>
        <source>Lead {a} so that it rises all the way: move {1} of its bends, the farthest by {0}.</source>
        <translation>{a} durchgehend steigend führen: {1} Bögen verschieben, den weitesten um {0}.</translation>
    </message>
    <message>
        <source>Lead {a} so that it falls all the way: move {1} of its bends, the farthest by {0}.</source>
        <translation>{a} durchgehend fallend führen: {1} Bögen verschieben, den weitesten um {0}.</translation>
    </message>
    <message>
        <source>Leave out bend {0} of {a}.</source>
        <translation>Bogen {0} von {a} weglassen.</translation>
    </message>
    <message>
        <source>Move this bend of {a} up by {0}.</source>
        <translation>Diesen Bogen von {a} um {0} nach oben rücken.</translation>
    </message>
    <message>
        <source>Move this bend of {a} down by {0}.</source>
        <translation>Diesen Bogen von {a} um {0} nach unten rücken.</translation>
    </message>
    <message>
        <source>Move this bend of {a} to the right by {0}.</source>
        <translation>Diesen Bogen von {a} um {0} nach rechts rücken.</translation>
    </message>
    <message>
        <source>Move this bend of {a} to the left by {0}.</source>
        <translation>Diesen Bogen von {a} um {0} nach links rücken.</translation>
    </message>
    <message>
        <source>Move this bend of {a} away from you by {0}.</source>
        <translation>Diesen Bogen von {a} um {0} von Ihnen weg rücken.</translation>
    </message>
    <message>
        <source>Move this bend of {a} towards you by {0}.</source>
        <translation>Diesen Bogen von {a} um {0} zu Ihnen hin rücken.</translation>
    </message>
    <message>
        <source>Open this bend of {a} to a radius of {0}.</source>
        <translation>Diesen Bogen von {a} auf einen Radius von {0} öffnen.</translation>
    </message>
    <message>
        <source>Bend {a} tighter here, to a radius of {0}.</source>
        <translation>{a} hier enger biegen, auf einen Radius von {0}.</translation>
    </message>
    <message>
        <source>Use a moulded elbow for this bend of {a}.</source>
        <translation>Für diesen Bogen von {a} einen Formbogen verwenden.</translation>
    </message>
    <message>
        <source>Lead {a} straight out of its end for {0} before it bends.</source>
        <translation>{a} vor dem Bogen {0} gerade aus dem Ende führen.</translation>
    </message>
    <message>
        <source>Lead {a} round a bend {0} to the side.</source>
        <translation>{a} um einen Bogen {0} zur Seite führen.</translation>
    </message>
    <message>
        <source>Lay {a} anew: straight out of both ends, with {0} bends.</source>
        <translation>{a} neu verlegen: gerade aus beiden Enden, mit {0} Bögen.</translation>
    </message>
    <message>
        <source>Turn the elbow on {a} so that it leads down by {0}, and lay {b} anew from there.</source>
        <translation>Den Winkel an {a} so drehen, dass er um {0} nach unten führt, und {b} von dort neu verlegen.</translation>
    </message>
    <message>
        <source>Add an isolation valve to {a} {0} from {b}.</source>
        <translation>Absperrventil in {a} setzen, {0} entfernt von {b}.</translation>
    </message>
    <message>
        <source>Let the heater cool, then open this valve of {a}.</source>
        <translation>Heizgerät abkühlen lassen, dann dieses Ventil öffnen: {a}.</translation>
    </message>
    <message>
        <source>Take the reducer out of {a}.</source>
        <translation>Die Reduzierung ausbauen: {a}.</translation>
    </message>
    <message>
        <source>Take the check valve out of {a}.</source>
        <translation>Das Rückschlagventil ausbauen: {a}.</translation>
    </message>
    <message>
        <source>Add a clip to {a} at {0} from where it starts.</source>
        <translation>Eine Halteschelle an {a} setzen, {0} vom Anfang.</translation>
    </message>
    <message>
        <source>Add {1} clips to {a}, the first at {0} from where it starts.</source>
        <translation>{1} Halteschellen an {a} setzen, die erste {0} vom Anfang.</translation>
    </message>
    <message>
        <source>Use hose of {0} bore for {a}, with hose ends and valves to match</source>
        <translation>Schlauch mit {0} Innendurchmesser für {a} verwenden, samt passenden Schlauchtüllen und Ventilen</translation>
    </message>
    <message>
        <source>Use hose of {0} bore on both sides, with hose ends and valves to match</source>
        <translation>Auf beiden Seiten Schlauch mit {0} Innendurchmesser verwenden, samt passenden Schlauchtüllen und Ventilen</translation>
    </message>
    <message>
        <source>and lay it anew with wider bends.</source>
        <translation>und mit weiteren Bögen neu verlegen.</translation>
    </message>
    <message>
        <source>Use a hose end with a bore of {0} on {a}.</source>
        <translation>An {a} eine Schlauchtülle mit {0} Innendurchmesser verwenden.</translation>
    </message>
    <message>
        <source>Use a part with a bore of {0} in {a} here.</source>
        <translation>In {a} hier ein Teil mit {0} Innendurchmesser verwenden.</translation>
    </message>
    <message>
        <source>Take {a} instead of {b}, and lay {c} anew from there.</source>
        <translation>{a} statt {b} nehmen und {c} von dort neu verlegen.</translation>
    </message>
    <message>
        <source>Take {a} instead of {b}.</source>
        <translation>{a} statt {b} nehmen.</translation>
    </message>
    <message>
        <source>Leave {a} spare: no hose is on it.</source>
        <translation>{a} frei lassen: kein Schlauch sitzt daran.</translation>
    </message>
    <message>
        <source>Connect {a} to {b}, and lay it anew.</source>
        <translation>{a} mit {b} verbinden und neu verlegen.</translation>
    </message>
    <message>
        <source>Connect {a} to {b}.</source>
        <translation>{a} mit {b} verbinden.</translation>
    </message>
    <message>
        <source>Lay a supply hose from {a} to {b}.</source>
        <translation>Einen Vorlaufschlauch von {a} nach {b} verlegen.</translation>
    </message>
    <message>
        <source>Lay a return hose from {b} to {a}.</source>
        <translation>Einen Rücklaufschlauch von {b} nach {a} verlegen.</translation>
    </message>
    <message>
        <source>Lay a supply hose from {a} and a return hose to {b}, both on {c}.</source>
        <translation>Einen Vorlaufschlauch von {a} und einen Rücklaufschlauch nach {b} verlegen, beide an {c}.</translation>
    </message>
    <message>
        <source>Connect {a} to {b} and {c}, and lay it anew.</source>
        <translation>{a} mit {b} und {c} verbinden und neu verlegen.</translation>
    </message>
    <message>
        <source>ground</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>Ground: {0} more than the least clearance.</source>
        <translation>Boden: {0} mehr als der Mindestabstand.</translation>
    </message>
    <message>
        <source>hot or moving things</source>
        <translation>Heißes oder Bewegtes</translation>
    </message>
    <message>
        <source>Hot or moving things: {0} more than the least clearance.</source>
        <translation>Heißes oder Bewegtes: {0} mehr als der Mindestabstand.</translation>
    </message>
    <message>
        <source>span between clips</source>
        <translation>Spannweite zwischen Halteschellen</translation>
    </message>
    <message>
        <source>Clips: the longest span could be {0} longer.</source>
        <translation>Halteschellen: die längste Spannweite könnte {0} länger sein.</translation>
    </message>
    <message>
        <source>slack between frame and engine</source>
        <translation>Spiel zwischen Rahmen und Motor</translation>
    </message>
    <message>
        <source>Slack between frame and engine: {0} of its length more than the least.</source>
        <translation>Spiel zwischen Rahmen und Motor: {0} der Länge mehr als das Mindeste.</translation>
    </message>
    <message>
        <source>heater under the jacket</source>
        <translation>Heizgerät unter dem Wassermantel</translation>
    </message>
    <message>
        <source>Heater under the jacket: {0} lower than it has to be.</source>
        <translation>Heizgerät unter dem Wassermantel: {0} tiefer als nötig.</translation>
    </message>
    <message>
        <source>Coolant level: {0} over the highest point.</source>
        <translation>Kühlmittelstand: {0} über dem höchsten Punkt.</translation>
    </message>
    <message>
        <source>fall of the supply hose</source>
        <translation>Gefälle des Vorlaufschlauchs</translation>
    </message>
    <message>
        <source>Supply hose: {0} more fall than it needs.</source>
        <translation>Vorlaufschlauch: {0} mehr Gefälle als nötig.</translation>
    </message>
    <message>
        <source>Move {a} %1</source>
        <translation>{a} rücken: %1</translation>
    </message>
    <message>
        <source>%1 to the right</source>
        <translation>%1 nach rechts</translation>
    </message>
    <message>
        <source>%1 to the left</source>
        <translation>%1 nach links</translation>
    </message>
    <message>
        <source>%1 away from you</source>
        <translation>%1 von Ihnen weg</translation>
    </message>
    <message>
        <source>%1 towards you</source>
        <translation>%1 zu Ihnen hin</translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation>%1 nach oben</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>%1 nach unten</translation>
    </message>
    <message>
        <source>Take {a} for the supply instead of {b}.</source>
        <translation>{a} für den Vorlauf nehmen statt {b}.</translation>
    </message>
    <message>
        <source>Take {a} for the return instead of {b}.</source>
        <translation>{a} für den Rücklauf nehmen statt {b}.</translation>
    </message>
    <message>
        <source>Turn the elbow on {a} so that it leads down by {0}.</source>
        <translation>Den Winkel an {a} so drehen, dass er um {0} nach unten führt.</translation>
    </message>
    <message>
        <source>Use hose of {0} bore, with hose ends and valves to match.</source>
        <translation>Schlauch mit {0} Innendurchmesser verwenden, samt passenden Schlauchtüllen und Ventilen.</translation>
    </message>
    <message>
        <source>{0} of hose of {1} bore, {2}.</source>
        <translation>{0} Schlauch mit Innendurchmesser {1}, {2}.</translation>
    </message>
    <message>
        <source>{0} of hose of {1} bore; its flow is not computed.</source>
        <translation>{0} Schlauch mit Innendurchmesser {1}; der Durchfluss ist nicht berechnet.</translation>
    </message>
    <message>
        <source>%1 Its hoses may sag %2 before they hold air or coolant.</source>
        <translation>%1 Die Schläuche dürfen %2 durchhängen, bevor Luft oder Kühlmittel darin stehen bleibt.</translation>
    </message>
    <message>
        <source>%1 Its hoses may sag more than %2.</source>
        <translation>%1 Die Schläuche dürfen mehr als %2 durchhängen.</translation>
    </message>
    <message>
        <source>{0} to spare.</source>
        <translation>{0} Reserve.</translation>
    </message>
    <message>
        <source>{0} left: sag of {a}</source>
        <translation>noch {0}: Durchhang von {a}</translation>
    </message>
    <message>
        <source>{0} left: {a}</source>
        <translation>noch {0}: {a}</translation>
    </message>
    <message>
        <source>Not sound on every grade that is judged.</source>
        <translation>Nicht bei jeder beurteilten Neigung in Ordnung.</translation>
    </message>
    <message>
        <source>Not judged, &quot;{a}&quot;: {b}.</source>
        <translation>Nicht beurteilt, „{a}“: {b}.</translation>
    </message>
    <message>
        <source>Slack: every hose goes round a bend of {0} or more.</source>
        <translation>Spiel: jeder Schlauch geht um einen Bogen von {0} oder mehr.</translation>
    </message>
    <message>
        <source>Turn {a} by {0} about its upright axis.</source>
        <translation>{a} um {0} um die Hochachse drehen.</translation>
    </message>
    <message>
        <source>there is no heater to propose a layout for</source>
        <translation>es gibt kein Heizgerät, für das eine Anordnung vorzuschlagen wäre</translation>
    </message>
    <message>
        <source>the space for the heater is no box</source>
        <translation>der Raum für das Heizgerät ist kein Quader</translation>
    </message>
    <message>
        <source>a supply port and a return port are not entered</source>
        <translation>ein Vorlaufanschluss und ein Rücklaufanschluss sind nicht eingegeben</translation>
    </message>
    <message>
        <source>a supply port and a return port that no other hose is on are not entered</source>
        <translation>ein Vorlaufanschluss und ein Rücklaufanschluss ohne anderen Schlauch sind nicht eingegeben</translation>
    </message>
    <message>
        <source>The number is too large or too small.</source>
        <translation>Die Zahl ist zu groß oder zu klein.</translation>
    </message>
    <message>
        <source>“%1” is not a number.</source>
        <translation>„%1“ ist keine Zahl.</translation>
    </message>
    <message>
        <source>%1 has a comma and a point: type thousands without a separator, as in 1234.5.</source>
        <translation>%1 hat ein Komma und einen Punkt: Tausender ohne Trennzeichen eingeben, wie in 1234,5.</translation>
    </message>
    <message>
        <source>%1 has more than one decimal sign: type thousands without a separator.</source>
        <translation>%1 hat mehr als ein Dezimalzeichen: Tausender ohne Trennzeichen eingeben.</translation>
    </message>
    <message>
        <source>%1 could be %2 or %3.%4: type one of these, with a point for decimals and nothing between thousands.</source>
        <translation>%1 könnte %2 oder %3.%4 sein: eines davon eingeben, mit Punkt für Dezimalen und nichts zwischen Tausendern.</translation>
    </message>
    <message>
        <source>A fraction cannot have 0 under the line.</source>
        <translation>Ein Bruch kann keine 0 unter dem Strich haben.</translation>
    </message>
    <message>
        <source>There is no number at “%1”.</source>
        <translation>Bei „%1“ steht keine Zahl.</translation>
    </message>
    <message>
        <source>The fraction after a whole number must be less than 1, as in 1 1/8.</source>
        <translation>Der Bruch nach einer ganzen Zahl muss kleiner als 1 sein, wie in 1 1/8.</translation>
    </message>
    <message>
        <source>Nothing was typed.</source>
        <translation>Nichts wurde eingegeben.</translation>
    </message>
    <message>
        <source>%1 Expected is %2.</source>
        <translation>%1 Erwartet wird %2.</translation>
    </message>
    <message>
        <source>“%1” after the number was not understood.</source>
        <translation>„%1“ nach der Zahl wurde nicht verstanden.</translation>
    </message>
    <message>
        <source>“%1” is not a unit that fits here.</source>
        <translation>„%1“ ist keine hier passende Einheit.</translation>
    </message>
    <message>
        <source>That is colder than absolute zero.</source>
        <translation>Das ist kälter als der absolute Nullpunkt.</translation>
    </message>
    <message>
        <source>Without a % sign the number must lie between -1 and 1.</source>
        <translation>Ohne %-Zeichen muss die Zahl zwischen -1 und 1 liegen.</translation>
    </message>
    <message>
        <source>“%1” after the length was not understood.</source>
        <translation>„%1“ nach der Länge wurde nicht verstanden.</translation>
    </message>
    <message>
        <source>Only inches can follow feet.</source>
        <translation>Nur Zoll können auf Fuß folgen.</translation>
    </message>
    <message>
        <source>Inches after feet must be fewer than 12.</source>
        <translation>Zoll nach Fuß müssen weniger als 12 sein.</translation>
    </message>
    <message>
        <source>level</source>
        <translation>waagrecht</translation>
    </message>
    <message>
        <source>falls %1</source>
        <translation>fällt %1</translation>
    </message>
    <message>
        <source>rises %1</source>
        <translation>steigt %1</translation>
    </message>
    <message>
        <source>There is no number.</source>
        <translation>Es steht keine Zahl da.</translation>
    </message>
    <message>
        <source>The second number of a slope must be over 0, with nothing after it.</source>
        <translation>Die zweite Zahl einer Steigung muss über 0 liegen, und nichts darf folgen.</translation>
    </message>
    <message>
        <source>The text is too long to be a quantity.</source>
        <translation>Der Text ist zu lang für eine Größe.</translation>
    </message>
    <message>
        <source>The number is too large.</source>
        <translation>Die Zahl ist zu groß.</translation>
    </message>
    <message>
        <source>steep</source>
        <translation>steil</translation>
    </message>
    <message>
        <source>falls steeply</source>
        <translation>fällt steil</translation>
    </message>
    <message>
        <source>1 in %1</source>
        <translation>1 zu %1</translation>
    </message>
    <message>
        <source>falls 1 in %1</source>
        <translation>fällt 1 zu %1</translation>
    </message>
    <message>
        <source>1 bore</source>
        <translation>1 Durchmesser</translation>
    </message>
    <message>
        <source>a plain number such as 3 or 1.5</source>
        <translation>eine einfache Zahl wie 3 oder 1,5</translation>
    </message>
    <message>
        <source>a length such as 19 mm, 1.9 cm, 3/4 in or 2 ft 3 1/2 in</source>
        <translation>eine Länge wie 19 mm, 1,9 cm, 3/4 in oder 2 ft 3 1/2 in</translation>
    </message>
    <message>
        <source>a head such as 9 mm or 0.35 in</source>
        <translation>eine Druckhöhe wie 9 mm oder 0,35 in</translation>
    </message>
    <message>
        <source>a volume such as 250 ml, 1.2 l, 8 fl oz or 2 qt</source>
        <translation>ein Volumen wie 250 ml, 1,2 l, 8 fl oz oder 2 qt</translation>
    </message>
    <message>
        <source>a volume such as 12 l, 500 ml, 2 qt or 3 gal</source>
        <translation>ein Volumen wie 12 l, 500 ml, 2 qt oder 3 gal</translation>
    </message>
    <message>
        <source>a mass such as 450 kg or 990 lb</source>
        <translation>eine Masse wie 450 kg oder 990 lb</translation>
    </message>
    <message>
        <source>a temperature such as 82 °C or 180 °F</source>
        <translation>eine Temperatur wie 82 °C oder 180 °F</translation>
    </message>
    <message>
        <source>a temperature difference such as 5 K or 9 °F</source>
        <translation>eine Temperaturdifferenz wie 5 K oder 9 °F</translation>
    </message>
    <message>
        <source>a power such as 1500 W or 1.5 kW</source>
        <translation>eine Leistung wie 1500 W oder 1,5 kW</translation>
    </message>
    <message>
        <source>an energy such as 12 kWh</source>
        <translation>eine Energie wie 12 kWh</translation>
    </message>
    <message>
        <source>a voltage such as 120 V</source>
        <translation>eine Spannung wie 120 V</translation>
    </message>
    <message>
        <source>a current such as 12.5 A</source>
        <translation>ein Strom wie 12,5 A</translation>
    </message>
    <message>
        <source>a pressure such as 103 kPa, 1 bar or 15 psi</source>
        <translation>ein Druck wie 103 kPa, 1 bar oder 15 psi</translation>
    </message>
    <message>
        <source>a pressure such as 88 Pa</source>
        <translation>ein Druck wie 88 Pa</translation>
    </message>
    <message>
        <source>a speed such as 4 m/s, 15 km/h or 9 mph</source>
        <translation>eine Geschwindigkeit wie 4 m/s, 15 km/h oder 9 mph</translation>
    </message>
    <message>
        <source>a percentage such as 50 %</source>
        <translation>ein Prozentwert wie 50 %</translation>
    </message>
    <message>
        <source>an angle such as 15 or 15°</source>
        <translation>ein Winkel wie 15 oder 15°</translation>
    </message>
    <message>
        <source>an altitude such as 1200 m or 3900 ft</source>
        <translation>eine Höhe über dem Meer wie 1200 m oder 3900 ft</translation>
    </message>
    <message>
        <source>%1 bores</source>
        <translation>%1 Durchmesser</translation>
    </message>
    <message>
        <source>a number of bores such as 6</source>
        <translation>eine Anzahl Innendurchmesser wie 6</translation>
    </message>
    <message>
        <source>a share such as 70 % or 0.7</source>
        <translation>ein Anteil wie 70 % oder 0,7</translation>
    </message>
    <message>
        <source>a slope such as 1 in 50, 1:50 or 2 %</source>
        <translation>eine Steigung wie 1 zu 50, 1:50 oder 2 %</translation>
    </message>
    <message>
        <source>a time such as 24 h, 90 min or 2 days</source>
        <translation>eine Zeit wie 24 h, 90 min oder 2 days</translation>
    </message>
    <message>
        <source>a flow such as 3.5 l/min or 0.9 gal/min</source>
        <translation>ein Durchfluss wie 3,5 l/min oder 0,9 gal/min</translation>
    </message>
    <message>
        <source>a resistance such as 0.35 Ω</source>
        <translation>ein Widerstand wie 0,35 Ω</translation>
    </message>
    <message>
        <source>a resistance by length such as 4.61 Ω/km or 1.24 Ω/kft</source>
        <translation>ein Widerstand je Länge wie 4,61 Ω/km oder 1,24 Ω/kft</translation>
    </message>
    <message>
        <source>a section such as 2.5 mm²</source>
        <translation>ein Querschnitt wie 2,5 mm²</translation>
    </message>
    <message>
        <source>a share such as 40 ppm or 40 mg/l</source>
        <translation>ein Anteil wie 40 ppm oder 40 mg/l</translation>
    </message>
    <message>
        <source>a loss such as 18 W/K or 10 W/°F</source>
        <translation>ein Verlust wie 18 W/K oder 10 W/°F</translation>
    </message>
    <message>
        <source>Loss of hose ends, times the formula</source>
        <translation>Verlust der Schlauchtüllen, mal Formel</translation>
    </message>
    <message>
        <source>Hooper (1988); no measurement at such slow flow is known, +-15 % of flow comes from here</source>
        <translation>Hooper (1988); keine Messung bei so langsamem Durchfluss bekannt, +-15 % des Durchflusses kommen daher</translation>
    </message>
    <message>
        <source>Loss of valves, elbows and tees, times the formula</source>
        <translation>Verlust von Ventilen, Winkeln und T-Stücken, mal Formel</translation>
    </message>
    <message>
        <source>Hooper (1981), an extrapolation under 1 in: +-35 %</source>
        <translation>Hooper (1981), unter 1 in extrapoliert: +-35 %</translation>
    </message>
    <message>
        <source>viscosity</source>
        <translation>Viskosität</translation>
    </message>
    <message>
        <source>Viscosity of the coolant, times the formula</source>
        <translation>Viskosität des Kühlmittels, mal Formel</translation>
    </message>
    <message>
        <source>Melinder (2010); published tables differ by so much</source>
        <translation>Melinder (2010); veröffentlichte Tabellen weichen um so viel ab</translation>
    </message>
    <message>
        <source>buoyancy</source>
        <translation>Auftrieb</translation>
    </message>
    <message>
        <source>Fall of density with temperature, times the formula</source>
        <translation>Dichteabnahme mit der Temperatur, mal Formel</translation>
    </message>
    <message>
        <source>Melinder (2010); the ASHRAE tables (2001) give 10 to 20 % less</source>
        <translation>Melinder (2010); die ASHRAE-Tabellen (2001) ergeben 10 bis 20 % weniger</translation>
    </message>
    <message>
        <source>roughness</source>
        <translation>Rauheit</translation>
    </message>
    <message>
        <source>Roughness of hoses</source>
        <translation>Rauheit der Schläuche</translation>
    </message>
    <message>
        <source>common practice: rubber and silicone count as smooth</source>
        <translation>gängige Praxis: Gummi und Silikon gelten als glatt</translation>
    </message>
    <message>
        <source>Share of the chamber&apos;s height at its outlet&apos;s temperature</source>
        <translation>Anteil der Kammerhöhe mit Auslasstemperatur</translation>
    </message>
    <message>
        <source>own choice: half drives about what an even rise does; none and all are the bounds</source>
        <translation>eigene Festlegung: die Hälfte treibt etwa so wie ein gleichmäßiger Anstieg; nichts und alles sind die Grenzen</translation>
    </message>
    <message>
        <source>Heat from coolant to block in the jacket, times the estimate</source>
        <translation>Wärme vom Kühlmittel an den Block im Wassermantel, mal Schätzung</translation>
    </message>
    <message>
        <source>own estimate: natural convection of a film of 100 W/m2 K over the jacket&apos;s surface</source>
        <translation>eigene Schätzung: freie Konvektion mit 100 W/m2 K über die Fläche des Wassermantels</translation>
    </message>
    <message>
        <source>Share of the engine that the loop reaches, times the estimate</source>
        <translation>Anteil des Motors, den der Kreislauf erreicht, mal Schätzung</translation>
    </message>
    <message>
        <source>own choice: distance between the ports over the engine&apos;s length</source>
        <translation>eigene Festlegung: Abstand der Anschlüsse durch Motorlänge</translation>
    </message>
    <message>
        <source>Conduction from the part reached to the rest</source>
        <translation>Wärmeleitung vom erreichten Teil in den Rest</translation>
    </message>
    <message>
        <source>own estimate: iron of 50 W/m K over 0.05 m2 and 0.3 m, and coolant moving by itself</source>
        <translation>eigene Schätzung: Eisen mit 50 W/m K auf 0,05 m2 und 0,3 m, und sich selbst bewegendes Kühlmittel</translation>
    </message>
    <message>
        <source>Heat loss of the engine, times the formula</source>
        <translation>Wärmeverlust des Motors, mal Formel</translation>
    </message>
    <message>
        <source>McAdams (1954) over five of six faces of a box round the engine, common practice</source>
        <translation>McAdams (1954) über fünf von sechs Flächen eines Quaders um den Motor, gängige Praxis</translation>
    </message>
    <message>
        <source>Share of the wind that reaches the engine</source>
        <translation>Anteil des Windes, der den Motor erreicht</translation>
    </message>
    <message>
        <source>own estimate: an engine stands behind bodywork or in an enclosure</source>
        <translation>eigene Schätzung: ein Motor steht hinter Karosserie oder in einer Kapsel</translation>
    </message>
    <message>
        <source>Share of the wind that reaches hoses</source>
        <translation>Anteil des Windes, der Schläuche erreicht</translation>
    </message>
    <message>
        <source>Engine mass where it is not entered, per litre of displacement</source>
        <translation>Motormasse, wo nicht eingegeben, je Liter Hubraum</translation>
    </message>
    <message>
        <source>from memory: iron diesel 75 to 110 kg</source>
        <translation>aus dem Gedächtnis: Eisen-Diesel 75 bis 110 kg</translation>
    </message>
    <message>
        <source>Specific heat of iron</source>
        <translation>Spezifische Wärme von Eisen</translation>
    </message>
    <message>
        <source>from memory, textbooks: grey iron 460 to 540 J/kg K</source>
        <translation>aus dem Gedächtnis, Lehrbücher: Grauguss 460 bis 540 J/kg K</translation>
    </message>
    <message>
        <source>Specific heat of aluminium alloy</source>
        <translation>Spezifische Wärme der Aluminiumlegierung</translation>
    </message>
    <message>
        <source>from memory, textbooks: 880 to 960 J/kg K</source>
        <translation>aus dem Gedächtnis, Lehrbücher: 880 bis 960 J/kg K</translation>
    </message>
    <message>
        <source>Coolant in the engine where it is not entered, per litre of displacement</source>
        <translation>Kühlmittel im Motor, wo nicht eingegeben, je Liter Hubraum</translation>
    </message>
    <message>
        <source>from memory: 1 to 2 litre in the engine alone</source>
        <translation>aus dem Gedächtnis: 1 bis 2 Liter im Motor allein</translation>
    </message>
    <message>
        <source>Heat held by chamber and element</source>
        <translation>Von Kammer und Heizelement gespeicherte Wärme</translation>
    </message>
    <message>
        <source>own estimate: 1.5 kg of steel</source>
        <translation>eigene Schätzung: 1,5 kg Stahl</translation>
    </message>
    <message>
        <source>The chamber&apos;s own convection when little flows</source>
        <translation>Eigenkonvektion der Kammer bei wenig Durchfluss</translation>
    </message>
    <message>
        <source>own estimate</source>
        <translation>eigene Schätzung</translation>
    </message>
    <message>
        <source>Share of the chamber&apos;s heat that a thermostat at the inlet senses</source>
        <translation>Anteil der Kammerwärme, den ein Thermostat am Einlass spürt</translation>
    </message>
    <message>
        <source>own choice, by conduction through the body it sits in</source>
        <translation>eigene Festlegung, durch Leitung im Gehäuse, in dem er sitzt</translation>
    </message>
    <message>
        <source>Lag of the thermostat</source>
        <translation>Verzögerung des Thermostats</translation>
    </message>
    <message>
        <source>own estimate: 20 to 60 s in a well</source>
        <translation>eigene Schätzung: 20 bis 60 s in einer Tauchhülse</translation>
    </message>
    <message>
        <source>Thermostat turns on, where it is not entered</source>
        <translation>Thermostat schaltet ein, wo nicht eingegeben</translation>
    </message>
    <message>
        <source>common practice: 100 degF</source>
        <translation>gängige Praxis: 100 °F</translation>
    </message>
    <message>
        <source>Thermostat turns off, where it is not entered</source>
        <translation>Thermostat schaltet aus, wo nicht eingegeben</translation>
    </message>
    <message>
        <source>common practice: 120 degF</source>
        <translation>gängige Praxis: 120 °F</translation>
    </message>
    <message>
        <source>Block temperature for which flow is shown on the drawing</source>
        <translation>Blocktemperatur, für die der Durchfluss auf der Zeichnung gilt</translation>
    </message>
    <message>
        <source>own choice: an engine that is kept warm</source>
        <translation>eigene Festlegung: ein warm gehaltener Motor</translation>
    </message>
    <message>
        <source>Head of the engine&apos;s pump between two ports of the block</source>
        <translation>Förderhöhe der Motorpumpe zwischen zwei Anschlüssen am Block</translation>
    </message>
    <message>
        <source>own estimate, at a fast idle; pumps differ</source>
        <translation>eigene Schätzung, bei erhöhtem Leerlauf; Pumpen sind verschieden</translation>
    </message>
    <message>
        <source>Head of the engine&apos;s pump between its suction and a port of the block</source>
        <translation>Förderhöhe der Motorpumpe zwischen Saugseite und einem Anschluss am Block</translation>
    </message>
    <message>
        <source>own estimate, at a fast idle with the thermostat open; pumps differ</source>
        <translation>eigene Schätzung, bei erhöhtem Leerlauf mit offenem Thermostat; Pumpen sind verschieden</translation>
    </message>
    <message>
        <source>Coolant with the engine running</source>
        <translation>Kühlmittel bei laufendem Motor</translation>
    </message>
    <message>
        <source>common practice: a usual thermostat</source>
        <translation>gängige Praxis: ein üblicher Thermostat</translation>
    </message>
    <message>
        <source>Coolant in the surge tank per metre of its height, times the engine&apos;s own</source>
        <translation>Kühlmittel im Ausgleichsbehälter je Meter Höhe, mal das im Motor</translation>
    </message>
    <message>
        <source>own estimate: tanks are made to take what the coolant grows by</source>
        <translation>eigene Schätzung: Behälter sind so groß, dass sie die Ausdehnung des Kühlmittels fassen</translation>
    </message>
    <message>
        <source>the loop of %1 is not closed</source>
        <translation>der Kreislauf von %1 ist nicht geschlossen</translation>
    </message>
    <message>
        <source>%1 has no length</source>
        <translation>%1 hat keine Länge</translation>
    </message>
    <message>
        <source>the power of %1 is not entered</source>
        <translation>die Leistung von %1 ist nicht eingegeben</translation>
    </message>
    <message>
        <source>neither the engine&apos;s coolant volume nor its displacement is entered</source>
        <translation>weder das Kühlmittelvolumen noch der Hubraum des Motors ist eingegeben</translation>
    </message>
    <message>
        <source>properties of coolant are known only up to 60 % of antifreeze</source>
        <translation>Eigenschaften des Kühlmittels sind nur bis 60 % Frostschutz bekannt</translation>
    </message>
    <message>
        <source>the hump in %1</source>
        <translation>Buckel in %1</translation>
    </message>
    <message>
        <source>the dip in %1</source>
        <translation>Senke in %1</translation>
    </message>
    <message>
        <source>the change of bore in %1</source>
        <translation>Querschnittswechsel in %1</translation>
    </message>
    <message>
        <source>the valve in %1</source>
        <translation>Ventil in %1</translation>
    </message>
    <message>
        <source>toward %1</source>
        <translation>Richtung %1</translation>
    </message>
    <message>
        <source>into the engine</source>
        <translation>in den Motor</translation>
    </message>
    <message>
        <source>into %1</source>
        <translation>in %1</translation>
    </message>
    <message>
        <source>the inlet of %1</source>
        <translation>%1 (Einlass)</translation>
    </message>
    <message>
        <source>the outlet of %1</source>
        <translation>%1 (Auslass)</translation>
    </message>
    <message>
        <source>Coolant runs through {a}, {0} up, {b}.</source>
        <translation>Kühlmittel läuft durch {a}, Höhe {0}, {b}.</translation>
    </message>
    <message>
        <source>Coolant spills over {a}, {0} up, {b}; the air behind it is sealed.</source>
        <translation>Kühlmittel läuft über {a}, Höhe {0}, {b}; die Luft dahinter ist eingeschlossen.</translation>
    </message>
    <message>
        <source>Coolant spills over {a}, {0} up, {b}.</source>
        <translation>Kühlmittel läuft über {a}, Höhe {0}, {b}.</translation>
    </message>
    <message>
        <source>Coolant fills {a} to its crown, {0} up.</source>
        <translation>Kühlmittel füllt {a} bis zum oberen Rand, Höhe {0}.</translation>
    </message>
    <message>
        <source>Coolant covers {a}, {0} up: air that is still behind it is sealed.</source>
        <translation>Kühlmittel bedeckt {a}, Höhe {0}: Luft, die noch dahinter ist, ist eingeschlossen.</translation>
    </message>
    <message>
        <source>Coolant covers {a}, {0} up.</source>
        <translation>Kühlmittel bedeckt {a}, Höhe {0}.</translation>
    </message>
    <message>
        <source>Coolant closes {a}, {0} up: the air beyond it is sealed.</source>
        <translation>Kühlmittel verschließt {a}, Höhe {0}: die Luft dahinter ist eingeschlossen.</translation>
    </message>
    <message>
        <source>Coolant closes {a}, {0} up: air no longer passes there.</source>
        <translation>Kühlmittel verschließt {a}, Höhe {0}: Luft kommt dort nicht mehr vorbei.</translation>
    </message>
    <message>
        <source>Coolant no longer runs over {a}.</source>
        <translation>Kühlmittel läuft nicht mehr über {a}.</translation>
    </message>
    <message>
        <source>{a} lets air pass again, {0} up.</source>
        <translation>{a} lässt wieder Luft durch, Höhe {0}.</translation>
    </message>
    <message>
        <source>Air bubbles through {a}, {0} up, {b}.</source>
        <translation>Luft perlt durch {a}, Höhe {0}, {b}.</translation>
    </message>
    <message>
        <source>No more air bubbles through {a}.</source>
        <translation>Keine Luft perlt mehr durch {a}.</translation>
    </message>
    <message>
        <source>Coolant reaches the bleed of {a}, {0} up; it is closed.</source>
        <translation>Kühlmittel erreicht die Entlüftung von {a}, Höhe {0}; sie wird geschlossen.</translation>
    </message>
    <message>
        <source>Coolant covers the element of {a}, {0} up.</source>
        <translation>Kühlmittel bedeckt das Heizelement von {a}, Höhe {0}.</translation>
    </message>
    <message>
        <source>The hose is pushed onto {a}, {0} up, over the coolant.</source>
        <translation>Der Schlauch wird auf {a} geschoben, Höhe {0}, über dem Kühlmittel.</translation>
    </message>
    <message>
        <source>{a} is opened, {0} up.</source>
        <translation>{a} wird geöffnet, Höhe {0}.</translation>
    </message>
    <message>
        <source>The vacuum is let go: what air is left shrinks to a fraction.</source>
        <translation>Das Vakuum wird aufgehoben: was an Luft bleibt, schrumpft auf einen Bruchteil.</translation>
    </message>
    <message>
        <source>Heater %1</source>
        <translation>Heizgerät %1</translation>
    </message>
    <message>
        <source>Filling is not computed: {a}.</source>
        <translation>Das Füllen ist nicht berechnet: {a}.</translation>
    </message>
    <message>
        <source>The engine is full; hoses and heater were filled before they were connected, and {0} of air got into each hose.</source>
        <translation>Der Motor ist voll; Schläuche und Heizgerät wurden vor dem Verbinden gefüllt, und in jeden Schlauch gelangten {0} Luft.</translation>
    </message>
    <message>
        <source>The engine is full; hoses and heater were filled before they were connected.</source>
        <translation>Der Motor ist voll; Schläuche und Heizgerät wurden vor dem Verbinden gefüllt.</translation>
    </message>
    <message>
        <source>Everything is pumped down to a vacuum, and coolant is let in.</source>
        <translation>Alles wird auf ein Vakuum abgepumpt, und Kühlmittel wird eingelassen.</translation>
    </message>
    <message>
        <source>Coolant is pumped in from below, at {a}.</source>
        <translation>Kühlmittel wird von unten eingepumpt, an {a}.</translation>
    </message>
    <message>
        <source>{0} of coolant was let out of the engine, down to {1}; the new hoses are empty.</source>
        <translation>{0} Kühlmittel wurden aus dem Motor abgelassen, bis auf {1}; die neuen Schläuche sind leer.</translation>
    </message>
    <message>
        <source>{0} of coolant was let out of the engine, down to {1}; the valves are shut and the new hoses empty.</source>
        <translation>{0} Kühlmittel wurden aus dem Motor abgelassen, bis auf {1}; die Ventile sind zu und die neuen Schläuche leer.</translation>
    </message>
    <message>
        <source>The engine is full, the valves are shut and the new hoses empty.</source>
        <translation>Der Motor ist voll, die Ventile sind zu und die neuen Schläuche leer.</translation>
    </message>
    <message>
        <source>Coolant is poured in at the filler.</source>
        <translation>Kühlmittel wird am Einfüllstutzen eingegossen.</translation>
    </message>
    <message>
        <source>Filled to {0}: {1} of coolant in hoses and chambers.</source>
        <translation>Gefüllt bis {0}: {1} Kühlmittel in Schläuchen und Kammern.</translation>
    </message>
    <message>
        <source>Filled no further than {0}: {1} of coolant in hoses and chambers.</source>
        <translation>Nur bis {0} gefüllt: {1} Kühlmittel in Schläuchen und Kammern.</translation>
    </message>
    <message>
        <source>{2} was let out before, and {3} has to be poured in.</source>
        <translation>{2} wurden vorher abgelassen, und {3} sind einzugießen.</translation>
    </message>
    <message>
        <source>the chamber of %1</source>
        <translation>%1 (Kammer)</translation>
    </message>
    <message>
        <source>{0} of air stay in {a}, {1} up.</source>
        <translation>{0} Luft bleiben hier: {a}, Höhe {1}.</translation>
    </message>
    <message>
        <source>{0} of air stay in {a}, {1} up: they close the bore and take {2} of head.</source>
        <translation>{0} Luft bleiben hier: {a}, Höhe {1}; sie verschließen den Querschnitt und kosten {2} Druckhöhe.</translation>
    </message>
    <message>
        <source>{0} of air stay in {a}, {1} up: they narrow the bore.</source>
        <translation>{0} Luft bleiben hier: {a}, Höhe {1}; sie verengen den Querschnitt.</translation>
    </message>
    <message>
        <source>Running the engine does not move it: {0} in the hose, and {1-2} clear it.</source>
        <translation>Der Motorlauf bewegt sie nicht: {0} im Schlauch, zum Austreiben braucht es {1-2}.</translation>
    </message>
    <message>
        <source>Running the engine may clear it: {0} in the hose, and {1-2} clear it.</source>
        <translation>Der Motorlauf treibt sie vielleicht aus: {0} im Schlauch, nötig sind {1-2}.</translation>
    </message>
    <message>
        <source>Running the engine clears it: {0} in the hose, and {1-2} clear it.</source>
        <translation>Der Motorlauf treibt sie aus: {0} im Schlauch, nötig sind {1-2}.</translation>
    </message>
    <message>
        <source>Running the engine does not move it.</source>
        <translation>Der Motorlauf bewegt sie nicht.</translation>
    </message>
    <message>
        <source>After the engine has run and cooled, top up {0}.</source>
        <translation>Nach Motorlauf und Abkühlen {0} nachfüllen.</translation>
    </message>
    <message>
        <source>At {0} the coolant has shrunk and stands at {1}.</source>
        <translation>Bei {0} ist das Kühlmittel geschrumpft und steht bei {1}.</translation>
    </message>
    <message>
        <source>Coolant does not cover the element of {a}.</source>
        <translation>Kühlmittel bedeckt das Heizelement nicht: {a}.</translation>
    </message>
    <message>
        <source>With the engine running nothing is known to flow through {a}.</source>
        <translation>Bei laufendem Motor ist kein Durchfluss durch {a} bekannt.</translation>
    </message>
    <message>
        <source>With the engine running {0} pass through {a}, from its supply port to its return port.</source>
        <translation>Bei laufendem Motor fließen {0} durch {a}, vom Vorlaufanschluss zum Rücklaufanschluss.</translation>
    </message>
    <message>
        <source>With the engine running {0} pass backward through {a}, from its return port to its supply port.</source>
        <translation>Bei laufendem Motor fließen {0} rückwärts durch {a}, vom Rücklaufanschluss zum Vorlaufanschluss.</translation>
    </message>
    <message>
        <source>%1 They bypass the radiator.</source>
        <translation>%1 Sie umgehen den Kühler.</translation>
    </message>
    <message>
        <source>there is no loop with a heater yet</source>
        <translation>es gibt noch keinen Kreislauf mit Heizgerät</translation>
    </message>
    <message>
        <source>the coolant level at cold full is not entered</source>
        <translation>der Kaltfüllstand des Kühlmittels ist nicht eingegeben</translation>
    </message>
    <message>
        <source>filling could not be computed: %1</source>
        <translation>das Füllen ließ sich nicht berechnen: %1</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>isolation valve</source>
        <translation>Absperrventil</translation>
    </message>
    <message>
        <source>check valve</source>
        <translation>Rückschlagventil</translation>
    </message>
    <message>
        <source>the %1 in %2</source>
        <translation>%2 (%1)</translation>
    </message>
    <message>
        <source>the hose end at the start of %1</source>
        <translation>%1 (Tülle am Anfang)</translation>
    </message>
    <message>
        <source>the hose end at the end of %1</source>
        <translation>%1 (Tülle am Ende)</translation>
    </message>
    <message>
        <source>there is no engine yet</source>
        <translation>es gibt noch keinen Motor</translation>
    </message>
    <message>
        <source>neither the engine&apos;s mass nor its displacement is entered</source>
        <translation>weder die Masse noch der Hubraum des Motors ist eingegeben</translation>
    </message>
    <message>
        <source>the engine&apos;s outline is not entered</source>
        <translation>der Umriss des Motors ist nicht eingegeben</translation>
    </message>
    <message>
        <source>the engine&apos;s outline has no size</source>
        <translation>der Umriss des Motors hat keine Größe</translation>
    </message>
    <message>
        <source>Sensor port</source>
        <translation>Fühleranschluss</translation>
    </message>
    <message>
        <source>Drain port</source>
        <translation>Ablassanschluss</translation>
    </message>
    <message>
        <source>Core plug</source>
        <translation>Froststopfen</translation>
    </message>
    <message>
        <source>Lower hose tee</source>
        <translation>T-Stück Kühlerschlauch</translation>
    </message>
    <message>
        <source>Head port</source>
        <translation>Kopfanschluss</translation>
    </message>
    <message>
        <source>Cabin line</source>
        <translation>Heizungsleitung</translation>
    </message>
    <message>
        <source>Port</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <source>Exhaust</source>
        <translation>Auspuff</translation>
    </message>
    <message>
        <source>Turbocharger</source>
        <translation>Turbolader</translation>
    </message>
    <message>
        <source>Heat shield</source>
        <translation>Hitzeschild</translation>
    </message>
    <message>
        <source>Belt</source>
        <translation>Riemen</translation>
    </message>
    <message>
        <source>Fan</source>
        <translation>Lüfter</translation>
    </message>
    <message>
        <source>Shaft</source>
        <translation>Welle</translation>
    </message>
    <message>
        <source>Steering</source>
        <translation>Lenkung</translation>
    </message>
    <message>
        <source>Suspension</source>
        <translation>Aufhängung</translation>
    </message>
    <message>
        <source>Keep clear</source>
        <translation>Sperrbereich</translation>
    </message>
    <message>
        <source>port</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <source>area</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>dimension</source>
        <translation>Maß</translation>
    </message>
    <message>
        <source>In the file: found %1, but allowed is %2.</source>
        <translation>In der Datei: gefunden %1, erlaubt ist aber %2.</translation>
    </message>
    <message>
        <source>At %1: found %2, but allowed is %3.</source>
        <translation>Bei %1: gefunden %2, erlaubt ist aber %3.</translation>
    </message>
    <message>
        <source>expected %1</source>
        <translation>erwartet: %1</translation>
    </message>
    <message>
        <source>well-formed JSON</source>
        <translation>wohlgeformtes JSON</translation>
    </message>
    <message>
        <source>more than %1 values in one file</source>
        <translation>mehr als %1 Werte in einer Datei</translation>
    </message>
    <message>
        <source>a sketch of fewer</source>
        <translation>eine Zeichnung mit weniger</translation>
    </message>
    <message>
        <source>a list of more than %1 items</source>
        <translation>eine Liste mit mehr als %1 Einträgen</translation>
    </message>
    <message>
        <source>a list of at most %1</source>
        <translation>eine Liste mit höchstens %1</translation>
    </message>
    <message>
        <source>more than %1 levels of nesting</source>
        <translation>mehr als %1 Ebenen Verschachtelung</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>a key that stands here twice</source>
        <translation>ein Schlüssel, der hier zweimal steht</translation>
    </message>
    <message>
        <source>each key once</source>
        <translation>jeder Schlüssel einmal</translation>
    </message>
    <message>
        <source>more than %1 keys in one object</source>
        <translation>mehr als %1 Schlüssel in einem Objekt</translation>
    </message>
    <message>
        <source>a finite number</source>
        <translation>eine endliche Zahl</translation>
    </message>
    <message>
        <source>the end of the file</source>
        <translation>das Ende der Datei</translation>
    </message>
    <message>
        <source>the rest of the sketch: the file is cut short</source>
        <translation>der Rest der Zeichnung: die Datei ist abgeschnitten</translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation>Zeile %1, Spalte %2</translation>
    </message>
    <message>
        <source>a choice that does not exist</source>
        <translation>eine Wahl, die es nicht gibt</translation>
    </message>
    <message>
        <source>%1, which %2 has too</source>
        <translation>%1, die auch %2 hat</translation>
    </message>
    <message>
        <source>an id of its own</source>
        <translation>eine eigene Kennung</translation>
    </message>
    <message>
        <source>an end that is on a port and on a heater</source>
        <translation>ein Ende, das an einem Anschluss und an einem Heizgerät sitzt</translation>
    </message>
    <message>
        <source>a port, a heater, or neither</source>
        <translation>ein Anschluss, ein Heizgerät oder keines von beiden</translation>
    </message>
    <message>
        <source>the id of a port of this sketch</source>
        <translation>die Kennung eines Anschlusses dieser Zeichnung</translation>
    </message>
    <message>
        <source>the id of a heater of this sketch</source>
        <translation>die Kennung eines Heizgeräts dieser Zeichnung</translation>
    </message>
    <message>
        <source>a list of %1</source>
        <translation>eine Liste von %1</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>ein Objekt</translation>
    </message>
    <message>
        <source>a value, as this key is required (%1)</source>
        <translation>ein Wert, da dieser Schlüssel nötig ist (%1)</translation>
    </message>
    <message>
        <source>an unknown key</source>
        <translation>ein unbekannter Schlüssel</translation>
    </message>
    <message>
        <source>the keys of the format only</source>
        <translation>nur die Schlüssel des Formats</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true oder false</translation>
    </message>
    <message>
        <source>a liquid-cooled engine only: an air-cooled engine has no water jacket, so a coolant heater cannot be fitted</source>
        <translation>nur ein flüssigkeitsgekühlter Motor: ein luftgekühlter hat keinen Wassermantel, ein Kühlmittel-Heizgerät lässt sich also nicht anbauen</translation>
    </message>
    <message>
        <source>a sketch, which is a JSON object</source>
        <translation>eine Zeichnung, also ein JSON-Objekt</translation>
    </message>
    <message>
        <source>%1, the mark of a Siphonwright sketch</source>
        <translation>%1, das Kennzeichen einer Siphonwright-Zeichnung</translation>
    </message>
    <message>
        <source>version %1</source>
        <translation>Version %1</translation>
    </message>
    <message>
        <source>up to version %1: this file comes from a newer Siphonwright than this one</source>
        <translation>bis Version %1: diese Datei stammt aus einem neueren Siphonwright als diesem</translation>
    </message>
    <message>
        <source>the whole number %1</source>
        <translation>die ganze Zahl %1</translation>
    </message>
    <message>
        <source>a file of %1 MiB</source>
        <translation>eine Datei von %1 MiB</translation>
    </message>
    <message>
        <source>at most %1 MiB</source>
        <translation>höchstens %1 MiB</translation>
    </message>
    <message>
        <source>nothing: the file is empty</source>
        <translation>nichts: die Datei ist leer</translation>
    </message>
    <message>
        <source>a sketch</source>
        <translation>eine Zeichnung</translation>
    </message>
    <message>
        <source>JSON in UTF-8</source>
        <translation>JSON in UTF-8</translation>
    </message>
    <message>
        <source>more than fits into this computer&apos;s memory</source>
        <translation>mehr, als in den Speicher dieses Rechners passt</translation>
    </message>
    <message>
        <source>a smaller sketch</source>
        <translation>eine kleinere Zeichnung</translation>
    </message>
    <message>
        <source>Jacket, lowest point</source>
        <translation>Wassermantel, tiefster Punkt</translation>
    </message>
    <message>
        <source>underside of the water jacket</source>
        <translation>Unterseite des Wassermantels</translation>
    </message>
    <message>
        <source>Jacket, highest point</source>
        <translation>Wassermantel, höchster Punkt</translation>
    </message>
    <message>
        <source>top of the head&apos;s jacket</source>
        <translation>Oberkante des Wassermantels im Kopf</translation>
    </message>
    <message>
        <source>Supply port</source>
        <translation>Vorlaufanschluss</translation>
    </message>
    <message>
        <source>middle of the opening</source>
        <translation>Mitte der Öffnung</translation>
    </message>
    <message>
        <source>Return port</source>
        <translation>Rücklaufanschluss</translation>
    </message>
    <message>
        <source>Thermostat housing</source>
        <translation>Thermostatgehäuse</translation>
    </message>
    <message>
        <source>middle of the housing</source>
        <translation>Mitte des Gehäuses</translation>
    </message>
    <message>
        <source>Tank cap</source>
        <translation>Behälterdeckel</translation>
    </message>
    <message>
        <source>sealing face of the filler or surge tank</source>
        <translation>Dichtfläche des Einfüllstutzens oder Ausgleichsbehälters</translation>
    </message>
    <message>
        <source>Tank mark, cold minimum</source>
        <translation>Behältermarke, kalt Minimum</translation>
    </message>
    <message>
        <source>beside the cap</source>
        <translation>neben dem Deckel</translation>
    </message>
    <message>
        <source>Tank mark, cold full</source>
        <translation>Behältermarke, kalt voll</translation>
    </message>
    <message>
        <source>Tank mark, hot</source>
        <translation>Behältermarke, heiß</translation>
    </message>
    <message>
        <source>Block, front face to rear face</source>
        <translation>Block, Vorderseite bis Rückseite</translation>
    </message>
    <message>
        <source>along the block</source>
        <translation>längs des Blocks</translation>
    </message>
    <message>
        <source>Frame rail over the floor</source>
        <translation>Rahmenträger über dem Boden</translation>
    </message>
    <message>
        <source>upper edge, at the block&apos;s front face</source>
        <translation>Oberkante, an der Vorderseite des Blocks</translation>
    </message>
    <message>
        <source>Frame sinks further by</source>
        <translation>Rahmen sinkt noch um</translation>
    </message>
    <message>
        <source>to lowest ride height</source>
        <translation>bis zur tiefsten Fahrhöhe</translation>
    </message>
    <message>
        <source>Supply port to return port</source>
        <translation>Vorlaufanschluss zu Rücklaufanschluss</translation>
    </message>
    <message>
        <source>straight, tape from opening to opening</source>
        <translation>gerade, Bandmaß von Öffnung zu Öffnung</translation>
    </message>
    <message>
        <source>Slope of the floor</source>
        <translation>Neigung des Bodens</translation>
    </message>
    <message>
        <source>inclinometer; + is higher at the engine&apos;s front</source>
        <translation>Neigungsmesser; + heißt zur Motorvorderseite hin höher</translation>
    </message>
    <message>
        <source>Slope of the frame rail</source>
        <translation>Neigung des Rahmenträgers</translation>
    </message>
    <message>
        <source>likewise</source>
        <translation>ebenso</translation>
    </message>
    <message>
        <source>Slope of the engine</source>
        <translation>Neigung des Motors</translation>
    </message>
    <message>
        <source>on a machined face along the crankshaft</source>
        <translation>auf einer bearbeiteten Fläche längs der Kurbelwelle</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>station</source>
        <translation>Längsmaß</translation>
    </message>
    <message>
        <source>across</source>
        <translation>Quermaß</translation>
    </message>
    <message>
        <source>{a}: {b} not measured.</source>
        <translation>{a}: {b} nicht gemessen.</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>thread</source>
        <translation>Gewinde</translation>
    </message>
    <message>
        <source>bore</source>
        <translation>Innendurchmesser</translation>
    </message>
    <message>
        <source>{a}: {b} not noted.</source>
        <translation>{a}: {b} nicht notiert.</translation>
    </message>
    <message>
        <source>{a} not noted.</source>
        <translation>{a} nicht notiert.</translation>
    </message>
    <message>
        <source>Place of the engine&apos;s thermostat, outlet or inlet</source>
        <translation>Lage des Motorthermostats, Austritt oder Eintritt</translation>
    </message>
    <message>
        <source>Supply voltage</source>
        <translation>Versorgungsspannung</translation>
    </message>
    <message>
        <source>Antifreeze in it now</source>
        <translation>Jetziges Frostschutzmittel</translation>
    </message>
    <message>
        <source>P was not measured: the floor is taken as level.</source>
        <translation>P wurde nicht gemessen: der Boden gilt als eben.</translation>
    </message>
    <message>
        <source>R was not measured: the frame rail is taken to run along the floor.</source>
        <translation>R wurde nicht gemessen: der Rahmenträger gilt als parallel zum Boden.</translation>
    </message>
    <message>
        <source>S was not measured: the engine is taken to stand as drawn, {0} to the floor.</source>
        <translation>S wurde nicht gemessen: der Motor gilt wie gezeichnet, {0} zum Boden.</translation>
    </message>
    <message>
        <source>The mount angle stays as drawn, {0}: it is S less P.</source>
        <translation>Der Einbauwinkel bleibt wie gezeichnet, {0}: er ist S minus P.</translation>
    </message>
    <message>
        <source>The drawing&apos;s datum is the floor: nothing was measured from the frame rail.</source>
        <translation>Die Bezugshöhe der Zeichnung ist der Boden: nichts wurde ab dem Rahmenträger gemessen.</translation>
    </message>
    <message>
        <source>What was measured from the floor cannot be drawn without L.</source>
        <translation>Ab dem Boden Gemessenes lässt sich ohne L nicht zeichnen.</translation>
    </message>
    <message>
        <source>The ground is not drawn: where it lies at lowest ride height needs M.</source>
        <translation>Der Boden ist nicht gezeichnet: wo er bei tiefster Fahrhöhe liegt, braucht M.</translation>
    </message>
    <message>
        <source>By C and D the ports are {0} apart, by N {1}: measure again.</source>
        <translation>Nach C und D sind die Anschlüsse {0} auseinander, nach N {1}: nochmals messen.</translation>
    </message>
    <message>
        <source>{a} is not under {b}: measure again.</source>
        <translation>{a} ist nicht unter {b}: nochmals messen.</translation>
    </message>
    <message>
        <source>{a} not measured.</source>
        <translation>{a} nicht gemessen.</translation>
    </message>
    <message>
        <source>Tank heater, %1</source>
        <translation>Kühlmittel-Heizgerät, %1</translation>
    </message>
    <message>
        <source>In-line 4, medium diesel</source>
        <translation>Reihen-4-Zylinder, mittlerer Diesel</translation>
    </message>
    <message>
        <source>In-line 6, highway diesel</source>
        <translation>Reihen-6-Zylinder, Fernverkehrsdiesel</translation>
    </message>
    <message>
        <source>In-line 6 laid flat, underfloor</source>
        <translation>Reihen-6-Zylinder liegend, Unterflur</translation>
    </message>
    <message>
        <source>near bank</source>
        <translation>nahe Zylinderbank</translation>
    </message>
    <message>
        <source>far bank</source>
        <translation>ferne Zylinderbank</translation>
    </message>
    <message>
        <source>Vee 6, medium diesel</source>
        <translation>V6, mittlerer Diesel</translation>
    </message>
    <message>
        <source>Vee 8, heavy diesel</source>
        <translation>V8, schwerer Diesel</translation>
    </message>
    <message>
        <source>Vee 12, generator set</source>
        <translation>V12, Stromaggregat</translation>
    </message>
    <message>
        <source>a sketch of %1 MiB</source>
        <translation>eine Zeichnung von %1 MiB</translation>
    </message>
    <message>
        <source>at most %1 MiB; a smaller photo may help</source>
        <translation>höchstens %1 MiB; ein kleineres Foto kann helfen</translation>
    </message>
    <message>
        <source>Supply hose %1</source>
        <translation>Vorlaufschlauch %1</translation>
    </message>
    <message>
        <source>Return hose %1</source>
        <translation>Rücklaufschlauch %1</translation>
    </message>
    <message>
        <source>%1 nose-up</source>
        <translation>%1 Front hoch</translation>
    </message>
    <message>
        <source>%1 nose-down</source>
        <translation>%1 Front tief</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>direction</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>The outlet was {0}, over the limit of {1}. Turn the heater off and leave it off until the cause is found.</source>
        <translation>Der Auslass hatte {0}, über dem Grenzwert von {1}. Heizgerät ausschalten und aus lassen, bis die Ursache gefunden ist.</translation>
    </message>
    <message>
        <source>Coolant was {0} under the full mark, lower than the cold minimum. Power off, find the leak, top up.</source>
        <translation>Das Kühlmittel stand {0} unter der Füllmarke, tiefer als der Kaltmindeststand. Strom aus, Leck suchen, nachfüllen.</translation>
    </message>
    <message>
        <source>The heater turned on {0} times within an hour, over the limit of {1}. Leave it off until the cause is found.</source>
        <translation>Das Heizgerät schaltete {0}-mal in einer Stunde ein, über dem Grenzwert von {1}. Aus lassen, bis die Ursache gefunden ist.</translation>
    </message>
    <message>
        <source>Take the same readings again, then compare the drawing with the job: hoses, ports, valves, voltage.</source>
        <translation>Dieselben Messwerte noch einmal nehmen, dann die Zeichnung mit dem Einbau vergleichen: Schläuche, Anschlüsse, Ventile, Spannung.</translation>
    </message>
    <message>
        <source>It runs as drawn, and as drawn it passes a limit</source>
        <translation>Es läuft wie gezeichnet, und so gezeichnet überschreitet es einen Grenzwert</translation>
    </message>
    <message>
        <source>Read what the findings say of this drawing.</source>
        <translation>Lesen, was die Befunde zu dieser Zeichnung sagen.</translation>
    </message>
    <message>
        <source>Heater off. Mend the layout, and prove it on the drawing before it is turned on again.</source>
        <translation>Heizgerät aus. Die Verlegung ändern und auf der Zeichnung prüfen, bevor er wieder eingeschaltet wird.</translation>
    </message>
    <message>
        <source>corners in all hoses together</source>
        <translation>Eckpunkte in allen Schläuchen zusammen</translation>
    </message>
    <message>
        <source>corners in all outlines together</source>
        <translation>Eckpunkte in allen Umrissen zusammen</translation>
    </message>
    <message>
        <source>starts in its worst hour: %1</source>
        <translation>Einschaltungen in der ungünstigsten Stunde: %1</translation>
    </message>
    <message>
        <source>On the steepest grades judged</source>
        <translation>An den steilsten beurteilten Neigungen</translation>
    </message>
    <message>
        <source>no forward flow on some, on the others %1</source>
        <translation>an einigen kein Durchfluss vorwärts, an den anderen %1</translation>
    </message>
    <message>
        <source>no forward flow</source>
        <translation>kein Durchfluss vorwärts</translation>
    </message>
    <message>
        <source>starts an hour at most %1</source>
        <translation>Einschaltungen je Stunde höchstens %1</translation>
    </message>
    <message>
        <source>%1 reached on some only</source>
        <translation>%1 nur an einigen erreicht</translation>
    </message>
    <message>
        <source>The heaters have {0} in all: consider a heater with a pump.</source>
        <translation>Die Heizgeräte haben zusammen {0}: ein Heizgerät mit Pumpe in Betracht ziehen.</translation>
    </message>
    <message>
        <source>Coolant leaves {a} at up to {0} while it is on, over {1}.</source>
        <translation>Das Kühlmittel verlässt {a} im Betrieb mit bis zu {0}, über {1}.</translation>
    </message>
    <message>
        <source>Coolant leaves {a} at up to {0}, and {1} is possible.</source>
        <translation>Das Kühlmittel verlässt {a} mit bis zu {0}, möglich sind {1}.</translation>
    </message>
    <message>
        <source>Hoses and heater hold {0} more than the engine.</source>
        <translation>Schläuche und Heizgerät fassen {0} zusätzlich zum Motor.</translation>
    </message>
    <message>
        <source>{0} clamps: two on each end of each piece of hose.</source>
        <translation>{0} Schellen: zwei an jedem Ende jedes Schlauchstücks.</translation>
    </message>
    <message>
        <source>passage {0}</source>
        <translation>Durchlass {0}</translation>
    </message>
    <message>
        <source>for hose of {0}, passage {1}</source>
        <translation>für Schlauch {0}, Durchlass {1}</translation>
    </message>
    <message>
        <source>Usual elbows turn {0} or {1}: take the nearer and lay the hose to suit.</source>
        <translation>Übliche Winkel haben {0} oder {1}: den näheren nehmen und den Schlauch danach verlegen.</translation>
    </message>
    <message>
        <source>to hose end of passage {0}</source>
        <translation>auf Schlauchtülle mit Durchlass {0}</translation>
    </message>
    <message>
        <source>{a} to hose end of passage {0}</source>
        <translation>{a} auf Schlauchtülle mit Durchlass {0}</translation>
    </message>
    <message>
        <source>passage {0}, {1}</source>
        <translation>Durchlass {0}, {1}</translation>
    </message>
    <message>
        <source>{a}, {0} from A</source>
        <translation>{a}, {0} ab A</translation>
    </message>
    <message>
        <source>for hose of {0}, {1}</source>
        <translation>für Schlauch {0}, {1}</translation>
    </message>
    <message>
        <source>Starts of {a} in its worst hour: {0}, over {1}.</source>
        <translation>Einschaltungen von {a} in der ungünstigsten Stunde: {0}, über {1}.</translation>
    </message>
    <message>
        <source>Starts of {a} in its worst hour: {0}, up to {1} possible.</source>
        <translation>Einschaltungen von {a} in der ungünstigsten Stunde: {0}, möglich sind bis zu {1}.</translation>
    </message>
    <message>
        <source>Open: the valve in {a}, {0} from its cut end at {b}.</source>
        <translation>Öffnen: das Ventil in {a}, {0} vom Schnittende an {b}.</translation>
    </message>
    <message>
        <source>Open: the valve in {a}, {0} from its cut end at {b}. It is drawn closed.</source>
        <translation>Öffnen: das Ventil in {a}, {0} vom Schnittende an {b}. Es ist geschlossen gezeichnet.</translation>
    </message>
    <message>
        <source>{a} humps as it is drawn: it has no sag to spare.</source>
        <translation>{a} hat so, wie er gezeichnet ist, einen Buckel: Durchhang ist keiner übrig.</translation>
    </message>
    <message>
        <source>{a} dips as it is drawn: some coolant stays in it when it is drained.</source>
        <translation>{a} hat so, wie er gezeichnet ist, eine Senke: beim Ablassen bleibt etwas Kühlmittel darin.</translation>
    </message>
    <message>
        <source>{a} humps {0} above its sill: air can fill the {1} of bore above it and stop the flow.</source>
        <translation>{a} hat einen Buckel, {0} über der Schwelle: Luft kann die {1} Bohrung darüber füllen und den Durchfluss sperren.</translation>
    </message>
    <message>
        <source>{a} humps {0} above its sill: the {1} of bore above it can hold air.</source>
        <translation>{a} hat einen Buckel, {0} über der Schwelle: die {1} Bohrung darüber können Luft halten.</translation>
    </message>
    <message>
        <source>{a} humps {0} above its sill: air in the {1} of bore above it stops the flow unless it is bled.</source>
        <translation>{a} hat einen Buckel, {0} über der Schwelle: Luft in den {1} Bohrung darüber sperrt den Durchfluss, wenn nicht entlüftet wird.</translation>
    </message>
    <message>
        <source>Not free of traps on the level.</source>
        <translation>Auf ebenem Boden nicht frei von Fallen.</translation>
    </message>
    <message>
        <source>Free of traps from %1</source>
        <translation>Ohne Fallen von %1</translation>
    </message>
    <message>
        <source>The supply&apos;s voltage is not entered: counted at {0}, as the heaters have.</source>
        <translation>Die Spannung der Versorgung ist nicht eingegeben: gerechnet mit {0}, wie die Heizgeräte haben.</translation>
    </message>
    <message>
        <source>After the engine has run and cooled, nothing needs topping up.</source>
        <translation>Nach dem Motorlauf und dem Abkühlen muss nichts nachgefüllt werden.</translation>
    </message>
    <message>
        <source>{a}: in two pieces from A to B, {0} and {1}; between them: {b}.</source>
        <translation>{a}: in zwei Stücken von A nach B, {0} und {1}; dazwischen: {b}.</translation>
    </message>
    <message>
        <source>{a}: in {0} pieces; their lengths are with the drawing.</source>
        <translation>{a}: in {0} Stücken; ihre Längen stehen bei der Zeichnung.</translation>
    </message>
    <message>
        <source>{a}: cut {0}, of which {1} is allowance; bore {2}.</source>
        <translation>{a}: auf {0} ablängen, davon {1} Zugabe; Innendurchmesser {2}.</translation>
    </message>
    <message>
        <source>{a}: cut {0}, of which {1} is allowance; its bore is not entered.</source>
        <translation>{a}: auf {0} ablängen, davon {1} Zugabe; sein Innendurchmesser ist nicht eingetragen.</translation>
    </message>
    <message>
        <source>Mend what still stops the job first (findings: {0}).</source>
        <translation>Zuerst beheben, was die Arbeit noch aufhält (Befunde: {0}).</translation>
    </message>
    <message>
        <source>At the filler, slowly, {0} into hoses, fittings and heater.</source>
        <translation>Am Einfüllstutzen, langsam, {0} in Schläuche, Anschlussteile und Heizgerät.</translation>
    </message>
    <message>
        <source>Under vacuum, {0} into hoses, fittings and heater.</source>
        <translation>Unter Vakuum, {0} in Schläuche, Anschlussteile und Heizgerät.</translation>
    </message>
    <message>
        <source>From below, {0} into hoses, fittings and heater.</source>
        <translation>Von unten, {0} in Schläuche, Anschlussteile und Heizgerät.</translation>
    </message>
    <message>
        <source>Air takes up another {0} until it is let out.</source>
        <translation>Luft nimmt weitere {0} ein, bis sie herausgelassen wird.</translation>
    </message>
</context>
<context>
    <name>siphonwright</name>
    <message>
        <source>Draw an area to keep clear of</source>
        <translation>Einen Sperrbereich zeichnen</translation>
    </message>
    <message>
        <source>Height %1</source>
        <translation>Höhe %1</translation>
    </message>
    <message>
        <source>Edge %1</source>
        <translation>Kante %1</translation>
    </message>
    <message>
        <source>Click the corners of what is hot or moves; Backspace takes the last one back.</source>
        <translation>Klicken Sie die Ecken dessen an, was heiß ist oder sich bewegt; die Rücktaste nimmt die letzte zurück.</translation>
    </message>
    <message>
        <source>Click further corners; Enter, a double-click or a click on the first corner closes the area.</source>
        <translation>Klicken Sie weitere Ecken an; Eingabe, Doppelklick oder ein Klick auf die erste Ecke schließt den Bereich.</translation>
    </message>
    <message>
        <source>It is larger than the largest drawing.</source>
        <translation>Das ist größer als die größte Zeichnung.</translation>
    </message>
    <message>
        <source>It holds no parts.</source>
        <translation>Darin sind keine Teile.</translation>
    </message>
    <message>
        <source>the middle of %1</source>
        <translation>die Mitte von %1</translation>
    </message>
    <message>
        <source>the inlet of %1</source>
        <translation>%1 (Einlass)</translation>
    </message>
    <message>
        <source>the outlet of %1</source>
        <translation>%1 (Auslass)</translation>
    </message>
    <message>
        <source>the top of %1</source>
        <translation>die Oberkante von %1</translation>
    </message>
    <message>
        <source>the foot of %1</source>
        <translation>der Fuß von %1</translation>
    </message>
    <message>
        <source>a free place</source>
        <translation>ein freier Platz</translation>
    </message>
    <message>
        <source>the jacket&apos;s lowest level</source>
        <translation>die tiefste Höhe des Wassermantels</translation>
    </message>
    <message>
        <source>the jacket&apos;s highest level</source>
        <translation>die höchste Höhe des Wassermantels</translation>
    </message>
    <message>
        <source>the level cold minimum</source>
        <translation>der Kaltmindeststand</translation>
    </message>
    <message>
        <source>the level cold full</source>
        <translation>der Kaltfüllstand</translation>
    </message>
    <message>
        <source>the level hot</source>
        <translation>der Heißstand</translation>
    </message>
    <message>
        <source>a place on %1</source>
        <translation>ein Platz auf %1</translation>
    </message>
    <message>
        <source>the outline of %1</source>
        <translation>der Umriss von %1</translation>
    </message>
    <message>
        <source>Horizontal</source>
        <translation>Waagrecht</translation>
    </message>
    <message>
        <source>Vertical</source>
        <translation>Senkrecht</translation>
    </message>
    <message>
        <source>Along</source>
        <translation>Längs</translation>
    </message>
    <message>
        <source>Slope</source>
        <translation>Steigung</translation>
    </message>
    <message>
        <source>Draw a dimension</source>
        <translation>Ein Maß zeichnen</translation>
    </message>
    <message>
        <source>Along the hose</source>
        <translation>Längs des Schlauchs</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Click what to measure from; Tab goes from one thing to the next, Enter clicks.</source>
        <translation>Klicken Sie an, von wo aus gemessen wird; Tab geht von einem zum nächsten, Eingabe klickt.</translation>
    </message>
    <message>
        <source>Click what to measure to; Backspace takes the first back.</source>
        <translation>Klicken Sie an, bis wohin gemessen wird; die Rücktaste nimmt das Erste zurück.</translation>
    </message>
    <message>
        <source>Click where its line goes. H, V, A, S: horizontal, vertical, along, slope.</source>
        <translation>Klicken Sie dorthin, wo die Maßlinie liegen soll. H, V, A, S: waagrecht, senkrecht, längs, Steigung.</translation>
    </message>
    <message>
        <source>Before: %1</source>
        <translation>Vorher: %1</translation>
    </message>
    <message>
        <source>After: %1</source>
        <translation>Nachher: %1</translation>
    </message>
    <message>
        <source>Drop under the jacket %1, at least %2</source>
        <translation>Abstand unter dem Wassermantel %1, mindestens %2</translation>
    </message>
    <message>
        <source>Drop under the jacket %1</source>
        <translation>Abstand unter dem Wassermantel %1</translation>
    </message>
    <message>
        <source>%1 along the hose</source>
        <translation>%1 längs des Schlauchs</translation>
    </message>
    <message>
        <source>Across %1</source>
        <translation>Quer %1</translation>
    </message>
    <message>
        <source>Length of the hose %1</source>
        <translation>Schlauchlänge %1</translation>
    </message>
    <message>
        <source>no length</source>
        <translation>keine Länge</translation>
    </message>
    <message>
        <source>level</source>
        <translation>waagrecht</translation>
    </message>
    <message>
        <source>rises</source>
        <translation>steigt</translation>
    </message>
    <message>
        <source>falls</source>
        <translation>fällt</translation>
    </message>
    <message>
        <source>%1 plumb</source>
        <translation>%1 lotrecht</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Hump %1, holds %2 of air</source>
        <translation>Buckel %1, hält %2 Luft</translation>
    </message>
    <message>
        <source>Dip %1, holds %2</source>
        <translation>Senke %1, hält %2</translation>
    </message>
    <message>
        <source>Tilt %1</source>
        <translation>Kippung %1</translation>
    </message>
    <message>
        <source>Draw a supply hose</source>
        <translation>Einen Vorlaufschlauch zeichnen</translation>
    </message>
    <message>
        <source>Draw a return hose</source>
        <translation>Einen Rücklaufschlauch zeichnen</translation>
    </message>
    <message>
        <source>This piece %1</source>
        <translation>Dieses Stück %1</translation>
    </message>
    <message>
        <source>Length %1</source>
        <translation>Länge %1</translation>
    </message>
    <message>
        <source>supply hose</source>
        <translation>Vorlaufschlauch</translation>
    </message>
    <message>
        <source>return hose</source>
        <translation>Rücklaufschlauch</translation>
    </message>
    <message>
        <source>Click to begin the %1 at %2.</source>
        <translation>Klicken Sie, um den %1 hier zu beginnen: %2.</translation>
    </message>
    <message>
        <source>The %1 begins here; it ends on another port or nozzle.</source>
        <translation>Der %1 beginnt hier; er endet an einem anderen Anschluss oder Stutzen.</translation>
    </message>
    <message>
        <source>Click to end the %1 on %2.</source>
        <translation>Klicken Sie, um den %1 hier zu beenden: %2.</translation>
    </message>
    <message>
        <source>point %1 of %2</source>
        <translation>Punkt %1 von %2</translation>
    </message>
    <message>
        <source>the start of %1</source>
        <translation>der Anfang von %1</translation>
    </message>
    <message>
        <source>the end of %1</source>
        <translation>das Ende von %1</translation>
    </message>
    <message>
        <source>clip %1 of %2</source>
        <translation>Halteschelle %1 von %2</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>isolation valve</source>
        <translation>Absperrventil</translation>
    </message>
    <message>
        <source>bleed point</source>
        <translation>Entlüftung</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>Ablass</translation>
    </message>
    <message>
        <source>lift check valve</source>
        <translation>Hub-Rückschlagventil</translation>
    </message>
    <message>
        <source>swing check valve</source>
        <translation>Klappen-Rückschlagventil</translation>
    </message>
    <message>
        <source>reducer</source>
        <translation>Reduzierung</translation>
    </message>
    <message>
        <source>the engine</source>
        <translation>der Motor</translation>
    </message>
    <message>
        <source>corner %1 of the engine</source>
        <translation>Ecke %1 des Motors</translation>
    </message>
    <message>
        <source>the water jacket</source>
        <translation>der Wassermantel</translation>
    </message>
    <message>
        <source>corner %1 of the water jacket</source>
        <translation>Ecke %1 des Wassermantels</translation>
    </message>
    <message>
        <source>the thermostat housing</source>
        <translation>das Thermostatgehäuse</translation>
    </message>
    <message>
        <source>the surge tank</source>
        <translation>der Ausgleichsbehälter</translation>
    </message>
    <message>
        <source>corner %1 of %2</source>
        <translation>Ecke %1 von %2</translation>
    </message>
    <message>
        <source>the ground line</source>
        <translation>die Bodenlinie</translation>
    </message>
    <message>
        <source>the photo</source>
        <translation>das Foto</translation>
    </message>
    <message>
        <source>the dimension</source>
        <translation>das Maß</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Engine, corner %1</source>
        <translation>Motor, Ecke %1</translation>
    </message>
    <message>
        <source>Water jacket</source>
        <translation>Wassermantel</translation>
    </message>
    <message>
        <source>Water jacket, corner %1</source>
        <translation>Wassermantel, Ecke %1</translation>
    </message>
    <message>
        <source>Thermostat housing</source>
        <translation>Thermostatgehäuse</translation>
    </message>
    <message>
        <source>Surge tank</source>
        <translation>Ausgleichsbehälter</translation>
    </message>
    <message>
        <source>%1, point %2</source>
        <translation>%1, Punkt %2</translation>
    </message>
    <message>
        <source>%1, start</source>
        <translation>%1, Anfang</translation>
    </message>
    <message>
        <source>%1, end</source>
        <translation>%1, Ende</translation>
    </message>
    <message>
        <source>%1, clip %2</source>
        <translation>%1, Halteschelle %2</translation>
    </message>
    <message>
        <source>%1, %2 %3</source>
        <translation>%1, %2 %3</translation>
    </message>
    <message>
        <source>%1, corner %2</source>
        <translation>%1, Ecke %2</translation>
    </message>
    <message>
        <source>Ground line</source>
        <translation>Bodenlinie</translation>
    </message>
    <message>
        <source>Photograph</source>
        <translation>Fotografie</translation>
    </message>
    <message>
        <source>Level the photo</source>
        <translation>Foto waagrecht stellen</translation>
    </message>
    <message>
        <source>As drawn now %1</source>
        <translation>Wie jetzt gezeichnet %1</translation>
    </message>
    <message>
        <source>Type what was measured.</source>
        <translation>Geben Sie ein, was gemessen wurde.</translation>
    </message>
    <message>
        <source>Click a point in the photo; then another, as far away as you have measured.</source>
        <translation>Klicken Sie einen Punkt im Foto an, dann einen zweiten, so weit entfernt, wie Sie gemessen haben.</translation>
    </message>
    <message>
        <source>Click the second point. Backspace takes the first one back.</source>
        <translation>Klicken Sie den zweiten Punkt an. Die Rücktaste nimmt den ersten zurück.</translation>
    </message>
    <message>
        <source>Click two points along something that is level in truth.</source>
        <translation>Klicken Sie zwei Punkte entlang von etwas an, das in Wirklichkeit waagrecht ist.</translation>
    </message>
    <message>
        <source>Click the second point along it. Backspace takes the first one back.</source>
        <translation>Klicken Sie den zweiten Punkt daran an. Die Rücktaste nimmt den ersten zurück.</translation>
    </message>
    <message>
        <source>Click the corners of a flat rectangle whose width and height you know: %1 left. Backspace takes the last one back.</source>
        <translation>Klicken Sie die Ecken eines ebenen Rechtecks an, dessen Breite und Höhe Sie kennen: noch %1. Die Rücktaste nimmt die letzte zurück.</translation>
    </message>
    <message>
        <source>Place a port</source>
        <translation>Einen Anschluss setzen</translation>
    </message>
    <message>
        <source>Place a heater</source>
        <translation>Heizgerät setzen</translation>
    </message>
    <message>
        <source>Place the surge tank</source>
        <translation>Den Ausgleichsbehälter setzen</translation>
    </message>
    <message>
        <source>Top under the jacket %1</source>
        <translation>Oberkante unter dem Wassermantel %1</translation>
    </message>
    <message>
        <source>Click on the jacket&apos;s or the block&apos;s edge to place a port.</source>
        <translation>Klicken Sie auf den Rand des Wassermantels oder Blocks, um einen Anschluss zu setzen.</translation>
    </message>
    <message>
        <source>Click to place a port here, its thread pointing outwards.</source>
        <translation>Klicken Sie, um hier einen Anschluss zu setzen, Gewinde nach außen.</translation>
    </message>
    <message>
        <source>Click where the middle of the heater goes. Arrow keys move the cross-hair, Enter clicks.</source>
        <translation>Klicken Sie dorthin, wo die Mitte des Heizgeräts liegen soll. Pfeiltasten bewegen das Fadenkreuz, Eingabe klickt.</translation>
    </message>
    <message>
        <source>Click where the surge tank goes: its marks give the coolant level.</source>
        <translation>Klicken Sie dorthin, wo der Ausgleichsbehälter liegen soll: seine Marken geben den Kühlmittelstand an.</translation>
    </message>
    <message>
        <source>an isolation valve</source>
        <translation>ein Absperrventil</translation>
    </message>
    <message>
        <source>a bleed point</source>
        <translation>eine Entlüftung</translation>
    </message>
    <message>
        <source>a clip</source>
        <translation>eine Halteschelle</translation>
    </message>
    <message>
        <source>Point at a hose and click to place %1 there.</source>
        <translation>Zeigen Sie auf einen Schlauch und klicken Sie, um dort %1 zu setzen.</translation>
    </message>
    <message>
        <source>Click to place %1 in %2.</source>
        <translation>Klicken Sie, um %1 zu setzen (%2).</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>%1 verschieben</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation>%1 drehen</translation>
    </message>
    <message>
        <source>Delete %1</source>
        <translation>%1 löschen</translation>
    </message>
    <message>
        <source>Release to select what lies wholly in the band: %1. Escape stops.</source>
        <translation>Loslassen wählt aus, was ganz im Rahmen liegt: %1. Esc bricht ab.</translation>
    </message>
    <message>
        <source>Drop it on a port or nozzle to connect it, elsewhere to leave it open. Escape puts it back.</source>
        <translation>Auf einem Anschluss oder Stutzen ablegen verbindet, anderswo bleibt es offen. Esc setzt es zurück.</translation>
    </message>
    <message>
        <source>Hold Alt to place it freely. Escape puts it back.</source>
        <translation>Mit Alt frei setzen. Esc setzt es zurück.</translation>
    </message>
    <message>
        <source>Click to select this finding.</source>
        <translation>Klicken Sie, um diesen Befund auszuwählen.</translation>
    </message>
    <message>
        <source>Drag to turn %1 in steps of 15 degrees; full stop and comma turn it too.</source>
        <translation>Ziehen dreht in Schritten von 15 Grad (%1); auch Punkt und Komma drehen.</translation>
    </message>
    <message>
        <source>Click to select %1, drag to move it, double-click to insert a point.</source>
        <translation>Klicken wählt aus (%1), Ziehen verschiebt, Doppelklick fügt einen Punkt ein.</translation>
    </message>
    <message>
        <source>Click to select %1, drag to move it, double-click an edge to add a corner.</source>
        <translation>Klicken wählt aus (%1), Ziehen verschiebt, Doppelklick auf eine Kante fügt eine Ecke ein.</translation>
    </message>
    <message>
        <source>Click to select %1, drag to move it.</source>
        <translation>Klicken wählt aus (%1), Ziehen verschiebt.</translation>
    </message>
    <message>
        <source>Press J to connect it to the nearest port or nozzle, again for the next; arrows move it.</source>
        <translation>J verbindet mit dem nächstgelegenen Anschluss oder Stutzen, nochmals mit dem nächsten; Pfeiltasten verschieben.</translation>
    </message>
    <message>
        <source>Arrow keys move %1, a drag too; Delete removes them; Shift+click adds or takes out.</source>
        <translation>Pfeiltasten oder Ziehen verschieben %1; Entf entfernt sie; Umschalt+Klick nimmt dazu oder heraus.</translation>
    </message>
    <message>
        <source>Arrow keys move %1, with Shift finely; Delete removes it; Tab goes to the next part.</source>
        <translation>Pfeiltasten verschieben (%1), mit Umschalt fein; Entf entfernt; Tab geht zum nächsten Teil.</translation>
    </message>
    <message>
        <source>Click a part to select it, drag to move it; drag over empty ground to select several.</source>
        <translation>Klicken Sie ein Teil an, um es auszuwählen, ziehen Sie es, um es zu verschieben; Ziehen über leeren Grund wählt mehrere aus.</translation>
    </message>
    <message>
        <source>Insert a point in %1</source>
        <translation>Punkt einfügen in %1</translation>
    </message>
    <message>
        <source>Add a corner to %1</source>
        <translation>Ecke einfügen in %1</translation>
    </message>
    <message>
        <source>Connect %1 to %2</source>
        <translation>%1 mit %2 verbinden</translation>
    </message>
    <message>
        <source>Place a clip</source>
        <translation>Eine Halteschelle setzen</translation>
    </message>
    <message>
        <source>Place a part in a hose: %1</source>
        <translation>Ein Teil in einen Schlauch setzen: %1</translation>
    </message>
    <message>
        <source>plumb</source>
        <translation>lotrecht</translation>
    </message>
    <message>
        <source>just under the coolant&apos;s level</source>
        <translation>knapp unter dem Kühlmittelstand</translation>
    </message>
    <message>
        <source>%1 under the coolant&apos;s level</source>
        <translation>%1 unter dem Kühlmittelstand</translation>
    </message>
    <message>
        <source>%1 over the ground</source>
        <translation>%1 über dem Boden</translation>
    </message>
    <message>
        <source>%1 clear of %2</source>
        <translation>%1 Abstand zu %2</translation>
    </message>
    <message>
        <source>top %1 under the jacket</source>
        <translation>Oberkante %1 unter dem Wassermantel</translation>
    </message>
    <message>
        <source>just no hump</source>
        <translation>gerade kein Buckel</translation>
    </message>
    <message>
        <source>just no dip</source>
        <translation>gerade keine Senke</translation>
    </message>
    <message>
        <source>corner of the engine</source>
        <translation>Ecke des Motors</translation>
    </message>
    <message>
        <source>corner of the jacket</source>
        <translation>Ecke des Wassermantels</translation>
    </message>
    <message>
        <source>in line with the next piece</source>
        <translation>in Flucht mit dem nächsten Stück</translation>
    </message>
    <message>
        <source>bend radius just %1</source>
        <translation>Biegeradius gerade %1</translation>
    </message>
    <message>
        <source>in line with the last piece</source>
        <translation>in Flucht mit dem letzten Stück</translation>
    </message>
    <message>
        <source>Slope to snap to</source>
        <translation>Steigung zum Einrasten</translation>
    </message>
    <message>
        <source>Rise over length, from 1 in 2 to 1 in 1000, such as 1:50 or 2 %:</source>
        <translation>Anstieg zu Länge, von 1 zu 2 bis 1 zu 1000, etwa 1:50 oder 2 %:</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>The language changes when Siphonwright is started again.</source>
        <translation>Die Sprache wechselt, wenn Siphonwright neu gestartet wird.</translation>
    </message>
    <message>
        <source>along %1, height %2</source>
        <translation>längs %1, Höhe %2</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>findings: %1</source>
        <translation>Befunde: %1</translation>
    </message>
    <message>
        <source>Click a port or nozzle to begin the %1, or an empty place to leave its end open; Tab and arrow keys aim too.</source>
        <translation>Klicken Sie einen Anschluss oder Stutzen an, um den %1 zu beginnen, oder eine freie Stelle für ein offenes Ende; Tab und Pfeiltasten zielen auch.</translation>
    </message>
    <message>
        <source>Click to put a point; a port, a nozzle or a double-click ends the %1. Backspace takes a point back, Escape gives up.</source>
        <translation>Klicken Sie, um einen Punkt zu setzen; Anschluss, Stutzen oder Doppelklick beenden den %1. Rücktaste nimmt einen Punkt zurück, Esc bricht ab.</translation>
    </message>
    <message>
        <source>sound: measured %1, limit %2</source>
        <translation>in Ordnung: gemessen %1, Grenzwert %2</translation>
    </message>
    <message>
        <source>sound, with %1 left</source>
        <translation>in Ordnung, noch %1 Reserve</translation>
    </message>
    <message>
        <source>sound, with %1 left: measured %2, limit %3</source>
        <translation>in Ordnung, noch %1 Reserve: gemessen %2, Grenzwert %3</translation>
    </message>
</context>
<context>
    <name>siphonwright::AboutText</name>
    <message>
        <source>Work is for a qualified technician. The heater&apos;s and the engine&apos;s own manuals rule over this program; its figures are estimates from stated assumptions.</source>
        <translation>Die Arbeit ist Sache einer Fachkraft. Die Handbücher von Heizgerät und Motor gehen diesem Programm vor; seine Zahlen sind Schätzungen aus genannten Annahmen.</translation>
    </message>
    <message>
        <source>Disconnect and lock out the power while working. Inhibit a generator&apos;s automatic start. Chock the wheels, block air suspension, never work under an unsupported vehicle.</source>
        <translation>Während der Arbeit spannungsfrei schalten und gegen Wiedereinschalten sichern. Automatikstart eines Aggregats sperren. Räder mit Keilen sichern, Luftfederung blockieren, nie unter einem nicht abgestützten Fahrzeug arbeiten.</translation>
    </message>
    <message>
        <source>Open the cap only when the engine is cold: hot coolant is under pressure and scalds.</source>
        <translation>Den Deckel nur bei kaltem Motor öffnen: heißes Kühlmittel steht unter Druck und verbrüht.</translation>
    </message>
    <message>
        <source>Turn the heater off before a valve is closed. With both valves closed the heater is a sealed vessel, and pressure builds up.</source>
        <translation>Das Heizgerät ausschalten, bevor ein Ventil geschlossen wird. Sind beide Ventile geschlossen, ist das Heizgerät ein verschlossener Behälter, und Druck baut sich auf.</translation>
    </message>
    <message>
        <source>Never turn the heater on without coolant in its chamber, nor before the loop is purged.</source>
        <translation>Das Heizgerät nie ohne Kühlmittel in der Kammer einschalten und nie, bevor der Kreislauf entlüftet ist.</translation>
    </message>
    <message>
        <source>Run the engine outdoors or with the exhaust extracted.</source>
        <translation>Den Motor im Freien oder mit Abgasabsaugung laufen lassen.</translation>
    </message>
    <message>
        <source>Grounded supply, the local electrical code and a licensed electrician.</source>
        <translation>Versorgung mit Schutzleiter, örtliche Elektrovorschriften und eine Elektrofachkraft.</translation>
    </message>
    <message>
        <source>Antifreeze is poisonous. Catch it and dispose of it properly.</source>
        <translation>Frostschutzmittel ist giftig. Auffangen und fachgerecht entsorgen.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Sicherheitshinweise</translation>
    </message>
    <message>
        <source>About Siphonwright</source>
        <translation>Über Siphonwright</translation>
    </message>
    <message>
        <source>&lt;h3&gt;Siphonwright %1&lt;/h3&gt;&lt;p&gt;Draws, checks and hands over installations of tank-type coolant heaters.&lt;/p&gt;&lt;p&gt;Findings are estimates from stated assumptions and common practice; each names its basis. What was not entered is not judged.&lt;/p&gt;&lt;p&gt;Built with Qt under the LGPL 3 and JSON for Modern C++ under the MIT licence; lettering in Inter under the SIL Open Font Licence 1.1.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Siphonwright %1&lt;/h3&gt;&lt;p&gt;Zeichnet, prüft und übergibt den Einbau von Kühlmittel-Heizgeräten.&lt;/p&gt;&lt;p&gt;Befunde sind Schätzungen aus genannten Annahmen und gängiger Praxis; jeder nennt seine Grundlage. Was nicht eingegeben wurde, wird nicht beurteilt.&lt;/p&gt;&lt;p&gt;Erstellt mit Qt unter der LGPL 3 und JSON for Modern C++ unter der MIT-Lizenz; Schrift Inter unter der SIL Open Font License 1.1.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Air-cooled engine</source>
        <translation>Luftgekühlter Motor</translation>
    </message>
    <message>
        <source>An air-cooled engine has no water jacket: there is no coolant for a tank heater to draw in and to warm, so it cannot be drawn here.</source>
        <translation>Ein luftgekühlter Motor hat keinen Wassermantel: es gibt kein Kühlmittel, das ein Kühlmittel-Heizgerät ansaugen und wärmen könnte, also lässt er sich hier nicht zeichnen.</translation>
    </message>
</context>
<context>
    <name>siphonwright::Actions</name>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>nothing is selected</source>
        <translation>nichts ist ausgewählt</translation>
    </message>
    <message>
        <source>several parts have to be selected</source>
        <translation>mehrere Teile müssen ausgewählt sein</translation>
    </message>
    <message>
        <source>at least three parts have to be selected</source>
        <translation>mindestens drei Teile müssen ausgewählt sein</translation>
    </message>
    <message>
        <source>no hose or outline is selected</source>
        <translation>kein Schlauch oder Umriss ist ausgewählt</translation>
    </message>
    <message>
        <source>no heater or port is selected</source>
        <translation>kein Heizgerät oder Anschluss ist ausgewählt</translation>
    </message>
    <message>
        <source>nothing with corners is selected</source>
        <translation>nichts mit Ecken ist ausgewählt</translation>
    </message>
    <message>
        <source>no end of a hose is selected</source>
        <translation>kein Schlauchende ist ausgewählt</translation>
    </message>
    <message>
        <source>no valve, bleed or drain is selected</source>
        <translation>kein Ventil, keine Entlüftung und kein Ablass ist ausgewählt</translation>
    </message>
    <message>
        <source>no hose is selected</source>
        <translation>kein Schlauch ist ausgewählt</translation>
    </message>
    <message>
        <source>there is no engine yet</source>
        <translation>es gibt noch keinen Motor</translation>
    </message>
    <message>
        <source>there is no photo yet</source>
        <translation>es gibt noch kein Foto</translation>
    </message>
    <message>
        <source>a port and a heater come first</source>
        <translation>zuerst kommen ein Anschluss und ein Heizgerät</translation>
    </message>
    <message>
        <source>there is no finding</source>
        <translation>es gibt keinen Befund</translation>
    </message>
    <message>
        <source>no finding is selected</source>
        <translation>kein Befund ist ausgewählt</translation>
    </message>
    <message>
        <source>there is no warm-up yet</source>
        <translation>es gibt noch kein Aufheizen</translation>
    </message>
    <message>
        <source>there is no warm-up to keep, or it is kept</source>
        <translation>es gibt kein Aufheizen zum Behalten, oder es ist schon behalten</translation>
    </message>
    <message>
        <source>no curve is kept</source>
        <translation>keine Kurve ist behalten</translation>
    </message>
    <message>
        <source>only while demonstrating</source>
        <translation>nur beim Vorführen</translation>
    </message>
</context>
<context>
    <name>siphonwright::ChecklistCommands</name>
    <message>
        <source>Save the checklist</source>
        <translation>Checkliste speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>%1 checklist</source>
        <translation>%1 Checkliste</translation>
    </message>
    <message>
        <source>The checklist could not be written.</source>
        <translation>Die Checkliste konnte nicht geschrieben werden.</translation>
    </message>
</context>
<context>
    <name>siphonwright::CommandSearch</name>
    <message>
        <source>Find a command</source>
        <translation>Befehl suchen</translation>
    </message>
    <message>
        <source>What do you want to do?</source>
        <translation>Was möchten Sie tun?</translation>
    </message>
    <message>
        <source>Words of the command</source>
        <translation>Wörter des Befehls</translation>
    </message>
    <message>
        <source>Commands that match</source>
        <translation>Passende Befehle</translation>
    </message>
    <message>
        <source>nothing to undo</source>
        <translation>nichts rückgängig zu machen</translation>
    </message>
    <message>
        <source>nothing to redo</source>
        <translation>nichts zu wiederholen</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Werkzeuge</translation>
    </message>
    <message>
        <source>not now</source>
        <translation>jetzt nicht</translation>
    </message>
    <message>
        <source>not now: %1</source>
        <translation>jetzt nicht: %1</translation>
    </message>
    <message>
        <source>No command has these words.</source>
        <translation>Kein Befehl enthält diese Wörter.</translation>
    </message>
    <message>
        <source>Up and down choose, Enter runs, Escape closes.</source>
        <translation>Auf und Ab wählen, Eingabe führt aus, Esc schließt.</translation>
    </message>
    <message>
        <source>“%1” cannot be done now.</source>
        <translation>„%1“ geht jetzt nicht.</translation>
    </message>
    <message>
        <source>“%1” cannot be done now: %2.</source>
        <translation>„%1“ geht jetzt nicht: %2.</translation>
    </message>
</context>
<context>
    <name>siphonwright::DemonstrationCommands</name>
    <message>
        <source>Show a second drawing beside</source>
        <translation>Eine zweite Zeichnung daneben zeigen</translation>
    </message>
    <message>
        <source>Sketches (*.siphon)</source>
        <translation>Zeichnungen (*.siphon)</translation>
    </message>
    <message>
        <source>Export this moment</source>
        <translation>Diesen Moment exportieren</translation>
    </message>
    <message>
        <source>PNG (*.png)</source>
        <translation>PNG (*.png)</translation>
    </message>
    <message>
        <source>SVG (*.svg)</source>
        <translation>SVG (*.svg)</translation>
    </message>
    <message>
        <source>Export the handout</source>
        <translation>Handout exportieren</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Folder for the pictures</source>
        <translation>Ordner für die Bilder</translation>
    </message>
    <message>
        <source>The second drawing could not be opened.</source>
        <translation>Die zweite Zeichnung konnte nicht geöffnet werden.</translation>
    </message>
    <message>
        <source>The moment could not be written.</source>
        <translation>Der Moment konnte nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>The pictures could not be written.</source>
        <translation>Die Bilder konnten nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>The handout could not be written.</source>
        <translation>Das Handout konnte nicht geschrieben werden.</translation>
    </message>
</context>
<context>
    <name>siphonwright::Document</name>
    <message>
        <source>%1 cannot be opened: %2.</source>
        <translation>%1 lässt sich nicht öffnen: %2.</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2.</source>
        <translation>%1 lässt sich nicht lesen: %2.</translation>
    </message>
    <message>
        <source>%1 is larger than %2 MB and cannot be a sketch.</source>
        <translation>%1 ist größer als %2 MB und kann keine Zeichnung sein.</translation>
    </message>
</context>
<context>
    <name>siphonwright::ElevationView</name>
    <message>
        <source>Nothing selected that can be copied.</source>
        <translation>Nichts ausgewählt, was sich kopieren lässt.</translation>
    </message>
    <message>
        <source>Copied %1.</source>
        <translation>Kopiert: %1.</translation>
    </message>
    <message>
        <source>This could not be copied.</source>
        <translation>Das ließ sich nicht kopieren.</translation>
    </message>
    <message>
        <source>Cut %1</source>
        <translation>%1 ausschneiden</translation>
    </message>
    <message>
        <source>Cut %1; Ctrl+V puts it down again.</source>
        <translation>Ausgeschnitten: %1; Strg+V fügt es wieder ein.</translation>
    </message>
    <message>
        <source>There are no parts on the clipboard.</source>
        <translation>In der Zwischenablage sind keine Teile.</translation>
    </message>
    <message>
        <source>What is on the clipboard cannot be put on the drawing. Nothing was changed.</source>
        <translation>Was in der Zwischenablage ist, passt nicht auf die Zeichnung. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Paste %1</source>
        <translation>%1 einfügen</translation>
    </message>
    <message>
        <source>Duplicate %1</source>
        <translation>%1 duplizieren</translation>
    </message>
    <message>
        <source>These parts do not fit into this drawing. Nothing was changed.</source>
        <translation>Diese Teile passen nicht in diese Zeichnung. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The drawing has an engine already, so the copied one was left out.</source>
        <translation>Die Zeichnung hat schon einen Motor, der kopierte wurde daher weggelassen.</translation>
    </message>
    <message>
        <source>The drawing has a surge tank already, so the copied one was left out.</source>
        <translation>Die Zeichnung hat schon einen Ausgleichsbehälter, der kopierte wurde daher weggelassen.</translation>
    </message>
    <message>
        <source>Put down %1.</source>
        <translation>Eingefügt: %1.</translation>
    </message>
    <message>
        <source>Align %1</source>
        <translation>%1 ausrichten</translation>
    </message>
    <message>
        <source>They are in line already.</source>
        <translation>Sie sind schon ausgerichtet.</translation>
    </message>
    <message>
        <source>Space %1 evenly</source>
        <translation>%1 gleichmäßig verteilen</translation>
    </message>
    <message>
        <source>They are evenly spaced already, or fewer than three can be moved.</source>
        <translation>Sie sind schon gleichmäßig verteilt, oder weniger als drei lassen sich bewegen.</translation>
    </message>
    <message>
        <source>Kept %1; Tab goes on to the next.</source>
        <translation>Gehalten: %1; Tab geht zum nächsten weiter.</translation>
    </message>
    <message>
        <source>Open or close %1</source>
        <translation>%1 öffnen oder schließen</translation>
    </message>
    <message>
        <source>Place an area</source>
        <translation>Einen Bereich setzen</translation>
    </message>
    <message>
        <source>Place engine</source>
        <translation>Motor setzen</translation>
    </message>
    <message>
        <source>It goes into a hose: drop it on one.</source>
        <translation>Das gehört in einen Schlauch: darauf ablegen.</translation>
    </message>
    <message>
        <source>It goes into a hose: select the hose first.</source>
        <translation>Das gehört in einen Schlauch: zuerst den Schlauch auswählen.</translation>
    </message>
    <message>
        <source>End view</source>
        <translation>Stirnansicht</translation>
    </message>
    <message>
        <source>Side elevation</source>
        <translation>Seitenansicht</translation>
    </message>
    <message>
        <source>Nothing selected</source>
        <translation>Nichts ausgewählt</translation>
    </message>
    <message>
        <source>Selected: %1</source>
        <translation>Ausgewählt: %1</translation>
    </message>
    <message>
        <source>Drag to move the paper; the wheel zooms to the pointer.</source>
        <translation>Ziehen bewegt das Papier; das Mausrad zoomt auf den Mauszeiger.</translation>
    </message>
    <message>
        <source>End view from the front</source>
        <translation>Stirnansicht von vorn</translation>
    </message>
    <message>
        <source>End view from the rear</source>
        <translation>Stirnansicht von hinten</translation>
    </message>
    <message>
        <source>Arrow keys aim: %1 a step, with Ctrl %2, with Shift %3. Tab: next place; Enter clicks; Backspace: back.</source>
        <translation>Pfeiltasten zielen: %1 je Schritt, mit Strg %2, mit Umschalt %3. Tab: nächste Stelle; Eingabe klickt; Rücktaste: zurück.</translation>
    </message>
</context>
<context>
    <name>siphonwright::FileCommands</name>
    <message>
        <source>Sketches (*.siphon)</source>
        <translation>Zeichnungen (*.siphon)</translation>
    </message>
    <message>
        <source>untitled</source>
        <translation>unbenannt</translation>
    </message>
    <message>
        <source>Open a sketch</source>
        <translation>Zeichnung öffnen</translation>
    </message>
    <message>
        <source>%1 could not be opened. The drawing on the table is as it was.</source>
        <translation>%1 ließ sich nicht öffnen. Die Zeichnung auf dem Tisch ist, wie sie war.</translation>
    </message>
    <message>
        <source>%1 could not be saved.</source>
        <translation>%1 ließ sich nicht speichern.</translation>
    </message>
    <message>
        <source>Save the sketch</source>
        <translation>Zeichnung speichern</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Nicht gespeicherte Änderungen</translation>
    </message>
    <message>
        <source>%1 has changes that are not saved.</source>
        <translation>%1 hat Änderungen, die nicht gespeichert sind.</translation>
    </message>
    <message>
        <source>Siphonwright</source>
        <translation>Siphonwright</translation>
    </message>
    <message>
        <source>%1 is open in another window.</source>
        <translation>%1 ist in einem anderen Fenster geöffnet.</translation>
    </message>
    <message>
        <source>It is open there: %1. A copy has no file until you save it. If both windows save one file, the later one is asked, and neither version is lost.</source>
        <translation>Geöffnet ist es dort: %1. Eine Kopie hat keine Datei, bis Sie sie speichern. Speichern beide Fenster eine Datei, wird das spätere gefragt, und keine Fassung geht verloren.</translation>
    </message>
    <message>
        <source>Open a &amp;copy</source>
        <translation>Eine &amp;Kopie öffnen</translation>
    </message>
    <message>
        <source>Open it &amp;here too</source>
        <translation>Auch &amp;hier öffnen</translation>
    </message>
    <message>
        <source>Save &amp;mine, keep theirs beside it</source>
        <translation>&amp;Meine speichern, die andere daneben behalten</translation>
    </message>
    <message>
        <source>Open &amp;theirs, put mine aside</source>
        <translation>Die &amp;andere öffnen, meine beiseitelegen</translation>
    </message>
    <message>
        <source>&amp;Try again</source>
        <translation>&amp;Noch einmal versuchen</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;unter…</translation>
    </message>
    <message>
        <source>Your drawing could not be put aside; it stays on the table.</source>
        <translation>Ihre Zeichnung konnte nicht beiseitegelegt werden; sie bleibt auf dem Tisch.</translation>
    </message>
    <message>
        <source>The drawing cannot be recovered from %1. The file is as it was.</source>
        <translation>Die Zeichnung kann nicht aus %1 wiederhergestellt werden. Die Datei ist, wie sie war.</translation>
    </message>
    <message>
        <source>The drawing is in another window now.</source>
        <translation>Die Zeichnung ist jetzt in einem anderen Fenster.</translation>
    </message>
    <message>
        <source>%1 is not written: its place does not answer. What stands there stays as it was. Write it again in another place.</source>
        <translation>%1 ist nicht geschrieben: Der Ort antwortet nicht. Was dort steht, bleibt, wie es war. Schreiben Sie die Datei an einem anderen Ort noch einmal.</translation>
    </message>
    <message>
        <source>The pages could not be written.</source>
        <translation>Die Seiten konnten nicht geschrieben werden.</translation>
    </message>
</context>
<context>
    <name>siphonwright::FileStrip</name>
    <message>
        <source>Open &amp;theirs</source>
        <translation>Die &amp;andere öffnen</translation>
    </message>
    <message>
        <source>&amp;Go on with mine</source>
        <translation>Mit &amp;meiner weiterarbeiten</translation>
    </message>
    <message>
        <source>Unsaved work is put aside and can be recovered from the File menu</source>
        <translation>Nicht Gespeichertes wird beiseitegelegt und kann über das Menü Datei wiederhergestellt werden</translation>
    </message>
    <message>
        <source>%1 was changed on the disk by another program. Saving here asks first, and loses neither version.</source>
        <translation>%1 wurde auf dem Datenträger von einem anderen Programm geändert. Beim Speichern wird erst gefragt; keine Fassung geht verloren.</translation>
    </message>
    <message>
        <source>%1 is no longer in its place, or cannot be reached. Saving writes it anew.</source>
        <translation>%1 ist nicht mehr an seinem Ort oder nicht zu erreichen. Speichern schreibt die Datei neu.</translation>
    </message>
    <message>
        <source>Unsaved work is not kept for recovery just now. %1</source>
        <translation>Nicht Gespeichertes wird gerade nicht für eine Wiederherstellung aufgehoben. %1</translation>
    </message>
    <message>
        <source>The place of %1 does not answer. Saving waits for it, or goes to another place.</source>
        <translation>Der Ort von %1 antwortet nicht. Speichern wartet auf ihn oder geht an einen anderen Ort.</translation>
    </message>
</context>
<context>
    <name>siphonwright::FindBar</name>
    <message>
        <source>No part has such a name.</source>
        <translation>Kein Teil heißt so.</translation>
    </message>
    <message>
        <source>Find by name</source>
        <translation>Nach Name suchen</translation>
    </message>
    <message>
        <source>Parts that match</source>
        <translation>Passende Teile</translation>
    </message>
</context>
<context>
    <name>siphonwright::FirstSteps</name>
    <message>
        <source>engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Place an engine: take the picture that comes nearest, and shape it by dragging later.</source>
        <translation>Setzen Sie einen Motor: nehmen Sie das ähnlichste Bild und formen Sie es später durch Ziehen.</translation>
    </message>
    <message>
        <source>&amp;Choose an engine…</source>
        <translation>&amp;Motor wählen…</translation>
    </message>
    <message>
        <source>supply port</source>
        <translation>Vorlaufanschluss</translation>
    </message>
    <message>
        <source>Mark the supply port, low at the front, where coolant leaves the jacket.</source>
        <translation>Markieren Sie den Vorlaufanschluss unten vorn, wo Kühlmittel den Wassermantel verlässt.</translation>
    </message>
    <message>
        <source>&amp;Mark it</source>
        <translation>&amp;Markieren</translation>
    </message>
    <message>
        <source>return port</source>
        <translation>Rücklaufanschluss</translation>
    </message>
    <message>
        <source>Mark the return port, high at the rear, where warm coolant comes back in.</source>
        <translation>Markieren Sie den Rücklaufanschluss oben hinten, wo warmes Kühlmittel zurückkommt.</translation>
    </message>
    <message>
        <source>heater</source>
        <translation>Heizgerät</translation>
    </message>
    <message>
        <source>Place a heater well under the jacket, so that warm coolant rises by itself.</source>
        <translation>Setzen Sie ein Heizgerät deutlich unter den Wassermantel, damit warmes Kühlmittel von selbst steigt.</translation>
    </message>
    <message>
        <source>&amp;Choose a heater…</source>
        <translation>Heizgerät &amp;wählen…</translation>
    </message>
    <message>
        <source>supply hose</source>
        <translation>Vorlaufschlauch</translation>
    </message>
    <message>
        <source>Draw the supply hose: click the supply port, then point by point, last the heater&apos;s inlet.</source>
        <translation>Zeichnen Sie den Vorlaufschlauch: klicken Sie den Vorlaufanschluss an, dann Punkt für Punkt, zuletzt den Einlass des Heizgeräts.</translation>
    </message>
    <message>
        <source>D&amp;raw it</source>
        <translation>&amp;Zeichnen</translation>
    </message>
    <message>
        <source>return hose</source>
        <translation>Rücklaufschlauch</translation>
    </message>
    <message>
        <source>Draw the return hose from the heater&apos;s outlet to the return port, rising all the way.</source>
        <translation>Zeichnen Sie den Rücklaufschlauch vom Auslass des Heizgeräts zum Rücklaufanschluss, durchgehend steigend.</translation>
    </message>
    <message>
        <source>valves</source>
        <translation>Ventile</translation>
    </message>
    <message>
        <source>Put an isolation valve into each hose, near the engine: click the hose with this tool.</source>
        <translation>Setzen Sie in jeden Schlauch nahe am Motor ein Absperrventil: klicken Sie mit diesem Werkzeug auf den Schlauch.</translation>
    </message>
    <message>
        <source>&amp;Take the valve</source>
        <translation>Ventil &amp;nehmen</translation>
    </message>
    <message>
        <source>findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Sh&amp;ow the next</source>
        <translation>&amp;Nächsten zeigen</translation>
    </message>
    <message>
        <source>save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Save the sketch: its file is the record of the job.</source>
        <translation>Speichern Sie die Zeichnung: die Datei ist der Nachweis des Auftrags.</translation>
    </message>
    <message>
        <source>&amp;Save…</source>
        <translation>&amp;Speichern…</translation>
    </message>
    <message>
        <source>S&amp;kip</source>
        <translation>Ü&amp;berspringen</translation>
    </message>
    <message>
        <source>Go on to the next step without this one</source>
        <translation>Ohne diesen Schritt zum nächsten gehen</translation>
    </message>
    <message>
        <source>Leave the first sketch; Help begins it again</source>
        <translation>Die erste Zeichnung verlassen; die Hilfe beginnt sie wieder</translation>
    </message>
    <message>
        <source>Leave the first sketch</source>
        <translation>Erste Zeichnung verlassen</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Willkommen</translation>
    </message>
    <message>
        <source>This is a job that works, to look round in. Change anything, it is not saved.</source>
        <translation>Das ist eine Anlage, die funktioniert, zum Umsehen. Ändern Sie, was Sie wollen, es wird nicht gespeichert.</translation>
    </message>
    <message>
        <source>Draw your &amp;own, step by step</source>
        <translation>Selbst &amp;zeichnen, Schritt für Schritt</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Schritt %1 von %2</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>That is a whole sketch. The menu Job goes on: warm-up, parts and cuts, checklist.</source>
        <translation>Das ist eine ganze Zeichnung. Im Menü Auftrag geht es weiter: Aufheizen, Teile und Zuschnitt, Checkliste.</translation>
    </message>
    <message>
        <source>Go through the findings, those that stop the job first: each shows its place and a way out.</source>
        <translation>Gehen Sie die Befunde durch, zuerst die, die den Auftrag stoppen: jeder zeigt seinen Ort und einen Ausweg.</translation>
    </message>
</context>
<context>
    <name>siphonwright::MainWindow</name>
    <message>
        <source>New drawing with an engine</source>
        <translation>Neue Zeichnung mit einem Motor</translation>
    </message>
    <message>
        <source>Place an engine</source>
        <translation>Motor setzen</translation>
    </message>
    <message>
        <source>Place engine</source>
        <translation>Motor setzen</translation>
    </message>
    <message>
        <source>Place a heater</source>
        <translation>Heizgerät setzen</translation>
    </message>
    <message>
        <source>Place heater</source>
        <translation>Heizgerät setzen</translation>
    </message>
    <message>
        <source>&amp;Panels</source>
        <translation>&amp;Fenster</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Details</source>
        <translation>Details</translation>
    </message>
    <message>
        <source>Run profile</source>
        <translation>Höhenprofil</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>Aufheizen</translation>
    </message>
    <message>
        <source>By bore</source>
        <translation>Nach Innen-Ø</translation>
    </message>
    <message>
        <source>On grades</source>
        <translation>Nach Neigung</translation>
    </message>
    <message>
        <source>Heater size and supply</source>
        <translation>Heizgerätegröße und Versorgung</translation>
    </message>
    <message>
        <source>Commissioning</source>
        <translation>Inbetriebnahme</translation>
    </message>
    <message>
        <source>Shelf</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>Layouts</source>
        <translation>Anordnungen</translation>
    </message>
    <message>
        <source>Drag a rectangle in which the heater may hang, or click two opposite corners.</source>
        <translation>Ziehen Sie ein Rechteck auf, in dem das Heizgerät hängen darf, oder klicken Sie zwei gegenüberliegende Ecken an.</translation>
    </message>
    <message>
        <source>across %1, height %2</source>
        <translation>quer %1, Höhe %2</translation>
    </message>
    <message>
        <source>along %1, height %2</source>
        <translation>längs %1, Höhe %2</translation>
    </message>
    <message>
        <source>%1[*] – Siphonwright</source>
        <translation>%1[*] – Siphonwright</translation>
    </message>
    <message>
        <source>Change units</source>
        <translation>Einheiten wechseln</translation>
    </message>
    <message>
        <source>There is no free port, heater or hose for this yet.</source>
        <translation>Dafür gibt es noch keinen freien Anschluss, kein Heizgerät oder keinen Schlauch.</translation>
    </message>
    <message>
        <source>&amp;Demonstrate</source>
        <translation>&amp;Vorführen</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Sheet &amp;paper</source>
        <translation>Pa&amp;pierformat</translation>
    </message>
    <message>
        <source>After the units</source>
        <translation>Nach den Einheiten</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Tabloid</source>
        <translation>Tabloid</translation>
    </message>
    <message>
        <source>No file yet</source>
        <translation>Noch keine Datei</translation>
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
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Look</source>
        <translation>A&amp;ussehen</translation>
    </message>
    <message>
        <source>Te&amp;xt size</source>
        <translation>Te&amp;xtgröße</translation>
    </message>
    <message>
        <source>Snap &amp;to</source>
        <translation>Einras&amp;ten an</translation>
    </message>
    <message>
        <source>&amp;Insert</source>
        <translation>&amp;Einfügen</translation>
    </message>
    <message>
        <source>&amp;Job</source>
        <translation>Auf&amp;trag</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Werkzeuge</translation>
    </message>
    <message>
        <source>Export the warm-up</source>
        <translation>Aufheizen exportieren</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>PNG (*.png)</source>
        <translation>PNG (*.png)</translation>
    </message>
    <message>
        <source>SVG (*.svg)</source>
        <translation>SVG (*.svg)</translation>
    </message>
    <message>
        <source>%1 warm-up</source>
        <translation>%1 Aufheizen</translation>
    </message>
    <message>
        <source>The warm-up could not be written.</source>
        <translation>Das Aufheizen konnte nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>Add %1</source>
        <translation>Einfügen: %1</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>Spra&amp;che</translation>
    </message>
    <message>
        <source>Sheet pa&amp;ges</source>
        <translation>Bl&amp;attseiten</translation>
    </message>
    <message>
        <source>The oldest undo steps are forgotten: together they took more than %1 MB.</source>
        <translation>Die ältesten Rückgängig-Schritte sind vergessen: Zusammen belegten sie mehr als %1 MB.</translation>
    </message>
    <message>
        <source>&amp;Upright</source>
        <translation>&amp;Hochformat</translation>
    </message>
    <message>
        <source>Sca&amp;le</source>
        <translation>Maß&amp;stab</translation>
    </message>
    <message>
        <source>The largest that fits on one page</source>
        <translation>Der größte, der auf ein Blatt passt</translation>
    </message>
</context>
<context>
    <name>siphonwright::PaperCommands</name>
    <message>
        <source>Write as PDF</source>
        <translation>Als PDF schreiben</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Write the parts as CSV</source>
        <translation>Teile als CSV schreiben</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>%1 parts</source>
        <translation>%1 Teile</translation>
    </message>
    <message>
        <source>The pages could not be written.</source>
        <translation>Die Seiten konnten nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>The parts could not be written.</source>
        <translation>Die Teile konnten nicht geschrieben werden.</translation>
    </message>
</context>
<context>
    <name>siphonwright::PhotoCommands</name>
    <message>
        <source>There is no picture in it.</source>
        <translation>Es ist kein Bild darin.</translation>
    </message>
    <message>
        <source>Photo &amp;underlay</source>
        <translation>Foto als &amp;Unterlage</translation>
    </message>
    <message>
        <source>Photo under the drawing</source>
        <translation>Foto unter der Zeichnung</translation>
    </message>
    <message>
        <source>Pictures (%1)</source>
        <translation>Bilder (%1)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>What was copied</source>
        <translation>Das Kopierte</translation>
    </message>
    <message>
        <source>There is no picture in the clipboard.</source>
        <translation>In der Zwischenablage ist kein Bild.</translation>
    </message>
    <message>
        <source>%1 is not put under the drawing.</source>
        <translation>%1 wird nicht unter die Zeichnung gelegt.</translation>
    </message>
    <message>
        <source>%1 cannot be kept in the drawing.</source>
        <translation>%1 kann nicht in der Zeichnung gespeichert werden.</translation>
    </message>
    <message>
        <source>It is too narrow to be made small enough.</source>
        <translation>Es ist zu schmal, um klein genug gemacht zu werden.</translation>
    </message>
    <message>
        <source>Replace the photo</source>
        <translation>Foto ersetzen</translation>
    </message>
    <message>
        <source>Insert the photo</source>
        <translation>Foto einfügen</translation>
    </message>
    <message>
        <source>%1 is kept in the drawing: %2 × %3 pixels of %4 × %5, %6 kB. Next: straighten or scale it.</source>
        <translation>%1 ist in der Zeichnung gespeichert: %2 × %3 Pixel von %4 × %5, %6 kB. Als Nächstes: entzerren oder skalieren.</translation>
    </message>
    <message>
        <source>Scale by two points</source>
        <translation>Skalieren mit zwei Punkten</translation>
    </message>
    <message>
        <source>How far apart are the two points in truth?</source>
        <translation>Wie weit sind die zwei Punkte in Wirklichkeit auseinander?</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>Straighten by a rectangle</source>
        <translation>Am Rechteck entzerren</translation>
    </message>
    <message>
        <source>How large is the rectangle in truth? Only what lies in its plane comes out true to scale: what stands nearer looks larger.</source>
        <translation>Wie groß ist das Rechteck in Wirklichkeit? Nur was in seiner Ebene liegt, wird maßstäblich: Näheres sieht größer aus.</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Scale the photo</source>
        <translation>Foto skalieren</translation>
    </message>
    <message>
        <source>The photo is not straightened.</source>
        <translation>Das Foto ist nicht entzerrt.</translation>
    </message>
    <message>
        <source>Straighten the photo</source>
        <translation>Foto entzerren</translation>
    </message>
    <message>
        <source>Lock the photo</source>
        <translation>Foto sperren</translation>
    </message>
    <message>
        <source>Unlock the photo</source>
        <translation>Foto entsperren</translation>
    </message>
</context>
<context>
    <name>siphonwright::PhotoFigures</name>
    <message>
        <source>Type the length as measured.</source>
        <translation>Geben Sie die Länge wie gemessen ein.</translation>
    </message>
</context>
<context>
    <name>siphonwright::Recovery</name>
    <message>
        <source>it does not answer</source>
        <translation>antwortet nicht</translation>
    </message>
</context>
<context>
    <name>siphonwright::RecoveryOffer</name>
    <message>
        <source>Recover drawings</source>
        <translation>Zeichnungen wiederherstellen</translation>
    </message>
    <message>
        <source>Drawings that can be recovered</source>
        <translation>Zeichnungen, die wiederhergestellt werden können</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Zeichnung</translation>
    </message>
    <message>
        <source>Last kept</source>
        <translation>Zuletzt aufgehoben</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>A report of the unexpected end, without names or texts of yours, is in %1</source>
        <translation>Ein Bericht über das unerwartete Ende, ohne Namen oder Texte von Ihnen, liegt in %1</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>Ö&amp;ffnen</translation>
    </message>
    <message>
        <source>&amp;Throw away…</source>
        <translation>&amp;Wegwerfen…</translation>
    </message>
    <message>
        <source>&amp;Keep for later</source>
        <translation>Für &amp;später aufheben</translation>
    </message>
    <message>
        <source>untitled</source>
        <translation>ohne Titel</translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation>noch nicht gespeichert</translation>
    </message>
    <message>
        <source>There is no drawing to recover.</source>
        <translation>Es gibt keine Zeichnung wiederherzustellen.</translation>
    </message>
    <message>
        <source>These drawings have edits that were not saved. Open one to go on with it; its file stays as it is until you save.</source>
        <translation>Diese Zeichnungen haben Änderungen, die nicht gespeichert wurden. Öffnen Sie eine, um weiterzuarbeiten; ihre Datei bleibt, wie sie ist, bis Sie speichern.</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Wegwerfen</translation>
    </message>
    <message>
        <source>Throw away the unsaved edits of %1?</source>
        <translation>Die nicht gespeicherten Änderungen an %1 wegwerfen?</translation>
    </message>
    <message>
        <source>They cannot be brought back. The drawing&apos;s own file stays as it is.</source>
        <translation>Sie können nicht zurückgeholt werden. Die Datei der Zeichnung bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>&amp;Throw away</source>
        <translation>&amp;Wegwerfen</translation>
    </message>
</context>
<context>
    <name>siphonwright::SheetCommands</name>
    <message>
        <source>Export the sheet</source>
        <translation>Blatt exportieren</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>SVG (*.svg)</source>
        <translation>SVG (*.svg)</translation>
    </message>
    <message>
        <source>PNG (*.png)</source>
        <translation>PNG (*.png)</translation>
    </message>
    <message>
        <source>The sheet could not be written.</source>
        <translation>Das Blatt konnte nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>Logo for the sheet</source>
        <translation>Logo für das Blatt</translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg *.svg)</source>
        <translation>Bilder (*.png *.jpg *.jpeg *.svg)</translation>
    </message>
    <message>
        <source>The logo could not be read.</source>
        <translation>Das Logo konnte nicht gelesen werden.</translation>
    </message>
</context>
<context>
    <name>siphonwright::Shelf</name>
    <message>
        <source>Parts to put on the drawing</source>
        <translation>Teile für die Zeichnung</translation>
    </message>
    <message>
        <source>Into the engine</source>
        <translation>In den Motor</translation>
    </message>
    <message>
        <source>Port</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <source>Surge tank</source>
        <translation>Ausgleichsbehälter</translation>
    </message>
    <message>
        <source>Into a hose</source>
        <translation>In einen Schlauch</translation>
    </message>
    <message>
        <source>Isolation valve</source>
        <translation>Absperrventil</translation>
    </message>
    <message>
        <source>Bleed point</source>
        <translation>Entlüftung</translation>
    </message>
    <message>
        <source>Clip</source>
        <translation>Schelle</translation>
    </message>
    <message>
        <source>Heaters</source>
        <translation>Heizgeräte</translation>
    </message>
    <message>
        <source>Engines</source>
        <translation>Motoren</translation>
    </message>
    <message>
        <source>To keep clear of</source>
        <translation>Sperrbereiche</translation>
    </message>
    <message>
        <source>Keep-clear area</source>
        <translation>Sperrbereich</translation>
    </message>
    <message>
        <source>%1: drag it onto the drawing, or press Enter to put it in the middle</source>
        <translation>%1: auf die Zeichnung ziehen, oder mit der Eingabetaste in die Mitte setzen</translation>
    </message>
</context>
<context>
    <name>siphonwright::ShortcutsWindow</name>
    <message>
        <source>Shortcuts</source>
        <translation>Tastenkürzel</translation>
    </message>
    <message>
        <source>Find by words or keys</source>
        <translation>Nach Wörtern oder Tasten suchen</translation>
    </message>
    <message>
        <source>Find a command by its words or keys</source>
        <translation>Einen Befehl nach Wörtern oder Tasten suchen</translation>
    </message>
    <message>
        <source>Commands and their keys</source>
        <translation>Befehle und ihre Tasten</translation>
    </message>
    <message>
        <source>Command</source>
        <translation>Befehl</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Was er tut</translation>
    </message>
    <message>
        <source>New keys: press them here</source>
        <translation>Neue Tasten: hier drücken</translation>
    </message>
    <message>
        <source>&amp;No keys</source>
        <translation>&amp;Keine Tasten</translation>
    </message>
    <message>
        <source>&amp;Back to default</source>
        <translation>&amp;Zurücksetzen</translation>
    </message>
    <message>
        <source>&amp;All back to default…</source>
        <translation>&amp;Alle zurücksetzen…</translation>
    </message>
    <message>
        <source>&amp;Take them from there</source>
        <translation>&amp;Dort wegnehmen</translation>
    </message>
    <message>
        <source>Its default keys are with another command now.</source>
        <translation>Seine Standardtasten gehören jetzt zu einem anderen Befehl.</translation>
    </message>
    <message>
        <source>Put the keys of all commands back to their defaults?</source>
        <translation>Die Tasten aller Befehle auf den Standard zurücksetzen?</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Werkzeuge</translation>
    </message>
    <message>
        <source>%1 › %2</source>
        <translation>%1 › %2</translation>
    </message>
    <message>
        <source>On the drawing</source>
        <translation>Auf der Zeichnung</translation>
    </message>
    <message>
        <source>%1 (changed)</source>
        <translation>%1 (geändert)</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>The drawing&apos;s own keys cannot be changed.</source>
        <translation>Die Tasten der Zeichnung selbst lassen sich nicht ändern.</translation>
    </message>
    <message>
        <source>Keys for “%1”</source>
        <translation>Tasten für „%1“</translation>
    </message>
    <message>
        <source>Press the new keys in the field. Default: %1.</source>
        <translation>Drücken Sie im Feld die neuen Tasten. Standard: %1.</translation>
    </message>
    <message>
        <source>%1 belongs to the drawing: choose other keys.</source>
        <translation>%1 gehört zur Zeichnung: wählen Sie andere Tasten.</translation>
    </message>
    <message>
        <source>%1 now runs “%2”.</source>
        <translation>%1 führt jetzt „%2“ aus.</translation>
    </message>
    <message>
        <source>%1 runs “%2” already. Nothing was changed.</source>
        <translation>%1 führt schon „%2“ aus. Nichts wurde geändert.</translation>
    </message>
</context>
<context>
    <name>siphonwright::SideTitle</name>
    <message>
        <source>Close this panel</source>
        <translation>Dieses Feld schließen</translation>
    </message>
    <message>
        <source>Lift this panel out of the window</source>
        <translation>Dieses Feld aus dem Fenster heben</translation>
    </message>
</context>
<context>
    <name>siphonwright::SurveyCommands</name>
    <message>
        <source>Blank survey form</source>
        <translation>Leeres Aufmaßblatt</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>The form could not be written.</source>
        <translation>Das Aufmaßblatt konnte nicht geschrieben werden.</translation>
    </message>
</context>
<context>
    <name>siphonwright::TemplateGallery</name>
    <message>
        <source>%1
%2</source>
        <translation>%1
%2</translation>
    </message>
    <message>
        <source>%1, %2
%3 high, hose %4</source>
        <translation>%1, %2
%3 hoch, Schlauch %4</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Typical sizes, to be shaped to what stands before you. All to one scale.</source>
        <translation>Typische Größen, anzupassen an das, was vor Ihnen steht. Alle im selben Maßstab.</translation>
    </message>
    <message>
        <source>&amp;Take it</source>
        <translation>Über&amp;nehmen</translation>
    </message>
    <message>
        <source>&amp;Air-cooled engine…</source>
        <translation>&amp;Luftgekühlter Motor…</translation>
    </message>
</context>
<context>
    <name>siphonwright::assumptions</name>
    <message>
        <source>Change an assumption</source>
        <translation>Eine Annahme ändern</translation>
    </message>
    <message>
        <source>Back to the book&apos;s assumption</source>
        <translation>Zurück zur Annahme des Buchs</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>Durchfluss</translation>
    </message>
    <message>
        <source>peak outlet</source>
        <translation>Auslass max.</translation>
    </message>
    <message>
        <source>cycles</source>
        <translation>Schaltspiele</translation>
    </message>
    <message>
        <source>time to target</source>
        <translation>Zeit bis zum Ziel</translation>
    </message>
</context>
<context>
    <name>siphonwright::assumptions::AssumptionForm</name>
    <message>
        <source>Keep for this drawing</source>
        <translation>Für diese Zeichnung behalten</translation>
    </message>
    <message>
        <source>Back to the book&apos;s</source>
        <translation>Zurück zum Buchwert</translation>
    </message>
    <message>
        <source>Basis: %1.</source>
        <translation>Grundlage: %1.</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>for example: measured on this engine</source>
        <translation>zum Beispiel: an diesem Motor gemessen</translation>
    </message>
    <message>
        <source>In this drawing</source>
        <translation>In dieser Zeichnung</translation>
    </message>
    <message>
        <source>changed; the book&apos;s: %1</source>
        <translation>geändert; Buchwert: %1</translation>
    </message>
    <message>
        <source>as in the book</source>
        <translation>wie im Buch</translation>
    </message>
    <message>
        <source>Write the reason too: the sheet states it.</source>
        <translation>Schreiben Sie auch den Grund: das Blatt nennt ihn.</translation>
    </message>
</context>
<context>
    <name>siphonwright::assumptions::AssumptionList</name>
    <message>
        <source>Assumption</source>
        <translation>Annahme</translation>
    </message>
    <message>
        <source>In force</source>
        <translation>Geltend</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Geändert</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Spanne</translation>
    </message>
    <message>
        <source>Drives here</source>
        <translation>Wirkt hier auf</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Grundlage</translation>
    </message>
    <message>
        <source>little</source>
        <translation>wenig</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>geändert</translation>
    </message>
    <message>
        <source>held</source>
        <translation>fest</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
</context>
<context>
    <name>siphonwright::assumptions::AssumptionWindow</name>
    <message>
        <source>Assumptions</source>
        <translation>Annahmen</translation>
    </message>
    <message>
        <source>Figures that nobody has measured, with what each rests on. Results come with a band over these ranges; a figure changed here is held.</source>
        <translation>Zahlen, die niemand gemessen hat, mit ihrer Grundlage. Ergebnisse kommen mit einem Band über diese Spannen; eine hier geänderte Zahl steht fest.</translation>
    </message>
    <message>
        <source>Search the assumptions</source>
        <translation>Annahmen durchsuchen</translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning</name>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Achtung: %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Commissioning checklist</source>
        <translation>Checkliste der Inbetriebnahme</translation>
    </message>
    <message>
        <source>done by, time</source>
        <translation>erledigt von, Zeit</translation>
    </message>
    <message>
        <source>Estimates from stated assumptions. The heater&apos;s and the engine&apos;s own manuals rule.</source>
        <translation>Schätzungen aus genannten Annahmen. Die Handbücher von Heizgerät und Motor gehen vor.</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Ambient</source>
        <translation>Umgebung</translation>
    </message>
    <message>
        <source>Inlet</source>
        <translation>Einlass</translation>
    </message>
    <message>
        <source>Outlet</source>
        <translation>Auslass</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Rücklauf</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>V</source>
        <translation>V</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>On/off</source>
        <translation>Ein/Aus</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>gesehen</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Readings: %1</source>
        <translation>Messwerte: %1</translation>
    </message>
    <message>
        <source>%1: the checklist could not be drawn.</source>
        <translation>%1: die Checkliste konnte nicht gezeichnet werden.</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>passt</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>fraglich</translation>
    </message>
    <message>
        <source>does not fit</source>
        <translation>passt nicht</translation>
    </message>
    <message>
        <source>over the limit</source>
        <translation>über dem Grenzwert</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>d MMM HH:mm</source>
        <translation>d. MMM HH:mm</translation>
    </message>
    <message>
        <source>Limits: outlet under %1 all the time, at most %2 cycles an hour.</source>
        <translation>Grenzen: Austritt immer unter %1, höchstens %2 Schaltspiele in der Stunde.</translation>
    </message>
    <message>
        <source>Limits: those of the heater&apos;s manual.</source>
        <translation>Grenzen: die des Handbuchs des Heizgeräts.</translation>
    </message>
    <message>
        <source>Nothing was computed to expect.</source>
        <translation>Zu erwarten ist nichts berechnet.</translation>
    </message>
    <message>
        <source>Expected: outlet peaks at %1 (%2 to %3).</source>
        <translation>Erwartet: Austritt höchstens %1 (%2 bis %3).</translation>
    </message>
    <message>
        <source>Expected: outlet peaks at %1.</source>
        <translation>Erwartet: Austritt höchstens %1.</translation>
    </message>
    <message>
        <source>outlet: line; engine: dashes; limit: dots</source>
        <translation>Austritt: Linie; Motor: Striche; Grenze: Punkte</translation>
    </message>
    <message>
        <source>peak, range</source>
        <translation>Höchstwert, Spanne</translation>
    </message>
    <message>
        <source>steps with their cautions, readings with limits and what is expected</source>
        <translation>Schritte mit Warnhinweisen, Messwerte mit Grenzen und was zu erwarten ist</translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::CommissioningPanel</name>
    <message>
        <source>Heater</source>
        <translation>Heizgerät</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Liste</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Diagnosis</source>
        <translation>Diagnose</translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::DiagnosisView</name>
    <message>
        <source>The faults are being simulated…</source>
        <translation>Die Fehler werden simuliert…</translation>
    </message>
    <message>
        <source>A diagnosis appears when there are readings.</source>
        <translation>Eine Diagnose erscheint, sobald Messwerte da sind.</translation>
    </message>
    <message>
        <source>Not diagnosed: %1.</source>
        <translation>Nicht diagnostiziert: %1.</translation>
    </message>
    <message>
        <source>What would give these readings, by simulation of each fault on this drawing. Estimates: make sure before a part is replaced.</source>
        <translation>Was diese Messwerte ergäbe, durch Simulation jedes Fehlers an dieser Zeichnung. Schätzungen: vergewissern Sie sich, bevor ein Teil ersetzt wird.</translation>
    </message>
    <message>
        <source>Of the readings as they were. </source>
        <translation>Von den Messwerten, wie sie waren. </translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Als Nächstes: %1</translation>
    </message>
    <message>
        <source>or: %1</source>
        <translation>oder: %1</translation>
    </message>
    <message>
        <source>Show on the
drawing</source>
        <translation>In Zeichnung
zeigen</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Show on the drawing: %1</source>
        <translation>Auf der Zeichnung zeigen: %1</translation>
    </message>
    <message>
        <source>Probability %1</source>
        <translation>Wahrscheinlichkeit %1</translation>
    </message>
    <message>
        <source>Why: %1</source>
        <translation>Warum: %1</translation>
    </message>
    <message>
        <source>Make sure: %1</source>
        <translation>Sichergehen: %1</translation>
    </message>
    <message>
        <source>Then: %1</source>
        <translation>Dann: %1</translation>
    </message>
    <message>
        <source>These readings cannot tell it from:</source>
        <translation>Diese Messwerte können ihn nicht unterscheiden von:</translation>
    </message>
    <message>
        <source>▲ None of the faults listed explains these readings well.</source>
        <translation>▲ Keiner der aufgeführten Fehler erklärt diese Messwerte gut.</translation>
    </message>
    <message>
        <source>The nearest of those listed:</source>
        <translation>Die nächstliegenden der aufgeführten:</translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::ReadingChart</name>
    <message>
        <source>Readings over what the drawing would give</source>
        <translation>Messwerte über dem, was die Zeichnung ergäbe</translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::ReadingsView</name>
    <message>
        <source>Remove this reading</source>
        <translation>Diesen Messwert entfernen</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Ambient</source>
        <translation>Umgebung</translation>
    </message>
    <message>
        <source>Power on</source>
        <translation>Strom ein</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>＋ Add a reading now</source>
        <translation>＋ Jetzt messen</translation>
    </message>
    <message>
        <source>Turned on now</source>
        <translation>Jetzt eingeschaltet</translation>
    </message>
    <message>
        <source>Turned off now</source>
        <translation>Jetzt ausgeschaltet</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
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
        <source>on %1</source>
        <translation>ein: %1</translation>
    </message>
    <message>
        <source>off %1</source>
        <translation>aus: %1</translation>
    </message>
    <message>
        <source>When it was turned on is not entered: press &quot;Turned on now&quot; then.</source>
        <translation>Wann eingeschaltet wurde, ist nicht eingegeben: dann „Jetzt eingeschaltet“ drücken.</translation>
    </message>
    <message>
        <source>Seen to turn: %1</source>
        <translation>Schalten gesehen: %1</translation>
    </message>
    <message>
        <source>%1 %2: %3</source>
        <translation>%1 %2: %3</translation>
    </message>
    <message>
        <source>Not judged against the drawing: %1.</source>
        <translation>Nicht an der Zeichnung gemessen: %1.</translation>
    </message>
    <message>
        <source>No readings of this heater yet.</source>
        <translation>Noch keine Messwerte dieses Heizgeräts.</translation>
    </message>
    <message>
        <source>Add a reading</source>
        <translation>Messwert hinzufügen</translation>
    </message>
    <message>
        <source>Remove a reading</source>
        <translation>Messwert entfernen</translation>
    </message>
    <message>
        <source>Note turning on</source>
        <translation>Einschalten notieren</translation>
    </message>
    <message>
        <source>Note turning off</source>
        <translation>Ausschalten notieren</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: %2</source>
        <translation>&quot;%1&quot;: %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a time: 25 Nov 07:30, or 2026-11-25T07:30.</source>
        <translation>„%1“ ist keine Zeit: 25. Nov. 07:30 oder 2026-11-25T07:30.</translation>
    </message>
    <message>
        <source>Change a reading</source>
        <translation>Messwert ändern</translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::StepList</name>
    <message>
        <source>Steps of the work</source>
        <translation>Arbeitsschritte</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Als PDF speichern…</translation>
    </message>
    <message>
        <source>%1 of %2 steps done</source>
        <translation>%1 von %2 Schritten erledigt</translation>
    </message>
    <message>
        <source>☑  %1</source>
        <translation>☑  %1</translation>
    </message>
    <message>
        <source>☐  %1</source>
        <translation>☐  %1</translation>
    </message>
    <message>
        <source>
      %1, %2</source>
        <translation>
      %1, %2</translation>
    </message>
    <message>
        <source>
      %1</source>
        <translation>
      %1</translation>
    </message>
    <message>
        <source>
      ▲ out of order: %1</source>
        <translation>
      ▲ außer der Reihe: %1</translation>
    </message>
    <message>
        <source>
      ▲ what it rests on is open again</source>
        <translation>
      ▲ worauf er aufbaut, ist wieder offen</translation>
    </message>
    <message>
        <source>
      waits for steps before it</source>
        <translation>
      wartet auf Schritte davor</translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::StepView</name>
    <message>
        <source>Done all the same</source>
        <translation>Trotzdem erledigt</translation>
    </message>
    <message>
        <source>Not done after all</source>
        <translation>Doch nicht erledigt</translation>
    </message>
    <message>
        <source>◀ Back</source>
        <translation>◀ Zurück</translation>
    </message>
    <message>
        <source>Next ▶</source>
        <translation>Weiter ▶</translation>
    </message>
    <message>
        <source>✓ Done</source>
        <translation>✓ Erledigt</translation>
    </message>
    <message>
        <source>Steps done</source>
        <translation>Erledigte Schritte</translation>
    </message>
    <message>
        <source>Done by</source>
        <translation>Erledigt von</translation>
    </message>
    <message>
        <source>Why it is done before its turn</source>
        <translation>Warum er außer der Reihe erledigt wird</translation>
    </message>
    <message>
        <source>• %1</source>
        <translation>• %1</translation>
    </message>
    <message>
        <source>Step %1 of %2 · %3 done</source>
        <translation>Schritt %1 von %2 · %3 erledigt</translation>
    </message>
    <message>
        <source>⚠ %1</source>
        <translation>⚠ %1</translation>
    </message>
    <message>
        <source>✓ Done %1</source>
        <translation>✓ Erledigt %1</translation>
    </message>
    <message>
        <source>✓ Done %1 by %2</source>
        <translation>✓ Erledigt %1 von %2</translation>
    </message>
    <message>
        <source>Out of order: %1</source>
        <translation>Außer der Reihe: %1</translation>
    </message>
    <message>
        <source>Not yet. First:</source>
        <translation>Noch nicht. Zuerst:</translation>
    </message>
    <message>
        <source>Tick &quot;%1&quot;</source>
        <translation>„%1“ abhaken</translation>
    </message>
    <message>
        <source>Take &quot;%1&quot; back</source>
        <translation>„%1“ zurücknehmen</translation>
    </message>
</context>
<context>
    <name>siphonwright::demonstration</name>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>From the fill to the heater on</source>
        <translation>Vom Füllen bis zum Einschalten des Heizgeräts</translation>
    </message>
    <message>
        <source>%1: a moment is written as .png or .svg.</source>
        <translation>%1: ein Moment wird als .png oder .svg geschrieben.</translation>
    </message>
    <message>
        <source>%1: the moment could not be drawn.</source>
        <translation>%1: der Moment konnte nicht gezeichnet werden.</translation>
    </message>
    <message>
        <source>%1 is a file; the pictures need a folder.</source>
        <translation>%1 ist eine Datei; die Bilder brauchen einen Ordner.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation>Der Ordner %1 lässt sich nicht anlegen.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be written to.</source>
        <translation>In den Ordner %1 lässt sich nicht schreiben.</translation>
    </message>
    <message>
        <source>Handout: %1</source>
        <translation>Handout: %1</translation>
    </message>
    <message>
        <source>%1: the handout could not be drawn.</source>
        <translation>%1: das Handout konnte nicht gezeichnet werden.</translation>
    </message>
    <message>
        <source>Filling</source>
        <translation>Füllen</translation>
    </message>
    <message>
        <source>Engine running</source>
        <translation>Motor läuft</translation>
    </message>
    <message>
        <source>Topped up</source>
        <translation>Nachgefüllt</translation>
    </message>
    <message>
        <source>Heater on</source>
        <translation>Heizgerät ein</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
</context>
<context>
    <name>siphonwright::demonstration::Beside</name>
    <message>
        <source>Whether the drawing beside circulates</source>
        <translation>Ob die Zeichnung daneben zirkuliert</translation>
    </message>
    <message>
        <source>The drawing beside</source>
        <translation>Die Zeichnung daneben</translation>
    </message>
    <message>
        <source>Nothing to show: %1.</source>
        <translation>Nichts zu zeigen: %1.</translation>
    </message>
</context>
<context>
    <name>siphonwright::demonstration::DemonstrationBar</name>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Abspielen</translation>
    </message>
    <message>
        <source>What is happening now</source>
        <translation>Was gerade geschieht</translation>
    </message>
    <message>
        <source>Full screen</source>
        <translation>Vollbild</translation>
    </message>
    <message>
        <source>Large, for the back of the room (F11)</source>
        <translation>Groß, auch von ganz hinten lesbar (F11)</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Beenden</translation>
    </message>
    <message>
        <source>End the demonstration (Escape)</source>
        <translation>Vorführung beenden (Esc)</translation>
    </message>
    <message>
        <source>Start again</source>
        <translation>Von vorn</translation>
    </message>
    <message>
        <source>Back to the start (Home)</source>
        <translation>Zurück zum Anfang (Pos1)</translation>
    </message>
    <message>
        <source>One step back (Left)</source>
        <translation>Einen Schritt zurück (Links)</translation>
    </message>
    <message>
        <source>Play or pause (Space)</source>
        <translation>Abspielen oder Pause (Leertaste)</translation>
    </message>
    <message>
        <source>One step on (Right)</source>
        <translation>Einen Schritt weiter (Rechts)</translation>
    </message>
    <message>
        <source>One step back</source>
        <translation>Einen Schritt zurück</translation>
    </message>
    <message>
        <source>One step on</source>
        <translation>Einen Schritt weiter</translation>
    </message>
    <message>
        <source>%1×</source>
        <translation>%1×</translation>
    </message>
    <message>
        <source>Speed with the heater on</source>
        <translation>Tempo mit eingeschaltetem Heizgerät</translation>
    </message>
    <message>
        <source>How much faster than the truth it goes with the heater on</source>
        <translation>Wie viel schneller als in Wirklichkeit es mit eingeschaltetem Heizgerät geht</translation>
    </message>
    <message>
        <source>Engine run</source>
        <translation>Motorlauf</translation>
    </message>
    <message>
        <source>Run the engine and top up before the heater is switched on, or leave it out</source>
        <translation>Vor dem Einschalten des Heizgeräts den Motor laufen lassen und nachfüllen, oder es auslassen</translation>
    </message>
    <message>
        <source>Hide findings</source>
        <translation>Befunde verbergen</translation>
    </message>
    <message>
        <source>Let the class guess first (H)</source>
        <translation>Die Klasse zuerst raten lassen (H)</translation>
    </message>
    <message>
        <source>Ask</source>
        <translation>Fragen</translation>
    </message>
    <message>
        <source>Count hands, then reveal</source>
        <translation>Hände zählen, dann aufdecken</translation>
    </message>
    <message>
        <source>Nothing to show yet: %1.</source>
        <translation>Noch nichts zu zeigen: %1.</translation>
    </message>
    <message>
        <source>The heater cannot be switched on yet: %1.</source>
        <translation>Das Heizgerät lässt sich noch nicht einschalten: %1.</translation>
    </message>
</context>
<context>
    <name>siphonwright::demonstration::ScrubBar</name>
    <message>
        <source>Where the demonstration stands</source>
        <translation>Wo die Vorführung steht</translation>
    </message>
    <message>
        <source>Drag to move through the demonstration; ticks are where something happens.</source>
        <translation>Ziehen führt durch die Vorführung; Striche zeigen, wo etwas geschieht.</translation>
    </message>
</context>
<context>
    <name>siphonwright::demonstration::Votes</name>
    <message>
        <source>Reveal</source>
        <translation>Aufdecken</translation>
    </message>
    <message>
        <source>Will it circulate?</source>
        <translation>Zirkuliert es?</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>One more %1</source>
        <translation>Eins mehr: %1</translation>
    </message>
    <message>
        <source>One less %1</source>
        <translation>Eins weniger: %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::drawing</name>
    <message>
        <source>plumb</source>
        <translation>lotrecht</translation>
    </message>
    <message>
        <source>level</source>
        <translation>waagrecht</translation>
    </message>
    <message>
        <source>rises at %1</source>
        <translation>steigt mit %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1: depth not entered</source>
        <translation>%1: Tiefe nicht eingegeben</translation>
    </message>
    <message>
        <source>Right side</source>
        <translation>Rechte Seite</translation>
    </message>
    <message>
        <source>Left side</source>
        <translation>Linke Seite</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Front</translation>
    </message>
    <message>
        <source>Jacket highest</source>
        <translation>Mantel oben</translation>
    </message>
    <message>
        <source>Jacket lowest</source>
        <translation>Mantel unten</translation>
    </message>
    <message>
        <source>Thermostat</source>
        <translation>Thermostat</translation>
    </message>
    <message>
        <source>Supply %1</source>
        <translation>Vorlauf %1</translation>
    </message>
    <message>
        <source>Return %1</source>
        <translation>Rücklauf %1</translation>
    </message>
    <message>
        <source>Ground, lowest ride height</source>
        <translation>Boden, tiefste Fahrhöhe</translation>
    </message>
    <message>
        <source>Datum</source>
        <translation>Bezugshöhe</translation>
    </message>
    <message>
        <source>Level hot</source>
        <translation>Heißstand</translation>
    </message>
    <message>
        <source>Level cold full</source>
        <translation>Kaltfüllstand</translation>
    </message>
    <message>
        <source>Level cold minimum</source>
        <translation>Kaltmindeststand</translation>
    </message>
    <message>
        <source>Surge tank</source>
        <translation>Ausgleichsbehälter</translation>
    </message>
    <message>
        <source>may sag %1</source>
        <translation>Durchhang bis %1</translation>
    </message>
    <message>
        <source>plumb, %1 off</source>
        <translation>lotrecht, %1 daneben</translation>
    </message>
    <message>
        <source>%1 of air, locks the loop</source>
        <translation>%1 Luft, sperrt den Kreislauf</translation>
    </message>
    <message>
        <source>%1 of air, cleared by running</source>
        <translation>%1 Luft, Motorlauf treibt sie aus</translation>
    </message>
    <message>
        <source>%1 of air, may clear</source>
        <translation>%1 Luft, evtl. ausgetrieben</translation>
    </message>
    <message>
        <source>%1 of air, stays</source>
        <translation>%1 Luft, bleibt</translation>
    </message>
    <message>
        <source>%1 drives, air takes %2</source>
        <translation>%1 treiben, Luft kostet %2</translation>
    </message>
    <message>
        <source>%1 drives, %2 resists</source>
        <translation>%1 treiben, %2 bremsen</translation>
    </message>
    <message>
        <source>%1 drives, air resists %2</source>
        <translation>%1 treiben, Luft hält %2 dagegen</translation>
    </message>
    <message>
        <source>nothing drives it</source>
        <translation>nichts treibt an</translation>
    </message>
    <message>
        <source>%1 would drive it</source>
        <translation>%1 würden antreiben</translation>
    </message>
    <message>
        <source>runs backward</source>
        <translation>läuft rückwärts</translation>
    </message>
    <message>
        <source>stalled</source>
        <translation>steht still</translation>
    </message>
    <message>
        <source>a valve is shut</source>
        <translation>ein Ventil ist zu</translation>
    </message>
    <message>
        <source>boils</source>
        <translation>siedet</translation>
    </message>
    <message>
        <source>coolant is slush</source>
        <translation>Kühlmittel ist Eisbrei</translation>
    </message>
    <message>
        <source>not computed</source>
        <translation>nicht berechnet</translation>
    </message>
    <message>
        <source>in %1, out %2</source>
        <translation>ein %1, aus %2</translation>
    </message>
    <message>
        <source>at %1 block</source>
        <translation>bei Block %1</translation>
    </message>
    <message>
        <source>plumb up</source>
        <translation>lotrecht hinauf</translation>
    </message>
    <message>
        <source>plumb down</source>
        <translation>lotrecht hinab</translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation>%1 steigt</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>%1 fällt</translation>
    </message>
    <message>
        <source>%1 of air, turns the flow round</source>
        <translation>%1 Luft, kehrt den Durchfluss um</translation>
    </message>
    <message>
        <source>%1, %2 along it</source>
        <translation>%1, nach %2</translation>
    </message>
    <message>
        <source>%1 over the datum</source>
        <translation>%1 über der Bezugshöhe</translation>
    </message>
    <message>
        <source>behind %1</source>
        <translation>hinter %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::headless</name>
    <message>
        <source>%1 needs %2.</source>
        <translation>%1 braucht %2.</translation>
    </message>
    <message>
        <source>%1 does not know what to do with &quot;%2&quot;.</source>
        <translation>%1 kann mit &quot;%2&quot; nichts anfangen.</translation>
    </message>
    <message>
        <source>STOP</source>
        <translation>STOPP</translation>
    </message>
    <message>
        <source>CAUTION</source>
        <translation>WARNUNG</translation>
    </message>
    <message>
        <source>advice</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>The job is stopped.</source>
        <translation>Der Auftrag ist gestoppt.</translation>
    </message>
    <message>
        <source>Nothing stops the job.</source>
        <translation>Nichts stoppt den Auftrag.</translation>
    </message>
    <message>
        <source>Nothing that was judged stops the job.</source>
        <translation>Nichts Beurteiltes stoppt den Auftrag.</translation>
    </message>
    <message>
        <source> [%1: measured %2, limit %3]</source>
        <translation> [%1: gemessen %2, Grenzwert %3]</translation>
    </message>
    <message>
        <source> Hangs on %1.</source>
        <translation> Hängt ab von: %1.</translation>
    </message>
    <message>
        <source>  not judged: %1 [%2]</source>
        <translation>  nicht beurteilt: %1 [%2]</translation>
    </message>
    <message>
        <source>  switched off: %1 (%2)</source>
        <translation>  abgeschaltet: %1 (%2)</translation>
    </message>
    <message>
        <source>  not confirmed: %1</source>
        <translation>  nicht bestätigt: %1</translation>
    </message>
    <message>
        <source>%1, %2, %3, %4.</source>
        <translation>%1, %2, %3, %4.</translation>
    </message>
    <message>
        <source>1 stop</source>
        <translation>1 Stopp</translation>
    </message>
    <message>
        <source>%1 stops</source>
        <translation>%1 Stopps</translation>
    </message>
    <message>
        <source>1 caution</source>
        <translation>1 Warnung</translation>
    </message>
    <message>
        <source>%1 cautions</source>
        <translation>%1 Warnungen</translation>
    </message>
    <message>
        <source>1 advice</source>
        <translation>1 Hinweis</translation>
    </message>
    <message>
        <source>%1 advices</source>
        <translation>%1 Hinweise</translation>
    </message>
    <message>
        <source>%1 not judged</source>
        <translation>%1 nicht beurteilt</translation>
    </message>
    <message>
        <source>Checklist: %1 of %2 steps done.</source>
        <translation>Checkliste: %1 von %2 Schritten erledigt.</translation>
    </message>
    <message>
        <source>out of order: %1 (%2)</source>
        <translation>außer der Reihe: %1 (%2)</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation>kein Grund angegeben</translation>
    </message>
    <message>
        <source>not judged: %1</source>
        <translation>nicht beurteilt: %1</translation>
    </message>
    <message>
        <source>not diagnosed: %1</source>
        <translation>nicht diagnostiziert: %1</translation>
    </message>
    <message>
        <source>or: %1</source>
        <translation>oder: %1</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Als Nächstes: %1</translation>
    </message>
    <message>
        <source>&gt; 99 %</source>
        <translation>&gt; 99 %</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>  There is no heater to diagnose.</source>
        <translation>  Es gibt kein Heizgerät zu diagnostizieren.</translation>
    </message>
    <message>
        <source>block full, new hoses empty</source>
        <translation>Block voll, neue Schläuche leer</translation>
    </message>
    <message>
        <source>block partly drained, new hoses empty</source>
        <translation>Block teilweise entleert, neue Schläuche leer</translation>
    </message>
    <message>
        <source>block full, hoses and heater filled before they are connected</source>
        <translation>Block voll, Schläuche und Heizgerät vor dem Verbinden gefüllt</translation>
    </message>
    <message>
        <source>engine and hoses empty</source>
        <translation>Motor und Schläuche leer</translation>
    </message>
    <message>
        <source>Start: %1; %2 of air in each hose.</source>
        <translation>Anfang: %1; %2 Luft in jedem Schlauch.</translation>
    </message>
    <message>
        <source>Start: %1; no air in them.</source>
        <translation>Anfang: %1; keine Luft darin.</translation>
    </message>
    <message>
        <source>filled under vacuum</source>
        <translation>unter Vakuum gefüllt</translation>
    </message>
    <message>
        <source>filled from below</source>
        <translation>von unten gefüllt</translation>
    </message>
    <message>
        <source>filled at the filler</source>
        <translation>am Einfüllstutzen gefüllt</translation>
    </message>
    <message>
        <source>Start: %1; %2</source>
        <translation>Anfang: %1; %2</translation>
    </message>
    <message>
        <source>%1, %2 short.</source>
        <translation>%1, %2 zu wenig.</translation>
    </message>
    <message>
        <source>No air stays.</source>
        <translation>Keine Luft bleibt.</translation>
    </message>
    <message>
        <source>There is nothing to draw: %1.</source>
        <translation>Es gibt nichts zu zeichnen: %1.</translation>
    </message>
    <message>
        <source>a folder for the pictures</source>
        <translation>einen Ordner für die Bilder</translation>
    </message>
    <message>
        <source>%1 pictures written to %2.</source>
        <translation>%1 Bilder geschrieben nach %2.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a command.</source>
        <translation>&quot;%1&quot; ist kein Befehl.</translation>
    </message>
    <message>
        <source>%1 could not be written: %2</source>
        <translation>%1 ließ sich nicht schreiben: %2</translation>
    </message>
    <message>
        <source>  Nothing is drawn that takes parts.</source>
        <translation>  Es ist nichts gezeichnet, was Teile braucht.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>not priced</source>
        <translation>ohne Preis</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Pos.</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>List price</source>
        <translation>Listenpreis</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Betrag</translation>
    </message>
    <message>
        <source>Hose of %1</source>
        <translation>Schlauch mit %1</translation>
    </message>
    <message>
        <source>Hose without a bore</source>
        <translation>Schlauch ohne Innendurchmesser</translation>
    </message>
    <message>
        <source>  %1: not planned. %2</source>
        <translation>  %1: nicht geplant. %2</translation>
    </message>
    <message>
        <source>  %1: %2 from rolls of %3, the least there is; %4 left over.</source>
        <translation>  %1: %2 von Rollen zu %3, weniger geht nicht; %4 bleiben übrig.</translation>
    </message>
    <message>
        <source>  %1: %2 from rolls of %3; %4 left over. No plan needs less than %5.</source>
        <translation>  %1: %2 von Rollen zu %3; %4 bleiben übrig. Kein Plan braucht weniger als %5.</translation>
    </message>
    <message>
        <source>  Materials at list price: %1.</source>
        <translation>  Material zum Listenpreis: %1.</translation>
    </message>
    <message>
        <source>  Materials at list price: %1, incomplete: one item is not priced.</source>
        <translation>  Material zum Listenpreis: %1, unvollständig: eine Position hat keinen Preis.</translation>
    </message>
    <message>
        <source>  Materials at list price: %1, incomplete: %2 items are not priced.</source>
        <translation>  Material zum Listenpreis: %1, unvollständig: %2 Positionen haben keinen Preis.</translation>
    </message>
    <message>
        <source>the name of a price list</source>
        <translation>den Namen einer Preisliste</translation>
    </message>
    <message>
        <source>the name of a file to write</source>
        <translation>den Namen einer zu schreibenden Datei</translation>
    </message>
    <message>
        <source>, for %1 vehicles</source>
        <translation>, für %1 Fahrzeuge</translation>
    </message>
    <message>
        <source>  %1 written.</source>
        <translation>  %1 geschrieben.</translation>
    </message>
    <message>
        <source>sheet needs a sketch file and --output OUT.pdf, .svg or .png.</source>
        <translation>sheet braucht eine Zeichnungsdatei und --output AUS.pdf, .svg oder .png.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no paper; A4, A3, Letter or Tabloid is.</source>
        <translation>&quot;%1&quot; ist kein Papier; A4, A3, Letter oder Tabloid ist eines.</translation>
    </message>
    <message>
        <source>OUT.pdf, .svg or .png</source>
        <translation>AUS.pdf, .svg oder .png</translation>
    </message>
    <message>
        <source>A4, A3, Letter or Tabloid</source>
        <translation>A4, A3, Letter oder Tabloid</translation>
    </message>
    <message>
        <source>%1 written, scale 1:%2.</source>
        <translation>%1 geschrieben, Maßstab 1:%2.</translation>
    </message>
    <message>
        <source>A4 or Letter</source>
        <translation>A4 oder Letter</translation>
    </message>
    <message>
        <source>a file to write, OUT.pdf</source>
        <translation>eine zu schreibende Datei, AUS.pdf</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no paper for the form; A4 or Letter is.</source>
        <translation>&quot;%1&quot; ist kein Papier für das Formular; A4 oder Letter ist eines.</translation>
    </message>
    <message>
        <source>survey-form needs a file to write, OUT.pdf.</source>
        <translation>survey-form braucht eine zu schreibende Datei, AUS.pdf.</translation>
    </message>
    <message>
        <source>%1 written.</source>
        <translation>%1 geschrieben.</translation>
    </message>
    <message>
        <source>%1: %2 is not from %3 to %4.</source>
        <translation>%1: %2 liegt nicht von %3 bis %4.</translation>
    </message>
    <message>
        <source>    the return is warm to the hand at the engine after %1 min
</source>
        <translation>    der Rücklauf ist am Motor nach %1 min handwarm
</translation>
    </message>
    <message>
        <source>    an infrared thermometer reads %1 on the return hose there at the end
</source>
        <translation>    ein Infrarotthermometer zeigt dort am Ende %1 auf dem Rücklaufschlauch
</translation>
    </message>
    <message>
        <source>    the cut-out trips after %1 min
</source>
        <translation>    der Temperaturbegrenzer löst nach %1 min aus
</translation>
    </message>
    <message>
        <source>    on the edge: air withstands nearly all that drives, and small causes decide
</source>
        <translation>    auf der Kippe: Luft hält fast allem stand, was treibt, und kleine Ursachen entscheiden
</translation>
    </message>
    <message>
        <source>  assumed: %1</source>
        <translation>  angenommen: %1</translation>
    </message>
    <message>
        <source> (changed; usually %1)</source>
        <translation> (geändert; sonst %1)</translation>
    </message>
    <message>
        <source>there is no warm-up to write: %1</source>
        <translation>es gibt kein Aufheizen zu schreiben: %1</translation>
    </message>
    <message>
        <source>a time in hours</source>
        <translation>eine Zeit in Stunden</translation>
    </message>
    <message>
        <source>a temperature</source>
        <translation>eine Temperatur</translation>
    </message>
    <message>
        <source>a sketch file</source>
        <translation>eine Zeichnungsdatei</translation>
    </message>
    <message>
        <source>None of the faults listed explains these readings well. The nearest of them:</source>
        <translation>Keiner der aufgeführten Fehler erklärt diese Messwerte gut. Die nächstliegenden:</translation>
    </message>
    <message>
        <source>siphonwright [FILE]                       open the window
siphonwright check FILE... [--json] [--bands]
                                          judge sketches; --bands: over all that is assumed
siphonwright warm-up FILE [--hours H] [--ambient T] [--csv OUT]
                                          how the engine warms up
siphonwright fill FILE [--json] [--frames DIR]
                                          tell how it fills and what air stays; --frames: as
                                          numbered pictures, moment-0001.png and so on
siphonwright parts FILE [--prices LIST.csv] [--csv OUT.csv]
                                          list the parts, cuts and what is not priced
siphonwright diagnose FILE [--json]       judge its readings and say what explains them
siphonwright sheet FILE --output OUT.pdf|.svg|.png
             [--paper A4|A3|Letter|Tabloid] [--portrait] [--colour]
             [--parts] [--photo] [--student] [--third-angle]
             [--pages NAMES|all] [--scale 1:N] [--dpi N] [--logo PICTURE]
siphonwright sheet FILE... --output-dir DIR
                                          draw the sheet; --pages: drawing, fitting, checklist,
                                          parts, estimate, assumptions, with commas between;
                                          --scale: over several pages where it does not fit;
                                          --photo: over the photo; --student: without findings;
                                          --third-angle: the end view placed so;
                                          --output-dir: each sketch as a PDF in a folder
siphonwright survey-form OUT.pdf [--paper A4|Letter] [--inch]
                                          a blank page to measure with at the vehicle
siphonwright --help | --version

Exit code: 0 nothing stops the job; 1 at least one stop; 2 a file could not be read or
written, or an argument is wrong.
</source>
        <translation>siphonwright [DATEI]                      öffnet das Fenster
siphonwright check DATEI... [--json] [--bands]
                                          beurteilt Zeichnungen; --bands: über alle Annahmen
siphonwright warm-up DATEI [--hours H] [--ambient T] [--csv AUS]
                                          wie sich der Motor aufheizt
siphonwright fill DATEI [--json] [--frames ORDNER]
                                          sagt, wie es sich füllt und welche Luft bleibt; --frames:
                                          als nummerierte Bilder, moment-0001.png und so weiter
siphonwright parts DATEI [--prices LISTE.csv] [--csv AUS.csv]
                                          listet Teile, Zuschnitt und was keinen Preis hat
siphonwright diagnose DATEI [--json]      beurteilt ihre Messwerte und sagt, was sie erklärt
siphonwright sheet DATEI --output AUS.pdf|.svg|.png
             [--paper A4|A3|Letter|Tabloid] [--portrait] [--colour]
             [--parts] [--photo] [--student] [--third-angle]
             [--pages NAMES|all] [--scale 1:N] [--dpi N] [--logo PICTURE]
siphonwright sheet DATEI... --output-dir DIR
                                          zeichnet das Blatt; --pages: drawing, fitting, checklist,
                                          parts, estimate, assumptions, mit Kommas dazwischen;
                                          --scale: über mehrere Seiten, wo es nicht passt;
                                          --photo: über dem Foto; --student: ohne Befunde;
                                          --third-angle: die Ansicht vom Ende so gesetzt;
                                          --output-dir: jede Skizze als PDF in einen Ordner
siphonwright survey-form AUS.pdf [--paper A4|Letter] [--inch]
                                          eine leere Seite zum Messen am Fahrzeug
siphonwright --help | --version

Rückgabewert: 0 nichts stoppt den Auftrag; 1 mindestens ein Stopp; 2 eine Datei ließ sich nicht
lesen oder schreiben, oder ein Argument ist falsch.
</translation>
    </message>
    <message>
        <source>Several sketches need --output-dir DIR.</source>
        <translation>Mehrere Skizzen brauchen --output-dir DIR.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no scale; 1:10 is.</source>
        <translation>„%1“ ist kein Maßstab; 1:10 ist einer.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no resolution; 20 to 1200 dots per inch are.</source>
        <translation>„%1“ ist keine Auflösung; 20 bis 1200 Punkte je Zoll sind es.</translation>
    </message>
    <message>
        <source>%1 could not be read as a picture.</source>
        <translation>%1 konnte nicht als Bild gelesen werden.</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: pages are drawing, fitting, checklist, parts, estimate and assumptions, with commas between, or all.</source>
        <translation>„%1“: Seiten sind drawing, fitting, checklist, parts, estimate und assumptions, mit Kommas dazwischen, oder all.</translation>
    </message>
    <message>
        <source>%1 cannot be made.</source>
        <translation>%1 kann nicht angelegt werden.</translation>
    </message>
    <message>
        <source>the name of a folder</source>
        <translation>den Namen eines Ordners</translation>
    </message>
    <message>
        <source>names of pages, or all</source>
        <translation>Namen von Seiten oder all</translation>
    </message>
    <message>
        <source>a scale such as 1:10</source>
        <translation>einen Maßstab wie 1:10</translation>
    </message>
    <message>
        <source>dots per inch</source>
        <translation>Punkte je Zoll</translation>
    </message>
    <message>
        <source>the name of a picture</source>
        <translation>den Namen eines Bildes</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels</name>
    <message>
        <source>Flow %1, in at %2, out at %3.</source>
        <translation>Durchfluss %1, ein mit %2, aus mit %3.</translation>
    </message>
    <message>
        <source>%1 of head drives (%2), %3 resists (%4).</source>
        <translation>%1 Druckhöhe treiben (%2), %3 bremsen (%4).</translation>
    </message>
    <message>
        <source>Air takes %1 of it.</source>
        <translation>Luft kostet %1 davon.</translation>
    </message>
    <message>
        <source>On the edge: small causes decide whether it runs.</source>
        <translation>Auf der Kippe: kleine Ursachen entscheiden, ob es läuft.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Largest losses: %1.</source>
        <translation>Größte Verluste: %1.</translation>
    </message>
    <message>
        <source>Over the warm-up: hottest outlet %1</source>
        <translation>Über das Aufheizen: heißester Auslass %1</translation>
    </message>
    <message>
        <source>, %1 under boiling</source>
        <translation>, %1 unter dem Siedepunkt</translation>
    </message>
    <message>
        <source>, element&apos;s surface %1 with bubbles on it</source>
        <translation>, Oberfläche des Heizelements %1 mit Blasen darauf</translation>
    </message>
    <message>
        <source>, element&apos;s surface %1</source>
        <translation>, Oberfläche des Heizelements %1</translation>
    </message>
    <message>
        <source>How it runs is not computed: %1.</source>
        <translation>Wie es läuft, ist nicht berechnet: %1.</translation>
    </message>
    <message>
        <source>%1, with the block at %2.</source>
        <translation>%1, mit dem Block bei %2.</translation>
    </message>
    <message>
        <source>Circulates</source>
        <translation>Zirkuliert</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::DetailsPanel</name>
    <message numerus="yes">
        <source>%1, and %n more selected</source>
        <translation>
            <numerusform>%1 und %n weiteres ausgewählt</numerusform>
            <numerusform>%1 und %n weitere ausgewählt</numerusform>
        </translation>
    </message>
    <message>
        <source>The warm-up is of the drawing a moment ago.</source>
        <translation>Das Aufheizen gehört zur Zeichnung von eben.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FindingRow</name>
    <message>
        <source>Not judged.</source>
        <translation>Nicht beurteilt.</translation>
    </message>
    <message>
        <source>Not confirmed.</source>
        <translation>Nicht bestätigt.</translation>
    </message>
    <message>
        <source>STOP</source>
        <translation>STOPP</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>&lt;b&gt;Fix:&lt;/b&gt;</source>
        <translation>&lt;b&gt;Abhilfe:&lt;/b&gt;</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FindingsModel</name>
    <message>
        <source>%1. Basis: %2</source>
        <translation>%1. Grundlage: %2</translation>
    </message>
    <message>
        <source>%1, %2: %3 %4</source>
        <translation>%1, %2: %3 %4</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Verdicts hang on this. Measure it or look it up, and say so beside the figure.</source>
        <translation>Urteile hängen davon ab. Messen Sie es oder schlagen Sie es nach, und vermerken Sie das neben der Zahl.</translation>
    </message>
    <message>
        <source>Not confirmed: %1.</source>
        <translation>Nicht bestätigt: %1.</translation>
    </message>
    <message>
        <source>measured %1</source>
        <translation>gemessen %1</translation>
    </message>
    <message>
        <source>measured %1, limit %2</source>
        <translation>gemessen %1, Grenzwert %2</translation>
    </message>
    <message>
        <source>1 stops the job</source>
        <translation>1 stoppt den Auftrag</translation>
    </message>
    <message>
        <source>%1 stop the job</source>
        <translation>%1 stoppen den Auftrag</translation>
    </message>
    <message>
        <source>1 caution</source>
        <translation>1 Warnung</translation>
    </message>
    <message>
        <source>%1 cautions</source>
        <translation>%1 Warnungen</translation>
    </message>
    <message>
        <source>%1 advice</source>
        <translation>%1 Hinweise</translation>
    </message>
    <message>
        <source>%1 not judged</source>
        <translation>%1 nicht beurteilt</translation>
    </message>
    <message>
        <source>%1 not confirmed</source>
        <translation>%1 nicht bestätigt</translation>
    </message>
    <message>
        <source>Nothing to judge until hoses are drawn</source>
        <translation>Nichts zu beurteilen, bis Schläuche gezeichnet sind</translation>
    </message>
    <message>
        <source>Nothing found that stops the job</source>
        <translation>Nichts gefunden, was den Auftrag stoppt</translation>
    </message>
    <message>
        <source>measured %1 (%2), limit %3 (%4)</source>
        <translation>gemessen %1 (%2), Grenzwert %3 (%4)</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FindingsPanel</name>
    <message>
        <source>About this rule…</source>
        <translation>Über diese Regel…</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>What it rests on, and its limits, which can be changed for this drawing</source>
        <translation>Worauf sie beruht, und ihre Grenzwerte, die sich für diese Zeichnung ändern lassen</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FixBar</name>
    <message>
        <source>Fix it</source>
        <translation>Beheben</translation>
    </message>
    <message>
        <source>Looking for a fix…</source>
        <translation>Abhilfe wird gesucht…</translation>
    </message>
    <message>
        <source>No small change of the drawing cures this by itself.</source>
        <translation>Keine kleine Änderung der Zeichnung behebt das für sich allein.</translation>
    </message>
    <message>
        <source>Proven by analysing the changed drawing. One undo takes it back.</source>
        <translation>Durch Prüfen der geänderten Zeichnung bewiesen. Einmal Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>Fix: %1</source>
        <translation>Abhilfe: %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FormText</name>
    <message>
        <source>Along</source>
        <translation>Längs</translation>
    </message>
    <message>
        <source>Height over datum</source>
        <translation>Höhe über Bezug</translation>
    </message>
    <message>
        <source>Away from viewer</source>
        <translation>Vom Betrachter weg</translation>
    </message>
    <message>
        <source>nothing: open end</source>
        <translation>nichts: offenes Ende</translation>
    </message>
    <message>
        <source>%1, inlet</source>
        <translation>%1, Einlass</translation>
    </message>
    <message>
        <source>%1, outlet</source>
        <translation>%1, Auslass</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>manual</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>typical</source>
        <translation>typisch</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Elbow</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>none, straight</source>
        <translation>keiner, gerade</translation>
    </message>
    <message>
        <source>elbow or angled adapter</source>
        <translation>Winkel oder Winkeladapter</translation>
    </message>
    <message>
        <source>Leaves, in plan</source>
        <translation>Abgang im Grundriss</translation>
    </message>
    <message>
        <source>Leaves up by</source>
        <translation>Abgang nach oben um</translation>
    </message>
    <message>
        <source>Elbow radius</source>
        <translation>Winkelradius</translation>
    </message>
    <message>
        <source>Elbow leg</source>
        <translation>Winkelschenkel</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>exhaust</source>
        <translation>Auspuff</translation>
    </message>
    <message>
        <source>turbocharger</source>
        <translation>Turbolader</translation>
    </message>
    <message>
        <source>heat shield</source>
        <translation>Hitzeschild</translation>
    </message>
    <message>
        <source>belt</source>
        <translation>Riemen</translation>
    </message>
    <message>
        <source>fan</source>
        <translation>Lüfter</translation>
    </message>
    <message>
        <source>shaft</source>
        <translation>Welle</translation>
    </message>
    <message>
        <source>steering</source>
        <translation>Lenkung</translation>
    </message>
    <message>
        <source>suspension</source>
        <translation>Aufhängung</translation>
    </message>
    <message>
        <source>other</source>
        <translation>anderes</translation>
    </message>
    <message>
        <source>Near side</source>
        <translation>Nahe Seite</translation>
    </message>
    <message>
        <source>Depth of its side towards the viewer; not entered: not known</source>
        <translation>Tiefe der Seite zum Betrachter hin; nicht eingegeben: nicht bekannt</translation>
    </message>
    <message>
        <source>Far side</source>
        <translation>Ferne Seite</translation>
    </message>
    <message>
        <source>Keep clear by</source>
        <translation>Abstand halten</translation>
    </message>
    <message>
        <source>Ground over datum</source>
        <translation>Boden über Bezug</translation>
    </message>
    <message>
        <source>At the lowest ride height</source>
        <translation>Bei tiefster Fahrhöhe</translation>
    </message>
    <message>
        <source>Measures %1 along the hose</source>
        <translation>Misst %1 längs des Schlauchs</translation>
    </message>
    <message>
        <source>Measures %1</source>
        <translation>Misst %1</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>Von %1</translation>
    </message>
    <message>
        <source>To %1</source>
        <translation>Zu %1</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>horizontal</source>
        <translation>waagrecht</translation>
    </message>
    <message>
        <source>vertical</source>
        <translation>senkrecht</translation>
    </message>
    <message>
        <source>along</source>
        <translation>längs</translation>
    </message>
    <message>
        <source>slope</source>
        <translation>Steigung</translation>
    </message>
    <message>
        <source>Line aside</source>
        <translation>Linie abgerückt</translation>
    </message>
    <message>
        <source>From the line between its ends: up, right, or left of the way; negative: opposite</source>
        <translation>Von der Linie zwischen den Enden: nach oben, rechts oder links vom Weg; negativ: entgegengesetzt</translation>
    </message>
    <message>
        <source>Engine front faces</source>
        <translation>Motorvorderseite zeigt nach</translation>
    </message>
    <message>
        <source>vehicle front</source>
        <translation>Fahrzeug vorn</translation>
    </message>
    <message>
        <source>vehicle right</source>
        <translation>Fahrzeug rechts</translation>
    </message>
    <message>
        <source>vehicle rear</source>
        <translation>Fahrzeug hinten</translation>
    </message>
    <message>
        <source>vehicle left</source>
        <translation>Fahrzeug links</translation>
    </message>
    <message>
        <source>Stretches the jacket&apos;s outline to this level</source>
        <translation>Streckt den Umriss des Wassermantels auf diese Höhe</translation>
    </message>
    <message>
        <source>Water jacket</source>
        <translation>Wassermantel</translation>
    </message>
    <message>
        <source>Lowest level</source>
        <translation>Tiefste Höhe</translation>
    </message>
    <message>
        <source>Highest level</source>
        <translation>Höchste Höhe</translation>
    </message>
    <message>
        <source>Depth of the jacket&apos;s side towards the viewer</source>
        <translation>Tiefe der Seite des Wassermantels zum Betrachter hin</translation>
    </message>
    <message>
        <source>Arrangement</source>
        <translation>Bauform</translation>
    </message>
    <message>
        <source>in-line 3</source>
        <translation>3 Zyl. Reihe</translation>
    </message>
    <message>
        <source>in-line 4</source>
        <translation>4 Zyl. Reihe</translation>
    </message>
    <message>
        <source>in-line 5</source>
        <translation>5 Zyl. Reihe</translation>
    </message>
    <message>
        <source>in-line 6</source>
        <translation>6 Zyl. Reihe</translation>
    </message>
    <message>
        <source>vee 6</source>
        <translation>V6</translation>
    </message>
    <message>
        <source>vee 8</source>
        <translation>V8</translation>
    </message>
    <message>
        <source>vee 12</source>
        <translation>V12</translation>
    </message>
    <message>
        <source>vee 16</source>
        <translation>V16</translation>
    </message>
    <message>
        <source>slanted in-line</source>
        <translation>Reihe, geneigt</translation>
    </message>
    <message>
        <source>Displacement</source>
        <translation>Hubraum</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>iron</source>
        <translation>Eisen</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>Aluminium</translation>
    </message>
    <message>
        <source>Coolant in engine</source>
        <translation>Kühlmittel im Motor</translation>
    </message>
    <message>
        <source>Front is at the</source>
        <translation>Vorn ist</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>Mount angle</source>
        <translation>Einbauwinkel</translation>
    </message>
    <message>
        <source>Positive: the engine&apos;s rear is lower</source>
        <translation>Positiv: die Motorrückseite liegt tiefer</translation>
    </message>
    <message>
        <source>Lean</source>
        <translation>Querneigung</translation>
    </message>
    <message>
        <source>Positive: the top leans towards the engine&apos;s right side</source>
        <translation>Positiv: die Oberseite neigt sich zur rechten Motorseite</translation>
    </message>
    <message>
        <source>Thermostat housing</source>
        <translation>Thermostatgehäuse</translation>
    </message>
    <message>
        <source>Surge tank and levels</source>
        <translation>Ausgleichsbehälter und Stände</translation>
    </message>
    <message>
        <source>Sits on the</source>
        <translation>Sitzt auf der</translation>
    </message>
    <message>
        <source>outlet side</source>
        <translation>Austrittsseite</translation>
    </message>
    <message>
        <source>inlet side</source>
        <translation>Eintrittsseite</translation>
    </message>
    <message>
        <source>Bleed hole</source>
        <translation>Entlüftungsbohrung</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>Coolant levels over datum</source>
        <translation>Kühlmittelstände über Bezug</translation>
    </message>
    <message>
        <source>Cold minimum</source>
        <translation>Kaltmindeststand</translation>
    </message>
    <message>
        <source>Cold full</source>
        <translation>Kalt voll</translation>
    </message>
    <message>
        <source>Hot</source>
        <translation>Heiß</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Lage</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Engine outline, corner %1</source>
        <translation>Motorumriss, Ecke %1</translation>
    </message>
    <message>
        <source>Water jacket, corner %1</source>
        <translation>Wassermantel, Ecke %1</translation>
    </message>
    <message>
        <source>Surge tank</source>
        <translation>Ausgleichsbehälter</translation>
    </message>
    <message>
        <source>Port: %1</source>
        <translation>Anschluss: %1</translation>
    </message>
    <message>
        <source>Heater: %1</source>
        <translation>Heizgerät: %1</translation>
    </message>
    <message>
        <source>%1, point %2</source>
        <translation>%1, Punkt %2</translation>
    </message>
    <message>
        <source>%1, start</source>
        <translation>%1, Anfang</translation>
    </message>
    <message>
        <source>%1, end</source>
        <translation>%1, Ende</translation>
    </message>
    <message>
        <source>%1, in-line part %2</source>
        <translation>%1, Einbauteil %2</translation>
    </message>
    <message>
        <source>%1, clip %2</source>
        <translation>%1, Halteschelle %2</translation>
    </message>
    <message>
        <source>Area to keep clear of</source>
        <translation>Sperrbereich</translation>
    </message>
    <message>
        <source>Area, corner %1</source>
        <translation>Bereich, Ecke %1</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>Dimension</source>
        <translation>Maß</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>The whole drawing</source>
        <translation>Die ganze Zeichnung</translation>
    </message>
    <message>
        <source>Tilt from upright</source>
        <translation>Kippung aus der Senkrechten</translation>
    </message>
    <message>
        <source>0 upright, 90 lying to the right, -90 to the left</source>
        <translation>0 aufrecht, 90 nach rechts liegend, -90 nach links</translation>
    </message>
    <message>
        <source>Turn about plumb</source>
        <translation>Drehung um das Lot</translation>
    </message>
    <message>
        <source>Body length</source>
        <translation>Gehäuselänge</translation>
    </message>
    <message>
        <source>Body diameter</source>
        <translation>Gehäuse-Ø</translation>
    </message>
    <message>
        <source>Mounted on</source>
        <translation>Montiert an</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>Rahmen</translation>
    </message>
    <message>
        <source>engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>not allowed</source>
        <translation>nicht erlaubt</translation>
    </message>
    <message>
        <source>allowed</source>
        <translation>erlaubt</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Innen-Ø</translation>
    </message>
    <message>
        <source>From centre, right</source>
        <translation>Von der Mitte, rechts</translation>
    </message>
    <message>
        <source>From centre, up</source>
        <translation>Von der Mitte, hoch</translation>
    </message>
    <message>
        <source>From centre, away</source>
        <translation>Von der Mitte, weg</translation>
    </message>
    <message>
        <source>Points to, in plan</source>
        <translation>Richtung im Grundriss</translation>
    </message>
    <message>
        <source>0 right, 90 away from the viewer, 180 left</source>
        <translation>0 rechts, 90 vom Betrachter weg, 180 links</translation>
    </message>
    <message>
        <source>Points up by</source>
        <translation>Zeigt nach oben um</translation>
    </message>
    <message>
        <source>Stub length</source>
        <translation>Stutzenlänge</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Gewinde</translation>
    </message>
    <message>
        <source>Phases</source>
        <translation>Phasen</translation>
    </message>
    <message>
        <source>single phase</source>
        <translation>einphasig</translation>
    </message>
    <message>
        <source>three phase</source>
        <translation>dreiphasig</translation>
    </message>
    <message>
        <source>Over-temperature cut-out</source>
        <translation>Temperaturbegrenzer</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <source>resets itself</source>
        <translation>selbstrückstellend</translation>
    </message>
    <message>
        <source>manual reset</source>
        <translation>Handrückstellung</translation>
    </message>
    <message>
        <source>Cut-out opens at</source>
        <translation>Begrenzer öffnet bei</translation>
    </message>
    <message>
        <source>Chamber, from the body&apos;s centre</source>
        <translation>Kammer, ab Gehäusemitte</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Oben</translation>
    </message>
    <message>
        <source>Bottom</source>
        <translation>Unten</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>Top of element</source>
        <translation>Oberkante Heizelement</translation>
    </message>
    <message>
        <source>Coolant must stand over it before power goes on</source>
        <translation>Kühlmittel muss darüber stehen, bevor Strom eingeschaltet wird</translation>
    </message>
    <message>
        <source>Electrical</source>
        <translation>Elektrik</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>Rated voltage</source>
        <translation>Nennspannung</translation>
    </message>
    <message>
        <source>Voltage at the bay</source>
        <translation>Spannung am Stellplatz</translation>
    </message>
    <message>
        <source>Thermostat</source>
        <translation>Thermostat</translation>
    </message>
    <message>
        <source>at the inlet</source>
        <translation>am Einlass</translation>
    </message>
    <message>
        <source>at the outlet</source>
        <translation>am Auslass</translation>
    </message>
    <message>
        <source>remote</source>
        <translation>entfernt</translation>
    </message>
    <message>
        <source>Turns on at</source>
        <translation>Schaltet ein bei</translation>
    </message>
    <message>
        <source>Turns off at</source>
        <translation>Schaltet aus bei</translation>
    </message>
    <message>
        <source>The heater&apos;s manual</source>
        <translation>Handbuch des Heizgeräts</translation>
    </message>
    <message>
        <source>Smallest hose bore</source>
        <translation>Kleinster Schlauch-Innen-Ø</translation>
    </message>
    <message>
        <source>Least drop under jacket</source>
        <translation>Mindestabstand unter Mantel</translation>
    </message>
    <message>
        <source>Upright</source>
        <translation>Aufrecht</translation>
    </message>
    <message>
        <source>Lying</source>
        <translation>Liegend</translation>
    </message>
    <message>
        <source>Inclined</source>
        <translation>Schräg</translation>
    </message>
    <message>
        <source>Inlet nozzle</source>
        <translation>Einlassstutzen</translation>
    </message>
    <message>
        <source>Outlet nozzle</source>
        <translation>Auslassstutzen</translation>
    </message>
    <message>
        <source>isolation valve</source>
        <translation>Absperrventil</translation>
    </message>
    <message>
        <source>bleed point</source>
        <translation>Entlüftung</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>Ablass</translation>
    </message>
    <message>
        <source>lift check valve</source>
        <translation>Hub-Rückschlagventil</translation>
    </message>
    <message>
        <source>swing check valve</source>
        <translation>Klappen-Rückschlagventil</translation>
    </message>
    <message>
        <source>reducer</source>
        <translation>Reduzierung</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Nach</translation>
    </message>
    <message>
        <source>What this end is pushed onto</source>
        <translation>Worauf dieses Ende geschoben ist</translation>
    </message>
    <message>
        <source>Bore of hose end</source>
        <translation>Innen-Ø der Tülle</translation>
    </message>
    <message>
        <source>Pushed on by</source>
        <translation>Aufgeschoben um</translation>
    </message>
    <message>
        <source>Start of hose</source>
        <translation>Schlauchanfang</translation>
    </message>
    <message>
        <source>End of hose</source>
        <translation>Schlauchende</translation>
    </message>
    <message>
        <source>Point %1</source>
        <translation>Punkt %1</translation>
    </message>
    <message>
        <source>In-line part %1: %2</source>
        <translation>Einbauteil %1: %2</translation>
    </message>
    <message>
        <source>Clip %1</source>
        <translation>Halteschelle %1</translation>
    </message>
    <message>
        <source>Carries coolant</source>
        <translation>Führt Kühlmittel</translation>
    </message>
    <message>
        <source>to the heater (supply)</source>
        <translation>zum Heizgerät (Vorlauf)</translation>
    </message>
    <message>
        <source>to the engine (return)</source>
        <translation>zum Motor (Rücklauf)</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Wand</translation>
    </message>
    <message>
        <source>Least bend radius</source>
        <translation>Kleinster Biegeradius</translation>
    </message>
    <message>
        <source>To the inside of the bend; not entered: judged by bores</source>
        <translation>Zur Bogeninnenseite; nicht eingegeben: nach Innendurchmessern beurteilt</translation>
    </message>
    <message>
        <source>Insulation</source>
        <translation>Isolierung</translation>
    </message>
    <message>
        <source>Whole hose</source>
        <translation>Ganzer Schlauch</translation>
    </message>
    <message>
        <source>Bend radius</source>
        <translation>Biegeradius</translation>
    </message>
    <message>
        <source>To the hose&apos;s centreline</source>
        <translation>Zur Mittellinie des Schlauchs</translation>
    </message>
    <message>
        <source>Bend is</source>
        <translation>Bogen ist</translation>
    </message>
    <message>
        <source>the hose itself</source>
        <translation>der Schlauch selbst</translation>
    </message>
    <message>
        <source>a moulded elbow</source>
        <translation>ein Formbogen</translation>
    </message>
    <message>
        <source>a metal elbow</source>
        <translation>ein Metallwinkel</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Along the hose</source>
        <translation>Längs des Schlauchs</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Its own bore; for a reducer the bore from here on</source>
        <translation>Der eigene Innendurchmesser; bei einer Reduzierung der ab hier</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stellung</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Of the whole picture. Scale by two points sets it from a length in the picture.</source>
        <translation>Des ganzen Bildes. Skalieren mit zwei Punkten setzt sie aus einer Länge im Bild.</translation>
    </message>
    <message>
        <source>Turned clockwise</source>
        <translation>Rechts gedreht</translation>
    </message>
    <message>
        <source>About its middle. Level by two points sets it from something level.</source>
        <translation>Um die Mitte. Waagrecht über zwei Punkte setzt es nach etwas Waagrechtem.</translation>
    </message>
    <message>
        <source>Faded</source>
        <translation>Blässe</translation>
    </message>
    <message>
        <source>as taken</source>
        <translation>wie aufgenommen</translation>
    </message>
    <message>
        <source>a little</source>
        <translation>ein wenig</translation>
    </message>
    <message>
        <source>by half</source>
        <translation>zur Hälfte</translation>
    </message>
    <message>
        <source>much</source>
        <translation>stark</translation>
    </message>
    <message>
        <source>not to be seen</source>
        <translation>nicht zu sehen</translation>
    </message>
    <message>
        <source>The picture in this file cannot be read. Remove it, or put another in its place.</source>
        <translation>Das Bild in dieser Datei ist nicht lesbar. Entfernen Sie es oder setzen Sie ein anderes ein.</translation>
    </message>
    <message>
        <source>%1 × %2 pixels, %3 kB of this file, one pixel is %4 mm.</source>
        <translation>%1 × %2 Pixel, %3 kB dieser Datei, ein Pixel ist %4 mm.</translation>
    </message>
    <message>
        <source>Left corner, along</source>
        <translation>Linke Ecke, längs</translation>
    </message>
    <message>
        <source>Top corner over datum</source>
        <translation>Obere Ecke über Bezug</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation>Gesperrt</translation>
    </message>
    <message>
        <source>A locked photo stays where it is while you draw over it</source>
        <translation>Ein gesperrtes Foto bleibt, wo es ist, während Sie darüber zeichnen</translation>
    </message>
    <message>
        <source>Cabin line&apos;s shut-off</source>
        <translation>Absperrung der Heizungsleitung</translation>
    </message>
    <message>
        <source>Used for</source>
        <translation>Dient als</translation>
    </message>
    <message>
        <source>supply</source>
        <translation>Vorlauf</translation>
    </message>
    <message>
        <source>return</source>
        <translation>Rücklauf</translation>
    </message>
    <message>
        <source>sensor</source>
        <translation>Fühler</translation>
    </message>
    <message>
        <source>spare</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>drain port</source>
        <translation>Ablassanschluss</translation>
    </message>
    <message>
        <source>core-plug opening</source>
        <translation>Froststopfen-Öffnung</translation>
    </message>
    <message>
        <source>lower-hose tee</source>
        <translation>T-Stück im unteren Kühlerschlauch</translation>
    </message>
    <message>
        <source>head or manifold port</source>
        <translation>Anschluss an Kopf oder Sammler</translation>
    </message>
    <message>
        <source>cabin heater line</source>
        <translation>Leitung der Fahrerhausheizung</translation>
    </message>
    <message>
        <source>Direction out of the engine</source>
        <translation>Richtung aus dem Motor</translation>
    </message>
    <message>
        <source>In plan</source>
        <translation>Im Grundriss</translation>
    </message>
    <message>
        <source>0 right, 90 away from the viewer, 180 left, -90 towards the viewer</source>
        <translation>0 rechts, 90 vom Betrachter weg, 180 links, -90 zum Betrachter hin</translation>
    </message>
    <message>
        <source>Up by</source>
        <translation>Nach oben um</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Second title</source>
        <translation>Zweiter Titel</translation>
    </message>
    <message>
        <source>Vehicle or set</source>
        <translation>Fahrzeug oder Aggregat</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Kunde</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Revision</source>
        <translation>Revision</translation>
    </message>
    <message>
        <source>Date of issue</source>
        <translation>Ausgabedatum</translation>
    </message>
    <message>
        <source>Drawn by</source>
        <translation>Gezeichnet von</translation>
    </message>
    <message>
        <source>Approved by</source>
        <translation>Freigegeben von</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Eigentümer</translation>
    </message>
    <message>
        <source>Department</source>
        <translation>Abteilung</translation>
    </message>
    <message>
        <source>Reference</source>
        <translation>Referenz</translation>
    </message>
    <message>
        <source>Document type</source>
        <translation>Dokumentart</translation>
    </message>
    <message>
        <source>Coolant</source>
        <translation>Kühlmittel</translation>
    </message>
    <message>
        <source>Antifreeze</source>
        <translation>Frostschutz</translation>
    </message>
    <message>
        <source>none, plain water</source>
        <translation>keiner, reines Wasser</translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation>Ethylenglykol</translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation>Propylenglykol</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Antifreeze by volume</source>
        <translation>Frostschutz, Vol.-%</translation>
    </message>
    <message>
        <source>Cap pressure</source>
        <translation>Deckeldruck</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Technology</source>
        <translation>Technologie</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Standort</translation>
    </message>
    <message>
        <source>Ambient</source>
        <translation>Umgebung</translation>
    </message>
    <message>
        <source>Coldest ambient</source>
        <translation>Tiefste Umgebung</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>Grade, nose up</source>
        <translation>Neigung, Front hoch</translation>
    </message>
    <message>
        <source>Grade, right side up</source>
        <translation>Neigung, rechts hoch</translation>
    </message>
    <message>
        <source>Judged nose up and down to</source>
        <translation>Beurteilt Front hoch/tief bis</translation>
    </message>
    <message>
        <source>Judged left and right to</source>
        <translation>Beurteilt links/rechts bis</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Meereshöhe</translation>
    </message>
    <message>
        <source>Filling</source>
        <translation>Füllen</translation>
    </message>
    <message>
        <source>Full before</source>
        <translation>Vorher voll</translation>
    </message>
    <message>
        <source>block; hoses empty</source>
        <translation>Block; Schläuche leer</translation>
    </message>
    <message>
        <source>nothing; drained</source>
        <translation>nichts; entleert</translation>
    </message>
    <message>
        <source>block and hoses</source>
        <translation>Block und Schläuche</translation>
    </message>
    <message>
        <source>block, partly drained</source>
        <translation>Block, teils entleert</translation>
    </message>
    <message>
        <source>Block and hoses: hoses and heater are filled before they are connected</source>
        <translation>Block und Schläuche: Schläuche und Heizgerät werden vor dem Verbinden gefüllt</translation>
    </message>
    <message>
        <source>Filled</source>
        <translation>Gefüllt</translation>
    </message>
    <message>
        <source>at the filler</source>
        <translation>am Einfüllstutzen</translation>
    </message>
    <message>
        <source>under vacuum</source>
        <translation>unter Vakuum</translation>
    </message>
    <message>
        <source>from below</source>
        <translation>von unten</translation>
    </message>
    <message>
        <source>Air in each pre-filled hose</source>
        <translation>Luft je vorgefülltem Schlauch</translation>
    </message>
    <message>
        <source>Gets in where the hose is pushed on. Counts only for hoses filled before they are connected; empty: none.</source>
        <translation>Gelangt beim Aufschieben des Schlauchs hinein. Zählt nur für Schläuche, die vor dem Verbinden gefüllt wurden; leer: keine.</translation>
    </message>
    <message>
        <source>Coolant let out of the block</source>
        <translation>Aus dem Block abgelassen</translation>
    </message>
    <message>
        <source>Before the new hoses are connected. Counts only for a block that is partly drained; empty: down to the top of the lower port.</source>
        <translation>Vor dem Verbinden der neuen Schläuche. Zählt nur für einen teilweise entleerten Block; leer: bis zur Oberkante des unteren Anschlusses.</translation>
    </message>
    <message>
        <source>Coolant short by</source>
        <translation>Fehlendes Kühlmittel</translation>
    </message>
    <message>
        <source>Head of the engine&apos;s pump</source>
        <translation>Förderhöhe der Motorpumpe</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>mm and °C</source>
        <translation>mm und °C</translation>
    </message>
    <message>
        <source>inch and °F</source>
        <translation>Zoll und °F</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>Its serial number</source>
        <translation>Seine Seriennummer</translation>
    </message>
    <message>
        <source>Changed in it</source>
        <translation>Darin geändert</translation>
    </message>
    <message>
        <source>Remembered for the next new drawing</source>
        <translation>Wird für die nächste neue Zeichnung gemerkt</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FormView</name>
    <message>
        <source>Change %1</source>
        <translation>Ändern: %1</translation>
    </message>
    <message>
        <source>Change notes</source>
        <translation>Notizen ändern</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>nicht eingegeben</translation>
    </message>
    <message>
        <source>Where this comes from</source>
        <translation>Woher das kommt</translation>
    </message>
    <message>
        <source>Source of %1</source>
        <translation>Quelle von: %1</translation>
    </message>
    <message>
        <source>Change source of %1</source>
        <translation>Quelle ändern von: %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::GradeStrip</name>
    <message>
        <source>Grade lengthways, percent, nose-up to the right</source>
        <translation>Längsneigung, Prozent, Front hoch nach rechts</translation>
    </message>
    <message>
        <source>Park the vehicle on a grade: left is nose-down, right is nose-up.
The band is where the job is sound, the thick line is what it is judged over.
Double-click for level.</source>
        <translation>Das Fahrzeug geneigt parken: links ist Front tief, rechts ist Front hoch.
Das Band zeigt, wo die Anlage in Ordnung ist, die dicke Linie, worüber geurteilt wird.
Doppelklick für ebenen Boden.</translation>
    </message>
    <message>
        <source>Grade across, percent, right side up to the right</source>
        <translation>Querneigung, Prozent, rechte Seite hoch nach rechts</translation>
    </message>
    <message>
        <source>Left is left side up, right is right side up. Double-click for level.</source>
        <translation>Links ist linke Seite hoch, rechts ist rechte Seite hoch. Doppelklick für ebenen Boden.</translation>
    </message>
    <message>
        <source>Back to level</source>
        <translation>Wieder eben</translation>
    </message>
    <message>
        <source>Stand the vehicle on the level again</source>
        <translation>Das Fahrzeug wieder auf ebenen Boden stellen</translation>
    </message>
    <message>
        <source>Parked</source>
        <translation>Geparkt</translation>
    </message>
    <message>
        <source>across</source>
        <translation>quer</translation>
    </message>
    <message>
        <source>%1 nose-up</source>
        <translation>%1 Front hoch</translation>
    </message>
    <message>
        <source>%1 nose-down</source>
        <translation>%1 Front tief</translation>
    </message>
    <message>
        <source>%1 right side up</source>
        <translation>%1 rechte Seite hoch</translation>
    </message>
    <message>
        <source>%1 left side up</source>
        <translation>%1 linke Seite hoch</translation>
    </message>
    <message>
        <source>on the level</source>
        <translation>auf ebenem Boden</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::ProfilePanel</name>
    <message>
        <source>The profile appears when a hose is drawn.</source>
        <translation>Das Profil erscheint, sobald ein Schlauch gezeichnet ist.</translation>
    </message>
    <message>
        <source>Supply hose</source>
        <translation>Vorlaufschlauch</translation>
    </message>
    <message>
        <source>Return hose</source>
        <translation>Rücklaufschlauch</translation>
    </message>
    <message>
        <source>cold minimum</source>
        <translation>Kalt-Minimum</translation>
    </message>
    <message>
        <source>%1 along, crown %2, bottom %3</source>
        <translation>%1 längs, oben %2, unten %3</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Passend</translation>
    </message>
    <message>
        <source>%1×</source>
        <translation>%1×</translation>
    </message>
    <message>
        <source>How many times larger heights are drawn than lengths</source>
        <translation>Wie viel größer Höhen als Längen gezeichnet werden</translation>
    </message>
    <message>
        <source>Draw heights larger than lengths, so that a small hump is seen</source>
        <translation>Höhen größer als Längen zeichnen, damit ein kleiner Buckel sichtbar wird</translation>
    </message>
    <message>
        <source>Heights in sight</source>
        <translation>Sichtbare Höhen</translation>
    </message>
    <message>
        <source>Run profile</source>
        <translation>Höhenprofil</translation>
    </message>
    <message>
        <source>Height along the hoses, seen from where the coolant comes from</source>
        <translation>Höhe längs der Schläuche, gesehen von dort, woher das Kühlmittel kommt</translation>
    </message>
    <message>
        <source>Heights to the scale of the lengths</source>
        <translation>Höhen im Maßstab der Längen</translation>
    </message>
    <message>
        <source>Heights %1 times the lengths</source>
        <translation>Höhen %1-fach gegenüber Längen</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::QuantityEdit</name>
    <message>
        <source>not entered</source>
        <translation>nicht eingegeben</translation>
    </message>
    <message>
        <source>Pick a usual size</source>
        <translation>Eine übliche Größe wählen</translation>
    </message>
    <message>
        <source>This number is too large.</source>
        <translation>Diese Zahl ist zu groß.</translation>
    </message>
    <message>
        <source>Not under %1.</source>
        <translation>Nicht unter %1.</translation>
    </message>
    <message>
        <source>Not over %1.</source>
        <translation>Nicht über %1.</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper</name>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1 left over</source>
        <translation>%1 bleiben übrig</translation>
    </message>
    <message>
        <source>Hose, bore %1</source>
        <translation>Schlauch, Innen-Ø %1</translation>
    </message>
    <message>
        <source>Hose, bore not entered</source>
        <translation>Schlauch, Innendurchmesser nicht eingegeben</translation>
    </message>
    <message>
        <source>%1: %2 is longer than the longest roll: %3.</source>
        <translation>%1: %2 ist länger als die längste Rolle: %3.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: not planned.</source>
        <translation>%1: nicht geplant.</translation>
    </message>
    <message>
        <source>%1: %2 off %3 of rolls; %4 left over. </source>
        <translation>%1: %2 von %3 Rollenware; %4 bleiben übrig. </translation>
    </message>
    <message>
        <source>No plan needs less hose.</source>
        <translation>Kein Plan braucht weniger Schlauch.</translation>
    </message>
    <message>
        <source>A good plan; none needs less than %1.</source>
        <translation>Ein guter Plan; keiner braucht weniger als %1.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>nicht eingegeben</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Pos.</translation>
    </message>
    <message>
        <source>Description</source>
        <translation>Beschreibung</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>List price</source>
        <translation>Listenpreis</translation>
    </message>
    <message>
        <source>At list</source>
        <translation>Listenpreis</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Betrag</translation>
    </message>
    <message>
        <source>; first %1 h, each further %2 h</source>
        <translation>; erstes %1 h, jedes weitere %2 h</translation>
    </message>
    <message>
        <source>; own estimate</source>
        <translation>; eigene Schätzung</translation>
    </message>
    <message>
        <source>no rate</source>
        <translation>kein Satz</translation>
    </message>
    <message>
        <source>Materials at list price</source>
        <translation>Material zum Listenpreis</translation>
    </message>
    <message>
        <source>Mark-up of %1, line by line</source>
        <translation>Aufschlag von %1, Zeile für Zeile</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Labour</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Travel, consumables, disposal</source>
        <translation>Anfahrt, Verbrauchsmaterial, Entsorgung</translation>
    </message>
    <message>
        <source>Subtotal</source>
        <translation>Zwischensumme</translation>
    </message>
    <message>
        <source>Tax, %1</source>
        <translation>Steuer, %1</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Summe</translation>
    </message>
    <message>
        <source>Total of what is priced, incomplete</source>
        <translation>Summe der Positionen mit Preis, unvollständig</translation>
    </message>
    <message>
        <source>power not entered</source>
        <translation>Leistung nicht eingegeben</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Sonstiges</translation>
    </message>
    <message>
        <source>Price list: %1%2. Each line is rounded half away from zero before lines are added.</source>
        <translation>Preisliste: %1%2. Jede Zeile wird kaufmännisch gerundet, bevor Zeilen addiert werden.</translation>
    </message>
    <message>
        <source>none loaded</source>
        <translation>keine geladen</translation>
    </message>
    <message>
        <source>, of %1</source>
        <translation>, vom %1</translation>
    </message>
    <message>
        <source>This estimate holds for %1 days from its date.</source>
        <translation>Diese Kalkulation gilt %1 Tage ab ihrem Datum.</translation>
    </message>
    <message>
        <source>Not included</source>
        <translation>Nicht enthalten</translation>
    </message>
    <message>
        <source>Not in the total</source>
        <translation>Nicht in der Summe</translation>
    </message>
    <message>
        <source>Other heaters, the rest of the job the same</source>
        <translation>Andere Heizgeräte, sonst gleicher Auftrag</translation>
    </message>
    <message>
        <source>Mark-up</source>
        <translation>Aufschlag</translation>
    </message>
    <message>
        <source>Total with tax</source>
        <translation>Summe mit Steuer</translation>
    </message>
    <message>
        <source>As drawn</source>
        <translation>Wie gezeichnet</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>▲ %1: %2</source>
        <translation>▲ %1: %2</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Revision</source>
        <translation>Revision</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Zeichnung</translation>
    </message>
    <message>
        <source>Parts list</source>
        <translation>Teileliste</translation>
    </message>
    <message>
        <source>Estimate</source>
        <translation>Kalkulation</translation>
    </message>
    <message>
        <source>Estimate, internal</source>
        <translation>Kalkulation, intern</translation>
    </message>
    <message>
        <source>Siphonwright. The figures are estimates; the heater&apos;s and the engine&apos;s own manuals rule over them.</source>
        <translation>Siphonwright. Die Zahlen sind Schätzungen; die Handbücher von Heizgerät und Motor gehen ihnen vor.</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>For one vehicle</source>
        <translation>Für ein Fahrzeug</translation>
    </message>
    <message>
        <source>For %1 identical vehicles</source>
        <translation>Für %1 gleiche Fahrzeuge</translation>
    </message>
    <message>
        <source>%1: the pages could not be drawn.</source>
        <translation>%1: die Seiten konnten nicht gezeichnet werden.</translation>
    </message>
    <message>
        <source>not priced</source>
        <translation>ohne Preis</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: %2.</source>
        <translation>&quot;%1&quot;: %2.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not from %2 to %3.</source>
        <translation>„%1“ liegt nicht von %2 bis %3.</translation>
    </message>
    <message>
        <source>On one</source>
        <translation>Je Fahrzeug</translation>
    </message>
    <message>
        <source>On all %1</source>
        <translation>Für alle %1</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Where used</source>
        <translation>Verwendung</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Nothing is drawn that takes parts.</source>
        <translation>Es ist nichts gezeichnet, was Teile braucht.</translation>
    </message>
    <message>
        <source>Hose cuts</source>
        <translation>Schlauchzuschnitt</translation>
    </message>
    <message>
        <source>Hose cuts, all %1 vehicles</source>
        <translation>Schlauchzuschnitt, alle %1 Fahrzeuge</translation>
    </message>
    <message>
        <source>Cut lengths with %1 of allowance each. Measure on the vehicle before you cut.</source>
        <translation>Zuschnittlängen mit je %1 Zugabe. Am Fahrzeug nachmessen, bevor Sie schneiden.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Sicherheitshinweise</translation>
    </message>
    <message>
        <source>Check sizes, threads and materials against the heater&apos;s and the engine&apos;s manuals before you order. Hose, clamps and sealant have to be fit for hot coolant under pressure.</source>
        <translation>Größen, Gewinde und Werkstoffe vor dem Bestellen mit den Handbüchern von Heizgerät und Motor vergleichen. Schlauch, Schlauchschellen und Dichtmittel müssen für heißes Kühlmittel unter Druck geeignet sein.</translation>
    </message>
    <message>
        <source>Antifreeze is poisonous: catch it and dispose of it properly. Mix with distilled or deionised water only.</source>
        <translation>Frostschutzmittel ist giftig: auffangen und fachgerecht entsorgen. Nur mit destilliertem oder entionisiertem Wasser mischen.</translation>
    </message>
    <message>
        <source>Work by a qualified technician; power locked out, wheels chocked, cap opened only cold.</source>
        <translation>Arbeit durch eine Fachkraft; freigeschaltet und gesichert, Räder mit Keilen gesichert, Deckel nur kalt öffnen.</translation>
    </message>
    <message>
        <source>Grounded supply by the local electrical code, connected by a licensed electrician.</source>
        <translation>Versorgung mit Schutzleiter nach örtlicher Elektrovorschrift, von einer Elektrofachkraft angeschlossen.</translation>
    </message>
    <message>
        <source>Old coolant is poisonous and is disposed of properly.</source>
        <translation>Altes Kühlmittel ist giftig und wird fachgerecht entsorgt.</translation>
    </message>
    <message>
        <source>An estimate from the drawing as it stands: what is found on the vehicle may change it.</source>
        <translation>Eine Kalkulation nach der jetzigen Zeichnung: was am Fahrzeug vorgefunden wird, kann sie ändern.</translation>
    </message>
    <message>
        <source>To fill in</source>
        <translation>Zum Ausfüllen</translation>
    </message>
    <message>
        <source>Unit or vehicle</source>
        <translation>Aggregat oder Fahrzeug</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>%1, serial number</source>
        <translation>%1, Seriennummer</translation>
    </message>
    <message>
        <source>Rev.</source>
        <translation>Änd.</translation>
    </message>
    <message>
        <source>What was changed</source>
        <translation>Was geändert wurde</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Fitted by, date</source>
        <translation>Eingebaut von, Datum</translation>
    </message>
    <message>
        <source>Checked by, date</source>
        <translation>Geprüft von, Datum</translation>
    </message>
    <message>
        <source>Handed over to, date</source>
        <translation>Übergeben an, Datum</translation>
    </message>
    <message>
        <source>Tag to cut out and tie to the switch</source>
        <translation>Anhänger zum Ausschneiden, für den Schalter</translation>
    </message>
    <message>
        <source>Valves open before turning on</source>
        <translation>Vor dem Einschalten Ventile öffnen</translation>
    </message>
    <message>
        <source>Coolant in the heater before turning on. Heater off before a valve is closed.</source>
        <translation>Vor dem Einschalten Kühlmittel im Heizgerät. Heizgerät aus, bevor ein Ventil geschlossen wird.</translation>
    </message>
    <message>
        <source>What the figures rest on, with the range in which each is taken to lie. They are estimates; what was measured replaces them.</source>
        <translation>Worauf die Zahlen beruhen, mit der Spanne, in der jede angenommen wird. Es sind Schätzungen; Gemessenes ersetzt sie.</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>Angenommen</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Spanne</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Grundlage</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>For this drawing; no reason given</source>
        <translation>Für diese Zeichnung; kein Grund angegeben</translation>
    </message>
    <message>
        <source>For this drawing: %1</source>
        <translation>Für diese Zeichnung: %1</translation>
    </message>
    <message>
        <source>%1, inlet</source>
        <translation>%1, Einlass</translation>
    </message>
    <message>
        <source>%1, outlet</source>
        <translation>%1, Auslass</translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation>noch nichts</translation>
    </message>
    <message>
        <source>%1%2: bore %3, wall %4</source>
        <translation>%1%2: Innendurchmesser %3, Wand %4</translation>
    </message>
    <message>
        <source>A: %1, %2 pushed on. B: %3, %4 pushed on.</source>
        <translation>A: %1, %2 aufgeschoben. B: %3, %4 aufgeschoben.</translation>
    </message>
    <message>
        <source>Ports and hose ends</source>
        <translation>Anschlüsse und Schlauchtüllen</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Gewinde</translation>
    </message>
    <message>
        <source>Screwed in</source>
        <translation>Eingeschraubt</translation>
    </message>
    <message>
        <source>Hose end</source>
        <translation>Schlauchtülle</translation>
    </message>
    <message>
        <source>Sealant</source>
        <translation>Dichtmittel</translation>
    </message>
    <message>
        <source>none counted</source>
        <translation>keines gezählt</translation>
    </message>
    <message>
        <source>on the thread [%1]</source>
        <translation>aufs Gewinde [%1]</translation>
    </message>
    <message>
        <source>in line along the engine</source>
        <translation>längs des Motors in einer Linie</translation>
    </message>
    <message>
        <source>%1 towards the front</source>
        <translation>%1 nach vorn</translation>
    </message>
    <message>
        <source>%1 towards the rear</source>
        <translation>%1 nach hinten</translation>
    </message>
    <message>
        <source>%1 towards the engine&apos;s left side</source>
        <translation>%1 zur linken Seite des Motors</translation>
    </message>
    <message>
        <source>%1 towards the engine&apos;s right side</source>
        <translation>%1 zur rechten Seite des Motors</translation>
    </message>
    <message>
        <source>Top %1 and bottom %2 over the datum</source>
        <translation>Oberkante %1 und Unterkante %2 über der Bezugshöhe</translation>
    </message>
    <message>
        <source>; top %1 under the jacket&apos;s lowest point</source>
        <translation>; Oberkante %1 unter dem tiefsten Punkt des Wassermantels</translation>
    </message>
    <message>
        <source>Its middle from %1: %2; %3.</source>
        <translation>Seine Mitte von %1 aus: %2; %3.</translation>
    </message>
    <message>
        <source>Upright, the arrow on its body pointing up.</source>
        <translation>Aufrecht, der Pfeil am Gehäuse zeigt nach oben.</translation>
    </message>
    <message>
        <source>Leaning %1 from upright, the arrow on its body pointing up.</source>
        <translation>Um %1 aus dem Lot geneigt, der Pfeil am Gehäuse zeigt nach oben.</translation>
    </message>
    <message>
        <source>Mounting not entered.</source>
        <translation>Befestigung nicht eingegeben.</translation>
    </message>
    <message>
        <source>Mounted to the frame.</source>
        <translation>Am Rahmen befestigt.</translation>
    </message>
    <message>
        <source>Mounted to the engine.</source>
        <translation>Am Motor befestigt.</translation>
    </message>
    <message>
        <source>Electrical load and coolant</source>
        <translation>Elektrische Last und Kühlmittel</translation>
    </message>
    <message>
        <source>All heaters %1, current %2, continuous load (125 %) %3.</source>
        <translation>Alle Heizgeräte %1, Strom %2, Dauerlast (125 %) %3.</translation>
    </message>
    <message>
        <source>New hoses and chambers take %1 of coolant; in it now: antifreeze %2.</source>
        <translation>Neue Schläuche und Kammern fassen %1 Kühlmittel; jetzt darin: Frostschutz %2.</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Hang the heater</source>
        <translation>Das Heizgerät anbringen</translation>
    </message>
    <message>
        <source>clip %1</source>
        <translation>Schelle %1</translation>
    </message>
    <message>
        <source>bend %1 to %2, %3, R %4</source>
        <translation>Bogen %1 bis %2, %3, R %4</translation>
    </message>
    <message>
        <source>Cutting and fitting</source>
        <translation>Zuschnitt und Einbau</translation>
    </message>
    <message>
        <source>Assumptions and sources</source>
        <translation>Annahmen und Quellen</translation>
    </message>
    <message>
        <source>three phases</source>
        <translation>drei Phasen</translation>
    </message>
    <message>
        <source>one phase</source>
        <translation>eine Phase</translation>
    </message>
    <message>
        <source>Power %1, voltage %2, %3; its thermostat on at %4, off at %5. Serial number %6.</source>
        <translation>Leistung %1, Spannung %2, %3; Thermostat ein bei %4, aus bei %5. Seriennummer %6.</translation>
    </message>
    <message>
        <source>parts, cuts</source>
        <translation>Teile, Schnitte</translation>
    </message>
    <message>
        <source>prices</source>
        <translation>Preise</translation>
    </message>
    <message>
        <source>hoses with clips and bends, run profiles, ports, threads, heaters, electrical load, coolant, tag</source>
        <translation>Schläuche mit Halteschellen und Bögen, Höhenverläufe, Anschlüsse, Gewinde, Heizgeräte, elektrische Last, Kühlmittel, Anhänger</translation>
    </message>
    <message>
        <source>what the figures rest on</source>
        <translation>worauf die Zahlen beruhen</translation>
    </message>
    <message>
        <source>Hoses laid flat</source>
        <translation>Schläuche flach ausgelegt</translation>
    </message>
    <message>
        <source>Page %1, sheet %2/%3</source>
        <translation>Seite %1, Blatt %2/%3</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>Distances along a hose are from its cut end at A, in %1; R is the radius of a bend&apos;s middle; over a straight its slope from A to B, rise over run. Pieces reach to the stops of the parts between them, by the lengths entered for these. Under each hose its run: height of the top (line) and bottom (dashes) of its bore over the datum. Numbers in brackets are items of the parts list. Measure on the vehicle, parts in hand, before you cut.</source>
        <translation>Abstände am Schlauch zählen vom abgeschnittenen Ende A, in %1; R ist der Radius der Bogenmitte; über einem geraden Stück steht sein Gefälle von A nach B, Höhe zu Länge. Stücke reichen bis an die Anschläge der Teile dazwischen, nach den für diese eingegebenen Längen. Unter jedem Schlauch sein Verlauf: Höhe von Oberkante (Linie) und Unterkante (Striche) innen über der Bezugshöhe. Zahlen in Klammern sind Posten der Stückliste. Vor dem Schneiden am Fahrzeug messen, mit den Teilen zur Hand.</translation>
    </message>
    <message>
        <source>Cut %1.</source>
        <translation>Zuschneiden %1.</translation>
    </message>
    <message>
        <source>Cut %1, in pieces from A to B: %2.</source>
        <translation>Zuschneiden %1, in Stücken von A nach B: %2.</translation>
    </message>
    <message>
        <source>passage %1, %2 on</source>
        <translation>Durchlass %1, %2 darauf</translation>
    </message>
    <message>
        <source>in line with it across the engine</source>
        <translation>quer zum Motor in einer Linie damit</translation>
    </message>
    <message>
        <source>Port or nozzle at B is %1 higher than at A.</source>
        <translation>Der Anschluss bei B liegt %1 höher als der bei A.</translation>
    </message>
    <message>
        <source>Port or nozzle at B is %1 lower than at A.</source>
        <translation>Der Anschluss bei B liegt %1 tiefer als der bei A.</translation>
    </message>
    <message>
        <source>%1, cut %2 to %3</source>
        <translation>%1, Schnitt %2 bis %3</translation>
    </message>
    <message>
        <source>Run profile: hose&apos;s bore over the datum</source>
        <translation>Verlauf: Schlauch innen über der Bezugshöhe</translation>
    </message>
    <message>
        <source>Distances are from the cut end at A, in %1; R is the radius of a bend&apos;s middle; over a straight its slope from A to B. Pieces reach to the stops of the parts between them, by the lengths entered for these. In the run profile the line is the top of the bore, the dashes its bottom. [3] is item 3 of the parts list. Measure on the vehicle, parts in hand, before you cut.</source>
        <translation>Abstände gelten ab dem Schnittende bei A, in %1; R ist der Radius der Bogenmitte; über einer Geraden steht ihr Gefälle von A nach B. Stücke reichen bis an die Anschläge der Teile dazwischen, nach den für diese eingegebenen Längen. Im Verlauf ist die Linie die Oberkante der Bohrung, die Striche sind ihre Unterkante. [3] ist Posten 3 der Stückliste. Vor dem Schneiden am Fahrzeug nachmessen, mit den Teilen zur Hand.</translation>
    </message>
    <message>
        <source>%1 of it is allowance, left at B and trimmed there.</source>
        <translation>Davon sind %1 Zugabe, die bei B bleibt und dort abgeschnitten wird.</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::CutBars</name>
    <message>
        <source>Cut plan</source>
        <translation>Zuschnittplan</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::EditTable</name>
    <message>
        <source>%1
Double-click or press F2 to type.</source>
        <translation>%1
Zum Eingeben doppelklicken oder F2 drücken.</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::EstimatePage</name>
    <message>
        <source>Heater</source>
        <translation>Heizgerät</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>Heater&apos;s list price</source>
        <translation>Listenpreis des Heizgeräts</translation>
    </message>
    <message>
        <source>Materials at list price</source>
        <translation>Material zum Listenpreis</translation>
    </message>
    <message>
        <source>Mark-up</source>
        <translation>Aufschlag</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Labour</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Travel, consumables, disposal</source>
        <translation>Anfahrt, Verbrauchsmaterial, Entsorgung</translation>
    </message>
    <message>
        <source>Subtotal</source>
        <translation>Zwischensumme</translation>
    </message>
    <message>
        <source>Tax</source>
        <translation>Steuer</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Summe</translation>
    </message>
    <message>
        <source>As drawn</source>
        <translation>Wie gezeichnet</translation>
    </message>
    <message>
        <source>&amp;Remove it</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>Sums</source>
        <translation>Summen</translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation>Was fehlt</translation>
    </message>
    <message>
        <source>&amp;Another heater beside it</source>
        <translation>&amp;Weiteres Heizgerät daneben</translation>
    </message>
    <message>
        <source>Each line is rounded before it is added, so the printed lines add up to the printed total. The figures are estimates: they are as good as the drawing, the prices and the hours.</source>
        <translation>Jede Zeile wird vor dem Addieren gerundet, daher ergeben die gedruckten Zeilen die gedruckte Summe. Die Zahlen sind Schätzungen: so gut wie die Zeichnung, die Preise und die Stunden.</translation>
    </message>
    <message>
        <source>none drawn</source>
        <translation>keines gezeichnet</translation>
    </message>
    <message>
        <source>%1 heaters</source>
        <translation>%1 Heizgeräte</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>nicht eingegeben</translation>
    </message>
    <message>
        <source>Other heater %1</source>
        <translation>Anderes Heizgerät %1</translation>
    </message>
    <message>
        <source>Total %1</source>
        <translation>Summe %1</translation>
    </message>
    <message>
        <source>Incomplete: %1</source>
        <translation>Unvollständig: %1</translation>
    </message>
    <message>
        <source>▲ Other heater %1: %2</source>
        <translation>▲ Anderes Heizgerät %1: %2</translation>
    </message>
    <message>
        <source>At most 200 characters.</source>
        <translation>Höchstens 200 Zeichen.</translation>
    </message>
    <message>
        <source>A power is from 0 to 1000 kW.</source>
        <translation>Eine Leistung liegt von 0 bis 1000 kW.</translation>
    </message>
    <message>
        <source>Change the other heater</source>
        <translation>Das andere Heizgerät ändern</translation>
    </message>
    <message>
        <source>Add another heater beside it</source>
        <translation>Ein anderes Heizgerät danebenstellen</translation>
    </message>
    <message>
        <source>Other heater</source>
        <translation>Anderes Heizgerät</translation>
    </message>
    <message>
        <source>Remove the other heater</source>
        <translation>Das andere Heizgerät entfernen</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::PaperWindow</name>
    <message>
        <source>Parts and estimate</source>
        <translation>Teile und Kalkulation</translation>
    </message>
    <message>
        <source>Parts and &amp;cuts</source>
        <translation>Teile und &amp;Zuschnitt</translation>
    </message>
    <message>
        <source>P&amp;rices</source>
        <translation>&amp;Preise</translation>
    </message>
    <message>
        <source>Wor&amp;k</source>
        <translation>&amp;Arbeit</translation>
    </message>
    <message>
        <source>&amp;Estimate</source>
        <translation>&amp;Kalkulation</translation>
    </message>
    <message>
        <source>Document</source>
        <translation>Dokument</translation>
    </message>
    <message>
        <source>Estimate for the customer</source>
        <translation>Kalkulation für den Kunden</translation>
    </message>
    <message>
        <source>Print pre&amp;view…</source>
        <translation>Druck&amp;vorschau…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>P&amp;DF…</source>
        <translation>PD&amp;F…</translation>
    </message>
    <message>
        <source>Parts as C&amp;SV…</source>
        <translation>Teile als C&amp;SV…</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::PartsPage</name>
    <message>
        <source>Parts list</source>
        <translation>Teileliste</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Pos.</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Where used</source>
        <translation>Verwendung</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Hose cuts, all vehicles together</source>
        <translation>Schlauchzuschnitt, alle Fahrzeuge zusammen</translation>
    </message>
    <message>
        <source>%1
Click to select it on the drawing.</source>
        <translation>%1
Klicken wählt es auf der Zeichnung aus.</translation>
    </message>
    <message>
        <source>Nothing is drawn that takes parts.</source>
        <translation>Es ist nichts gezeichnet, was Teile braucht.</translation>
    </message>
    <message>
        <source>For one vehicle, as drawn. Check it against the heater&apos;s manual before you order.</source>
        <translation>Für ein Fahrzeug, wie gezeichnet. Vor dem Bestellen mit dem Handbuch des Heizgeräts vergleichen.</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::PricesPage</name>
    <message>
        <source>Item</source>
        <translation>Pos.</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Price key</source>
        <translation>Preisschlüssel</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>List price</source>
        <translation>Listenpreis</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Betrag</translation>
    </message>
    <message>
        <source>Prices of materials</source>
        <translation>Materialpreise</translation>
    </message>
    <message>
        <source>&amp;Load a price list…</source>
        <translation>Preisliste &amp;laden…</translation>
    </message>
    <message>
        <source>A CSV file with the columns item, description, unit, price and currency</source>
        <translation>Eine CSV-Datei mit den Spalten item, description, unit, price und currency</translation>
    </message>
    <message>
        <source>&amp;Write what is not priced…</source>
        <translation>Positionen &amp;ohne Preis schreiben…</translation>
    </message>
    <message>
        <source>A price list to be filled in, as CSV</source>
        <translation>Eine Preisliste zum Ausfüllen, als CSV</translation>
    </message>
    <message>
        <source>currency not entered</source>
        <translation>Währung nicht eingegeben</translation>
    </message>
    <message>
        <source>No price list is loaded</source>
        <translation>Keine Preisliste ist geladen</translation>
    </message>
    <message>
        <source>%1; %2. Quantities for %3. The price is the list price with the mark-up.</source>
        <translation>%1; %2. Mengen für %3. Der Preis ist der Listenpreis mit Aufschlag.</translation>
    </message>
    <message>
        <source>one vehicle</source>
        <translation>ein Fahrzeug</translation>
    </message>
    <message>
        <source>%1 vehicles</source>
        <translation>%1 Fahrzeuge</translation>
    </message>
    <message>
        <source>Change the price of %1</source>
        <translation>Preis ändern von: %1</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2.</source>
        <translation>%1 lässt sich nicht lesen: %2.</translation>
    </message>
    <message>
        <source>%1 was not loaded. %2</source>
        <translation>%1 wurde nicht geladen. %2</translation>
    </message>
    <message>
        <source>Load price list</source>
        <translation>Preisliste laden</translation>
    </message>
    <message>
        <source>Load a price list</source>
        <translation>Eine Preisliste laden</translation>
    </message>
    <message>
        <source>Price lists (*.csv)</source>
        <translation>Preislisten (*.csv)</translation>
    </message>
    <message>
        <source>Write what is not priced</source>
        <translation>Positionen ohne Preis schreiben</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::QuoteForm</name>
    <message>
        <source>Rates and sums</source>
        <translation>Sätze und Beträge</translation>
    </message>
    <message>
        <source>Identical vehicles</source>
        <translation>Gleiche Fahrzeuge</translation>
    </message>
    <message>
        <source>Mark-up, %</source>
        <translation>Aufschlag, %</translation>
    </message>
    <message>
        <source>Labour, an hour</source>
        <translation>Arbeit, je Stunde</translation>
    </message>
    <message>
        <source>Travel</source>
        <translation>Anfahrt</translation>
    </message>
    <message>
        <source>Consumables, a vehicle</source>
        <translation>Verbrauchsmaterial, je Fahrzeug</translation>
    </message>
    <message>
        <source>Coolant disposal, a vehicle</source>
        <translation>Kühlmittelentsorgung, je Fahrzeug</translation>
    </message>
    <message>
        <source>Tax, %</source>
        <translation>Steuer, %</translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>Auf Papier</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Revision</source>
        <translation>Revision</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Valid for, days</source>
        <translation>Gültig, Tage</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Not included</source>
        <translation>Nicht enthalten</translation>
    </message>
    <message>
        <source>At most 200 characters.</source>
        <translation>Höchstens 200 Zeichen.</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>Ändern: %1</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>nicht eingegeben</translation>
    </message>
    <message>
        <source>A number is wanted here.</source>
        <translation>Hier wird eine Zahl erwartet.</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>USD, CAD, EUR …</source>
        <translation>USD, CAD, EUR …</translation>
    </message>
    <message>
        <source>Its sign</source>
        <translation>Ihr Zeichen</translation>
    </message>
    <message>
        <source>At most 5 characters.</source>
        <translation>Höchstens 5 Zeichen.</translation>
    </message>
    <message>
        <source>Change the currency&apos;s sign</source>
        <translation>Währungszeichen ändern</translation>
    </message>
    <message>
        <source>none: the code is written</source>
        <translation>keines: der Code wird geschrieben</translation>
    </message>
    <message>
        <source>A currency is three letters, such as USD.</source>
        <translation>Eine Währung hat drei Buchstaben, etwa USD.</translation>
    </message>
    <message>
        <source>%1 has %2 decimals, and amounts are entered with %3. Take them out first.</source>
        <translation>%1 hat %2 Nachkommastellen, und Beträge sind mit %3 eingegeben. Nehmen Sie diese zuerst heraus.</translation>
    </message>
    <message>
        <source>Change the currency</source>
        <translation>Währung ändern</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::RollForm</name>
    <message>
        <source>Identical vehicles</source>
        <translation>Gleiche Fahrzeuge</translation>
    </message>
    <message>
        <source>Allowance on each cut</source>
        <translation>Zugabe je Zuschnitt</translation>
    </message>
    <message>
        <source>Charge whole rolls</source>
        <translation>Ganze Rollen berechnen</translation>
    </message>
    <message>
        <source>Hose at the rolls it comes off instead of at its cuts</source>
        <translation>Schlauch nach den Rollen, von denen er kommt, statt nach Zuschnitten</translation>
    </message>
    <message>
        <source>Lengths of roll</source>
        <translation>Rollenlängen</translation>
    </message>
    <message>
        <source>lengths it is bought in, set apart by semicolons</source>
        <translation>Längen, in denen er gekauft wird, durch Semikolons getrennt</translation>
    </message>
    <message>
        <source>Rolls of bore %1</source>
        <translation>Rollen, Innen-Ø %1</translation>
    </message>
    <message>
        <source>Rolls of any bore</source>
        <translation>Rollen, jeder Innen-Ø</translation>
    </message>
    <message>
        <source>A roll is from 1 mm to 1 km long, and there are at most 20 lengths.</source>
        <translation>Eine Rolle ist 1 mm bis 1 km lang, und es gibt höchstens 20 Längen.</translation>
    </message>
    <message>
        <source>Change lengths of roll</source>
        <translation>Rollenlängen ändern</translation>
    </message>
    <message>
        <source>An allowance is from 0 to 10 m.</source>
        <translation>Eine Zugabe liegt von 0 bis 10 m.</translation>
    </message>
    <message>
        <source>Change the allowance on cuts</source>
        <translation>Zugabe je Zuschnitt ändern</translation>
    </message>
    <message>
        <source>At least one vehicle.</source>
        <translation>Mindestens ein Fahrzeug.</translation>
    </message>
    <message>
        <source>Change the number of vehicles</source>
        <translation>Anzahl der Fahrzeuge ändern</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::WorkPage</name>
    <message>
        <source>Task</source>
        <translation>Aufgabe</translation>
    </message>
    <message>
        <source>First vehicle, h</source>
        <translation>Erstes Fahrzeug, h</translation>
    </message>
    <message>
        <source>Each further one, h</source>
        <translation>Jedes weitere, h</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Betrag</translation>
    </message>
    <message>
        <source>Where the hours come from</source>
        <translation>Herkunft der Stunden</translation>
    </message>
    <message>
        <source>&amp;Back to the usual hours</source>
        <translation>&amp;Übliche Stunden</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>The usual hours are our own estimate for what is drawn: put in your own. Electrical work is for a licensed electrician.</source>
        <translation>Die üblichen Stunden sind unsere Schätzung für das Gezeichnete: setzen Sie eigene ein. Elektroarbeit ist Sache einer Elektrofachkraft.</translation>
    </message>
    <message>
        <source>&amp;Add a task</source>
        <translation>Aufgabe &amp;hinzufügen</translation>
    </message>
    <message>
        <source>Add a task</source>
        <translation>Eine Aufgabe hinzufügen</translation>
    </message>
    <message>
        <source>Own task</source>
        <translation>Eigene Aufgabe</translation>
    </message>
    <message>
        <source>▲ labour rate not entered</source>
        <translation>▲ Stundensatz nicht eingegeben</translation>
    </message>
    <message>
        <source>own task</source>
        <translation>eigene Aufgabe</translation>
    </message>
    <message>
        <source>own estimate, not looked at</source>
        <translation>eigene Schätzung, nicht angesehen</translation>
    </message>
    <message>
        <source>entered</source>
        <translation>eingegeben</translation>
    </message>
    <message>
        <source>&amp;Remove the task</source>
        <translation>Aufgabe &amp;entfernen</translation>
    </message>
    <message>
        <source>A task has a name of up to 400 characters.</source>
        <translation>Eine Aufgabe hat einen Namen mit bis zu 400 Zeichen.</translation>
    </message>
    <message>
        <source>Rename a task</source>
        <translation>Aufgabe umbenennen</translation>
    </message>
    <message>
        <source>Hours are a number such as 1.25.</source>
        <translation>Stunden sind eine Zahl wie 1,25.</translation>
    </message>
    <message>
        <source>Change the hours of a task</source>
        <translation>Stunden einer Aufgabe ändern</translation>
    </message>
    <message>
        <source>Back to the usual hours</source>
        <translation>Zurück zu den üblichen Stunden</translation>
    </message>
</context>
<context>
    <name>siphonwright::photo</name>
    <message>
        <source>%1 × %2 pixels, %3 megapixels</source>
        <translation>%1 × %2 Pixel, %3 Megapixel</translation>
    </message>
    <message>
        <source>Its header is damaged: it does not say how large the picture is.</source>
        <translation>Der Kopf ist beschädigt: er sagt nicht, wie groß das Bild ist.</translation>
    </message>
    <message>
        <source>Its header says %1: nothing can be seen on that.</source>
        <translation>Der Kopf sagt %1: darauf ist nichts zu sehen.</translation>
    </message>
    <message>
        <source>Its header says %1. At most %2 megapixels are read: make it smaller first.</source>
        <translation>Der Kopf sagt %1. Höchstens %2 Megapixel werden gelesen: verkleinern Sie es zuerst.</translation>
    </message>
    <message>
        <source>It is damaged before the picture&apos;s data begin.</source>
        <translation>Es ist beschädigt, bevor die Bilddaten beginnen.</translation>
    </message>
    <message>
        <source>It is cut off: there are %1 bytes, and the picture does not end in them.</source>
        <translation>Es ist abgeschnitten: %1 Bytes sind da, und das Bild endet nicht darin.</translation>
    </message>
    <message>
        <source>It is a progressive JPEG of %1; of those at most %2 megapixels are read.</source>
        <translation>Es ist ein progressives JPEG mit %1; davon werden höchstens %2 Megapixel gelesen.</translation>
    </message>
    <message>
        <source>It is empty.</source>
        <translation>Es ist leer.</translation>
    </message>
    <message>
        <source>It is larger than %1 MiB.</source>
        <translation>Es ist größer als %1 MiB.</translation>
    </message>
    <message>
        <source>It is not a PNG, JPEG or WebP picture.</source>
        <translation>Es ist kein PNG-, JPEG- oder WebP-Bild.</translation>
    </message>
    <message>
        <source>WebP is not read here: save it as PNG or JPEG, or install Qt&apos;s image formats.</source>
        <translation>WebP wird hier nicht gelesen: speichern Sie es als PNG oder JPEG, oder installieren Sie die Bildformate von Qt.</translation>
    </message>
    <message>
        <source>Its picture data are damaged or cut off (%1).</source>
        <translation>Die Bilddaten sind beschädigt oder abgeschnitten (%1).</translation>
    </message>
    <message>
        <source>It cannot be opened: %1.</source>
        <translation>Es lässt sich nicht öffnen: %1.</translation>
    </message>
    <message>
        <source>The four points are not the corners of a rectangle seen at an angle: three of them lie in one line, or one lies between the others.</source>
        <translation>Die vier Punkte sind nicht die Ecken eines schräg gesehenen Rechtecks: drei davon liegen auf einer Linie, oder einer liegt zwischen den anderen.</translation>
    </message>
    <message>
        <source>The four points do not lie in the picture.</source>
        <translation>Die vier Punkte liegen nicht im Bild.</translation>
    </message>
    <message>
        <source>The rectangle is too small in the picture.</source>
        <translation>Das Rechteck ist im Bild zu klein.</translation>
    </message>
</context>
<context>
    <name>siphonwright::proposing</name>
    <message>
        <source>not priced</source>
        <translation>ohne Preis</translation>
    </message>
    <message>
        <source>%1, not priced: %2</source>
        <translation>%1, ohne Preis: %2</translation>
    </message>
    <message>
        <source>%1.  Bore %2: %3 + %4</source>
        <translation>%1.  Innen-Ø %2: %3 + %4</translation>
    </message>
    <message>
        <source>flow not computed</source>
        <translation>Durchfluss nicht berechnet</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>▲ Not sound on every grade that is judged</source>
        <translation>▲ Nicht bei jeder beurteilten Neigung in Ordnung</translation>
    </message>
    <message>
        <source>Supply hose %1, return hose %2, %3 in all. Clips: %4. A valve at each port.</source>
        <translation>Vorlaufschlauch %1, Rücklaufschlauch %2, zusammen %3. Halteschellen: %4. Ein Ventil an jedem Anschluss.</translation>
    </message>
    <message>
        <source>What is left:</source>
        <translation>Was bleibt:</translation>
    </message>
    <message>
        <source>– %1</source>
        <translation>– %1</translation>
    </message>
    <message>
        <source>Findings of advice that stay: %1.</source>
        <translation>Bleibende Hinweise: %1.</translation>
    </message>
    <message>
        <source>No layout mends: %1</source>
        <translation>Keine Anordnung behebt: %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::proposing::LayoutChoices</name>
    <message>
        <source>&amp;Draw area…</source>
        <translation>Bereich &amp;zeichnen…</translation>
    </message>
    <message>
        <source>Heater to propose for</source>
        <translation>Heizgerät für den Vorschlag</translation>
    </message>
    <message>
        <source>Where the heater may hang</source>
        <translation>Wo das Heizgerät hängen darf</translation>
    </message>
    <message>
        <source>Where it is drawn</source>
        <translation>Wo es gezeichnet ist</translation>
    </message>
    <message>
        <source>Anywhere under the engine</source>
        <translation>Irgendwo unter dem Motor</translation>
    </message>
    <message>
        <source>In an area I draw</source>
        <translation>In einem gezeichneten Bereich</translation>
    </message>
    <message>
        <source>Drag a rectangle on the elevation, or click two opposite corners</source>
        <translation>Ein Rechteck in der Seitenansicht aufziehen oder zwei gegenüberliegende Ecken anklicken</translation>
    </message>
    <message>
        <source>What comes first</source>
        <translation>Was zuerst kommt</translation>
    </message>
    <message>
        <source>Best of all three</source>
        <translation>Bestes aus allen dreien</translation>
    </message>
    <message>
        <source>Shortest hoses</source>
        <translation>Kürzeste Schläuche</translation>
    </message>
    <message>
        <source>Most flow</source>
        <translation>Größter Durchfluss</translation>
    </message>
    <message>
        <source>Lowest price</source>
        <translation>Niedrigster Preis</translation>
    </message>
    <message>
        <source>Length of hose, price by bore and flow weighed in one figure</source>
        <translation>Schlauchlänge, Preis nach Innendurchmesser und Durchfluss, in einer Zahl gewichtet</translation>
    </message>
    <message>
        <source>Heater</source>
        <translation>Heizgerät</translation>
    </message>
    <message>
        <source>It hangs</source>
        <translation>Es hängt</translation>
    </message>
    <message>
        <source>Bores, mm</source>
        <translation>Innen-Ø, mm</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Zuerst</translation>
    </message>
    <message>
        <source>Place a heater first.</source>
        <translation>Setzen Sie zuerst ein Heizgerät.</translation>
    </message>
    <message>
        <source>Draw the area in which the heater may hang.</source>
        <translation>Zeichnen Sie den Bereich, in dem das Heizgerät hängen darf.</translation>
    </message>
    <message>
        <source>Choose at least one bore of hose.</source>
        <translation>Wählen Sie mindestens einen Schlauch-Innendurchmesser.</translation>
    </message>
    <message>
        <source>Not drawn yet</source>
        <translation>Noch nicht gezeichnet</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 mal %2</translation>
    </message>
    <message>
        <source>&amp;Draw anew…</source>
        <translation>Neu &amp;zeichnen…</translation>
    </message>
    <message>
        <source>Bores, in</source>
        <translation>Innen-Ø, in</translation>
    </message>
    <message>
        <source>Hose of this bore may be used</source>
        <translation>Schlauch mit diesem Innendurchmesser darf verwendet werden</translation>
    </message>
    <message>
        <source>Hose of bore %1</source>
        <translation>Schlauch mit Innen-Ø %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::proposing::LayoutsPanel</name>
    <message>
        <source>&amp;Propose</source>
        <translation>&amp;Vorschlagen</translation>
    </message>
    <message>
        <source>S&amp;top</source>
        <translation>S&amp;topp</translation>
    </message>
    <message>
        <source>T&amp;ake this layout</source>
        <translation>Anordnung ü&amp;bernehmen</translation>
    </message>
    <message>
        <source>Stopped. The drawing is as it was.</source>
        <translation>Abgebrochen. Die Zeichnung ist, wie sie war.</translation>
    </message>
    <message>
        <source>Look for layouts that break no rule</source>
        <translation>Anordnungen suchen, die keine Regel verletzen</translation>
    </message>
    <message>
        <source>Stop looking (Escape)</source>
        <translation>Suche abbrechen (Esc)</translation>
    </message>
    <message>
        <source>Search for layouts</source>
        <translation>Anordnungen suchen</translation>
    </message>
    <message>
        <source>Proposed layouts</source>
        <translation>Vorgeschlagene Anordnungen</translation>
    </message>
    <message>
        <source>What it changes and what is left</source>
        <translation>Was sie ändert und was bleibt</translation>
    </message>
    <message>
        <source>Looking for layouts: %1 of %2 places tried, %3 found…</source>
        <translation>Anordnungen werden gesucht: %1 von %2 Plätzen versucht, %3 gefunden…</translation>
    </message>
    <message>
        <source>Press Enter to read the rule</source>
        <translation>Eingabe drücken, um die Regel zu lesen</translation>
    </message>
    <message>
        <source>The drawing was changed meanwhile. Propose again.</source>
        <translation>Die Zeichnung wurde inzwischen geändert. Schlagen Sie erneut vor.</translation>
    </message>
    <message>
        <source>The choices were changed meanwhile. Propose again.</source>
        <translation>Die Vorgaben wurden inzwischen geändert. Schlagen Sie erneut vor.</translation>
    </message>
    <message>
        <source>Take a layout: %1</source>
        <translation>Anordnung übernehmen: %1</translation>
    </message>
    <message>
        <source>Looking for layouts…</source>
        <translation>Anordnungen werden gesucht…</translation>
    </message>
    <message>
        <source>Proposes heater place, hoses, bore, valves and clips that break no rule, on every grade that is judged.</source>
        <translation>Schlägt Platz des Heizgeräts, Schläuche, Innendurchmesser, Ventile und Halteschellen vor, die keine Regel verletzen, bei jeder beurteilten Neigung.</translation>
    </message>
    <message>
        <source>Nothing can be proposed: %1.</source>
        <translation>Es lässt sich nichts vorschlagen: %1.</translation>
    </message>
    <message>
        <source>Layout %1 was taken; one undo takes it back. Propose again for the drawing as it is now.</source>
        <translation>Anordnung %1 wurde übernommen; einmal Rückgängig nimmt sie zurück. Für die Zeichnung, wie sie jetzt ist, erneut vorschlagen.</translation>
    </message>
    <message>
        <source>▲ This list is for an earlier drawing. Propose again to take one.</source>
        <translation>▲ Diese Liste gilt für eine frühere Zeichnung. Erneut vorschlagen, um eine zu übernehmen.</translation>
    </message>
    <message>
        <source>▲ This list is for other choices. Propose again to take one.</source>
        <translation>▲ Diese Liste gilt für andere Vorgaben. Erneut vorschlagen, um eine zu übernehmen.</translation>
    </message>
    <message>
        <source>Every layout breaks a rule. In the way of those that came farthest (Enter opens the rule):</source>
        <translation>Jede Anordnung verletzt eine Regel. Was denen im Weg steht, die am weitesten kamen (Eingabe öffnet die Regel):</translation>
    </message>
    <message>
        <source>One layout breaks no rule.</source>
        <translation>Eine Anordnung verletzt keine Regel.</translation>
    </message>
    <message>
        <source>%1 layouts break no rule, the best first.</source>
        <translation>%1 Anordnungen verletzen keine Regel, die beste zuerst.</translation>
    </message>
    <message>
        <source>&amp;Propose again</source>
        <translation>Erneut &amp;vorschlagen</translation>
    </message>
    <message>
        <source>Draw it in place of the hoses there are (Enter). One undo takes it back.</source>
        <translation>Anstelle der vorhandenen Schläuche zeichnen (Eingabe). Einmal Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>The list has to be renewed first</source>
        <translation>Die Liste muss zuerst erneuert werden</translation>
    </message>
    <message>
        <source>▲ No layout holds on every grade that is judged. These break no rule on the level:</source>
        <translation>▲ Keine Anordnung hält auf jeder beurteilten Neigung. Diese verletzen in der Ebene keine Regel:</translation>
    </message>
</context>
<context>
    <name>siphonwright::rules</name>
    <message>
        <source>nothing moves</source>
        <translation>nichts bewegt sich</translation>
    </message>
    <message>
        <source>element bare</source>
        <translation>Element frei</translation>
    </message>
    <message>
        <source>a bleed at the crest</source>
        <translation>Entlüftung am Scheitel</translation>
    </message>
    <message>
        <source>pushed, but not out</source>
        <translation>gedrückt, aber nicht hinaus</translation>
    </message>
    <message>
        <source>cold minimum</source>
        <translation>Kalt-Minimum</translation>
    </message>
    <message>
        <source>Air closes the bore: it takes more head than there is.</source>
        <translation>Luft verschließt den Querschnitt: sie kostet mehr Druckhöhe, als da ist.</translation>
    </message>
    <message>
        <source>No crest, no pocket: warm coolant rises, cold falls.</source>
        <translation>Kein Scheitel, kein Einschluss: Warmes steigt, Kaltes fällt.</translation>
    </message>
    <message>
        <source>A small pocket takes part of the few millimetres.</source>
        <translation>Ein kleiner Einschluss kostet einen Teil der wenigen Millimeter.</translation>
    </message>
    <message>
        <source>All of the head is left for the flow.</source>
        <translation>Die ganze Druckhöhe bleibt für den Durchfluss.</translation>
    </message>
    <message>
        <source>Air over the coolant: the element burns out.</source>
        <translation>Luft über dem Kühlmittel: das Heizelement brennt durch.</translation>
    </message>
    <message>
        <source>The chamber is full, the element covered.</source>
        <translation>Die Kammer ist voll, das Heizelement bedeckt.</translation>
    </message>
    <message>
        <source>The engine&apos;s pump pushes the air and does not move it.</source>
        <translation>Die Motorpumpe drückt auf die Luft und bewegt sie nicht.</translation>
    </message>
    <message>
        <source>A bleed lets it out.</source>
        <translation>Eine Entlüftung lässt sie hinaus.</translation>
    </message>
    <message>
        <source>In the cold the coolant shrinks under its minimum.</source>
        <translation>In der Kälte schrumpft das Kühlmittel unter sein Minimum.</translation>
    </message>
    <message>
        <source>Filled so that enough is left in the cold.</source>
        <translation>So gefüllt, dass in der Kälte genug bleibt.</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>radiator</source>
        <translation>Kühler</translation>
    </message>
    <message>
        <source>thermostat</source>
        <translation>Thermostat</translation>
    </message>
    <message>
        <source>cabin heater</source>
        <translation>Heizung</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>check valve</source>
        <translation>Rückschlag</translation>
    </message>
    <message>
        <source>A hose ends in the open.</source>
        <translation>Ein Schlauch endet im Freien.</translation>
    </message>
    <message>
        <source>Every hose end is on a port or a nozzle.</source>
        <translation>Jedes Schlauchende sitzt auf Anschluss oder Stutzen.</translation>
    </message>
    <message>
        <source>A hose from port to port, and the heater left out.</source>
        <translation>Ein Schlauch von Anschluss zu Anschluss, ohne Heizgerät.</translation>
    </message>
    <message>
        <source>Port, heater and port make one loop.</source>
        <translation>Anschluss, Heizgerät und Anschluss bilden einen Kreislauf.</translation>
    </message>
    <message>
        <source>No valve where the loop leaves the engine.</source>
        <translation>Kein Ventil, wo der Kreislauf den Motor verlässt.</translation>
    </message>
    <message>
        <source>A valve near each of the engine&apos;s ports.</source>
        <translation>Ein Ventil nahe jedem Motoranschluss.</translation>
    </message>
    <message>
        <source>The heater is on and a valve is closed.</source>
        <translation>Das Heizgerät ist ein und ein Ventil geschlossen.</translation>
    </message>
    <message>
        <source>Both valves are open while the heater is on.</source>
        <translation>Beide Ventile sind offen, solange das Heizgerät ein ist.</translation>
    </message>
    <message>
        <source>Cold, the thermostat shuts between engine and supply.</source>
        <translation>Kalt sperrt der Thermostat zwischen Motor und Vorlauf.</translation>
    </message>
    <message>
        <source>The supply leaves the block itself.</source>
        <translation>Der Vorlauf kommt aus dem Block selbst.</translation>
    </message>
    <message>
        <source>The cabin heater&apos;s line is open beside the loop.</source>
        <translation>Die Leitung der Fahrerhausheizung ist neben dem Kreislauf offen.</translation>
    </message>
    <message>
        <source>The cabin heater&apos;s line is closed.</source>
        <translation>Die Leitung der Fahrerhausheizung ist geschlossen.</translation>
    </message>
    <message>
        <source>A few millimetres of head do not open a check valve.</source>
        <translation>Wenige Millimeter Druckhöhe öffnen kein Rückschlagventil.</translation>
    </message>
    <message>
        <source>Nothing in the loop has to be pushed open.</source>
        <translation>Nichts im Kreislauf muss aufgedrückt werden.</translation>
    </message>
    <message>
        <source>antifreeze</source>
        <translation>Frostschutz</translation>
    </message>
    <message>
        <source>coolant freezes</source>
        <translation>Kühlmittel gefriert</translation>
    </message>
    <message>
        <source>kind: as the engine&apos;s</source>
        <translation>Art: wie im Motor</translation>
    </message>
    <message>
        <source>kind: ?</source>
        <translation>Art: ?</translation>
    </message>
    <message>
        <source>maker specifies</source>
        <translation>Herstellervorgabe</translation>
    </message>
    <message>
        <source>Nearly all antifreeze, hardly any water.</source>
        <translation>Fast nur Frostschutz, kaum Wasser.</translation>
    </message>
    <message>
        <source>As much antifreeze as the cold asks for.</source>
        <translation>So viel Frostschutz, wie die Kälte verlangt.</translation>
    </message>
    <message>
        <source>The coldest night is colder than the coolant bears.</source>
        <translation>Die kälteste Nacht ist kälter, als das Kühlmittel aushält.</translation>
    </message>
    <message>
        <source>The coolant freezes only well under the coldest night.</source>
        <translation>Das Kühlmittel gefriert erst weit unter der kältesten Nacht.</translation>
    </message>
    <message>
        <source>Nobody has written down which antifreeze it is.</source>
        <translation>Niemand hat notiert, welches Frostschutzmittel es ist.</translation>
    </message>
    <message>
        <source>The kind is known and is not mixed with others.</source>
        <translation>Die Art ist bekannt und wird nicht mit anderen gemischt.</translation>
    </message>
    <message>
        <source>cold coolant lies here</source>
        <translation>hier liegt Kaltes</translation>
    </message>
    <message>
        <source>does not drain</source>
        <translation>läuft nicht ab</translation>
    </message>
    <message>
        <source>nearly level</source>
        <translation>fast waagrecht</translation>
    </message>
    <message>
        <source>level</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>The supply climbs over a hump: air stays at its crest.</source>
        <translation>Der Vorlauf steigt über einen Buckel: Luft bleibt am Scheitel.</translation>
    </message>
    <message>
        <source>The supply falls all the way to the heater.</source>
        <translation>Der Vorlauf fällt durchgehend zum Heizgerät.</translation>
    </message>
    <message>
        <source>The return climbs over the port and comes down to it.</source>
        <translation>Der Rücklauf steigt über den Anschluss und kommt zu ihm herab.</translation>
    </message>
    <message>
        <source>The return rises to the port and not past it.</source>
        <translation>Der Rücklauf steigt bis zum Anschluss und nicht darüber.</translation>
    </message>
    <message>
        <source>The return dips on its way: warm coolant does not go down.</source>
        <translation>Der Rücklauf senkt sich unterwegs: Warmes geht nicht abwärts.</translation>
    </message>
    <message>
        <source>The return rises all the way.</source>
        <translation>Der Rücklauf steigt durchgehend.</translation>
    </message>
    <message>
        <source>The supply lies lower than the heater&apos;s inlet.</source>
        <translation>Der Vorlauf liegt tiefer als der Einlass des Heizgeräts.</translation>
    </message>
    <message>
        <source>The heater&apos;s inlet is the lowest place.</source>
        <translation>Der Einlass des Heizgeräts ist die tiefste Stelle.</translation>
    </message>
    <message>
        <source>The heater&apos;s inlet is higher than the supply port.</source>
        <translation>Der Einlass des Heizgeräts liegt höher als der Vorlaufanschluss.</translation>
    </message>
    <message>
        <source>The heater hangs under the supply port.</source>
        <translation>Das Heizgerät hängt unter dem Vorlaufanschluss.</translation>
    </message>
    <message>
        <source>A nearly level return: air stays where it is.</source>
        <translation>Ein fast waagrechter Rücklauf: Luft bleibt, wo sie ist.</translation>
    </message>
    <message>
        <source>A rise all along: air finds its way to the engine.</source>
        <translation>Durchgehende Steigung: Luft findet zum Motor.</translation>
    </message>
    <message>
        <source>A part of the loop stands above the coolant level.</source>
        <translation>Ein Teil des Kreislaufs liegt über dem Kühlmittelstand.</translation>
    </message>
    <message>
        <source>The whole loop lies under the coolant level.</source>
        <translation>Der ganze Kreislauf liegt unter dem Kühlmittelstand.</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>little drop</source>
        <translation>wenig Abstand</translation>
    </message>
    <message>
        <source>up</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>the manual: upright only</source>
        <translation>Handbuch: nur aufrecht</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>Rahmen</translation>
    </message>
    <message>
        <source>The heater&apos;s top is hardly lower than the jacket.</source>
        <translation>Die Oberkante des Heizgeräts liegt kaum tiefer als der Mantel.</translation>
    </message>
    <message>
        <source>The heater hangs well under the jacket&apos;s lowest point.</source>
        <translation>Das Heizgerät hängt deutlich unter dem tiefsten Punkt des Mantels.</translation>
    </message>
    <message>
        <source>The heater is far from under the return port.</source>
        <translation>Das Heizgerät liegt weit weg vom Rücklaufanschluss.</translation>
    </message>
    <message>
        <source>The heater is right under the return port.</source>
        <translation>Das Heizgerät liegt genau unter dem Rücklaufanschluss.</translation>
    </message>
    <message>
        <source>The chamber reaches higher than its outlet: air stays.</source>
        <translation>Die Kammer reicht höher als ihr Auslass: Luft bleibt.</translation>
    </message>
    <message>
        <source>The outlet is at the top: air leaves by itself.</source>
        <translation>Der Auslass liegt oben: Luft entweicht von selbst.</translation>
    </message>
    <message>
        <source>The heater lies where its manual wants it upright.</source>
        <translation>Das Heizgerät liegt, wo es laut Handbuch stehen soll.</translation>
    </message>
    <message>
        <source>The heater stands as its manual says.</source>
        <translation>Das Heizgerät steht, wie es sein Handbuch sagt.</translation>
    </message>
    <message>
        <source>The bracket is on the engine and shakes with it.</source>
        <translation>Der Halter sitzt am Motor und rüttelt mit.</translation>
    </message>
    <message>
        <source>The bracket is on the frame.</source>
        <translation>Der Halter sitzt am Rahmen.</translation>
    </message>
    <message>
        <source>nearly as wide</source>
        <translation>fast so weit</translation>
    </message>
    <message>
        <source>narrow</source>
        <translation>eng</translation>
    </message>
    <message>
        <source>too short</source>
        <translation>zu kurz</translation>
    </message>
    <message>
        <source>nothing holds it</source>
        <translation>nichts hält ihn</translation>
    </message>
    <message>
        <source>clearance</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>exhaust</source>
        <translation>Auspuff</translation>
    </message>
    <message>
        <source>A thinner hose than the heater&apos;s manual asks for.</source>
        <translation>Ein dünnerer Schlauch, als das Handbuch des Heizgeräts verlangt.</translation>
    </message>
    <message>
        <source>The size that the manual asks for, all the way.</source>
        <translation>Durchgehend die Größe, die das Handbuch verlangt.</translation>
    </message>
    <message>
        <source>A part far narrower than the hose.</source>
        <translation>Ein Teil, das viel enger als der Schlauch ist.</translation>
    </message>
    <message>
        <source>A part nearly as wide as the hose.</source>
        <translation>Ein Teil, das fast so weit wie der Schlauch ist.</translation>
    </message>
    <message>
        <source>Bent over a sharp corner, the hose kinks.</source>
        <translation>Über eine scharfe Kante gebogen, knickt der Schlauch.</translation>
    </message>
    <message>
        <source>An open bend, or a moulded elbow.</source>
        <translation>Ein offener Bogen oder ein Formbogen.</translation>
    </message>
    <message>
        <source>Two bends need more length than lies between them.</source>
        <translation>Zwei Bögen brauchen mehr Länge, als zwischen ihnen liegt.</translation>
    </message>
    <message>
        <source>Each bend has the length that it needs.</source>
        <translation>Jeder Bogen hat die Länge, die er braucht.</translation>
    </message>
    <message>
        <source>The hose goes a long way round.</source>
        <translation>Der Schlauch macht einen weiten Umweg.</translation>
    </message>
    <message>
        <source>The hose goes the direct way.</source>
        <translation>Der Schlauch nimmt den direkten Weg.</translation>
    </message>
    <message>
        <source>A long flat piece without a clip sags and chafes.</source>
        <translation>Ein langes flaches Stück ohne Halteschelle hängt durch und scheuert.</translation>
    </message>
    <message>
        <source>Clips hold it to the frame along its way.</source>
        <translation>Halteschellen halten ihn unterwegs am Rahmen.</translation>
    </message>
    <message>
        <source>Pulled straight: the engine tears at both ends.</source>
        <translation>Straff gezogen: der Motor reißt an beiden Enden.</translation>
    </message>
    <message>
        <source>A bend gives when the engine moves.</source>
        <translation>Ein Bogen gibt nach, wenn sich der Motor bewegt.</translation>
    </message>
    <message>
        <source>The hose hangs where the road reaches it.</source>
        <translation>Der Schlauch hängt, wo ihn die Straße erreicht.</translation>
    </message>
    <message>
        <source>The hose stays clear of the ground.</source>
        <translation>Der Schlauch bleibt weg vom Boden.</translation>
    </message>
    <message>
        <source>The hose touches something hot or moving.</source>
        <translation>Der Schlauch berührt etwas Heißes oder Bewegtes.</translation>
    </message>
    <message>
        <source>The hose keeps its distance.</source>
        <translation>Der Schlauch hält Abstand.</translation>
    </message>
    <message>
        <source>front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>stays cold</source>
        <translation>bleibt kalt</translation>
    </message>
    <message>
        <source>sensor</source>
        <translation>Fühler</translation>
    </message>
    <message>
        <source>another circuit</source>
        <translation>anderer Kreislauf</translation>
    </message>
    <message>
        <source>one bank</source>
        <translation>eine Bank</translation>
    </message>
    <message>
        <source>the other</source>
        <translation>die andere</translation>
    </message>
    <message>
        <source>Coolant under the supply port never gets to the heater.</source>
        <translation>Kühlmittel unter dem Vorlaufanschluss gelangt nie zum Heizgerät.</translation>
    </message>
    <message>
        <source>The supply is taken from the lowest port.</source>
        <translation>Der Vorlauf kommt vom tiefsten Anschluss.</translation>
    </message>
    <message>
        <source>The return enters low: little height drives the flow.</source>
        <translation>Der Rücklauf mündet tief: wenig Höhe treibt den Durchfluss an.</translation>
    </message>
    <message>
        <source>The return enters high.</source>
        <translation>Der Rücklauf mündet hoch.</translation>
    </message>
    <message>
        <source>Both ports at the rear: the front stays cold.</source>
        <translation>Beide Anschlüsse hinten: vorn bleibt es kalt.</translation>
    </message>
    <message>
        <source>The supply leaves at the front.</source>
        <translation>Der Vorlauf verlässt den Motor vorn.</translation>
    </message>
    <message>
        <source>Both ports at the front: the rear stays cold.</source>
        <translation>Beide Anschlüsse vorn: hinten bleibt es kalt.</translation>
    </message>
    <message>
        <source>The return enters at the rear.</source>
        <translation>Der Rücklauf mündet hinten.</translation>
    </message>
    <message>
        <source>Warm coolant goes straight back into the supply.</source>
        <translation>Warmes Kühlmittel geht geradewegs zurück in den Vorlauf.</translation>
    </message>
    <message>
        <source>The whole engine lies between the ports.</source>
        <translation>Der ganze Motor liegt zwischen den Anschlüssen.</translation>
    </message>
    <message>
        <source>Warm coolant enters at the thermostat and opens it.</source>
        <translation>Warmes Kühlmittel mündet am Thermostat und öffnet ihn.</translation>
    </message>
    <message>
        <source>Warm coolant enters far from the thermostat.</source>
        <translation>Warmes Kühlmittel mündet weit weg vom Thermostat.</translation>
    </message>
    <message>
        <source>The sensor feels what comes from the heater.</source>
        <translation>Der Fühler spürt, was vom Heizgerät kommt.</translation>
    </message>
    <message>
        <source>The sensor feels the engine.</source>
        <translation>Der Fühler spürt den Motor.</translation>
    </message>
    <message>
        <source>Two circuits on one port share what it lets through.</source>
        <translation>Zwei Kreisläufe an einem Anschluss teilen sich, was er durchlässt.</translation>
    </message>
    <message>
        <source>Each circuit has a port of its own.</source>
        <translation>Jeder Kreislauf hat einen eigenen Anschluss.</translation>
    </message>
    <message>
        <source>Both ports on one bank: the other stays colder.</source>
        <translation>Beide Anschlüsse auf einer Bank: die andere bleibt kälter.</translation>
    </message>
    <message>
        <source>Out of one bank, into the other.</source>
        <translation>Aus der einen Bank, in die andere.</translation>
    </message>
    <message>
        <source>backward</source>
        <translation>rückwärts</translation>
    </message>
    <message>
        <source>as wide as the hose</source>
        <translation>so weit wie der Schlauch</translation>
    </message>
    <message>
        <source>takes a third of the head</source>
        <translation>nimmt 1/3 der Druckhöhe</translation>
    </message>
    <message>
        <source>over 5 kW and no pump</source>
        <translation>über 5 kW und keine Pumpe</translation>
    </message>
    <message>
        <source>warm</source>
        <translation>warm</translation>
    </message>
    <message>
        <source>over 82 °C</source>
        <translation>über 82 °C</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>steam</source>
        <translation>Dampf</translation>
    </message>
    <message>
        <source>one hour</source>
        <translation>eine Stunde</translation>
    </message>
    <message>
        <source>power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>target</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>The warm coolant stands no higher than the cold.</source>
        <translation>Das warme Kühlmittel steht nicht höher als das kalte.</translation>
    </message>
    <message>
        <source>Warm coolant rises all the way, cold falls all the way.</source>
        <translation>Warmes steigt durchgehend, Kaltes fällt durchgehend.</translation>
    </message>
    <message>
        <source>The supply rises from the heater: warm coolant takes it.</source>
        <translation>Der Vorlauf steigt vom Heizgerät: Warmes nimmt diesen Weg.</translation>
    </message>
    <message>
        <source>The return rises from the outlet, the supply falls.</source>
        <translation>Der Rücklauf steigt vom Auslass, der Vorlauf fällt.</translation>
    </message>
    <message>
        <source>One narrow part takes much of the few millimetres.</source>
        <translation>Ein enges Teil verbraucht viel von den wenigen Millimetern.</translation>
    </message>
    <message>
        <source>A part with a full bore takes little.</source>
        <translation>Ein Teil mit vollem Querschnitt verbraucht wenig.</translation>
    </message>
    <message>
        <source>More heat than a few millimetres of head carry away.</source>
        <translation>Mehr Wärme, als wenige Millimeter Druckhöhe abführen.</translation>
    </message>
    <message>
        <source>As much power as the engine&apos;s size asks for.</source>
        <translation>So viel Leistung, wie die Motorgröße verlangt.</translation>
    </message>
    <message>
        <source>Too little flows: what leaves is too hot.</source>
        <translation>Zu wenig fließt: was austritt, ist zu heiß.</translation>
    </message>
    <message>
        <source>Enough flows to carry the heat away.</source>
        <translation>Genug fließt, um die Wärme abzuführen.</translation>
    </message>
    <message>
        <source>Bubbles gather and steam bares the element.</source>
        <translation>Blasen sammeln sich, und Dampf legt das Heizelement frei.</translation>
    </message>
    <message>
        <source>The coolant stays well under its boiling point.</source>
        <translation>Das Kühlmittel bleibt weit unter dem Siedepunkt.</translation>
    </message>
    <message>
        <source>A hose too thin for this heater and these heights.</source>
        <translation>Ein zu dünner Schlauch für dieses Heizgerät und diese Höhen.</translation>
    </message>
    <message>
        <source>A hose that lets enough through.</source>
        <translation>Ein Schlauch, der genug durchlässt.</translation>
    </message>
    <message>
        <source>The heater warms itself: on and off all the time.</source>
        <translation>Das Heizgerät wärmt sich selbst: ständig ein und aus.</translation>
    </message>
    <message>
        <source>The heater warms the engine: few turns an hour.</source>
        <translation>Das Heizgerät wärmt den Motor: wenige Schaltspiele je Stunde.</translation>
    </message>
    <message>
        <source>The engine loses the heat before it is warm enough.</source>
        <translation>Der Motor verliert die Wärme, bevor er warm genug ist.</translation>
    </message>
    <message>
        <source>The engine gets warm enough in the time given.</source>
        <translation>Der Motor wird in der gegebenen Zeit warm genug.</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Richtig</translation>
    </message>
    <message>
        <source>Wrong</source>
        <translation>Falsch</translation>
    </message>
    <message>
        <source>air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>coldest night</source>
        <translation>kälteste Nacht</translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation>Höhenlage</translation>
    </message>
    <message>
        <source>Heater</source>
        <translation>Heizgerät</translation>
    </message>
    <message>
        <source>Ports</source>
        <translation>Anschlüsse</translation>
    </message>
    <message>
        <source>Hose</source>
        <translation>Schlauch</translation>
    </message>
    <message>
        <source>Coolant</source>
        <translation>Kühlmittel</translation>
    </message>
    <message>
        <source>Connections</source>
        <translation>Verbindungen</translation>
    </message>
    <message>
        <source>Running</source>
        <translation>Betrieb</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Sonstiges</translation>
    </message>
    <message>
        <source>station 0</source>
        <translation>Längsmaß 0</translation>
    </message>
    <message>
        <source>rail</source>
        <translation>Träger</translation>
    </message>
</context>
<context>
    <name>siphonwright::rules::CaseView</name>
    <message>
        <source>Right: %1</source>
        <translation>Richtig: %1</translation>
    </message>
    <message>
        <source>Wrong: %1</source>
        <translation>Falsch: %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::rules::LimitForm</name>
    <message>
        <source>Judge this rule in this drawing</source>
        <translation>Diese Regel in dieser Zeichnung beurteilen</translation>
    </message>
    <message>
        <source>Keep for this drawing</source>
        <translation>Für diese Zeichnung behalten</translation>
    </message>
    <message>
        <source>Back to the rule book&apos;s</source>
        <translation>Zurück zum Regelbuch</translation>
    </message>
    <message>
        <source>Advice over</source>
        <translation>Hinweis über</translation>
    </message>
    <message>
        <source>Advice under</source>
        <translation>Hinweis unter</translation>
    </message>
    <message>
        <source>Caution over</source>
        <translation>Warnung über</translation>
    </message>
    <message>
        <source>Caution under</source>
        <translation>Warnung unter</translation>
    </message>
    <message>
        <source>Stop over</source>
        <translation>Stopp über</translation>
    </message>
    <message>
        <source>Stop under</source>
        <translation>Stopp unter</translation>
    </message>
    <message>
        <source>Judged yes or no, or by a figure from the manual: there is no limit to change.</source>
        <translation>Mit Ja oder Nein beurteilt oder nach einer Zahl aus dem Handbuch: es gibt keinen Grenzwert zu ändern.</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>for example: the heater&apos;s manual, page 7</source>
        <translation>zum Beispiel: Handbuch des Heizgeräts, Seite 7</translation>
    </message>
    <message>
        <source>changed; rule book: %1</source>
        <translation>geändert; Regelbuch: %1</translation>
    </message>
    <message>
        <source>as in the rule book</source>
        <translation>wie im Regelbuch</translation>
    </message>
    <message>
        <source>Write the reason too: the sheet states it.</source>
        <translation>Schreiben Sie auch den Grund: das Blatt nennt ihn.</translation>
    </message>
    <message>
        <source>Change a limit</source>
        <translation>Grenzwert ändern</translation>
    </message>
    <message>
        <source>Back to the rule book</source>
        <translation>Zurück zum Regelbuch</translation>
    </message>
    <message>
        <source>Write the reason first, then switch it off: the sheet states it.</source>
        <translation>Schreiben Sie zuerst den Grund, dann schalten Sie sie ab: das Blatt nennt ihn.</translation>
    </message>
    <message>
        <source>Judge a rule again</source>
        <translation>Eine Regel wieder beurteilen</translation>
    </message>
    <message>
        <source>Switch a rule off</source>
        <translation>Eine Regel abschalten</translation>
    </message>
</context>
<context>
    <name>siphonwright::rules::RuleBrowser</name>
    <message>
        <source>Rules</source>
        <translation>Regeln</translation>
    </message>
    <message>
        <source>Search the rules</source>
        <translation>Regeln durchsuchen</translation>
    </message>
</context>
<context>
    <name>siphonwright::rules::RuleList</name>
    <message>
        <source>off</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>geändert</translation>
    </message>
    <message>
        <source>not judged here</source>
        <translation>hier nicht beurteilt</translation>
    </message>
    <message>
        <source>stops the job</source>
        <translation>stoppt den Auftrag</translation>
    </message>
    <message>
        <source>a caution</source>
        <translation>eine Warnung</translation>
    </message>
    <message>
        <source>an advice</source>
        <translation>ein Hinweis</translation>
    </message>
</context>
<context>
    <name>siphonwright::rules::RulePage</name>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>Judged on the level; the grade does not change it.</source>
        <translation>Auf ebenem Boden beurteilt; die Neigung ändert nichts.</translation>
    </message>
    <message>
        <source>Judged on the level and over the grades.</source>
        <translation>Auf ebenem Boden und über die Neigungen beurteilt.</translation>
    </message>
    <message>
        <source>Judged on the level and over the grades; it decides in which grades the loop is sound.</source>
        <translation>Auf ebenem Boden und über die Neigungen beurteilt; sie entscheidet, bei welchen Neigungen der Kreislauf in Ordnung ist.</translation>
    </message>
    <message>
        <source>In this drawing</source>
        <translation>In dieser Zeichnung</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzwerte</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Grundlage</translation>
    </message>
    <message>
        <source>Not judged by choice: %1</source>
        <translation>Absichtlich nicht beurteilt: %1</translation>
    </message>
    <message>
        <source>Not judged: %1.</source>
        <translation>Nicht beurteilt: %1.</translation>
    </message>
    <message>
        <source>Nothing to judge until hoses are drawn.</source>
        <translation>Nichts zu beurteilen, bis Schläuche gezeichnet sind.</translation>
    </message>
    <message>
        <source>Nothing found.</source>
        <translation>Nichts gefunden.</translation>
    </message>
</context>
<context>
    <name>siphonwright::sheet</name>
    <message>
        <source>End view</source>
        <translation>Stirnansicht</translation>
    </message>
    <message>
        <source>End view from the front</source>
        <translation>Stirnansicht von vorn</translation>
    </message>
    <message>
        <source>End view from the rear</source>
        <translation>Stirnansicht von hinten</translation>
    </message>
    <message>
        <source>Views</source>
        <translation>Ansichten</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>No end view: beside it the elevation would be too small on this paper. What lies across the engine is drawn in the program and counted in every length.</source>
        <translation>Keine Stirnansicht: neben ihr würde die Seitenansicht auf diesem Papier zu klein. Was quer zum Motor liegt, ist im Programm gezeichnet und in jeder Länge mitgezählt.</translation>
    </message>
    <message>
        <source>Layout sheet</source>
        <translation>Anordnungsblatt</translation>
    </message>
    <message>
        <source>%1: a sheet is written as .pdf, .svg or .png.</source>
        <translation>%1: ein Blatt wird als .pdf, .svg oder .png geschrieben.</translation>
    </message>
    <message>
        <source>%1: the sheet could not be drawn.</source>
        <translation>%1: das Blatt konnte nicht gezeichnet werden.</translation>
    </message>
    <message>
        <source>Level hot</source>
        <translation>Heißstand</translation>
    </message>
    <message>
        <source>Level cold full</source>
        <translation>Kaltfüllstand</translation>
    </message>
    <message>
        <source>Level cold minimum</source>
        <translation>Kaltmindeststand</translation>
    </message>
    <message>
        <source>Jacket highest</source>
        <translation>Mantel oben</translation>
    </message>
    <message>
        <source>Jacket lowest</source>
        <translation>Mantel unten</translation>
    </message>
    <message>
        <source>%1, top</source>
        <translation>%1, Oberkante</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>Drop %1</source>
        <translation>Abstand %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>flow %1</source>
        <translation>Durchfluss %1</translation>
    </message>
    <message>
        <source>peak outlet %1, cycles in the worst hour %2</source>
        <translation>Auslass max. %1, Schaltspiele in der ungünstigsten Stunde %2</translation>
    </message>
    <message>
        <source>Engine at %1 after %2</source>
        <translation>Motor auf %1 nach %2</translation>
    </message>
    <message>
        <source>Engine does not get to %1 in %2</source>
        <translation>Motor kommt in %2 nicht auf %1</translation>
    </message>
    <message>
        <source>; %1 in %2</source>
        <translation>; %1 in %2</translation>
    </message>
    <message>
        <source>, from %1 ambient</source>
        <translation>, ab %1 Umgebung</translation>
    </message>
    <message>
        <source>Results</source>
        <translation>Ergebnisse</translation>
    </message>
    <message>
        <source>Assumed otherwise than the book</source>
        <translation>Abweichend vom Buch angenommen</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation>kein Grund angegeben</translation>
    </message>
    <message>
        <source>%1: %2 instead of %3 (%4).</source>
        <translation>%1: %2 statt %3 (%4).</translation>
    </message>
    <message>
        <source>Student sheet: side elevation 1:%1</source>
        <translation>Übungsblatt: Seitenansicht 1:%1</translation>
    </message>
    <message>
        <source>Side elevation 1:%1</source>
        <translation>Seitenansicht 1:%1</translation>
    </message>
    <message>
        <source>seen from the engine&apos;s left side</source>
        <translation>von der linken Motorseite gesehen</translation>
    </message>
    <message>
        <source>seen from the engine&apos;s right side</source>
        <translation>von der rechten Motorseite gesehen</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Front</translation>
    </message>
    <message>
        <source>Nothing is drawn yet.</source>
        <translation>Noch ist nichts gezeichnet.</translation>
    </message>
    <message>
        <source>Department</source>
        <translation>Abteilung</translation>
    </message>
    <message>
        <source>Technical reference</source>
        <translation>Technische Referenz</translation>
    </message>
    <message>
        <source>Creator</source>
        <translation>Ersteller</translation>
    </message>
    <message>
        <source>Approver</source>
        <translation>Freigabe</translation>
    </message>
    <message>
        <source>Legal owner</source>
        <translation>Eigentümer</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Supplementary title</source>
        <translation>Zusatztitel</translation>
    </message>
    <message>
        <source>Document type</source>
        <translation>Dokumentart</translation>
    </message>
    <message>
        <source>Identification number</source>
        <translation>Sachnummer</translation>
    </message>
    <message>
        <source>Vehicle</source>
        <translation>Fahrzeug</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Kunde</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Maßstab</translation>
    </message>
    <message>
        <source>Rev.</source>
        <translation>Änd.</translation>
    </message>
    <message>
        <source>Date of issue</source>
        <translation>Ausgabedatum</translation>
    </message>
    <message>
        <source>Lang.</source>
        <translation>Spr.</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation>%1 in</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>Scale 1:%1</source>
        <translation>Maßstab 1:%1</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>nicht eingegeben</translation>
    </message>
    <message>
        <source>Not judged by choice: %1 (%2).</source>
        <translation>Absichtlich nicht beurteilt: %1 (%2).</translation>
    </message>
    <message>
        <source>%1 instead of %2</source>
        <translation>%1 statt %2</translation>
    </message>
    <message>
        <source>advice over %1</source>
        <translation>Hinweis über %1</translation>
    </message>
    <message>
        <source>advice under %1</source>
        <translation>Hinweis unter %1</translation>
    </message>
    <message>
        <source>caution over %1</source>
        <translation>Warnung über %1</translation>
    </message>
    <message>
        <source>caution under %1</source>
        <translation>Warnung unter %1</translation>
    </message>
    <message>
        <source>stop over %1</source>
        <translation>Stopp über %1</translation>
    </message>
    <message>
        <source>stop under %1</source>
        <translation>Stopp unter %1</translation>
    </message>
    <message>
        <source>%1: %2 (%3).</source>
        <translation>%1: %2 (%3).</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>None in what was judged.</source>
        <translation>Keine im Beurteilten.</translation>
    </message>
    <message>
        <source>Not judged, for want of a fact</source>
        <translation>Nicht beurteilt, weil eine Angabe fehlt</translation>
    </message>
    <message>
        <source>Margins</source>
        <translation>Reserven</translation>
    </message>
    <message>
        <source>Judged on grades to %1 nose up and down, %2 left and right.</source>
        <translation>Beurteilt für Neigungen bis %1 Front hoch und tief, %2 links und rechts.</translation>
    </message>
    <message>
        <source>Not confirmed: %1.</source>
        <translation>Nicht bestätigt: %1.</translation>
    </message>
    <message>
        <source>Judged otherwise than the rule book</source>
        <translation>Abweichend vom Regelbuch beurteilt</translation>
    </message>
    <message>
        <source>Parts and cut lengths</source>
        <translation>Teile und Zuschnittlängen</translation>
    </message>
    <message>
        <source>%1 x %2</source>
        <translation>%1 x %2</translation>
    </message>
    <message>
        <source>What is known</source>
        <translation>Was bekannt ist</translation>
    </message>
    <message>
        <source>To be answered</source>
        <translation>Zu beantworten</translation>
    </message>
    <message>
        <source>Where does air stay when this is filled, and about how much?</source>
        <translation>Wo bleibt beim Füllen Luft, und etwa wie viel?</translation>
    </message>
    <message>
        <source>Does it circulate, and which way?</source>
        <translation>Zirkuliert es, und in welche Richtung?</translation>
    </message>
    <message>
        <source>What would you change, and why?</source>
        <translation>Was würden Sie ändern, und warum?</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Sicherheitshinweise</translation>
    </message>
    <message>
        <source>Qualified technicians only. Disconnect and lock out power while working; inhibit a generator&apos;s automatic start.</source>
        <translation>Nur für Fachkräfte. Während der Arbeit spannungsfrei schalten und gegen Wiedereinschalten sichern; Automatikstart eines Aggregats sperren.</translation>
    </message>
    <message>
        <source>Chock wheels, block air suspension; never work under an unsupported vehicle.</source>
        <translation>Räder mit Keilen sichern, Luftfederung blockieren; nie unter einem nicht abgestützten Fahrzeug arbeiten.</translation>
    </message>
    <message>
        <source>Open the cap only cold: hot coolant under pressure.</source>
        <translation>Deckel nur kalt öffnen: heißes Kühlmittel unter Druck.</translation>
    </message>
    <message>
        <source>Never energise without coolant in the chamber.</source>
        <translation>Nie ohne Kühlmittel in der Kammer einschalten.</translation>
    </message>
    <message>
        <source>Heater off before a valve is closed: both closed is a sealed vessel.</source>
        <translation>Heizgerät aus, bevor ein Ventil geschlossen wird: sind beide zu, ist es ein verschlossener Behälter.</translation>
    </message>
    <message>
        <source>Run the engine outdoors or with extraction.</source>
        <translation>Motor nur im Freien oder mit Absaugung laufen lassen.</translation>
    </message>
    <message>
        <source>Grounded supply, local electrical code, licensed electrician.</source>
        <translation>Versorgung mit Schutzleiter, örtliche Elektrovorschriften, Elektrofachkraft.</translation>
    </message>
    <message>
        <source>Antifreeze is poisonous: catch it and dispose of it properly.</source>
        <translation>Frostschutzmittel ist giftig: auffangen und fachgerecht entsorgen.</translation>
    </message>
    <message>
        <source>The heater&apos;s and the engine&apos;s own manuals rule over this sheet; its figures are estimates from stated assumptions.</source>
        <translation>Die Handbücher von Heizgerät und Motor gehen diesem Blatt vor; seine Zahlen sind Schätzungen aus genannten Annahmen.</translation>
    </message>
    <message>
        <source>%1: none of the pages asked for has anything on it.</source>
        <translation>%1: Auf keiner der gewünschten Seiten steht etwas.</translation>
    </message>
    <message>
        <source>Row %1 of %2, column %3 of %4. Trim at the marks and join.</source>
        <translation>Reihe %1 von %2, Spalte %3 von %4. An den Marken schneiden und aneinanderlegen.</translation>
    </message>
    <message>
        <source>* not measured</source>
        <translation>* nicht gemessen</translation>
    </message>
    <message>
        <source>Measure me:</source>
        <translation>Miss mich:</translation>
    </message>
    <message>
        <source>1 in</source>
        <translation>1 in</translation>
    </message>
    <message>
        <source>25 mm</source>
        <translation>25 mm</translation>
    </message>
    <message>
        <source>each way when printed at 100 %</source>
        <translation>je Seite, zu 100 % gedruckt</translation>
    </message>
    <message>
        <source>Vehicle&apos;s serial number</source>
        <translation>Seriennummer des Fahrzeugs</translation>
    </message>
    <message>
        <source>Engine&apos;s serial number</source>
        <translation>Seriennummer des Motors</translation>
    </message>
    <message>
        <source>Heater&apos;s serial number</source>
        <translation>Seriennummer des Heizgeräts</translation>
    </message>
    <message>
        <source>Changed in this revision</source>
        <translation>In dieser Revision geändert</translation>
    </message>
    <message>
        <source>kind not known</source>
        <translation>Art nicht bekannt</translation>
    </message>
    <message>
        <source>plain water</source>
        <translation>reines Wasser</translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation>Ethylenglykol</translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation>Propylenglykol</translation>
    </message>
    <message>
        <source>%1, strength not entered</source>
        <translation>%1, Anteil nicht eingetragen</translation>
    </message>
    <message>
        <source>Electrical load and coolant</source>
        <translation>Elektrische Last und Kühlmittel</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>All heaters %1, current %2, continuous load (125 %) %3.</source>
        <translation>Alle Heizgeräte %1, Strom %2, Dauerlast (125 %) %3.</translation>
    </message>
    <message>
        <source>Further sheets</source>
        <translation>Weitere Blätter</translation>
    </message>
    <message>
        <source>Sheet %1</source>
        <translation>Blatt %1</translation>
    </message>
    <message>
        <source>Sheets %1 to %2</source>
        <translation>Blätter %1 bis %2</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ohne</translation>
    </message>
    <message>
        <source>sheet 2</source>
        <translation>Blatt 2</translation>
    </message>
    <message>
        <source>sheets 2 to %1</source>
        <translation>Blatt 2 bis %1</translation>
    </message>
    <message>
        <source>and %1 more on %2</source>
        <translation>und %1 weitere: %2</translation>
    </message>
    <message>
        <source>On %1: %2.</source>
        <translation>Auf %1: %2.</translation>
    </message>
    <message>
        <source>Continued from sheet 1</source>
        <translation>Fortsetzung von Blatt 1</translation>
    </message>
    <message>
        <source>1, drawing: sheets 1 to %1</source>
        <translation>1, Zeichnung: Blatt 1 bis %1</translation>
    </message>
    <message>
        <source>1, drawing</source>
        <translation>1, Zeichnung</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>%1: the rest of page 1.</source>
        <translation>%1: der Rest von Seite 1.</translation>
    </message>
    <message>
        <source>%1: page %2, %3 (%4).</source>
        <translation>%1: Seite %2, %3 (%4).</translation>
    </message>
    <message>
        <source>None printed with this one; there are checklist, parts and estimate, and assumptions.</source>
        <translation>Mit diesem Blatt keine gedruckt; es gibt Checkliste, Stückliste und Kostenvoranschlag sowie Annahmen.</translation>
    </message>
    <message>
        <source>Assumed, and what the figures depend on most: %1.</source>
        <translation>Angenommen, und wovon die Zahlen am meisten abhängen: %1.</translation>
    </message>
    <message>
        <source>%1: bore %2, cut %3</source>
        <translation>%1: Innendurchmesser %2, zuschneiden %3</translation>
    </message>
    <message>
        <source>%1; from A to B: %2</source>
        <translation>%1; von A nach B: %2</translation>
    </message>
    <message>
        <source>bleed</source>
        <translation>Entlüftung</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>Ablass</translation>
    </message>
    <message>
        <source>check valve</source>
        <translation>Rückschlagventil</translation>
    </message>
    <message>
        <source>reducer</source>
        <translation>Reduzierung</translation>
    </message>
    <message>
        <source>elbow</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>valve</source>
        <translation>Ventil</translation>
    </message>
    <message>
        <source>New hoses and heaters hold about %1 of coolant: %2.</source>
        <translation>Neue Schläuche und Heizgeräte fassen etwa %1 Kühlmittel: %2.</translation>
    </message>
    <message>
        <source>%1, continued</source>
        <translation>%1, Fortsetzung</translation>
    </message>
    <message>
        <source>Ports %1 apart, level</source>
        <translation>Anschlüsse waagerecht %1 auseinander</translation>
    </message>
    <message>
        <source>, where it gets there</source>
        <translation>, wo er das erreicht</translation>
    </message>
    <message>
        <source>%1: bore %2, cut %3 (%4 of it allowance)</source>
        <translation>%1: Innendurchmesser %2, zuschneiden %3 (davon %4 Zugabe)</translation>
    </message>
    <message>
        <source>Air is what stays after filling.</source>
        <translation>Luft: was nach dem Füllen bleibt.</translation>
    </message>
    <message>
        <source>Crossed out: a hose whose bore is too small.</source>
        <translation>Durchkreuzt: ein Schlauch mit zu kleiner Nennweite.</translation>
    </message>
    <message>
        <source>Slopes: rise over run, the way it flows.</source>
        <translation>Gefälle: Höhe zu Länge, in Fließrichtung.</translation>
    </message>
    <message>
        <source>In a box: as it runs at that block temperature.</source>
        <translation>Im Kasten: wie es bei dieser Blocktemperatur läuft.</translation>
    </message>
    <message>
        <source>%1: all of page 1.</source>
        <translation>%1: die ganze Seite 1.</translation>
    </message>
</context>
<context>
    <name>siphonwright::sizing::Entries</name>
    <message>
        <source>Phases</source>
        <translation>Phasen</translation>
    </message>
    <message>
        <source>one</source>
        <translation>eine</translation>
    </message>
    <message>
        <source>three</source>
        <translation>drei</translation>
    </message>
    <message>
        <source>Conductor</source>
        <translation>Leiter</translation>
    </message>
    <message>
        <source>Size of the conductors to the bay</source>
        <translation>Querschnitt der Leiter zum Stellplatz</translation>
    </message>
    <message>
        <source>%1 – not in the tables</source>
        <translation>%1 – nicht in den Tabellen</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>Wanted temperature of the engine block</source>
        <translation>Gewünschte Temperatur des Motorblocks</translation>
    </message>
    <message>
        <source>Usual ambient</source>
        <translation>Übliche Umgebung</translation>
    </message>
    <message>
        <source>Coldest ambient</source>
        <translation>Tiefste Umgebung</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>Nothing entered counts as still air</source>
        <translation>Nichts eingegeben zählt als windstill</translation>
    </message>
    <message>
        <source>Time allowed</source>
        <translation>Erlaubte Zeit</translation>
    </message>
    <message>
        <source>From the start to the target</source>
        <translation>Vom Start bis zum Ziel</translation>
    </message>
    <message>
        <source>Plugged in a night</source>
        <translation>Eingesteckt je Nacht</translation>
    </message>
    <message>
        <source>Price of a kWh</source>
        <translation>Preis je kWh</translation>
    </message>
    <message>
        <source>In the currency of the quote</source>
        <translation>In der Währung der Kalkulation</translation>
    </message>
    <message>
        <source>Voltage at the bay</source>
        <translation>Spannung am Stellplatz</translation>
    </message>
    <message>
        <source>Between conductors</source>
        <translation>Zwischen Leitern</translation>
    </message>
    <message>
        <source>Metal</source>
        <translation>Metall</translation>
    </message>
    <message>
        <source>copper</source>
        <translation>Kupfer</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>Aluminium</translation>
    </message>
    <message>
        <source>Length, one way</source>
        <translation>Länge, einfach</translation>
    </message>
    <message>
        <source>Of the run, from its start to the heater</source>
        <translation>Der Leitung, vom Anfang bis zum Heizgerät</translation>
    </message>
    <message>
        <source>Antifreeze in it now</source>
        <translation>Jetziges Frostschutzmittel</translation>
    </message>
    <message>
        <source>none, plain water</source>
        <translation>keiner, reines Wasser</translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation>Ethylenglykol</translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation>Propylenglykol</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Its share now</source>
        <translation>Jetziger Anteil</translation>
    </message>
    <message>
        <source>By volume, as a refractometer shows it</source>
        <translation>Volumen, wie es ein Refraktometer zeigt</translation>
    </message>
    <message>
        <source>Antifreeze to add</source>
        <translation>Frostschutz zum Zugeben</translation>
    </message>
    <message>
        <source>Empty: the kind that is in it now; kinds are never mixed</source>
        <translation>Leer: die Art, die jetzt darin ist; Arten werden nie gemischt</translation>
    </message>
    <message>
        <source>Share wanted</source>
        <translation>Gewünschter Anteil</translation>
    </message>
    <message>
        <source>By volume, 60 % at most</source>
        <translation>Volumen, höchstens 60 %</translation>
    </message>
    <message>
        <source>Whole system holds</source>
        <translation>Ganze Anlage fasst</translation>
    </message>
    <message>
        <source>Radiator and cabin heater included; without it the engine alone counts</source>
        <translation>Mit Kühler und Fahrerhausheizung; ohne Angabe zählt der Motor allein</translation>
    </message>
    <message>
        <source>Runs out at once</source>
        <translation>Läuft auf einmal aus</translation>
    </message>
    <message>
        <source>What comes out at the drains</source>
        <translation>Was an den Ablässen herauskommt</translation>
    </message>
    <message>
        <source>Water to mix with</source>
        <translation>Wasser zum Mischen</translation>
    </message>
    <message>
        <source>Chloride</source>
        <translation>Chlorid</translation>
    </message>
    <message>
        <source>Sulphate</source>
        <translation>Sulfat</translation>
    </message>
    <message>
        <source>Hardness</source>
        <translation>Härte</translation>
    </message>
    <message>
        <source>As calcium carbonate, CaCO3</source>
        <translation>Als Calciumcarbonat, CaCO3</translation>
    </message>
    <message>
        <source>Total solids</source>
        <translation>Feststoffe gesamt</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH-Wert</translation>
    </message>
</context>
<context>
    <name>siphonwright::sizing::FigureTable</name>
    <message>
        <source>Click to see on the drawing where it comes from</source>
        <translation>Klicken Sie, um auf der Zeichnung zu sehen, woher es kommt</translation>
    </message>
</context>
<context>
    <name>siphonwright::sizing::FigureText</name>
    <message>
        <source>%1, freezes at %2</source>
        <translation>%1, gefriert bei %2</translation>
    </message>
    <message>
        <source>%1, freezing point not known</source>
        <translation>%1, Gefrierpunkt nicht bekannt</translation>
    </message>
    <message>
        <source>▲ %1, %2 too warm for the coldest ambient</source>
        <translation>▲ %1, um %2 zu warm für die tiefste Umgebung</translation>
    </message>
    <message>
        <source>%1, %2 under the coldest ambient</source>
        <translation>%1, um %2 unter der tiefsten Umgebung</translation>
    </message>
    <message>
        <source>Freezing points are good to some 2 K</source>
        <translation>Gefrierpunkte sind auf etwa 2 K genau</translation>
    </message>
    <message>
        <source>Drained, to be filled</source>
        <translation>Abgelassen, aufzufüllen</translation>
    </message>
    <message>
        <source>In it now</source>
        <translation>Jetzt darin</translation>
    </message>
    <message>
        <source>%1, the engine alone</source>
        <translation>%1, der Motor allein</translation>
    </message>
    <message>
        <source>Let out, to be filled again</source>
        <translation>Abgelassen, wieder aufzufüllen</translation>
    </message>
    <message>
        <source>New parts take</source>
        <translation>Neue Teile fassen</translation>
    </message>
    <message>
        <source>%1 in hoses, %2 in chambers</source>
        <translation>%1 in Schläuchen, %2 in Kammern</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Durchgang %1</translation>
    </message>
    <message>
        <source>drain %1, add %2 of %3: %4</source>
        <translation>%1 ablassen, %2 %3 zugeben: %4</translation>
    </message>
    <message>
        <source>antifreeze</source>
        <translation>Frostschutz</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Drained in all, to be disposed of</source>
        <translation>Insgesamt abgelassen, zu entsorgen</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Ablassen</translation>
    </message>
    <message>
        <source>Antifreeze to buy</source>
        <translation>Frostschutzmittel kaufen</translation>
    </message>
    <message>
        <source>Distilled water to buy</source>
        <translation>Destilliertes Wasser kaufen</translation>
    </message>
    <message>
        <source>System then holds</source>
        <translation>Anlage fasst dann</translation>
    </message>
    <message>
        <source>Coolant</source>
        <translation>Kühlmittel</translation>
    </message>
    <message>
        <source>figure</source>
        <translation>Zahl</translation>
    </message>
    <message>
        <source>Mixture now</source>
        <translation>Mischung jetzt</translation>
    </message>
    <message>
        <source>Mixture wanted</source>
        <translation>Mischung gewünscht</translation>
    </message>
    <message>
        <source>No share is wanted yet: nothing is planned.</source>
        <translation>Noch kein Anteil gewünscht: nichts ist geplant.</translation>
    </message>
    <message>
        <source>Mixture reached</source>
        <translation>Mischung erreicht</translation>
    </message>
    <message>
        <source>Least for the coldest ambient</source>
        <translation>Mindestens für die tiefste Umgebung</translation>
    </message>
    <message>
        <source>%1, with %2 to spare</source>
        <translation>%1, mit %2 Reserve</translation>
    </message>
    <message>
        <source>Not even %1 holds the coldest ambient with %2 to spare.</source>
        <translation>Nicht einmal %1 hält die tiefste Umgebung mit %2 Reserve.</translation>
    </message>
    <message>
        <source>The coldest ambient is not entered: no margin to freezing.</source>
        <translation>Die tiefste Umgebung ist nicht eingegeben: kein Abstand zum Gefrieren.</translation>
    </message>
    <message>
        <source>The whole system is not entered: radiator and cabin heater are not counted.</source>
        <translation>Die ganze Anlage ist nicht eingegeben: Kühler und Fahrerhausheizung zählen nicht mit.</translation>
    </message>
    <message>
        <source>Never mix kinds of antifreeze; low-silicate antifreeze, deionised or distilled water. At most %1 by volume.</source>
        <translation>Arten von Frostschutzmittel nie mischen; silikatarmes Frostschutzmittel, entionisiertes oder destilliertes Wasser. Höchstens %1 (Volumen).</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>Grenzwert</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>nicht eingegeben</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>▲ do not use it</source>
        <translation>▲ nicht verwenden</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>Limits: %1.</source>
        <translation>Grenzwerte: %1.</translation>
    </message>
    <message>
        <source>▲ %1</source>
        <translation>▲ %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>▲ %1 boils</source>
        <translation>▲ %1 siedet</translation>
    </message>
    <message>
        <source>▲ %1 trips</source>
        <translation>▲ %1 löst aus</translation>
    </message>
    <message>
        <source>▲ outlet over %1: too much for these hoses.</source>
        <translation>▲ Auslass über %1: zu viel für diese Schläuche.</translation>
    </message>
    <message>
        <source>Boils: the heater&apos;s chamber reaches the boiling point.</source>
        <translation>Siedet: die Kammer des Heizgeräts erreicht den Siedepunkt.</translation>
    </message>
    <message>
        <source>Trips: the cut-out opens.</source>
        <translation>Löst aus: der Temperaturbegrenzer öffnet.</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1 in all</source>
        <translation>%1 insgesamt</translation>
    </message>
    <message>
        <source>● %1</source>
        <translation>● %1</translation>
    </message>
    <message>
        <source>▲ over %1</source>
        <translation>▲ über %1</translation>
    </message>
    <message>
        <source>Heater</source>
        <translation>Heizgerät</translation>
    </message>
    <message>
        <source>To %1</source>
        <translation>Bis %1</translation>
    </message>
    <message>
        <source>Block, %1</source>
        <translation>Block, %1</translation>
    </message>
    <message>
        <source>On for</source>
        <translation>Laufzeit</translation>
    </message>
    <message>
        <source>Peak outlet</source>
        <translation>Auslass max.</translation>
    </message>
    <message>
        <source>A night</source>
        <translation>Eine Nacht</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>In the usual ambient, on the loops as drawn, thermostats and all; sizes are our own choice.</source>
        <translation>In der üblichen Umgebung, an den gezeichneten Kreisläufen, mit Thermostaten; die Größen sind unsere Festlegung.</translation>
    </message>
    <message>
        <source>No loop is closed yet: the engine as one lump, held where a usual thermostat would. Sizes are our own choice.</source>
        <translation>Noch ist kein Kreislauf geschlossen: der Motor als ein Klumpen, gehalten, wo ein üblicher Thermostat ihn hielte. Die Größen sind unsere Festlegung.</translation>
    </message>
    <message>
        <source>%1 is left out of the table: %2</source>
        <translation>%1 fehlt in der Tabelle: %2</translation>
    </message>
    <message>
        <source>● is what is drawn.</source>
        <translation>● ist das Gezeichnete.</translation>
    </message>
    <message>
        <source>Cost of a night: hours plugged in are not entered.</source>
        <translation>Kosten einer Nacht: eingesteckte Stunden sind nicht eingegeben.</translation>
    </message>
    <message>
        <source>Price of a kWh: not entered.</source>
        <translation>Preis je kWh: nicht eingegeben.</translation>
    </message>
    <message>
        <source>Costs in %1.</source>
        <translation>Kosten in %1.</translation>
    </message>
    <message>
        <source>Season: no nights are entered.</source>
        <translation>Saison: keine Nächte sind eingegeben.</translation>
    </message>
    <message>
        <source>Season: %1 nights.</source>
        <translation>Saison: %1 Nächte.</translation>
    </message>
    <message>
        <source>– %1</source>
        <translation>– %1</translation>
    </message>
    <message>
        <source>▲ %1 too little</source>
        <translation>▲ %1 zu wenig</translation>
    </message>
    <message>
        <source>nothing is needed</source>
        <translation>nichts ist nötig</translation>
    </message>
    <message>
        <source>%1 over, %2</source>
        <translation>%1 mehr, %2</translation>
    </message>
    <message>
        <source>To hold %1</source>
        <translation>Zum Halten von %1</translation>
    </message>
    <message>
        <source>nothing: the air is as warm</source>
        <translation>nichts: die Luft ist so warm</translation>
    </message>
    <message>
        <source>as the heat loss may be</source>
        <translation>je nach Wärmeverlust</translation>
    </message>
    <message>
        <source>With the engine&apos;s heat loss at either end of what is assumed of it</source>
        <translation>Mit dem Wärmeverlust des Motors an beiden Enden dessen, was dafür angenommen ist</translation>
    </message>
    <message>
        <source>of it the engine</source>
        <translation>davon der Motor</translation>
    </message>
    <message>
        <source>of it hoses and chambers</source>
        <translation>davon Schläuche und Kammern</translation>
    </message>
    <message>
        <source>not drawn</source>
        <translation>nicht gezeichnet</translation>
    </message>
    <message>
        <source>To reach it in %1</source>
        <translation>Zum Erreichen in %1</translation>
    </message>
    <message>
        <source>To reach it</source>
        <translation>Zum Erreichen</translation>
    </message>
    <message>
        <source>time allowed: not entered</source>
        <translation>erlaubte Zeit: nicht eingegeben</translation>
    </message>
    <message>
        <source>no heater drawn</source>
        <translation>kein Heizgerät gezeichnet</translation>
    </message>
    <message>
        <source>power: not entered</source>
        <translation>Leistung: nicht eingegeben</translation>
    </message>
    <message>
        <source>Heaters as drawn</source>
        <translation>Heizgeräte wie gezeichnet</translation>
    </message>
    <message>
        <source>margin to hold</source>
        <translation>Reserve zum Halten</translation>
    </message>
    <message>
        <source>margin to reach in time</source>
        <translation>Reserve zum rechtzeitigen Erreichen</translation>
    </message>
    <message>
        <source>%1 for %2 of displacement is %3 W a litre; %4 to %5 W a litre is common practice for diesel engines (no published source, from memory).</source>
        <translation>%1 für %2 Hubraum sind %3 W je Liter; %4 bis %5 W je Liter sind gängige Praxis für Dieselmotoren (keine veröffentlichte Quelle, aus dem Gedächtnis).</translation>
    </message>
    <message>
        <source>Estimated from the engine&apos;s mass, coolant and outline as one lump of heat, thermostats left out.</source>
        <translation>Geschätzt aus Masse, Kühlmittel und Umriss des Motors als ein Wärmeklumpen, ohne Thermostate.</translation>
    </message>
    <message>
        <source>No loop is closed yet: hoses and chambers are not counted.</source>
        <translation>Noch ist kein Kreislauf geschlossen: Schläuche und Kammern zählen nicht mit.</translation>
    </message>
    <message>
        <source>As drawn a loop does not circulate: the figures suppose that it will.</source>
        <translation>Wie gezeichnet zirkuliert ein Kreislauf nicht: die Zahlen setzen voraus, dass er es tun wird.</translation>
    </message>
    <message>
        <source>Wind is not entered: still air.</source>
        <translation>Der Wind ist nicht eingegeben: windstill.</translation>
    </message>
    <message>
        <source>Power needed</source>
        <translation>Nötige Leistung</translation>
    </message>
    <message>
        <source>usual, %1</source>
        <translation>übliche, %1</translation>
    </message>
    <message>
        <source>coldest, %1</source>
        <translation>tiefste, %1</translation>
    </message>
    <message>
        <source>The coldest ambient is not entered.</source>
        <translation>Die tiefste Umgebung ist nicht eingegeben.</translation>
    </message>
    <message>
        <source>Conductor at %1</source>
        <translation>Leiter bei %1</translation>
    </message>
    <message>
        <source>NEC chapter 9, table 8</source>
        <translation>NEC Kapitel 9, Tabelle 8</translation>
    </message>
    <message>
        <source>IEC 60228, classes 1 and 2; flexible cord has up to 10 % more</source>
        <translation>IEC 60228, Klassen 1 und 2; flexible Leitung hat bis zu 10 % mehr</translation>
    </message>
    <message>
        <source>Voltage drop</source>
        <translation>Spannungsfall</translation>
    </message>
    <message>
        <source>not computed</source>
        <translation>nicht berechnet</translation>
    </message>
    <message>
        <source>Left at the heater</source>
        <translation>Bleibt am Heizgerät</translation>
    </message>
    <message>
        <source>No heater is drawn.</source>
        <translation>Kein Heizgerät ist gezeichnet.</translation>
    </message>
    <message>
        <source>Electrical load</source>
        <translation>Elektrische Last</translation>
    </message>
    <message>
        <source>All heaters</source>
        <translation>Alle Heizgeräte</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>Power over √3 times the voltage</source>
        <translation>Leistung durch √3 mal Spannung</translation>
    </message>
    <message>
        <source>Power over voltage</source>
        <translation>Leistung durch Spannung</translation>
    </message>
    <message>
        <source>Continuous load, 125 %</source>
        <translation>Dauerlast, 125 %</translation>
    </message>
    <message>
        <source>A load figure after NEC 210.20(A) and 215.3</source>
        <translation>Eine Lastangabe nach NEC 210.20(A) und 215.3</translation>
    </message>
    <message>
        <source>Over %1 in all, consider a heater with a pump (our own limit).</source>
        <translation>Über %1 insgesamt ein Heizgerät mit Pumpe in Betracht ziehen (unsere Grenze).</translation>
    </message>
</context>
<context>
    <name>siphonwright::sizing::SeasonEdit</name>
    <message>
        <source>Nights of a season</source>
        <translation>Nächte einer Saison</translation>
    </message>
    <message>
        <source>Add nights</source>
        <translation>Nächte hinzu</translation>
    </message>
    <message>
        <source>Try a season (invented)</source>
        <translation>Saison probieren (erfunden)</translation>
    </message>
    <message>
        <source>150 nights from -30 to 0 °C: invented, no weather record</source>
        <translation>150 Nächte von -30 bis 0 °C: erfunden, keine Wetteraufzeichnung</translation>
    </message>
    <message>
        <source>Try an invented season</source>
        <translation>Eine erfundene Saison probieren</translation>
    </message>
    <message>
        <source>Change nights</source>
        <translation>Nächte ändern</translation>
    </message>
    <message>
        <source>Temperature of the nights</source>
        <translation>Temperatur der Nächte</translation>
    </message>
    <message>
        <source>How many nights</source>
        <translation>Wie viele Nächte</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove nights</source>
        <translation>Nächte entfernen</translation>
    </message>
    <message>
        <source>nights at</source>
        <translation>Nächte bei</translation>
    </message>
    <message>
        <source>none entered</source>
        <translation>keine eingegeben</translation>
    </message>
    <message>
        <source>%1 nights in all</source>
        <translation>%1 Nächte insgesamt</translation>
    </message>
</context>
<context>
    <name>siphonwright::sizing::SizingPanel</name>
    <message>
        <source>Power needed</source>
        <translation>Nötige Leistung</translation>
    </message>
    <message>
        <source>By heater power</source>
        <translation>Nach Heizleistung</translation>
    </message>
    <message>
        <source>Electrical load</source>
        <translation>Elektrische Last</translation>
    </message>
    <message>
        <source>Coolant</source>
        <translation>Kühlmittel</translation>
    </message>
    <message>
        <source>Water to mix with</source>
        <translation>Wasser zum Mischen</translation>
    </message>
    <message>
        <source>Subject</source>
        <translation>Thema</translation>
    </message>
    <message>
        <source>Heater size</source>
        <translation>Heizgerätegröße</translation>
    </message>
    <message>
        <source>Electrical supply</source>
        <translation>Elektrische Versorgung</translation>
    </message>
    <message>
        <source>Load figures only. A licensed electrician and the local electrical code decide on circuit, conductors, protection and grounding; the heater&apos;s manual rules. Disconnect and lock out before any work.</source>
        <translation>Nur Lastangaben. Elektrofachkraft und örtliche Elektrovorschriften entscheiden über Stromkreis, Leiter, Schutz und Erdung; das Handbuch des Heizgeräts geht vor. Vor jeder Arbeit spannungsfrei schalten und sichern.</translation>
    </message>
    <message>
        <source>Antifreeze is poisonous: catch and dispose of it properly. Open the cap only cold.</source>
        <translation>Frostschutzmittel ist giftig: auffangen und fachgerecht entsorgen. Deckel nur kalt öffnen.</translation>
    </message>
    <message>
        <source>Being computed; the table is of the drawing as it was.</source>
        <translation>Wird berechnet; die Tabelle gilt für die Zeichnung, wie sie war.</translation>
    </message>
    <message>
        <source>The table by heater power is being computed.</source>
        <translation>Die Tabelle nach Heizleistung wird berechnet.</translation>
    </message>
</context>
<context>
    <name>siphonwright::survey</name>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Survey before a coolant heater is drawn</source>
        <translation>Aufmaß, bevor ein Kühlmittel-Heizgerät gezeichnet wird</translation>
    </message>
    <message>
        <source>Vehicle or set</source>
        <translation>Fahrzeug oder Aggregat</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>How to measure</source>
        <translation>So wird gemessen</translation>
    </message>
    <message>
        <source>Heights: tape held plumb, from the frame rail&apos;s upper edge (under it: minus) or from the floor. Tick which.</source>
        <translation>Höhen: Bandmaß lotrecht gehalten, ab Oberkante Rahmenträger (darunter: minus) oder ab Boden. Ankreuzen, welches.</translation>
    </message>
    <message>
        <source>Station: along the frame rail from the block&apos;s front face, + to the engine&apos;s rear. Across: out from the crankshaft, + to the engine&apos;s right side.</source>
        <translation>Längsmaß: entlang des Rahmenträgers ab Blockvorderseite, + zur Motorrückseite. Quermaß: ab Kurbelwelle nach außen, + zur rechten Motorseite.</translation>
    </message>
    <message>
        <source>Slopes: inclinometer along the engine, in ° or %; + is higher at the engine&apos;s front.</source>
        <translation>Neigungen: Neigungsmesser längs des Motors, in ° oder %; + heißt zur Motorvorderseite hin höher.</translation>
    </message>
    <message>
        <source>What was not measured stays empty: an empty place is asked for again, a guess is not.</source>
        <translation>Was nicht gemessen wurde, bleibt leer: nach einer leeren Stelle wird wieder gefragt, nach einer Schätzung nicht.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Sicherheitshinweise</translation>
    </message>
    <message>
        <source>Engine cold: open the cap only cold. Hot surfaces; belts and fan may start.</source>
        <translation>Motor kalt: Deckel nur kalt öffnen. Heiße Oberflächen; Riemen und Lüfter können anlaufen.</translation>
    </message>
    <message>
        <source>Wheels chocked, air suspension blocked, automatic start inhibited, key out. Never under an unsupported vehicle.</source>
        <translation>Räder mit Keilen gesichert, Luftfederung blockiert, Automatikstart gesperrt, Schlüssel abgezogen. Nie unter ein nicht abgestütztes Fahrzeug.</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Measured from</source>
        <translation>Gemessen ab</translation>
    </message>
    <message>
        <source>Height, %1</source>
        <translation>Höhe, %1</translation>
    </message>
    <message>
        <source>Station, %1</source>
        <translation>Längs, %1</translation>
    </message>
    <message>
        <source>Across, %1</source>
        <translation>Quer, %1</translation>
    </message>
    <message>
        <source>rail</source>
        <translation>Träger</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>Supply port</source>
        <translation>Vorlaufanschluss</translation>
    </message>
    <message>
        <source>Return port</source>
        <translation>Rücklaufanschluss</translation>
    </message>
    <message>
        <source>drain port</source>
        <translation>Ablassanschluss</translation>
    </message>
    <message>
        <source>core plug</source>
        <translation>Froststopfen</translation>
    </message>
    <message>
        <source>lower hose tee</source>
        <translation>T-Stück unten</translation>
    </message>
    <message>
        <source>head port</source>
        <translation>Kopfanschluss</translation>
    </message>
    <message>
        <source>cabin line</source>
        <translation>Heizungsleitung</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Gewinde</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Innen-Ø</translation>
    </message>
    <message>
        <source>Points to</source>
        <translation>Zeigt nach</translation>
    </message>
    <message>
        <source>front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>rear</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>up</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>down</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>tilt</source>
        <translation>Kippung</translation>
    </message>
    <message>
        <source>Engine&apos;s thermostat on the</source>
        <translation>Motorthermostat auf der</translation>
    </message>
    <message>
        <source>outlet side</source>
        <translation>Austrittsseite</translation>
    </message>
    <message>
        <source>inlet side</source>
        <translation>Eintrittsseite</translation>
    </message>
    <message>
        <source>Supply voltage at the bay</source>
        <translation>Versorgungsspannung am Stellplatz</translation>
    </message>
    <message>
        <source>V</source>
        <translation>V</translation>
    </message>
    <message>
        <source>Coolant in it now</source>
        <translation>Jetziges Kühlmittel</translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation>Ethylenglykol</translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation>Propylenglykol</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>% by volume</source>
        <translation>Vol.-%</translation>
    </message>
    <message>
        <source>colour</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>What is hot or moves nearby; notes</source>
        <translation>Was in der Nähe heiß ist oder sich bewegt; Notizen</translation>
    </message>
    <message>
        <source>The engine&apos;s and the heater&apos;s own manuals rule over this form.</source>
        <translation>Die Handbücher von Motor und Heizgerät gehen diesem Formular vor.</translation>
    </message>
    <message>
        <source>Survey form</source>
        <translation>Aufmaßblatt</translation>
    </message>
    <message>
        <source>%1: the form could not be drawn.</source>
        <translation>%1: das Aufmaßblatt konnte nicht gezeichnet werden.</translation>
    </message>
</context>
<context>
    <name>siphonwright::survey::LetterGrid</name>
    <message>
        <source>not drawn</source>
        <translation>nicht gezeichnet</translation>
    </message>
    <message>
        <source>from the floor only with L</source>
        <translation>ab Boden nur mit L</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Measured from</source>
        <translation>Gemessen ab</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Längs</translation>
    </message>
    <message>
        <source>Across</source>
        <translation>Quer</translation>
    </message>
    <message>
        <source>Drawn: height, station, across</source>
        <translation>Gezeichnet: Höhe, längs, quer</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Survey, %1</source>
        <translation>Aufmaß, %1</translation>
    </message>
    <message>
        <source>frame rail</source>
        <translation>Rahmenträger</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>%1: measured from</source>
        <translation>%1: gemessen ab</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>Grad</translation>
    </message>
    <message>
        <source>percent</source>
        <translation>Prozent</translation>
    </message>
    <message>
        <source>%1: typed in</source>
        <translation>%1: eingegeben in</translation>
    </message>
</context>
<context>
    <name>siphonwright::survey::SurveyText</name>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>drain port</source>
        <translation>Ablassanschluss</translation>
    </message>
    <message>
        <source>core plug</source>
        <translation>Froststopfen</translation>
    </message>
    <message>
        <source>lower hose tee</source>
        <translation>T-Stück unten</translation>
    </message>
    <message>
        <source>head or manifold port</source>
        <translation>Anschluss an Kopf oder Sammler</translation>
    </message>
    <message>
        <source>cabin heater line</source>
        <translation>Leitung der Fahrerhausheizung</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Gewinde</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Innen-Ø</translation>
    </message>
    <message>
        <source>Points to</source>
        <translation>Zeigt nach</translation>
    </message>
    <message>
        <source>front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>rear</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>left side</source>
        <translation>linke Seite</translation>
    </message>
    <message>
        <source>right side</source>
        <translation>rechte Seite</translation>
    </message>
    <message>
        <source>up</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>down</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>Tilted up by</source>
        <translation>Gekippt um</translation>
    </message>
    <message>
        <source>Measured by</source>
        <translation>Gemessen von</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Supply port</source>
        <translation>Vorlaufanschluss</translation>
    </message>
    <message>
        <source>Return port</source>
        <translation>Rücklaufanschluss</translation>
    </message>
    <message>
        <source>Engine and bay</source>
        <translation>Motor und Einbauraum</translation>
    </message>
    <message>
        <source>Thermostat on the</source>
        <translation>Thermostat auf der</translation>
    </message>
    <message>
        <source>outlet side</source>
        <translation>Austrittsseite</translation>
    </message>
    <message>
        <source>inlet side</source>
        <translation>Eintrittsseite</translation>
    </message>
    <message>
        <source>Supply voltage</source>
        <translation>Versorgungsspannung</translation>
    </message>
    <message>
        <source>Antifreeze in it now</source>
        <translation>Jetziges Frostschutzmittel</translation>
    </message>
    <message>
        <source>none, plain water</source>
        <translation>keiner, reines Wasser</translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation>Ethylenglykol</translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation>Propylenglykol</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>By volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
</context>
<context>
    <name>siphonwright::survey::SurveyWindow</name>
    <message>
        <source>Where the letters are on an engine in its frame</source>
        <translation>Wo die Buchstaben an einem Motor in seinem Rahmen liegen</translation>
    </message>
    <message>
        <source>Draw the engine from these</source>
        <translation>Motor daraus zeichnen</translation>
    </message>
    <message>
        <source>Survey</source>
        <translation>Aufmaß</translation>
    </message>
    <message>
        <source>What was not measured</source>
        <translation>Was nicht gemessen wurde</translation>
    </message>
    <message>
        <source>Make or update engine, tank and ports; one step to undo</source>
        <translation>Motor, Behälter und Anschlüsse anlegen oder ändern; ein Schritt zum Rückgängigmachen</translation>
    </message>
    <message>
        <source>Blank form as PDF…</source>
        <translation>Leeres Blatt als PDF…</translation>
    </message>
    <message>
        <source>Print blank form…</source>
        <translation>Leeres Blatt drucken…</translation>
    </message>
    <message>
        <source>Stays typical or not known</source>
        <translation>Bleibt typisch oder nicht bekannt</translation>
    </message>
    <message>
        <source>Draw the engine from the survey</source>
        <translation>Den Motor aus dem Aufmaß zeichnen</translation>
    </message>
    <message>
        <source>There is no engine yet: an in-line 6 of typical shape will be drawn. For another, insert it first.</source>
        <translation>Es gibt noch keinen Motor: ein Reihen-Sechszylinder typischer Form wird gezeichnet. Für einen anderen fügen Sie ihn zuerst ein.</translation>
    </message>
</context>
<context>
    <name>siphonwright::warming</name>
    <message>
        <source>at %1</source>
        <translation>bei %1</translation>
    </message>
    <message>
        <source>before</source>
        <translation>vorher</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>Ziel %1</translation>
    </message>
    <message>
        <source>outlet&apos;s limit %1</source>
        <translation>Auslass-Grenzwert %1</translation>
    </message>
    <message>
        <source>peak, 9 of 10 cases</source>
        <translation>Spitze, 9 von 10 Fällen</translation>
    </message>
    <message>
        <source>target reached, where it is</source>
        <translation>Ziel erreicht, sofern erreicht</translation>
    </message>
    <message>
        <source>target reached, 9 of 10 cases</source>
        <translation>Ziel erreicht, 9 von 10 Fällen</translation>
    </message>
    <message>
        <source>▲ %1, over %2</source>
        <translation>▲ %1, über %2</translation>
    </message>
    <message>
        <source>▲ %1, does not run forward</source>
        <translation>▲ %1, läuft nicht vorwärts</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>after %1</source>
        <translation>nach %1</translation>
    </message>
    <message>
        <source>▲ not in %1</source>
        <translation>▲ nicht in %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Warm-up: %1</source>
        <translation>Aufheizen: %1</translation>
    </message>
    <message>
        <source>%1: a warm-up is written as .csv, .png or .svg.</source>
        <translation>%1: ein Aufheizen wird als .csv, .png oder .svg geschrieben.</translation>
    </message>
    <message>
        <source>%1: the warm-up could not be written.</source>
        <translation>%1: das Aufheizen konnte nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>outlet</source>
        <translation>Auslass</translation>
    </message>
    <message>
        <source>inlet</source>
        <translation>Einlass</translation>
    </message>
    <message>
        <source>return at port</source>
        <translation>Rücklauf am Anschluss</translation>
    </message>
    <message>
        <source>hose outside</source>
        <translation>Schlauch außen</translation>
    </message>
    <message>
        <source>block</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>Durchfluss</translation>
    </message>
    <message>
        <source>power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>No warm-up: at the start the coolant would be slush.</source>
        <translation>Kein Aufheizen: beim Start wäre das Kühlmittel Eisbrei.</translation>
    </message>
    <message>
        <source>No warm-up: %1.</source>
        <translation>Kein Aufheizen: %1.</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source> (%1–%2)</source>
        <translation> (%1–%2)</translation>
    </message>
    <message>
        <source>never on</source>
        <translation>nie ein</translation>
    </message>
    <message>
        <source>peak %1</source>
        <translation>Spitze %1</translation>
    </message>
    <message>
        <source>, over %1</source>
        <translation>, über %1</translation>
    </message>
    <message>
        <source>, may exceed %1</source>
        <translation>, evtl. über %1</translation>
    </message>
    <message>
        <source>1 cycle an hour</source>
        <translation>1 Schaltspiel je Stunde</translation>
    </message>
    <message>
        <source>%1 cycles an hour</source>
        <translation>%1 Schaltspiele je Stunde</translation>
    </message>
    <message>
        <source>, reached in fewer than 1 of 10 cases</source>
        <translation>, in weniger als 1 von 10 Fällen erreicht</translation>
    </message>
    <message>
        <source>, reached in %1 of 10 cases</source>
        <translation>, in %1 von 10 Fällen erreicht</translation>
    </message>
    <message>
        <source>%1 just not reached in %2</source>
        <translation>%1 in %2 knapp nicht erreicht</translation>
    </message>
    <message>
        <source>%1 not reached in %2 (%3 then)</source>
        <translation>%1 in %2 nicht erreicht (dann %3)</translation>
    </message>
    <message>
        <source>%1 after %2</source>
        <translation>%1 nach %2</translation>
    </message>
    <message>
        <source>, may not be reached</source>
        <translation>, evtl. nicht erreicht</translation>
    </message>
    <message>
        <source>%1 kWh</source>
        <translation>%1 kWh</translation>
    </message>
    <message>
        <source>return warm after %1</source>
        <translation>Rücklauf warm nach %1</translation>
    </message>
    <message>
        <source>return never warm</source>
        <translation>Rücklauf nie warm</translation>
    </message>
    <message>
        <source>cut-out trips after %1</source>
        <translation>Begrenzer löst aus nach %1</translation>
    </message>
    <message>
        <source>boils after %1</source>
        <translation>siedet nach %1</translation>
    </message>
    <message>
        <source>on the edge of stalling</source>
        <translation>fast am Stillstand</translation>
    </message>
    <message>
        <source>Hangs most on: %1</source>
        <translation>Hängt am meisten ab von: %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>siphonwright::warming::BoreTable</name>
    <message>
        <source>Hose bore</source>
        <translation>Schlauch-Ø</translation>
    </message>
    <message>
        <source>Flow, warm</source>
        <translation>Durchfluss, warm</translation>
    </message>
    <message>
        <source>Outlet, warm</source>
        <translation>Auslass, warm</translation>
    </message>
    <message>
        <source>Peak outlet</source>
        <translation>Auslass max.</translation>
    </message>
    <message>
        <source>Cycles an hour</source>
        <translation>Schaltspiele/h</translation>
    </message>
    <message>
        <source>Target reached</source>
        <translation>Ziel erreicht</translation>
    </message>
    <message>
        <source>Use this bore</source>
        <translation>Innen-Ø nehmen</translation>
    </message>
    <message>
        <source>By bore of hose</source>
        <translation>Nach Schlauch-Innen-Ø</translation>
    </message>
    <message>
        <source>Put every hose on the selected bore, hose ends and in-line parts in proportion</source>
        <translation>Jeden Schlauch auf den ausgewählten Innendurchmesser setzen, Schlauchtüllen und Einbauteile im Verhältnis</translation>
    </message>
    <message>
        <source>The table comes when a loop can be computed.</source>
        <translation>Die Tabelle kommt, sobald ein Kreislauf berechnet werden kann.</translation>
    </message>
    <message>
        <source>Every hose on one bore, hose ends and in-line parts with it</source>
        <translation>Jeder Schlauch mit einem Innendurchmesser, samt Schlauchtüllen und Einbauteilen</translation>
    </message>
    <message>
        <source>of the drawing as it was</source>
        <translation>der Zeichnung, wie sie war</translation>
    </message>
    <message>
        <source>● %1, as drawn</source>
        <translation>● %1, wie gezeichnet</translation>
    </message>
    <message>
        <source>Double-click to use this bore</source>
        <translation>Doppelklick, um diesen Innendurchmesser zu nehmen</translation>
    </message>
    <message>
        <source>Use hose of %1</source>
        <translation>Schlauch mit %1 verwenden</translation>
    </message>
</context>
<context>
    <name>siphonwright::warming::ChartView</name>
    <message>
        <source>Warm-up over time; left and right read the values</source>
        <translation>Aufheizen über die Zeit; links und rechts lesen die Werte</translation>
    </message>
    <message>
        <source>of the drawing as it was</source>
        <translation>der Zeichnung, wie sie war</translation>
    </message>
</context>
<context>
    <name>siphonwright::warming::GradeTable</name>
    <message>
        <source>Nose up %1</source>
        <translation>Front hoch %1</translation>
    </message>
    <message>
        <source>Nose down %1</source>
        <translation>Front tief %1</translation>
    </message>
    <message>
        <source>Right side up %1</source>
        <translation>Rechts hoch %1</translation>
    </message>
    <message>
        <source>Left side up %1</source>
        <translation>Links hoch %1</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Eben</translation>
    </message>
    <message>
        <source>Parked</source>
        <translation>Geparkt</translation>
    </message>
    <message>
        <source>Flow, warm</source>
        <translation>Durchfluss, warm</translation>
    </message>
    <message>
        <source>Outlet, warm</source>
        <translation>Auslass, warm</translation>
    </message>
    <message>
        <source>Peak outlet</source>
        <translation>Auslass max.</translation>
    </message>
    <message>
        <source>Cycles an hour</source>
        <translation>Schaltspiele/h</translation>
    </message>
    <message>
        <source>Target reached</source>
        <translation>Ziel erreicht</translation>
    </message>
    <message>
        <source>On grades</source>
        <translation>Nach Neigung</translation>
    </message>
    <message>
        <source>The table comes when a warm-up can be computed.</source>
        <translation>Die Tabelle kommt, sobald ein Aufheizen berechnet werden kann.</translation>
    </message>
    <message>
        <source>Filled and turned on where it is parked, at the ends of the grades judged</source>
        <translation>Gefüllt und eingeschaltet, wo geparkt, an den Enden der beurteilten Neigungen</translation>
    </message>
    <message>
        <source>of the drawing as it was</source>
        <translation>der Zeichnung, wie sie war</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>Double-click to see the drawing parked like this</source>
        <translation>Doppelklick, um die Zeichnung so geparkt zu sehen</translation>
    </message>
</context>
<context>
    <name>siphonwright::warming::PlanForm</name>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Temperature of the air around the engine</source>
        <translation>Temperatur der Luft um den Motor</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>Speed of the wind; nothing entered counts as still air</source>
        <translation>Windgeschwindigkeit; nichts eingegeben zählt als windstill</translation>
    </message>
    <message>
        <source>still</source>
        <translation>windstill</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Of engine and coolant; nothing entered: as cold as the air</source>
        <translation>Von Motor und Kühlmittel; nichts eingegeben: so kalt wie die Luft</translation>
    </message>
    <message>
        <source>as the air</source>
        <translation>wie die Luft</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>Wanted temperature of the engine block</source>
        <translation>Gewünschte Temperatur des Motorblocks</translation>
    </message>
    <message>
        <source>Over</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>How long the warm-up is followed</source>
        <translation>Wie lange das Aufheizen verfolgt wird</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>Ändern: %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::warming::WarmUpPanel</name>
    <message>
        <source>Heater</source>
        <translation>Heizgerät</translation>
    </message>
    <message>
        <source>Whose warm-up is shown</source>
        <translation>Wessen Aufheizen gezeigt wird</translation>
    </message>
    <message>
        <source>Keep this curve</source>
        <translation>Kurve behalten</translation>
    </message>
    <message>
        <source>Kept</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Take kept curves away</source>
        <translation>Behaltene Kurven entfernen</translation>
    </message>
    <message>
        <source>Export…</source>
        <translation>Exportieren…</translation>
    </message>
    <message>
        <source>Write the warm-up as CSV, PNG or SVG</source>
        <translation>Aufheizen als CSV, PNG oder SVG schreiben</translation>
    </message>
    <message>
        <source> · %1</source>
        <translation> · %1</translation>
    </message>
    <message>
        <source>Of the drawing as it was: %1</source>
        <translation>Der Zeichnung, wie sie war: %1</translation>
    </message>
    <message>
        <source> · bands follow</source>
        <translation> · Bänder folgen</translation>
    </message>
    <message>
        <source>The warm-up appears when a loop with a heater is drawn.</source>
        <translation>Das Aufheizen erscheint, sobald ein Kreislauf mit Heizgerät gezeichnet ist.</translation>
    </message>
    <message>
        <source>The warm-up is being computed.</source>
        <translation>Das Aufheizen wird berechnet.</translation>
    </message>
    <message>
        <source>Lay the curves as they are now under those to come</source>
        <translation>Die jetzigen Kurven unter die kommenden legen</translation>
    </message>
    <message>
        <source>Three are kept: take one away first</source>
        <translation>Drei sind behalten: zuerst eine entfernen</translation>
    </message>
    <message>
        <source>never on</source>
        <translation>nie ein</translation>
    </message>
    <message>
        <source>Take away %1, peak %2</source>
        <translation>%1 entfernen, Spitze %2</translation>
    </message>
    <message>
        <source>Take all away</source>
        <translation>Alle entfernen</translation>
    </message>
    <message>
        <source>There is no warm-up to write.</source>
        <translation>Es gibt kein Aufheizen zu schreiben.</translation>
    </message>
</context>
</TS>
