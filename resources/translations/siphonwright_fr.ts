<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>Actions</name>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Nouveau</translation>
    </message>
    <message>
        <source>Start an empty drawing</source>
        <translation>Commencer un dessin vide</translation>
    </message>
    <message>
        <source>New from &amp;template…</source>
        <translation>Nouveau depuis un &amp;modèle…</translation>
    </message>
    <message>
        <source>Choose an engine by its picture and start a drawing with it</source>
        <translation>Choisir un moteur d&apos;après son image et commencer un dessin avec lui</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Ouvrir…</translation>
    </message>
    <message>
        <source>Open a sketch file</source>
        <translation>Ouvrir un fichier de dessin</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Enregistrer</translation>
    </message>
    <message>
        <source>Save the sketch</source>
        <translation>Enregistrer le dessin</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Enregistrer &amp;sous…</translation>
    </message>
    <message>
        <source>Save the sketch under another name</source>
        <translation>Enregistrer le dessin sous un autre nom</translation>
    </message>
    <message>
        <source>&amp;Export sheet…</source>
        <translation>E&amp;xporter la feuille…</translation>
    </message>
    <message>
        <source>Write the sheet as PDF, SVG or PNG</source>
        <translation>Écrire la feuille en PDF, SVG ou PNG</translation>
    </message>
    <message>
        <source>Export &amp;warm-up…</source>
        <translation>E&amp;xporter la chauffe…</translation>
    </message>
    <message>
        <source>Write the warm-up as CSV, PNG or SVG</source>
        <translation>Écrire la chauffe en CSV, PNG ou SVG</translation>
    </message>
    <message>
        <source>Print pre&amp;view…</source>
        <translation>Aperçu a&amp;vant impression…</translation>
    </message>
    <message>
        <source>See the sheet as it will be printed</source>
        <translation>Voir la feuille telle qu&apos;elle sera imprimée</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Imprimer…</translation>
    </message>
    <message>
        <source>Print the sheet at true scale</source>
        <translation>Imprimer la feuille à l&apos;échelle exacte</translation>
    </message>
    <message>
        <source>Sheet in &amp;colour</source>
        <translation>Feuille en co&amp;uleur</translation>
    </message>
    <message>
        <source>Print and export in colour instead of black and white</source>
        <translation>Imprimer et exporter en couleur au lieu du noir et blanc</translation>
    </message>
    <message>
        <source>Parts &amp;list behind the sheet</source>
        <translation>&amp;Liste des pièces à la suite</translation>
    </message>
    <message>
        <source>Print and export the parts list and the cuts on pages after the drawing</source>
        <translation>Imprimer et exporter la liste des pièces et les coupes sur des pages après le dessin</translation>
    </message>
    <message>
        <source>Student sheet: no &amp;findings</source>
        <translation>&amp;Feuille d&apos;élève&#xa0;: sans constats</translation>
    </message>
    <message>
        <source>Print and export without findings, pockets and margins, with lines for answers; off: the answer sheet</source>
        <translation>Imprimer et exporter sans constats, poches ni marges, avec des lignes pour les réponses&#xa0;; désactivé&#xa0;: le corrigé</translation>
    </message>
    <message>
        <source>P&amp;hoto on the sheet</source>
        <translation>P&amp;hoto sur la feuille</translation>
    </message>
    <message>
        <source>Print and export the photo under the drawing too, as faded as on the screen</source>
        <translation>Imprimer et exporter aussi la photo sous le dessin, aussi estompée qu&apos;à l&apos;écran</translation>
    </message>
    <message>
        <source>&amp;Blank survey form…</source>
        <translation>Fiche de relevé &amp;vierge…</translation>
    </message>
    <message>
        <source>A page to be filled in with a pen at the vehicle, as PDF</source>
        <translation>Une page à remplir au stylo près du véhicule, en PDF</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Quitter</translation>
    </message>
    <message>
        <source>Close the program</source>
        <translation>Fermer le programme</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>Co&amp;uper</translation>
    </message>
    <message>
        <source>Take what is selected away, to be put down elsewhere</source>
        <translation>Retirer la sélection pour la poser ailleurs</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Copier</translation>
    </message>
    <message>
        <source>Take a copy of what is selected, for this or another window</source>
        <translation>Copier la sélection, pour cette fenêtre ou une autre</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>C&amp;oller</translation>
    </message>
    <message>
        <source>Put parts down where the pointer is, else beside what is there</source>
        <translation>Poser les pièces au pointeur, sinon à côté de ce qui est là</translation>
    </message>
    <message>
        <source>D&amp;uplicate</source>
        <translation>&amp;Dupliquer</translation>
    </message>
    <message>
        <source>Put what is selected down once more, beside it</source>
        <translation>Poser la sélection une seconde fois, à côté</translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation>&amp;Supprimer</translation>
    </message>
    <message>
        <source>Remove what is selected</source>
        <translation>Enlever la sélection</translation>
    </message>
    <message>
        <source>Select &amp;all</source>
        <translation>&amp;Tout sélectionner</translation>
    </message>
    <message>
        <source>Select every part of the drawing</source>
        <translation>Sélectionner toutes les pièces du dessin</translation>
    </message>
    <message>
        <source>&amp;Keep selected</source>
        <translation>Garder la sé&amp;lection</translation>
    </message>
    <message>
        <source>Keep the part selected while Tab goes on to the next; again: no longer</source>
        <translation>Garder la pièce sélectionnée pendant que Tab passe à la suivante&#xa0;; de nouveau&#xa0;: ne plus la garder</translation>
    </message>
    <message>
        <source>&amp;Find by name…</source>
        <translation>Rec&amp;hercher par nom…</translation>
    </message>
    <message>
        <source>Find a part of the drawing by its name</source>
        <translation>Rechercher une pièce du dessin par son nom</translation>
    </message>
    <message>
        <source>&amp;Go to the drawing</source>
        <translation>All&amp;er au dessin</translation>
    </message>
    <message>
        <source>Put the keyboard on the elevation, from wherever it is</source>
        <translation>Placer le clavier sur l&apos;élévation, où qu&apos;il soit</translation>
    </message>
    <message>
        <source>Detai&amp;ls</source>
        <translation>Détai&amp;ls</translation>
    </message>
    <message>
        <source>Show and change what is known of the selected part (Enter on the drawing)</source>
        <translation>Afficher et modifier ce qui est connu de la pièce sélectionnée (Entrée sur le dessin)</translation>
    </message>
    <message>
        <source>Re&amp;name</source>
        <translation>Re&amp;nommer</translation>
    </message>
    <message>
        <source>Go to the name of the selected part</source>
        <translation>Aller au nom de la pièce sélectionnée</translation>
    </message>
    <message>
        <source>Go to its c&amp;orners</source>
        <translation>Aller au&amp;x coins</translation>
    </message>
    <message>
        <source>Select the first corner of the outline; Tab goes from corner to corner, Escape back</source>
        <translation>Sélectionner le premier coin du contour&#xa0;; Tab va de coin en coin, Échap revient</translation>
    </message>
    <message>
        <source>Add a &amp;point here</source>
        <translation>Ajouter un &amp;point ici</translation>
    </message>
    <message>
        <source>Add a point to the hose, or a corner to the outline</source>
        <translation>Ajouter un point à la durite, ou un coin au contour</translation>
    </message>
    <message>
        <source>Add a &amp;valve here</source>
        <translation>Ajouter une &amp;vanne ici</translation>
    </message>
    <message>
        <source>Put an isolation valve into the hose</source>
        <translation>Mettre une vanne d&apos;isolement dans la durite</translation>
    </message>
    <message>
        <source>Add a &amp;bleed here</source>
        <translation>Ajouter un purg&amp;eur ici</translation>
    </message>
    <message>
        <source>Put a bleed point into the hose</source>
        <translation>Mettre un point de purge dans la durite</translation>
    </message>
    <message>
        <source>Add a cl&amp;ip here</source>
        <translation>A&amp;jouter un collier ici</translation>
    </message>
    <message>
        <source>Clip the hose to the frame</source>
        <translation>Fixer la durite au châssis par un collier de maintien</translation>
    </message>
    <message>
        <source>&amp;Open or close</source>
        <translation>Ouvrir ou &amp;fermer</translation>
    </message>
    <message>
        <source>Open or close the selected valve, bleed or drain</source>
        <translation>Ouvrir ou fermer la vanne, le purgeur ou la vidange sélectionnés</translation>
    </message>
    <message>
        <source>Conn&amp;ect to the next opening</source>
        <translation>&amp;Relier à l&apos;ouverture suivante</translation>
    </message>
    <message>
        <source>Connect the hose&apos;s end to the nearest port or nozzle, again: to the next</source>
        <translation>Relier le bout de la durite au piquage ou à la tubulure la plus proche&#xa0;; de nouveau&#xa0;: à la suivante</translation>
    </message>
    <message>
        <source>Turn c&amp;lockwise</source>
        <translation>&amp;Tourner à droite</translation>
    </message>
    <message>
        <source>Turn a heater or port by 15 degrees</source>
        <translation>Tourner un réchauffeur ou un piquage de 15 degrés</translation>
    </message>
    <message>
        <source>Turn &amp;back</source>
        <translation>Tourner à gauc&amp;he</translation>
    </message>
    <message>
        <source>Turn a heater or port by 15 degrees the other way</source>
        <translation>Tourner un réchauffeur ou un piquage de 15 degrés dans l&apos;autre sens</translation>
    </message>
    <message>
        <source>&amp;Left edges</source>
        <translation>Bords &amp;gauches</translation>
    </message>
    <message>
        <source>Line up with the leftmost</source>
        <translation>Aligner sur la pièce la plus à gauche</translation>
    </message>
    <message>
        <source>&amp;Middles above each other</source>
        <translation>Mi&amp;lieux à l&apos;aplomb</translation>
    </message>
    <message>
        <source>Line up on one plumb line of the drawing</source>
        <translation>Aligner sur une même verticale du dessin</translation>
    </message>
    <message>
        <source>&amp;Right edges</source>
        <translation>Bords &amp;droits</translation>
    </message>
    <message>
        <source>Line up with the rightmost</source>
        <translation>Aligner sur la pièce la plus à droite</translation>
    </message>
    <message>
        <source>&amp;Top edges</source>
        <translation>Bords &amp;hauts</translation>
    </message>
    <message>
        <source>Line up with the highest</source>
        <translation>Aligner sur la pièce la plus haute</translation>
    </message>
    <message>
        <source>M&amp;iddles at one height</source>
        <translation>&amp;Milieux de niveau</translation>
    </message>
    <message>
        <source>Line up at one height</source>
        <translation>Aligner à la même hauteur</translation>
    </message>
    <message>
        <source>&amp;Bottom edges</source>
        <translation>&amp;Bords bas</translation>
    </message>
    <message>
        <source>Line up with the lowest</source>
        <translation>Aligner sur la pièce la plus basse</translation>
    </message>
    <message>
        <source>Space evenly &amp;along</source>
        <translation>Répartir en lo&amp;ngueur</translation>
    </message>
    <message>
        <source>Even distances along the engine between the outermost</source>
        <translation>Distances égales le long du moteur entre les pièces extrêmes</translation>
    </message>
    <message>
        <source>Space evenly &amp;up</source>
        <translation>&amp;Répartir en hauteur</translation>
    </message>
    <message>
        <source>Even distances in height between lowest and highest</source>
        <translation>Distances égales en hauteur entre la plus basse et la plus haute</translation>
    </message>
    <message>
        <source>Select &amp;next part</source>
        <translation>Pièce sui&amp;vante</translation>
    </message>
    <message>
        <source>Go through all parts of the drawing</source>
        <translation>Parcourir toutes les pièces du dessin</translation>
    </message>
    <message>
        <source>Select &amp;previous part</source>
        <translation>Pièce p&amp;récédente</translation>
    </message>
    <message>
        <source>Go back through all parts of the drawing</source>
        <translation>Parcourir à rebours toutes les pièces du dessin</translation>
    </message>
    <message>
        <source>Next &amp;finding</source>
        <translation>Co&amp;nstat suivant</translation>
    </message>
    <message>
        <source>Go to the next finding on the drawing</source>
        <translation>Aller au constat suivant sur le dessin</translation>
    </message>
    <message>
        <source>About this &amp;rule…</source>
        <translation>À propos de la rè&amp;gle…</translation>
    </message>
    <message>
        <source>Read what the selected finding&apos;s rule rests on, and its limits</source>
        <translation>Lire sur quoi repose la règle du constat sélectionné, et ses limites</translation>
    </message>
    <message>
        <source>Zoom to &amp;fit</source>
        <translation>Tout &amp;afficher</translation>
    </message>
    <message>
        <source>Show the whole drawing</source>
        <translation>Afficher tout le dessin</translation>
    </message>
    <message>
        <source>Zoom to &amp;selection</source>
        <translation>Zoo&amp;m sur la sélection</translation>
    </message>
    <message>
        <source>Show what is selected</source>
        <translation>Afficher la sélection</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>Zoom a&amp;vant</translation>
    </message>
    <message>
        <source>Closer</source>
        <translation>Plus près</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>&amp;Zoom arrière</translation>
    </message>
    <message>
        <source>Farther</source>
        <translation>Plus loin</translation>
    </message>
    <message>
        <source>&amp;Grid</source>
        <translation>&amp;Grille</translation>
    </message>
    <message>
        <source>Show the grid</source>
        <translation>Afficher la grille</translation>
    </message>
    <message>
        <source>S&amp;napping</source>
        <translation>Accroc&amp;hage</translation>
    </message>
    <message>
        <source>Points snap to the grid and to level and plumb</source>
        <translation>Les points s&apos;accrochent à la grille, au niveau et à l&apos;aplomb</translation>
    </message>
    <message>
        <source>Points go to the lines of the grid</source>
        <translation>Les points vont aux lignes de la grille</translation>
    </message>
    <message>
        <source>&amp;Points</source>
        <translation>&amp;Points</translation>
    </message>
    <message>
        <source>Points go onto ports, nozzles, route points and corners</source>
        <translation>Les points vont sur les piquages, tubulures, points de tracé et coins</translation>
    </message>
    <message>
        <source>&amp;Level</source>
        <translation>&amp;Niveau</translation>
    </message>
    <message>
        <source>Points go level with their neighbours</source>
        <translation>Les points se mettent de niveau avec leurs voisins</translation>
    </message>
    <message>
        <source>P&amp;lumb</source>
        <translation>&amp;Aplomb</translation>
    </message>
    <message>
        <source>Points go plumb over or under their neighbours, on a grade too</source>
        <translation>Les points se mettent à l&apos;aplomb de leurs voisins, en pente aussi</translation>
    </message>
    <message>
        <source>Constant &amp;rise</source>
        <translation>&amp;Montée constante</translation>
    </message>
    <message>
        <source>Pieces of a hose take the slope chosen below</source>
        <translation>Les tronçons de durite prennent la pente choisie ci-dessous</translation>
    </message>
    <message>
        <source>&amp;Bend radius</source>
        <translation>&amp;Rayon de courbure</translation>
    </message>
    <message>
        <source>Points stop where the bends still take the hose&apos;s least radius</source>
        <translation>Les points s&apos;arrêtent là où les courbes gardent encore le rayon minimal de la durite</translation>
    </message>
    <message>
        <source>&amp;In line with the last piece</source>
        <translation>Dans l&apos;al&amp;ignement du tronçon</translation>
    </message>
    <message>
        <source>Pieces of a hose go straight on</source>
        <translation>Les tronçons de durite continuent tout droit</translation>
    </message>
    <message>
        <source>Li&amp;mits</source>
        <translation>&amp;Limites</translation>
    </message>
    <message>
        <source>Parts stop where a rule&apos;s limit is just kept: level, hump, ground, area</source>
        <translation>Les pièces s&apos;arrêtent là où la limite d&apos;une règle est juste tenue&#xa0;: niveau, bosse, sol, zone</translation>
    </message>
    <message>
        <source>&amp;Slope to snap to…</source>
        <translation>P&amp;ente d&apos;accrochage…</translation>
    </message>
    <message>
        <source>Choose the slope of the constant rise</source>
        <translation>Choisir la pente de la montée constante</translation>
    </message>
    <message>
        <source>Running fig&amp;ures</source>
        <translation>Valeurs &amp;de marche</translation>
    </message>
    <message>
        <source>Show flow, temperatures and heads beside each heater</source>
        <translation>Afficher débit, températures et charges à côté de chaque réchauffeur</translation>
    </message>
    <message>
        <source>&amp;Tint hoses by temperature</source>
        <translation>&amp;Teinter par température</translation>
    </message>
    <message>
        <source>Colour the hoses by the coolant&apos;s temperature in them</source>
        <translation>Colorer les durites selon la température du liquide</translation>
    </message>
    <message>
        <source>&amp;End view</source>
        <translation>Vue de &amp;bout</translation>
    </message>
    <message>
        <source>Show the drawing along the engine too, beside the elevation</source>
        <translation>Afficher aussi le dessin dans l&apos;axe du moteur, à côté de l&apos;élévation</translation>
    </message>
    <message>
        <source>End view at the same &amp;heights</source>
        <translation>Vue de bout à même ha&amp;uteur</translation>
    </message>
    <message>
        <source>Zoom and heights of the elevation and the end view go together</source>
        <translation>Zoom et hauteurs de l&apos;élévation et de la vue de bout vont ensemble</translation>
    </message>
    <message>
        <source>Third-angle &amp;projection</source>
        <translation>Pro&amp;jection du troisième dièdre</translation>
    </message>
    <message>
        <source>The end view shows the end it stands beside, on the sheet too; off: first-angle projection, which shows the other end</source>
        <translation>La vue de bout montre le bout près duquel elle se trouve, sur la feuille aussi&#xa0;; désactivé&#xa0;: projection du premier dièdre, qui montre l&apos;autre bout</translation>
    </message>
    <message>
        <source>&amp;mm and °C</source>
        <translation>mm et °&amp;C</translation>
    </message>
    <message>
        <source>Metric units</source>
        <translation>Unités métriques</translation>
    </message>
    <message>
        <source>&amp;inch and °F</source>
        <translation>p&amp;ouces et °F</translation>
    </message>
    <message>
        <source>Inch units</source>
        <translation>Unités anglo-saxonnes</translation>
    </message>
    <message>
        <source>As the des&amp;ktop</source>
        <translation>Comme le &amp;bureau</translation>
    </message>
    <message>
        <source>Light, dark or high contrast, as the desktop has it</source>
        <translation>Clair, sombre ou à fort contraste, comme le bureau</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Clair</translation>
    </message>
    <message>
        <source>Dark lines on light ground</source>
        <translation>Traits sombres sur fond clair</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Sombre</translation>
    </message>
    <message>
        <source>Light lines on dark ground</source>
        <translation>Traits clairs sur fond sombre</translation>
    </message>
    <message>
        <source>&amp;High contrast</source>
        <translation>&amp;Fort contraste</translation>
    </message>
    <message>
        <source>Black on white, for bright sun and weak eyes</source>
        <translation>Noir sur blanc, pour le plein soleil et les vues faibles</translation>
    </message>
    <message>
        <source>Text 100 %</source>
        <translation>Texte 100&#xa0;%</translation>
    </message>
    <message>
        <source>Text of the usual size</source>
        <translation>Texte de taille habituelle</translation>
    </message>
    <message>
        <source>Text 125 %</source>
        <translation>Texte 125&#xa0;%</translation>
    </message>
    <message>
        <source>Larger text</source>
        <translation>Texte plus grand</translation>
    </message>
    <message>
        <source>Text 150 %</source>
        <translation>Texte 150&#xa0;%</translation>
    </message>
    <message>
        <source>Text 175 %</source>
        <translation>Texte 175&#xa0;%</translation>
    </message>
    <message>
        <source>Text 200 %</source>
        <translation>Texte 200&#xa0;%</translation>
    </message>
    <message>
        <source>Text twice as large</source>
        <translation>Texte deux fois plus grand</translation>
    </message>
    <message>
        <source>Default la&amp;yout</source>
        <translation>Disposition par dé&amp;faut</translation>
    </message>
    <message>
        <source>Put window, panels and tools back where they were at first</source>
        <translation>Remettre fenêtre, panneaux et outils à leur place de départ</translation>
    </message>
    <message>
        <source>&amp;Warm-up</source>
        <translation>&amp;Chauffe</translation>
    </message>
    <message>
        <source>Show temperatures, flow and power over the hours</source>
        <translation>Afficher températures, débit et puissance au fil des heures</translation>
    </message>
    <message>
        <source>Table by &amp;bore</source>
        <translation>Tableau par diamètr&amp;e</translation>
    </message>
    <message>
        <source>Show what each stock bore of hose would do</source>
        <translation>Montrer ce que donnerait chaque diamètre de durite en stock</translation>
    </message>
    <message>
        <source>Table on &amp;grades</source>
        <translation>Tableau e&amp;n pente</translation>
    </message>
    <message>
        <source>Show how the job runs parked at the ends of the grades judged</source>
        <translation>Montrer comment l&apos;installation marche aux extrêmes des pentes jugées</translation>
    </message>
    <message>
        <source>Heater si&amp;ze and supply</source>
        <translation>Réchauffeur et &amp;alimentation</translation>
    </message>
    <message>
        <source>Show power needed, electrical load, cost of a night, and coolant to mix</source>
        <translation>Afficher puissance nécessaire, charge électrique, coût d&apos;une nuit et liquide à mélanger</translation>
    </message>
    <message>
        <source>Propose la&amp;youts</source>
        <translation>Proposer des &amp;tracés</translation>
    </message>
    <message>
        <source>Let the program lay heater and hoses so that no rule is broken</source>
        <translation>Laisser le programme placer réchauffeur et durites sans enfreindre de règle</translation>
    </message>
    <message>
        <source>C&amp;ommissioning</source>
        <translation>&amp;Mise en service</translation>
    </message>
    <message>
        <source>Work through the checklist, judge readings, diagnose what is wrong</source>
        <translation>Suivre la liste de contrôle, juger les mesures, trouver le défaut</translation>
    </message>
    <message>
        <source>Print the chec&amp;klist…</source>
        <translation>&amp;Imprimer la liste de contrôle…</translation>
    </message>
    <message>
        <source>Steps, cautions and a table for readings, to be filled in by hand</source>
        <translation>Étapes, précautions et tableau de mesures, à remplir à la main</translation>
    </message>
    <message>
        <source>Save the checklist as PD&amp;F…</source>
        <translation>Liste de contrôle en PD&amp;F…</translation>
    </message>
    <message>
        <source>Write the checklist&apos;s pages to a file</source>
        <translation>Écrire les pages de la liste de contrôle dans un fichier</translation>
    </message>
    <message>
        <source>&amp;Keep this curve</source>
        <translation>&amp;Garder cette courbe</translation>
    </message>
    <message>
        <source>Lay the warm-up as it is now under those to come</source>
        <translation>Laisser la chauffe actuelle sous celles à venir</translation>
    </message>
    <message>
        <source>Take kept &amp;curves away</source>
        <translation>Retirer les cour&amp;bes gardées</translation>
    </message>
    <message>
        <source>Show the present warm-up alone</source>
        <translation>Afficher seulement la chauffe actuelle</translation>
    </message>
    <message>
        <source>&amp;Parts and cuts…</source>
        <translation>&amp;Pièces et coupes…</translation>
    </message>
    <message>
        <source>List what the drawing takes, and how the hose is cut</source>
        <translation>Lister ce que demande le dessin, et comment couper la durite</translation>
    </message>
    <message>
        <source>&amp;Estimate…</source>
        <translation>&amp;Devis…</translation>
    </message>
    <message>
        <source>Reckon what the job costs, with prices, hours and other heaters</source>
        <translation>Calculer le coût du travail, avec prix, heures et autres réchauffeurs</translation>
    </message>
    <message>
        <source>&amp;Rules…</source>
        <translation>&amp;Règles…</translation>
    </message>
    <message>
        <source>Read every rule, and change its limits for this drawing</source>
        <translation>Lire chaque règle et changer ses limites pour ce dessin</translation>
    </message>
    <message>
        <source>&amp;Assumptions…</source>
        <translation>H&amp;ypothèses…</translation>
    </message>
    <message>
        <source>See every figure that is assumed, and change it for this drawing</source>
        <translation>Voir chaque valeur supposée, et la changer pour ce dessin</translation>
    </message>
    <message>
        <source>Select</source>
        <translation>Sélection</translation>
    </message>
    <message>
        <source>Select and drag parts</source>
        <translation>Sélectionner et déplacer des pièces</translation>
    </message>
    <message>
        <source>Supply hose</source>
        <translation>Durite d&apos;alim.</translation>
    </message>
    <message>
        <source>Draw the hose from the engine to the heater</source>
        <translation>Tracer la durite du moteur au réchauffeur</translation>
    </message>
    <message>
        <source>Return hose</source>
        <translation>Durite de retour</translation>
    </message>
    <message>
        <source>Draw the hose from the heater to the engine</source>
        <translation>Tracer la durite du réchauffeur au moteur</translation>
    </message>
    <message>
        <source>Port</source>
        <translation>Piquage</translation>
    </message>
    <message>
        <source>Mark an opening into the water jacket</source>
        <translation>Marquer une ouverture dans la chemise d&apos;eau</translation>
    </message>
    <message>
        <source>Heater</source>
        <translation>Réchauffeur</translation>
    </message>
    <message>
        <source>Place a tank heater</source>
        <translation>Placer un réchauffeur</translation>
    </message>
    <message>
        <source>Valve</source>
        <translation>Vanne</translation>
    </message>
    <message>
        <source>Put an isolation valve into a hose</source>
        <translation>Mettre une vanne d&apos;isolement dans une durite</translation>
    </message>
    <message>
        <source>Bleed</source>
        <translation>Purgeur</translation>
    </message>
    <message>
        <source>Put a bleed point into a hose</source>
        <translation>Mettre un point de purge dans une durite</translation>
    </message>
    <message>
        <source>Clip</source>
        <translation>Collier</translation>
    </message>
    <message>
        <source>Clip a hose to the frame</source>
        <translation>Fixer une durite au châssis par un collier de maintien</translation>
    </message>
    <message>
        <source>Keep-clear area</source>
        <translation>Zone interdite</translation>
    </message>
    <message>
        <source>Outline something hot or moving</source>
        <translation>Tracer le contour de ce qui est chaud ou bouge</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation>Vase</translation>
    </message>
    <message>
        <source>Place the surge tank with the coolant levels</source>
        <translation>Placer le vase d&apos;expansion avec les niveaux de liquide</translation>
    </message>
    <message>
        <source>Dimension</source>
        <translation>Cote</translation>
    </message>
    <message>
        <source>Measure between any two things; it follows them and prints</source>
        <translation>Mesurer entre deux éléments&#xa0;; la cote les suit et s&apos;imprime</translation>
    </message>
    <message>
        <source>S&amp;helf of parts</source>
        <translation>É&amp;tagère de pièces</translation>
    </message>
    <message>
        <source>Parts to drag onto the drawing; Enter puts one in the middle</source>
        <translation>Pièces à glisser sur le dessin&#xa0;; Entrée en pose une au milieu</translation>
    </message>
    <message>
        <source>S&amp;urvey…</source>
        <translation>Re&amp;levé…</translation>
    </message>
    <message>
        <source>Type what was measured at the vehicle and draw the engine from it</source>
        <translation>Saisir ce qui a été mesuré sur le véhicule et en dessiner le moteur</translation>
    </message>
    <message>
        <source>&amp;Engine…</source>
        <translation>&amp;Moteur…</translation>
    </message>
    <message>
        <source>Choose an engine by its picture and place it</source>
        <translation>Choisir un moteur d&apos;après son image et le placer</translation>
    </message>
    <message>
        <source>&amp;Heater…</source>
        <translation>&amp;Réchauffeur…</translation>
    </message>
    <message>
        <source>Choose a heater by its picture and place it under the jacket</source>
        <translation>Choisir un réchauffeur d&apos;après son image et le placer sous la chemise</translation>
    </message>
    <message>
        <source>&amp;Photo…</source>
        <translation>&amp;Photo…</translation>
    </message>
    <message>
        <source>Put a photo of the engine under the drawing, to draw over</source>
        <translation>Mettre une photo du moteur sous le dessin, pour dessiner par-dessus</translation>
    </message>
    <message>
        <source>Photo from the &amp;clipboard</source>
        <translation>Photo du presse-pap&amp;iers</translation>
    </message>
    <message>
        <source>Put the picture that was copied elsewhere under the drawing</source>
        <translation>Mettre sous le dessin l&apos;image copiée ailleurs</translation>
    </message>
    <message>
        <source>&amp;Straighten by a rectangle…</source>
        <translation>Re&amp;dresser par un rectangle…</translation>
    </message>
    <message>
        <source>Click the corners of a rectangle of known size in a photo taken at an angle</source>
        <translation>Cliquer les coins d&apos;un rectangle de taille connue dans une photo prise de biais</translation>
    </message>
    <message>
        <source>S&amp;cale by two points…</source>
        <translation>Échelle par d&amp;eux points…</translation>
    </message>
    <message>
        <source>Click two points in the photo and type how far apart they are</source>
        <translation>Cliquer deux points de la photo et saisir leur distance</translation>
    </message>
    <message>
        <source>&amp;Level by two points</source>
        <translation>Mettre de &amp;niveau par deux points</translation>
    </message>
    <message>
        <source>Click two points along something level in the photo</source>
        <translation>Cliquer deux points le long d&apos;un élément de niveau dans la photo</translation>
    </message>
    <message>
        <source>Loc&amp;k the photo</source>
        <translation>&amp;Verrouiller la photo</translation>
    </message>
    <message>
        <source>Keep the photo where it is while you draw over it</source>
        <translation>Garder la photo en place pendant que vous dessinez par-dessus</translation>
    </message>
    <message>
        <source>Select the &amp;photo</source>
        <translation>&amp;Sélectionner la photo</translation>
    </message>
    <message>
        <source>Show place, scale, turn and fade of the photo in the details</source>
        <translation>Afficher place, échelle, rotation et estompage de la photo dans les détails</translation>
    </message>
    <message>
        <source>Supply port, low at the front</source>
        <translation>Piquage d&apos;alimentation, en bas à l&apos;avant</translation>
    </message>
    <message>
        <source>Add a port at the jacket&apos;s lowest level</source>
        <translation>Ajouter un piquage au niveau le plus bas de la chemise</translation>
    </message>
    <message>
        <source>Return port, high at the rear</source>
        <translation>Piquage de retour, en haut à l&apos;arrière</translation>
    </message>
    <message>
        <source>Add a port near the jacket&apos;s highest level</source>
        <translation>Ajouter un piquage près du niveau le plus haut de la chemise</translation>
    </message>
    <message>
        <source>Supply hose, port to heater</source>
        <translation>Durite d&apos;alimentation, du piquage au réchauffeur</translation>
    </message>
    <message>
        <source>Add a straight hose to be shaped</source>
        <translation>Ajouter une durite droite, à façonner</translation>
    </message>
    <message>
        <source>Return hose, heater to port</source>
        <translation>Durite de retour, du réchauffeur au piquage</translation>
    </message>
    <message>
        <source>Point in the selected hose</source>
        <translation>Point dans la durite sélectionnée</translation>
    </message>
    <message>
        <source>Add a route point in the middle of the hose</source>
        <translation>Ajouter un point de tracé au milieu de la durite</translation>
    </message>
    <message>
        <source>Isolation valve in the selected hose</source>
        <translation>Vanne d&apos;isolement dans la durite sélectionnée</translation>
    </message>
    <message>
        <source>Add a valve near the hose&apos;s start</source>
        <translation>Ajouter une vanne près du départ de la durite</translation>
    </message>
    <message>
        <source>Bleed at the selected hose&apos;s crest</source>
        <translation>Purgeur à la crête de la durite sélectionnée</translation>
    </message>
    <message>
        <source>Add a bleed point where the hose is highest</source>
        <translation>Ajouter un point de purge là où la durite est la plus haute</translation>
    </message>
    <message>
        <source>Surge tank over the engine</source>
        <translation>Vase d&apos;expansion au-dessus du moteur</translation>
    </message>
    <message>
        <source>Add the tank with its coolant levels</source>
        <translation>Ajouter le vase avec ses niveaux de liquide</translation>
    </message>
    <message>
        <source>Add a square area to be shaped</source>
        <translation>Ajouter une zone carrée, à façonner</translation>
    </message>
    <message>
        <source>&amp;Teaching air locks</source>
        <translation>&amp;Enseigner les bouchons d&apos;air</translation>
    </message>
    <message>
        <source>Lessons, faults to find and their answers, for a trainer</source>
        <translation>Leçons, défauts à trouver et réponses, pour un formateur</translation>
    </message>
    <message>
        <source>&amp;Demonstrate</source>
        <translation>Dé&amp;monstration</translation>
    </message>
    <message>
        <source>Play filling, engine run and warm-up on the drawing</source>
        <translation>Jouer sur le dessin le remplissage, la marche du moteur et la chauffe</translation>
    </message>
    <message>
        <source>&amp;Hide findings</source>
        <translation>Mas&amp;quer les constats</translation>
    </message>
    <message>
        <source>Let the class guess first</source>
        <translation>Laisser d&apos;abord deviner la classe</translation>
    </message>
    <message>
        <source>&amp;Ask the class</source>
        <translation>&amp;Interroger la classe</translation>
    </message>
    <message>
        <source>Count hands, then reveal whether it circulates</source>
        <translation>Compter les mains levées, puis révéler si cela circule</translation>
    </message>
    <message>
        <source>&amp;Second drawing beside…</source>
        <translation>&amp;Second dessin à côté…</translation>
    </message>
    <message>
        <source>Play a drawing from a file by the same clock</source>
        <translation>Jouer à la même horloge un dessin tiré d&apos;un fichier</translation>
    </message>
    <message>
        <source>&amp;Full screen</source>
        <translation>&amp;Plein écran</translation>
    </message>
    <message>
        <source>Large, to be read from the back of the room</source>
        <translation>Grand, lisible du fond de la salle</translation>
    </message>
    <message>
        <source>Export this &amp;moment…</source>
        <translation>E&amp;xporter cet instant…</translation>
    </message>
    <message>
        <source>Write what is shown now as PNG or SVG</source>
        <translation>Écrire en PNG ou SVG ce qui est affiché</translation>
    </message>
    <message>
        <source>Export all &amp;pictures…</source>
        <translation>Exporter &amp;toutes les images…</translation>
    </message>
    <message>
        <source>Write the demonstration as numbered PNG pictures</source>
        <translation>Écrire la démonstration en images PNG numérotées</translation>
    </message>
    <message>
        <source>Hand&amp;out…</source>
        <translation>Poly&amp;copié…</translation>
    </message>
    <message>
        <source>Write one page with six moments and their captions as PDF</source>
        <translation>Écrire une page avec six instants et leurs légendes, en PDF</translation>
    </message>
    <message>
        <source>Find a co&amp;mmand…</source>
        <translation>&amp;Chercher une commande…</translation>
    </message>
    <message>
        <source>Search all commands by their words, and run one</source>
        <translation>Chercher parmi toutes les commandes par leurs mots, et en lancer une</translation>
    </message>
    <message>
        <source>&amp;Shortcuts…</source>
        <translation>&amp;Raccourcis…</translation>
    </message>
    <message>
        <source>See the keys of every command, and change them</source>
        <translation>Voir les touches de chaque commande, et les changer</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>Précau&amp;tions</translation>
    </message>
    <message>
        <source>What to heed before and during the work</source>
        <translation>À respecter avant et pendant le travail</translation>
    </message>
    <message>
        <source>&amp;First sketch, step by step</source>
        <translation>&amp;Premier dessin, pas à pas</translation>
    </message>
    <message>
        <source>Be led through a first drawing, from the engine to the saved file</source>
        <translation>Être guidé dans un premier dessin, du moteur au fichier enregistré</translation>
    </message>
    <message>
        <source>&amp;About Siphonwright</source>
        <translation>À propos de &amp;Siphonwright</translation>
    </message>
    <message>
        <source>Version, licences and what the figures are</source>
        <translation>Version, licences et nature des valeurs</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Comme le &amp;système</translation>
    </message>
    <message>
        <source>Texts, numbers and dates as the system has them, from the next start on</source>
        <translation>Textes, nombres et dates comme dans le système, dès le prochain démarrage</translation>
    </message>
    <message>
        <source>English texts, from the next start on</source>
        <translation>Textes en anglais, dès le prochain démarrage</translation>
    </message>
    <message>
        <source>Spanish texts, from the next start on</source>
        <translation>Textes en espagnol, dès le prochain démarrage</translation>
    </message>
    <message>
        <source>French texts, from the next start on</source>
        <translation>Textes en français, dès le prochain démarrage</translation>
    </message>
    <message>
        <source>German texts, from the next start on</source>
        <translation>Textes en allemand, dès le prochain démarrage</translation>
    </message>
    <message>
        <source>Fi&amp;x the finding</source>
        <translation>Co&amp;rriger le constat</translation>
    </message>
    <message>
        <source>Change the drawing as is offered under the list of findings</source>
        <translation>Modifier le dessin comme proposé sous la liste des constats</translation>
    </message>
    <message>
        <source>&amp;Checklist behind the sheet</source>
        <translation>&amp;Liste de contrôle derrière la feuille</translation>
    </message>
    <message>
        <source>Print and export the checklist and the table of readings after the drawing</source>
        <translation>Imprimer et exporter la liste de contrôle et le tableau des relevés après le dessin</translation>
    </message>
    <message>
        <source>&amp;Estimate behind the sheet</source>
        <translation>&amp;Devis derrière la feuille</translation>
    </message>
    <message>
        <source>Print and export the estimate after the drawing, where prices are there</source>
        <translation>Imprimer et exporter le devis après le dessin, quand il y a des prix</translation>
    </message>
    <message>
        <source>&amp;Assumptions behind the sheet</source>
        <translation>&amp;Hypothèses derrière la feuille</translation>
    </message>
    <message>
        <source>Print and export what the figures rest on, after the drawing</source>
        <translation>Imprimer et exporter ce sur quoi reposent les chiffres, après le dessin</translation>
    </message>
    <message>
        <source>&amp;Logo on the sheet…</source>
        <translation>L&amp;ogo sur la feuille…</translation>
    </message>
    <message>
        <source>Choose a picture for the title block; chosen again, it comes off</source>
        <translation>Choisir une image pour le cartouche ; choisi à nouveau, elle est retirée</translation>
    </message>
    <message>
        <source>Recover &amp;drawings…</source>
        <translation>Récupérer des &amp;dessins…</translation>
    </message>
    <message>
        <source>See what was not saved when the program ended unexpectedly, or was put aside</source>
        <translation>Voir ce qui n&apos;était pas enregistré quand le programme s&apos;est arrêté de façon inattendue, ou a été mis de côté</translation>
    </message>
    <message>
        <source>High contrast, &amp;white on black</source>
        <translation>Fort contraste, blanc sur &amp;noir</translation>
    </message>
    <message>
        <source>White on black, for eyes that a bright ground blinds</source>
        <translation>Blanc sur noir, pour les yeux qu’un fond clair éblouit</translation>
    </message>
</context>
<context>
    <name>Canvas</name>
    <message>
        <source>%1 wide, %2 high</source>
        <translation>largeur %1, hauteur %2</translation>
    </message>
    <message>
        <source>Height %1</source>
        <translation>Hauteur %1</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>Déplacer %1</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation>Tourner %1</translation>
    </message>
    <message>
        <source>%1 parts</source>
        <translation>%1 pièces</translation>
    </message>
</context>
<context>
    <name>Drawing</name>
    <message>
        <source>The photo cannot be shown</source>
        <translation>La photo ne peut pas être affichée</translation>
    </message>
    <message>
        <source>Coolant in the hoses</source>
        <translation>Liquide dans les durites</translation>
    </message>
</context>
<context>
    <name>DrawingKeys</name>
    <message>
        <source>Arrow keys</source>
        <translation>Flèches</translation>
    </message>
    <message>
        <source>Nudge what is selected, move the cross-hair, or move the paper</source>
        <translation>Pousser la sélection, déplacer la croix ou le papier</translation>
    </message>
    <message>
        <source>Shift + arrow keys</source>
        <translation>Maj + flèches</translation>
    </message>
    <message>
        <source>A fine step</source>
        <translation>Un pas fin</translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Maj+Tab</translation>
    </message>
    <message>
        <source>Next and previous point of what is selected, or place to put it</source>
        <translation>Point suivant ou précédent de la sélection, ou emplacement de pose</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>Put down at the cross-hair; finish a hose</source>
        <translation>Poser à la croix&#xa0;; terminer une durite</translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation>Retour arrière</translation>
    </message>
    <message>
        <source>Take the last point of a hose back</source>
        <translation>Reprendre le dernier point d&apos;une durite</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Échap</translation>
    </message>
    <message>
        <source>Stop what was begun; back to selecting</source>
        <translation>Arrêter ce qui est commencé&#xa0;; revenir à la sélection</translation>
    </message>
    <message>
        <source>Space + drag, middle button</source>
        <translation>Espace + glisser, bouton central</translation>
    </message>
    <message>
        <source>Move the paper</source>
        <translation>Déplacer le papier</translation>
    </message>
    <message>
        <source>Wheel</source>
        <translation>Molette</translation>
    </message>
    <message>
        <source>Zoom to the pointer</source>
        <translation>Zoomer sur le pointeur</translation>
    </message>
    <message>
        <source>Alt while dragging</source>
        <translation>Alt en glissant</translation>
    </message>
    <message>
        <source>No snapping</source>
        <translation>Sans accrochage</translation>
    </message>
</context>
<context>
    <name>PartMenu</name>
    <message>
        <source>&amp;Align</source>
        <translation>Al&amp;igner</translation>
    </message>
    <message>
        <source>Selected &amp;part</source>
        <translation>&amp;Pièce sélectionnée</translation>
    </message>
</context>
<context>
    <name>Photo</name>
    <message>
        <source>Its data are damaged: they are no Base64.</source>
        <translation>Ses données sont abîmées&#xa0;: ce n&apos;est pas du Base64.</translation>
    </message>
</context>
<context>
    <name>SlowCall</name>
    <message>
        <source>%1 is being saved…</source>
        <translation>Enregistrement de %1…</translation>
    </message>
    <message>
        <source>%1 is being opened…</source>
        <translation>Ouverture de %1…</translation>
    </message>
    <message>
        <source>%1 is not saved yet: its place does not answer.</source>
        <translation>%1 n&apos;est pas encore enregistré&#xa0;: son emplacement ne répond pas.</translation>
    </message>
    <message>
        <source>%1 is not open yet: its place does not answer.</source>
        <translation>%1 n&apos;est pas encore ouvert&#xa0;: son emplacement ne répond pas.</translation>
    </message>
    <message>
        <source>A network drive may be busy or gone. This closes by itself when the drawing is saved after all. If you save in another place, or stop waiting, the file there stays as it was, and your drawing stays on the table.</source>
        <translation>Un lecteur réseau est peut-être occupé ou absent. Cette fenêtre se ferme d&apos;elle-même si le dessin est enregistré malgré tout. Si vous enregistrez ailleurs ou n&apos;attendez plus, le fichier là-bas reste tel quel et votre dessin reste sur la table.</translation>
    </message>
    <message>
        <source>A network drive may be busy or gone. This closes by itself when the file is read after all. If you stop waiting, the drawing on the table stays as it is.</source>
        <translation>Un lecteur réseau est peut-être occupé ou absent. Cette fenêtre se ferme d&apos;elle-même dès que le fichier est lu. Si vous n&apos;attendez plus, le dessin sur la table reste tel quel.</translation>
    </message>
    <message>
        <source>Siphonwright</source>
        <translation>Siphonwright</translation>
    </message>
    <message>
        <source>This closes by itself when it is done.</source>
        <translation>Cette fenêtre se ferme d&apos;elle-même quand c&apos;est fait.</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Enregistrer &amp;sous…</translation>
    </message>
    <message>
        <source>&amp;Stop waiting</source>
        <translation>Ne &amp;plus attendre</translation>
    </message>
    <message>
        <source>%1 is being written…</source>
        <translation>%1 est en cours d&apos;écriture…</translation>
    </message>
    <message>
        <source>%1 is not written yet: its place does not answer.</source>
        <translation>%1 n&apos;est pas encore écrit&#xa0;: son emplacement ne répond pas.</translation>
    </message>
    <message>
        <source>A network drive may be busy or gone. This closes by itself when the file is written after all. If you stop waiting, what stands there stays as it was; write it again in another place.</source>
        <translation>Un lecteur réseau est peut-être occupé ou absent. Cette fenêtre se ferme d&apos;elle-même dès que le fichier est écrit. Si vous n&apos;attendez plus, ce qui s&apos;y trouve reste tel quel&#xa0;; écrivez le fichier à nouveau à un autre emplacement.</translation>
    </message>
    <message>
        <source>A network drive may be busy or gone. This closes by itself when the logo is read after all. If you stop waiting, the sheet is made without it.</source>
        <translation>Un lecteur réseau est peut-être occupé ou absent. Cette fenêtre se ferme d&apos;elle-même dès que le logo est lu. Si vous n&apos;attendez plus, la feuille est faite sans logo.</translation>
    </message>
</context>
<context>
    <name>Snap</name>
    <message>
        <source>Snapped: %1</source>
        <translation>Accroché&#xa0;: %1</translation>
    </message>
    <message>
        <source>level</source>
        <translation>de niveau</translation>
    </message>
    <message>
        <source>plumb</source>
        <translation>d&apos;aplomb</translation>
    </message>
</context>
<context>
    <name>Teaching</name>
    <message>
        <source>Teaching air locks</source>
        <translation>Enseigner les bouchons d&apos;air</translation>
    </message>
</context>
<context>
    <name>WriteFailure</name>
    <message>
        <source>Another program has changed %1 since it was opened here. Neither version is lost: choose what is to be done with them.</source>
        <translation>Un autre programme a modifié %1 depuis son ouverture ici. Aucune version n&apos;est perdue : choisissez ce qu&apos;il faut en faire.</translation>
    </message>
    <message>
        <source>There is no room left on the disk for %1. Make room and try again, or save in another place. (%2)</source>
        <translation>Il n&apos;y a plus de place sur le disque pour %1. Faites de la place et réessayez, ou enregistrez ailleurs. (%2)</translation>
    </message>
    <message>
        <source>%1 is in a place that may only be read. Save in another place. (%2)</source>
        <translation>%1 se trouve à un endroit en lecture seule. Enregistrez ailleurs. (%2)</translation>
    </message>
    <message>
        <source>The folder of %1 cannot be reached. Connect the drive again and try again, or save in another place. (%2)</source>
        <translation>Le dossier de %1 n&apos;est pas accessible. Reconnectez le lecteur et réessayez, ou enregistrez ailleurs. (%2)</translation>
    </message>
    <message>
        <source>%1 cannot be written: the disk reports an error. Try again, or save in another place. (%2)</source>
        <translation>%1 ne peut pas être écrit : le disque signale une erreur. Réessayez, ou enregistrez ailleurs. (%2)</translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>a hose has no length</source>
        <translation>une durite n&apos;a pas de longueur</translation>
    </message>
    <message>
        <source>a hose has no bore</source>
        <translation>une durite n&apos;a pas de diamètre intérieur</translation>
    </message>
    <message>
        <source>an opening has no bore</source>
        <translation>une ouverture n&apos;a pas de diamètre intérieur</translation>
    </message>
    <message>
        <source>a chamber has no volume</source>
        <translation>une chambre n&apos;a pas de volume</translation>
    </message>
    <message>
        <source>a valve has no place</source>
        <translation>une vanne n&apos;a pas d&apos;emplacement</translation>
    </message>
    <message>
        <source>a bleed has no place</source>
        <translation>un purgeur n&apos;a pas d&apos;emplacement</translation>
    </message>
    <message>
        <source>the element has no height</source>
        <translation>l&apos;élément chauffant n&apos;a pas de hauteur</translation>
    </message>
    <message>
        <source>the jacket&apos;s volume needs two levels</source>
        <translation>le volume de la chemise demande deux niveaux</translation>
    </message>
    <message>
        <source>the jacket&apos;s volume must rise with its level</source>
        <translation>le volume de la chemise doit croître avec le niveau</translation>
    </message>
    <message>
        <source>the target level is no number</source>
        <translation>le niveau visé n&apos;est pas un nombre</translation>
    </message>
    <message>
        <source>density and pressures must be over zero</source>
        <translation>la masse volumique et les pressions doivent être supérieures à zéro</translation>
    </message>
    <message>
        <source>the air in pre-filled hoses must not be under zero</source>
        <translation>l&apos;air dans les durites préremplies ne doit pas être négatif</translation>
    </message>
    <message>
        <source>the vacuum must lie under the atmosphere</source>
        <translation>le vide doit être inférieur à la pression atmosphérique</translation>
    </message>
    <message>
        <source>there is no loop to feed</source>
        <translation>il n&apos;y a pas de boucle à alimenter</translation>
    </message>
    <message>
        <source>there is no such valve</source>
        <translation>cette vanne n&apos;existe pas</translation>
    </message>
    <message>
        <source>the level is not reached from where coolant is fed</source>
        <translation>le niveau n&apos;est pas atteint depuis le point d&apos;alimentation en liquide</translation>
    </message>
    <message>
        <source>no state of rest was found</source>
        <translation>aucun état de repos n&apos;a été trouvé</translation>
    </message>
    <message>
        <source>nothing has been filled</source>
        <translation>rien n&apos;a été rempli</translation>
    </message>
    <message>
        <source>the level is no number</source>
        <translation>le niveau n&apos;est pas un nombre</translation>
    </message>
    <message>
        <source>coolant shrinks to between half and all of its volume</source>
        <translation>le liquide se contracte à un volume entre la moitié et la totalité du sien</translation>
    </message>
    <message>
        <source>a pump&apos;s flow must not be under zero</source>
        <translation>le débit d&apos;une pompe ne doit pas être négatif</translation>
    </message>
    <message>
        <source>%1 Filled as planned, none closes the bore.</source>
        <translation>%1 Si le remplissage est fait comme prévu, l&apos;air n&apos;obstrue la durite nulle part.</translation>
    </message>
    <message>
        <source>Fill so every time, or lower the hump by at least {0}.</source>
        <translation>Remplissez toujours ainsi, ou abaissez la bosse d&apos;au moins {0}.</translation>
    </message>
    <message>
        <source>Lower the hump by at least {0}. A bleed {1} along {a}, filled with the valves open, would let its air out; re-routing is the better cure.</source>
        <translation>Abaissez la bosse d&apos;au moins {0}. Un purgeur à {1} le long de {a}, avec remplissage vannes ouvertes, en laisserait sortir l&apos;air&#xa0;; refaire le tracé est le meilleur remède.</translation>
    </message>
    <message>
        <source>A bleed {0} along {a}, filled with the valves open, would let it out; re-routing is the better cure.</source>
        <translation>Un purgeur à {0} le long de {a}, avec remplissage vannes ouvertes, le laisserait sortir&#xa0;; refaire le tracé est le meilleur remède.</translation>
    </message>
    <message>
        <source>%1 right side up</source>
        <translation>%1 côté droit relevé</translation>
    </message>
    <message>
        <source>%1 left side up</source>
        <translation>%1 côté gauche relevé</translation>
    </message>
    <message>
        <source>%1 and %2 right side up</source>
        <translation>%1 et %2 côté droit relevé</translation>
    </message>
    <message>
        <source>%1 and %2 left side up</source>
        <translation>%1 et %2 côté gauche relevé</translation>
    </message>
    <message>
        <source>Parked from %1</source>
        <translation>Véhicule garé, dès %1</translation>
    </message>
    <message>
        <source>Parked %1</source>
        <translation>Véhicule garé, %1</translation>
    </message>
    <message>
        <source>%1 on (figures at %2)</source>
        <translation>%1 (valeurs pour %2)</translation>
    </message>
    <message>
        <source>over {0}</source>
        <translation>plus de {0}</translation>
    </message>
    <message>
        <source>%1 nose-down to %2</source>
        <translation>%1 avant abaissé à %2</translation>
    </message>
    <message>
        <source>over {1}</source>
        <translation>plus de {1}</translation>
    </message>
    <message>
        <source>%1 nose-up.</source>
        <translation>%1 avant relevé.</translation>
    </message>
    <message>
        <source>{a} may sag more than {0}.</source>
        <translation>{a} peut fléchir de plus de {0}.</translation>
    </message>
    <message>
        <source>{a} may sag {0} before it holds air or coolant.</source>
        <translation>{a} peut fléchir de {0} avant de retenir air ou liquide.</translation>
    </message>
    <message>
        <source>%1 (typical)</source>
        <translation>%1 (typique)</translation>
    </message>
    <message>
        <source>%1 (assumed)</source>
        <translation>%1 (supposé)</translation>
    </message>
    <message>
        <source>flow %1</source>
        <translation>débit %1</translation>
    </message>
    <message>
        <source>outlet %1 at most while it warms up</source>
        <translation>sortie %1 au plus pendant la chauffe</translation>
    </message>
    <message>
        <source>%1 after %2</source>
        <translation>%1 après %2</translation>
    </message>
    <message>
        <source>{a}: not computed: {b}</source>
        <translation>{a}&#xa0;: non calculé&#xa0;: {b}</translation>
    </message>
    <message>
        <source>{a}: {0}, {1} in, {2} out, {3} drives</source>
        <translation>{a}&#xa0;: {0}, entrée {1}, sortie {2}, charge motrice {3}</translation>
    </message>
    <message>
        <source>{a}: {0} backward, {1} in, {2} out, {3} drives</source>
        <translation>{a}&#xa0;: {0} à l&apos;envers, entrée {1}, sortie {2}, charge motrice {3}</translation>
    </message>
    <message>
        <source>%1: no flow: %2</source>
        <translation>%1&#xa0;: aucun débit&#xa0;: %2</translation>
    </message>
    <message>
        <source>Warm-up: not computed: {a}</source>
        <translation>Chauffe&#xa0;: non calculée&#xa0;: {a}</translation>
    </message>
    <message>
        <source>Warm-up: not computed: {0} is under the coolant&apos;s freezing point</source>
        <translation>Chauffe&#xa0;: non calculée&#xa0;: {0} est sous le point de congélation du liquide</translation>
    </message>
    <message>
        <source>Warm-up: not computed: its inputs do not hold together</source>
        <translation>Chauffe&#xa0;: non calculée&#xa0;: ses données ne concordent pas</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>Chauffe</translation>
    </message>
    <message>
        <source>%1 not reached</source>
        <translation>%1 non atteint</translation>
    </message>
    <message>
        <source>{a}: never on</source>
        <translation>{a}&#xa0;: jamais en marche</translation>
    </message>
    <message>
        <source>{a}: coolant leaves at %1 at most</source>
        <translation>{a}&#xa0;: le liquide sort à %1 au plus</translation>
    </message>
    <message>
        <source>boils</source>
        <translation>ébullition</translation>
    </message>
    <message>
        <source>%1 under boiling</source>
        <translation>%1 sous l&apos;ébullition</translation>
    </message>
    <message>
        <source>{a}, where 9 in 10 lie over what is assumed</source>
        <translation>{a}, où 9 cas sur 10 dépassent ce qui est supposé</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>coolant leaves at %1</source>
        <translation>le liquide sort à %1</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>marche %1</translation>
    </message>
    <message>
        <source>%1 times in the worst hour</source>
        <translation>%1 fois dans la pire heure</translation>
    </message>
    <message>
        <source>target after %1</source>
        <translation>cible après %1</translation>
    </message>
    <message>
        <source>{a} is air-locked: {0} of air stays in it and takes {1} of head; the loop can raise {2}.</source>
        <translation>Bouchon d&apos;air dans {a}&#xa0;: {0} d&apos;air y reste et absorbe {1} de charge&#xa0;; la boucle peut produire {2}.</translation>
    </message>
    <message>
        <source>{a} is air-locked: {0} of air stays in it, takes {1} of head and turns the flow round.</source>
        <translation>Bouchon d&apos;air dans {a}&#xa0;: {0} d&apos;air y reste, absorbe {1} de charge et inverse le débit.</translation>
    </message>
    <message>
        <source>Air in {a} takes {0} of head and weakens the flow by {1}.</source>
        <translation>L&apos;air dans {a} absorbe {0} de charge et affaiblit le débit de {1}.</translation>
    </message>
    <message>
        <source>Air in {a} leaves {0} of the bore open and weakens the flow by {1}.</source>
        <translation>L&apos;air dans {a} laisse {0} de la section libre et affaiblit le débit de {1}.</translation>
    </message>
    <message>
        <source>the top of the element of %1</source>
        <translation>le haut de l&apos;élément chauffant de %1</translation>
    </message>
    <message>
        <source>the top of the element of %1 is not entered</source>
        <translation>le haut de l&apos;élément chauffant de %1 n&apos;est pas saisi</translation>
    </message>
    <message>
        <source>{a} keeps {0} of air in its chamber after filling.</source>
        <translation>{a} garde {0} d&apos;air dans sa chambre après le remplissage.</translation>
    </message>
    <message>
        <source>{a} keeps {0} of air in its chamber after filling, and its element is not covered.</source>
        <translation>{a} garde {0} d&apos;air dans sa chambre après le remplissage, et son élément chauffant n&apos;est pas couvert.</translation>
    </message>
    <message>
        <source>Running the engine leaves the air in {a}: {0} in the hose, and {1} to {2} clear it.</source>
        <translation>Faire tourner le moteur laisse l&apos;air dans {a}&#xa0;: {0} dans la durite, et il faut {1} à {2} pour le chasser.</translation>
    </message>
    <message>
        <source>Running the engine may clear the air in {a}: {0} in the hose, and {1} to {2} clear it.</source>
        <translation>Faire tourner le moteur peut chasser l&apos;air de {a}&#xa0;: {0} dans la durite, et il faut {1} à {2} pour le chasser.</translation>
    </message>
    <message>
        <source>Running the engine clears the air in {a} ({0} in the hose, {1} to {2} clear it): look again after the first night.</source>
        <translation>Faire tourner le moteur chasse l&apos;air de {a} ({0} dans la durite, il faut {1} à {2})&#xa0;: revérifiez après la première nuit.</translation>
    </message>
    <message>
        <source>the coldest ambient temperature is not entered</source>
        <translation>la température ambiante minimale n&apos;est pas saisie</translation>
    </message>
    <message>
        <source>the coldest ambient temperature</source>
        <translation>la température ambiante minimale</translation>
    </message>
    <message>
        <source>At {1} the coolant shrinks to {0} under its cold minimum.</source>
        <translation>À {1}, le liquide se contracte jusqu&apos;à {0} sous son minimum à froid.</translation>
    </message>
    <message>
        <source>{a} leaves its hose end at an angle of {0}: it would kink there.</source>
        <translation>{a} quitte son embout sous un angle de {0}&#xa0;: la durite s&apos;y plierait.</translation>
    </message>
    <message>
        <source>Lead the hose straight out of its end before it bends, or turn the elbow.</source>
        <translation>Faites sortir la durite tout droit de son embout avant de la courber, ou tournez le coude.</translation>
    </message>
    <message>
        <source>{a} bends to a radius of {0} at its centre; it needs {1}.</source>
        <translation>{a} est courbée à un rayon de {0} à l&apos;axe&#xa0;; il en faut {1}.</translation>
    </message>
    <message>
        <source>Open the bend to {0} or more, or use a moulded elbow.</source>
        <translation>Ouvrez la courbe à {0} ou plus, ou utilisez un coude moulé.</translation>
    </message>
    <message>
        <source>the bore of %1 is not entered</source>
        <translation>le diamètre intérieur n&apos;est pas saisi (%1)</translation>
    </message>
    <message>
        <source>{a} has no room for a bend of radius {0}: only {1} fits between its neighbours.</source>
        <translation>{a} n&apos;a pas la place pour une courbe de rayon {0}&#xa0;: seulement {1} tient entre ses voisins.</translation>
    </message>
    <message>
        <source>{a} turns straight back on itself.</source>
        <translation>{a} revient droit en arrière.</translation>
    </message>
    <message>
        <source>the least hose bore in the manual of %1 is not entered</source>
        <translation>le diamètre intérieur de durite minimal selon le manuel de %1 n&apos;est pas saisi</translation>
    </message>
    <message>
        <source>the least hose bore in the manual of %1</source>
        <translation>le diamètre intérieur de durite minimal selon le manuel de %1</translation>
    </message>
    <message>
        <source>{a} has a bore of {0}; the heater&apos;s manual asks for {1} or more.</source>
        <translation>{a} a un diamètre intérieur de {0}&#xa0;; le manuel du réchauffeur demande {1} ou plus.</translation>
    </message>
    <message>
        <source>Use hose of {0} bore or more.</source>
        <translation>Utilisez une durite de diamètre intérieur {0} ou plus.</translation>
    </message>
    <message>
        <source>the port</source>
        <translation>piquage</translation>
    </message>
    <message>
        <source>the heater&apos;s nozzle</source>
        <translation>tubulure du réchauffeur</translation>
    </message>
    <message>
        <source>the hose end</source>
        <translation>embout de durite</translation>
    </message>
    <message>
        <source>the isolation valve</source>
        <translation>vanne d&apos;isolement</translation>
    </message>
    <message>
        <source>the bleed</source>
        <translation>purgeur</translation>
    </message>
    <message>
        <source>the drain</source>
        <translation>vidange</translation>
    </message>
    <message>
        <source>the check valve</source>
        <translation>clapet anti-retour</translation>
    </message>
    <message>
        <source>the reducer</source>
        <translation>réduction</translation>
    </message>
    <message>
        <source>a part</source>
        <translation>pièce</translation>
    </message>
    <message>
        <source>%1 is not entered</source>
        <translation>%1&#xa0;: non saisi</translation>
    </message>
    <message>
        <source>the bore of %1</source>
        <translation>le diamètre intérieur (%1)</translation>
    </message>
    <message>
        <source>the bore of the inlet of %1</source>
        <translation>le diamètre intérieur de l&apos;entrée de %1</translation>
    </message>
    <message>
        <source>the bore of the outlet of %1</source>
        <translation>le diamètre intérieur de la sortie de %1</translation>
    </message>
    <message>
        <source>{a} narrows from {0} to {1} at {b}.</source>
        <translation>{a} se rétrécit de {0} à {1} ({b}).</translation>
    </message>
    <message>
        <source>Use a part with a bore of {0} or more.</source>
        <translation>Utilisez une pièce de diamètre intérieur {0} ou plus.</translation>
    </message>
    <message>
        <source>{a} reaches {0} under the ground at lowest ride height.</source>
        <translation>{a} descend à {0} sous le sol, suspension au plus bas.</translation>
    </message>
    <message>
        <source>{a} is only {0} over the ground at lowest ride height.</source>
        <translation>{a} n&apos;est qu&apos;à {0} au-dessus du sol, suspension au plus bas.</translation>
    </message>
    <message>
        <source>Raise it by at least {0}.</source>
        <translation>À relever d&apos;au moins {0}.</translation>
    </message>
    <message>
        <source>{a} is only {0} from {b}.</source>
        <translation>{a} n&apos;est qu&apos;à {0} de {b}.</translation>
    </message>
    <message>
        <source>{a} touches {b}.</source>
        <translation>{a} touche {b}.</translation>
    </message>
    <message>
        <source>{a} crosses {b} in the side view; how deep that lies is not entered.</source>
        <translation>{a} croise {b} en vue latérale&#xa0;; sa profondeur n&apos;est pas saisie.</translation>
    </message>
    <message>
        <source>{a} is only {0} from {b} in the side view; how deep that lies is not entered.</source>
        <translation>{a} n&apos;est qu&apos;à {0} de {b} en vue latérale&#xa0;; sa profondeur n&apos;est pas saisie.</translation>
    </message>
    <message>
        <source>Move it at least {0} away.</source>
        <translation>Augmentez la distance d&apos;au moins {0}.</translation>
    </message>
    <message>
        <source>Enter how deep {a} lies, or move it at least {0} away.</source>
        <translation>Saisissez la profondeur de {a}, ou augmentez la distance d&apos;au moins {0}.</translation>
    </message>
    <message>
        <source>the ground at lowest ride height is not entered</source>
        <translation>le sol, suspension au plus bas, n&apos;est pas saisi</translation>
    </message>
    <message>
        <source>{a} has a heater at both ends: this end belongs on an engine port.</source>
        <translation>{a} a un réchauffeur aux deux bouts&#xa0;: ce bout va sur un piquage du moteur.</translation>
    </message>
    <message>
        <source>{a} has an engine port at both ends: this end belongs on the heater.</source>
        <translation>{a} a un piquage du moteur aux deux bouts&#xa0;: ce bout va sur le réchauffeur.</translation>
    </message>
    <message>
        <source>{a} ends on the heater&apos;s outlet: it belongs on the inlet.</source>
        <translation>{a} finit sur la sortie du réchauffeur&#xa0;: sa place est sur l&apos;entrée.</translation>
    </message>
    <message>
        <source>{a} starts at the heater&apos;s inlet: it belongs on the outlet.</source>
        <translation>{a} part de l&apos;entrée du réchauffeur&#xa0;: sa place est sur la sortie.</translation>
    </message>
    <message>
        <source>{a} is connected to nothing.</source>
        <translation>{a} n&apos;a aucun raccordement.</translation>
    </message>
    <message>
        <source>{a} has no hoses yet.</source>
        <translation>{a} n&apos;a pas encore de durites.</translation>
    </message>
    <message>
        <source>{a} has no hose on its outlet.</source>
        <translation>{a} n&apos;a pas de durite sur sa sortie.</translation>
    </message>
    <message>
        <source>{a} has no hose on its inlet.</source>
        <translation>{a} n&apos;a pas de durite sur son entrée.</translation>
    </message>
    <message>
        <source>{a} is {0} long, {1} more than square from end to end.</source>
        <translation>{a} mesure {0}, soit {1} de plus que d&apos;équerre d&apos;un bout à l&apos;autre.</translation>
    </message>
    <message>
        <source>Take at least {0} out of it.</source>
        <translation>Enlevez-en au moins {0}.</translation>
    </message>
    <message>
        <source>{a} is open at its start.</source>
        <translation>{a} est ouverte à son départ.</translation>
    </message>
    <message>
        <source>{a} is open at its end.</source>
        <translation>{a} est ouverte à sa fin.</translation>
    </message>
    <message>
        <source>the kind of antifreeze is not entered</source>
        <translation>le type d&apos;antigel n&apos;est pas saisi</translation>
    </message>
    <message>
        <source>the share of antifreeze in the coolant is not entered</source>
        <translation>la part d&apos;antigel dans le liquide n&apos;est pas saisie</translation>
    </message>
    <message>
        <source>freezing points are known only up to 60 % of antifreeze</source>
        <translation>les points de congélation ne sont connus que jusqu&apos;à 60&#xa0;% d&apos;antigel</translation>
    </message>
    <message>
        <source>the share of antifreeze in the coolant</source>
        <translation>la part d&apos;antigel dans le liquide</translation>
    </message>
    <message>
        <source>The coolant holds {0} of antifreeze by volume; more than {1} carries heat worse and protects less.</source>
        <translation>Le liquide contient {0} d&apos;antigel en volume&#xa0;; au-delà de {1}, il transporte moins bien la chaleur et protège moins.</translation>
    </message>
    <message>
        <source>Drain some and top up with water to {0} or less.</source>
        <translation>Vidangez-en une partie et complétez à l&apos;eau jusqu&apos;à {0} ou moins.</translation>
    </message>
    <message>
        <source>The coolant freezes at {0}, and it gets as cold as {1}.</source>
        <translation>Le liquide gèle à {0}, et il fait jusqu&apos;à {1}.</translation>
    </message>
    <message>
        <source>Mix the coolant to freeze at {0} or below.</source>
        <translation>Mélangez le liquide pour qu&apos;il gèle à {0} ou plus bas.</translation>
    </message>
    <message>
        <source>The kind of antifreeze in the engine is not known.</source>
        <translation>Le type d&apos;antigel dans le moteur n&apos;est pas connu.</translation>
    </message>
    <message>
        <source>Of the antifreeze only the colour is entered ({a}), which does not tell its kind.</source>
        <translation>De l&apos;antigel, seule la couleur est saisie ({a}), ce qui n&apos;en dit pas le type.</translation>
    </message>
    <message>
        <source>Bleed at every fill, or lower the hump by at least {0}.</source>
        <translation>Purgez à chaque remplissage, ou abaissez la bosse d&apos;au moins {0}.</translation>
    </message>
    <message>
        <source>Lower the hump by at least {0}, or put a bleed at its crest.</source>
        <translation>Abaissez la bosse d&apos;au moins {0}, ou mettez un purgeur à sa crête.</translation>
    </message>
    <message>
        <source>{a} dips {0} below its rim: {1} of coolant stays there and slows the flow.</source>
        <translation>{a} fait un creux de {0} sous son bord&#xa0;: {1} de liquide y reste et ralentit le débit.</translation>
    </message>
    <message>
        <source>{a} dips {0} below its rim: {1} of coolant fills the bore there and no air can pass.</source>
        <translation>{a} fait un creux de {0} sous son bord&#xa0;: {1} de liquide y remplit la section et l&apos;air ne passe pas.</translation>
    </message>
    <message>
        <source>Raise the dip by at least {0}, so that the hose rises all the way.</source>
        <translation>Relevez le creux d&apos;au moins {0}, pour que la durite monte sur toute sa longueur.</translation>
    </message>
    <message>
        <source>it is not entered whether the coolant is plain water</source>
        <translation>on n&apos;a pas saisi si le liquide est de l&apos;eau pure</translation>
    </message>
    <message>
        <source>{a} dips {0}: {1} of coolant stays in it when drained.</source>
        <translation>{a} fait un creux de {0}&#xa0;: {1} de liquide y reste à la vidange.</translation>
    </message>
    <message>
        <source>{a} dips {0}: {1} of plain water stays in it when drained and can freeze.</source>
        <translation>{a} fait un creux de {0}&#xa0;: {1} d&apos;eau pure y reste à la vidange et peut geler.</translation>
    </message>
    <message>
        <source>Raise the dip by at least {0}, or put a drain at its lowest point.</source>
        <translation>Relevez le creux d&apos;au moins {0}, ou mettez une vidange à son point le plus bas.</translation>
    </message>
    <message>
        <source>{a} climbs {0} on its way to the heater.</source>
        <translation>{a} monte de {0} en allant vers le réchauffeur.</translation>
    </message>
    <message>
        <source>{a} ends {0} above the supply port: cold coolant does not run up to the heater.</source>
        <translation>{a} finit {0} au-dessus du piquage d&apos;alimentation&#xa0;: le liquide froid ne monte pas vers le réchauffeur.</translation>
    </message>
    <message>
        <source>Lower the heater by at least {0}, or take a lower supply port.</source>
        <translation>Abaissez le réchauffeur d&apos;au moins {0}, ou prenez un piquage d&apos;alimentation plus bas.</translation>
    </message>
    <message>
        <source>the place of %1</source>
        <translation>l&apos;emplacement de %1</translation>
    </message>
    <message>
        <source>the outline of the water jacket</source>
        <translation>le contour de la chemise d&apos;eau</translation>
    </message>
    <message>
        <source>the coolant level at cold minimum</source>
        <translation>le niveau de liquide minimum à froid</translation>
    </message>
    <message>
        <source>the coolant level at cold full</source>
        <translation>le niveau de liquide plein à froid</translation>
    </message>
    <message>
        <source>the place of the surge tank</source>
        <translation>l&apos;emplacement du vase d&apos;expansion</translation>
    </message>
    <message>
        <source>{a} stands upright, which its manual does not allow.</source>
        <translation>{a} est debout, ce que son manuel n&apos;admet pas.</translation>
    </message>
    <message>
        <source>{a} lies level, which its manual does not allow.</source>
        <translation>{a} est couché, ce que son manuel n&apos;admet pas.</translation>
    </message>
    <message>
        <source>{a} is inclined, which its manual does not allow.</source>
        <translation>{a} est incliné, ce que son manuel n&apos;admet pas.</translation>
    </message>
    <message>
        <source>{a} hangs upside down, which no heater allows.</source>
        <translation>{a} est à l&apos;envers, ce qu&apos;aucun réchauffeur n&apos;admet.</translation>
    </message>
    <message>
        <source>{a} has its outlet {0} above {b}: warm coolant would have to sink.</source>
        <translation>{a} a sa sortie {0} au-dessus de {b}&#xa0;: le liquide chaud devrait descendre.</translation>
    </message>
    <message>
        <source>{a} is {0} to the side of {b} and only {1} below it.</source>
        <translation>{a} est à {0} sur le côté de {b} et seulement {1} plus bas.</translation>
    </message>
    <message>
        <source>Move the heater at least {0} towards {a}.</source>
        <translation>Rapprochez le réchauffeur d&apos;au moins {0} de {a}.</translation>
    </message>
    <message>
        <source>the outline of the water jacket is not entered</source>
        <translation>le contour de la chemise d&apos;eau n&apos;est pas saisi</translation>
    </message>
    <message>
        <source>{a} has its top only {0} below the lowest point of the water jacket.</source>
        <translation>{a} a son sommet à seulement {0} sous le point le plus bas de la chemise d&apos;eau.</translation>
    </message>
    <message>
        <source>{a} has its top {0} above the lowest point of the water jacket.</source>
        <translation>{a} a son sommet à {0} au-dessus du point le plus bas de la chemise d&apos;eau.</translation>
    </message>
    <message>
        <source>Lower the heater by at least {0}.</source>
        <translation>Abaissez le réchauffeur d&apos;au moins {0}.</translation>
    </message>
    <message>
        <source>the bore of the outlet of %1 is not entered</source>
        <translation>le diamètre intérieur de la sortie de %1 n&apos;est pas saisi</translation>
    </message>
    <message>
        <source>{a} has a chamber that reaches {0} above its outlet: {1} of air stays in it.</source>
        <translation>{a} a une chambre qui dépasse sa sortie de {0} vers le haut&#xa0;: {1} d&apos;air y reste.</translation>
    </message>
    <message>
        <source>{a} has a chamber that reaches {0} above its outlet: {1} of air bares the element.</source>
        <translation>{a} a une chambre qui dépasse sa sortie de {0} vers le haut&#xa0;: {1} d&apos;air découvre l&apos;élément chauffant.</translation>
    </message>
    <message>
        <source>the positions that the manual of %1 allows</source>
        <translation>les positions admises par le manuel de %1</translation>
    </message>
    <message>
        <source>the positions that the manual of %1 allows are not entered</source>
        <translation>les positions admises par le manuel de %1 ne sont pas saisies</translation>
    </message>
    <message>
        <source>what %1 is mounted to</source>
        <translation>le support de montage de %1</translation>
    </message>
    <message>
        <source>it is not entered what %1 is mounted to</source>
        <translation>on n&apos;a pas saisi sur quoi %1 est monté</translation>
    </message>
    <message>
        <source>{a} is mounted to the engine.</source>
        <translation>{a} est monté sur le moteur.</translation>
    </message>
    <message>
        <source>advice</source>
        <translation>conseil</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>alerte</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>arrêt</translation>
    </message>
    <message>
        <source>{a} reaches {0} above the coolant&apos;s cold minimum level: it can run dry of coolant.</source>
        <translation>{a} dépasse de {0} le niveau de liquide minimum à froid&#xa0;: le liquide peut y manquer.</translation>
    </message>
    <message>
        <source>{a} reaches {0} above the coolant&apos;s cold full level: coolant never fills it.</source>
        <translation>{a} dépasse de {0} le niveau de liquide plein à froid&#xa0;: le liquide ne remplit jamais cette partie.</translation>
    </message>
    <message>
        <source>Lower it by at least {0}, or keep the coolant level higher.</source>
        <translation>À abaisser d&apos;au moins {0}, ou tenir le niveau de liquide plus haut.</translation>
    </message>
    <message>
        <source>the coolant level at cold minimum is not entered</source>
        <translation>le niveau de liquide minimum à froid n&apos;est pas saisi</translation>
    </message>
    <message>
        <source>the thermostat&apos;s side is not entered</source>
        <translation>le côté du thermostat n&apos;est pas saisi</translation>
    </message>
    <message>
        <source>the thermostat&apos;s side</source>
        <translation>le côté du thermostat</translation>
    </message>
    <message>
        <source>{a} is in the lower radiator hose, and the thermostat on the engine&apos;s inlet side cuts it off from the block while the engine is cold.</source>
        <translation>{a} est dans la durite inférieure de radiateur, et le thermostat côté entrée du moteur le coupe du bloc tant que le moteur est froid.</translation>
    </message>
    <message>
        <source>it is not entered whether the shut-off of %1 is open</source>
        <translation>on n&apos;a pas saisi si la vanne d&apos;arrêt de %1 est ouverte</translation>
    </message>
    <message>
        <source>{a} is in an open cabin heater line, a second way round for the coolant: results for one loop do not hold.</source>
        <translation>{a} est dans une conduite de chauffage cabine ouverte, second chemin pour le liquide&#xa0;: les résultats pour une seule boucle ne valent pas.</translation>
    </message>
    <message>
        <source>{a} has {0} hose ends on it.</source>
        <translation>{a} porte {0} bouts de durite.</translation>
    </message>
    <message>
        <source>{a} and {b} are on the same bank: the other bank stays cold.</source>
        <translation>{a} et {b} sont sur la même rangée&#xa0;: l&apos;autre rangée reste froide.</translation>
    </message>
    <message>
        <source>{a} is {0} above the lowest point of the water jacket, high for a supply.</source>
        <translation>{a} est à {0} au-dessus du point le plus bas de la chemise d&apos;eau, haut pour une alimentation.</translation>
    </message>
    <message>
        <source>{a} is {0} below the highest point of the water jacket, low for a return.</source>
        <translation>{a} est à {0} sous le point le plus haut de la chemise d&apos;eau, bas pour un retour.</translation>
    </message>
    <message>
        <source>Take a port at least {0} lower.</source>
        <translation>Prenez un piquage plus bas d&apos;au moins {0}.</translation>
    </message>
    <message>
        <source>Take a port at least {0} higher.</source>
        <translation>Prenez un piquage plus haut d&apos;au moins {0}.</translation>
    </message>
    <message>
        <source>{a}, a supply port, is {0} back from the front of the water jacket, in its rear half.</source>
        <translation>{a}, piquage d&apos;alimentation, est à {0} en arrière de l&apos;avant de la chemise d&apos;eau, dans sa moitié arrière.</translation>
    </message>
    <message>
        <source>{a}, a return port, is {0} back from the front of the water jacket, in its front half.</source>
        <translation>{a}, piquage de retour, est à {0} en arrière de l&apos;avant de la chemise d&apos;eau, dans sa moitié avant.</translation>
    </message>
    <message>
        <source>{a} and {b} are only {0} apart: most of the engine would stay cold.</source>
        <translation>{a} et {b} ne sont qu&apos;à {0} l&apos;un de l&apos;autre&#xa0;: presque tout le moteur resterait froid.</translation>
    </message>
    <message>
        <source>Choose ports at least {0} apart.</source>
        <translation>Choisissez des piquages distants d&apos;au moins {0}.</translation>
    </message>
    <message>
        <source>the engine&apos;s thermostat housing is not entered</source>
        <translation>le boîtier de thermostat du moteur n&apos;est pas saisi</translation>
    </message>
    <message>
        <source>the place of the thermostat housing</source>
        <translation>l&apos;emplacement du boîtier de thermostat</translation>
    </message>
    <message>
        <source>{a} is only {0} from the thermostat housing.</source>
        <translation>{a} n&apos;est qu&apos;à {0} du boîtier de thermostat.</translation>
    </message>
    <message>
        <source>{a} is only {0} from {b}, whose warm coolant misleads the sensor.</source>
        <translation>{a} n&apos;est qu&apos;à {0} de {b}, dont le liquide chaud trompe la sonde.</translation>
    </message>
    <message>
        <source>the port of the remote thermostat of %1 is not entered</source>
        <translation>le piquage du thermostat déporté de %1 n&apos;est pas saisi</translation>
    </message>
    <message>
        <source>common practice, no published source</source>
        <translation>pratique courante, sans source publiée</translation>
    </message>
    <message>
        <source>own choice: air or coolant narrows the bore up to one bore of height and closes it from there</source>
        <translation>choix propre&#xa0;: air ou liquide rétrécissent la section jusqu&apos;à une hauteur d&apos;un diamètre et l&apos;obstruent au-delà</translation>
    </message>
    <message>
        <source>High point in the supply hose</source>
        <translation>Point haut dans la durite d&apos;alimentation</translation>
    </message>
    <message>
        <source>Air gathers at a high point and holds up the cold coolant on its way to the heater.</source>
        <translation>L&apos;air s&apos;amasse à un point haut et retient le liquide froid en route vers le réchauffeur.</translation>
    </message>
    <message>
        <source>Lower the hump, or put a bleed at its crest.</source>
        <translation>Abaissez la bosse, ou mettez un purgeur à sa crête.</translation>
    </message>
    <message>
        <source>High point in the return hose</source>
        <translation>Point haut dans la durite de retour</translation>
    </message>
    <message>
        <source>Air gathers at a high point and stops the warm coolant, which has only a few millimetres of head.</source>
        <translation>L&apos;air s&apos;amasse à un point haut et arrête le liquide chaud, qui n&apos;a que quelques millimètres de charge.</translation>
    </message>
    <message>
        <source>Dip in the return hose</source>
        <translation>Creux dans la durite de retour</translation>
    </message>
    <message>
        <source>Cold coolant lies in a dip, and air from the heater cannot pass it.</source>
        <translation>Le liquide froid stagne dans un creux, et l&apos;air du réchauffeur ne peut pas passer.</translation>
    </message>
    <message>
        <source>Raise the dip, so that the hose rises all the way.</source>
        <translation>Relevez le creux, pour que la durite monte sur toute sa longueur.</translation>
    </message>
    <message>
        <source>Dip in the supply hose</source>
        <translation>Creux dans la durite d&apos;alimentation</translation>
    </message>
    <message>
        <source>own choice: what a catch pan takes without a second trip</source>
        <translation>choix propre&#xa0;: ce qu&apos;un bac de récupération reçoit en une fois</translation>
    </message>
    <message>
        <source>What lies in a dip does not drain; plain water freezes there.</source>
        <translation>Ce qui est dans un creux ne se vidange pas&#xa0;; l&apos;eau pure y gèle.</translation>
    </message>
    <message>
        <source>Raise the dip, or put a drain at its lowest point.</source>
        <translation>Relevez le creux, ou mettez une vidange à son point le plus bas.</translation>
    </message>
    <message>
        <source>Supply hose climbs to the heater</source>
        <translation>La durite d&apos;alimentation monte vers le réchauffeur</translation>
    </message>
    <message>
        <source>Cold coolant runs down to the heater by its own weight and does not climb to it.</source>
        <translation>Le liquide froid descend vers le réchauffeur par son poids et n&apos;y monte pas.</translation>
    </message>
    <message>
        <source>Lower the heater, or take a lower supply port.</source>
        <translation>Abaissez le réchauffeur, ou prenez un piquage d&apos;alimentation plus bas.</translation>
    </message>
    <message>
        <source>Return hose too flat</source>
        <translation>Durite de retour trop plate</translation>
    </message>
    <message>
        <source>own choice: 1 in 50, near the drain practice of 1/4 in per ft (1 in 48)</source>
        <translation>choix propre&#xa0;: 1 pour 50, proche de la pratique des évacuations, 1/4 in par ft (1 pour 48)</translation>
    </message>
    <message>
        <source>Air rises to the engine by itself only along a hose that rises all the way.</source>
        <translation>L&apos;air ne monte de lui-même au moteur que dans une durite qui monte sur toute sa longueur.</translation>
    </message>
    <message>
        <source>Give the hose more rise.</source>
        <translation>Donnez plus de montée à la durite.</translation>
    </message>
    <message>
        <source>Above the coolant level</source>
        <translation>Au-dessus du niveau de liquide</translation>
    </message>
    <message>
        <source>What stands above the coolant level does not stay full, and the loop breaks there.</source>
        <translation>Ce qui dépasse le niveau de liquide ne reste pas plein, et la boucle s&apos;y rompt.</translation>
    </message>
    <message>
        <source>Lower it, or keep the coolant level higher.</source>
        <translation>Abaissez la pièce, ou tenez le niveau de liquide plus haut.</translation>
    </message>
    <message>
        <source>Heater too high under the jacket</source>
        <translation>Réchauffeur trop haut sous la chemise</translation>
    </message>
    <message>
        <source>The cold column between engine and heater drives the flow; a short one drives little.</source>
        <translation>La colonne froide entre moteur et réchauffeur entraîne le débit&#xa0;; courte, elle entraîne peu.</translation>
    </message>
    <message>
        <source>Lower the heater.</source>
        <translation>Abaissez le réchauffeur.</translation>
    </message>
    <message>
        <source>Heater not under the return port</source>
        <translation>Réchauffeur pas sous le piquage de retour</translation>
    </message>
    <message>
        <source>common practice (directly under it), no published source; ratios 1 and 2 are our own choice</source>
        <translation>pratique courante (juste dessous), sans source publiée&#xa0;; les rapports 1 et 2 sont un choix propre</translation>
    </message>
    <message>
        <source>Warm coolant rises best straight up; a long flat return is slow and hard to purge.</source>
        <translation>Le liquide chaud monte le mieux à la verticale&#xa0;; un long retour plat est lent et difficile à purger.</translation>
    </message>
    <message>
        <source>Move the heater under the return port.</source>
        <translation>Déplacez le réchauffeur sous le piquage de retour.</translation>
    </message>
    <message>
        <source>Air stays in the heater chamber</source>
        <translation>De l&apos;air reste dans la chambre du réchauffeur</translation>
    </message>
    <message>
        <source>hydrostatics: air cannot leave by an opening below it</source>
        <translation>hydrostatique&#xa0;: l&apos;air ne sort pas par une ouverture située plus bas</translation>
    </message>
    <message>
        <source>Air over the outlet never leaves; an element bared by it burns out.</source>
        <translation>L&apos;air au-dessus de la sortie ne part jamais&#xa0;; l&apos;élément chauffant qu&apos;il découvre grille.</translation>
    </message>
    <message>
        <source>Turn the heater so that its outlet is at the top of the chamber.</source>
        <translation>Tournez le réchauffeur pour que sa sortie soit en haut de la chambre.</translation>
    </message>
    <message>
        <source>Heater in a position its manual forbids</source>
        <translation>Réchauffeur dans une position interdite par son manuel</translation>
    </message>
    <message>
        <source>the heater&apos;s manual</source>
        <translation>le manuel du réchauffeur</translation>
    </message>
    <message>
        <source>The element is covered only in the positions that the manual allows.</source>
        <translation>L&apos;élément chauffant n&apos;est couvert que dans les positions admises par le manuel.</translation>
    </message>
    <message>
        <source>Mount the heater in a position that its manual allows.</source>
        <translation>Montez le réchauffeur dans une position admise par son manuel.</translation>
    </message>
    <message>
        <source>Heater mounted to the engine</source>
        <translation>Réchauffeur monté sur le moteur</translation>
    </message>
    <message>
        <source>The engine shakes heater, element and hose ends loose.</source>
        <translation>Le moteur, par ses vibrations, desserre réchauffeur, élément et embouts.</translation>
    </message>
    <message>
        <source>Mount the heater to the frame.</source>
        <translation>Montez le réchauffeur sur le châssis.</translation>
    </message>
    <message>
        <source>Supply port not low enough</source>
        <translation>Piquage d&apos;alimentation pas assez bas</translation>
    </message>
    <message>
        <source>common practice (the lowest port), no published source; one fifth is our own choice</source>
        <translation>pratique courante (le piquage le plus bas), sans source publiée&#xa0;; un cinquième est un choix propre</translation>
    </message>
    <message>
        <source>Coolant below the supply port stays cold.</source>
        <translation>Le liquide sous le piquage d&apos;alimentation reste froid.</translation>
    </message>
    <message>
        <source>Take a lower port.</source>
        <translation>Prenez un piquage plus bas.</translation>
    </message>
    <message>
        <source>Return port not high enough</source>
        <translation>Piquage de retour pas assez haut</translation>
    </message>
    <message>
        <source>common practice (a high port), no published source; one third is our own choice</source>
        <translation>pratique courante (un piquage haut), sans source publiée&#xa0;; un tiers est un choix propre</translation>
    </message>
    <message>
        <source>Warm coolant stays above where it enters; a low return leaves little to drive the flow.</source>
        <translation>Le liquide chaud reste au-dessus de son point d&apos;arrivée&#xa0;; un retour bas laisse peu pour entraîner le débit.</translation>
    </message>
    <message>
        <source>Take a higher port.</source>
        <translation>Prenez un piquage plus haut.</translation>
    </message>
    <message>
        <source>Supply port in the rear half</source>
        <translation>Piquage d&apos;alimentation dans la moitié arrière</translation>
    </message>
    <message>
        <source>Supply from the front and return to the rear warm the whole length of the engine.</source>
        <translation>L&apos;alimentation à l&apos;avant et le retour à l&apos;arrière chauffent toute la longueur du moteur.</translation>
    </message>
    <message>
        <source>Take a port toward the front.</source>
        <translation>Prenez un piquage plus à l&apos;avant.</translation>
    </message>
    <message>
        <source>Return port in the front half</source>
        <translation>Piquage de retour dans la moitié avant</translation>
    </message>
    <message>
        <source>Take a port toward the rear.</source>
        <translation>Prenez un piquage plus à l&apos;arrière.</translation>
    </message>
    <message>
        <source>Ports too close together</source>
        <translation>Piquages trop proches</translation>
    </message>
    <message>
        <source>common practice (as far apart as practical), no published source; shares of the jacket&apos;s diagonal are our own choice</source>
        <translation>pratique courante (aussi éloignés que possible), sans source publiée&#xa0;; les parts de la diagonale de la chemise sont un choix propre</translation>
    </message>
    <message>
        <source>Warm coolant takes the short way back and most of the engine stays cold.</source>
        <translation>Le liquide chaud revient au plus court et presque tout le moteur reste froid.</translation>
    </message>
    <message>
        <source>Choose ports farther apart.</source>
        <translation>Choisissez des piquages plus éloignés.</translation>
    </message>
    <message>
        <source>Return port near the thermostat</source>
        <translation>Piquage de retour près du thermostat</translation>
    </message>
    <message>
        <source>common practice (away from it), no published source; the distance is our own choice</source>
        <translation>pratique courante (à l&apos;écart), sans source publiée&#xa0;; la distance est un choix propre</translation>
    </message>
    <message>
        <source>Warm coolant opens the thermostat and the heat goes to the radiator.</source>
        <translation>Le liquide chaud ouvre le thermostat et la chaleur part au radiateur.</translation>
    </message>
    <message>
        <source>Choose a return port farther from the thermostat housing.</source>
        <translation>Choisissez un piquage de retour plus loin du boîtier de thermostat.</translation>
    </message>
    <message>
        <source>Remote sensor near the return port</source>
        <translation>Sonde déportée près du piquage de retour</translation>
    </message>
    <message>
        <source>The sensor feels the heater&apos;s own warm coolant and turns it off while the engine is cold.</source>
        <translation>La sonde sent le liquide chaud du réchauffeur et l&apos;arrête alors que le moteur est froid.</translation>
    </message>
    <message>
        <source>Move the sensor farther from the return port.</source>
        <translation>Éloignez la sonde du piquage de retour.</translation>
    </message>
    <message>
        <source>Supply cut off by the thermostat</source>
        <translation>Alimentation coupée par le thermostat</translation>
    </message>
    <message>
        <source>how the cooling circuit is laid: the thermostat lies between the lower hose and the block</source>
        <translation>disposition du circuit de refroidissement&#xa0;: le thermostat est entre la durite inférieure et le bloc</translation>
    </message>
    <message>
        <source>A closed thermostat on the inlet side lets no cold coolant from the block to the lower hose.</source>
        <translation>Côté entrée, un thermostat fermé ne laisse passer aucun liquide froid du bloc à la durite inférieure.</translation>
    </message>
    <message>
        <source>Take the supply from a port in the block.</source>
        <translation>Prenez l&apos;alimentation sur un piquage du bloc.</translation>
    </message>
    <message>
        <source>Second way round through the cabin heater</source>
        <translation>Second chemin par le chauffage cabine</translation>
    </message>
    <message>
        <source>flow divides between ways in parallel</source>
        <translation>le débit se partage entre chemins parallèles</translation>
    </message>
    <message>
        <source>Coolant that goes round by the cabin heater does not pass the engine; how much is not known.</source>
        <translation>Le liquide qui fait le tour par le chauffage cabine ne passe pas par le moteur&#xa0;; la quantité n&apos;est pas connue.</translation>
    </message>
    <message>
        <source>Use a port in the engine, or keep the cabin heater line shut and use another port.</source>
        <translation>Utilisez un piquage du moteur, ou tenez la conduite de chauffage cabine fermée et utilisez un autre piquage.</translation>
    </message>
    <message>
        <source>Port shared by hoses</source>
        <translation>Piquage partagé entre durites</translation>
    </message>
    <message>
        <source>own choice: one port, one hose</source>
        <translation>choix propre&#xa0;: un piquage, une durite</translation>
    </message>
    <message>
        <source>Hoses on one port take coolant from each other, and two heaters can push against each other.</source>
        <translation>Les durites d&apos;un même piquage se disputent le liquide, et deux réchauffeurs peuvent se contrarier.</translation>
    </message>
    <message>
        <source>Give every hose a port of its own.</source>
        <translation>Donnez à chaque durite son propre piquage.</translation>
    </message>
    <message>
        <source>Loop on one bank only</source>
        <translation>Boucle sur une seule rangée</translation>
    </message>
    <message>
        <source>Coolant led from one bank to the other warms both.</source>
        <translation>Le liquide mené d&apos;une rangée à l&apos;autre chauffe les deux.</translation>
    </message>
    <message>
        <source>Take the return port on the other bank.</source>
        <translation>Prenez le piquage de retour sur l&apos;autre rangée.</translation>
    </message>
    <message>
        <source>Hose smaller than the manual asks for</source>
        <translation>Durite plus petite que ne demande le manuel</translation>
    </message>
    <message>
        <source>A hose that is too small lets too little through, and the heater overheats.</source>
        <translation>Une durite trop petite laisse passer trop peu, et le réchauffeur surchauffe.</translation>
    </message>
    <message>
        <source>Use a larger hose.</source>
        <translation>Utilisez une durite plus grosse.</translation>
    </message>
    <message>
        <source>Narrow place in a hose</source>
        <translation>Étranglement dans une durite</translation>
    </message>
    <message>
        <source>own choice: hose ends usually leave 0.70 to 0.82 of the hose&apos;s bore</source>
        <translation>choix propre&#xa0;: les embouts laissent d&apos;ordinaire 0,70 à 0,82 du diamètre intérieur de la durite</translation>
    </message>
    <message>
        <source>A few millimetres of head push little through a narrow place.</source>
        <translation>Quelques millimètres de charge font passer peu par un étranglement.</translation>
    </message>
    <message>
        <source>Use a part with a larger bore.</source>
        <translation>Utilisez une pièce de plus grand diamètre intérieur.</translation>
    </message>
    <message>
        <source>Bend too tight</source>
        <translation>Courbe trop serrée</translation>
    </message>
    <message>
        <source>common practice (6 bores to the inside of the bend where the hose gives none), no published source</source>
        <translation>pratique courante (6 diamètres intérieurs à l&apos;intérieur de la courbe si la durite n&apos;en indique pas), sans source publiée</translation>
    </message>
    <message>
        <source>A hose bent tighter than it allows flattens, kinks and cracks.</source>
        <translation>Une durite courbée plus serré qu&apos;elle ne l&apos;admet s&apos;aplatit, se plie et se fissure.</translation>
    </message>
    <message>
        <source>Open the bend, or use a moulded elbow.</source>
        <translation>Ouvrez la courbe, ou utilisez un coude moulé.</translation>
    </message>
    <message>
        <source>Bend does not fit</source>
        <translation>La courbe ne tient pas</translation>
    </message>
    <message>
        <source>geometry: an arc needs its length on both neighbours</source>
        <translation>géométrie&#xa0;: un arc demande sa longueur sur les deux voisins</translation>
    </message>
    <message>
        <source>The hose cannot be laid as drawn.</source>
        <translation>La durite ne peut pas être posée comme dessinée.</translation>
    </message>
    <message>
        <source>Move the points apart, or ask for a smaller radius.</source>
        <translation>Écartez les points, ou demandez un plus petit rayon.</translation>
    </message>
    <message>
        <source>Hose longer than it needs to be</source>
        <translation>Durite plus longue que nécessaire</translation>
    </message>
    <message>
        <source>common practice (short hoses), no published source; 250 mm is our own choice</source>
        <translation>pratique courante (durites courtes), sans source publiée&#xa0;; 250 mm est un choix propre</translation>
    </message>
    <message>
        <source>Every length of hose loses heat and slows the flow.</source>
        <translation>Toute longueur de durite perd de la chaleur et ralentit le débit.</translation>
    </message>
    <message>
        <source>Lead the hose more directly.</source>
        <translation>Menez la durite plus directement.</translation>
    </message>
    <message>
        <source>Hose not held up</source>
        <translation>Durite non soutenue</translation>
    </message>
    <message>
        <source>own choice: 300 mm and 450 mm, for stretches within 30 degrees of level</source>
        <translation>choix propre&#xa0;: 300 mm et 450 mm, pour les tronçons à moins de 30 degrés de l&apos;horizontale</translation>
    </message>
    <message>
        <source>A warm hose sags between its clips, and a sag is a dip with a hump behind it.</source>
        <translation>Une durite chaude fléchit entre ses colliers, et une flèche est un creux suivi d&apos;une bosse.</translation>
    </message>
    <message>
        <source>Put a clip in the middle of the span.</source>
        <translation>Mettez un collier de maintien au milieu de la portée.</translation>
    </message>
    <message>
        <source>No slack between frame and engine</source>
        <translation>Pas de mou entre châssis et moteur</translation>
    </message>
    <message>
        <source>common practice (hoses follow the engine), no published source; 3 % and 45 degrees are our own choice</source>
        <translation>pratique courante (les durites suivent le moteur), sans source publiée&#xa0;; 3&#xa0;% et 45 degrés sont un choix propre</translation>
    </message>
    <message>
        <source>The engine moves on its mounts and pulls a taut hose off its hose ends.</source>
        <translation>Le moteur bouge sur ses supports et arrache une durite tendue de ses embouts.</translation>
    </message>
    <message>
        <source>Lead the hose round a bend, or make it longer.</source>
        <translation>Faites passer la durite par une courbe, ou allongez-la.</translation>
    </message>
    <message>
        <source>Too near the ground</source>
        <translation>Trop près du sol</translation>
    </message>
    <message>
        <source>own choice: 200 mm at lowest ride height</source>
        <translation>choix propre&#xa0;: 200 mm, suspension au plus bas</translation>
    </message>
    <message>
        <source>What hangs low is torn off by kerbs, stones and snow.</source>
        <translation>Ce qui pend bas est arraché par bordures, pierres et neige.</translation>
    </message>
    <message>
        <source>Raise it.</source>
        <translation>Relevez la pièce.</translation>
    </message>
    <message>
        <source>Too near something hot or moving</source>
        <translation>Trop près de ce qui est chaud ou bouge</translation>
    </message>
    <message>
        <source>own choice: 150 mm from exhaust and turbo, 75 mm behind a heat shield, 50 mm from all else</source>
        <translation>choix propre&#xa0;: 150 mm de l&apos;échappement et du turbo, 75 mm derrière un écran thermique, 50 mm de tout le reste</translation>
    </message>
    <message>
        <source>Heat hardens a hose and what moves cuts it; either empties the cooling system.</source>
        <translation>La chaleur durcit une durite et ce qui bouge la coupe&#xa0;; l&apos;un ou l&apos;autre vide le circuit de refroidissement.</translation>
    </message>
    <message>
        <source>Lead it farther away.</source>
        <translation>Augmentez la distance.</translation>
    </message>
    <message>
        <source>Open hose end</source>
        <translation>Bout de durite ouvert</translation>
    </message>
    <message>
        <source>a loop has no open end</source>
        <translation>une boucle n&apos;a pas de bout ouvert</translation>
    </message>
    <message>
        <source>Coolant runs out of an open end.</source>
        <translation>Le liquide s&apos;écoule d&apos;un bout ouvert.</translation>
    </message>
    <message>
        <source>Connect the end to a port or to the heater.</source>
        <translation>Reliez le bout à un piquage ou au réchauffeur.</translation>
    </message>
    <message>
        <source>Not connected to a loop</source>
        <translation>Non relié à une boucle</translation>
    </message>
    <message>
        <source>a loop leads from a port through the heater to a port</source>
        <translation>une boucle va d&apos;un piquage à un piquage en passant par le réchauffeur</translation>
    </message>
    <message>
        <source>Nothing circulates unless supply hose, heater and return hose make one loop.</source>
        <translation>Rien ne circule si durite d&apos;alimentation, réchauffeur et durite de retour ne forment pas une boucle.</translation>
    </message>
    <message>
        <source>Lead the supply hose from a port to the inlet and the return hose from the outlet to a port.</source>
        <translation>Menez la durite d&apos;alimentation d&apos;un piquage à l&apos;entrée et la durite de retour de la sortie à un piquage.</translation>
    </message>
    <message>
        <source>Isolation valve missing</source>
        <translation>Vanne d&apos;isolement absente</translation>
    </message>
    <message>
        <source>common practice (valves at both ends of the loop), no published source; 300 mm is our own choice</source>
        <translation>pratique courante (vannes aux deux bouts de la boucle), sans source publiée&#xa0;; 300 mm est un choix propre</translation>
    </message>
    <message>
        <source>Without valves at the engine the heater is serviced only with the cooling system drained.</source>
        <translation>Sans vannes au moteur, il faut vidanger le circuit de refroidissement pour réparer le réchauffeur.</translation>
    </message>
    <message>
        <source>Put an isolation valve near the port.</source>
        <translation>Mettez une vanne d&apos;isolement près du piquage.</translation>
    </message>
    <message>
        <source>Valve closed</source>
        <translation>Vanne fermée</translation>
    </message>
    <message>
        <source>A closed valve stops the flow and the element overheats; two make a sealed vessel under pressure.</source>
        <translation>Une vanne fermée arrête le débit et l&apos;élément surchauffe&#xa0;; deux font un récipient clos sous pression.</translation>
    </message>
    <message>
        <source>Open the valve whenever the heater is on.</source>
        <translation>Ouvrez la vanne chaque fois que le réchauffeur est en marche.</translation>
    </message>
    <message>
        <source>Check valve in the loop</source>
        <translation>Clapet anti-retour dans la boucle</translation>
    </message>
    <message>
        <source>common practice, no published source: check valves open on far more than a few millimetres of head</source>
        <translation>pratique courante, sans source publiée&#xa0;: un clapet anti-retour demande bien plus que quelques millimètres de charge</translation>
    </message>
    <message>
        <source>A few millimetres of head do not lift a disc or swing a flap against its own weight.</source>
        <translation>Quelques millimètres de charge ne lèvent pas un disque ni un battant contre son propre poids.</translation>
    </message>
    <message>
        <source>Take the check valve out.</source>
        <translation>Enlevez le clapet anti-retour.</translation>
    </message>
    <message>
        <source>Too much antifreeze</source>
        <translation>Trop d&apos;antigel</translation>
    </message>
    <message>
        <source>Past 60 % antifreeze carries heat worse, flows worse and freezes sooner.</source>
        <translation>Au-delà de 60&#xa0;%, l&apos;antigel transporte moins bien la chaleur, coule moins bien et gèle plus tôt.</translation>
    </message>
    <message>
        <source>Add water.</source>
        <translation>Ajoutez de l&apos;eau.</translation>
    </message>
    <message>
        <source>Coolant may freeze</source>
        <translation>Le liquide peut geler</translation>
    </message>
    <message>
        <source>own choice: 5 K; freezing points after the ASHRAE Handbook Fundamentals (2001)</source>
        <translation>choix propre&#xa0;: 5 K&#xa0;; points de congélation d&apos;après l&apos;ASHRAE Handbook Fundamentals (2001)</translation>
    </message>
    <message>
        <source>Slush does not circulate, and ice breaks hoses and block.</source>
        <translation>La bouillie de glace ne circule pas, et la glace brise durites et bloc.</translation>
    </message>
    <message>
        <source>Add antifreeze.</source>
        <translation>Ajoutez de l&apos;antigel.</translation>
    </message>
    <message>
        <source>Kind of antifreeze not known</source>
        <translation>Type d&apos;antigel inconnu</translation>
    </message>
    <message>
        <source>Kinds of antifreeze that do not go together gel, foam or lose their protection from corrosion.</source>
        <translation>Des types d&apos;antigel incompatibles gélifient, moussent ou ne protègent plus de la corrosion.</translation>
    </message>
    <message>
        <source>The engine maker&apos;s specification rules: fill that and nothing else, and do not mix kinds.</source>
        <translation>La spécification du constructeur du moteur fait foi&#xa0;: n&apos;utilisez rien d&apos;autre, et ne mélangez pas les types.</translation>
    </message>
    <message>
        <source>the power of %1</source>
        <translation>la puissance de %1</translation>
    </message>
    <message>
        <source>{a} stalls: its warm coolant stands no higher than the cold, and nothing drives it round.</source>
        <translation>{a} reste à l&apos;arrêt&#xa0;: son liquide chaud n&apos;est pas plus haut que le froid, et rien ne l&apos;entraîne.</translation>
    </message>
    <message>
        <source>{a} stalls: it can raise {0} of head, and air withstands {1}.</source>
        <translation>{a} reste à l&apos;arrêt&#xa0;: {0} de charge possible, et l&apos;air résiste à {1}.</translation>
    </message>
    <message>
        <source>{a} runs backward: warm coolant leaves by the supply hose.</source>
        <translation>{a} circule à l&apos;envers&#xa0;: le liquide chaud part par la durite d&apos;alimentation.</translation>
    </message>
    <message>
        <source>{a} takes {0} of the loop&apos;s head.</source>
        <translation>{a} absorbe {0} de la charge de la boucle.</translation>
    </message>
    <message>
        <source>the balance of driving and resisting heads, computed from the drawing (core/physics/circulation.h)</source>
        <translation>l&apos;équilibre des charges motrices et résistantes, calculé d&apos;après le dessin (core/physics/circulation.h)</translation>
    </message>
    <message>
        <source>Loop stalls</source>
        <translation>Boucle à l&apos;arrêt</translation>
    </message>
    <message>
        <source>A heater whose coolant stands still overheats while the engine stays cold.</source>
        <translation>Un réchauffeur dont le liquide stagne surchauffe tandis que le moteur reste froid.</translation>
    </message>
    <message>
        <source>Raise the return port over the heater, lower the heater, and lead the return so that it rises.</source>
        <translation>Placez le piquage de retour plus haut que le réchauffeur, abaissez le réchauffeur, et menez le retour en montant.</translation>
    </message>
    <message>
        <source>Loop runs backward</source>
        <translation>Boucle à l&apos;envers</translation>
    </message>
    <message>
        <source>Warm coolant that leaves by the supply hose comes to the engine at its lowest port and drives little.</source>
        <translation>Le liquide chaud qui part par la durite d&apos;alimentation arrive au moteur par son piquage le plus bas et entraîne peu.</translation>
    </message>
    <message>
        <source>Lead the return straight up from the outlet and the supply straight down to the inlet.</source>
        <translation>Menez le retour droit vers le haut depuis la sortie et l&apos;alimentation droit vers le bas jusqu&apos;à l&apos;entrée.</translation>
    </message>
    <message>
        <source>One part takes much of the loop&apos;s head</source>
        <translation>Une pièce absorbe beaucoup de la charge</translation>
    </message>
    <message>
        <source>own choice: 30 %; losses after Hooper (1981, 1988)</source>
        <translation>choix propre&#xa0;: 30&#xa0;%&#xa0;; pertes d&apos;après Hooper (1981, 1988)</translation>
    </message>
    <message>
        <source>The loop has a few millimetres of head; a part that takes a third of it rules the flow.</source>
        <translation>La boucle a quelques millimètres de charge&#xa0;; une pièce qui en prend le tiers commande le débit.</translation>
    </message>
    <message>
        <source>Much power for heaters without a pump</source>
        <translation>Beaucoup de puissance pour des réchauffeurs sans pompe</translation>
    </message>
    <message>
        <source>own choice: 5 kW in all</source>
        <translation>choix propre&#xa0;: 5 kW en tout</translation>
    </message>
    <message>
        <source>So much heat is hard to carry away by a few millimetres of head.</source>
        <translation>Tant de chaleur est difficile à évacuer avec quelques millimètres de charge.</translation>
    </message>
    <message>
        <source>Consider a heater with a pump.</source>
        <translation>Envisagez un réchauffeur à pompe.</translation>
    </message>
    <message>
        <source>Air locks the loop</source>
        <translation>L&apos;air bloque la boucle</translation>
    </message>
    <message>
        <source>filling computed from the drawing; the head of a pocket after May, Allen and Nelson (2018)</source>
        <translation>remplissage calculé d&apos;après le dessin&#xa0;; la charge d&apos;une poche d&apos;après May, Allen et Nelson (2018)</translation>
    </message>
    <message>
        <source>Air that closes the bore takes more head than the loop can raise, and nothing moves.</source>
        <translation>L&apos;air qui obstrue la section absorbe plus de charge que la boucle n&apos;en produit, et rien ne bouge.</translation>
    </message>
    <message>
        <source>Re-route the hose so that it rises all the way; a bleed at the crest is the next best.</source>
        <translation>Refaites le tracé pour que la durite monte sur toute sa longueur&#xa0;; à défaut, un purgeur à la crête.</translation>
    </message>
    <message>
        <source>Air weakens the flow</source>
        <translation>L&apos;air affaiblit le débit</translation>
    </message>
    <message>
        <source>own choice: 5 %; filling computed from the drawing</source>
        <translation>choix propre&#xa0;: 5&#xa0;%&#xa0;; remplissage calculé d&apos;après le dessin</translation>
    </message>
    <message>
        <source>Air that stays in a hose takes part of the few millimetres of head.</source>
        <translation>L&apos;air qui reste dans une durite absorbe une part des quelques millimètres de charge.</translation>
    </message>
    <message>
        <source>Re-route the hose so that it rises all the way, or put a bleed at the crest.</source>
        <translation>Refaites le tracé pour que la durite monte sur toute sa longueur, ou mettez un purgeur à la crête.</translation>
    </message>
    <message>
        <source>Heater chamber not full</source>
        <translation>Chambre du réchauffeur pas pleine</translation>
    </message>
    <message>
        <source>filling computed from the drawing; the element has to be covered (common practice)</source>
        <translation>remplissage calculé d&apos;après le dessin&#xa0;; l&apos;élément chauffant doit être couvert (pratique courante)</translation>
    </message>
    <message>
        <source>An element that is not covered by coolant burns out.</source>
        <translation>Un élément chauffant que le liquide ne couvre pas grille.</translation>
    </message>
    <message>
        <source>Fill higher, let the air out, or turn the heater so that its outlet is at the top.</source>
        <translation>Remplissez plus haut, laissez sortir l&apos;air, ou tournez le réchauffeur pour que sa sortie soit en haut.</translation>
    </message>
    <message>
        <source>Air to be cleared</source>
        <translation>Air à chasser</translation>
    </message>
    <message>
        <source>clearing velocities after Kalinske and Bliss (1943), Wisner (1975), Kent (1952), Escarameia (2007), which scatter</source>
        <translation>vitesses d&apos;entraînement d&apos;après Kalinske et Bliss (1943), Wisner (1975), Kent (1952), Escarameia (2007), qui se dispersent</translation>
    </message>
    <message>
        <source>What the engine&apos;s pump does not push out stays, and air comes out of cold coolant again when it warms.</source>
        <translation>Ce que la pompe du moteur ne chasse pas reste, et l&apos;air sort de nouveau du liquide froid quand il chauffe.</translation>
    </message>
    <message>
        <source>Bleed at the crest, or re-route; run the engine, top up, and look again after the first night.</source>
        <translation>Purgez à la crête, ou refaites le tracé&#xa0;; faites tourner le moteur, complétez, et revérifiez après la première nuit.</translation>
    </message>
    <message>
        <source>Coolant falls under its minimum in the cold</source>
        <translation>Le liquide passe sous son minimum au froid</translation>
    </message>
    <message>
        <source>shrinkage of the coolant to the coldest ambient, from its density</source>
        <translation>contraction du liquide jusqu&apos;à la température ambiante minimale, d&apos;après sa masse volumique</translation>
    </message>
    <message>
        <source>A level that falls lets air into what stood just under it.</source>
        <translation>Un niveau qui baisse laisse entrer l&apos;air dans ce qui était juste dessous.</translation>
    </message>
    <message>
        <source>Fill higher, or have a larger tank.</source>
        <translation>Remplissez plus haut, ou prenez un plus grand vase.</translation>
    </message>
    <message>
        <source>Coolant leaves the heater too hot</source>
        <translation>Le liquide sort trop chaud du réchauffeur</translation>
    </message>
    <message>
        <source>Coolant hotter than 180 degF at the outlet boils on the element and ages hoses and coolant.</source>
        <translation>Au-delà de 180 degF à la sortie, le liquide bout sur l&apos;élément et vieillit, avec les durites.</translation>
    </message>
    <message>
        <source>Let more coolant flow: a larger bore, shorter hoses, a lower heater, ports farther apart.</source>
        <translation>Laissez passer plus de liquide&#xa0;: plus grand diamètre, durites plus courtes, réchauffeur plus bas, piquages plus éloignés.</translation>
    </message>
    <message>
        <source>Close to boiling</source>
        <translation>Près de l&apos;ébullition</translation>
    </message>
    <message>
        <source>own choice: 5 K; boiling point after Raoult&apos;s law</source>
        <translation>choix propre&#xa0;: 5 K&#xa0;; point d&apos;ébullition d&apos;après la loi de Raoult</translation>
    </message>
    <message>
        <source>Steam drives the coolant out of the chamber and bares the element.</source>
        <translation>La vapeur chasse le liquide de la chambre et découvre l&apos;élément chauffant.</translation>
    </message>
    <message>
        <source>Let more coolant flow, and check the pressure cap.</source>
        <translation>Laissez passer plus de liquide, et contrôlez le bouchon taré.</translation>
    </message>
    <message>
        <source>Hose starves the flow</source>
        <translation>La durite étrangle le débit</translation>
    </message>
    <message>
        <source>computed: the smallest stock bore with which outlet and cycles keep to their limits</source>
        <translation>calculé&#xa0;: le plus petit diamètre en stock avec lequel sortie et cycles restent dans leurs limites</translation>
    </message>
    <message>
        <source>A hose too small for this heater and these heights lets too little through.</source>
        <translation>Une durite trop petite pour ce réchauffeur et ces hauteurs laisse passer trop peu.</translation>
    </message>
    <message>
        <source>Use a larger hose and larger hose ends.</source>
        <translation>Utilisez une durite et des embouts plus gros.</translation>
    </message>
    <message>
        <source>Heater cycles too often</source>
        <translation>Le réchauffeur cycle trop souvent</translation>
    </message>
    <message>
        <source>A heater that turns itself off and on warms itself, not the engine, and wears out its thermostat.</source>
        <translation>Un réchauffeur qui s&apos;arrête et se relance sans cesse se chauffe lui-même, pas le moteur, et use son thermostat.</translation>
    </message>
    <message>
        <source>Choose ports farther apart, a larger bore, or a smaller heater.</source>
        <translation>Choisissez des piquages plus éloignés, un plus grand diamètre, ou un plus petit réchauffeur.</translation>
    </message>
    <message>
        <source>Engine does not get warm enough</source>
        <translation>Le moteur ne chauffe pas assez</translation>
    </message>
    <message>
        <source>computed from heat loss and power</source>
        <translation>calculé d&apos;après perte de chaleur et puissance</translation>
    </message>
    <message>
        <source>In this cold and wind the engine loses what the heater gives before it is warm enough.</source>
        <translation>Par ce froid et ce vent, le moteur perd ce que donne le réchauffeur avant d&apos;être assez chaud.</translation>
    </message>
    <message>
        <source>Take a larger heater, keep the wind off the engine, or be content with less.</source>
        <translation>Prenez un plus grand réchauffeur, abritez le moteur du vent, ou contentez-vous de moins.</translation>
    </message>
    <message>
        <source>{a} rises only {0} over {1}.</source>
        <translation>{a} ne monte que de {0} sur {1}.</translation>
    </message>
    <message>
        <source>{a} falls {0} over {1}, where it should rise.</source>
        <translation>{a} descend de {0} sur {1}, où il faut monter.</translation>
    </message>
    <message>
        <source>{a} is level over {0}, where it should rise.</source>
        <translation>{a} est de niveau sur {0}, où il faut monter.</translation>
    </message>
    <message>
        <source>Give it at least {0} more rise over {1}.</source>
        <translation>Donnez au moins {0} de montée en plus sur {1}.</translation>
    </message>
    <message>
        <source>{a} spans {0}, near level, without a clip.</source>
        <translation>{a} franchit {0}, presque de niveau, sans collier de maintien.</translation>
    </message>
    <message>
        <source>{a} has {1} long spans, near level, without a clip; the longest is {0}.</source>
        <translation>{a} a {1} longues portées, presque de niveau, sans collier de maintien&#xa0;; la plus longue fait {0}.</translation>
    </message>
    <message>
        <source>Put a clip at least every {0}.</source>
        <translation>Mettez un collier de maintien au moins tous les {0}.</translation>
    </message>
    <message>
        <source>{a}, from frame to engine, is only {0} longer than straight and has no bend: the engine pulls at its ends.</source>
        <translation>{a}, du châssis au moteur, n&apos;a que {0} de mou et pas de courbe&#xa0;: le moteur tire sur ses bouts.</translation>
    </message>
    <message>
        <source>Make it at least {0} longer, or lead it round a bend of {1}.</source>
        <translation>Allongez la durite d&apos;au moins {0}, ou faites-la passer par une courbe de {1}.</translation>
    </message>
    <message>
        <source>{a} has no isolation valve near {b}.</source>
        <translation>{a} n&apos;a pas de vanne d&apos;isolement près de {b}.</translation>
    </message>
    <message>
        <source>{a} has its isolation valve {0} from {b}.</source>
        <translation>{a} a sa vanne d&apos;isolement à {0} de {b}.</translation>
    </message>
    <message>
        <source>Put an isolation valve within {0} of {a}.</source>
        <translation>Mettez une vanne d&apos;isolement à moins de {0} de {a}.</translation>
    </message>
    <message>
        <source>{a} has a closed isolation valve: nothing circulates.</source>
        <translation>{a} a une vanne d&apos;isolement fermée&#xa0;: rien ne circule.</translation>
    </message>
    <message>
        <source>{a} has a closed isolation valve, and so has the heater&apos;s other hose: the heater is a sealed vessel and builds dangerous pressure when heated.</source>
        <translation>{a} a une vanne d&apos;isolement fermée, et l&apos;autre durite du réchauffeur aussi&#xa0;: le réchauffeur est un récipient clos qui monte à une pression dangereuse en chauffant.</translation>
    </message>
    <message>
        <source>Turn the heater off, let it cool, then open both valves.</source>
        <translation>Arrêtez le réchauffeur, laissez-le refroidir, puis ouvrez les deux vannes.</translation>
    </message>
    <message>
        <source>{a} is a cabin heater line with its shut-off closed: nothing circulates.</source>
        <translation>{a} est une conduite de chauffage cabine dont la vanne d&apos;arrêt est fermée&#xa0;: rien ne circule.</translation>
    </message>
    <message>
        <source>Open the shut-off whenever the heater is on, or use another port.</source>
        <translation>Ouvrez la vanne d&apos;arrêt chaque fois que le réchauffeur est en marche, ou utilisez un autre piquage.</translation>
    </message>
    <message>
        <source>{a} has a lift check valve, which does not open on a few mm of head.</source>
        <translation>{a} a un clapet anti-retour à levée, qui ne s&apos;ouvre pas sous quelques mm de charge.</translation>
    </message>
    <message>
        <source>{a} has a swing check valve, which does not open on a few mm of head unless it is hung to fall open.</source>
        <translation>{a} a un clapet anti-retour à battant, qui ne s&apos;ouvre pas sous quelques mm de charge sauf s&apos;il est monté pour s&apos;ouvrir par gravité.</translation>
    </message>
    <message>
        <source>where the thermostat turns on</source>
        <translation>le point de mise en marche du thermostat</translation>
    </message>
    <message>
        <source>where the thermostat turns off</source>
        <translation>le point d&apos;arrêt du thermostat</translation>
    </message>
    <message>
        <source>the ambient temperature</source>
        <translation>la température ambiante</translation>
    </message>
    <message>
        <source>the engine&apos;s mass</source>
        <translation>la masse du moteur</translation>
    </message>
    <message>
        <source>the coolant is slush at the start, so no warm-up can be computed</source>
        <translation>le liquide est en bouillie de glace au départ, aucune chauffe n&apos;est calculable</translation>
    </message>
    <message>
        <source>no warm-up could be computed: %1</source>
        <translation>aucune chauffe n&apos;a pu être calculée&#xa0;: %1</translation>
    </message>
    <message>
        <source>{a} comes within {0} of boiling.</source>
        <translation>{a} approche de l&apos;ébullition à {0} près.</translation>
    </message>
    <message>
        <source>{a} boils its coolant.</source>
        <translation>{a} fait bouillir son liquide.</translation>
    </message>
    <message>
        <source>{a} starves on hoses of {0}: with {1} its outlet and its cycles would keep to their limits.</source>
        <translation>{a} manque de débit avec des durites de {0}&#xa0;: avec {1}, sa sortie et ses cycles resteraient dans leurs limites.</translation>
    </message>
    <message>
        <source>Use hose of {0} bore or more, with hose ends and valves to match.</source>
        <translation>Utilisez une durite de diamètre intérieur {0} ou plus, avec embouts et vannes assortis.</translation>
    </message>
    <message>
        <source>the wind</source>
        <translation>le vent</translation>
    </message>
    <message>
        <source>The engine gets to {0} in {1} hours, and {2} is wanted.</source>
        <translation>Le moteur arrive à {0} en {1} heures, et il faut {2}.</translation>
    </message>
    <message>
        <source>The engine may not get to {0} in {1} hours.</source>
        <translation>Le moteur peut ne pas arriver à {0} en {1} heures.</translation>
    </message>
    <message>
        <source>Lock out the heater&apos;s power</source>
        <translation>Consigner l&apos;alimentation du réchauffeur</translation>
    </message>
    <message>
        <source>Mains voltage. Switch off, lock, tag, and try it: a heater that is off by its thermostat is not dead.</source>
        <translation>Tension du réseau. Coupez, cadenassez, étiquetez et vérifiez&#xa0;: un réchauffeur arrêté par son thermostat n&apos;est pas hors tension.</translation>
    </message>
    <message>
        <source>Disconnect and lock out the battery</source>
        <translation>Débrancher et consigner la batterie</translation>
    </message>
    <message>
        <source>Somebody may crank the engine while hands are at belts and fan.</source>
        <translation>Quelqu&apos;un peut lancer le moteur alors que des mains sont près des courroies et du ventilateur.</translation>
    </message>
    <message>
        <source>Inhibit the generator&apos;s automatic start</source>
        <translation>Bloquer le démarrage automatique du groupe</translation>
    </message>
    <message>
        <source>A generator set starts by itself when the mains fail. Where there is none, tick and go on.</source>
        <translation>Un groupe électrogène démarre seul quand le réseau manque. S&apos;il n&apos;y en a pas, cochez et passez.</translation>
    </message>
    <message>
        <source>Chock the wheels</source>
        <translation>Caler les roues</translation>
    </message>
    <message>
        <source>Never work under a vehicle that is not supported.</source>
        <translation>Ne travaillez jamais sous un véhicule non soutenu.</translation>
    </message>
    <message>
        <source>Block the air suspension</source>
        <translation>Bloquer la suspension pneumatique</translation>
    </message>
    <message>
        <source>Air suspension sinks without warning. Where there is none, tick and go on.</source>
        <translation>Une suspension pneumatique s&apos;affaisse sans prévenir. S&apos;il n&apos;y en a pas, cochez et passez.</translation>
    </message>
    <message>
        <source>Open the pressure cap, cold</source>
        <translation>Ouvrir le bouchon taré, à froid</translation>
    </message>
    <message>
        <source>Hot coolant under pressure scalds. Open it only when a bare hand can stay on the upper hose.</source>
        <translation>Le liquide chaud sous pression ébouillante. N&apos;ouvrez que si une main nue peut rester sur la durite supérieure.</translation>
    </message>
    <message>
        <source>Drain and flush</source>
        <translation>Vidanger et rincer</translation>
    </message>
    <message>
        <source>Antifreeze is poisonous: catch all of it, keep it from animals, have it disposed of properly.</source>
        <translation>L&apos;antigel est toxique&#xa0;: recueillez-le en totalité, tenez-le loin des animaux, faites-le éliminer dans les règles.</translation>
    </message>
    <message>
        <source>Mount the heater on the frame</source>
        <translation>Monter le réchauffeur sur le châssis</translation>
    </message>
    <message>
        <source>Support the heater while it hangs free. Look behind a rail before drilling it.</source>
        <translation>Soutenez le réchauffeur tant qu&apos;il n&apos;est pas fixé. Regardez derrière un longeron avant de percer.</translation>
    </message>
    <message>
        <source>Route and clamp the hoses</source>
        <translation>Poser et serrer les durites</translation>
    </message>
    <message>
        <source>Keep clear of exhaust, belts, fan and shafts. Return rising all the way, supply without a high point.</source>
        <translation>À l&apos;écart de l&apos;échappement, des courroies, du ventilateur et des arbres. Retour montant sur toute sa longueur, alimentation sans point haut.</translation>
    </message>
    <message>
        <source>Open the isolation valves</source>
        <translation>Ouvrir les vannes d&apos;isolement</translation>
    </message>
    <message>
        <source>A heater between two closed valves is a sealed vessel and bursts.</source>
        <translation>Un réchauffeur entre deux vannes fermées est un récipient clos et éclate.</translation>
    </message>
    <message>
        <source>Mix the coolant</source>
        <translation>Mélanger le liquide</translation>
    </message>
    <message>
        <source>Wear gloves and goggles. Poisonous; mark the can.</source>
        <translation>Portez gants et lunettes. Toxique&#xa0;; marquez le bidon.</translation>
    </message>
    <message>
        <source>Fill slowly</source>
        <translation>Remplir lentement</translation>
    </message>
    <message>
        <source>The element burns out without coolant: the heater stays locked out.</source>
        <translation>Sans liquide, l&apos;élément chauffant grille&#xa0;: le réchauffeur reste consigné.</translation>
    </message>
    <message>
        <source>Run the engine until its thermostat opens</source>
        <translation>Faire tourner le moteur jusqu&apos;à l&apos;ouverture du thermostat</translation>
    </message>
    <message>
        <source>Outdoors or with extraction only. Hands, hair and sleeves away from belts and fan. The heater stays locked out.</source>
        <translation>Seulement dehors ou avec extraction. Mains, cheveux et manches loin des courroies et du ventilateur. Le réchauffeur reste consigné.</translation>
    </message>
    <message>
        <source>Stop the engine and let it cool</source>
        <translation>Arrêter le moteur et le laisser refroidir</translation>
    </message>
    <message>
        <source>Do not open the cap to hurry it.</source>
        <translation>N&apos;ouvrez pas le bouchon pour aller plus vite.</translation>
    </message>
    <message>
        <source>Inspect every joint</source>
        <translation>Inspecter chaque raccord</translation>
    </message>
    <message>
        <source>Engine off, battery locked out again. Hot parts.</source>
        <translation>Moteur arrêté, batterie de nouveau consignée. Pièces chaudes.</translation>
    </message>
    <message>
        <source>Top up, cold</source>
        <translation>Compléter, à froid</translation>
    </message>
    <message>
        <source>Open the cap only when a bare hand can stay on the upper hose.</source>
        <translation>N&apos;ouvrez le bouchon que si une main nue peut rester sur la durite supérieure.</translation>
    </message>
    <message>
        <source>Have the power connected</source>
        <translation>Faire raccorder l&apos;alimentation électrique</translation>
    </message>
    <message>
        <source>Grounded supply by the local electrical code and a licensed electrician. Still locked out.</source>
        <translation>Alimentation mise à la terre selon les règles électriques locales, par un électricien agréé. Toujours consignée.</translation>
    </message>
    <message>
        <source>Energise the heater</source>
        <translation>Mettre le réchauffeur sous tension</translation>
    </message>
    <message>
        <source>Never without coolant in the chamber, never with a valve closed.</source>
        <translation>Jamais sans liquide dans la chambre, jamais avec une vanne fermée.</translation>
    </message>
    <message>
        <source>Verify: take readings</source>
        <translation>Vérifier&#xa0;: prendre des mesures</translation>
    </message>
    <message>
        <source>Hot coolant and pressure: read by instrument before you touch. Switch off before a valve is closed.</source>
        <translation>Liquide chaud et pression&#xa0;: lisez à l&apos;instrument avant de toucher. Coupez avant de fermer une vanne.</translation>
    </message>
    <message>
        <source>Recheck after the first night</source>
        <translation>Revérifier après la première nuit</translation>
    </message>
    <message>
        <source>Lock out the power before a clamp is tightened.</source>
        <translation>Consignez l&apos;alimentation avant de resserrer un collier.</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Remettre l&apos;installation</translation>
    </message>
    <message>
        <source>The next who works here must know that the heater can turn on by itself: leave the label.</source>
        <translation>Le prochain à travailler ici doit savoir que le réchauffeur peut se mettre en marche seul&#xa0;: laissez l&apos;étiquette.</translation>
    </message>
    <message>
        <source>There is no step &quot;{a}&quot;.</source>
        <translation>Il n&apos;y a pas d&apos;étape «&#xa0;{a}&#xa0;».</translation>
    </message>
    <message>
        <source>Not yet. First: {a}.</source>
        <translation>Pas encore. D&apos;abord&#xa0;: {a}.</translation>
    </message>
    <message>
        <source>Done out of order, and recorded as such. Still open: {a}.</source>
        <translation>Fait hors ordre, et noté comme tel. Encore à faire&#xa0;: {a}.</translation>
    </message>
    <message>
        <source>It is not ticked.</source>
        <translation>Ce n&apos;est pas coché.</translation>
    </message>
    <message>
        <source>These rest on it and may no longer hold: {a}.</source>
        <translation>Ces étapes en dépendent et ne valent peut-être plus&#xa0;: {a}.</translation>
    </message>
    <message>
        <source>Wait until a bare hand can stay on the upper hose.</source>
        <translation>Attendez qu&apos;une main nue puisse rester sur la durite supérieure.</translation>
    </message>
    <message>
        <source>{a}: {0}. Measure that no conductor carries it any more.</source>
        <translation>{a}&#xa0;: {0}. Mesurez qu&apos;aucun conducteur n&apos;en porte plus.</translation>
    </message>
    <message>
        <source>{a}: its voltage is not entered. Measure that no conductor is live.</source>
        <translation>{a}&#xa0;: sa tension n&apos;est pas saisie. Mesurez qu&apos;aucun conducteur n&apos;est sous tension.</translation>
    </message>
    <message>
        <source>The engine holds about {0}: have vessels for it.</source>
        <translation>Le moteur contient environ {0}&#xa0;: ayez de quoi les recueillir.</translation>
    </message>
    <message>
        <source>How much the engine holds is not entered: have vessels enough.</source>
        <translation>Le contenu du moteur n&apos;est pas saisi&#xa0;: ayez assez de récipients.</translation>
    </message>
    <message>
        <source>Flush until the water runs clear: sediment settles in the heater, the lowest place.</source>
        <translation>Rincez jusqu&apos;à ce que l&apos;eau soit claire&#xa0;: les dépôts se posent dans le réchauffeur, au point le plus bas.</translation>
    </message>
    <message>
        <source>{a}: its top {0} under the lowest point of the water jacket.</source>
        <translation>{a}&#xa0;: son sommet {0} sous le point le plus bas de la chemise d&apos;eau.</translation>
    </message>
    <message>
        <source>{a} is drawn on the engine: it would shake with it. The frame is better.</source>
        <translation>{a} est dessiné sur le moteur&#xa0;: il vibrerait avec lui. Le châssis vaut mieux.</translation>
    </message>
    <message>
        <source>No isolation valve is drawn.</source>
        <translation>Aucune vanne d&apos;isolement n&apos;est dessinée.</translation>
    </message>
    <message>
        <source>Open the shut-off of {a}.</source>
        <translation>Ouvrir la vanne d&apos;arrêt de {a}.</translation>
    </message>
    <message>
        <source>Kind and share of antifreeze are not entered.</source>
        <translation>Type et part d&apos;antigel ne sont pas saisis.</translation>
    </message>
    <message>
        <source>Plain water is drawn: it freezes.</source>
        <translation>De l&apos;eau pure est dessinée&#xa0;: elle gèle.</translation>
    </message>
    <message>
        <source>{0} antifreeze by volume ({a} glycol), at most {1}; the rest deionised or distilled water.</source>
        <translation>{0} d&apos;antigel en volume ({a} glycol), {1} au plus&#xa0;; le reste en eau déminéralisée ou distillée.</translation>
    </message>
    <message>
        <source>ethylene</source>
        <translation>éthylène</translation>
    </message>
    <message>
        <source>propylene</source>
        <translation>propylène</translation>
    </message>
    <message>
        <source>How much hoses and heater take is not computed.</source>
        <translation>Ce que prennent durites et réchauffeur n&apos;est pas calculé.</translation>
    </message>
    <message>
        <source>To come to {0} of antifreeze ({a} glycol): drain {1}, add {2} of antifreeze and {3} of distilled water{b}.</source>
        <translation>Pour arriver à {0} d&apos;antigel ({a} glycol)&#xa0;: vidanger {1}, ajouter {2} d&apos;antigel et {3} d&apos;eau distillée{b}.</translation>
    </message>
    <message>
        <source>in %1 rounds</source>
        <translation>en %1 tours</translation>
    </message>
    <message>
        <source>Filling is not computed: fill to the cold full mark.</source>
        <translation>Le remplissage n&apos;est pas calculé&#xa0;: remplissez jusqu&apos;au repère plein à froid.</translation>
    </message>
    <message>
        <source>{0} was let out of the engine before: {1} to pour in altogether.</source>
        <translation>{0} ont été retirés du moteur auparavant&#xa0;: {1} à verser en tout.</translation>
    </message>
    <message>
        <source>Bleed {a} at its crest, {0} up and {1} along it: {2} of air stay there.</source>
        <translation>Purgez {a} à sa crête, à {0} de hauteur, à {1} du départ&#xa0;: {2} d&apos;air y reste.</translation>
    </message>
    <message>
        <source>Filled as drawn no air stays that closes a bore.</source>
        <translation>Rempli comme dessiné, il ne reste pas d&apos;air qui obstrue la section.</translation>
    </message>
    <message>
        <source>Until the upper hose turns hot, at about {0}; cabin heater open.</source>
        <translation>Jusqu&apos;à ce que la durite supérieure devienne chaude, vers {0}&#xa0;; chauffage cabine ouvert.</translation>
    </message>
    <message>
        <source>Every clamp, thread and valve, with light and mirror; the heater&apos;s fastening; hoses off what is hot or moves.</source>
        <translation>Chaque collier, filetage et vanne, avec lampe et miroir&#xa0;; la fixation du réchauffeur&#xa0;; durites à l&apos;écart de ce qui est chaud ou bouge.</translation>
    </message>
    <message>
        <source>To the cold full mark.</source>
        <translation>Jusqu&apos;au repère plein à froid.</translation>
    </message>
    <message>
        <source>The cold full mark is not entered: to the tank&apos;s own mark.</source>
        <translation>Le repère plein à froid n&apos;est pas saisi&#xa0;: jusqu&apos;au repère propre du vase.</translation>
    </message>
    <message>
        <source>{a}: power or voltage is not entered, so its current is not known.</source>
        <translation>{a}&#xa0;: puissance ou tension non saisie, son courant n&apos;est pas connu.</translation>
    </message>
    <message>
        <source>{a}: {0} at {1}, three phases, {2} in each conductor.</source>
        <translation>{a}&#xa0;: {0} sous {1}, triphasé, {2} par conducteur.</translation>
    </message>
    <message>
        <source>{a}: {0} at {1}, {2}.</source>
        <translation>{a}&#xa0;: {0} sous {1}, {2}.</translation>
    </message>
    <message>
        <source>These are load figures for the electrician, not an instruction to wire.</source>
        <translation>Ce sont des valeurs de charge pour l&apos;électricien, pas une consigne de câblage.</translation>
    </message>
    <message>
        <source>Both hose ends of the heater full, level at the mark. Note the time.</source>
        <translation>Les deux embouts du réchauffeur pleins, niveau au repère. Notez l&apos;heure.</translation>
    </message>
    <message>
        <source>{a}: the return hose is warm to the hand at the engine after about {0} min.</source>
        <translation>{a}&#xa0;: la durite de retour est chaude à la main au moteur après environ {0} min.</translation>
    </message>
    <message>
        <source>Readings after 15, 30, 60 and 120 min: ambient, inlet, outlet, return hose, current, level.</source>
        <translation>Mesures après 15, 30, 60 et 120 min&#xa0;: ambiante, entrée, sortie, durite de retour, courant, niveau.</translation>
    </message>
    <message>
        <source>Limits: outlet at most {0} the whole time, at most {1} cycles an hour.</source>
        <translation>Limites&#xa0;: sortie {0} au plus tout le temps, {1} cycles par heure au plus.</translation>
    </message>
    <message>
        <source>Engine at its target of {0} after about {1}.</source>
        <translation>Moteur à sa cible de {0} après environ {1}.</translation>
    </message>
    <message>
        <source>The target of {0} is not reached, or not computed.</source>
        <translation>La cible de {0} n&apos;est pas atteinte, ou pas calculée.</translation>
    </message>
    <message>
        <source>{a}: what to expect is not computed.</source>
        <translation>{a}&#xa0;: valeurs attendues non calculées.</translation>
    </message>
    <message>
        <source>Expected of {a}: outlet {0} at its hottest ({1-2}), cycles in the worst hour: {3} ({4-5}).</source>
        <translation>Attendu de {a}&#xa0;: sortie {0} au plus chaud ({1-2}), cycles dans la pire heure&#xa0;: {3} ({4-5}).</translation>
    </message>
    <message>
        <source>Expected of {a}: outlet {0} at its hottest, cycles in the worst hour: {1}.</source>
        <translation>Attendu de {a}&#xa0;: sortie {0} au plus chaud, cycles dans la pire heure&#xa0;: {1}.</translation>
    </message>
    <message>
        <source>Level, clamps, and the return hose warm at the engine.</source>
        <translation>Niveau, colliers, et durite de retour chaude au moteur.</translation>
    </message>
    <message>
        <source>Best after a night near {0}.</source>
        <translation>De préférence après une nuit vers {0}.</translation>
    </message>
    <message>
        <source>it was stopped</source>
        <translation>arrêté en cours de route</translation>
    </message>
    <message>
        <source>the loop of this heater is not closed</source>
        <translation>la boucle de ce réchauffeur n&apos;est pas fermée</translation>
    </message>
    <message>
        <source>there is no heater yet</source>
        <translation>il n&apos;y a pas encore de réchauffeur</translation>
    </message>
    <message>
        <source>there is no heater &quot;%1&quot;</source>
        <translation>il n&apos;y a pas de réchauffeur «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>when the heater was energised is not entered</source>
        <translation>l&apos;heure de mise sous tension du réchauffeur n&apos;est pas saisie</translation>
    </message>
    <message>
        <source>there are no readings of this heater yet</source>
        <translation>il n&apos;y a pas encore de mesures de ce réchauffeur</translation>
    </message>
    <message>
        <source>no reading has a time after the heater was energised</source>
        <translation>aucune mesure n&apos;a d&apos;heure après la mise sous tension du réchauffeur</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>Nothing wrong: it runs as drawn</source>
        <translation>Aucun défaut&#xa0;: il marche comme dessiné</translation>
    </message>
    <message>
        <source>Take another reading in half an hour and see whether it still fits.</source>
        <translation>Prenez une autre mesure dans une demi-heure et voyez si elle concorde encore.</translation>
    </message>
    <message>
        <source>Nothing to do.</source>
        <translation>Rien à faire.</translation>
    </message>
    <message>
        <source>air</source>
        <translation>air</translation>
    </message>
    <message>
        <source>Air in {a}</source>
        <translation>Air dans {a}</translation>
    </message>
    <message>
        <source>Heater off and locked out, system cold: open a bleed or loosen the hose at its crest; air comes first, then coolant.</source>
        <translation>Réchauffeur arrêté et consigné, circuit froid&#xa0;: ouvrez un purgeur ou desserrez la durite à sa crête&#xa0;; il vient de l&apos;air, puis du liquide.</translation>
    </message>
    <message>
        <source>Let the air out at the crest, top up, and give the hose a rise all the way.</source>
        <translation>Laissez sortir l&apos;air à la crête, complétez, et faites monter la durite sur toute sa longueur.</translation>
    </message>
    <message>
        <source>The valve in {a} is closed</source>
        <translation>La vanne dans {a} est fermée</translation>
    </message>
    <message>
        <source>Heater off first. Look at the handle: across the hose means closed.</source>
        <translation>D&apos;abord arrêter le réchauffeur. Regardez la poignée&#xa0;: en travers de la durite, c&apos;est fermé.</translation>
    </message>
    <message>
        <source>Open it fully, then energise.</source>
        <translation>Ouvrez-la en grand, puis mettez sous tension.</translation>
    </message>
    <message>
        <source>The valve in {a} is half closed</source>
        <translation>La vanne dans {a} est à demi fermée</translation>
    </message>
    <message>
        <source>Look at the handle: it has to lie along the hose.</source>
        <translation>Regardez la poignée&#xa0;: elle doit être dans le sens de la durite.</translation>
    </message>
    <message>
        <source>Open it fully.</source>
        <translation>Ouvrez-la en grand.</translation>
    </message>
    <message>
        <source>{a} has collapsed inside</source>
        <translation>Affaissement intérieur de {a}</translation>
    </message>
    <message>
        <source>Heater off, cold: press the hose between two fingers along its length; a soft or flat place gives way.</source>
        <translation>Réchauffeur arrêté, froid&#xa0;: pressez la durite entre deux doigts sur sa longueur&#xa0;; un endroit mou ou plat cède.</translation>
    </message>
    <message>
        <source>Replace the hose.</source>
        <translation>Remplacez la durite.</translation>
    </message>
    <message>
        <source>Hoses are a size smaller than drawn</source>
        <translation>Les durites sont d&apos;une taille plus petite que dessiné</translation>
    </message>
    <message>
        <source>Read the size printed on the hose, and measure the bore of a hose end.</source>
        <translation>Lisez la taille imprimée sur la durite, et mesurez le diamètre intérieur d&apos;un embout.</translation>
    </message>
    <message>
        <source>Fit the drawn size.</source>
        <translation>Montez la taille dessinée.</translation>
    </message>
    <message>
        <source>The ports at the engine are swapped</source>
        <translation>Les piquages au moteur sont inversés</translation>
    </message>
    <message>
        <source>Follow the hose from the heater&apos;s inlet: it has to lead to the low port.</source>
        <translation>Suivez la durite depuis l&apos;entrée du réchauffeur&#xa0;: elle doit mener au piquage bas.</translation>
    </message>
    <message>
        <source>Change the hoses over.</source>
        <translation>Intervertissez les durites.</translation>
    </message>
    <message>
        <source>The hoses at the heater are exchanged, the flow runs backward</source>
        <translation>Les durites au réchauffeur sont interverties, le débit va à l&apos;envers</translation>
    </message>
    <message>
        <source>Follow the hose from the heater&apos;s upper nozzle: it has to lead to the high port.</source>
        <translation>Suivez la durite depuis la tubulure haute du réchauffeur&#xa0;: elle doit mener au piquage haut.</translation>
    </message>
    <message>
        <source>Change the hoses over at the heater.</source>
        <translation>Intervertissez les durites au réchauffeur.</translation>
    </message>
    <message>
        <source>Coolant is under the return port</source>
        <translation>Le liquide est sous le piquage de retour</translation>
    </message>
    <message>
        <source>Cold: look at the level in the surge tank; under the mark means low.</source>
        <translation>À froid&#xa0;: regardez le niveau dans le vase d&apos;expansion&#xa0;; sous le repère, il est bas.</translation>
    </message>
    <message>
        <source>Power off. Find the leak, fill, bleed, top up.</source>
        <translation>Courant coupé. Trouvez la fuite, remplissez, purgez, complétez.</translation>
    </message>
    <message>
        <source>The supply has half the heater&apos;s voltage</source>
        <translation>L&apos;alimentation a la moitié de la tension du réchauffeur</translation>
    </message>
    <message>
        <source>An electrician compares the voltage at the heater with its rating plate.</source>
        <translation>Un électricien compare la tension au réchauffeur avec sa plaque signalétique.</translation>
    </message>
    <message>
        <source>Have the heater supplied with its rated voltage.</source>
        <translation>Faites alimenter le réchauffeur à sa tension nominale.</translation>
    </message>
    <message>
        <source>The supply is a phase voltage: 0.87 of what is drawn</source>
        <translation>L&apos;alimentation est une tension entre phases&#xa0;: 0,87 de ce qui est dessiné</translation>
    </message>
    <message>
        <source>Have it supplied with its rated voltage, or take a heater made for this one.</source>
        <translation>Faites alimenter à la tension nominale, ou prenez un réchauffeur fait pour celle-ci.</translation>
    </message>
    <message>
        <source>One phase is missing</source>
        <translation>Une phase manque</translation>
    </message>
    <message>
        <source>An electrician measures the current in each of the three conductors.</source>
        <translation>Un électricien mesure le courant dans chacun des trois conducteurs.</translation>
    </message>
    <message>
        <source>Have fuse, contactor and terminals looked at.</source>
        <translation>Faites contrôler fusible, contacteur et bornes.</translation>
    </message>
    <message>
        <source>The element is dead</source>
        <translation>L&apos;élément chauffant est mort</translation>
    </message>
    <message>
        <source>Locked out: measure the resistance across the element; open means dead.</source>
        <translation>Consigné&#xa0;: mesurez la résistance de l&apos;élément&#xa0;; ouvert, il est mort.</translation>
    </message>
    <message>
        <source>Replace the element.</source>
        <translation>Remplacez l&apos;élément chauffant.</translation>
    </message>
    <message>
        <source>The thermostat is stuck on</source>
        <translation>Le thermostat reste collé en marche</translation>
    </message>
    <message>
        <source>Watch whether it ever turns off above its point.</source>
        <translation>Observez s&apos;il coupe jamais au-dessus de son point.</translation>
    </message>
    <message>
        <source>Replace the thermostat.</source>
        <translation>Remplacez le thermostat.</translation>
    </message>
    <message>
        <source>The thermostat is stuck off</source>
        <translation>Le thermostat reste bloqué à l&apos;arrêt</translation>
    </message>
    <message>
        <source>Locked out and cold: measure across the thermostat; open below its turn-on point means stuck.</source>
        <translation>Consigné et froid&#xa0;: mesurez aux bornes du thermostat&#xa0;; ouvert sous son point de mise en marche, il est bloqué.</translation>
    </message>
    <message>
        <source>The element is scaled</source>
        <translation>L&apos;élément chauffant est entartré</translation>
    </message>
    <message>
        <source>Drain and take the element out: a crust is scale. The other readings hardly show it.</source>
        <translation>Vidangez et sortez l&apos;élément&#xa0;: une croûte est du tartre. Les autres mesures le montrent à peine.</translation>
    </message>
    <message>
        <source>Replace the element; flush; deionised or distilled water only.</source>
        <translation>Remplacez l&apos;élément&#xa0;; rincez&#xa0;; uniquement de l&apos;eau déminéralisée ou distillée.</translation>
    </message>
    <message>
        <source>The over-temperature cut-out has tripped</source>
        <translation>Le limiteur de température a déclenché</translation>
    </message>
    <message>
        <source>Locked out: measure across the cut-out; open means tripped. Find out why before it is reset.</source>
        <translation>Consigné&#xa0;: mesurez aux bornes du limiteur&#xa0;; ouvert, il a déclenché. Trouvez pourquoi avant de réarmer.</translation>
    </message>
    <message>
        <source>Mend what made it hot, then reset it.</source>
        <translation>Corrigez ce qui l&apos;a fait chauffer, puis réarmez.</translation>
    </message>
    <message>
        <source>The breaker or the ground-fault device has tripped</source>
        <translation>Le disjoncteur ou le différentiel a déclenché</translation>
    </message>
    <message>
        <source>Look at the breaker and the ground-fault device. An electrician measures insulation before it is reset.</source>
        <translation>Regardez le disjoncteur et le différentiel. Un électricien mesure l&apos;isolement avant de réarmer.</translation>
    </message>
    <message>
        <source>Have the fault to ground found first.</source>
        <translation>Faites d&apos;abord trouver le défaut à la terre.</translation>
    </message>
    <message>
        <source>Scale or sediment blocks {a}</source>
        <translation>Tartre ou dépôts bouchent {a}</translation>
    </message>
    <message>
        <source>Cold and drained: probe the opening through the fitting.</source>
        <translation>Froid et vidangé&#xa0;: sondez l&apos;ouverture à travers le raccord.</translation>
    </message>
    <message>
        <source>Clean the opening, flush the engine.</source>
        <translation>Nettoyez l&apos;ouverture, rincez le moteur.</translation>
    </message>
    <message>
        <source>{a} is kinked</source>
        <translation>Pliure dans {a}</translation>
    </message>
    <message>
        <source>Follow the hose by eye and hand, behind brackets too.</source>
        <translation>Suivez la durite de l&apos;œil et de la main, derrière les supports aussi.</translation>
    </message>
    <message>
        <source>Reroute with a larger bend, or an elbow.</source>
        <translation>Refaites le tracé avec une courbe plus large, ou un coude.</translation>
    </message>
    <message>
        <source>There is a check valve in {a}</source>
        <translation>Il y a un clapet anti-retour dans {a}</translation>
    </message>
    <message>
        <source>Look for an arrow on a fitting in the hose.</source>
        <translation>Cherchez une flèche sur un raccord dans la durite.</translation>
    </message>
    <message>
        <source>Take it out: a few mm of head do not open it.</source>
        <translation>Enlevez-le&#xa0;: quelques mm de charge ne l&apos;ouvrent pas.</translation>
    </message>
    <message>
        <source>The engine&apos;s own thermostat is stuck open</source>
        <translation>Le thermostat du moteur reste bloqué ouvert</translation>
    </message>
    <message>
        <source>Feel the upper radiator hose: warm with the engine cold means that it lets coolant through.</source>
        <translation>Touchez la durite supérieure du radiateur&#xa0;: chaude, moteur froid, elle montre qu&apos;il laisse passer du liquide.</translation>
    </message>
    <message>
        <source>Replace the engine&apos;s thermostat.</source>
        <translation>Remplacez le thermostat du moteur.</translation>
    </message>
    <message>
        <source>The remote sensor hangs in the air</source>
        <translation>La sonde déportée pend dans l&apos;air</translation>
    </message>
    <message>
        <source>Look at the sensor: it has to sit tight on the engine, away from the return port.</source>
        <translation>Regardez la sonde&#xa0;: elle doit être bien serrée sur le moteur, loin du piquage de retour.</translation>
    </message>
    <message>
        <source>Fasten it.</source>
        <translation>Fixez-la.</translation>
    </message>
    <message>
        <source>Air in {a}, {0} up</source>
        <translation>Air dans {a}, à {0} de hauteur</translation>
    </message>
    <message>
        <source>inlet</source>
        <translation>entrée</translation>
    </message>
    <message>
        <source>clip-on thermometer on the metal at the heater&apos;s inlet</source>
        <translation>thermomètre à pince sur le métal à l&apos;entrée du réchauffeur</translation>
    </message>
    <message>
        <source>outlet</source>
        <translation>sortie</translation>
    </message>
    <message>
        <source>clip-on thermometer on the metal at the heater&apos;s outlet</source>
        <translation>thermomètre à pince sur le métal à la sortie du réchauffeur</translation>
    </message>
    <message>
        <source>return hose</source>
        <translation>durite de retour</translation>
    </message>
    <message>
        <source>infrared thermometer on the rubber of the return hose at the engine</source>
        <translation>thermomètre infrarouge sur le caoutchouc de la durite de retour au moteur</translation>
    </message>
    <message>
        <source>engine block</source>
        <translation>bloc-moteur</translation>
    </message>
    <message>
        <source>infrared thermometer on the block beside the return port</source>
        <translation>thermomètre infrarouge sur le bloc à côté du piquage de retour</translation>
    </message>
    <message>
        <source>current</source>
        <translation>courant</translation>
    </message>
    <message>
        <source>clamp meter round one conductor</source>
        <translation>pince ampèremétrique autour d&apos;un conducteur</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>tension</translation>
    </message>
    <message>
        <source>voltmeter at the heater, by an electrician</source>
        <translation>voltmètre au réchauffeur, par un électricien</translation>
    </message>
    <message>
        <source>coolant level</source>
        <translation>niveau de liquide</translation>
    </message>
    <message>
        <source>rule at the surge tank, from the cold full mark</source>
        <translation>réglet au vase d&apos;expansion, depuis le repère plein à froid</translation>
    </message>
    <message>
        <source>feel the supply hose one hand from the heater</source>
        <translation>toucher la durite d&apos;alimentation à une main du réchauffeur</translation>
    </message>
    <message>
        <source>feel the return hose at the engine</source>
        <translation>toucher la durite de retour au moteur</translation>
    </message>
    <message>
        <source>Now %1</source>
        <translation>Maintenant, %1</translation>
    </message>
    <message>
        <source>In %1 min %2</source>
        <translation>Dans %1 min, %2</translation>
    </message>
    <message>
        <source>%1: cold means &quot;%2&quot;, warm means &quot;%3&quot;.</source>
        <translation>%1&#xa0;: froid signifie «&#xa0;%2&#xa0;», chaud signifie «&#xa0;%3&#xa0;».</translation>
    </message>
    <message>
        <source>read the %1 (%2): about %3 means &quot;%4&quot;, about %5 means &quot;%6&quot;.</source>
        <translation>lire la valeur «&#xa0;%1&#xa0;» (%2)&#xa0;: environ %3 signifie «&#xa0;%4&#xa0;», environ %5 signifie «&#xa0;%6&#xa0;».</translation>
    </message>
    <message>
        <source>Only whether power was on was read.</source>
        <translation>On a lu seulement si le courant était présent.</translation>
    </message>
    <message>
        <source>Speaks against it: the {a} was {0} after {1} min, where {2} is expected.</source>
        <translation>Contredit&#xa0;: {a}&#xa0;: {0} après {1} min, attendu&#xa0;: {2}.</translation>
    </message>
    <message>
        <source>All is near what is expected; farthest off is the {a}: {0} after {1} min, where {2} is expected.</source>
        <translation>Tout est proche de l&apos;attendu&#xa0;; le plus écarté&#xa0;: {a}&#xa0;: {0} après {1} min, attendu&#xa0;: {2}.</translation>
    </message>
    <message>
        <source>The {a} was {0} after {1} min: this fault gives {2}, the job as drawn {3}.</source>
        <translation>{a}&#xa0;: {0} après {1} min&#xa0;: ce défaut donne {2}, l&apos;installation comme dessinée {3}.</translation>
    </message>
    <message>
        <source>Speaks against it: the {a} was {0} after {1} min: this fault gives {2}, the job as drawn {3}.</source>
        <translation>Contredit&#xa0;: {a}&#xa0;: {0} après {1} min&#xa0;: ce défaut donne {2}, l&apos;installation comme dessinée {3}.</translation>
    </message>
    <message>
        <source>Not judged against the drawing.</source>
        <translation>Non jugé par rapport au dessin.</translation>
    </message>
    <message>
        <source>Over the limit of {0}. Switch off and find out why.</source>
        <translation>Au-dessus de la limite de {0}. Coupez et cherchez pourquoi.</translation>
    </message>
    <message>
        <source>Fits: {0} to {1} expected.</source>
        <translation>Concorde&#xa0;: {0} à {1} attendu.</translation>
    </message>
    <message>
        <source>Lower than expected: {0} to {1}.</source>
        <translation>Plus bas qu&apos;attendu&#xa0;: {0} à {1}.</translation>
    </message>
    <message>
        <source>Higher than expected: {0} to {1}.</source>
        <translation>Plus haut qu&apos;attendu&#xa0;: {0} à {1}.</translation>
    </message>
    <message>
        <source>Not judged: the cold marks of the surge tank are not entered.</source>
        <translation>Non jugé&#xa0;: les repères à froid du vase d&apos;expansion ne sont pas saisis.</translation>
    </message>
    <message>
        <source>Under the cold minimum, {0} under the full mark. Power off, find the leak, top up.</source>
        <translation>Sous le minimum à froid, {0} sous le repère plein. Coupez le courant, trouvez la fuite, complétez.</translation>
    </message>
    <message>
        <source>Over the hot mark.</source>
        <translation>Au-dessus du repère à chaud.</translation>
    </message>
    <message>
        <source>Between the marks.</source>
        <translation>Entre les repères.</translation>
    </message>
    <message>
        <source>Not judged: rated power or rated voltage is not entered.</source>
        <translation>Non jugé&#xa0;: puissance ou tension nominale non saisie.</translation>
    </message>
    <message>
        <source>Fits: {0} is its rated power at {1}.</source>
        <translation>Concorde&#xa0;: {0} est sa puissance nominale sous {1}.</translation>
    </message>
    <message>
        <source>Too little: its rated power at {1} would be {0}.</source>
        <translation>Trop peu&#xa0;: sa puissance nominale sous {1} serait {0}.</translation>
    </message>
    <message>
        <source>Too much: its rated power at {1} would be {0}.</source>
        <translation>Trop&#xa0;: sa puissance nominale sous {1} serait {0}.</translation>
    </message>
    <message>
        <source>Off: its thermostat may well be open then.</source>
        <translation>Arrêté&#xa0;: son thermostat est peut-être ouvert à ce moment.</translation>
    </message>
    <message>
        <source>Draws nothing, where it should be on and draw {0}.</source>
        <translation>Ne consomme rien, alors qu&apos;il devrait être en marche et consommer {0}.</translation>
    </message>
    <message>
        <source>Cycles: not judged, no switching off was noted.</source>
        <translation>Cycles&#xa0;: non jugé, aucun arrêt n&apos;a été noté.</translation>
    </message>
    <message>
        <source>Cycles: not judged, it was not seen to turn on again.</source>
        <translation>Cycles&#xa0;: non jugé, aucune remise en marche n&apos;a été vue.</translation>
    </message>
    <message>
        <source>On {0} times within an hour, over the limit of {1}.</source>
        <translation>En marche {0} fois en une heure, plus que la limite de {1}.</translation>
    </message>
    <message>
        <source>On {0} times within an hour at most.</source>
        <translation>En marche {0} fois en une heure au plus.</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>concorde</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>douteux</translation>
    </message>
    <message>
        <source>off</source>
        <translation>discordant</translation>
    </message>
    <message>
        <source>the loop of this heater is not computed</source>
        <translation>la boucle de ce réchauffeur n&apos;est pas calculée</translation>
    </message>
    <message>
        <source>the coolant&apos;s properties are not known</source>
        <translation>les propriétés du liquide ne sont pas connues</translation>
    </message>
    <message>
        <source>Supply hose</source>
        <translation>Durite d&apos;alimentation</translation>
    </message>
    <message>
        <source>Return hose</source>
        <translation>Durite de retour</translation>
    </message>
    <message>
        <source>hose</source>
        <translation>durite</translation>
    </message>
    <message>
        <source>Port %1</source>
        <translation>Piquage %1</translation>
    </message>
    <message>
        <source>Heater</source>
        <translation>Réchauffeur</translation>
    </message>
    <message>
        <source>heater</source>
        <translation>réchauffeur</translation>
    </message>
    <message>
        <source>Area %1</source>
        <translation>Zone %1</translation>
    </message>
    <message>
        <source>neither the coolant of the whole system nor that of the engine is entered</source>
        <translation>ni le liquide de tout le circuit ni celui du moteur n&apos;est saisi</translation>
    </message>
    <message>
        <source>The kind of antifreeze to add is not entered.</source>
        <translation>Le type d&apos;antigel à ajouter n&apos;est pas saisi.</translation>
    </message>
    <message>
        <source>The kind of antifreeze in it now is not known, and kinds must not be mixed: find it out, or drain and flush all of it and choose a fill from empty.</source>
        <translation>Le type d&apos;antigel présent n&apos;est pas connu, et les types ne doivent pas se mélanger&#xa0;: trouvez-le, ou vidangez et rincez tout et choisissez un remplissage à vide.</translation>
    </message>
    <message>
        <source>In it now is another kind of antifreeze, and kinds must not be mixed: drain and flush all of it and choose a fill from empty.</source>
        <translation>Un autre type d&apos;antigel est présent, et les types ne doivent pas se mélanger&#xa0;: vidangez et rincez tout et choisissez un remplissage à vide.</translation>
    </message>
    <message>
        <source>chloride</source>
        <translation>chlorures</translation>
    </message>
    <message>
        <source>sulphate</source>
        <translation>sulfates</translation>
    </message>
    <message>
        <source>hardness as CaCO3</source>
        <translation>dureté en CaCO3</translation>
    </message>
    <message>
        <source>total solids</source>
        <translation>matières totales</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>ASTM D6210, appendix X1 (from memory); same figures in TM 5-3895-383-24, table 15 (US Army)</source>
        <translation>ASTM D6210, annexe X1 (de mémoire)&#xa0;; mêmes valeurs dans TM 5-3895-383-24, tableau 15 (US Army)</translation>
    </message>
    <message>
        <source>more than %1 lines</source>
        <translation>plus de %1 lignes</translation>
    </message>
    <message>
        <source>more than %1 fields in a line</source>
        <translation>plus de %1 champs dans une ligne</translation>
    </message>
    <message>
        <source>a field of more than %1 bytes</source>
        <translation>un champ de plus de %1 octets</translation>
    </message>
    <message>
        <source>a quote inside a field that does not begin with one</source>
        <translation>un guillemet dans un champ qui ne commence pas par un guillemet</translation>
    </message>
    <message>
        <source>a control character that ends no line</source>
        <translation>un caractère de commande qui ne finit pas une ligne</translation>
    </message>
    <message>
        <source>text behind the quote that ends a field</source>
        <translation>du texte après le guillemet qui finit un champ</translation>
    </message>
    <message>
        <source>a field in quotes that does not end</source>
        <translation>un champ entre guillemets qui ne finit pas</translation>
    </message>
    <message>
        <source>a line of %1 fields, where the first has %2</source>
        <translation>une ligne de %1 champs, alors que la première en a %2</translation>
    </message>
    <message>
        <source>Line %1, column %2: %3</source>
        <translation>Ligne %1, colonne %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>a file of more than %1 MiB</source>
        <translation>un fichier de plus de %1 Mio</translation>
    </message>
    <message>
        <source>a byte that is not UTF-8 text</source>
        <translation>un octet qui n&apos;est pas du texte UTF-8</translation>
    </message>
    <message>
        <source>Nothing is to be cut.</source>
        <translation>Rien n&apos;est à couper.</translation>
    </message>
    <message>
        <source>No length of roll is entered.</source>
        <translation>Aucune longueur de rouleau n&apos;est saisie.</translation>
    </message>
    <message>
        <source>A length is not over 0 and at most 10 km, or there are too many cuts.</source>
        <translation>Une longueur n&apos;est pas entre 0 et 10 km, ou il y a trop de coupes.</translation>
    </message>
    <message>
        <source>A cut is longer than the longest roll.</source>
        <translation>Une coupe est plus longue que le plus long rouleau.</translation>
    </message>
    <message>
        <source>A volume has to be from 0 to {0}.</source>
        <translation>Un volume doit être de 0 à {0}.</translation>
    </message>
    <message>
        <source>There is nothing to fill.</source>
        <translation>Il n&apos;y a rien à remplir.</translation>
    </message>
    <message>
        <source>The share of antifreeze has to be from 0 to 100 %.</source>
        <translation>La part d&apos;antigel doit être de 0 à 100&#xa0;%.</translation>
    </message>
    <message>
        <source>{0} is not planned for: over {1} antifreeze by volume coolant carries less heat and freezes earlier again.</source>
        <translation>{0} n&apos;est pas prévu&#xa0;: au-delà de {1} d&apos;antigel en volume, le liquide transporte moins de chaleur et gèle de nouveau plus tôt.</translation>
    </message>
    <message>
        <source>{0} is not reached: coolant would have to be drained, and nothing runs out at the drains.</source>
        <translation>{0} n&apos;est pas atteint&#xa0;: il faudrait vidanger du liquide, et rien ne coule aux vidanges.</translation>
    </message>
    <message>
        <source>{0} is not reached: only {1} runs out at once, and after {2} rounds of draining and filling with antifreeze the coolant is at {3}. Drain elsewhere too, or flush and fill afresh.</source>
        <translation>{0} n&apos;est pas atteint&#xa0;: seuls {1} coulent d&apos;un coup, et après {2} tours de vidange et de remplissage à l&apos;antigel, le liquide est à {3}. Vidangez aussi ailleurs, ou rincez et remplissez à neuf.</translation>
    </message>
    <message>
        <source>{0} is not reached: only {1} runs out at once, each round leaves antifreeze behind, and after {2} the coolant is at {3}. Drain elsewhere too, or flush and fill afresh.</source>
        <translation>{0} n&apos;est pas atteint&#xa0;: seuls {1} coulent d&apos;un coup, chaque tour laisse de l&apos;antigel, et après {2} le liquide est à {3}. Vidangez aussi ailleurs, ou rincez et remplissez à neuf.</translation>
    </message>
    <message>
        <source>Draining all of the {0} that runs out at once is not enough: it gives {1}. {2} rounds are needed, with the engine run in between until its thermostat opens.</source>
        <translation>Vidanger tout ce qui coule d&apos;un coup, {0}, ne suffit pas&#xa0;: cela donne {1}. Il faut {2} tours, en faisant tourner le moteur entre deux jusqu&apos;à l&apos;ouverture de son thermostat.</translation>
    </message>
    <message>
        <source>Drain {0}, then fill.</source>
        <translation>Vidangez {0}, puis remplissez.</translation>
    </message>
    <message>
        <source>Drain {0}, then fill. How much runs out at the drains is not entered: see that so much does.</source>
        <translation>Vidangez {0}, puis remplissez. Ce qui coule aux vidanges n&apos;est pas saisi&#xa0;: assurez-vous qu&apos;il en coule autant.</translation>
    </message>
    <message>
        <source>Nothing has to be drained: fill the new hoses and chambers as stated.</source>
        <translation>Rien n&apos;est à vidanger&#xa0;: remplissez les nouvelles durites et chambres comme indiqué.</translation>
    </message>
    <message>
        <source>The coolant is as wanted.</source>
        <translation>Le liquide est comme voulu.</translation>
    </message>
    <message>
        <source>its power is not entered</source>
        <translation>sa puissance n&apos;est pas saisie</translation>
    </message>
    <message>
        <source>neither the supply&apos;s voltage nor its own is entered</source>
        <translation>ni la tension du réseau ni la sienne n&apos;est saisie</translation>
    </message>
    <message>
        <source>its rated voltage is not entered</source>
        <translation>sa tension nominale n&apos;est pas saisie</translation>
    </message>
    <message>
        <source>it needs three phases and the supply has one</source>
        <translation>il lui faut trois phases et l&apos;alimentation en a une</translation>
    </message>
    <message>
        <source>Single-phase heaters on three phases: counted as if all were on the same two conductors, the most that any carries. Shared out as evenly as can be it is {0}, {1} at 125 %.</source>
        <translation>Réchauffeurs monophasés sur trois phases&#xa0;: comptés comme s&apos;ils étaient tous sur les deux mêmes conducteurs, le maximum que l&apos;un d&apos;eux porte. Répartis au mieux, c&apos;est {0}, {1} à 125&#xa0;%.</translation>
    </message>
    <message>
        <source>The supply&apos;s voltage is not entered: the current of all heaters together is not computed.</source>
        <translation>La tension d&apos;alimentation n&apos;est pas saisie&#xa0;: le courant total des réchauffeurs n&apos;est pas calculé.</translation>
    </message>
    <message>
        <source>The supply&apos;s phases are not entered.</source>
        <translation>Les phases de l&apos;alimentation ne sont pas saisies.</translation>
    </message>
    <message>
        <source>The conductor&apos;s size is not entered: the voltage drop is not computed.</source>
        <translation>La section du conducteur n&apos;est pas saisie&#xa0;: la chute de tension n&apos;est pas calculée.</translation>
    </message>
    <message>
        <source>The length of the run is not entered: the voltage drop is not computed.</source>
        <translation>La longueur de la ligne n&apos;est pas saisie&#xa0;: la chute de tension n&apos;est pas calculée.</translation>
    </message>
    <message>
        <source>{a} is not a size of the tables; 12 AWG or 4 mm2 are.</source>
        <translation>{a} n&apos;est pas une section des tableaux&#xa0;; 12 AWG ou 4 mm2 en sont.</translation>
    </message>
    <message>
        <source>{a} is rated for {0}. On {1} it would take {2}: do not connect it, the element burns out.</source>
        <translation>{a} est prévu pour {0}. Sous {1}, il prendrait {2}&#xa0;: ne le raccordez pas, l&apos;élément chauffant grille.</translation>
    </message>
    <message>
        <source>The warm-up of {a} is computed at {0}, which is entered with the heater; the supply has {1}.</source>
        <translation>La chauffe de {a} est calculée à {0}, saisie avec le réchauffeur&#xa0;; l&apos;alimentation a {1}.</translation>
    </message>
    <message>
        <source>The drop is over the {0} that is advised for a branch circuit.</source>
        <translation>La chute dépasse les {0} conseillés pour un circuit terminal.</translation>
    </message>
    <message>
        <source>The mark-up on materials is not entered.</source>
        <translation>La majoration sur les matériaux n&apos;est pas saisie.</translation>
    </message>
    <message>
        <source>The prices of materials are not final.</source>
        <translation>Les prix des matériaux ne sont pas définitifs.</translation>
    </message>
    <message>
        <source>The amounts are too large to reckon with.</source>
        <translation>Les montants sont trop grands pour être calculés.</translation>
    </message>
    <message>
        <source>The currency is not entered.</source>
        <translation>La devise n&apos;est pas saisie.</translation>
    </message>
    <message>
        <source>Travel</source>
        <translation>Déplacement</translation>
    </message>
    <message>
        <source>Consumables</source>
        <translation>Consommables</translation>
    </message>
    <message>
        <source>Disposal of old coolant</source>
        <translation>Élimination du vieux liquide</translation>
    </message>
    <message>
        <source>not priced</source>
        <translation>sans prix</translation>
    </message>
    <message>
        <source>quantity not known</source>
        <translation>quantité inconnue</translation>
    </message>
    <message>
        <source>priced by &quot;%1&quot;, which is no measure of it</source>
        <translation>prix par «&#xa0;%1&#xa0;», qui n&apos;en est pas une mesure</translation>
    </message>
    <message>
        <source>Tank heater: {a}</source>
        <translation>Réchauffeur&#xa0;: {a}</translation>
    </message>
    <message>
        <source>Item %1, %2: %3.</source>
        <translation>Repère %1, %2&#xa0;: %3.</translation>
    </message>
    <message>
        <source>The labour rate is not entered.</source>
        <translation>Le taux horaire n&apos;est pas saisi.</translation>
    </message>
    <message>
        <source>labour rate not entered</source>
        <translation>taux horaire non saisi</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>non saisi</translation>
    </message>
    <message>
        <source>%1: not entered.</source>
        <translation>%1&#xa0;: non saisi.</translation>
    </message>
    <message>
        <source>The tax is not entered.</source>
        <translation>La taxe n&apos;est pas saisie.</translation>
    </message>
    <message>
        <source>The bore is not entered.</source>
        <translation>Le diamètre intérieur n&apos;est pas saisi.</translation>
    </message>
    <message>
        <source>Make safe, drain and catch the coolant</source>
        <translation>Mettre en sécurité, vidanger et recueillir le liquide</translation>
    </message>
    <message>
        <source>Clean ports, fit adapters and hose ends</source>
        <translation>Nettoyer les piquages, monter adaptateurs et embouts</translation>
    </message>
    <message>
        <source>Cut, route and clamp the hoses</source>
        <translation>Couper, poser et serrer les durites</translation>
    </message>
    <message>
        <source>Fit valves and other in-line parts</source>
        <translation>Monter vannes et autres pièces en ligne</translation>
    </message>
    <message>
        <source>Run and connect the supply, by a licensed electrician</source>
        <translation>Tirer et raccorder l&apos;alimentation, par un électricien agréé</translation>
    </message>
    <message>
        <source>Flush, fill, purge and top up</source>
        <translation>Rincer, remplir, purger et compléter</translation>
    </message>
    <message>
        <source>Energise, take readings, check for leaks</source>
        <translation>Mettre sous tension, mesurer, contrôler les fuites</translation>
    </message>
    <message>
        <source>Hand over with sheet and checklist</source>
        <translation>Remettre avec feuille et liste de contrôle</translation>
    </message>
    <message>
        <source>not a number such as 1250 or 12.5, without a sign for thousands</source>
        <translation>pas un nombre comme 1250 ou 12.5, sans signe pour les milliers</translation>
    </message>
    <message>
        <source>a whole number is wanted here</source>
        <translation>il faut ici un nombre entier</translation>
    </message>
    <message>
        <source>at most %1 decimals are wanted here</source>
        <translation>il faut ici %1 décimales au plus</translation>
    </message>
    <message>
        <source>too large a number</source>
        <translation>nombre trop grand</translation>
    </message>
    <message>
        <source>Tank heater</source>
        <translation>Réchauffeur de liquide</translation>
    </message>
    <message>
        <source>Mounting kit</source>
        <translation>Kit de montage</translation>
    </message>
    <message>
        <source>Hose</source>
        <translation>Durite</translation>
    </message>
    <message>
        <source>Hose end</source>
        <translation>Embout</translation>
    </message>
    <message>
        <source>Adapter</source>
        <translation>Adaptateur</translation>
    </message>
    <message>
        <source>Core plug adapter</source>
        <translation>Adaptateur de pastille</translation>
    </message>
    <message>
        <source>Tee for lower radiator hose</source>
        <translation>Té pour durite inférieure</translation>
    </message>
    <message>
        <source>Tee for cabin heater line</source>
        <translation>Té pour chauffage cabine</translation>
    </message>
    <message>
        <source>Elbow</source>
        <translation>Coude</translation>
    </message>
    <message>
        <source>Moulded elbow</source>
        <translation>Coude moulé</translation>
    </message>
    <message>
        <source>Reducer</source>
        <translation>Réduction</translation>
    </message>
    <message>
        <source>Isolation valve</source>
        <translation>Vanne d&apos;isolement</translation>
    </message>
    <message>
        <source>Bleed</source>
        <translation>Purgeur</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Vidange</translation>
    </message>
    <message>
        <source>Lift check valve</source>
        <translation>Clapet à levée</translation>
    </message>
    <message>
        <source>Swing check valve</source>
        <translation>Clapet à battant</translation>
    </message>
    <message>
        <source>Hose clamp</source>
        <translation>Collier de serrage</translation>
    </message>
    <message>
        <source>Hose clip</source>
        <translation>Collier de maintien</translation>
    </message>
    <message>
        <source>Hose insulation</source>
        <translation>Isolant de durite</translation>
    </message>
    <message>
        <source>Thread sealant</source>
        <translation>Pâte à joint filetage</translation>
    </message>
    <message>
        <source>antifreeze</source>
        <translation>antigel</translation>
    </message>
    <message>
        <source>Antifreeze concentrate</source>
        <translation>Antigel concentré</translation>
    </message>
    <message>
        <source>Distilled water</source>
        <translation>Eau distillée</translation>
    </message>
    <message>
        <source>The start of {a} is on nothing: what it is pushed onto is not counted.</source>
        <translation>Le départ de {a} n&apos;est sur rien&#xa0;: la pièce qui le reçoit n&apos;est pas comptée.</translation>
    </message>
    <message>
        <source>The end of {a} is on nothing: what it is pushed onto is not counted.</source>
        <translation>La fin de {a} n&apos;est sur rien&#xa0;: la pièce qui la reçoit n&apos;est pas comptée.</translation>
    </message>
    <message>
        <source>%1, inlet</source>
        <translation>%1, entrée</translation>
    </message>
    <message>
        <source>%1, outlet</source>
        <translation>%1, sortie</translation>
    </message>
    <message>
        <source>size of the line not entered</source>
        <translation>taille de la conduite non saisie</translation>
    </message>
    <message>
        <source>thread not entered</source>
        <translation>filetage non saisi</translation>
    </message>
    <message>
        <source>rated voltage not entered</source>
        <translation>tension nominale non saisie</translation>
    </message>
    <message>
        <source>power not entered</source>
        <translation>puissance non saisie</translation>
    </message>
    <message>
        <source>power and rated voltage not entered</source>
        <translation>puissance et tension nominale non saisies</translation>
    </message>
    <message>
        <source>{0}, {1}, three phases</source>
        <translation>{0}, {1}, triphasé</translation>
    </message>
    <message>
        <source>bore of %1 not entered</source>
        <translation>diam. int. non saisi (%1)</translation>
    </message>
    <message>
        <source>Chamber volume of {a} is not entered: taken from its drawn chamber.</source>
        <translation>Le volume de chambre de {a} n&apos;est pas saisi&#xa0;: repris de sa chambre dessinée.</translation>
    </message>
    <message>
        <source>{a} glycol</source>
        <translation>{a} glycol</translation>
    </message>
    <message>
        <source>kind of antifreeze not entered</source>
        <translation>type d&apos;antigel non saisi</translation>
    </message>
    <message>
        <source>Brackets, bolts and washers as the heater&apos;s manual has them.</source>
        <translation>Supports, vis et rondelles selon le manuel du réchauffeur.</translation>
    </message>
    <message>
        <source>Not needed where adapter or nozzle has its own.</source>
        <translation>Inutile si l&apos;adaptateur ou la tubulure a le sien.</translation>
    </message>
    <message>
        <source>One container, for {0} threads; fit for coolant.</source>
        <translation>Un récipient, pour {0} filetages&#xa0;; apte au liquide de refroidissement.</translation>
    </message>
    <message>
        <source>To come to {0} of antifreeze in {1}; drain {2} first.</source>
        <translation>Pour arriver à {0} d&apos;antigel dans {1}&#xa0;; vidanger {2} d&apos;abord.</translation>
    </message>
    <message>
        <source>Fills the new hoses and heater only: top up what is lost in the work.</source>
        <translation>Remplit seulement les nouvelles durites et le réchauffeur&#xa0;: complétez ce qui se perd pendant le travail.</translation>
    </message>
    <message>
        <source>share of antifreeze not entered</source>
        <translation>part d&apos;antigel non saisie</translation>
    </message>
    <message>
        <source>bore not entered</source>
        <translation>diam. int. non saisi</translation>
    </message>
    <message>
        <source>bore {0}, wall {1}</source>
        <translation>diam. int. {0}, paroi {1}</translation>
    </message>
    <message>
        <source>hose&apos;s bore not entered</source>
        <translation>diam. int. de durite non saisi</translation>
    </message>
    <message>
        <source>Two on each hose end: common practice.</source>
        <translation>Deux sur chaque embout&#xa0;: pratique courante.</translation>
    </message>
    <message>
        <source>{0} to {1}</source>
        <translation>{0} à {1}</translation>
    </message>
    <message>
        <source>Of one piece with the hose; bought singly it also takes joiners and clamps.</source>
        <translation>D&apos;une pièce avec la durite&#xa0;; acheté seul, il faut aussi raccords et colliers.</translation>
    </message>
    <message>
        <source>{a} wants one more than is drawn, by the spacing rule.</source>
        <translation>{a} en demande un de plus que dessiné, selon la règle d&apos;espacement.</translation>
    </message>
    <message>
        <source>{a} wants {0} more than are drawn, by the spacing rule.</source>
        <translation>{a} en demande {0} de plus que dessiné, selon la règle d&apos;espacement.</translation>
    </message>
    <message>
        <source>for {0}, {1} thick</source>
        <translation>pour {0}, épaisseur {1}</translation>
    </message>
    <message>
        <source>no column named &quot;%1&quot;; fields have to be set apart by commas, not by semicolons</source>
        <translation>pas de colonne nommée «&#xa0;%1&#xa0;»&#xa0;; les champs sont à séparer par des virgules, non des points-virgules</translation>
    </message>
    <message>
        <source>no column named &quot;%1&quot;</source>
        <translation>pas de colonne nommée «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>a second column named &quot;%1&quot;</source>
        <translation>une seconde colonne nommée «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>the price &quot;%1&quot; was not understood: %2</source>
        <translation>le prix «&#xa0;%1&#xa0;» n&apos;a pas été compris&#xa0;: %2</translation>
    </message>
    <message>
        <source>a price under nothing</source>
        <translation>un prix négatif</translation>
    </message>
    <message>
        <source>too large a price</source>
        <translation>un prix trop grand</translation>
    </message>
    <message>
        <source>no currency</source>
        <translation>pas de devise</translation>
    </message>
    <message>
        <source>the currency &quot;%1&quot; in a list of %2</source>
        <translation>la devise «&#xa0;%1&#xa0;» dans une liste en %2</translation>
    </message>
    <message>
        <source>an item without a key of 1 to 200 bytes</source>
        <translation>un article sans clé de 1 à 200 octets</translation>
    </message>
    <message>
        <source>a second line for the item &quot;%1&quot;</source>
        <translation>une seconde ligne pour l&apos;article «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>a description of more than 500 bytes</source>
        <translation>une désignation de plus de 500 octets</translation>
    </message>
    <message>
        <source>the unit &quot;%1&quot; is none of %2</source>
        <translation>l&apos;unité «&#xa0;%1&#xa0;» n&apos;est aucune de&#xa0;: %2</translation>
    </message>
    <message>
        <source>an empty file</source>
        <translation>un fichier vide</translation>
    </message>
    <message>
        <source>more than %1 prices</source>
        <translation>plus de %1 prix</translation>
    </message>
    <message>
        <source>a list without a price</source>
        <translation>une liste sans prix</translation>
    </message>
    <message>
        <source>The list is in %1, the estimate in %2.</source>
        <translation>La liste est en %1, le devis en %2.</translation>
    </message>
    <message>
        <source>Amounts are entered with %1 decimals, and %2 has %3.</source>
        <translation>Les montants sont saisis avec %1 décimales, et %2 en a %3.</translation>
    </message>
    <message>
        <source>the ambient temperature is not entered</source>
        <translation>la température ambiante n&apos;est pas saisie</translation>
    </message>
    <message>
        <source>There is nothing to sample.</source>
        <translation>Il n&apos;y a rien à échantillonner.</translation>
    </message>
    <message>
        <source>Bands take 20 to 100000 samples.</source>
        <translation>Les plages demandent 20 à 100000 échantillons.</translation>
    </message>
    <message>
        <source>The range of {a} does not hold together.</source>
        <translation>La plage de {a} ne concorde pas.</translation>
    </message>
    <message>
        <source>The bands were stopped.</source>
        <translation>Les plages ont été arrêtées.</translation>
    </message>
    <message>
        <source>circulates on {2} of head, into the heater at {0} and out at {1}</source>
        <translation>circule avec {2} de charge, à l&apos;entrée du réchauffeur {0}, à la sortie {1}</translation>
    </message>
    <message>
        <source>circulates in reverse on {2} of head, into the heater at {0} and out at {1}</source>
        <translation>circule à l&apos;envers avec {2} de charge, à l&apos;entrée du réchauffeur {0}, à la sortie {1}</translation>
    </message>
    <message>
        <source>the balance was not found within {a} Pa</source>
        <translation>l&apos;équilibre n&apos;a pas été trouvé à {a} Pa près</translation>
    </message>
    <message>
        <source>air takes {0} of head, and the loop can raise {1} at most</source>
        <translation>l&apos;air absorbe {0} de charge, et la boucle peut produire {1} au plus</translation>
    </message>
    <message>
        <source>nothing drives it: the warm column is not above the cold one ({0} of head)</source>
        <translation>rien ne l&apos;entraîne&#xa0;: la colonne chaude n&apos;est pas au-dessus de la froide ({0} de charge)</translation>
    </message>
    <message>
        <source>the coolant would be under {0}, where it freezes</source>
        <translation>le liquide serait sous {0}, où il gèle</translation>
    </message>
    <message>
        <source>the coolant would reach {0} before enough of it flows</source>
        <translation>le liquide atteindrait {0} avant qu&apos;il en passe assez</translation>
    </message>
    <message>
        <source>a closed valve withstands the {0} of head that drives</source>
        <translation>une vanne fermée résiste aux {0} de charge motrice</translation>
    </message>
    <message>
        <source>the resistance is that of a loop of {a} elements</source>
        <translation>la résistance est celle d&apos;une boucle de {a} éléments</translation>
    </message>
    <message>
        <source>boiling in degC must be over the freezing point, not {a}</source>
        <translation>l&apos;ébullition en degC doit être au-dessus du point de congélation, et non {a}</translation>
    </message>
    <message>
        <source>the coolant has no range of temperature with properties over 0</source>
        <translation>le liquide n&apos;a aucune plage de température à propriétés supérieures à 0</translation>
    </message>
    <message>
        <source>element {a}: {b}, not {c}</source>
        <translation>élément {a}&#xa0;: {b}, et non {c}</translation>
    </message>
    <message>
        <source>length in metres must be 0 or more</source>
        <translation>la longueur en mètres doit être 0 ou plus</translation>
    </message>
    <message>
        <source>rise in metres must be a number</source>
        <translation>la montée en mètres doit être un nombre</translation>
    </message>
    <message>
        <source>bore in metres must be over 0</source>
        <translation>le diamètre intérieur en mètres doit être supérieur à 0</translation>
    </message>
    <message>
        <source>area in square metres must be over 0, or 0 for a round bore</source>
        <translation>la section en mètres carrés doit être supérieure à 0, ou 0 pour une section ronde</translation>
    </message>
    <message>
        <source>power in watts must be a number</source>
        <translation>la puissance en watts doit être un nombre</translation>
    </message>
    <message>
        <source>heat exchange in W/K must be 0 or more</source>
        <translation>l&apos;échange de chaleur en W/K doit être 0 ou plus</translation>
    </message>
    <message>
        <source>temperature of surroundings in degC must be over -273.15</source>
        <translation>la température environnante en degC doit être supérieure à -273,15</translation>
    </message>
    <message>
        <source>share at outlet temperature must be from 0 to 1</source>
        <translation>la part à la température de sortie doit être de 0 à 1</translation>
    </message>
    <message>
        <source>pocket&apos;s head in metres must be 0 or more</source>
        <translation>la charge de la poche en mètres doit être 0 ou plus</translation>
    </message>
    <message>
        <source>a loss&apos;s bore in metres must be over 0</source>
        <translation>le diamètre d&apos;une perte en mètres doit être supérieur à 0</translation>
    </message>
    <message>
        <source>the loop has no elements</source>
        <translation>la boucle n&apos;a pas d&apos;éléments</translation>
    </message>
    <message>
        <source>the loop has too many elements: {a}</source>
        <translation>la boucle a trop d&apos;éléments&#xa0;: {a}</translation>
    </message>
    <message>
        <source>the loop does not close: its rises add up to {a} m</source>
        <translation>la boucle ne se ferme pas&#xa0;: la somme de ses montées est {a} m</translation>
    </message>
    <message>
        <source>no element of the loop resists flow</source>
        <translation>aucun élément de la boucle ne freine le débit</translation>
    </message>
    <message>
        <source>start temperature in degC must be over -273.15, not {a}</source>
        <translation>la température de départ en degC doit être supérieure à -273,15, et non {a}</translation>
    </message>
    <message>
        <source>no element of the loop takes heat out, and {a} W are put in</source>
        <translation>aucun élément de la boucle n&apos;évacue de chaleur, et {a} W y entrent</translation>
    </message>
    <message>
        <source>The voltage has to be over 0.</source>
        <translation>La tension doit être supérieure à 0.</translation>
    </message>
    <message>
        <source>Nothing is computed over {0}: that is no low voltage.</source>
        <translation>Rien n&apos;est calculé au-dessus de {0}&#xa0;: ce n&apos;est plus de la basse tension.</translation>
    </message>
    <message>
        <source>A supply has 1 or 3 phases.</source>
        <translation>Une alimentation a 1 ou 3 phases.</translation>
    </message>
    <message>
        <source>The power has to be over 0.</source>
        <translation>La puissance doit être supérieure à 0.</translation>
    </message>
    <message>
        <source>Nothing is computed over {0}.</source>
        <translation>Rien n&apos;est calculé au-dessus de {0}.</translation>
    </message>
    <message>
        <source>No conductor is that cold or hot.</source>
        <translation>Aucun conducteur n&apos;est aussi froid ou aussi chaud.</translation>
    </message>
    <message>
        <source>{a} is not in the tables in aluminium.</source>
        <translation>{a} n&apos;est pas dans les tableaux en aluminium.</translation>
    </message>
    <message>
        <source>Current and resistance have to be over 0.</source>
        <translation>Courant et résistance doivent être supérieurs à 0.</translation>
    </message>
    <message>
        <source>The run&apos;s length has to be over 0 and at most {0}.</source>
        <translation>La longueur de la ligne doit être supérieure à 0 et de {0} au plus.</translation>
    </message>
    <message>
        <source>The conductor is far too small for this run: more than a third of the voltage would be lost.</source>
        <translation>Le conducteur est bien trop petit pour cette ligne&#xa0;: plus du tiers de la tension serait perdu.</translation>
    </message>
    <message>
        <source>Power and hours must not be negative.</source>
        <translation>Puissance et heures ne doivent pas être négatives.</translation>
    </message>
    <message>
        <source>a loss coefficient must be 0 or more</source>
        <translation>un coefficient de perte doit être 0 ou plus</translation>
    </message>
    <message>
        <source>a coefficient&apos;s exponent of the Reynolds number must be from 0, under 2</source>
        <translation>l&apos;exposant du nombre de Reynolds d&apos;un coefficient doit être de 0 à moins de 2</translation>
    </message>
    <message>
        <source>a length must be 0 or more</source>
        <translation>une longueur doit être 0 ou plus</translation>
    </message>
    <message>
        <source>roughness must be 0 or more and less than the bore</source>
        <translation>la rugosité doit être 0 ou plus et inférieure au diamètre intérieur</translation>
    </message>
    <message>
        <source>a bend&apos;s angle must be 0 or more</source>
        <translation>l&apos;angle d&apos;une courbe doit être 0 ou plus</translation>
    </message>
    <message>
        <source>a bend&apos;s centre-line radius must be at least half the bore</source>
        <translation>le rayon à l&apos;axe d&apos;une courbe doit être d&apos;au moins la moitié du diamètre intérieur</translation>
    </message>
    <message>
        <source>a hose end&apos;s own bore must be over 0 and at most the hose&apos;s</source>
        <translation>le diamètre intérieur propre d&apos;un embout doit être supérieur à 0 et au plus celui de la durite</translation>
    </message>
    <message>
        <source>a bore must be over 0</source>
        <translation>un diamètre intérieur doit être supérieur à 0</translation>
    </message>
    <message>
        <source>an area must be over 0</source>
        <translation>une section doit être supérieure à 0</translation>
    </message>
    <message>
        <source>a factor must be over 0</source>
        <translation>un facteur doit être supérieur à 0</translation>
    </message>
    <message>
        <source>The coolant&apos;s properties are not known over any range.</source>
        <translation>Les propriétés du liquide ne sont connues sur aucune plage.</translation>
    </message>
    <message>
        <source>At {0} the coolant is slush: it freezes at {1}. Nothing circulates.</source>
        <translation>À {0}, le liquide est en bouillie de glace&#xa0;: il gèle à {1}. Rien ne circule.</translation>
    </message>
    <message>
        <source>The heater&apos;s rated power has to be over 0.</source>
        <translation>La puissance nominale du réchauffeur doit être supérieure à 0.</translation>
    </message>
    <message>
        <source>The heater&apos;s rated voltage has to be over 0.</source>
        <translation>La tension nominale du réchauffeur doit être supérieure à 0.</translation>
    </message>
    <message>
        <source>The supply voltage must not be negative.</source>
        <translation>La tension d&apos;alimentation ne doit pas être négative.</translation>
    </message>
    <message>
        <source>The heater&apos;s chamber has to hold coolant.</source>
        <translation>La chambre du réchauffeur doit contenir du liquide.</translation>
    </message>
    <message>
        <source>The heater&apos;s own heat capacity must not be negative.</source>
        <translation>La capacité thermique propre du réchauffeur ne doit pas être négative.</translation>
    </message>
    <message>
        <source>The chamber&apos;s own convection has to be over 0.</source>
        <translation>La convection propre de la chambre doit être supérieure à 0.</translation>
    </message>
    <message>
        <source>The thermostat has to switch on at a lower temperature than off.</source>
        <translation>Le thermostat doit se mettre en marche à une température plus basse que celle où il coupe.</translation>
    </message>
    <message>
        <source>The thermostat&apos;s sensing fraction has to be from 0 to 1.</source>
        <translation>La fraction captée par le thermostat doit être de 0 à 1.</translation>
    </message>
    <message>
        <source>The thermostat&apos;s lag has to be over 0.</source>
        <translation>Le retard du thermostat doit être supérieur à 0.</translation>
    </message>
    <message>
        <source>The cut-out&apos;s trip temperature is not a number.</source>
        <translation>La température de déclenchement du limiteur n&apos;est pas un nombre.</translation>
    </message>
    <message>
        <source>The cut-out has to reset at a lower temperature than it trips.</source>
        <translation>Le limiteur doit se réarmer à une température plus basse que celle où il déclenche.</translation>
    </message>
    <message>
        <source>The element&apos;s diameter and flux have to be over 0.</source>
        <translation>Le diamètre et le flux de l&apos;élément chauffant doivent être supérieurs à 0.</translation>
    </message>
    <message>
        <source>Chamber, hoses and jacket each need an element.</source>
        <translation>Chambre, durites et chemise demandent chacune un élément.</translation>
    </message>
    <message>
        <source>Return and supply hose have to have a length.</source>
        <translation>Durites de retour et d&apos;alimentation doivent avoir une longueur.</translation>
    </message>
    <message>
        <source>A hose&apos;s own heat capacity must not be negative.</source>
        <translation>La capacité thermique propre d&apos;une durite ne doit pas être négative.</translation>
    </message>
    <message>
        <source>The share of temperature at a hose&apos;s surface has to be from 0 to 1.</source>
        <translation>La part de température à la surface d&apos;une durite doit être de 0 à 1.</translation>
    </message>
    <message>
        <source>The factor on pressure losses has to be over 0.</source>
        <translation>Le facteur sur les pertes de charge doit être supérieur à 0.</translation>
    </message>
    <message>
        <source>The share of the block that a loop sweeps has to be from 0.02 to 0.98.</source>
        <translation>La part du bloc balayée par une boucle doit être de 0,02 à 0,98.</translation>
    </message>
    <message>
        <source>The duration has to be over 0.</source>
        <translation>La durée doit être supérieure à 0.</translation>
    </message>
    <message>
        <source>Power has to come at 0 or later, and to go after it came.</source>
        <translation>Le courant doit venir à 0 ou plus tard, et partir après être venu.</translation>
    </message>
    <message>
        <source>The relative tolerance has to be from 1e-12 to 1e-2.</source>
        <translation>La tolérance relative doit être de 1e-12 à 1e-2.</translation>
    </message>
    <message>
        <source>The absolute tolerance has to be from 1e-12 to 1 K.</source>
        <translation>La tolérance absolue doit être de 1e-12 à 1 K.</translation>
    </message>
    <message>
        <source>The tolerance of switching times has to be from 1e-9 to 10 s.</source>
        <translation>La tolérance des instants de commutation doit être de 1e-9 à 10 s.</translation>
    </message>
    <message>
        <source>The time between samples must not be negative.</source>
        <translation>Le temps entre échantillons ne doit pas être négatif.</translation>
    </message>
    <message>
        <source>Hoses and jacket take 2 to 20 cells.</source>
        <translation>Durites et chemise prennent 2 à 20 cellules.</translation>
    </message>
    <message>
        <source>There is no heater.</source>
        <translation>Il n&apos;y a pas de réchauffeur.</translation>
    </message>
    <message>
        <source>The block&apos;s heat capacity has to be over 0.</source>
        <translation>La capacité thermique du bloc doit être supérieure à 0.</translation>
    </message>
    <message>
        <source>The engine has to hold coolant.</source>
        <translation>Le moteur doit contenir du liquide.</translation>
    </message>
    <message>
        <source>The block&apos;s heat loss must not be negative.</source>
        <translation>La perte de chaleur du bloc ne doit pas être négative.</translation>
    </message>
    <message>
        <source>Conduction within the block must not be negative.</source>
        <translation>La conduction dans le bloc ne doit pas être négative.</translation>
    </message>
    <message>
        <source>The loops together sweep more than 0.98 of the block.</source>
        <translation>Les boucles balayent ensemble plus de 0,98 du bloc.</translation>
    </message>
    <message>
        <source>Temperatures have to be from -100 to 200 degC.</source>
        <translation>Les températures doivent être de -100 à 200 degC.</translation>
    </message>
    <message>
        <source>The start is at the boiling point already.</source>
        <translation>Le départ est déjà au point d&apos;ébullition.</translation>
    </message>
    <message>
        <source>A warm return has to be over the start.</source>
        <translation>Un retour chaud doit être au-dessus du départ.</translation>
    </message>
    <message>
        <source>After {0} s the heater&apos;s chamber boils, at {1}; the heater was stopped.</source>
        <translation>Après {0} s, la chambre du réchauffeur bout, à {1}&#xa0;; le réchauffeur a été arrêté.</translation>
    </message>
    <message>
        <source>The engine is at {0} after {1} s.</source>
        <translation>Le moteur est à {0} après {1} s.</translation>
    </message>
    <message>
        <source>The warm-up was given up: it took more steps than allowed.</source>
        <translation>La chauffe a été abandonnée&#xa0;: elle a pris plus de pas que permis.</translation>
    </message>
    <message>
        <source>The warm-up could not be followed past {0} s.</source>
        <translation>La chauffe n&apos;a pas pu être suivie au-delà de {0} s.</translation>
    </message>
    <message>
        <source>After {0} s coolant is under its freezing point, {1}.</source>
        <translation>Après {0} s, le liquide est sous son point de congélation, {1}.</translation>
    </message>
    <message>
        <source>No bore is left: of those in stock, {0} fell to &quot;{a}&quot;.</source>
        <translation>Il ne reste aucun diamètre&#xa0;: de ceux en stock, {0} sont éliminés par «&#xa0;{a}&#xa0;».</translation>
    </message>
    <message>
        <source>No pair of ports is left: {0} fell to &quot;{a}&quot;.</source>
        <translation>Il ne reste aucune paire de piquages&#xa0;: {0} sont éliminées par «&#xa0;{a}&#xa0;».</translation>
    </message>
    <message>
        <source>No place for the heater is left: {0} fell to &quot;{a}&quot; ({b}).</source>
        <translation>Il ne reste aucune place pour le réchauffeur&#xa0;: {0} sont éliminées par «&#xa0;{a}&#xa0;» ({b}).</translation>
    </message>
    <message>
        <source>No place for the heater is left: {0} fell to &quot;{a}&quot;.</source>
        <translation>Il ne reste aucune place pour le réchauffeur&#xa0;: {0} sont éliminées par «&#xa0;{a}&#xa0;».</translation>
    </message>
    <message>
        <source>No way for the supply hose is left: {0} of those tried fell to &quot;{a}&quot; ({b}).</source>
        <translation>Il ne reste aucun chemin pour la durite d&apos;alimentation&#xa0;: {0} des essais sont éliminés par «&#xa0;{a}&#xa0;» ({b}).</translation>
    </message>
    <message>
        <source>No way for the supply hose is left: {0} of those tried fell to &quot;{a}&quot;.</source>
        <translation>Il ne reste aucun chemin pour la durite d&apos;alimentation&#xa0;: {0} des essais sont éliminés par «&#xa0;{a}&#xa0;».</translation>
    </message>
    <message>
        <source>No way for the return hose is left: {0} of those tried fell to &quot;{a}&quot; ({b}).</source>
        <translation>Il ne reste aucun chemin pour la durite de retour&#xa0;: {0} des essais sont éliminés par «&#xa0;{a}&#xa0;» ({b}).</translation>
    </message>
    <message>
        <source>No way for the return hose is left: {0} of those tried fell to &quot;{a}&quot;.</source>
        <translation>Il ne reste aucun chemin pour la durite de retour&#xa0;: {0} des essais sont éliminés par «&#xa0;{a}&#xa0;».</translation>
    </message>
    <message>
        <source>Every hose is sound by itself, but {0} of the loops they make fell to &quot;{a}&quot;.</source>
        <translation>Chaque durite est bonne prise seule, mais {0} des boucles formées sont éliminées par «&#xa0;{a}&#xa0;».</translation>
    </message>
    <message>
        <source>Drawn soundly, but filled, warmed up and tilted {0} of the loops fell to &quot;{a}&quot;.</source>
        <translation>Bien dessinées, mais une fois remplies, chauffées et inclinées, {0} des boucles sont éliminées par «&#xa0;{a}&#xa0;».</translation>
    </message>
    <message>
        <source>the coolant has to be mixed anew</source>
        <translation>le liquide doit être mélangé à neuf</translation>
    </message>
    <message>
        <source>what is in the engine has to be found out</source>
        <translation>il faut trouver ce qu&apos;il y a dans le moteur</translation>
    </message>
    <message>
        <source>the tank has to be larger or filled higher</source>
        <translation>le vase doit être plus grand ou rempli plus haut</translation>
    </message>
    <message>
        <source>it takes another kind of heater</source>
        <translation>il faut un autre type de réchauffeur</translation>
    </message>
    <message>
        <source>it takes a larger heater or less wind, or is not to be had</source>
        <translation>il faut un réchauffeur plus puissant ou moins de vent, ou ce n&apos;est pas possible</translation>
    </message>
    <message>
        <source>with the bends next to it.</source>
        <translation>avec les courbes voisines.</translation>
    </message>
    <message>
        <source>and lay its hoses anew.</source>
        <translation>et posez ses durites à neuf.</translation>
    </message>
    <message>
        <source>Set {a} upright</source>
        <translation>Mettez {a} debout</translation>
    </message>
    <message>
        <source>Lay {a} level, its top to the right</source>
        <translation>Couchez {a} de niveau, le haut vers la droite</translation>
    </message>
    <message>
        <source>Lay {a} level, its top to the left</source>
        <translation>Couchez {a} de niveau, le haut vers la gauche</translation>
    </message>
    <message>
        <source>Lower {a} by {0}</source>
        <translation>Abaissez {a} de {0}</translation>
    </message>
    <message>
        <source>Move {a} to the left by {0}</source>
        <translation>Déplacez {a} vers la gauche de {0}</translation>
    </message>
    <message>
        <source>Move {a} to the right by {0}</source>
        <translation>Déplacez {a} vers la droite de {0}</translation>
    </message>
    <message>
        <source>Move {a} towards you by {0}</source>
        <translation>Rapprochez {a} de vous de {0}</translation>
    </message>
    <message>
        <source>Move {a} away from you by {0}</source>
        <translation>Éloignez {a} de vous de {0}</translation>
    </message>
    <message>
        <source>Raise the filler or surge tank by {0}, and fill to match.</source>
        <translation>Relevez l&apos;orifice de remplissage ou le vase d&apos;expansion de {0}, et remplissez en conséquence.</translation>
    </message>
    <message>
        <source>Mount {a} to the frame.</source>
        <translation>Montez {a} sur le châssis.</translation>
    </message>
    <message>
        <source>Move {a} towards {b} by {0}</source>
        <translation>Rapprochez {a} de {b} de {0}</translation>
    </message>
    <message>
        <source>Raise {a} by {0}</source>
        <translation>Relevez {a} de {0}</translation>
    </message>
    <message>
        <source>Lay both hoses of {a} anew, straight out of their ends.</source>
        <translation>Posez à neuf les deux durites de {a}, droit à la sortie de leurs bouts.</translation>
    </message>
    <message>
        <source>Lower this bend of {a} by {0}.</source>
        <translation>Abaissez cette courbe de {a} de {0}.</translation>
    </message>
    <message>
        <source>Raise this bend of {a} by {0}.</source>
        <translation>Relevez cette courbe de {a} de {0}.</translation>
    </message>
    <message>
        <source>Lower {1} bends of {a}, the highest by {0}.</source>
        <translation>Abaissez {1} courbes de {a}, la plus haute de {0}.</translation>
    </message>
    <message>
        <source>Raise {1} bends of {a}, the lowest by {0}.</source>
        <translation>Relevez {1} courbes de {a}, la plus basse de {0}.</translation>
    </message>
    <message>
        <source>Lead {a} so that it rises all the way: move {1} of its bends, the farthest by {0}.</source>
        <translation>Faites monter {a} sur toute sa longueur&#xa0;: déplacez {1} de ses courbes, au plus de {0}.</translation>
    </message>
    <message>
        <source>Lead {a} so that it falls all the way: move {1} of its bends, the farthest by {0}.</source>
        <translation>Faites descendre {a} sur toute sa longueur&#xa0;: déplacez {1} de ses courbes, au plus de {0}.</translation>
    </message>
    <message>
        <source>Leave out bend {0} of {a}.</source>
        <translation>Supprimez la courbe {0} de {a}.</translation>
    </message>
    <message>
        <source>Move this bend of {a} up by {0}.</source>
        <translation>Déplacez cette courbe de {a} vers le haut de {0}.</translation>
    </message>
    <message>
        <source>Move this bend of {a} down by {0}.</source>
        <translation>Déplacez cette courbe de {a} vers le bas de {0}.</translation>
    </message>
    <message>
        <source>Move this bend of {a} to the right by {0}.</source>
        <translation>Déplacez cette courbe de {a} vers la droite de {0}.</translation>
    </message>
    <message>
        <source>Move this bend of {a} to the left by {0}.</source>
        <translation>Déplacez cette courbe de {a} vers la gauche de {0}.</translation>
    </message>
    <message>
        <source>Move this bend of {a} away from you by {0}.</source>
        <translation>Éloignez de vous cette courbe de {a} de {0}.</translation>
    </message>
    <message>
        <source>Move this bend of {a} towards you by {0}.</source>
        <translation>Rapprochez de vous cette courbe de {a} de {0}.</translation>
    </message>
    <message>
        <source>Open this bend of {a} to a radius of {0}.</source>
        <translation>Ouvrez cette courbe de {a} à un rayon de {0}.</translation>
    </message>
    <message>
        <source>Bend {a} tighter here, to a radius of {0}.</source>
        <translation>Courbez {a} plus serré ici, à un rayon de {0}.</translation>
    </message>
    <message>
        <source>Use a moulded elbow for this bend of {a}.</source>
        <translation>Utilisez un coude moulé pour cette courbe de {a}.</translation>
    </message>
    <message>
        <source>Lead {a} straight out of its end for {0} before it bends.</source>
        <translation>Menez {a} tout droit depuis son bout sur {0} avant de courber.</translation>
    </message>
    <message>
        <source>Lead {a} round a bend {0} to the side.</source>
        <translation>Faites passer {a} par une courbe de {0} sur le côté.</translation>
    </message>
    <message>
        <source>Lay {a} anew: straight out of both ends, with {0} bends.</source>
        <translation>Posez {a} à neuf&#xa0;: droit aux deux bouts, avec {0} courbes.</translation>
    </message>
    <message>
        <source>Turn the elbow on {a} so that it leads down by {0}, and lay {b} anew from there.</source>
        <translation>Tournez le coude sur {a} pour qu&apos;il mène vers le bas de {0}, et posez {b} à neuf à partir de là.</translation>
    </message>
    <message>
        <source>Add an isolation valve to {a} {0} from {b}.</source>
        <translation>Ajoutez une vanne d&apos;isolement dans {a} à {0} de {b}.</translation>
    </message>
    <message>
        <source>Let the heater cool, then open this valve of {a}.</source>
        <translation>Laissez refroidir le réchauffeur, puis ouvrez cette vanne de {a}.</translation>
    </message>
    <message>
        <source>Take the reducer out of {a}.</source>
        <translation>Enlevez la réduction de {a}.</translation>
    </message>
    <message>
        <source>Take the check valve out of {a}.</source>
        <translation>Enlevez le clapet anti-retour de {a}.</translation>
    </message>
    <message>
        <source>Add a clip to {a} at {0} from where it starts.</source>
        <translation>Ajoutez un collier de maintien sur {a} à {0} de son départ.</translation>
    </message>
    <message>
        <source>Add {1} clips to {a}, the first at {0} from where it starts.</source>
        <translation>Ajoutez {1} colliers de maintien sur {a}, le premier à {0} de son départ.</translation>
    </message>
    <message>
        <source>Use hose of {0} bore for {a}, with hose ends and valves to match</source>
        <translation>Utilisez une durite de diamètre intérieur {0} pour {a}, avec embouts et vannes assortis</translation>
    </message>
    <message>
        <source>Use hose of {0} bore on both sides, with hose ends and valves to match</source>
        <translation>Utilisez une durite de diamètre intérieur {0} des deux côtés, avec embouts et vannes assortis</translation>
    </message>
    <message>
        <source>and lay it anew with wider bends.</source>
        <translation>et posez-la à neuf avec des courbes plus larges.</translation>
    </message>
    <message>
        <source>Use a hose end with a bore of {0} on {a}.</source>
        <translation>Utilisez un embout de diamètre intérieur {0} sur {a}.</translation>
    </message>
    <message>
        <source>Use a part with a bore of {0} in {a} here.</source>
        <translation>Utilisez ici une pièce de diamètre intérieur {0} dans {a}.</translation>
    </message>
    <message>
        <source>Take {a} instead of {b}, and lay {c} anew from there.</source>
        <translation>Prenez {a} au lieu de {b}, et posez {c} à neuf à partir de là.</translation>
    </message>
    <message>
        <source>Take {a} instead of {b}.</source>
        <translation>Prenez {a} au lieu de {b}.</translation>
    </message>
    <message>
        <source>Leave {a} spare: no hose is on it.</source>
        <translation>Laissez {a} en réserve&#xa0;: aucune durite n&apos;y est.</translation>
    </message>
    <message>
        <source>Connect {a} to {b}, and lay it anew.</source>
        <translation>Reliez {a} à {b}, et refaites la pose.</translation>
    </message>
    <message>
        <source>Connect {a} to {b}.</source>
        <translation>Reliez {a} à {b}.</translation>
    </message>
    <message>
        <source>Lay a supply hose from {a} to {b}.</source>
        <translation>Posez une durite d&apos;alimentation de {a} à {b}.</translation>
    </message>
    <message>
        <source>Lay a return hose from {b} to {a}.</source>
        <translation>Posez une durite de retour de {b} à {a}.</translation>
    </message>
    <message>
        <source>Lay a supply hose from {a} and a return hose to {b}, both on {c}.</source>
        <translation>Posez une durite d&apos;alimentation depuis {a} et une durite de retour vers {b}, toutes deux sur {c}.</translation>
    </message>
    <message>
        <source>Connect {a} to {b} and {c}, and lay it anew.</source>
        <translation>Reliez {a} à {b} et {c}, et refaites la pose.</translation>
    </message>
    <message>
        <source>ground</source>
        <translation>sol</translation>
    </message>
    <message>
        <source>Ground: {0} more than the least clearance.</source>
        <translation>Sol&#xa0;: {0} de plus que l&apos;écart minimal.</translation>
    </message>
    <message>
        <source>hot or moving things</source>
        <translation>éléments chauds ou mobiles</translation>
    </message>
    <message>
        <source>Hot or moving things: {0} more than the least clearance.</source>
        <translation>Éléments chauds ou mobiles&#xa0;: {0} de plus que l&apos;écart minimal.</translation>
    </message>
    <message>
        <source>span between clips</source>
        <translation>portée entre colliers</translation>
    </message>
    <message>
        <source>Clips: the longest span could be {0} longer.</source>
        <translation>Colliers de maintien&#xa0;: la plus longue portée pourrait être plus longue de {0}.</translation>
    </message>
    <message>
        <source>slack between frame and engine</source>
        <translation>mou entre châssis et moteur</translation>
    </message>
    <message>
        <source>Slack between frame and engine: {0} of its length more than the least.</source>
        <translation>Mou entre châssis et moteur&#xa0;: {0} de sa longueur en plus du minimum.</translation>
    </message>
    <message>
        <source>heater under the jacket</source>
        <translation>réchauffeur sous la chemise</translation>
    </message>
    <message>
        <source>Heater under the jacket: {0} lower than it has to be.</source>
        <translation>Réchauffeur sous la chemise&#xa0;: {0} plus bas que nécessaire.</translation>
    </message>
    <message>
        <source>Coolant level: {0} over the highest point.</source>
        <translation>Niveau de liquide&#xa0;: {0} au-dessus du point le plus haut.</translation>
    </message>
    <message>
        <source>fall of the supply hose</source>
        <translation>descente de la durite d&apos;alimentation</translation>
    </message>
    <message>
        <source>Supply hose: {0} more fall than it needs.</source>
        <translation>Durite d&apos;alimentation&#xa0;: {0} de descente de plus que nécessaire.</translation>
    </message>
    <message>
        <source>Move {a} %1</source>
        <translation>Déplacez {a} de %1</translation>
    </message>
    <message>
        <source>%1 to the right</source>
        <translation>%1 vers la droite</translation>
    </message>
    <message>
        <source>%1 to the left</source>
        <translation>%1 vers la gauche</translation>
    </message>
    <message>
        <source>%1 away from you</source>
        <translation>%1 en s&apos;éloignant de vous</translation>
    </message>
    <message>
        <source>%1 towards you</source>
        <translation>%1 vers vous</translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation>%1 vers le haut</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>%1 vers le bas</translation>
    </message>
    <message>
        <source>Take {a} for the supply instead of {b}.</source>
        <translation>Prenez {a} pour l&apos;alimentation au lieu de {b}.</translation>
    </message>
    <message>
        <source>Take {a} for the return instead of {b}.</source>
        <translation>Prenez {a} pour le retour au lieu de {b}.</translation>
    </message>
    <message>
        <source>Turn the elbow on {a} so that it leads down by {0}.</source>
        <translation>Tournez le coude sur {a} pour qu&apos;il mène vers le bas de {0}.</translation>
    </message>
    <message>
        <source>Use hose of {0} bore, with hose ends and valves to match.</source>
        <translation>Utilisez une durite de diamètre intérieur {0}, avec embouts et vannes assortis.</translation>
    </message>
    <message>
        <source>{0} of hose of {1} bore, {2}.</source>
        <translation>{0} de durite de diamètre intérieur {1}, {2}.</translation>
    </message>
    <message>
        <source>{0} of hose of {1} bore; its flow is not computed.</source>
        <translation>{0} de durite de diamètre intérieur {1}&#xa0;; son débit n&apos;est pas calculé.</translation>
    </message>
    <message>
        <source>%1 Its hoses may sag %2 before they hold air or coolant.</source>
        <translation>%1 Ses durites peuvent fléchir de %2 avant de retenir air ou liquide.</translation>
    </message>
    <message>
        <source>%1 Its hoses may sag more than %2.</source>
        <translation>%1 Ses durites peuvent fléchir de plus de %2.</translation>
    </message>
    <message>
        <source>{0} to spare.</source>
        <translation>{0} de réserve.</translation>
    </message>
    <message>
        <source>{0} left: sag of {a}</source>
        <translation>reste {0}&#xa0;: flèche de {a}</translation>
    </message>
    <message>
        <source>{0} left: {a}</source>
        <translation>reste {0}&#xa0;: {a}</translation>
    </message>
    <message>
        <source>Not sound on every grade that is judged.</source>
        <translation>Défectueux sur une partie des pentes jugées.</translation>
    </message>
    <message>
        <source>Not judged, &quot;{a}&quot;: {b}.</source>
        <translation>Non jugé, «&#xa0;{a}&#xa0;»&#xa0;: {b}.</translation>
    </message>
    <message>
        <source>Slack: every hose goes round a bend of {0} or more.</source>
        <translation>Mou&#xa0;: chaque durite passe par une courbe de {0} ou plus.</translation>
    </message>
    <message>
        <source>Turn {a} by {0} about its upright axis.</source>
        <translation>Tournez {a} de {0} autour de son axe vertical.</translation>
    </message>
    <message>
        <source>there is no heater to propose a layout for</source>
        <translation>il n&apos;y a pas de réchauffeur pour lequel proposer un tracé</translation>
    </message>
    <message>
        <source>the space for the heater is no box</source>
        <translation>l&apos;espace pour le réchauffeur n&apos;est pas une boîte</translation>
    </message>
    <message>
        <source>a supply port and a return port are not entered</source>
        <translation>un piquage d&apos;alimentation et un piquage de retour ne sont pas saisis</translation>
    </message>
    <message>
        <source>a supply port and a return port that no other hose is on are not entered</source>
        <translation>un piquage d&apos;alimentation et un piquage de retour sans autre durite ne sont pas saisis</translation>
    </message>
    <message>
        <source>The number is too large or too small.</source>
        <translation>Le nombre est trop grand ou trop petit.</translation>
    </message>
    <message>
        <source>“%1” is not a number.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas un nombre.</translation>
    </message>
    <message>
        <source>%1 has a comma and a point: type thousands without a separator, as in 1234.5.</source>
        <translation>%1 a une virgule et un point&#xa0;: tapez les milliers sans séparateur, comme dans 1234,5.</translation>
    </message>
    <message>
        <source>%1 has more than one decimal sign: type thousands without a separator.</source>
        <translation>%1 a plus d&apos;un signe décimal&#xa0;: tapez les milliers sans séparateur.</translation>
    </message>
    <message>
        <source>%1 could be %2 or %3.%4: type one of these, with a point for decimals and nothing between thousands.</source>
        <translation>%1 pourrait être %2 ou %3.%4&#xa0;: tapez l&apos;un des deux, avec un point pour les décimales et rien entre les milliers.</translation>
    </message>
    <message>
        <source>A fraction cannot have 0 under the line.</source>
        <translation>Une fraction ne peut pas avoir 0 sous la barre.</translation>
    </message>
    <message>
        <source>There is no number at “%1”.</source>
        <translation>Il n&apos;y a pas de nombre à «&#xa0;%1&#xa0;».</translation>
    </message>
    <message>
        <source>The fraction after a whole number must be less than 1, as in 1 1/8.</source>
        <translation>La fraction après un nombre entier doit être inférieure à 1, comme dans 1 1/8.</translation>
    </message>
    <message>
        <source>Nothing was typed.</source>
        <translation>Rien n&apos;a été tapé.</translation>
    </message>
    <message>
        <source>%1 Expected is %2.</source>
        <translation>%1 Attendu&#xa0;: %2.</translation>
    </message>
    <message>
        <source>“%1” after the number was not understood.</source>
        <translation>«&#xa0;%1&#xa0;» après le nombre n&apos;a pas été compris.</translation>
    </message>
    <message>
        <source>“%1” is not a unit that fits here.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas une unité qui convient ici.</translation>
    </message>
    <message>
        <source>That is colder than absolute zero.</source>
        <translation>C&apos;est plus froid que le zéro absolu.</translation>
    </message>
    <message>
        <source>Without a % sign the number must lie between -1 and 1.</source>
        <translation>Sans signe %, le nombre doit être entre -1 et 1.</translation>
    </message>
    <message>
        <source>“%1” after the length was not understood.</source>
        <translation>«&#xa0;%1&#xa0;» après la longueur n&apos;a pas été compris.</translation>
    </message>
    <message>
        <source>Only inches can follow feet.</source>
        <translation>Seuls des pouces peuvent suivre des pieds.</translation>
    </message>
    <message>
        <source>Inches after feet must be fewer than 12.</source>
        <translation>Les pouces après des pieds doivent être moins de 12.</translation>
    </message>
    <message>
        <source>level</source>
        <translation>de niveau</translation>
    </message>
    <message>
        <source>falls %1</source>
        <translation>descend de %1</translation>
    </message>
    <message>
        <source>rises %1</source>
        <translation>monte de %1</translation>
    </message>
    <message>
        <source>There is no number.</source>
        <translation>Il n&apos;y a pas de nombre.</translation>
    </message>
    <message>
        <source>The second number of a slope must be over 0, with nothing after it.</source>
        <translation>Le second nombre d&apos;une pente doit être supérieur à 0, sans rien après.</translation>
    </message>
    <message>
        <source>The text is too long to be a quantity.</source>
        <translation>Le texte est trop long pour être une grandeur.</translation>
    </message>
    <message>
        <source>The number is too large.</source>
        <translation>Le nombre est trop grand.</translation>
    </message>
    <message>
        <source>steep</source>
        <translation>raide</translation>
    </message>
    <message>
        <source>falls steeply</source>
        <translation>descend raide</translation>
    </message>
    <message>
        <source>1 in %1</source>
        <translation>1 pour %1</translation>
    </message>
    <message>
        <source>falls 1 in %1</source>
        <translation>descend 1 pour %1</translation>
    </message>
    <message>
        <source>1 bore</source>
        <translation>1 diamètre</translation>
    </message>
    <message>
        <source>a plain number such as 3 or 1.5</source>
        <translation>un simple nombre comme 3 ou 1,5</translation>
    </message>
    <message>
        <source>a length such as 19 mm, 1.9 cm, 3/4 in or 2 ft 3 1/2 in</source>
        <translation>une longueur comme 19 mm, 1,9 cm, 3/4 in ou 2 ft 3 1/2 in</translation>
    </message>
    <message>
        <source>a head such as 9 mm or 0.35 in</source>
        <translation>une charge comme 9 mm ou 0,35 in</translation>
    </message>
    <message>
        <source>a volume such as 250 ml, 1.2 l, 8 fl oz or 2 qt</source>
        <translation>un volume comme 250 ml, 1,2 l, 8 fl oz ou 2 qt</translation>
    </message>
    <message>
        <source>a volume such as 12 l, 500 ml, 2 qt or 3 gal</source>
        <translation>un volume comme 12 l, 500 ml, 2 qt ou 3 gal</translation>
    </message>
    <message>
        <source>a mass such as 450 kg or 990 lb</source>
        <translation>une masse comme 450 kg ou 990 lb</translation>
    </message>
    <message>
        <source>a temperature such as 82 °C or 180 °F</source>
        <translation>une température comme 82 °C ou 180 °F</translation>
    </message>
    <message>
        <source>a temperature difference such as 5 K or 9 °F</source>
        <translation>un écart de température comme 5 K ou 9 °F</translation>
    </message>
    <message>
        <source>a power such as 1500 W or 1.5 kW</source>
        <translation>une puissance comme 1500 W ou 1,5 kW</translation>
    </message>
    <message>
        <source>an energy such as 12 kWh</source>
        <translation>une énergie comme 12 kWh</translation>
    </message>
    <message>
        <source>a voltage such as 120 V</source>
        <translation>une tension comme 120 V</translation>
    </message>
    <message>
        <source>a current such as 12.5 A</source>
        <translation>un courant comme 12,5 A</translation>
    </message>
    <message>
        <source>a pressure such as 103 kPa, 1 bar or 15 psi</source>
        <translation>une pression comme 103 kPa, 1 bar ou 15 psi</translation>
    </message>
    <message>
        <source>a pressure such as 88 Pa</source>
        <translation>une pression comme 88 Pa</translation>
    </message>
    <message>
        <source>a speed such as 4 m/s, 15 km/h or 9 mph</source>
        <translation>une vitesse comme 4 m/s, 15 km/h ou 9 mph</translation>
    </message>
    <message>
        <source>a percentage such as 50 %</source>
        <translation>un pourcentage comme 50&#xa0;%</translation>
    </message>
    <message>
        <source>an angle such as 15 or 15°</source>
        <translation>un angle comme 15 ou 15°</translation>
    </message>
    <message>
        <source>an altitude such as 1200 m or 3900 ft</source>
        <translation>une altitude comme 1200 m ou 3900 ft</translation>
    </message>
    <message>
        <source>%1 bores</source>
        <translation>%1 diamètres</translation>
    </message>
    <message>
        <source>a number of bores such as 6</source>
        <translation>un nombre de diamètres intérieurs comme 6</translation>
    </message>
    <message>
        <source>a share such as 70 % or 0.7</source>
        <translation>une part comme 70&#xa0;% ou 0,7</translation>
    </message>
    <message>
        <source>a slope such as 1 in 50, 1:50 or 2 %</source>
        <translation>une pente comme 1 pour 50, 1:50 ou 2&#xa0;%</translation>
    </message>
    <message>
        <source>a time such as 24 h, 90 min or 2 days</source>
        <translation>une durée comme 24 h, 90 min ou 2 d</translation>
    </message>
    <message>
        <source>a flow such as 3.5 l/min or 0.9 gal/min</source>
        <translation>un débit comme 3,5 l/min ou 0,9 gal/min</translation>
    </message>
    <message>
        <source>a resistance such as 0.35 Ω</source>
        <translation>une résistance comme 0,35 Ω</translation>
    </message>
    <message>
        <source>a resistance by length such as 4.61 Ω/km or 1.24 Ω/kft</source>
        <translation>une résistance linéique comme 4,61 Ω/km ou 1,24 Ω/kft</translation>
    </message>
    <message>
        <source>a section such as 2.5 mm²</source>
        <translation>une section comme 2,5 mm²</translation>
    </message>
    <message>
        <source>a share such as 40 ppm or 40 mg/l</source>
        <translation>une part comme 40 ppm ou 40 mg/l</translation>
    </message>
    <message>
        <source>a loss such as 18 W/K or 10 W/°F</source>
        <translation>une perte comme 18 W/K ou 10 W/°F</translation>
    </message>
    <message>
        <source>Loss of hose ends, times the formula</source>
        <translation>Perte des embouts, multiple de la formule</translation>
    </message>
    <message>
        <source>Hooper (1988); no measurement at such slow flow is known, +-15 % of flow comes from here</source>
        <translation>Hooper (1988)&#xa0;; aucune mesure connue à si faible débit, d&apos;où +-15&#xa0;% de débit</translation>
    </message>
    <message>
        <source>Loss of valves, elbows and tees, times the formula</source>
        <translation>Perte des vannes, coudes et tés, multiple de la formule</translation>
    </message>
    <message>
        <source>Hooper (1981), an extrapolation under 1 in: +-35 %</source>
        <translation>Hooper (1981), extrapolé sous 1 in&#xa0;: +-35&#xa0;%</translation>
    </message>
    <message>
        <source>viscosity</source>
        <translation>viscosité</translation>
    </message>
    <message>
        <source>Viscosity of the coolant, times the formula</source>
        <translation>Viscosité du liquide, multiple de la formule</translation>
    </message>
    <message>
        <source>Melinder (2010); published tables differ by so much</source>
        <translation>Melinder (2010)&#xa0;; les tables publiées diffèrent d&apos;autant</translation>
    </message>
    <message>
        <source>buoyancy</source>
        <translation>poussée</translation>
    </message>
    <message>
        <source>Fall of density with temperature, times the formula</source>
        <translation>Baisse de masse volumique avec la température, multiple de la formule</translation>
    </message>
    <message>
        <source>Melinder (2010); the ASHRAE tables (2001) give 10 to 20 % less</source>
        <translation>Melinder (2010)&#xa0;; les tables ASHRAE (2001) donnent 10 à 20&#xa0;% de moins</translation>
    </message>
    <message>
        <source>roughness</source>
        <translation>rugosité</translation>
    </message>
    <message>
        <source>Roughness of hoses</source>
        <translation>Rugosité des durites</translation>
    </message>
    <message>
        <source>common practice: rubber and silicone count as smooth</source>
        <translation>pratique courante&#xa0;: caoutchouc et silicone comptent comme lisses</translation>
    </message>
    <message>
        <source>Share of the chamber&apos;s height at its outlet&apos;s temperature</source>
        <translation>Part de la hauteur de chambre à la température de sortie</translation>
    </message>
    <message>
        <source>own choice: half drives about what an even rise does; none and all are the bounds</source>
        <translation>choix propre&#xa0;: la moitié entraîne à peu près comme une montée régulière&#xa0;; aucune et toute sont les bornes</translation>
    </message>
    <message>
        <source>Heat from coolant to block in the jacket, times the estimate</source>
        <translation>Chaleur du liquide au bloc dans la chemise, multiple de l&apos;estimation</translation>
    </message>
    <message>
        <source>own estimate: natural convection of a film of 100 W/m2 K over the jacket&apos;s surface</source>
        <translation>estimation propre&#xa0;: convection naturelle d&apos;un film de 100 W/m2 K sur la surface de la chemise</translation>
    </message>
    <message>
        <source>Share of the engine that the loop reaches, times the estimate</source>
        <translation>Part du moteur que la boucle atteint, multiple de l&apos;estimation</translation>
    </message>
    <message>
        <source>own choice: distance between the ports over the engine&apos;s length</source>
        <translation>choix propre&#xa0;: distance entre les piquages sur la longueur du moteur</translation>
    </message>
    <message>
        <source>Conduction from the part reached to the rest</source>
        <translation>Conduction de la partie atteinte vers le reste</translation>
    </message>
    <message>
        <source>own estimate: iron of 50 W/m K over 0.05 m2 and 0.3 m, and coolant moving by itself</source>
        <translation>estimation propre&#xa0;: fonte de 50 W/m K sur 0,05 m2 et 0,3 m, et liquide se déplaçant seul</translation>
    </message>
    <message>
        <source>Heat loss of the engine, times the formula</source>
        <translation>Perte de chaleur du moteur, multiple de la formule</translation>
    </message>
    <message>
        <source>McAdams (1954) over five of six faces of a box round the engine, common practice</source>
        <translation>McAdams (1954) sur cinq des six faces d&apos;une boîte autour du moteur, pratique courante</translation>
    </message>
    <message>
        <source>Share of the wind that reaches the engine</source>
        <translation>Part du vent qui atteint le moteur</translation>
    </message>
    <message>
        <source>own estimate: an engine stands behind bodywork or in an enclosure</source>
        <translation>estimation propre&#xa0;: un moteur est derrière une carrosserie ou dans une enceinte</translation>
    </message>
    <message>
        <source>Share of the wind that reaches hoses</source>
        <translation>Part du vent qui atteint les durites</translation>
    </message>
    <message>
        <source>Engine mass where it is not entered, per litre of displacement</source>
        <translation>Masse du moteur si non saisie, par litre de cylindrée</translation>
    </message>
    <message>
        <source>from memory: iron diesel 75 to 110 kg</source>
        <translation>de mémoire&#xa0;: diesel en fonte 75 à 110 kg</translation>
    </message>
    <message>
        <source>Specific heat of iron</source>
        <translation>Chaleur massique de la fonte</translation>
    </message>
    <message>
        <source>from memory, textbooks: grey iron 460 to 540 J/kg K</source>
        <translation>de mémoire, manuels&#xa0;: fonte grise 460 à 540 J/kg K</translation>
    </message>
    <message>
        <source>Specific heat of aluminium alloy</source>
        <translation>Chaleur massique de l&apos;alliage d&apos;aluminium</translation>
    </message>
    <message>
        <source>from memory, textbooks: 880 to 960 J/kg K</source>
        <translation>de mémoire, manuels&#xa0;: 880 à 960 J/kg K</translation>
    </message>
    <message>
        <source>Coolant in the engine where it is not entered, per litre of displacement</source>
        <translation>Liquide dans le moteur si non saisi, par litre de cylindrée</translation>
    </message>
    <message>
        <source>from memory: 1 to 2 litre in the engine alone</source>
        <translation>de mémoire&#xa0;: 1 à 2 litres dans le moteur seul</translation>
    </message>
    <message>
        <source>Heat held by chamber and element</source>
        <translation>Chaleur contenue par chambre et élément</translation>
    </message>
    <message>
        <source>own estimate: 1.5 kg of steel</source>
        <translation>estimation propre&#xa0;: 1,5 kg d&apos;acier</translation>
    </message>
    <message>
        <source>The chamber&apos;s own convection when little flows</source>
        <translation>Convection propre de la chambre à faible débit</translation>
    </message>
    <message>
        <source>own estimate</source>
        <translation>estimation propre</translation>
    </message>
    <message>
        <source>Share of the chamber&apos;s heat that a thermostat at the inlet senses</source>
        <translation>Part de la chaleur de la chambre captée par un thermostat à l&apos;entrée</translation>
    </message>
    <message>
        <source>own choice, by conduction through the body it sits in</source>
        <translation>choix propre, par conduction à travers le corps qui le porte</translation>
    </message>
    <message>
        <source>Lag of the thermostat</source>
        <translation>Retard du thermostat</translation>
    </message>
    <message>
        <source>own estimate: 20 to 60 s in a well</source>
        <translation>estimation propre&#xa0;: 20 à 60 s dans un doigt de gant</translation>
    </message>
    <message>
        <source>Thermostat turns on, where it is not entered</source>
        <translation>Mise en marche du thermostat, si non saisie</translation>
    </message>
    <message>
        <source>common practice: 100 degF</source>
        <translation>pratique courante&#xa0;: 100 degF</translation>
    </message>
    <message>
        <source>Thermostat turns off, where it is not entered</source>
        <translation>Arrêt du thermostat, si non saisi</translation>
    </message>
    <message>
        <source>common practice: 120 degF</source>
        <translation>pratique courante&#xa0;: 120 degF</translation>
    </message>
    <message>
        <source>Block temperature for which flow is shown on the drawing</source>
        <translation>Température du bloc pour le débit affiché sur le dessin</translation>
    </message>
    <message>
        <source>own choice: an engine that is kept warm</source>
        <translation>choix propre&#xa0;: un moteur maintenu chaud</translation>
    </message>
    <message>
        <source>Head of the engine&apos;s pump between two ports of the block</source>
        <translation>Charge de la pompe du moteur entre deux piquages du bloc</translation>
    </message>
    <message>
        <source>own estimate, at a fast idle; pumps differ</source>
        <translation>estimation propre, à ralenti accéléré&#xa0;; les pompes diffèrent</translation>
    </message>
    <message>
        <source>Head of the engine&apos;s pump between its suction and a port of the block</source>
        <translation>Charge de la pompe du moteur entre son aspiration et un piquage du bloc</translation>
    </message>
    <message>
        <source>own estimate, at a fast idle with the thermostat open; pumps differ</source>
        <translation>estimation propre, à ralenti accéléré, thermostat ouvert&#xa0;; les pompes diffèrent</translation>
    </message>
    <message>
        <source>Coolant with the engine running</source>
        <translation>Liquide, moteur en marche</translation>
    </message>
    <message>
        <source>common practice: a usual thermostat</source>
        <translation>pratique courante&#xa0;: un thermostat habituel</translation>
    </message>
    <message>
        <source>Coolant in the surge tank per metre of its height, times the engine&apos;s own</source>
        <translation>Liquide dans le vase d&apos;expansion par mètre de hauteur, multiple de celui du moteur</translation>
    </message>
    <message>
        <source>own estimate: tanks are made to take what the coolant grows by</source>
        <translation>estimation propre&#xa0;: les vases sont faits pour recevoir la dilatation du liquide</translation>
    </message>
    <message>
        <source>the loop of %1 is not closed</source>
        <translation>la boucle de %1 n&apos;est pas fermée</translation>
    </message>
    <message>
        <source>%1 has no length</source>
        <translation>%1&#xa0;: longueur nulle</translation>
    </message>
    <message>
        <source>the power of %1 is not entered</source>
        <translation>la puissance de %1 n&apos;est pas saisie</translation>
    </message>
    <message>
        <source>neither the engine&apos;s coolant volume nor its displacement is entered</source>
        <translation>ni le volume de liquide du moteur ni sa cylindrée n&apos;est saisi</translation>
    </message>
    <message>
        <source>properties of coolant are known only up to 60 % of antifreeze</source>
        <translation>les propriétés du liquide ne sont connues que jusqu&apos;à 60&#xa0;% d&apos;antigel</translation>
    </message>
    <message>
        <source>the hump in %1</source>
        <translation>la bosse dans %1</translation>
    </message>
    <message>
        <source>the dip in %1</source>
        <translation>le creux dans %1</translation>
    </message>
    <message>
        <source>the change of bore in %1</source>
        <translation>le changement de diamètre dans %1</translation>
    </message>
    <message>
        <source>the valve in %1</source>
        <translation>la vanne dans %1</translation>
    </message>
    <message>
        <source>toward %1</source>
        <translation>vers %1</translation>
    </message>
    <message>
        <source>into the engine</source>
        <translation>dans le moteur</translation>
    </message>
    <message>
        <source>into %1</source>
        <translation>dans %1</translation>
    </message>
    <message>
        <source>the inlet of %1</source>
        <translation>l&apos;entrée de %1</translation>
    </message>
    <message>
        <source>the outlet of %1</source>
        <translation>la sortie de %1</translation>
    </message>
    <message>
        <source>Coolant runs through {a}, {0} up, {b}.</source>
        <translation>Le liquide coule par {a}, à {0} de hauteur, {b}.</translation>
    </message>
    <message>
        <source>Coolant spills over {a}, {0} up, {b}; the air behind it is sealed.</source>
        <translation>Le liquide déborde par {a}, à {0} de hauteur, {b}&#xa0;; l&apos;air derrière est enfermé.</translation>
    </message>
    <message>
        <source>Coolant spills over {a}, {0} up, {b}.</source>
        <translation>Le liquide déborde par {a}, à {0} de hauteur, {b}.</translation>
    </message>
    <message>
        <source>Coolant fills {a} to its crown, {0} up.</source>
        <translation>Le liquide remplit {a} jusqu&apos;en haut de la section, à {0} de hauteur.</translation>
    </message>
    <message>
        <source>Coolant covers {a}, {0} up: air that is still behind it is sealed.</source>
        <translation>Le liquide couvre {a}, à {0} de hauteur&#xa0;: l&apos;air encore derrière est enfermé.</translation>
    </message>
    <message>
        <source>Coolant covers {a}, {0} up.</source>
        <translation>Le liquide couvre {a}, à {0} de hauteur.</translation>
    </message>
    <message>
        <source>Coolant closes {a}, {0} up: the air beyond it is sealed.</source>
        <translation>Le liquide obstrue {a}, à {0} de hauteur&#xa0;: l&apos;air au-delà est enfermé.</translation>
    </message>
    <message>
        <source>Coolant closes {a}, {0} up: air no longer passes there.</source>
        <translation>Le liquide obstrue {a}, à {0} de hauteur&#xa0;: l&apos;air n&apos;y passe plus.</translation>
    </message>
    <message>
        <source>Coolant no longer runs over {a}.</source>
        <translation>Le liquide ne coule plus par {a}.</translation>
    </message>
    <message>
        <source>{a} lets air pass again, {0} up.</source>
        <translation>{a} laisse de nouveau passer l&apos;air, à {0} de hauteur.</translation>
    </message>
    <message>
        <source>Air bubbles through {a}, {0} up, {b}.</source>
        <translation>L&apos;air passe en bulles par {a}, à {0} de hauteur, {b}.</translation>
    </message>
    <message>
        <source>No more air bubbles through {a}.</source>
        <translation>L&apos;air ne passe plus en bulles par {a}.</translation>
    </message>
    <message>
        <source>Coolant reaches the bleed of {a}, {0} up; it is closed.</source>
        <translation>Le liquide atteint le purgeur de {a}, à {0} de hauteur&#xa0;; on le ferme.</translation>
    </message>
    <message>
        <source>Coolant covers the element of {a}, {0} up.</source>
        <translation>Le liquide couvre l&apos;élément chauffant de {a}, à {0} de hauteur.</translation>
    </message>
    <message>
        <source>The hose is pushed onto {a}, {0} up, over the coolant.</source>
        <translation>La durite est enfilée sur {a}, à {0} de hauteur, au-dessus du liquide.</translation>
    </message>
    <message>
        <source>{a} is opened, {0} up.</source>
        <translation>Ouverture&#xa0;: {a}, à {0} de hauteur.</translation>
    </message>
    <message>
        <source>The vacuum is let go: what air is left shrinks to a fraction.</source>
        <translation>Le vide est relâché&#xa0;: l&apos;air restant se réduit à une fraction.</translation>
    </message>
    <message>
        <source>Heater %1</source>
        <translation>Réchauffeur %1</translation>
    </message>
    <message>
        <source>Filling is not computed: {a}.</source>
        <translation>Le remplissage n&apos;est pas calculé&#xa0;: {a}.</translation>
    </message>
    <message>
        <source>The engine is full; hoses and heater were filled before they were connected, and {0} of air got into each hose.</source>
        <translation>Le moteur est plein&#xa0;; durites et réchauffeur ont été remplis avant raccordement, et {0} d&apos;air est entré dans chaque durite.</translation>
    </message>
    <message>
        <source>The engine is full; hoses and heater were filled before they were connected.</source>
        <translation>Le moteur est plein&#xa0;; durites et réchauffeur ont été remplis avant raccordement.</translation>
    </message>
    <message>
        <source>Everything is pumped down to a vacuum, and coolant is let in.</source>
        <translation>Tout est mis sous vide, et on laisse entrer le liquide.</translation>
    </message>
    <message>
        <source>Coolant is pumped in from below, at {a}.</source>
        <translation>Le liquide est pompé par le bas, à {a}.</translation>
    </message>
    <message>
        <source>{0} of coolant was let out of the engine, down to {1}; the new hoses are empty.</source>
        <translation>{0} de liquide ont été retirés du moteur, jusqu&apos;à {1}&#xa0;; les nouvelles durites sont vides.</translation>
    </message>
    <message>
        <source>{0} of coolant was let out of the engine, down to {1}; the valves are shut and the new hoses empty.</source>
        <translation>{0} de liquide ont été retirés du moteur, jusqu&apos;à {1}&#xa0;; les vannes sont fermées et les nouvelles durites vides.</translation>
    </message>
    <message>
        <source>The engine is full, the valves are shut and the new hoses empty.</source>
        <translation>Le moteur est plein, les vannes sont fermées et les nouvelles durites vides.</translation>
    </message>
    <message>
        <source>Coolant is poured in at the filler.</source>
        <translation>Le liquide est versé par l&apos;orifice de remplissage.</translation>
    </message>
    <message>
        <source>Filled to {0}: {1} of coolant in hoses and chambers.</source>
        <translation>Rempli jusqu&apos;à {0}&#xa0;: {1} de liquide dans durites et chambres.</translation>
    </message>
    <message>
        <source>Filled no further than {0}: {1} of coolant in hoses and chambers.</source>
        <translation>Rempli seulement jusqu&apos;à {0}&#xa0;: {1} de liquide dans durites et chambres.</translation>
    </message>
    <message>
        <source>{2} was let out before, and {3} has to be poured in.</source>
        <translation>{2} ont été retirés auparavant, et {3} sont à verser.</translation>
    </message>
    <message>
        <source>the chamber of %1</source>
        <translation>la chambre de %1</translation>
    </message>
    <message>
        <source>{0} of air stay in {a}, {1} up.</source>
        <translation>{0} d&apos;air reste dans {a}, à {1} de hauteur.</translation>
    </message>
    <message>
        <source>{0} of air stay in {a}, {1} up: they close the bore and take {2} of head.</source>
        <translation>{0} d&apos;air reste dans {a}, à {1} de hauteur&#xa0;: il obstrue la section et absorbe {2} de charge.</translation>
    </message>
    <message>
        <source>{0} of air stay in {a}, {1} up: they narrow the bore.</source>
        <translation>{0} d&apos;air reste dans {a}, à {1} de hauteur&#xa0;: il rétrécit la section.</translation>
    </message>
    <message>
        <source>Running the engine does not move it: {0} in the hose, and {1-2} clear it.</source>
        <translation>Faire tourner le moteur ne le déplace pas&#xa0;: {0} dans la durite, et il faut {1-2} pour le chasser.</translation>
    </message>
    <message>
        <source>Running the engine may clear it: {0} in the hose, and {1-2} clear it.</source>
        <translation>Faire tourner le moteur peut le chasser&#xa0;: {0} dans la durite, et il faut {1-2} pour le chasser.</translation>
    </message>
    <message>
        <source>Running the engine clears it: {0} in the hose, and {1-2} clear it.</source>
        <translation>Faire tourner le moteur le chasse&#xa0;: {0} dans la durite, et il faut {1-2} pour le chasser.</translation>
    </message>
    <message>
        <source>Running the engine does not move it.</source>
        <translation>Faire tourner le moteur ne le déplace pas.</translation>
    </message>
    <message>
        <source>After the engine has run and cooled, top up {0}.</source>
        <translation>Une fois que le moteur a tourné et refroidi, complétez de {0}.</translation>
    </message>
    <message>
        <source>At {0} the coolant has shrunk and stands at {1}.</source>
        <translation>À {0}, le liquide s&apos;est contracté et se tient à {1}.</translation>
    </message>
    <message>
        <source>Coolant does not cover the element of {a}.</source>
        <translation>Le liquide ne couvre pas l&apos;élément chauffant de {a}.</translation>
    </message>
    <message>
        <source>With the engine running nothing is known to flow through {a}.</source>
        <translation>Moteur en marche, aucun débit connu ne passe par {a}.</translation>
    </message>
    <message>
        <source>With the engine running {0} pass through {a}, from its supply port to its return port.</source>
        <translation>Moteur en marche, {0} passent par {a}, de son piquage d&apos;alimentation à son piquage de retour.</translation>
    </message>
    <message>
        <source>With the engine running {0} pass backward through {a}, from its return port to its supply port.</source>
        <translation>Moteur en marche, {0} passent à l&apos;envers par {a}, de son piquage de retour à son piquage d&apos;alimentation.</translation>
    </message>
    <message>
        <source>%1 They bypass the radiator.</source>
        <translation>%1 Ce débit contourne le radiateur.</translation>
    </message>
    <message>
        <source>there is no loop with a heater yet</source>
        <translation>il n&apos;y a pas encore de boucle avec un réchauffeur</translation>
    </message>
    <message>
        <source>the coolant level at cold full is not entered</source>
        <translation>le niveau de liquide plein à froid n&apos;est pas saisi</translation>
    </message>
    <message>
        <source>filling could not be computed: %1</source>
        <translation>le remplissage n&apos;a pas pu être calculé&#xa0;: %1</translation>
    </message>
    <message>
        <source>part</source>
        <translation>pièce</translation>
    </message>
    <message>
        <source>isolation valve</source>
        <translation>vanne d&apos;isolement</translation>
    </message>
    <message>
        <source>check valve</source>
        <translation>clapet anti-retour</translation>
    </message>
    <message>
        <source>the %1 in %2</source>
        <translation>%1 dans %2</translation>
    </message>
    <message>
        <source>the hose end at the start of %1</source>
        <translation>l&apos;embout au départ de %1</translation>
    </message>
    <message>
        <source>the hose end at the end of %1</source>
        <translation>l&apos;embout à la fin de %1</translation>
    </message>
    <message>
        <source>there is no engine yet</source>
        <translation>il n&apos;y a pas encore de moteur</translation>
    </message>
    <message>
        <source>neither the engine&apos;s mass nor its displacement is entered</source>
        <translation>ni la masse du moteur ni sa cylindrée n&apos;est saisie</translation>
    </message>
    <message>
        <source>the engine&apos;s outline is not entered</source>
        <translation>le contour du moteur n&apos;est pas saisi</translation>
    </message>
    <message>
        <source>the engine&apos;s outline has no size</source>
        <translation>le contour du moteur n&apos;a pas de taille</translation>
    </message>
    <message>
        <source>Sensor port</source>
        <translation>Piquage de sonde</translation>
    </message>
    <message>
        <source>Drain port</source>
        <translation>Piquage de vidange</translation>
    </message>
    <message>
        <source>Core plug</source>
        <translation>Pastille</translation>
    </message>
    <message>
        <source>Lower hose tee</source>
        <translation>Té durite inférieure</translation>
    </message>
    <message>
        <source>Head port</source>
        <translation>Piquage de culasse</translation>
    </message>
    <message>
        <source>Cabin line</source>
        <translation>Conduite cabine</translation>
    </message>
    <message>
        <source>Port</source>
        <translation>Piquage</translation>
    </message>
    <message>
        <source>Exhaust</source>
        <translation>Échappement</translation>
    </message>
    <message>
        <source>Turbocharger</source>
        <translation>Turbocompresseur</translation>
    </message>
    <message>
        <source>Heat shield</source>
        <translation>Écran thermique</translation>
    </message>
    <message>
        <source>Belt</source>
        <translation>Courroie</translation>
    </message>
    <message>
        <source>Fan</source>
        <translation>Ventilateur</translation>
    </message>
    <message>
        <source>Shaft</source>
        <translation>Arbre</translation>
    </message>
    <message>
        <source>Steering</source>
        <translation>Direction</translation>
    </message>
    <message>
        <source>Suspension</source>
        <translation>Suspension</translation>
    </message>
    <message>
        <source>Keep clear</source>
        <translation>Zone interdite</translation>
    </message>
    <message>
        <source>port</source>
        <translation>piquage</translation>
    </message>
    <message>
        <source>area</source>
        <translation>zone</translation>
    </message>
    <message>
        <source>dimension</source>
        <translation>cote</translation>
    </message>
    <message>
        <source>In the file: found %1, but allowed is %2.</source>
        <translation>Dans le fichier&#xa0;: trouvé %1, mais admis %2.</translation>
    </message>
    <message>
        <source>At %1: found %2, but allowed is %3.</source>
        <translation>À %1&#xa0;: trouvé %2, mais admis %3.</translation>
    </message>
    <message>
        <source>expected %1</source>
        <translation>attendu %1</translation>
    </message>
    <message>
        <source>well-formed JSON</source>
        <translation>du JSON bien formé</translation>
    </message>
    <message>
        <source>more than %1 values in one file</source>
        <translation>plus de %1 valeurs dans un fichier</translation>
    </message>
    <message>
        <source>a sketch of fewer</source>
        <translation>un dessin qui en a moins</translation>
    </message>
    <message>
        <source>a list of more than %1 items</source>
        <translation>une liste de plus de %1 éléments</translation>
    </message>
    <message>
        <source>a list of at most %1</source>
        <translation>une liste de %1 au plus</translation>
    </message>
    <message>
        <source>more than %1 levels of nesting</source>
        <translation>plus de %1 niveaux d&apos;imbrication</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>%1 au plus</translation>
    </message>
    <message>
        <source>a key that stands here twice</source>
        <translation>une clé présente deux fois ici</translation>
    </message>
    <message>
        <source>each key once</source>
        <translation>chaque clé une fois</translation>
    </message>
    <message>
        <source>more than %1 keys in one object</source>
        <translation>plus de %1 clés dans un objet</translation>
    </message>
    <message>
        <source>a finite number</source>
        <translation>un nombre fini</translation>
    </message>
    <message>
        <source>the end of the file</source>
        <translation>la fin du fichier</translation>
    </message>
    <message>
        <source>the rest of the sketch: the file is cut short</source>
        <translation>le reste du dessin&#xa0;: le fichier est tronqué</translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation>ligne %1, colonne %2</translation>
    </message>
    <message>
        <source>a choice that does not exist</source>
        <translation>un choix qui n&apos;existe pas</translation>
    </message>
    <message>
        <source>%1, which %2 has too</source>
        <translation>%1, que %2 a aussi</translation>
    </message>
    <message>
        <source>an id of its own</source>
        <translation>un identifiant unique</translation>
    </message>
    <message>
        <source>an end that is on a port and on a heater</source>
        <translation>un bout qui est sur un piquage et sur un réchauffeur</translation>
    </message>
    <message>
        <source>a port, a heater, or neither</source>
        <translation>un piquage, un réchauffeur, ou aucun</translation>
    </message>
    <message>
        <source>the id of a port of this sketch</source>
        <translation>l&apos;identifiant d&apos;un piquage de ce dessin</translation>
    </message>
    <message>
        <source>the id of a heater of this sketch</source>
        <translation>l&apos;identifiant d&apos;un réchauffeur de ce dessin</translation>
    </message>
    <message>
        <source>a list of %1</source>
        <translation>une liste de %1</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>un objet</translation>
    </message>
    <message>
        <source>a value, as this key is required (%1)</source>
        <translation>une valeur, car cette clé est exigée (%1)</translation>
    </message>
    <message>
        <source>an unknown key</source>
        <translation>une clé inconnue</translation>
    </message>
    <message>
        <source>the keys of the format only</source>
        <translation>seulement les clés du format</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true ou false</translation>
    </message>
    <message>
        <source>a liquid-cooled engine only: an air-cooled engine has no water jacket, so a coolant heater cannot be fitted</source>
        <translation>seulement un moteur à refroidissement liquide&#xa0;: un moteur refroidi par air n&apos;a pas de chemise d&apos;eau, un réchauffeur de liquide ne peut pas y être monté</translation>
    </message>
    <message>
        <source>a sketch, which is a JSON object</source>
        <translation>un dessin, qui est un objet JSON</translation>
    </message>
    <message>
        <source>%1, the mark of a Siphonwright sketch</source>
        <translation>%1, la marque d&apos;un dessin Siphonwright</translation>
    </message>
    <message>
        <source>version %1</source>
        <translation>version %1</translation>
    </message>
    <message>
        <source>up to version %1: this file comes from a newer Siphonwright than this one</source>
        <translation>jusqu&apos;à la version %1&#xa0;: ce fichier vient d&apos;un Siphonwright plus récent que celui-ci</translation>
    </message>
    <message>
        <source>the whole number %1</source>
        <translation>le nombre entier %1</translation>
    </message>
    <message>
        <source>a file of %1 MiB</source>
        <translation>un fichier de %1 Mio</translation>
    </message>
    <message>
        <source>at most %1 MiB</source>
        <translation>%1 Mio au plus</translation>
    </message>
    <message>
        <source>nothing: the file is empty</source>
        <translation>rien&#xa0;: le fichier est vide</translation>
    </message>
    <message>
        <source>a sketch</source>
        <translation>un dessin</translation>
    </message>
    <message>
        <source>JSON in UTF-8</source>
        <translation>du JSON en UTF-8</translation>
    </message>
    <message>
        <source>more than fits into this computer&apos;s memory</source>
        <translation>plus que la mémoire de cet ordinateur ne contient</translation>
    </message>
    <message>
        <source>a smaller sketch</source>
        <translation>un dessin plus petit</translation>
    </message>
    <message>
        <source>Jacket, lowest point</source>
        <translation>Chemise, point le plus bas</translation>
    </message>
    <message>
        <source>underside of the water jacket</source>
        <translation>dessous de la chemise d&apos;eau</translation>
    </message>
    <message>
        <source>Jacket, highest point</source>
        <translation>Chemise, point le plus haut</translation>
    </message>
    <message>
        <source>top of the head&apos;s jacket</source>
        <translation>haut de la chemise de culasse</translation>
    </message>
    <message>
        <source>Supply port</source>
        <translation>Piquage d&apos;alimentation</translation>
    </message>
    <message>
        <source>middle of the opening</source>
        <translation>milieu de l&apos;ouverture</translation>
    </message>
    <message>
        <source>Return port</source>
        <translation>Piquage de retour</translation>
    </message>
    <message>
        <source>Thermostat housing</source>
        <translation>Boîtier de thermostat</translation>
    </message>
    <message>
        <source>middle of the housing</source>
        <translation>milieu du boîtier</translation>
    </message>
    <message>
        <source>Tank cap</source>
        <translation>Bouchon du vase</translation>
    </message>
    <message>
        <source>sealing face of the filler or surge tank</source>
        <translation>portée de joint de l&apos;orifice ou du vase d&apos;expansion</translation>
    </message>
    <message>
        <source>Tank mark, cold minimum</source>
        <translation>Repère du vase, minimum à froid</translation>
    </message>
    <message>
        <source>beside the cap</source>
        <translation>à côté du bouchon</translation>
    </message>
    <message>
        <source>Tank mark, cold full</source>
        <translation>Repère du vase, plein à froid</translation>
    </message>
    <message>
        <source>Tank mark, hot</source>
        <translation>Repère du vase, à chaud</translation>
    </message>
    <message>
        <source>Block, front face to rear face</source>
        <translation>Bloc, face avant à face arrière</translation>
    </message>
    <message>
        <source>along the block</source>
        <translation>le long du bloc</translation>
    </message>
    <message>
        <source>Frame rail over the floor</source>
        <translation>Longeron au-dessus du sol</translation>
    </message>
    <message>
        <source>upper edge, at the block&apos;s front face</source>
        <translation>bord supérieur, à la face avant du bloc</translation>
    </message>
    <message>
        <source>Frame sinks further by</source>
        <translation>Le châssis descend encore de</translation>
    </message>
    <message>
        <source>to lowest ride height</source>
        <translation>jusqu&apos;à suspension au plus bas</translation>
    </message>
    <message>
        <source>Supply port to return port</source>
        <translation>Piquage d&apos;alimentation à piquage de retour</translation>
    </message>
    <message>
        <source>straight, tape from opening to opening</source>
        <translation>en ligne droite, mètre d&apos;une ouverture à l&apos;autre</translation>
    </message>
    <message>
        <source>Slope of the floor</source>
        <translation>Pente du sol</translation>
    </message>
    <message>
        <source>inclinometer; + is higher at the engine&apos;s front</source>
        <translation>inclinomètre&#xa0;; + est plus haut à l&apos;avant du moteur</translation>
    </message>
    <message>
        <source>Slope of the frame rail</source>
        <translation>Pente du longeron</translation>
    </message>
    <message>
        <source>likewise</source>
        <translation>de même</translation>
    </message>
    <message>
        <source>Slope of the engine</source>
        <translation>Pente du moteur</translation>
    </message>
    <message>
        <source>on a machined face along the crankshaft</source>
        <translation>sur une face usinée le long du vilebrequin</translation>
    </message>
    <message>
        <source>height</source>
        <translation>hauteur</translation>
    </message>
    <message>
        <source>station</source>
        <translation>abscisse</translation>
    </message>
    <message>
        <source>across</source>
        <translation>en travers</translation>
    </message>
    <message>
        <source>{a}: {b} not measured.</source>
        <translation>{a}&#xa0;: {b} non mesuré.</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>type</translation>
    </message>
    <message>
        <source>thread</source>
        <translation>filetage</translation>
    </message>
    <message>
        <source>bore</source>
        <translation>diamètre intérieur</translation>
    </message>
    <message>
        <source>{a}: {b} not noted.</source>
        <translation>{a}&#xa0;: {b} non noté.</translation>
    </message>
    <message>
        <source>{a} not noted.</source>
        <translation>{a} non noté.</translation>
    </message>
    <message>
        <source>Place of the engine&apos;s thermostat, outlet or inlet</source>
        <translation>Place du thermostat du moteur, sortie ou entrée</translation>
    </message>
    <message>
        <source>Supply voltage</source>
        <translation>Tension d&apos;alimentation</translation>
    </message>
    <message>
        <source>Antifreeze in it now</source>
        <translation>Antigel présent</translation>
    </message>
    <message>
        <source>P was not measured: the floor is taken as level.</source>
        <translation>P n&apos;a pas été mesuré&#xa0;: le sol est supposé de niveau.</translation>
    </message>
    <message>
        <source>R was not measured: the frame rail is taken to run along the floor.</source>
        <translation>R n&apos;a pas été mesuré&#xa0;: le longeron est supposé parallèle au sol.</translation>
    </message>
    <message>
        <source>S was not measured: the engine is taken to stand as drawn, {0} to the floor.</source>
        <translation>S n&apos;a pas été mesuré&#xa0;: le moteur est supposé comme dessiné, à {0} par rapport au sol.</translation>
    </message>
    <message>
        <source>The mount angle stays as drawn, {0}: it is S less P.</source>
        <translation>L&apos;angle de montage reste comme dessiné, {0}&#xa0;: c&apos;est S moins P.</translation>
    </message>
    <message>
        <source>The drawing&apos;s datum is the floor: nothing was measured from the frame rail.</source>
        <translation>La référence du dessin est le sol&#xa0;: rien n&apos;a été mesuré depuis le longeron.</translation>
    </message>
    <message>
        <source>What was measured from the floor cannot be drawn without L.</source>
        <translation>Ce qui a été mesuré depuis le sol ne peut pas être dessiné sans L.</translation>
    </message>
    <message>
        <source>The ground is not drawn: where it lies at lowest ride height needs M.</source>
        <translation>Le sol n&apos;est pas dessiné&#xa0;: sa position, suspension au plus bas, demande M.</translation>
    </message>
    <message>
        <source>By C and D the ports are {0} apart, by N {1}: measure again.</source>
        <translation>D&apos;après C et D, les piquages sont à {0} l&apos;un de l&apos;autre, d&apos;après N à {1}&#xa0;: mesurez de nouveau.</translation>
    </message>
    <message>
        <source>{a} is not under {b}: measure again.</source>
        <translation>{a} n&apos;est pas sous {b}&#xa0;: mesurez de nouveau.</translation>
    </message>
    <message>
        <source>{a} not measured.</source>
        <translation>{a} non mesuré.</translation>
    </message>
    <message>
        <source>Tank heater, %1</source>
        <translation>Réchauffeur de liquide, %1</translation>
    </message>
    <message>
        <source>In-line 4, medium diesel</source>
        <translation>4 en ligne, diesel moyen</translation>
    </message>
    <message>
        <source>In-line 6, highway diesel</source>
        <translation>6 en ligne, diesel routier</translation>
    </message>
    <message>
        <source>In-line 6 laid flat, underfloor</source>
        <translation>6 en ligne couché, sous plancher</translation>
    </message>
    <message>
        <source>near bank</source>
        <translation>rangée proche</translation>
    </message>
    <message>
        <source>far bank</source>
        <translation>rangée éloignée</translation>
    </message>
    <message>
        <source>Vee 6, medium diesel</source>
        <translation>V6, diesel moyen</translation>
    </message>
    <message>
        <source>Vee 8, heavy diesel</source>
        <translation>V8, gros diesel</translation>
    </message>
    <message>
        <source>Vee 12, generator set</source>
        <translation>V12, groupe électrogène</translation>
    </message>
    <message>
        <source>a sketch of %1 MiB</source>
        <translation>un dessin de %1 Mio</translation>
    </message>
    <message>
        <source>at most %1 MiB; a smaller photo may help</source>
        <translation>%1 Mio au plus&#xa0;; une photo plus petite peut aider</translation>
    </message>
    <message>
        <source>Supply hose %1</source>
        <translation>Durite d&apos;alimentation %1</translation>
    </message>
    <message>
        <source>Return hose %1</source>
        <translation>Durite de retour %1</translation>
    </message>
    <message>
        <source>%1 nose-up</source>
        <translation>%1 avant relevé</translation>
    </message>
    <message>
        <source>%1 nose-down</source>
        <translation>%1 avant abaissé</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 et %2</translation>
    </message>
    <message>
        <source>direction</source>
        <translation>direction</translation>
    </message>
    <message>
        <source>The outlet was {0}, over the limit of {1}. Turn the heater off and leave it off until the cause is found.</source>
        <translation>La sortie était à {0}, au-dessus de la limite de {1}. Arrêtez le réchauffeur et laissez-le arrêté jusqu’à ce que la cause soit trouvée.</translation>
    </message>
    <message>
        <source>Coolant was {0} under the full mark, lower than the cold minimum. Power off, find the leak, top up.</source>
        <translation>Le liquide était à {0} sous le repère plein, plus bas que le minimum à froid. Coupez le courant, cherchez la fuite, complétez.</translation>
    </message>
    <message>
        <source>The heater turned on {0} times within an hour, over the limit of {1}. Leave it off until the cause is found.</source>
        <translation>Le réchauffeur s’est mis en marche {0} fois en une heure, plus que la limite de {1}. Laissez-le arrêté jusqu’à ce que la cause soit trouvée.</translation>
    </message>
    <message>
        <source>Take the same readings again, then compare the drawing with the job: hoses, ports, valves, voltage.</source>
        <translation>Reprenez les mêmes mesures, puis comparez le dessin avec le montage : durites, orifices, vannes, tension.</translation>
    </message>
    <message>
        <source>It runs as drawn, and as drawn it passes a limit</source>
        <translation>Il fonctionne comme dessiné, et ainsi dessiné il dépasse une limite</translation>
    </message>
    <message>
        <source>Read what the findings say of this drawing.</source>
        <translation>Lisez ce que les constats disent de ce dessin.</translation>
    </message>
    <message>
        <source>Heater off. Mend the layout, and prove it on the drawing before it is turned on again.</source>
        <translation>Réchauffeur arrêté. Corrigez le tracé et vérifiez-le sur le dessin avant de le remettre en marche.</translation>
    </message>
    <message>
        <source>corners in all hoses together</source>
        <translation>points dans toutes les durites ensemble</translation>
    </message>
    <message>
        <source>corners in all outlines together</source>
        <translation>points dans tous les contours ensemble</translation>
    </message>
    <message>
        <source>starts in its worst hour: %1</source>
        <translation>mises en marche dans sa pire heure : %1</translation>
    </message>
    <message>
        <source>On the steepest grades judged</source>
        <translation>Sur les plus fortes pentes jugées</translation>
    </message>
    <message>
        <source>no forward flow on some, on the others %1</source>
        <translation>sur certaines aucun débit vers l&apos;avant, sur les autres %1</translation>
    </message>
    <message>
        <source>no forward flow</source>
        <translation>aucun débit vers l&apos;avant</translation>
    </message>
    <message>
        <source>starts an hour at most %1</source>
        <translation>mises en marche par heure au plus %1</translation>
    </message>
    <message>
        <source>%1 reached on some only</source>
        <translation>%1 atteint seulement sur certaines</translation>
    </message>
    <message>
        <source>The heaters have {0} in all: consider a heater with a pump.</source>
        <translation>Les réchauffeurs totalisent {0} : envisagez un réchauffeur à pompe.</translation>
    </message>
    <message>
        <source>Coolant leaves {a} at up to {0} while it is on, over {1}.</source>
        <translation>Le liquide sort de {a} en marche à {0} au plus, au-dessus de {1}.</translation>
    </message>
    <message>
        <source>Coolant leaves {a} at up to {0}, and {1} is possible.</source>
        <translation>Le liquide sort de {a} à {0} au plus, et {1} sont possibles.</translation>
    </message>
    <message>
        <source>Hoses and heater hold {0} more than the engine.</source>
        <translation>Durites et réchauffeur contiennent {0} en plus du moteur.</translation>
    </message>
    <message>
        <source>{0} clamps: two on each end of each piece of hose.</source>
        <translation>{0} colliers : deux à chaque bout de chaque morceau de durite.</translation>
    </message>
    <message>
        <source>passage {0}</source>
        <translation>passage {0}</translation>
    </message>
    <message>
        <source>for hose of {0}, passage {1}</source>
        <translation>pour durite de {0}, passage {1}</translation>
    </message>
    <message>
        <source>Usual elbows turn {0} or {1}: take the nearer and lay the hose to suit.</source>
        <translation>Les coudes courants font {0} ou {1} : prenez le plus proche et posez la durite en conséquence.</translation>
    </message>
    <message>
        <source>to hose end of passage {0}</source>
        <translation>vers embout de passage {0}</translation>
    </message>
    <message>
        <source>{a} to hose end of passage {0}</source>
        <translation>{a} vers embout de passage {0}</translation>
    </message>
    <message>
        <source>passage {0}, {1}</source>
        <translation>passage {0}, {1}</translation>
    </message>
    <message>
        <source>{a}, {0} from A</source>
        <translation>{a}, à {0} de A</translation>
    </message>
    <message>
        <source>for hose of {0}, {1}</source>
        <translation>pour durite de {0}, {1}</translation>
    </message>
    <message>
        <source>Starts of {a} in its worst hour: {0}, over {1}.</source>
        <translation>Mises en marche de {a} dans sa pire heure : {0}, plus que {1}.</translation>
    </message>
    <message>
        <source>Starts of {a} in its worst hour: {0}, up to {1} possible.</source>
        <translation>Mises en marche de {a} dans sa pire heure : {0}, jusqu&apos;à {1} possibles.</translation>
    </message>
    <message>
        <source>Open: the valve in {a}, {0} from its cut end at {b}.</source>
        <translation>Ouvrir : la vanne dans {a}, à {0} de son bout coupé sur {b}.</translation>
    </message>
    <message>
        <source>Open: the valve in {a}, {0} from its cut end at {b}. It is drawn closed.</source>
        <translation>Ouvrir : la vanne dans {a}, à {0} de son bout coupé sur {b}. Elle est dessinée fermée.</translation>
    </message>
    <message>
        <source>{a} humps as it is drawn: it has no sag to spare.</source>
        <translation>{a} fait une bosse telle qu&apos;elle est dessinée&#xa0;: il ne lui reste pas de flèche.</translation>
    </message>
    <message>
        <source>{a} dips as it is drawn: some coolant stays in it when it is drained.</source>
        <translation>{a} fait un creux telle qu&apos;elle est dessinée&#xa0;: il y reste un peu de liquide à la vidange.</translation>
    </message>
    <message>
        <source>{a} humps {0} above its sill: air can fill the {1} of bore above it and stop the flow.</source>
        <translation>{a} fait une bosse de {0} au-dessus de son seuil&#xa0;: l&apos;air peut remplir les {1} de section au-dessus et arrêter le débit.</translation>
    </message>
    <message>
        <source>{a} humps {0} above its sill: the {1} of bore above it can hold air.</source>
        <translation>{a} fait une bosse de {0} au-dessus de son seuil&#xa0;: les {1} de section au-dessus peuvent retenir de l&apos;air.</translation>
    </message>
    <message>
        <source>{a} humps {0} above its sill: air in the {1} of bore above it stops the flow unless it is bled.</source>
        <translation>{a} fait une bosse de {0} au-dessus de son seuil&#xa0;: l&apos;air dans les {1} de section au-dessus arrête le débit s&apos;il n&apos;est pas purgé.</translation>
    </message>
    <message>
        <source>Not free of traps on the level.</source>
        <translation>Pas exempt de pièges à plat.</translation>
    </message>
    <message>
        <source>Free of traps from %1</source>
        <translation>Sans piège de %1</translation>
    </message>
    <message>
        <source>The supply&apos;s voltage is not entered: counted at {0}, as the heaters have.</source>
        <translation>La tension d&apos;alimentation n&apos;est pas saisie&#xa0;: compté sous {0}, comme les réchauffeurs.</translation>
    </message>
    <message>
        <source>After the engine has run and cooled, nothing needs topping up.</source>
        <translation>Après marche et refroidissement du moteur, il n&apos;y a rien à compléter.</translation>
    </message>
    <message>
        <source>{a}: in two pieces from A to B, {0} and {1}; between them: {b}.</source>
        <translation>{a} : en deux morceaux de A vers B, {0} et {1} ; entre eux : {b}.</translation>
    </message>
    <message>
        <source>{a}: in {0} pieces; their lengths are with the drawing.</source>
        <translation>{a} : en {0} morceaux ; leurs longueurs sont avec le dessin.</translation>
    </message>
    <message>
        <source>{a}: cut {0}, of which {1} is allowance; bore {2}.</source>
        <translation>{a}: couper à {0}, dont {1} de marge ; diamètre intérieur {2}.</translation>
    </message>
    <message>
        <source>{a}: cut {0}, of which {1} is allowance; its bore is not entered.</source>
        <translation>{a}: couper à {0}, dont {1} de marge ; son diamètre intérieur n&apos;est pas saisi.</translation>
    </message>
    <message>
        <source>Mend what still stops the job first (findings: {0}).</source>
        <translation>Remédiez d&apos;abord à ce qui arrête encore le travail (constats : {0}).</translation>
    </message>
    <message>
        <source>At the filler, slowly, {0} into hoses, fittings and heater.</source>
        <translation>Par l&apos;orifice de remplissage, lentement, {0} dans durites, raccords et réchauffeur.</translation>
    </message>
    <message>
        <source>Under vacuum, {0} into hoses, fittings and heater.</source>
        <translation>Sous vide, {0} dans durites, raccords et réchauffeur.</translation>
    </message>
    <message>
        <source>From below, {0} into hoses, fittings and heater.</source>
        <translation>Par le bas, {0} dans durites, raccords et réchauffeur.</translation>
    </message>
    <message>
        <source>Air takes up another {0} until it is let out.</source>
        <translation>L&apos;air occupe encore {0} tant qu&apos;il n&apos;est pas évacué.</translation>
    </message>
</context>
<context>
    <name>siphonwright</name>
    <message>
        <source>Draw an area to keep clear of</source>
        <translation>Tracer une zone interdite</translation>
    </message>
    <message>
        <source>Height %1</source>
        <translation>Hauteur %1</translation>
    </message>
    <message>
        <source>Edge %1</source>
        <translation>Arête %1</translation>
    </message>
    <message>
        <source>Click the corners of what is hot or moves; Backspace takes the last one back.</source>
        <translation>Cliquez les coins de ce qui est chaud ou bouge&#xa0;; Retour arrière reprend le dernier.</translation>
    </message>
    <message>
        <source>Click further corners; Enter, a double-click or a click on the first corner closes the area.</source>
        <translation>Cliquez d&apos;autres coins&#xa0;; Entrée, un double-clic ou un clic sur le premier coin ferme la zone.</translation>
    </message>
    <message>
        <source>It is larger than the largest drawing.</source>
        <translation>C&apos;est plus grand que le plus grand dessin.</translation>
    </message>
    <message>
        <source>It holds no parts.</source>
        <translation>Il ne contient aucune pièce.</translation>
    </message>
    <message>
        <source>the middle of %1</source>
        <translation>le milieu de %1</translation>
    </message>
    <message>
        <source>the inlet of %1</source>
        <translation>l&apos;entrée de %1</translation>
    </message>
    <message>
        <source>the outlet of %1</source>
        <translation>la sortie de %1</translation>
    </message>
    <message>
        <source>the top of %1</source>
        <translation>le haut de %1</translation>
    </message>
    <message>
        <source>the foot of %1</source>
        <translation>le pied de %1</translation>
    </message>
    <message>
        <source>a free place</source>
        <translation>une place libre</translation>
    </message>
    <message>
        <source>the jacket&apos;s lowest level</source>
        <translation>le niveau le plus bas de la chemise</translation>
    </message>
    <message>
        <source>the jacket&apos;s highest level</source>
        <translation>le niveau le plus haut de la chemise</translation>
    </message>
    <message>
        <source>the level cold minimum</source>
        <translation>le niveau minimum à froid</translation>
    </message>
    <message>
        <source>the level cold full</source>
        <translation>le niveau plein à froid</translation>
    </message>
    <message>
        <source>the level hot</source>
        <translation>le niveau à chaud</translation>
    </message>
    <message>
        <source>a place on %1</source>
        <translation>un endroit sur %1</translation>
    </message>
    <message>
        <source>the outline of %1</source>
        <translation>le contour de %1</translation>
    </message>
    <message>
        <source>Horizontal</source>
        <translation>Horizontale</translation>
    </message>
    <message>
        <source>Vertical</source>
        <translation>Verticale</translation>
    </message>
    <message>
        <source>Along</source>
        <translation>Alignée</translation>
    </message>
    <message>
        <source>Slope</source>
        <translation>Pente</translation>
    </message>
    <message>
        <source>Draw a dimension</source>
        <translation>Tracer une cote</translation>
    </message>
    <message>
        <source>Along the hose</source>
        <translation>Le long de la durite</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Click what to measure from; Tab goes from one thing to the next, Enter clicks.</source>
        <translation>Cliquez le départ de la mesure&#xa0;; Tab va d&apos;un élément au suivant, Entrée clique.</translation>
    </message>
    <message>
        <source>Click what to measure to; Backspace takes the first back.</source>
        <translation>Cliquez la fin de la mesure&#xa0;; Retour arrière reprend le premier point.</translation>
    </message>
    <message>
        <source>Click where its line goes. H, V, A, S: horizontal, vertical, along, slope.</source>
        <translation>Cliquez où va sa ligne. H, V, A, S&#xa0;: horizontale, verticale, alignée, pente.</translation>
    </message>
    <message>
        <source>Before: %1</source>
        <translation>Avant&#xa0;: %1</translation>
    </message>
    <message>
        <source>After: %1</source>
        <translation>Après&#xa0;: %1</translation>
    </message>
    <message>
        <source>Drop under the jacket %1, at least %2</source>
        <translation>Distance sous la chemise %1, au moins %2</translation>
    </message>
    <message>
        <source>Drop under the jacket %1</source>
        <translation>Distance sous la chemise %1</translation>
    </message>
    <message>
        <source>%1 along the hose</source>
        <translation>%1 le long de la durite</translation>
    </message>
    <message>
        <source>Across %1</source>
        <translation>En travers %1</translation>
    </message>
    <message>
        <source>Length of the hose %1</source>
        <translation>Longueur de la durite %1</translation>
    </message>
    <message>
        <source>no length</source>
        <translation>sans longueur</translation>
    </message>
    <message>
        <source>level</source>
        <translation>de niveau</translation>
    </message>
    <message>
        <source>rises</source>
        <translation>monte</translation>
    </message>
    <message>
        <source>falls</source>
        <translation>descend</translation>
    </message>
    <message>
        <source>%1 plumb</source>
        <translation>%1 d&apos;aplomb</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Hump %1, holds %2 of air</source>
        <translation>Bosse %1, retient %2 d&apos;air</translation>
    </message>
    <message>
        <source>Dip %1, holds %2</source>
        <translation>Creux %1, retient %2</translation>
    </message>
    <message>
        <source>Tilt %1</source>
        <translation>Inclinaison %1</translation>
    </message>
    <message>
        <source>Draw a supply hose</source>
        <translation>Tracer une durite d&apos;alimentation</translation>
    </message>
    <message>
        <source>Draw a return hose</source>
        <translation>Tracer une durite de retour</translation>
    </message>
    <message>
        <source>This piece %1</source>
        <translation>Ce tronçon %1</translation>
    </message>
    <message>
        <source>Length %1</source>
        <translation>Longueur %1</translation>
    </message>
    <message>
        <source>supply hose</source>
        <translation>durite d&apos;alimentation</translation>
    </message>
    <message>
        <source>return hose</source>
        <translation>durite de retour</translation>
    </message>
    <message>
        <source>Click to begin the %1 at %2.</source>
        <translation>Cliquez pour commencer&#xa0;: %1, à %2.</translation>
    </message>
    <message>
        <source>The %1 begins here; it ends on another port or nozzle.</source>
        <translation>Départ ici&#xa0;: %1&#xa0;; elle finit sur un autre piquage ou une autre tubulure.</translation>
    </message>
    <message>
        <source>Click to end the %1 on %2.</source>
        <translation>Cliquez pour finir&#xa0;: %1, sur %2.</translation>
    </message>
    <message>
        <source>point %1 of %2</source>
        <translation>point %1 de %2</translation>
    </message>
    <message>
        <source>the start of %1</source>
        <translation>le départ de %1</translation>
    </message>
    <message>
        <source>the end of %1</source>
        <translation>la fin de %1</translation>
    </message>
    <message>
        <source>clip %1 of %2</source>
        <translation>collier %1 de %2</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 dans %2</translation>
    </message>
    <message>
        <source>isolation valve</source>
        <translation>vanne d&apos;isolement</translation>
    </message>
    <message>
        <source>bleed point</source>
        <translation>point de purge</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>vidange</translation>
    </message>
    <message>
        <source>lift check valve</source>
        <translation>clapet à levée</translation>
    </message>
    <message>
        <source>swing check valve</source>
        <translation>clapet à battant</translation>
    </message>
    <message>
        <source>reducer</source>
        <translation>réduction</translation>
    </message>
    <message>
        <source>the engine</source>
        <translation>le moteur</translation>
    </message>
    <message>
        <source>corner %1 of the engine</source>
        <translation>coin %1 du moteur</translation>
    </message>
    <message>
        <source>the water jacket</source>
        <translation>la chemise d&apos;eau</translation>
    </message>
    <message>
        <source>corner %1 of the water jacket</source>
        <translation>coin %1 de la chemise d&apos;eau</translation>
    </message>
    <message>
        <source>the thermostat housing</source>
        <translation>le boîtier de thermostat</translation>
    </message>
    <message>
        <source>the surge tank</source>
        <translation>le vase d&apos;expansion</translation>
    </message>
    <message>
        <source>corner %1 of %2</source>
        <translation>coin %1 de %2</translation>
    </message>
    <message>
        <source>the ground line</source>
        <translation>la ligne de sol</translation>
    </message>
    <message>
        <source>the photo</source>
        <translation>la photo</translation>
    </message>
    <message>
        <source>the dimension</source>
        <translation>la cote</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Moteur</translation>
    </message>
    <message>
        <source>Engine, corner %1</source>
        <translation>Moteur, coin %1</translation>
    </message>
    <message>
        <source>Water jacket</source>
        <translation>Chemise d&apos;eau</translation>
    </message>
    <message>
        <source>Water jacket, corner %1</source>
        <translation>Chemise d&apos;eau, coin %1</translation>
    </message>
    <message>
        <source>Thermostat housing</source>
        <translation>Boîtier de thermostat</translation>
    </message>
    <message>
        <source>Surge tank</source>
        <translation>Vase d&apos;expansion</translation>
    </message>
    <message>
        <source>%1, point %2</source>
        <translation>%1, point %2</translation>
    </message>
    <message>
        <source>%1, start</source>
        <translation>%1, départ</translation>
    </message>
    <message>
        <source>%1, end</source>
        <translation>%1, fin</translation>
    </message>
    <message>
        <source>%1, clip %2</source>
        <translation>%1, collier %2</translation>
    </message>
    <message>
        <source>%1, %2 %3</source>
        <translation>%1, %2 %3</translation>
    </message>
    <message>
        <source>%1, corner %2</source>
        <translation>%1, coin %2</translation>
    </message>
    <message>
        <source>Ground line</source>
        <translation>Ligne de sol</translation>
    </message>
    <message>
        <source>Photograph</source>
        <translation>Photographie</translation>
    </message>
    <message>
        <source>Level the photo</source>
        <translation>Mettre la photo de niveau</translation>
    </message>
    <message>
        <source>As drawn now %1</source>
        <translation>Comme dessiné maintenant %1</translation>
    </message>
    <message>
        <source>Type what was measured.</source>
        <translation>Tapez ce qui a été mesuré.</translation>
    </message>
    <message>
        <source>Click a point in the photo; then another, as far away as you have measured.</source>
        <translation>Cliquez un point de la photo&#xa0;; puis un autre, aussi loin que vous avez mesuré.</translation>
    </message>
    <message>
        <source>Click the second point. Backspace takes the first one back.</source>
        <translation>Cliquez le second point. Retour arrière reprend le premier.</translation>
    </message>
    <message>
        <source>Click two points along something that is level in truth.</source>
        <translation>Cliquez deux points le long d&apos;un élément de niveau en réalité.</translation>
    </message>
    <message>
        <source>Click the second point along it. Backspace takes the first one back.</source>
        <translation>Cliquez le second point le long de lui. Retour arrière reprend le premier.</translation>
    </message>
    <message>
        <source>Click the corners of a flat rectangle whose width and height you know: %1 left. Backspace takes the last one back.</source>
        <translation>Cliquez les coins d&apos;un rectangle plat dont vous connaissez largeur et hauteur&#xa0;: reste %1. Retour arrière reprend le dernier.</translation>
    </message>
    <message>
        <source>Place a port</source>
        <translation>Placer un piquage</translation>
    </message>
    <message>
        <source>Place a heater</source>
        <translation>Placer un réchauffeur</translation>
    </message>
    <message>
        <source>Place the surge tank</source>
        <translation>Placer le vase d&apos;expansion</translation>
    </message>
    <message>
        <source>Top under the jacket %1</source>
        <translation>Haut sous la chemise %1</translation>
    </message>
    <message>
        <source>Click on the jacket&apos;s or the block&apos;s edge to place a port.</source>
        <translation>Cliquez sur le bord de la chemise ou du bloc pour placer un piquage.</translation>
    </message>
    <message>
        <source>Click to place a port here, its thread pointing outwards.</source>
        <translation>Cliquez pour placer un piquage ici, filetage vers l&apos;extérieur.</translation>
    </message>
    <message>
        <source>Click where the middle of the heater goes. Arrow keys move the cross-hair, Enter clicks.</source>
        <translation>Cliquez où va le milieu du réchauffeur. Les flèches déplacent la croix, Entrée clique.</translation>
    </message>
    <message>
        <source>Click where the surge tank goes: its marks give the coolant level.</source>
        <translation>Cliquez où va le vase d&apos;expansion&#xa0;: ses repères donnent le niveau de liquide.</translation>
    </message>
    <message>
        <source>an isolation valve</source>
        <translation>une vanne d&apos;isolement</translation>
    </message>
    <message>
        <source>a bleed point</source>
        <translation>un point de purge</translation>
    </message>
    <message>
        <source>a clip</source>
        <translation>un collier de maintien</translation>
    </message>
    <message>
        <source>Point at a hose and click to place %1 there.</source>
        <translation>Pointez une durite et cliquez pour y placer %1.</translation>
    </message>
    <message>
        <source>Click to place %1 in %2.</source>
        <translation>Cliquez pour placer %1 dans %2.</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>Déplacer %1</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation>Tourner %1</translation>
    </message>
    <message>
        <source>Delete %1</source>
        <translation>Supprimer %1</translation>
    </message>
    <message>
        <source>Release to select what lies wholly in the band: %1. Escape stops.</source>
        <translation>Relâchez pour sélectionner ce qui est entièrement dans le cadre&#xa0;: %1. Échap arrête.</translation>
    </message>
    <message>
        <source>Drop it on a port or nozzle to connect it, elsewhere to leave it open. Escape puts it back.</source>
        <translation>Déposez sur un piquage ou une tubulure pour relier, ailleurs pour laisser ouvert. Échap remet en place.</translation>
    </message>
    <message>
        <source>Hold Alt to place it freely. Escape puts it back.</source>
        <translation>Tenez Alt pour placer librement. Échap remet en place.</translation>
    </message>
    <message>
        <source>Click to select this finding.</source>
        <translation>Cliquez pour sélectionner ce constat.</translation>
    </message>
    <message>
        <source>Drag to turn %1 in steps of 15 degrees; full stop and comma turn it too.</source>
        <translation>Glissez pour tourner %1 par pas de 15 degrés&#xa0;; point et virgule tournent aussi.</translation>
    </message>
    <message>
        <source>Click to select %1, drag to move it, double-click to insert a point.</source>
        <translation>Cliquez pour sélectionner %1, glissez pour déplacer, double-cliquez pour insérer un point.</translation>
    </message>
    <message>
        <source>Click to select %1, drag to move it, double-click an edge to add a corner.</source>
        <translation>Cliquez pour sélectionner %1, glissez pour déplacer, double-cliquez une arête pour ajouter un coin.</translation>
    </message>
    <message>
        <source>Click to select %1, drag to move it.</source>
        <translation>Cliquez pour sélectionner %1, glissez pour déplacer.</translation>
    </message>
    <message>
        <source>Press J to connect it to the nearest port or nozzle, again for the next; arrows move it.</source>
        <translation>Appuyez sur J pour relier au piquage ou à la tubulure la plus proche, de nouveau pour la suivante&#xa0;; les flèches déplacent.</translation>
    </message>
    <message>
        <source>Arrow keys move %1, a drag too; Delete removes them; Shift+click adds or takes out.</source>
        <translation>Les flèches déplacent %1, glisser aussi&#xa0;; Suppr enlève&#xa0;; Maj+clic ajoute ou retire.</translation>
    </message>
    <message>
        <source>Arrow keys move %1, with Shift finely; Delete removes it; Tab goes to the next part.</source>
        <translation>Les flèches déplacent %1, avec Maj finement&#xa0;; Suppr enlève&#xa0;; Tab va à la pièce suivante.</translation>
    </message>
    <message>
        <source>Click a part to select it, drag to move it; drag over empty ground to select several.</source>
        <translation>Cliquez une pièce pour la sélectionner, glissez pour la déplacer&#xa0;; glissez sur le vide pour en sélectionner plusieurs.</translation>
    </message>
    <message>
        <source>Insert a point in %1</source>
        <translation>Insérer un point dans %1</translation>
    </message>
    <message>
        <source>Add a corner to %1</source>
        <translation>Ajouter un coin à %1</translation>
    </message>
    <message>
        <source>Connect %1 to %2</source>
        <translation>Relier %1 à %2</translation>
    </message>
    <message>
        <source>Place a clip</source>
        <translation>Placer un collier</translation>
    </message>
    <message>
        <source>Place a part in a hose: %1</source>
        <translation>Placer une pièce dans une durite&#xa0;: %1</translation>
    </message>
    <message>
        <source>plumb</source>
        <translation>d&apos;aplomb</translation>
    </message>
    <message>
        <source>just under the coolant&apos;s level</source>
        <translation>juste sous le niveau de liquide</translation>
    </message>
    <message>
        <source>%1 under the coolant&apos;s level</source>
        <translation>%1 sous le niveau de liquide</translation>
    </message>
    <message>
        <source>%1 over the ground</source>
        <translation>%1 au-dessus du sol</translation>
    </message>
    <message>
        <source>%1 clear of %2</source>
        <translation>%1 d&apos;écart à %2</translation>
    </message>
    <message>
        <source>top %1 under the jacket</source>
        <translation>haut à %1 sous la chemise</translation>
    </message>
    <message>
        <source>just no hump</source>
        <translation>juste sans bosse</translation>
    </message>
    <message>
        <source>just no dip</source>
        <translation>juste sans creux</translation>
    </message>
    <message>
        <source>corner of the engine</source>
        <translation>coin du moteur</translation>
    </message>
    <message>
        <source>corner of the jacket</source>
        <translation>coin de la chemise</translation>
    </message>
    <message>
        <source>in line with the next piece</source>
        <translation>aligné sur le tronçon suivant</translation>
    </message>
    <message>
        <source>bend radius just %1</source>
        <translation>rayon de courbure juste %1</translation>
    </message>
    <message>
        <source>in line with the last piece</source>
        <translation>aligné sur le dernier tronçon</translation>
    </message>
    <message>
        <source>Slope to snap to</source>
        <translation>Pente d&apos;accrochage</translation>
    </message>
    <message>
        <source>Rise over length, from 1 in 2 to 1 in 1000, such as 1:50 or 2 %:</source>
        <translation>Montée sur longueur, de 1 pour 2 à 1 pour 1000, par exemple 1:50 ou 2&#xa0;%&#xa0;:</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>The language changes when Siphonwright is started again.</source>
        <translation>La langue change au prochain démarrage de Siphonwright.</translation>
    </message>
    <message>
        <source>along %1, height %2</source>
        <translation>abscisse %1, hauteur %2</translation>
    </message>
    <message>
        <source>open</source>
        <translation>ouvert</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>fermé</translation>
    </message>
    <message>
        <source>findings: %1</source>
        <translation>constats&#xa0;: %1</translation>
    </message>
    <message>
        <source>Click a port or nozzle to begin the %1, or an empty place to leave its end open; Tab and arrow keys aim too.</source>
        <translation>Cliquez un piquage ou une tubulure pour commencer (%1), ou une place libre pour laisser le bout ouvert ; Tab et les flèches visent aussi.</translation>
    </message>
    <message>
        <source>Click to put a point; a port, a nozzle or a double-click ends the %1. Backspace takes a point back, Escape gives up.</source>
        <translation>Cliquez pour poser un point ; un piquage, une tubulure ou un double-clic finit (%1). Retour arrière reprend un point, Échap abandonne.</translation>
    </message>
    <message>
        <source>sound: measured %1, limit %2</source>
        <translation>sans défaut&#xa0;: mesuré %1, limite %2</translation>
    </message>
    <message>
        <source>sound, with %1 left</source>
        <translation>sans défaut, reste %1</translation>
    </message>
    <message>
        <source>sound, with %1 left: measured %2, limit %3</source>
        <translation>sans défaut, reste %1&#xa0;: mesuré %2, limite %3</translation>
    </message>
</context>
<context>
    <name>siphonwright::AboutText</name>
    <message>
        <source>Work is for a qualified technician. The heater&apos;s and the engine&apos;s own manuals rule over this program; its figures are estimates from stated assumptions.</source>
        <translation>Le travail revient à un technicien qualifié. Les manuels du réchauffeur et du moteur l&apos;emportent sur ce programme&#xa0;; ses valeurs sont des estimations à partir d&apos;hypothèses énoncées.</translation>
    </message>
    <message>
        <source>Disconnect and lock out the power while working. Inhibit a generator&apos;s automatic start. Chock the wheels, block air suspension, never work under an unsupported vehicle.</source>
        <translation>Débranchez et consignez l&apos;alimentation pendant le travail. Bloquez le démarrage automatique d&apos;un groupe électrogène. Calez les roues, bloquez la suspension pneumatique, ne travaillez jamais sous un véhicule non soutenu.</translation>
    </message>
    <message>
        <source>Open the cap only when the engine is cold: hot coolant is under pressure and scalds.</source>
        <translation>N&apos;ouvrez le bouchon que moteur froid&#xa0;: le liquide chaud est sous pression et ébouillante.</translation>
    </message>
    <message>
        <source>Turn the heater off before a valve is closed. With both valves closed the heater is a sealed vessel, and pressure builds up.</source>
        <translation>Arrêtez le réchauffeur avant de fermer une vanne. Les deux vannes fermées, le réchauffeur est un récipient clos, et la pression monte.</translation>
    </message>
    <message>
        <source>Never turn the heater on without coolant in its chamber, nor before the loop is purged.</source>
        <translation>Ne mettez jamais le réchauffeur en marche sans liquide dans sa chambre, ni avant d&apos;avoir purgé la boucle.</translation>
    </message>
    <message>
        <source>Run the engine outdoors or with the exhaust extracted.</source>
        <translation>Faites tourner le moteur dehors ou avec extraction des gaz d&apos;échappement.</translation>
    </message>
    <message>
        <source>Grounded supply, the local electrical code and a licensed electrician.</source>
        <translation>Alimentation mise à la terre, règles électriques locales et électricien agréé.</translation>
    </message>
    <message>
        <source>Antifreeze is poisonous. Catch it and dispose of it properly.</source>
        <translation>L&apos;antigel est toxique. Recueillez-le et éliminez-le dans les règles.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>About Siphonwright</source>
        <translation>À propos de Siphonwright</translation>
    </message>
    <message>
        <source>&lt;h3&gt;Siphonwright %1&lt;/h3&gt;&lt;p&gt;Draws, checks and hands over installations of tank-type coolant heaters.&lt;/p&gt;&lt;p&gt;Findings are estimates from stated assumptions and common practice; each names its basis. What was not entered is not judged.&lt;/p&gt;&lt;p&gt;Built with Qt under the LGPL 3 and JSON for Modern C++ under the MIT licence; lettering in Inter under the SIL Open Font Licence 1.1.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Siphonwright %1&lt;/h3&gt;&lt;p&gt;Dessine, contrôle et documente des installations de réchauffeurs de liquide de refroidissement à thermosiphon.&lt;/p&gt;&lt;p&gt;Les constats sont des estimations à partir d&apos;hypothèses énoncées et de la pratique courante&#xa0;; chacun nomme son fondement. Ce qui n&apos;a pas été saisi n&apos;est pas jugé.&lt;/p&gt;&lt;p&gt;Réalisé avec Qt sous LGPL 3 et JSON for Modern C++ sous licence MIT&#xa0;; caractères Inter sous SIL Open Font Licence 1.1.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Air-cooled engine</source>
        <translation>Moteur refroidi par air</translation>
    </message>
    <message>
        <source>An air-cooled engine has no water jacket: there is no coolant for a tank heater to draw in and to warm, so it cannot be drawn here.</source>
        <translation>Un moteur refroidi par air n&apos;a pas de chemise d&apos;eau&#xa0;: il n&apos;y a pas de liquide qu&apos;un réchauffeur puisse aspirer et chauffer, il ne peut donc pas être dessiné ici.</translation>
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
        <translation>rien n&apos;est sélectionné</translation>
    </message>
    <message>
        <source>several parts have to be selected</source>
        <translation>il faut sélectionner plusieurs pièces</translation>
    </message>
    <message>
        <source>at least three parts have to be selected</source>
        <translation>il faut sélectionner au moins trois pièces</translation>
    </message>
    <message>
        <source>no hose or outline is selected</source>
        <translation>aucune durite ni contour sélectionné</translation>
    </message>
    <message>
        <source>no heater or port is selected</source>
        <translation>aucun réchauffeur ni piquage sélectionné</translation>
    </message>
    <message>
        <source>nothing with corners is selected</source>
        <translation>aucun élément à coins sélectionné</translation>
    </message>
    <message>
        <source>no end of a hose is selected</source>
        <translation>aucun bout de durite sélectionné</translation>
    </message>
    <message>
        <source>no valve, bleed or drain is selected</source>
        <translation>aucune vanne, purgeur ni vidange sélectionnés</translation>
    </message>
    <message>
        <source>no hose is selected</source>
        <translation>aucune durite sélectionnée</translation>
    </message>
    <message>
        <source>there is no engine yet</source>
        <translation>il n&apos;y a pas encore de moteur</translation>
    </message>
    <message>
        <source>there is no photo yet</source>
        <translation>il n&apos;y a pas encore de photo</translation>
    </message>
    <message>
        <source>a port and a heater come first</source>
        <translation>il faut d&apos;abord un piquage et un réchauffeur</translation>
    </message>
    <message>
        <source>there is no finding</source>
        <translation>il n&apos;y a pas de constat</translation>
    </message>
    <message>
        <source>no finding is selected</source>
        <translation>aucun constat sélectionné</translation>
    </message>
    <message>
        <source>there is no warm-up yet</source>
        <translation>il n&apos;y a pas encore de chauffe</translation>
    </message>
    <message>
        <source>there is no warm-up to keep, or it is kept</source>
        <translation>il n&apos;y a pas de chauffe à garder, ou elle est gardée</translation>
    </message>
    <message>
        <source>no curve is kept</source>
        <translation>aucune courbe n&apos;est gardée</translation>
    </message>
    <message>
        <source>only while demonstrating</source>
        <translation>seulement en démonstration</translation>
    </message>
</context>
<context>
    <name>siphonwright::ChecklistCommands</name>
    <message>
        <source>Save the checklist</source>
        <translation>Enregistrer la liste de contrôle</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>%1 checklist</source>
        <translation>%1 liste de contrôle</translation>
    </message>
    <message>
        <source>The checklist could not be written.</source>
        <translation>La liste de contrôle n&apos;a pas pu être écrite.</translation>
    </message>
</context>
<context>
    <name>siphonwright::CommandSearch</name>
    <message>
        <source>Find a command</source>
        <translation>Chercher une commande</translation>
    </message>
    <message>
        <source>What do you want to do?</source>
        <translation>Que voulez-vous faire&#xa0;?</translation>
    </message>
    <message>
        <source>Words of the command</source>
        <translation>Mots de la commande</translation>
    </message>
    <message>
        <source>Commands that match</source>
        <translation>Commandes trouvées</translation>
    </message>
    <message>
        <source>nothing to undo</source>
        <translation>rien à annuler</translation>
    </message>
    <message>
        <source>nothing to redo</source>
        <translation>rien à rétablir</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Outils</translation>
    </message>
    <message>
        <source>not now</source>
        <translation>pas maintenant</translation>
    </message>
    <message>
        <source>not now: %1</source>
        <translation>pas maintenant&#xa0;: %1</translation>
    </message>
    <message>
        <source>No command has these words.</source>
        <translation>Aucune commande ne contient ces mots.</translation>
    </message>
    <message>
        <source>Up and down choose, Enter runs, Escape closes.</source>
        <translation>Haut et bas choisissent, Entrée lance, Échap ferme.</translation>
    </message>
    <message>
        <source>“%1” cannot be done now.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas possible maintenant.</translation>
    </message>
    <message>
        <source>“%1” cannot be done now: %2.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas possible maintenant&#xa0;: %2.</translation>
    </message>
</context>
<context>
    <name>siphonwright::DemonstrationCommands</name>
    <message>
        <source>Show a second drawing beside</source>
        <translation>Afficher un second dessin à côté</translation>
    </message>
    <message>
        <source>Sketches (*.siphon)</source>
        <translation>Dessins (*.siphon)</translation>
    </message>
    <message>
        <source>Export this moment</source>
        <translation>Exporter cet instant</translation>
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
        <translation>Exporter le polycopié</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Folder for the pictures</source>
        <translation>Dossier pour les images</translation>
    </message>
    <message>
        <source>The second drawing could not be opened.</source>
        <translation>Le second dessin n&apos;a pas pu être ouvert.</translation>
    </message>
    <message>
        <source>The moment could not be written.</source>
        <translation>L&apos;instant n&apos;a pas pu être écrit.</translation>
    </message>
    <message>
        <source>The pictures could not be written.</source>
        <translation>Les images n&apos;ont pas pu être écrites.</translation>
    </message>
    <message>
        <source>The handout could not be written.</source>
        <translation>Le polycopié n&apos;a pas pu être écrit.</translation>
    </message>
</context>
<context>
    <name>siphonwright::Document</name>
    <message>
        <source>%1 cannot be opened: %2.</source>
        <translation>%1 ne peut pas être ouvert&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2.</source>
        <translation>%1 ne peut pas être lu&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 is larger than %2 MB and cannot be a sketch.</source>
        <translation>%1 dépasse %2 Mo et ne peut pas être un dessin.</translation>
    </message>
</context>
<context>
    <name>siphonwright::ElevationView</name>
    <message>
        <source>Nothing selected that can be copied.</source>
        <translation>Rien de sélectionné qui puisse être copié.</translation>
    </message>
    <message>
        <source>Copied %1.</source>
        <translation>Copié&#xa0;: %1.</translation>
    </message>
    <message>
        <source>This could not be copied.</source>
        <translation>Ceci n&apos;a pas pu être copié.</translation>
    </message>
    <message>
        <source>Cut %1</source>
        <translation>Couper %1</translation>
    </message>
    <message>
        <source>Cut %1; Ctrl+V puts it down again.</source>
        <translation>Coupé&#xa0;: %1&#xa0;; Ctrl+V le repose.</translation>
    </message>
    <message>
        <source>There are no parts on the clipboard.</source>
        <translation>Il n&apos;y a pas de pièces dans le presse-papiers.</translation>
    </message>
    <message>
        <source>What is on the clipboard cannot be put on the drawing. Nothing was changed.</source>
        <translation>Le contenu du presse-papiers ne peut pas être mis sur le dessin. Rien n&apos;a été changé.</translation>
    </message>
    <message>
        <source>Paste %1</source>
        <translation>Coller %1</translation>
    </message>
    <message>
        <source>Duplicate %1</source>
        <translation>Dupliquer %1</translation>
    </message>
    <message>
        <source>These parts do not fit into this drawing. Nothing was changed.</source>
        <translation>Ces pièces ne tiennent pas dans ce dessin. Rien n&apos;a été changé.</translation>
    </message>
    <message>
        <source>The drawing has an engine already, so the copied one was left out.</source>
        <translation>Le dessin a déjà un moteur, celui copié a donc été laissé de côté.</translation>
    </message>
    <message>
        <source>The drawing has a surge tank already, so the copied one was left out.</source>
        <translation>Le dessin a déjà un vase d&apos;expansion, celui copié a donc été laissé de côté.</translation>
    </message>
    <message>
        <source>Put down %1.</source>
        <translation>Posé&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Align %1</source>
        <translation>Aligner %1</translation>
    </message>
    <message>
        <source>They are in line already.</source>
        <translation>Les pièces sont déjà alignées.</translation>
    </message>
    <message>
        <source>Space %1 evenly</source>
        <translation>Répartir %1</translation>
    </message>
    <message>
        <source>They are evenly spaced already, or fewer than three can be moved.</source>
        <translation>Les pièces sont déjà réparties, ou moins de trois peuvent être déplacées.</translation>
    </message>
    <message>
        <source>Kept %1; Tab goes on to the next.</source>
        <translation>Pièces gardées&#xa0;: %1&#xa0;; Tab passe à la suivante.</translation>
    </message>
    <message>
        <source>Open or close %1</source>
        <translation>Ouvrir ou fermer %1</translation>
    </message>
    <message>
        <source>Place an area</source>
        <translation>Placer une zone</translation>
    </message>
    <message>
        <source>Place engine</source>
        <translation>Placer un moteur</translation>
    </message>
    <message>
        <source>It goes into a hose: drop it on one.</source>
        <translation>Cela va dans une durite&#xa0;: déposez-le sur une durite.</translation>
    </message>
    <message>
        <source>It goes into a hose: select the hose first.</source>
        <translation>Cela va dans une durite&#xa0;: sélectionnez d&apos;abord la durite.</translation>
    </message>
    <message>
        <source>End view</source>
        <translation>Vue de bout</translation>
    </message>
    <message>
        <source>Side elevation</source>
        <translation>Élévation latérale</translation>
    </message>
    <message>
        <source>Nothing selected</source>
        <translation>Rien de sélectionné</translation>
    </message>
    <message>
        <source>Selected: %1</source>
        <translation>Sélection&#xa0;: %1</translation>
    </message>
    <message>
        <source>Drag to move the paper; the wheel zooms to the pointer.</source>
        <translation>Glissez pour déplacer le papier&#xa0;; la molette zoome sur le pointeur.</translation>
    </message>
    <message>
        <source>End view from the front</source>
        <translation>Vue de bout depuis l&apos;avant</translation>
    </message>
    <message>
        <source>End view from the rear</source>
        <translation>Vue de bout depuis l&apos;arrière</translation>
    </message>
    <message>
        <source>Arrow keys aim: %1 a step, with Ctrl %2, with Shift %3. Tab: next place; Enter clicks; Backspace: back.</source>
        <translation>Les flèches visent : %1 par pas, avec Ctrl %2, avec Maj %3. Tab : place suivante ; Entrée clique ; Retour arrière : en arrière.</translation>
    </message>
</context>
<context>
    <name>siphonwright::FileCommands</name>
    <message>
        <source>Sketches (*.siphon)</source>
        <translation>Dessins (*.siphon)</translation>
    </message>
    <message>
        <source>untitled</source>
        <translation>sans titre</translation>
    </message>
    <message>
        <source>Open a sketch</source>
        <translation>Ouvrir un dessin</translation>
    </message>
    <message>
        <source>%1 could not be opened. The drawing on the table is as it was.</source>
        <translation>%1 n&apos;a pas pu être ouvert. Le dessin en cours est inchangé.</translation>
    </message>
    <message>
        <source>%1 could not be saved.</source>
        <translation>%1 n&apos;a pas pu être enregistré.</translation>
    </message>
    <message>
        <source>Save the sketch</source>
        <translation>Enregistrer le dessin</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Changements non enregistrés</translation>
    </message>
    <message>
        <source>%1 has changes that are not saved.</source>
        <translation>%1 a des changements non enregistrés.</translation>
    </message>
    <message>
        <source>Siphonwright</source>
        <translation>Siphonwright</translation>
    </message>
    <message>
        <source>%1 is open in another window.</source>
        <translation>%1 est ouvert dans une autre fenêtre.</translation>
    </message>
    <message>
        <source>It is open there: %1. A copy has no file until you save it. If both windows save one file, the later one is asked, and neither version is lost.</source>
        <translation>Il est ouvert là : %1. Une copie n&apos;a pas de fichier avant que vous l&apos;enregistriez. Si les deux fenêtres enregistrent un même fichier, la dernière est interrogée et aucune version n&apos;est perdue.</translation>
    </message>
    <message>
        <source>Open a &amp;copy</source>
        <translation>Ouvrir une &amp;copie</translation>
    </message>
    <message>
        <source>Open it &amp;here too</source>
        <translation>L&apos;ouvrir &amp;ici aussi</translation>
    </message>
    <message>
        <source>Save &amp;mine, keep theirs beside it</source>
        <translation>Enregistrer le &amp;mien, garder l&apos;autre à côté</translation>
    </message>
    <message>
        <source>Open &amp;theirs, put mine aside</source>
        <translation>Ouvrir l&apos;&amp;autre, mettre le mien de côté</translation>
    </message>
    <message>
        <source>&amp;Try again</source>
        <translation>&amp;Réessayer</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Enregistrer &amp;sous…</translation>
    </message>
    <message>
        <source>Your drawing could not be put aside; it stays on the table.</source>
        <translation>Votre dessin n&apos;a pas pu être mis de côté ; il reste sur la table.</translation>
    </message>
    <message>
        <source>The drawing cannot be recovered from %1. The file is as it was.</source>
        <translation>Le dessin ne peut pas être récupéré depuis %1. Le fichier est resté tel quel.</translation>
    </message>
    <message>
        <source>The drawing is in another window now.</source>
        <translation>Le dessin est maintenant dans une autre fenêtre.</translation>
    </message>
    <message>
        <source>%1 is not written: its place does not answer. What stands there stays as it was. Write it again in another place.</source>
        <translation>%1 n&apos;est pas écrit&#xa0;: son emplacement ne répond pas. Ce qui s&apos;y trouve reste tel quel. Écrivez-le à nouveau à un autre emplacement.</translation>
    </message>
    <message>
        <source>The pages could not be written.</source>
        <translation>Les pages n&apos;ont pas pu être écrites.</translation>
    </message>
</context>
<context>
    <name>siphonwright::FileStrip</name>
    <message>
        <source>Open &amp;theirs</source>
        <translation>Ouvrir l&apos;&amp;autre</translation>
    </message>
    <message>
        <source>&amp;Go on with mine</source>
        <translation>&amp;Continuer avec le mien</translation>
    </message>
    <message>
        <source>Unsaved work is put aside and can be recovered from the File menu</source>
        <translation>Le travail non enregistré est mis de côté et peut être récupéré par le menu Fichier</translation>
    </message>
    <message>
        <source>%1 was changed on the disk by another program. Saving here asks first, and loses neither version.</source>
        <translation>%1 a été modifié sur le disque par un autre programme. L&apos;enregistrement demande d&apos;abord, et aucune version n&apos;est perdue.</translation>
    </message>
    <message>
        <source>%1 is no longer in its place, or cannot be reached. Saving writes it anew.</source>
        <translation>%1 n&apos;est plus à sa place, ou n&apos;est pas accessible. L&apos;enregistrement l&apos;écrit à nouveau.</translation>
    </message>
    <message>
        <source>Unsaved work is not kept for recovery just now. %1</source>
        <translation>Le travail non enregistré n&apos;est pas conservé en ce moment pour être récupéré. %1</translation>
    </message>
    <message>
        <source>The place of %1 does not answer. Saving waits for it, or goes to another place.</source>
        <translation>L&apos;emplacement de %1 ne répond pas. L&apos;enregistrement attend, ou se fait ailleurs.</translation>
    </message>
</context>
<context>
    <name>siphonwright::FindBar</name>
    <message>
        <source>No part has such a name.</source>
        <translation>Aucune pièce ne porte un tel nom.</translation>
    </message>
    <message>
        <source>Find by name</source>
        <translation>Rechercher par nom</translation>
    </message>
    <message>
        <source>Parts that match</source>
        <translation>Pièces trouvées</translation>
    </message>
</context>
<context>
    <name>siphonwright::FirstSteps</name>
    <message>
        <source>engine</source>
        <translation>moteur</translation>
    </message>
    <message>
        <source>Place an engine: take the picture that comes nearest, and shape it by dragging later.</source>
        <translation>Placez un moteur&#xa0;: prenez l&apos;image la plus proche, et façonnez-la ensuite en glissant.</translation>
    </message>
    <message>
        <source>&amp;Choose an engine…</source>
        <translation>&amp;Choisir un moteur…</translation>
    </message>
    <message>
        <source>supply port</source>
        <translation>piquage d&apos;alimentation</translation>
    </message>
    <message>
        <source>Mark the supply port, low at the front, where coolant leaves the jacket.</source>
        <translation>Marquez le piquage d&apos;alimentation, en bas à l&apos;avant, où le liquide quitte la chemise.</translation>
    </message>
    <message>
        <source>&amp;Mark it</source>
        <translation>&amp;Le marquer</translation>
    </message>
    <message>
        <source>return port</source>
        <translation>piquage de retour</translation>
    </message>
    <message>
        <source>Mark the return port, high at the rear, where warm coolant comes back in.</source>
        <translation>Marquez le piquage de retour, en haut à l&apos;arrière, où le liquide chaud revient.</translation>
    </message>
    <message>
        <source>heater</source>
        <translation>réchauffeur</translation>
    </message>
    <message>
        <source>Place a heater well under the jacket, so that warm coolant rises by itself.</source>
        <translation>Placez un réchauffeur bien en dessous de la chemise, pour que le liquide chaud monte de lui-même.</translation>
    </message>
    <message>
        <source>&amp;Choose a heater…</source>
        <translation>&amp;Choisir un réchauffeur…</translation>
    </message>
    <message>
        <source>supply hose</source>
        <translation>durite d&apos;alimentation</translation>
    </message>
    <message>
        <source>Draw the supply hose: click the supply port, then point by point, last the heater&apos;s inlet.</source>
        <translation>Tracez la durite d&apos;alimentation&#xa0;: cliquez le piquage d&apos;alimentation, puis point par point, enfin l&apos;entrée du réchauffeur.</translation>
    </message>
    <message>
        <source>D&amp;raw it</source>
        <translation>&amp;La tracer</translation>
    </message>
    <message>
        <source>return hose</source>
        <translation>durite de retour</translation>
    </message>
    <message>
        <source>Draw the return hose from the heater&apos;s outlet to the return port, rising all the way.</source>
        <translation>Tracez la durite de retour de la sortie du réchauffeur au piquage de retour, montant sur toute sa longueur.</translation>
    </message>
    <message>
        <source>valves</source>
        <translation>vannes</translation>
    </message>
    <message>
        <source>Put an isolation valve into each hose, near the engine: click the hose with this tool.</source>
        <translation>Mettez une vanne d&apos;isolement dans chaque durite, près du moteur&#xa0;: cliquez la durite avec cet outil.</translation>
    </message>
    <message>
        <source>&amp;Take the valve</source>
        <translation>P&amp;rendre la vanne</translation>
    </message>
    <message>
        <source>findings</source>
        <translation>constats</translation>
    </message>
    <message>
        <source>Sh&amp;ow the next</source>
        <translation>Voir le &amp;suivant</translation>
    </message>
    <message>
        <source>save</source>
        <translation>enregistrer</translation>
    </message>
    <message>
        <source>Save the sketch: its file is the record of the job.</source>
        <translation>Enregistrez le dessin&#xa0;: son fichier est la trace du travail.</translation>
    </message>
    <message>
        <source>&amp;Save…</source>
        <translation>En&amp;registrer…</translation>
    </message>
    <message>
        <source>S&amp;kip</source>
        <translation>&amp;Passer</translation>
    </message>
    <message>
        <source>Go on to the next step without this one</source>
        <translation>Aller à l&apos;étape suivante sans celle-ci</translation>
    </message>
    <message>
        <source>Leave the first sketch; Help begins it again</source>
        <translation>Quitter le premier dessin&#xa0;; l&apos;aide permet de le reprendre</translation>
    </message>
    <message>
        <source>Leave the first sketch</source>
        <translation>Quitter le premier dessin</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Bienvenue</translation>
    </message>
    <message>
        <source>This is a job that works, to look round in. Change anything, it is not saved.</source>
        <translation>Voici une installation qui marche, pour découvrir. Changez tout, rien n&apos;est enregistré.</translation>
    </message>
    <message>
        <source>Draw your &amp;own, step by step</source>
        <translation>Dessiner la &amp;vôtre, pas à pas</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Étape %1 sur %2</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>That is a whole sketch. The menu Job goes on: warm-up, parts and cuts, checklist.</source>
        <translation>Voilà un dessin complet. Le menu Travail continue&#xa0;: chauffe, pièces et coupes, liste de contrôle.</translation>
    </message>
    <message>
        <source>Go through the findings, those that stop the job first: each shows its place and a way out.</source>
        <translation>Parcourez les constats, d&apos;abord ceux qui bloquent le travail&#xa0;: chacun montre son endroit et une solution.</translation>
    </message>
</context>
<context>
    <name>siphonwright::MainWindow</name>
    <message>
        <source>New drawing with an engine</source>
        <translation>Nouveau dessin avec un moteur</translation>
    </message>
    <message>
        <source>Place an engine</source>
        <translation>Placer un moteur</translation>
    </message>
    <message>
        <source>Place engine</source>
        <translation>Placer un moteur</translation>
    </message>
    <message>
        <source>Place a heater</source>
        <translation>Placer un réchauffeur</translation>
    </message>
    <message>
        <source>Place heater</source>
        <translation>Placer un réchauffeur</translation>
    </message>
    <message>
        <source>&amp;Panels</source>
        <translation>&amp;Panneaux</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>Details</source>
        <translation>Détails</translation>
    </message>
    <message>
        <source>Run profile</source>
        <translation>Profil</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>Chauffe</translation>
    </message>
    <message>
        <source>By bore</source>
        <translation>Par diamètre</translation>
    </message>
    <message>
        <source>On grades</source>
        <translation>En pente</translation>
    </message>
    <message>
        <source>Heater size and supply</source>
        <translation>Réchauffeur et alimentation</translation>
    </message>
    <message>
        <source>Commissioning</source>
        <translation>Mise en service</translation>
    </message>
    <message>
        <source>Shelf</source>
        <translation>Étagère</translation>
    </message>
    <message>
        <source>Layouts</source>
        <translation>Tracés</translation>
    </message>
    <message>
        <source>Drag a rectangle in which the heater may hang, or click two opposite corners.</source>
        <translation>Tracez un rectangle où le réchauffeur peut être fixé, ou cliquez deux coins opposés.</translation>
    </message>
    <message>
        <source>across %1, height %2</source>
        <translation>en travers %1, hauteur %2</translation>
    </message>
    <message>
        <source>along %1, height %2</source>
        <translation>abscisse %1, hauteur %2</translation>
    </message>
    <message>
        <source>%1[*] – Siphonwright</source>
        <translation>%1[*] – Siphonwright</translation>
    </message>
    <message>
        <source>Change units</source>
        <translation>Changer d&apos;unités</translation>
    </message>
    <message>
        <source>There is no free port, heater or hose for this yet.</source>
        <translation>Il n&apos;y a encore ni piquage, ni réchauffeur, ni durite libre pour cela.</translation>
    </message>
    <message>
        <source>&amp;Demonstrate</source>
        <translation>Dé&amp;monstration</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Fichier</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>Fichiers &amp;récents</translation>
    </message>
    <message>
        <source>Sheet &amp;paper</source>
        <translation>Forma&amp;t de papier</translation>
    </message>
    <message>
        <source>After the units</source>
        <translation>Selon les unités</translation>
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
        <translation>Pas encore de fichier</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>É&amp;dition</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Annuler</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>Réta&amp;blir</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Affichage</translation>
    </message>
    <message>
        <source>&amp;Look</source>
        <translation>Thèm&amp;e</translation>
    </message>
    <message>
        <source>Te&amp;xt size</source>
        <translation>Taille du te&amp;xte</translation>
    </message>
    <message>
        <source>Snap &amp;to</source>
        <translation>&amp;S&apos;accrocher à</translation>
    </message>
    <message>
        <source>&amp;Insert</source>
        <translation>&amp;Insertion</translation>
    </message>
    <message>
        <source>&amp;Job</source>
        <translation>&amp;Travail</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>Aid&amp;e</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Outils</translation>
    </message>
    <message>
        <source>Export the warm-up</source>
        <translation>Exporter la chauffe</translation>
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
        <translation>%1 chauffe</translation>
    </message>
    <message>
        <source>The warm-up could not be written.</source>
        <translation>La chauffe n&apos;a pas pu être écrite.</translation>
    </message>
    <message>
        <source>Add %1</source>
        <translation>Ajouter&#xa0;: %1</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>&amp;Langue</translation>
    </message>
    <message>
        <source>Sheet pa&amp;ges</source>
        <translation>Pa&amp;ges de la feuille</translation>
    </message>
    <message>
        <source>The oldest undo steps are forgotten: together they took more than %1 MB.</source>
        <translation>Les plus anciennes étapes d&apos;annulation sont oubliées&#xa0;: ensemble elles prenaient plus de %1 Mo.</translation>
    </message>
    <message>
        <source>&amp;Upright</source>
        <translation>&amp;Portrait</translation>
    </message>
    <message>
        <source>Sca&amp;le</source>
        <translation>É&amp;chelle</translation>
    </message>
    <message>
        <source>The largest that fits on one page</source>
        <translation>La plus grande qui tient sur une feuille</translation>
    </message>
</context>
<context>
    <name>siphonwright::PaperCommands</name>
    <message>
        <source>Write as PDF</source>
        <translation>Écrire en PDF</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Write the parts as CSV</source>
        <translation>Écrire les pièces en CSV</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>%1 parts</source>
        <translation>%1 pièces</translation>
    </message>
    <message>
        <source>The pages could not be written.</source>
        <translation>Les pages n&apos;ont pas pu être écrites.</translation>
    </message>
    <message>
        <source>The parts could not be written.</source>
        <translation>Les pièces n&apos;ont pas pu être écrites.</translation>
    </message>
</context>
<context>
    <name>siphonwright::PhotoCommands</name>
    <message>
        <source>There is no picture in it.</source>
        <translation>Il n&apos;y a pas d&apos;image dedans.</translation>
    </message>
    <message>
        <source>Photo &amp;underlay</source>
        <translation>P&amp;hoto sous le dessin</translation>
    </message>
    <message>
        <source>Photo under the drawing</source>
        <translation>Photo sous le dessin</translation>
    </message>
    <message>
        <source>Pictures (%1)</source>
        <translation>Images (%1)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>What was copied</source>
        <translation>L&apos;image copiée</translation>
    </message>
    <message>
        <source>There is no picture in the clipboard.</source>
        <translation>Il n&apos;y a pas d&apos;image dans le presse-papiers.</translation>
    </message>
    <message>
        <source>%1 is not put under the drawing.</source>
        <translation>%1 n&apos;est pas mis sous le dessin.</translation>
    </message>
    <message>
        <source>%1 cannot be kept in the drawing.</source>
        <translation>%1 ne peut pas être gardé dans le dessin.</translation>
    </message>
    <message>
        <source>It is too narrow to be made small enough.</source>
        <translation>L&apos;image est trop étroite pour être assez réduite.</translation>
    </message>
    <message>
        <source>Replace the photo</source>
        <translation>Remplacer la photo</translation>
    </message>
    <message>
        <source>Insert the photo</source>
        <translation>Insérer la photo</translation>
    </message>
    <message>
        <source>%1 is kept in the drawing: %2 × %3 pixels of %4 × %5, %6 kB. Next: straighten or scale it.</source>
        <translation>%1 est gardé dans le dessin&#xa0;: %2 × %3 pixels sur %4 × %5, %6 ko. Ensuite&#xa0;: redresser ou mettre à l&apos;échelle.</translation>
    </message>
    <message>
        <source>Scale by two points</source>
        <translation>Échelle par deux points</translation>
    </message>
    <message>
        <source>How far apart are the two points in truth?</source>
        <translation>Quelle est la distance réelle entre les deux points&#xa0;?</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Distance</translation>
    </message>
    <message>
        <source>Straighten by a rectangle</source>
        <translation>Redresser par un rectangle</translation>
    </message>
    <message>
        <source>How large is the rectangle in truth? Only what lies in its plane comes out true to scale: what stands nearer looks larger.</source>
        <translation>Quelle est la taille réelle du rectangle&#xa0;? Seul ce qui est dans son plan ressort à l&apos;échelle&#xa0;: ce qui est plus près paraît plus grand.</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Largeur</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Hauteur</translation>
    </message>
    <message>
        <source>Scale the photo</source>
        <translation>Mettre la photo à l&apos;échelle</translation>
    </message>
    <message>
        <source>The photo is not straightened.</source>
        <translation>La photo n&apos;est pas redressée.</translation>
    </message>
    <message>
        <source>Straighten the photo</source>
        <translation>Redresser la photo</translation>
    </message>
    <message>
        <source>Lock the photo</source>
        <translation>Verrouiller la photo</translation>
    </message>
    <message>
        <source>Unlock the photo</source>
        <translation>Déverrouiller la photo</translation>
    </message>
</context>
<context>
    <name>siphonwright::PhotoFigures</name>
    <message>
        <source>Type the length as measured.</source>
        <translation>Tapez la longueur mesurée.</translation>
    </message>
</context>
<context>
    <name>siphonwright::Recovery</name>
    <message>
        <source>it does not answer</source>
        <translation>pas de réponse</translation>
    </message>
</context>
<context>
    <name>siphonwright::RecoveryOffer</name>
    <message>
        <source>Recover drawings</source>
        <translation>Récupérer des dessins</translation>
    </message>
    <message>
        <source>Drawings that can be recovered</source>
        <translation>Dessins qui peuvent être récupérés</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Dessin</translation>
    </message>
    <message>
        <source>Last kept</source>
        <translation>Conservé en dernier</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Dossier</translation>
    </message>
    <message>
        <source>A report of the unexpected end, without names or texts of yours, is in %1</source>
        <translation>Un rapport de l&apos;arrêt inattendu, sans noms ni textes de vous, se trouve dans %1</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>&amp;Ouvrir</translation>
    </message>
    <message>
        <source>&amp;Throw away…</source>
        <translation>&amp;Jeter…</translation>
    </message>
    <message>
        <source>&amp;Keep for later</source>
        <translation>&amp;Garder pour plus tard</translation>
    </message>
    <message>
        <source>untitled</source>
        <translation>sans titre</translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation>pas encore enregistré</translation>
    </message>
    <message>
        <source>There is no drawing to recover.</source>
        <translation>Il n&apos;y a pas de dessin à récupérer.</translation>
    </message>
    <message>
        <source>These drawings have edits that were not saved. Open one to go on with it; its file stays as it is until you save.</source>
        <translation>Ces dessins ont des modifications qui n&apos;ont pas été enregistrées. Ouvrez-en un pour continuer ; son fichier reste tel quel jusqu&apos;à l&apos;enregistrement.</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Jeter</translation>
    </message>
    <message>
        <source>Throw away the unsaved edits of %1?</source>
        <translation>Jeter les modifications non enregistrées de %1 ?</translation>
    </message>
    <message>
        <source>They cannot be brought back. The drawing&apos;s own file stays as it is.</source>
        <translation>Elles ne peuvent pas être rétablies. Le fichier du dessin reste tel quel.</translation>
    </message>
    <message>
        <source>&amp;Throw away</source>
        <translation>&amp;Jeter</translation>
    </message>
</context>
<context>
    <name>siphonwright::SheetCommands</name>
    <message>
        <source>Export the sheet</source>
        <translation>Exporter la feuille</translation>
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
        <translation>La feuille n&apos;a pas pu être écrite.</translation>
    </message>
    <message>
        <source>Logo for the sheet</source>
        <translation>Logo pour la feuille</translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg *.svg)</source>
        <translation>Images (*.png *.jpg *.jpeg *.svg)</translation>
    </message>
    <message>
        <source>The logo could not be read.</source>
        <translation>Le logo n&apos;a pas pu être lu.</translation>
    </message>
</context>
<context>
    <name>siphonwright::Shelf</name>
    <message>
        <source>Parts to put on the drawing</source>
        <translation>Pièces à mettre sur le dessin</translation>
    </message>
    <message>
        <source>Into the engine</source>
        <translation>Dans le moteur</translation>
    </message>
    <message>
        <source>Port</source>
        <translation>Piquage</translation>
    </message>
    <message>
        <source>Surge tank</source>
        <translation>Vase d&apos;expansion</translation>
    </message>
    <message>
        <source>Into a hose</source>
        <translation>Dans une durite</translation>
    </message>
    <message>
        <source>Isolation valve</source>
        <translation>Vanne d&apos;isolement</translation>
    </message>
    <message>
        <source>Bleed point</source>
        <translation>Point de purge</translation>
    </message>
    <message>
        <source>Clip</source>
        <translation>Collier</translation>
    </message>
    <message>
        <source>Heaters</source>
        <translation>Réchauffeurs</translation>
    </message>
    <message>
        <source>Engines</source>
        <translation>Moteurs</translation>
    </message>
    <message>
        <source>To keep clear of</source>
        <translation>À tenir à l&apos;écart</translation>
    </message>
    <message>
        <source>Keep-clear area</source>
        <translation>Zone interdite</translation>
    </message>
    <message>
        <source>%1: drag it onto the drawing, or press Enter to put it in the middle</source>
        <translation>%1&#xa0;: glissez sur le dessin, ou appuyez sur Entrée pour poser au milieu</translation>
    </message>
</context>
<context>
    <name>siphonwright::ShortcutsWindow</name>
    <message>
        <source>Shortcuts</source>
        <translation>Raccourcis</translation>
    </message>
    <message>
        <source>Find by words or keys</source>
        <translation>Chercher par mots ou touches</translation>
    </message>
    <message>
        <source>Find a command by its words or keys</source>
        <translation>Chercher une commande par ses mots ou ses touches</translation>
    </message>
    <message>
        <source>Commands and their keys</source>
        <translation>Commandes et leurs touches</translation>
    </message>
    <message>
        <source>Command</source>
        <translation>Commande</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Touches</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Ce qu&apos;elle fait</translation>
    </message>
    <message>
        <source>New keys: press them here</source>
        <translation>Nouvelles touches&#xa0;: appuyez ici</translation>
    </message>
    <message>
        <source>&amp;No keys</source>
        <translation>&amp;Sans touche</translation>
    </message>
    <message>
        <source>&amp;Back to default</source>
        <translation>Par &amp;défaut</translation>
    </message>
    <message>
        <source>&amp;All back to default…</source>
        <translation>&amp;Tout par défaut…</translation>
    </message>
    <message>
        <source>&amp;Take them from there</source>
        <translation>&amp;Les prendre de là</translation>
    </message>
    <message>
        <source>Its default keys are with another command now.</source>
        <translation>Ses touches par défaut sont maintenant à une autre commande.</translation>
    </message>
    <message>
        <source>Put the keys of all commands back to their defaults?</source>
        <translation>Remettre les touches de toutes les commandes par défaut&#xa0;?</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Outils</translation>
    </message>
    <message>
        <source>%1 › %2</source>
        <translation>%1 › %2</translation>
    </message>
    <message>
        <source>On the drawing</source>
        <translation>Sur le dessin</translation>
    </message>
    <message>
        <source>%1 (changed)</source>
        <translation>%1 (changé)</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>The drawing&apos;s own keys cannot be changed.</source>
        <translation>Les touches propres au dessin ne peuvent pas être changées.</translation>
    </message>
    <message>
        <source>Keys for “%1”</source>
        <translation>Touches pour «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>Press the new keys in the field. Default: %1.</source>
        <translation>Appuyez sur les nouvelles touches dans le champ. Par défaut&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 belongs to the drawing: choose other keys.</source>
        <translation>%1 appartient au dessin&#xa0;: choisissez d&apos;autres touches.</translation>
    </message>
    <message>
        <source>%1 now runs “%2”.</source>
        <translation>%1 lance maintenant «&#xa0;%2&#xa0;».</translation>
    </message>
    <message>
        <source>%1 runs “%2” already. Nothing was changed.</source>
        <translation>%1 lance déjà «&#xa0;%2&#xa0;». Rien n&apos;a été changé.</translation>
    </message>
</context>
<context>
    <name>siphonwright::SideTitle</name>
    <message>
        <source>Close this panel</source>
        <translation>Fermer ce panneau</translation>
    </message>
    <message>
        <source>Lift this panel out of the window</source>
        <translation>Sortir ce panneau de la fenêtre</translation>
    </message>
</context>
<context>
    <name>siphonwright::SurveyCommands</name>
    <message>
        <source>Blank survey form</source>
        <translation>Fiche de relevé vierge</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>The form could not be written.</source>
        <translation>La fiche n&apos;a pas pu être écrite.</translation>
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
hauteur %3, durite %4</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>non indiqué</translation>
    </message>
    <message>
        <source>Typical sizes, to be shaped to what stands before you. All to one scale.</source>
        <translation>Tailles typiques, à façonner selon ce que vous avez devant vous. Toutes à la même échelle.</translation>
    </message>
    <message>
        <source>&amp;Take it</source>
        <translation>&amp;Prendre</translation>
    </message>
    <message>
        <source>&amp;Air-cooled engine…</source>
        <translation>&amp;Moteur refroidi par air…</translation>
    </message>
</context>
<context>
    <name>siphonwright::assumptions</name>
    <message>
        <source>Change an assumption</source>
        <translation>Changer une hypothèse</translation>
    </message>
    <message>
        <source>Back to the book&apos;s assumption</source>
        <translation>Revenir à l&apos;hypothèse du recueil</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>débit</translation>
    </message>
    <message>
        <source>peak outlet</source>
        <translation>sortie max.</translation>
    </message>
    <message>
        <source>cycles</source>
        <translation>cycles</translation>
    </message>
    <message>
        <source>time to target</source>
        <translation>temps jusqu&apos;à la cible</translation>
    </message>
</context>
<context>
    <name>siphonwright::assumptions::AssumptionForm</name>
    <message>
        <source>Keep for this drawing</source>
        <translation>Garder pour ce dessin</translation>
    </message>
    <message>
        <source>Back to the book&apos;s</source>
        <translation>Revenir au recueil</translation>
    </message>
    <message>
        <source>Basis: %1.</source>
        <translation>Base&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>for example: measured on this engine</source>
        <translation>par exemple&#xa0;: mesuré sur ce moteur</translation>
    </message>
    <message>
        <source>In this drawing</source>
        <translation>Dans ce dessin</translation>
    </message>
    <message>
        <source>changed; the book&apos;s: %1</source>
        <translation>changé&#xa0;; le recueil&#xa0;: %1</translation>
    </message>
    <message>
        <source>as in the book</source>
        <translation>comme au recueil</translation>
    </message>
    <message>
        <source>Write the reason too: the sheet states it.</source>
        <translation>Écrivez aussi le motif&#xa0;: la feuille le mentionne.</translation>
    </message>
</context>
<context>
    <name>siphonwright::assumptions::AssumptionList</name>
    <message>
        <source>Assumption</source>
        <translation>Hypothèse</translation>
    </message>
    <message>
        <source>In force</source>
        <translation>En vigueur</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Changé</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Plage</translation>
    </message>
    <message>
        <source>Drives here</source>
        <translation>Influe ici sur</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>little</source>
        <translation>peu</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>changé</translation>
    </message>
    <message>
        <source>held</source>
        <translation>fixe</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
</context>
<context>
    <name>siphonwright::assumptions::AssumptionWindow</name>
    <message>
        <source>Assumptions</source>
        <translation>Hypothèses</translation>
    </message>
    <message>
        <source>Figures that nobody has measured, with what each rests on. Results come with a band over these ranges; a figure changed here is held.</source>
        <translation>Valeurs que personne n&apos;a mesurées, avec ce sur quoi chacune repose. Les résultats ont une bande sur ces plages&#xa0;; une valeur changée ici est fixe.</translation>
    </message>
    <message>
        <source>Search the assumptions</source>
        <translation>Chercher dans les hypothèses</translation>
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
        <translation>Attention&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Commissioning checklist</source>
        <translation>Liste de contrôle de mise en service</translation>
    </message>
    <message>
        <source>done by, time</source>
        <translation>fait par, heure</translation>
    </message>
    <message>
        <source>Estimates from stated assumptions. The heater&apos;s and the engine&apos;s own manuals rule.</source>
        <translation>Estimations à partir d&apos;hypothèses énoncées. Les manuels du réchauffeur et du moteur l&apos;emportent.</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>page %1 sur %2</translation>
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
        <translation>Heure</translation>
    </message>
    <message>
        <source>Ambient</source>
        <translation>Ambiante</translation>
    </message>
    <message>
        <source>Inlet</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>Outlet</source>
        <translation>Sortie</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Moteur</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Courant</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Tension</translation>
    </message>
    <message>
        <source>V</source>
        <translation>V</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Niveau</translation>
    </message>
    <message>
        <source>On/off</source>
        <translation>M/A</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>vu</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Readings: %1</source>
        <translation>Mesures&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: the checklist could not be drawn.</source>
        <translation>%1&#xa0;: la liste de contrôle n&apos;a pas pu être dessinée.</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>concorde</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>douteux</translation>
    </message>
    <message>
        <source>does not fit</source>
        <translation>discordant</translation>
    </message>
    <message>
        <source>over the limit</source>
        <translation>hors limite</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>non jugé</translation>
    </message>
    <message>
        <source>d MMM HH:mm</source>
        <translation>d MMM HH:mm</translation>
    </message>
    <message>
        <source>Limits: outlet under %1 all the time, at most %2 cycles an hour.</source>
        <translation>Limites : sortie sous %1 tout le temps, au plus %2 cycles par heure.</translation>
    </message>
    <message>
        <source>Limits: those of the heater&apos;s manual.</source>
        <translation>Limites : celles du manuel du réchauffeur.</translation>
    </message>
    <message>
        <source>Nothing was computed to expect.</source>
        <translation>Rien n&apos;a été calculé à attendre.</translation>
    </message>
    <message>
        <source>Expected: outlet peaks at %1 (%2 to %3).</source>
        <translation>Attendu : la sortie monte au plus à %1 (%2 à %3).</translation>
    </message>
    <message>
        <source>Expected: outlet peaks at %1.</source>
        <translation>Attendu : la sortie monte au plus à %1.</translation>
    </message>
    <message>
        <source>outlet: line; engine: dashes; limit: dots</source>
        <translation>sortie : trait ; moteur : tirets ; limite : points</translation>
    </message>
    <message>
        <source>peak, range</source>
        <translation>maximum, plage</translation>
    </message>
    <message>
        <source>steps with their cautions, readings with limits and what is expected</source>
        <translation>étapes avec leurs précautions, relevés avec limites et valeurs attendues</translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::CommissioningPanel</name>
    <message>
        <source>Heater</source>
        <translation>Réchauffeur</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Liste</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Mesures</translation>
    </message>
    <message>
        <source>Diagnosis</source>
        <translation>Diagnostic</translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::DiagnosisView</name>
    <message>
        <source>The faults are being simulated…</source>
        <translation>Simulation des défauts en cours…</translation>
    </message>
    <message>
        <source>A diagnosis appears when there are readings.</source>
        <translation>Un diagnostic apparaît quand il y a des mesures.</translation>
    </message>
    <message>
        <source>Not diagnosed: %1.</source>
        <translation>Pas de diagnostic&#xa0;: %1.</translation>
    </message>
    <message>
        <source>What would give these readings, by simulation of each fault on this drawing. Estimates: make sure before a part is replaced.</source>
        <translation>Ce qui donnerait ces mesures, par simulation de chaque défaut sur ce dessin. Estimations&#xa0;: assurez-vous avant de remplacer une pièce.</translation>
    </message>
    <message>
        <source>Of the readings as they were. </source>
        <translation>D&apos;après les mesures d&apos;avant. </translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Ensuite&#xa0;: %1</translation>
    </message>
    <message>
        <source>or: %1</source>
        <translation>ou&#xa0;: %1</translation>
    </message>
    <message>
        <source>Show on the
drawing</source>
        <translation>Montrer sur
le dessin</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Montrer</translation>
    </message>
    <message>
        <source>Show on the drawing: %1</source>
        <translation>Montrer sur le dessin&#xa0;: %1</translation>
    </message>
    <message>
        <source>Probability %1</source>
        <translation>Probabilité %1</translation>
    </message>
    <message>
        <source>Why: %1</source>
        <translation>Pourquoi&#xa0;: %1</translation>
    </message>
    <message>
        <source>Make sure: %1</source>
        <translation>S&apos;assurer&#xa0;: %1</translation>
    </message>
    <message>
        <source>Then: %1</source>
        <translation>Puis&#xa0;: %1</translation>
    </message>
    <message>
        <source>These readings cannot tell it from:</source>
        <translation>Ces mesures ne le distinguent pas de&#xa0;:</translation>
    </message>
    <message>
        <source>▲ None of the faults listed explains these readings well.</source>
        <translation>▲ Aucun des défauts de la liste n’explique bien ces mesures.</translation>
    </message>
    <message>
        <source>The nearest of those listed:</source>
        <translation>Les plus proches de la liste :</translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::ReadingChart</name>
    <message>
        <source>Readings over what the drawing would give</source>
        <translation>Mesures sur ce que donnerait le dessin</translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::ReadingsView</name>
    <message>
        <source>Remove this reading</source>
        <translation>Enlever cette mesure</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Mesures</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>Ambient</source>
        <translation>Ambiante</translation>
    </message>
    <message>
        <source>Power on</source>
        <translation>Sous tension</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>＋ Add a reading now</source>
        <translation>＋ Ajouter une mesure</translation>
    </message>
    <message>
        <source>Turned on now</source>
        <translation>Mis en marche</translation>
    </message>
    <message>
        <source>Turned off now</source>
        <translation>Arrêté</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>marche %1</translation>
    </message>
    <message>
        <source>off %1</source>
        <translation>arrêt %1</translation>
    </message>
    <message>
        <source>When it was turned on is not entered: press &quot;Turned on now&quot; then.</source>
        <translation>L&apos;heure de mise en marche n&apos;est pas saisie&#xa0;: appuyez alors sur «&#xa0;Mis en marche&#xa0;».</translation>
    </message>
    <message>
        <source>Seen to turn: %1</source>
        <translation>Commutations vues&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 %2: %3</source>
        <translation>%1 %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Not judged against the drawing: %1.</source>
        <translation>Non jugé par rapport au dessin&#xa0;: %1.</translation>
    </message>
    <message>
        <source>No readings of this heater yet.</source>
        <translation>Pas encore de mesures de ce réchauffeur.</translation>
    </message>
    <message>
        <source>Add a reading</source>
        <translation>Ajouter une mesure</translation>
    </message>
    <message>
        <source>Remove a reading</source>
        <translation>Enlever une mesure</translation>
    </message>
    <message>
        <source>Note turning on</source>
        <translation>Noter la mise en marche</translation>
    </message>
    <message>
        <source>Note turning off</source>
        <translation>Noter l&apos;arrêt</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: %2</source>
        <translation>«&#xa0;%1&#xa0;»&#xa0;: %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a time: 25 Nov 07:30, or 2026-11-25T07:30.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas une heure&#xa0;: 25 nov. 07:30, ou 2026-11-25T07:30.</translation>
    </message>
    <message>
        <source>Change a reading</source>
        <translation>Changer une mesure</translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::StepList</name>
    <message>
        <source>Steps of the work</source>
        <translation>Étapes du travail</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimer…</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>En PDF…</translation>
    </message>
    <message>
        <source>%1 of %2 steps done</source>
        <translation>%1 étapes faites sur %2</translation>
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
      ▲ hors ordre&#xa0;: %1</translation>
    </message>
    <message>
        <source>
      ▲ what it rests on is open again</source>
        <translation>
      ▲ ce dont elle dépend est de nouveau à faire</translation>
    </message>
    <message>
        <source>
      waits for steps before it</source>
        <translation>
      attend des étapes précédentes</translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::StepView</name>
    <message>
        <source>Done all the same</source>
        <translation>Fait quand même</translation>
    </message>
    <message>
        <source>Not done after all</source>
        <translation>Finalement pas fait</translation>
    </message>
    <message>
        <source>◀ Back</source>
        <translation>◀ Retour</translation>
    </message>
    <message>
        <source>Next ▶</source>
        <translation>Suivant ▶</translation>
    </message>
    <message>
        <source>✓ Done</source>
        <translation>✓ Fait</translation>
    </message>
    <message>
        <source>Steps done</source>
        <translation>Étapes faites</translation>
    </message>
    <message>
        <source>Done by</source>
        <translation>Fait par</translation>
    </message>
    <message>
        <source>Why it is done before its turn</source>
        <translation>Pourquoi c&apos;est fait avant son tour</translation>
    </message>
    <message>
        <source>• %1</source>
        <translation>• %1</translation>
    </message>
    <message>
        <source>Step %1 of %2 · %3 done</source>
        <translation>Étape %1 sur %2 · %3 faites</translation>
    </message>
    <message>
        <source>⚠ %1</source>
        <translation>⚠ %1</translation>
    </message>
    <message>
        <source>✓ Done %1</source>
        <translation>✓ Fait %1</translation>
    </message>
    <message>
        <source>✓ Done %1 by %2</source>
        <translation>✓ Fait %1 par %2</translation>
    </message>
    <message>
        <source>Out of order: %1</source>
        <translation>Hors ordre&#xa0;: %1</translation>
    </message>
    <message>
        <source>Not yet. First:</source>
        <translation>Pas encore. D&apos;abord&#xa0;:</translation>
    </message>
    <message>
        <source>Tick &quot;%1&quot;</source>
        <translation>Cocher «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>Take &quot;%1&quot; back</source>
        <translation>Décocher «&#xa0;%1&#xa0;»</translation>
    </message>
</context>
<context>
    <name>siphonwright::demonstration</name>
    <message>
        <source>Notes</source>
        <translation>Notes</translation>
    </message>
    <message>
        <source>From the fill to the heater on</source>
        <translation>Du remplissage à la mise en marche</translation>
    </message>
    <message>
        <source>%1: a moment is written as .png or .svg.</source>
        <translation>%1&#xa0;: un instant s&apos;écrit en .png ou .svg.</translation>
    </message>
    <message>
        <source>%1: the moment could not be drawn.</source>
        <translation>%1&#xa0;: l&apos;instant n&apos;a pas pu être dessiné.</translation>
    </message>
    <message>
        <source>%1 is a file; the pictures need a folder.</source>
        <translation>%1 est un fichier&#xa0;; les images demandent un dossier.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation>Le dossier %1 ne peut pas être créé.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be written to.</source>
        <translation>Impossible d&apos;écrire dans le dossier %1.</translation>
    </message>
    <message>
        <source>Handout: %1</source>
        <translation>Polycopié&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: the handout could not be drawn.</source>
        <translation>%1&#xa0;: le polycopié n&apos;a pas pu être dessiné.</translation>
    </message>
    <message>
        <source>Filling</source>
        <translation>Remplissage</translation>
    </message>
    <message>
        <source>Engine running</source>
        <translation>Moteur en marche</translation>
    </message>
    <message>
        <source>Topped up</source>
        <translation>Complété</translation>
    </message>
    <message>
        <source>Heater on</source>
        <translation>En chauffe</translation>
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
        <translation>Si le dessin d&apos;à côté circule</translation>
    </message>
    <message>
        <source>The drawing beside</source>
        <translation>Le dessin d&apos;à côté</translation>
    </message>
    <message>
        <source>Nothing to show: %1.</source>
        <translation>Rien à montrer&#xa0;: %1.</translation>
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
        <translation>Lire</translation>
    </message>
    <message>
        <source>What is happening now</source>
        <translation>Ce qui se passe maintenant</translation>
    </message>
    <message>
        <source>Full screen</source>
        <translation>Plein écran</translation>
    </message>
    <message>
        <source>Large, for the back of the room (F11)</source>
        <translation>Grand, pour le fond de la salle (F11)</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Quitter</translation>
    </message>
    <message>
        <source>End the demonstration (Escape)</source>
        <translation>Finir la démonstration (Échap)</translation>
    </message>
    <message>
        <source>Start again</source>
        <translation>Recommencer</translation>
    </message>
    <message>
        <source>Back to the start (Home)</source>
        <translation>Revenir au début (Origine)</translation>
    </message>
    <message>
        <source>One step back (Left)</source>
        <translation>Un pas en arrière (Gauche)</translation>
    </message>
    <message>
        <source>Play or pause (Space)</source>
        <translation>Lire ou mettre en pause (Espace)</translation>
    </message>
    <message>
        <source>One step on (Right)</source>
        <translation>Un pas en avant (Droite)</translation>
    </message>
    <message>
        <source>One step back</source>
        <translation>Un pas en arrière</translation>
    </message>
    <message>
        <source>One step on</source>
        <translation>Un pas en avant</translation>
    </message>
    <message>
        <source>%1×</source>
        <translation>%1×</translation>
    </message>
    <message>
        <source>Speed with the heater on</source>
        <translation>Vitesse, réchauffeur en marche</translation>
    </message>
    <message>
        <source>How much faster than the truth it goes with the heater on</source>
        <translation>Combien de fois plus vite que la réalité, réchauffeur en marche</translation>
    </message>
    <message>
        <source>Engine run</source>
        <translation>Moteur lancé</translation>
    </message>
    <message>
        <source>Run the engine and top up before the heater is switched on, or leave it out</source>
        <translation>Faire tourner le moteur et compléter avant de mettre le réchauffeur en marche, ou s&apos;en passer</translation>
    </message>
    <message>
        <source>Hide findings</source>
        <translation>Masquer constats</translation>
    </message>
    <message>
        <source>Let the class guess first (H)</source>
        <translation>Laisser d&apos;abord deviner la classe (H)</translation>
    </message>
    <message>
        <source>Ask</source>
        <translation>Vote</translation>
    </message>
    <message>
        <source>Count hands, then reveal</source>
        <translation>Compter les mains, puis révéler</translation>
    </message>
    <message>
        <source>Nothing to show yet: %1.</source>
        <translation>Rien à montrer pour l&apos;instant&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The heater cannot be switched on yet: %1.</source>
        <translation>Le réchauffeur ne peut pas encore être mis en marche&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>siphonwright::demonstration::ScrubBar</name>
    <message>
        <source>Where the demonstration stands</source>
        <translation>Où en est la démonstration</translation>
    </message>
    <message>
        <source>Drag to move through the demonstration; ticks are where something happens.</source>
        <translation>Glissez pour parcourir la démonstration&#xa0;; les traits marquent un événement.</translation>
    </message>
</context>
<context>
    <name>siphonwright::demonstration::Votes</name>
    <message>
        <source>Reveal</source>
        <translation>Révéler</translation>
    </message>
    <message>
        <source>Will it circulate?</source>
        <translation>Cela va-t-il circuler&#xa0;?</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Oui</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Non</translation>
    </message>
    <message>
        <source>One more %1</source>
        <translation>Un %1 de plus</translation>
    </message>
    <message>
        <source>One less %1</source>
        <translation>Un %1 de moins</translation>
    </message>
</context>
<context>
    <name>siphonwright::drawing</name>
    <message>
        <source>plumb</source>
        <translation>d&apos;aplomb</translation>
    </message>
    <message>
        <source>level</source>
        <translation>de niveau</translation>
    </message>
    <message>
        <source>rises at %1</source>
        <translation>monte à %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1: depth not entered</source>
        <translation>%1&#xa0;: profondeur non saisie</translation>
    </message>
    <message>
        <source>Right side</source>
        <translation>Côté droit</translation>
    </message>
    <message>
        <source>Left side</source>
        <translation>Côté gauche</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Avant</translation>
    </message>
    <message>
        <source>Jacket highest</source>
        <translation>Chemise, haut</translation>
    </message>
    <message>
        <source>Jacket lowest</source>
        <translation>Chemise, bas</translation>
    </message>
    <message>
        <source>Thermostat</source>
        <translation>Thermostat</translation>
    </message>
    <message>
        <source>Supply %1</source>
        <translation>Alimentation %1</translation>
    </message>
    <message>
        <source>Return %1</source>
        <translation>Retour %1</translation>
    </message>
    <message>
        <source>Ground, lowest ride height</source>
        <translation>Sol, suspension au plus bas</translation>
    </message>
    <message>
        <source>Datum</source>
        <translation>Référence</translation>
    </message>
    <message>
        <source>Level hot</source>
        <translation>Niveau à chaud</translation>
    </message>
    <message>
        <source>Level cold full</source>
        <translation>Niveau plein à froid</translation>
    </message>
    <message>
        <source>Level cold minimum</source>
        <translation>Niveau mini à froid</translation>
    </message>
    <message>
        <source>Surge tank</source>
        <translation>Vase d&apos;expansion</translation>
    </message>
    <message>
        <source>may sag %1</source>
        <translation>peut fléchir %1</translation>
    </message>
    <message>
        <source>plumb, %1 off</source>
        <translation>aplomb, écart %1</translation>
    </message>
    <message>
        <source>%1 of air, locks the loop</source>
        <translation>%1 d&apos;air, bloque la boucle</translation>
    </message>
    <message>
        <source>%1 of air, cleared by running</source>
        <translation>%1 d&apos;air, chassé en marche</translation>
    </message>
    <message>
        <source>%1 of air, may clear</source>
        <translation>%1 d&apos;air, part peut-être</translation>
    </message>
    <message>
        <source>%1 of air, stays</source>
        <translation>%1 d&apos;air, reste</translation>
    </message>
    <message>
        <source>%1 drives, air takes %2</source>
        <translation>%1 de charge, l&apos;air prend %2</translation>
    </message>
    <message>
        <source>%1 drives, %2 resists</source>
        <translation>%1 de charge, %2 de perte</translation>
    </message>
    <message>
        <source>%1 drives, air resists %2</source>
        <translation>%1 de charge, l&apos;air résiste à %2</translation>
    </message>
    <message>
        <source>nothing drives it</source>
        <translation>rien ne l&apos;entraîne</translation>
    </message>
    <message>
        <source>%1 would drive it</source>
        <translation>%1 l&apos;entraînerait</translation>
    </message>
    <message>
        <source>runs backward</source>
        <translation>à l&apos;envers</translation>
    </message>
    <message>
        <source>stalled</source>
        <translation>à l&apos;arrêt</translation>
    </message>
    <message>
        <source>a valve is shut</source>
        <translation>une vanne est fermée</translation>
    </message>
    <message>
        <source>boils</source>
        <translation>ébullition</translation>
    </message>
    <message>
        <source>coolant is slush</source>
        <translation>liquide en bouillie</translation>
    </message>
    <message>
        <source>not computed</source>
        <translation>non calculé</translation>
    </message>
    <message>
        <source>in %1, out %2</source>
        <translation>entrée %1, sortie %2</translation>
    </message>
    <message>
        <source>at %1 block</source>
        <translation>bloc à %1</translation>
    </message>
    <message>
        <source>plumb up</source>
        <translation>d&apos;aplomb, montant</translation>
    </message>
    <message>
        <source>plumb down</source>
        <translation>d&apos;aplomb, descendant</translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation>%1 montant</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>%1 descendant</translation>
    </message>
    <message>
        <source>%1 of air, turns the flow round</source>
        <translation>%1 d&apos;air, inverse le débit</translation>
    </message>
    <message>
        <source>%1, %2 along it</source>
        <translation>%1, à %2 de son début</translation>
    </message>
    <message>
        <source>%1 over the datum</source>
        <translation>%1 au-dessus de la référence</translation>
    </message>
    <message>
        <source>behind %1</source>
        <translation>derrière %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::headless</name>
    <message>
        <source>%1 needs %2.</source>
        <translation>%1 demande %2.</translation>
    </message>
    <message>
        <source>%1 does not know what to do with &quot;%2&quot;.</source>
        <translation>%1 ne sait que faire de «&#xa0;%2&#xa0;».</translation>
    </message>
    <message>
        <source>STOP</source>
        <translation>ARRÊT</translation>
    </message>
    <message>
        <source>CAUTION</source>
        <translation>ALERTE</translation>
    </message>
    <message>
        <source>advice</source>
        <translation>conseil</translation>
    </message>
    <message>
        <source>The job is stopped.</source>
        <translation>Le travail est bloqué.</translation>
    </message>
    <message>
        <source>Nothing stops the job.</source>
        <translation>Rien ne bloque le travail.</translation>
    </message>
    <message>
        <source>Nothing that was judged stops the job.</source>
        <translation>Rien de ce qui a été jugé ne bloque le travail.</translation>
    </message>
    <message>
        <source> [%1: measured %2, limit %3]</source>
        <translation> [%1&#xa0;: mesuré %2, limite %3]</translation>
    </message>
    <message>
        <source> Hangs on %1.</source>
        <translation> Dépend de&#xa0;: %1.</translation>
    </message>
    <message>
        <source>  not judged: %1 [%2]</source>
        <translation>  non jugé&#xa0;: %1 [%2]</translation>
    </message>
    <message>
        <source>  switched off: %1 (%2)</source>
        <translation>  désactivé&#xa0;: %1 (%2)</translation>
    </message>
    <message>
        <source>  not confirmed: %1</source>
        <translation>  non confirmé&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1, %2, %3, %4.</source>
        <translation>%1, %2, %3, %4.</translation>
    </message>
    <message>
        <source>1 stop</source>
        <translation>1 arrêt</translation>
    </message>
    <message>
        <source>%1 stops</source>
        <translation>%1 arrêts</translation>
    </message>
    <message>
        <source>1 caution</source>
        <translation>1 alerte</translation>
    </message>
    <message>
        <source>%1 cautions</source>
        <translation>%1 alertes</translation>
    </message>
    <message>
        <source>1 advice</source>
        <translation>1 conseil</translation>
    </message>
    <message>
        <source>%1 advices</source>
        <translation>%1 conseils</translation>
    </message>
    <message>
        <source>%1 not judged</source>
        <translation>%1 non jugés</translation>
    </message>
    <message>
        <source>Checklist: %1 of %2 steps done.</source>
        <translation>Liste de contrôle&#xa0;: %1 étapes faites sur %2.</translation>
    </message>
    <message>
        <source>out of order: %1 (%2)</source>
        <translation>hors ordre&#xa0;: %1 (%2)</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation>sans motif</translation>
    </message>
    <message>
        <source>not judged: %1</source>
        <translation>non jugé&#xa0;: %1</translation>
    </message>
    <message>
        <source>not diagnosed: %1</source>
        <translation>pas de diagnostic&#xa0;: %1</translation>
    </message>
    <message>
        <source>or: %1</source>
        <translation>ou&#xa0;: %1</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Ensuite&#xa0;: %1</translation>
    </message>
    <message>
        <source>&gt; 99 %</source>
        <translation>&gt; 99&#xa0;%</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>  There is no heater to diagnose.</source>
        <translation>  Il n&apos;y a pas de réchauffeur à diagnostiquer.</translation>
    </message>
    <message>
        <source>block full, new hoses empty</source>
        <translation>bloc plein, nouvelles durites vides</translation>
    </message>
    <message>
        <source>block partly drained, new hoses empty</source>
        <translation>bloc en partie vidangé, nouvelles durites vides</translation>
    </message>
    <message>
        <source>block full, hoses and heater filled before they are connected</source>
        <translation>bloc plein, durites et réchauffeur remplis avant raccordement</translation>
    </message>
    <message>
        <source>engine and hoses empty</source>
        <translation>moteur et durites vides</translation>
    </message>
    <message>
        <source>Start: %1; %2 of air in each hose.</source>
        <translation>Départ&#xa0;: %1&#xa0;; %2 d&apos;air dans chaque durite.</translation>
    </message>
    <message>
        <source>Start: %1; no air in them.</source>
        <translation>Départ&#xa0;: %1&#xa0;; sans air dedans.</translation>
    </message>
    <message>
        <source>filled under vacuum</source>
        <translation>rempli sous vide</translation>
    </message>
    <message>
        <source>filled from below</source>
        <translation>rempli par le bas</translation>
    </message>
    <message>
        <source>filled at the filler</source>
        <translation>rempli par l&apos;orifice</translation>
    </message>
    <message>
        <source>Start: %1; %2</source>
        <translation>Départ&#xa0;: %1&#xa0;; %2</translation>
    </message>
    <message>
        <source>%1, %2 short.</source>
        <translation>%1, manque %2.</translation>
    </message>
    <message>
        <source>No air stays.</source>
        <translation>Il ne reste pas d&apos;air.</translation>
    </message>
    <message>
        <source>There is nothing to draw: %1.</source>
        <translation>Il n&apos;y a rien à dessiner&#xa0;: %1.</translation>
    </message>
    <message>
        <source>a folder for the pictures</source>
        <translation>un dossier pour les images</translation>
    </message>
    <message>
        <source>%1 pictures written to %2.</source>
        <translation>%1 images écrites dans %2.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a command.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas une commande.</translation>
    </message>
    <message>
        <source>%1 could not be written: %2</source>
        <translation>%1 n&apos;a pas pu être écrit&#xa0;: %2</translation>
    </message>
    <message>
        <source>  Nothing is drawn that takes parts.</source>
        <translation>  Rien de ce qui est dessiné ne demande de pièces.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>not priced</source>
        <translation>sans prix</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Quantité</translation>
    </message>
    <message>
        <source>List price</source>
        <translation>Prix tarif</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Montant</translation>
    </message>
    <message>
        <source>Hose of %1</source>
        <translation>Durite de %1</translation>
    </message>
    <message>
        <source>Hose without a bore</source>
        <translation>Durite sans diam. int.</translation>
    </message>
    <message>
        <source>  %1: not planned. %2</source>
        <translation>  %1&#xa0;: non planifié. %2</translation>
    </message>
    <message>
        <source>  %1: %2 from rolls of %3, the least there is; %4 left over.</source>
        <translation>  %1&#xa0;: %2 pris sur des rouleaux de %3, le minimum possible&#xa0;; reste %4.</translation>
    </message>
    <message>
        <source>  %1: %2 from rolls of %3; %4 left over. No plan needs less than %5.</source>
        <translation>  %1&#xa0;: %2 pris sur des rouleaux de %3&#xa0;; reste %4. Aucun plan ne demande moins de %5.</translation>
    </message>
    <message>
        <source>  Materials at list price: %1.</source>
        <translation>  Matériaux au prix tarif&#xa0;: %1.</translation>
    </message>
    <message>
        <source>  Materials at list price: %1, incomplete: one item is not priced.</source>
        <translation>  Matériaux au prix tarif&#xa0;: %1, incomplet&#xa0;: un article est sans prix.</translation>
    </message>
    <message>
        <source>  Materials at list price: %1, incomplete: %2 items are not priced.</source>
        <translation>  Matériaux au prix tarif&#xa0;: %1, incomplet&#xa0;: %2 articles sont sans prix.</translation>
    </message>
    <message>
        <source>the name of a price list</source>
        <translation>le nom d&apos;une liste de prix</translation>
    </message>
    <message>
        <source>the name of a file to write</source>
        <translation>le nom d&apos;un fichier à écrire</translation>
    </message>
    <message>
        <source>, for %1 vehicles</source>
        <translation>, pour %1 véhicules</translation>
    </message>
    <message>
        <source>  %1 written.</source>
        <translation>  %1 écrit.</translation>
    </message>
    <message>
        <source>sheet needs a sketch file and --output OUT.pdf, .svg or .png.</source>
        <translation>sheet demande un fichier de dessin et --output SORTIE.pdf, .svg ou .png.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no paper; A4, A3, Letter or Tabloid is.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas un papier&#xa0;; A4, A3, Letter ou Tabloid en sont.</translation>
    </message>
    <message>
        <source>OUT.pdf, .svg or .png</source>
        <translation>SORTIE.pdf, .svg ou .png</translation>
    </message>
    <message>
        <source>A4, A3, Letter or Tabloid</source>
        <translation>A4, A3, Letter ou Tabloid</translation>
    </message>
    <message>
        <source>%1 written, scale 1:%2.</source>
        <translation>%1 écrit, échelle 1:%2.</translation>
    </message>
    <message>
        <source>A4 or Letter</source>
        <translation>A4 ou Letter</translation>
    </message>
    <message>
        <source>a file to write, OUT.pdf</source>
        <translation>un fichier à écrire, SORTIE.pdf</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no paper for the form; A4 or Letter is.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas un papier pour la fiche&#xa0;; A4 ou Letter en sont.</translation>
    </message>
    <message>
        <source>survey-form needs a file to write, OUT.pdf.</source>
        <translation>survey-form demande un fichier à écrire, SORTIE.pdf.</translation>
    </message>
    <message>
        <source>%1 written.</source>
        <translation>%1 écrit.</translation>
    </message>
    <message>
        <source>%1: %2 is not from %3 to %4.</source>
        <translation>%1&#xa0;: %2 n&apos;est pas de %3 à %4.</translation>
    </message>
    <message>
        <source>    the return is warm to the hand at the engine after %1 min
</source>
        <translation>    le retour est chaud à la main au moteur après %1 min
</translation>
    </message>
    <message>
        <source>    an infrared thermometer reads %1 on the return hose there at the end
</source>
        <translation>    un thermomètre infrarouge y lit %1 sur la durite de retour à la fin
</translation>
    </message>
    <message>
        <source>    the cut-out trips after %1 min
</source>
        <translation>    le limiteur déclenche après %1 min
</translation>
    </message>
    <message>
        <source>    on the edge: air withstands nearly all that drives, and small causes decide
</source>
        <translation>    à la limite&#xa0;: l&apos;air résiste à presque toute la charge, et de petites causes décident
</translation>
    </message>
    <message>
        <source>  assumed: %1</source>
        <translation>  supposé&#xa0;: %1</translation>
    </message>
    <message>
        <source> (changed; usually %1)</source>
        <translation> (changé&#xa0;; d&apos;ordinaire %1)</translation>
    </message>
    <message>
        <source>there is no warm-up to write: %1</source>
        <translation>il n&apos;y a pas de chauffe à écrire&#xa0;: %1</translation>
    </message>
    <message>
        <source>a time in hours</source>
        <translation>une durée en heures</translation>
    </message>
    <message>
        <source>a temperature</source>
        <translation>une température</translation>
    </message>
    <message>
        <source>a sketch file</source>
        <translation>un fichier de dessin</translation>
    </message>
    <message>
        <source>None of the faults listed explains these readings well. The nearest of them:</source>
        <translation>Aucun des défauts de la liste n’explique bien ces mesures. Les plus proches :</translation>
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
        <translation>siphonwright [FICHIER]                    ouvrir la fenêtre
siphonwright check FICHIER... [--json] [--bands]
                                          juger des dessins&#xa0;; --bands&#xa0;: sur tout ce qui est supposé
siphonwright warm-up FICHIER [--hours H] [--ambient T] [--csv SORTIE]
                                          comment le moteur chauffe
siphonwright fill FICHIER [--json] [--frames DOSSIER]
                                          dire comment il se remplit et quel air reste&#xa0;; --frames&#xa0;:
                                          en images numérotées, moment-0001.png et ainsi de suite
siphonwright parts FICHIER [--prices LISTE.csv] [--csv SORTIE.csv]
                                          lister pièces, coupes et ce qui est sans prix
siphonwright diagnose FICHIER [--json]    juger ses mesures et dire ce qui les explique
siphonwright sheet FICHIER --output SORTIE.pdf|.svg|.png
             [--paper A4|A3|Letter|Tabloid] [--portrait] [--colour]
             [--parts] [--photo] [--student] [--third-angle]
             [--pages NAMES|all] [--scale 1:N] [--dpi N] [--logo PICTURE]
siphonwright sheet FICHIER... --output-dir DIR
                                          dessine la feuille ; --pages: drawing, fitting, checklist,
                                          parts, estimate, assumptions, séparées par des virgules ;
                                          --scale: sur plusieurs pages si elle ne tient pas ;
                                          --photo: sur la photo ; --student: sans constats ;
                                          --third-angle: la vue en bout placée ainsi ;
                                          --output-dir: chaque croquis en PDF dans un dossier
siphonwright survey-form SORTIE.pdf [--paper A4|Letter] [--inch]
                                          une page vierge pour mesurer près du véhicule
siphonwright --help | --version

Code de sortie&#xa0;: 0 rien ne bloque le travail&#xa0;; 1 au moins un arrêt&#xa0;; 2 un fichier n&apos;a pas pu
être lu ou écrit, ou un argument est faux.
</translation>
    </message>
    <message>
        <source>Several sketches need --output-dir DIR.</source>
        <translation>Plusieurs croquis demandent --output-dir DIR.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no scale; 1:10 is.</source>
        <translation>« %1 » n&apos;est pas une échelle ; 1:10 en est une.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no resolution; 20 to 1200 dots per inch are.</source>
        <translation>« %1 » n&apos;est pas une résolution ; il faut 20 à 1200 points par pouce.</translation>
    </message>
    <message>
        <source>%1 could not be read as a picture.</source>
        <translation>%1 n&apos;a pas pu être lu comme image.</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: pages are drawing, fitting, checklist, parts, estimate and assumptions, with commas between, or all.</source>
        <translation>« %1 » : les pages sont drawing, fitting, checklist, parts, estimate et assumptions, séparées par des virgules, ou all.</translation>
    </message>
    <message>
        <source>%1 cannot be made.</source>
        <translation>%1 ne peut pas être créé.</translation>
    </message>
    <message>
        <source>the name of a folder</source>
        <translation>le nom d&apos;un dossier</translation>
    </message>
    <message>
        <source>names of pages, or all</source>
        <translation>des noms de pages, ou all</translation>
    </message>
    <message>
        <source>a scale such as 1:10</source>
        <translation>une échelle comme 1:10</translation>
    </message>
    <message>
        <source>dots per inch</source>
        <translation>des points par pouce</translation>
    </message>
    <message>
        <source>the name of a picture</source>
        <translation>le nom d&apos;une image</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels</name>
    <message>
        <source>Flow %1, in at %2, out at %3.</source>
        <translation>Débit %1, entrée à %2, sortie à %3.</translation>
    </message>
    <message>
        <source>%1 of head drives (%2), %3 resists (%4).</source>
        <translation>%1 de charge motrice (%2), %3 de perte (%4).</translation>
    </message>
    <message>
        <source>Air takes %1 of it.</source>
        <translation>L&apos;air en prend %1.</translation>
    </message>
    <message>
        <source>On the edge: small causes decide whether it runs.</source>
        <translation>À la limite&#xa0;: de petites causes décident si cela circule.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Largest losses: %1.</source>
        <translation>Plus grandes pertes&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Over the warm-up: hottest outlet %1</source>
        <translation>Pendant la chauffe&#xa0;: sortie au plus chaud %1</translation>
    </message>
    <message>
        <source>, %1 under boiling</source>
        <translation>, %1 sous l&apos;ébullition</translation>
    </message>
    <message>
        <source>, element&apos;s surface %1 with bubbles on it</source>
        <translation>, surface de l&apos;élément chauffant %1 avec des bulles dessus</translation>
    </message>
    <message>
        <source>, element&apos;s surface %1</source>
        <translation>, surface de l&apos;élément chauffant %1</translation>
    </message>
    <message>
        <source>How it runs is not computed: %1.</source>
        <translation>La marche n&apos;est pas calculée&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1, with the block at %2.</source>
        <translation>%1, bloc à %2.</translation>
    </message>
    <message>
        <source>Circulates</source>
        <translation>Circule</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::DetailsPanel</name>
    <message numerus="yes">
        <source>%1, and %n more selected</source>
        <translation>
            <numerusform>%1, et %n autre sélectionné</numerusform>
            <numerusform>%1, et %n autres sélectionnés</numerusform>
        </translation>
    </message>
    <message>
        <source>The warm-up is of the drawing a moment ago.</source>
        <translation>La chauffe est celle du dessin d&apos;il y a un instant.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1&#xa0;: %2.</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FindingRow</name>
    <message>
        <source>Not judged.</source>
        <translation>Non jugé.</translation>
    </message>
    <message>
        <source>Not confirmed.</source>
        <translation>Non confirmé.</translation>
    </message>
    <message>
        <source>STOP</source>
        <translation>ARRÊT</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Alerte</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Conseil</translation>
    </message>
    <message>
        <source>&lt;b&gt;Fix:&lt;/b&gt;</source>
        <translation>&lt;b&gt;Correction&#xa0;:&lt;/b&gt;</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FindingsModel</name>
    <message>
        <source>%1. Basis: %2</source>
        <translation>%1. Base&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1, %2: %3 %4</source>
        <translation>%1, %2&#xa0;: %3 %4</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Verdicts hang on this. Measure it or look it up, and say so beside the figure.</source>
        <translation>Des jugements en dépendent. Mesurez-le ou cherchez-le, et notez-le à côté de la valeur.</translation>
    </message>
    <message>
        <source>Not confirmed: %1.</source>
        <translation>Non confirmé&#xa0;: %1.</translation>
    </message>
    <message>
        <source>measured %1</source>
        <translation>mesuré %1</translation>
    </message>
    <message>
        <source>measured %1, limit %2</source>
        <translation>mesuré %1, limite %2</translation>
    </message>
    <message>
        <source>1 stops the job</source>
        <translation>1 bloque le travail</translation>
    </message>
    <message>
        <source>%1 stop the job</source>
        <translation>%1 bloquent le travail</translation>
    </message>
    <message>
        <source>1 caution</source>
        <translation>1 alerte</translation>
    </message>
    <message>
        <source>%1 cautions</source>
        <translation>%1 alertes</translation>
    </message>
    <message>
        <source>%1 advice</source>
        <translation>%1 conseils</translation>
    </message>
    <message>
        <source>%1 not judged</source>
        <translation>%1 non jugés</translation>
    </message>
    <message>
        <source>%1 not confirmed</source>
        <translation>%1 non confirmés</translation>
    </message>
    <message>
        <source>Nothing to judge until hoses are drawn</source>
        <translation>Rien à juger tant qu&apos;il n&apos;y a pas de durites</translation>
    </message>
    <message>
        <source>Nothing found that stops the job</source>
        <translation>Rien trouvé qui bloque le travail</translation>
    </message>
    <message>
        <source>measured %1 (%2), limit %3 (%4)</source>
        <translation>mesuré %1 (%2), limite %3 (%4)</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FindingsPanel</name>
    <message>
        <source>About this rule…</source>
        <translation>À propos de cette règle…</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>What it rests on, and its limits, which can be changed for this drawing</source>
        <translation>Sur quoi elle repose, et ses limites, modifiables pour ce dessin</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FixBar</name>
    <message>
        <source>Fix it</source>
        <translation>Corriger</translation>
    </message>
    <message>
        <source>Looking for a fix…</source>
        <translation>Recherche…</translation>
    </message>
    <message>
        <source>No small change of the drawing cures this by itself.</source>
        <translation>Aucun petit changement du dessin n&apos;y remédie à lui seul.</translation>
    </message>
    <message>
        <source>Proven by analysing the changed drawing. One undo takes it back.</source>
        <translation>Prouvé par l&apos;analyse du dessin modifié. Une annulation le reprend.</translation>
    </message>
    <message>
        <source>Fix: %1</source>
        <translation>Correction&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FormText</name>
    <message>
        <source>Along</source>
        <translation>Abscisse</translation>
    </message>
    <message>
        <source>Height over datum</source>
        <translation>Hauteur sur référence</translation>
    </message>
    <message>
        <source>Away from viewer</source>
        <translation>Profondeur</translation>
    </message>
    <message>
        <source>nothing: open end</source>
        <translation>rien&#xa0;: bout ouvert</translation>
    </message>
    <message>
        <source>%1, inlet</source>
        <translation>%1, entrée</translation>
    </message>
    <message>
        <source>%1, outlet</source>
        <translation>%1, sortie</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>mesuré</translation>
    </message>
    <message>
        <source>manual</source>
        <translation>manuel</translation>
    </message>
    <message>
        <source>typical</source>
        <translation>typique</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>supposé</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Elbow</source>
        <translation>Coude</translation>
    </message>
    <message>
        <source>none, straight</source>
        <translation>aucun, droit</translation>
    </message>
    <message>
        <source>elbow or angled adapter</source>
        <translation>coude ou adaptateur coudé</translation>
    </message>
    <message>
        <source>Leaves, in plan</source>
        <translation>Départ, en plan</translation>
    </message>
    <message>
        <source>Leaves up by</source>
        <translation>Départ relevé de</translation>
    </message>
    <message>
        <source>Elbow radius</source>
        <translation>Rayon du coude</translation>
    </message>
    <message>
        <source>Elbow leg</source>
        <translation>Branche coude</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Nature</translation>
    </message>
    <message>
        <source>exhaust</source>
        <translation>échappement</translation>
    </message>
    <message>
        <source>turbocharger</source>
        <translation>turbocompresseur</translation>
    </message>
    <message>
        <source>heat shield</source>
        <translation>écran thermique</translation>
    </message>
    <message>
        <source>belt</source>
        <translation>courroie</translation>
    </message>
    <message>
        <source>fan</source>
        <translation>ventilateur</translation>
    </message>
    <message>
        <source>shaft</source>
        <translation>arbre</translation>
    </message>
    <message>
        <source>steering</source>
        <translation>direction</translation>
    </message>
    <message>
        <source>suspension</source>
        <translation>suspension</translation>
    </message>
    <message>
        <source>other</source>
        <translation>autre</translation>
    </message>
    <message>
        <source>Near side</source>
        <translation>Côté proche</translation>
    </message>
    <message>
        <source>Depth of its side towards the viewer; not entered: not known</source>
        <translation>Profondeur de son côté vers l&apos;observateur&#xa0;; non saisi&#xa0;: inconnu</translation>
    </message>
    <message>
        <source>Far side</source>
        <translation>Côté éloigné</translation>
    </message>
    <message>
        <source>Keep clear by</source>
        <translation>Distance à garder</translation>
    </message>
    <message>
        <source>Ground over datum</source>
        <translation>Sol sur référence</translation>
    </message>
    <message>
        <source>At the lowest ride height</source>
        <translation>Suspension au plus bas</translation>
    </message>
    <message>
        <source>Measures %1 along the hose</source>
        <translation>Mesure %1 le long de la durite</translation>
    </message>
    <message>
        <source>Measures %1</source>
        <translation>Mesure %1</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>De %1</translation>
    </message>
    <message>
        <source>To %1</source>
        <translation>À %1</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Type</translation>
    </message>
    <message>
        <source>horizontal</source>
        <translation>horizontale</translation>
    </message>
    <message>
        <source>vertical</source>
        <translation>verticale</translation>
    </message>
    <message>
        <source>along</source>
        <translation>alignée</translation>
    </message>
    <message>
        <source>slope</source>
        <translation>pente</translation>
    </message>
    <message>
        <source>Line aside</source>
        <translation>Décalage</translation>
    </message>
    <message>
        <source>From the line between its ends: up, right, or left of the way; negative: opposite</source>
        <translation>Depuis la droite entre ses bouts&#xa0;: vers le haut, à droite, ou à gauche du sens&#xa0;; négatif&#xa0;: à l&apos;opposé</translation>
    </message>
    <message>
        <source>Engine front faces</source>
        <translation>Avant du moteur vers</translation>
    </message>
    <message>
        <source>vehicle front</source>
        <translation>avant du véhicule</translation>
    </message>
    <message>
        <source>vehicle right</source>
        <translation>droite du véhicule</translation>
    </message>
    <message>
        <source>vehicle rear</source>
        <translation>arrière du véhicule</translation>
    </message>
    <message>
        <source>vehicle left</source>
        <translation>gauche du véhicule</translation>
    </message>
    <message>
        <source>Stretches the jacket&apos;s outline to this level</source>
        <translation>Étire le contour de la chemise jusqu&apos;à ce niveau</translation>
    </message>
    <message>
        <source>Water jacket</source>
        <translation>Chemise d&apos;eau</translation>
    </message>
    <message>
        <source>Lowest level</source>
        <translation>Niveau bas</translation>
    </message>
    <message>
        <source>Highest level</source>
        <translation>Niveau haut</translation>
    </message>
    <message>
        <source>Depth of the jacket&apos;s side towards the viewer</source>
        <translation>Profondeur du côté de la chemise vers l&apos;observateur</translation>
    </message>
    <message>
        <source>Arrangement</source>
        <translation>Disposition</translation>
    </message>
    <message>
        <source>in-line 3</source>
        <translation>3 en ligne</translation>
    </message>
    <message>
        <source>in-line 4</source>
        <translation>4 en ligne</translation>
    </message>
    <message>
        <source>in-line 5</source>
        <translation>5 en ligne</translation>
    </message>
    <message>
        <source>in-line 6</source>
        <translation>6 en ligne</translation>
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
        <translation>en ligne incliné</translation>
    </message>
    <message>
        <source>Displacement</source>
        <translation>Cylindrée</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Bloc</translation>
    </message>
    <message>
        <source>iron</source>
        <translation>fonte</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>aluminium</translation>
    </message>
    <message>
        <source>Coolant in engine</source>
        <translation>Liquide du moteur</translation>
    </message>
    <message>
        <source>Front is at the</source>
        <translation>L&apos;avant est à</translation>
    </message>
    <message>
        <source>left</source>
        <translation>gauche</translation>
    </message>
    <message>
        <source>right</source>
        <translation>droite</translation>
    </message>
    <message>
        <source>Mount angle</source>
        <translation>Angle montage</translation>
    </message>
    <message>
        <source>Positive: the engine&apos;s rear is lower</source>
        <translation>Positif&#xa0;: l&apos;arrière du moteur est plus bas</translation>
    </message>
    <message>
        <source>Lean</source>
        <translation>Dévers</translation>
    </message>
    <message>
        <source>Positive: the top leans towards the engine&apos;s right side</source>
        <translation>Positif&#xa0;: le haut penche vers le côté droit du moteur</translation>
    </message>
    <message>
        <source>Thermostat housing</source>
        <translation>Boîtier de thermostat</translation>
    </message>
    <message>
        <source>Surge tank and levels</source>
        <translation>Vase et niveaux</translation>
    </message>
    <message>
        <source>Sits on the</source>
        <translation>Placé</translation>
    </message>
    <message>
        <source>outlet side</source>
        <translation>côté sortie</translation>
    </message>
    <message>
        <source>inlet side</source>
        <translation>côté entrée</translation>
    </message>
    <message>
        <source>Bleed hole</source>
        <translation>Trou de purge</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>Coolant levels over datum</source>
        <translation>Niveaux sur référence</translation>
    </message>
    <message>
        <source>Cold minimum</source>
        <translation>Minimum à froid</translation>
    </message>
    <message>
        <source>Cold full</source>
        <translation>Plein à froid</translation>
    </message>
    <message>
        <source>Hot</source>
        <translation>À chaud</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Position</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Moteur</translation>
    </message>
    <message>
        <source>Engine outline, corner %1</source>
        <translation>Contour du moteur, coin %1</translation>
    </message>
    <message>
        <source>Water jacket, corner %1</source>
        <translation>Chemise d&apos;eau, coin %1</translation>
    </message>
    <message>
        <source>Surge tank</source>
        <translation>Vase d&apos;expansion</translation>
    </message>
    <message>
        <source>Port: %1</source>
        <translation>Piquage&#xa0;: %1</translation>
    </message>
    <message>
        <source>Heater: %1</source>
        <translation>Réchauffeur&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1, point %2</source>
        <translation>%1, point %2</translation>
    </message>
    <message>
        <source>%1, start</source>
        <translation>%1, départ</translation>
    </message>
    <message>
        <source>%1, end</source>
        <translation>%1, fin</translation>
    </message>
    <message>
        <source>%1, in-line part %2</source>
        <translation>%1, pièce en ligne %2</translation>
    </message>
    <message>
        <source>%1, clip %2</source>
        <translation>%1, collier %2</translation>
    </message>
    <message>
        <source>Area to keep clear of</source>
        <translation>Zone interdite</translation>
    </message>
    <message>
        <source>Area, corner %1</source>
        <translation>Zone, coin %1</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>Sol</translation>
    </message>
    <message>
        <source>Dimension</source>
        <translation>Cote</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>The whole drawing</source>
        <translation>Le dessin entier</translation>
    </message>
    <message>
        <source>Tilt from upright</source>
        <translation>Écart à la verticale</translation>
    </message>
    <message>
        <source>0 upright, 90 lying to the right, -90 to the left</source>
        <translation>0 debout, 90 couché vers la droite, -90 vers la gauche</translation>
    </message>
    <message>
        <source>Turn about plumb</source>
        <translation>Rotation axe vertical</translation>
    </message>
    <message>
        <source>Body length</source>
        <translation>Long. du corps</translation>
    </message>
    <message>
        <source>Body diameter</source>
        <translation>Diam. du corps</translation>
    </message>
    <message>
        <source>Mounted on</source>
        <translation>Monté sur</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>châssis</translation>
    </message>
    <message>
        <source>engine</source>
        <translation>moteur</translation>
    </message>
    <message>
        <source>not allowed</source>
        <translation>non admis</translation>
    </message>
    <message>
        <source>allowed</source>
        <translation>admis</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Diam. int.</translation>
    </message>
    <message>
        <source>From centre, right</source>
        <translation>Du centre, à droite</translation>
    </message>
    <message>
        <source>From centre, up</source>
        <translation>Du centre, en haut</translation>
    </message>
    <message>
        <source>From centre, away</source>
        <translation>Du centre, au fond</translation>
    </message>
    <message>
        <source>Points to, in plan</source>
        <translation>Dirigé, en plan</translation>
    </message>
    <message>
        <source>0 right, 90 away from the viewer, 180 left</source>
        <translation>0 droite, 90 à l&apos;opposé de l&apos;observateur, 180 gauche</translation>
    </message>
    <message>
        <source>Points up by</source>
        <translation>Relevé de</translation>
    </message>
    <message>
        <source>Stub length</source>
        <translation>Long. tubulure</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Filetage</translation>
    </message>
    <message>
        <source>Phases</source>
        <translation>Phases</translation>
    </message>
    <message>
        <source>single phase</source>
        <translation>monophasé</translation>
    </message>
    <message>
        <source>three phase</source>
        <translation>triphasé</translation>
    </message>
    <message>
        <source>Over-temperature cut-out</source>
        <translation>Limiteur de température</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>resets itself</source>
        <translation>réarmement auto</translation>
    </message>
    <message>
        <source>manual reset</source>
        <translation>réarm. manuel</translation>
    </message>
    <message>
        <source>Cut-out opens at</source>
        <translation>Limiteur ouvre à</translation>
    </message>
    <message>
        <source>Chamber, from the body&apos;s centre</source>
        <translation>Chambre, depuis le centre du corps</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Haut</translation>
    </message>
    <message>
        <source>Bottom</source>
        <translation>Bas</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volume</translation>
    </message>
    <message>
        <source>Top of element</source>
        <translation>Haut de l&apos;élément</translation>
    </message>
    <message>
        <source>Coolant must stand over it before power goes on</source>
        <translation>Le liquide doit le dépasser avant la mise sous tension</translation>
    </message>
    <message>
        <source>Electrical</source>
        <translation>Électricité</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Puissance</translation>
    </message>
    <message>
        <source>Rated voltage</source>
        <translation>Tension nominale</translation>
    </message>
    <message>
        <source>Voltage at the bay</source>
        <translation>Tension sur place</translation>
    </message>
    <message>
        <source>Thermostat</source>
        <translation>Thermostat</translation>
    </message>
    <message>
        <source>at the inlet</source>
        <translation>à l&apos;entrée</translation>
    </message>
    <message>
        <source>at the outlet</source>
        <translation>à la sortie</translation>
    </message>
    <message>
        <source>remote</source>
        <translation>déporté</translation>
    </message>
    <message>
        <source>Turns on at</source>
        <translation>Marche à</translation>
    </message>
    <message>
        <source>Turns off at</source>
        <translation>Arrêt à</translation>
    </message>
    <message>
        <source>The heater&apos;s manual</source>
        <translation>Manuel du réchauffeur</translation>
    </message>
    <message>
        <source>Smallest hose bore</source>
        <translation>Diam. int. minimal</translation>
    </message>
    <message>
        <source>Least drop under jacket</source>
        <translation>Distance min. sous chemise</translation>
    </message>
    <message>
        <source>Upright</source>
        <translation>Debout</translation>
    </message>
    <message>
        <source>Lying</source>
        <translation>Couché</translation>
    </message>
    <message>
        <source>Inclined</source>
        <translation>Incliné</translation>
    </message>
    <message>
        <source>Inlet nozzle</source>
        <translation>Tubulure d&apos;entrée</translation>
    </message>
    <message>
        <source>Outlet nozzle</source>
        <translation>Tubulure de sortie</translation>
    </message>
    <message>
        <source>isolation valve</source>
        <translation>vanne d&apos;isolement</translation>
    </message>
    <message>
        <source>bleed point</source>
        <translation>point de purge</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>vidange</translation>
    </message>
    <message>
        <source>lift check valve</source>
        <translation>clapet à levée</translation>
    </message>
    <message>
        <source>swing check valve</source>
        <translation>clapet à battant</translation>
    </message>
    <message>
        <source>reducer</source>
        <translation>réduction</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>To</source>
        <translation>À</translation>
    </message>
    <message>
        <source>What this end is pushed onto</source>
        <translation>Sur quoi ce bout est enfilé</translation>
    </message>
    <message>
        <source>Bore of hose end</source>
        <translation>Diam. int. embout</translation>
    </message>
    <message>
        <source>Pushed on by</source>
        <translation>Enfilé de</translation>
    </message>
    <message>
        <source>Start of hose</source>
        <translation>Départ de durite</translation>
    </message>
    <message>
        <source>End of hose</source>
        <translation>Fin de durite</translation>
    </message>
    <message>
        <source>Point %1</source>
        <translation>Point %1</translation>
    </message>
    <message>
        <source>In-line part %1: %2</source>
        <translation>Pièce en ligne %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Clip %1</source>
        <translation>Collier %1</translation>
    </message>
    <message>
        <source>Carries coolant</source>
        <translation>Mène le liquide</translation>
    </message>
    <message>
        <source>to the heater (supply)</source>
        <translation>au réchauffeur (alimentation)</translation>
    </message>
    <message>
        <source>to the engine (return)</source>
        <translation>au moteur (retour)</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Paroi</translation>
    </message>
    <message>
        <source>Least bend radius</source>
        <translation>Rayon minimal</translation>
    </message>
    <message>
        <source>To the inside of the bend; not entered: judged by bores</source>
        <translation>À l&apos;intérieur de la courbe&#xa0;; non saisi&#xa0;: jugé par diamètres</translation>
    </message>
    <message>
        <source>Insulation</source>
        <translation>Isolation</translation>
    </message>
    <message>
        <source>Whole hose</source>
        <translation>Durite entière</translation>
    </message>
    <message>
        <source>Bend radius</source>
        <translation>Rayon courbure</translation>
    </message>
    <message>
        <source>To the hose&apos;s centreline</source>
        <translation>À l&apos;axe de la durite</translation>
    </message>
    <message>
        <source>Bend is</source>
        <translation>La courbe est</translation>
    </message>
    <message>
        <source>the hose itself</source>
        <translation>la durite elle-même</translation>
    </message>
    <message>
        <source>a moulded elbow</source>
        <translation>un coude moulé</translation>
    </message>
    <message>
        <source>a metal elbow</source>
        <translation>un coude en métal</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Along the hose</source>
        <translation>Le long de la durite</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longueur</translation>
    </message>
    <message>
        <source>Its own bore; for a reducer the bore from here on</source>
        <translation>Son diamètre intérieur propre&#xa0;; pour une réduction, celui à partir d&apos;ici</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>fermé</translation>
    </message>
    <message>
        <source>open</source>
        <translation>ouvert</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Largeur</translation>
    </message>
    <message>
        <source>Of the whole picture. Scale by two points sets it from a length in the picture.</source>
        <translation>De l&apos;image entière. L&apos;échelle par deux points la règle d&apos;après une longueur dans l&apos;image.</translation>
    </message>
    <message>
        <source>Turned clockwise</source>
        <translation>Sens horaire</translation>
    </message>
    <message>
        <source>About its middle. Level by two points sets it from something level.</source>
        <translation>Autour de son milieu. La mise de niveau par deux points la règle d&apos;après un élément de niveau.</translation>
    </message>
    <message>
        <source>Faded</source>
        <translation>Estompée</translation>
    </message>
    <message>
        <source>as taken</source>
        <translation>telle quelle</translation>
    </message>
    <message>
        <source>a little</source>
        <translation>un peu</translation>
    </message>
    <message>
        <source>by half</source>
        <translation>à moitié</translation>
    </message>
    <message>
        <source>much</source>
        <translation>beaucoup</translation>
    </message>
    <message>
        <source>not to be seen</source>
        <translation>invisible</translation>
    </message>
    <message>
        <source>The picture in this file cannot be read. Remove it, or put another in its place.</source>
        <translation>L&apos;image de ce fichier ne peut pas être lue. Enlevez-la, ou mettez-en une autre à sa place.</translation>
    </message>
    <message>
        <source>%1 × %2 pixels, %3 kB of this file, one pixel is %4 mm.</source>
        <translation>%1 × %2 pixels, %3 ko de ce fichier, un pixel fait %4 mm.</translation>
    </message>
    <message>
        <source>Left corner, along</source>
        <translation>Coin gauche, abscisse</translation>
    </message>
    <message>
        <source>Top corner over datum</source>
        <translation>Coin haut sur référence</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation>Verrou</translation>
    </message>
    <message>
        <source>A locked photo stays where it is while you draw over it</source>
        <translation>Une photo verrouillée reste en place pendant que vous dessinez par-dessus</translation>
    </message>
    <message>
        <source>Cabin line&apos;s shut-off</source>
        <translation>Vanne conduite cabine</translation>
    </message>
    <message>
        <source>Used for</source>
        <translation>Sert à</translation>
    </message>
    <message>
        <source>supply</source>
        <translation>alimentation</translation>
    </message>
    <message>
        <source>return</source>
        <translation>retour</translation>
    </message>
    <message>
        <source>sensor</source>
        <translation>sonde</translation>
    </message>
    <message>
        <source>spare</source>
        <translation>réserve</translation>
    </message>
    <message>
        <source>drain port</source>
        <translation>piquage de vidange</translation>
    </message>
    <message>
        <source>core-plug opening</source>
        <translation>pastille de dessablage</translation>
    </message>
    <message>
        <source>lower-hose tee</source>
        <translation>té durite inférieure</translation>
    </message>
    <message>
        <source>head or manifold port</source>
        <translation>piquage culasse ou collecteur</translation>
    </message>
    <message>
        <source>cabin heater line</source>
        <translation>chauffage cabine</translation>
    </message>
    <message>
        <source>Direction out of the engine</source>
        <translation>Direction hors du moteur</translation>
    </message>
    <message>
        <source>In plan</source>
        <translation>En plan</translation>
    </message>
    <message>
        <source>0 right, 90 away from the viewer, 180 left, -90 towards the viewer</source>
        <translation>0 droite, 90 à l&apos;opposé de l&apos;observateur, 180 gauche, -90 vers l&apos;observateur</translation>
    </message>
    <message>
        <source>Up by</source>
        <translation>Relevé de</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Feuille</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titre</translation>
    </message>
    <message>
        <source>Second title</source>
        <translation>Second titre</translation>
    </message>
    <message>
        <source>Vehicle or set</source>
        <translation>Véhicule ou groupe</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Client</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Numéro</translation>
    </message>
    <message>
        <source>Revision</source>
        <translation>Révision</translation>
    </message>
    <message>
        <source>Date of issue</source>
        <translation>Date d&apos;émission</translation>
    </message>
    <message>
        <source>Drawn by</source>
        <translation>Dessiné par</translation>
    </message>
    <message>
        <source>Approved by</source>
        <translation>Approuvé par</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Propriétaire</translation>
    </message>
    <message>
        <source>Department</source>
        <translation>Service</translation>
    </message>
    <message>
        <source>Reference</source>
        <translation>Référence</translation>
    </message>
    <message>
        <source>Document type</source>
        <translation>Type de document</translation>
    </message>
    <message>
        <source>Coolant</source>
        <translation>Liquide</translation>
    </message>
    <message>
        <source>Antifreeze</source>
        <translation>Antigel</translation>
    </message>
    <message>
        <source>none, plain water</source>
        <translation>aucun, eau pure</translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation>éthylène glycol</translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation>propylène glycol</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>Antifreeze by volume</source>
        <translation>Antigel en volume</translation>
    </message>
    <message>
        <source>Cap pressure</source>
        <translation>Tarage bouchon</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Eau</translation>
    </message>
    <message>
        <source>Technology</source>
        <translation>Technologie</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Couleur</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Site</translation>
    </message>
    <message>
        <source>Ambient</source>
        <translation>Ambiante</translation>
    </message>
    <message>
        <source>Coldest ambient</source>
        <translation>Ambiante minimale</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Vent</translation>
    </message>
    <message>
        <source>Grade, nose up</source>
        <translation>Pente, avant relevé</translation>
    </message>
    <message>
        <source>Grade, right side up</source>
        <translation>Pente, côté droit relevé</translation>
    </message>
    <message>
        <source>Judged nose up and down to</source>
        <translation>Jugé avant relevé et abaissé à</translation>
    </message>
    <message>
        <source>Judged left and right to</source>
        <translation>Jugé à gauche et à droite à</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Altitude</translation>
    </message>
    <message>
        <source>Filling</source>
        <translation>Remplissage</translation>
    </message>
    <message>
        <source>Full before</source>
        <translation>Plein avant</translation>
    </message>
    <message>
        <source>block; hoses empty</source>
        <translation>bloc&#xa0;; durites vides</translation>
    </message>
    <message>
        <source>nothing; drained</source>
        <translation>rien&#xa0;; vidangé</translation>
    </message>
    <message>
        <source>block and hoses</source>
        <translation>bloc et durites</translation>
    </message>
    <message>
        <source>block, partly drained</source>
        <translation>bloc, en partie vidangé</translation>
    </message>
    <message>
        <source>Block and hoses: hoses and heater are filled before they are connected</source>
        <translation>Bloc et durites&#xa0;: durites et réchauffeur sont remplis avant raccordement</translation>
    </message>
    <message>
        <source>Filled</source>
        <translation>Rempli</translation>
    </message>
    <message>
        <source>at the filler</source>
        <translation>par l&apos;orifice</translation>
    </message>
    <message>
        <source>under vacuum</source>
        <translation>sous vide</translation>
    </message>
    <message>
        <source>from below</source>
        <translation>par le bas</translation>
    </message>
    <message>
        <source>Air in each pre-filled hose</source>
        <translation>Air par durite préremplie</translation>
    </message>
    <message>
        <source>Gets in where the hose is pushed on. Counts only for hoses filled before they are connected; empty: none.</source>
        <translation>Entre quand la durite est enfilée. Ne compte que pour des durites remplies avant raccordement&#xa0;; vide&#xa0;: aucun.</translation>
    </message>
    <message>
        <source>Coolant let out of the block</source>
        <translation>Liquide retiré du bloc</translation>
    </message>
    <message>
        <source>Before the new hoses are connected. Counts only for a block that is partly drained; empty: down to the top of the lower port.</source>
        <translation>Avant de raccorder les nouvelles durites. Ne compte que pour un bloc en partie vidangé&#xa0;; vide&#xa0;: jusqu&apos;en haut du piquage inférieur.</translation>
    </message>
    <message>
        <source>Coolant short by</source>
        <translation>Liquide manquant</translation>
    </message>
    <message>
        <source>Head of the engine&apos;s pump</source>
        <translation>Charge de la pompe moteur</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unités</translation>
    </message>
    <message>
        <source>mm and °C</source>
        <translation>mm et °C</translation>
    </message>
    <message>
        <source>inch and °F</source>
        <translation>pouces et °F</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notes</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Numéro de série</translation>
    </message>
    <message>
        <source>Its serial number</source>
        <translation>Son numéro de série</translation>
    </message>
    <message>
        <source>Changed in it</source>
        <translation>Ce qui y change</translation>
    </message>
    <message>
        <source>Remembered for the next new drawing</source>
        <translation>Retenu pour le prochain dessin</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FormView</name>
    <message>
        <source>Change %1</source>
        <translation>Changer&#xa0;: %1</translation>
    </message>
    <message>
        <source>Change notes</source>
        <translation>Changer les notes</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>non saisi</translation>
    </message>
    <message>
        <source>Where this comes from</source>
        <translation>D&apos;où cela vient</translation>
    </message>
    <message>
        <source>Source of %1</source>
        <translation>Source&#xa0;: %1</translation>
    </message>
    <message>
        <source>Change source of %1</source>
        <translation>Changer la source&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::GradeStrip</name>
    <message>
        <source>Grade lengthways, percent, nose-up to the right</source>
        <translation>Pente en long, pour cent, avant relevé vers la droite</translation>
    </message>
    <message>
        <source>Park the vehicle on a grade: left is nose-down, right is nose-up.
The band is where the job is sound, the thick line is what it is judged over.
Double-click for level.</source>
        <translation>Garez le véhicule en pente&#xa0;: à gauche avant abaissé, à droite avant relevé.
La bande montre où l&apos;installation est sans défaut, le trait épais ce sur quoi elle est jugée.
Double-clic&#xa0;: à plat.</translation>
    </message>
    <message>
        <source>Grade across, percent, right side up to the right</source>
        <translation>Pente en travers, pour cent, côté droit relevé vers la droite</translation>
    </message>
    <message>
        <source>Left is left side up, right is right side up. Double-click for level.</source>
        <translation>À gauche, côté gauche relevé&#xa0;; à droite, côté droit relevé. Double-clic&#xa0;: à plat.</translation>
    </message>
    <message>
        <source>Back to level</source>
        <translation>Remettre à plat</translation>
    </message>
    <message>
        <source>Stand the vehicle on the level again</source>
        <translation>Remettre le véhicule à plat</translation>
    </message>
    <message>
        <source>Parked</source>
        <translation>Garé</translation>
    </message>
    <message>
        <source>across</source>
        <translation>en travers</translation>
    </message>
    <message>
        <source>%1 nose-up</source>
        <translation>%1 avant relevé</translation>
    </message>
    <message>
        <source>%1 nose-down</source>
        <translation>%1 avant abaissé</translation>
    </message>
    <message>
        <source>%1 right side up</source>
        <translation>%1 côté droit relevé</translation>
    </message>
    <message>
        <source>%1 left side up</source>
        <translation>%1 côté gauche relevé</translation>
    </message>
    <message>
        <source>on the level</source>
        <translation>à plat</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::ProfilePanel</name>
    <message>
        <source>The profile appears when a hose is drawn.</source>
        <translation>Le profil apparaît quand une durite est tracée.</translation>
    </message>
    <message>
        <source>Supply hose</source>
        <translation>Durite d&apos;alimentation</translation>
    </message>
    <message>
        <source>Return hose</source>
        <translation>Durite de retour</translation>
    </message>
    <message>
        <source>cold minimum</source>
        <translation>mini à froid</translation>
    </message>
    <message>
        <source>%1 along, crown %2, bottom %3</source>
        <translation>abscisse %1, dessus %2, fond %3</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Ajuster</translation>
    </message>
    <message>
        <source>%1×</source>
        <translation>%1×</translation>
    </message>
    <message>
        <source>How many times larger heights are drawn than lengths</source>
        <translation>Combien de fois les hauteurs sont dessinées plus grandes que les longueurs</translation>
    </message>
    <message>
        <source>Draw heights larger than lengths, so that a small hump is seen</source>
        <translation>Dessiner les hauteurs plus grandes que les longueurs, pour voir une petite bosse</translation>
    </message>
    <message>
        <source>Heights in sight</source>
        <translation>Hauteurs en vue</translation>
    </message>
    <message>
        <source>Run profile</source>
        <translation>Profil</translation>
    </message>
    <message>
        <source>Height along the hoses, seen from where the coolant comes from</source>
        <translation>Hauteur le long des durites, vue d&apos;où vient le liquide</translation>
    </message>
    <message>
        <source>Heights to the scale of the lengths</source>
        <translation>Hauteurs à l&apos;échelle des longueurs</translation>
    </message>
    <message>
        <source>Heights %1 times the lengths</source>
        <translation>Hauteurs %1 fois les longueurs</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::QuantityEdit</name>
    <message>
        <source>not entered</source>
        <translation>non saisi</translation>
    </message>
    <message>
        <source>Pick a usual size</source>
        <translation>Choisir une taille usuelle</translation>
    </message>
    <message>
        <source>This number is too large.</source>
        <translation>Ce nombre est trop grand.</translation>
    </message>
    <message>
        <source>Not under %1.</source>
        <translation>Pas moins de %1.</translation>
    </message>
    <message>
        <source>Not over %1.</source>
        <translation>Pas plus de %1.</translation>
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
        <translation>reste %1</translation>
    </message>
    <message>
        <source>Hose, bore %1</source>
        <translation>Durite, diam. int. %1</translation>
    </message>
    <message>
        <source>Hose, bore not entered</source>
        <translation>Durite, diam. int. non saisi</translation>
    </message>
    <message>
        <source>%1: %2 is longer than the longest roll: %3.</source>
        <translation>%1&#xa0;: %2 est plus long que le plus long rouleau&#xa0;: %3.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: not planned.</source>
        <translation>%1&#xa0;: non planifié.</translation>
    </message>
    <message>
        <source>%1: %2 off %3 of rolls; %4 left over. </source>
        <translation>%1&#xa0;: %2 pris sur %3 de rouleaux&#xa0;; reste %4. </translation>
    </message>
    <message>
        <source>No plan needs less hose.</source>
        <translation>Aucun plan ne demande moins de durite.</translation>
    </message>
    <message>
        <source>A good plan; none needs less than %1.</source>
        <translation>Un bon plan&#xa0;; aucun ne demande moins de %1.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>non saisi</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Description</source>
        <translation>Désignation</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Quantité</translation>
    </message>
    <message>
        <source>List price</source>
        <translation>Prix tarif</translation>
    </message>
    <message>
        <source>At list</source>
        <translation>Au tarif</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Prix</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Montant</translation>
    </message>
    <message>
        <source>; first %1 h, each further %2 h</source>
        <translation>; premier %1 h, chaque suivant %2 h</translation>
    </message>
    <message>
        <source>; own estimate</source>
        <translation>; estimation propre</translation>
    </message>
    <message>
        <source>no rate</source>
        <translation>sans taux</translation>
    </message>
    <message>
        <source>Materials at list price</source>
        <translation>Matériaux au prix tarif</translation>
    </message>
    <message>
        <source>Mark-up of %1, line by line</source>
        <translation>Majoration de %1, ligne par ligne</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Matériaux</translation>
    </message>
    <message>
        <source>Labour</source>
        <translation>Main-d&apos;œuvre</translation>
    </message>
    <message>
        <source>Travel, consumables, disposal</source>
        <translation>Déplacement, consommables, élimination</translation>
    </message>
    <message>
        <source>Subtotal</source>
        <translation>Sous-total</translation>
    </message>
    <message>
        <source>Tax, %1</source>
        <translation>Taxe, %1</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>Total of what is priced, incomplete</source>
        <translation>Total de ce qui a un prix, incomplet</translation>
    </message>
    <message>
        <source>power not entered</source>
        <translation>puissance non saisie</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Autre</translation>
    </message>
    <message>
        <source>Price list: %1%2. Each line is rounded half away from zero before lines are added.</source>
        <translation>Liste de prix&#xa0;: %1%2. Chaque ligne est arrondie, la moitié en s&apos;éloignant de zéro, avant l&apos;addition des lignes.</translation>
    </message>
    <message>
        <source>none loaded</source>
        <translation>aucune chargée</translation>
    </message>
    <message>
        <source>, of %1</source>
        <translation>, de %1</translation>
    </message>
    <message>
        <source>This estimate holds for %1 days from its date.</source>
        <translation>Ce devis est valable %1 jours à partir de sa date.</translation>
    </message>
    <message>
        <source>Not included</source>
        <translation>Non compris</translation>
    </message>
    <message>
        <source>Not in the total</source>
        <translation>Hors total</translation>
    </message>
    <message>
        <source>Other heaters, the rest of the job the same</source>
        <translation>Autres réchauffeurs, le reste du travail inchangé</translation>
    </message>
    <message>
        <source>Mark-up</source>
        <translation>Majoration</translation>
    </message>
    <message>
        <source>Total with tax</source>
        <translation>Total taxe comprise</translation>
    </message>
    <message>
        <source>As drawn</source>
        <translation>Comme dessiné</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>▲ %1: %2</source>
        <translation>▲ %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Numéro</translation>
    </message>
    <message>
        <source>Revision</source>
        <translation>Révision</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Dessin</translation>
    </message>
    <message>
        <source>Parts list</source>
        <translation>Liste des pièces</translation>
    </message>
    <message>
        <source>Estimate</source>
        <translation>Devis</translation>
    </message>
    <message>
        <source>Estimate, internal</source>
        <translation>Devis, interne</translation>
    </message>
    <message>
        <source>Siphonwright. The figures are estimates; the heater&apos;s and the engine&apos;s own manuals rule over them.</source>
        <translation>Siphonwright. Les valeurs sont des estimations&#xa0;; les manuels du réchauffeur et du moteur l&apos;emportent.</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Page %1 sur %2</translation>
    </message>
    <message>
        <source>For one vehicle</source>
        <translation>Pour un véhicule</translation>
    </message>
    <message>
        <source>For %1 identical vehicles</source>
        <translation>Pour %1 véhicules identiques</translation>
    </message>
    <message>
        <source>%1: the pages could not be drawn.</source>
        <translation>%1&#xa0;: les pages n&apos;ont pas pu être dessinées.</translation>
    </message>
    <message>
        <source>not priced</source>
        <translation>sans prix</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: %2.</source>
        <translation>«&#xa0;%1&#xa0;»&#xa0;: %2.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not from %2 to %3.</source>
        <translation>«&#xa0;%1&#xa0;» n&apos;est pas de %2 à %3.</translation>
    </message>
    <message>
        <source>On one</source>
        <translation>Par unité</translation>
    </message>
    <message>
        <source>On all %1</source>
        <translation>Pour les %1</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Where used</source>
        <translation>Où utilisé</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Remarques</translation>
    </message>
    <message>
        <source>Nothing is drawn that takes parts.</source>
        <translation>Rien de ce qui est dessiné ne demande de pièces.</translation>
    </message>
    <message>
        <source>Hose cuts</source>
        <translation>Coupes de durite</translation>
    </message>
    <message>
        <source>Hose cuts, all %1 vehicles</source>
        <translation>Coupes de durite, les %1 véhicules</translation>
    </message>
    <message>
        <source>Cut lengths with %1 of allowance each. Measure on the vehicle before you cut.</source>
        <translation>Longueurs de coupe avec %1 de surlongueur chacune. Mesurez sur le véhicule avant de couper.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>Check sizes, threads and materials against the heater&apos;s and the engine&apos;s manuals before you order. Hose, clamps and sealant have to be fit for hot coolant under pressure.</source>
        <translation>Vérifiez tailles, filetages et matières dans les manuels du réchauffeur et du moteur avant de commander. Durite, colliers et pâte à joint doivent convenir au liquide de refroidissement chaud sous pression.</translation>
    </message>
    <message>
        <source>Antifreeze is poisonous: catch it and dispose of it properly. Mix with distilled or deionised water only.</source>
        <translation>L&apos;antigel est toxique&#xa0;: recueillez-le et éliminez-le dans les règles. Mélangez seulement avec de l&apos;eau distillée ou déminéralisée.</translation>
    </message>
    <message>
        <source>Work by a qualified technician; power locked out, wheels chocked, cap opened only cold.</source>
        <translation>Travail par un technicien qualifié&#xa0;; alimentation consignée, roues calées, bouchon ouvert seulement à froid.</translation>
    </message>
    <message>
        <source>Grounded supply by the local electrical code, connected by a licensed electrician.</source>
        <translation>Alimentation mise à la terre selon les règles électriques locales, raccordée par un électricien agréé.</translation>
    </message>
    <message>
        <source>Old coolant is poisonous and is disposed of properly.</source>
        <translation>L&apos;ancien liquide est toxique et s&apos;élimine dans les règles.</translation>
    </message>
    <message>
        <source>An estimate from the drawing as it stands: what is found on the vehicle may change it.</source>
        <translation>Devis d&apos;après le dessin tel qu&apos;il est&#xa0;: ce qui se découvre sur le véhicule peut le changer.</translation>
    </message>
    <message>
        <source>To fill in</source>
        <translation>À remplir</translation>
    </message>
    <message>
        <source>Unit or vehicle</source>
        <translation>Groupe ou véhicule</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Moteur</translation>
    </message>
    <message>
        <source>%1, serial number</source>
        <translation>%1, numéro de série</translation>
    </message>
    <message>
        <source>Rev.</source>
        <translation>Rév.</translation>
    </message>
    <message>
        <source>What was changed</source>
        <translation>Ce qui a changé</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>Fitted by, date</source>
        <translation>Monté par, date</translation>
    </message>
    <message>
        <source>Checked by, date</source>
        <translation>Contrôlé par, date</translation>
    </message>
    <message>
        <source>Handed over to, date</source>
        <translation>Remis à, date</translation>
    </message>
    <message>
        <source>Tag to cut out and tie to the switch</source>
        <translation>Étiquette à découper et à attacher à l&apos;interrupteur</translation>
    </message>
    <message>
        <source>Valves open before turning on</source>
        <translation>Vannes ouvertes avant la mise en marche</translation>
    </message>
    <message>
        <source>Coolant in the heater before turning on. Heater off before a valve is closed.</source>
        <translation>Liquide dans le réchauffeur avant la mise en marche. Réchauffeur arrêté avant de fermer une vanne.</translation>
    </message>
    <message>
        <source>What the figures rest on, with the range in which each is taken to lie. They are estimates; what was measured replaces them.</source>
        <translation>Ce sur quoi reposent les chiffres, avec la plage supposée pour chacun. Ce sont des estimations ; ce qui est mesuré les remplace.</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>Supposé</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Plage</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>For this drawing; no reason given</source>
        <translation>Pour ce dessin ; sans raison indiquée</translation>
    </message>
    <message>
        <source>For this drawing: %1</source>
        <translation>Pour ce dessin : %1</translation>
    </message>
    <message>
        <source>%1, inlet</source>
        <translation>%1, entrée</translation>
    </message>
    <message>
        <source>%1, outlet</source>
        <translation>%1, sortie</translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation>rien pour l&apos;instant</translation>
    </message>
    <message>
        <source>%1%2: bore %3, wall %4</source>
        <translation>%1%2 : diamètre intérieur %3, paroi %4</translation>
    </message>
    <message>
        <source>A: %1, %2 pushed on. B: %3, %4 pushed on.</source>
        <translation>A : %1, %2 emmanché. B : %3, %4 emmanché.</translation>
    </message>
    <message>
        <source>Ports and hose ends</source>
        <translation>Piquages et embouts</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Filetage</translation>
    </message>
    <message>
        <source>Screwed in</source>
        <translation>Vissé</translation>
    </message>
    <message>
        <source>Hose end</source>
        <translation>Embout</translation>
    </message>
    <message>
        <source>Sealant</source>
        <translation>Étanchéité</translation>
    </message>
    <message>
        <source>none counted</source>
        <translation>aucun compté</translation>
    </message>
    <message>
        <source>on the thread [%1]</source>
        <translation>sur le filetage [%1]</translation>
    </message>
    <message>
        <source>in line along the engine</source>
        <translation>aligné le long du moteur</translation>
    </message>
    <message>
        <source>%1 towards the front</source>
        <translation>%1 vers l&apos;avant</translation>
    </message>
    <message>
        <source>%1 towards the rear</source>
        <translation>%1 vers l&apos;arrière</translation>
    </message>
    <message>
        <source>%1 towards the engine&apos;s left side</source>
        <translation>%1 vers le côté gauche du moteur</translation>
    </message>
    <message>
        <source>%1 towards the engine&apos;s right side</source>
        <translation>%1 vers le côté droit du moteur</translation>
    </message>
    <message>
        <source>Top %1 and bottom %2 over the datum</source>
        <translation>Haut à %1 et bas à %2 au-dessus de la référence</translation>
    </message>
    <message>
        <source>; top %1 under the jacket&apos;s lowest point</source>
        <translation>; haut à %1 sous le point le plus bas de la chemise</translation>
    </message>
    <message>
        <source>Its middle from %1: %2; %3.</source>
        <translation>Son milieu depuis %1 : %2 ; %3.</translation>
    </message>
    <message>
        <source>Upright, the arrow on its body pointing up.</source>
        <translation>Vertical, la flèche du corps vers le haut.</translation>
    </message>
    <message>
        <source>Leaning %1 from upright, the arrow on its body pointing up.</source>
        <translation>Incliné de %1 par rapport à la verticale, la flèche du corps vers le haut.</translation>
    </message>
    <message>
        <source>Mounting not entered.</source>
        <translation>Fixation non saisie.</translation>
    </message>
    <message>
        <source>Mounted to the frame.</source>
        <translation>Fixé au châssis.</translation>
    </message>
    <message>
        <source>Mounted to the engine.</source>
        <translation>Fixé au moteur.</translation>
    </message>
    <message>
        <source>Electrical load and coolant</source>
        <translation>Charge électrique et liquide</translation>
    </message>
    <message>
        <source>All heaters %1, current %2, continuous load (125 %) %3.</source>
        <translation>Tous les réchauffeurs %1, courant %2, charge continue (125 %) %3.</translation>
    </message>
    <message>
        <source>New hoses and chambers take %1 of coolant; in it now: antifreeze %2.</source>
        <translation>Durites et chambres neuves prennent %1 de liquide ; il contient : antigel %2.</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Hang the heater</source>
        <translation>Accrocher le réchauffeur</translation>
    </message>
    <message>
        <source>clip %1</source>
        <translation>collier %1</translation>
    </message>
    <message>
        <source>bend %1 to %2, %3, R %4</source>
        <translation>coude %1 à %2, %3, R %4</translation>
    </message>
    <message>
        <source>Cutting and fitting</source>
        <translation>Coupe et montage</translation>
    </message>
    <message>
        <source>Assumptions and sources</source>
        <translation>Hypothèses et sources</translation>
    </message>
    <message>
        <source>three phases</source>
        <translation>trois phases</translation>
    </message>
    <message>
        <source>one phase</source>
        <translation>une phase</translation>
    </message>
    <message>
        <source>Power %1, voltage %2, %3; its thermostat on at %4, off at %5. Serial number %6.</source>
        <translation>Puissance %1, tension %2, %3 ; son thermostat enclenche à %4, coupe à %5. Numéro de série %6.</translation>
    </message>
    <message>
        <source>parts, cuts</source>
        <translation>pièces, coupes</translation>
    </message>
    <message>
        <source>prices</source>
        <translation>prix</translation>
    </message>
    <message>
        <source>hoses with clips and bends, run profiles, ports, threads, heaters, electrical load, coolant, tag</source>
        <translation>durites avec colliers et coudes, profils, piquages, filetages, réchauffeurs, charge électrique, liquide, étiquette</translation>
    </message>
    <message>
        <source>what the figures rest on</source>
        <translation>sur quoi reposent les chiffres</translation>
    </message>
    <message>
        <source>Hoses laid flat</source>
        <translation>Durites mises à plat</translation>
    </message>
    <message>
        <source>Page %1, sheet %2/%3</source>
        <translation>Page %1, feuille %2/%3</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>pouces</translation>
    </message>
    <message>
        <source>Distances along a hose are from its cut end at A, in %1; R is the radius of a bend&apos;s middle; over a straight its slope from A to B, rise over run. Pieces reach to the stops of the parts between them, by the lengths entered for these. Under each hose its run: height of the top (line) and bottom (dashes) of its bore over the datum. Numbers in brackets are items of the parts list. Measure on the vehicle, parts in hand, before you cut.</source>
        <translation>Les distances le long d&apos;une durite partent de son bout coupé en A, en %1 ; R est le rayon de l&apos;axe du coude ; au-dessus d&apos;une partie droite, sa pente de A vers B, hauteur sur longueur. Les morceaux vont jusqu&apos;aux butées des pièces placées entre eux, d&apos;après les longueurs saisies pour celles-ci. Sous chaque durite son parcours : hauteur du haut (trait) et du bas (tirets) de l&apos;intérieur au-dessus de la référence. Les nombres entre crochets sont ceux de la liste des pièces. Mesurez sur le véhicule, pièces en main, avant de couper.</translation>
    </message>
    <message>
        <source>Cut %1.</source>
        <translation>Couper %1.</translation>
    </message>
    <message>
        <source>Cut %1, in pieces from A to B: %2.</source>
        <translation>Couper %1, en morceaux de A vers B : %2.</translation>
    </message>
    <message>
        <source>passage %1, %2 on</source>
        <translation>passage %1, %2 emmanché</translation>
    </message>
    <message>
        <source>in line with it across the engine</source>
        <translation>aligné avec lui en travers du moteur</translation>
    </message>
    <message>
        <source>Port or nozzle at B is %1 higher than at A.</source>
        <translation>Le raccord en B est %1 plus haut qu&apos;en A.</translation>
    </message>
    <message>
        <source>Port or nozzle at B is %1 lower than at A.</source>
        <translation>Le raccord en B est %1 plus bas qu&apos;en A.</translation>
    </message>
    <message>
        <source>%1, cut %2 to %3</source>
        <translation>%1, coupe de %2 à %3</translation>
    </message>
    <message>
        <source>Run profile: hose&apos;s bore over the datum</source>
        <translation>Profil : intérieur de la durite sur la référence</translation>
    </message>
    <message>
        <source>Distances are from the cut end at A, in %1; R is the radius of a bend&apos;s middle; over a straight its slope from A to B. Pieces reach to the stops of the parts between them, by the lengths entered for these. In the run profile the line is the top of the bore, the dashes its bottom. [3] is item 3 of the parts list. Measure on the vehicle, parts in hand, before you cut.</source>
        <translation>Les distances partent du bout coupé en A, en %1 ; R est le rayon au milieu d&apos;un coude ; au-dessus d&apos;une partie droite, sa pente de A vers B. Les morceaux vont jusqu&apos;aux butées des pièces placées entre eux, d&apos;après les longueurs saisies pour celles-ci. Dans le profil, le trait est le haut de l&apos;alésage, les tirets son bas. [3] est le numéro 3 de la liste des pièces. Mesurez sur le véhicule, pièces en main, avant de couper.</translation>
    </message>
    <message>
        <source>%1 of it is allowance, left at B and trimmed there.</source>
        <translation>Dont %1 de marge, laissée en B et recoupée là.</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::CutBars</name>
    <message>
        <source>Cut plan</source>
        <translation>Plan de coupe</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::EditTable</name>
    <message>
        <source>%1
Double-click or press F2 to type.</source>
        <translation>%1
Double-cliquez ou appuyez sur F2 pour taper.</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::EstimatePage</name>
    <message>
        <source>Heater</source>
        <translation>Réchauffeur</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Puissance</translation>
    </message>
    <message>
        <source>Heater&apos;s list price</source>
        <translation>Prix tarif du réchauffeur</translation>
    </message>
    <message>
        <source>Materials at list price</source>
        <translation>Matériaux au prix tarif</translation>
    </message>
    <message>
        <source>Mark-up</source>
        <translation>Majoration</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Matériaux</translation>
    </message>
    <message>
        <source>Labour</source>
        <translation>Main-d&apos;œuvre</translation>
    </message>
    <message>
        <source>Travel, consumables, disposal</source>
        <translation>Déplacement, consommables, élimination</translation>
    </message>
    <message>
        <source>Subtotal</source>
        <translation>Sous-total</translation>
    </message>
    <message>
        <source>Tax</source>
        <translation>Taxe</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>As drawn</source>
        <translation>Comme dessiné</translation>
    </message>
    <message>
        <source>&amp;Remove it</source>
        <translation>E&amp;nlever</translation>
    </message>
    <message>
        <source>Sums</source>
        <translation>Sommes</translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation>Ce qui manque</translation>
    </message>
    <message>
        <source>&amp;Another heater beside it</source>
        <translation>Un &amp;autre réchauffeur à côté</translation>
    </message>
    <message>
        <source>Each line is rounded before it is added, so the printed lines add up to the printed total. The figures are estimates: they are as good as the drawing, the prices and the hours.</source>
        <translation>Chaque ligne est arrondie avant d&apos;être ajoutée, la somme des lignes imprimées donne donc le total imprimé. Les valeurs sont des estimations&#xa0;: elles valent ce que valent le dessin, les prix et les heures.</translation>
    </message>
    <message>
        <source>none drawn</source>
        <translation>aucun dessiné</translation>
    </message>
    <message>
        <source>%1 heaters</source>
        <translation>%1 réchauffeurs</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>non saisi</translation>
    </message>
    <message>
        <source>Other heater %1</source>
        <translation>Autre réchauffeur %1</translation>
    </message>
    <message>
        <source>Total %1</source>
        <translation>Total %1</translation>
    </message>
    <message>
        <source>Incomplete: %1</source>
        <translation>Incomplet&#xa0;: %1</translation>
    </message>
    <message>
        <source>▲ Other heater %1: %2</source>
        <translation>▲ Autre réchauffeur %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>At most 200 characters.</source>
        <translation>200 caractères au plus.</translation>
    </message>
    <message>
        <source>A power is from 0 to 1000 kW.</source>
        <translation>Une puissance va de 0 à 1000 kW.</translation>
    </message>
    <message>
        <source>Change the other heater</source>
        <translation>Changer l&apos;autre réchauffeur</translation>
    </message>
    <message>
        <source>Add another heater beside it</source>
        <translation>Ajouter un autre réchauffeur à côté</translation>
    </message>
    <message>
        <source>Other heater</source>
        <translation>Autre réchauffeur</translation>
    </message>
    <message>
        <source>Remove the other heater</source>
        <translation>Enlever l&apos;autre réchauffeur</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::PaperWindow</name>
    <message>
        <source>Parts and estimate</source>
        <translation>Pièces et devis</translation>
    </message>
    <message>
        <source>Parts and &amp;cuts</source>
        <translation>Pièces et &amp;coupes</translation>
    </message>
    <message>
        <source>P&amp;rices</source>
        <translation>P&amp;rix</translation>
    </message>
    <message>
        <source>Wor&amp;k</source>
        <translation>&amp;Tâches</translation>
    </message>
    <message>
        <source>&amp;Estimate</source>
        <translation>&amp;Devis</translation>
    </message>
    <message>
        <source>Document</source>
        <translation>Document</translation>
    </message>
    <message>
        <source>Estimate for the customer</source>
        <translation>Devis pour le client</translation>
    </message>
    <message>
        <source>Print pre&amp;view…</source>
        <translation>Aperçu a&amp;vant impression…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Imprimer…</translation>
    </message>
    <message>
        <source>P&amp;DF…</source>
        <translation>PD&amp;F…</translation>
    </message>
    <message>
        <source>Parts as C&amp;SV…</source>
        <translation>Pièces en C&amp;SV…</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::PartsPage</name>
    <message>
        <source>Parts list</source>
        <translation>Liste des pièces</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Taille</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Quantité</translation>
    </message>
    <message>
        <source>Where used</source>
        <translation>Où utilisé</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Remarques</translation>
    </message>
    <message>
        <source>Hose cuts, all vehicles together</source>
        <translation>Coupes de durite, tous les véhicules ensemble</translation>
    </message>
    <message>
        <source>%1
Click to select it on the drawing.</source>
        <translation>%1
Cliquez pour sélectionner sur le dessin.</translation>
    </message>
    <message>
        <source>Nothing is drawn that takes parts.</source>
        <translation>Rien de ce qui est dessiné ne demande de pièces.</translation>
    </message>
    <message>
        <source>For one vehicle, as drawn. Check it against the heater&apos;s manual before you order.</source>
        <translation>Pour un véhicule, comme dessiné. Vérifiez dans le manuel du réchauffeur avant de commander.</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::PricesPage</name>
    <message>
        <source>Item</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Price key</source>
        <translation>Clé de prix</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Quantité</translation>
    </message>
    <message>
        <source>List price</source>
        <translation>Prix tarif</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Prix</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Montant</translation>
    </message>
    <message>
        <source>Prices of materials</source>
        <translation>Prix des matériaux</translation>
    </message>
    <message>
        <source>&amp;Load a price list…</source>
        <translation>Char&amp;ger une liste de prix…</translation>
    </message>
    <message>
        <source>A CSV file with the columns item, description, unit, price and currency</source>
        <translation>Un fichier CSV avec les colonnes item, description, unit, price et currency</translation>
    </message>
    <message>
        <source>&amp;Write what is not priced…</source>
        <translation>Écrire ce &amp;qui est sans prix…</translation>
    </message>
    <message>
        <source>A price list to be filled in, as CSV</source>
        <translation>Une liste de prix à remplir, en CSV</translation>
    </message>
    <message>
        <source>currency not entered</source>
        <translation>devise non saisie</translation>
    </message>
    <message>
        <source>No price list is loaded</source>
        <translation>Aucune liste de prix n&apos;est chargée</translation>
    </message>
    <message>
        <source>%1; %2. Quantities for %3. The price is the list price with the mark-up.</source>
        <translation>%1&#xa0;; %2. Quantités pour %3. Le prix est le prix tarif avec la majoration.</translation>
    </message>
    <message>
        <source>one vehicle</source>
        <translation>un véhicule</translation>
    </message>
    <message>
        <source>%1 vehicles</source>
        <translation>%1 véhicules</translation>
    </message>
    <message>
        <source>Change the price of %1</source>
        <translation>Changer le prix&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2.</source>
        <translation>%1 ne peut pas être lu&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 was not loaded. %2</source>
        <translation>%1 n&apos;a pas été chargé. %2</translation>
    </message>
    <message>
        <source>Load price list</source>
        <translation>Charger liste de prix</translation>
    </message>
    <message>
        <source>Load a price list</source>
        <translation>Charger une liste de prix</translation>
    </message>
    <message>
        <source>Price lists (*.csv)</source>
        <translation>Listes de prix (*.csv)</translation>
    </message>
    <message>
        <source>Write what is not priced</source>
        <translation>Écrire ce qui est sans prix</translation>
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
        <translation>Taux et sommes</translation>
    </message>
    <message>
        <source>Identical vehicles</source>
        <translation>Véhicules identiques</translation>
    </message>
    <message>
        <source>Mark-up, %</source>
        <translation>Majoration, %</translation>
    </message>
    <message>
        <source>Labour, an hour</source>
        <translation>Main-d&apos;œuvre, l&apos;heure</translation>
    </message>
    <message>
        <source>Travel</source>
        <translation>Déplacement</translation>
    </message>
    <message>
        <source>Consumables, a vehicle</source>
        <translation>Consommables, par véhicule</translation>
    </message>
    <message>
        <source>Coolant disposal, a vehicle</source>
        <translation>Élimination liquide, par véhicule</translation>
    </message>
    <message>
        <source>Tax, %</source>
        <translation>Taxe, %</translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>Sur le papier</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Numéro</translation>
    </message>
    <message>
        <source>Revision</source>
        <translation>Révision</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Valid for, days</source>
        <translation>Validité, jours</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Pour</translation>
    </message>
    <message>
        <source>Not included</source>
        <translation>Non compris</translation>
    </message>
    <message>
        <source>At most 200 characters.</source>
        <translation>200 caractères au plus.</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>Changer&#xa0;: %1</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>non saisi</translation>
    </message>
    <message>
        <source>A number is wanted here.</source>
        <translation>Il faut ici un nombre.</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Devise</translation>
    </message>
    <message>
        <source>USD, CAD, EUR …</source>
        <translation>USD, CAD, EUR …</translation>
    </message>
    <message>
        <source>Its sign</source>
        <translation>Son symbole</translation>
    </message>
    <message>
        <source>At most 5 characters.</source>
        <translation>5 caractères au plus.</translation>
    </message>
    <message>
        <source>Change the currency&apos;s sign</source>
        <translation>Changer le symbole de la devise</translation>
    </message>
    <message>
        <source>none: the code is written</source>
        <translation>aucun&#xa0;: le code est écrit</translation>
    </message>
    <message>
        <source>A currency is three letters, such as USD.</source>
        <translation>Une devise est de trois lettres, comme USD.</translation>
    </message>
    <message>
        <source>%1 has %2 decimals, and amounts are entered with %3. Take them out first.</source>
        <translation>%1 a %2 décimales, et les montants sont saisis avec %3. Enlevez-les d&apos;abord.</translation>
    </message>
    <message>
        <source>Change the currency</source>
        <translation>Changer la devise</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::RollForm</name>
    <message>
        <source>Identical vehicles</source>
        <translation>Véhicules identiques</translation>
    </message>
    <message>
        <source>Allowance on each cut</source>
        <translation>Surlongueur par coupe</translation>
    </message>
    <message>
        <source>Charge whole rolls</source>
        <translation>Compter rouleaux entiers</translation>
    </message>
    <message>
        <source>Hose at the rolls it comes off instead of at its cuts</source>
        <translation>Durite par rouleaux entamés au lieu de ses coupes</translation>
    </message>
    <message>
        <source>Lengths of roll</source>
        <translation>Longueurs de rouleau</translation>
    </message>
    <message>
        <source>lengths it is bought in, set apart by semicolons</source>
        <translation>longueurs d&apos;achat, séparées par des points-virgules</translation>
    </message>
    <message>
        <source>Rolls of bore %1</source>
        <translation>Rouleaux de diamètre %1</translation>
    </message>
    <message>
        <source>Rolls of any bore</source>
        <translation>Rouleaux, tout diamètre</translation>
    </message>
    <message>
        <source>A roll is from 1 mm to 1 km long, and there are at most 20 lengths.</source>
        <translation>Un rouleau mesure de 1 mm à 1 km, et il y a 20 longueurs au plus.</translation>
    </message>
    <message>
        <source>Change lengths of roll</source>
        <translation>Changer les longueurs de rouleau</translation>
    </message>
    <message>
        <source>An allowance is from 0 to 10 m.</source>
        <translation>Une surlongueur va de 0 à 10 m.</translation>
    </message>
    <message>
        <source>Change the allowance on cuts</source>
        <translation>Changer la surlongueur des coupes</translation>
    </message>
    <message>
        <source>At least one vehicle.</source>
        <translation>Au moins un véhicule.</translation>
    </message>
    <message>
        <source>Change the number of vehicles</source>
        <translation>Changer le nombre de véhicules</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::WorkPage</name>
    <message>
        <source>Task</source>
        <translation>Tâche</translation>
    </message>
    <message>
        <source>First vehicle, h</source>
        <translation>Premier véhicule, h</translation>
    </message>
    <message>
        <source>Each further one, h</source>
        <translation>Chaque suivant, h</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Heures</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Montant</translation>
    </message>
    <message>
        <source>Where the hours come from</source>
        <translation>Origine des heures</translation>
    </message>
    <message>
        <source>&amp;Back to the usual hours</source>
        <translation>Revenir aux heures &amp;usuelles</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Travail</translation>
    </message>
    <message>
        <source>The usual hours are our own estimate for what is drawn: put in your own. Electrical work is for a licensed electrician.</source>
        <translation>Les heures usuelles sont notre estimation de ce qui est dessiné&#xa0;: mettez les vôtres. Le travail électrique revient à un électricien agréé.</translation>
    </message>
    <message>
        <source>&amp;Add a task</source>
        <translation>&amp;Ajouter une tâche</translation>
    </message>
    <message>
        <source>Add a task</source>
        <translation>Ajouter une tâche</translation>
    </message>
    <message>
        <source>Own task</source>
        <translation>Tâche propre</translation>
    </message>
    <message>
        <source>▲ labour rate not entered</source>
        <translation>▲ taux horaire non saisi</translation>
    </message>
    <message>
        <source>own task</source>
        <translation>tâche propre</translation>
    </message>
    <message>
        <source>own estimate, not looked at</source>
        <translation>estimation propre, non vérifiée</translation>
    </message>
    <message>
        <source>entered</source>
        <translation>saisi</translation>
    </message>
    <message>
        <source>&amp;Remove the task</source>
        <translation>En&amp;lever la tâche</translation>
    </message>
    <message>
        <source>A task has a name of up to 400 characters.</source>
        <translation>Une tâche a un nom de 400 caractères au plus.</translation>
    </message>
    <message>
        <source>Rename a task</source>
        <translation>Renommer une tâche</translation>
    </message>
    <message>
        <source>Hours are a number such as 1.25.</source>
        <translation>Les heures sont un nombre comme 1,25.</translation>
    </message>
    <message>
        <source>Change the hours of a task</source>
        <translation>Changer les heures d&apos;une tâche</translation>
    </message>
    <message>
        <source>Back to the usual hours</source>
        <translation>Revenir aux heures usuelles</translation>
    </message>
</context>
<context>
    <name>siphonwright::photo</name>
    <message>
        <source>%1 × %2 pixels, %3 megapixels</source>
        <translation>%1 × %2 pixels, %3 mégapixels</translation>
    </message>
    <message>
        <source>Its header is damaged: it does not say how large the picture is.</source>
        <translation>Son en-tête est abîmé&#xa0;: il ne dit pas la taille de l&apos;image.</translation>
    </message>
    <message>
        <source>Its header says %1: nothing can be seen on that.</source>
        <translation>Son en-tête dit %1&#xa0;: on n&apos;y voit rien.</translation>
    </message>
    <message>
        <source>Its header says %1. At most %2 megapixels are read: make it smaller first.</source>
        <translation>Son en-tête dit %1. On lit %2 mégapixels au plus&#xa0;: réduisez-la d&apos;abord.</translation>
    </message>
    <message>
        <source>It is damaged before the picture&apos;s data begin.</source>
        <translation>Elle est abîmée avant le début des données de l&apos;image.</translation>
    </message>
    <message>
        <source>It is cut off: there are %1 bytes, and the picture does not end in them.</source>
        <translation>Elle est tronquée&#xa0;: il y a %1 octets, et l&apos;image n&apos;y finit pas.</translation>
    </message>
    <message>
        <source>It is a progressive JPEG of %1; of those at most %2 megapixels are read.</source>
        <translation>C&apos;est un JPEG progressif de %1&#xa0;; on en lit %2 mégapixels au plus.</translation>
    </message>
    <message>
        <source>It is empty.</source>
        <translation>Elle est vide.</translation>
    </message>
    <message>
        <source>It is larger than %1 MiB.</source>
        <translation>Elle dépasse %1 Mio.</translation>
    </message>
    <message>
        <source>It is not a PNG, JPEG or WebP picture.</source>
        <translation>Ce n&apos;est pas une image PNG, JPEG ou WebP.</translation>
    </message>
    <message>
        <source>WebP is not read here: save it as PNG or JPEG, or install Qt&apos;s image formats.</source>
        <translation>WebP n&apos;est pas lu ici&#xa0;: enregistrez en PNG ou JPEG, ou installez les formats d&apos;image de Qt.</translation>
    </message>
    <message>
        <source>Its picture data are damaged or cut off (%1).</source>
        <translation>Ses données d&apos;image sont abîmées ou tronquées (%1).</translation>
    </message>
    <message>
        <source>It cannot be opened: %1.</source>
        <translation>Elle ne peut pas être ouverte&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The four points are not the corners of a rectangle seen at an angle: three of them lie in one line, or one lies between the others.</source>
        <translation>Les quatre points ne sont pas les coins d&apos;un rectangle vu de biais&#xa0;: trois sont alignés, ou l&apos;un est entre les autres.</translation>
    </message>
    <message>
        <source>The four points do not lie in the picture.</source>
        <translation>Les quatre points ne sont pas dans l&apos;image.</translation>
    </message>
    <message>
        <source>The rectangle is too small in the picture.</source>
        <translation>Le rectangle est trop petit dans l&apos;image.</translation>
    </message>
</context>
<context>
    <name>siphonwright::proposing</name>
    <message>
        <source>not priced</source>
        <translation>sans prix</translation>
    </message>
    <message>
        <source>%1, not priced: %2</source>
        <translation>%1, sans prix&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1.  Bore %2: %3 + %4</source>
        <translation>%1.  Diam. int. %2&#xa0;: %3 + %4</translation>
    </message>
    <message>
        <source>flow not computed</source>
        <translation>débit non calculé</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>▲ Not sound on every grade that is judged</source>
        <translation>▲ Défectueux sur une partie des pentes jugées</translation>
    </message>
    <message>
        <source>Supply hose %1, return hose %2, %3 in all. Clips: %4. A valve at each port.</source>
        <translation>Durite d&apos;alimentation %1, durite de retour %2, %3 en tout. Colliers de maintien&#xa0;: %4. Une vanne à chaque piquage.</translation>
    </message>
    <message>
        <source>What is left:</source>
        <translation>Ce qui reste&#xa0;:</translation>
    </message>
    <message>
        <source>– %1</source>
        <translation>– %1</translation>
    </message>
    <message>
        <source>Findings of advice that stay: %1.</source>
        <translation>Constats de conseil qui restent&#xa0;: %1.</translation>
    </message>
    <message>
        <source>No layout mends: %1</source>
        <translation>Aucun tracé n&apos;y remédie&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::proposing::LayoutChoices</name>
    <message>
        <source>&amp;Draw area…</source>
        <translation>Tracer la &amp;zone…</translation>
    </message>
    <message>
        <source>Heater to propose for</source>
        <translation>Réchauffeur de la proposition</translation>
    </message>
    <message>
        <source>Where the heater may hang</source>
        <translation>Où le réchauffeur peut être fixé</translation>
    </message>
    <message>
        <source>Where it is drawn</source>
        <translation>Là où il est dessiné</translation>
    </message>
    <message>
        <source>Anywhere under the engine</source>
        <translation>Partout sous le moteur</translation>
    </message>
    <message>
        <source>In an area I draw</source>
        <translation>Dans une zone que je trace</translation>
    </message>
    <message>
        <source>Drag a rectangle on the elevation, or click two opposite corners</source>
        <translation>Tracez un rectangle sur l&apos;élévation, ou cliquez deux coins opposés</translation>
    </message>
    <message>
        <source>What comes first</source>
        <translation>Ce qui passe d&apos;abord</translation>
    </message>
    <message>
        <source>Best of all three</source>
        <translation>Meilleur des trois</translation>
    </message>
    <message>
        <source>Shortest hoses</source>
        <translation>Durites courtes</translation>
    </message>
    <message>
        <source>Most flow</source>
        <translation>Débit maximal</translation>
    </message>
    <message>
        <source>Lowest price</source>
        <translation>Prix minimal</translation>
    </message>
    <message>
        <source>Length of hose, price by bore and flow weighed in one figure</source>
        <translation>Longueur de durite, prix par diamètre et débit pesés en une seule valeur</translation>
    </message>
    <message>
        <source>Heater</source>
        <translation>Réchauffeur</translation>
    </message>
    <message>
        <source>It hangs</source>
        <translation>Place</translation>
    </message>
    <message>
        <source>Bores, mm</source>
        <translation>Diam., mm</translation>
    </message>
    <message>
        <source>First</source>
        <translation>D&apos;abord</translation>
    </message>
    <message>
        <source>Place a heater first.</source>
        <translation>Placez d&apos;abord un réchauffeur.</translation>
    </message>
    <message>
        <source>Draw the area in which the heater may hang.</source>
        <translation>Tracez la zone où le réchauffeur peut être fixé.</translation>
    </message>
    <message>
        <source>Choose at least one bore of hose.</source>
        <translation>Choisissez au moins un diamètre de durite.</translation>
    </message>
    <message>
        <source>Not drawn yet</source>
        <translation>Pas encore tracé</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>&amp;Draw anew…</source>
        <translation>Tracer à n&amp;euf…</translation>
    </message>
    <message>
        <source>Bores, in</source>
        <translation>Diam., in</translation>
    </message>
    <message>
        <source>Hose of this bore may be used</source>
        <translation>Une durite de ce diamètre peut être utilisée</translation>
    </message>
    <message>
        <source>Hose of bore %1</source>
        <translation>Durite de diamètre %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::proposing::LayoutsPanel</name>
    <message>
        <source>&amp;Propose</source>
        <translation>&amp;Proposer</translation>
    </message>
    <message>
        <source>S&amp;top</source>
        <translation>A&amp;rrêter</translation>
    </message>
    <message>
        <source>T&amp;ake this layout</source>
        <translation>Prendre ce &amp;tracé</translation>
    </message>
    <message>
        <source>Stopped. The drawing is as it was.</source>
        <translation>Arrêté. Le dessin est inchangé.</translation>
    </message>
    <message>
        <source>Look for layouts that break no rule</source>
        <translation>Chercher des tracés qui n&apos;enfreignent aucune règle</translation>
    </message>
    <message>
        <source>Stop looking (Escape)</source>
        <translation>Arrêter la recherche (Échap)</translation>
    </message>
    <message>
        <source>Search for layouts</source>
        <translation>Chercher des tracés</translation>
    </message>
    <message>
        <source>Proposed layouts</source>
        <translation>Tracés proposés</translation>
    </message>
    <message>
        <source>What it changes and what is left</source>
        <translation>Ce qu&apos;il change et ce qui reste</translation>
    </message>
    <message>
        <source>Looking for layouts: %1 of %2 places tried, %3 found…</source>
        <translation>Recherche de tracés&#xa0;: %1 places sur %2 essayées, %3 trouvés…</translation>
    </message>
    <message>
        <source>Press Enter to read the rule</source>
        <translation>Appuyez sur Entrée pour lire la règle</translation>
    </message>
    <message>
        <source>The drawing was changed meanwhile. Propose again.</source>
        <translation>Le dessin a changé entre-temps. Proposez de nouveau.</translation>
    </message>
    <message>
        <source>The choices were changed meanwhile. Propose again.</source>
        <translation>Les choix ont changé entre-temps. Proposez de nouveau.</translation>
    </message>
    <message>
        <source>Take a layout: %1</source>
        <translation>Prendre un tracé&#xa0;: %1</translation>
    </message>
    <message>
        <source>Looking for layouts…</source>
        <translation>Recherche de tracés…</translation>
    </message>
    <message>
        <source>Proposes heater place, hoses, bore, valves and clips that break no rule, on every grade that is judged.</source>
        <translation>Propose place du réchauffeur, durites, diamètre, vannes et colliers sans enfreindre de règle, sur chaque pente jugée.</translation>
    </message>
    <message>
        <source>Nothing can be proposed: %1.</source>
        <translation>Rien ne peut être proposé&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Layout %1 was taken; one undo takes it back. Propose again for the drawing as it is now.</source>
        <translation>Tracé %1 pris&#xa0;; une annulation le reprend. Proposez de nouveau pour le dessin actuel.</translation>
    </message>
    <message>
        <source>▲ This list is for an earlier drawing. Propose again to take one.</source>
        <translation>▲ Cette liste est celle d&apos;un dessin antérieur. Proposez de nouveau pour en prendre un.</translation>
    </message>
    <message>
        <source>▲ This list is for other choices. Propose again to take one.</source>
        <translation>▲ Cette liste est celle d&apos;autres choix. Proposez de nouveau pour en prendre un.</translation>
    </message>
    <message>
        <source>Every layout breaks a rule. In the way of those that came farthest (Enter opens the rule):</source>
        <translation>Chaque tracé enfreint une règle. Obstacles de ceux qui sont allés le plus loin (Entrée ouvre la règle)&#xa0;:</translation>
    </message>
    <message>
        <source>One layout breaks no rule.</source>
        <translation>Un tracé n&apos;enfreint aucune règle.</translation>
    </message>
    <message>
        <source>%1 layouts break no rule, the best first.</source>
        <translation>%1 tracés n&apos;enfreignent aucune règle, le meilleur d&apos;abord.</translation>
    </message>
    <message>
        <source>&amp;Propose again</source>
        <translation>&amp;Proposer à neuf</translation>
    </message>
    <message>
        <source>Draw it in place of the hoses there are (Enter). One undo takes it back.</source>
        <translation>Le dessiner à la place des durites présentes (Entrée). Une annulation le reprend.</translation>
    </message>
    <message>
        <source>The list has to be renewed first</source>
        <translation>La liste doit d&apos;abord être renouvelée</translation>
    </message>
    <message>
        <source>▲ No layout holds on every grade that is judged. These break no rule on the level:</source>
        <translation>▲ Aucun tracé ne tient sur toutes les pentes jugées. Ceux-ci n&apos;enfreignent aucune règle à plat :</translation>
    </message>
</context>
<context>
    <name>siphonwright::rules</name>
    <message>
        <source>nothing moves</source>
        <translation>rien ne bouge</translation>
    </message>
    <message>
        <source>element bare</source>
        <translation>élément découvert</translation>
    </message>
    <message>
        <source>a bleed at the crest</source>
        <translation>un purgeur à la crête</translation>
    </message>
    <message>
        <source>pushed, but not out</source>
        <translation>poussé, mais pas sorti</translation>
    </message>
    <message>
        <source>cold minimum</source>
        <translation>mini à froid</translation>
    </message>
    <message>
        <source>Air closes the bore: it takes more head than there is.</source>
        <translation>L&apos;air obstrue la section&#xa0;: il absorbe plus de charge qu&apos;il n&apos;y en a.</translation>
    </message>
    <message>
        <source>No crest, no pocket: warm coolant rises, cold falls.</source>
        <translation>Sans crête, pas de poche&#xa0;: le liquide chaud monte, le froid descend.</translation>
    </message>
    <message>
        <source>A small pocket takes part of the few millimetres.</source>
        <translation>Une petite poche prend une part des quelques millimètres.</translation>
    </message>
    <message>
        <source>All of the head is left for the flow.</source>
        <translation>Toute la charge reste pour le débit.</translation>
    </message>
    <message>
        <source>Air over the coolant: the element burns out.</source>
        <translation>De l&apos;air au-dessus du liquide&#xa0;: l&apos;élément grille.</translation>
    </message>
    <message>
        <source>The chamber is full, the element covered.</source>
        <translation>La chambre est pleine, l&apos;élément couvert.</translation>
    </message>
    <message>
        <source>The engine&apos;s pump pushes the air and does not move it.</source>
        <translation>La pompe du moteur pousse l&apos;air sans le déplacer.</translation>
    </message>
    <message>
        <source>A bleed lets it out.</source>
        <translation>Un purgeur le laisse sortir.</translation>
    </message>
    <message>
        <source>In the cold the coolant shrinks under its minimum.</source>
        <translation>Au froid, le liquide se contracte sous son minimum.</translation>
    </message>
    <message>
        <source>Filled so that enough is left in the cold.</source>
        <translation>Rempli de sorte qu&apos;il en reste assez au froid.</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>fermé</translation>
    </message>
    <message>
        <source>radiator</source>
        <translation>radiateur</translation>
    </message>
    <message>
        <source>thermostat</source>
        <translation>thermostat</translation>
    </message>
    <message>
        <source>cabin heater</source>
        <translation>chauffage cabine</translation>
    </message>
    <message>
        <source>open</source>
        <translation>ouvert</translation>
    </message>
    <message>
        <source>check valve</source>
        <translation>clapet anti-retour</translation>
    </message>
    <message>
        <source>A hose ends in the open.</source>
        <translation>Une durite finit dans le vide.</translation>
    </message>
    <message>
        <source>Every hose end is on a port or a nozzle.</source>
        <translation>Chaque bout de durite est sur un piquage ou une tubulure.</translation>
    </message>
    <message>
        <source>A hose from port to port, and the heater left out.</source>
        <translation>Une durite de piquage à piquage, sans le réchauffeur.</translation>
    </message>
    <message>
        <source>Port, heater and port make one loop.</source>
        <translation>Piquage, réchauffeur et piquage font une boucle.</translation>
    </message>
    <message>
        <source>No valve where the loop leaves the engine.</source>
        <translation>Pas de vanne là où la boucle quitte le moteur.</translation>
    </message>
    <message>
        <source>A valve near each of the engine&apos;s ports.</source>
        <translation>Une vanne près de chaque piquage du moteur.</translation>
    </message>
    <message>
        <source>The heater is on and a valve is closed.</source>
        <translation>Le réchauffeur est en marche et une vanne est fermée.</translation>
    </message>
    <message>
        <source>Both valves are open while the heater is on.</source>
        <translation>Les deux vannes sont ouvertes, réchauffeur en marche.</translation>
    </message>
    <message>
        <source>Cold, the thermostat shuts between engine and supply.</source>
        <translation>Froid, le thermostat ferme entre moteur et alimentation.</translation>
    </message>
    <message>
        <source>The supply leaves the block itself.</source>
        <translation>L&apos;alimentation part du bloc même.</translation>
    </message>
    <message>
        <source>The cabin heater&apos;s line is open beside the loop.</source>
        <translation>La conduite de chauffage cabine est ouverte à côté de la boucle.</translation>
    </message>
    <message>
        <source>The cabin heater&apos;s line is closed.</source>
        <translation>La conduite de chauffage cabine est fermée.</translation>
    </message>
    <message>
        <source>A few millimetres of head do not open a check valve.</source>
        <translation>Quelques millimètres de charge n&apos;ouvrent pas un clapet.</translation>
    </message>
    <message>
        <source>Nothing in the loop has to be pushed open.</source>
        <translation>Rien dans la boucle ne demande à être poussé.</translation>
    </message>
    <message>
        <source>antifreeze</source>
        <translation>antigel</translation>
    </message>
    <message>
        <source>coolant freezes</source>
        <translation>le liquide gèle</translation>
    </message>
    <message>
        <source>kind: as the engine&apos;s</source>
        <translation>type&#xa0;: celui du moteur</translation>
    </message>
    <message>
        <source>kind: ?</source>
        <translation>type&#xa0;:&#xa0;?</translation>
    </message>
    <message>
        <source>maker specifies</source>
        <translation>constructeur</translation>
    </message>
    <message>
        <source>Nearly all antifreeze, hardly any water.</source>
        <translation>Presque tout d&apos;antigel, presque pas d&apos;eau.</translation>
    </message>
    <message>
        <source>As much antifreeze as the cold asks for.</source>
        <translation>Autant d&apos;antigel que le froid en demande.</translation>
    </message>
    <message>
        <source>The coldest night is colder than the coolant bears.</source>
        <translation>La nuit la plus froide dépasse ce que le liquide supporte.</translation>
    </message>
    <message>
        <source>The coolant freezes only well under the coldest night.</source>
        <translation>Le liquide ne gèle que bien sous la nuit la plus froide.</translation>
    </message>
    <message>
        <source>Nobody has written down which antifreeze it is.</source>
        <translation>Personne n&apos;a noté quel antigel c&apos;est.</translation>
    </message>
    <message>
        <source>The kind is known and is not mixed with others.</source>
        <translation>Le type est connu et n&apos;est pas mélangé à d&apos;autres.</translation>
    </message>
    <message>
        <source>cold coolant lies here</source>
        <translation>ici stagne le liquide froid</translation>
    </message>
    <message>
        <source>does not drain</source>
        <translation>ne se vidange pas</translation>
    </message>
    <message>
        <source>nearly level</source>
        <translation>presque plat</translation>
    </message>
    <message>
        <source>level</source>
        <translation>de niveau</translation>
    </message>
    <message>
        <source>The supply climbs over a hump: air stays at its crest.</source>
        <translation>L&apos;alimentation passe une bosse&#xa0;: l&apos;air reste à sa crête.</translation>
    </message>
    <message>
        <source>The supply falls all the way to the heater.</source>
        <translation>L&apos;alimentation descend tout du long vers le réchauffeur.</translation>
    </message>
    <message>
        <source>The return climbs over the port and comes down to it.</source>
        <translation>Le retour monte au-dessus du piquage et y redescend.</translation>
    </message>
    <message>
        <source>The return rises to the port and not past it.</source>
        <translation>Le retour monte au piquage et pas plus haut.</translation>
    </message>
    <message>
        <source>The return dips on its way: warm coolant does not go down.</source>
        <translation>Le retour a un creux&#xa0;: le liquide chaud ne descend pas.</translation>
    </message>
    <message>
        <source>The return rises all the way.</source>
        <translation>Le retour monte tout du long.</translation>
    </message>
    <message>
        <source>The supply lies lower than the heater&apos;s inlet.</source>
        <translation>L&apos;alimentation est plus bas que l&apos;entrée du réchauffeur.</translation>
    </message>
    <message>
        <source>The heater&apos;s inlet is the lowest place.</source>
        <translation>L&apos;entrée du réchauffeur est au plus bas.</translation>
    </message>
    <message>
        <source>The heater&apos;s inlet is higher than the supply port.</source>
        <translation>L&apos;entrée du réchauffeur est plus haut que le piquage d&apos;alimentation.</translation>
    </message>
    <message>
        <source>The heater hangs under the supply port.</source>
        <translation>Le réchauffeur est sous le piquage d&apos;alimentation.</translation>
    </message>
    <message>
        <source>A nearly level return: air stays where it is.</source>
        <translation>Un retour presque plat&#xa0;: l&apos;air reste où il est.</translation>
    </message>
    <message>
        <source>A rise all along: air finds its way to the engine.</source>
        <translation>Une montée continue&#xa0;: l&apos;air trouve le chemin du moteur.</translation>
    </message>
    <message>
        <source>A part of the loop stands above the coolant level.</source>
        <translation>Une partie de la boucle dépasse le niveau de liquide.</translation>
    </message>
    <message>
        <source>The whole loop lies under the coolant level.</source>
        <translation>Toute la boucle est sous le niveau de liquide.</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>distance</translation>
    </message>
    <message>
        <source>little drop</source>
        <translation>trop peu</translation>
    </message>
    <message>
        <source>up</source>
        <translation>haut</translation>
    </message>
    <message>
        <source>the manual: upright only</source>
        <translation>manuel&#xa0;: debout seulement</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>châssis</translation>
    </message>
    <message>
        <source>The heater&apos;s top is hardly lower than the jacket.</source>
        <translation>Le haut du réchauffeur est à peine sous la chemise.</translation>
    </message>
    <message>
        <source>The heater hangs well under the jacket&apos;s lowest point.</source>
        <translation>Le réchauffeur est bien sous le bas de la chemise.</translation>
    </message>
    <message>
        <source>The heater is far from under the return port.</source>
        <translation>Le réchauffeur est loin du piquage de retour.</translation>
    </message>
    <message>
        <source>The heater is right under the return port.</source>
        <translation>Le réchauffeur est juste sous le piquage de retour.</translation>
    </message>
    <message>
        <source>The chamber reaches higher than its outlet: air stays.</source>
        <translation>La chambre dépasse sa sortie&#xa0;: l&apos;air reste.</translation>
    </message>
    <message>
        <source>The outlet is at the top: air leaves by itself.</source>
        <translation>La sortie est en haut&#xa0;: l&apos;air part de lui-même.</translation>
    </message>
    <message>
        <source>The heater lies where its manual wants it upright.</source>
        <translation>Le réchauffeur est couché, son manuel le veut debout.</translation>
    </message>
    <message>
        <source>The heater stands as its manual says.</source>
        <translation>Le réchauffeur est posé comme le dit son manuel.</translation>
    </message>
    <message>
        <source>The bracket is on the engine and shakes with it.</source>
        <translation>Le support est sur le moteur et vibre avec lui.</translation>
    </message>
    <message>
        <source>The bracket is on the frame.</source>
        <translation>Le support est sur le châssis.</translation>
    </message>
    <message>
        <source>nearly as wide</source>
        <translation>presque aussi large</translation>
    </message>
    <message>
        <source>narrow</source>
        <translation>étroit</translation>
    </message>
    <message>
        <source>too short</source>
        <translation>trop court</translation>
    </message>
    <message>
        <source>nothing holds it</source>
        <translation>rien ne la tient</translation>
    </message>
    <message>
        <source>clearance</source>
        <translation>garde</translation>
    </message>
    <message>
        <source>exhaust</source>
        <translation>échappement</translation>
    </message>
    <message>
        <source>A thinner hose than the heater&apos;s manual asks for.</source>
        <translation>Une durite plus mince que ne demande le manuel.</translation>
    </message>
    <message>
        <source>The size that the manual asks for, all the way.</source>
        <translation>La taille demandée par le manuel, tout du long.</translation>
    </message>
    <message>
        <source>A part far narrower than the hose.</source>
        <translation>Une pièce bien plus étroite que la durite.</translation>
    </message>
    <message>
        <source>A part nearly as wide as the hose.</source>
        <translation>Une pièce presque aussi large que la durite.</translation>
    </message>
    <message>
        <source>Bent over a sharp corner, the hose kinks.</source>
        <translation>Courbée sur une arête vive, la durite se plie.</translation>
    </message>
    <message>
        <source>An open bend, or a moulded elbow.</source>
        <translation>Une courbe ouverte, ou un coude moulé.</translation>
    </message>
    <message>
        <source>Two bends need more length than lies between them.</source>
        <translation>Deux courbes demandent plus de longueur qu&apos;il n&apos;y en a.</translation>
    </message>
    <message>
        <source>Each bend has the length that it needs.</source>
        <translation>Chaque courbe a la longueur qu&apos;il lui faut.</translation>
    </message>
    <message>
        <source>The hose goes a long way round.</source>
        <translation>La durite fait un long détour.</translation>
    </message>
    <message>
        <source>The hose goes the direct way.</source>
        <translation>La durite va au plus direct.</translation>
    </message>
    <message>
        <source>A long flat piece without a clip sags and chafes.</source>
        <translation>Un long tronçon plat sans collier fléchit et frotte.</translation>
    </message>
    <message>
        <source>Clips hold it to the frame along its way.</source>
        <translation>Des colliers la tiennent au châssis sur son parcours.</translation>
    </message>
    <message>
        <source>Pulled straight: the engine tears at both ends.</source>
        <translation>Tendue droit&#xa0;: le moteur tire aux deux bouts.</translation>
    </message>
    <message>
        <source>A bend gives when the engine moves.</source>
        <translation>Une courbe cède quand le moteur bouge.</translation>
    </message>
    <message>
        <source>The hose hangs where the road reaches it.</source>
        <translation>La durite pend à portée de la route.</translation>
    </message>
    <message>
        <source>The hose stays clear of the ground.</source>
        <translation>La durite reste à l&apos;écart du sol.</translation>
    </message>
    <message>
        <source>The hose touches something hot or moving.</source>
        <translation>La durite touche ce qui est chaud ou bouge.</translation>
    </message>
    <message>
        <source>The hose keeps its distance.</source>
        <translation>La durite garde ses distances.</translation>
    </message>
    <message>
        <source>front</source>
        <translation>avant</translation>
    </message>
    <message>
        <source>stays cold</source>
        <translation>reste froid</translation>
    </message>
    <message>
        <source>sensor</source>
        <translation>sonde</translation>
    </message>
    <message>
        <source>another circuit</source>
        <translation>autre circuit</translation>
    </message>
    <message>
        <source>one bank</source>
        <translation>une rangée</translation>
    </message>
    <message>
        <source>the other</source>
        <translation>l&apos;autre</translation>
    </message>
    <message>
        <source>Coolant under the supply port never gets to the heater.</source>
        <translation>Le liquide sous le piquage n&apos;arrive jamais au réchauffeur.</translation>
    </message>
    <message>
        <source>The supply is taken from the lowest port.</source>
        <translation>L&apos;alimentation part du piquage le plus bas.</translation>
    </message>
    <message>
        <source>The return enters low: little height drives the flow.</source>
        <translation>Le retour entre bas&#xa0;: peu de hauteur entraîne le débit.</translation>
    </message>
    <message>
        <source>The return enters high.</source>
        <translation>Le retour entre haut.</translation>
    </message>
    <message>
        <source>Both ports at the rear: the front stays cold.</source>
        <translation>Deux piquages à l&apos;arrière&#xa0;: l&apos;avant reste froid.</translation>
    </message>
    <message>
        <source>The supply leaves at the front.</source>
        <translation>L&apos;alimentation part de l&apos;avant.</translation>
    </message>
    <message>
        <source>Both ports at the front: the rear stays cold.</source>
        <translation>Deux piquages à l&apos;avant&#xa0;: l&apos;arrière reste froid.</translation>
    </message>
    <message>
        <source>The return enters at the rear.</source>
        <translation>Le retour entre à l&apos;arrière.</translation>
    </message>
    <message>
        <source>Warm coolant goes straight back into the supply.</source>
        <translation>Le liquide chaud repart droit dans l&apos;alimentation.</translation>
    </message>
    <message>
        <source>The whole engine lies between the ports.</source>
        <translation>Tout le moteur est entre les piquages.</translation>
    </message>
    <message>
        <source>Warm coolant enters at the thermostat and opens it.</source>
        <translation>Le liquide chaud entre au thermostat et l&apos;ouvre.</translation>
    </message>
    <message>
        <source>Warm coolant enters far from the thermostat.</source>
        <translation>Le liquide chaud entre loin du thermostat.</translation>
    </message>
    <message>
        <source>The sensor feels what comes from the heater.</source>
        <translation>La sonde sent ce qui vient du réchauffeur.</translation>
    </message>
    <message>
        <source>The sensor feels the engine.</source>
        <translation>La sonde sent le moteur.</translation>
    </message>
    <message>
        <source>Two circuits on one port share what it lets through.</source>
        <translation>Deux circuits sur un piquage se partagent son débit.</translation>
    </message>
    <message>
        <source>Each circuit has a port of its own.</source>
        <translation>Chaque circuit a son propre piquage.</translation>
    </message>
    <message>
        <source>Both ports on one bank: the other stays colder.</source>
        <translation>Deux piquages sur une rangée&#xa0;: l&apos;autre reste froide.</translation>
    </message>
    <message>
        <source>Out of one bank, into the other.</source>
        <translation>D&apos;une rangée vers l&apos;autre.</translation>
    </message>
    <message>
        <source>backward</source>
        <translation>à l&apos;envers</translation>
    </message>
    <message>
        <source>as wide as the hose</source>
        <translation>large comme la durite</translation>
    </message>
    <message>
        <source>takes a third of the head</source>
        <translation>prend un tiers de la charge</translation>
    </message>
    <message>
        <source>over 5 kW and no pump</source>
        <translation>plus de 5 kW, sans pompe</translation>
    </message>
    <message>
        <source>warm</source>
        <translation>chaud</translation>
    </message>
    <message>
        <source>over 82 °C</source>
        <translation>plus de 82 °C</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>marge</translation>
    </message>
    <message>
        <source>steam</source>
        <translation>vapeur</translation>
    </message>
    <message>
        <source>one hour</source>
        <translation>une heure</translation>
    </message>
    <message>
        <source>power</source>
        <translation>puissance</translation>
    </message>
    <message>
        <source>target</source>
        <translation>cible</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>heures</translation>
    </message>
    <message>
        <source>The warm coolant stands no higher than the cold.</source>
        <translation>Le liquide chaud n&apos;est pas plus haut que le froid.</translation>
    </message>
    <message>
        <source>Warm coolant rises all the way, cold falls all the way.</source>
        <translation>Le liquide chaud monte tout du long, le froid descend.</translation>
    </message>
    <message>
        <source>The supply rises from the heater: warm coolant takes it.</source>
        <translation>L&apos;alimentation monte du réchauffeur&#xa0;: le liquide chaud la prend.</translation>
    </message>
    <message>
        <source>The return rises from the outlet, the supply falls.</source>
        <translation>Le retour monte de la sortie, l&apos;alimentation descend.</translation>
    </message>
    <message>
        <source>One narrow part takes much of the few millimetres.</source>
        <translation>Un étranglement prend beaucoup des quelques millimètres.</translation>
    </message>
    <message>
        <source>A part with a full bore takes little.</source>
        <translation>Une pièce de pleine section prend peu.</translation>
    </message>
    <message>
        <source>More heat than a few millimetres of head carry away.</source>
        <translation>Plus de chaleur que n&apos;en portent quelques millimètres.</translation>
    </message>
    <message>
        <source>As much power as the engine&apos;s size asks for.</source>
        <translation>Autant de puissance que le moteur en demande.</translation>
    </message>
    <message>
        <source>Too little flows: what leaves is too hot.</source>
        <translation>Débit trop faible&#xa0;: ce qui sort est trop chaud.</translation>
    </message>
    <message>
        <source>Enough flows to carry the heat away.</source>
        <translation>Le débit suffit à évacuer la chaleur.</translation>
    </message>
    <message>
        <source>Bubbles gather and steam bares the element.</source>
        <translation>Des bulles s&apos;amassent et la vapeur découvre l&apos;élément.</translation>
    </message>
    <message>
        <source>The coolant stays well under its boiling point.</source>
        <translation>Le liquide reste bien sous son point d&apos;ébullition.</translation>
    </message>
    <message>
        <source>A hose too thin for this heater and these heights.</source>
        <translation>Une durite trop mince pour ce réchauffeur et ces hauteurs.</translation>
    </message>
    <message>
        <source>A hose that lets enough through.</source>
        <translation>Une durite qui laisse passer assez.</translation>
    </message>
    <message>
        <source>The heater warms itself: on and off all the time.</source>
        <translation>Le réchauffeur se chauffe lui-même&#xa0;: marche et arrêt sans fin.</translation>
    </message>
    <message>
        <source>The heater warms the engine: few turns an hour.</source>
        <translation>Le réchauffeur chauffe le moteur&#xa0;: peu de cycles par heure.</translation>
    </message>
    <message>
        <source>The engine loses the heat before it is warm enough.</source>
        <translation>Le moteur perd la chaleur avant d&apos;être assez chaud.</translation>
    </message>
    <message>
        <source>The engine gets warm enough in the time given.</source>
        <translation>Le moteur chauffe assez dans le temps donné.</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Juste</translation>
    </message>
    <message>
        <source>Wrong</source>
        <translation>Faux</translation>
    </message>
    <message>
        <source>air</source>
        <translation>air</translation>
    </message>
    <message>
        <source>water</source>
        <translation>eau</translation>
    </message>
    <message>
        <source>coldest night</source>
        <translation>nuit la plus froide</translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation>Élévation</translation>
    </message>
    <message>
        <source>Heater</source>
        <translation>Réchauffeur</translation>
    </message>
    <message>
        <source>Ports</source>
        <translation>Piquages</translation>
    </message>
    <message>
        <source>Hose</source>
        <translation>Durite</translation>
    </message>
    <message>
        <source>Coolant</source>
        <translation>Liquide</translation>
    </message>
    <message>
        <source>Connections</source>
        <translation>Liaisons</translation>
    </message>
    <message>
        <source>Running</source>
        <translation>Marche</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Air</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Autre</translation>
    </message>
    <message>
        <source>station 0</source>
        <translation>abscisse 0</translation>
    </message>
    <message>
        <source>rail</source>
        <translation>longeron</translation>
    </message>
</context>
<context>
    <name>siphonwright::rules::CaseView</name>
    <message>
        <source>Right: %1</source>
        <translation>Juste&#xa0;: %1</translation>
    </message>
    <message>
        <source>Wrong: %1</source>
        <translation>Faux&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::rules::LimitForm</name>
    <message>
        <source>Judge this rule in this drawing</source>
        <translation>Juger cette règle dans ce dessin</translation>
    </message>
    <message>
        <source>Keep for this drawing</source>
        <translation>Garder pour ce dessin</translation>
    </message>
    <message>
        <source>Back to the rule book&apos;s</source>
        <translation>Revenir au recueil</translation>
    </message>
    <message>
        <source>Advice over</source>
        <translation>Conseil au-dessus</translation>
    </message>
    <message>
        <source>Advice under</source>
        <translation>Conseil en dessous</translation>
    </message>
    <message>
        <source>Caution over</source>
        <translation>Alerte au-dessus</translation>
    </message>
    <message>
        <source>Caution under</source>
        <translation>Alerte en dessous</translation>
    </message>
    <message>
        <source>Stop over</source>
        <translation>Arrêt au-dessus</translation>
    </message>
    <message>
        <source>Stop under</source>
        <translation>Arrêt en dessous</translation>
    </message>
    <message>
        <source>Judged yes or no, or by a figure from the manual: there is no limit to change.</source>
        <translation>Jugé par oui ou non, ou par une valeur du manuel&#xa0;: il n&apos;y a pas de limite à changer.</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>for example: the heater&apos;s manual, page 7</source>
        <translation>par exemple&#xa0;: manuel du réchauffeur, page 7</translation>
    </message>
    <message>
        <source>changed; rule book: %1</source>
        <translation>changé&#xa0;; recueil&#xa0;: %1</translation>
    </message>
    <message>
        <source>as in the rule book</source>
        <translation>comme au recueil</translation>
    </message>
    <message>
        <source>Write the reason too: the sheet states it.</source>
        <translation>Écrivez aussi le motif&#xa0;: la feuille le mentionne.</translation>
    </message>
    <message>
        <source>Change a limit</source>
        <translation>Changer une limite</translation>
    </message>
    <message>
        <source>Back to the rule book</source>
        <translation>Revenir au recueil</translation>
    </message>
    <message>
        <source>Write the reason first, then switch it off: the sheet states it.</source>
        <translation>Écrivez d&apos;abord le motif, puis désactivez-la&#xa0;: la feuille le mentionne.</translation>
    </message>
    <message>
        <source>Judge a rule again</source>
        <translation>Juger de nouveau une règle</translation>
    </message>
    <message>
        <source>Switch a rule off</source>
        <translation>Désactiver une règle</translation>
    </message>
</context>
<context>
    <name>siphonwright::rules::RuleBrowser</name>
    <message>
        <source>Rules</source>
        <translation>Règles</translation>
    </message>
    <message>
        <source>Search the rules</source>
        <translation>Chercher dans les règles</translation>
    </message>
</context>
<context>
    <name>siphonwright::rules::RuleList</name>
    <message>
        <source>off</source>
        <translation>désactivée</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>changé</translation>
    </message>
    <message>
        <source>not judged here</source>
        <translation>non jugée ici</translation>
    </message>
    <message>
        <source>stops the job</source>
        <translation>bloque le travail</translation>
    </message>
    <message>
        <source>a caution</source>
        <translation>une alerte</translation>
    </message>
    <message>
        <source>an advice</source>
        <translation>un conseil</translation>
    </message>
</context>
<context>
    <name>siphonwright::rules::RulePage</name>
    <message>
        <source>Stop</source>
        <translation>Arrêt</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Alerte</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Conseil</translation>
    </message>
    <message>
        <source>Judged on the level; the grade does not change it.</source>
        <translation>Jugé à plat&#xa0;; la pente n&apos;y change rien.</translation>
    </message>
    <message>
        <source>Judged on the level and over the grades.</source>
        <translation>Jugé à plat et sur les pentes.</translation>
    </message>
    <message>
        <source>Judged on the level and over the grades; it decides in which grades the loop is sound.</source>
        <translation>Jugé à plat et sur les pentes&#xa0;; décide sur quelles pentes la boucle est sans défaut.</translation>
    </message>
    <message>
        <source>In this drawing</source>
        <translation>Dans ce dessin</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Limites</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Que faire</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>Not judged by choice: %1</source>
        <translation>Non jugé par choix&#xa0;: %1</translation>
    </message>
    <message>
        <source>Not judged: %1.</source>
        <translation>Non jugé&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Nothing to judge until hoses are drawn.</source>
        <translation>Rien à juger tant qu&apos;il n&apos;y a pas de durites.</translation>
    </message>
    <message>
        <source>Nothing found.</source>
        <translation>Rien trouvé.</translation>
    </message>
</context>
<context>
    <name>siphonwright::sheet</name>
    <message>
        <source>End view</source>
        <translation>Vue de bout</translation>
    </message>
    <message>
        <source>End view from the front</source>
        <translation>Vue de bout depuis l&apos;avant</translation>
    </message>
    <message>
        <source>End view from the rear</source>
        <translation>Vue de bout depuis l&apos;arrière</translation>
    </message>
    <message>
        <source>Views</source>
        <translation>Vues</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>et %1 de plus</translation>
    </message>
    <message>
        <source>No end view: beside it the elevation would be too small on this paper. What lies across the engine is drawn in the program and counted in every length.</source>
        <translation>Pas de vue de bout&#xa0;: à côté, l&apos;élévation serait trop petite sur ce papier. Ce qui est en travers du moteur est dessiné dans le programme et compté dans chaque longueur.</translation>
    </message>
    <message>
        <source>Layout sheet</source>
        <translation>Plan d&apos;implantation</translation>
    </message>
    <message>
        <source>%1: a sheet is written as .pdf, .svg or .png.</source>
        <translation>%1&#xa0;: une feuille s&apos;écrit en .pdf, .svg ou .png.</translation>
    </message>
    <message>
        <source>%1: the sheet could not be drawn.</source>
        <translation>%1&#xa0;: la feuille n&apos;a pas pu être dessinée.</translation>
    </message>
    <message>
        <source>Level hot</source>
        <translation>Niveau à chaud</translation>
    </message>
    <message>
        <source>Level cold full</source>
        <translation>Niveau plein à froid</translation>
    </message>
    <message>
        <source>Level cold minimum</source>
        <translation>Niveau mini à froid</translation>
    </message>
    <message>
        <source>Jacket highest</source>
        <translation>Chemise, haut</translation>
    </message>
    <message>
        <source>Jacket lowest</source>
        <translation>Chemise, bas</translation>
    </message>
    <message>
        <source>%1, top</source>
        <translation>%1, haut</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>Sol</translation>
    </message>
    <message>
        <source>Drop %1</source>
        <translation>Distance %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>flow %1</source>
        <translation>débit %1</translation>
    </message>
    <message>
        <source>peak outlet %1, cycles in the worst hour %2</source>
        <translation>sortie max. %1, cycles dans la pire heure&#xa0;: %2</translation>
    </message>
    <message>
        <source>Engine at %1 after %2</source>
        <translation>Moteur à %1 après %2</translation>
    </message>
    <message>
        <source>Engine does not get to %1 in %2</source>
        <translation>Le moteur n&apos;arrive pas à %1 en %2</translation>
    </message>
    <message>
        <source>; %1 in %2</source>
        <translation>; %1 en %2</translation>
    </message>
    <message>
        <source>, from %1 ambient</source>
        <translation>, depuis %1 ambiante</translation>
    </message>
    <message>
        <source>Results</source>
        <translation>Résultats</translation>
    </message>
    <message>
        <source>Assumed otherwise than the book</source>
        <translation>Supposé autrement que le recueil</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation>sans motif</translation>
    </message>
    <message>
        <source>%1: %2 instead of %3 (%4).</source>
        <translation>%1&#xa0;: %2 au lieu de %3 (%4).</translation>
    </message>
    <message>
        <source>Student sheet: side elevation 1:%1</source>
        <translation>Feuille d&apos;élève&#xa0;: élévation latérale 1:%1</translation>
    </message>
    <message>
        <source>Side elevation 1:%1</source>
        <translation>Élévation latérale 1:%1</translation>
    </message>
    <message>
        <source>seen from the engine&apos;s left side</source>
        <translation>vue du côté gauche du moteur</translation>
    </message>
    <message>
        <source>seen from the engine&apos;s right side</source>
        <translation>vue du côté droit du moteur</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Avant</translation>
    </message>
    <message>
        <source>Nothing is drawn yet.</source>
        <translation>Rien n&apos;est encore dessiné.</translation>
    </message>
    <message>
        <source>Department</source>
        <translation>Service</translation>
    </message>
    <message>
        <source>Technical reference</source>
        <translation>Référence technique</translation>
    </message>
    <message>
        <source>Creator</source>
        <translation>Créateur</translation>
    </message>
    <message>
        <source>Approver</source>
        <translation>Approbateur</translation>
    </message>
    <message>
        <source>Legal owner</source>
        <translation>Propriétaire légal</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titre</translation>
    </message>
    <message>
        <source>Supplementary title</source>
        <translation>Titre complémentaire</translation>
    </message>
    <message>
        <source>Document type</source>
        <translation>Type de document</translation>
    </message>
    <message>
        <source>Identification number</source>
        <translation>Numéro d&apos;identification</translation>
    </message>
    <message>
        <source>Vehicle</source>
        <translation>Véhicule</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Client</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Échelle</translation>
    </message>
    <message>
        <source>Rev.</source>
        <translation>Rév.</translation>
    </message>
    <message>
        <source>Date of issue</source>
        <translation>Date d&apos;émission</translation>
    </message>
    <message>
        <source>Lang.</source>
        <translation>Lang.</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Feuille</translation>
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
        <translation>Échelle 1:%1</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêt</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Alerte</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Conseil</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>non saisi</translation>
    </message>
    <message>
        <source>Not judged by choice: %1 (%2).</source>
        <translation>Non jugé par choix&#xa0;: %1 (%2).</translation>
    </message>
    <message>
        <source>%1 instead of %2</source>
        <translation>%1 au lieu de %2</translation>
    </message>
    <message>
        <source>advice over %1</source>
        <translation>conseil au-dessus de %1</translation>
    </message>
    <message>
        <source>advice under %1</source>
        <translation>conseil en dessous de %1</translation>
    </message>
    <message>
        <source>caution over %1</source>
        <translation>alerte au-dessus de %1</translation>
    </message>
    <message>
        <source>caution under %1</source>
        <translation>alerte en dessous de %1</translation>
    </message>
    <message>
        <source>stop over %1</source>
        <translation>arrêt au-dessus de %1</translation>
    </message>
    <message>
        <source>stop under %1</source>
        <translation>arrêt en dessous de %1</translation>
    </message>
    <message>
        <source>%1: %2 (%3).</source>
        <translation>%1&#xa0;: %2 (%3).</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>None in what was judged.</source>
        <translation>Aucun dans ce qui a été jugé.</translation>
    </message>
    <message>
        <source>Not judged, for want of a fact</source>
        <translation>Non jugé, faute d&apos;une donnée</translation>
    </message>
    <message>
        <source>Margins</source>
        <translation>Marges</translation>
    </message>
    <message>
        <source>Judged on grades to %1 nose up and down, %2 left and right.</source>
        <translation>Jugé sur des pentes jusqu&apos;à %1 avant relevé et abaissé, %2 à gauche et à droite.</translation>
    </message>
    <message>
        <source>Not confirmed: %1.</source>
        <translation>Non confirmé&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Judged otherwise than the rule book</source>
        <translation>Jugé autrement que le recueil</translation>
    </message>
    <message>
        <source>Parts and cut lengths</source>
        <translation>Pièces et longueurs de coupe</translation>
    </message>
    <message>
        <source>%1 x %2</source>
        <translation>%1 x %2</translation>
    </message>
    <message>
        <source>What is known</source>
        <translation>Ce qui est connu</translation>
    </message>
    <message>
        <source>To be answered</source>
        <translation>À répondre</translation>
    </message>
    <message>
        <source>Where does air stay when this is filled, and about how much?</source>
        <translation>Où l&apos;air reste-t-il au remplissage, et combien environ&#xa0;?</translation>
    </message>
    <message>
        <source>Does it circulate, and which way?</source>
        <translation>Cela circule-t-il, et dans quel sens&#xa0;?</translation>
    </message>
    <message>
        <source>What would you change, and why?</source>
        <translation>Que changeriez-vous, et pourquoi&#xa0;?</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>Qualified technicians only. Disconnect and lock out power while working; inhibit a generator&apos;s automatic start.</source>
        <translation>Techniciens qualifiés seulement. Débrancher et consigner l&apos;alimentation pendant le travail&#xa0;; bloquer le démarrage automatique d&apos;un groupe électrogène.</translation>
    </message>
    <message>
        <source>Chock wheels, block air suspension; never work under an unsupported vehicle.</source>
        <translation>Caler les roues, bloquer la suspension pneumatique&#xa0;; ne jamais travailler sous un véhicule non soutenu.</translation>
    </message>
    <message>
        <source>Open the cap only cold: hot coolant under pressure.</source>
        <translation>N&apos;ouvrir le bouchon qu&apos;à froid&#xa0;: liquide chaud sous pression.</translation>
    </message>
    <message>
        <source>Never energise without coolant in the chamber.</source>
        <translation>Ne jamais mettre sous tension sans liquide dans la chambre.</translation>
    </message>
    <message>
        <source>Heater off before a valve is closed: both closed is a sealed vessel.</source>
        <translation>Réchauffeur arrêté avant de fermer une vanne&#xa0;: les deux fermées font un récipient clos.</translation>
    </message>
    <message>
        <source>Run the engine outdoors or with extraction.</source>
        <translation>Faire tourner le moteur dehors ou avec extraction.</translation>
    </message>
    <message>
        <source>Grounded supply, local electrical code, licensed electrician.</source>
        <translation>Alimentation à la terre, règles électriques locales, électricien agréé.</translation>
    </message>
    <message>
        <source>Antifreeze is poisonous: catch it and dispose of it properly.</source>
        <translation>L&apos;antigel est toxique&#xa0;: le recueillir et l&apos;éliminer dans les règles.</translation>
    </message>
    <message>
        <source>The heater&apos;s and the engine&apos;s own manuals rule over this sheet; its figures are estimates from stated assumptions.</source>
        <translation>Les manuels du réchauffeur et du moteur l&apos;emportent sur cette feuille&#xa0;; ses valeurs sont des estimations à partir d&apos;hypothèses énoncées.</translation>
    </message>
    <message>
        <source>%1: none of the pages asked for has anything on it.</source>
        <translation>%1 : aucune des pages demandées n&apos;a de contenu.</translation>
    </message>
    <message>
        <source>Row %1 of %2, column %3 of %4. Trim at the marks and join.</source>
        <translation>Rangée %1 sur %2, colonne %3 sur %4. Couper aux repères et joindre.</translation>
    </message>
    <message>
        <source>* not measured</source>
        <translation>* non mesuré</translation>
    </message>
    <message>
        <source>Measure me:</source>
        <translation>Mesurez-moi :</translation>
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
        <translation>par côté, imprimé à 100 %</translation>
    </message>
    <message>
        <source>Vehicle&apos;s serial number</source>
        <translation>N° de série du véhicule</translation>
    </message>
    <message>
        <source>Engine&apos;s serial number</source>
        <translation>N° de série du moteur</translation>
    </message>
    <message>
        <source>Heater&apos;s serial number</source>
        <translation>N° de série du réchauffeur</translation>
    </message>
    <message>
        <source>Changed in this revision</source>
        <translation>Modifié dans cette révision</translation>
    </message>
    <message>
        <source>kind not known</source>
        <translation>type inconnu</translation>
    </message>
    <message>
        <source>plain water</source>
        <translation>eau pure</translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation>éthylène glycol</translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation>propylène glycol</translation>
    </message>
    <message>
        <source>%1, strength not entered</source>
        <translation>%1, concentration non saisie</translation>
    </message>
    <message>
        <source>Electrical load and coolant</source>
        <translation>Charge électrique et liquide</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>All heaters %1, current %2, continuous load (125 %) %3.</source>
        <translation>Tous les réchauffeurs %1, courant %2, charge continue (125 %) %3.</translation>
    </message>
    <message>
        <source>Further sheets</source>
        <translation>Autres feuilles</translation>
    </message>
    <message>
        <source>Sheet %1</source>
        <translation>Feuille %1</translation>
    </message>
    <message>
        <source>Sheets %1 to %2</source>
        <translation>Feuilles %1 à %2</translation>
    </message>
    <message>
        <source>none</source>
        <translation>sans</translation>
    </message>
    <message>
        <source>sheet 2</source>
        <translation>feuille 2</translation>
    </message>
    <message>
        <source>sheets 2 to %1</source>
        <translation>feuilles 2 à %1</translation>
    </message>
    <message>
        <source>and %1 more on %2</source>
        <translation>et %1 de plus : %2</translation>
    </message>
    <message>
        <source>On %1: %2.</source>
        <translation>Sur %1 : %2.</translation>
    </message>
    <message>
        <source>Continued from sheet 1</source>
        <translation>Suite de la feuille 1</translation>
    </message>
    <message>
        <source>1, drawing: sheets 1 to %1</source>
        <translation>1, dessin : feuilles 1 à %1</translation>
    </message>
    <message>
        <source>1, drawing</source>
        <translation>1, dessin</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Page</translation>
    </message>
    <message>
        <source>%1: the rest of page 1.</source>
        <translation>%1 : le reste de la page 1.</translation>
    </message>
    <message>
        <source>%1: page %2, %3 (%4).</source>
        <translation>%1 : page %2, %3 (%4).</translation>
    </message>
    <message>
        <source>None printed with this one; there are checklist, parts and estimate, and assumptions.</source>
        <translation>Aucune imprimée avec celle-ci ; il y a la liste de contrôle, les pièces et le devis, et les hypothèses.</translation>
    </message>
    <message>
        <source>Assumed, and what the figures depend on most: %1.</source>
        <translation>Supposé, et dont les chiffres dépendent le plus : %1.</translation>
    </message>
    <message>
        <source>%1: bore %2, cut %3</source>
        <translation>%1 : diamètre intérieur %2, couper %3</translation>
    </message>
    <message>
        <source>%1; from A to B: %2</source>
        <translation>%1 ; de A vers B : %2</translation>
    </message>
    <message>
        <source>bleed</source>
        <translation>purge</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>vidange</translation>
    </message>
    <message>
        <source>check valve</source>
        <translation>clapet anti-retour</translation>
    </message>
    <message>
        <source>reducer</source>
        <translation>réduction</translation>
    </message>
    <message>
        <source>elbow</source>
        <translation>coude</translation>
    </message>
    <message>
        <source>valve</source>
        <translation>vanne</translation>
    </message>
    <message>
        <source>New hoses and heaters hold about %1 of coolant: %2.</source>
        <translation>Les durites et réchauffeurs neufs contiennent environ %1 de liquide : %2.</translation>
    </message>
    <message>
        <source>%1, continued</source>
        <translation>%1, suite</translation>
    </message>
    <message>
        <source>Ports %1 apart, level</source>
        <translation>Piquages à %1 à l&apos;horizontale</translation>
    </message>
    <message>
        <source>, where it gets there</source>
        <translation>, quand il y arrive</translation>
    </message>
    <message>
        <source>%1: bore %2, cut %3 (%4 of it allowance)</source>
        <translation>%1 : diamètre intérieur %2, couper %3 (dont %4 de marge)</translation>
    </message>
    <message>
        <source>Air is what stays after filling.</source>
        <translation>Air : ce qui reste après remplissage.</translation>
    </message>
    <message>
        <source>Crossed out: a hose whose bore is too small.</source>
        <translation>Barré : une durite de passage trop petit.</translation>
    </message>
    <message>
        <source>Slopes: rise over run, the way it flows.</source>
        <translation>Pentes : hauteur sur longueur, dans le sens du liquide.</translation>
    </message>
    <message>
        <source>In a box: as it runs at that block temperature.</source>
        <translation>Dans un cadre : à cette température du bloc.</translation>
    </message>
    <message>
        <source>%1: all of page 1.</source>
        <translation>%1 : toute la page 1.</translation>
    </message>
</context>
<context>
    <name>siphonwright::sizing::Entries</name>
    <message>
        <source>Phases</source>
        <translation>Phases</translation>
    </message>
    <message>
        <source>one</source>
        <translation>une</translation>
    </message>
    <message>
        <source>three</source>
        <translation>trois</translation>
    </message>
    <message>
        <source>Conductor</source>
        <translation>Conducteur</translation>
    </message>
    <message>
        <source>Size of the conductors to the bay</source>
        <translation>Section des conducteurs jusqu&apos;à l&apos;emplacement</translation>
    </message>
    <message>
        <source>%1 – not in the tables</source>
        <translation>%1 – absent des tableaux</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Cible</translation>
    </message>
    <message>
        <source>Wanted temperature of the engine block</source>
        <translation>Température voulue du bloc-moteur</translation>
    </message>
    <message>
        <source>Usual ambient</source>
        <translation>Ambiante usuelle</translation>
    </message>
    <message>
        <source>Coldest ambient</source>
        <translation>Ambiante minimale</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Vent</translation>
    </message>
    <message>
        <source>Nothing entered counts as still air</source>
        <translation>Rien de saisi compte comme air calme</translation>
    </message>
    <message>
        <source>Time allowed</source>
        <translation>Temps accordé</translation>
    </message>
    <message>
        <source>From the start to the target</source>
        <translation>Du départ à la cible</translation>
    </message>
    <message>
        <source>Plugged in a night</source>
        <translation>Branché par nuit</translation>
    </message>
    <message>
        <source>Price of a kWh</source>
        <translation>Prix du kWh</translation>
    </message>
    <message>
        <source>In the currency of the quote</source>
        <translation>Dans la devise du devis</translation>
    </message>
    <message>
        <source>Voltage at the bay</source>
        <translation>Tension sur place</translation>
    </message>
    <message>
        <source>Between conductors</source>
        <translation>Entre conducteurs</translation>
    </message>
    <message>
        <source>Metal</source>
        <translation>Métal</translation>
    </message>
    <message>
        <source>copper</source>
        <translation>cuivre</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>aluminium</translation>
    </message>
    <message>
        <source>Length, one way</source>
        <translation>Longueur, aller</translation>
    </message>
    <message>
        <source>Of the run, from its start to the heater</source>
        <translation>De la ligne, de son départ au réchauffeur</translation>
    </message>
    <message>
        <source>Antifreeze in it now</source>
        <translation>Antigel présent</translation>
    </message>
    <message>
        <source>none, plain water</source>
        <translation>aucun, eau pure</translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation>éthylène glycol</translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation>propylène glycol</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>Its share now</source>
        <translation>Sa part actuelle</translation>
    </message>
    <message>
        <source>By volume, as a refractometer shows it</source>
        <translation>En volume, comme un réfractomètre l&apos;indique</translation>
    </message>
    <message>
        <source>Antifreeze to add</source>
        <translation>Antigel à ajouter</translation>
    </message>
    <message>
        <source>Empty: the kind that is in it now; kinds are never mixed</source>
        <translation>Vide&#xa0;: le type présent&#xa0;; les types ne se mélangent jamais</translation>
    </message>
    <message>
        <source>Share wanted</source>
        <translation>Part voulue</translation>
    </message>
    <message>
        <source>By volume, 60 % at most</source>
        <translation>En volume, 60&#xa0;% au plus</translation>
    </message>
    <message>
        <source>Whole system holds</source>
        <translation>Contenu du circuit</translation>
    </message>
    <message>
        <source>Radiator and cabin heater included; without it the engine alone counts</source>
        <translation>Radiateur et chauffage cabine compris&#xa0;; sans cela, seul le moteur compte</translation>
    </message>
    <message>
        <source>Runs out at once</source>
        <translation>Coule d&apos;un coup</translation>
    </message>
    <message>
        <source>What comes out at the drains</source>
        <translation>Ce qui sort aux vidanges</translation>
    </message>
    <message>
        <source>Water to mix with</source>
        <translation>Eau de mélange</translation>
    </message>
    <message>
        <source>Chloride</source>
        <translation>Chlorures</translation>
    </message>
    <message>
        <source>Sulphate</source>
        <translation>Sulfates</translation>
    </message>
    <message>
        <source>Hardness</source>
        <translation>Dureté</translation>
    </message>
    <message>
        <source>As calcium carbonate, CaCO3</source>
        <translation>En carbonate de calcium, CaCO3</translation>
    </message>
    <message>
        <source>Total solids</source>
        <translation>Matières totales</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
</context>
<context>
    <name>siphonwright::sizing::FigureTable</name>
    <message>
        <source>Click to see on the drawing where it comes from</source>
        <translation>Cliquez pour voir d&apos;où cela vient sur le dessin</translation>
    </message>
</context>
<context>
    <name>siphonwright::sizing::FigureText</name>
    <message>
        <source>%1, freezes at %2</source>
        <translation>%1, gèle à %2</translation>
    </message>
    <message>
        <source>%1, freezing point not known</source>
        <translation>%1, point de congélation inconnu</translation>
    </message>
    <message>
        <source>▲ %1, %2 too warm for the coldest ambient</source>
        <translation>▲ %1, trop chaud de %2 pour l&apos;ambiante minimale</translation>
    </message>
    <message>
        <source>%1, %2 under the coldest ambient</source>
        <translation>%1, %2 sous l&apos;ambiante minimale</translation>
    </message>
    <message>
        <source>Freezing points are good to some 2 K</source>
        <translation>Points de congélation exacts à environ 2 K</translation>
    </message>
    <message>
        <source>Drained, to be filled</source>
        <translation>Vidangé, à remplir</translation>
    </message>
    <message>
        <source>In it now</source>
        <translation>Présent</translation>
    </message>
    <message>
        <source>%1, the engine alone</source>
        <translation>%1, moteur seul</translation>
    </message>
    <message>
        <source>Let out, to be filled again</source>
        <translation>Retiré, à remettre</translation>
    </message>
    <message>
        <source>New parts take</source>
        <translation>Pièces neuves</translation>
    </message>
    <message>
        <source>%1 in hoses, %2 in chambers</source>
        <translation>%1 dans durites, %2 dans chambres</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Tour %1</translation>
    </message>
    <message>
        <source>drain %1, add %2 of %3: %4</source>
        <translation>vidanger %1, ajouter %2 (%3)&#xa0;: %4</translation>
    </message>
    <message>
        <source>antifreeze</source>
        <translation>antigel</translation>
    </message>
    <message>
        <source>water</source>
        <translation>eau</translation>
    </message>
    <message>
        <source>Drained in all, to be disposed of</source>
        <translation>Vidangé en tout, à éliminer</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Vidange</translation>
    </message>
    <message>
        <source>Antifreeze to buy</source>
        <translation>Antigel à acheter</translation>
    </message>
    <message>
        <source>Distilled water to buy</source>
        <translation>Eau distillée à acheter</translation>
    </message>
    <message>
        <source>System then holds</source>
        <translation>Contenu ensuite</translation>
    </message>
    <message>
        <source>Coolant</source>
        <translation>Liquide</translation>
    </message>
    <message>
        <source>figure</source>
        <translation>valeur</translation>
    </message>
    <message>
        <source>Mixture now</source>
        <translation>Mélange actuel</translation>
    </message>
    <message>
        <source>Mixture wanted</source>
        <translation>Mélange voulu</translation>
    </message>
    <message>
        <source>No share is wanted yet: nothing is planned.</source>
        <translation>Aucune part voulue encore&#xa0;: rien n&apos;est planifié.</translation>
    </message>
    <message>
        <source>Mixture reached</source>
        <translation>Mélange atteint</translation>
    </message>
    <message>
        <source>Least for the coldest ambient</source>
        <translation>Minimum pour l&apos;ambiante minimale</translation>
    </message>
    <message>
        <source>%1, with %2 to spare</source>
        <translation>%1, avec %2 de réserve</translation>
    </message>
    <message>
        <source>Not even %1 holds the coldest ambient with %2 to spare.</source>
        <translation>Même %1 ne tient pas l&apos;ambiante minimale avec %2 de réserve.</translation>
    </message>
    <message>
        <source>The coldest ambient is not entered: no margin to freezing.</source>
        <translation>L&apos;ambiante minimale n&apos;est pas saisie&#xa0;: pas de marge au gel.</translation>
    </message>
    <message>
        <source>The whole system is not entered: radiator and cabin heater are not counted.</source>
        <translation>Le circuit entier n&apos;est pas saisi&#xa0;: radiateur et chauffage cabine ne sont pas comptés.</translation>
    </message>
    <message>
        <source>Never mix kinds of antifreeze; low-silicate antifreeze, deionised or distilled water. At most %1 by volume.</source>
        <translation>Ne mélangez jamais les types d&apos;antigel&#xa0;; antigel à faible teneur en silicates, eau déminéralisée ou distillée. Au plus %1 en volume.</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Eau</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>mesuré</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>limite</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>jugement</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>non saisi</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>%1 au plus</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>non jugé</translation>
    </message>
    <message>
        <source>▲ do not use it</source>
        <translation>▲ à ne pas utiliser</translation>
    </message>
    <message>
        <source>good</source>
        <translation>bon</translation>
    </message>
    <message>
        <source>Limits: %1.</source>
        <translation>Limites&#xa0;: %1.</translation>
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
        <translation>▲ %1&#xa0;: ébullition</translation>
    </message>
    <message>
        <source>▲ %1 trips</source>
        <translation>▲ %1&#xa0;: déclenche</translation>
    </message>
    <message>
        <source>▲ outlet over %1: too much for these hoses.</source>
        <translation>▲ sortie au-dessus de %1&#xa0;: trop pour ces durites.</translation>
    </message>
    <message>
        <source>Boils: the heater&apos;s chamber reaches the boiling point.</source>
        <translation>Ébullition&#xa0;: la chambre du réchauffeur atteint le point d&apos;ébullition.</translation>
    </message>
    <message>
        <source>Trips: the cut-out opens.</source>
        <translation>Déclenchement&#xa0;: le limiteur s&apos;ouvre.</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1 in all</source>
        <translation>%1 en tout</translation>
    </message>
    <message>
        <source>● %1</source>
        <translation>● %1</translation>
    </message>
    <message>
        <source>▲ over %1</source>
        <translation>▲ au-dessus de %1</translation>
    </message>
    <message>
        <source>Heater</source>
        <translation>Réchauffeur</translation>
    </message>
    <message>
        <source>To %1</source>
        <translation>À %1</translation>
    </message>
    <message>
        <source>Block, %1</source>
        <translation>Bloc, %1</translation>
    </message>
    <message>
        <source>On for</source>
        <translation>En marche</translation>
    </message>
    <message>
        <source>Peak outlet</source>
        <translation>Sortie max.</translation>
    </message>
    <message>
        <source>A night</source>
        <translation>Une nuit</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>In the usual ambient, on the loops as drawn, thermostats and all; sizes are our own choice.</source>
        <translation>À l&apos;ambiante usuelle, sur les boucles dessinées, thermostats compris&#xa0;; les tailles sont un choix propre.</translation>
    </message>
    <message>
        <source>No loop is closed yet: the engine as one lump, held where a usual thermostat would. Sizes are our own choice.</source>
        <translation>Aucune boucle n&apos;est encore fermée&#xa0;: le moteur d&apos;un bloc, tenu où un thermostat habituel le tiendrait. Les tailles sont un choix propre.</translation>
    </message>
    <message>
        <source>%1 is left out of the table: %2</source>
        <translation>%1 est laissé hors du tableau&#xa0;: %2</translation>
    </message>
    <message>
        <source>● is what is drawn.</source>
        <translation>● est ce qui est dessiné.</translation>
    </message>
    <message>
        <source>Cost of a night: hours plugged in are not entered.</source>
        <translation>Coût d&apos;une nuit&#xa0;: heures de branchement non saisies.</translation>
    </message>
    <message>
        <source>Price of a kWh: not entered.</source>
        <translation>Prix du kWh&#xa0;: non saisi.</translation>
    </message>
    <message>
        <source>Costs in %1.</source>
        <translation>Coûts en %1.</translation>
    </message>
    <message>
        <source>Season: no nights are entered.</source>
        <translation>Saison&#xa0;: aucune nuit saisie.</translation>
    </message>
    <message>
        <source>Season: %1 nights.</source>
        <translation>Saison&#xa0;: %1 nuits.</translation>
    </message>
    <message>
        <source>– %1</source>
        <translation>– %1</translation>
    </message>
    <message>
        <source>▲ %1 too little</source>
        <translation>▲ il manque %1</translation>
    </message>
    <message>
        <source>nothing is needed</source>
        <translation>rien de nécessaire</translation>
    </message>
    <message>
        <source>%1 over, %2</source>
        <translation>%1 de plus, %2</translation>
    </message>
    <message>
        <source>To hold %1</source>
        <translation>Pour tenir %1</translation>
    </message>
    <message>
        <source>nothing: the air is as warm</source>
        <translation>rien&#xa0;: l&apos;air est aussi chaud</translation>
    </message>
    <message>
        <source>as the heat loss may be</source>
        <translation>selon la perte de chaleur</translation>
    </message>
    <message>
        <source>With the engine&apos;s heat loss at either end of what is assumed of it</source>
        <translation>Avec la perte de chaleur du moteur aux deux extrêmes de ce qui en est supposé</translation>
    </message>
    <message>
        <source>of it the engine</source>
        <translation>dont moteur</translation>
    </message>
    <message>
        <source>of it hoses and chambers</source>
        <translation>dont durites et chambres</translation>
    </message>
    <message>
        <source>not drawn</source>
        <translation>non dessiné</translation>
    </message>
    <message>
        <source>To reach it in %1</source>
        <translation>Pour l&apos;atteindre en %1</translation>
    </message>
    <message>
        <source>To reach it</source>
        <translation>Pour l&apos;atteindre</translation>
    </message>
    <message>
        <source>time allowed: not entered</source>
        <translation>temps accordé&#xa0;: non saisi</translation>
    </message>
    <message>
        <source>no heater drawn</source>
        <translation>aucun réchauffeur dessiné</translation>
    </message>
    <message>
        <source>power: not entered</source>
        <translation>puissance&#xa0;: non saisie</translation>
    </message>
    <message>
        <source>Heaters as drawn</source>
        <translation>Réchauffeurs dessinés</translation>
    </message>
    <message>
        <source>margin to hold</source>
        <translation>marge pour tenir</translation>
    </message>
    <message>
        <source>margin to reach in time</source>
        <translation>marge pour atteindre à temps</translation>
    </message>
    <message>
        <source>%1 for %2 of displacement is %3 W a litre; %4 to %5 W a litre is common practice for diesel engines (no published source, from memory).</source>
        <translation>%1 pour %2 de cylindrée font %3 W par litre&#xa0;; %4 à %5 W par litre sont la pratique courante pour moteurs diesel (sans source publiée, de mémoire).</translation>
    </message>
    <message>
        <source>Estimated from the engine&apos;s mass, coolant and outline as one lump of heat, thermostats left out.</source>
        <translation>Estimé d&apos;après masse, liquide et contour du moteur comme un seul bloc de chaleur, sans thermostats.</translation>
    </message>
    <message>
        <source>No loop is closed yet: hoses and chambers are not counted.</source>
        <translation>Aucune boucle n&apos;est encore fermée&#xa0;: durites et chambres ne sont pas comptées.</translation>
    </message>
    <message>
        <source>As drawn a loop does not circulate: the figures suppose that it will.</source>
        <translation>Telle que dessinée, une boucle ne circule pas&#xa0;: les valeurs supposent qu&apos;elle circulera.</translation>
    </message>
    <message>
        <source>Wind is not entered: still air.</source>
        <translation>Le vent n&apos;est pas saisi&#xa0;: air calme.</translation>
    </message>
    <message>
        <source>Power needed</source>
        <translation>Puissance requise</translation>
    </message>
    <message>
        <source>usual, %1</source>
        <translation>usuelle, %1</translation>
    </message>
    <message>
        <source>coldest, %1</source>
        <translation>minimale, %1</translation>
    </message>
    <message>
        <source>The coldest ambient is not entered.</source>
        <translation>L&apos;ambiante minimale n&apos;est pas saisie.</translation>
    </message>
    <message>
        <source>Conductor at %1</source>
        <translation>Conducteur à %1</translation>
    </message>
    <message>
        <source>NEC chapter 9, table 8</source>
        <translation>NEC chapitre 9, tableau 8</translation>
    </message>
    <message>
        <source>IEC 60228, classes 1 and 2; flexible cord has up to 10 % more</source>
        <translation>CEI 60228, classes 1 et 2&#xa0;; un câble souple a jusqu&apos;à 10&#xa0;% de plus</translation>
    </message>
    <message>
        <source>Voltage drop</source>
        <translation>Chute de tension</translation>
    </message>
    <message>
        <source>not computed</source>
        <translation>non calculé</translation>
    </message>
    <message>
        <source>Left at the heater</source>
        <translation>Reste au réchauffeur</translation>
    </message>
    <message>
        <source>No heater is drawn.</source>
        <translation>Aucun réchauffeur n&apos;est dessiné.</translation>
    </message>
    <message>
        <source>Electrical load</source>
        <translation>Charge électrique</translation>
    </message>
    <message>
        <source>All heaters</source>
        <translation>Tous réchauffeurs</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Courant</translation>
    </message>
    <message>
        <source>Power over √3 times the voltage</source>
        <translation>Puissance sur √3 fois la tension</translation>
    </message>
    <message>
        <source>Power over voltage</source>
        <translation>Puissance sur tension</translation>
    </message>
    <message>
        <source>Continuous load, 125 %</source>
        <translation>Charge continue, 125&#xa0;%</translation>
    </message>
    <message>
        <source>A load figure after NEC 210.20(A) and 215.3</source>
        <translation>Une valeur de charge d&apos;après NEC 210.20(A) et 215.3</translation>
    </message>
    <message>
        <source>Over %1 in all, consider a heater with a pump (our own limit).</source>
        <translation>Au-delà de %1 en tout, envisagez un réchauffeur à pompe (notre propre limite).</translation>
    </message>
</context>
<context>
    <name>siphonwright::sizing::SeasonEdit</name>
    <message>
        <source>Nights of a season</source>
        <translation>Nuits d&apos;une saison</translation>
    </message>
    <message>
        <source>Add nights</source>
        <translation>Ajouter nuits</translation>
    </message>
    <message>
        <source>Try a season (invented)</source>
        <translation>Essayer une saison (inventée)</translation>
    </message>
    <message>
        <source>150 nights from -30 to 0 °C: invented, no weather record</source>
        <translation>150 nuits de -30 à 0 °C&#xa0;: inventé, pas un relevé météo</translation>
    </message>
    <message>
        <source>Try an invented season</source>
        <translation>Essayer une saison inventée</translation>
    </message>
    <message>
        <source>Change nights</source>
        <translation>Changer les nuits</translation>
    </message>
    <message>
        <source>Temperature of the nights</source>
        <translation>Température des nuits</translation>
    </message>
    <message>
        <source>How many nights</source>
        <translation>Combien de nuits</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Enlever</translation>
    </message>
    <message>
        <source>Remove nights</source>
        <translation>Enlever des nuits</translation>
    </message>
    <message>
        <source>nights at</source>
        <translation>nuits à</translation>
    </message>
    <message>
        <source>none entered</source>
        <translation>aucune saisie</translation>
    </message>
    <message>
        <source>%1 nights in all</source>
        <translation>%1 nuits en tout</translation>
    </message>
</context>
<context>
    <name>siphonwright::sizing::SizingPanel</name>
    <message>
        <source>Power needed</source>
        <translation>Puissance requise</translation>
    </message>
    <message>
        <source>By heater power</source>
        <translation>Par puissance</translation>
    </message>
    <message>
        <source>Electrical load</source>
        <translation>Charge électrique</translation>
    </message>
    <message>
        <source>Coolant</source>
        <translation>Liquide</translation>
    </message>
    <message>
        <source>Water to mix with</source>
        <translation>Eau de mélange</translation>
    </message>
    <message>
        <source>Subject</source>
        <translation>Sujet</translation>
    </message>
    <message>
        <source>Heater size</source>
        <translation>Dimensionnement</translation>
    </message>
    <message>
        <source>Electrical supply</source>
        <translation>Alimentation électrique</translation>
    </message>
    <message>
        <source>Load figures only. A licensed electrician and the local electrical code decide on circuit, conductors, protection and grounding; the heater&apos;s manual rules. Disconnect and lock out before any work.</source>
        <translation>Valeurs de charge seulement. Un électricien agréé et les règles électriques locales décident du circuit, des conducteurs, de la protection et de la mise à la terre&#xa0;; le manuel du réchauffeur fait foi. Débranchez et consignez avant tout travail.</translation>
    </message>
    <message>
        <source>Antifreeze is poisonous: catch and dispose of it properly. Open the cap only cold.</source>
        <translation>L&apos;antigel est toxique&#xa0;: recueillez-le et éliminez-le dans les règles. N&apos;ouvrez le bouchon qu&apos;à froid.</translation>
    </message>
    <message>
        <source>Being computed; the table is of the drawing as it was.</source>
        <translation>Calcul en cours&#xa0;; le tableau est celui du dessin d&apos;avant.</translation>
    </message>
    <message>
        <source>The table by heater power is being computed.</source>
        <translation>Le tableau par puissance de réchauffeur est en cours de calcul.</translation>
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
        <translation>Relevé avant de dessiner un réchauffeur de liquide</translation>
    </message>
    <message>
        <source>Vehicle or set</source>
        <translation>Véhicule ou groupe</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>How to measure</source>
        <translation>Comment mesurer</translation>
    </message>
    <message>
        <source>Heights: tape held plumb, from the frame rail&apos;s upper edge (under it: minus) or from the floor. Tick which.</source>
        <translation>Hauteurs&#xa0;: mètre tenu d&apos;aplomb, depuis le bord supérieur du longeron (dessous&#xa0;: moins) ou depuis le sol. Cochez lequel.</translation>
    </message>
    <message>
        <source>Station: along the frame rail from the block&apos;s front face, + to the engine&apos;s rear. Across: out from the crankshaft, + to the engine&apos;s right side.</source>
        <translation>Abscisse&#xa0;: le long du longeron depuis la face avant du bloc, + vers l&apos;arrière du moteur. En travers&#xa0;: depuis le vilebrequin, + vers le côté droit du moteur.</translation>
    </message>
    <message>
        <source>Slopes: inclinometer along the engine, in ° or %; + is higher at the engine&apos;s front.</source>
        <translation>Pentes&#xa0;: inclinomètre le long du moteur, en ° ou %&#xa0;; + est plus haut à l&apos;avant du moteur.</translation>
    </message>
    <message>
        <source>What was not measured stays empty: an empty place is asked for again, a guess is not.</source>
        <translation>Ce qui n&apos;a pas été mesuré reste vide&#xa0;: un vide est redemandé, une devinette ne l&apos;est pas.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>Engine cold: open the cap only cold. Hot surfaces; belts and fan may start.</source>
        <translation>Moteur froid&#xa0;: n&apos;ouvrez le bouchon qu&apos;à froid. Surfaces chaudes&#xa0;; courroies et ventilateur peuvent démarrer.</translation>
    </message>
    <message>
        <source>Wheels chocked, air suspension blocked, automatic start inhibited, key out. Never under an unsupported vehicle.</source>
        <translation>Roues calées, suspension pneumatique bloquée, démarrage automatique bloqué, clé retirée. Jamais sous un véhicule non soutenu.</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Endroit</translation>
    </message>
    <message>
        <source>Measured from</source>
        <translation>Mesuré depuis</translation>
    </message>
    <message>
        <source>Height, %1</source>
        <translation>Hauteur, %1</translation>
    </message>
    <message>
        <source>Station, %1</source>
        <translation>Abscisse, %1</translation>
    </message>
    <message>
        <source>Across, %1</source>
        <translation>En travers, %1</translation>
    </message>
    <message>
        <source>rail</source>
        <translation>longeron</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>sol</translation>
    </message>
    <message>
        <source>Supply port</source>
        <translation>Piquage d&apos;alimentation</translation>
    </message>
    <message>
        <source>Return port</source>
        <translation>Piquage de retour</translation>
    </message>
    <message>
        <source>drain port</source>
        <translation>piquage de vidange</translation>
    </message>
    <message>
        <source>core plug</source>
        <translation>pastille</translation>
    </message>
    <message>
        <source>lower hose tee</source>
        <translation>té durite inf.</translation>
    </message>
    <message>
        <source>head port</source>
        <translation>piquage culasse</translation>
    </message>
    <message>
        <source>cabin line</source>
        <translation>conduite cabine</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Filetage</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Diam. int.</translation>
    </message>
    <message>
        <source>Points to</source>
        <translation>Dirigé vers</translation>
    </message>
    <message>
        <source>front</source>
        <translation>avant</translation>
    </message>
    <message>
        <source>rear</source>
        <translation>arrière</translation>
    </message>
    <message>
        <source>left</source>
        <translation>gauche</translation>
    </message>
    <message>
        <source>right</source>
        <translation>droite</translation>
    </message>
    <message>
        <source>up</source>
        <translation>haut</translation>
    </message>
    <message>
        <source>down</source>
        <translation>bas</translation>
    </message>
    <message>
        <source>tilt</source>
        <translation>incl.</translation>
    </message>
    <message>
        <source>Engine&apos;s thermostat on the</source>
        <translation>Thermostat du moteur</translation>
    </message>
    <message>
        <source>outlet side</source>
        <translation>côté sortie</translation>
    </message>
    <message>
        <source>inlet side</source>
        <translation>côté entrée</translation>
    </message>
    <message>
        <source>Supply voltage at the bay</source>
        <translation>Tension d&apos;alimentation sur place</translation>
    </message>
    <message>
        <source>V</source>
        <translation>V</translation>
    </message>
    <message>
        <source>Coolant in it now</source>
        <translation>Liquide présent</translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation>éthylène glycol</translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation>propylène glycol</translation>
    </message>
    <message>
        <source>water</source>
        <translation>eau</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>% by volume</source>
        <translation>% en volume</translation>
    </message>
    <message>
        <source>colour</source>
        <translation>couleur</translation>
    </message>
    <message>
        <source>What is hot or moves nearby; notes</source>
        <translation>Ce qui est chaud ou bouge à proximité&#xa0;; notes</translation>
    </message>
    <message>
        <source>The engine&apos;s and the heater&apos;s own manuals rule over this form.</source>
        <translation>Les manuels du moteur et du réchauffeur l&apos;emportent sur cette fiche.</translation>
    </message>
    <message>
        <source>Survey form</source>
        <translation>Fiche de relevé</translation>
    </message>
    <message>
        <source>%1: the form could not be drawn.</source>
        <translation>%1&#xa0;: la fiche n&apos;a pas pu être dessinée.</translation>
    </message>
</context>
<context>
    <name>siphonwright::survey::LetterGrid</name>
    <message>
        <source>not drawn</source>
        <translation>non dessiné</translation>
    </message>
    <message>
        <source>from the floor only with L</source>
        <translation>depuis le sol seulement avec L</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>non mesuré</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Endroit</translation>
    </message>
    <message>
        <source>Measured from</source>
        <translation>Mesuré depuis</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Hauteur</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Abscisse</translation>
    </message>
    <message>
        <source>Across</source>
        <translation>En travers</translation>
    </message>
    <message>
        <source>Drawn: height, station, across</source>
        <translation>Dessiné&#xa0;: hauteur, abscisse, en travers</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Survey, %1</source>
        <translation>Relevé, %1</translation>
    </message>
    <message>
        <source>frame rail</source>
        <translation>longeron</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>sol</translation>
    </message>
    <message>
        <source>%1: measured from</source>
        <translation>%1&#xa0;: mesuré depuis</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>degrés</translation>
    </message>
    <message>
        <source>percent</source>
        <translation>pour cent</translation>
    </message>
    <message>
        <source>%1: typed in</source>
        <translation>%1&#xa0;: tapé</translation>
    </message>
</context>
<context>
    <name>siphonwright::survey::SurveyText</name>
    <message>
        <source>Kind</source>
        <translation>Type</translation>
    </message>
    <message>
        <source>drain port</source>
        <translation>piquage de vidange</translation>
    </message>
    <message>
        <source>core plug</source>
        <translation>pastille</translation>
    </message>
    <message>
        <source>lower hose tee</source>
        <translation>té durite inf.</translation>
    </message>
    <message>
        <source>head or manifold port</source>
        <translation>piquage culasse ou collecteur</translation>
    </message>
    <message>
        <source>cabin heater line</source>
        <translation>chauffage cabine</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Filetage</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Diam. int.</translation>
    </message>
    <message>
        <source>Points to</source>
        <translation>Dirigé vers</translation>
    </message>
    <message>
        <source>front</source>
        <translation>avant</translation>
    </message>
    <message>
        <source>rear</source>
        <translation>arrière</translation>
    </message>
    <message>
        <source>left side</source>
        <translation>côté gauche</translation>
    </message>
    <message>
        <source>right side</source>
        <translation>côté droit</translation>
    </message>
    <message>
        <source>up</source>
        <translation>haut</translation>
    </message>
    <message>
        <source>down</source>
        <translation>bas</translation>
    </message>
    <message>
        <source>Tilted up by</source>
        <translation>Relevé de</translation>
    </message>
    <message>
        <source>Measured by</source>
        <translation>Mesuré par</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Supply port</source>
        <translation>Piquage d&apos;alimentation</translation>
    </message>
    <message>
        <source>Return port</source>
        <translation>Piquage de retour</translation>
    </message>
    <message>
        <source>Engine and bay</source>
        <translation>Moteur et emplacement</translation>
    </message>
    <message>
        <source>Thermostat on the</source>
        <translation>Thermostat</translation>
    </message>
    <message>
        <source>outlet side</source>
        <translation>côté sortie</translation>
    </message>
    <message>
        <source>inlet side</source>
        <translation>côté entrée</translation>
    </message>
    <message>
        <source>Supply voltage</source>
        <translation>Tension d&apos;alimentation</translation>
    </message>
    <message>
        <source>Antifreeze in it now</source>
        <translation>Antigel présent</translation>
    </message>
    <message>
        <source>none, plain water</source>
        <translation>aucun, eau pure</translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation>éthylène glycol</translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation>propylène glycol</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>By volume</source>
        <translation>En volume</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Couleur</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notes</translation>
    </message>
</context>
<context>
    <name>siphonwright::survey::SurveyWindow</name>
    <message>
        <source>Where the letters are on an engine in its frame</source>
        <translation>Où sont les lettres sur un moteur dans son châssis</translation>
    </message>
    <message>
        <source>Draw the engine from these</source>
        <translation>Dessiner le moteur ainsi</translation>
    </message>
    <message>
        <source>Survey</source>
        <translation>Relevé</translation>
    </message>
    <message>
        <source>What was not measured</source>
        <translation>Ce qui n&apos;a pas été mesuré</translation>
    </message>
    <message>
        <source>Make or update engine, tank and ports; one step to undo</source>
        <translation>Créer ou mettre à jour moteur, vase et piquages&#xa0;; une seule étape à annuler</translation>
    </message>
    <message>
        <source>Blank form as PDF…</source>
        <translation>Fiche vierge en PDF…</translation>
    </message>
    <message>
        <source>Print blank form…</source>
        <translation>Imprimer fiche vierge…</translation>
    </message>
    <message>
        <source>Stays typical or not known</source>
        <translation>Reste typique ou inconnu</translation>
    </message>
    <message>
        <source>Draw the engine from the survey</source>
        <translation>Dessiner le moteur d&apos;après le relevé</translation>
    </message>
    <message>
        <source>There is no engine yet: an in-line 6 of typical shape will be drawn. For another, insert it first.</source>
        <translation>Il n&apos;y a pas encore de moteur&#xa0;: un 6 en ligne de forme typique sera dessiné. Pour un autre, insérez-le d&apos;abord.</translation>
    </message>
</context>
<context>
    <name>siphonwright::warming</name>
    <message>
        <source>at %1</source>
        <translation>à %1</translation>
    </message>
    <message>
        <source>before</source>
        <translation>précédente</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>cible %1</translation>
    </message>
    <message>
        <source>outlet&apos;s limit %1</source>
        <translation>limite de sortie %1</translation>
    </message>
    <message>
        <source>peak, 9 of 10 cases</source>
        <translation>max., 9 cas sur 10</translation>
    </message>
    <message>
        <source>target reached, where it is</source>
        <translation>cible atteinte, si elle l&apos;est</translation>
    </message>
    <message>
        <source>target reached, 9 of 10 cases</source>
        <translation>cible atteinte, 9 cas sur 10</translation>
    </message>
    <message>
        <source>▲ %1, over %2</source>
        <translation>▲ %1, au-dessus de %2</translation>
    </message>
    <message>
        <source>▲ %1, does not run forward</source>
        <translation>▲ %1, ne va pas vers l&apos;avant</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>after %1</source>
        <translation>après %1</translation>
    </message>
    <message>
        <source>▲ not in %1</source>
        <translation>▲ pas en %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Warm-up: %1</source>
        <translation>Chauffe&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: a warm-up is written as .csv, .png or .svg.</source>
        <translation>%1&#xa0;: une chauffe s&apos;écrit en .csv, .png ou .svg.</translation>
    </message>
    <message>
        <source>%1: the warm-up could not be written.</source>
        <translation>%1&#xa0;: la chauffe n&apos;a pas pu être écrite.</translation>
    </message>
    <message>
        <source>outlet</source>
        <translation>sortie</translation>
    </message>
    <message>
        <source>inlet</source>
        <translation>entrée</translation>
    </message>
    <message>
        <source>return at port</source>
        <translation>retour au piquage</translation>
    </message>
    <message>
        <source>hose outside</source>
        <translation>surface durite</translation>
    </message>
    <message>
        <source>block</source>
        <translation>bloc</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>débit</translation>
    </message>
    <message>
        <source>power</source>
        <translation>puissance</translation>
    </message>
    <message>
        <source>No warm-up: at the start the coolant would be slush.</source>
        <translation>Pas de chauffe&#xa0;: au départ, le liquide serait en bouillie de glace.</translation>
    </message>
    <message>
        <source>No warm-up: %1.</source>
        <translation>Pas de chauffe&#xa0;: %1.</translation>
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
        <translation>jamais en marche</translation>
    </message>
    <message>
        <source>peak %1</source>
        <translation>max. %1</translation>
    </message>
    <message>
        <source>, over %1</source>
        <translation>, au-dessus de %1</translation>
    </message>
    <message>
        <source>, may exceed %1</source>
        <translation>, peut dépasser %1</translation>
    </message>
    <message>
        <source>1 cycle an hour</source>
        <translation>1 cycle par heure</translation>
    </message>
    <message>
        <source>%1 cycles an hour</source>
        <translation>%1 cycles par heure</translation>
    </message>
    <message>
        <source>, reached in fewer than 1 of 10 cases</source>
        <translation>, atteint dans moins de 1 cas sur 10</translation>
    </message>
    <message>
        <source>, reached in %1 of 10 cases</source>
        <translation>, atteint dans %1 cas sur 10</translation>
    </message>
    <message>
        <source>%1 just not reached in %2</source>
        <translation>%1 manqué de peu en %2</translation>
    </message>
    <message>
        <source>%1 not reached in %2 (%3 then)</source>
        <translation>%1 non atteint en %2 (%3 alors)</translation>
    </message>
    <message>
        <source>%1 after %2</source>
        <translation>%1 après %2</translation>
    </message>
    <message>
        <source>, may not be reached</source>
        <translation>, peut ne pas être atteint</translation>
    </message>
    <message>
        <source>%1 kWh</source>
        <translation>%1 kWh</translation>
    </message>
    <message>
        <source>return warm after %1</source>
        <translation>retour chaud après %1</translation>
    </message>
    <message>
        <source>return never warm</source>
        <translation>retour jamais chaud</translation>
    </message>
    <message>
        <source>cut-out trips after %1</source>
        <translation>le limiteur déclenche après %1</translation>
    </message>
    <message>
        <source>boils after %1</source>
        <translation>ébullition après %1</translation>
    </message>
    <message>
        <source>on the edge of stalling</source>
        <translation>près de l&apos;arrêt de circulation</translation>
    </message>
    <message>
        <source>Hangs most on: %1</source>
        <translation>Dépend surtout de&#xa0;: %1</translation>
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
        <translation>Diam. durite</translation>
    </message>
    <message>
        <source>Flow, warm</source>
        <translation>Débit, chaud</translation>
    </message>
    <message>
        <source>Outlet, warm</source>
        <translation>Sortie, chaud</translation>
    </message>
    <message>
        <source>Peak outlet</source>
        <translation>Sortie max.</translation>
    </message>
    <message>
        <source>Cycles an hour</source>
        <translation>Cycles/heure</translation>
    </message>
    <message>
        <source>Target reached</source>
        <translation>Cible atteinte</translation>
    </message>
    <message>
        <source>Use this bore</source>
        <translation>Prendre ce diamètre</translation>
    </message>
    <message>
        <source>By bore of hose</source>
        <translation>Par diamètre de durite</translation>
    </message>
    <message>
        <source>Put every hose on the selected bore, hose ends and in-line parts in proportion</source>
        <translation>Mettre toutes les durites au diamètre sélectionné, embouts et pièces en ligne à proportion</translation>
    </message>
    <message>
        <source>The table comes when a loop can be computed.</source>
        <translation>Le tableau vient quand une boucle est calculable.</translation>
    </message>
    <message>
        <source>Every hose on one bore, hose ends and in-line parts with it</source>
        <translation>Toutes les durites à un même diamètre, avec embouts et pièces en ligne</translation>
    </message>
    <message>
        <source>of the drawing as it was</source>
        <translation>du dessin d&apos;avant</translation>
    </message>
    <message>
        <source>● %1, as drawn</source>
        <translation>● %1, comme dessiné</translation>
    </message>
    <message>
        <source>Double-click to use this bore</source>
        <translation>Double-cliquez pour prendre ce diamètre</translation>
    </message>
    <message>
        <source>Use hose of %1</source>
        <translation>Utiliser une durite de %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::warming::ChartView</name>
    <message>
        <source>Warm-up over time; left and right read the values</source>
        <translation>Chauffe dans le temps&#xa0;; gauche et droite lisent les valeurs</translation>
    </message>
    <message>
        <source>of the drawing as it was</source>
        <translation>du dessin d&apos;avant</translation>
    </message>
</context>
<context>
    <name>siphonwright::warming::GradeTable</name>
    <message>
        <source>Nose up %1</source>
        <translation>Avant relevé %1</translation>
    </message>
    <message>
        <source>Nose down %1</source>
        <translation>Avant abaissé %1</translation>
    </message>
    <message>
        <source>Right side up %1</source>
        <translation>Côté droit relevé %1</translation>
    </message>
    <message>
        <source>Left side up %1</source>
        <translation>Côté gauche relevé %1</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>À plat</translation>
    </message>
    <message>
        <source>Parked</source>
        <translation>Garé</translation>
    </message>
    <message>
        <source>Flow, warm</source>
        <translation>Débit, chaud</translation>
    </message>
    <message>
        <source>Outlet, warm</source>
        <translation>Sortie, chaud</translation>
    </message>
    <message>
        <source>Peak outlet</source>
        <translation>Sortie max.</translation>
    </message>
    <message>
        <source>Cycles an hour</source>
        <translation>Cycles/heure</translation>
    </message>
    <message>
        <source>Target reached</source>
        <translation>Cible atteinte</translation>
    </message>
    <message>
        <source>On grades</source>
        <translation>En pente</translation>
    </message>
    <message>
        <source>The table comes when a warm-up can be computed.</source>
        <translation>Le tableau vient quand une chauffe est calculable.</translation>
    </message>
    <message>
        <source>Filled and turned on where it is parked, at the ends of the grades judged</source>
        <translation>Rempli et mis en marche là où il est garé, aux extrêmes des pentes jugées</translation>
    </message>
    <message>
        <source>of the drawing as it was</source>
        <translation>du dessin d&apos;avant</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>Double-click to see the drawing parked like this</source>
        <translation>Double-cliquez pour voir le dessin garé ainsi</translation>
    </message>
</context>
<context>
    <name>siphonwright::warming::PlanForm</name>
    <message>
        <source>Air</source>
        <translation>Air</translation>
    </message>
    <message>
        <source>Temperature of the air around the engine</source>
        <translation>Température de l&apos;air autour du moteur</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Vent</translation>
    </message>
    <message>
        <source>Speed of the wind; nothing entered counts as still air</source>
        <translation>Vitesse du vent&#xa0;; rien de saisi compte comme air calme</translation>
    </message>
    <message>
        <source>still</source>
        <translation>calme</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Départ</translation>
    </message>
    <message>
        <source>Of engine and coolant; nothing entered: as cold as the air</source>
        <translation>Du moteur et du liquide&#xa0;; rien de saisi&#xa0;: aussi froid que l&apos;air</translation>
    </message>
    <message>
        <source>as the air</source>
        <translation>comme l&apos;air</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Cible</translation>
    </message>
    <message>
        <source>Wanted temperature of the engine block</source>
        <translation>Température voulue du bloc-moteur</translation>
    </message>
    <message>
        <source>Over</source>
        <translation>Durée</translation>
    </message>
    <message>
        <source>How long the warm-up is followed</source>
        <translation>Combien de temps la chauffe est suivie</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>Changer&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::warming::WarmUpPanel</name>
    <message>
        <source>Heater</source>
        <translation>Réchauffeur</translation>
    </message>
    <message>
        <source>Whose warm-up is shown</source>
        <translation>Quelle chauffe est affichée</translation>
    </message>
    <message>
        <source>Keep this curve</source>
        <translation>Garder la courbe</translation>
    </message>
    <message>
        <source>Kept</source>
        <translation>Gardées</translation>
    </message>
    <message>
        <source>Take kept curves away</source>
        <translation>Retirer les courbes</translation>
    </message>
    <message>
        <source>Export…</source>
        <translation>Exporter…</translation>
    </message>
    <message>
        <source>Write the warm-up as CSV, PNG or SVG</source>
        <translation>Écrire la chauffe en CSV, PNG ou SVG</translation>
    </message>
    <message>
        <source> · %1</source>
        <translation> · %1</translation>
    </message>
    <message>
        <source>Of the drawing as it was: %1</source>
        <translation>Du dessin d&apos;avant&#xa0;: %1</translation>
    </message>
    <message>
        <source> · bands follow</source>
        <translation> · plages à suivre</translation>
    </message>
    <message>
        <source>The warm-up appears when a loop with a heater is drawn.</source>
        <translation>La chauffe apparaît quand une boucle avec réchauffeur est dessinée.</translation>
    </message>
    <message>
        <source>The warm-up is being computed.</source>
        <translation>La chauffe est en cours de calcul.</translation>
    </message>
    <message>
        <source>Lay the curves as they are now under those to come</source>
        <translation>Laisser les courbes actuelles sous celles à venir</translation>
    </message>
    <message>
        <source>Three are kept: take one away first</source>
        <translation>Trois sont gardées&#xa0;: retirez-en une d&apos;abord</translation>
    </message>
    <message>
        <source>never on</source>
        <translation>jamais en marche</translation>
    </message>
    <message>
        <source>Take away %1, peak %2</source>
        <translation>Retirer %1, max. %2</translation>
    </message>
    <message>
        <source>Take all away</source>
        <translation>Tout retirer</translation>
    </message>
    <message>
        <source>There is no warm-up to write.</source>
        <translation>Il n&apos;y a pas de chauffe à écrire.</translation>
    </message>
</context>
</TS>
