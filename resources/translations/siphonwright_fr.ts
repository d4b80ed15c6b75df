<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>Actions</name>
    <message>
        <source>&amp;New</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start an empty drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New from &amp;template…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose an engine by its picture and start a drawing with it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a sketch file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the sketch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the sketch under another name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Export sheet…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the sheet as PDF, SVG or PNG</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export &amp;warm-up…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the warm-up as CSV, PNG or SVG</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print pre&amp;view…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See the sheet as it will be printed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print the sheet at true scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet in &amp;colour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print and export in colour instead of black and white</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts &amp;list behind the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print and export the parts list and the cuts on pages after the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Student sheet: no &amp;findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print and export without findings, pockets and margins, with lines for answers; off: the answer sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;hoto on the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print and export the photo under the drawing too, as faded as on the screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Blank survey form…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A page to be filled in with a pen at the vehicle, as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close the program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take what is selected away, to be put down elsewhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a copy of what is selected, for this or another window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put parts down where the pointer is, else beside what is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D&amp;uplicate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put what is selected down once more, beside it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove what is selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select &amp;all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select every part of the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the part selected while Tab goes on to the next; again: no longer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Find by name…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a part of the drawing by its name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Go to the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the keyboard on the elevation, from wherever it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Detai&amp;ls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show and change what is known of the selected part (Enter on the drawing)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re&amp;name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to the name of the selected part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to its c&amp;orners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select the first corner of the outline; Tab goes from corner to corner, Escape back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a &amp;point here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a point to the hose, or a corner to the outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a &amp;valve here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put an isolation valve into the hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a &amp;bleed here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a bleed point into the hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a cl&amp;ip here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clip the hose to the frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open or close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open or close the selected valve, bleed or drain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Conn&amp;ect to the next opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Connect the hose&apos;s end to the nearest port or nozzle, again: to the next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn c&amp;lockwise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn a heater or port by 15 degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn &amp;back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn a heater or port by 15 degrees the other way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Left edges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line up with the leftmost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Middles above each other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line up on one plumb line of the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Right edges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line up with the rightmost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Top edges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line up with the highest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>M&amp;iddles at one height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line up at one height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Bottom edges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line up with the lowest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space evenly &amp;along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Even distances along the engine between the outermost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space evenly &amp;up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Even distances in height between lowest and highest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select &amp;next part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go through all parts of the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select &amp;previous part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go back through all parts of the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next &amp;finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to the next finding on the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About this &amp;rule…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read what the selected finding&apos;s rule rests on, and its limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom to &amp;fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the whole drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom to &amp;selection</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show what is selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Farther</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Grid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the grid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;napping</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points snap to the grid and to level and plumb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points go to the lines of the grid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points go onto ports, nozzles, route points and corners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points go level with their neighbours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;lumb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points go plumb over or under their neighbours, on a grade too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Constant &amp;rise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pieces of a hose take the slope chosen below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Bend radius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points stop where the bends still take the hose&apos;s least radius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;In line with the last piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pieces of a hose go straight on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Li&amp;mits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts stop where a rule&apos;s limit is just kept: level, hump, ground, area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Slope to snap to…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the slope of the constant rise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running fig&amp;ures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show flow, temperatures and heads beside each heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Tint hoses by temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colour the hoses by the coolant&apos;s temperature in them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;End view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the drawing along the engine too, beside the elevation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End view at the same &amp;heights</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom and heights of the elevation and the end view go together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Third-angle &amp;projection</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The end view shows the end it stands beside, on the sheet too; off: first-angle projection, which shows the other end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;mm and °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Metric units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;inch and °F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inch units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the des&amp;ktop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light, dark or high contrast, as the desktop has it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark lines on light ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light lines on dark ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;High contrast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Black on white, for bright sun and weak eyes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text 100 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text of the usual size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text 125 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larger text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text 150 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text 175 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text 200 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text twice as large</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Default la&amp;yout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put window, panels and tools back where they were at first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Warm-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show temperatures, flow and power over the hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table by &amp;bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show what each stock bore of hose would do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table on &amp;grades</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show how the job runs parked at the ends of the grades judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater si&amp;ze and supply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show power needed, electrical load, cost of a night, and coolant to mix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Propose la&amp;youts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the program lay heater and hoses so that no rule is broken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;ommissioning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work through the checklist, judge readings, find what is wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print the chec&amp;klist…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps, cautions and a table for readings, to be filled in by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the checklist as PD&amp;F…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the checklist&apos;s pages to a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep this curve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay the warm-up as it is now under those to come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take kept &amp;curves away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the present warm-up alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Parts and cuts…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>List what the drawing takes, and how the hose is cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Estimate…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reckon what the job costs, with prices, hours and other heaters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Rules…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read every rule, and change its limits for this drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Assumptions…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See every figure that is assumed, and change it for this drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select and drag parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the hose from the engine to the heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the hose from the heater to the engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark an opening into the water jacket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place a tank heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put an isolation valve into a hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bleed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a bleed point into a hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clip a hose to the frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep-clear area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outline something hot or moving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place the surge tank with the coolant levels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dimension</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure between any two things; it follows them and prints</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;helf of parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts to drag onto the drawing; Enter puts one in the middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;urvey…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type what was measured at the vehicle and draw the engine from it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Engine…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose an engine by its picture and place it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Heater…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a heater by its picture and place it under the jacket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Photo…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a photo of the engine under the drawing, to draw over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo from the &amp;clipboard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the picture that was copied elsewhere under the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Straighten by a rectangle…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click the corners of a rectangle of known size in a photo taken at an angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;cale by two points…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click two points in the photo and type how far apart they are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Level by two points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click two points along something level in the photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loc&amp;k the photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the photo where it is while you draw over it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select the &amp;photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show place, scale, turn and fade of the photo in the details</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply port, low at the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a port at the jacket&apos;s lowest level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return port, high at the rear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a port near the jacket&apos;s highest level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply hose, port to heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a straight hose to be shaped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return hose, heater to port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Point in the selected hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a route point in the middle of the hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Isolation valve in the selected hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a valve near the hose&apos;s start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bleed at the selected hose&apos;s crest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a bleed point where the hose is highest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Surge tank over the engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add the tank with its coolant levels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a square area to be shaped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Teaching air locks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lessons, faults to find and their answers, for a trainer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Demonstrate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Play filling, engine run and warm-up on the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Hide findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the class guess first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Ask the class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count hands, then reveal whether it circulates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Second drawing beside…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Play a drawing from a file by the same clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Full screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Large, to be read from the back of the room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export this &amp;moment…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write what is shown now as PNG or SVG</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export all &amp;pictures…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the demonstration as numbered PNG pictures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand&amp;out…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write one page with six moments and their captions as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a co&amp;mmand…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search all commands by their words, and run one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Shortcuts…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See the keys of every command, and change them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to heed before and during the work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;First sketch, step by step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Be led through a first drawing, from the engine to the saved file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;About Siphonwright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Version, licences and what the figures are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Texts, numbers and dates as the system has them, from the next start on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>English texts, from the next start on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spanish texts, from the next start on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>French texts, from the next start on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>German texts, from the next start on</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Canvas</name>
    <message>
        <source>%1 wide, %2 high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 parts</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Drawing</name>
    <message>
        <source>The photo cannot be shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant in the hoses</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DrawingKeys</name>
    <message>
        <source>Arrow keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nudge what is selected, move the cross-hair, or move the paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift + arrow keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A fine step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next and previous point of what is selected, or place to put it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put down at the cross-hair; finish a hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the last point of a hose back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Escape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop what was begun; back to selecting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space + drag, middle button</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom to the pointer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alt while dragging</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No snapping</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PartMenu</name>
    <message>
        <source>&amp;Align</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Selected &amp;part</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Photo</name>
    <message>
        <source>Its data are damaged: they are no Base64.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Snap</name>
    <message>
        <source>Snapped: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plumb</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Teaching</name>
    <message>
        <source>Teaching air locks</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>a hose has no length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a hose has no bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an opening has no bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a chamber has no volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a valve has no place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a bleed has no place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the element has no height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the jacket&apos;s volume needs two levels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the jacket&apos;s volume must rise with its level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the target level is no number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>density and pressures must be over zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the air in pre-filled hoses must not be under zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the vacuum must lie under the atmosphere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no loop to feed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no such valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the level is not reached from where coolant is fed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no state of rest was found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing has been filled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the level is no number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coolant shrinks to between half and all of its volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a pump&apos;s flow must not be under zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Filled as planned, none closes the bore.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill so every time, or lower the hump by at least {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower the hump by at least {0}. A bleed {1} along {a}, filled with the valves open, would let its air out; re-routing is the better cure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A bleed {0} along {a}, filled with the valves open, would let it out; re-routing is the better cure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 right side up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 left side up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2 right side up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2 left side up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parked from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parked %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 on (figures at %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not sound on the level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sound from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 nose-down to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 nose-up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has a trap without any sag.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} may sag more than {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} may sag {0} before it holds air or coolant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (typical)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (assumed)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the ends of the grades judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not everywhere forward, else %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no flow forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flow %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outlet %1 at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cycles an hour %1 at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 after %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 not everywhere reached</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}: not computed: {b}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}: {0}, {1} in, {2} out, {3} drives</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}: {0} backward, {1} in, {2} out, {3} drives</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: no flow: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm-up: not computed: {a}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm-up: not computed: {0} is under the coolant&apos;s freezing point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm-up: not computed: its inputs do not hold together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 not reached</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}: never on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}: coolant leaves at %1 at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turns on %1 times in its worst hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>boils</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 under boiling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}, where 9 in 10 lie over what is assumed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coolant leaves at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 times in the worst hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>target after %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is air-locked: {0} of air stays in it and takes {1} of head; the loop can raise {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is air-locked: {0} of air stays in it, takes {1} of head and turns the flow round.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air in {a} takes {0} of head and weakens the flow by {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air in {a} leaves {0} of the bore open and weakens the flow by {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the top of the element of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the top of the element of %1 is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} keeps {0} of air in its chamber after filling.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} keeps {0} of air in its chamber after filling, and its element is not covered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running the engine leaves the air in {a}: {0} in the hose, and {1} to {2} clear it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running the engine may clear the air in {a}: {0} in the hose, and {1} to {2} clear it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running the engine clears the air in {a} ({0} in the hose, {1} to {2} clear it): look again after the first night.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coldest ambient temperature is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coldest ambient temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At {1} the coolant shrinks to {0} under its cold minimum.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} leaves its hose end at an angle of {0}: it would kink there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead the hose straight out of its end before it bends, or turn the elbow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} bends to a radius of {0} at its centre; it needs {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the bend to {0} or more, or use a moulded elbow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bore of %1 is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has no room for a bend of radius {0}: only {1} fits between its neighbours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} turns straight back on itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the least hose bore in the manual of %1 is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the least hose bore in the manual of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has a bore of {0}; the heater&apos;s manual asks for {1} or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use hose of {0} bore or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the heater&apos;s nozzle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the hose end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the isolation valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bleed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the drain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the check valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the reducer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bore of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bore of the inlet of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bore of the outlet of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} narrows from {0} to {1} at {b}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a part with a bore of {0} or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} reaches {0} under the ground at lowest ride height.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is only {0} over the ground at lowest ride height.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise it by at least {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is only {0} from {b}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} touches {b}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} crosses {b} in the side view; how deep that lies is not entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is only {0} from {b} in the side view; how deep that lies is not entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move it at least {0} away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter how deep {a} lies, or move it at least {0} away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the ground at lowest ride height is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has a heater at both ends: this end belongs on an engine port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has an engine port at both ends: this end belongs on the heater.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} ends on the heater&apos;s outlet: it belongs on the inlet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} starts at the heater&apos;s inlet: it belongs on the outlet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is connected to nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has no hoses yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has no hose on its outlet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has no hose on its inlet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is {0} long, {1} more than square from end to end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take at least {0} out of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is open at its start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is open at its end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the kind of antifreeze is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the share of antifreeze in the coolant is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>freezing points are known only up to 60 % of antifreeze</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the share of antifreeze in the coolant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coolant holds {0} of antifreeze by volume; more than {1} carries heat worse and protects less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drain some and top up with water to {0} or less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coolant freezes at {0}, and it gets as cold as {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mix the coolant to freeze at {0} or below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The kind of antifreeze in the engine is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the antifreeze only the colour is entered ({a}), which does not tell its kind.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} humps {0} above its sill: up to {1} of air would fill the bore and stop the flow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} humps {0} above its sill: it would hold up to {1} of air.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} humps {0} above its sill: up to {1} of air stops the flow unless it is bled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bleed at every fill, or lower the hump by at least {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower the hump by at least {0}, or put a bleed at its crest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} dips {0} below its rim: {1} of coolant stays there and slows the flow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} dips {0} below its rim: {1} of coolant fills the bore there and no air can pass.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise the dip by at least {0}, so that the hose rises all the way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is not entered whether the coolant is plain water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} dips {0}: {1} of coolant stays in it when drained.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} dips {0}: {1} of plain water stays in it when drained and can freeze.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise the dip by at least {0}, or put a drain at its lowest point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} climbs {0} on its way to the heater.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} ends {0} above the supply port: cold coolant does not run up to the heater.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower the heater by at least {0}, or take a lower supply port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the place of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the outline of the water jacket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coolant level at cold minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coolant level at cold full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the place of the surge tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} stands upright, which its manual does not allow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} lies level, which its manual does not allow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is inclined, which its manual does not allow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} hangs upside down, which no heater allows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has its outlet {0} above {b}: warm coolant would have to sink.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is {0} to the side of {b} and only {1} below it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the heater at least {0} towards {a}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the outline of the water jacket is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has its top only {0} below the lowest point of the water jacket.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has its top {0} above the lowest point of the water jacket.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower the heater by at least {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bore of the outlet of %1 is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has a chamber that reaches {0} above its outlet: {1} of air stays in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has a chamber that reaches {0} above its outlet: {1} of air bares the element.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the positions that the manual of %1 allows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the positions that the manual of %1 allows are not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what %1 is mounted to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is not entered what %1 is mounted to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is mounted to the engine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} reaches {0} above the coolant&apos;s cold minimum level: it can run dry of coolant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} reaches {0} above the coolant&apos;s cold full level: coolant never fills it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower it by at least {0}, or keep the coolant level higher.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coolant level at cold minimum is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the thermostat&apos;s side is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the thermostat&apos;s side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is in the lower radiator hose, and the thermostat on the engine&apos;s inlet side cuts it off from the block while the engine is cold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is not entered whether the shut-off of %1 is open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is in an open cabin heater line, a second way round for the coolant: results for one loop do not hold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has {0} hose ends on it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} and {b} are on the same bank: the other bank stays cold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is {0} above the lowest point of the water jacket, high for a supply.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is {0} below the highest point of the water jacket, low for a return.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a port at least {0} lower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a port at least {0} higher.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}, a supply port, is {0} back from the front of the water jacket, in its rear half.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}, a return port, is {0} back from the front of the water jacket, in its front half.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} and {b} are only {0} apart: most of the engine would stay cold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose ports at least {0} apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the engine&apos;s thermostat housing is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the place of the thermostat housing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is only {0} from the thermostat housing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is only {0} from {b}, whose warm coolant misleads the sensor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the port of the remote thermostat of %1 is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice, no published source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own choice: air or coolant narrows the bore up to one bore of height and closes it from there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>High point in the supply hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air gathers at a high point and holds up the cold coolant on its way to the heater.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower the hump, or put a bleed at its crest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>High point in the return hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air gathers at a high point and stops the warm coolant, which has only a few millimetres of head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dip in the return hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cold coolant lies in a dip, and air from the heater cannot pass it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise the dip, so that the hose rises all the way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dip in the supply hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own choice: what a catch pan takes without a second trip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What lies in a dip does not drain; plain water freezes there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise the dip, or put a drain at its lowest point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply hose climbs to the heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cold coolant runs down to the heater by its own weight and does not climb to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower the heater, or take a lower supply port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return hose too flat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own choice: 1 in 50, near the drain practice of 1/4 in per ft (1 in 48)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air rises to the engine by itself only along a hose that rises all the way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the hose more rise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above the coolant level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What stands above the coolant level does not stay full, and the loop breaks there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower it, or keep the coolant level higher.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater too high under the jacket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cold column between engine and heater drives the flow; a short one drives little.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower the heater.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater not under the return port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice (directly under it), no published source; ratios 1 and 2 are our own choice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm coolant rises best straight up; a long flat return is slow and hard to purge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the heater under the return port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air stays in the heater chamber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hydrostatics: air cannot leave by an opening below it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air over the outlet never leaves; an element bared by it burns out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the heater so that its outlet is at the top of the chamber.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater in a position its manual forbids</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the heater&apos;s manual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The element is covered only in the positions that the manual allows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mount the heater in a position that its manual allows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater mounted to the engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The engine shakes heater, element and hose ends loose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mount the heater to the frame.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply port not low enough</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice (the lowest port), no published source; one fifth is our own choice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant below the supply port stays cold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a lower port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return port not high enough</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice (a high port), no published source; one third is our own choice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm coolant stays above where it enters; a low return leaves little to drive the flow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a higher port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply port in the rear half</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply from the front and return to the rear warm the whole length of the engine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a port toward the front.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return port in the front half</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a port toward the rear.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ports too close together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice (as far apart as practical), no published source; shares of the jacket&apos;s diagonal are our own choice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm coolant takes the short way back and most of the engine stays cold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose ports farther apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return port near the thermostat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice (away from it), no published source; the distance is our own choice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm coolant opens the thermostat and the heat goes to the radiator.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a return port farther from the thermostat housing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remote sensor near the return port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sensor feels the heater&apos;s own warm coolant and turns it off while the engine is cold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the sensor farther from the return port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply cut off by the thermostat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how the cooling circuit is laid: the thermostat lies between the lower hose and the block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A closed thermostat on the inlet side lets no cold coolant from the block to the lower hose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the supply from a port in the block.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second way round through the cabin heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flow divides between ways in parallel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant that goes round by the cabin heater does not pass the engine; how much is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a port in the engine, or keep the cabin heater line shut and use another port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Port shared by hoses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own choice: one port, one hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hoses on one port take coolant from each other, and two heaters can push against each other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give every hose a port of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loop on one bank only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant led from one bank to the other warms both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the return port on the other bank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose smaller than the manual asks for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hose that is too small lets too little through, and the heater overheats.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a larger hose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Narrow place in a hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own choice: hose ends usually leave 0.70 to 0.82 of the hose&apos;s bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A few millimetres of head push little through a narrow place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a part with a larger bore.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bend too tight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice (6 bores to the inside of the bend where the hose gives none), no published source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hose bent tighter than it allows flattens, kinks and cracks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the bend, or use a moulded elbow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bend does not fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>geometry: an arc needs its length on both neighbours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hose cannot be laid as drawn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the points apart, or ask for a smaller radius.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose longer than it needs to be</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice (short hoses), no published source; 250 mm is our own choice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every length of hose loses heat and slows the flow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead the hose more directly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose not held up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own choice: 300 mm and 450 mm, for stretches within 30 degrees of level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A warm hose sags between its clips, and a sag is a dip with a hump behind it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a clip in the middle of the span.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No slack between frame and engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice (hoses follow the engine), no published source; 3 % and 45 degrees are our own choice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The engine moves on its mounts and pulls a taut hose off its hose ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead the hose round a bend, or make it longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too near the ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own choice: 200 mm at lowest ride height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What hangs low is torn off by kerbs, stones and snow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too near something hot or moving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own choice: 150 mm from exhaust and turbo, 75 mm behind a heat shield, 50 mm from all else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat hardens a hose and what moves cuts it; either empties the cooling system.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead it farther away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open hose end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a loop has no open end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant runs out of an open end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Connect the end to a port or to the heater.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not connected to a loop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a loop leads from a port through the heater to a port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing circulates unless supply hose, heater and return hose make one loop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead the supply hose from a port to the inlet and the return hose from the outlet to a port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Isolation valve missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice (valves at both ends of the loop), no published source; 300 mm is our own choice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without valves at the engine the heater is serviced only with the cooling system drained.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put an isolation valve near the port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Valve closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A closed valve stops the flow and the element overheats; two make a sealed vessel under pressure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the valve whenever the heater is on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check valve in the loop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice, no published source: check valves open on far more than a few millimetres of head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A few millimetres of head do not lift a disc or swing a flap against its own weight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the check valve out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too much antifreeze</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Past 60 % antifreeze carries heat worse, flows worse and freezes sooner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant may freeze</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own choice: 5 K; freezing points after the ASHRAE Handbook Fundamentals (2001)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slush does not circulate, and ice breaks hoses and block.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add antifreeze.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind of antifreeze not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kinds of antifreeze that do not go together gel, foam or lose their protection from corrosion.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The engine maker&apos;s specification rules: fill that and nothing else, and do not mix kinds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the power of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} stalls: its warm coolant stands no higher than the cold, and nothing drives it round.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} stalls: it can raise {0} of head, and air withstands {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} runs backward: warm coolant leaves by the supply hose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} takes {0} of the loop&apos;s head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heaters have {0} in all: a heater with a pump wants considering.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the balance of driving and resisting heads, computed from the drawing (core/physics/circulation.h)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loop stalls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A heater whose coolant stands still overheats while the engine stays cold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise the return port over the heater, lower the heater, and lead the return so that it rises.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loop runs backward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm coolant that leaves by the supply hose comes to the engine at its lowest port and drives little.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead the return straight up from the outlet and the supply straight down to the inlet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One part takes much of the loop&apos;s head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own choice: 30 %; losses after Hooper (1981, 1988)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The loop has a few millimetres of head; a part that takes a third of it rules the flow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Much power for heaters without a pump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own choice: 5 kW in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So much heat is hard to carry away by a few millimetres of head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Consider a heater with a pump.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air locks the loop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filling computed from the drawing; the head of a pocket after May, Allen and Nelson (2018)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air that closes the bore takes more head than the loop can raise, and nothing moves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re-route the hose so that it rises all the way; a bleed at the crest is the next best.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air weakens the flow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own choice: 5 %; filling computed from the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air that stays in a hose takes part of the few millimetres of head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re-route the hose so that it rises all the way, or put a bleed at the crest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater chamber not full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filling computed from the drawing; the element has to be covered (common practice)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An element that is not covered by coolant burns out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill higher, let the air out, or turn the heater so that its outlet is at the top.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air to be cleared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clearing velocities after Kalinske and Bliss (1943), Wisner (1975), Kent (1952), Escarameia (2007), which scatter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the engine&apos;s pump does not push out stays, and air comes out of cold coolant again when it warms.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bleed at the crest, or re-route; run the engine, top up, and look again after the first night.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant falls under its minimum in the cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shrinkage of the coolant to the coldest ambient, from its density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A level that falls lets air into what stood just under it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill higher, or have a larger tank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant leaves the heater too hot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant hotter than 180 degF at the outlet boils on the element and ages hoses and coolant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let more coolant flow: a larger bore, shorter hoses, a lower heater, ports farther apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close to boiling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own choice: 5 K; boiling point after Raoult&apos;s law</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steam drives the coolant out of the chamber and bares the element.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let more coolant flow, and check the pressure cap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose starves the flow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>computed: the smallest stock bore with which outlet and cycles keep to their limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hose too small for this heater and these heights lets too little through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a larger hose and larger hose ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater cycles too often</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A heater that turns itself off and on warms itself, not the engine, and wears out its thermostat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose ports farther apart, a larger bore, or a smaller heater.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Engine does not get warm enough</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>computed from heat loss and power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In this cold and wind the engine loses what the heater gives before it is warm enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a larger heater, keep the wind off the engine, or be content with less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} rises only {0} over {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} falls {0} over {1}, where it should rise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is level over {0}, where it should rise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give it at least {0} more rise over {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} spans {0}, near level, without a clip.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has {1} long spans, near level, without a clip; the longest is {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a clip at least every {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}, from frame to engine, is only {0} longer than straight and has no bend: the engine pulls at its ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make it at least {0} longer, or lead it round a bend of {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has no isolation valve near {b}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has its isolation valve {0} from {b}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put an isolation valve within {0} of {a}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has a closed isolation valve: nothing circulates.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has a closed isolation valve, and so has the heater&apos;s other hose: the heater is a sealed vessel and builds dangerous pressure when heated.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the heater off, let it cool, then open both valves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is a cabin heater line with its shut-off closed: nothing circulates.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the shut-off whenever the heater is on, or use another port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has a lift check valve, which does not open on a few mm of head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has a swing check valve, which does not open on a few mm of head unless it is hung to fall open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where the thermostat turns on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where the thermostat turns off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the ambient temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the engine&apos;s mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coolant is slush at the start, so no warm-up can be computed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no warm-up could be computed: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} lets its coolant out at up to {0} while it is on, over {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} lets its coolant out at {0}, and it may be up to {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} comes within {0} of boiling.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} boils its coolant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} starves on hoses of {0}: with {1} its outlet and its cycles would keep to their limits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use hose of {0} bore or more, with hose ends and valves to match.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} turns on {0} times in its worst hour, over {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} turns on {0} times in its worst hour, and it may be {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the wind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The engine gets to {0} in {1} hours, and {2} is wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The engine may not get to {0} in {1} hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock out the heater&apos;s power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mains voltage. Switch off, lock, tag, and try it: a heater that is off by its thermostat is not dead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Disconnect and lock out the battery</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody may crank the engine while hands are at belts and fan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inhibit the generator&apos;s automatic start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A generator set starts by itself when the mains fail. Where there is none, tick and go on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chock the wheels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never work under a vehicle that is not supported.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Block the air suspension</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air suspension sinks without warning. Where there is none, tick and go on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the pressure cap, cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hot coolant under pressure scalds. Open it only when a bare hand can stay on the upper hose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drain and flush</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Antifreeze is poisonous: catch all of it, keep it from animals, have it disposed of properly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mount the heater on the frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Support the heater while it hangs free. Look behind a rail before drilling it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Route and clamp the hoses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep clear of exhaust, belts, fan and shafts. Return rising all the way, supply without a high point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the isolation valves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A heater between two closed valves is a sealed vessel and bursts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mix the coolant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wear gloves and goggles. Poisonous; mark the can.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill slowly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The element burns out without coolant: the heater stays locked out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run the engine until its thermostat opens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outdoors or with extraction only. Hands, hair and sleeves away from belts and fan. The heater stays locked out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop the engine and let it cool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not open the cap to hurry it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inspect every joint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Engine off, battery locked out again. Hot parts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top up, cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the cap only when a bare hand can stay on the upper hose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have the power connected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grounded supply by the local electrical code and a licensed electrician. Still locked out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Energise the heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never without coolant in the chamber, never with a valve closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verify: take readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hot coolant and pressure: read by instrument before you touch. Switch off before a valve is closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recheck after the first night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock out the power before a clamp is tightened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next who works here must know that the heater can turn on by itself: leave the label.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no step &quot;{a}&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not yet. First: {a}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done out of order, and recorded as such. Still open: {a}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not ticked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These rest on it and may no longer hold: {a}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wait until a bare hand can stay on the upper hose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}: {0}. Measure that no conductor carries it any more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}: its voltage is not entered. Measure that no conductor is live.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The engine holds about {0}: have vessels for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much the engine holds is not entered: have vessels enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flush until the water runs clear: sediment settles in the heater, the lowest place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}: its top {0} under the lowest point of the water jacket.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is drawn on the engine: it would shake with it. The frame is better.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}: cut {0}, bore {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}: cut {0}; its bore is not entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing still has {0} findings that stop the job: mend them first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open: the valve in {a}, {0} along it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open: the valve in {a}, {0} along it. It is drawn closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No isolation valve is drawn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the shut-off of {a}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind and share of antifreeze are not entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plain water is drawn: it freezes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} antifreeze by volume ({a} glycol), at most {1}; the rest deionised or distilled water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ethylene</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>propylene</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hoses and heater take {0} more than the engine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much hoses and heater take is not computed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To come to {0} of antifreeze ({a} glycol): drain {1}, add {2} of antifreeze and {3} of distilled water{b}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in %1 rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filling is not computed: fill to the cold full mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the filler, slowly, {0} into hoses and heater.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under vacuum, {0} into hoses and heater.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From below, {0} into hoses and heater.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} was let out of the engine before: {1} to pour in altogether.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bleed {a} at its crest, {0} up and {1} along it: {2} of air stay there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled as drawn no air stays that closes a bore.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Until the upper hose turns hot, at about {0}; cabin heater open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every clamp, thread and valve, with light and mirror; the heater&apos;s fastening; hoses off what is hot or moves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} hose ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the cold full mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cold full mark is not entered: to the tank&apos;s own mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}: power or voltage is not entered, so its current is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}: {0} at {1}, three phases, {2} in each conductor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}: {0} at {1}, {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These are load figures for the electrician, not an instruction to wire.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both hose ends of the heater full, level at the mark. Note the time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}: the return hose is warm to the hand at the engine after about {0} min.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings after 15, 30, 60 and 120 min: ambient, inlet, outlet, return hose, current, level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits: outlet at most {0} the whole time, at most {1} cycles an hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Engine at its target of {0} after about {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The target of {0} is not reached, or not computed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}: what to expect is not computed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected of {a}: outlet {0} at its hottest ({1-2}), cycles in the worst hour: {3} ({4-5}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected of {a}: outlet {0} at its hottest, cycles in the worst hour: {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level, clamps, and the return hose warm at the engine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best after a night near {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it was stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the loop of this heater is not closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no heater yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no heater &quot;%1&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>when the heater was energised is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there are no readings of this heater yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no reading has a time after the heater was energised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing wrong: it runs as drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take another reading in half an hour and see whether it still fits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air in {a}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater off and locked out, system cold: open a bleed or loosen the hose at its crest; air comes first, then coolant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the air out at the crest, top up, and give the hose a rise all the way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The valve in {a} is closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater off first. Look at the handle: across the hose means closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open it fully, then energise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The valve in {a} is half closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the handle: it has to lie along the hose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open it fully.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} has collapsed inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater off, cold: press the hose between two fingers along its length; a soft or flat place gives way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace the hose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hoses are a size smaller than drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the size printed on the hose, and measure the bore of a hose end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit the drawn size.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The ports at the engine are swapped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follow the hose from the heater&apos;s inlet: it has to lead to the low port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the hoses over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hoses at the heater are exchanged, the flow runs backward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follow the hose from the heater&apos;s upper nozzle: it has to lead to the high port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the hoses over at the heater.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant is under the return port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cold: look at the level in the surge tank; under the mark means low.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power off. Find the leak, fill, bleed, top up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The supply has half the heater&apos;s voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An electrician compares the voltage at the heater with its rating plate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have the heater supplied with its rated voltage.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The supply is a phase voltage: 0.87 of what is drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have it supplied with its rated voltage, or take a heater made for this one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One phase is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An electrician measures the current in each of the three conductors.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have fuse, contactor and terminals looked at.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The element is dead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locked out: measure the resistance across the element; open means dead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace the element.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thermostat is stuck on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch whether it ever turns off above its point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace the thermostat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thermostat is stuck off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locked out and cold: measure across the thermostat; open below its turn-on point means stuck.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The element is scaled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drain and take the element out: a crust is scale. The other readings hardly show it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace the element; flush; deionised or distilled water only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The over-temperature cut-out has tripped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locked out: measure across the cut-out; open means tripped. Find out why before it is reset.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mend what made it hot, then reset it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The breaker or the ground-fault device has tripped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the breaker and the ground-fault device. An electrician measures insulation before it is reset.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have the fault to ground found first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scale or sediment blocks {a}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cold and drained: probe the opening through the fitting.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean the opening, flush the engine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is kinked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follow the hose by eye and hand, behind brackets too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reroute with a larger bend, or an elbow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is a check valve in {a}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for an arrow on a fitting in the hose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it out: a few mm of head do not open it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The engine&apos;s own thermostat is stuck open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feel the upper radiator hose: warm with the engine cold means that it lets coolant through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace the engine&apos;s thermostat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The remote sensor hangs in the air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the sensor: it has to sit tight on the engine, away from the return port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fasten it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air in {a}, {0} up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clip-on thermometer on the metal at the heater&apos;s inlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clip-on thermometer on the metal at the heater&apos;s outlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>return hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>infrared thermometer on the rubber of the return hose at the engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>engine block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>infrared thermometer on the block beside the return port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clamp meter round one conductor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>voltmeter at the heater, by an electrician</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coolant level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rule at the surge tank, from the cold full mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>feel the supply hose one hand from the heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>feel the return hose at the engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Now %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In %1 min %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: cold means &quot;%2&quot;, warm means &quot;%3&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read the %1 (%2): about %3 means &quot;%4&quot;, about %5 means &quot;%6&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only whether power was on was read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Speaks against it: the {a} was {0} after {1} min, where {2} is expected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All is near what is expected; farthest off is the {a}: {0} after {1} min, where {2} is expected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {a} was {0} after {1} min: this fault gives {2}, the job as drawn {3}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Speaks against it: the {a} was {0} after {1} min: this fault gives {2}, the job as drawn {3}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not judged against the drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over the limit of {0}. Switch off and find out why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fits: {0} to {1} expected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower than expected: {0} to {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Higher than expected: {0} to {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not judged: the cold marks of the surge tank are not entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under the cold minimum, {0} under the full mark. Power off, find the leak, top up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over the hot mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between the marks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not judged: rated power or rated voltage is not entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fits: {0} is its rated power at {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too little: its rated power at {1} would be {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too much: its rated power at {1} would be {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off: its thermostat may well be open then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draws nothing, where it should be on and draw {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cycles: not judged, no switching off was noted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cycles: not judged, it was not seen to turn on again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On {0} times within an hour, over the limit of {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On {0} times within an hour at most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the loop of this heater is not computed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coolant&apos;s properties are not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Port %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Area %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>neither the coolant of the whole system nor that of the engine is entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The kind of antifreeze to add is not entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The kind of antifreeze in it now is not known, and kinds must not be mixed: find it out, or drain and flush all of it and choose a fill from empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In it now is another kind of antifreeze, and kinds must not be mixed: drain and flush all of it and choose a fill from empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chloride</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sulphate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hardness as CaCO3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>total solids</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ASTM D6210, appendix X1 (from memory); same figures in TM 5-3895-383-24, table 15 (US Army)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more than %1 lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more than %1 fields in a line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a field of more than %1 bytes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a quote inside a field that does not begin with one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a control character that ends no line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>text behind the quote that ends a field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a field in quotes that does not end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a line of %1 fields, where the first has %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1, column %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a file of more than %1 MiB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a byte that is not UTF-8 text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is to be cut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No length of roll is entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A length is not over 0 and at most 10 km, or there are too many cuts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cut is longer than the longest roll.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A volume has to be from 0 to {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to fill.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The share of antifreeze has to be from 0 to 100 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is not planned for: over {1} antifreeze by volume coolant carries less heat and freezes earlier again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is not reached: coolant would have to be drained, and nothing runs out at the drains.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is not reached: only {1} runs out at once, and after {2} rounds of draining and filling with antifreeze the coolant is at {3}. Drain elsewhere too, or flush and fill afresh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is not reached: only {1} runs out at once, each round leaves antifreeze behind, and after {2} the coolant is at {3}. Drain elsewhere too, or flush and fill afresh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draining all of the {0} that runs out at once is not enough: it gives {1}. {2} rounds are needed, with the engine run in between until its thermostat opens.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drain {0}, then fill.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drain {0}, then fill. How much runs out at the drains is not entered: see that so much does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing has to be drained: fill the new hoses and chambers as stated.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coolant is as wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its power is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>neither the supply&apos;s voltage nor its own is entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its rated voltage is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it needs three phases and the supply has one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Single-phase heaters on three phases: counted as if all were on the same two conductors, the most that any carries. Shared out as evenly as can be it is {0}, {1} at 125 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The supply&apos;s voltage is not entered: the current of all heaters together is not computed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The supply&apos;s phases are not entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The conductor&apos;s size is not entered: the voltage drop is not computed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The length of the run is not entered: the voltage drop is not computed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is not a size of the tables; 12 AWG or 4 mm2 are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is rated for {0}. On {1} it would take {2}: do not connect it, the element burns out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The warm-up of {a} is computed at {0}, which is entered with the heater; the supply has {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drop is over the {0} that is advised for a branch circuit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The supply&apos;s voltage is not entered: the heater counts on its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mark-up on materials is not entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The prices of materials are not final.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The amounts are too large to reckon with.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The currency is not entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Travel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Consumables</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Disposal of old coolant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not priced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quantity not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>priced by &quot;%1&quot;, which is no measure of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tank heater: {a}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Item %1, %2: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The labour rate is not entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>labour rate not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: not entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tax is not entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bore is not entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make safe, drain and catch the coolant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean ports, fit adapters and hose ends</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut, route and clamp the hoses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit valves and other in-line parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run and connect the supply, by a licensed electrician</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flush, fill, purge and top up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Energise, take readings, check for leaks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand over with sheet and checklist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not a number such as 1250 or 12.5, without a sign for thousands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a whole number is wanted here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1 decimals are wanted here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too large a number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tank heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mounting kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Adapter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Core plug adapter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tee for lower radiator hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tee for cabin heater line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Elbow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moulded elbow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reducer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Isolation valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bleed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lift check valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swing check valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose clamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose clip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose insulation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thread sealant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>antifreeze</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Antifreeze concentrate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distilled water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The start of {a} is on nothing: what it is pushed onto is not counted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The end of {a} is on nothing: what it is pushed onto is not counted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, inlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, outlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>size of the line not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thread not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to hose end {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} to hose end {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rated voltage not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power and rated voltage not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, {1}, three phases</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bore of %1 not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chamber volume of {a} is not entered: taken from its drawn chamber.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} glycol</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kind of antifreeze not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brackets, bolts and washers as the heater&apos;s manual has them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not needed where adapter or nozzle has its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One container, for {0} threads; fit for coolant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To come to {0} of antifreeze in {1}; drain {2} first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fills the new hoses and heater only: top up what is lost in the work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share of antifreeze not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bore not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bore {0}, wall {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hose&apos;s bore not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two on each hose end: common practice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} to {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}, {0} along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of one piece with the hose; bought singly it also takes joiners and clamps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} wants one more than is drawn, by the spacing rule.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} wants {0} more than are drawn, by the spacing rule.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for {0}, {1} thick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>description</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>currency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no column named &quot;%1&quot;; fields have to be set apart by commas, not by semicolons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no column named &quot;%1&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a second column named &quot;%1&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the price &quot;%1&quot; was not understood: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a price under nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too large a price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no currency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the currency &quot;%1&quot; in a list of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an item without a key of 1 to 200 bytes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a second line for the item &quot;%1&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a description of more than 500 bytes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the unit &quot;%1&quot; is none of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an empty file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more than %1 prices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a list without a price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The list is in %1, the estimate in %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Amounts are entered with %1 decimals, and %2 has %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the ambient temperature is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to sample.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bands take 20 to 100000 samples.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The range of {a} does not hold together.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bands were stopped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>circulates on {2} of head, into the heater at {0} and out at {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>circulates in reverse on {2} of head, into the heater at {0} and out at {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the balance was not found within {a} Pa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air takes {0} of head, and the loop can raise {1} at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing drives it: the warm column is not above the cold one ({0} of head)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coolant would be under {0}, where it freezes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coolant would reach {0} before enough of it flows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a closed valve withstands the {0} of head that drives</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the resistance is that of a loop of {a} elements</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>boiling in degC must be over the freezing point, not {a}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coolant has no range of temperature with properties over 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>element {a}: {b}, not {c}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length in metres must be 0 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rise in metres must be a number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bore in metres must be over 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>area in square metres must be over 0, or 0 for a round bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power in watts must be a number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heat exchange in W/K must be 0 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature of surroundings in degC must be over -273.15</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share at outlet temperature must be from 0 to 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pocket&apos;s head in metres must be 0 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a loss&apos;s bore in metres must be over 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the loop has no elements</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the loop has too many elements: {a}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the loop does not close: its rises add up to {a} m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no element of the loop resists flow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start temperature in degC must be over -273.15, not {a}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no element of the loop takes heat out, and {a} W are put in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The voltage has to be over 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is computed over {0}: that is no low voltage.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A supply has 1 or 3 phases.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The power has to be over 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is computed over {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No conductor is that cold or hot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is not in the tables in aluminium.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Current and resistance have to be over 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The run&apos;s length has to be over 0 and at most {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The conductor is far too small for this run: more than a third of the voltage would be lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power and hours must not be negative.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a loss coefficient must be 0 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a coefficient&apos;s exponent of the Reynolds number must be from 0, under 2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a length must be 0 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>roughness must be 0 or more and less than the bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a bend&apos;s angle must be 0 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a bend&apos;s centre-line radius must be at least half the bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a hose end&apos;s own bore must be over 0 and at most the hose&apos;s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a bore must be over 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an area must be over 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a factor must be over 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coolant&apos;s properties are not known over any range.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At {0} the coolant is slush: it freezes at {1}. Nothing circulates.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heater&apos;s rated power has to be over 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heater&apos;s rated voltage has to be over 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The supply voltage must not be negative.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heater&apos;s chamber has to hold coolant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heater&apos;s own heat capacity must not be negative.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chamber&apos;s own convection has to be over 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thermostat has to switch on at a lower temperature than off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thermostat&apos;s sensing fraction has to be from 0 to 1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thermostat&apos;s lag has to be over 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cut-out&apos;s trip temperature is not a number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cut-out has to reset at a lower temperature than it trips.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The element&apos;s diameter and flux have to be over 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chamber, hoses and jacket each need an element.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return and supply hose have to have a length.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hose&apos;s own heat capacity must not be negative.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The share of temperature at a hose&apos;s surface has to be from 0 to 1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The factor on pressure losses has to be over 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The share of the block that a loop sweeps has to be from 0.02 to 0.98.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The duration has to be over 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power has to come at 0 or later, and to go after it came.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The relative tolerance has to be from 1e-12 to 1e-2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The absolute tolerance has to be from 1e-12 to 1 K.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tolerance of switching times has to be from 1e-9 to 10 s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The time between samples must not be negative.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hoses and jacket take 2 to 20 cells.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no heater.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The block&apos;s heat capacity has to be over 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The engine has to hold coolant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The block&apos;s heat loss must not be negative.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Conduction within the block must not be negative.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The loops together sweep more than 0.98 of the block.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperatures have to be from -100 to 200 degC.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The start is at the boiling point already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A warm return has to be over the start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After {0} s the heater&apos;s chamber boils, at {1}; the heater was stopped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The engine is at {0} after {1} s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The warm-up was given up: it took more steps than allowed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The warm-up could not be followed past {0} s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After {0} s coolant is under its freezing point, {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bore is left: of those in stock, {0} fell to &quot;{a}&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pair of ports is left: {0} fell to &quot;{a}&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No place for the heater is left: {0} fell to &quot;{a}&quot; ({b}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No place for the heater is left: {0} fell to &quot;{a}&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No way for the supply hose is left: {0} of those tried fell to &quot;{a}&quot; ({b}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No way for the supply hose is left: {0} of those tried fell to &quot;{a}&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No way for the return hose is left: {0} of those tried fell to &quot;{a}&quot; ({b}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No way for the return hose is left: {0} of those tried fell to &quot;{a}&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every hose is sound by itself, but {0} of the loops they make fell to &quot;{a}&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn soundly, but filled, warmed up and tilted {0} of the loops fell to &quot;{a}&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coolant has to be mixed anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what is in the engine has to be found out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the tank has to be larger or filled higher</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it takes another kind of heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it takes a larger heater or less wind, or is not to be had</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with the bends next to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and lay its hoses anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set {a} upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay {a} level, its top to the right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay {a} level, its top to the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower {a} by {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {a} to the left by {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {a} to the right by {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {a} towards you by {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {a} away from you by {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise the filler or surge tank by {0}, and fill to match.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mount {a} to the frame.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {a} towards {b} by {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise {a} by {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay both hoses of {a} anew, straight out of their ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower this bend of {a} by {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise this bend of {a} by {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower {1} bends of {a}, the highest by {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise {1} bends of {a}, the lowest by {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead {a} so that it rises all the way: move {1} of its bends, the farthest by {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead {a} so that it falls all the way: move {1} of its bends, the farthest by {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave out bend {0} of {a}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move this bend of {a} up by {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move this bend of {a} down by {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move this bend of {a} to the right by {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move this bend of {a} to the left by {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move this bend of {a} away from you by {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move this bend of {a} towards you by {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open this bend of {a} to a radius of {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bend {a} tighter here, to a radius of {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a moulded elbow for this bend of {a}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead {a} straight out of its end for {0} before it bends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead {a} round a bend {0} to the side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay {a} anew: straight out of both ends, with {0} bends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the elbow on {a} so that it leads down by {0}, and lay {b} anew from there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add an isolation valve to {a} {0} from {b}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the heater cool, then open this valve of {a}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the reducer out of {a}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the check valve out of {a}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a clip to {a} at {0} from where it starts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add {1} clips to {a}, the first at {0} from where it starts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use hose of {0} bore for {a}, with hose ends and valves to match</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use hose of {0} bore on both sides, with hose ends and valves to match</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and lay it anew with wider bends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a hose end with a bore of {0} on {a}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a part with a bore of {0} in {a} here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take {a} instead of {b}, and lay {c} anew from there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take {a} instead of {b}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave {a} spare: no hose is on it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Connect {a} to {b}, and lay it anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Connect {a} to {b}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay a supply hose from {a} to {b}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay a return hose from {b} to {a}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay a supply hose from {a} and a return hose to {b}, both on {c}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Connect {a} to {b} and {c}, and lay it anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ground: {0} more than the least clearance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hot or moving things</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hot or moving things: {0} more than the least clearance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>span between clips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clips: the longest span could be {0} longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slack between frame and engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slack between frame and engine: {0} of its length more than the least.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heater under the jacket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater under the jacket: {0} lower than it has to be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant level: {0} over the highest point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fall of the supply hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply hose: {0} more fall than it needs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} keeps some coolant when it is drained.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {a} %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to the right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 away from you</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 towards you</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take {a} for the supply instead of {b}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take {a} for the return instead of {b}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the elbow on {a} so that it leads down by {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use hose of {0} bore, with hose ends and valves to match.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of hose of {1} bore, {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of hose of {1} bore; its flow is not computed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Its hoses may sag %2 before they hold air or coolant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Its hoses may sag more than %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} to spare.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} left: sag of {a}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} left: {a}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not sound on every grade that is judged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not judged, &quot;{a}&quot;: {b}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slack: every hose goes round a bend of {0} or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn {a} by {0} about its upright axis.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no heater to propose a layout for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the space for the heater is no box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a supply port and a return port are not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a supply port and a return port that no other hose is on are not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The number is too large or too small.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has a comma and a point: type thousands without a separator, as in 1234.5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has more than one decimal sign: type thousands without a separator.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could be %2 or %3.%4: type one of these, with a point for decimals and nothing between thousands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A fraction cannot have 0 under the line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no number at “%1”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The fraction after a whole number must be less than 1, as in 1 1/8.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was typed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Expected is %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” after the number was not understood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a unit that fits here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is colder than absolute zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a % sign the number must lie between -1 and 1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” after the length was not understood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only inches can follow feet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inches after feet must be fewer than 12.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>falls %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rises %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The second number of a slope must be over 0, with nothing after it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The text is too long to be a quantity.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The number is too large.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>falls steeply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>falls 1 in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a plain number such as 3 or 1.5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a length such as 19 mm, 1.9 cm, 3/4 in or 2 ft 3 1/2 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a head such as 9 mm or 0.35 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a volume such as 250 ml, 1.2 l, 8 fl oz or 2 qt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a volume such as 12 l, 500 ml, 2 qt or 3 gal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a mass such as 450 kg or 990 lb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a temperature such as 82 °C or 180 °F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a temperature difference such as 5 K or 9 °F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a power such as 1500 W or 1.5 kW</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an energy such as 12 kWh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a voltage such as 120 V</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a current such as 12.5 A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a pressure such as 103 kPa, 1 bar or 15 psi</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a pressure such as 88 Pa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a speed such as 4 m/s, 15 km/h or 9 mph</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a percentage such as 50 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an angle such as 15 or 15°</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an altitude such as 1200 m or 3900 ft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 bores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a number of bores such as 6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a share such as 70 % or 0.7</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a slope such as 1 in 50, 1:50 or 2 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a time such as 24 h, 90 min or 2 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a flow such as 3.5 l/min or 0.9 gal/min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a resistance such as 0.35 Ω</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a resistance by length such as 4.61 Ω/km or 1.24 Ω/kft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a section such as 2.5 mm²</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a share such as 40 ppm or 40 mg/l</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a loss such as 18 W/K or 10 W/°F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loss of hose ends, times the formula</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hooper (1988); no measurement at such slow flow is known, +-15 % of flow comes from here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loss of valves, elbows and tees, times the formula</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hooper (1981), an extrapolation under 1 in: +-35 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>viscosity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Viscosity of the coolant, times the formula</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Melinder (2010); published tables differ by so much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>buoyancy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fall of density with temperature, times the formula</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Melinder (2010); the ASHRAE tables (2001) give 10 to 20 % less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>roughness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Roughness of hoses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice: rubber and silicone count as smooth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of the chamber&apos;s height at its outlet&apos;s temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own choice: half drives about what an even rise does; none and all are the bounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat from coolant to block in the jacket, times the estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own estimate: natural convection of a film of 100 W/m2 K over the jacket&apos;s surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of the engine that the loop reaches, times the estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own choice: distance between the ports over the engine&apos;s length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Conduction from the part reached to the rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own estimate: iron of 50 W/m K over 0.05 m2 and 0.3 m, and coolant moving by itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat loss of the engine, times the formula</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>McAdams (1954) over five of six faces of a box round the engine, common practice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of the wind that reaches the engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own estimate: an engine stands behind bodywork or in an enclosure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of the wind that reaches hoses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Engine mass where it is not entered, per litre of displacement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from memory: iron diesel 75 to 110 kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Specific heat of iron</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from memory, textbooks: grey iron 460 to 540 J/kg K</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Specific heat of aluminium alloy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from memory, textbooks: 880 to 960 J/kg K</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant in the engine where it is not entered, per litre of displacement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from memory: 1 to 2 litre in the engine alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat held by chamber and element</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own estimate: 1.5 kg of steel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chamber&apos;s own convection when little flows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of the chamber&apos;s heat that a thermostat at the inlet senses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own choice, by conduction through the body it sits in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lag of the thermostat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own estimate: 20 to 60 s in a well</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thermostat turns on, where it is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice: 100 degF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thermostat turns off, where it is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice: 120 degF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Block temperature for which flow is shown on the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own choice: an engine that is kept warm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Head of the engine&apos;s pump between two ports of the block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own estimate, at a fast idle; pumps differ</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Head of the engine&apos;s pump between its suction and a port of the block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own estimate, at a fast idle with the thermostat open; pumps differ</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant with the engine running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice: a usual thermostat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant in the surge tank per metre of its height, times the engine&apos;s own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own estimate: tanks are made to take what the coolant grows by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the loop of %1 is not closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has no length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the power of %1 is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>neither the engine&apos;s coolant volume nor its displacement is entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>properties of coolant are known only up to 60 % of antifreeze</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the hump in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the dip in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the change of bore in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the valve in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>toward %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>into the engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>into %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the inlet of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the outlet of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant runs through {a}, {0} up, {b}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant spills over {a}, {0} up, {b}; the air behind it is sealed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant spills over {a}, {0} up, {b}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant fills {a} to its crown, {0} up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant covers {a}, {0} up: air that is still behind it is sealed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant covers {a}, {0} up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant closes {a}, {0} up: the air beyond it is sealed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant closes {a}, {0} up: air no longer passes there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant no longer runs over {a}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} lets air pass again, {0} up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air bubbles through {a}, {0} up, {b}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No more air bubbles through {a}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant reaches the bleed of {a}, {0} up; it is closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant covers the element of {a}, {0} up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hose is pushed onto {a}, {0} up, over the coolant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is opened, {0} up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The vacuum is let go: what air is left shrinks to a fraction.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filling is not computed: {a}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The engine is full; hoses and heater were filled before they were connected, and {0} of air got into each hose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The engine is full; hoses and heater were filled before they were connected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything is pumped down to a vacuum, and coolant is let in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant is pumped in from below, at {a}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of coolant was let out of the engine, down to {1}; the new hoses are empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of coolant was let out of the engine, down to {1}; the valves are shut and the new hoses empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The engine is full, the valves are shut and the new hoses empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant is poured in at the filler.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled to {0}: {1} of coolant in hoses and chambers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled no further than {0}: {1} of coolant in hoses and chambers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{2} was let out before, and {3} has to be poured in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the chamber of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of air stay in {a}, {1} up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of air stay in {a}, {1} up: they close the bore and take {2} of head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of air stay in {a}, {1} up: they narrow the bore.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running the engine does not move it: {0} in the hose, and {1-2} clear it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running the engine may clear it: {0} in the hose, and {1-2} clear it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running the engine clears it: {0} in the hose, and {1-2} clear it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running the engine does not move it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After the engine has run and cooled, top up {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At {0} the coolant has shrunk and stands at {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant does not cover the element of {a}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the engine running nothing is known to flow through {a}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the engine running {0} pass through {a}, from its supply port to its return port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the engine running {0} pass backward through {a}, from its return port to its supply port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 They bypass the radiator.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no loop with a heater yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the coolant level at cold full is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filling could not be computed: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>isolation valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the %1 in %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the hose end at the start of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the hose end at the end of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no engine yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>neither the engine&apos;s mass nor its displacement is entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the engine&apos;s outline is not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the engine&apos;s outline has no size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensor port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drain port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Core plug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower hose tee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Head port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cabin line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exhaust</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turbocharger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat shield</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Belt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shaft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steering</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suspension</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep clear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dimension</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the file: found %1, but allowed is %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At %1: found %2, but allowed is %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expected %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>well-formed JSON</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more than %1 values in one file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a sketch of fewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a list of more than %1 items</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a list of at most %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more than %1 levels of nesting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a key that stands here twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each key once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more than %1 keys in one object</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a finite number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the end of the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the rest of the sketch: the file is cut short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a choice that does not exist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, which %2 has too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an id of its own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an end that is on a port and on a heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a port, a heater, or neither</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the id of a port of this sketch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the id of a heater of this sketch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a list of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an object</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a value, as this key is required (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an unknown key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the keys of the format only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>true or false</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a liquid-cooled engine only: an air-cooled engine has no water jacket, so a coolant heater cannot be fitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a sketch, which is a JSON object</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, the mark of a Siphonwright sketch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>version %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up to version %1: this file comes from a newer Siphonwright than this one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the whole number %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a file of %1 MiB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1 MiB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing: the file is empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a sketch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>JSON in UTF-8</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more than fits into this computer&apos;s memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a smaller sketch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jacket, lowest point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>underside of the water jacket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jacket, highest point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top of the head&apos;s jacket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>middle of the opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thermostat housing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>middle of the housing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tank cap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sealing face of the filler or surge tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tank mark, cold minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beside the cap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tank mark, cold full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tank mark, hot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Block, front face to rear face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>along the block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frame rail over the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upper edge, at the block&apos;s front face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frame sinks further by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to lowest ride height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply port to return port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>straight, tape from opening to opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slope of the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inclinometer; + is higher at the engine&apos;s front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slope of the frame rail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likewise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slope of the engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on a machined face along the crankshaft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}: {b} not measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a}: {b} not noted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} not noted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place of the engine&apos;s thermostat, outlet or inlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Antifreeze in it now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P was not measured: the floor is taken as level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>R was not measured: the frame rail is taken to run along the floor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S was not measured: the engine is taken to stand as drawn, {0} to the floor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mount angle stays as drawn, {0}: it is S less P.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing&apos;s datum is the floor: nothing was measured from the frame rail.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was measured from the floor cannot be drawn without L.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The ground is not drawn: where it lies at lowest ride height needs M.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By C and D the ports are {0} apart, by N {1}: measure again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} is not under {b}: measure again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{a} not measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tank heater, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In-line 4, medium diesel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In-line 6, highway diesel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In-line 6 laid flat, underfloor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>near bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>far bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vee 6, medium diesel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vee 8, heavy diesel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vee 12, generator set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a sketch of %1 MiB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1 MiB; a smaller photo may help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply hose %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return hose %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>direction</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright</name>
    <message>
        <source>Draw an area to keep clear of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edge %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click the corners of what is hot or moves; Backspace takes the last one back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click further corners; Enter, a double-click or a click on the first corner closes the area.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is larger than the largest drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It holds no parts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the middle of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the inlet of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the outlet of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the top of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the foot of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a free place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the jacket&apos;s lowest level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the jacket&apos;s highest level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the level cold minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the level cold full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the level hot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a place on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the outline of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Horizontal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vertical</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slope</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw a dimension</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Along the hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click what to measure from; Tab goes from one thing to the next, Enter clicks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click what to measure to; Backspace takes the first back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click where its line goes. H, V, A, S: horizontal, vertical, along, slope.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drop under the jacket %1, at least %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drop under the jacket %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 along the hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length of the hose %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rises</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>falls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 plumb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hump %1, holds %2 of air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dip %1, holds %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tilt %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw a supply hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw a return hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This piece %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>supply hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>return hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click to begin the %1 at %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click a port or nozzle to begin the %1, or an empty place to leave its end open. Arrow keys move the cross-hair, Tab goes to the next port or nozzle, Enter clicks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The %1 begins here; it ends on another port or nozzle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click to end the %1 on %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click to put a point. A port or nozzle, Enter or a double-click ends the %1; Backspace takes the last point back, Escape gives up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>point %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the start of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the end of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clip %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>isolation valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bleed point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lift check valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>swing check valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reducer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corner %1 of the engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the water jacket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corner %1 of the water jacket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the thermostat housing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the surge tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corner %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the ground line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the dimension</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Engine, corner %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water jacket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water jacket, corner %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thermostat housing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Surge tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, point %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, clip %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, corner %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ground line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photograph</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level the photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As drawn now %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type what was measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click a point in the photo; then another, as far away as you have measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click the second point. Backspace takes the first one back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click two points along something that is level in truth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click the second point along it. Backspace takes the first one back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click the corners of a flat rectangle whose width and height you know: %1 left. Backspace takes the last one back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place a port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place a heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place the surge tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top under the jacket %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click on the jacket&apos;s or the block&apos;s edge to place a port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click to place a port here, its thread pointing outwards.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click where the middle of the heater goes. Arrow keys move the cross-hair, Enter clicks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click where the surge tank goes: its marks give the coolant level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an isolation valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a bleed point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a clip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Point at a hose and click to place %1 there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click to place %1 in %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Release to select what lies wholly in the band: %1. Escape stops.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drop it on a port or nozzle to connect it, elsewhere to leave it open. Escape puts it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold Alt to place it freely. Escape puts it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click to select this finding.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag to turn %1 in steps of 15 degrees; full stop and comma turn it too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click to select %1, drag to move it, double-click to insert a point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click to select %1, drag to move it, double-click an edge to add a corner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click to select %1, drag to move it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press J to connect it to the nearest port or nozzle, again for the next; arrows move it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrow keys move %1, a drag too; Delete removes them; Shift+click adds or takes out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrow keys move %1, with Shift finely; Delete removes it; Tab goes to the next part.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click a part to select it, drag to move it; drag over empty ground to select several.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insert a point in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a corner to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Connect %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place a clip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place a part in a hose: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plumb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>just under the coolant&apos;s level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 under the coolant&apos;s level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 over the ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 clear of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top %1 under the jacket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>just no hump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>just no dip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corner of the engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corner of the jacket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in line with the next piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bend radius just %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in line with the last piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slope to snap to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rise over length, from 1 in 2 to 1 in 1000, such as 1:50 or 2 %:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The language changes when Siphonwright is started again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>along %1, height %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>findings: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::AboutText</name>
    <message>
        <source>Work is for a qualified technician. The heater&apos;s and the engine&apos;s own manuals rule over this program; its figures are estimates from stated assumptions.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Disconnect and lock out the power while working. Inhibit a generator&apos;s automatic start. Chock the wheels, block air suspension, never work under an unsupported vehicle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the cap only when the engine is cold: hot coolant is under pressure and scalds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the heater off before a valve is closed. With both valves closed the heater is a sealed vessel, and pressure builds up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never turn the heater on without coolant in its chamber, nor before the loop is purged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run the engine outdoors or with the exhaust extracted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grounded supply, the local electrical code and a licensed electrician.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Antifreeze is poisonous. Catch it and dispose of it properly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About Siphonwright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&lt;h3&gt;Siphonwright %1&lt;/h3&gt;&lt;p&gt;Draws, checks and hands over installations of tank-type coolant heaters.&lt;/p&gt;&lt;p&gt;Findings are estimates from stated assumptions and common practice; each names its basis. What was not entered is not judged.&lt;/p&gt;&lt;p&gt;Built with Qt under the LGPL 3 and JSON for Modern C++ under the MIT licence; lettering in Inter under the SIL Open Font Licence 1.1.&lt;/p&gt;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air-cooled engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An air-cooled engine has no water jacket: there is no coolant for a tank heater to draw in and to warm, so it cannot be drawn here.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::Actions</name>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>several parts have to be selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least three parts have to be selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no hose or outline is selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no heater or port is selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing with corners is selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no end of a hose is selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no valve, bleed or drain is selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no hose is selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no engine yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no photo yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a port and a heater come first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no finding is selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no warm-up yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no warm-up to keep, or it is kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no curve is kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only while demonstrating</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::ChecklistCommands</name>
    <message>
        <source>Save the checklist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 checklist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The checklist could not be written.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::CommandSearch</name>
    <message>
        <source>Find a command</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What do you want to do?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words of the command</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Commands that match</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing to undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing to redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tools</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not now: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No command has these words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up and down choose, Enter runs, Escape closes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” cannot be done now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” cannot be done now: %2.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::DemonstrationCommands</name>
    <message>
        <source>Show a second drawing beside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sketches (*.siphon)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export this moment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PNG (*.png)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SVG (*.svg)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the handout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder for the pictures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The second drawing could not be opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The moment could not be written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pictures could not be written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The handout could not be written.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::Document</name>
    <message>
        <source>%1 cannot be opened: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be read: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is larger than %2 MB and cannot be a sketch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be written: %2.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::ElevationView</name>
    <message>
        <source>Nothing selected that can be copied.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This could not be copied.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut %1; Ctrl+V puts it down again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no parts on the clipboard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is on the clipboard cannot be put on the drawing. Nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These parts do not fit into this drawing. Nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing has an engine already, so the copied one was left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing has a surge tank already, so the copied one was left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put down %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Align %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They are in line already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space %1 evenly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They are evenly spaced already, or fewer than three can be moved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept %1; Tab goes on to the next.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open or close %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place an area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It goes into a hose: drop it on one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It goes into a hose: select the hose first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side elevation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Selected: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag to move the paper; the wheel zooms to the pointer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End view from the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End view from the rear</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::FileCommands</name>
    <message>
        <source>Sketches (*.siphon)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>untitled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a sketch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be opened. The drawing on the table is as it was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the sketch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has changes that are not saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Siphonwright</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::FindBar</name>
    <message>
        <source>No part has such a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find by name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts that match</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::FirstSteps</name>
    <message>
        <source>engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place an engine: take the picture that comes nearest, and shape it by dragging later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose an engine…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>supply port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark the supply port, low at the front, where coolant leaves the jacket.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>return port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark the return port, high at the rear, where warm coolant comes back in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place a heater well under the jacket, so that warm coolant rises by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a heater…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>supply hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the supply hose: click the supply port, then point by point, last the heater&apos;s inlet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>return hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the return hose from the heater&apos;s outlet to the return port, rising all the way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>valves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put an isolation valve into each hose, near the engine: click the hose with this tool.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the findings, those that stop the job first: each shows its place and a way out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the sketch: its file is the record of the job.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;kip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on to the next step without this one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the first sketch; Help begins it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the first sketch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is a job that works, to look round in. Change anything, it is not saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Draw your own, step by step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is a whole sketch. The menu Job goes on: warm-up, parts and cuts, checklist.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::MainWindow</name>
    <message>
        <source>New drawing with an engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place an engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place a heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Panels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Details</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On grades</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater size and supply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Commissioning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Layouts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag a rectangle in which the heater may hang, or click two opposite corners.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>across %1, height %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>along %1, height %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1[*] – Siphonwright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no free port, heater or hose for this yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Demonstrate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet &amp;paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After the units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tabloid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No file yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Te&amp;xt size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Snap &amp;to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Insert</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tools</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the warm-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PNG (*.png)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SVG (*.svg)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 warm-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The warm-up could not be written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::PaperCommands</name>
    <message>
        <source>Write as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the parts as CSV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pages could not be written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The parts could not be written.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::PhotoCommands</name>
    <message>
        <source>There is no picture in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo &amp;underlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo under the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was copied</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no picture in the clipboard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not put under the drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be kept in the drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is too narrow to be made small enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace the photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insert the photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is kept in the drawing: %2 × %3 pixels of %4 × %5, %6 kB. Next: straighten or scale it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scale by two points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far apart are the two points in truth?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straighten by a rectangle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How large is the rectangle in truth? Only what lies in its plane comes out true to scale: what stands nearer looks larger.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scale the photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The photo is not straightened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straighten the photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock the photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unlock the photo</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::PhotoFigures</name>
    <message>
        <source>Type the length as measured.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::SheetCommands</name>
    <message>
        <source>Export the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SVG (*.svg)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PNG (*.png)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheet could not be written.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::Shelf</name>
    <message>
        <source>Parts to put on the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Into the engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Surge tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Into a hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Isolation valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bleed point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heaters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Engines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To keep clear of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep-clear area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: drag it onto the drawing, or press Enter to put it in the middle</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::ShortcutsWindow</name>
    <message>
        <source>Shortcuts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find by words or keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a command by its words or keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Commands and their keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Command</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it does</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New keys: press them here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;No keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Back to default</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;All back to default…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take them from there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its default keys are with another command now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the keys of all commands back to their defaults?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tools</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 › %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (changed)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing&apos;s own keys cannot be changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keys for “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press the new keys in the field. Default: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 belongs to the drawing: choose other keys.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 now runs “%2”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 runs “%2” already. Nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::SurveyCommands</name>
    <message>
        <source>Blank survey form</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The form could not be written.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::TemplateGallery</name>
    <message>
        <source>%1
%2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2
%3 high, hose %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typical sizes, to be shaped to what stands before you. All to one scale.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Air-cooled engine…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::assumptions</name>
    <message>
        <source>Change an assumption</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the book&apos;s assumption</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>peak outlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cycles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time to target</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::assumptions::AssumptionForm</name>
    <message>
        <source>Keep for this drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the book&apos;s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Basis: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for example: measured on this engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In this drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changed; the book&apos;s: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as in the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the reason too: the sheet states it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::assumptions::AssumptionList</name>
    <message>
        <source>Assumption</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In force</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drives here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Basis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>little</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::assumptions::AssumptionWindow</name>
    <message>
        <source>Assumptions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures that nobody has measured, with what each rests on. Results come with a band over these ranges; a figure changed here is held.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search the assumptions</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning</name>
    <message>
        <source>%1. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Commissioning checklist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done by, time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimates from stated assumptions. The heater&apos;s and the engine&apos;s own manuals rule.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ambient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>V</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On/off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be written: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the checklist could not be drawn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over the limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMM HH:mm</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::CommissioningPanel</name>
    <message>
        <source>Heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>List</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diagnosis</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::DiagnosisView</name>
    <message>
        <source>The faults are being simulated…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A diagnosis appears when there are readings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not diagnosed: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What would give these readings, by simulation of each fault on this drawing. Estimates: make sure before a part is replaced.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ None of the faults listed explains these readings well. Check the readings and the drawing first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the readings as they were. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>or: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show on the
drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show on the drawing: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Probability %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make sure: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These readings cannot tell it from:</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::ReadingChart</name>
    <message>
        <source>Readings over what the drawing would give</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::ReadingsView</name>
    <message>
        <source>Remove this reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ambient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>＋ Add a reading now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turned on now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turned off now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>off %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When it was turned on is not entered: press &quot;Turned on now&quot; then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen to turn: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not judged against the drawing: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No readings of this heater yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove a reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note turning on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note turning off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot;: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a time: 25 Nov 07:30, or 2026-11-25T07:30.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change a reading</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::StepList</name>
    <message>
        <source>Steps of the work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 steps done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>☑  %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>☐  %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>
      %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>
      %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>
      ▲ out of order: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>
      ▲ what it rests on is open again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>
      waits for steps before it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::StepView</name>
    <message>
        <source>Done all the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not done after all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>◀ Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next ▶</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✓ Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why it is done before its turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>• %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step %1 of %2 · %3 done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>⚠ %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✓ Done %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✓ Done %1 by %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out of order: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not yet. First:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick &quot;%1&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take &quot;%1&quot; back</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::demonstration</name>
    <message>
        <source>%1 cannot be written: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the fill to the heater on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: a moment is written as .png or .svg.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the moment could not be drawn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is a file; the pictures need a folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder %1 cannot be written to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handout: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the handout could not be drawn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Engine running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cooled and topped up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::demonstration::Beside</name>
    <message>
        <source>Whether the drawing beside circulates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing beside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to show: %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::demonstration::DemonstrationBar</name>
    <message>
        <source>Pause</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Play</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is happening now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Large, for the back of the room (F11)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End the demonstration (Escape)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the start (Home)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One step back (Left)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Play or pause (Space)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One step on (Right)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One step back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One step on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1×</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Speed with the heater on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much faster than the truth it goes with the heater on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Engine run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run the engine and top up before the heater is switched on, or leave it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hide findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the class guess first (H)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count hands, then reveal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to show yet: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heater cannot be switched on yet: %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::demonstration::ScrubBar</name>
    <message>
        <source>Where the demonstration stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag to move through the demonstration; ticks are where something happens.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::demonstration::Votes</name>
    <message>
        <source>Reveal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Will it circulate?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One more %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One less %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::drawing</name>
    <message>
        <source>plumb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rises at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: depth not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jacket highest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jacket lowest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thermostat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ground, lowest ride height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Datum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level hot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level cold full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level cold minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Surge tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may sag %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plumb, %1 off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of air, locks the loop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of air, cleared by running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of air, may clear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of air, stays</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 drives, air takes %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 drives, %2 resists</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 drives, air resists %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing drives it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 would drive it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>runs backward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stalled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a valve is shut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>boils</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coolant is slush</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not computed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in %1, out %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at %1 block</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::headless</name>
    <message>
        <source>%1 needs %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 does not know what to do with &quot;%2&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>STOP</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CAUTION</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The job is stopped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing stops the job.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing that was judged stops the job.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> [%1: measured %2, limit %3]</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> Hangs on %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  not judged: %1 [%2]</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  switched off: %1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  not confirmed: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2, %3, %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 stops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 advices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 not judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checklist: %1 of %2 steps done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>out of order: %1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not judged: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not diagnosed: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None of the faults listed explains these readings well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>or: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&gt; 99 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  There is no heater to diagnose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>block full, new hoses empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>block partly drained, new hoses empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>block full, hoses and heater filled before they are connected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>engine and hoses empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start: %1; %2 of air in each hose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start: %1; no air in them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filled under vacuum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filled from below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filled at the filler</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start: %1; %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 short.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No air stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to draw: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a folder for the pictures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 pictures written to %2.</source>
        <translation type="unfinished"></translation>
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
                                          draw the sheet; --parts: with the parts list on pages
                                          behind it (PDF); --photo: over the photo;
                                          --student: without findings; --third-angle: the end
                                          view placed so
siphonwright survey-form OUT.pdf [--paper A4|Letter] [--inch]
                                          a blank page to measure with at the vehicle
siphonwright --help | --version

Exit code: 0 nothing stops the job; 1 at least one stop; 2 a file could not be read or
written, or an argument is wrong.
</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a command.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could not be written: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  Nothing is drawn that takes parts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not priced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>List price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Amount</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose without a bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  %1: not planned. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  %1: %2 from rolls of %3, the least there is; %4 left over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  %1: %2 from rolls of %3; %4 left over. No plan needs less than %5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  Materials at list price: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  Materials at list price: %1, incomplete: one item is not priced.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  Materials at list price: %1, incomplete: %2 items are not priced.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the name of a price list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the name of a file to write</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, for %1 vehicles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  %1 written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sheet needs a sketch file and --output OUT.pdf, .svg or .png.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no paper; A4, A3, Letter or Tabloid is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>OUT.pdf, .svg or .png</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4, A3, Letter or Tabloid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 written, scale 1:%2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4 or Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a file to write, OUT.pdf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no paper for the form; A4 or Letter is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>survey-form needs a file to write, OUT.pdf.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 is not from %3 to %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>    the return is warm to the hand at the engine after %1 min
</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>    an infrared thermometer reads %1 on the return hose there at the end
</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>    the cut-out trips after %1 min
</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>    on the edge: air withstands nearly all that drives, and small causes decide
</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  assumed: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (changed; usually %1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no warm-up to write: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a time in hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a sketch file</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::panels</name>
    <message>
        <source>Flow %1, in at %2, out at %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of head drives (%2), %3 resists (%4).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air takes %1 of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the edge: small causes decide whether it runs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Largest losses: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over the warm-up: hottest outlet %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, %1 under boiling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, element&apos;s surface %1 with bubbles on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, element&apos;s surface %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it runs is not computed: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, with the block at %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Circulates</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::DetailsPanel</name>
    <message numerus="yes">
        <source>%1, and %n more selected</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>The warm-up is of the drawing a moment ago.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2, limit %3, %4 left.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FindingRow</name>
    <message>
        <source>Not judged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not confirmed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>STOP</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&lt;b&gt;Fix:&lt;/b&gt;</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FindingsModel</name>
    <message>
        <source>%1. Basis: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3 %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verdicts hang on this. Measure it or look it up, and say so beside the figure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not confirmed: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured %1, limit %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 stops the job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 stop the job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 not judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 not confirmed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to judge until hoses are drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing found that stops the job</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FindingsPanel</name>
    <message>
        <source>About this rule…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it rests on, and its limits, which can be changed for this drawing</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FixBar</name>
    <message>
        <source>Fix it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for a fix…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No small change of the drawing cures this by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proven by analysing the changed drawing. One undo takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fix: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FormText</name>
    <message>
        <source>Along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height over datum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Away from viewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing: open end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, inlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, outlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>manual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>typical</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>assumed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Elbow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none, straight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>elbow or angled adapter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leaves, in plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leaves up by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Elbow radius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Elbow leg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exhaust</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turbocharger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heat shield</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>belt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shaft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steering</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>suspension</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Near side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth of its side towards the viewer; not entered: not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Far side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep clear by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ground over datum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the lowest ride height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measures %1 along the hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measures %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>horizontal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vertical</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slope</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the line between its ends: up, right, or left of the way; negative: opposite</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Engine front faces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vehicle front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vehicle right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vehicle rear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vehicle left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stretches the jacket&apos;s outline to this level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water jacket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lowest level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Highest level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth of the jacket&apos;s side towards the viewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrangement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in-line 3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in-line 4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in-line 5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in-line 6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vee 6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vee 8</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vee 12</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vee 16</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slanted in-line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Displacement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>iron</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant in engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front is at the</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mount angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Positive: the engine&apos;s rear is lower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Positive: the top leans towards the engine&apos;s right side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thermostat housing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Surge tank and levels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sits on the</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outlet side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inlet side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bleed hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant levels over datum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cold minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cold full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Position</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Engine outline, corner %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water jacket, corner %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Surge tank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Port: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, point %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, in-line part %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, clip %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Area to keep clear of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Area, corner %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dimension</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tilt from upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0 upright, 90 lying to the right, -90 to the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn about plumb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Body length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Body diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mounted on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not allowed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>allowed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From centre, right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From centre, up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From centre, away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points to, in plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0 right, 90 away from the viewer, 180 left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points up by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stub length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phases</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>single phase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>three phase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over-temperature cut-out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>resets itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>manual reset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut-out opens at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chamber, from the body&apos;s centre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top of element</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant must stand over it before power goes on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Electrical</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rated voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Voltage at the bay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thermostat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the inlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the outlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>remote</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turns on at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turns off at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heater&apos;s manual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest hose bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least drop under jacket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inclined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inlet nozzle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outlet nozzle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>isolation valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bleed point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lift check valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>swing check valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reducer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What this end is pushed onto</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bore of hose end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pushed on by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start of hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End of hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Point %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In-line part %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clip %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carries coolant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the heater (supply)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the engine (return)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least bend radius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the inside of the bend; not entered: judged by bores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insulation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bend radius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the hose&apos;s centreline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bend is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the hose itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a moulded elbow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a metal elbow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Along the hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its own bore; for a reducer the bore from here on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the whole picture. Scale by two points sets it from a length in the picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turned clockwise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About its middle. Level by two points sets it from something level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Faded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a little</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by half</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not to be seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture in this file cannot be read. Remove it, or put another in its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × %2 pixels, %3 kB of this file, one pixel is %4 mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left corner, along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top corner over datum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A locked photo stays where it is while you draw over it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cabin line&apos;s shut-off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>supply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>return</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sensor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drain port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>core-plug opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower-hose tee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>head or manifold port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cabin heater line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Direction out of the engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0 right, 90 away from the viewer, 180 left, -90 towards the viewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Title</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second title</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vehicle or set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Customer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date of issue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Approved by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Owner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Department</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Document type</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Antifreeze</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none, plain water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Antifreeze by volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cap pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Technology</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ambient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coldest ambient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grade, nose up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grade, right side up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judged nose up and down to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judged left and right to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>block; hoses empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing; drained</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>block and hoses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>block, partly drained</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Block and hoses: hoses and heater are filled before they are connected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the filler</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under vacuum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air in each pre-filled hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gets in where the hose is pushed on. Counts only for hoses filled before they are connected; empty: none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant let out of the block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before the new hoses are connected. Counts only for a block that is partly drained; empty: down to the top of the lower port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant short by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Head of the engine&apos;s pump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mm and °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inch and °F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FormView</name>
    <message>
        <source>Change %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where this comes from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change source of %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::GradeStrip</name>
    <message>
        <source>Grade lengthways, percent, nose-up to the right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Park the vehicle on a grade: left is nose-down, right is nose-up.
The band is where the job is sound, the thick line is what it is judged over.
Double-click for level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grade across, percent, right side up to the right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left is left side up, right is right side up. Double-click for level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stand the vehicle on the level again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 nose-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 nose-down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 right side up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 left side up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the level</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::ProfilePanel</name>
    <message>
        <source>The profile appears when a hose is drawn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cold minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 along, crown %2, bottom %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1×</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many times larger heights are drawn than lengths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw heights larger than lengths, so that a small hump is seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heights in sight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height along the hoses, seen from where the coolant comes from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heights to the scale of the lengths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heights %1 times the lengths</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::QuantityEdit</name>
    <message>
        <source>not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pick a usual size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This number is too large.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not under %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not over %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::paper</name>
    <message>
        <source>%1 × %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 left over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose, bore %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose, bore not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 is longer than the longest roll: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: not planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 off %3 of rolls; %4 left over. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No plan needs less hose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A good plan; none needs less than %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Description</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>List price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Amount</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; first %1 h, each further %2 h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; own estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Materials at list price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark-up of %1, line by line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Materials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Labour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Travel, consumables, disposal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Subtotal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tax, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total of what is priced, incomplete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price list: %1%2. Each line is rounded half away from zero before lines are added.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none loaded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This estimate holds for %1 days from its date.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not included</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not in the total</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other heaters, the rest of the job the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total with tax</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimate, internal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Siphonwright. The figures are estimates; the heater&apos;s and the engine&apos;s own manuals rule over them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For one vehicle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For %1 identical vehicles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be written: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the pages could not be drawn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not priced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot;: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not from %2 to %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On all %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is drawn that takes parts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose cuts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose cuts, all %1 vehicles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut lengths with %1 of allowance each. Measure on the vehicle before you cut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check sizes, threads and materials against the heater&apos;s and the engine&apos;s manuals before you order. Hose, clamps and sealant have to be fit for hot coolant under pressure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Antifreeze is poisonous: catch it and dispose of it properly. Mix with distilled or deionised water only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work by a qualified technician; power locked out, wheels chocked, cap opened only cold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grounded supply by the local electrical code, connected by a licensed electrician.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Old coolant is poisonous and is disposed of properly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An estimate from the drawing as it stands: what is found on the vehicle may change it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::CutBars</name>
    <message>
        <source>Cut plan</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::EditTable</name>
    <message>
        <source>%1
Double-click or press F2 to type.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::EstimatePage</name>
    <message>
        <source>Heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater&apos;s list price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Materials at list price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Materials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Labour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Travel, consumables, disposal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Subtotal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tax</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sums</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Another heater beside it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each line is rounded before it is added, so the printed lines add up to the printed total. The figures are estimates: they are as good as the drawing, the prices and the hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 heaters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other heater %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Incomplete: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ Other heater %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most 200 characters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A power is from 0 to 1000 kW.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the other heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add another heater beside it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the other heater</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::PaperWindow</name>
    <message>
        <source>Parts and estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts and &amp;cuts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;rices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wor&amp;k</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Document</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimate for the customer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print pre&amp;view…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;DF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts as C&amp;SV…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::PartsPage</name>
    <message>
        <source>Parts list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose cuts, all vehicles together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1
Click to select it on the drawing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is drawn that takes parts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For one vehicle, as drawn. Check it against the heater&apos;s manual before you order.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::PricesPage</name>
    <message>
        <source>Item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>List price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Amount</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prices of materials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Load a price list…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A CSV file with the columns item, description, unit, price and currency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Write what is not priced…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A price list to be filled in, as CSV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>currency not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No price list is loaded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; %2. Quantities for %3. The price is the list price with the mark-up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one vehicle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 vehicles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the price of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be read: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was not loaded. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load price list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be written: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load a price list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price lists (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write what is not priced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::QuoteForm</name>
    <message>
        <source>Rates and sums</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Identical vehicles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark-up, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Labour, an hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Travel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Consumables, a vehicle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant disposal, a vehicle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tax, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Valid for, days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not included</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most 200 characters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A number is wanted here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Currency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>USD, CAD, EUR …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most 5 characters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the currency&apos;s sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none: the code is written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A currency is three letters, such as USD.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has %2 decimals, and amounts are entered with %3. Take them out first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the currency</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::RollForm</name>
    <message>
        <source>Identical vehicles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allowance on each cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Charge whole rolls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose at the rolls it comes off instead of at its cuts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lengths of roll</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lengths it is bought in, set apart by semicolons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rolls of bore %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rolls of any bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A roll is from 1 mm to 1 km long, and there are at most 20 lengths.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change lengths of roll</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An allowance is from 0 to 10 m.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the allowance on cuts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At least one vehicle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the number of vehicles</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::WorkPage</name>
    <message>
        <source>Task</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First vehicle, h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each further one, h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Amount</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the hours come from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Back to the usual hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The usual hours are our own estimate for what is drawn: put in your own. Electrical work is for a licensed electrician.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a task</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a task</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own task</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ labour rate not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own task</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own estimate, not looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove the task</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A task has a name of up to 400 characters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename a task</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours are a number such as 1.25.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the hours of a task</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the usual hours</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::photo</name>
    <message>
        <source>%1 × %2 pixels, %3 megapixels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its header is damaged: it does not say how large the picture is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its header says %1: nothing can be seen on that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its header says %1. At most %2 megapixels are read: make it smaller first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is damaged before the picture&apos;s data begin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is cut off: there are %1 bytes, and the picture does not end in them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is a progressive JPEG of %1; of those at most %2 megapixels are read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is larger than %1 MiB.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not a PNG, JPEG or WebP picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>WebP is not read here: save it as PNG or JPEG, or install Qt&apos;s image formats.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its picture data are damaged or cut off (%1).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It cannot be opened: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The four points are not the corners of a rectangle seen at an angle: three of them lie in one line, or one lies between the others.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The four points do not lie in the picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rectangle is too small in the picture.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::proposing</name>
    <message>
        <source>not priced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, not priced: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1.  Bore %2: %3 + %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flow not computed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ Not sound on every grade that is judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply hose %1, return hose %2, %3 in all. Clips: %4. A valve at each port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is left:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>– %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings of advice that stay: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No layout mends: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::proposing::LayoutChoices</name>
    <message>
        <source>&amp;Draw area…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater to propose for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the heater may hang</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it is drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Anywhere under the engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In an area I draw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag a rectangle on the elevation, or click two opposite corners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What comes first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best of all three</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shortest hoses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Most flow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lowest price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length of hose, price by bore and flow weighed in one figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It hangs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bores, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place a heater first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the area in which the heater may hang.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose at least one bore of hose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not drawn yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Draw anew…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bores, in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose of this bore may be used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose of bore %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::proposing::LayoutsPanel</name>
    <message>
        <source>&amp;Propose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>T&amp;ake this layout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped. The drawing is as it was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for layouts that break no rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop looking (Escape)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search for layouts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proposed layouts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it changes and what is left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for layouts: %1 of %2 places tried, %3 found…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press Enter to read the rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawing was changed meanwhile. Propose again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The choices were changed meanwhile. Propose again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a layout: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for layouts…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proposes heater place, hoses, bore, valves and clips that break no rule, on every grade that is judged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be proposed: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Layout %1 was taken; one undo takes it back. Propose again for the drawing as it is now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ This list is for an earlier drawing. Propose again to take one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ This list is for other choices. Propose again to take one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every layout breaks a rule. In the way of those that came farthest (Enter opens the rule):</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One layout breaks no rule.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 layouts break no rule, the best first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Propose again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw it in place of the hoses there are (Enter). One undo takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The list has to be renewed first</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::rules</name>
    <message>
        <source>nothing moves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>element bare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a bleed at the crest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pushed, but not out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cold minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air closes the bore: it takes more head than there is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No crest, no pocket: warm coolant rises, cold falls.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A small pocket takes part of the few millimetres.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All of the head is left for the flow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air over the coolant: the element burns out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chamber is full, the element covered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The engine&apos;s pump pushes the air and does not move it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A bleed lets it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the cold the coolant shrinks under its minimum.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled so that enough is left in the cold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>radiator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thermostat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cabin heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hose ends in the open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every hose end is on a port or a nozzle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hose from port to port, and the heater left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Port, heater and port make one loop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No valve where the loop leaves the engine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A valve near each of the engine&apos;s ports.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heater is on and a valve is closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both valves are open while the heater is on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cold, the thermostat shuts between engine and supply.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The supply leaves the block itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cabin heater&apos;s line is open beside the loop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cabin heater&apos;s line is closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A few millimetres of head do not open a check valve.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing in the loop has to be pushed open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>antifreeze</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coolant freezes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kind: as the engine&apos;s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kind: ?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>maker specifies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nearly all antifreeze, hardly any water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As much antifreeze as the cold asks for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coldest night is colder than the coolant bears.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coolant freezes only well under the coldest night.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody has written down which antifreeze it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The kind is known and is not mixed with others.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cold coolant lies here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not drain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nearly level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The supply climbs over a hump: air stays at its crest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The supply falls all the way to the heater.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The return climbs over the port and comes down to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The return rises to the port and not past it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The return dips on its way: warm coolant does not go down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The return rises all the way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The supply lies lower than the heater&apos;s inlet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heater&apos;s inlet is the lowest place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heater&apos;s inlet is higher than the supply port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heater hangs under the supply port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A nearly level return: air stays where it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A rise all along: air finds its way to the engine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A part of the loop stands above the coolant level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole loop lies under the coolant level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>little drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the manual: upright only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heater&apos;s top is hardly lower than the jacket.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heater hangs well under the jacket&apos;s lowest point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heater is far from under the return port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heater is right under the return port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chamber reaches higher than its outlet: air stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The outlet is at the top: air leaves by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heater lies where its manual wants it upright.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heater stands as its manual says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bracket is on the engine and shakes with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bracket is on the frame.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nearly as wide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>narrow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing holds it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clearance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exhaust</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A thinner hose than the heater&apos;s manual asks for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The size that the manual asks for, all the way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A part far narrower than the hose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A part nearly as wide as the hose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bent over a sharp corner, the hose kinks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An open bend, or a moulded elbow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two bends need more length than lies between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each bend has the length that it needs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hose goes a long way round.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hose goes the direct way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A long flat piece without a clip sags and chafes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clips hold it to the frame along its way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulled straight: the engine tears at both ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A bend gives when the engine moves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hose hangs where the road reaches it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hose stays clear of the ground.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hose touches something hot or moving.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hose keeps its distance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stays cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sensor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another circuit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant under the supply port never gets to the heater.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The supply is taken from the lowest port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The return enters low: little height drives the flow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The return enters high.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both ports at the rear: the front stays cold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The supply leaves at the front.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both ports at the front: the rear stays cold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The return enters at the rear.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm coolant goes straight back into the supply.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole engine lies between the ports.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm coolant enters at the thermostat and opens it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm coolant enters far from the thermostat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sensor feels what comes from the heater.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sensor feels the engine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two circuits on one port share what it lets through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each circuit has a port of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both ports on one bank: the other stays colder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out of one bank, into the other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>backward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as wide as the hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>takes a third of the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over 5 kW and no pump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>warm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over 82 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The warm coolant stands no higher than the cold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm coolant rises all the way, cold falls all the way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The supply rises from the heater: warm coolant takes it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The return rises from the outlet, the supply falls.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One narrow part takes much of the few millimetres.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A part with a full bore takes little.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More heat than a few millimetres of head carry away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As much power as the engine&apos;s size asks for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too little flows: what leaves is too hot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enough flows to carry the heat away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bubbles gather and steam bares the element.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coolant stays well under its boiling point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hose too thin for this heater and these heights.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hose that lets enough through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heater warms itself: on and off all the time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heater warms the engine: few turns an hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The engine loses the heat before it is warm enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The engine gets warm enough in the time given.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coldest night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ports</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Connections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>station 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rail</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::rules::CaseView</name>
    <message>
        <source>Right: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wrong: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::rules::LimitForm</name>
    <message>
        <source>Judge this rule in this drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep for this drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the rule book&apos;s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Advice over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Advice under</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution under</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop under</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judged yes or no, or by a figure from the manual: there is no limit to change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for example: the heater&apos;s manual, page 7</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changed; rule book: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as in the rule book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the reason too: the sheet states it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change a limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the rule book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the reason first, then switch it off: the sheet states it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judge a rule again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Switch a rule off</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::rules::RuleBrowser</name>
    <message>
        <source>Rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search the rules</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::rules::RuleList</name>
    <message>
        <source>off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not judged here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stops the job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an advice</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::rules::RulePage</name>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judged on the level; the grade does not change it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judged on the level and over the grades.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judged on the level and over the grades; it decides in which grades the loop is sound.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sound: measured %1, limit %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sound, with %1 left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sound, with %1 left: measured %2, limit %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In this drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Basis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not judged by choice: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not judged: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to judge until hoses are drawn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing found.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::sheet</name>
    <message>
        <source>End view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End view from the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End view from the rear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Views</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No end view: beside it the elevation would be too small on this paper. What lies across the engine is drawn in the program and counted in every length.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Layout sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: a sheet is written as .pdf, .svg or .png.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be written: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the sheet could not be drawn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level hot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level cold full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level cold minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jacket highest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jacket lowest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drop %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flow %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>peak outlet %1, cycles in the worst hour %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Engine at %1 after %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Engine does not get to %1 in %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; %1 in %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, from %1 ambient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assumed, and what matters most: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Results</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and %1 more in the program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assumed otherwise than the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 instead of %3 (%4).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Student sheet: side elevation 1:%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side elevation 1:%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seen from the engine&apos;s left side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seen from the engine&apos;s right side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is drawn yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Department</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Technical reference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Creator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Approver</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Legal owner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Title</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supplementary title</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Document type</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Identification number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vehicle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Customer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rev.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date of issue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lang.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scale 1:%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure me: 50 mm when printed at 100 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>50 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Isolation valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bleed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lift check valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swing check valve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reducer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: bore %2, cut length %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not judged by choice: %1 (%2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 instead of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>advice over %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>advice under %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caution over %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caution under %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop over %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop under %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 (%3).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and %1 more in the list of findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None in what was judged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not judged, for want of a fact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and %1 more in the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judged on grades to %1 nose up and down, %2 left and right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not confirmed: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judged otherwise than the rule book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts and cut lengths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, bore %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose end, bore %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hose clamp for %1 outside diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Support clip for %1 outside diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 x %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant to fill hoses and heater: about %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To be answered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where does air stay when this is filled, and about how much?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does it circulate, and which way?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What would you change, and why?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Qualified technicians only. Disconnect and lock out power while working; inhibit a generator&apos;s automatic start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chock wheels, block air suspension; never work under an unsupported vehicle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the cap only cold: hot coolant under pressure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never energise without coolant in the chamber.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater off before a valve is closed: both closed is a sealed vessel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run the engine outdoors or with extraction.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grounded supply, local electrical code, licensed electrician.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Antifreeze is poisonous: catch it and dispose of it properly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heater&apos;s and the engine&apos;s own manuals rule over this sheet; its figures are estimates from stated assumptions.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::sizing::Entries</name>
    <message>
        <source>Phases</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>three</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Conductor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size of the conductors to the bay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 – not in the tables</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wanted temperature of the engine block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual ambient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coldest ambient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing entered counts as still air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time allowed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the start to the target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plugged in a night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price of a kWh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the currency of the quote</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Voltage at the bay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between conductors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Metal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>copper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length, one way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the run, from its start to the heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Antifreeze in it now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none, plain water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its share now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By volume, as a refractometer shows it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Antifreeze to add</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty: the kind that is in it now; kinds are never mixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By volume, 60 % at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole system holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Radiator and cabin heater included; without it the engine alone counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Runs out at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What comes out at the drains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water to mix with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chloride</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sulphate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hardness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As calcium carbonate, CaCO3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total solids</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::sizing::FigureTable</name>
    <message>
        <source>Click to see on the drawing where it comes from</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::sizing::FigureText</name>
    <message>
        <source>%1, freezes at %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, freezing point not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ %1, %2 too warm for the coldest ambient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 under the coldest ambient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Freezing points are good to some 2 K</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drained, to be filled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In it now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, the engine alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let out, to be filled again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New parts take</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in hoses, %2 in chambers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drain %1, add %2 of %3: %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>antifreeze</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drained in all, to be disposed of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Antifreeze to buy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distilled water to buy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>System then holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mixture now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mixture wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No share is wanted yet: nothing is planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mixture reached</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least for the coldest ambient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, with %2 to spare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not even %1 holds the coldest ambient with %2 to spare.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coldest ambient is not entered: no margin to freezing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole system is not entered: radiator and cabin heater are not counted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never mix kinds of antifreeze; low-silicate antifreeze, deionised or distilled water. At most %1 by volume.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ do not use it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>–</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ %1 boils</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ %1 trips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ outlet over %1: too much for these hoses.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boils: the heater&apos;s chamber reaches the boiling point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trips: the cut-out opens.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>● %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ over %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over %1 in all a heater with a pump wants considering (our own limit).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Block, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Peak outlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the usual ambient, on the loops as drawn, thermostats and all; sizes are our own choice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No loop is closed yet: the engine as one lump, held where a usual thermostat would. Sizes are our own choice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is left out of the table: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>● is what is drawn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cost of a night: hours plugged in are not entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price of a kWh: not entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Costs in %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season: no nights are entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Season: %1 nights.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>– %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ %1 too little</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 over, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To hold %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing: the air is as warm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the heat loss may be</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the engine&apos;s heat loss at either end of what is assumed of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of it the engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of it hoses and chambers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To reach it in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To reach it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time allowed: not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no heater drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power: not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heaters as drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>margin to hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>margin to reach in time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 for %2 of displacement is %3 W a litre; %4 to %5 W a litre is common practice for diesel engines (no published source, from memory).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimated from the engine&apos;s mass, coolant and outline as one lump of heat, thermostats left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No loop is closed yet: hoses and chambers are not counted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As drawn a loop does not circulate: the figures suppose that it will.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wind is not entered: still air.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>usual, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coldest, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coldest ambient is not entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Conductor at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NEC chapter 9, table 8</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>IEC 60228, classes 1 and 2; flexible cord has up to 10 % more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Voltage drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not computed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left at the heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No heater is drawn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Electrical load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All heaters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Current</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power over √3 times the voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Power over voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Continuous load, 125 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A load figure after NEC 210.20(A) and 215.3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::sizing::SeasonEdit</name>
    <message>
        <source>Nights of a season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add nights</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try a season (invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>150 nights from -30 to 0 °C: invented, no weather record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try an invented season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change nights</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature of the nights</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many nights</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove nights</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nights at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 nights in all</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::sizing::SizingPanel</name>
    <message>
        <source>Power needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By heater power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Electrical load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water to mix with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Subject</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heater size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Electrical supply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load figures only. A licensed electrician and the local electrical code decide on circuit, conductors, protection and grounding; the heater&apos;s manual rules. Disconnect and lock out before any work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Antifreeze is poisonous: catch and dispose of it properly. Open the cap only cold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Being computed; the table is of the drawing as it was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The table by heater power is being computed.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::survey</name>
    <message>
        <source>in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Survey before a coolant heater is drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vehicle or set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How to measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heights: tape held plumb, from the frame rail&apos;s upper edge (under it: minus) or from the floor. Tick which.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Station: along the frame rail from the block&apos;s front face, + to the engine&apos;s rear. Across: out from the crankshaft, + to the engine&apos;s right side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slopes: inclinometer along the engine, in ° or %; + is higher at the engine&apos;s front.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was not measured stays empty: an empty place is asked for again, a guess is not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Engine cold: open the cap only cold. Hot surfaces; belts and fan may start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wheels chocked, air suspension blocked, automatic start inhibited, key out. Never under an unsupported vehicle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Station, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drain port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>core plug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower hose tee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>head port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cabin line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tilt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Engine&apos;s thermostat on the</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outlet side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inlet side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply voltage at the bay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>V</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolant in it now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>% by volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>colour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is hot or moves nearby; notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The engine&apos;s and the heater&apos;s own manuals rule over this form.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be written: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Survey form</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the form could not be drawn.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::survey::LetterGrid</name>
    <message>
        <source>not drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the floor only with L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn: height, station, across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Survey, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frame rail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: measured from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>percent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: typed in</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::survey::SurveyText</name>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drain port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>core plug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower hose tee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>head or manifold port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cabin heater line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tilted up by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Engine and bay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thermostat on the</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outlet side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inlet side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply voltage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Antifreeze in it now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none, plain water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::survey::SurveyWindow</name>
    <message>
        <source>Where the letters are on an engine in its frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the engine from these</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Survey</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make or update engine, tank and ports; one step to undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blank form as PDF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print blank form…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stays typical or not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the engine from the survey</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no engine yet: an in-line 6 of typical shape will be drawn. For another, insert it first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::warming</name>
    <message>
        <source>at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>target %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outlet&apos;s limit %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>peak, 9 of 10 cases</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>target reached, where it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>target reached, 9 of 10 cases</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ %1, over %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ %1, does not run forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>–</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ not in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm-up: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: a warm-up is written as .csv, .png or .svg.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be written: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the warm-up could not be written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>return at port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hose outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No warm-up: at the start the coolant would be slush.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No warm-up: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (%1–%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>never on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>peak %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, over %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, may exceed %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 cycle an hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cycles an hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, reached in fewer than 1 of 10 cases</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, reached in %1 of 10 cases</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 just not reached in %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 not reached in %2 (%3 then)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 after %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, may not be reached</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 kWh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>return warm after %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>return never warm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cut-out trips after %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>boils after %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the edge of stalling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hangs most on: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::warming::BoreTable</name>
    <message>
        <source>Hose bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flow, warm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outlet, warm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Peak outlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cycles an hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target reached</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use this bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By bore of hose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put every hose on the selected bore, hose ends and in-line parts in proportion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The table comes when a loop can be computed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every hose on one bore, hose ends and in-line parts with it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the drawing as it was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>● %1, as drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Double-click to use this bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use hose of %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::warming::ChartView</name>
    <message>
        <source>Warm-up over time; left and right read the values</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the drawing as it was</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::warming::GradeTable</name>
    <message>
        <source>Nose up %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nose down %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right side up %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left side up %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flow, warm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outlet, warm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Peak outlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cycles an hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target reached</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On grades</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The table comes when a warm-up can be computed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled and turned on where it is parked, at the ends of the grades judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the drawing as it was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>–</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Double-click to see the drawing parked like this</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::warming::PlanForm</name>
    <message>
        <source>Air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature of the air around the engine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Speed of the wind; nothing entered counts as still air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>still</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of engine and coolant; nothing entered: as cold as the air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wanted temperature of the engine block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long the warm-up is followed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>siphonwright::warming::WarmUpPanel</name>
    <message>
        <source>Heater</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whose warm-up is shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep this curve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take kept curves away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the warm-up as CSV, PNG or SVG</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> · %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the drawing as it was: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> · bands follow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The warm-up appears when a loop with a heater is drawn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The warm-up is being computed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay the curves as they are now under those to come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Three are kept: take one away first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>never on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take away %1, peak %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take all away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no warm-up to write.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
