<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Actions</name>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Nuevo</translation>
    </message>
    <message>
        <source>Start an empty drawing</source>
        <translation>Empezar un dibujo vacío</translation>
    </message>
    <message>
        <source>New from &amp;template…</source>
        <translation>Nuevo desde plan&amp;tilla…</translation>
    </message>
    <message>
        <source>Choose an engine by its picture and start a drawing with it</source>
        <translation>Elegir un motor por su imagen y empezar un dibujo con él</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Abrir…</translation>
    </message>
    <message>
        <source>Open a sketch file</source>
        <translation>Abrir un archivo de dibujo</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>Save the sketch</source>
        <translation>Guardar el dibujo</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Guardar &amp;como…</translation>
    </message>
    <message>
        <source>Save the sketch under another name</source>
        <translation>Guardar el dibujo con otro nombre</translation>
    </message>
    <message>
        <source>&amp;Export sheet…</source>
        <translation>&amp;Exportar hoja…</translation>
    </message>
    <message>
        <source>Write the sheet as PDF, SVG or PNG</source>
        <translation>Escribir la hoja como PDF, SVG o PNG</translation>
    </message>
    <message>
        <source>Export &amp;warm-up…</source>
        <translation>&amp;Exportar calentamiento…</translation>
    </message>
    <message>
        <source>Write the warm-up as CSV, PNG or SVG</source>
        <translation>Escribir el calentamiento como CSV, PNG o SVG</translation>
    </message>
    <message>
        <source>Print pre&amp;view…</source>
        <translation>&amp;Vista previa…</translation>
    </message>
    <message>
        <source>See the sheet as it will be printed</source>
        <translation>Ver la hoja tal como se imprimirá</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Imprimir…</translation>
    </message>
    <message>
        <source>Print the sheet at true scale</source>
        <translation>Imprimir la hoja a escala exacta</translation>
    </message>
    <message>
        <source>Sheet in &amp;colour</source>
        <translation>Hoja en c&amp;olor</translation>
    </message>
    <message>
        <source>Print and export in colour instead of black and white</source>
        <translation>Imprimir y exportar en color en lugar de blanco y negro</translation>
    </message>
    <message>
        <source>Parts &amp;list behind the sheet</source>
        <translation>&amp;Lista de piezas tras la hoja</translation>
    </message>
    <message>
        <source>Print and export the parts list and the cuts on pages after the drawing</source>
        <translation>Imprimir y exportar la lista de piezas y los cortes en páginas después del dibujo</translation>
    </message>
    <message>
        <source>Student sheet: no &amp;findings</source>
        <translation>Hoja del alumno: sin &amp;hallazgos</translation>
    </message>
    <message>
        <source>Print and export without findings, pockets and margins, with lines for answers; off: the answer sheet</source>
        <translation>Imprimir y exportar sin hallazgos, bolsas de aire ni márgenes, con renglones para respuestas; desactivado: la hoja de respuestas</translation>
    </message>
    <message>
        <source>P&amp;hoto on the sheet</source>
        <translation>&amp;Foto en la hoja</translation>
    </message>
    <message>
        <source>Print and export the photo under the drawing too, as faded as on the screen</source>
        <translation>Imprimir y exportar también la foto bajo el dibujo, tan atenuada como en pantalla</translation>
    </message>
    <message>
        <source>&amp;Blank survey form…</source>
        <translation>Formulario de toma de datos en &amp;blanco…</translation>
    </message>
    <message>
        <source>A page to be filled in with a pen at the vehicle, as PDF</source>
        <translation>Una página en PDF para rellenar a mano junto al vehículo</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>Close the program</source>
        <translation>Cerrar el programa</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>&amp;Cortar</translation>
    </message>
    <message>
        <source>Take what is selected away, to be put down elsewhere</source>
        <translation>Quitar lo seleccionado para ponerlo en otro lugar</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>Cop&amp;iar</translation>
    </message>
    <message>
        <source>Take a copy of what is selected, for this or another window</source>
        <translation>Copiar lo seleccionado, para esta u otra ventana</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>&amp;Pegar</translation>
    </message>
    <message>
        <source>Put parts down where the pointer is, else beside what is there</source>
        <translation>Poner las piezas donde está el puntero o, si no, junto a lo que hay</translation>
    </message>
    <message>
        <source>D&amp;uplicate</source>
        <translation>Duplic&amp;ar</translation>
    </message>
    <message>
        <source>Put what is selected down once more, beside it</source>
        <translation>Poner otra vez lo seleccionado, al lado</translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation>&amp;Eliminar</translation>
    </message>
    <message>
        <source>Remove what is selected</source>
        <translation>Quitar lo seleccionado</translation>
    </message>
    <message>
        <source>Select &amp;all</source>
        <translation>Seleccionar &amp;todo</translation>
    </message>
    <message>
        <source>Select every part of the drawing</source>
        <translation>Seleccionar todas las piezas del dibujo</translation>
    </message>
    <message>
        <source>&amp;Keep selected</source>
        <translation>&amp;Mantener selección</translation>
    </message>
    <message>
        <source>Keep the part selected while Tab goes on to the next; again: no longer</source>
        <translation>Mantener la pieza seleccionada mientras Tab pasa a la siguiente; otra vez: soltarla</translation>
    </message>
    <message>
        <source>&amp;Find by name…</source>
        <translation>&amp;Buscar por nombre…</translation>
    </message>
    <message>
        <source>Find a part of the drawing by its name</source>
        <translation>Buscar una pieza del dibujo por su nombre</translation>
    </message>
    <message>
        <source>&amp;Go to the drawing</source>
        <translation>Ir al dibuj&amp;o</translation>
    </message>
    <message>
        <source>Put the keyboard on the elevation, from wherever it is</source>
        <translation>Llevar el teclado al alzado desde cualquier lugar</translation>
    </message>
    <message>
        <source>Detai&amp;ls</source>
        <translation>Detal&amp;les</translation>
    </message>
    <message>
        <source>Show and change what is known of the selected part (Enter on the drawing)</source>
        <translation>Mostrar y cambiar lo que se sabe de la pieza seleccionada (Intro en el dibujo)</translation>
    </message>
    <message>
        <source>Re&amp;name</source>
        <translation>&amp;Renombrar</translation>
    </message>
    <message>
        <source>Go to the name of the selected part</source>
        <translation>Ir al nombre de la pieza seleccionada</translation>
    </message>
    <message>
        <source>Go to its c&amp;orners</source>
        <translation>Ir a sus esqui&amp;nas</translation>
    </message>
    <message>
        <source>Select the first corner of the outline; Tab goes from corner to corner, Escape back</source>
        <translation>Seleccionar la primera esquina del contorno; Tab pasa de una esquina a otra, Esc vuelve</translation>
    </message>
    <message>
        <source>Add a &amp;point here</source>
        <translation>Añadir un pun&amp;to aquí</translation>
    </message>
    <message>
        <source>Add a point to the hose, or a corner to the outline</source>
        <translation>Añadir un punto a la manguera o una esquina al contorno</translation>
    </message>
    <message>
        <source>Add a &amp;valve here</source>
        <translation>Añadir una &amp;válvula aquí</translation>
    </message>
    <message>
        <source>Put an isolation valve into the hose</source>
        <translation>Poner una válvula de aislamiento en la manguera</translation>
    </message>
    <message>
        <source>Add a &amp;bleed here</source>
        <translation>Añadir &amp;un purgador aquí</translation>
    </message>
    <message>
        <source>Put a bleed point into the hose</source>
        <translation>Poner un punto de purga en la manguera</translation>
    </message>
    <message>
        <source>Add a cl&amp;ip here</source>
        <translation>Añadir un &amp;soporte aquí</translation>
    </message>
    <message>
        <source>Clip the hose to the frame</source>
        <translation>Sujetar la manguera al bastidor</translation>
    </message>
    <message>
        <source>&amp;Open or close</source>
        <translation>Abrir &amp;o cerrar</translation>
    </message>
    <message>
        <source>Open or close the selected valve, bleed or drain</source>
        <translation>Abrir o cerrar la válvula, el purgador o el drenaje seleccionado</translation>
    </message>
    <message>
        <source>Conn&amp;ect to the next opening</source>
        <translation>Conectar a la siguiente &amp;boca</translation>
    </message>
    <message>
        <source>Connect the hose&apos;s end to the nearest port or nozzle, again: to the next</source>
        <translation>Conectar el extremo de la manguera a la toma o boquilla más próxima; otra vez: a la siguiente</translation>
    </message>
    <message>
        <source>Turn c&amp;lockwise</source>
        <translation>&amp;Girar a la derecha</translation>
    </message>
    <message>
        <source>Turn a heater or port by 15 degrees</source>
        <translation>Girar 15 grados un calentador o una toma</translation>
    </message>
    <message>
        <source>Turn &amp;back</source>
        <translation>Girar a la iz&amp;quierda</translation>
    </message>
    <message>
        <source>Turn a heater or port by 15 degrees the other way</source>
        <translation>Girar 15 grados en sentido contrario un calentador o una toma</translation>
    </message>
    <message>
        <source>&amp;Left edges</source>
        <translation>Bordes &amp;izquierdos</translation>
    </message>
    <message>
        <source>Line up with the leftmost</source>
        <translation>Alinear con el de más a la izquierda</translation>
    </message>
    <message>
        <source>&amp;Middles above each other</source>
        <translation>&amp;Centros en vertical</translation>
    </message>
    <message>
        <source>Line up on one plumb line of the drawing</source>
        <translation>Alinear sobre una misma línea a plomo del dibujo</translation>
    </message>
    <message>
        <source>&amp;Right edges</source>
        <translation>Bordes &amp;derechos</translation>
    </message>
    <message>
        <source>Line up with the rightmost</source>
        <translation>Alinear con el de más a la derecha</translation>
    </message>
    <message>
        <source>&amp;Top edges</source>
        <translation>Bordes &amp;superiores</translation>
    </message>
    <message>
        <source>Line up with the highest</source>
        <translation>Alinear con el más alto</translation>
    </message>
    <message>
        <source>M&amp;iddles at one height</source>
        <translation>C&amp;entros a una altura</translation>
    </message>
    <message>
        <source>Line up at one height</source>
        <translation>Alinear a una misma altura</translation>
    </message>
    <message>
        <source>&amp;Bottom edges</source>
        <translation>&amp;Bordes inferiores</translation>
    </message>
    <message>
        <source>Line up with the lowest</source>
        <translation>Alinear con el más bajo</translation>
    </message>
    <message>
        <source>Space evenly &amp;along</source>
        <translation>Repartir a lo &amp;largo</translation>
    </message>
    <message>
        <source>Even distances along the engine between the outermost</source>
        <translation>Distancias iguales a lo largo del motor entre los extremos</translation>
    </message>
    <message>
        <source>Space evenly &amp;up</source>
        <translation>Repartir en &amp;altura</translation>
    </message>
    <message>
        <source>Even distances in height between lowest and highest</source>
        <translation>Distancias iguales en altura entre el más bajo y el más alto</translation>
    </message>
    <message>
        <source>Select &amp;next part</source>
        <translation>Pieza sig&amp;uiente</translation>
    </message>
    <message>
        <source>Go through all parts of the drawing</source>
        <translation>Recorrer todas las piezas del dibujo</translation>
    </message>
    <message>
        <source>Select &amp;previous part</source>
        <translation>Pie&amp;za anterior</translation>
    </message>
    <message>
        <source>Go back through all parts of the drawing</source>
        <translation>Recorrer hacia atrás todas las piezas del dibujo</translation>
    </message>
    <message>
        <source>Next &amp;finding</source>
        <translation>Hallaz&amp;go siguiente</translation>
    </message>
    <message>
        <source>Go to the next finding on the drawing</source>
        <translation>Ir al siguiente hallazgo del dibujo</translation>
    </message>
    <message>
        <source>About this &amp;rule…</source>
        <translation>Acerca &amp;de esta regla…</translation>
    </message>
    <message>
        <source>Read what the selected finding&apos;s rule rests on, and its limits</source>
        <translation>Leer en qué se basa la regla del hallazgo seleccionado y cuáles son sus límites</translation>
    </message>
    <message>
        <source>Zoom to &amp;fit</source>
        <translation>A&amp;justar a la ventana</translation>
    </message>
    <message>
        <source>Show the whole drawing</source>
        <translation>Mostrar todo el dibujo</translation>
    </message>
    <message>
        <source>Zoom to &amp;selection</source>
        <translation>&amp;Zoom a la selección</translation>
    </message>
    <message>
        <source>Show what is selected</source>
        <translation>Mostrar lo seleccionado</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>Amplia&amp;r</translation>
    </message>
    <message>
        <source>Closer</source>
        <translation>Más cerca</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>Re&amp;ducir</translation>
    </message>
    <message>
        <source>Farther</source>
        <translation>Más lejos</translation>
    </message>
    <message>
        <source>&amp;Grid</source>
        <translation>&amp;Cuadrícula</translation>
    </message>
    <message>
        <source>Show the grid</source>
        <translation>Mostrar la cuadrícula</translation>
    </message>
    <message>
        <source>S&amp;napping</source>
        <translation>Aj&amp;uste automático</translation>
    </message>
    <message>
        <source>Points snap to the grid and to level and plumb</source>
        <translation>Los puntos se ajustan a la cuadrícula, a nivel y a plomo</translation>
    </message>
    <message>
        <source>Points go to the lines of the grid</source>
        <translation>Los puntos van a las líneas de la cuadrícula</translation>
    </message>
    <message>
        <source>&amp;Points</source>
        <translation>&amp;Puntos</translation>
    </message>
    <message>
        <source>Points go onto ports, nozzles, route points and corners</source>
        <translation>Los puntos van a tomas, boquillas, puntos de recorrido y esquinas</translation>
    </message>
    <message>
        <source>&amp;Level</source>
        <translation>A &amp;nivel</translation>
    </message>
    <message>
        <source>Points go level with their neighbours</source>
        <translation>Los puntos se ponen a nivel con sus vecinos</translation>
    </message>
    <message>
        <source>P&amp;lumb</source>
        <translation>&amp;A plomo</translation>
    </message>
    <message>
        <source>Points go plumb over or under their neighbours, on a grade too</source>
        <translation>Los puntos se ponen a plomo sobre o bajo sus vecinos, también en pendiente</translation>
    </message>
    <message>
        <source>Constant &amp;rise</source>
        <translation>&amp;Subida constante</translation>
    </message>
    <message>
        <source>Pieces of a hose take the slope chosen below</source>
        <translation>Los tramos de una manguera toman la inclinación elegida abajo</translation>
    </message>
    <message>
        <source>&amp;Bend radius</source>
        <translation>&amp;Radio de curvatura</translation>
    </message>
    <message>
        <source>Points stop where the bends still take the hose&apos;s least radius</source>
        <translation>Los puntos se detienen donde las curvas aún respetan el radio mínimo de la manguera</translation>
    </message>
    <message>
        <source>&amp;In line with the last piece</source>
        <translation>&amp;En línea con el tramo anterior</translation>
    </message>
    <message>
        <source>Pieces of a hose go straight on</source>
        <translation>Los tramos de una manguera siguen rectos</translation>
    </message>
    <message>
        <source>Li&amp;mits</source>
        <translation>&amp;Límites</translation>
    </message>
    <message>
        <source>Parts stop where a rule&apos;s limit is just kept: level, hump, ground, area</source>
        <translation>Las piezas se detienen donde el límite de una regla aún se cumple: nivel, lomo, suelo, zona</translation>
    </message>
    <message>
        <source>&amp;Slope to snap to…</source>
        <translation>&amp;Inclinación para ajustar…</translation>
    </message>
    <message>
        <source>Choose the slope of the constant rise</source>
        <translation>Elegir la inclinación de la subida constante</translation>
    </message>
    <message>
        <source>Running fig&amp;ures</source>
        <translation>Ci&amp;fras de funcionamiento</translation>
    </message>
    <message>
        <source>Show flow, temperatures and heads beside each heater</source>
        <translation>Mostrar caudal, temperaturas y alturas de presión junto a cada calentador</translation>
    </message>
    <message>
        <source>&amp;Tint hoses by temperature</source>
        <translation>&amp;Teñir mangueras según temperatura</translation>
    </message>
    <message>
        <source>Colour the hoses by the coolant&apos;s temperature in them</source>
        <translation>Colorear las mangueras según la temperatura del refrigerante</translation>
    </message>
    <message>
        <source>&amp;End view</source>
        <translation>&amp;Vista de extremo</translation>
    </message>
    <message>
        <source>Show the drawing along the engine too, beside the elevation</source>
        <translation>Mostrar también el dibujo a lo largo del motor, junto al alzado</translation>
    </message>
    <message>
        <source>End view at the same &amp;heights</source>
        <translation>Vista de extremo a i&amp;gual altura</translation>
    </message>
    <message>
        <source>Zoom and heights of the elevation and the end view go together</source>
        <translation>El zoom y las alturas del alzado y de la vista de extremo van juntos</translation>
    </message>
    <message>
        <source>Third-angle &amp;projection</source>
        <translation>Pro&amp;yección del tercer diedro</translation>
    </message>
    <message>
        <source>The end view shows the end it stands beside, on the sheet too; off: first-angle projection, which shows the other end</source>
        <translation>La vista de extremo muestra el extremo junto al que está, también en la hoja; desactivado: primer diedro, que muestra el otro extremo</translation>
    </message>
    <message>
        <source>&amp;mm and °C</source>
        <translation>&amp;mm y °C</translation>
    </message>
    <message>
        <source>Metric units</source>
        <translation>Unidades métricas</translation>
    </message>
    <message>
        <source>&amp;inch and °F</source>
        <translation>pu&amp;lgadas y °F</translation>
    </message>
    <message>
        <source>Inch units</source>
        <translation>Unidades en pulgadas</translation>
    </message>
    <message>
        <source>As the des&amp;ktop</source>
        <translation>Como el &amp;escritorio</translation>
    </message>
    <message>
        <source>Light, dark or high contrast, as the desktop has it</source>
        <translation>Claro, oscuro o alto contraste, como lo tiene el escritorio</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Claro</translation>
    </message>
    <message>
        <source>Dark lines on light ground</source>
        <translation>Líneas oscuras sobre fondo claro</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Oscuro</translation>
    </message>
    <message>
        <source>Light lines on dark ground</source>
        <translation>Líneas claras sobre fondo oscuro</translation>
    </message>
    <message>
        <source>&amp;High contrast</source>
        <translation>&amp;Alto contraste</translation>
    </message>
    <message>
        <source>Black on white, for bright sun and weak eyes</source>
        <translation>Negro sobre blanco, para sol intenso y vista cansada</translation>
    </message>
    <message>
        <source>Text 100 %</source>
        <translation>Texto al 100 %</translation>
    </message>
    <message>
        <source>Text of the usual size</source>
        <translation>Texto de tamaño normal</translation>
    </message>
    <message>
        <source>Text 125 %</source>
        <translation>Texto al 125 %</translation>
    </message>
    <message>
        <source>Larger text</source>
        <translation>Texto más grande</translation>
    </message>
    <message>
        <source>Text 150 %</source>
        <translation>Texto al 150 %</translation>
    </message>
    <message>
        <source>Text 175 %</source>
        <translation>Texto al 175 %</translation>
    </message>
    <message>
        <source>Text 200 %</source>
        <translation>Texto al 200 %</translation>
    </message>
    <message>
        <source>Text twice as large</source>
        <translation>Texto al doble de tamaño</translation>
    </message>
    <message>
        <source>Default la&amp;yout</source>
        <translation>Disp&amp;osición inicial</translation>
    </message>
    <message>
        <source>Put window, panels and tools back where they were at first</source>
        <translation>Devolver ventana, paneles y herramientas a su lugar inicial</translation>
    </message>
    <message>
        <source>&amp;Warm-up</source>
        <translation>&amp;Calentamiento</translation>
    </message>
    <message>
        <source>Show temperatures, flow and power over the hours</source>
        <translation>Mostrar temperaturas, caudal y potencia a lo largo de las horas</translation>
    </message>
    <message>
        <source>Table by &amp;bore</source>
        <translation>Tabla por &amp;diámetro</translation>
    </message>
    <message>
        <source>Show what each stock bore of hose would do</source>
        <translation>Mostrar qué haría cada diámetro interior comercial de manguera</translation>
    </message>
    <message>
        <source>Table on &amp;grades</source>
        <translation>Tabla po&amp;r pendiente</translation>
    </message>
    <message>
        <source>Show how the job runs parked at the ends of the grades judged</source>
        <translation>Mostrar cómo funciona el trabajo estacionado en los extremos de las pendientes evaluadas</translation>
    </message>
    <message>
        <source>Heater si&amp;ze and supply</source>
        <translation>&amp;Tamaño y suministro</translation>
    </message>
    <message>
        <source>Show power needed, electrical load, cost of a night, and coolant to mix</source>
        <translation>Mostrar potencia necesaria, carga eléctrica, costo por noche y refrigerante que mezclar</translation>
    </message>
    <message>
        <source>Propose la&amp;youts</source>
        <translation>&amp;Proponer disposiciones</translation>
    </message>
    <message>
        <source>Let the program lay heater and hoses so that no rule is broken</source>
        <translation>Dejar que el programa disponga calentador y mangueras sin infringir ninguna regla</translation>
    </message>
    <message>
        <source>C&amp;ommissioning</source>
        <translation>Puesta en &amp;marcha</translation>
    </message>
    <message>
        <source>Work through the checklist, judge readings, diagnose what is wrong</source>
        <translation>Recorrer la lista de verificación, evaluar lecturas y hallar fallas</translation>
    </message>
    <message>
        <source>Print the chec&amp;klist…</source>
        <translation>Imprimir &amp;lista de verificación…</translation>
    </message>
    <message>
        <source>Steps, cautions and a table for readings, to be filled in by hand</source>
        <translation>Pasos, precauciones y una tabla de lecturas para rellenar a mano</translation>
    </message>
    <message>
        <source>Save the checklist as PD&amp;F…</source>
        <translation>&amp;Guardar lista como PDF…</translation>
    </message>
    <message>
        <source>Write the checklist&apos;s pages to a file</source>
        <translation>Escribir en un archivo las páginas de la lista de verificación</translation>
    </message>
    <message>
        <source>&amp;Keep this curve</source>
        <translation>C&amp;onservar esta curva</translation>
    </message>
    <message>
        <source>Lay the warm-up as it is now under those to come</source>
        <translation>Dejar el calentamiento actual bajo los que vengan</translation>
    </message>
    <message>
        <source>Take kept &amp;curves away</source>
        <translation>&amp;Quitar curvas conservadas</translation>
    </message>
    <message>
        <source>Show the present warm-up alone</source>
        <translation>Mostrar solo el calentamiento actual</translation>
    </message>
    <message>
        <source>&amp;Parts and cuts…</source>
        <translation>Piezas &amp;y cortes…</translation>
    </message>
    <message>
        <source>List what the drawing takes, and how the hose is cut</source>
        <translation>Listar lo que requiere el dibujo y cómo se corta la manguera</translation>
    </message>
    <message>
        <source>&amp;Estimate…</source>
        <translation>Pres&amp;upuesto…</translation>
    </message>
    <message>
        <source>Reckon what the job costs, with prices, hours and other heaters</source>
        <translation>Calcular el costo del trabajo, con precios, horas y otros calentadores</translation>
    </message>
    <message>
        <source>&amp;Rules…</source>
        <translation>R&amp;eglas…</translation>
    </message>
    <message>
        <source>Read every rule, and change its limits for this drawing</source>
        <translation>Leer cada regla y cambiar sus límites para este dibujo</translation>
    </message>
    <message>
        <source>&amp;Assumptions…</source>
        <translation>&amp;Supuestos…</translation>
    </message>
    <message>
        <source>See every figure that is assumed, and change it for this drawing</source>
        <translation>Ver cada cifra supuesta y cambiarla para este dibujo</translation>
    </message>
    <message>
        <source>Select</source>
        <translation>Seleccionar</translation>
    </message>
    <message>
        <source>Select and drag parts</source>
        <translation>Seleccionar y arrastrar piezas</translation>
    </message>
    <message>
        <source>Supply hose</source>
        <translation>Manguera de alimentación</translation>
    </message>
    <message>
        <source>Draw the hose from the engine to the heater</source>
        <translation>Dibujar la manguera del motor al calentador</translation>
    </message>
    <message>
        <source>Return hose</source>
        <translation>Manguera de retorno</translation>
    </message>
    <message>
        <source>Draw the hose from the heater to the engine</source>
        <translation>Dibujar la manguera del calentador al motor</translation>
    </message>
    <message>
        <source>Port</source>
        <translation>Toma</translation>
    </message>
    <message>
        <source>Mark an opening into the water jacket</source>
        <translation>Marcar una abertura a la camisa de agua</translation>
    </message>
    <message>
        <source>Heater</source>
        <translation>Calentador</translation>
    </message>
    <message>
        <source>Place a tank heater</source>
        <translation>Colocar un calentador de tanque</translation>
    </message>
    <message>
        <source>Valve</source>
        <translation>Válvula</translation>
    </message>
    <message>
        <source>Put an isolation valve into a hose</source>
        <translation>Poner una válvula de aislamiento en una manguera</translation>
    </message>
    <message>
        <source>Bleed</source>
        <translation>Purgador</translation>
    </message>
    <message>
        <source>Put a bleed point into a hose</source>
        <translation>Poner un punto de purga en una manguera</translation>
    </message>
    <message>
        <source>Clip</source>
        <translation>Soporte</translation>
    </message>
    <message>
        <source>Clip a hose to the frame</source>
        <translation>Sujetar una manguera al bastidor</translation>
    </message>
    <message>
        <source>Keep-clear area</source>
        <translation>Zona restringida</translation>
    </message>
    <message>
        <source>Outline something hot or moving</source>
        <translation>Delimitar algo caliente o en movimiento</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation>Vaso</translation>
    </message>
    <message>
        <source>Place the surge tank with the coolant levels</source>
        <translation>Colocar el vaso de expansión con los niveles de refrigerante</translation>
    </message>
    <message>
        <source>Dimension</source>
        <translation>Cota</translation>
    </message>
    <message>
        <source>Measure between any two things; it follows them and prints</source>
        <translation>Medir entre dos cosas cualesquiera; las sigue y se imprime</translation>
    </message>
    <message>
        <source>S&amp;helf of parts</source>
        <translation>&amp;Estante de piezas</translation>
    </message>
    <message>
        <source>Parts to drag onto the drawing; Enter puts one in the middle</source>
        <translation>Piezas para arrastrar al dibujo; Intro pone una en el centro</translation>
    </message>
    <message>
        <source>S&amp;urvey…</source>
        <translation>Tom&amp;a de datos…</translation>
    </message>
    <message>
        <source>Type what was measured at the vehicle and draw the engine from it</source>
        <translation>Escribir lo medido en el vehículo y dibujar el motor a partir de ello</translation>
    </message>
    <message>
        <source>&amp;Engine…</source>
        <translation>&amp;Motor…</translation>
    </message>
    <message>
        <source>Choose an engine by its picture and place it</source>
        <translation>Elegir un motor por su imagen y colocarlo</translation>
    </message>
    <message>
        <source>&amp;Heater…</source>
        <translation>&amp;Calentador…</translation>
    </message>
    <message>
        <source>Choose a heater by its picture and place it under the jacket</source>
        <translation>Elegir un calentador por su imagen y colocarlo bajo la camisa</translation>
    </message>
    <message>
        <source>&amp;Photo…</source>
        <translation>&amp;Foto…</translation>
    </message>
    <message>
        <source>Put a photo of the engine under the drawing, to draw over</source>
        <translation>Poner una foto del motor bajo el dibujo para calcar</translation>
    </message>
    <message>
        <source>Photo from the &amp;clipboard</source>
        <translation>Foto del &amp;portapapeles</translation>
    </message>
    <message>
        <source>Put the picture that was copied elsewhere under the drawing</source>
        <translation>Poner bajo el dibujo la imagen copiada de otro lugar</translation>
    </message>
    <message>
        <source>&amp;Straighten by a rectangle…</source>
        <translation>En&amp;derezar con un rectángulo…</translation>
    </message>
    <message>
        <source>Click the corners of a rectangle of known size in a photo taken at an angle</source>
        <translation>Hacer clic en las esquinas de un rectángulo de tamaño conocido en una foto tomada en ángulo</translation>
    </message>
    <message>
        <source>S&amp;cale by two points…</source>
        <translation>E&amp;scala por dos puntos…</translation>
    </message>
    <message>
        <source>Click two points in the photo and type how far apart they are</source>
        <translation>Hacer clic en dos puntos de la foto y escribir a qué distancia están</translation>
    </message>
    <message>
        <source>&amp;Level by two points</source>
        <translation>&amp;Nivelar por dos puntos</translation>
    </message>
    <message>
        <source>Click two points along something level in the photo</source>
        <translation>Hacer clic en dos puntos de algo horizontal en la foto</translation>
    </message>
    <message>
        <source>Loc&amp;k the photo</source>
        <translation>&amp;Bloquear la foto</translation>
    </message>
    <message>
        <source>Keep the photo where it is while you draw over it</source>
        <translation>Dejar la foto donde está mientras dibuja encima</translation>
    </message>
    <message>
        <source>Select the &amp;photo</source>
        <translation>Seleccion&amp;ar la foto</translation>
    </message>
    <message>
        <source>Show place, scale, turn and fade of the photo in the details</source>
        <translation>Mostrar posición, escala, giro y atenuación de la foto en los detalles</translation>
    </message>
    <message>
        <source>Supply port, low at the front</source>
        <translation>Toma de alimentación, baja y delante</translation>
    </message>
    <message>
        <source>Add a port at the jacket&apos;s lowest level</source>
        <translation>Añadir una toma en el nivel más bajo de la camisa</translation>
    </message>
    <message>
        <source>Return port, high at the rear</source>
        <translation>Toma de retorno, alta y detrás</translation>
    </message>
    <message>
        <source>Add a port near the jacket&apos;s highest level</source>
        <translation>Añadir una toma cerca del nivel más alto de la camisa</translation>
    </message>
    <message>
        <source>Supply hose, port to heater</source>
        <translation>Manguera de alimentación, de toma a calentador</translation>
    </message>
    <message>
        <source>Add a straight hose to be shaped</source>
        <translation>Añadir una manguera recta para darle forma</translation>
    </message>
    <message>
        <source>Return hose, heater to port</source>
        <translation>Manguera de retorno, de calentador a toma</translation>
    </message>
    <message>
        <source>Point in the selected hose</source>
        <translation>Punto en la manguera seleccionada</translation>
    </message>
    <message>
        <source>Add a route point in the middle of the hose</source>
        <translation>Añadir un punto de recorrido en el centro de la manguera</translation>
    </message>
    <message>
        <source>Isolation valve in the selected hose</source>
        <translation>Válvula de aislamiento en la manguera seleccionada</translation>
    </message>
    <message>
        <source>Add a valve near the hose&apos;s start</source>
        <translation>Añadir una válvula cerca del inicio de la manguera</translation>
    </message>
    <message>
        <source>Bleed at the selected hose&apos;s crest</source>
        <translation>Purgador en la cresta de la manguera seleccionada</translation>
    </message>
    <message>
        <source>Add a bleed point where the hose is highest</source>
        <translation>Añadir un punto de purga donde la manguera es más alta</translation>
    </message>
    <message>
        <source>Surge tank over the engine</source>
        <translation>Vaso de expansión sobre el motor</translation>
    </message>
    <message>
        <source>Add the tank with its coolant levels</source>
        <translation>Añadir el vaso con sus niveles de refrigerante</translation>
    </message>
    <message>
        <source>Add a square area to be shaped</source>
        <translation>Añadir una zona cuadrada para darle forma</translation>
    </message>
    <message>
        <source>&amp;Teaching air locks</source>
        <translation>&amp;Enseñar el bloqueo por aire</translation>
    </message>
    <message>
        <source>Lessons, faults to find and their answers, for a trainer</source>
        <translation>Lecciones, fallas por encontrar y sus respuestas, para instructores</translation>
    </message>
    <message>
        <source>&amp;Demonstrate</source>
        <translation>&amp;Demostrar</translation>
    </message>
    <message>
        <source>Play filling, engine run and warm-up on the drawing</source>
        <translation>Reproducir llenado, marcha del motor y calentamiento en el dibujo</translation>
    </message>
    <message>
        <source>&amp;Hide findings</source>
        <translation>&amp;Ocultar hallazgos</translation>
    </message>
    <message>
        <source>Let the class guess first</source>
        <translation>Dejar que la clase adivine primero</translation>
    </message>
    <message>
        <source>&amp;Ask the class</source>
        <translation>&amp;Preguntar a la clase</translation>
    </message>
    <message>
        <source>Count hands, then reveal whether it circulates</source>
        <translation>Contar manos y luego revelar si circula</translation>
    </message>
    <message>
        <source>&amp;Second drawing beside…</source>
        <translation>&amp;Segundo dibujo al lado…</translation>
    </message>
    <message>
        <source>Play a drawing from a file by the same clock</source>
        <translation>Reproducir un dibujo de un archivo con el mismo reloj</translation>
    </message>
    <message>
        <source>&amp;Full screen</source>
        <translation>Pantalla &amp;completa</translation>
    </message>
    <message>
        <source>Large, to be read from the back of the room</source>
        <translation>En grande, para leer desde el fondo del aula</translation>
    </message>
    <message>
        <source>Export this &amp;moment…</source>
        <translation>Exportar este &amp;momento…</translation>
    </message>
    <message>
        <source>Write what is shown now as PNG or SVG</source>
        <translation>Escribir lo que se muestra ahora como PNG o SVG</translation>
    </message>
    <message>
        <source>Export all &amp;pictures…</source>
        <translation>Exportar todas las &amp;imágenes…</translation>
    </message>
    <message>
        <source>Write the demonstration as numbered PNG pictures</source>
        <translation>Escribir la demostración como páginas PNG numeradas</translation>
    </message>
    <message>
        <source>Hand&amp;out…</source>
        <translation>&amp;Hoja de clase…</translation>
    </message>
    <message>
        <source>Write one page with six moments and their captions as PDF</source>
        <translation>Escribir una página PDF con seis momentos y sus leyendas</translation>
    </message>
    <message>
        <source>Find a co&amp;mmand…</source>
        <translation>&amp;Buscar un comando…</translation>
    </message>
    <message>
        <source>Search all commands by their words, and run one</source>
        <translation>Buscar entre todos los comandos por sus palabras y ejecutar uno</translation>
    </message>
    <message>
        <source>&amp;Shortcuts…</source>
        <translation>&amp;Atajos…</translation>
    </message>
    <message>
        <source>See the keys of every command, and change them</source>
        <translation>Ver las teclas de cada comando y cambiarlas</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>P&amp;recauciones</translation>
    </message>
    <message>
        <source>What to heed before and during the work</source>
        <translation>Qué tener en cuenta antes del trabajo y durante él</translation>
    </message>
    <message>
        <source>&amp;First sketch, step by step</source>
        <translation>&amp;Primer dibujo, paso a paso</translation>
    </message>
    <message>
        <source>Be led through a first drawing, from the engine to the saved file</source>
        <translation>Guía por un primer dibujo, del motor al archivo guardado</translation>
    </message>
    <message>
        <source>&amp;About Siphonwright</source>
        <translation>A&amp;cerca de Siphonwright</translation>
    </message>
    <message>
        <source>Version, licences and what the figures are</source>
        <translation>Versión, licencias y qué son las cifras</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Como el &amp;sistema</translation>
    </message>
    <message>
        <source>Texts, numbers and dates as the system has them, from the next start on</source>
        <translation>Textos, números y fechas como los tiene el sistema, desde el próximo inicio</translation>
    </message>
    <message>
        <source>English texts, from the next start on</source>
        <translation>Textos en inglés, desde el próximo inicio</translation>
    </message>
    <message>
        <source>Spanish texts, from the next start on</source>
        <translation>Textos en español, desde el próximo inicio</translation>
    </message>
    <message>
        <source>French texts, from the next start on</source>
        <translation>Textos en francés, desde el próximo inicio</translation>
    </message>
    <message>
        <source>German texts, from the next start on</source>
        <translation>Textos en alemán, desde el próximo inicio</translation>
    </message>
    <message>
        <source>Fi&amp;x the finding</source>
        <translation>&amp;Corregir el hallazgo</translation>
    </message>
    <message>
        <source>Change the drawing as is offered under the list of findings</source>
        <translation>Cambiar el dibujo como se ofrece bajo la lista de hallazgos</translation>
    </message>
    <message>
        <source>&amp;Checklist behind the sheet</source>
        <translation>&amp;Lista de comprobación tras la hoja</translation>
    </message>
    <message>
        <source>Print and export the checklist and the table of readings after the drawing</source>
        <translation>Imprimir y exportar la lista de comprobación y la tabla de lecturas tras el dibujo</translation>
    </message>
    <message>
        <source>&amp;Estimate behind the sheet</source>
        <translation>&amp;Presupuesto tras la hoja</translation>
    </message>
    <message>
        <source>Print and export the estimate after the drawing, where prices are there</source>
        <translation>Imprimir y exportar el presupuesto tras el dibujo, si hay precios</translation>
    </message>
    <message>
        <source>&amp;Assumptions behind the sheet</source>
        <translation>&amp;Supuestos tras la hoja</translation>
    </message>
    <message>
        <source>Print and export what the figures rest on, after the drawing</source>
        <translation>Imprimir y exportar en qué se basan las cifras, tras el dibujo</translation>
    </message>
    <message>
        <source>&amp;Logo on the sheet…</source>
        <translation>L&amp;ogotipo en la hoja…</translation>
    </message>
    <message>
        <source>Choose a picture for the title block; chosen again, it comes off</source>
        <translation>Elegir una imagen para el cajetín; elegido otra vez, se quita</translation>
    </message>
    <message>
        <source>Recover &amp;drawings…</source>
        <translation>Recuperar &amp;dibujos…</translation>
    </message>
    <message>
        <source>See what was not saved when the program ended unexpectedly, or was put aside</source>
        <translation>Ver lo que no se guardó cuando el programa terminó de forma inesperada, o se apartó</translation>
    </message>
    <message>
        <source>High contrast, &amp;white on black</source>
        <translation>Alto contraste, &amp;blanco sobre negro</translation>
    </message>
    <message>
        <source>White on black, for eyes that a bright ground blinds</source>
        <translation>Blanco sobre negro, para ojos que un fondo claro deslumbra</translation>
    </message>
</context>
<context>
    <name>Canvas</name>
    <message>
        <source>%1 wide, %2 high</source>
        <translation>%1 de ancho, %2 de alto</translation>
    </message>
    <message>
        <source>Height %1</source>
        <translation>Altura %1</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>Mover %1</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation>Girar %1</translation>
    </message>
    <message>
        <source>%1 parts</source>
        <translation>%1 piezas</translation>
    </message>
</context>
<context>
    <name>Drawing</name>
    <message>
        <source>The photo cannot be shown</source>
        <translation>No se puede mostrar la foto</translation>
    </message>
    <message>
        <source>Coolant in the hoses</source>
        <translation>Refrigerante en las mangueras</translation>
    </message>
</context>
<context>
    <name>DrawingKeys</name>
    <message>
        <source>Arrow keys</source>
        <translation>Teclas de flecha</translation>
    </message>
    <message>
        <source>Nudge what is selected, move the cross-hair, or move the paper</source>
        <translation>Desplazar un poco lo seleccionado, mover la cruz o mover el papel</translation>
    </message>
    <message>
        <source>Shift + arrow keys</source>
        <translation>Mayús + teclas de flecha</translation>
    </message>
    <message>
        <source>A fine step</source>
        <translation>Un paso fino</translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Mayús+Tab</translation>
    </message>
    <message>
        <source>Next and previous point of what is selected, or place to put it</source>
        <translation>Punto siguiente o anterior de lo seleccionado, o lugar donde ponerlo</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Put down at the cross-hair; finish a hose</source>
        <translation>Poner en la cruz; terminar una manguera</translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation>Retroceso</translation>
    </message>
    <message>
        <source>Take the last point of a hose back</source>
        <translation>Quitar el último punto de una manguera</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Stop what was begun; back to selecting</source>
        <translation>Detener lo empezado; volver a seleccionar</translation>
    </message>
    <message>
        <source>Space + drag, middle button</source>
        <translation>Espacio + arrastrar, botón central</translation>
    </message>
    <message>
        <source>Move the paper</source>
        <translation>Mover el papel</translation>
    </message>
    <message>
        <source>Wheel</source>
        <translation>Rueda</translation>
    </message>
    <message>
        <source>Zoom to the pointer</source>
        <translation>Zoom hacia el puntero</translation>
    </message>
    <message>
        <source>Alt while dragging</source>
        <translation>Alt al arrastrar</translation>
    </message>
    <message>
        <source>No snapping</source>
        <translation>Sin ajuste automático</translation>
    </message>
</context>
<context>
    <name>PartMenu</name>
    <message>
        <source>&amp;Align</source>
        <translation>Ali&amp;near</translation>
    </message>
    <message>
        <source>Selected &amp;part</source>
        <translation>Pieza &amp;seleccionada</translation>
    </message>
</context>
<context>
    <name>Photo</name>
    <message>
        <source>Its data are damaged: they are no Base64.</source>
        <translation>Sus datos están dañados: no son Base64.</translation>
    </message>
</context>
<context>
    <name>SlowCall</name>
    <message>
        <source>%1 is being saved…</source>
        <translation>Guardando %1…</translation>
    </message>
    <message>
        <source>%1 is being opened…</source>
        <translation>Abriendo %1…</translation>
    </message>
    <message>
        <source>%1 is not saved yet: its place does not answer.</source>
        <translation>%1 no está guardado todavía: su lugar no responde.</translation>
    </message>
    <message>
        <source>%1 is not open yet: its place does not answer.</source>
        <translation>%1 no está abierto todavía: su lugar no responde.</translation>
    </message>
    <message>
        <source>A network drive may be busy or gone. This closes by itself when the drawing is saved after all. If you save in another place, or stop waiting, the file there stays as it was, and your drawing stays on the table.</source>
        <translation>Puede que una unidad de red esté ocupada o ya no esté. Esto se cierra solo si el dibujo se guarda al fin. Si guarda en otro lugar o deja de esperar, el archivo de allí queda como estaba y su dibujo sigue en la mesa.</translation>
    </message>
    <message>
        <source>A network drive may be busy or gone. This closes by itself when the file is read after all. If you stop waiting, the drawing on the table stays as it is.</source>
        <translation>Puede que una unidad de red esté ocupada o ya no esté. Esto se cierra solo si el archivo se lee al fin. Si deja de esperar, el dibujo que está en la mesa queda como está.</translation>
    </message>
    <message>
        <source>Siphonwright</source>
        <translation>Siphonwright</translation>
    </message>
    <message>
        <source>This closes by itself when it is done.</source>
        <translation>Esto se cierra solo cuando termina.</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Guardar &amp;como…</translation>
    </message>
    <message>
        <source>&amp;Stop waiting</source>
        <translation>&amp;Dejar de esperar</translation>
    </message>
    <message>
        <source>%1 is being written…</source>
        <translation>Se está escribiendo %1…</translation>
    </message>
    <message>
        <source>%1 is not written yet: its place does not answer.</source>
        <translation>%1 no está escrito todavía: su lugar no responde.</translation>
    </message>
    <message>
        <source>A network drive may be busy or gone. This closes by itself when the file is written after all. If you stop waiting, what stands there stays as it was; write it again in another place.</source>
        <translation>Puede que una unidad de red esté ocupada o ya no esté. Esto se cierra solo si el archivo se escribe al fin. Si deja de esperar, lo que hay allí queda como estaba; escríbalo de nuevo en otro lugar.</translation>
    </message>
    <message>
        <source>A network drive may be busy or gone. This closes by itself when the logo is read after all. If you stop waiting, the sheet is made without it.</source>
        <translation>Puede que una unidad de red esté ocupada o ya no esté. Esto se cierra solo si el logotipo se lee al fin. Si deja de esperar, la hoja se hace sin él.</translation>
    </message>
</context>
<context>
    <name>Snap</name>
    <message>
        <source>Snapped: %1</source>
        <translation>Ajuste: %1</translation>
    </message>
    <message>
        <source>level</source>
        <translation>a nivel</translation>
    </message>
    <message>
        <source>plumb</source>
        <translation>a plomo</translation>
    </message>
</context>
<context>
    <name>Teaching</name>
    <message>
        <source>Teaching air locks</source>
        <translation>Enseñar el bloqueo por aire</translation>
    </message>
</context>
<context>
    <name>WriteFailure</name>
    <message>
        <source>Another program has changed %1 since it was opened here. Neither version is lost: choose what is to be done with them.</source>
        <translation>Otro programa ha cambiado %1 desde que se abrió aquí. Ninguna versión se pierde: elija qué hacer con ellas.</translation>
    </message>
    <message>
        <source>There is no room left on the disk for %1. Make room and try again, or save in another place. (%2)</source>
        <translation>No queda espacio en el disco para %1. Libere espacio e inténtelo de nuevo, o guarde en otro lugar. (%2)</translation>
    </message>
    <message>
        <source>%1 is in a place that may only be read. Save in another place. (%2)</source>
        <translation>%1 está en un lugar de solo lectura. Guarde en otro lugar. (%2)</translation>
    </message>
    <message>
        <source>The folder of %1 cannot be reached. Connect the drive again and try again, or save in another place. (%2)</source>
        <translation>No se llega a la carpeta de %1. Conecte otra vez la unidad e inténtelo de nuevo, o guarde en otro lugar. (%2)</translation>
    </message>
    <message>
        <source>%1 cannot be written: the disk reports an error. Try again, or save in another place. (%2)</source>
        <translation>No se puede escribir %1: el disco da un error. Inténtelo de nuevo, o guarde en otro lugar. (%2)</translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>a hose has no length</source>
        <translation>una manguera no tiene longitud</translation>
    </message>
    <message>
        <source>a hose has no bore</source>
        <translation>una manguera no tiene diámetro interior</translation>
    </message>
    <message>
        <source>an opening has no bore</source>
        <translation>una abertura no tiene diámetro interior</translation>
    </message>
    <message>
        <source>a chamber has no volume</source>
        <translation>una cámara no tiene volumen</translation>
    </message>
    <message>
        <source>a valve has no place</source>
        <translation>una válvula no tiene posición</translation>
    </message>
    <message>
        <source>a bleed has no place</source>
        <translation>un purgador no tiene posición</translation>
    </message>
    <message>
        <source>the element has no height</source>
        <translation>la resistencia no tiene altura</translation>
    </message>
    <message>
        <source>the jacket&apos;s volume needs two levels</source>
        <translation>el volumen de la camisa necesita dos niveles</translation>
    </message>
    <message>
        <source>the jacket&apos;s volume must rise with its level</source>
        <translation>el volumen de la camisa debe crecer con su nivel</translation>
    </message>
    <message>
        <source>the target level is no number</source>
        <translation>el nivel buscado no es un número</translation>
    </message>
    <message>
        <source>density and pressures must be over zero</source>
        <translation>la densidad y las presiones deben ser mayores que cero</translation>
    </message>
    <message>
        <source>the air in pre-filled hoses must not be under zero</source>
        <translation>el aire en las mangueras prellenadas no debe ser menor que cero</translation>
    </message>
    <message>
        <source>the vacuum must lie under the atmosphere</source>
        <translation>el vacío debe estar por debajo de la presión atmosférica</translation>
    </message>
    <message>
        <source>there is no loop to feed</source>
        <translation>no hay circuito que alimentar</translation>
    </message>
    <message>
        <source>there is no such valve</source>
        <translation>no existe tal válvula</translation>
    </message>
    <message>
        <source>the level is not reached from where coolant is fed</source>
        <translation>el nivel no se alcanza desde donde entra el refrigerante</translation>
    </message>
    <message>
        <source>no state of rest was found</source>
        <translation>no se encontró un estado de reposo</translation>
    </message>
    <message>
        <source>nothing has been filled</source>
        <translation>no se ha llenado nada</translation>
    </message>
    <message>
        <source>the level is no number</source>
        <translation>el nivel no es un número</translation>
    </message>
    <message>
        <source>coolant shrinks to between half and all of its volume</source>
        <translation>el refrigerante se contrae a entre la mitad y todo su volumen</translation>
    </message>
    <message>
        <source>a pump&apos;s flow must not be under zero</source>
        <translation>el caudal de una bomba no debe ser menor que cero</translation>
    </message>
    <message>
        <source>%1 Filled as planned, none closes the bore.</source>
        <translation>%1 Con el llenado previsto, ningún aire cierra el paso.</translation>
    </message>
    <message>
        <source>Fill so every time, or lower the hump by at least {0}.</source>
        <translation>Llene siempre así, o baje el lomo al menos {0}.</translation>
    </message>
    <message>
        <source>Lower the hump by at least {0}. A bleed {1} along {a}, filled with the valves open, would let its air out; re-routing is the better cure.</source>
        <translation>Baje el lomo al menos {0}. Un purgador en {a} a {1} del inicio dejaría salir su aire si se llena con las válvulas abiertas; cambiar el recorrido es mejor remedio.</translation>
    </message>
    <message>
        <source>A bleed {0} along {a}, filled with the valves open, would let it out; re-routing is the better cure.</source>
        <translation>Un purgador en {a} a {0} del inicio lo dejaría salir si se llena con las válvulas abiertas; cambiar el recorrido es mejor remedio.</translation>
    </message>
    <message>
        <source>%1 right side up</source>
        <translation>%1 lado derecho arriba</translation>
    </message>
    <message>
        <source>%1 left side up</source>
        <translation>%1 lado izquierdo arriba</translation>
    </message>
    <message>
        <source>%1 and %2 right side up</source>
        <translation>%1 y %2 lado derecho arriba</translation>
    </message>
    <message>
        <source>%1 and %2 left side up</source>
        <translation>%1 y %2 lado izquierdo arriba</translation>
    </message>
    <message>
        <source>Parked from %1</source>
        <translation>Estacionado desde %1</translation>
    </message>
    <message>
        <source>Parked %1</source>
        <translation>Estacionado %1</translation>
    </message>
    <message>
        <source>%1 on (figures at %2)</source>
        <translation>%1 en adelante (cifras con %2)</translation>
    </message>
    <message>
        <source>over {0}</source>
        <translation>más de {0}</translation>
    </message>
    <message>
        <source>%1 nose-down to %2</source>
        <translation>%1 frente abajo hasta %2</translation>
    </message>
    <message>
        <source>over {1}</source>
        <translation>más de {1}</translation>
    </message>
    <message>
        <source>%1 nose-up.</source>
        <translation>%1 frente arriba.</translation>
    </message>
    <message>
        <source>{a} may sag more than {0}.</source>
        <translation>{a} puede combarse más de {0}.</translation>
    </message>
    <message>
        <source>{a} may sag {0} before it holds air or coolant.</source>
        <translation>{a} puede combarse {0} antes de retener aire o refrigerante.</translation>
    </message>
    <message>
        <source>%1 (typical)</source>
        <translation>%1 (típico)</translation>
    </message>
    <message>
        <source>%1 (assumed)</source>
        <translation>%1 (supuesto)</translation>
    </message>
    <message>
        <source>flow %1</source>
        <translation>caudal %1</translation>
    </message>
    <message>
        <source>outlet %1 at most while it warms up</source>
        <translation>salida %1 como máximo mientras se calienta</translation>
    </message>
    <message>
        <source>%1 after %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>{a}: not computed: {b}</source>
        <translation>{a}: sin calcular: {b}</translation>
    </message>
    <message>
        <source>{a}: {0}, {1} in, {2} out, {3} drives</source>
        <translation>{a}: {0}, {1} a la entrada, {2} a la salida, impulsa {3}</translation>
    </message>
    <message>
        <source>{a}: {0} backward, {1} in, {2} out, {3} drives</source>
        <translation>{a}: {0} hacia atrás, {1} a la entrada, {2} a la salida, impulsa {3}</translation>
    </message>
    <message>
        <source>%1: no flow: %2</source>
        <translation>%1: sin caudal: %2</translation>
    </message>
    <message>
        <source>Warm-up: not computed: {a}</source>
        <translation>Calentamiento: sin calcular: {a}</translation>
    </message>
    <message>
        <source>Warm-up: not computed: {0} is under the coolant&apos;s freezing point</source>
        <translation>Calentamiento: sin calcular: {0} está por debajo del punto de congelación del refrigerante</translation>
    </message>
    <message>
        <source>Warm-up: not computed: its inputs do not hold together</source>
        <translation>Calentamiento: sin calcular: los datos no concuerdan entre sí</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>Calentamiento</translation>
    </message>
    <message>
        <source>%1 not reached</source>
        <translation>%1 no se alcanza</translation>
    </message>
    <message>
        <source>{a}: never on</source>
        <translation>{a}: no se enciende nunca</translation>
    </message>
    <message>
        <source>{a}: coolant leaves at %1 at most</source>
        <translation>{a}: el refrigerante sale a %1 como máximo</translation>
    </message>
    <message>
        <source>boils</source>
        <translation>hierve</translation>
    </message>
    <message>
        <source>%1 under boiling</source>
        <translation>%1 por debajo de la ebullición</translation>
    </message>
    <message>
        <source>{a}, where 9 in 10 lie over what is assumed</source>
        <translation>{a}, donde caen 9 de cada 10 casos de lo supuesto</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>coolant leaves at %1</source>
        <translation>el refrigerante sale a %1</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>encendido %1</translation>
    </message>
    <message>
        <source>%1 times in the worst hour</source>
        <translation>%1 veces en la peor hora</translation>
    </message>
    <message>
        <source>target after %1</source>
        <translation>objetivo tras %1</translation>
    </message>
    <message>
        <source>{a} is air-locked: {0} of air stays in it and takes {1} of head; the loop can raise {2}.</source>
        <translation>{a}: bloqueo por aire. Quedan {0} de aire que restan {1} de altura de presión; el circuito puede dar {2}.</translation>
    </message>
    <message>
        <source>{a} is air-locked: {0} of air stays in it, takes {1} of head and turns the flow round.</source>
        <translation>{a}: bloqueo por aire. Quedan {0} de aire que restan {1} de altura de presión e invierten el caudal.</translation>
    </message>
    <message>
        <source>Air in {a} takes {0} of head and weakens the flow by {1}.</source>
        <translation>El aire en {a} resta {0} de altura de presión y debilita el caudal un {1}.</translation>
    </message>
    <message>
        <source>Air in {a} leaves {0} of the bore open and weakens the flow by {1}.</source>
        <translation>El aire en {a} deja abierto {0} del paso y debilita el caudal un {1}.</translation>
    </message>
    <message>
        <source>the top of the element of %1</source>
        <translation>la parte superior de la resistencia de %1</translation>
    </message>
    <message>
        <source>the top of the element of %1 is not entered</source>
        <translation>falta la parte superior de la resistencia de %1</translation>
    </message>
    <message>
        <source>{a} keeps {0} of air in its chamber after filling.</source>
        <translation>{a} retiene {0} de aire en su cámara después del llenado.</translation>
    </message>
    <message>
        <source>{a} keeps {0} of air in its chamber after filling, and its element is not covered.</source>
        <translation>{a} retiene {0} de aire en su cámara después del llenado y su resistencia no queda cubierta.</translation>
    </message>
    <message>
        <source>Running the engine leaves the air in {a}: {0} in the hose, and {1} to {2} clear it.</source>
        <translation>La marcha del motor deja el aire en {a}: hay {0} en la manguera y hacen falta de {1} a {2}.</translation>
    </message>
    <message>
        <source>Running the engine may clear the air in {a}: {0} in the hose, and {1} to {2} clear it.</source>
        <translation>La marcha del motor puede expulsar el aire de {a}: hay {0} en la manguera y hacen falta de {1} a {2}.</translation>
    </message>
    <message>
        <source>Running the engine clears the air in {a} ({0} in the hose, {1} to {2} clear it): look again after the first night.</source>
        <translation>La marcha del motor expulsa el aire de {a} (hay {0} en la manguera, hacen falta de {1} a {2}): revise de nuevo tras la primera noche.</translation>
    </message>
    <message>
        <source>the coldest ambient temperature is not entered</source>
        <translation>falta la temperatura ambiente más fría</translation>
    </message>
    <message>
        <source>the coldest ambient temperature</source>
        <translation>la temperatura ambiente más fría</translation>
    </message>
    <message>
        <source>At {1} the coolant shrinks to {0} under its cold minimum.</source>
        <translation>A {1} el refrigerante se contrae hasta {0} por debajo de su mínimo en frío.</translation>
    </message>
    <message>
        <source>{a} leaves its hose end at an angle of {0}: it would kink there.</source>
        <translation>{a} sale de su espiga con un ángulo de {0}: se doblaría allí.</translation>
    </message>
    <message>
        <source>Lead the hose straight out of its end before it bends, or turn the elbow.</source>
        <translation>Haga salir la manguera recta de su espiga antes de curvarla, o gire el codo.</translation>
    </message>
    <message>
        <source>{a} bends to a radius of {0} at its centre; it needs {1}.</source>
        <translation>{a} se curva con un radio de {0} en su eje; necesita {1}.</translation>
    </message>
    <message>
        <source>Open the bend to {0} or more, or use a moulded elbow.</source>
        <translation>Abra la curva a {0} o más, o use un codo moldeado.</translation>
    </message>
    <message>
        <source>the bore of %1 is not entered</source>
        <translation>falta el diámetro interior de %1</translation>
    </message>
    <message>
        <source>{a} has no room for a bend of radius {0}: only {1} fits between its neighbours.</source>
        <translation>{a} no tiene espacio para una curva de radio {0}: entre sus vecinos solo cabe {1}.</translation>
    </message>
    <message>
        <source>{a} turns straight back on itself.</source>
        <translation>{a} da media vuelta sobre sí misma.</translation>
    </message>
    <message>
        <source>the least hose bore in the manual of %1 is not entered</source>
        <translation>falta el diámetro mínimo de manguera según el manual de %1</translation>
    </message>
    <message>
        <source>the least hose bore in the manual of %1</source>
        <translation>el diámetro mínimo de manguera según el manual de %1</translation>
    </message>
    <message>
        <source>{a} has a bore of {0}; the heater&apos;s manual asks for {1} or more.</source>
        <translation>{a} tiene un diámetro interior de {0}; el manual del calentador pide {1} o más.</translation>
    </message>
    <message>
        <source>Use hose of {0} bore or more.</source>
        <translation>Use manguera de {0} de diámetro interior o más.</translation>
    </message>
    <message>
        <source>the port</source>
        <translation>la toma</translation>
    </message>
    <message>
        <source>the heater&apos;s nozzle</source>
        <translation>la boquilla del calentador</translation>
    </message>
    <message>
        <source>the hose end</source>
        <translation>la espiga</translation>
    </message>
    <message>
        <source>the isolation valve</source>
        <translation>la válvula de aislamiento</translation>
    </message>
    <message>
        <source>the bleed</source>
        <translation>la válvula de purga</translation>
    </message>
    <message>
        <source>the drain</source>
        <translation>la válvula de drenaje</translation>
    </message>
    <message>
        <source>the check valve</source>
        <translation>la válvula antirretorno</translation>
    </message>
    <message>
        <source>the reducer</source>
        <translation>la reducción</translation>
    </message>
    <message>
        <source>a part</source>
        <translation>una pieza</translation>
    </message>
    <message>
        <source>%1 is not entered</source>
        <translation>falta %1</translation>
    </message>
    <message>
        <source>the bore of %1</source>
        <translation>el diámetro interior de %1</translation>
    </message>
    <message>
        <source>the bore of the inlet of %1</source>
        <translation>el diámetro interior de la entrada de %1</translation>
    </message>
    <message>
        <source>the bore of the outlet of %1</source>
        <translation>el diámetro interior de la salida de %1</translation>
    </message>
    <message>
        <source>{a} narrows from {0} to {1} at {b}.</source>
        <translation>{a} se estrecha de {0} a {1} en {b}.</translation>
    </message>
    <message>
        <source>Use a part with a bore of {0} or more.</source>
        <translation>Use una pieza con un diámetro interior de {0} o más.</translation>
    </message>
    <message>
        <source>{a} reaches {0} under the ground at lowest ride height.</source>
        <translation>{a} llega {0} por debajo del suelo con la suspensión al mínimo.</translation>
    </message>
    <message>
        <source>{a} is only {0} over the ground at lowest ride height.</source>
        <translation>{a} queda a solo {0} del suelo con la suspensión al mínimo.</translation>
    </message>
    <message>
        <source>Raise it by at least {0}.</source>
        <translation>Elévelo al menos {0}.</translation>
    </message>
    <message>
        <source>{a} is only {0} from {b}.</source>
        <translation>{a} está a solo {0} de {b}.</translation>
    </message>
    <message>
        <source>{a} touches {b}.</source>
        <translation>{a} toca {b}.</translation>
    </message>
    <message>
        <source>{a} crosses {b} in the side view; how deep that lies is not entered.</source>
        <translation>{a} cruza {b} en la vista lateral; falta a qué profundidad está.</translation>
    </message>
    <message>
        <source>{a} is only {0} from {b} in the side view; how deep that lies is not entered.</source>
        <translation>{a} está a solo {0} de {b} en la vista lateral; falta a qué profundidad está.</translation>
    </message>
    <message>
        <source>Move it at least {0} away.</source>
        <translation>Apártelo al menos {0}.</translation>
    </message>
    <message>
        <source>Enter how deep {a} lies, or move it at least {0} away.</source>
        <translation>Introduzca a qué profundidad está {a}, o apártelo al menos {0}.</translation>
    </message>
    <message>
        <source>the ground at lowest ride height is not entered</source>
        <translation>falta el suelo con la suspensión al mínimo</translation>
    </message>
    <message>
        <source>{a} has a heater at both ends: this end belongs on an engine port.</source>
        <translation>{a} tiene un calentador en ambos extremos: este extremo va a una toma del motor.</translation>
    </message>
    <message>
        <source>{a} has an engine port at both ends: this end belongs on the heater.</source>
        <translation>{a} tiene una toma del motor en ambos extremos: este extremo va al calentador.</translation>
    </message>
    <message>
        <source>{a} ends on the heater&apos;s outlet: it belongs on the inlet.</source>
        <translation>{a} termina en la salida del calentador: debe ir a la entrada.</translation>
    </message>
    <message>
        <source>{a} starts at the heater&apos;s inlet: it belongs on the outlet.</source>
        <translation>{a} empieza en la entrada del calentador: debe ir a la salida.</translation>
    </message>
    <message>
        <source>{a} is connected to nothing.</source>
        <translation>{a} no tiene ninguna conexión.</translation>
    </message>
    <message>
        <source>{a} has no hoses yet.</source>
        <translation>{a} aún no tiene mangueras.</translation>
    </message>
    <message>
        <source>{a} has no hose on its outlet.</source>
        <translation>{a} no tiene manguera en la salida.</translation>
    </message>
    <message>
        <source>{a} has no hose on its inlet.</source>
        <translation>{a} no tiene manguera en la entrada.</translation>
    </message>
    <message>
        <source>{a} is {0} long, {1} more than square from end to end.</source>
        <translation>{a} mide {0}, {1} más que en escuadra de extremo a extremo.</translation>
    </message>
    <message>
        <source>Take at least {0} out of it.</source>
        <translation>Acórtela al menos {0}.</translation>
    </message>
    <message>
        <source>{a} is open at its start.</source>
        <translation>El inicio de {a} está abierto.</translation>
    </message>
    <message>
        <source>{a} is open at its end.</source>
        <translation>El final de {a} está abierto.</translation>
    </message>
    <message>
        <source>the kind of antifreeze is not entered</source>
        <translation>falta el tipo de anticongelante</translation>
    </message>
    <message>
        <source>the share of antifreeze in the coolant is not entered</source>
        <translation>falta la proporción de anticongelante en el refrigerante</translation>
    </message>
    <message>
        <source>freezing points are known only up to 60 % of antifreeze</source>
        <translation>los puntos de congelación se conocen solo hasta un 60 % de anticongelante</translation>
    </message>
    <message>
        <source>the share of antifreeze in the coolant</source>
        <translation>la proporción de anticongelante en el refrigerante</translation>
    </message>
    <message>
        <source>The coolant holds {0} of antifreeze by volume; more than {1} carries heat worse and protects less.</source>
        <translation>El refrigerante tiene {0} de anticongelante en volumen; más de {1} transporta peor el calor y protege menos.</translation>
    </message>
    <message>
        <source>Drain some and top up with water to {0} or less.</source>
        <translation>Vacíe una parte y complete con agua hasta {0} o menos.</translation>
    </message>
    <message>
        <source>The coolant freezes at {0}, and it gets as cold as {1}.</source>
        <translation>El refrigerante se congela a {0}, y llega a enfriarse a {1}.</translation>
    </message>
    <message>
        <source>Mix the coolant to freeze at {0} or below.</source>
        <translation>Mezcle el refrigerante para que se congele a {0} o menos.</translation>
    </message>
    <message>
        <source>The kind of antifreeze in the engine is not known.</source>
        <translation>No se conoce el tipo de anticongelante del motor.</translation>
    </message>
    <message>
        <source>Of the antifreeze only the colour is entered ({a}), which does not tell its kind.</source>
        <translation>Del anticongelante solo se introdujo el color ({a}), que no indica su tipo.</translation>
    </message>
    <message>
        <source>Bleed at every fill, or lower the hump by at least {0}.</source>
        <translation>Purgue en cada llenado, o baje el lomo al menos {0}.</translation>
    </message>
    <message>
        <source>Lower the hump by at least {0}, or put a bleed at its crest.</source>
        <translation>Baje el lomo al menos {0}, o ponga un purgador en su cresta.</translation>
    </message>
    <message>
        <source>{a} dips {0} below its rim: {1} of coolant stays there and slows the flow.</source>
        <translation>{a} baja {0} por debajo de su borde: allí quedan {1} de refrigerante que frenan el caudal.</translation>
    </message>
    <message>
        <source>{a} dips {0} below its rim: {1} of coolant fills the bore there and no air can pass.</source>
        <translation>{a} baja {0} por debajo de su borde: {1} de refrigerante llenan allí el paso y no puede pasar aire.</translation>
    </message>
    <message>
        <source>Raise the dip by at least {0}, so that the hose rises all the way.</source>
        <translation>Eleve el punto bajo al menos {0}, para que la manguera suba todo el tiempo.</translation>
    </message>
    <message>
        <source>it is not entered whether the coolant is plain water</source>
        <translation>falta indicar si el refrigerante es agua sola</translation>
    </message>
    <message>
        <source>{a} dips {0}: {1} of coolant stays in it when drained.</source>
        <translation>{a} tiene un punto bajo de {0}: al vaciar quedan allí {1} de refrigerante.</translation>
    </message>
    <message>
        <source>{a} dips {0}: {1} of plain water stays in it when drained and can freeze.</source>
        <translation>{a} tiene un punto bajo de {0}: al vaciar quedan allí {1} de agua sola, que puede congelarse.</translation>
    </message>
    <message>
        <source>Raise the dip by at least {0}, or put a drain at its lowest point.</source>
        <translation>Eleve el punto bajo al menos {0}, o ponga un drenaje en lo más bajo.</translation>
    </message>
    <message>
        <source>{a} climbs {0} on its way to the heater.</source>
        <translation>{a} sube {0} en su camino al calentador.</translation>
    </message>
    <message>
        <source>{a} ends {0} above the supply port: cold coolant does not run up to the heater.</source>
        <translation>{a} termina {0} por encima de la toma de alimentación: el refrigerante frío no sube solo al calentador.</translation>
    </message>
    <message>
        <source>Lower the heater by at least {0}, or take a lower supply port.</source>
        <translation>Baje el calentador al menos {0}, o use una toma de alimentación más baja.</translation>
    </message>
    <message>
        <source>the place of %1</source>
        <translation>la posición de %1</translation>
    </message>
    <message>
        <source>the outline of the water jacket</source>
        <translation>el contorno de la camisa de agua</translation>
    </message>
    <message>
        <source>the coolant level at cold minimum</source>
        <translation>el nivel de refrigerante mínimo en frío</translation>
    </message>
    <message>
        <source>the coolant level at cold full</source>
        <translation>el nivel de refrigerante lleno en frío</translation>
    </message>
    <message>
        <source>the place of the surge tank</source>
        <translation>la posición del vaso de expansión</translation>
    </message>
    <message>
        <source>{a} stands upright, which its manual does not allow.</source>
        <translation>{a} está en posición vertical, que su manual no permite.</translation>
    </message>
    <message>
        <source>{a} lies level, which its manual does not allow.</source>
        <translation>{a} está en posición horizontal, que su manual no permite.</translation>
    </message>
    <message>
        <source>{a} is inclined, which its manual does not allow.</source>
        <translation>{a} está en posición inclinada, que su manual no permite.</translation>
    </message>
    <message>
        <source>{a} hangs upside down, which no heater allows.</source>
        <translation>{a} cuelga boca abajo, lo que ningún calentador permite.</translation>
    </message>
    <message>
        <source>{a} has its outlet {0} above {b}: warm coolant would have to sink.</source>
        <translation>{a} tiene su salida {0} por encima de {b}: el refrigerante caliente tendría que bajar.</translation>
    </message>
    <message>
        <source>{a} is {0} to the side of {b} and only {1} below it.</source>
        <translation>{a} está {0} al lado de {b} y solo {1} por debajo.</translation>
    </message>
    <message>
        <source>Move the heater at least {0} towards {a}.</source>
        <translation>Mueva el calentador al menos {0} hacia {a}.</translation>
    </message>
    <message>
        <source>the outline of the water jacket is not entered</source>
        <translation>falta el contorno de la camisa de agua</translation>
    </message>
    <message>
        <source>{a} has its top only {0} below the lowest point of the water jacket.</source>
        <translation>{a} tiene su parte superior solo {0} por debajo del punto más bajo de la camisa de agua.</translation>
    </message>
    <message>
        <source>{a} has its top {0} above the lowest point of the water jacket.</source>
        <translation>{a} tiene su parte superior {0} por encima del punto más bajo de la camisa de agua.</translation>
    </message>
    <message>
        <source>Lower the heater by at least {0}.</source>
        <translation>Baje el calentador al menos {0}.</translation>
    </message>
    <message>
        <source>the bore of the outlet of %1 is not entered</source>
        <translation>falta el diámetro interior de la salida de %1</translation>
    </message>
    <message>
        <source>{a} has a chamber that reaches {0} above its outlet: {1} of air stays in it.</source>
        <translation>{a} tiene una cámara que llega {0} por encima de su salida: allí quedan {1} de aire.</translation>
    </message>
    <message>
        <source>{a} has a chamber that reaches {0} above its outlet: {1} of air bares the element.</source>
        <translation>{a} tiene una cámara que llega {0} por encima de su salida: {1} de aire dejan la resistencia al descubierto.</translation>
    </message>
    <message>
        <source>the positions that the manual of %1 allows</source>
        <translation>las posiciones que permite el manual de %1</translation>
    </message>
    <message>
        <source>the positions that the manual of %1 allows are not entered</source>
        <translation>faltan las posiciones que permite el manual de %1</translation>
    </message>
    <message>
        <source>what %1 is mounted to</source>
        <translation>sobre qué va montado %1</translation>
    </message>
    <message>
        <source>it is not entered what %1 is mounted to</source>
        <translation>falta indicar sobre qué va montado %1</translation>
    </message>
    <message>
        <source>{a} is mounted to the engine.</source>
        <translation>{a} va montado en el motor.</translation>
    </message>
    <message>
        <source>advice</source>
        <translation>consejo</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>aviso</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>parada</translation>
    </message>
    <message>
        <source>{a} reaches {0} above the coolant&apos;s cold minimum level: it can run dry of coolant.</source>
        <translation>{a} llega {0} por encima del nivel mínimo en frío del refrigerante: puede quedarse sin él.</translation>
    </message>
    <message>
        <source>{a} reaches {0} above the coolant&apos;s cold full level: coolant never fills it.</source>
        <translation>{a} llega {0} por encima del nivel lleno en frío del refrigerante: nunca se llena.</translation>
    </message>
    <message>
        <source>Lower it by at least {0}, or keep the coolant level higher.</source>
        <translation>Bájelo al menos {0}, o mantenga más alto el nivel de refrigerante.</translation>
    </message>
    <message>
        <source>the coolant level at cold minimum is not entered</source>
        <translation>falta el nivel de refrigerante mínimo en frío</translation>
    </message>
    <message>
        <source>the thermostat&apos;s side is not entered</source>
        <translation>falta el lado del termostato</translation>
    </message>
    <message>
        <source>the thermostat&apos;s side</source>
        <translation>el lado del termostato</translation>
    </message>
    <message>
        <source>{a} is in the lower radiator hose, and the thermostat on the engine&apos;s inlet side cuts it off from the block while the engine is cold.</source>
        <translation>{a} está en la manguera inferior del radiador, y el termostato del lado de entrada del motor la separa del bloque mientras el motor está frío.</translation>
    </message>
    <message>
        <source>it is not entered whether the shut-off of %1 is open</source>
        <translation>falta indicar si la llave de %1 está abierta</translation>
    </message>
    <message>
        <source>{a} is in an open cabin heater line, a second way round for the coolant: results for one loop do not hold.</source>
        <translation>{a} está en una línea abierta de la calefacción de cabina, un segundo camino del refrigerante: los resultados para un solo circuito no valen.</translation>
    </message>
    <message>
        <source>{a} has {0} hose ends on it.</source>
        <translation>{a} tiene {0} extremos de manguera.</translation>
    </message>
    <message>
        <source>{a} and {b} are on the same bank: the other bank stays cold.</source>
        <translation>{a} y {b} están en la misma bancada: la otra bancada queda fría.</translation>
    </message>
    <message>
        <source>{a} is {0} above the lowest point of the water jacket, high for a supply.</source>
        <translation>{a} está {0} por encima del punto más bajo de la camisa de agua, alto para una alimentación.</translation>
    </message>
    <message>
        <source>{a} is {0} below the highest point of the water jacket, low for a return.</source>
        <translation>{a} está {0} por debajo del punto más alto de la camisa de agua, bajo para un retorno.</translation>
    </message>
    <message>
        <source>Take a port at least {0} lower.</source>
        <translation>Use una toma al menos {0} más baja.</translation>
    </message>
    <message>
        <source>Take a port at least {0} higher.</source>
        <translation>Use una toma al menos {0} más alta.</translation>
    </message>
    <message>
        <source>{a}, a supply port, is {0} back from the front of the water jacket, in its rear half.</source>
        <translation>{a}, toma de alimentación, está {0} detrás del frente de la camisa de agua, en su mitad trasera.</translation>
    </message>
    <message>
        <source>{a}, a return port, is {0} back from the front of the water jacket, in its front half.</source>
        <translation>{a}, toma de retorno, está {0} detrás del frente de la camisa de agua, en su mitad delantera.</translation>
    </message>
    <message>
        <source>{a} and {b} are only {0} apart: most of the engine would stay cold.</source>
        <translation>{a} y {b} están a solo {0}: la mayor parte del motor quedaría fría.</translation>
    </message>
    <message>
        <source>Choose ports at least {0} apart.</source>
        <translation>Elija tomas separadas al menos {0}.</translation>
    </message>
    <message>
        <source>the engine&apos;s thermostat housing is not entered</source>
        <translation>falta la carcasa del termostato del motor</translation>
    </message>
    <message>
        <source>the place of the thermostat housing</source>
        <translation>la posición de la carcasa del termostato</translation>
    </message>
    <message>
        <source>{a} is only {0} from the thermostat housing.</source>
        <translation>{a} está a solo {0} de la carcasa del termostato.</translation>
    </message>
    <message>
        <source>{a} is only {0} from {b}, whose warm coolant misleads the sensor.</source>
        <translation>{a} está a solo {0} de {b}, cuyo refrigerante caliente engaña al sensor.</translation>
    </message>
    <message>
        <source>the port of the remote thermostat of %1 is not entered</source>
        <translation>falta la toma del termostato remoto de %1</translation>
    </message>
    <message>
        <source>common practice, no published source</source>
        <translation>práctica habitual, sin fuente publicada</translation>
    </message>
    <message>
        <source>own choice: air or coolant narrows the bore up to one bore of height and closes it from there</source>
        <translation>elección propia: el aire o el refrigerante estrecha el paso hasta un diámetro de altura y desde ahí lo cierra</translation>
    </message>
    <message>
        <source>High point in the supply hose</source>
        <translation>Punto alto en la manguera de alimentación</translation>
    </message>
    <message>
        <source>Air gathers at a high point and holds up the cold coolant on its way to the heater.</source>
        <translation>El aire se junta en un punto alto y retiene el refrigerante frío en su camino al calentador.</translation>
    </message>
    <message>
        <source>Lower the hump, or put a bleed at its crest.</source>
        <translation>Baje el lomo, o ponga un purgador en su cresta.</translation>
    </message>
    <message>
        <source>High point in the return hose</source>
        <translation>Punto alto en la manguera de retorno</translation>
    </message>
    <message>
        <source>Air gathers at a high point and stops the warm coolant, which has only a few millimetres of head.</source>
        <translation>El aire se junta en un punto alto y detiene el refrigerante caliente, que solo dispone de unos milímetros de altura de presión.</translation>
    </message>
    <message>
        <source>Dip in the return hose</source>
        <translation>Punto bajo en la manguera de retorno</translation>
    </message>
    <message>
        <source>Cold coolant lies in a dip, and air from the heater cannot pass it.</source>
        <translation>En un punto bajo queda refrigerante frío, y el aire del calentador no puede pasar.</translation>
    </message>
    <message>
        <source>Raise the dip, so that the hose rises all the way.</source>
        <translation>Eleve el punto bajo, para que la manguera suba todo el tiempo.</translation>
    </message>
    <message>
        <source>Dip in the supply hose</source>
        <translation>Punto bajo en la manguera de alimentación</translation>
    </message>
    <message>
        <source>own choice: what a catch pan takes without a second trip</source>
        <translation>elección propia: lo que recibe una bandeja sin un segundo viaje</translation>
    </message>
    <message>
        <source>What lies in a dip does not drain; plain water freezes there.</source>
        <translation>Lo que queda en un punto bajo no se vacía; el agua sola se congela allí.</translation>
    </message>
    <message>
        <source>Raise the dip, or put a drain at its lowest point.</source>
        <translation>Eleve el punto bajo, o ponga un drenaje en lo más bajo.</translation>
    </message>
    <message>
        <source>Supply hose climbs to the heater</source>
        <translation>La manguera de alimentación sube al calentador</translation>
    </message>
    <message>
        <source>Cold coolant runs down to the heater by its own weight and does not climb to it.</source>
        <translation>El refrigerante frío baja al calentador por su propio peso y no sube hasta él.</translation>
    </message>
    <message>
        <source>Lower the heater, or take a lower supply port.</source>
        <translation>Baje el calentador, o use una toma de alimentación más baja.</translation>
    </message>
    <message>
        <source>Return hose too flat</source>
        <translation>Manguera de retorno demasiado plana</translation>
    </message>
    <message>
        <source>own choice: 1 in 50, near the drain practice of 1/4 in per ft (1 in 48)</source>
        <translation>elección propia: 1 en 50, cercano a la práctica en desagües de 1/4 in por ft (1 en 48)</translation>
    </message>
    <message>
        <source>Air rises to the engine by itself only along a hose that rises all the way.</source>
        <translation>El aire sube solo al motor únicamente por una manguera que sube todo el tiempo.</translation>
    </message>
    <message>
        <source>Give the hose more rise.</source>
        <translation>Dé más subida a la manguera.</translation>
    </message>
    <message>
        <source>Above the coolant level</source>
        <translation>Por encima del nivel de refrigerante</translation>
    </message>
    <message>
        <source>What stands above the coolant level does not stay full, and the loop breaks there.</source>
        <translation>Lo que está por encima del nivel de refrigerante no se mantiene lleno, y el circuito se interrumpe allí.</translation>
    </message>
    <message>
        <source>Lower it, or keep the coolant level higher.</source>
        <translation>Bájelo, o mantenga más alto el nivel de refrigerante.</translation>
    </message>
    <message>
        <source>Heater too high under the jacket</source>
        <translation>Calentador demasiado alto bajo la camisa</translation>
    </message>
    <message>
        <source>The cold column between engine and heater drives the flow; a short one drives little.</source>
        <translation>La columna fría entre motor y calentador impulsa el caudal; una corta impulsa poco.</translation>
    </message>
    <message>
        <source>Lower the heater.</source>
        <translation>Baje el calentador.</translation>
    </message>
    <message>
        <source>Heater not under the return port</source>
        <translation>Calentador no situado bajo la toma de retorno</translation>
    </message>
    <message>
        <source>common practice (directly under it), no published source; ratios 1 and 2 are our own choice</source>
        <translation>práctica habitual (justo debajo), sin fuente publicada; las relaciones 1 y 2 son elección propia</translation>
    </message>
    <message>
        <source>Warm coolant rises best straight up; a long flat return is slow and hard to purge.</source>
        <translation>El refrigerante caliente sube mejor en vertical; un retorno largo y plano es lento y difícil de purgar.</translation>
    </message>
    <message>
        <source>Move the heater under the return port.</source>
        <translation>Ponga el calentador bajo la toma de retorno.</translation>
    </message>
    <message>
        <source>Air stays in the heater chamber</source>
        <translation>Queda aire en la cámara del calentador</translation>
    </message>
    <message>
        <source>hydrostatics: air cannot leave by an opening below it</source>
        <translation>hidrostática: el aire no puede salir por una abertura situada más abajo</translation>
    </message>
    <message>
        <source>Air over the outlet never leaves; an element bared by it burns out.</source>
        <translation>El aire por encima de la salida no sale nunca; una resistencia descubierta por él se quema.</translation>
    </message>
    <message>
        <source>Turn the heater so that its outlet is at the top of the chamber.</source>
        <translation>Gire el calentador de modo que su salida quede en lo alto de la cámara.</translation>
    </message>
    <message>
        <source>Heater in a position its manual forbids</source>
        <translation>Calentador en una posición que su manual prohíbe</translation>
    </message>
    <message>
        <source>the heater&apos;s manual</source>
        <translation>el manual del calentador</translation>
    </message>
    <message>
        <source>The element is covered only in the positions that the manual allows.</source>
        <translation>La resistencia queda cubierta solo en las posiciones que permite el manual.</translation>
    </message>
    <message>
        <source>Mount the heater in a position that its manual allows.</source>
        <translation>Monte el calentador en una posición que permita su manual.</translation>
    </message>
    <message>
        <source>Heater mounted to the engine</source>
        <translation>Calentador montado en el motor</translation>
    </message>
    <message>
        <source>The engine shakes heater, element and hose ends loose.</source>
        <translation>El motor afloja con su vibración el calentador, la resistencia y las espigas.</translation>
    </message>
    <message>
        <source>Mount the heater to the frame.</source>
        <translation>Monte el calentador en el bastidor.</translation>
    </message>
    <message>
        <source>Supply port not low enough</source>
        <translation>Toma de alimentación no lo bastante baja</translation>
    </message>
    <message>
        <source>common practice (the lowest port), no published source; one fifth is our own choice</source>
        <translation>práctica habitual (la toma más baja), sin fuente publicada; un quinto es elección propia</translation>
    </message>
    <message>
        <source>Coolant below the supply port stays cold.</source>
        <translation>El refrigerante por debajo de la toma de alimentación queda frío.</translation>
    </message>
    <message>
        <source>Take a lower port.</source>
        <translation>Use una toma más baja.</translation>
    </message>
    <message>
        <source>Return port not high enough</source>
        <translation>Toma de retorno no lo bastante alta</translation>
    </message>
    <message>
        <source>common practice (a high port), no published source; one third is our own choice</source>
        <translation>práctica habitual (una toma alta), sin fuente publicada; un tercio es elección propia</translation>
    </message>
    <message>
        <source>Warm coolant stays above where it enters; a low return leaves little to drive the flow.</source>
        <translation>El refrigerante caliente queda por encima de donde entra; un retorno bajo deja poco para impulsar el caudal.</translation>
    </message>
    <message>
        <source>Take a higher port.</source>
        <translation>Use una toma más alta.</translation>
    </message>
    <message>
        <source>Supply port in the rear half</source>
        <translation>Toma de alimentación en la mitad trasera</translation>
    </message>
    <message>
        <source>Supply from the front and return to the rear warm the whole length of the engine.</source>
        <translation>Alimentación delante y retorno detrás calientan todo el largo del motor.</translation>
    </message>
    <message>
        <source>Take a port toward the front.</source>
        <translation>Use una toma más adelante.</translation>
    </message>
    <message>
        <source>Return port in the front half</source>
        <translation>Toma de retorno en la mitad delantera</translation>
    </message>
    <message>
        <source>Take a port toward the rear.</source>
        <translation>Use una toma más atrás.</translation>
    </message>
    <message>
        <source>Ports too close together</source>
        <translation>Tomas demasiado juntas</translation>
    </message>
    <message>
        <source>common practice (as far apart as practical), no published source; shares of the jacket&apos;s diagonal are our own choice</source>
        <translation>práctica habitual (tan separadas como sea práctico), sin fuente publicada; las proporciones de la diagonal de la camisa son elección propia</translation>
    </message>
    <message>
        <source>Warm coolant takes the short way back and most of the engine stays cold.</source>
        <translation>El refrigerante caliente vuelve por el camino corto y la mayor parte del motor queda fría.</translation>
    </message>
    <message>
        <source>Choose ports farther apart.</source>
        <translation>Elija tomas más separadas.</translation>
    </message>
    <message>
        <source>Return port near the thermostat</source>
        <translation>Toma de retorno cerca del termostato</translation>
    </message>
    <message>
        <source>common practice (away from it), no published source; the distance is our own choice</source>
        <translation>práctica habitual (lejos de él), sin fuente publicada; la distancia es elección propia</translation>
    </message>
    <message>
        <source>Warm coolant opens the thermostat and the heat goes to the radiator.</source>
        <translation>El refrigerante caliente abre el termostato y el calor se va al radiador.</translation>
    </message>
    <message>
        <source>Choose a return port farther from the thermostat housing.</source>
        <translation>Elija una toma de retorno más alejada de la carcasa del termostato.</translation>
    </message>
    <message>
        <source>Remote sensor near the return port</source>
        <translation>Sensor remoto cerca de la toma de retorno</translation>
    </message>
    <message>
        <source>The sensor feels the heater&apos;s own warm coolant and turns it off while the engine is cold.</source>
        <translation>El sensor nota el refrigerante caliente del propio calentador y lo apaga mientras el motor está frío.</translation>
    </message>
    <message>
        <source>Move the sensor farther from the return port.</source>
        <translation>Aleje el sensor de la toma de retorno.</translation>
    </message>
    <message>
        <source>Supply cut off by the thermostat</source>
        <translation>Alimentación cortada por el termostato</translation>
    </message>
    <message>
        <source>how the cooling circuit is laid: the thermostat lies between the lower hose and the block</source>
        <translation>trazado del circuito de refrigeración: el termostato está entre la manguera inferior y el bloque</translation>
    </message>
    <message>
        <source>A closed thermostat on the inlet side lets no cold coolant from the block to the lower hose.</source>
        <translation>Un termostato cerrado en el lado de entrada no deja pasar refrigerante frío del bloque a la manguera inferior.</translation>
    </message>
    <message>
        <source>Take the supply from a port in the block.</source>
        <translation>Tome la alimentación de una toma del bloque.</translation>
    </message>
    <message>
        <source>Second way round through the cabin heater</source>
        <translation>Segundo camino por la calefacción de cabina</translation>
    </message>
    <message>
        <source>flow divides between ways in parallel</source>
        <translation>el caudal se divide entre caminos en paralelo</translation>
    </message>
    <message>
        <source>Coolant that goes round by the cabin heater does not pass the engine; how much is not known.</source>
        <translation>El refrigerante que pasa por la calefacción de cabina no pasa por el motor; cuánto es, no se sabe.</translation>
    </message>
    <message>
        <source>Use a port in the engine, or keep the cabin heater line shut and use another port.</source>
        <translation>Use una toma del motor, o mantenga cerrada la línea de la calefacción de cabina y use otra toma.</translation>
    </message>
    <message>
        <source>Port shared by hoses</source>
        <translation>Toma compartida por mangueras</translation>
    </message>
    <message>
        <source>own choice: one port, one hose</source>
        <translation>elección propia: una toma, una manguera</translation>
    </message>
    <message>
        <source>Hoses on one port take coolant from each other, and two heaters can push against each other.</source>
        <translation>Las mangueras de una misma toma se quitan refrigerante entre sí, y dos calentadores pueden empujar uno contra otro.</translation>
    </message>
    <message>
        <source>Give every hose a port of its own.</source>
        <translation>Dé a cada manguera su propia toma.</translation>
    </message>
    <message>
        <source>Loop on one bank only</source>
        <translation>Circuito en una sola bancada</translation>
    </message>
    <message>
        <source>Coolant led from one bank to the other warms both.</source>
        <translation>El refrigerante llevado de una bancada a la otra calienta ambas.</translation>
    </message>
    <message>
        <source>Take the return port on the other bank.</source>
        <translation>Use la toma de retorno de la otra bancada.</translation>
    </message>
    <message>
        <source>Hose smaller than the manual asks for</source>
        <translation>Manguera menor de lo que pide el manual</translation>
    </message>
    <message>
        <source>A hose that is too small lets too little through, and the heater overheats.</source>
        <translation>Una manguera demasiado pequeña deja pasar demasiado poco, y el calentador se sobrecalienta.</translation>
    </message>
    <message>
        <source>Use a larger hose.</source>
        <translation>Use una manguera mayor.</translation>
    </message>
    <message>
        <source>Narrow place in a hose</source>
        <translation>Estrechamiento en una manguera</translation>
    </message>
    <message>
        <source>own choice: hose ends usually leave 0.70 to 0.82 of the hose&apos;s bore</source>
        <translation>elección propia: las espigas suelen dejar de 0,70 a 0,82 del diámetro interior de la manguera</translation>
    </message>
    <message>
        <source>A few millimetres of head push little through a narrow place.</source>
        <translation>Unos milímetros de altura de presión empujan poco por un estrechamiento.</translation>
    </message>
    <message>
        <source>Use a part with a larger bore.</source>
        <translation>Use una pieza de mayor diámetro interior.</translation>
    </message>
    <message>
        <source>Bend too tight</source>
        <translation>Curva demasiado cerrada</translation>
    </message>
    <message>
        <source>common practice (6 bores to the inside of the bend where the hose gives none), no published source</source>
        <translation>práctica habitual (6 diámetros al interior de la curva si la manguera no indica nada), sin fuente publicada</translation>
    </message>
    <message>
        <source>A hose bent tighter than it allows flattens, kinks and cracks.</source>
        <translation>Una manguera curvada más de lo que permite se aplana, se dobla y se agrieta.</translation>
    </message>
    <message>
        <source>Open the bend, or use a moulded elbow.</source>
        <translation>Abra la curva, o use un codo moldeado.</translation>
    </message>
    <message>
        <source>Bend does not fit</source>
        <translation>La curva no cabe</translation>
    </message>
    <message>
        <source>geometry: an arc needs its length on both neighbours</source>
        <translation>geometría: un arco necesita su longitud en ambos vecinos</translation>
    </message>
    <message>
        <source>The hose cannot be laid as drawn.</source>
        <translation>La manguera no puede tenderse como está dibujada.</translation>
    </message>
    <message>
        <source>Move the points apart, or ask for a smaller radius.</source>
        <translation>Separe los puntos, o pida un radio menor.</translation>
    </message>
    <message>
        <source>Hose longer than it needs to be</source>
        <translation>Manguera más larga de lo necesario</translation>
    </message>
    <message>
        <source>common practice (short hoses), no published source; 250 mm is our own choice</source>
        <translation>práctica habitual (mangueras cortas), sin fuente publicada; 250 mm es elección propia</translation>
    </message>
    <message>
        <source>Every length of hose loses heat and slows the flow.</source>
        <translation>Cada tramo de manguera pierde calor y frena el caudal.</translation>
    </message>
    <message>
        <source>Lead the hose more directly.</source>
        <translation>Lleve la manguera más directa.</translation>
    </message>
    <message>
        <source>Hose not held up</source>
        <translation>Manguera sin soporte</translation>
    </message>
    <message>
        <source>own choice: 300 mm and 450 mm, for stretches within 30 degrees of level</source>
        <translation>elección propia: 300 mm y 450 mm, para tramos a menos de 30 grados de la horizontal</translation>
    </message>
    <message>
        <source>A warm hose sags between its clips, and a sag is a dip with a hump behind it.</source>
        <translation>Una manguera caliente se comba entre sus soportes, y una comba es un punto bajo con un lomo detrás.</translation>
    </message>
    <message>
        <source>Put a clip in the middle of the span.</source>
        <translation>Ponga una abrazadera de soporte en medio del vano.</translation>
    </message>
    <message>
        <source>No slack between frame and engine</source>
        <translation>Sin holgura entre bastidor y motor</translation>
    </message>
    <message>
        <source>common practice (hoses follow the engine), no published source; 3 % and 45 degrees are our own choice</source>
        <translation>práctica habitual (las mangueras siguen al motor), sin fuente publicada; 3 % y 45 grados son elección propia</translation>
    </message>
    <message>
        <source>The engine moves on its mounts and pulls a taut hose off its hose ends.</source>
        <translation>El motor se mueve sobre sus apoyos y arranca de sus espigas una manguera tirante.</translation>
    </message>
    <message>
        <source>Lead the hose round a bend, or make it longer.</source>
        <translation>Lleve la manguera por una curva, o hágala más larga.</translation>
    </message>
    <message>
        <source>Too near the ground</source>
        <translation>Demasiado cerca del suelo</translation>
    </message>
    <message>
        <source>own choice: 200 mm at lowest ride height</source>
        <translation>elección propia: 200 mm con la suspensión al mínimo</translation>
    </message>
    <message>
        <source>What hangs low is torn off by kerbs, stones and snow.</source>
        <translation>Lo que cuelga bajo lo arrancan bordillos, piedras y nieve.</translation>
    </message>
    <message>
        <source>Raise it.</source>
        <translation>Elévelo.</translation>
    </message>
    <message>
        <source>Too near something hot or moving</source>
        <translation>Demasiado cerca de algo caliente o en movimiento</translation>
    </message>
    <message>
        <source>own choice: 150 mm from exhaust and turbo, 75 mm behind a heat shield, 50 mm from all else</source>
        <translation>elección propia: 150 mm del escape y el turbo, 75 mm detrás de una pantalla térmica, 50 mm de lo demás</translation>
    </message>
    <message>
        <source>Heat hardens a hose and what moves cuts it; either empties the cooling system.</source>
        <translation>El calor endurece la manguera y lo que se mueve la corta; ambos vacían el sistema de refrigeración.</translation>
    </message>
    <message>
        <source>Lead it farther away.</source>
        <translation>Llévela más lejos.</translation>
    </message>
    <message>
        <source>Open hose end</source>
        <translation>Extremo de manguera abierto</translation>
    </message>
    <message>
        <source>a loop has no open end</source>
        <translation>un circuito no tiene extremos abiertos</translation>
    </message>
    <message>
        <source>Coolant runs out of an open end.</source>
        <translation>Por un extremo abierto sale el refrigerante.</translation>
    </message>
    <message>
        <source>Connect the end to a port or to the heater.</source>
        <translation>Conecte el extremo a una toma o al calentador.</translation>
    </message>
    <message>
        <source>Not connected to a loop</source>
        <translation>Sin conexión a un circuito</translation>
    </message>
    <message>
        <source>a loop leads from a port through the heater to a port</source>
        <translation>un circuito va de una toma por el calentador a otra toma</translation>
    </message>
    <message>
        <source>Nothing circulates unless supply hose, heater and return hose make one loop.</source>
        <translation>Nada circula si la manguera de alimentación, el calentador y la manguera de retorno no forman un circuito.</translation>
    </message>
    <message>
        <source>Lead the supply hose from a port to the inlet and the return hose from the outlet to a port.</source>
        <translation>Lleve la manguera de alimentación de una toma a la entrada y la de retorno de la salida a una toma.</translation>
    </message>
    <message>
        <source>Isolation valve missing</source>
        <translation>Falta una válvula de aislamiento</translation>
    </message>
    <message>
        <source>common practice (valves at both ends of the loop), no published source; 300 mm is our own choice</source>
        <translation>práctica habitual (válvulas en ambos extremos del circuito), sin fuente publicada; 300 mm es elección propia</translation>
    </message>
    <message>
        <source>Without valves at the engine the heater is serviced only with the cooling system drained.</source>
        <translation>Sin válvulas en el motor, el mantenimiento del calentador exige vaciar el sistema de refrigeración.</translation>
    </message>
    <message>
        <source>Put an isolation valve near the port.</source>
        <translation>Ponga una válvula de aislamiento cerca de la toma.</translation>
    </message>
    <message>
        <source>Valve closed</source>
        <translation>Válvula cerrada</translation>
    </message>
    <message>
        <source>A closed valve stops the flow and the element overheats; two make a sealed vessel under pressure.</source>
        <translation>Una válvula cerrada detiene el caudal y la resistencia se sobrecalienta; dos forman un recipiente cerrado a presión.</translation>
    </message>
    <message>
        <source>Open the valve whenever the heater is on.</source>
        <translation>Abra la válvula siempre que el calentador esté encendido.</translation>
    </message>
    <message>
        <source>Check valve in the loop</source>
        <translation>Válvula antirretorno en el circuito</translation>
    </message>
    <message>
        <source>common practice, no published source: check valves open on far more than a few millimetres of head</source>
        <translation>práctica habitual, sin fuente publicada: las antirretorno se abren con mucho más que unos milímetros de altura de presión</translation>
    </message>
    <message>
        <source>A few millimetres of head do not lift a disc or swing a flap against its own weight.</source>
        <translation>Unos milímetros de altura de presión no levantan un disco ni mueven una clapeta contra su propio peso.</translation>
    </message>
    <message>
        <source>Take the check valve out.</source>
        <translation>Quite la válvula antirretorno.</translation>
    </message>
    <message>
        <source>Too much antifreeze</source>
        <translation>Demasiado anticongelante</translation>
    </message>
    <message>
        <source>Past 60 % antifreeze carries heat worse, flows worse and freezes sooner.</source>
        <translation>Por encima del 60 % el anticongelante transporta peor el calor, fluye peor y se congela antes.</translation>
    </message>
    <message>
        <source>Add water.</source>
        <translation>Añada agua.</translation>
    </message>
    <message>
        <source>Coolant may freeze</source>
        <translation>El refrigerante puede congelarse</translation>
    </message>
    <message>
        <source>own choice: 5 K; freezing points after the ASHRAE Handbook Fundamentals (2001)</source>
        <translation>elección propia: 5 K; puntos de congelación según ASHRAE Handbook Fundamentals (2001)</translation>
    </message>
    <message>
        <source>Slush does not circulate, and ice breaks hoses and block.</source>
        <translation>El granizado no circula, y el hielo rompe mangueras y bloque.</translation>
    </message>
    <message>
        <source>Add antifreeze.</source>
        <translation>Añada anticongelante.</translation>
    </message>
    <message>
        <source>Kind of antifreeze not known</source>
        <translation>Tipo de anticongelante desconocido</translation>
    </message>
    <message>
        <source>Kinds of antifreeze that do not go together gel, foam or lose their protection from corrosion.</source>
        <translation>Los anticongelantes incompatibles se gelifican, hacen espuma o pierden su protección contra la corrosión.</translation>
    </message>
    <message>
        <source>The engine maker&apos;s specification rules: fill that and nothing else, and do not mix kinds.</source>
        <translation>Manda la especificación del fabricante del motor: use esa y ninguna otra, y no mezcle tipos.</translation>
    </message>
    <message>
        <source>the power of %1</source>
        <translation>la potencia de %1</translation>
    </message>
    <message>
        <source>{a} stalls: its warm coolant stands no higher than the cold, and nothing drives it round.</source>
        <translation>{a} se detiene: su refrigerante caliente no está más alto que el frío, y nada lo hace circular.</translation>
    </message>
    <message>
        <source>{a} stalls: it can raise {0} of head, and air withstands {1}.</source>
        <translation>{a} se detiene: puede dar {0} de altura de presión, y el aire opone {1}.</translation>
    </message>
    <message>
        <source>{a} runs backward: warm coolant leaves by the supply hose.</source>
        <translation>{a} funciona al revés: el refrigerante caliente sale por la manguera de alimentación.</translation>
    </message>
    <message>
        <source>{a} takes {0} of the loop&apos;s head.</source>
        <translation>{a} consume {0} de la altura de presión del circuito.</translation>
    </message>
    <message>
        <source>the balance of driving and resisting heads, computed from the drawing (core/physics/circulation.h)</source>
        <translation>el balance de alturas impulsoras y resistentes, calculado a partir del dibujo (core/physics/circulation.h)</translation>
    </message>
    <message>
        <source>Loop stalls</source>
        <translation>El circuito se detiene</translation>
    </message>
    <message>
        <source>A heater whose coolant stands still overheats while the engine stays cold.</source>
        <translation>Un calentador con el refrigerante parado se sobrecalienta mientras el motor sigue frío.</translation>
    </message>
    <message>
        <source>Raise the return port over the heater, lower the heater, and lead the return so that it rises.</source>
        <translation>Eleve la toma de retorno sobre el calentador, baje el calentador y lleve el retorno siempre en subida.</translation>
    </message>
    <message>
        <source>Loop runs backward</source>
        <translation>El circuito funciona al revés</translation>
    </message>
    <message>
        <source>Warm coolant that leaves by the supply hose comes to the engine at its lowest port and drives little.</source>
        <translation>El refrigerante caliente que sale por la manguera de alimentación llega al motor por su toma más baja e impulsa poco.</translation>
    </message>
    <message>
        <source>Lead the return straight up from the outlet and the supply straight down to the inlet.</source>
        <translation>Lleve el retorno recto hacia arriba desde la salida y la alimentación recta hacia abajo hasta la entrada.</translation>
    </message>
    <message>
        <source>One part takes much of the loop&apos;s head</source>
        <translation>Una pieza consume gran parte de la altura de presión</translation>
    </message>
    <message>
        <source>own choice: 30 %; losses after Hooper (1981, 1988)</source>
        <translation>elección propia: 30 %; pérdidas según Hooper (1981, 1988)</translation>
    </message>
    <message>
        <source>The loop has a few millimetres of head; a part that takes a third of it rules the flow.</source>
        <translation>El circuito dispone de unos milímetros de altura de presión; una pieza que consume un tercio determina el caudal.</translation>
    </message>
    <message>
        <source>Much power for heaters without a pump</source>
        <translation>Mucha potencia para calentadores sin bomba</translation>
    </message>
    <message>
        <source>own choice: 5 kW in all</source>
        <translation>elección propia: 5 kW en total</translation>
    </message>
    <message>
        <source>So much heat is hard to carry away by a few millimetres of head.</source>
        <translation>Tanto calor es difícil de evacuar con unos milímetros de altura de presión.</translation>
    </message>
    <message>
        <source>Consider a heater with a pump.</source>
        <translation>Considere un calentador con bomba.</translation>
    </message>
    <message>
        <source>Air locks the loop</source>
        <translation>El aire bloquea el circuito</translation>
    </message>
    <message>
        <source>filling computed from the drawing; the head of a pocket after May, Allen and Nelson (2018)</source>
        <translation>llenado calculado a partir del dibujo; altura de presión de una bolsa según May, Allen y Nelson (2018)</translation>
    </message>
    <message>
        <source>Air that closes the bore takes more head than the loop can raise, and nothing moves.</source>
        <translation>El aire que cierra el paso resta más altura de presión de la que da el circuito, y nada se mueve.</translation>
    </message>
    <message>
        <source>Re-route the hose so that it rises all the way; a bleed at the crest is the next best.</source>
        <translation>Cambie el recorrido para que la manguera suba todo el tiempo; si no, ponga un purgador en la cresta.</translation>
    </message>
    <message>
        <source>Air weakens the flow</source>
        <translation>El aire debilita el caudal</translation>
    </message>
    <message>
        <source>own choice: 5 %; filling computed from the drawing</source>
        <translation>elección propia: 5 %; llenado calculado a partir del dibujo</translation>
    </message>
    <message>
        <source>Air that stays in a hose takes part of the few millimetres of head.</source>
        <translation>El aire que queda en una manguera resta parte de los pocos milímetros de altura de presión.</translation>
    </message>
    <message>
        <source>Re-route the hose so that it rises all the way, or put a bleed at the crest.</source>
        <translation>Cambie el recorrido para que la manguera suba todo el tiempo, o ponga un purgador en la cresta.</translation>
    </message>
    <message>
        <source>Heater chamber not full</source>
        <translation>Cámara del calentador no llena</translation>
    </message>
    <message>
        <source>filling computed from the drawing; the element has to be covered (common practice)</source>
        <translation>llenado calculado a partir del dibujo; la resistencia debe quedar cubierta (práctica habitual)</translation>
    </message>
    <message>
        <source>An element that is not covered by coolant burns out.</source>
        <translation>Una resistencia sin cubrir por el refrigerante se quema.</translation>
    </message>
    <message>
        <source>Fill higher, let the air out, or turn the heater so that its outlet is at the top.</source>
        <translation>Llene más alto, deje salir el aire, o gire el calentador de modo que su salida quede arriba.</translation>
    </message>
    <message>
        <source>Air to be cleared</source>
        <translation>Aire por expulsar</translation>
    </message>
    <message>
        <source>clearing velocities after Kalinske and Bliss (1943), Wisner (1975), Kent (1952), Escarameia (2007), which scatter</source>
        <translation>velocidades de arrastre según Kalinske y Bliss (1943), Wisner (1975), Kent (1952), Escarameia (2007), que discrepan</translation>
    </message>
    <message>
        <source>What the engine&apos;s pump does not push out stays, and air comes out of cold coolant again when it warms.</source>
        <translation>Lo que la bomba del motor no expulsa se queda, y del refrigerante frío sale aire de nuevo al calentarse.</translation>
    </message>
    <message>
        <source>Bleed at the crest, or re-route; run the engine, top up, and look again after the first night.</source>
        <translation>Purgue en la cresta o cambie el recorrido; haga funcionar el motor, complete el nivel y revise tras la primera noche.</translation>
    </message>
    <message>
        <source>Coolant falls under its minimum in the cold</source>
        <translation>El refrigerante baja de su mínimo con el frío</translation>
    </message>
    <message>
        <source>shrinkage of the coolant to the coldest ambient, from its density</source>
        <translation>contracción del refrigerante a la temperatura ambiente más fría, según su densidad</translation>
    </message>
    <message>
        <source>A level that falls lets air into what stood just under it.</source>
        <translation>Un nivel que baja deja entrar aire en lo que estaba justo debajo.</translation>
    </message>
    <message>
        <source>Fill higher, or have a larger tank.</source>
        <translation>Llene más alto, o use un vaso mayor.</translation>
    </message>
    <message>
        <source>Coolant leaves the heater too hot</source>
        <translation>El refrigerante sale demasiado caliente del calentador</translation>
    </message>
    <message>
        <source>Coolant hotter than 180 degF at the outlet boils on the element and ages hoses and coolant.</source>
        <translation>El refrigerante a más de 180 degF en la salida hierve sobre la resistencia y envejece mangueras y refrigerante.</translation>
    </message>
    <message>
        <source>Let more coolant flow: a larger bore, shorter hoses, a lower heater, ports farther apart.</source>
        <translation>Deje pasar más refrigerante: mayor diámetro interior, mangueras más cortas, calentador más bajo, tomas más separadas.</translation>
    </message>
    <message>
        <source>Close to boiling</source>
        <translation>Cerca de la ebullición</translation>
    </message>
    <message>
        <source>own choice: 5 K; boiling point after Raoult&apos;s law</source>
        <translation>elección propia: 5 K; punto de ebullición según la ley de Raoult</translation>
    </message>
    <message>
        <source>Steam drives the coolant out of the chamber and bares the element.</source>
        <translation>El vapor expulsa el refrigerante de la cámara y descubre la resistencia.</translation>
    </message>
    <message>
        <source>Let more coolant flow, and check the pressure cap.</source>
        <translation>Deje pasar más refrigerante y revise el tapón de presión.</translation>
    </message>
    <message>
        <source>Hose starves the flow</source>
        <translation>La manguera ahoga el caudal</translation>
    </message>
    <message>
        <source>computed: the smallest stock bore with which outlet and cycles keep to their limits</source>
        <translation>calculado: el menor diámetro comercial con el que la salida y los ciclos respetan sus límites</translation>
    </message>
    <message>
        <source>A hose too small for this heater and these heights lets too little through.</source>
        <translation>Una manguera demasiado pequeña para este calentador y estas alturas deja pasar demasiado poco.</translation>
    </message>
    <message>
        <source>Use a larger hose and larger hose ends.</source>
        <translation>Use una manguera mayor y espigas mayores.</translation>
    </message>
    <message>
        <source>Heater cycles too often</source>
        <translation>El calentador hace demasiados ciclos</translation>
    </message>
    <message>
        <source>A heater that turns itself off and on warms itself, not the engine, and wears out its thermostat.</source>
        <translation>Un calentador que se apaga y enciende se calienta a sí mismo, no al motor, y desgasta su termostato.</translation>
    </message>
    <message>
        <source>Choose ports farther apart, a larger bore, or a smaller heater.</source>
        <translation>Elija tomas más separadas, mayor diámetro interior o un calentador menor.</translation>
    </message>
    <message>
        <source>Engine does not get warm enough</source>
        <translation>El motor no se calienta lo suficiente</translation>
    </message>
    <message>
        <source>computed from heat loss and power</source>
        <translation>calculado a partir de la pérdida de calor y la potencia</translation>
    </message>
    <message>
        <source>In this cold and wind the engine loses what the heater gives before it is warm enough.</source>
        <translation>Con este frío y viento el motor pierde lo que da el calentador antes de estar bastante caliente.</translation>
    </message>
    <message>
        <source>Take a larger heater, keep the wind off the engine, or be content with less.</source>
        <translation>Use un calentador mayor, proteja el motor del viento o confórmese con menos.</translation>
    </message>
    <message>
        <source>{a} rises only {0} over {1}.</source>
        <translation>{a} sube solo {0} en {1}.</translation>
    </message>
    <message>
        <source>{a} falls {0} over {1}, where it should rise.</source>
        <translation>{a} baja {0} en {1}, donde debería subir.</translation>
    </message>
    <message>
        <source>{a} is level over {0}, where it should rise.</source>
        <translation>{a} va a nivel en {0}, donde debería subir.</translation>
    </message>
    <message>
        <source>Give it at least {0} more rise over {1}.</source>
        <translation>Dele al menos {0} más de subida en {1}.</translation>
    </message>
    <message>
        <source>{a} spans {0}, near level, without a clip.</source>
        <translation>{a} salva {0}, casi a nivel, sin abrazadera de soporte.</translation>
    </message>
    <message>
        <source>{a} has {1} long spans, near level, without a clip; the longest is {0}.</source>
        <translation>{a} tiene {1} vanos largos, casi a nivel, sin abrazadera de soporte; el más largo es de {0}.</translation>
    </message>
    <message>
        <source>Put a clip at least every {0}.</source>
        <translation>Ponga una abrazadera de soporte al menos cada {0}.</translation>
    </message>
    <message>
        <source>{a}, from frame to engine, is only {0} longer than straight and has no bend: the engine pulls at its ends.</source>
        <translation>{a}, del bastidor al motor, es solo {0} más larga que la recta y no tiene curva: el motor tira de sus extremos.</translation>
    </message>
    <message>
        <source>Make it at least {0} longer, or lead it round a bend of {1}.</source>
        <translation>Hágala al menos {0} más larga, o llévela por una curva de {1}.</translation>
    </message>
    <message>
        <source>{a} has no isolation valve near {b}.</source>
        <translation>{a} no tiene válvula de aislamiento cerca de {b}.</translation>
    </message>
    <message>
        <source>{a} has its isolation valve {0} from {b}.</source>
        <translation>{a} tiene su válvula de aislamiento a {0} de {b}.</translation>
    </message>
    <message>
        <source>Put an isolation valve within {0} of {a}.</source>
        <translation>Ponga una válvula de aislamiento a menos de {0} de {a}.</translation>
    </message>
    <message>
        <source>{a} has a closed isolation valve: nothing circulates.</source>
        <translation>{a} tiene cerrada una válvula de aislamiento: nada circula.</translation>
    </message>
    <message>
        <source>{a} has a closed isolation valve, and so has the heater&apos;s other hose: the heater is a sealed vessel and builds dangerous pressure when heated.</source>
        <translation>{a} tiene cerrada una válvula de aislamiento, y la otra manguera del calentador también: el calentador es un recipiente cerrado y crea una presión peligrosa al calentarse.</translation>
    </message>
    <message>
        <source>Turn the heater off, let it cool, then open both valves.</source>
        <translation>Apague el calentador, deje que se enfríe y abra después ambas válvulas.</translation>
    </message>
    <message>
        <source>{a} is a cabin heater line with its shut-off closed: nothing circulates.</source>
        <translation>{a} es una línea de la calefacción de cabina con su llave cerrada: nada circula.</translation>
    </message>
    <message>
        <source>Open the shut-off whenever the heater is on, or use another port.</source>
        <translation>Abra la llave siempre que el calentador esté encendido, o use otra toma.</translation>
    </message>
    <message>
        <source>{a} has a lift check valve, which does not open on a few mm of head.</source>
        <translation>{a} tiene una válvula antirretorno de disco, que no se abre con unos mm de altura de presión.</translation>
    </message>
    <message>
        <source>{a} has a swing check valve, which does not open on a few mm of head unless it is hung to fall open.</source>
        <translation>{a} tiene una válvula antirretorno de clapeta, que no se abre con unos mm de altura de presión salvo que esté colgada para caer abierta.</translation>
    </message>
    <message>
        <source>where the thermostat turns on</source>
        <translation>dónde se enciende el termostato</translation>
    </message>
    <message>
        <source>where the thermostat turns off</source>
        <translation>dónde se apaga el termostato</translation>
    </message>
    <message>
        <source>the ambient temperature</source>
        <translation>la temperatura ambiente</translation>
    </message>
    <message>
        <source>the engine&apos;s mass</source>
        <translation>la masa del motor</translation>
    </message>
    <message>
        <source>the coolant is slush at the start, so no warm-up can be computed</source>
        <translation>el refrigerante es granizado al inicio, así que no se puede calcular el calentamiento</translation>
    </message>
    <message>
        <source>no warm-up could be computed: %1</source>
        <translation>no se pudo calcular el calentamiento: %1</translation>
    </message>
    <message>
        <source>{a} comes within {0} of boiling.</source>
        <translation>{a} llega a {0} de la ebullición.</translation>
    </message>
    <message>
        <source>{a} boils its coolant.</source>
        <translation>{a} hace hervir su refrigerante.</translation>
    </message>
    <message>
        <source>{a} starves on hoses of {0}: with {1} its outlet and its cycles would keep to their limits.</source>
        <translation>{a} se ahoga con mangueras de {0}: con {1}, su salida y sus ciclos respetarían sus límites.</translation>
    </message>
    <message>
        <source>Use hose of {0} bore or more, with hose ends and valves to match.</source>
        <translation>Use manguera de {0} de diámetro interior o más, con espigas y válvulas a juego.</translation>
    </message>
    <message>
        <source>the wind</source>
        <translation>el viento</translation>
    </message>
    <message>
        <source>The engine gets to {0} in {1} hours, and {2} is wanted.</source>
        <translation>El motor llega a {0} en {1} horas, y se desean {2}.</translation>
    </message>
    <message>
        <source>The engine may not get to {0} in {1} hours.</source>
        <translation>Puede que el motor no llegue a {0} en {1} horas.</translation>
    </message>
    <message>
        <source>Lock out the heater&apos;s power</source>
        <translation>Bloquear la electricidad del calentador</translation>
    </message>
    <message>
        <source>Mains voltage. Switch off, lock, tag, and try it: a heater that is off by its thermostat is not dead.</source>
        <translation>Tensión de red. Desconecte, bloquee, etiquete y compruebe: un calentador apagado por su termostato no está sin tensión.</translation>
    </message>
    <message>
        <source>Disconnect and lock out the battery</source>
        <translation>Desconectar y bloquear la batería</translation>
    </message>
    <message>
        <source>Somebody may crank the engine while hands are at belts and fan.</source>
        <translation>Alguien podría arrancar el motor con las manos de otro en correas y ventilador.</translation>
    </message>
    <message>
        <source>Inhibit the generator&apos;s automatic start</source>
        <translation>Anular el arranque automático del generador</translation>
    </message>
    <message>
        <source>A generator set starts by itself when the mains fail. Where there is none, tick and go on.</source>
        <translation>Un grupo electrógeno arranca solo cuando falla la red. Si no lo hay, marque y siga.</translation>
    </message>
    <message>
        <source>Chock the wheels</source>
        <translation>Calzar las ruedas</translation>
    </message>
    <message>
        <source>Never work under a vehicle that is not supported.</source>
        <translation>No trabaje nunca bajo un vehículo sin apoyos.</translation>
    </message>
    <message>
        <source>Block the air suspension</source>
        <translation>Bloquear la suspensión neumática</translation>
    </message>
    <message>
        <source>Air suspension sinks without warning. Where there is none, tick and go on.</source>
        <translation>La suspensión neumática baja sin avisar. Si no la hay, marque y siga.</translation>
    </message>
    <message>
        <source>Open the pressure cap, cold</source>
        <translation>Abrir el tapón de presión, en frío</translation>
    </message>
    <message>
        <source>Hot coolant under pressure scalds. Open it only when a bare hand can stay on the upper hose.</source>
        <translation>El refrigerante caliente a presión quema. Ábralo solo cuando pueda dejar la mano desnuda en la manguera superior.</translation>
    </message>
    <message>
        <source>Drain and flush</source>
        <translation>Vaciar y enjuagar</translation>
    </message>
    <message>
        <source>Antifreeze is poisonous: catch all of it, keep it from animals, have it disposed of properly.</source>
        <translation>El anticongelante es venenoso: recójalo todo, manténgalo lejos de animales y deséchelo debidamente.</translation>
    </message>
    <message>
        <source>Mount the heater on the frame</source>
        <translation>Montar el calentador en el bastidor</translation>
    </message>
    <message>
        <source>Support the heater while it hangs free. Look behind a rail before drilling it.</source>
        <translation>Apoye el calentador mientras cuelga suelto. Mire detrás del larguero antes de taladrarlo.</translation>
    </message>
    <message>
        <source>Route and clamp the hoses</source>
        <translation>Tender las mangueras y poner abrazaderas</translation>
    </message>
    <message>
        <source>Keep clear of exhaust, belts, fan and shafts. Return rising all the way, supply without a high point.</source>
        <translation>Lejos de escape, correas, ventilador y ejes. Retorno siempre en subida, alimentación sin puntos altos.</translation>
    </message>
    <message>
        <source>Open the isolation valves</source>
        <translation>Abrir las válvulas de aislamiento</translation>
    </message>
    <message>
        <source>A heater between two closed valves is a sealed vessel and bursts.</source>
        <translation>Un calentador entre dos válvulas cerradas es un recipiente cerrado y revienta.</translation>
    </message>
    <message>
        <source>Mix the coolant</source>
        <translation>Mezclar el refrigerante</translation>
    </message>
    <message>
        <source>Wear gloves and goggles. Poisonous; mark the can.</source>
        <translation>Use guantes y gafas. Venenoso; rotule el bidón.</translation>
    </message>
    <message>
        <source>Fill slowly</source>
        <translation>Llenar despacio</translation>
    </message>
    <message>
        <source>The element burns out without coolant: the heater stays locked out.</source>
        <translation>La resistencia se quema sin refrigerante: el calentador sigue bloqueado.</translation>
    </message>
    <message>
        <source>Run the engine until its thermostat opens</source>
        <translation>Hacer funcionar el motor hasta que abra su termostato</translation>
    </message>
    <message>
        <source>Outdoors or with extraction only. Hands, hair and sleeves away from belts and fan. The heater stays locked out.</source>
        <translation>Solo al aire libre o con extracción. Manos, pelo y mangas lejos de correas y ventilador. El calentador sigue bloqueado.</translation>
    </message>
    <message>
        <source>Stop the engine and let it cool</source>
        <translation>Parar el motor y dejar que se enfríe</translation>
    </message>
    <message>
        <source>Do not open the cap to hurry it.</source>
        <translation>No abra el tapón para ir más rápido.</translation>
    </message>
    <message>
        <source>Inspect every joint</source>
        <translation>Revisar cada unión</translation>
    </message>
    <message>
        <source>Engine off, battery locked out again. Hot parts.</source>
        <translation>Motor parado, batería bloqueada de nuevo. Piezas calientes.</translation>
    </message>
    <message>
        <source>Top up, cold</source>
        <translation>Completar el nivel, en frío</translation>
    </message>
    <message>
        <source>Open the cap only when a bare hand can stay on the upper hose.</source>
        <translation>Abra el tapón solo cuando pueda dejar la mano desnuda en la manguera superior.</translation>
    </message>
    <message>
        <source>Have the power connected</source>
        <translation>Hacer conectar la electricidad</translation>
    </message>
    <message>
        <source>Grounded supply by the local electrical code and a licensed electrician. Still locked out.</source>
        <translation>Alimentación con puesta a tierra según el código eléctrico local y por un electricista autorizado. Sigue bloqueado.</translation>
    </message>
    <message>
        <source>Energise the heater</source>
        <translation>Energizar el calentador</translation>
    </message>
    <message>
        <source>Never without coolant in the chamber, never with a valve closed.</source>
        <translation>Nunca sin refrigerante en la cámara, nunca con una válvula cerrada.</translation>
    </message>
    <message>
        <source>Verify: take readings</source>
        <translation>Verificar: tomar lecturas</translation>
    </message>
    <message>
        <source>Hot coolant and pressure: read by instrument before you touch. Switch off before a valve is closed.</source>
        <translation>Refrigerante caliente y a presión: lea el instrumento antes de tocar. Apague antes de cerrar una válvula.</translation>
    </message>
    <message>
        <source>Recheck after the first night</source>
        <translation>Revisar de nuevo tras la primera noche</translation>
    </message>
    <message>
        <source>Lock out the power before a clamp is tightened.</source>
        <translation>Bloquee la electricidad antes de apretar una abrazadera.</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Entregar</translation>
    </message>
    <message>
        <source>The next who works here must know that the heater can turn on by itself: leave the label.</source>
        <translation>Quien trabaje aquí después debe saber que el calentador puede encenderse solo: deje la etiqueta.</translation>
    </message>
    <message>
        <source>There is no step &quot;{a}&quot;.</source>
        <translation>No existe el paso &quot;{a}&quot;.</translation>
    </message>
    <message>
        <source>Not yet. First: {a}.</source>
        <translation>Todavía no. Primero: {a}.</translation>
    </message>
    <message>
        <source>Done out of order, and recorded as such. Still open: {a}.</source>
        <translation>Hecho fuera de orden, y así consta. Aún abierto: {a}.</translation>
    </message>
    <message>
        <source>It is not ticked.</source>
        <translation>No está marcado.</translation>
    </message>
    <message>
        <source>These rest on it and may no longer hold: {a}.</source>
        <translation>Estos dependen de él y puede que ya no valgan: {a}.</translation>
    </message>
    <message>
        <source>Wait until a bare hand can stay on the upper hose.</source>
        <translation>Espere hasta poder dejar la mano desnuda en la manguera superior.</translation>
    </message>
    <message>
        <source>{a}: {0}. Measure that no conductor carries it any more.</source>
        <translation>{a}: {0}. Mida que ningún conductor la lleve ya.</translation>
    </message>
    <message>
        <source>{a}: its voltage is not entered. Measure that no conductor is live.</source>
        <translation>{a}: falta su tensión. Mida que ningún conductor tenga tensión.</translation>
    </message>
    <message>
        <source>The engine holds about {0}: have vessels for it.</source>
        <translation>El motor contiene unos {0}: prepare recipientes.</translation>
    </message>
    <message>
        <source>How much the engine holds is not entered: have vessels enough.</source>
        <translation>Falta cuánto contiene el motor: prepare recipientes de sobra.</translation>
    </message>
    <message>
        <source>Flush until the water runs clear: sediment settles in the heater, the lowest place.</source>
        <translation>Enjuague hasta que el agua salga limpia: el sedimento se deposita en el calentador, el lugar más bajo.</translation>
    </message>
    <message>
        <source>{a}: its top {0} under the lowest point of the water jacket.</source>
        <translation>{a}: su parte superior, {0} por debajo del punto más bajo de la camisa de agua.</translation>
    </message>
    <message>
        <source>{a} is drawn on the engine: it would shake with it. The frame is better.</source>
        <translation>{a} está dibujado en el motor: vibraría con él. El bastidor es mejor.</translation>
    </message>
    <message>
        <source>No isolation valve is drawn.</source>
        <translation>No hay ninguna válvula de aislamiento dibujada.</translation>
    </message>
    <message>
        <source>Open the shut-off of {a}.</source>
        <translation>Abra la llave de {a}.</translation>
    </message>
    <message>
        <source>Kind and share of antifreeze are not entered.</source>
        <translation>Faltan el tipo y la proporción de anticongelante.</translation>
    </message>
    <message>
        <source>Plain water is drawn: it freezes.</source>
        <translation>Está dibujada agua sola: se congela.</translation>
    </message>
    <message>
        <source>{0} antifreeze by volume ({a} glycol), at most {1}; the rest deionised or distilled water.</source>
        <translation>{0} de anticongelante en volumen (glicol: {a}), como máximo {1}; el resto, agua desionizada o destilada.</translation>
    </message>
    <message>
        <source>ethylene</source>
        <translation>etileno</translation>
    </message>
    <message>
        <source>propylene</source>
        <translation>propileno</translation>
    </message>
    <message>
        <source>How much hoses and heater take is not computed.</source>
        <translation>No está calculado cuánto toman mangueras y calentador.</translation>
    </message>
    <message>
        <source>To come to {0} of antifreeze ({a} glycol): drain {1}, add {2} of antifreeze and {3} of distilled water{b}.</source>
        <translation>Para llegar a {0} de anticongelante (glicol: {a}): vacíe {1}, añada {2} de anticongelante y {3} de agua destilada{b}.</translation>
    </message>
    <message>
        <source>in %1 rounds</source>
        <translation>en %1 rondas</translation>
    </message>
    <message>
        <source>Filling is not computed: fill to the cold full mark.</source>
        <translation>El llenado no está calculado: llene hasta la marca de lleno en frío.</translation>
    </message>
    <message>
        <source>{0} was let out of the engine before: {1} to pour in altogether.</source>
        <translation>Antes se sacaron {0} del motor: {1} por verter en total.</translation>
    </message>
    <message>
        <source>Bleed {a} at its crest, {0} up and {1} along it: {2} of air stay there.</source>
        <translation>Purgue {a} en su cresta, a {0} de altura y {1} del inicio: allí quedan {2} de aire.</translation>
    </message>
    <message>
        <source>Filled as drawn no air stays that closes a bore.</source>
        <translation>Llenado como está dibujado, no queda aire que cierre el paso.</translation>
    </message>
    <message>
        <source>Until the upper hose turns hot, at about {0}; cabin heater open.</source>
        <translation>Hasta que la manguera superior se caliente, a unos {0}; calefacción de cabina abierta.</translation>
    </message>
    <message>
        <source>Every clamp, thread and valve, with light and mirror; the heater&apos;s fastening; hoses off what is hot or moves.</source>
        <translation>Cada abrazadera, rosca y válvula, con luz y espejo; la fijación del calentador; mangueras lejos de lo caliente o móvil.</translation>
    </message>
    <message>
        <source>To the cold full mark.</source>
        <translation>Hasta la marca de lleno en frío.</translation>
    </message>
    <message>
        <source>The cold full mark is not entered: to the tank&apos;s own mark.</source>
        <translation>Falta la marca de lleno en frío: hasta la marca del propio vaso.</translation>
    </message>
    <message>
        <source>{a}: power or voltage is not entered, so its current is not known.</source>
        <translation>{a}: falta la potencia o la tensión, así que no se conoce su corriente.</translation>
    </message>
    <message>
        <source>{a}: {0} at {1}, three phases, {2} in each conductor.</source>
        <translation>{a}: {0} a {1}, trifásico, {2} en cada conductor.</translation>
    </message>
    <message>
        <source>{a}: {0} at {1}, {2}.</source>
        <translation>{a}: {0} a {1}, {2}.</translation>
    </message>
    <message>
        <source>These are load figures for the electrician, not an instruction to wire.</source>
        <translation>Son cifras de carga para el electricista, no instrucciones de cableado.</translation>
    </message>
    <message>
        <source>Both hose ends of the heater full, level at the mark. Note the time.</source>
        <translation>Ambas mangueras del calentador llenas, nivel en la marca. Anote la hora.</translation>
    </message>
    <message>
        <source>{a}: the return hose is warm to the hand at the engine after about {0} min.</source>
        <translation>{a}: la manguera de retorno se nota caliente en el motor tras unos {0} min.</translation>
    </message>
    <message>
        <source>Readings after 15, 30, 60 and 120 min: ambient, inlet, outlet, return hose, current, level.</source>
        <translation>Lecturas tras 15, 30, 60 y 120 min: ambiente, entrada, salida, manguera de retorno, corriente, nivel.</translation>
    </message>
    <message>
        <source>Limits: outlet at most {0} the whole time, at most {1} cycles an hour.</source>
        <translation>Límites: salida como máximo {0} todo el tiempo, como máximo {1} ciclos por hora.</translation>
    </message>
    <message>
        <source>Engine at its target of {0} after about {1}.</source>
        <translation>Motor en su objetivo de {0} tras unos {1}.</translation>
    </message>
    <message>
        <source>The target of {0} is not reached, or not computed.</source>
        <translation>El objetivo de {0} no se alcanza o no está calculado.</translation>
    </message>
    <message>
        <source>{a}: what to expect is not computed.</source>
        <translation>{a}: no está calculado qué esperar.</translation>
    </message>
    <message>
        <source>Expected of {a}: outlet {0} at its hottest ({1-2}), cycles in the worst hour: {3} ({4-5}).</source>
        <translation>Se espera de {a}: salida {0} como máximo ({1-2}), ciclos en la peor hora: {3} ({4-5}).</translation>
    </message>
    <message>
        <source>Expected of {a}: outlet {0} at its hottest, cycles in the worst hour: {1}.</source>
        <translation>Se espera de {a}: salida {0} como máximo, ciclos en la peor hora: {1}.</translation>
    </message>
    <message>
        <source>Level, clamps, and the return hose warm at the engine.</source>
        <translation>Nivel, abrazaderas, y la manguera de retorno caliente en el motor.</translation>
    </message>
    <message>
        <source>Best after a night near {0}.</source>
        <translation>Mejor tras una noche cercana a {0}.</translation>
    </message>
    <message>
        <source>it was stopped</source>
        <translation>se detuvo</translation>
    </message>
    <message>
        <source>the loop of this heater is not closed</source>
        <translation>el circuito de este calentador no está cerrado</translation>
    </message>
    <message>
        <source>there is no heater yet</source>
        <translation>aún no hay calentador</translation>
    </message>
    <message>
        <source>there is no heater &quot;%1&quot;</source>
        <translation>no hay ningún calentador &quot;%1&quot;</translation>
    </message>
    <message>
        <source>when the heater was energised is not entered</source>
        <translation>falta cuándo se energizó el calentador</translation>
    </message>
    <message>
        <source>there are no readings of this heater yet</source>
        <translation>aún no hay lecturas de este calentador</translation>
    </message>
    <message>
        <source>no reading has a time after the heater was energised</source>
        <translation>ninguna lectura tiene una hora posterior a energizar el calentador</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>Nothing wrong: it runs as drawn</source>
        <translation>Nada mal: funciona como está dibujado</translation>
    </message>
    <message>
        <source>Take another reading in half an hour and see whether it still fits.</source>
        <translation>Tome otra lectura en media hora y vea si aún concuerda.</translation>
    </message>
    <message>
        <source>Nothing to do.</source>
        <translation>Nada que hacer.</translation>
    </message>
    <message>
        <source>air</source>
        <translation>aire</translation>
    </message>
    <message>
        <source>Air in {a}</source>
        <translation>Aire en {a}</translation>
    </message>
    <message>
        <source>Heater off and locked out, system cold: open a bleed or loosen the hose at its crest; air comes first, then coolant.</source>
        <translation>Calentador apagado y bloqueado, sistema frío: abra un purgador o afloje la manguera en su cresta; primero sale aire, luego refrigerante.</translation>
    </message>
    <message>
        <source>Let the air out at the crest, top up, and give the hose a rise all the way.</source>
        <translation>Deje salir el aire en la cresta, complete el nivel y dé a la manguera subida en todo el recorrido.</translation>
    </message>
    <message>
        <source>The valve in {a} is closed</source>
        <translation>La válvula de {a} está cerrada</translation>
    </message>
    <message>
        <source>Heater off first. Look at the handle: across the hose means closed.</source>
        <translation>Primero apague el calentador. Mire la palanca: atravesada a la manguera significa cerrada.</translation>
    </message>
    <message>
        <source>Open it fully, then energise.</source>
        <translation>Ábrala del todo y luego energice.</translation>
    </message>
    <message>
        <source>The valve in {a} is half closed</source>
        <translation>La válvula de {a} está medio cerrada</translation>
    </message>
    <message>
        <source>Look at the handle: it has to lie along the hose.</source>
        <translation>Mire la palanca: debe estar a lo largo de la manguera.</translation>
    </message>
    <message>
        <source>Open it fully.</source>
        <translation>Ábrala del todo.</translation>
    </message>
    <message>
        <source>{a} has collapsed inside</source>
        <translation>{a} se ha hundido por dentro</translation>
    </message>
    <message>
        <source>Heater off, cold: press the hose between two fingers along its length; a soft or flat place gives way.</source>
        <translation>Calentador apagado, frío: apriete la manguera entre dos dedos en toda su longitud; un punto blando o plano cede.</translation>
    </message>
    <message>
        <source>Replace the hose.</source>
        <translation>Cambie la manguera.</translation>
    </message>
    <message>
        <source>Hoses are a size smaller than drawn</source>
        <translation>Las mangueras son una medida menores que las dibujadas</translation>
    </message>
    <message>
        <source>Read the size printed on the hose, and measure the bore of a hose end.</source>
        <translation>Lea la medida impresa en la manguera y mida el diámetro interior de una espiga.</translation>
    </message>
    <message>
        <source>Fit the drawn size.</source>
        <translation>Monte la medida dibujada.</translation>
    </message>
    <message>
        <source>The ports at the engine are swapped</source>
        <translation>Las tomas del motor están intercambiadas</translation>
    </message>
    <message>
        <source>Follow the hose from the heater&apos;s inlet: it has to lead to the low port.</source>
        <translation>Siga la manguera desde la entrada del calentador: debe llevar a la toma baja.</translation>
    </message>
    <message>
        <source>Change the hoses over.</source>
        <translation>Intercambie las mangueras.</translation>
    </message>
    <message>
        <source>The hoses at the heater are exchanged, the flow runs backward</source>
        <translation>Las mangueras en el calentador están cambiadas, el caudal va al revés</translation>
    </message>
    <message>
        <source>Follow the hose from the heater&apos;s upper nozzle: it has to lead to the high port.</source>
        <translation>Siga la manguera desde la boquilla superior del calentador: debe llevar a la toma alta.</translation>
    </message>
    <message>
        <source>Change the hoses over at the heater.</source>
        <translation>Intercambie las mangueras en el calentador.</translation>
    </message>
    <message>
        <source>Coolant is under the return port</source>
        <translation>El refrigerante está por debajo de la toma de retorno</translation>
    </message>
    <message>
        <source>Cold: look at the level in the surge tank; under the mark means low.</source>
        <translation>Frío: mire el nivel del vaso de expansión; por debajo de la marca es bajo.</translation>
    </message>
    <message>
        <source>Power off. Find the leak, fill, bleed, top up.</source>
        <translation>Sin electricidad. Busque la fuga, llene, purgue, complete.</translation>
    </message>
    <message>
        <source>The supply has half the heater&apos;s voltage</source>
        <translation>El suministro tiene la mitad de la tensión del calentador</translation>
    </message>
    <message>
        <source>An electrician compares the voltage at the heater with its rating plate.</source>
        <translation>Un electricista compara la tensión en el calentador con su placa de características.</translation>
    </message>
    <message>
        <source>Have the heater supplied with its rated voltage.</source>
        <translation>Haga alimentar el calentador con su tensión nominal.</translation>
    </message>
    <message>
        <source>The supply is a phase voltage: 0.87 of what is drawn</source>
        <translation>El suministro es una tensión de fase: 0,87 de lo dibujado</translation>
    </message>
    <message>
        <source>Have it supplied with its rated voltage, or take a heater made for this one.</source>
        <translation>Hágalo alimentar con su tensión nominal, o use un calentador hecho para esta.</translation>
    </message>
    <message>
        <source>One phase is missing</source>
        <translation>Falta una fase</translation>
    </message>
    <message>
        <source>An electrician measures the current in each of the three conductors.</source>
        <translation>Un electricista mide la corriente en cada uno de los tres conductores.</translation>
    </message>
    <message>
        <source>Have fuse, contactor and terminals looked at.</source>
        <translation>Haga revisar fusible, contactor y bornes.</translation>
    </message>
    <message>
        <source>The element is dead</source>
        <translation>La resistencia está fundida</translation>
    </message>
    <message>
        <source>Locked out: measure the resistance across the element; open means dead.</source>
        <translation>Bloqueado: mida entre los bornes de la resistencia; abierto significa fundida.</translation>
    </message>
    <message>
        <source>Replace the element.</source>
        <translation>Cambie la resistencia.</translation>
    </message>
    <message>
        <source>The thermostat is stuck on</source>
        <translation>El termostato está pegado en encendido</translation>
    </message>
    <message>
        <source>Watch whether it ever turns off above its point.</source>
        <translation>Observe si llega a apagarse por encima de su punto.</translation>
    </message>
    <message>
        <source>Replace the thermostat.</source>
        <translation>Cambie el termostato.</translation>
    </message>
    <message>
        <source>The thermostat is stuck off</source>
        <translation>El termostato está pegado en apagado</translation>
    </message>
    <message>
        <source>Locked out and cold: measure across the thermostat; open below its turn-on point means stuck.</source>
        <translation>Bloqueado y frío: mida entre los bornes del termostato; abierto por debajo de su punto de encendido significa pegado.</translation>
    </message>
    <message>
        <source>The element is scaled</source>
        <translation>La resistencia tiene incrustaciones</translation>
    </message>
    <message>
        <source>Drain and take the element out: a crust is scale. The other readings hardly show it.</source>
        <translation>Vacíe y saque la resistencia: una costra es incrustación. Las demás lecturas apenas lo muestran.</translation>
    </message>
    <message>
        <source>Replace the element; flush; deionised or distilled water only.</source>
        <translation>Cambie la resistencia; enjuague; solo agua desionizada o destilada.</translation>
    </message>
    <message>
        <source>The over-temperature cut-out has tripped</source>
        <translation>El limitador de sobretemperatura se ha disparado</translation>
    </message>
    <message>
        <source>Locked out: measure across the cut-out; open means tripped. Find out why before it is reset.</source>
        <translation>Bloqueado: mida entre los bornes del limitador; abierto significa disparado. Averigüe por qué antes de rearmarlo.</translation>
    </message>
    <message>
        <source>Mend what made it hot, then reset it.</source>
        <translation>Corrija lo que lo calentó y después rearme.</translation>
    </message>
    <message>
        <source>The breaker or the ground-fault device has tripped</source>
        <translation>El disyuntor o el diferencial se ha disparado</translation>
    </message>
    <message>
        <source>Look at the breaker and the ground-fault device. An electrician measures insulation before it is reset.</source>
        <translation>Mire el disyuntor y el diferencial. Un electricista mide el aislamiento antes de rearmar.</translation>
    </message>
    <message>
        <source>Have the fault to ground found first.</source>
        <translation>Haga buscar primero la falla a tierra.</translation>
    </message>
    <message>
        <source>Scale or sediment blocks {a}</source>
        <translation>Incrustaciones o sedimento obstruyen {a}</translation>
    </message>
    <message>
        <source>Cold and drained: probe the opening through the fitting.</source>
        <translation>Frío y vacío: sondee la abertura por el racor.</translation>
    </message>
    <message>
        <source>Clean the opening, flush the engine.</source>
        <translation>Limpie la abertura, enjuague el motor.</translation>
    </message>
    <message>
        <source>{a} is kinked</source>
        <translation>{a} tiene un doblez</translation>
    </message>
    <message>
        <source>Follow the hose by eye and hand, behind brackets too.</source>
        <translation>Siga la manguera con la vista y la mano, también detrás de los soportes.</translation>
    </message>
    <message>
        <source>Reroute with a larger bend, or an elbow.</source>
        <translation>Cambie el recorrido con una curva mayor o un codo.</translation>
    </message>
    <message>
        <source>There is a check valve in {a}</source>
        <translation>Hay una válvula antirretorno en {a}</translation>
    </message>
    <message>
        <source>Look for an arrow on a fitting in the hose.</source>
        <translation>Busque una flecha en una pieza de la manguera.</translation>
    </message>
    <message>
        <source>Take it out: a few mm of head do not open it.</source>
        <translation>Quítela: unos mm de altura de presión no la abren.</translation>
    </message>
    <message>
        <source>The engine&apos;s own thermostat is stuck open</source>
        <translation>El termostato del propio motor está pegado abierto</translation>
    </message>
    <message>
        <source>Feel the upper radiator hose: warm with the engine cold means that it lets coolant through.</source>
        <translation>Toque la manguera superior del radiador: caliente con el motor frío significa que deja pasar refrigerante.</translation>
    </message>
    <message>
        <source>Replace the engine&apos;s thermostat.</source>
        <translation>Cambie el termostato del motor.</translation>
    </message>
    <message>
        <source>The remote sensor hangs in the air</source>
        <translation>El sensor remoto cuelga en el aire</translation>
    </message>
    <message>
        <source>Look at the sensor: it has to sit tight on the engine, away from the return port.</source>
        <translation>Mire el sensor: debe estar bien ajustado al motor, lejos de la toma de retorno.</translation>
    </message>
    <message>
        <source>Fasten it.</source>
        <translation>Fíjelo.</translation>
    </message>
    <message>
        <source>Air in {a}, {0} up</source>
        <translation>Aire en {a}, a {0} de altura</translation>
    </message>
    <message>
        <source>inlet</source>
        <translation>entrada</translation>
    </message>
    <message>
        <source>clip-on thermometer on the metal at the heater&apos;s inlet</source>
        <translation>termómetro de pinza en el metal de la entrada del calentador</translation>
    </message>
    <message>
        <source>outlet</source>
        <translation>salida</translation>
    </message>
    <message>
        <source>clip-on thermometer on the metal at the heater&apos;s outlet</source>
        <translation>termómetro de pinza en el metal de la salida del calentador</translation>
    </message>
    <message>
        <source>return hose</source>
        <translation>manguera de retorno</translation>
    </message>
    <message>
        <source>infrared thermometer on the rubber of the return hose at the engine</source>
        <translation>termómetro infrarrojo en la goma de la manguera de retorno junto al motor</translation>
    </message>
    <message>
        <source>engine block</source>
        <translation>bloque motor</translation>
    </message>
    <message>
        <source>infrared thermometer on the block beside the return port</source>
        <translation>termómetro infrarrojo en el bloque junto a la toma de retorno</translation>
    </message>
    <message>
        <source>current</source>
        <translation>corriente</translation>
    </message>
    <message>
        <source>clamp meter round one conductor</source>
        <translation>pinza amperimétrica en un conductor</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>tensión</translation>
    </message>
    <message>
        <source>voltmeter at the heater, by an electrician</source>
        <translation>voltímetro en el calentador, por un electricista</translation>
    </message>
    <message>
        <source>coolant level</source>
        <translation>nivel de refrigerante</translation>
    </message>
    <message>
        <source>rule at the surge tank, from the cold full mark</source>
        <translation>regla en el vaso de expansión, desde la marca de lleno en frío</translation>
    </message>
    <message>
        <source>feel the supply hose one hand from the heater</source>
        <translation>toque la manguera de alimentación a un palmo del calentador</translation>
    </message>
    <message>
        <source>feel the return hose at the engine</source>
        <translation>toque la manguera de retorno en el motor</translation>
    </message>
    <message>
        <source>Now %1</source>
        <translation>Ahora %1</translation>
    </message>
    <message>
        <source>In %1 min %2</source>
        <translation>En %1 min %2</translation>
    </message>
    <message>
        <source>%1: cold means &quot;%2&quot;, warm means &quot;%3&quot;.</source>
        <translation>%1: frío significa &quot;%2&quot;, caliente significa &quot;%3&quot;.</translation>
    </message>
    <message>
        <source>read the %1 (%2): about %3 means &quot;%4&quot;, about %5 means &quot;%6&quot;.</source>
        <translation>lea: %1 (%2): unos %3 significan &quot;%4&quot;, unos %5 significan &quot;%6&quot;.</translation>
    </message>
    <message>
        <source>Only whether power was on was read.</source>
        <translation>Solo se leyó si había electricidad.</translation>
    </message>
    <message>
        <source>Speaks against it: the {a} was {0} after {1} min, where {2} is expected.</source>
        <translation>En contra: {a}, {0} tras {1} min, donde se espera {2}.</translation>
    </message>
    <message>
        <source>All is near what is expected; farthest off is the {a}: {0} after {1} min, where {2} is expected.</source>
        <translation>Todo está cerca de lo esperado; lo más alejado: {a}, {0} tras {1} min, donde se espera {2}.</translation>
    </message>
    <message>
        <source>The {a} was {0} after {1} min: this fault gives {2}, the job as drawn {3}.</source>
        <translation>Lectura de {a}: {0} tras {1} min; esta falla da {2}, el trabajo como está dibujado {3}.</translation>
    </message>
    <message>
        <source>Speaks against it: the {a} was {0} after {1} min: this fault gives {2}, the job as drawn {3}.</source>
        <translation>En contra: {a}, {0} tras {1} min; esta falla da {2}, el trabajo como está dibujado {3}.</translation>
    </message>
    <message>
        <source>Not judged against the drawing.</source>
        <translation>Sin evaluar frente al dibujo.</translation>
    </message>
    <message>
        <source>Over the limit of {0}. Switch off and find out why.</source>
        <translation>Por encima del límite de {0}. Apague y averigüe por qué.</translation>
    </message>
    <message>
        <source>Fits: {0} to {1} expected.</source>
        <translation>Concuerda: se espera de {0} a {1}.</translation>
    </message>
    <message>
        <source>Lower than expected: {0} to {1}.</source>
        <translation>Menor de lo esperado: de {0} a {1}.</translation>
    </message>
    <message>
        <source>Higher than expected: {0} to {1}.</source>
        <translation>Mayor de lo esperado: de {0} a {1}.</translation>
    </message>
    <message>
        <source>Not judged: the cold marks of the surge tank are not entered.</source>
        <translation>Sin evaluar: faltan las marcas en frío del vaso de expansión.</translation>
    </message>
    <message>
        <source>Under the cold minimum, {0} under the full mark. Power off, find the leak, top up.</source>
        <translation>Por debajo del mínimo en frío, {0} bajo la marca de lleno. Sin electricidad, busque la fuga, complete.</translation>
    </message>
    <message>
        <source>Over the hot mark.</source>
        <translation>Por encima de la marca en caliente.</translation>
    </message>
    <message>
        <source>Between the marks.</source>
        <translation>Entre las marcas.</translation>
    </message>
    <message>
        <source>Not judged: rated power or rated voltage is not entered.</source>
        <translation>Sin evaluar: falta la potencia nominal o la tensión nominal.</translation>
    </message>
    <message>
        <source>Fits: {0} is its rated power at {1}.</source>
        <translation>Concuerda: {0} es su potencia nominal a {1}.</translation>
    </message>
    <message>
        <source>Too little: its rated power at {1} would be {0}.</source>
        <translation>Muy poco: su potencia nominal a {1} sería {0}.</translation>
    </message>
    <message>
        <source>Too much: its rated power at {1} would be {0}.</source>
        <translation>Demasiado: su potencia nominal a {1} sería {0}.</translation>
    </message>
    <message>
        <source>Off: its thermostat may well be open then.</source>
        <translation>Apagado: puede que su termostato esté abierto en ese momento.</translation>
    </message>
    <message>
        <source>Draws nothing, where it should be on and draw {0}.</source>
        <translation>No consume nada, cuando debería estar encendido y consumir {0}.</translation>
    </message>
    <message>
        <source>Cycles: not judged, no switching off was noted.</source>
        <translation>Ciclos: sin evaluar, no se anotó ningún apagado.</translation>
    </message>
    <message>
        <source>Cycles: not judged, it was not seen to turn on again.</source>
        <translation>Ciclos: sin evaluar, no se vio que volviera a encenderse.</translation>
    </message>
    <message>
        <source>On {0} times within an hour, over the limit of {1}.</source>
        <translation>Encendido {0} veces en una hora, por encima del límite de {1}.</translation>
    </message>
    <message>
        <source>On {0} times within an hour at most.</source>
        <translation>Encendido {0} veces en una hora como máximo.</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>concuerda</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>dudoso</translation>
    </message>
    <message>
        <source>off</source>
        <translation>no concuerda</translation>
    </message>
    <message>
        <source>the loop of this heater is not computed</source>
        <translation>el circuito de este calentador no está calculado</translation>
    </message>
    <message>
        <source>the coolant&apos;s properties are not known</source>
        <translation>no se conocen las propiedades del refrigerante</translation>
    </message>
    <message>
        <source>Supply hose</source>
        <translation>Manguera de alimentación</translation>
    </message>
    <message>
        <source>Return hose</source>
        <translation>Manguera de retorno</translation>
    </message>
    <message>
        <source>hose</source>
        <translation>manguera</translation>
    </message>
    <message>
        <source>Port %1</source>
        <translation>Toma %1</translation>
    </message>
    <message>
        <source>Heater</source>
        <translation>Calentador</translation>
    </message>
    <message>
        <source>heater</source>
        <translation>calentador</translation>
    </message>
    <message>
        <source>Area %1</source>
        <translation>Zona %1</translation>
    </message>
    <message>
        <source>neither the coolant of the whole system nor that of the engine is entered</source>
        <translation>falta el refrigerante de todo el sistema o el del motor</translation>
    </message>
    <message>
        <source>The kind of antifreeze to add is not entered.</source>
        <translation>Falta el tipo de anticongelante que se añade.</translation>
    </message>
    <message>
        <source>The kind of antifreeze in it now is not known, and kinds must not be mixed: find it out, or drain and flush all of it and choose a fill from empty.</source>
        <translation>No se conoce el tipo de anticongelante que hay ahora, y los tipos no deben mezclarse: averígüelo, o vacíe y enjuague todo y elija llenar desde vacío.</translation>
    </message>
    <message>
        <source>In it now is another kind of antifreeze, and kinds must not be mixed: drain and flush all of it and choose a fill from empty.</source>
        <translation>Ahora hay otro tipo de anticongelante, y los tipos no deben mezclarse: vacíe y enjuague todo y elija llenar desde vacío.</translation>
    </message>
    <message>
        <source>chloride</source>
        <translation>cloruro</translation>
    </message>
    <message>
        <source>sulphate</source>
        <translation>sulfato</translation>
    </message>
    <message>
        <source>hardness as CaCO3</source>
        <translation>dureza como CaCO3</translation>
    </message>
    <message>
        <source>total solids</source>
        <translation>sólidos totales</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>ASTM D6210, appendix X1 (from memory); same figures in TM 5-3895-383-24, table 15 (US Army)</source>
        <translation>ASTM D6210, apéndice X1 (de memoria); mismas cifras en TM 5-3895-383-24, tabla 15 (US Army)</translation>
    </message>
    <message>
        <source>more than %1 lines</source>
        <translation>más de %1 líneas</translation>
    </message>
    <message>
        <source>more than %1 fields in a line</source>
        <translation>más de %1 campos en una línea</translation>
    </message>
    <message>
        <source>a field of more than %1 bytes</source>
        <translation>un campo de más de %1 bytes</translation>
    </message>
    <message>
        <source>a quote inside a field that does not begin with one</source>
        <translation>una comilla dentro de un campo que no empieza con comillas</translation>
    </message>
    <message>
        <source>a control character that ends no line</source>
        <translation>un carácter de control que no termina una línea</translation>
    </message>
    <message>
        <source>text behind the quote that ends a field</source>
        <translation>texto tras la comilla que cierra un campo</translation>
    </message>
    <message>
        <source>a field in quotes that does not end</source>
        <translation>un campo entre comillas que no termina</translation>
    </message>
    <message>
        <source>a line of %1 fields, where the first has %2</source>
        <translation>una línea de %1 campos, donde la primera tiene %2</translation>
    </message>
    <message>
        <source>Line %1, column %2: %3</source>
        <translation>Línea %1, columna %2: %3</translation>
    </message>
    <message>
        <source>a file of more than %1 MiB</source>
        <translation>un archivo de más de %1 MiB</translation>
    </message>
    <message>
        <source>a byte that is not UTF-8 text</source>
        <translation>un byte que no es texto UTF-8</translation>
    </message>
    <message>
        <source>Nothing is to be cut.</source>
        <translation>No hay nada que cortar.</translation>
    </message>
    <message>
        <source>No length of roll is entered.</source>
        <translation>Falta el largo del rollo.</translation>
    </message>
    <message>
        <source>A length is not over 0 and at most 10 km, or there are too many cuts.</source>
        <translation>Una longitud no está entre 0 y 10 km, o hay demasiados cortes.</translation>
    </message>
    <message>
        <source>A cut is longer than the longest roll.</source>
        <translation>Un corte es más largo que el rollo más largo.</translation>
    </message>
    <message>
        <source>A volume has to be from 0 to {0}.</source>
        <translation>Un volumen debe estar entre 0 y {0}.</translation>
    </message>
    <message>
        <source>There is nothing to fill.</source>
        <translation>No hay nada que llenar.</translation>
    </message>
    <message>
        <source>The share of antifreeze has to be from 0 to 100 %.</source>
        <translation>La proporción de anticongelante debe estar entre 0 y 100 %.</translation>
    </message>
    <message>
        <source>{0} is not planned for: over {1} antifreeze by volume coolant carries less heat and freezes earlier again.</source>
        <translation>{0} no está previsto: con más de {1} de anticongelante en volumen el refrigerante transporta menos calor y vuelve a congelarse antes.</translation>
    </message>
    <message>
        <source>{0} is not reached: coolant would have to be drained, and nothing runs out at the drains.</source>
        <translation>{0} no se alcanza: habría que vaciar refrigerante, y por los drenajes no sale nada.</translation>
    </message>
    <message>
        <source>{0} is not reached: only {1} runs out at once, and after {2} rounds of draining and filling with antifreeze the coolant is at {3}. Drain elsewhere too, or flush and fill afresh.</source>
        <translation>{0} no se alcanza: solo sale {1} de una vez, y tras {2} rondas de vaciar y llenar con anticongelante el refrigerante está a {3}. Vacíe también por otro lado, o enjuague y llene de nuevo.</translation>
    </message>
    <message>
        <source>{0} is not reached: only {1} runs out at once, each round leaves antifreeze behind, and after {2} the coolant is at {3}. Drain elsewhere too, or flush and fill afresh.</source>
        <translation>{0} no se alcanza: solo sale {1} de una vez, cada ronda deja anticongelante, y tras {2} el refrigerante está a {3}. Vacíe también por otro lado, o enjuague y llene de nuevo.</translation>
    </message>
    <message>
        <source>Draining all of the {0} that runs out at once is not enough: it gives {1}. {2} rounds are needed, with the engine run in between until its thermostat opens.</source>
        <translation>No basta con vaciar los {0} que salen de una vez: da {1}. Hacen falta {2} rondas, haciendo funcionar el motor entre ellas hasta que abra su termostato.</translation>
    </message>
    <message>
        <source>Drain {0}, then fill.</source>
        <translation>Vacíe {0} y luego llene.</translation>
    </message>
    <message>
        <source>Drain {0}, then fill. How much runs out at the drains is not entered: see that so much does.</source>
        <translation>Vacíe {0} y luego llene. Falta cuánto sale por los drenajes: compruebe que salga esa cantidad.</translation>
    </message>
    <message>
        <source>Nothing has to be drained: fill the new hoses and chambers as stated.</source>
        <translation>No hay que vaciar nada: llene las mangueras y cámaras nuevas como se indica.</translation>
    </message>
    <message>
        <source>The coolant is as wanted.</source>
        <translation>El refrigerante está como se desea.</translation>
    </message>
    <message>
        <source>its power is not entered</source>
        <translation>falta su potencia</translation>
    </message>
    <message>
        <source>neither the supply&apos;s voltage nor its own is entered</source>
        <translation>falta la tensión del suministro o la suya</translation>
    </message>
    <message>
        <source>its rated voltage is not entered</source>
        <translation>falta su tensión nominal</translation>
    </message>
    <message>
        <source>it needs three phases and the supply has one</source>
        <translation>necesita tres fases y el suministro tiene una</translation>
    </message>
    <message>
        <source>Single-phase heaters on three phases: counted as if all were on the same two conductors, the most that any carries. Shared out as evenly as can be it is {0}, {1} at 125 %.</source>
        <translation>Calentadores monofásicos en tres fases: contados como si todos estuvieran en los mismos dos conductores, lo máximo que lleva uno. Repartidos lo mejor posible son {0}, {1} al 125 %.</translation>
    </message>
    <message>
        <source>The supply&apos;s voltage is not entered: the current of all heaters together is not computed.</source>
        <translation>Falta la tensión del suministro: la corriente de todos los calentadores juntos no se calcula.</translation>
    </message>
    <message>
        <source>The supply&apos;s phases are not entered.</source>
        <translation>Faltan las fases del suministro.</translation>
    </message>
    <message>
        <source>The conductor&apos;s size is not entered: the voltage drop is not computed.</source>
        <translation>Falta la sección del conductor: la caída de tensión no se calcula.</translation>
    </message>
    <message>
        <source>The length of the run is not entered: the voltage drop is not computed.</source>
        <translation>Falta la longitud de la línea: la caída de tensión no se calcula.</translation>
    </message>
    <message>
        <source>{a} is not a size of the tables; 12 AWG or 4 mm2 are.</source>
        <translation>{a} no es una medida de las tablas; 12 AWG o 4 mm2 sí lo son.</translation>
    </message>
    <message>
        <source>{a} is rated for {0}. On {1} it would take {2}: do not connect it, the element burns out.</source>
        <translation>{a} tiene tensión nominal {0}. Con {1} tomaría {2}: no lo conecte, la resistencia se quema.</translation>
    </message>
    <message>
        <source>The warm-up of {a} is computed at {0}, which is entered with the heater; the supply has {1}.</source>
        <translation>El calentamiento de {a} se calcula a {0}, introducida con el calentador; el suministro tiene {1}.</translation>
    </message>
    <message>
        <source>The drop is over the {0} that is advised for a branch circuit.</source>
        <translation>La caída supera el {0} aconsejado para un circuito derivado.</translation>
    </message>
    <message>
        <source>The mark-up on materials is not entered.</source>
        <translation>Falta el recargo sobre materiales.</translation>
    </message>
    <message>
        <source>The prices of materials are not final.</source>
        <translation>Los precios de los materiales no son definitivos.</translation>
    </message>
    <message>
        <source>The amounts are too large to reckon with.</source>
        <translation>Las cantidades son demasiado grandes para calcular.</translation>
    </message>
    <message>
        <source>The currency is not entered.</source>
        <translation>Falta la moneda.</translation>
    </message>
    <message>
        <source>Travel</source>
        <translation>Desplazamiento</translation>
    </message>
    <message>
        <source>Consumables</source>
        <translation>Consumibles</translation>
    </message>
    <message>
        <source>Disposal of old coolant</source>
        <translation>Eliminación del refrigerante usado</translation>
    </message>
    <message>
        <source>not priced</source>
        <translation>sin precio</translation>
    </message>
    <message>
        <source>quantity not known</source>
        <translation>cantidad desconocida</translation>
    </message>
    <message>
        <source>priced by &quot;%1&quot;, which is no measure of it</source>
        <translation>con precio por &quot;%1&quot;, que no es una medida suya</translation>
    </message>
    <message>
        <source>Tank heater: {a}</source>
        <translation>Calentador de tanque: {a}</translation>
    </message>
    <message>
        <source>Item %1, %2: %3.</source>
        <translation>Partida %1, %2: %3.</translation>
    </message>
    <message>
        <source>The labour rate is not entered.</source>
        <translation>Falta la tarifa de mano de obra.</translation>
    </message>
    <message>
        <source>labour rate not entered</source>
        <translation>falta la tarifa de mano de obra</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>sin dato</translation>
    </message>
    <message>
        <source>%1: not entered.</source>
        <translation>%1: sin dato.</translation>
    </message>
    <message>
        <source>The tax is not entered.</source>
        <translation>Falta el impuesto.</translation>
    </message>
    <message>
        <source>The bore is not entered.</source>
        <translation>Falta el diámetro interior.</translation>
    </message>
    <message>
        <source>Make safe, drain and catch the coolant</source>
        <translation>Asegurar, vaciar y recoger el refrigerante</translation>
    </message>
    <message>
        <source>Clean ports, fit adapters and hose ends</source>
        <translation>Limpiar tomas, montar adaptadores y espigas</translation>
    </message>
    <message>
        <source>Cut, route and clamp the hoses</source>
        <translation>Cortar, tender y fijar con abrazaderas las mangueras</translation>
    </message>
    <message>
        <source>Fit valves and other in-line parts</source>
        <translation>Montar válvulas y otras piezas en línea</translation>
    </message>
    <message>
        <source>Run and connect the supply, by a licensed electrician</source>
        <translation>Tender y conectar el suministro, por un electricista autorizado</translation>
    </message>
    <message>
        <source>Flush, fill, purge and top up</source>
        <translation>Enjuagar, llenar, purgar y completar</translation>
    </message>
    <message>
        <source>Energise, take readings, check for leaks</source>
        <translation>Energizar, tomar lecturas, buscar fugas</translation>
    </message>
    <message>
        <source>Hand over with sheet and checklist</source>
        <translation>Entregar con hoja y lista de verificación</translation>
    </message>
    <message>
        <source>not a number such as 1250 or 12.5, without a sign for thousands</source>
        <translation>no es un número como 1250 o 12,5 (en archivos 12.5), sin separador de miles</translation>
    </message>
    <message>
        <source>a whole number is wanted here</source>
        <translation>aquí se espera un número entero</translation>
    </message>
    <message>
        <source>at most %1 decimals are wanted here</source>
        <translation>aquí se esperan como máximo %1 decimales</translation>
    </message>
    <message>
        <source>too large a number</source>
        <translation>un número demasiado grande</translation>
    </message>
    <message>
        <source>Tank heater</source>
        <translation>Calentador de tanque</translation>
    </message>
    <message>
        <source>Mounting kit</source>
        <translation>Juego de montaje</translation>
    </message>
    <message>
        <source>Hose</source>
        <translation>Manguera</translation>
    </message>
    <message>
        <source>Hose end</source>
        <translation>Espiga para manguera</translation>
    </message>
    <message>
        <source>Adapter</source>
        <translation>Adaptador</translation>
    </message>
    <message>
        <source>Core plug adapter</source>
        <translation>Adaptador para tapón de expansión</translation>
    </message>
    <message>
        <source>Tee for lower radiator hose</source>
        <translation>Te para manguera inferior del radiador</translation>
    </message>
    <message>
        <source>Tee for cabin heater line</source>
        <translation>Te para línea de calefacción de cabina</translation>
    </message>
    <message>
        <source>Elbow</source>
        <translation>Codo</translation>
    </message>
    <message>
        <source>Moulded elbow</source>
        <translation>Codo moldeado</translation>
    </message>
    <message>
        <source>Reducer</source>
        <translation>Reducción</translation>
    </message>
    <message>
        <source>Isolation valve</source>
        <translation>Válvula de aislamiento</translation>
    </message>
    <message>
        <source>Bleed</source>
        <translation>Purgador</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Drenaje</translation>
    </message>
    <message>
        <source>Lift check valve</source>
        <translation>Válvula antirretorno de disco</translation>
    </message>
    <message>
        <source>Swing check valve</source>
        <translation>Válvula antirretorno de clapeta</translation>
    </message>
    <message>
        <source>Hose clamp</source>
        <translation>Abrazadera de manguera</translation>
    </message>
    <message>
        <source>Hose clip</source>
        <translation>Abrazadera de soporte</translation>
    </message>
    <message>
        <source>Hose insulation</source>
        <translation>Aislamiento de manguera</translation>
    </message>
    <message>
        <source>Thread sealant</source>
        <translation>Sellador de roscas</translation>
    </message>
    <message>
        <source>antifreeze</source>
        <translation>anticongelante</translation>
    </message>
    <message>
        <source>Antifreeze concentrate</source>
        <translation>Anticongelante concentrado</translation>
    </message>
    <message>
        <source>Distilled water</source>
        <translation>Agua destilada</translation>
    </message>
    <message>
        <source>The start of {a} is on nothing: what it is pushed onto is not counted.</source>
        <translation>El inicio de {a} no está sobre nada: no se cuenta aquello en lo que se encaja.</translation>
    </message>
    <message>
        <source>The end of {a} is on nothing: what it is pushed onto is not counted.</source>
        <translation>El final de {a} no está sobre nada: no se cuenta aquello en lo que se encaja.</translation>
    </message>
    <message>
        <source>%1, inlet</source>
        <translation>%1, entrada</translation>
    </message>
    <message>
        <source>%1, outlet</source>
        <translation>%1, salida</translation>
    </message>
    <message>
        <source>size of the line not entered</source>
        <translation>falta la medida de la línea</translation>
    </message>
    <message>
        <source>thread not entered</source>
        <translation>falta la rosca</translation>
    </message>
    <message>
        <source>rated voltage not entered</source>
        <translation>falta la tensión nominal</translation>
    </message>
    <message>
        <source>power not entered</source>
        <translation>falta la potencia</translation>
    </message>
    <message>
        <source>power and rated voltage not entered</source>
        <translation>faltan la potencia y la tensión nominal</translation>
    </message>
    <message>
        <source>{0}, {1}, three phases</source>
        <translation>{0}, {1}, trifásico</translation>
    </message>
    <message>
        <source>bore of %1 not entered</source>
        <translation>falta el diámetro interior de %1</translation>
    </message>
    <message>
        <source>Chamber volume of {a} is not entered: taken from its drawn chamber.</source>
        <translation>Falta el volumen de la cámara de {a}: se toma de su cámara dibujada.</translation>
    </message>
    <message>
        <source>{a} glycol</source>
        <translation>glicol: {a}</translation>
    </message>
    <message>
        <source>kind of antifreeze not entered</source>
        <translation>falta el tipo de anticongelante</translation>
    </message>
    <message>
        <source>Brackets, bolts and washers as the heater&apos;s manual has them.</source>
        <translation>Soportes, tornillos y arandelas según el manual del calentador.</translation>
    </message>
    <message>
        <source>Not needed where adapter or nozzle has its own.</source>
        <translation>No hace falta si el adaptador o la boquilla lleva la suya.</translation>
    </message>
    <message>
        <source>One container, for {0} threads; fit for coolant.</source>
        <translation>Un envase, para {0} roscas; apto para refrigerante.</translation>
    </message>
    <message>
        <source>To come to {0} of antifreeze in {1}; drain {2} first.</source>
        <translation>Para llegar a {0} de anticongelante en {1}; vacíe antes {2}.</translation>
    </message>
    <message>
        <source>Fills the new hoses and heater only: top up what is lost in the work.</source>
        <translation>Llena solo las mangueras y el calentador nuevos: complete lo que se pierda en el trabajo.</translation>
    </message>
    <message>
        <source>share of antifreeze not entered</source>
        <translation>falta la proporción de anticongelante</translation>
    </message>
    <message>
        <source>bore not entered</source>
        <translation>falta el diámetro interior</translation>
    </message>
    <message>
        <source>bore {0}, wall {1}</source>
        <translation>diámetro interior {0}, pared {1}</translation>
    </message>
    <message>
        <source>hose&apos;s bore not entered</source>
        <translation>falta el diámetro interior de la manguera</translation>
    </message>
    <message>
        <source>Two on each hose end: common practice.</source>
        <translation>Dos en cada extremo de manguera: práctica habitual.</translation>
    </message>
    <message>
        <source>{0} to {1}</source>
        <translation>{0} a {1}</translation>
    </message>
    <message>
        <source>Of one piece with the hose; bought singly it also takes joiners and clamps.</source>
        <translation>De una pieza con la manguera; comprado aparte lleva además uniones y abrazaderas.</translation>
    </message>
    <message>
        <source>{a} wants one more than is drawn, by the spacing rule.</source>
        <translation>{a} pide una más de las dibujadas, según la regla de separación.</translation>
    </message>
    <message>
        <source>{a} wants {0} more than are drawn, by the spacing rule.</source>
        <translation>{a} pide {0} más de las dibujadas, según la regla de separación.</translation>
    </message>
    <message>
        <source>for {0}, {1} thick</source>
        <translation>para {0}, espesor {1}</translation>
    </message>
    <message>
        <source>no column named &quot;%1&quot;; fields have to be set apart by commas, not by semicolons</source>
        <translation>no hay columna llamada &quot;%1&quot;; los campos deben separarse con comas, no con punto y coma</translation>
    </message>
    <message>
        <source>no column named &quot;%1&quot;</source>
        <translation>no hay columna llamada &quot;%1&quot;</translation>
    </message>
    <message>
        <source>a second column named &quot;%1&quot;</source>
        <translation>una segunda columna llamada &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the price &quot;%1&quot; was not understood: %2</source>
        <translation>el precio &quot;%1&quot; no se entendió: %2</translation>
    </message>
    <message>
        <source>a price under nothing</source>
        <translation>un precio menor que cero</translation>
    </message>
    <message>
        <source>too large a price</source>
        <translation>un precio demasiado grande</translation>
    </message>
    <message>
        <source>no currency</source>
        <translation>sin moneda</translation>
    </message>
    <message>
        <source>the currency &quot;%1&quot; in a list of %2</source>
        <translation>la moneda &quot;%1&quot; en una lista de %2</translation>
    </message>
    <message>
        <source>an item without a key of 1 to 200 bytes</source>
        <translation>un artículo sin clave de 1 a 200 bytes</translation>
    </message>
    <message>
        <source>a second line for the item &quot;%1&quot;</source>
        <translation>una segunda línea para el artículo &quot;%1&quot;</translation>
    </message>
    <message>
        <source>a description of more than 500 bytes</source>
        <translation>una descripción de más de 500 bytes</translation>
    </message>
    <message>
        <source>the unit &quot;%1&quot; is none of %2</source>
        <translation>la unidad &quot;%1&quot; no es una de %2</translation>
    </message>
    <message>
        <source>an empty file</source>
        <translation>un archivo vacío</translation>
    </message>
    <message>
        <source>more than %1 prices</source>
        <translation>más de %1 precios</translation>
    </message>
    <message>
        <source>a list without a price</source>
        <translation>una lista sin ningún precio</translation>
    </message>
    <message>
        <source>The list is in %1, the estimate in %2.</source>
        <translation>La lista está en %1, el presupuesto en %2.</translation>
    </message>
    <message>
        <source>Amounts are entered with %1 decimals, and %2 has %3.</source>
        <translation>Los importes se introducen con %1 decimales, y %2 tiene %3.</translation>
    </message>
    <message>
        <source>the ambient temperature is not entered</source>
        <translation>falta la temperatura ambiente</translation>
    </message>
    <message>
        <source>There is nothing to sample.</source>
        <translation>No hay nada que muestrear.</translation>
    </message>
    <message>
        <source>Bands take 20 to 100000 samples.</source>
        <translation>Las bandas requieren de 20 a 100000 muestras.</translation>
    </message>
    <message>
        <source>The range of {a} does not hold together.</source>
        <translation>El intervalo de {a} no es coherente.</translation>
    </message>
    <message>
        <source>The bands were stopped.</source>
        <translation>Se detuvieron las bandas.</translation>
    </message>
    <message>
        <source>circulates on {2} of head, into the heater at {0} and out at {1}</source>
        <translation>circula con {2} de altura de presión, entra en el calentador a {0} y sale a {1}</translation>
    </message>
    <message>
        <source>circulates in reverse on {2} of head, into the heater at {0} and out at {1}</source>
        <translation>circula al revés con {2} de altura de presión, entra en el calentador a {0} y sale a {1}</translation>
    </message>
    <message>
        <source>the balance was not found within {a} Pa</source>
        <translation>no se halló el equilibrio con precisión de {a} Pa</translation>
    </message>
    <message>
        <source>air takes {0} of head, and the loop can raise {1} at most</source>
        <translation>el aire resta {0} de altura de presión, y el circuito puede dar {1} como máximo</translation>
    </message>
    <message>
        <source>nothing drives it: the warm column is not above the cold one ({0} of head)</source>
        <translation>nada lo impulsa: la columna caliente no está por encima de la fría ({0} de altura de presión)</translation>
    </message>
    <message>
        <source>the coolant would be under {0}, where it freezes</source>
        <translation>el refrigerante estaría por debajo de {0}, donde se congela</translation>
    </message>
    <message>
        <source>the coolant would reach {0} before enough of it flows</source>
        <translation>el refrigerante llegaría a {0} antes de fluir lo suficiente</translation>
    </message>
    <message>
        <source>a closed valve withstands the {0} of head that drives</source>
        <translation>una válvula cerrada resiste los {0} de altura de presión que impulsan</translation>
    </message>
    <message>
        <source>the resistance is that of a loop of {a} elements</source>
        <translation>la resistencia es la de un circuito de {a} elementos</translation>
    </message>
    <message>
        <source>boiling in degC must be over the freezing point, not {a}</source>
        <translation>la ebullición en degC debe superar el punto de congelación, no ser {a}</translation>
    </message>
    <message>
        <source>the coolant has no range of temperature with properties over 0</source>
        <translation>el refrigerante no tiene intervalo de temperatura con propiedades mayores que 0</translation>
    </message>
    <message>
        <source>element {a}: {b}, not {c}</source>
        <translation>elemento {a}: {b}, no {c}</translation>
    </message>
    <message>
        <source>length in metres must be 0 or more</source>
        <translation>la longitud en metros debe ser 0 o más</translation>
    </message>
    <message>
        <source>rise in metres must be a number</source>
        <translation>la subida en metros debe ser un número</translation>
    </message>
    <message>
        <source>bore in metres must be over 0</source>
        <translation>el diámetro interior en metros debe ser mayor que 0</translation>
    </message>
    <message>
        <source>area in square metres must be over 0, or 0 for a round bore</source>
        <translation>el área en metros cuadrados debe ser mayor que 0, o 0 para un paso redondo</translation>
    </message>
    <message>
        <source>power in watts must be a number</source>
        <translation>la potencia en vatios debe ser un número</translation>
    </message>
    <message>
        <source>heat exchange in W/K must be 0 or more</source>
        <translation>el intercambio de calor en W/K debe ser 0 o más</translation>
    </message>
    <message>
        <source>temperature of surroundings in degC must be over -273.15</source>
        <translation>la temperatura del entorno en degC debe ser mayor que -273,15</translation>
    </message>
    <message>
        <source>share at outlet temperature must be from 0 to 1</source>
        <translation>la proporción a la temperatura de salida debe estar entre 0 y 1</translation>
    </message>
    <message>
        <source>pocket&apos;s head in metres must be 0 or more</source>
        <translation>la altura de presión de la bolsa en metros debe ser 0 o más</translation>
    </message>
    <message>
        <source>a loss&apos;s bore in metres must be over 0</source>
        <translation>el diámetro interior de una pérdida en metros debe ser mayor que 0</translation>
    </message>
    <message>
        <source>the loop has no elements</source>
        <translation>el circuito no tiene elementos</translation>
    </message>
    <message>
        <source>the loop has too many elements: {a}</source>
        <translation>el circuito tiene demasiados elementos: {a}</translation>
    </message>
    <message>
        <source>the loop does not close: its rises add up to {a} m</source>
        <translation>el circuito no cierra: sus subidas suman {a} m</translation>
    </message>
    <message>
        <source>no element of the loop resists flow</source>
        <translation>ningún elemento del circuito opone resistencia al caudal</translation>
    </message>
    <message>
        <source>start temperature in degC must be over -273.15, not {a}</source>
        <translation>la temperatura inicial en degC debe ser mayor que -273,15, no {a}</translation>
    </message>
    <message>
        <source>no element of the loop takes heat out, and {a} W are put in</source>
        <translation>ningún elemento del circuito extrae calor, y entran {a} W</translation>
    </message>
    <message>
        <source>The voltage has to be over 0.</source>
        <translation>La tensión debe ser mayor que 0.</translation>
    </message>
    <message>
        <source>Nothing is computed over {0}: that is no low voltage.</source>
        <translation>No se calcula nada por encima de {0}: eso no es baja tensión.</translation>
    </message>
    <message>
        <source>A supply has 1 or 3 phases.</source>
        <translation>Un suministro tiene 1 o 3 fases.</translation>
    </message>
    <message>
        <source>The power has to be over 0.</source>
        <translation>La potencia debe ser mayor que 0.</translation>
    </message>
    <message>
        <source>Nothing is computed over {0}.</source>
        <translation>No se calcula nada por encima de {0}.</translation>
    </message>
    <message>
        <source>No conductor is that cold or hot.</source>
        <translation>Ningún conductor está tan frío o caliente.</translation>
    </message>
    <message>
        <source>{a} is not in the tables in aluminium.</source>
        <translation>{a} no está en las tablas en aluminio.</translation>
    </message>
    <message>
        <source>Current and resistance have to be over 0.</source>
        <translation>La corriente y la resistencia deben ser mayores que 0.</translation>
    </message>
    <message>
        <source>The run&apos;s length has to be over 0 and at most {0}.</source>
        <translation>La longitud de la línea debe ser mayor que 0 y como máximo {0}.</translation>
    </message>
    <message>
        <source>The conductor is far too small for this run: more than a third of the voltage would be lost.</source>
        <translation>El conductor es muy pequeño para esta línea: se perdería más de un tercio de la tensión.</translation>
    </message>
    <message>
        <source>Power and hours must not be negative.</source>
        <translation>La potencia y las horas no deben ser negativas.</translation>
    </message>
    <message>
        <source>a loss coefficient must be 0 or more</source>
        <translation>un coeficiente de pérdida debe ser 0 o más</translation>
    </message>
    <message>
        <source>a coefficient&apos;s exponent of the Reynolds number must be from 0, under 2</source>
        <translation>el exponente del número de Reynolds de un coeficiente debe ser desde 0 hasta menos de 2</translation>
    </message>
    <message>
        <source>a length must be 0 or more</source>
        <translation>una longitud debe ser 0 o más</translation>
    </message>
    <message>
        <source>roughness must be 0 or more and less than the bore</source>
        <translation>la rugosidad debe ser 0 o más y menor que el diámetro interior</translation>
    </message>
    <message>
        <source>a bend&apos;s angle must be 0 or more</source>
        <translation>el ángulo de una curva debe ser 0 o más</translation>
    </message>
    <message>
        <source>a bend&apos;s centre-line radius must be at least half the bore</source>
        <translation>el radio al eje de una curva debe ser al menos la mitad del diámetro interior</translation>
    </message>
    <message>
        <source>a hose end&apos;s own bore must be over 0 and at most the hose&apos;s</source>
        <translation>el diámetro interior propio de una espiga debe ser mayor que 0 y como máximo el de la manguera</translation>
    </message>
    <message>
        <source>a bore must be over 0</source>
        <translation>un diámetro interior debe ser mayor que 0</translation>
    </message>
    <message>
        <source>an area must be over 0</source>
        <translation>un área debe ser mayor que 0</translation>
    </message>
    <message>
        <source>a factor must be over 0</source>
        <translation>un factor debe ser mayor que 0</translation>
    </message>
    <message>
        <source>The coolant&apos;s properties are not known over any range.</source>
        <translation>Las propiedades del refrigerante no se conocen en ningún intervalo.</translation>
    </message>
    <message>
        <source>At {0} the coolant is slush: it freezes at {1}. Nothing circulates.</source>
        <translation>A {0} el refrigerante es granizado: se congela a {1}. Nada circula.</translation>
    </message>
    <message>
        <source>The heater&apos;s rated power has to be over 0.</source>
        <translation>La potencia nominal del calentador debe ser mayor que 0.</translation>
    </message>
    <message>
        <source>The heater&apos;s rated voltage has to be over 0.</source>
        <translation>La tensión nominal del calentador debe ser mayor que 0.</translation>
    </message>
    <message>
        <source>The supply voltage must not be negative.</source>
        <translation>La tensión de suministro no debe ser negativa.</translation>
    </message>
    <message>
        <source>The heater&apos;s chamber has to hold coolant.</source>
        <translation>La cámara del calentador debe contener refrigerante.</translation>
    </message>
    <message>
        <source>The heater&apos;s own heat capacity must not be negative.</source>
        <translation>La capacidad térmica propia del calentador no debe ser negativa.</translation>
    </message>
    <message>
        <source>The chamber&apos;s own convection has to be over 0.</source>
        <translation>La convección propia de la cámara debe ser mayor que 0.</translation>
    </message>
    <message>
        <source>The thermostat has to switch on at a lower temperature than off.</source>
        <translation>El termostato debe encender a una temperatura menor que la de apagado.</translation>
    </message>
    <message>
        <source>The thermostat&apos;s sensing fraction has to be from 0 to 1.</source>
        <translation>La fracción que detecta el termostato debe estar entre 0 y 1.</translation>
    </message>
    <message>
        <source>The thermostat&apos;s lag has to be over 0.</source>
        <translation>El retardo del termostato debe ser mayor que 0.</translation>
    </message>
    <message>
        <source>The cut-out&apos;s trip temperature is not a number.</source>
        <translation>La temperatura de disparo del limitador no es un número.</translation>
    </message>
    <message>
        <source>The cut-out has to reset at a lower temperature than it trips.</source>
        <translation>El limitador debe rearmarse a una temperatura menor que la de disparo.</translation>
    </message>
    <message>
        <source>The element&apos;s diameter and flux have to be over 0.</source>
        <translation>El diámetro y el flujo de la resistencia deben ser mayores que 0.</translation>
    </message>
    <message>
        <source>Chamber, hoses and jacket each need an element.</source>
        <translation>Cámara, mangueras y camisa necesitan cada una un elemento.</translation>
    </message>
    <message>
        <source>Return and supply hose have to have a length.</source>
        <translation>Las mangueras de retorno y alimentación deben tener longitud.</translation>
    </message>
    <message>
        <source>A hose&apos;s own heat capacity must not be negative.</source>
        <translation>La capacidad térmica propia de una manguera no debe ser negativa.</translation>
    </message>
    <message>
        <source>The share of temperature at a hose&apos;s surface has to be from 0 to 1.</source>
        <translation>La proporción de temperatura en la superficie de una manguera debe estar entre 0 y 1.</translation>
    </message>
    <message>
        <source>The factor on pressure losses has to be over 0.</source>
        <translation>El factor de las pérdidas de presión debe ser mayor que 0.</translation>
    </message>
    <message>
        <source>The share of the block that a loop sweeps has to be from 0.02 to 0.98.</source>
        <translation>La proporción del bloque que barre un circuito debe estar entre 0,02 y 0,98.</translation>
    </message>
    <message>
        <source>The duration has to be over 0.</source>
        <translation>La duración debe ser mayor que 0.</translation>
    </message>
    <message>
        <source>Power has to come at 0 or later, and to go after it came.</source>
        <translation>La electricidad debe llegar en 0 o después, e irse tras haber llegado.</translation>
    </message>
    <message>
        <source>The relative tolerance has to be from 1e-12 to 1e-2.</source>
        <translation>La tolerancia relativa debe estar entre 1e-12 y 1e-2.</translation>
    </message>
    <message>
        <source>The absolute tolerance has to be from 1e-12 to 1 K.</source>
        <translation>La tolerancia absoluta debe estar entre 1e-12 y 1 K.</translation>
    </message>
    <message>
        <source>The tolerance of switching times has to be from 1e-9 to 10 s.</source>
        <translation>La tolerancia de los tiempos de conmutación debe estar entre 1e-9 y 10 s.</translation>
    </message>
    <message>
        <source>The time between samples must not be negative.</source>
        <translation>El tiempo entre muestras no debe ser negativo.</translation>
    </message>
    <message>
        <source>Hoses and jacket take 2 to 20 cells.</source>
        <translation>Mangueras y camisa requieren de 2 a 20 celdas.</translation>
    </message>
    <message>
        <source>There is no heater.</source>
        <translation>No hay calentador.</translation>
    </message>
    <message>
        <source>The block&apos;s heat capacity has to be over 0.</source>
        <translation>La capacidad térmica del bloque debe ser mayor que 0.</translation>
    </message>
    <message>
        <source>The engine has to hold coolant.</source>
        <translation>El motor debe contener refrigerante.</translation>
    </message>
    <message>
        <source>The block&apos;s heat loss must not be negative.</source>
        <translation>La pérdida de calor del bloque no debe ser negativa.</translation>
    </message>
    <message>
        <source>Conduction within the block must not be negative.</source>
        <translation>La conducción dentro del bloque no debe ser negativa.</translation>
    </message>
    <message>
        <source>The loops together sweep more than 0.98 of the block.</source>
        <translation>Los circuitos juntos barren más de 0,98 del bloque.</translation>
    </message>
    <message>
        <source>Temperatures have to be from -100 to 200 degC.</source>
        <translation>Las temperaturas deben estar entre -100 y 200 degC.</translation>
    </message>
    <message>
        <source>The start is at the boiling point already.</source>
        <translation>El inicio ya está en el punto de ebullición.</translation>
    </message>
    <message>
        <source>A warm return has to be over the start.</source>
        <translation>Un retorno caliente debe superar el inicio.</translation>
    </message>
    <message>
        <source>After {0} s the heater&apos;s chamber boils, at {1}; the heater was stopped.</source>
        <translation>Tras {0} s hierve la cámara del calentador, a {1}; el calentador se detuvo.</translation>
    </message>
    <message>
        <source>The engine is at {0} after {1} s.</source>
        <translation>El motor está a {0} tras {1} s.</translation>
    </message>
    <message>
        <source>The warm-up was given up: it took more steps than allowed.</source>
        <translation>Se abandonó el calentamiento: requirió más pasos de los permitidos.</translation>
    </message>
    <message>
        <source>The warm-up could not be followed past {0} s.</source>
        <translation>No se pudo seguir el calentamiento más allá de {0} s.</translation>
    </message>
    <message>
        <source>After {0} s coolant is under its freezing point, {1}.</source>
        <translation>Tras {0} s el refrigerante está por debajo de su punto de congelación, {1}.</translation>
    </message>
    <message>
        <source>No bore is left: of those in stock, {0} fell to &quot;{a}&quot;.</source>
        <translation>No queda ningún diámetro: de los comerciales, {0} fallaron en &quot;{a}&quot;.</translation>
    </message>
    <message>
        <source>No pair of ports is left: {0} fell to &quot;{a}&quot;.</source>
        <translation>No queda ningún par de tomas: {0} fallaron en &quot;{a}&quot;.</translation>
    </message>
    <message>
        <source>No place for the heater is left: {0} fell to &quot;{a}&quot; ({b}).</source>
        <translation>No queda lugar para el calentador: {0} fallaron en &quot;{a}&quot; ({b}).</translation>
    </message>
    <message>
        <source>No place for the heater is left: {0} fell to &quot;{a}&quot;.</source>
        <translation>No queda lugar para el calentador: {0} fallaron en &quot;{a}&quot;.</translation>
    </message>
    <message>
        <source>No way for the supply hose is left: {0} of those tried fell to &quot;{a}&quot; ({b}).</source>
        <translation>No queda camino para la manguera de alimentación: {0} de los probados fallaron en &quot;{a}&quot; ({b}).</translation>
    </message>
    <message>
        <source>No way for the supply hose is left: {0} of those tried fell to &quot;{a}&quot;.</source>
        <translation>No queda camino para la manguera de alimentación: {0} de los probados fallaron en &quot;{a}&quot;.</translation>
    </message>
    <message>
        <source>No way for the return hose is left: {0} of those tried fell to &quot;{a}&quot; ({b}).</source>
        <translation>No queda camino para la manguera de retorno: {0} de los probados fallaron en &quot;{a}&quot; ({b}).</translation>
    </message>
    <message>
        <source>No way for the return hose is left: {0} of those tried fell to &quot;{a}&quot;.</source>
        <translation>No queda camino para la manguera de retorno: {0} de los probados fallaron en &quot;{a}&quot;.</translation>
    </message>
    <message>
        <source>Every hose is sound by itself, but {0} of the loops they make fell to &quot;{a}&quot;.</source>
        <translation>Cada manguera es correcta por sí sola, pero {0} de los circuitos que forman fallaron en &quot;{a}&quot;.</translation>
    </message>
    <message>
        <source>Drawn soundly, but filled, warmed up and tilted {0} of the loops fell to &quot;{a}&quot;.</source>
        <translation>Dibujados correctamente, pero llenados, calentados e inclinados, {0} de los circuitos fallaron en &quot;{a}&quot;.</translation>
    </message>
    <message>
        <source>the coolant has to be mixed anew</source>
        <translation>hay que mezclar de nuevo el refrigerante</translation>
    </message>
    <message>
        <source>what is in the engine has to be found out</source>
        <translation>hay que averiguar qué hay en el motor</translation>
    </message>
    <message>
        <source>the tank has to be larger or filled higher</source>
        <translation>el vaso debe ser mayor o llenarse más</translation>
    </message>
    <message>
        <source>it takes another kind of heater</source>
        <translation>hace falta otro tipo de calentador</translation>
    </message>
    <message>
        <source>it takes a larger heater or less wind, or is not to be had</source>
        <translation>hace falta un calentador mayor o menos viento, o no es alcanzable</translation>
    </message>
    <message>
        <source>with the bends next to it.</source>
        <translation>con las curvas vecinas.</translation>
    </message>
    <message>
        <source>and lay its hoses anew.</source>
        <translation>y tienda de nuevo sus mangueras.</translation>
    </message>
    <message>
        <source>Set {a} upright</source>
        <translation>Ponga {a} en vertical</translation>
    </message>
    <message>
        <source>Lay {a} level, its top to the right</source>
        <translation>Ponga {a} en horizontal, con su parte superior a la derecha</translation>
    </message>
    <message>
        <source>Lay {a} level, its top to the left</source>
        <translation>Ponga {a} en horizontal, con su parte superior a la izquierda</translation>
    </message>
    <message>
        <source>Lower {a} by {0}</source>
        <translation>Baje {a} {0}</translation>
    </message>
    <message>
        <source>Move {a} to the left by {0}</source>
        <translation>Mueva {a} {0} a la izquierda</translation>
    </message>
    <message>
        <source>Move {a} to the right by {0}</source>
        <translation>Mueva {a} {0} a la derecha</translation>
    </message>
    <message>
        <source>Move {a} towards you by {0}</source>
        <translation>Mueva {a} {0} hacia usted</translation>
    </message>
    <message>
        <source>Move {a} away from you by {0}</source>
        <translation>Mueva {a} {0} alejándolo de usted</translation>
    </message>
    <message>
        <source>Raise the filler or surge tank by {0}, and fill to match.</source>
        <translation>Eleve la boca de llenado o el vaso de expansión {0}, y llene en consecuencia.</translation>
    </message>
    <message>
        <source>Mount {a} to the frame.</source>
        <translation>Monte {a} en el bastidor.</translation>
    </message>
    <message>
        <source>Move {a} towards {b} by {0}</source>
        <translation>Mueva {a} {0} hacia {b}</translation>
    </message>
    <message>
        <source>Raise {a} by {0}</source>
        <translation>Eleve {a} {0}</translation>
    </message>
    <message>
        <source>Lay both hoses of {a} anew, straight out of their ends.</source>
        <translation>Tienda de nuevo ambas mangueras de {a}, rectas desde sus extremos.</translation>
    </message>
    <message>
        <source>Lower this bend of {a} by {0}.</source>
        <translation>Baje {0} esta curva de {a}.</translation>
    </message>
    <message>
        <source>Raise this bend of {a} by {0}.</source>
        <translation>Eleve {0} esta curva de {a}.</translation>
    </message>
    <message>
        <source>Lower {1} bends of {a}, the highest by {0}.</source>
        <translation>Baje {1} curvas de {a}, la más alta {0}.</translation>
    </message>
    <message>
        <source>Raise {1} bends of {a}, the lowest by {0}.</source>
        <translation>Eleve {1} curvas de {a}, la más baja {0}.</translation>
    </message>
    <message>
        <source>Lead {a} so that it rises all the way: move {1} of its bends, the farthest by {0}.</source>
        <translation>Lleve {a} en subida todo el tiempo: mueva {1} de sus curvas, la más alejada {0}.</translation>
    </message>
    <message>
        <source>Lead {a} so that it falls all the way: move {1} of its bends, the farthest by {0}.</source>
        <translation>Lleve {a} en bajada todo el tiempo: mueva {1} de sus curvas, la más alejada {0}.</translation>
    </message>
    <message>
        <source>Leave out bend {0} of {a}.</source>
        <translation>Suprima la curva {0} de {a}.</translation>
    </message>
    <message>
        <source>Move this bend of {a} up by {0}.</source>
        <translation>Mueva esta curva de {a} {0} hacia arriba.</translation>
    </message>
    <message>
        <source>Move this bend of {a} down by {0}.</source>
        <translation>Mueva esta curva de {a} {0} hacia abajo.</translation>
    </message>
    <message>
        <source>Move this bend of {a} to the right by {0}.</source>
        <translation>Mueva esta curva de {a} {0} a la derecha.</translation>
    </message>
    <message>
        <source>Move this bend of {a} to the left by {0}.</source>
        <translation>Mueva esta curva de {a} {0} a la izquierda.</translation>
    </message>
    <message>
        <source>Move this bend of {a} away from you by {0}.</source>
        <translation>Aleje {0} de usted esta curva de {a}.</translation>
    </message>
    <message>
        <source>Move this bend of {a} towards you by {0}.</source>
        <translation>Acerque {0} a usted esta curva de {a}.</translation>
    </message>
    <message>
        <source>Open this bend of {a} to a radius of {0}.</source>
        <translation>Abra esta curva de {a} a un radio de {0}.</translation>
    </message>
    <message>
        <source>Bend {a} tighter here, to a radius of {0}.</source>
        <translation>Cierre aquí la curva de {a} a un radio de {0}.</translation>
    </message>
    <message>
        <source>Use a moulded elbow for this bend of {a}.</source>
        <translation>Use un codo moldeado para esta curva de {a}.</translation>
    </message>
    <message>
        <source>Lead {a} straight out of its end for {0} before it bends.</source>
        <translation>Haga salir {a} recta de su extremo {0} antes de curvarla.</translation>
    </message>
    <message>
        <source>Lead {a} round a bend {0} to the side.</source>
        <translation>Lleve {a} por una curva, {0} al lado.</translation>
    </message>
    <message>
        <source>Lay {a} anew: straight out of both ends, with {0} bends.</source>
        <translation>Tienda {a} de nuevo: recta desde ambos extremos, con {0} curvas.</translation>
    </message>
    <message>
        <source>Turn the elbow on {a} so that it leads down by {0}, and lay {b} anew from there.</source>
        <translation>Gire el codo de {a} para que baje {0}, y tienda {b} de nuevo desde allí.</translation>
    </message>
    <message>
        <source>Add an isolation valve to {a} {0} from {b}.</source>
        <translation>Añada una válvula de aislamiento a {a}, a {0} de {b}.</translation>
    </message>
    <message>
        <source>Let the heater cool, then open this valve of {a}.</source>
        <translation>Deje enfriar el calentador y abra después esta válvula de {a}.</translation>
    </message>
    <message>
        <source>Take the reducer out of {a}.</source>
        <translation>Quite la reducción de {a}.</translation>
    </message>
    <message>
        <source>Take the check valve out of {a}.</source>
        <translation>Quite la válvula antirretorno de {a}.</translation>
    </message>
    <message>
        <source>Add a clip to {a} at {0} from where it starts.</source>
        <translation>Añada una abrazadera de soporte a {a}, a {0} de su inicio.</translation>
    </message>
    <message>
        <source>Add {1} clips to {a}, the first at {0} from where it starts.</source>
        <translation>Añada {1} abrazaderas de soporte a {a}, la primera a {0} de su inicio.</translation>
    </message>
    <message>
        <source>Use hose of {0} bore for {a}, with hose ends and valves to match</source>
        <translation>Use manguera de {0} de diámetro interior para {a}, con espigas y válvulas a juego</translation>
    </message>
    <message>
        <source>Use hose of {0} bore on both sides, with hose ends and valves to match</source>
        <translation>Use manguera de {0} de diámetro interior en ambos lados, con espigas y válvulas a juego</translation>
    </message>
    <message>
        <source>and lay it anew with wider bends.</source>
        <translation>y tiéndala de nuevo con curvas más amplias.</translation>
    </message>
    <message>
        <source>Use a hose end with a bore of {0} on {a}.</source>
        <translation>Use una espiga con un diámetro interior de {0} en {a}.</translation>
    </message>
    <message>
        <source>Use a part with a bore of {0} in {a} here.</source>
        <translation>Use aquí una pieza con un diámetro interior de {0} en {a}.</translation>
    </message>
    <message>
        <source>Take {a} instead of {b}, and lay {c} anew from there.</source>
        <translation>Use {a} en lugar de {b}, y tienda {c} de nuevo desde allí.</translation>
    </message>
    <message>
        <source>Take {a} instead of {b}.</source>
        <translation>Use {a} en lugar de {b}.</translation>
    </message>
    <message>
        <source>Leave {a} spare: no hose is on it.</source>
        <translation>Deje {a} sin uso: no lleva ninguna manguera.</translation>
    </message>
    <message>
        <source>Connect {a} to {b}, and lay it anew.</source>
        <translation>Conecte {a} a {b}, y tiéndala de nuevo.</translation>
    </message>
    <message>
        <source>Connect {a} to {b}.</source>
        <translation>Conecte {a} a {b}.</translation>
    </message>
    <message>
        <source>Lay a supply hose from {a} to {b}.</source>
        <translation>Tienda una manguera de alimentación de {a} a {b}.</translation>
    </message>
    <message>
        <source>Lay a return hose from {b} to {a}.</source>
        <translation>Tienda una manguera de retorno de {b} a {a}.</translation>
    </message>
    <message>
        <source>Lay a supply hose from {a} and a return hose to {b}, both on {c}.</source>
        <translation>Tienda una manguera de alimentación desde {a} y una de retorno hasta {b}, ambas en {c}.</translation>
    </message>
    <message>
        <source>Connect {a} to {b} and {c}, and lay it anew.</source>
        <translation>Conecte {a} a {b} y {c}, y tiéndala de nuevo.</translation>
    </message>
    <message>
        <source>ground</source>
        <translation>suelo</translation>
    </message>
    <message>
        <source>Ground: {0} more than the least clearance.</source>
        <translation>Suelo: {0} más que la distancia mínima.</translation>
    </message>
    <message>
        <source>hot or moving things</source>
        <translation>cosas calientes o en movimiento</translation>
    </message>
    <message>
        <source>Hot or moving things: {0} more than the least clearance.</source>
        <translation>Cosas calientes o en movimiento: {0} más que la distancia mínima.</translation>
    </message>
    <message>
        <source>span between clips</source>
        <translation>vano entre soportes</translation>
    </message>
    <message>
        <source>Clips: the longest span could be {0} longer.</source>
        <translation>Soportes: el vano más largo podría tener {0} más.</translation>
    </message>
    <message>
        <source>slack between frame and engine</source>
        <translation>holgura entre bastidor y motor</translation>
    </message>
    <message>
        <source>Slack between frame and engine: {0} of its length more than the least.</source>
        <translation>Holgura entre bastidor y motor: {0} de su longitud más que el mínimo.</translation>
    </message>
    <message>
        <source>heater under the jacket</source>
        <translation>calentador bajo la camisa</translation>
    </message>
    <message>
        <source>Heater under the jacket: {0} lower than it has to be.</source>
        <translation>Calentador bajo la camisa: {0} más bajo de lo necesario.</translation>
    </message>
    <message>
        <source>Coolant level: {0} over the highest point.</source>
        <translation>Nivel de refrigerante: {0} por encima del punto más alto.</translation>
    </message>
    <message>
        <source>fall of the supply hose</source>
        <translation>bajada de la manguera de alimentación</translation>
    </message>
    <message>
        <source>Supply hose: {0} more fall than it needs.</source>
        <translation>Manguera de alimentación: {0} más de bajada de la necesaria.</translation>
    </message>
    <message>
        <source>Move {a} %1</source>
        <translation>Mueva {a} %1</translation>
    </message>
    <message>
        <source>%1 to the right</source>
        <translation>%1 a la derecha</translation>
    </message>
    <message>
        <source>%1 to the left</source>
        <translation>%1 a la izquierda</translation>
    </message>
    <message>
        <source>%1 away from you</source>
        <translation>%1 alejándose de usted</translation>
    </message>
    <message>
        <source>%1 towards you</source>
        <translation>%1 hacia usted</translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation>%1 hacia arriba</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>%1 hacia abajo</translation>
    </message>
    <message>
        <source>Take {a} for the supply instead of {b}.</source>
        <translation>Use {a} para la alimentación en lugar de {b}.</translation>
    </message>
    <message>
        <source>Take {a} for the return instead of {b}.</source>
        <translation>Use {a} para el retorno en lugar de {b}.</translation>
    </message>
    <message>
        <source>Turn the elbow on {a} so that it leads down by {0}.</source>
        <translation>Gire el codo de {a} para que baje {0}.</translation>
    </message>
    <message>
        <source>Use hose of {0} bore, with hose ends and valves to match.</source>
        <translation>Use manguera de {0} de diámetro interior, con espigas y válvulas a juego.</translation>
    </message>
    <message>
        <source>{0} of hose of {1} bore, {2}.</source>
        <translation>{0} de manguera de {1} de diámetro interior, {2}.</translation>
    </message>
    <message>
        <source>{0} of hose of {1} bore; its flow is not computed.</source>
        <translation>{0} de manguera de {1} de diámetro interior; su caudal no está calculado.</translation>
    </message>
    <message>
        <source>%1 Its hoses may sag %2 before they hold air or coolant.</source>
        <translation>%1 Sus mangueras pueden combarse %2 antes de retener aire o refrigerante.</translation>
    </message>
    <message>
        <source>%1 Its hoses may sag more than %2.</source>
        <translation>%1 Sus mangueras pueden combarse más de %2.</translation>
    </message>
    <message>
        <source>{0} to spare.</source>
        <translation>{0} de margen.</translation>
    </message>
    <message>
        <source>{0} left: sag of {a}</source>
        <translation>{0} restantes: comba de {a}</translation>
    </message>
    <message>
        <source>{0} left: {a}</source>
        <translation>{0} restantes: {a}</translation>
    </message>
    <message>
        <source>Not sound on every grade that is judged.</source>
        <translation>No es correcto en todas las pendientes evaluadas.</translation>
    </message>
    <message>
        <source>Not judged, &quot;{a}&quot;: {b}.</source>
        <translation>Sin evaluar, &quot;{a}&quot;: {b}.</translation>
    </message>
    <message>
        <source>Slack: every hose goes round a bend of {0} or more.</source>
        <translation>Holgura: cada manguera pasa por una curva de {0} o más.</translation>
    </message>
    <message>
        <source>Turn {a} by {0} about its upright axis.</source>
        <translation>Gire {a} {0} sobre su eje vertical.</translation>
    </message>
    <message>
        <source>there is no heater to propose a layout for</source>
        <translation>no hay calentador para el que proponer una disposición</translation>
    </message>
    <message>
        <source>the space for the heater is no box</source>
        <translation>el espacio para el calentador no es un recuadro</translation>
    </message>
    <message>
        <source>a supply port and a return port are not entered</source>
        <translation>faltan una toma de alimentación y una de retorno</translation>
    </message>
    <message>
        <source>a supply port and a return port that no other hose is on are not entered</source>
        <translation>faltan una toma de alimentación y una de retorno sin otra manguera</translation>
    </message>
    <message>
        <source>The number is too large or too small.</source>
        <translation>El número es demasiado grande o demasiado pequeño.</translation>
    </message>
    <message>
        <source>“%1” is not a number.</source>
        <translation>“%1” no es un número.</translation>
    </message>
    <message>
        <source>%1 has a comma and a point: type thousands without a separator, as in 1234.5.</source>
        <translation>%1 tiene una coma y un punto: escriba los miles sin separador, como en 1234,5.</translation>
    </message>
    <message>
        <source>%1 has more than one decimal sign: type thousands without a separator.</source>
        <translation>%1 tiene más de un signo decimal: escriba los miles sin separador.</translation>
    </message>
    <message>
        <source>%1 could be %2 or %3.%4: type one of these, with a point for decimals and nothing between thousands.</source>
        <translation>%1 podría ser %2 o %3.%4: escriba uno de estos, con punto para los decimales y nada entre los miles.</translation>
    </message>
    <message>
        <source>A fraction cannot have 0 under the line.</source>
        <translation>Una fracción no puede tener 0 debajo de la línea.</translation>
    </message>
    <message>
        <source>There is no number at “%1”.</source>
        <translation>No hay ningún número en “%1”.</translation>
    </message>
    <message>
        <source>The fraction after a whole number must be less than 1, as in 1 1/8.</source>
        <translation>La fracción tras un número entero debe ser menor que 1, como en 1 1/8.</translation>
    </message>
    <message>
        <source>Nothing was typed.</source>
        <translation>No se escribió nada.</translation>
    </message>
    <message>
        <source>%1 Expected is %2.</source>
        <translation>%1 Se espera %2.</translation>
    </message>
    <message>
        <source>“%1” after the number was not understood.</source>
        <translation>“%1” después del número no se entendió.</translation>
    </message>
    <message>
        <source>“%1” is not a unit that fits here.</source>
        <translation>“%1” no es una unidad adecuada aquí.</translation>
    </message>
    <message>
        <source>That is colder than absolute zero.</source>
        <translation>Eso es más frío que el cero absoluto.</translation>
    </message>
    <message>
        <source>Without a % sign the number must lie between -1 and 1.</source>
        <translation>Sin signo % el número debe estar entre -1 y 1.</translation>
    </message>
    <message>
        <source>“%1” after the length was not understood.</source>
        <translation>“%1” después de la longitud no se entendió.</translation>
    </message>
    <message>
        <source>Only inches can follow feet.</source>
        <translation>Tras los pies solo pueden seguir pulgadas.</translation>
    </message>
    <message>
        <source>Inches after feet must be fewer than 12.</source>
        <translation>Las pulgadas tras los pies deben ser menos de 12.</translation>
    </message>
    <message>
        <source>level</source>
        <translation>a nivel</translation>
    </message>
    <message>
        <source>falls %1</source>
        <translation>baja %1</translation>
    </message>
    <message>
        <source>rises %1</source>
        <translation>sube %1</translation>
    </message>
    <message>
        <source>There is no number.</source>
        <translation>No hay ningún número.</translation>
    </message>
    <message>
        <source>The second number of a slope must be over 0, with nothing after it.</source>
        <translation>El segundo número de una inclinación debe ser mayor que 0, sin nada después.</translation>
    </message>
    <message>
        <source>The text is too long to be a quantity.</source>
        <translation>El texto es demasiado largo para ser una magnitud.</translation>
    </message>
    <message>
        <source>The number is too large.</source>
        <translation>El número es demasiado grande.</translation>
    </message>
    <message>
        <source>steep</source>
        <translation>empinado</translation>
    </message>
    <message>
        <source>falls steeply</source>
        <translation>baja empinado</translation>
    </message>
    <message>
        <source>1 in %1</source>
        <translation>1 en %1</translation>
    </message>
    <message>
        <source>falls 1 in %1</source>
        <translation>baja 1 en %1</translation>
    </message>
    <message>
        <source>1 bore</source>
        <translation>1 diámetro</translation>
    </message>
    <message>
        <source>a plain number such as 3 or 1.5</source>
        <translation>un número simple como 3 o 1,5</translation>
    </message>
    <message>
        <source>a length such as 19 mm, 1.9 cm, 3/4 in or 2 ft 3 1/2 in</source>
        <translation>una longitud como 19 mm, 1,9 cm, 3/4 in o 2 ft 3 1/2 in</translation>
    </message>
    <message>
        <source>a head such as 9 mm or 0.35 in</source>
        <translation>una altura de presión como 9 mm o 0,35 in</translation>
    </message>
    <message>
        <source>a volume such as 250 ml, 1.2 l, 8 fl oz or 2 qt</source>
        <translation>un volumen como 250 ml, 1,2 l, 8 fl oz o 2 qt</translation>
    </message>
    <message>
        <source>a volume such as 12 l, 500 ml, 2 qt or 3 gal</source>
        <translation>un volumen como 12 l, 500 ml, 2 qt o 3 gal</translation>
    </message>
    <message>
        <source>a mass such as 450 kg or 990 lb</source>
        <translation>una masa como 450 kg o 990 lb</translation>
    </message>
    <message>
        <source>a temperature such as 82 °C or 180 °F</source>
        <translation>una temperatura como 82 °C o 180 °F</translation>
    </message>
    <message>
        <source>a temperature difference such as 5 K or 9 °F</source>
        <translation>una diferencia de temperatura como 5 K o 9 °F</translation>
    </message>
    <message>
        <source>a power such as 1500 W or 1.5 kW</source>
        <translation>una potencia como 1500 W o 1,5 kW</translation>
    </message>
    <message>
        <source>an energy such as 12 kWh</source>
        <translation>una energía como 12 kWh</translation>
    </message>
    <message>
        <source>a voltage such as 120 V</source>
        <translation>una tensión como 120 V</translation>
    </message>
    <message>
        <source>a current such as 12.5 A</source>
        <translation>una corriente como 12,5 A</translation>
    </message>
    <message>
        <source>a pressure such as 103 kPa, 1 bar or 15 psi</source>
        <translation>una presión como 103 kPa, 1 bar o 15 psi</translation>
    </message>
    <message>
        <source>a pressure such as 88 Pa</source>
        <translation>una presión como 88 Pa</translation>
    </message>
    <message>
        <source>a speed such as 4 m/s, 15 km/h or 9 mph</source>
        <translation>una velocidad como 4 m/s, 15 km/h o 9 mph</translation>
    </message>
    <message>
        <source>a percentage such as 50 %</source>
        <translation>un porcentaje como 50 %</translation>
    </message>
    <message>
        <source>an angle such as 15 or 15°</source>
        <translation>un ángulo como 15 o 15°</translation>
    </message>
    <message>
        <source>an altitude such as 1200 m or 3900 ft</source>
        <translation>una altitud como 1200 m o 3900 ft</translation>
    </message>
    <message>
        <source>%1 bores</source>
        <translation>%1 diámetros</translation>
    </message>
    <message>
        <source>a number of bores such as 6</source>
        <translation>un número de diámetros como 6</translation>
    </message>
    <message>
        <source>a share such as 70 % or 0.7</source>
        <translation>una proporción como 70 % o 0,7</translation>
    </message>
    <message>
        <source>a slope such as 1 in 50, 1:50 or 2 %</source>
        <translation>una inclinación como 1 en 50, 1:50 o 2 %</translation>
    </message>
    <message>
        <source>a time such as 24 h, 90 min or 2 days</source>
        <translation>un tiempo como 24 h o 90 min</translation>
    </message>
    <message>
        <source>a flow such as 3.5 l/min or 0.9 gal/min</source>
        <translation>un caudal como 3,5 l/min o 0,9 gal/min</translation>
    </message>
    <message>
        <source>a resistance such as 0.35 Ω</source>
        <translation>una resistencia como 0,35 Ω</translation>
    </message>
    <message>
        <source>a resistance by length such as 4.61 Ω/km or 1.24 Ω/kft</source>
        <translation>una resistencia por longitud como 4,61 Ω/km o 1,24 Ω/kft</translation>
    </message>
    <message>
        <source>a section such as 2.5 mm²</source>
        <translation>una sección como 2,5 mm²</translation>
    </message>
    <message>
        <source>a share such as 40 ppm or 40 mg/l</source>
        <translation>una proporción como 40 ppm o 40 mg/l</translation>
    </message>
    <message>
        <source>a loss such as 18 W/K or 10 W/°F</source>
        <translation>una pérdida como 18 W/K o 10 W/°F</translation>
    </message>
    <message>
        <source>Loss of hose ends, times the formula</source>
        <translation>Pérdida de las espigas, por la fórmula</translation>
    </message>
    <message>
        <source>Hooper (1988); no measurement at such slow flow is known, +-15 % of flow comes from here</source>
        <translation>Hooper (1988); no se conoce medición con un caudal tan lento, de aquí viene +-15 % del caudal</translation>
    </message>
    <message>
        <source>Loss of valves, elbows and tees, times the formula</source>
        <translation>Pérdida de válvulas, codos y tes, por la fórmula</translation>
    </message>
    <message>
        <source>Hooper (1981), an extrapolation under 1 in: +-35 %</source>
        <translation>Hooper (1981), extrapolación por debajo de 1 in: +-35 %</translation>
    </message>
    <message>
        <source>viscosity</source>
        <translation>viscosidad</translation>
    </message>
    <message>
        <source>Viscosity of the coolant, times the formula</source>
        <translation>Viscosidad del refrigerante, por la fórmula</translation>
    </message>
    <message>
        <source>Melinder (2010); published tables differ by so much</source>
        <translation>Melinder (2010); las tablas publicadas difieren en esa medida</translation>
    </message>
    <message>
        <source>buoyancy</source>
        <translation>flotación</translation>
    </message>
    <message>
        <source>Fall of density with temperature, times the formula</source>
        <translation>Descenso de la densidad con la temperatura, por la fórmula</translation>
    </message>
    <message>
        <source>Melinder (2010); the ASHRAE tables (2001) give 10 to 20 % less</source>
        <translation>Melinder (2010); las tablas ASHRAE (2001) dan de 10 a 20 % menos</translation>
    </message>
    <message>
        <source>roughness</source>
        <translation>rugosidad</translation>
    </message>
    <message>
        <source>Roughness of hoses</source>
        <translation>Rugosidad de las mangueras</translation>
    </message>
    <message>
        <source>common practice: rubber and silicone count as smooth</source>
        <translation>práctica habitual: la goma y la silicona cuentan como lisas</translation>
    </message>
    <message>
        <source>Share of the chamber&apos;s height at its outlet&apos;s temperature</source>
        <translation>Proporción de la altura de la cámara a la temperatura de su salida</translation>
    </message>
    <message>
        <source>own choice: half drives about what an even rise does; none and all are the bounds</source>
        <translation>elección propia: la mitad impulsa casi lo que una subida uniforme; nada y todo son los extremos</translation>
    </message>
    <message>
        <source>Heat from coolant to block in the jacket, times the estimate</source>
        <translation>Calor del refrigerante al bloque en la camisa, por la estimación</translation>
    </message>
    <message>
        <source>own estimate: natural convection of a film of 100 W/m2 K over the jacket&apos;s surface</source>
        <translation>estimación propia: convección natural de una película de 100 W/m2 K sobre la superficie de la camisa</translation>
    </message>
    <message>
        <source>Share of the engine that the loop reaches, times the estimate</source>
        <translation>Proporción del motor que alcanza el circuito, por la estimación</translation>
    </message>
    <message>
        <source>own choice: distance between the ports over the engine&apos;s length</source>
        <translation>elección propia: distancia entre las tomas respecto a la longitud del motor</translation>
    </message>
    <message>
        <source>Conduction from the part reached to the rest</source>
        <translation>Conducción de la parte alcanzada al resto</translation>
    </message>
    <message>
        <source>own estimate: iron of 50 W/m K over 0.05 m2 and 0.3 m, and coolant moving by itself</source>
        <translation>estimación propia: hierro de 50 W/m K en 0,05 m2 y 0,3 m, y refrigerante que se mueve por sí mismo</translation>
    </message>
    <message>
        <source>Heat loss of the engine, times the formula</source>
        <translation>Pérdida de calor del motor, por la fórmula</translation>
    </message>
    <message>
        <source>McAdams (1954) over five of six faces of a box round the engine, common practice</source>
        <translation>McAdams (1954) en cinco de las seis caras de una caja alrededor del motor, práctica habitual</translation>
    </message>
    <message>
        <source>Share of the wind that reaches the engine</source>
        <translation>Proporción del viento que llega al motor</translation>
    </message>
    <message>
        <source>own estimate: an engine stands behind bodywork or in an enclosure</source>
        <translation>estimación propia: un motor está tras la carrocería o en un recinto</translation>
    </message>
    <message>
        <source>Share of the wind that reaches hoses</source>
        <translation>Proporción del viento que llega a las mangueras</translation>
    </message>
    <message>
        <source>Engine mass where it is not entered, per litre of displacement</source>
        <translation>Masa del motor cuando falta, por litro de cilindrada</translation>
    </message>
    <message>
        <source>from memory: iron diesel 75 to 110 kg</source>
        <translation>de memoria: diésel de hierro, de 75 a 110 kg</translation>
    </message>
    <message>
        <source>Specific heat of iron</source>
        <translation>Calor específico del hierro</translation>
    </message>
    <message>
        <source>from memory, textbooks: grey iron 460 to 540 J/kg K</source>
        <translation>de memoria, libros de texto: fundición gris, de 460 a 540 J/kg K</translation>
    </message>
    <message>
        <source>Specific heat of aluminium alloy</source>
        <translation>Calor específico de la aleación de aluminio</translation>
    </message>
    <message>
        <source>from memory, textbooks: 880 to 960 J/kg K</source>
        <translation>de memoria, libros de texto: de 880 a 960 J/kg K</translation>
    </message>
    <message>
        <source>Coolant in the engine where it is not entered, per litre of displacement</source>
        <translation>Refrigerante en el motor cuando falta, por litro de cilindrada</translation>
    </message>
    <message>
        <source>from memory: 1 to 2 litre in the engine alone</source>
        <translation>de memoria: de 1 a 2 litros solo en el motor</translation>
    </message>
    <message>
        <source>Heat held by chamber and element</source>
        <translation>Calor que retienen la cámara y la resistencia</translation>
    </message>
    <message>
        <source>own estimate: 1.5 kg of steel</source>
        <translation>estimación propia: 1,5 kg de acero</translation>
    </message>
    <message>
        <source>The chamber&apos;s own convection when little flows</source>
        <translation>Convección propia de la cámara con poco caudal</translation>
    </message>
    <message>
        <source>own estimate</source>
        <translation>estimación propia</translation>
    </message>
    <message>
        <source>Share of the chamber&apos;s heat that a thermostat at the inlet senses</source>
        <translation>Proporción del calor de la cámara que detecta un termostato en la entrada</translation>
    </message>
    <message>
        <source>own choice, by conduction through the body it sits in</source>
        <translation>elección propia, por conducción a través del cuerpo en que está</translation>
    </message>
    <message>
        <source>Lag of the thermostat</source>
        <translation>Retardo del termostato</translation>
    </message>
    <message>
        <source>own estimate: 20 to 60 s in a well</source>
        <translation>estimación propia: de 20 a 60 s en una vaina</translation>
    </message>
    <message>
        <source>Thermostat turns on, where it is not entered</source>
        <translation>El termostato enciende, cuando falta</translation>
    </message>
    <message>
        <source>common practice: 100 degF</source>
        <translation>práctica habitual: 100 degF</translation>
    </message>
    <message>
        <source>Thermostat turns off, where it is not entered</source>
        <translation>El termostato apaga, cuando falta</translation>
    </message>
    <message>
        <source>common practice: 120 degF</source>
        <translation>práctica habitual: 120 degF</translation>
    </message>
    <message>
        <source>Block temperature for which flow is shown on the drawing</source>
        <translation>Temperatura del bloque para la que el dibujo muestra el caudal</translation>
    </message>
    <message>
        <source>own choice: an engine that is kept warm</source>
        <translation>elección propia: un motor que se mantiene caliente</translation>
    </message>
    <message>
        <source>Head of the engine&apos;s pump between two ports of the block</source>
        <translation>Altura de presión de la bomba del motor entre dos tomas del bloque</translation>
    </message>
    <message>
        <source>own estimate, at a fast idle; pumps differ</source>
        <translation>estimación propia, a ralentí acelerado; las bombas difieren</translation>
    </message>
    <message>
        <source>Head of the engine&apos;s pump between its suction and a port of the block</source>
        <translation>Altura de presión de la bomba del motor entre su aspiración y una toma del bloque</translation>
    </message>
    <message>
        <source>own estimate, at a fast idle with the thermostat open; pumps differ</source>
        <translation>estimación propia, a ralentí acelerado con el termostato abierto; las bombas difieren</translation>
    </message>
    <message>
        <source>Coolant with the engine running</source>
        <translation>Refrigerante con el motor en marcha</translation>
    </message>
    <message>
        <source>common practice: a usual thermostat</source>
        <translation>práctica habitual: un termostato corriente</translation>
    </message>
    <message>
        <source>Coolant in the surge tank per metre of its height, times the engine&apos;s own</source>
        <translation>Refrigerante en el vaso de expansión por metro de su altura, respecto al del propio motor</translation>
    </message>
    <message>
        <source>own estimate: tanks are made to take what the coolant grows by</source>
        <translation>estimación propia: los vasos se hacen para admitir lo que se dilata el refrigerante</translation>
    </message>
    <message>
        <source>the loop of %1 is not closed</source>
        <translation>el circuito de %1 no está cerrado</translation>
    </message>
    <message>
        <source>%1 has no length</source>
        <translation>%1 no tiene longitud</translation>
    </message>
    <message>
        <source>the power of %1 is not entered</source>
        <translation>falta la potencia de %1</translation>
    </message>
    <message>
        <source>neither the engine&apos;s coolant volume nor its displacement is entered</source>
        <translation>faltan el volumen de refrigerante y la cilindrada del motor</translation>
    </message>
    <message>
        <source>properties of coolant are known only up to 60 % of antifreeze</source>
        <translation>las propiedades del refrigerante se conocen solo hasta un 60 % de anticongelante</translation>
    </message>
    <message>
        <source>the hump in %1</source>
        <translation>el lomo de %1</translation>
    </message>
    <message>
        <source>the dip in %1</source>
        <translation>el punto bajo de %1</translation>
    </message>
    <message>
        <source>the change of bore in %1</source>
        <translation>el cambio de diámetro de %1</translation>
    </message>
    <message>
        <source>the valve in %1</source>
        <translation>la válvula de %1</translation>
    </message>
    <message>
        <source>toward %1</source>
        <translation>hacia %1</translation>
    </message>
    <message>
        <source>into the engine</source>
        <translation>hacia el motor</translation>
    </message>
    <message>
        <source>into %1</source>
        <translation>hacia %1</translation>
    </message>
    <message>
        <source>the inlet of %1</source>
        <translation>la entrada de %1</translation>
    </message>
    <message>
        <source>the outlet of %1</source>
        <translation>la salida de %1</translation>
    </message>
    <message>
        <source>Coolant runs through {a}, {0} up, {b}.</source>
        <translation>El refrigerante pasa por {a}, a {0} de altura, {b}.</translation>
    </message>
    <message>
        <source>Coolant spills over {a}, {0} up, {b}; the air behind it is sealed.</source>
        <translation>El refrigerante rebosa por {a}, a {0} de altura, {b}; el aire de detrás queda encerrado.</translation>
    </message>
    <message>
        <source>Coolant spills over {a}, {0} up, {b}.</source>
        <translation>El refrigerante rebosa por {a}, a {0} de altura, {b}.</translation>
    </message>
    <message>
        <source>Coolant fills {a} to its crown, {0} up.</source>
        <translation>El refrigerante llena {a} hasta arriba, a {0} de altura.</translation>
    </message>
    <message>
        <source>Coolant covers {a}, {0} up: air that is still behind it is sealed.</source>
        <translation>El refrigerante cubre {a}, a {0} de altura: el aire que aún hay detrás queda encerrado.</translation>
    </message>
    <message>
        <source>Coolant covers {a}, {0} up.</source>
        <translation>El refrigerante cubre {a}, a {0} de altura.</translation>
    </message>
    <message>
        <source>Coolant closes {a}, {0} up: the air beyond it is sealed.</source>
        <translation>El refrigerante cierra {a}, a {0} de altura: el aire de más allá queda encerrado.</translation>
    </message>
    <message>
        <source>Coolant closes {a}, {0} up: air no longer passes there.</source>
        <translation>El refrigerante cierra {a}, a {0} de altura: el aire ya no pasa por allí.</translation>
    </message>
    <message>
        <source>Coolant no longer runs over {a}.</source>
        <translation>El refrigerante ya no pasa sobre {a}.</translation>
    </message>
    <message>
        <source>{a} lets air pass again, {0} up.</source>
        <translation>{a} vuelve a dejar pasar aire, a {0} de altura.</translation>
    </message>
    <message>
        <source>Air bubbles through {a}, {0} up, {b}.</source>
        <translation>El aire burbujea por {a}, a {0} de altura, {b}.</translation>
    </message>
    <message>
        <source>No more air bubbles through {a}.</source>
        <translation>Ya no burbujea aire por {a}.</translation>
    </message>
    <message>
        <source>Coolant reaches the bleed of {a}, {0} up; it is closed.</source>
        <translation>El refrigerante llega al purgador de {a}, a {0} de altura; se cierra.</translation>
    </message>
    <message>
        <source>Coolant covers the element of {a}, {0} up.</source>
        <translation>El refrigerante cubre la resistencia de {a}, a {0} de altura.</translation>
    </message>
    <message>
        <source>The hose is pushed onto {a}, {0} up, over the coolant.</source>
        <translation>La manguera se encaja en {a}, a {0} de altura, por encima del refrigerante.</translation>
    </message>
    <message>
        <source>{a} is opened, {0} up.</source>
        <translation>Se abre {a}, a {0} de altura.</translation>
    </message>
    <message>
        <source>The vacuum is let go: what air is left shrinks to a fraction.</source>
        <translation>Se suelta el vacío: el aire restante se reduce a una fracción.</translation>
    </message>
    <message>
        <source>Heater %1</source>
        <translation>Calentador %1</translation>
    </message>
    <message>
        <source>Filling is not computed: {a}.</source>
        <translation>El llenado no está calculado: {a}.</translation>
    </message>
    <message>
        <source>The engine is full; hoses and heater were filled before they were connected, and {0} of air got into each hose.</source>
        <translation>El motor está lleno; mangueras y calentador se llenaron antes de conectarlos, y entraron {0} de aire en cada manguera.</translation>
    </message>
    <message>
        <source>The engine is full; hoses and heater were filled before they were connected.</source>
        <translation>El motor está lleno; mangueras y calentador se llenaron antes de conectarlos.</translation>
    </message>
    <message>
        <source>Everything is pumped down to a vacuum, and coolant is let in.</source>
        <translation>Se hace el vacío en todo y se deja entrar el refrigerante.</translation>
    </message>
    <message>
        <source>Coolant is pumped in from below, at {a}.</source>
        <translation>El refrigerante se bombea desde abajo, en {a}.</translation>
    </message>
    <message>
        <source>{0} of coolant was let out of the engine, down to {1}; the new hoses are empty.</source>
        <translation>Se sacaron {0} de refrigerante del motor, hasta {1}; las mangueras nuevas están vacías.</translation>
    </message>
    <message>
        <source>{0} of coolant was let out of the engine, down to {1}; the valves are shut and the new hoses empty.</source>
        <translation>Se sacaron {0} de refrigerante del motor, hasta {1}; las válvulas están cerradas y las mangueras nuevas vacías.</translation>
    </message>
    <message>
        <source>The engine is full, the valves are shut and the new hoses empty.</source>
        <translation>El motor está lleno, las válvulas cerradas y las mangueras nuevas vacías.</translation>
    </message>
    <message>
        <source>Coolant is poured in at the filler.</source>
        <translation>El refrigerante se vierte por la boca de llenado.</translation>
    </message>
    <message>
        <source>Filled to {0}: {1} of coolant in hoses and chambers.</source>
        <translation>Llenado hasta {0}: {1} de refrigerante en mangueras y cámaras.</translation>
    </message>
    <message>
        <source>Filled no further than {0}: {1} of coolant in hoses and chambers.</source>
        <translation>Llenado solo hasta {0}: {1} de refrigerante en mangueras y cámaras.</translation>
    </message>
    <message>
        <source>{2} was let out before, and {3} has to be poured in.</source>
        <translation>Antes se sacaron {2}, y hay que verter {3}.</translation>
    </message>
    <message>
        <source>the chamber of %1</source>
        <translation>la cámara de %1</translation>
    </message>
    <message>
        <source>{0} of air stay in {a}, {1} up.</source>
        <translation>Quedan {0} de aire en {a}, a {1} de altura.</translation>
    </message>
    <message>
        <source>{0} of air stay in {a}, {1} up: they close the bore and take {2} of head.</source>
        <translation>Quedan {0} de aire en {a}, a {1} de altura: cierran el paso y restan {2} de altura de presión.</translation>
    </message>
    <message>
        <source>{0} of air stay in {a}, {1} up: they narrow the bore.</source>
        <translation>Quedan {0} de aire en {a}, a {1} de altura: estrechan el paso.</translation>
    </message>
    <message>
        <source>Running the engine does not move it: {0} in the hose, and {1-2} clear it.</source>
        <translation>La marcha del motor no lo mueve: hay {0} en la manguera y hacen falta {1-2}.</translation>
    </message>
    <message>
        <source>Running the engine may clear it: {0} in the hose, and {1-2} clear it.</source>
        <translation>La marcha del motor puede expulsarlo: hay {0} en la manguera y hacen falta {1-2}.</translation>
    </message>
    <message>
        <source>Running the engine clears it: {0} in the hose, and {1-2} clear it.</source>
        <translation>La marcha del motor lo expulsa: hay {0} en la manguera y hacen falta {1-2}.</translation>
    </message>
    <message>
        <source>Running the engine does not move it.</source>
        <translation>La marcha del motor no lo mueve.</translation>
    </message>
    <message>
        <source>After the engine has run and cooled, top up {0}.</source>
        <translation>Tras funcionar y enfriarse el motor, complete {0}.</translation>
    </message>
    <message>
        <source>At {0} the coolant has shrunk and stands at {1}.</source>
        <translation>A {0} el refrigerante se ha contraído y queda a {1}.</translation>
    </message>
    <message>
        <source>Coolant does not cover the element of {a}.</source>
        <translation>El refrigerante no cubre la resistencia de {a}.</translation>
    </message>
    <message>
        <source>With the engine running nothing is known to flow through {a}.</source>
        <translation>Con el motor en marcha no se conoce caudal por {a}.</translation>
    </message>
    <message>
        <source>With the engine running {0} pass through {a}, from its supply port to its return port.</source>
        <translation>Con el motor en marcha pasan {0} por {a}, de su toma de alimentación a su toma de retorno.</translation>
    </message>
    <message>
        <source>With the engine running {0} pass backward through {a}, from its return port to its supply port.</source>
        <translation>Con el motor en marcha pasan {0} al revés por {a}, de su toma de retorno a su toma de alimentación.</translation>
    </message>
    <message>
        <source>%1 They bypass the radiator.</source>
        <translation>%1 No pasan por el radiador.</translation>
    </message>
    <message>
        <source>there is no loop with a heater yet</source>
        <translation>aún no hay circuito con calentador</translation>
    </message>
    <message>
        <source>the coolant level at cold full is not entered</source>
        <translation>falta el nivel de refrigerante lleno en frío</translation>
    </message>
    <message>
        <source>filling could not be computed: %1</source>
        <translation>no se pudo calcular el llenado: %1</translation>
    </message>
    <message>
        <source>part</source>
        <translation>pieza</translation>
    </message>
    <message>
        <source>isolation valve</source>
        <translation>válvula de aislamiento</translation>
    </message>
    <message>
        <source>check valve</source>
        <translation>válvula antirretorno</translation>
    </message>
    <message>
        <source>the %1 in %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>the hose end at the start of %1</source>
        <translation>la espiga al inicio de %1</translation>
    </message>
    <message>
        <source>the hose end at the end of %1</source>
        <translation>la espiga al final de %1</translation>
    </message>
    <message>
        <source>there is no engine yet</source>
        <translation>aún no hay motor</translation>
    </message>
    <message>
        <source>neither the engine&apos;s mass nor its displacement is entered</source>
        <translation>faltan la masa y la cilindrada del motor</translation>
    </message>
    <message>
        <source>the engine&apos;s outline is not entered</source>
        <translation>falta el contorno del motor</translation>
    </message>
    <message>
        <source>the engine&apos;s outline has no size</source>
        <translation>el contorno del motor no tiene tamaño</translation>
    </message>
    <message>
        <source>Sensor port</source>
        <translation>Toma del sensor</translation>
    </message>
    <message>
        <source>Drain port</source>
        <translation>Toma de drenaje</translation>
    </message>
    <message>
        <source>Core plug</source>
        <translation>Tapón de expansión</translation>
    </message>
    <message>
        <source>Lower hose tee</source>
        <translation>Te de manguera inferior</translation>
    </message>
    <message>
        <source>Head port</source>
        <translation>Toma de culata</translation>
    </message>
    <message>
        <source>Cabin line</source>
        <translation>Línea de cabina</translation>
    </message>
    <message>
        <source>Port</source>
        <translation>Toma</translation>
    </message>
    <message>
        <source>Exhaust</source>
        <translation>Escape</translation>
    </message>
    <message>
        <source>Turbocharger</source>
        <translation>Turbocompresor</translation>
    </message>
    <message>
        <source>Heat shield</source>
        <translation>Pantalla térmica</translation>
    </message>
    <message>
        <source>Belt</source>
        <translation>Correa</translation>
    </message>
    <message>
        <source>Fan</source>
        <translation>Ventilador</translation>
    </message>
    <message>
        <source>Shaft</source>
        <translation>Eje</translation>
    </message>
    <message>
        <source>Steering</source>
        <translation>Dirección</translation>
    </message>
    <message>
        <source>Suspension</source>
        <translation>Suspensión</translation>
    </message>
    <message>
        <source>Keep clear</source>
        <translation>Mantener libre</translation>
    </message>
    <message>
        <source>port</source>
        <translation>toma</translation>
    </message>
    <message>
        <source>area</source>
        <translation>zona</translation>
    </message>
    <message>
        <source>dimension</source>
        <translation>cota</translation>
    </message>
    <message>
        <source>In the file: found %1, but allowed is %2.</source>
        <translation>En el archivo: se encontró %1, pero se permite %2.</translation>
    </message>
    <message>
        <source>At %1: found %2, but allowed is %3.</source>
        <translation>En %1: se encontró %2, pero se permite %3.</translation>
    </message>
    <message>
        <source>expected %1</source>
        <translation>se esperaba %1</translation>
    </message>
    <message>
        <source>well-formed JSON</source>
        <translation>JSON bien formado</translation>
    </message>
    <message>
        <source>more than %1 values in one file</source>
        <translation>más de %1 valores en un archivo</translation>
    </message>
    <message>
        <source>a sketch of fewer</source>
        <translation>un dibujo con menos</translation>
    </message>
    <message>
        <source>a list of more than %1 items</source>
        <translation>una lista de más de %1 elementos</translation>
    </message>
    <message>
        <source>a list of at most %1</source>
        <translation>una lista de como máximo %1</translation>
    </message>
    <message>
        <source>more than %1 levels of nesting</source>
        <translation>más de %1 niveles de anidamiento</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como máximo %1</translation>
    </message>
    <message>
        <source>a key that stands here twice</source>
        <translation>una clave que aparece aquí dos veces</translation>
    </message>
    <message>
        <source>each key once</source>
        <translation>cada clave una vez</translation>
    </message>
    <message>
        <source>more than %1 keys in one object</source>
        <translation>más de %1 claves en un objeto</translation>
    </message>
    <message>
        <source>a finite number</source>
        <translation>un número finito</translation>
    </message>
    <message>
        <source>the end of the file</source>
        <translation>el final del archivo</translation>
    </message>
    <message>
        <source>the rest of the sketch: the file is cut short</source>
        <translation>el resto del dibujo: el archivo está cortado</translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation>línea %1, columna %2</translation>
    </message>
    <message>
        <source>a choice that does not exist</source>
        <translation>una opción que no existe</translation>
    </message>
    <message>
        <source>%1, which %2 has too</source>
        <translation>%1, que también tiene %2</translation>
    </message>
    <message>
        <source>an id of its own</source>
        <translation>un id propio</translation>
    </message>
    <message>
        <source>an end that is on a port and on a heater</source>
        <translation>un extremo que está en una toma y en un calentador</translation>
    </message>
    <message>
        <source>a port, a heater, or neither</source>
        <translation>una toma, un calentador o ninguno</translation>
    </message>
    <message>
        <source>the id of a port of this sketch</source>
        <translation>el id de una toma de este dibujo</translation>
    </message>
    <message>
        <source>the id of a heater of this sketch</source>
        <translation>el id de un calentador de este dibujo</translation>
    </message>
    <message>
        <source>a list of %1</source>
        <translation>una lista de %1</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>un objeto</translation>
    </message>
    <message>
        <source>a value, as this key is required (%1)</source>
        <translation>un valor, pues esta clave es obligatoria (%1)</translation>
    </message>
    <message>
        <source>an unknown key</source>
        <translation>una clave desconocida</translation>
    </message>
    <message>
        <source>the keys of the format only</source>
        <translation>solo las claves del formato</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>verdadero o falso</translation>
    </message>
    <message>
        <source>a liquid-cooled engine only: an air-cooled engine has no water jacket, so a coolant heater cannot be fitted</source>
        <translation>solo un motor refrigerado por líquido: uno refrigerado por aire no tiene camisa de agua, así que no puede llevar calentador de refrigerante</translation>
    </message>
    <message>
        <source>a sketch, which is a JSON object</source>
        <translation>un dibujo, que es un objeto JSON</translation>
    </message>
    <message>
        <source>%1, the mark of a Siphonwright sketch</source>
        <translation>%1, la marca de un dibujo de Siphonwright</translation>
    </message>
    <message>
        <source>version %1</source>
        <translation>versión %1</translation>
    </message>
    <message>
        <source>up to version %1: this file comes from a newer Siphonwright than this one</source>
        <translation>hasta la versión %1: este archivo viene de un Siphonwright más nuevo que este</translation>
    </message>
    <message>
        <source>the whole number %1</source>
        <translation>el número entero %1</translation>
    </message>
    <message>
        <source>a file of %1 MiB</source>
        <translation>un archivo de %1 MiB</translation>
    </message>
    <message>
        <source>at most %1 MiB</source>
        <translation>como máximo %1 MiB</translation>
    </message>
    <message>
        <source>nothing: the file is empty</source>
        <translation>nada: el archivo está vacío</translation>
    </message>
    <message>
        <source>a sketch</source>
        <translation>un dibujo</translation>
    </message>
    <message>
        <source>JSON in UTF-8</source>
        <translation>JSON en UTF-8</translation>
    </message>
    <message>
        <source>more than fits into this computer&apos;s memory</source>
        <translation>más de lo que cabe en la memoria de este equipo</translation>
    </message>
    <message>
        <source>a smaller sketch</source>
        <translation>un dibujo más pequeño</translation>
    </message>
    <message>
        <source>Jacket, lowest point</source>
        <translation>Camisa, punto más bajo</translation>
    </message>
    <message>
        <source>underside of the water jacket</source>
        <translation>cara inferior de la camisa de agua</translation>
    </message>
    <message>
        <source>Jacket, highest point</source>
        <translation>Camisa, punto más alto</translation>
    </message>
    <message>
        <source>top of the head&apos;s jacket</source>
        <translation>parte superior de la camisa de la culata</translation>
    </message>
    <message>
        <source>Supply port</source>
        <translation>Toma de alimentación</translation>
    </message>
    <message>
        <source>middle of the opening</source>
        <translation>centro de la abertura</translation>
    </message>
    <message>
        <source>Return port</source>
        <translation>Toma de retorno</translation>
    </message>
    <message>
        <source>Thermostat housing</source>
        <translation>Carcasa del termostato</translation>
    </message>
    <message>
        <source>middle of the housing</source>
        <translation>centro de la carcasa</translation>
    </message>
    <message>
        <source>Tank cap</source>
        <translation>Tapón del vaso</translation>
    </message>
    <message>
        <source>sealing face of the filler or surge tank</source>
        <translation>cara de cierre de la boca de llenado o del vaso de expansión</translation>
    </message>
    <message>
        <source>Tank mark, cold minimum</source>
        <translation>Marca del vaso, mínimo en frío</translation>
    </message>
    <message>
        <source>beside the cap</source>
        <translation>junto al tapón</translation>
    </message>
    <message>
        <source>Tank mark, cold full</source>
        <translation>Marca del vaso, lleno en frío</translation>
    </message>
    <message>
        <source>Tank mark, hot</source>
        <translation>Marca del vaso, caliente</translation>
    </message>
    <message>
        <source>Block, front face to rear face</source>
        <translation>Bloque, cara delantera a trasera</translation>
    </message>
    <message>
        <source>along the block</source>
        <translation>a lo largo del bloque</translation>
    </message>
    <message>
        <source>Frame rail over the floor</source>
        <translation>Larguero sobre el suelo</translation>
    </message>
    <message>
        <source>upper edge, at the block&apos;s front face</source>
        <translation>borde superior, cara delantera del bloque</translation>
    </message>
    <message>
        <source>Frame sinks further by</source>
        <translation>El bastidor baja además</translation>
    </message>
    <message>
        <source>to lowest ride height</source>
        <translation>hasta la suspensión al mínimo</translation>
    </message>
    <message>
        <source>Supply port to return port</source>
        <translation>Toma de alimentación a toma de retorno</translation>
    </message>
    <message>
        <source>straight, tape from opening to opening</source>
        <translation>recta, cinta de abertura a abertura</translation>
    </message>
    <message>
        <source>Slope of the floor</source>
        <translation>Inclinación del suelo</translation>
    </message>
    <message>
        <source>inclinometer; + is higher at the engine&apos;s front</source>
        <translation>inclinómetro; + es más alto delante</translation>
    </message>
    <message>
        <source>Slope of the frame rail</source>
        <translation>Inclinación del larguero</translation>
    </message>
    <message>
        <source>likewise</source>
        <translation>igualmente</translation>
    </message>
    <message>
        <source>Slope of the engine</source>
        <translation>Inclinación del motor</translation>
    </message>
    <message>
        <source>on a machined face along the crankshaft</source>
        <translation>en cara mecanizada, a lo largo del cigüeñal</translation>
    </message>
    <message>
        <source>height</source>
        <translation>altura</translation>
    </message>
    <message>
        <source>station</source>
        <translation>a lo largo</translation>
    </message>
    <message>
        <source>across</source>
        <translation>a lo ancho</translation>
    </message>
    <message>
        <source>{a}: {b} not measured.</source>
        <translation>{a}: {b} sin medir.</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>tipo</translation>
    </message>
    <message>
        <source>thread</source>
        <translation>rosca</translation>
    </message>
    <message>
        <source>bore</source>
        <translation>diámetro interior</translation>
    </message>
    <message>
        <source>{a}: {b} not noted.</source>
        <translation>{a}: {b} sin anotar.</translation>
    </message>
    <message>
        <source>{a} not noted.</source>
        <translation>{a} sin anotar.</translation>
    </message>
    <message>
        <source>Place of the engine&apos;s thermostat, outlet or inlet</source>
        <translation>Lugar del termostato del motor, salida o entrada</translation>
    </message>
    <message>
        <source>Supply voltage</source>
        <translation>Tensión de suministro</translation>
    </message>
    <message>
        <source>Antifreeze in it now</source>
        <translation>Anticongelante que hay ahora</translation>
    </message>
    <message>
        <source>P was not measured: the floor is taken as level.</source>
        <translation>P no se midió: el suelo se toma como nivelado.</translation>
    </message>
    <message>
        <source>R was not measured: the frame rail is taken to run along the floor.</source>
        <translation>R no se midió: se toma que el larguero va paralelo al suelo.</translation>
    </message>
    <message>
        <source>S was not measured: the engine is taken to stand as drawn, {0} to the floor.</source>
        <translation>S no se midió: se toma que el motor está como se dibujó, {0} respecto al suelo.</translation>
    </message>
    <message>
        <source>The mount angle stays as drawn, {0}: it is S less P.</source>
        <translation>El ángulo de montaje queda como se dibujó, {0}: es S menos P.</translation>
    </message>
    <message>
        <source>The drawing&apos;s datum is the floor: nothing was measured from the frame rail.</source>
        <translation>El nivel de referencia del dibujo es el suelo: nada se midió desde el larguero.</translation>
    </message>
    <message>
        <source>What was measured from the floor cannot be drawn without L.</source>
        <translation>Lo medido desde el suelo no se puede dibujar sin L.</translation>
    </message>
    <message>
        <source>The ground is not drawn: where it lies at lowest ride height needs M.</source>
        <translation>El suelo no se dibuja: para su posición con la suspensión al mínimo hace falta M.</translation>
    </message>
    <message>
        <source>By C and D the ports are {0} apart, by N {1}: measure again.</source>
        <translation>Según C y D las tomas están a {0}; según N, a {1}: mida de nuevo.</translation>
    </message>
    <message>
        <source>{a} is not under {b}: measure again.</source>
        <translation>{a} no está por debajo de {b}: mida de nuevo.</translation>
    </message>
    <message>
        <source>{a} not measured.</source>
        <translation>{a} sin medir.</translation>
    </message>
    <message>
        <source>Tank heater, %1</source>
        <translation>Calentador de tanque, %1</translation>
    </message>
    <message>
        <source>In-line 4, medium diesel</source>
        <translation>4 en línea, diésel mediano</translation>
    </message>
    <message>
        <source>In-line 6, highway diesel</source>
        <translation>6 en línea, diésel de carretera</translation>
    </message>
    <message>
        <source>In-line 6 laid flat, underfloor</source>
        <translation>6 en línea tumbado, bajo el piso</translation>
    </message>
    <message>
        <source>near bank</source>
        <translation>bancada cercana</translation>
    </message>
    <message>
        <source>far bank</source>
        <translation>bancada lejana</translation>
    </message>
    <message>
        <source>Vee 6, medium diesel</source>
        <translation>6 en V, diésel mediano</translation>
    </message>
    <message>
        <source>Vee 8, heavy diesel</source>
        <translation>8 en V, diésel pesado</translation>
    </message>
    <message>
        <source>Vee 12, generator set</source>
        <translation>12 en V, grupo electrógeno</translation>
    </message>
    <message>
        <source>a sketch of %1 MiB</source>
        <translation>un dibujo de %1 MiB</translation>
    </message>
    <message>
        <source>at most %1 MiB; a smaller photo may help</source>
        <translation>como máximo %1 MiB; una foto más pequeña puede ayudar</translation>
    </message>
    <message>
        <source>Supply hose %1</source>
        <translation>Manguera de alimentación %1</translation>
    </message>
    <message>
        <source>Return hose %1</source>
        <translation>Manguera de retorno %1</translation>
    </message>
    <message>
        <source>%1 nose-up</source>
        <translation>%1 frente arriba</translation>
    </message>
    <message>
        <source>%1 nose-down</source>
        <translation>%1 frente abajo</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>direction</source>
        <translation>dirección</translation>
    </message>
    <message>
        <source>The outlet was {0}, over the limit of {1}. Turn the heater off and leave it off until the cause is found.</source>
        <translation>La salida estaba a {0}, por encima del límite de {1}. Apague el calentador y déjelo apagado hasta encontrar la causa.</translation>
    </message>
    <message>
        <source>Coolant was {0} under the full mark, lower than the cold minimum. Power off, find the leak, top up.</source>
        <translation>El refrigerante estaba {0} por debajo de la marca de lleno, más bajo que el mínimo en frío. Sin electricidad, busque la fuga, complete.</translation>
    </message>
    <message>
        <source>The heater turned on {0} times within an hour, over the limit of {1}. Leave it off until the cause is found.</source>
        <translation>El calentador se encendió {0} veces en una hora, por encima del límite de {1}. Déjelo apagado hasta encontrar la causa.</translation>
    </message>
    <message>
        <source>Take the same readings again, then compare the drawing with the job: hoses, ports, valves, voltage.</source>
        <translation>Tome otra vez las mismas lecturas y compare después el dibujo con el trabajo: mangueras, tomas, válvulas, tensión.</translation>
    </message>
    <message>
        <source>It runs as drawn, and as drawn it passes a limit</source>
        <translation>Funciona como está dibujado, y así dibujado pasa un límite</translation>
    </message>
    <message>
        <source>Read what the findings say of this drawing.</source>
        <translation>Lea lo que dicen los hallazgos de este dibujo.</translation>
    </message>
    <message>
        <source>Heater off. Mend the layout, and prove it on the drawing before it is turned on again.</source>
        <translation>Apague el calentador. Corrija el trazado y compruébelo en el dibujo antes de volver a encenderlo.</translation>
    </message>
    <message>
        <source>corners in all hoses together</source>
        <translation>puntos en todas las mangueras juntas</translation>
    </message>
    <message>
        <source>corners in all outlines together</source>
        <translation>puntos en todos los contornos juntos</translation>
    </message>
    <message>
        <source>starts in its worst hour: %1</source>
        <translation>arranques en su peor hora: %1</translation>
    </message>
    <message>
        <source>On the steepest grades judged</source>
        <translation>En las pendientes más fuertes evaluadas</translation>
    </message>
    <message>
        <source>no forward flow on some, on the others %1</source>
        <translation>en algunas sin caudal hacia delante, en las demás %1</translation>
    </message>
    <message>
        <source>no forward flow</source>
        <translation>sin caudal hacia delante</translation>
    </message>
    <message>
        <source>starts an hour at most %1</source>
        <translation>arranques por hora como máximo %1</translation>
    </message>
    <message>
        <source>%1 reached on some only</source>
        <translation>%1 se alcanza solo en algunas</translation>
    </message>
    <message>
        <source>The heaters have {0} in all: consider a heater with a pump.</source>
        <translation>Los calentadores suman {0}: considere un calentador con bomba.</translation>
    </message>
    <message>
        <source>Coolant leaves {a} at up to {0} while it is on, over {1}.</source>
        <translation>El refrigerante sale de {a} a hasta {0} mientras está encendido, más de {1}.</translation>
    </message>
    <message>
        <source>Coolant leaves {a} at up to {0}, and {1} is possible.</source>
        <translation>El refrigerante sale de {a} a hasta {0}, y son posibles {1}.</translation>
    </message>
    <message>
        <source>Hoses and heater hold {0} more than the engine.</source>
        <translation>Mangueras y calentador contienen {0} además del motor.</translation>
    </message>
    <message>
        <source>{0} clamps: two on each end of each piece of hose.</source>
        <translation>{0} abrazaderas: dos en cada extremo de cada trozo de manguera.</translation>
    </message>
    <message>
        <source>passage {0}</source>
        <translation>paso {0}</translation>
    </message>
    <message>
        <source>for hose of {0}, passage {1}</source>
        <translation>para manguera de {0}, paso {1}</translation>
    </message>
    <message>
        <source>Usual elbows turn {0} or {1}: take the nearer and lay the hose to suit.</source>
        <translation>Los codos usuales son de {0} o {1}: tome el más próximo y tienda la manguera según él.</translation>
    </message>
    <message>
        <source>to hose end of passage {0}</source>
        <translation>a espiga de paso {0}</translation>
    </message>
    <message>
        <source>{a} to hose end of passage {0}</source>
        <translation>{a} a espiga de paso {0}</translation>
    </message>
    <message>
        <source>passage {0}, {1}</source>
        <translation>paso {0}, {1}</translation>
    </message>
    <message>
        <source>{a}, {0} from A</source>
        <translation>{a}, a {0} de A</translation>
    </message>
    <message>
        <source>for hose of {0}, {1}</source>
        <translation>para manguera de {0}, {1}</translation>
    </message>
    <message>
        <source>Starts of {a} in its worst hour: {0}, over {1}.</source>
        <translation>Arranques de {a} en su peor hora: {0}, más de {1}.</translation>
    </message>
    <message>
        <source>Starts of {a} in its worst hour: {0}, up to {1} possible.</source>
        <translation>Arranques de {a} en su peor hora: {0}; son posibles hasta {1}.</translation>
    </message>
    <message>
        <source>Open: the valve in {a}, {0} from its cut end at {b}.</source>
        <translation>Abrir: la válvula de {a}, a {0} de su extremo cortado en {b}.</translation>
    </message>
    <message>
        <source>Open: the valve in {a}, {0} from its cut end at {b}. It is drawn closed.</source>
        <translation>Abrir: la válvula de {a}, a {0} de su extremo cortado en {b}. Está dibujada cerrada.</translation>
    </message>
    <message>
        <source>{a} humps as it is drawn: it has no sag to spare.</source>
        <translation>{a} forma un lomo tal como está dibujada: no le queda comba.</translation>
    </message>
    <message>
        <source>{a} dips as it is drawn: some coolant stays in it when it is drained.</source>
        <translation>{a} forma un seno tal como está dibujada: al vaciarla queda algo de refrigerante.</translation>
    </message>
    <message>
        <source>{a} humps {0} above its sill: air can fill the {1} of bore above it and stop the flow.</source>
        <translation>{a} forma un lomo de {0} sobre su umbral: el aire puede llenar los {1} de paso por encima y detener el caudal.</translation>
    </message>
    <message>
        <source>{a} humps {0} above its sill: the {1} of bore above it can hold air.</source>
        <translation>{a} forma un lomo de {0} sobre su umbral: los {1} de paso por encima pueden retener aire.</translation>
    </message>
    <message>
        <source>{a} humps {0} above its sill: air in the {1} of bore above it stops the flow unless it is bled.</source>
        <translation>{a} forma un lomo de {0} sobre su umbral: el aire en los {1} de paso por encima detiene el caudal si no se purga.</translation>
    </message>
    <message>
        <source>Not free of traps on the level.</source>
        <translation>No está libre de sifones a nivel.</translation>
    </message>
    <message>
        <source>Free of traps from %1</source>
        <translation>Sin sifones desde %1</translation>
    </message>
    <message>
        <source>The supply&apos;s voltage is not entered: counted at {0}, as the heaters have.</source>
        <translation>Falta la tensión del suministro: contado a {0}, como los calentadores.</translation>
    </message>
    <message>
        <source>After the engine has run and cooled, nothing needs topping up.</source>
        <translation>Después de funcionar y enfriarse el motor, no hay que rellenar nada.</translation>
    </message>
    <message>
        <source>{a}: in two pieces from A to B, {0} and {1}; between them: {b}.</source>
        <translation>{a}: en dos trozos de A a B, {0} y {1}; entre ellos: {b}.</translation>
    </message>
    <message>
        <source>{a}: in {0} pieces; their lengths are with the drawing.</source>
        <translation>{a}: en {0} trozos; sus longitudes están con el dibujo.</translation>
    </message>
    <message>
        <source>{a}: cut {0}, of which {1} is allowance; bore {2}.</source>
        <translation>{a}: cortar a {0}, de los cuales {1} son de margen; diámetro interior {2}.</translation>
    </message>
    <message>
        <source>{a}: cut {0}, of which {1} is allowance; its bore is not entered.</source>
        <translation>{a}: cortar a {0}, de los cuales {1} son de margen; su diámetro interior no está indicado.</translation>
    </message>
    <message>
        <source>Mend what still stops the job first (findings: {0}).</source>
        <translation>Corrija primero lo que aún impide el trabajo (hallazgos: {0}).</translation>
    </message>
    <message>
        <source>At the filler, slowly, {0} into hoses, fittings and heater.</source>
        <translation>Por la boca de llenado, despacio, {0} en mangueras, racores y calentador.</translation>
    </message>
    <message>
        <source>Under vacuum, {0} into hoses, fittings and heater.</source>
        <translation>Con vacío, {0} en mangueras, racores y calentador.</translation>
    </message>
    <message>
        <source>From below, {0} into hoses, fittings and heater.</source>
        <translation>Desde abajo, {0} en mangueras, racores y calentador.</translation>
    </message>
    <message>
        <source>Air takes up another {0} until it is let out.</source>
        <translation>El aire ocupa otros {0} hasta que se le deja salir.</translation>
    </message>
</context>
<context>
    <name>siphonwright</name>
    <message>
        <source>Draw an area to keep clear of</source>
        <translation>Dibujar una zona restringida</translation>
    </message>
    <message>
        <source>Height %1</source>
        <translation>Altura %1</translation>
    </message>
    <message>
        <source>Edge %1</source>
        <translation>Borde %1</translation>
    </message>
    <message>
        <source>Click the corners of what is hot or moves; Backspace takes the last one back.</source>
        <translation>Haga clic en las esquinas de lo caliente o móvil; Retroceso quita la última.</translation>
    </message>
    <message>
        <source>Click further corners; Enter, a double-click or a click on the first corner closes the area.</source>
        <translation>Haga clic en más esquinas; Intro, doble clic o un clic en la primera esquina cierra la zona.</translation>
    </message>
    <message>
        <source>It is larger than the largest drawing.</source>
        <translation>Es más grande que el dibujo más grande.</translation>
    </message>
    <message>
        <source>It holds no parts.</source>
        <translation>No contiene piezas.</translation>
    </message>
    <message>
        <source>the middle of %1</source>
        <translation>%1, centro</translation>
    </message>
    <message>
        <source>the inlet of %1</source>
        <translation>la entrada de %1</translation>
    </message>
    <message>
        <source>the outlet of %1</source>
        <translation>la salida de %1</translation>
    </message>
    <message>
        <source>the top of %1</source>
        <translation>%1, parte superior</translation>
    </message>
    <message>
        <source>the foot of %1</source>
        <translation>%1, pie</translation>
    </message>
    <message>
        <source>a free place</source>
        <translation>un lugar libre</translation>
    </message>
    <message>
        <source>the jacket&apos;s lowest level</source>
        <translation>el nivel más bajo de la camisa</translation>
    </message>
    <message>
        <source>the jacket&apos;s highest level</source>
        <translation>el nivel más alto de la camisa</translation>
    </message>
    <message>
        <source>the level cold minimum</source>
        <translation>el nivel mínimo en frío</translation>
    </message>
    <message>
        <source>the level cold full</source>
        <translation>el nivel lleno en frío</translation>
    </message>
    <message>
        <source>the level hot</source>
        <translation>el nivel en caliente</translation>
    </message>
    <message>
        <source>a place on %1</source>
        <translation>un lugar en %1</translation>
    </message>
    <message>
        <source>the outline of %1</source>
        <translation>%1, contorno</translation>
    </message>
    <message>
        <source>Horizontal</source>
        <translation>Horizontal</translation>
    </message>
    <message>
        <source>Vertical</source>
        <translation>Vertical</translation>
    </message>
    <message>
        <source>Along</source>
        <translation>A lo largo</translation>
    </message>
    <message>
        <source>Slope</source>
        <translation>Inclinación</translation>
    </message>
    <message>
        <source>Draw a dimension</source>
        <translation>Dibujar una cota</translation>
    </message>
    <message>
        <source>Along the hose</source>
        <translation>Por la manguera</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Click what to measure from; Tab goes from one thing to the next, Enter clicks.</source>
        <translation>Haga clic en el punto de partida de la medida; Tab pasa de una cosa a otra, Intro hace clic.</translation>
    </message>
    <message>
        <source>Click what to measure to; Backspace takes the first back.</source>
        <translation>Haga clic en el punto final de la medida; Retroceso anula el primero.</translation>
    </message>
    <message>
        <source>Click where its line goes. H, V, A, S: horizontal, vertical, along, slope.</source>
        <translation>Haga clic donde va su línea. H, V, A, S: horizontal, vertical, a lo largo, inclinación.</translation>
    </message>
    <message>
        <source>Before: %1</source>
        <translation>Antes: %1</translation>
    </message>
    <message>
        <source>After: %1</source>
        <translation>Después: %1</translation>
    </message>
    <message>
        <source>Drop under the jacket %1, at least %2</source>
        <translation>Altura bajo la camisa %1, al menos %2</translation>
    </message>
    <message>
        <source>Drop under the jacket %1</source>
        <translation>Altura bajo la camisa %1</translation>
    </message>
    <message>
        <source>%1 along the hose</source>
        <translation>%1 por la manguera</translation>
    </message>
    <message>
        <source>Across %1</source>
        <translation>A lo ancho %1</translation>
    </message>
    <message>
        <source>Length of the hose %1</source>
        <translation>Longitud de la manguera %1</translation>
    </message>
    <message>
        <source>no length</source>
        <translation>sin longitud</translation>
    </message>
    <message>
        <source>level</source>
        <translation>a nivel</translation>
    </message>
    <message>
        <source>rises</source>
        <translation>sube</translation>
    </message>
    <message>
        <source>falls</source>
        <translation>baja</translation>
    </message>
    <message>
        <source>%1 plumb</source>
        <translation>%1 a plomo</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Hump %1, holds %2 of air</source>
        <translation>Lomo %1, retiene %2 de aire</translation>
    </message>
    <message>
        <source>Dip %1, holds %2</source>
        <translation>Punto bajo %1, retiene %2</translation>
    </message>
    <message>
        <source>Tilt %1</source>
        <translation>Inclinación %1</translation>
    </message>
    <message>
        <source>Draw a supply hose</source>
        <translation>Dibujar una manguera de alimentación</translation>
    </message>
    <message>
        <source>Draw a return hose</source>
        <translation>Dibujar una manguera de retorno</translation>
    </message>
    <message>
        <source>This piece %1</source>
        <translation>Este tramo %1</translation>
    </message>
    <message>
        <source>Length %1</source>
        <translation>Longitud %1</translation>
    </message>
    <message>
        <source>supply hose</source>
        <translation>manguera de alimentación</translation>
    </message>
    <message>
        <source>return hose</source>
        <translation>manguera de retorno</translation>
    </message>
    <message>
        <source>Click to begin the %1 at %2.</source>
        <translation>Haga clic para empezar la %1 en %2.</translation>
    </message>
    <message>
        <source>The %1 begins here; it ends on another port or nozzle.</source>
        <translation>La %1 empieza aquí; termina en otra toma o boquilla.</translation>
    </message>
    <message>
        <source>Click to end the %1 on %2.</source>
        <translation>Haga clic para terminar la %1 en %2.</translation>
    </message>
    <message>
        <source>point %1 of %2</source>
        <translation>punto %1 de %2</translation>
    </message>
    <message>
        <source>the start of %1</source>
        <translation>%1, inicio</translation>
    </message>
    <message>
        <source>the end of %1</source>
        <translation>%1, final</translation>
    </message>
    <message>
        <source>clip %1 of %2</source>
        <translation>soporte %1 de %2</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>isolation valve</source>
        <translation>válvula de aislamiento</translation>
    </message>
    <message>
        <source>bleed point</source>
        <translation>punto de purga</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>drenaje</translation>
    </message>
    <message>
        <source>lift check valve</source>
        <translation>válvula antirretorno de disco</translation>
    </message>
    <message>
        <source>swing check valve</source>
        <translation>válvula antirretorno de clapeta</translation>
    </message>
    <message>
        <source>reducer</source>
        <translation>reducción</translation>
    </message>
    <message>
        <source>the engine</source>
        <translation>el motor</translation>
    </message>
    <message>
        <source>corner %1 of the engine</source>
        <translation>esquina %1 del motor</translation>
    </message>
    <message>
        <source>the water jacket</source>
        <translation>la camisa de agua</translation>
    </message>
    <message>
        <source>corner %1 of the water jacket</source>
        <translation>esquina %1 de la camisa de agua</translation>
    </message>
    <message>
        <source>the thermostat housing</source>
        <translation>la carcasa del termostato</translation>
    </message>
    <message>
        <source>the surge tank</source>
        <translation>el vaso de expansión</translation>
    </message>
    <message>
        <source>corner %1 of %2</source>
        <translation>esquina %1 de %2</translation>
    </message>
    <message>
        <source>the ground line</source>
        <translation>la línea del suelo</translation>
    </message>
    <message>
        <source>the photo</source>
        <translation>la foto</translation>
    </message>
    <message>
        <source>the dimension</source>
        <translation>la cota</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Engine, corner %1</source>
        <translation>Motor, esquina %1</translation>
    </message>
    <message>
        <source>Water jacket</source>
        <translation>Camisa de agua</translation>
    </message>
    <message>
        <source>Water jacket, corner %1</source>
        <translation>Camisa de agua, esquina %1</translation>
    </message>
    <message>
        <source>Thermostat housing</source>
        <translation>Carcasa del termostato</translation>
    </message>
    <message>
        <source>Surge tank</source>
        <translation>Vaso de expansión</translation>
    </message>
    <message>
        <source>%1, point %2</source>
        <translation>%1, punto %2</translation>
    </message>
    <message>
        <source>%1, start</source>
        <translation>%1, inicio</translation>
    </message>
    <message>
        <source>%1, end</source>
        <translation>%1, final</translation>
    </message>
    <message>
        <source>%1, clip %2</source>
        <translation>%1, soporte %2</translation>
    </message>
    <message>
        <source>%1, %2 %3</source>
        <translation>%1, %2 %3</translation>
    </message>
    <message>
        <source>%1, corner %2</source>
        <translation>%1, esquina %2</translation>
    </message>
    <message>
        <source>Ground line</source>
        <translation>Línea del suelo</translation>
    </message>
    <message>
        <source>Photograph</source>
        <translation>Fotografía</translation>
    </message>
    <message>
        <source>Level the photo</source>
        <translation>Nivelar la foto</translation>
    </message>
    <message>
        <source>As drawn now %1</source>
        <translation>Como está dibujado ahora %1</translation>
    </message>
    <message>
        <source>Type what was measured.</source>
        <translation>Escriba lo medido.</translation>
    </message>
    <message>
        <source>Click a point in the photo; then another, as far away as you have measured.</source>
        <translation>Haga clic en un punto de la foto; luego en otro, tan lejos como haya medido.</translation>
    </message>
    <message>
        <source>Click the second point. Backspace takes the first one back.</source>
        <translation>Haga clic en el segundo punto. Retroceso anula el primero.</translation>
    </message>
    <message>
        <source>Click two points along something that is level in truth.</source>
        <translation>Haga clic en dos puntos de algo que sea horizontal en la realidad.</translation>
    </message>
    <message>
        <source>Click the second point along it. Backspace takes the first one back.</source>
        <translation>Haga clic en el segundo punto. Retroceso anula el primero.</translation>
    </message>
    <message>
        <source>Click the corners of a flat rectangle whose width and height you know: %1 left. Backspace takes the last one back.</source>
        <translation>Haga clic en las esquinas de un rectángulo plano de ancho y alto conocidos: faltan %1. Retroceso quita la última.</translation>
    </message>
    <message>
        <source>Place a port</source>
        <translation>Colocar una toma</translation>
    </message>
    <message>
        <source>Place a heater</source>
        <translation>Colocar un calentador</translation>
    </message>
    <message>
        <source>Place the surge tank</source>
        <translation>Colocar el vaso de expansión</translation>
    </message>
    <message>
        <source>Top under the jacket %1</source>
        <translation>Parte superior bajo la camisa %1</translation>
    </message>
    <message>
        <source>Click on the jacket&apos;s or the block&apos;s edge to place a port.</source>
        <translation>Haga clic en el borde de la camisa o del bloque para colocar una toma.</translation>
    </message>
    <message>
        <source>Click to place a port here, its thread pointing outwards.</source>
        <translation>Haga clic para colocar aquí una toma, con la rosca hacia fuera.</translation>
    </message>
    <message>
        <source>Click where the middle of the heater goes. Arrow keys move the cross-hair, Enter clicks.</source>
        <translation>Haga clic donde va el centro del calentador. Las flechas mueven la cruz, Intro hace clic.</translation>
    </message>
    <message>
        <source>Click where the surge tank goes: its marks give the coolant level.</source>
        <translation>Haga clic donde va el vaso de expansión: sus marcas dan el nivel de refrigerante.</translation>
    </message>
    <message>
        <source>an isolation valve</source>
        <translation>una válvula de aislamiento</translation>
    </message>
    <message>
        <source>a bleed point</source>
        <translation>un punto de purga</translation>
    </message>
    <message>
        <source>a clip</source>
        <translation>una abrazadera de soporte</translation>
    </message>
    <message>
        <source>Point at a hose and click to place %1 there.</source>
        <translation>Apunte a una manguera y haga clic para colocar allí %1.</translation>
    </message>
    <message>
        <source>Click to place %1 in %2.</source>
        <translation>Haga clic para colocar %1 en %2.</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>Mover %1</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation>Girar %1</translation>
    </message>
    <message>
        <source>Delete %1</source>
        <translation>Eliminar %1</translation>
    </message>
    <message>
        <source>Release to select what lies wholly in the band: %1. Escape stops.</source>
        <translation>Suelte para seleccionar lo que está del todo en el recuadro: %1. Esc detiene.</translation>
    </message>
    <message>
        <source>Drop it on a port or nozzle to connect it, elsewhere to leave it open. Escape puts it back.</source>
        <translation>Suéltelo en una toma o boquilla para conectarlo, en otro lugar para dejarlo abierto. Esc lo devuelve.</translation>
    </message>
    <message>
        <source>Hold Alt to place it freely. Escape puts it back.</source>
        <translation>Mantenga Alt para colocarlo libremente. Esc lo devuelve.</translation>
    </message>
    <message>
        <source>Click to select this finding.</source>
        <translation>Haga clic para seleccionar este hallazgo.</translation>
    </message>
    <message>
        <source>Drag to turn %1 in steps of 15 degrees; full stop and comma turn it too.</source>
        <translation>Arrastre para girar %1 en pasos de 15 grados; las teclas de punto y de coma también giran.</translation>
    </message>
    <message>
        <source>Click to select %1, drag to move it, double-click to insert a point.</source>
        <translation>Clic para seleccionar %1, arrastrar para mover, doble clic para insertar un punto.</translation>
    </message>
    <message>
        <source>Click to select %1, drag to move it, double-click an edge to add a corner.</source>
        <translation>Clic para seleccionar %1, arrastrar para mover, doble clic en un borde para añadir una esquina.</translation>
    </message>
    <message>
        <source>Click to select %1, drag to move it.</source>
        <translation>Clic para seleccionar %1, arrastrar para mover.</translation>
    </message>
    <message>
        <source>Press J to connect it to the nearest port or nozzle, again for the next; arrows move it.</source>
        <translation>Pulse J para conectarlo a la toma o boquilla más próxima, otra vez para la siguiente; las flechas lo mueven.</translation>
    </message>
    <message>
        <source>Arrow keys move %1, a drag too; Delete removes them; Shift+click adds or takes out.</source>
        <translation>Las flechas mueven %1, arrastrar también; Supr elimina; Mayús+clic añade o quita.</translation>
    </message>
    <message>
        <source>Arrow keys move %1, with Shift finely; Delete removes it; Tab goes to the next part.</source>
        <translation>Las flechas mueven %1, con Mayús en pasos finos; Supr elimina; Tab va a la pieza siguiente.</translation>
    </message>
    <message>
        <source>Click a part to select it, drag to move it; drag over empty ground to select several.</source>
        <translation>Clic en una pieza para seleccionarla, arrastrar para moverla; arrastre sobre el fondo vacío para seleccionar varias.</translation>
    </message>
    <message>
        <source>Insert a point in %1</source>
        <translation>Insertar un punto en %1</translation>
    </message>
    <message>
        <source>Add a corner to %1</source>
        <translation>Añadir una esquina: %1</translation>
    </message>
    <message>
        <source>Connect %1 to %2</source>
        <translation>Conectar %1 a %2</translation>
    </message>
    <message>
        <source>Place a clip</source>
        <translation>Colocar una abrazadera de soporte</translation>
    </message>
    <message>
        <source>Place a part in a hose: %1</source>
        <translation>Colocar una pieza en una manguera: %1</translation>
    </message>
    <message>
        <source>plumb</source>
        <translation>a plomo</translation>
    </message>
    <message>
        <source>just under the coolant&apos;s level</source>
        <translation>justo bajo el nivel del refrigerante</translation>
    </message>
    <message>
        <source>%1 under the coolant&apos;s level</source>
        <translation>%1 bajo el nivel del refrigerante</translation>
    </message>
    <message>
        <source>%1 over the ground</source>
        <translation>%1 sobre el suelo</translation>
    </message>
    <message>
        <source>%1 clear of %2</source>
        <translation>a %1 de %2</translation>
    </message>
    <message>
        <source>top %1 under the jacket</source>
        <translation>parte superior %1 bajo la camisa</translation>
    </message>
    <message>
        <source>just no hump</source>
        <translation>justo sin lomo</translation>
    </message>
    <message>
        <source>just no dip</source>
        <translation>justo sin punto bajo</translation>
    </message>
    <message>
        <source>corner of the engine</source>
        <translation>esquina del motor</translation>
    </message>
    <message>
        <source>corner of the jacket</source>
        <translation>esquina de la camisa</translation>
    </message>
    <message>
        <source>in line with the next piece</source>
        <translation>en línea con el tramo siguiente</translation>
    </message>
    <message>
        <source>bend radius just %1</source>
        <translation>radio de curvatura justo %1</translation>
    </message>
    <message>
        <source>in line with the last piece</source>
        <translation>en línea con el tramo anterior</translation>
    </message>
    <message>
        <source>Slope to snap to</source>
        <translation>Inclinación para ajustar</translation>
    </message>
    <message>
        <source>Rise over length, from 1 in 2 to 1 in 1000, such as 1:50 or 2 %:</source>
        <translation>Subida respecto a la longitud, de 1 en 2 a 1 en 1000, como 1:50 o 2 %:</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>The language changes when Siphonwright is started again.</source>
        <translation>El idioma cambia al iniciar de nuevo Siphonwright.</translation>
    </message>
    <message>
        <source>along %1, height %2</source>
        <translation>a lo largo %1, altura %2</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierta</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>cerrada</translation>
    </message>
    <message>
        <source>findings: %1</source>
        <translation>hallazgos: %1</translation>
    </message>
    <message>
        <source>Click a port or nozzle to begin the %1, or an empty place to leave its end open; Tab and arrow keys aim too.</source>
        <translation>Haga clic en una toma o boquilla para empezar la %1, o en un lugar vacío para dejar abierto su extremo; Tab y las flechas también apuntan.</translation>
    </message>
    <message>
        <source>Click to put a point; a port, a nozzle or a double-click ends the %1. Backspace takes a point back, Escape gives up.</source>
        <translation>Haga clic para poner un punto; una toma, una boquilla o un doble clic termina la %1. Retroceso quita un punto, Esc abandona.</translation>
    </message>
    <message>
        <source>sound: measured %1, limit %2</source>
        <translation>correcto: medido %1, límite %2</translation>
    </message>
    <message>
        <source>sound, with %1 left</source>
        <translation>correcto, quedan %1</translation>
    </message>
    <message>
        <source>sound, with %1 left: measured %2, limit %3</source>
        <translation>correcto, quedan %1: medido %2, límite %3</translation>
    </message>
</context>
<context>
    <name>siphonwright::AboutText</name>
    <message>
        <source>Work is for a qualified technician. The heater&apos;s and the engine&apos;s own manuals rule over this program; its figures are estimates from stated assumptions.</source>
        <translation>El trabajo es para un técnico cualificado. Los manuales del calentador y del motor mandan sobre este programa; sus cifras son estimaciones a partir de supuestos declarados.</translation>
    </message>
    <message>
        <source>Disconnect and lock out the power while working. Inhibit a generator&apos;s automatic start. Chock the wheels, block air suspension, never work under an unsupported vehicle.</source>
        <translation>Desconecte y bloquee la electricidad mientras trabaja. Anule el arranque automático de un generador. Calce las ruedas, bloquee la suspensión neumática, no trabaje nunca bajo un vehículo sin apoyos.</translation>
    </message>
    <message>
        <source>Open the cap only when the engine is cold: hot coolant is under pressure and scalds.</source>
        <translation>Abra el tapón solo con el motor frío: el refrigerante caliente está a presión y quema.</translation>
    </message>
    <message>
        <source>Turn the heater off before a valve is closed. With both valves closed the heater is a sealed vessel, and pressure builds up.</source>
        <translation>Apague el calentador antes de cerrar una válvula. Con ambas válvulas cerradas el calentador es un recipiente cerrado y aumenta la presión.</translation>
    </message>
    <message>
        <source>Never turn the heater on without coolant in its chamber, nor before the loop is purged.</source>
        <translation>No encienda nunca el calentador sin refrigerante en su cámara ni antes de purgar el circuito.</translation>
    </message>
    <message>
        <source>Run the engine outdoors or with the exhaust extracted.</source>
        <translation>Haga funcionar el motor al aire libre o con extracción de gases.</translation>
    </message>
    <message>
        <source>Grounded supply, the local electrical code and a licensed electrician.</source>
        <translation>Alimentación con puesta a tierra, código eléctrico local y un electricista autorizado.</translation>
    </message>
    <message>
        <source>Antifreeze is poisonous. Catch it and dispose of it properly.</source>
        <translation>El anticongelante es venenoso. Recójalo y deséchelo debidamente.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>About Siphonwright</source>
        <translation>Acerca de Siphonwright</translation>
    </message>
    <message>
        <source>&lt;h3&gt;Siphonwright %1&lt;/h3&gt;&lt;p&gt;Draws, checks and hands over installations of tank-type coolant heaters.&lt;/p&gt;&lt;p&gt;Findings are estimates from stated assumptions and common practice; each names its basis. What was not entered is not judged.&lt;/p&gt;&lt;p&gt;Built with Qt under the LGPL 3 and JSON for Modern C++ under the MIT licence; lettering in Inter under the SIL Open Font Licence 1.1.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Siphonwright %1&lt;/h3&gt;&lt;p&gt;Dibuja, comprueba y entrega instalaciones de calentadores de refrigerante de tanque.&lt;/p&gt;&lt;p&gt;Los hallazgos son estimaciones a partir de supuestos declarados y de la práctica habitual; cada uno indica su fundamento. Lo que no se introdujo no se evalúa.&lt;/p&gt;&lt;p&gt;Hecho con Qt bajo la LGPL 3 y JSON for Modern C++ bajo la licencia MIT; letra Inter bajo la SIL Open Font Licence 1.1.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Air-cooled engine</source>
        <translation>Motor refrigerado por aire</translation>
    </message>
    <message>
        <source>An air-cooled engine has no water jacket: there is no coolant for a tank heater to draw in and to warm, so it cannot be drawn here.</source>
        <translation>Un motor refrigerado por aire no tiene camisa de agua: no hay refrigerante que un calentador de tanque pueda tomar y calentar, así que no se puede dibujar aquí.</translation>
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
        <translation>no hay nada seleccionado</translation>
    </message>
    <message>
        <source>several parts have to be selected</source>
        <translation>hay que seleccionar varias piezas</translation>
    </message>
    <message>
        <source>at least three parts have to be selected</source>
        <translation>hay que seleccionar al menos tres piezas</translation>
    </message>
    <message>
        <source>no hose or outline is selected</source>
        <translation>no hay manguera ni contorno seleccionado</translation>
    </message>
    <message>
        <source>no heater or port is selected</source>
        <translation>no hay calentador ni toma seleccionado</translation>
    </message>
    <message>
        <source>nothing with corners is selected</source>
        <translation>no hay nada con esquinas seleccionado</translation>
    </message>
    <message>
        <source>no end of a hose is selected</source>
        <translation>no hay extremo de manguera seleccionado</translation>
    </message>
    <message>
        <source>no valve, bleed or drain is selected</source>
        <translation>no hay válvula, purgador ni drenaje seleccionado</translation>
    </message>
    <message>
        <source>no hose is selected</source>
        <translation>no hay manguera seleccionada</translation>
    </message>
    <message>
        <source>there is no engine yet</source>
        <translation>aún no hay motor</translation>
    </message>
    <message>
        <source>there is no photo yet</source>
        <translation>aún no hay foto</translation>
    </message>
    <message>
        <source>a port and a heater come first</source>
        <translation>primero van una toma y un calentador</translation>
    </message>
    <message>
        <source>there is no finding</source>
        <translation>no hay ningún hallazgo</translation>
    </message>
    <message>
        <source>no finding is selected</source>
        <translation>no hay hallazgo seleccionado</translation>
    </message>
    <message>
        <source>there is no warm-up yet</source>
        <translation>aún no hay calentamiento</translation>
    </message>
    <message>
        <source>there is no warm-up to keep, or it is kept</source>
        <translation>no hay calentamiento que conservar, o ya está conservado</translation>
    </message>
    <message>
        <source>no curve is kept</source>
        <translation>no hay ninguna curva conservada</translation>
    </message>
    <message>
        <source>only while demonstrating</source>
        <translation>solo durante la demostración</translation>
    </message>
</context>
<context>
    <name>siphonwright::ChecklistCommands</name>
    <message>
        <source>Save the checklist</source>
        <translation>Guardar la lista de verificación</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>%1 checklist</source>
        <translation>%1 lista de verificación</translation>
    </message>
    <message>
        <source>The checklist could not be written.</source>
        <translation>No se pudo escribir la lista de verificación.</translation>
    </message>
</context>
<context>
    <name>siphonwright::CommandSearch</name>
    <message>
        <source>Find a command</source>
        <translation>Buscar un comando</translation>
    </message>
    <message>
        <source>What do you want to do?</source>
        <translation>¿Qué desea hacer?</translation>
    </message>
    <message>
        <source>Words of the command</source>
        <translation>Palabras del comando</translation>
    </message>
    <message>
        <source>Commands that match</source>
        <translation>Comandos que coinciden</translation>
    </message>
    <message>
        <source>nothing to undo</source>
        <translation>nada que deshacer</translation>
    </message>
    <message>
        <source>nothing to redo</source>
        <translation>nada que rehacer</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Herramientas</translation>
    </message>
    <message>
        <source>not now</source>
        <translation>ahora no</translation>
    </message>
    <message>
        <source>not now: %1</source>
        <translation>ahora no: %1</translation>
    </message>
    <message>
        <source>No command has these words.</source>
        <translation>Ningún comando tiene esas palabras.</translation>
    </message>
    <message>
        <source>Up and down choose, Enter runs, Escape closes.</source>
        <translation>Arriba y abajo eligen, Intro ejecuta, Esc cierra.</translation>
    </message>
    <message>
        <source>“%1” cannot be done now.</source>
        <translation>“%1” no se puede hacer ahora.</translation>
    </message>
    <message>
        <source>“%1” cannot be done now: %2.</source>
        <translation>“%1” no se puede hacer ahora: %2.</translation>
    </message>
</context>
<context>
    <name>siphonwright::DemonstrationCommands</name>
    <message>
        <source>Show a second drawing beside</source>
        <translation>Mostrar un segundo dibujo al lado</translation>
    </message>
    <message>
        <source>Sketches (*.siphon)</source>
        <translation>Dibujos (*.siphon)</translation>
    </message>
    <message>
        <source>Export this moment</source>
        <translation>Exportar este momento</translation>
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
        <translation>Exportar la hoja de clase</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Folder for the pictures</source>
        <translation>Carpeta para las imágenes</translation>
    </message>
    <message>
        <source>The second drawing could not be opened.</source>
        <translation>No se pudo abrir el segundo dibujo.</translation>
    </message>
    <message>
        <source>The moment could not be written.</source>
        <translation>No se pudo escribir el momento.</translation>
    </message>
    <message>
        <source>The pictures could not be written.</source>
        <translation>No se pudieron escribir las imágenes.</translation>
    </message>
    <message>
        <source>The handout could not be written.</source>
        <translation>No se pudo escribir la hoja de clase.</translation>
    </message>
</context>
<context>
    <name>siphonwright::Document</name>
    <message>
        <source>%1 cannot be opened: %2.</source>
        <translation>%1 no se puede abrir: %2.</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2.</source>
        <translation>%1 no se puede leer: %2.</translation>
    </message>
    <message>
        <source>%1 is larger than %2 MB and cannot be a sketch.</source>
        <translation>%1 supera los %2 MB y no puede ser un dibujo.</translation>
    </message>
</context>
<context>
    <name>siphonwright::ElevationView</name>
    <message>
        <source>Nothing selected that can be copied.</source>
        <translation>No hay nada seleccionado que se pueda copiar.</translation>
    </message>
    <message>
        <source>Copied %1.</source>
        <translation>Copiado: %1.</translation>
    </message>
    <message>
        <source>This could not be copied.</source>
        <translation>Esto no se pudo copiar.</translation>
    </message>
    <message>
        <source>Cut %1</source>
        <translation>Cortar %1</translation>
    </message>
    <message>
        <source>Cut %1; Ctrl+V puts it down again.</source>
        <translation>Cortado: %1; Ctrl+V lo vuelve a poner.</translation>
    </message>
    <message>
        <source>There are no parts on the clipboard.</source>
        <translation>No hay piezas en el portapapeles.</translation>
    </message>
    <message>
        <source>What is on the clipboard cannot be put on the drawing. Nothing was changed.</source>
        <translation>Lo que hay en el portapapeles no se puede poner en el dibujo. No se cambió nada.</translation>
    </message>
    <message>
        <source>Paste %1</source>
        <translation>Pegar %1</translation>
    </message>
    <message>
        <source>Duplicate %1</source>
        <translation>Duplicar %1</translation>
    </message>
    <message>
        <source>These parts do not fit into this drawing. Nothing was changed.</source>
        <translation>Estas piezas no caben en este dibujo. No se cambió nada.</translation>
    </message>
    <message>
        <source>The drawing has an engine already, so the copied one was left out.</source>
        <translation>El dibujo ya tiene motor, así que el copiado se dejó fuera.</translation>
    </message>
    <message>
        <source>The drawing has a surge tank already, so the copied one was left out.</source>
        <translation>El dibujo ya tiene vaso de expansión, así que el copiado se dejó fuera.</translation>
    </message>
    <message>
        <source>Put down %1.</source>
        <translation>Puesto: %1.</translation>
    </message>
    <message>
        <source>Align %1</source>
        <translation>Alinear %1</translation>
    </message>
    <message>
        <source>They are in line already.</source>
        <translation>Ya están alineadas.</translation>
    </message>
    <message>
        <source>Space %1 evenly</source>
        <translation>Repartir %1</translation>
    </message>
    <message>
        <source>They are evenly spaced already, or fewer than three can be moved.</source>
        <translation>Ya están repartidas por igual, o se pueden mover menos de tres.</translation>
    </message>
    <message>
        <source>Kept %1; Tab goes on to the next.</source>
        <translation>Se mantiene %1; Tab pasa a la siguiente.</translation>
    </message>
    <message>
        <source>Open or close %1</source>
        <translation>Abrir o cerrar %1</translation>
    </message>
    <message>
        <source>Place an area</source>
        <translation>Colocar una zona</translation>
    </message>
    <message>
        <source>Place engine</source>
        <translation>Colocar motor</translation>
    </message>
    <message>
        <source>It goes into a hose: drop it on one.</source>
        <translation>Va en una manguera: suéltelo sobre una.</translation>
    </message>
    <message>
        <source>It goes into a hose: select the hose first.</source>
        <translation>Va en una manguera: seleccione antes la manguera.</translation>
    </message>
    <message>
        <source>End view</source>
        <translation>Vista de extremo</translation>
    </message>
    <message>
        <source>Side elevation</source>
        <translation>Alzado lateral</translation>
    </message>
    <message>
        <source>Nothing selected</source>
        <translation>Nada seleccionado</translation>
    </message>
    <message>
        <source>Selected: %1</source>
        <translation>Selección: %1</translation>
    </message>
    <message>
        <source>Drag to move the paper; the wheel zooms to the pointer.</source>
        <translation>Arrastre para mover el papel; la rueda amplía hacia el puntero.</translation>
    </message>
    <message>
        <source>End view from the front</source>
        <translation>Vista de extremo desde delante</translation>
    </message>
    <message>
        <source>End view from the rear</source>
        <translation>Vista de extremo desde detrás</translation>
    </message>
    <message>
        <source>Arrow keys aim: %1 a step, with Ctrl %2, with Shift %3. Tab: next place; Enter clicks; Backspace: back.</source>
        <translation>Las flechas apuntan: %1 por paso, con Ctrl %2, con Mayús %3. Tab: lugar siguiente; Intro hace clic; Retroceso: atrás.</translation>
    </message>
</context>
<context>
    <name>siphonwright::FileCommands</name>
    <message>
        <source>Sketches (*.siphon)</source>
        <translation>Dibujos (*.siphon)</translation>
    </message>
    <message>
        <source>untitled</source>
        <translation>sin título</translation>
    </message>
    <message>
        <source>Open a sketch</source>
        <translation>Abrir un dibujo</translation>
    </message>
    <message>
        <source>%1 could not be opened. The drawing on the table is as it was.</source>
        <translation>%1 no se pudo abrir. El dibujo en curso queda como estaba.</translation>
    </message>
    <message>
        <source>%1 could not be saved.</source>
        <translation>%1 no se pudo guardar.</translation>
    </message>
    <message>
        <source>Save the sketch</source>
        <translation>Guardar el dibujo</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Cambios sin guardar</translation>
    </message>
    <message>
        <source>%1 has changes that are not saved.</source>
        <translation>%1 tiene cambios sin guardar.</translation>
    </message>
    <message>
        <source>Siphonwright</source>
        <translation>Siphonwright</translation>
    </message>
    <message>
        <source>%1 is open in another window.</source>
        <translation>%1 está abierto en otra ventana.</translation>
    </message>
    <message>
        <source>It is open there: %1. A copy has no file until you save it. If both windows save one file, the later one is asked, and neither version is lost.</source>
        <translation>Está abierto allí: %1. Una copia no tiene archivo hasta que la guarde. Si las dos ventanas guardan un mismo archivo, se pregunta a la que guarda después y ninguna versión se pierde.</translation>
    </message>
    <message>
        <source>Open a &amp;copy</source>
        <translation>Abrir una &amp;copia</translation>
    </message>
    <message>
        <source>Open it &amp;here too</source>
        <translation>Abrirlo aquí &amp;también</translation>
    </message>
    <message>
        <source>Save &amp;mine, keep theirs beside it</source>
        <translation>Guardar el &amp;mío, conservar el otro al lado</translation>
    </message>
    <message>
        <source>Open &amp;theirs, put mine aside</source>
        <translation>Abrir el &amp;otro, apartar el mío</translation>
    </message>
    <message>
        <source>&amp;Try again</source>
        <translation>&amp;Intentar de nuevo</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Guardar &amp;como…</translation>
    </message>
    <message>
        <source>Your drawing could not be put aside; it stays on the table.</source>
        <translation>Su dibujo no se pudo apartar; se queda sobre la mesa.</translation>
    </message>
    <message>
        <source>The drawing cannot be recovered from %1. The file is as it was.</source>
        <translation>El dibujo no se puede recuperar de %1. El archivo está como estaba.</translation>
    </message>
    <message>
        <source>The drawing is in another window now.</source>
        <translation>El dibujo está ahora en otra ventana.</translation>
    </message>
    <message>
        <source>%1 is not written: its place does not answer. What stands there stays as it was. Write it again in another place.</source>
        <translation>%1 no está escrito: su lugar no responde. Lo que hay allí queda como estaba. Escríbalo de nuevo en otro lugar.</translation>
    </message>
    <message>
        <source>The pages could not be written.</source>
        <translation>No se pudieron escribir las páginas.</translation>
    </message>
</context>
<context>
    <name>siphonwright::FileStrip</name>
    <message>
        <source>Open &amp;theirs</source>
        <translation>Abrir el &amp;otro</translation>
    </message>
    <message>
        <source>&amp;Go on with mine</source>
        <translation>&amp;Seguir con el mío</translation>
    </message>
    <message>
        <source>Unsaved work is put aside and can be recovered from the File menu</source>
        <translation>El trabajo sin guardar se aparta y se puede recuperar desde el menú Archivo</translation>
    </message>
    <message>
        <source>%1 was changed on the disk by another program. Saving here asks first, and loses neither version.</source>
        <translation>Otro programa ha cambiado %1 en el disco. Al guardar aquí se pregunta antes y ninguna versión se pierde.</translation>
    </message>
    <message>
        <source>%1 is no longer in its place, or cannot be reached. Saving writes it anew.</source>
        <translation>%1 ya no está en su lugar, o no se llega a él. Al guardar se escribe de nuevo.</translation>
    </message>
    <message>
        <source>Unsaved work is not kept for recovery just now. %1</source>
        <translation>Ahora mismo el trabajo sin guardar no se conserva para recuperarlo. %1</translation>
    </message>
    <message>
        <source>The place of %1 does not answer. Saving waits for it, or goes to another place.</source>
        <translation>El lugar de %1 no responde. Al guardar se espera o se elige otro lugar.</translation>
    </message>
</context>
<context>
    <name>siphonwright::FindBar</name>
    <message>
        <source>No part has such a name.</source>
        <translation>Ninguna pieza tiene ese nombre.</translation>
    </message>
    <message>
        <source>Find by name</source>
        <translation>Buscar por nombre</translation>
    </message>
    <message>
        <source>Parts that match</source>
        <translation>Piezas que coinciden</translation>
    </message>
</context>
<context>
    <name>siphonwright::FirstSteps</name>
    <message>
        <source>engine</source>
        <translation>motor</translation>
    </message>
    <message>
        <source>Place an engine: take the picture that comes nearest, and shape it by dragging later.</source>
        <translation>Coloque un motor: elija la imagen más parecida y déle forma después arrastrando.</translation>
    </message>
    <message>
        <source>&amp;Choose an engine…</source>
        <translation>Elegir un &amp;motor…</translation>
    </message>
    <message>
        <source>supply port</source>
        <translation>toma de alimentación</translation>
    </message>
    <message>
        <source>Mark the supply port, low at the front, where coolant leaves the jacket.</source>
        <translation>Marque la toma de alimentación, baja y delante, por donde sale el refrigerante de la camisa.</translation>
    </message>
    <message>
        <source>&amp;Mark it</source>
        <translation>&amp;Marcarla</translation>
    </message>
    <message>
        <source>return port</source>
        <translation>toma de retorno</translation>
    </message>
    <message>
        <source>Mark the return port, high at the rear, where warm coolant comes back in.</source>
        <translation>Marque la toma de retorno, alta y detrás, por donde vuelve el refrigerante caliente.</translation>
    </message>
    <message>
        <source>heater</source>
        <translation>calentador</translation>
    </message>
    <message>
        <source>Place a heater well under the jacket, so that warm coolant rises by itself.</source>
        <translation>Coloque un calentador bien por debajo de la camisa, para que el refrigerante caliente suba solo.</translation>
    </message>
    <message>
        <source>&amp;Choose a heater…</source>
        <translation>Elegir un &amp;calentador…</translation>
    </message>
    <message>
        <source>supply hose</source>
        <translation>manguera de alimentación</translation>
    </message>
    <message>
        <source>Draw the supply hose: click the supply port, then point by point, last the heater&apos;s inlet.</source>
        <translation>Dibuje la manguera de alimentación: clic en la toma de alimentación, luego punto por punto, y al final en la entrada del calentador.</translation>
    </message>
    <message>
        <source>D&amp;raw it</source>
        <translation>Di&amp;bujarla</translation>
    </message>
    <message>
        <source>return hose</source>
        <translation>manguera de retorno</translation>
    </message>
    <message>
        <source>Draw the return hose from the heater&apos;s outlet to the return port, rising all the way.</source>
        <translation>Dibuje la manguera de retorno de la salida del calentador a la toma de retorno, siempre en subida.</translation>
    </message>
    <message>
        <source>valves</source>
        <translation>válvulas</translation>
    </message>
    <message>
        <source>Put an isolation valve into each hose, near the engine: click the hose with this tool.</source>
        <translation>Ponga una válvula de aislamiento en cada manguera, cerca del motor: clic en la manguera con esta herramienta.</translation>
    </message>
    <message>
        <source>&amp;Take the valve</source>
        <translation>&amp;Usar la válvula</translation>
    </message>
    <message>
        <source>findings</source>
        <translation>hallazgos</translation>
    </message>
    <message>
        <source>Sh&amp;ow the next</source>
        <translation>&amp;Mostrar siguiente</translation>
    </message>
    <message>
        <source>save</source>
        <translation>guardar</translation>
    </message>
    <message>
        <source>Save the sketch: its file is the record of the job.</source>
        <translation>Guarde el dibujo: su archivo es el registro del trabajo.</translation>
    </message>
    <message>
        <source>&amp;Save…</source>
        <translation>&amp;Guardar…</translation>
    </message>
    <message>
        <source>S&amp;kip</source>
        <translation>&amp;Omitir</translation>
    </message>
    <message>
        <source>Go on to the next step without this one</source>
        <translation>Pasar al paso siguiente sin este</translation>
    </message>
    <message>
        <source>Leave the first sketch; Help begins it again</source>
        <translation>Dejar el primer dibujo; Ayuda lo empieza de nuevo</translation>
    </message>
    <message>
        <source>Leave the first sketch</source>
        <translation>Dejar el primer dibujo</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Bienvenida</translation>
    </message>
    <message>
        <source>This is a job that works, to look round in. Change anything, it is not saved.</source>
        <translation>Este es un trabajo que funciona, para explorarlo. Cambie lo que quiera, no se guarda.</translation>
    </message>
    <message>
        <source>Draw your &amp;own, step by step</source>
        <translation>Dibuje el &amp;suyo, paso a paso</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Paso %1 de %2</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>That is a whole sketch. The menu Job goes on: warm-up, parts and cuts, checklist.</source>
        <translation>Ese es un dibujo completo. El menú Trabajo continúa: calentamiento, piezas y cortes, lista de verificación.</translation>
    </message>
    <message>
        <source>Go through the findings, those that stop the job first: each shows its place and a way out.</source>
        <translation>Recorra los hallazgos, primero los que detienen el trabajo: cada uno muestra su lugar y una salida.</translation>
    </message>
</context>
<context>
    <name>siphonwright::MainWindow</name>
    <message>
        <source>New drawing with an engine</source>
        <translation>Dibujo nuevo con un motor</translation>
    </message>
    <message>
        <source>Place an engine</source>
        <translation>Colocar un motor</translation>
    </message>
    <message>
        <source>Place engine</source>
        <translation>Colocar motor</translation>
    </message>
    <message>
        <source>Place a heater</source>
        <translation>Colocar un calentador</translation>
    </message>
    <message>
        <source>Place heater</source>
        <translation>Colocar calentador</translation>
    </message>
    <message>
        <source>&amp;Panels</source>
        <translation>&amp;Paneles</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>Details</source>
        <translation>Detalles</translation>
    </message>
    <message>
        <source>Run profile</source>
        <translation>Perfil</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>Calentamiento</translation>
    </message>
    <message>
        <source>By bore</source>
        <translation>Por diámetro</translation>
    </message>
    <message>
        <source>On grades</source>
        <translation>Por pendiente</translation>
    </message>
    <message>
        <source>Heater size and supply</source>
        <translation>Tamaño y suministro</translation>
    </message>
    <message>
        <source>Commissioning</source>
        <translation>Puesta en marcha</translation>
    </message>
    <message>
        <source>Shelf</source>
        <translation>Estante</translation>
    </message>
    <message>
        <source>Layouts</source>
        <translation>Propuestas</translation>
    </message>
    <message>
        <source>Drag a rectangle in which the heater may hang, or click two opposite corners.</source>
        <translation>Arrastre un rectángulo en el que pueda colgar el calentador, o haga clic en dos esquinas opuestas.</translation>
    </message>
    <message>
        <source>across %1, height %2</source>
        <translation>a lo ancho %1, altura %2</translation>
    </message>
    <message>
        <source>along %1, height %2</source>
        <translation>a lo largo %1, altura %2</translation>
    </message>
    <message>
        <source>%1[*] – Siphonwright</source>
        <translation>%1[*] – Siphonwright</translation>
    </message>
    <message>
        <source>Change units</source>
        <translation>Cambiar unidades</translation>
    </message>
    <message>
        <source>There is no free port, heater or hose for this yet.</source>
        <translation>Aún no hay toma, calentador o manguera libre para esto.</translation>
    </message>
    <message>
        <source>&amp;Demonstrate</source>
        <translation>&amp;Demostrar</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Archivo</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>Abrir &amp;reciente</translation>
    </message>
    <message>
        <source>Sheet &amp;paper</source>
        <translation>&amp;Papel de la hoja</translation>
    </message>
    <message>
        <source>After the units</source>
        <translation>Según las unidades</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>Tabloid</source>
        <translation>Tabloide</translation>
    </message>
    <message>
        <source>No file yet</source>
        <translation>Aún sin archivos</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Editar</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>Des&amp;hacer</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rehacer</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>&amp;Look</source>
        <translation>Aparie&amp;ncia</translation>
    </message>
    <message>
        <source>Te&amp;xt size</source>
        <translation>Tamaño de te&amp;xto</translation>
    </message>
    <message>
        <source>Snap &amp;to</source>
        <translation>&amp;Ajustar a</translation>
    </message>
    <message>
        <source>&amp;Insert</source>
        <translation>&amp;Insertar</translation>
    </message>
    <message>
        <source>&amp;Job</source>
        <translation>&amp;Trabajo</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;yuda</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Herramientas</translation>
    </message>
    <message>
        <source>Export the warm-up</source>
        <translation>Exportar el calentamiento</translation>
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
        <translation>%1 calentamiento</translation>
    </message>
    <message>
        <source>The warm-up could not be written.</source>
        <translation>No se pudo escribir el calentamiento.</translation>
    </message>
    <message>
        <source>Add %1</source>
        <translation>Añadir %1</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>&amp;Idioma</translation>
    </message>
    <message>
        <source>Sheet pa&amp;ges</source>
        <translation>Pá&amp;ginas de la hoja</translation>
    </message>
    <message>
        <source>The oldest undo steps are forgotten: together they took more than %1 MB.</source>
        <translation>Los pasos más antiguos de deshacer se han olvidado: juntos ocupaban más de %1 MB.</translation>
    </message>
    <message>
        <source>&amp;Upright</source>
        <translation>&amp;Vertical</translation>
    </message>
    <message>
        <source>Sca&amp;le</source>
        <translation>Esca&amp;la</translation>
    </message>
    <message>
        <source>The largest that fits on one page</source>
        <translation>La mayor que cabe en una hoja</translation>
    </message>
</context>
<context>
    <name>siphonwright::PaperCommands</name>
    <message>
        <source>Write as PDF</source>
        <translation>Escribir como PDF</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Write the parts as CSV</source>
        <translation>Escribir las piezas como CSV</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>%1 parts</source>
        <translation>%1 piezas</translation>
    </message>
    <message>
        <source>The pages could not be written.</source>
        <translation>No se pudieron escribir las páginas.</translation>
    </message>
    <message>
        <source>The parts could not be written.</source>
        <translation>No se pudieron escribir las piezas.</translation>
    </message>
</context>
<context>
    <name>siphonwright::PhotoCommands</name>
    <message>
        <source>There is no picture in it.</source>
        <translation>No contiene ninguna imagen.</translation>
    </message>
    <message>
        <source>Photo &amp;underlay</source>
        <translation>Foto de &amp;fondo</translation>
    </message>
    <message>
        <source>Photo under the drawing</source>
        <translation>Foto bajo el dibujo</translation>
    </message>
    <message>
        <source>Pictures (%1)</source>
        <translation>Imágenes (%1)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
    <message>
        <source>What was copied</source>
        <translation>Lo copiado</translation>
    </message>
    <message>
        <source>There is no picture in the clipboard.</source>
        <translation>No hay ninguna imagen en el portapapeles.</translation>
    </message>
    <message>
        <source>%1 is not put under the drawing.</source>
        <translation>%1 no se puso bajo el dibujo.</translation>
    </message>
    <message>
        <source>%1 cannot be kept in the drawing.</source>
        <translation>%1 no se puede guardar en el dibujo.</translation>
    </message>
    <message>
        <source>It is too narrow to be made small enough.</source>
        <translation>Es demasiado estrecha para reducirla lo suficiente.</translation>
    </message>
    <message>
        <source>Replace the photo</source>
        <translation>Reemplazar la foto</translation>
    </message>
    <message>
        <source>Insert the photo</source>
        <translation>Insertar la foto</translation>
    </message>
    <message>
        <source>%1 is kept in the drawing: %2 × %3 pixels of %4 × %5, %6 kB. Next: straighten or scale it.</source>
        <translation>%1 se guarda en el dibujo: %2 × %3 píxeles de %4 × %5, %6 kB. Siguiente: enderezarla o darle escala.</translation>
    </message>
    <message>
        <source>Scale by two points</source>
        <translation>Escala por dos puntos</translation>
    </message>
    <message>
        <source>How far apart are the two points in truth?</source>
        <translation>¿A qué distancia están los dos puntos en realidad?</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Distancia</translation>
    </message>
    <message>
        <source>Straighten by a rectangle</source>
        <translation>Enderezar con un rectángulo</translation>
    </message>
    <message>
        <source>How large is the rectangle in truth? Only what lies in its plane comes out true to scale: what stands nearer looks larger.</source>
        <translation>¿Qué tamaño tiene el rectángulo en realidad? Solo lo que está en su plano queda a escala: lo más cercano se ve mayor.</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Scale the photo</source>
        <translation>Dar escala a la foto</translation>
    </message>
    <message>
        <source>The photo is not straightened.</source>
        <translation>La foto no se endereza.</translation>
    </message>
    <message>
        <source>Straighten the photo</source>
        <translation>Enderezar la foto</translation>
    </message>
    <message>
        <source>Lock the photo</source>
        <translation>Bloquear la foto</translation>
    </message>
    <message>
        <source>Unlock the photo</source>
        <translation>Desbloquear la foto</translation>
    </message>
</context>
<context>
    <name>siphonwright::PhotoFigures</name>
    <message>
        <source>Type the length as measured.</source>
        <translation>Escriba la longitud medida.</translation>
    </message>
</context>
<context>
    <name>siphonwright::Recovery</name>
    <message>
        <source>it does not answer</source>
        <translation>no responde</translation>
    </message>
</context>
<context>
    <name>siphonwright::RecoveryOffer</name>
    <message>
        <source>Recover drawings</source>
        <translation>Recuperar dibujos</translation>
    </message>
    <message>
        <source>Drawings that can be recovered</source>
        <translation>Dibujos que se pueden recuperar</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Dibujo</translation>
    </message>
    <message>
        <source>Last kept</source>
        <translation>Conservado por última vez</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Carpeta</translation>
    </message>
    <message>
        <source>A report of the unexpected end, without names or texts of yours, is in %1</source>
        <translation>Un informe del final inesperado, sin nombres ni textos suyos, está en %1</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>&amp;Abrir</translation>
    </message>
    <message>
        <source>&amp;Throw away…</source>
        <translation>&amp;Desechar…</translation>
    </message>
    <message>
        <source>&amp;Keep for later</source>
        <translation>&amp;Conservar para después</translation>
    </message>
    <message>
        <source>untitled</source>
        <translation>sin título</translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation>aún sin guardar</translation>
    </message>
    <message>
        <source>There is no drawing to recover.</source>
        <translation>No hay ningún dibujo que recuperar.</translation>
    </message>
    <message>
        <source>These drawings have edits that were not saved. Open one to go on with it; its file stays as it is until you save.</source>
        <translation>Estos dibujos tienen cambios que no se guardaron. Abra uno para seguir con él; su archivo queda como está hasta que guarde.</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Desechar</translation>
    </message>
    <message>
        <source>Throw away the unsaved edits of %1?</source>
        <translation>¿Desechar los cambios sin guardar de %1?</translation>
    </message>
    <message>
        <source>They cannot be brought back. The drawing&apos;s own file stays as it is.</source>
        <translation>No se pueden volver a traer. El archivo del dibujo queda como está.</translation>
    </message>
    <message>
        <source>&amp;Throw away</source>
        <translation>&amp;Desechar</translation>
    </message>
</context>
<context>
    <name>siphonwright::SheetCommands</name>
    <message>
        <source>Export the sheet</source>
        <translation>Exportar la hoja</translation>
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
        <translation>No se pudo escribir la hoja.</translation>
    </message>
    <message>
        <source>Logo for the sheet</source>
        <translation>Logotipo para la hoja</translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg *.svg)</source>
        <translation>Imágenes (*.png *.jpg *.jpeg *.svg)</translation>
    </message>
    <message>
        <source>The logo could not be read.</source>
        <translation>No se pudo leer el logotipo.</translation>
    </message>
</context>
<context>
    <name>siphonwright::Shelf</name>
    <message>
        <source>Parts to put on the drawing</source>
        <translation>Piezas para poner en el dibujo</translation>
    </message>
    <message>
        <source>Into the engine</source>
        <translation>En el motor</translation>
    </message>
    <message>
        <source>Port</source>
        <translation>Toma</translation>
    </message>
    <message>
        <source>Surge tank</source>
        <translation>Vaso de expansión</translation>
    </message>
    <message>
        <source>Into a hose</source>
        <translation>En una manguera</translation>
    </message>
    <message>
        <source>Isolation valve</source>
        <translation>Válvula de aislamiento</translation>
    </message>
    <message>
        <source>Bleed point</source>
        <translation>Punto de purga</translation>
    </message>
    <message>
        <source>Clip</source>
        <translation>Soporte</translation>
    </message>
    <message>
        <source>Heaters</source>
        <translation>Calentadores</translation>
    </message>
    <message>
        <source>Engines</source>
        <translation>Motores</translation>
    </message>
    <message>
        <source>To keep clear of</source>
        <translation>Zonas restringidas</translation>
    </message>
    <message>
        <source>Keep-clear area</source>
        <translation>Zona restringida</translation>
    </message>
    <message>
        <source>%1: drag it onto the drawing, or press Enter to put it in the middle</source>
        <translation>%1: arrástrelo al dibujo, o pulse Intro para ponerlo en el centro</translation>
    </message>
</context>
<context>
    <name>siphonwright::ShortcutsWindow</name>
    <message>
        <source>Shortcuts</source>
        <translation>Atajos</translation>
    </message>
    <message>
        <source>Find by words or keys</source>
        <translation>Buscar por palabras o teclas</translation>
    </message>
    <message>
        <source>Find a command by its words or keys</source>
        <translation>Buscar un comando por sus palabras o teclas</translation>
    </message>
    <message>
        <source>Commands and their keys</source>
        <translation>Comandos y sus teclas</translation>
    </message>
    <message>
        <source>Command</source>
        <translation>Comando</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Teclas</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Qué hace</translation>
    </message>
    <message>
        <source>New keys: press them here</source>
        <translation>Teclas nuevas: púlselas aquí</translation>
    </message>
    <message>
        <source>&amp;No keys</source>
        <translation>&amp;Sin teclas</translation>
    </message>
    <message>
        <source>&amp;Back to default</source>
        <translation>&amp;Restablecer</translation>
    </message>
    <message>
        <source>&amp;All back to default…</source>
        <translation>Restablecer &amp;todas…</translation>
    </message>
    <message>
        <source>&amp;Take them from there</source>
        <translation>&amp;Quitarlas de allí</translation>
    </message>
    <message>
        <source>Its default keys are with another command now.</source>
        <translation>Sus teclas originales están ahora en otro comando.</translation>
    </message>
    <message>
        <source>Put the keys of all commands back to their defaults?</source>
        <translation>¿Devolver las teclas de todos los comandos a sus valores originales?</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Herramientas</translation>
    </message>
    <message>
        <source>%1 › %2</source>
        <translation>%1 › %2</translation>
    </message>
    <message>
        <source>On the drawing</source>
        <translation>En el dibujo</translation>
    </message>
    <message>
        <source>%1 (changed)</source>
        <translation>%1 (cambiadas)</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>The drawing&apos;s own keys cannot be changed.</source>
        <translation>Las teclas propias del dibujo no se pueden cambiar.</translation>
    </message>
    <message>
        <source>Keys for “%1”</source>
        <translation>Teclas para “%1”</translation>
    </message>
    <message>
        <source>Press the new keys in the field. Default: %1.</source>
        <translation>Pulse las teclas nuevas en el campo. Originales: %1.</translation>
    </message>
    <message>
        <source>%1 belongs to the drawing: choose other keys.</source>
        <translation>%1 pertenece al dibujo: elija otras teclas.</translation>
    </message>
    <message>
        <source>%1 now runs “%2”.</source>
        <translation>%1 ejecuta ahora “%2”.</translation>
    </message>
    <message>
        <source>%1 runs “%2” already. Nothing was changed.</source>
        <translation>%1 ya ejecuta “%2”. No se cambió nada.</translation>
    </message>
</context>
<context>
    <name>siphonwright::SideTitle</name>
    <message>
        <source>Close this panel</source>
        <translation>Cerrar este panel</translation>
    </message>
    <message>
        <source>Lift this panel out of the window</source>
        <translation>Sacar este panel de la ventana</translation>
    </message>
</context>
<context>
    <name>siphonwright::SurveyCommands</name>
    <message>
        <source>Blank survey form</source>
        <translation>Formulario de toma de datos en blanco</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>The form could not be written.</source>
        <translation>No se pudo escribir el formulario.</translation>
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
%3 de alto, manguera %4</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>Typical sizes, to be shaped to what stands before you. All to one scale.</source>
        <translation>Tamaños típicos, para darles la forma de lo que tiene delante. Todos a una misma escala.</translation>
    </message>
    <message>
        <source>&amp;Take it</source>
        <translation>&amp;Elegir</translation>
    </message>
    <message>
        <source>&amp;Air-cooled engine…</source>
        <translation>Motor refrigerado por &amp;aire…</translation>
    </message>
</context>
<context>
    <name>siphonwright::assumptions</name>
    <message>
        <source>Change an assumption</source>
        <translation>Cambiar un supuesto</translation>
    </message>
    <message>
        <source>Back to the book&apos;s assumption</source>
        <translation>Volver al supuesto del libro</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>caudal</translation>
    </message>
    <message>
        <source>peak outlet</source>
        <translation>salida máxima</translation>
    </message>
    <message>
        <source>cycles</source>
        <translation>ciclos</translation>
    </message>
    <message>
        <source>time to target</source>
        <translation>tiempo hasta objetivo</translation>
    </message>
</context>
<context>
    <name>siphonwright::assumptions::AssumptionForm</name>
    <message>
        <source>Keep for this drawing</source>
        <translation>Mantener en este dibujo</translation>
    </message>
    <message>
        <source>Back to the book&apos;s</source>
        <translation>Volver al del libro</translation>
    </message>
    <message>
        <source>Basis: %1.</source>
        <translation>Fundamento: %1.</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>for example: measured on this engine</source>
        <translation>por ejemplo: medido en este motor</translation>
    </message>
    <message>
        <source>In this drawing</source>
        <translation>En este dibujo</translation>
    </message>
    <message>
        <source>changed; the book&apos;s: %1</source>
        <translation>cambiado; el del libro: %1</translation>
    </message>
    <message>
        <source>as in the book</source>
        <translation>como en el libro</translation>
    </message>
    <message>
        <source>Write the reason too: the sheet states it.</source>
        <translation>Escriba también el motivo: la hoja lo indica.</translation>
    </message>
</context>
<context>
    <name>siphonwright::assumptions::AssumptionList</name>
    <message>
        <source>Assumption</source>
        <translation>Supuesto</translation>
    </message>
    <message>
        <source>In force</source>
        <translation>Vigente</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Cambiado</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Intervalo</translation>
    </message>
    <message>
        <source>Drives here</source>
        <translation>Influye en</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Fundamento</translation>
    </message>
    <message>
        <source>little</source>
        <translation>poco</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>cambiado</translation>
    </message>
    <message>
        <source>held</source>
        <translation>fijo</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
</context>
<context>
    <name>siphonwright::assumptions::AssumptionWindow</name>
    <message>
        <source>Assumptions</source>
        <translation>Supuestos</translation>
    </message>
    <message>
        <source>Figures that nobody has measured, with what each rests on. Results come with a band over these ranges; a figure changed here is held.</source>
        <translation>Cifras que nadie ha medido, con el fundamento de cada una. Los resultados llevan una banda sobre estos intervalos; una cifra cambiada aquí queda fija.</translation>
    </message>
    <message>
        <source>Search the assumptions</source>
        <translation>Buscar en los supuestos</translation>
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
        <translation>Precaución: %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Commissioning checklist</source>
        <translation>Lista de verificación de puesta en marcha</translation>
    </message>
    <message>
        <source>done by, time</source>
        <translation>hecho por, hora</translation>
    </message>
    <message>
        <source>Estimates from stated assumptions. The heater&apos;s and the engine&apos;s own manuals rule.</source>
        <translation>Estimaciones a partir de supuestos declarados. Mandan los manuales del calentador y del motor.</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>página %1 de %2</translation>
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
        <translation>Hora</translation>
    </message>
    <message>
        <source>Ambient</source>
        <translation>Ambiente</translation>
    </message>
    <message>
        <source>Inlet</source>
        <translation>Entrada</translation>
    </message>
    <message>
        <source>Outlet</source>
        <translation>Salida</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Retorno</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corriente</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Tensión</translation>
    </message>
    <message>
        <source>V</source>
        <translation>V</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Nivel</translation>
    </message>
    <message>
        <source>On/off</source>
        <translation>Enc./apag.</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>visto</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Readings: %1</source>
        <translation>Lecturas: %1</translation>
    </message>
    <message>
        <source>%1: the checklist could not be drawn.</source>
        <translation>%1: no se pudo dibujar la lista de verificación.</translation>
    </message>
    <message>
        <source>fits</source>
        <translation>concuerda</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>dudoso</translation>
    </message>
    <message>
        <source>does not fit</source>
        <translation>no concuerda</translation>
    </message>
    <message>
        <source>over the limit</source>
        <translation>sobre el límite</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>sin evaluar</translation>
    </message>
    <message>
        <source>d MMM HH:mm</source>
        <translation>d MMM HH:mm</translation>
    </message>
    <message>
        <source>Limits: outlet under %1 all the time, at most %2 cycles an hour.</source>
        <translation>Límites: salida bajo %1 todo el tiempo, como mucho %2 ciclos por hora.</translation>
    </message>
    <message>
        <source>Limits: those of the heater&apos;s manual.</source>
        <translation>Límites: los del manual del calentador.</translation>
    </message>
    <message>
        <source>Nothing was computed to expect.</source>
        <translation>No se calculó nada que esperar.</translation>
    </message>
    <message>
        <source>Expected: outlet peaks at %1 (%2 to %3).</source>
        <translation>Se espera: la salida llega como mucho a %1 (%2 a %3).</translation>
    </message>
    <message>
        <source>Expected: outlet peaks at %1.</source>
        <translation>Se espera: la salida llega como mucho a %1.</translation>
    </message>
    <message>
        <source>outlet: line; engine: dashes; limit: dots</source>
        <translation>salida: línea; motor: trazos; límite: puntos</translation>
    </message>
    <message>
        <source>peak, range</source>
        <translation>máximo, margen</translation>
    </message>
    <message>
        <source>steps with their cautions, readings with limits and what is expected</source>
        <translation>pasos con sus precauciones, lecturas con límites y lo que se espera</translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::CommissioningPanel</name>
    <message>
        <source>Heater</source>
        <translation>Calentador</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Paso</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Lista</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>Diagnosis</source>
        <translation>Diagnóstico</translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::DiagnosisView</name>
    <message>
        <source>The faults are being simulated…</source>
        <translation>Simulando las fallas…</translation>
    </message>
    <message>
        <source>A diagnosis appears when there are readings.</source>
        <translation>El diagnóstico aparece cuando hay lecturas.</translation>
    </message>
    <message>
        <source>Not diagnosed: %1.</source>
        <translation>Sin diagnosticar: %1.</translation>
    </message>
    <message>
        <source>What would give these readings, by simulation of each fault on this drawing. Estimates: make sure before a part is replaced.</source>
        <translation>Qué daría estas lecturas, según la simulación de cada falla en este dibujo. Estimaciones: asegúrese antes de cambiar una pieza.</translation>
    </message>
    <message>
        <source>Of the readings as they were. </source>
        <translation>De las lecturas tal como estaban. </translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Siguiente: %1</translation>
    </message>
    <message>
        <source>or: %1</source>
        <translation>o: %1</translation>
    </message>
    <message>
        <source>Show on the
drawing</source>
        <translation>Mostrar en
el dibujo</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Mostrar</translation>
    </message>
    <message>
        <source>Show on the drawing: %1</source>
        <translation>Mostrar en el dibujo: %1</translation>
    </message>
    <message>
        <source>Probability %1</source>
        <translation>Probabilidad %1</translation>
    </message>
    <message>
        <source>Why: %1</source>
        <translation>Por qué: %1</translation>
    </message>
    <message>
        <source>Make sure: %1</source>
        <translation>Asegúrese: %1</translation>
    </message>
    <message>
        <source>Then: %1</source>
        <translation>Después: %1</translation>
    </message>
    <message>
        <source>These readings cannot tell it from:</source>
        <translation>Estas lecturas no la distinguen de:</translation>
    </message>
    <message>
        <source>▲ None of the faults listed explains these readings well.</source>
        <translation>▲ Ninguna de las fallas de la lista explica bien estas lecturas.</translation>
    </message>
    <message>
        <source>The nearest of those listed:</source>
        <translation>Las más cercanas de la lista:</translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::ReadingChart</name>
    <message>
        <source>Readings over what the drawing would give</source>
        <translation>Lecturas sobre lo que daría el dibujo</translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::ReadingsView</name>
    <message>
        <source>Remove this reading</source>
        <translation>Quitar esta lectura</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Hora</translation>
    </message>
    <message>
        <source>Ambient</source>
        <translation>Ambiente</translation>
    </message>
    <message>
        <source>Power on</source>
        <translation>Con tensión</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>＋ Add a reading now</source>
        <translation>＋ Añadir lectura ahora</translation>
    </message>
    <message>
        <source>Turned on now</source>
        <translation>Se encendió ahora</translation>
    </message>
    <message>
        <source>Turned off now</source>
        <translation>Se apagó ahora</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>encendido %1</translation>
    </message>
    <message>
        <source>off %1</source>
        <translation>apagado %1</translation>
    </message>
    <message>
        <source>When it was turned on is not entered: press &quot;Turned on now&quot; then.</source>
        <translation>Falta cuándo se encendió: pulse entonces &quot;Se encendió ahora&quot;.</translation>
    </message>
    <message>
        <source>Seen to turn: %1</source>
        <translation>Cambios vistos: %1</translation>
    </message>
    <message>
        <source>%1 %2: %3</source>
        <translation>%1 %2: %3</translation>
    </message>
    <message>
        <source>Not judged against the drawing: %1.</source>
        <translation>Sin evaluar frente al dibujo: %1.</translation>
    </message>
    <message>
        <source>No readings of this heater yet.</source>
        <translation>Aún no hay lecturas de este calentador.</translation>
    </message>
    <message>
        <source>Add a reading</source>
        <translation>Añadir una lectura</translation>
    </message>
    <message>
        <source>Remove a reading</source>
        <translation>Quitar una lectura</translation>
    </message>
    <message>
        <source>Note turning on</source>
        <translation>Anotar encendido</translation>
    </message>
    <message>
        <source>Note turning off</source>
        <translation>Anotar apagado</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: %2</source>
        <translation>&quot;%1&quot;: %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a time: 25 Nov 07:30, or 2026-11-25T07:30.</source>
        <translation>&quot;%1&quot; no es una hora: 25 nov 07:30, o 2026-11-25T07:30.</translation>
    </message>
    <message>
        <source>Change a reading</source>
        <translation>Cambiar una lectura</translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::StepList</name>
    <message>
        <source>Steps of the work</source>
        <translation>Pasos del trabajo</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimir…</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Guardar PDF…</translation>
    </message>
    <message>
        <source>%1 of %2 steps done</source>
        <translation>%1 de %2 pasos hechos</translation>
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
      ▲ fuera de orden: %1</translation>
    </message>
    <message>
        <source>
      ▲ what it rests on is open again</source>
        <translation>
      ▲ aquello de lo que depende está abierto de nuevo</translation>
    </message>
    <message>
        <source>
      waits for steps before it</source>
        <translation>
      espera pasos anteriores</translation>
    </message>
</context>
<context>
    <name>siphonwright::commissioning::StepView</name>
    <message>
        <source>Done all the same</source>
        <translation>Hecho de todos modos</translation>
    </message>
    <message>
        <source>Not done after all</source>
        <translation>No hecho, después de todo</translation>
    </message>
    <message>
        <source>◀ Back</source>
        <translation>◀ Atrás</translation>
    </message>
    <message>
        <source>Next ▶</source>
        <translation>Sigue ▶</translation>
    </message>
    <message>
        <source>✓ Done</source>
        <translation>✓ Hecho</translation>
    </message>
    <message>
        <source>Steps done</source>
        <translation>Pasos hechos</translation>
    </message>
    <message>
        <source>Done by</source>
        <translation>Hecho por</translation>
    </message>
    <message>
        <source>Why it is done before its turn</source>
        <translation>Por qué se hace antes de su turno</translation>
    </message>
    <message>
        <source>• %1</source>
        <translation>• %1</translation>
    </message>
    <message>
        <source>Step %1 of %2 · %3 done</source>
        <translation>Paso %1 de %2 · %3 hechos</translation>
    </message>
    <message>
        <source>⚠ %1</source>
        <translation>⚠ %1</translation>
    </message>
    <message>
        <source>✓ Done %1</source>
        <translation>✓ Hecho %1</translation>
    </message>
    <message>
        <source>✓ Done %1 by %2</source>
        <translation>✓ Hecho %1 por %2</translation>
    </message>
    <message>
        <source>Out of order: %1</source>
        <translation>Fuera de orden: %1</translation>
    </message>
    <message>
        <source>Not yet. First:</source>
        <translation>Todavía no. Primero:</translation>
    </message>
    <message>
        <source>Tick &quot;%1&quot;</source>
        <translation>Marcar &quot;%1&quot;</translation>
    </message>
    <message>
        <source>Take &quot;%1&quot; back</source>
        <translation>Desmarcar &quot;%1&quot;</translation>
    </message>
</context>
<context>
    <name>siphonwright::demonstration</name>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>From the fill to the heater on</source>
        <translation>Del llenado al calentador encendido</translation>
    </message>
    <message>
        <source>%1: a moment is written as .png or .svg.</source>
        <translation>%1: un momento se escribe como .png o .svg.</translation>
    </message>
    <message>
        <source>%1: the moment could not be drawn.</source>
        <translation>%1: no se pudo dibujar el momento.</translation>
    </message>
    <message>
        <source>%1 is a file; the pictures need a folder.</source>
        <translation>%1 es un archivo; las imágenes necesitan una carpeta.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation>No se puede crear la carpeta %1.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be written to.</source>
        <translation>No se puede escribir en la carpeta %1.</translation>
    </message>
    <message>
        <source>Handout: %1</source>
        <translation>Hoja de clase: %1</translation>
    </message>
    <message>
        <source>%1: the handout could not be drawn.</source>
        <translation>%1: no se pudo dibujar la hoja de clase.</translation>
    </message>
    <message>
        <source>Filling</source>
        <translation>Llenado</translation>
    </message>
    <message>
        <source>Engine running</source>
        <translation>Motor en marcha</translation>
    </message>
    <message>
        <source>Topped up</source>
        <translation>Completado</translation>
    </message>
    <message>
        <source>Heater on</source>
        <translation>Calentador encendido</translation>
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
        <translation>Si circula el dibujo de al lado</translation>
    </message>
    <message>
        <source>The drawing beside</source>
        <translation>El dibujo de al lado</translation>
    </message>
    <message>
        <source>Nothing to show: %1.</source>
        <translation>Nada que mostrar: %1.</translation>
    </message>
</context>
<context>
    <name>siphonwright::demonstration::DemonstrationBar</name>
    <message>
        <source>Pause</source>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Reproducir</translation>
    </message>
    <message>
        <source>What is happening now</source>
        <translation>Qué está pasando ahora</translation>
    </message>
    <message>
        <source>Full screen</source>
        <translation>Pantalla completa</translation>
    </message>
    <message>
        <source>Large, for the back of the room (F11)</source>
        <translation>En grande, para el fondo del aula (F11)</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Salir</translation>
    </message>
    <message>
        <source>End the demonstration (Escape)</source>
        <translation>Terminar la demostración (Esc)</translation>
    </message>
    <message>
        <source>Start again</source>
        <translation>Empezar de nuevo</translation>
    </message>
    <message>
        <source>Back to the start (Home)</source>
        <translation>Volver al inicio (Inicio)</translation>
    </message>
    <message>
        <source>One step back (Left)</source>
        <translation>Un paso atrás (Izquierda)</translation>
    </message>
    <message>
        <source>Play or pause (Space)</source>
        <translation>Reproducir o pausar (Espacio)</translation>
    </message>
    <message>
        <source>One step on (Right)</source>
        <translation>Un paso adelante (Derecha)</translation>
    </message>
    <message>
        <source>One step back</source>
        <translation>Un paso atrás</translation>
    </message>
    <message>
        <source>One step on</source>
        <translation>Un paso adelante</translation>
    </message>
    <message>
        <source>%1×</source>
        <translation>%1×</translation>
    </message>
    <message>
        <source>Speed with the heater on</source>
        <translation>Velocidad con calentador encendido</translation>
    </message>
    <message>
        <source>How much faster than the truth it goes with the heater on</source>
        <translation>Cuánto más rápido que la realidad va con el calentador encendido</translation>
    </message>
    <message>
        <source>Engine run</source>
        <translation>Marcha del motor</translation>
    </message>
    <message>
        <source>Run the engine and top up before the heater is switched on, or leave it out</source>
        <translation>Hacer funcionar el motor y completar el nivel antes de encender el calentador, u omitirlo</translation>
    </message>
    <message>
        <source>Hide findings</source>
        <translation>Ocultar hallazgos</translation>
    </message>
    <message>
        <source>Let the class guess first (H)</source>
        <translation>Dejar que la clase adivine primero (H)</translation>
    </message>
    <message>
        <source>Ask</source>
        <translation>Preguntar</translation>
    </message>
    <message>
        <source>Count hands, then reveal</source>
        <translation>Contar manos y luego revelar</translation>
    </message>
    <message>
        <source>Nothing to show yet: %1.</source>
        <translation>Aún nada que mostrar: %1.</translation>
    </message>
    <message>
        <source>The heater cannot be switched on yet: %1.</source>
        <translation>Aún no se puede encender el calentador: %1.</translation>
    </message>
</context>
<context>
    <name>siphonwright::demonstration::ScrubBar</name>
    <message>
        <source>Where the demonstration stands</source>
        <translation>En qué punto está la demostración</translation>
    </message>
    <message>
        <source>Drag to move through the demonstration; ticks are where something happens.</source>
        <translation>Arrastre para recorrer la demostración; las marcas están donde sucede algo.</translation>
    </message>
</context>
<context>
    <name>siphonwright::demonstration::Votes</name>
    <message>
        <source>Reveal</source>
        <translation>Revelar</translation>
    </message>
    <message>
        <source>Will it circulate?</source>
        <translation>¿Circulará?</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>One more %1</source>
        <translation>Uno más: %1</translation>
    </message>
    <message>
        <source>One less %1</source>
        <translation>Uno menos: %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::drawing</name>
    <message>
        <source>plumb</source>
        <translation>a plomo</translation>
    </message>
    <message>
        <source>level</source>
        <translation>a nivel</translation>
    </message>
    <message>
        <source>rises at %1</source>
        <translation>sube a %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1: depth not entered</source>
        <translation>%1: falta la profundidad</translation>
    </message>
    <message>
        <source>Right side</source>
        <translation>Lado derecho</translation>
    </message>
    <message>
        <source>Left side</source>
        <translation>Lado izquierdo</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Frente</translation>
    </message>
    <message>
        <source>Jacket highest</source>
        <translation>Camisa, lo más alto</translation>
    </message>
    <message>
        <source>Jacket lowest</source>
        <translation>Camisa, lo más bajo</translation>
    </message>
    <message>
        <source>Thermostat</source>
        <translation>Termostato</translation>
    </message>
    <message>
        <source>Supply %1</source>
        <translation>Alimentación %1</translation>
    </message>
    <message>
        <source>Return %1</source>
        <translation>Retorno %1</translation>
    </message>
    <message>
        <source>Ground, lowest ride height</source>
        <translation>Suelo, suspensión al mínimo</translation>
    </message>
    <message>
        <source>Datum</source>
        <translation>Referencia</translation>
    </message>
    <message>
        <source>Level hot</source>
        <translation>Nivel en caliente</translation>
    </message>
    <message>
        <source>Level cold full</source>
        <translation>Nivel lleno en frío</translation>
    </message>
    <message>
        <source>Level cold minimum</source>
        <translation>Nivel mínimo en frío</translation>
    </message>
    <message>
        <source>Surge tank</source>
        <translation>Vaso de expansión</translation>
    </message>
    <message>
        <source>may sag %1</source>
        <translation>puede combarse %1</translation>
    </message>
    <message>
        <source>plumb, %1 off</source>
        <translation>a plomo, desvío %1</translation>
    </message>
    <message>
        <source>%1 of air, locks the loop</source>
        <translation>%1 de aire, bloquea el circuito</translation>
    </message>
    <message>
        <source>%1 of air, cleared by running</source>
        <translation>%1 de aire, la marcha lo expulsa</translation>
    </message>
    <message>
        <source>%1 of air, may clear</source>
        <translation>%1 de aire, puede salir</translation>
    </message>
    <message>
        <source>%1 of air, stays</source>
        <translation>%1 de aire, se queda</translation>
    </message>
    <message>
        <source>%1 drives, air takes %2</source>
        <translation>impulsa %1, el aire resta %2</translation>
    </message>
    <message>
        <source>%1 drives, %2 resists</source>
        <translation>impulsa %1, resiste %2</translation>
    </message>
    <message>
        <source>%1 drives, air resists %2</source>
        <translation>impulsa %1, el aire opone %2</translation>
    </message>
    <message>
        <source>nothing drives it</source>
        <translation>nada lo impulsa</translation>
    </message>
    <message>
        <source>%1 would drive it</source>
        <translation>%1 lo impulsaría</translation>
    </message>
    <message>
        <source>runs backward</source>
        <translation>va al revés</translation>
    </message>
    <message>
        <source>stalled</source>
        <translation>detenido</translation>
    </message>
    <message>
        <source>a valve is shut</source>
        <translation>una válvula está cerrada</translation>
    </message>
    <message>
        <source>boils</source>
        <translation>hierve</translation>
    </message>
    <message>
        <source>coolant is slush</source>
        <translation>el refrigerante es granizado</translation>
    </message>
    <message>
        <source>not computed</source>
        <translation>sin calcular</translation>
    </message>
    <message>
        <source>in %1, out %2</source>
        <translation>entra %1, sale %2</translation>
    </message>
    <message>
        <source>at %1 block</source>
        <translation>con bloque a %1</translation>
    </message>
    <message>
        <source>plumb up</source>
        <translation>a plomo, sube</translation>
    </message>
    <message>
        <source>plumb down</source>
        <translation>a plomo, baja</translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation>%1 sube</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>%1 baja</translation>
    </message>
    <message>
        <source>%1 of air, turns the flow round</source>
        <translation>%1 de aire, invierte el caudal</translation>
    </message>
    <message>
        <source>%1, %2 along it</source>
        <translation>%1, a %2 de su inicio</translation>
    </message>
    <message>
        <source>%1 over the datum</source>
        <translation>%1 sobre la referencia</translation>
    </message>
    <message>
        <source>behind %1</source>
        <translation>detrás de %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::headless</name>
    <message>
        <source>%1 needs %2.</source>
        <translation>%1 necesita %2.</translation>
    </message>
    <message>
        <source>%1 does not know what to do with &quot;%2&quot;.</source>
        <translation>%1 no sabe qué hacer con &quot;%2&quot;.</translation>
    </message>
    <message>
        <source>STOP</source>
        <translation>PARADA</translation>
    </message>
    <message>
        <source>CAUTION</source>
        <translation>AVISO</translation>
    </message>
    <message>
        <source>advice</source>
        <translation>consejo</translation>
    </message>
    <message>
        <source>The job is stopped.</source>
        <translation>El trabajo queda detenido.</translation>
    </message>
    <message>
        <source>Nothing stops the job.</source>
        <translation>Nada detiene el trabajo.</translation>
    </message>
    <message>
        <source>Nothing that was judged stops the job.</source>
        <translation>Nada de lo evaluado detiene el trabajo.</translation>
    </message>
    <message>
        <source> [%1: measured %2, limit %3]</source>
        <translation> [%1: medido %2, límite %3]</translation>
    </message>
    <message>
        <source> Hangs on %1.</source>
        <translation> Depende de %1.</translation>
    </message>
    <message>
        <source>  not judged: %1 [%2]</source>
        <translation>  sin evaluar: %1 [%2]</translation>
    </message>
    <message>
        <source>  switched off: %1 (%2)</source>
        <translation>  desactivado: %1 (%2)</translation>
    </message>
    <message>
        <source>  not confirmed: %1</source>
        <translation>  sin confirmar: %1</translation>
    </message>
    <message>
        <source>%1, %2, %3, %4.</source>
        <translation>%1, %2, %3, %4.</translation>
    </message>
    <message>
        <source>1 stop</source>
        <translation>1 parada</translation>
    </message>
    <message>
        <source>%1 stops</source>
        <translation>%1 paradas</translation>
    </message>
    <message>
        <source>1 caution</source>
        <translation>1 aviso</translation>
    </message>
    <message>
        <source>%1 cautions</source>
        <translation>%1 avisos</translation>
    </message>
    <message>
        <source>1 advice</source>
        <translation>1 consejo</translation>
    </message>
    <message>
        <source>%1 advices</source>
        <translation>%1 consejos</translation>
    </message>
    <message>
        <source>%1 not judged</source>
        <translation>%1 sin evaluar</translation>
    </message>
    <message>
        <source>Checklist: %1 of %2 steps done.</source>
        <translation>Lista de verificación: %1 de %2 pasos hechos.</translation>
    </message>
    <message>
        <source>out of order: %1 (%2)</source>
        <translation>fuera de orden: %1 (%2)</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation>sin motivo indicado</translation>
    </message>
    <message>
        <source>not judged: %1</source>
        <translation>sin evaluar: %1</translation>
    </message>
    <message>
        <source>not diagnosed: %1</source>
        <translation>sin diagnosticar: %1</translation>
    </message>
    <message>
        <source>or: %1</source>
        <translation>o: %1</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Siguiente: %1</translation>
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
        <translation>  No hay calentador que diagnosticar.</translation>
    </message>
    <message>
        <source>block full, new hoses empty</source>
        <translation>bloque lleno, mangueras nuevas vacías</translation>
    </message>
    <message>
        <source>block partly drained, new hoses empty</source>
        <translation>bloque vaciado en parte, mangueras nuevas vacías</translation>
    </message>
    <message>
        <source>block full, hoses and heater filled before they are connected</source>
        <translation>bloque lleno, mangueras y calentador llenados antes de conectarlos</translation>
    </message>
    <message>
        <source>engine and hoses empty</source>
        <translation>motor y mangueras vacíos</translation>
    </message>
    <message>
        <source>Start: %1; %2 of air in each hose.</source>
        <translation>Inicio: %1; %2 de aire en cada manguera.</translation>
    </message>
    <message>
        <source>Start: %1; no air in them.</source>
        <translation>Inicio: %1; sin aire en ellas.</translation>
    </message>
    <message>
        <source>filled under vacuum</source>
        <translation>llenado con vacío</translation>
    </message>
    <message>
        <source>filled from below</source>
        <translation>llenado desde abajo</translation>
    </message>
    <message>
        <source>filled at the filler</source>
        <translation>llenado por la boca</translation>
    </message>
    <message>
        <source>Start: %1; %2</source>
        <translation>Inicio: %1; %2</translation>
    </message>
    <message>
        <source>%1, %2 short.</source>
        <translation>%1, faltan %2.</translation>
    </message>
    <message>
        <source>No air stays.</source>
        <translation>No queda aire.</translation>
    </message>
    <message>
        <source>There is nothing to draw: %1.</source>
        <translation>No hay nada que dibujar: %1.</translation>
    </message>
    <message>
        <source>a folder for the pictures</source>
        <translation>una carpeta para las imágenes</translation>
    </message>
    <message>
        <source>%1 pictures written to %2.</source>
        <translation>%1 imágenes escritas en %2.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a command.</source>
        <translation>&quot;%1&quot; no es un comando.</translation>
    </message>
    <message>
        <source>%1 could not be written: %2</source>
        <translation>%1 no se pudo escribir: %2</translation>
    </message>
    <message>
        <source>  Nothing is drawn that takes parts.</source>
        <translation>  No hay nada dibujado que lleve piezas.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>desconocido</translation>
    </message>
    <message>
        <source>not priced</source>
        <translation>sin precio</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Pos.</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>List price</source>
        <translation>Precio lista</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>Hose of %1</source>
        <translation>Manguera de %1</translation>
    </message>
    <message>
        <source>Hose without a bore</source>
        <translation>Manguera sin diámetro interior</translation>
    </message>
    <message>
        <source>  %1: not planned. %2</source>
        <translation>  %1: sin planificar. %2</translation>
    </message>
    <message>
        <source>  %1: %2 from rolls of %3, the least there is; %4 left over.</source>
        <translation>  %1: %2 de rollos de %3, lo mínimo posible; sobran %4.</translation>
    </message>
    <message>
        <source>  %1: %2 from rolls of %3; %4 left over. No plan needs less than %5.</source>
        <translation>  %1: %2 de rollos de %3; sobran %4. Ningún plan necesita menos de %5.</translation>
    </message>
    <message>
        <source>  Materials at list price: %1.</source>
        <translation>  Materiales a precio de lista: %1.</translation>
    </message>
    <message>
        <source>  Materials at list price: %1, incomplete: one item is not priced.</source>
        <translation>  Materiales a precio de lista: %1, incompleto: un artículo no tiene precio.</translation>
    </message>
    <message>
        <source>  Materials at list price: %1, incomplete: %2 items are not priced.</source>
        <translation>  Materiales a precio de lista: %1, incompleto: %2 artículos no tienen precio.</translation>
    </message>
    <message>
        <source>the name of a price list</source>
        <translation>el nombre de una lista de precios</translation>
    </message>
    <message>
        <source>the name of a file to write</source>
        <translation>el nombre de un archivo que escribir</translation>
    </message>
    <message>
        <source>, for %1 vehicles</source>
        <translation>, para %1 vehículos</translation>
    </message>
    <message>
        <source>  %1 written.</source>
        <translation>  %1 escrito.</translation>
    </message>
    <message>
        <source>sheet needs a sketch file and --output OUT.pdf, .svg or .png.</source>
        <translation>sheet necesita un archivo de dibujo y --output SALIDA.pdf, .svg o .png.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no paper; A4, A3, Letter or Tabloid is.</source>
        <translation>&quot;%1&quot; no es un papel; lo son A4, A3, Letter o Tabloid.</translation>
    </message>
    <message>
        <source>OUT.pdf, .svg or .png</source>
        <translation>SALIDA.pdf, .svg o .png</translation>
    </message>
    <message>
        <source>A4, A3, Letter or Tabloid</source>
        <translation>A4, A3, Letter o Tabloid</translation>
    </message>
    <message>
        <source>%1 written, scale 1:%2.</source>
        <translation>%1 escrito, escala 1:%2.</translation>
    </message>
    <message>
        <source>A4 or Letter</source>
        <translation>A4 o Letter</translation>
    </message>
    <message>
        <source>a file to write, OUT.pdf</source>
        <translation>un archivo que escribir, SALIDA.pdf</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no paper for the form; A4 or Letter is.</source>
        <translation>&quot;%1&quot; no es un papel para el formulario; lo son A4 o Letter.</translation>
    </message>
    <message>
        <source>survey-form needs a file to write, OUT.pdf.</source>
        <translation>survey-form necesita un archivo que escribir, SALIDA.pdf.</translation>
    </message>
    <message>
        <source>%1 written.</source>
        <translation>%1 escrito.</translation>
    </message>
    <message>
        <source>%1: %2 is not from %3 to %4.</source>
        <translation>%1: %2 no está entre %3 y %4.</translation>
    </message>
    <message>
        <source>    the return is warm to the hand at the engine after %1 min
</source>
        <translation>    el retorno se nota caliente en el motor tras %1 min
</translation>
    </message>
    <message>
        <source>    an infrared thermometer reads %1 on the return hose there at the end
</source>
        <translation>    un termómetro infrarrojo lee %1 en la manguera de retorno allí al final
</translation>
    </message>
    <message>
        <source>    the cut-out trips after %1 min
</source>
        <translation>    el limitador se dispara tras %1 min
</translation>
    </message>
    <message>
        <source>    on the edge: air withstands nearly all that drives, and small causes decide
</source>
        <translation>    al borde: el aire opone casi todo lo que impulsa, y pequeñas causas deciden
</translation>
    </message>
    <message>
        <source>  assumed: %1</source>
        <translation>  supuesto: %1</translation>
    </message>
    <message>
        <source> (changed; usually %1)</source>
        <translation> (cambiado; normalmente %1)</translation>
    </message>
    <message>
        <source>there is no warm-up to write: %1</source>
        <translation>no hay calentamiento que escribir: %1</translation>
    </message>
    <message>
        <source>a time in hours</source>
        <translation>un tiempo en horas</translation>
    </message>
    <message>
        <source>a temperature</source>
        <translation>una temperatura</translation>
    </message>
    <message>
        <source>a sketch file</source>
        <translation>un archivo de dibujo</translation>
    </message>
    <message>
        <source>None of the faults listed explains these readings well. The nearest of them:</source>
        <translation>Ninguna de las fallas de la lista explica bien estas lecturas. Las más cercanas:</translation>
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
        <translation>siphonwright [ARCHIVO]                    abre la ventana
siphonwright check ARCHIVO... [--json] [--bands]
                                          evalúa dibujos; --bands: sobre todo lo supuesto
siphonwright warm-up ARCHIVO [--hours H] [--ambient T] [--csv SALIDA]
                                          cómo se calienta el motor
siphonwright fill ARCHIVO [--json] [--frames CARPETA]
                                          dice cómo se llena y qué aire queda; --frames: como
                                          imágenes numeradas, moment-0001.png y siguientes
siphonwright parts ARCHIVO [--prices LISTA.csv] [--csv SALIDA.csv]
                                          lista piezas, cortes y lo que no tiene precio
siphonwright diagnose ARCHIVO [--json]    evalúa sus lecturas y dice qué las explica
siphonwright sheet ARCHIVO --output SALIDA.pdf|.svg|.png
             [--paper A4|A3|Letter|Tabloid] [--portrait] [--colour]
             [--parts] [--photo] [--student] [--third-angle]
             [--pages NAMES|all] [--scale 1:N] [--dpi N] [--logo PICTURE]
siphonwright sheet ARCHIVO... --output-dir DIR
                                          dibuja la hoja; --pages: drawing, fitting, checklist,
                                          parts, estimate, assumptions, separadas por comas;
                                          --scale: en varias páginas donde no cabe;
                                          --photo: sobre la foto; --student: sin hallazgos;
                                          --third-angle: la vista de extremo así colocada;
                                          --output-dir: cada croquis como PDF en una carpeta
siphonwright survey-form SALIDA.pdf [--paper A4|Letter] [--inch]
                                          una página en blanco para medir en el vehículo
siphonwright --help | --version

Código de salida: 0 nada detiene el trabajo; 1 al menos una parada; 2 un archivo no se
pudo leer o escribir, o un argumento es incorrecto.
</translation>
    </message>
    <message>
        <source>Several sketches need --output-dir DIR.</source>
        <translation>Varios croquis necesitan --output-dir DIR.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no scale; 1:10 is.</source>
        <translation>«%1» no es una escala; 1:10 lo es.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no resolution; 20 to 1200 dots per inch are.</source>
        <translation>«%1» no es una resolución; valen de 20 a 1200 puntos por pulgada.</translation>
    </message>
    <message>
        <source>%1 could not be read as a picture.</source>
        <translation>%1 no se pudo leer como imagen.</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: pages are drawing, fitting, checklist, parts, estimate and assumptions, with commas between, or all.</source>
        <translation>«%1»: las páginas son drawing, fitting, checklist, parts, estimate y assumptions, separadas por comas, o all.</translation>
    </message>
    <message>
        <source>%1 cannot be made.</source>
        <translation>%1 no se puede crear.</translation>
    </message>
    <message>
        <source>the name of a folder</source>
        <translation>el nombre de una carpeta</translation>
    </message>
    <message>
        <source>names of pages, or all</source>
        <translation>nombres de páginas, o all</translation>
    </message>
    <message>
        <source>a scale such as 1:10</source>
        <translation>una escala como 1:10</translation>
    </message>
    <message>
        <source>dots per inch</source>
        <translation>puntos por pulgada</translation>
    </message>
    <message>
        <source>the name of a picture</source>
        <translation>el nombre de una imagen</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels</name>
    <message>
        <source>Flow %1, in at %2, out at %3.</source>
        <translation>Caudal %1, entra a %2, sale a %3.</translation>
    </message>
    <message>
        <source>%1 of head drives (%2), %3 resists (%4).</source>
        <translation>Altura que impulsa %1 (%2), que resiste %3 (%4).</translation>
    </message>
    <message>
        <source>Air takes %1 of it.</source>
        <translation>El aire resta %1 de ella.</translation>
    </message>
    <message>
        <source>On the edge: small causes decide whether it runs.</source>
        <translation>Al borde: pequeñas causas deciden si funciona.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Largest losses: %1.</source>
        <translation>Mayores pérdidas: %1.</translation>
    </message>
    <message>
        <source>Over the warm-up: hottest outlet %1</source>
        <translation>En el calentamiento: salida más caliente %1</translation>
    </message>
    <message>
        <source>, %1 under boiling</source>
        <translation>, %1 bajo la ebullición</translation>
    </message>
    <message>
        <source>, element&apos;s surface %1 with bubbles on it</source>
        <translation>, superficie de la resistencia %1 con burbujas</translation>
    </message>
    <message>
        <source>, element&apos;s surface %1</source>
        <translation>, superficie de la resistencia %1</translation>
    </message>
    <message>
        <source>How it runs is not computed: %1.</source>
        <translation>No está calculado cómo funciona: %1.</translation>
    </message>
    <message>
        <source>%1, with the block at %2.</source>
        <translation>%1, con el bloque a %2.</translation>
    </message>
    <message>
        <source>Circulates</source>
        <translation>Circula</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::DetailsPanel</name>
    <message numerus="yes">
        <source>%1, and %n more selected</source>
        <translation>
            <numerusform>%1, y %n más seleccionada</numerusform>
            <numerusform>%1, y %n más seleccionadas</numerusform>
        </translation>
    </message>
    <message>
        <source>The warm-up is of the drawing a moment ago.</source>
        <translation>El calentamiento es del dibujo de hace un momento.</translation>
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
        <translation>Sin evaluar.</translation>
    </message>
    <message>
        <source>Not confirmed.</source>
        <translation>Sin confirmar.</translation>
    </message>
    <message>
        <source>STOP</source>
        <translation>PARADA</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Aviso</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Consejo</translation>
    </message>
    <message>
        <source>&lt;b&gt;Fix:&lt;/b&gt;</source>
        <translation>&lt;b&gt;Corrección:&lt;/b&gt;</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FindingsModel</name>
    <message>
        <source>%1. Basis: %2</source>
        <translation>%1. Fundamento: %2</translation>
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
        <translation>De esto dependen evaluaciones. Mídalo o consúltelo, e indíquelo junto a la cifra.</translation>
    </message>
    <message>
        <source>Not confirmed: %1.</source>
        <translation>Sin confirmar: %1.</translation>
    </message>
    <message>
        <source>measured %1</source>
        <translation>medido %1</translation>
    </message>
    <message>
        <source>measured %1, limit %2</source>
        <translation>medido %1, límite %2</translation>
    </message>
    <message>
        <source>1 stops the job</source>
        <translation>1 detiene el trabajo</translation>
    </message>
    <message>
        <source>%1 stop the job</source>
        <translation>%1 detienen el trabajo</translation>
    </message>
    <message>
        <source>1 caution</source>
        <translation>1 aviso</translation>
    </message>
    <message>
        <source>%1 cautions</source>
        <translation>%1 avisos</translation>
    </message>
    <message>
        <source>%1 advice</source>
        <translation>%1 de consejo</translation>
    </message>
    <message>
        <source>%1 not judged</source>
        <translation>%1 sin evaluar</translation>
    </message>
    <message>
        <source>%1 not confirmed</source>
        <translation>%1 sin confirmar</translation>
    </message>
    <message>
        <source>Nothing to judge until hoses are drawn</source>
        <translation>Nada que evaluar hasta dibujar mangueras</translation>
    </message>
    <message>
        <source>Nothing found that stops the job</source>
        <translation>No se halló nada que detenga el trabajo</translation>
    </message>
    <message>
        <source>measured %1 (%2), limit %3 (%4)</source>
        <translation>medido %1 (%2), límite %3 (%4)</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FindingsPanel</name>
    <message>
        <source>About this rule…</source>
        <translation>Acerca de esta regla…</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>What it rests on, and its limits, which can be changed for this drawing</source>
        <translation>En qué se basa y sus límites, que se pueden cambiar para este dibujo</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FixBar</name>
    <message>
        <source>Fix it</source>
        <translation>Corregir</translation>
    </message>
    <message>
        <source>Looking for a fix…</source>
        <translation>Buscando corrección…</translation>
    </message>
    <message>
        <source>No small change of the drawing cures this by itself.</source>
        <translation>Ningún cambio pequeño del dibujo lo corrige por sí solo.</translation>
    </message>
    <message>
        <source>Proven by analysing the changed drawing. One undo takes it back.</source>
        <translation>Probado analizando el dibujo cambiado. Un solo deshacer lo revierte.</translation>
    </message>
    <message>
        <source>Fix: %1</source>
        <translation>Corregir: %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FormText</name>
    <message>
        <source>Along</source>
        <translation>A lo largo</translation>
    </message>
    <message>
        <source>Height over datum</source>
        <translation>Altura sobre referencia</translation>
    </message>
    <message>
        <source>Away from viewer</source>
        <translation>Lejos del observador</translation>
    </message>
    <message>
        <source>nothing: open end</source>
        <translation>nada: extremo abierto</translation>
    </message>
    <message>
        <source>%1, inlet</source>
        <translation>%1, entrada</translation>
    </message>
    <message>
        <source>%1, outlet</source>
        <translation>%1, salida</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medido</translation>
    </message>
    <message>
        <source>manual</source>
        <translation>manual</translation>
    </message>
    <message>
        <source>typical</source>
        <translation>típico</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>supuesto</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Elbow</source>
        <translation>Codo</translation>
    </message>
    <message>
        <source>none, straight</source>
        <translation>ninguno, recto</translation>
    </message>
    <message>
        <source>elbow or angled adapter</source>
        <translation>codo o adaptador en ángulo</translation>
    </message>
    <message>
        <source>Leaves, in plan</source>
        <translation>Sale, en planta</translation>
    </message>
    <message>
        <source>Leaves up by</source>
        <translation>Sale hacia arriba</translation>
    </message>
    <message>
        <source>Elbow radius</source>
        <translation>Radio del codo</translation>
    </message>
    <message>
        <source>Elbow leg</source>
        <translation>Brazo del codo</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>exhaust</source>
        <translation>escape</translation>
    </message>
    <message>
        <source>turbocharger</source>
        <translation>turbocompresor</translation>
    </message>
    <message>
        <source>heat shield</source>
        <translation>pantalla térmica</translation>
    </message>
    <message>
        <source>belt</source>
        <translation>correa</translation>
    </message>
    <message>
        <source>fan</source>
        <translation>ventilador</translation>
    </message>
    <message>
        <source>shaft</source>
        <translation>eje</translation>
    </message>
    <message>
        <source>steering</source>
        <translation>dirección</translation>
    </message>
    <message>
        <source>suspension</source>
        <translation>suspensión</translation>
    </message>
    <message>
        <source>other</source>
        <translation>otro</translation>
    </message>
    <message>
        <source>Near side</source>
        <translation>Lado cercano</translation>
    </message>
    <message>
        <source>Depth of its side towards the viewer; not entered: not known</source>
        <translation>Profundidad de su lado hacia el observador; sin introducir: desconocida</translation>
    </message>
    <message>
        <source>Far side</source>
        <translation>Lado lejano</translation>
    </message>
    <message>
        <source>Keep clear by</source>
        <translation>Distancia libre</translation>
    </message>
    <message>
        <source>Ground over datum</source>
        <translation>Suelo sobre referencia</translation>
    </message>
    <message>
        <source>At the lowest ride height</source>
        <translation>Con la suspensión al mínimo</translation>
    </message>
    <message>
        <source>Measures %1 along the hose</source>
        <translation>Mide %1 por la manguera</translation>
    </message>
    <message>
        <source>Measures %1</source>
        <translation>Mide %1</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>Desde %1</translation>
    </message>
    <message>
        <source>To %1</source>
        <translation>Hasta %1</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>horizontal</source>
        <translation>horizontal</translation>
    </message>
    <message>
        <source>vertical</source>
        <translation>vertical</translation>
    </message>
    <message>
        <source>along</source>
        <translation>a lo largo</translation>
    </message>
    <message>
        <source>slope</source>
        <translation>inclinación</translation>
    </message>
    <message>
        <source>Line aside</source>
        <translation>Línea apartada</translation>
    </message>
    <message>
        <source>From the line between its ends: up, right, or left of the way; negative: opposite</source>
        <translation>Desde la línea entre sus extremos: arriba, derecha o izquierda del camino; negativo: lo contrario</translation>
    </message>
    <message>
        <source>Engine front faces</source>
        <translation>El frente mira a</translation>
    </message>
    <message>
        <source>vehicle front</source>
        <translation>frente del vehículo</translation>
    </message>
    <message>
        <source>vehicle right</source>
        <translation>derecha del vehículo</translation>
    </message>
    <message>
        <source>vehicle rear</source>
        <translation>parte trasera</translation>
    </message>
    <message>
        <source>vehicle left</source>
        <translation>izquierda del vehículo</translation>
    </message>
    <message>
        <source>Stretches the jacket&apos;s outline to this level</source>
        <translation>Estira el contorno de la camisa hasta este nivel</translation>
    </message>
    <message>
        <source>Water jacket</source>
        <translation>Camisa de agua</translation>
    </message>
    <message>
        <source>Lowest level</source>
        <translation>Nivel más bajo</translation>
    </message>
    <message>
        <source>Highest level</source>
        <translation>Nivel más alto</translation>
    </message>
    <message>
        <source>Depth of the jacket&apos;s side towards the viewer</source>
        <translation>Profundidad del lado de la camisa hacia el observador</translation>
    </message>
    <message>
        <source>Arrangement</source>
        <translation>Disposición</translation>
    </message>
    <message>
        <source>in-line 3</source>
        <translation>3 en línea</translation>
    </message>
    <message>
        <source>in-line 4</source>
        <translation>4 en línea</translation>
    </message>
    <message>
        <source>in-line 5</source>
        <translation>5 en línea</translation>
    </message>
    <message>
        <source>in-line 6</source>
        <translation>6 en línea</translation>
    </message>
    <message>
        <source>vee 6</source>
        <translation>6 en V</translation>
    </message>
    <message>
        <source>vee 8</source>
        <translation>8 en V</translation>
    </message>
    <message>
        <source>vee 12</source>
        <translation>12 en V</translation>
    </message>
    <message>
        <source>vee 16</source>
        <translation>16 en V</translation>
    </message>
    <message>
        <source>slanted in-line</source>
        <translation>en línea inclinado</translation>
    </message>
    <message>
        <source>Displacement</source>
        <translation>Cilindrada</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masa</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Bloque</translation>
    </message>
    <message>
        <source>iron</source>
        <translation>hierro</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>aluminio</translation>
    </message>
    <message>
        <source>Coolant in engine</source>
        <translation>Refrigerante en motor</translation>
    </message>
    <message>
        <source>Front is at the</source>
        <translation>El frente está a la</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>Mount angle</source>
        <translation>Ángulo de montaje</translation>
    </message>
    <message>
        <source>Positive: the engine&apos;s rear is lower</source>
        <translation>Positivo: la parte trasera del motor está más baja</translation>
    </message>
    <message>
        <source>Lean</source>
        <translation>Ladeo</translation>
    </message>
    <message>
        <source>Positive: the top leans towards the engine&apos;s right side</source>
        <translation>Positivo: la parte superior se ladea hacia el lado derecho del motor</translation>
    </message>
    <message>
        <source>Thermostat housing</source>
        <translation>Carcasa del termostato</translation>
    </message>
    <message>
        <source>Surge tank and levels</source>
        <translation>Vaso de expansión y niveles</translation>
    </message>
    <message>
        <source>Sits on the</source>
        <translation>Está en el</translation>
    </message>
    <message>
        <source>outlet side</source>
        <translation>lado de salida</translation>
    </message>
    <message>
        <source>inlet side</source>
        <translation>lado de entrada</translation>
    </message>
    <message>
        <source>Bleed hole</source>
        <translation>Orificio de purga</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>Coolant levels over datum</source>
        <translation>Niveles sobre referencia</translation>
    </message>
    <message>
        <source>Cold minimum</source>
        <translation>Mínimo en frío</translation>
    </message>
    <message>
        <source>Cold full</source>
        <translation>Lleno en frío</translation>
    </message>
    <message>
        <source>Hot</source>
        <translation>En caliente</translation>
    </message>
    <message>
        <source>Position</source>
        <translation>Posición</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Engine outline, corner %1</source>
        <translation>Contorno del motor, esquina %1</translation>
    </message>
    <message>
        <source>Water jacket, corner %1</source>
        <translation>Camisa de agua, esquina %1</translation>
    </message>
    <message>
        <source>Surge tank</source>
        <translation>Vaso de expansión</translation>
    </message>
    <message>
        <source>Port: %1</source>
        <translation>Toma: %1</translation>
    </message>
    <message>
        <source>Heater: %1</source>
        <translation>Calentador: %1</translation>
    </message>
    <message>
        <source>%1, point %2</source>
        <translation>%1, punto %2</translation>
    </message>
    <message>
        <source>%1, start</source>
        <translation>%1, inicio</translation>
    </message>
    <message>
        <source>%1, end</source>
        <translation>%1, final</translation>
    </message>
    <message>
        <source>%1, in-line part %2</source>
        <translation>%1, pieza en línea %2</translation>
    </message>
    <message>
        <source>%1, clip %2</source>
        <translation>%1, soporte %2</translation>
    </message>
    <message>
        <source>Area to keep clear of</source>
        <translation>Zona restringida</translation>
    </message>
    <message>
        <source>Area, corner %1</source>
        <translation>Zona, esquina %1</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>Suelo</translation>
    </message>
    <message>
        <source>Dimension</source>
        <translation>Cota</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>The whole drawing</source>
        <translation>Todo el dibujo</translation>
    </message>
    <message>
        <source>Tilt from upright</source>
        <translation>Inclinación desde vertical</translation>
    </message>
    <message>
        <source>0 upright, 90 lying to the right, -90 to the left</source>
        <translation>0 vertical, 90 tumbado a la derecha, -90 a la izquierda</translation>
    </message>
    <message>
        <source>Turn about plumb</source>
        <translation>Giro sobre el eje vertical</translation>
    </message>
    <message>
        <source>Body length</source>
        <translation>Largo del cuerpo</translation>
    </message>
    <message>
        <source>Body diameter</source>
        <translation>Diámetro del cuerpo</translation>
    </message>
    <message>
        <source>Mounted on</source>
        <translation>Montado en</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>bastidor</translation>
    </message>
    <message>
        <source>engine</source>
        <translation>motor</translation>
    </message>
    <message>
        <source>not allowed</source>
        <translation>no permitido</translation>
    </message>
    <message>
        <source>allowed</source>
        <translation>permitido</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Diámetro interior</translation>
    </message>
    <message>
        <source>From centre, right</source>
        <translation>Del centro, derecha</translation>
    </message>
    <message>
        <source>From centre, up</source>
        <translation>Del centro, arriba</translation>
    </message>
    <message>
        <source>From centre, away</source>
        <translation>Del centro, fondo</translation>
    </message>
    <message>
        <source>Points to, in plan</source>
        <translation>Apunta, en planta</translation>
    </message>
    <message>
        <source>0 right, 90 away from the viewer, 180 left</source>
        <translation>0 derecha, 90 lejos del observador, 180 izquierda</translation>
    </message>
    <message>
        <source>Points up by</source>
        <translation>Apunta arriba</translation>
    </message>
    <message>
        <source>Stub length</source>
        <translation>Largo del tubo</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Rosca</translation>
    </message>
    <message>
        <source>Phases</source>
        <translation>Fases</translation>
    </message>
    <message>
        <source>single phase</source>
        <translation>monofásico</translation>
    </message>
    <message>
        <source>three phase</source>
        <translation>trifásico</translation>
    </message>
    <message>
        <source>Over-temperature cut-out</source>
        <translation>Limitador de temperatura</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>resets itself</source>
        <translation>rearme automático</translation>
    </message>
    <message>
        <source>manual reset</source>
        <translation>rearme manual</translation>
    </message>
    <message>
        <source>Cut-out opens at</source>
        <translation>El limitador abre a</translation>
    </message>
    <message>
        <source>Chamber, from the body&apos;s centre</source>
        <translation>Cámara, desde el centro del cuerpo</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Arriba</translation>
    </message>
    <message>
        <source>Bottom</source>
        <translation>Abajo</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>Top of element</source>
        <translation>Tope de la resistencia</translation>
    </message>
    <message>
        <source>Coolant must stand over it before power goes on</source>
        <translation>El refrigerante debe cubrirlo antes de conectar la electricidad</translation>
    </message>
    <message>
        <source>Electrical</source>
        <translation>Datos eléctricos</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Potencia</translation>
    </message>
    <message>
        <source>Rated voltage</source>
        <translation>Tensión nominal</translation>
    </message>
    <message>
        <source>Voltage at the bay</source>
        <translation>Tensión en el puesto</translation>
    </message>
    <message>
        <source>Thermostat</source>
        <translation>Termostato</translation>
    </message>
    <message>
        <source>at the inlet</source>
        <translation>en la entrada</translation>
    </message>
    <message>
        <source>at the outlet</source>
        <translation>en la salida</translation>
    </message>
    <message>
        <source>remote</source>
        <translation>remoto</translation>
    </message>
    <message>
        <source>Turns on at</source>
        <translation>Enciende a</translation>
    </message>
    <message>
        <source>Turns off at</source>
        <translation>Apaga a</translation>
    </message>
    <message>
        <source>The heater&apos;s manual</source>
        <translation>El manual del calentador</translation>
    </message>
    <message>
        <source>Smallest hose bore</source>
        <translation>Manguera mínima</translation>
    </message>
    <message>
        <source>Least drop under jacket</source>
        <translation>Altura mínima bajo camisa</translation>
    </message>
    <message>
        <source>Upright</source>
        <translation>Vertical</translation>
    </message>
    <message>
        <source>Lying</source>
        <translation>Tumbado</translation>
    </message>
    <message>
        <source>Inclined</source>
        <translation>Inclinado</translation>
    </message>
    <message>
        <source>Inlet nozzle</source>
        <translation>Boquilla de entrada</translation>
    </message>
    <message>
        <source>Outlet nozzle</source>
        <translation>Boquilla de salida</translation>
    </message>
    <message>
        <source>isolation valve</source>
        <translation>válvula de aislamiento</translation>
    </message>
    <message>
        <source>bleed point</source>
        <translation>punto de purga</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>drenaje</translation>
    </message>
    <message>
        <source>lift check valve</source>
        <translation>válvula antirretorno de disco</translation>
    </message>
    <message>
        <source>swing check valve</source>
        <translation>válvula antirretorno de clapeta</translation>
    </message>
    <message>
        <source>reducer</source>
        <translation>reducción</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>To</source>
        <translation>A</translation>
    </message>
    <message>
        <source>What this end is pushed onto</source>
        <translation>Dónde se encaja este extremo</translation>
    </message>
    <message>
        <source>Bore of hose end</source>
        <translation>Diámetro int. de espiga</translation>
    </message>
    <message>
        <source>Pushed on by</source>
        <translation>Encajada</translation>
    </message>
    <message>
        <source>Start of hose</source>
        <translation>Inicio de la manguera</translation>
    </message>
    <message>
        <source>End of hose</source>
        <translation>Final de la manguera</translation>
    </message>
    <message>
        <source>Point %1</source>
        <translation>Punto %1</translation>
    </message>
    <message>
        <source>In-line part %1: %2</source>
        <translation>Pieza en línea %1: %2</translation>
    </message>
    <message>
        <source>Clip %1</source>
        <translation>Soporte %1</translation>
    </message>
    <message>
        <source>Carries coolant</source>
        <translation>Lleva refrigerante</translation>
    </message>
    <message>
        <source>to the heater (supply)</source>
        <translation>al calentador (alimentación)</translation>
    </message>
    <message>
        <source>to the engine (return)</source>
        <translation>al motor (retorno)</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Pared</translation>
    </message>
    <message>
        <source>Least bend radius</source>
        <translation>Radio mínimo</translation>
    </message>
    <message>
        <source>To the inside of the bend; not entered: judged by bores</source>
        <translation>Al interior de la curva; sin introducir: se evalúa por diámetros</translation>
    </message>
    <message>
        <source>Insulation</source>
        <translation>Aislamiento</translation>
    </message>
    <message>
        <source>Whole hose</source>
        <translation>Toda la manguera</translation>
    </message>
    <message>
        <source>Bend radius</source>
        <translation>Radio de curvatura</translation>
    </message>
    <message>
        <source>To the hose&apos;s centreline</source>
        <translation>Al eje de la manguera</translation>
    </message>
    <message>
        <source>Bend is</source>
        <translation>La curva es</translation>
    </message>
    <message>
        <source>the hose itself</source>
        <translation>la propia manguera</translation>
    </message>
    <message>
        <source>a moulded elbow</source>
        <translation>un codo moldeado</translation>
    </message>
    <message>
        <source>a metal elbow</source>
        <translation>un codo metálico</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>Along the hose</source>
        <translation>Por la manguera</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>Its own bore; for a reducer the bore from here on</source>
        <translation>Su propio diámetro interior; en una reducción, el diámetro desde aquí</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>cerrada</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierta</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Of the whole picture. Scale by two points sets it from a length in the picture.</source>
        <translation>De toda la imagen. La escala por dos puntos lo fija a partir de una longitud de la imagen.</translation>
    </message>
    <message>
        <source>Turned clockwise</source>
        <translation>Giro a la derecha</translation>
    </message>
    <message>
        <source>About its middle. Level by two points sets it from something level.</source>
        <translation>Sobre su centro. Nivelar por dos puntos lo fija a partir de algo horizontal.</translation>
    </message>
    <message>
        <source>Faded</source>
        <translation>Atenuación</translation>
    </message>
    <message>
        <source>as taken</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>a little</source>
        <translation>poca</translation>
    </message>
    <message>
        <source>by half</source>
        <translation>a la mitad</translation>
    </message>
    <message>
        <source>much</source>
        <translation>mucha</translation>
    </message>
    <message>
        <source>not to be seen</source>
        <translation>invisible</translation>
    </message>
    <message>
        <source>The picture in this file cannot be read. Remove it, or put another in its place.</source>
        <translation>La imagen de este archivo no se puede leer. Quítela o ponga otra en su lugar.</translation>
    </message>
    <message>
        <source>%1 × %2 pixels, %3 kB of this file, one pixel is %4 mm.</source>
        <translation>%1 × %2 píxeles, %3 kB de este archivo, un píxel son %4 mm.</translation>
    </message>
    <message>
        <source>Left corner, along</source>
        <translation>Esquina izquierda</translation>
    </message>
    <message>
        <source>Top corner over datum</source>
        <translation>Esquina superior</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation>Bloqueada</translation>
    </message>
    <message>
        <source>A locked photo stays where it is while you draw over it</source>
        <translation>Una foto bloqueada se queda donde está mientras dibuja encima</translation>
    </message>
    <message>
        <source>Cabin line&apos;s shut-off</source>
        <translation>Llave de línea de cabina</translation>
    </message>
    <message>
        <source>Used for</source>
        <translation>Se usa para</translation>
    </message>
    <message>
        <source>supply</source>
        <translation>alimentación</translation>
    </message>
    <message>
        <source>return</source>
        <translation>retorno</translation>
    </message>
    <message>
        <source>sensor</source>
        <translation>sensor</translation>
    </message>
    <message>
        <source>spare</source>
        <translation>sin uso</translation>
    </message>
    <message>
        <source>drain port</source>
        <translation>toma de drenaje</translation>
    </message>
    <message>
        <source>core-plug opening</source>
        <translation>abertura de tapón de expansión</translation>
    </message>
    <message>
        <source>lower-hose tee</source>
        <translation>te de manguera inferior</translation>
    </message>
    <message>
        <source>head or manifold port</source>
        <translation>toma de culata o colector</translation>
    </message>
    <message>
        <source>cabin heater line</source>
        <translation>línea de calefacción de cabina</translation>
    </message>
    <message>
        <source>Direction out of the engine</source>
        <translation>Dirección hacia fuera del motor</translation>
    </message>
    <message>
        <source>In plan</source>
        <translation>En planta</translation>
    </message>
    <message>
        <source>0 right, 90 away from the viewer, 180 left, -90 towards the viewer</source>
        <translation>0 derecha, 90 lejos del observador, 180 izquierda, -90 hacia el observador</translation>
    </message>
    <message>
        <source>Up by</source>
        <translation>Hacia arriba</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Hoja</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Título</translation>
    </message>
    <message>
        <source>Second title</source>
        <translation>Segundo título</translation>
    </message>
    <message>
        <source>Vehicle or set</source>
        <translation>Vehículo o grupo</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Revision</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Date of issue</source>
        <translation>Fecha de emisión</translation>
    </message>
    <message>
        <source>Drawn by</source>
        <translation>Dibujado por</translation>
    </message>
    <message>
        <source>Approved by</source>
        <translation>Aprobado por</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Propietario</translation>
    </message>
    <message>
        <source>Department</source>
        <translation>Departamento</translation>
    </message>
    <message>
        <source>Reference</source>
        <translation>Referencia</translation>
    </message>
    <message>
        <source>Document type</source>
        <translation>Tipo de documento</translation>
    </message>
    <message>
        <source>Coolant</source>
        <translation>Refrigerante</translation>
    </message>
    <message>
        <source>Antifreeze</source>
        <translation>Anticongelante</translation>
    </message>
    <message>
        <source>none, plain water</source>
        <translation>ninguno, agua sola</translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation>etilenglicol</translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation>propilenglicol</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>desconocido</translation>
    </message>
    <message>
        <source>Antifreeze by volume</source>
        <translation>Anticongelante en vol.</translation>
    </message>
    <message>
        <source>Cap pressure</source>
        <translation>Presión del tapón</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Technology</source>
        <translation>Tecnología</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Color</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Ambient</source>
        <translation>Ambiente</translation>
    </message>
    <message>
        <source>Coldest ambient</source>
        <translation>Ambiente más frío</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Viento</translation>
    </message>
    <message>
        <source>Grade, nose up</source>
        <translation>Pendiente, frente arriba</translation>
    </message>
    <message>
        <source>Grade, right side up</source>
        <translation>Pendiente, derecha arriba</translation>
    </message>
    <message>
        <source>Judged nose up and down to</source>
        <translation>Evaluado adelante y atrás hasta</translation>
    </message>
    <message>
        <source>Judged left and right to</source>
        <translation>Evaluado a los lados hasta</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Altitud</translation>
    </message>
    <message>
        <source>Filling</source>
        <translation>Llenado</translation>
    </message>
    <message>
        <source>Full before</source>
        <translation>Lleno antes</translation>
    </message>
    <message>
        <source>block; hoses empty</source>
        <translation>bloque; mangueras vacías</translation>
    </message>
    <message>
        <source>nothing; drained</source>
        <translation>nada; vaciado</translation>
    </message>
    <message>
        <source>block and hoses</source>
        <translation>bloque y mangueras</translation>
    </message>
    <message>
        <source>block, partly drained</source>
        <translation>bloque, vaciado en parte</translation>
    </message>
    <message>
        <source>Block and hoses: hoses and heater are filled before they are connected</source>
        <translation>Bloque y mangueras: mangueras y calentador se llenan antes de conectarlos</translation>
    </message>
    <message>
        <source>Filled</source>
        <translation>Llenado</translation>
    </message>
    <message>
        <source>at the filler</source>
        <translation>por la boca</translation>
    </message>
    <message>
        <source>under vacuum</source>
        <translation>con vacío</translation>
    </message>
    <message>
        <source>from below</source>
        <translation>desde abajo</translation>
    </message>
    <message>
        <source>Air in each pre-filled hose</source>
        <translation>Aire por manguera prellenada</translation>
    </message>
    <message>
        <source>Gets in where the hose is pushed on. Counts only for hoses filled before they are connected; empty: none.</source>
        <translation>Entra donde se encaja la manguera. Cuenta solo para mangueras llenadas antes de conectarlas; vacío: nada.</translation>
    </message>
    <message>
        <source>Coolant let out of the block</source>
        <translation>Refrigerante sacado</translation>
    </message>
    <message>
        <source>Before the new hoses are connected. Counts only for a block that is partly drained; empty: down to the top of the lower port.</source>
        <translation>Antes de conectar las mangueras nuevas. Cuenta solo para un bloque vaciado en parte; vacío: hasta lo alto de la toma inferior.</translation>
    </message>
    <message>
        <source>Coolant short by</source>
        <translation>Refrigerante que falta</translation>
    </message>
    <message>
        <source>Head of the engine&apos;s pump</source>
        <translation>Altura de la bomba del motor</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
    <message>
        <source>mm and °C</source>
        <translation>mm y °C</translation>
    </message>
    <message>
        <source>inch and °F</source>
        <translation>pulgadas y °F</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Número de serie</translation>
    </message>
    <message>
        <source>Its serial number</source>
        <translation>Su número de serie</translation>
    </message>
    <message>
        <source>Changed in it</source>
        <translation>Qué cambia en ella</translation>
    </message>
    <message>
        <source>Remembered for the next new drawing</source>
        <translation>Se recuerda para el próximo dibujo nuevo</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::FormView</name>
    <message>
        <source>Change %1</source>
        <translation>Cambiar %1</translation>
    </message>
    <message>
        <source>Change notes</source>
        <translation>Cambiar notas</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>sin dato</translation>
    </message>
    <message>
        <source>Where this comes from</source>
        <translation>De dónde viene esto</translation>
    </message>
    <message>
        <source>Source of %1</source>
        <translation>Origen de %1</translation>
    </message>
    <message>
        <source>Change source of %1</source>
        <translation>Cambiar origen de %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::GradeStrip</name>
    <message>
        <source>Grade lengthways, percent, nose-up to the right</source>
        <translation>Pendiente longitudinal, por ciento, frente arriba hacia la derecha</translation>
    </message>
    <message>
        <source>Park the vehicle on a grade: left is nose-down, right is nose-up.
The band is where the job is sound, the thick line is what it is judged over.
Double-click for level.</source>
        <translation>Estacione el vehículo en pendiente: izquierda es frente abajo, derecha es frente arriba.
La banda es donde el trabajo es correcto; la línea gruesa, sobre lo que se evalúa.
Doble clic para nivelar.</translation>
    </message>
    <message>
        <source>Grade across, percent, right side up to the right</source>
        <translation>Pendiente transversal, por ciento, lado derecho arriba hacia la derecha</translation>
    </message>
    <message>
        <source>Left is left side up, right is right side up. Double-click for level.</source>
        <translation>Izquierda es lado izquierdo arriba, derecha es lado derecho arriba. Doble clic para nivelar.</translation>
    </message>
    <message>
        <source>Back to level</source>
        <translation>Nivelar</translation>
    </message>
    <message>
        <source>Stand the vehicle on the level again</source>
        <translation>Poner de nuevo el vehículo a nivel</translation>
    </message>
    <message>
        <source>Parked</source>
        <translation>Estacionado</translation>
    </message>
    <message>
        <source>across</source>
        <translation>a lo ancho</translation>
    </message>
    <message>
        <source>%1 nose-up</source>
        <translation>%1 frente arriba</translation>
    </message>
    <message>
        <source>%1 nose-down</source>
        <translation>%1 frente abajo</translation>
    </message>
    <message>
        <source>%1 right side up</source>
        <translation>%1 lado derecho arriba</translation>
    </message>
    <message>
        <source>%1 left side up</source>
        <translation>%1 lado izquierdo arriba</translation>
    </message>
    <message>
        <source>on the level</source>
        <translation>a nivel</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::ProfilePanel</name>
    <message>
        <source>The profile appears when a hose is drawn.</source>
        <translation>El perfil aparece al dibujar una manguera.</translation>
    </message>
    <message>
        <source>Supply hose</source>
        <translation>Manguera de alimentación</translation>
    </message>
    <message>
        <source>Return hose</source>
        <translation>Manguera de retorno</translation>
    </message>
    <message>
        <source>cold minimum</source>
        <translation>mínimo en frío</translation>
    </message>
    <message>
        <source>%1 along, crown %2, bottom %3</source>
        <translation>a lo largo %1, arriba %2, abajo %3</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Ajustar</translation>
    </message>
    <message>
        <source>%1×</source>
        <translation>%1×</translation>
    </message>
    <message>
        <source>How many times larger heights are drawn than lengths</source>
        <translation>Cuántas veces mayores que las longitudes se dibujan las alturas</translation>
    </message>
    <message>
        <source>Draw heights larger than lengths, so that a small hump is seen</source>
        <translation>Dibujar las alturas mayores que las longitudes, para que se vea un lomo pequeño</translation>
    </message>
    <message>
        <source>Heights in sight</source>
        <translation>Alturas a la vista</translation>
    </message>
    <message>
        <source>Run profile</source>
        <translation>Perfil</translation>
    </message>
    <message>
        <source>Height along the hoses, seen from where the coolant comes from</source>
        <translation>Altura a lo largo de las mangueras, vista desde donde viene el refrigerante</translation>
    </message>
    <message>
        <source>Heights to the scale of the lengths</source>
        <translation>Alturas a la escala de las longitudes</translation>
    </message>
    <message>
        <source>Heights %1 times the lengths</source>
        <translation>Alturas %1 veces las longitudes</translation>
    </message>
</context>
<context>
    <name>siphonwright::panels::QuantityEdit</name>
    <message>
        <source>not entered</source>
        <translation>sin dato</translation>
    </message>
    <message>
        <source>Pick a usual size</source>
        <translation>Elegir un tamaño usual</translation>
    </message>
    <message>
        <source>This number is too large.</source>
        <translation>Este número es demasiado grande.</translation>
    </message>
    <message>
        <source>Not under %1.</source>
        <translation>No menos de %1.</translation>
    </message>
    <message>
        <source>Not over %1.</source>
        <translation>No más de %1.</translation>
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
        <translation>sobran %1</translation>
    </message>
    <message>
        <source>Hose, bore %1</source>
        <translation>Manguera, diámetro interior %1</translation>
    </message>
    <message>
        <source>Hose, bore not entered</source>
        <translation>Manguera, falta el diámetro interior</translation>
    </message>
    <message>
        <source>%1: %2 is longer than the longest roll: %3.</source>
        <translation>%1: %2 es más largo que el rollo más largo: %3.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: not planned.</source>
        <translation>%1: sin planificar.</translation>
    </message>
    <message>
        <source>%1: %2 off %3 of rolls; %4 left over. </source>
        <translation>%1: %2 de %3 de rollos; sobran %4. </translation>
    </message>
    <message>
        <source>No plan needs less hose.</source>
        <translation>Ningún plan necesita menos manguera.</translation>
    </message>
    <message>
        <source>A good plan; none needs less than %1.</source>
        <translation>Un buen plan; ninguno necesita menos de %1.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>sin dato</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Pos.</translation>
    </message>
    <message>
        <source>Description</source>
        <translation>Descripción</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>List price</source>
        <translation>Precio lista</translation>
    </message>
    <message>
        <source>At list</source>
        <translation>Según lista</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>; first %1 h, each further %2 h</source>
        <translation>; primero %1 h, cada uno más %2 h</translation>
    </message>
    <message>
        <source>; own estimate</source>
        <translation>; estimación propia</translation>
    </message>
    <message>
        <source>no rate</source>
        <translation>sin tarifa</translation>
    </message>
    <message>
        <source>Materials at list price</source>
        <translation>Materiales a precio de lista</translation>
    </message>
    <message>
        <source>Mark-up of %1, line by line</source>
        <translation>Recargo del %1, línea por línea</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Materiales</translation>
    </message>
    <message>
        <source>Labour</source>
        <translation>Mano de obra</translation>
    </message>
    <message>
        <source>Travel, consumables, disposal</source>
        <translation>Desplazamiento, consumibles, eliminación</translation>
    </message>
    <message>
        <source>Subtotal</source>
        <translation>Subtotal</translation>
    </message>
    <message>
        <source>Tax, %1</source>
        <translation>Impuesto, %1</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>Total of what is priced, incomplete</source>
        <translation>Total de lo que tiene precio, incompleto</translation>
    </message>
    <message>
        <source>power not entered</source>
        <translation>falta la potencia</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Otros</translation>
    </message>
    <message>
        <source>Price list: %1%2. Each line is rounded half away from zero before lines are added.</source>
        <translation>Lista de precios: %1%2. Cada línea se redondea al más próximo, con la mitad alejándose de cero, antes de sumar.</translation>
    </message>
    <message>
        <source>none loaded</source>
        <translation>ninguna cargada</translation>
    </message>
    <message>
        <source>, of %1</source>
        <translation>, del %1</translation>
    </message>
    <message>
        <source>This estimate holds for %1 days from its date.</source>
        <translation>Este presupuesto vale %1 días desde su fecha.</translation>
    </message>
    <message>
        <source>Not included</source>
        <translation>No incluido</translation>
    </message>
    <message>
        <source>Not in the total</source>
        <translation>No está en el total</translation>
    </message>
    <message>
        <source>Other heaters, the rest of the job the same</source>
        <translation>Otros calentadores, el resto del trabajo igual</translation>
    </message>
    <message>
        <source>Mark-up</source>
        <translation>Recargo</translation>
    </message>
    <message>
        <source>Total with tax</source>
        <translation>Total con impuesto</translation>
    </message>
    <message>
        <source>As drawn</source>
        <translation>Como está dibujado</translation>
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
        <translation>Número</translation>
    </message>
    <message>
        <source>Revision</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Dibujo</translation>
    </message>
    <message>
        <source>Parts list</source>
        <translation>Lista de piezas</translation>
    </message>
    <message>
        <source>Estimate</source>
        <translation>Presupuesto</translation>
    </message>
    <message>
        <source>Estimate, internal</source>
        <translation>Presupuesto, interno</translation>
    </message>
    <message>
        <source>Siphonwright. The figures are estimates; the heater&apos;s and the engine&apos;s own manuals rule over them.</source>
        <translation>Siphonwright. Las cifras son estimaciones; mandan los manuales del calentador y del motor.</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>For one vehicle</source>
        <translation>Para un vehículo</translation>
    </message>
    <message>
        <source>For %1 identical vehicles</source>
        <translation>Para %1 vehículos idénticos</translation>
    </message>
    <message>
        <source>%1: the pages could not be drawn.</source>
        <translation>%1: no se pudieron dibujar las páginas.</translation>
    </message>
    <message>
        <source>not priced</source>
        <translation>sin precio</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>desconocido</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: %2.</source>
        <translation>&quot;%1&quot;: %2.</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not from %2 to %3.</source>
        <translation>&quot;%1&quot; no está entre %2 y %3.</translation>
    </message>
    <message>
        <source>On one</source>
        <translation>En uno</translation>
    </message>
    <message>
        <source>On all %1</source>
        <translation>En los %1</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>Where used</source>
        <translation>Dónde se usa</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Observaciones</translation>
    </message>
    <message>
        <source>Nothing is drawn that takes parts.</source>
        <translation>No hay nada dibujado que lleve piezas.</translation>
    </message>
    <message>
        <source>Hose cuts</source>
        <translation>Cortes de manguera</translation>
    </message>
    <message>
        <source>Hose cuts, all %1 vehicles</source>
        <translation>Cortes de manguera, los %1 vehículos</translation>
    </message>
    <message>
        <source>Cut lengths with %1 of allowance each. Measure on the vehicle before you cut.</source>
        <translation>Longitudes de corte con %1 de margen cada una. Mida en el vehículo antes de cortar.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>Check sizes, threads and materials against the heater&apos;s and the engine&apos;s manuals before you order. Hose, clamps and sealant have to be fit for hot coolant under pressure.</source>
        <translation>Compruebe medidas, roscas y materiales con los manuales del calentador y del motor antes de pedir. Manguera, abrazaderas y sellador deben ser aptos para refrigerante caliente a presión.</translation>
    </message>
    <message>
        <source>Antifreeze is poisonous: catch it and dispose of it properly. Mix with distilled or deionised water only.</source>
        <translation>El anticongelante es venenoso: recójalo y deséchelo debidamente. Mezcle solo con agua destilada o desionizada.</translation>
    </message>
    <message>
        <source>Work by a qualified technician; power locked out, wheels chocked, cap opened only cold.</source>
        <translation>Trabajo por un técnico cualificado; electricidad bloqueada, ruedas calzadas, tapón abierto solo en frío.</translation>
    </message>
    <message>
        <source>Grounded supply by the local electrical code, connected by a licensed electrician.</source>
        <translation>Alimentación con puesta a tierra según el código eléctrico local, conectada por un electricista autorizado.</translation>
    </message>
    <message>
        <source>Old coolant is poisonous and is disposed of properly.</source>
        <translation>El refrigerante usado es venenoso y se desecha debidamente.</translation>
    </message>
    <message>
        <source>An estimate from the drawing as it stands: what is found on the vehicle may change it.</source>
        <translation>Estimación a partir del dibujo tal como está: lo que se encuentre en el vehículo puede cambiarla.</translation>
    </message>
    <message>
        <source>To fill in</source>
        <translation>Para rellenar</translation>
    </message>
    <message>
        <source>Unit or vehicle</source>
        <translation>Equipo o vehículo</translation>
    </message>
    <message>
        <source>Engine</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>%1, serial number</source>
        <translation>%1, número de serie</translation>
    </message>
    <message>
        <source>Rev.</source>
        <translation>Rev.</translation>
    </message>
    <message>
        <source>What was changed</source>
        <translation>Qué se cambió</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Por</translation>
    </message>
    <message>
        <source>Fitted by, date</source>
        <translation>Montado por, fecha</translation>
    </message>
    <message>
        <source>Checked by, date</source>
        <translation>Comprobado por, fecha</translation>
    </message>
    <message>
        <source>Handed over to, date</source>
        <translation>Entregado a, fecha</translation>
    </message>
    <message>
        <source>Tag to cut out and tie to the switch</source>
        <translation>Etiqueta para recortar y atar al interruptor</translation>
    </message>
    <message>
        <source>Valves open before turning on</source>
        <translation>Válvulas abiertas antes de encender</translation>
    </message>
    <message>
        <source>Coolant in the heater before turning on. Heater off before a valve is closed.</source>
        <translation>Refrigerante en el calentador antes de encender. Calentador apagado antes de cerrar una válvula.</translation>
    </message>
    <message>
        <source>What the figures rest on, with the range in which each is taken to lie. They are estimates; what was measured replaces them.</source>
        <translation>En qué se basan las cifras, con el margen en que se supone cada una. Son estimaciones; lo medido las sustituye.</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>Supuesto</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Cifra</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Intervalo</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Fundamento</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>For this drawing; no reason given</source>
        <translation>Para este dibujo; sin motivo indicado</translation>
    </message>
    <message>
        <source>For this drawing: %1</source>
        <translation>Para este dibujo: %1</translation>
    </message>
    <message>
        <source>%1, inlet</source>
        <translation>%1, entrada</translation>
    </message>
    <message>
        <source>%1, outlet</source>
        <translation>%1, salida</translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation>nada todavía</translation>
    </message>
    <message>
        <source>%1%2: bore %3, wall %4</source>
        <translation>%1%2: diámetro interior %3, pared %4</translation>
    </message>
    <message>
        <source>A: %1, %2 pushed on. B: %3, %4 pushed on.</source>
        <translation>A: %1, %2 encajado. B: %3, %4 encajado.</translation>
    </message>
    <message>
        <source>Ports and hose ends</source>
        <translation>Tomas y espigas</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Rosca</translation>
    </message>
    <message>
        <source>Screwed in</source>
        <translation>Enroscado</translation>
    </message>
    <message>
        <source>Hose end</source>
        <translation>Espiga para manguera</translation>
    </message>
    <message>
        <source>Sealant</source>
        <translation>Sellador</translation>
    </message>
    <message>
        <source>none counted</source>
        <translation>ninguno contado</translation>
    </message>
    <message>
        <source>on the thread [%1]</source>
        <translation>en la rosca [%1]</translation>
    </message>
    <message>
        <source>in line along the engine</source>
        <translation>en línea a lo largo del motor</translation>
    </message>
    <message>
        <source>%1 towards the front</source>
        <translation>%1 hacia delante</translation>
    </message>
    <message>
        <source>%1 towards the rear</source>
        <translation>%1 hacia atrás</translation>
    </message>
    <message>
        <source>%1 towards the engine&apos;s left side</source>
        <translation>%1 hacia el lado izquierdo del motor</translation>
    </message>
    <message>
        <source>%1 towards the engine&apos;s right side</source>
        <translation>%1 hacia el lado derecho del motor</translation>
    </message>
    <message>
        <source>Top %1 and bottom %2 over the datum</source>
        <translation>Parte alta a %1 y baja a %2 sobre la referencia</translation>
    </message>
    <message>
        <source>; top %1 under the jacket&apos;s lowest point</source>
        <translation>; parte alta a %1 bajo el punto más bajo de la camisa</translation>
    </message>
    <message>
        <source>Its middle from %1: %2; %3.</source>
        <translation>Su centro desde %1: %2; %3.</translation>
    </message>
    <message>
        <source>Upright, the arrow on its body pointing up.</source>
        <translation>Vertical, la flecha del cuerpo hacia arriba.</translation>
    </message>
    <message>
        <source>Leaning %1 from upright, the arrow on its body pointing up.</source>
        <translation>Inclinado %1 de la vertical, la flecha del cuerpo hacia arriba.</translation>
    </message>
    <message>
        <source>Mounting not entered.</source>
        <translation>Fijación no indicada.</translation>
    </message>
    <message>
        <source>Mounted to the frame.</source>
        <translation>Fijado al bastidor.</translation>
    </message>
    <message>
        <source>Mounted to the engine.</source>
        <translation>Fijado al motor.</translation>
    </message>
    <message>
        <source>Electrical load and coolant</source>
        <translation>Carga eléctrica y refrigerante</translation>
    </message>
    <message>
        <source>All heaters %1, current %2, continuous load (125 %) %3.</source>
        <translation>Todos los calentadores %1, corriente %2, carga continua (125 %) %3.</translation>
    </message>
    <message>
        <source>New hoses and chambers take %1 of coolant; in it now: antifreeze %2.</source>
        <translation>Las mangueras y cámaras nuevas toman %1 de refrigerante; ahora contiene: anticongelante %2.</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Hang the heater</source>
        <translation>Colgar el calentador</translation>
    </message>
    <message>
        <source>clip %1</source>
        <translation>abrazadera %1</translation>
    </message>
    <message>
        <source>bend %1 to %2, %3, R %4</source>
        <translation>curva %1 a %2, %3, R %4</translation>
    </message>
    <message>
        <source>Cutting and fitting</source>
        <translation>Corte y montaje</translation>
    </message>
    <message>
        <source>Assumptions and sources</source>
        <translation>Supuestos y fuentes</translation>
    </message>
    <message>
        <source>three phases</source>
        <translation>tres fases</translation>
    </message>
    <message>
        <source>one phase</source>
        <translation>una fase</translation>
    </message>
    <message>
        <source>Power %1, voltage %2, %3; its thermostat on at %4, off at %5. Serial number %6.</source>
        <translation>Potencia %1, tensión %2, %3; su termostato conecta a %4, desconecta a %5. Número de serie %6.</translation>
    </message>
    <message>
        <source>parts, cuts</source>
        <translation>piezas, cortes</translation>
    </message>
    <message>
        <source>prices</source>
        <translation>precios</translation>
    </message>
    <message>
        <source>hoses with clips and bends, run profiles, ports, threads, heaters, electrical load, coolant, tag</source>
        <translation>mangueras con abrazaderas y curvas, perfiles, tomas, roscas, calentadores, carga eléctrica, refrigerante, etiqueta</translation>
    </message>
    <message>
        <source>what the figures rest on</source>
        <translation>en qué se basan las cifras</translation>
    </message>
    <message>
        <source>Hoses laid flat</source>
        <translation>Mangueras extendidas</translation>
    </message>
    <message>
        <source>Page %1, sheet %2/%3</source>
        <translation>Página %1, hoja %2/%3</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>pulgadas</translation>
    </message>
    <message>
        <source>Distances along a hose are from its cut end at A, in %1; R is the radius of a bend&apos;s middle; over a straight its slope from A to B, rise over run. Pieces reach to the stops of the parts between them, by the lengths entered for these. Under each hose its run: height of the top (line) and bottom (dashes) of its bore over the datum. Numbers in brackets are items of the parts list. Measure on the vehicle, parts in hand, before you cut.</source>
        <translation>Las distancias a lo largo de una manguera se toman desde su extremo cortado en A, en %1; R es el radio del eje de la curva; sobre un tramo recto, su pendiente de A a B, altura por longitud. Los trozos llegan hasta los topes de las piezas que hay entre ellos, según las longitudes indicadas para estas. Bajo cada manguera, su recorrido: altura de la parte alta (línea) y baja (trazos) del interior sobre la referencia. Los números entre corchetes son de la lista de piezas. Mida en el vehículo, con las piezas a mano, antes de cortar.</translation>
    </message>
    <message>
        <source>Cut %1.</source>
        <translation>Cortar %1.</translation>
    </message>
    <message>
        <source>Cut %1, in pieces from A to B: %2.</source>
        <translation>Cortar %1, en trozos de A a B: %2.</translation>
    </message>
    <message>
        <source>passage %1, %2 on</source>
        <translation>paso %1, %2 encajado</translation>
    </message>
    <message>
        <source>in line with it across the engine</source>
        <translation>en línea con él a lo ancho del motor</translation>
    </message>
    <message>
        <source>Port or nozzle at B is %1 higher than at A.</source>
        <translation>La conexión en B está %1 más alta que en A.</translation>
    </message>
    <message>
        <source>Port or nozzle at B is %1 lower than at A.</source>
        <translation>La conexión en B está %1 más baja que en A.</translation>
    </message>
    <message>
        <source>%1, cut %2 to %3</source>
        <translation>%1, corte de %2 a %3</translation>
    </message>
    <message>
        <source>Run profile: hose&apos;s bore over the datum</source>
        <translation>Perfil: interior de la manguera sobre la referencia</translation>
    </message>
    <message>
        <source>Distances are from the cut end at A, in %1; R is the radius of a bend&apos;s middle; over a straight its slope from A to B. Pieces reach to the stops of the parts between them, by the lengths entered for these. In the run profile the line is the top of the bore, the dashes its bottom. [3] is item 3 of the parts list. Measure on the vehicle, parts in hand, before you cut.</source>
        <translation>Las distancias son desde el extremo cortado en A, en %1; R es el radio del centro de una curva; sobre un tramo recto, su pendiente de A a B. Los trozos llegan hasta los topes de las piezas que hay entre ellos, según las longitudes indicadas para estas. En el perfil la línea es la parte alta del interior y los trazos la baja. [3] es el elemento 3 de la lista de piezas. Mida en el vehículo, con las piezas a mano, antes de cortar.</translation>
    </message>
    <message>
        <source>%1 of it is allowance, left at B and trimmed there.</source>
        <translation>De ello %1 son sobrante, que queda en B y se recorta allí.</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::CutBars</name>
    <message>
        <source>Cut plan</source>
        <translation>Plan de corte</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::EditTable</name>
    <message>
        <source>%1
Double-click or press F2 to type.</source>
        <translation>%1
Doble clic o F2 para escribir.</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::EstimatePage</name>
    <message>
        <source>Heater</source>
        <translation>Calentador</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Potencia</translation>
    </message>
    <message>
        <source>Heater&apos;s list price</source>
        <translation>Precio de lista del calentador</translation>
    </message>
    <message>
        <source>Materials at list price</source>
        <translation>Materiales a precio de lista</translation>
    </message>
    <message>
        <source>Mark-up</source>
        <translation>Recargo</translation>
    </message>
    <message>
        <source>Materials</source>
        <translation>Materiales</translation>
    </message>
    <message>
        <source>Labour</source>
        <translation>Mano de obra</translation>
    </message>
    <message>
        <source>Travel, consumables, disposal</source>
        <translation>Desplazamiento, consumibles, eliminación</translation>
    </message>
    <message>
        <source>Subtotal</source>
        <translation>Subtotal</translation>
    </message>
    <message>
        <source>Tax</source>
        <translation>Impuesto</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>As drawn</source>
        <translation>Como está dibujado</translation>
    </message>
    <message>
        <source>&amp;Remove it</source>
        <translation>&amp;Quitarlo</translation>
    </message>
    <message>
        <source>Sums</source>
        <translation>Sumas</translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation>Lo que falta</translation>
    </message>
    <message>
        <source>&amp;Another heater beside it</source>
        <translation>&amp;Comparar otro calentador</translation>
    </message>
    <message>
        <source>Each line is rounded before it is added, so the printed lines add up to the printed total. The figures are estimates: they are as good as the drawing, the prices and the hours.</source>
        <translation>Cada línea se redondea antes de sumarla, así que las líneas impresas suman el total impreso. Las cifras son estimaciones: valen lo que valgan el dibujo, los precios y las horas.</translation>
    </message>
    <message>
        <source>none drawn</source>
        <translation>ninguno dibujado</translation>
    </message>
    <message>
        <source>%1 heaters</source>
        <translation>%1 calentadores</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>sin dato</translation>
    </message>
    <message>
        <source>Other heater %1</source>
        <translation>Otro calentador %1</translation>
    </message>
    <message>
        <source>Total %1</source>
        <translation>Total %1</translation>
    </message>
    <message>
        <source>Incomplete: %1</source>
        <translation>Incompleto: %1</translation>
    </message>
    <message>
        <source>▲ Other heater %1: %2</source>
        <translation>▲ Otro calentador %1: %2</translation>
    </message>
    <message>
        <source>At most 200 characters.</source>
        <translation>Como máximo 200 caracteres.</translation>
    </message>
    <message>
        <source>A power is from 0 to 1000 kW.</source>
        <translation>Una potencia va de 0 a 1000 kW.</translation>
    </message>
    <message>
        <source>Change the other heater</source>
        <translation>Cambiar el otro calentador</translation>
    </message>
    <message>
        <source>Add another heater beside it</source>
        <translation>Añadir otro calentador para comparar</translation>
    </message>
    <message>
        <source>Other heater</source>
        <translation>Otro calentador</translation>
    </message>
    <message>
        <source>Remove the other heater</source>
        <translation>Quitar el otro calentador</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::PaperWindow</name>
    <message>
        <source>Parts and estimate</source>
        <translation>Piezas y presupuesto</translation>
    </message>
    <message>
        <source>Parts and &amp;cuts</source>
        <translation>Piezas &amp;y cortes</translation>
    </message>
    <message>
        <source>P&amp;rices</source>
        <translation>P&amp;recios</translation>
    </message>
    <message>
        <source>Wor&amp;k</source>
        <translation>&amp;Trabajo</translation>
    </message>
    <message>
        <source>&amp;Estimate</source>
        <translation>&amp;Presupuesto</translation>
    </message>
    <message>
        <source>Document</source>
        <translation>Documento</translation>
    </message>
    <message>
        <source>Estimate for the customer</source>
        <translation>Presupuesto para el cliente</translation>
    </message>
    <message>
        <source>Print pre&amp;view…</source>
        <translation>&amp;Vista previa…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Imprimir…</translation>
    </message>
    <message>
        <source>P&amp;DF…</source>
        <translation>P&amp;DF…</translation>
    </message>
    <message>
        <source>Parts as C&amp;SV…</source>
        <translation>Piezas en C&amp;SV…</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::PartsPage</name>
    <message>
        <source>Parts list</source>
        <translation>Lista de piezas</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Pos.</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Medida</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Where used</source>
        <translation>Dónde se usa</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Observaciones</translation>
    </message>
    <message>
        <source>Hose cuts, all vehicles together</source>
        <translation>Cortes de manguera, todos los vehículos juntos</translation>
    </message>
    <message>
        <source>%1
Click to select it on the drawing.</source>
        <translation>%1
Clic para seleccionarlo en el dibujo.</translation>
    </message>
    <message>
        <source>Nothing is drawn that takes parts.</source>
        <translation>No hay nada dibujado que lleve piezas.</translation>
    </message>
    <message>
        <source>For one vehicle, as drawn. Check it against the heater&apos;s manual before you order.</source>
        <translation>Para un vehículo, como está dibujado. Compruébelo con el manual del calentador antes de pedir.</translation>
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
        <translation>Pieza</translation>
    </message>
    <message>
        <source>Price key</source>
        <translation>Clave de precio</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>List price</source>
        <translation>Precio lista</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>Prices of materials</source>
        <translation>Precios de materiales</translation>
    </message>
    <message>
        <source>&amp;Load a price list…</source>
        <translation>&amp;Cargar lista de precios…</translation>
    </message>
    <message>
        <source>A CSV file with the columns item, description, unit, price and currency</source>
        <translation>Un archivo CSV con las columnas item, description, unit, price y currency</translation>
    </message>
    <message>
        <source>&amp;Write what is not priced…</source>
        <translation>&amp;Escribir lo que no tiene precio…</translation>
    </message>
    <message>
        <source>A price list to be filled in, as CSV</source>
        <translation>Una lista de precios por rellenar, como CSV</translation>
    </message>
    <message>
        <source>currency not entered</source>
        <translation>falta la moneda</translation>
    </message>
    <message>
        <source>No price list is loaded</source>
        <translation>No hay lista de precios cargada</translation>
    </message>
    <message>
        <source>%1; %2. Quantities for %3. The price is the list price with the mark-up.</source>
        <translation>%1; %2. Cantidades para %3. El precio es el de lista con el recargo.</translation>
    </message>
    <message>
        <source>one vehicle</source>
        <translation>un vehículo</translation>
    </message>
    <message>
        <source>%1 vehicles</source>
        <translation>%1 vehículos</translation>
    </message>
    <message>
        <source>Change the price of %1</source>
        <translation>Cambiar el precio de %1</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2.</source>
        <translation>%1 no se puede leer: %2.</translation>
    </message>
    <message>
        <source>%1 was not loaded. %2</source>
        <translation>%1 no se cargó. %2</translation>
    </message>
    <message>
        <source>Load price list</source>
        <translation>Cargar lista de precios</translation>
    </message>
    <message>
        <source>Load a price list</source>
        <translation>Cargar una lista de precios</translation>
    </message>
    <message>
        <source>Price lists (*.csv)</source>
        <translation>Listas de precios (*.csv)</translation>
    </message>
    <message>
        <source>Write what is not priced</source>
        <translation>Escribir lo que no tiene precio</translation>
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
        <translation>Tarifas y sumas</translation>
    </message>
    <message>
        <source>Identical vehicles</source>
        <translation>Vehículos idénticos</translation>
    </message>
    <message>
        <source>Mark-up, %</source>
        <translation>Recargo, %</translation>
    </message>
    <message>
        <source>Labour, an hour</source>
        <translation>Mano de obra por hora</translation>
    </message>
    <message>
        <source>Travel</source>
        <translation>Desplazamiento</translation>
    </message>
    <message>
        <source>Consumables, a vehicle</source>
        <translation>Consumibles por vehículo</translation>
    </message>
    <message>
        <source>Coolant disposal, a vehicle</source>
        <translation>Eliminación por vehículo</translation>
    </message>
    <message>
        <source>Tax, %</source>
        <translation>Impuesto, %</translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>En papel</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Revision</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Valid for, days</source>
        <translation>Validez, días</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>Not included</source>
        <translation>No incluido</translation>
    </message>
    <message>
        <source>At most 200 characters.</source>
        <translation>Como máximo 200 caracteres.</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>Cambiar %1</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>sin dato</translation>
    </message>
    <message>
        <source>A number is wanted here.</source>
        <translation>Aquí se espera un número.</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Moneda</translation>
    </message>
    <message>
        <source>USD, CAD, EUR …</source>
        <translation>USD, CAD, EUR …</translation>
    </message>
    <message>
        <source>Its sign</source>
        <translation>Su símbolo</translation>
    </message>
    <message>
        <source>At most 5 characters.</source>
        <translation>Como máximo 5 caracteres.</translation>
    </message>
    <message>
        <source>Change the currency&apos;s sign</source>
        <translation>Cambiar el símbolo de la moneda</translation>
    </message>
    <message>
        <source>none: the code is written</source>
        <translation>ninguno: se escribe el código</translation>
    </message>
    <message>
        <source>A currency is three letters, such as USD.</source>
        <translation>Una moneda son tres letras, como USD.</translation>
    </message>
    <message>
        <source>%1 has %2 decimals, and amounts are entered with %3. Take them out first.</source>
        <translation>%1 tiene %2 decimales, y hay importes con %3. Quítelos antes.</translation>
    </message>
    <message>
        <source>Change the currency</source>
        <translation>Cambiar la moneda</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::RollForm</name>
    <message>
        <source>Identical vehicles</source>
        <translation>Vehículos idénticos</translation>
    </message>
    <message>
        <source>Allowance on each cut</source>
        <translation>Margen en cada corte</translation>
    </message>
    <message>
        <source>Charge whole rolls</source>
        <translation>Cobrar rollos enteros</translation>
    </message>
    <message>
        <source>Hose at the rolls it comes off instead of at its cuts</source>
        <translation>Manguera por los rollos de los que sale en lugar de por sus cortes</translation>
    </message>
    <message>
        <source>Lengths of roll</source>
        <translation>Largos de rollo</translation>
    </message>
    <message>
        <source>lengths it is bought in, set apart by semicolons</source>
        <translation>longitudes en que se compra, separadas por punto y coma</translation>
    </message>
    <message>
        <source>Rolls of bore %1</source>
        <translation>Rollos de diámetro %1</translation>
    </message>
    <message>
        <source>Rolls of any bore</source>
        <translation>Rollos de cualquier diámetro</translation>
    </message>
    <message>
        <source>A roll is from 1 mm to 1 km long, and there are at most 20 lengths.</source>
        <translation>Un rollo mide de 1 mm a 1 km, y hay como máximo 20 longitudes.</translation>
    </message>
    <message>
        <source>Change lengths of roll</source>
        <translation>Cambiar largos de rollo</translation>
    </message>
    <message>
        <source>An allowance is from 0 to 10 m.</source>
        <translation>Un margen va de 0 a 10 m.</translation>
    </message>
    <message>
        <source>Change the allowance on cuts</source>
        <translation>Cambiar el margen de los cortes</translation>
    </message>
    <message>
        <source>At least one vehicle.</source>
        <translation>Al menos un vehículo.</translation>
    </message>
    <message>
        <source>Change the number of vehicles</source>
        <translation>Cambiar el número de vehículos</translation>
    </message>
</context>
<context>
    <name>siphonwright::paper::WorkPage</name>
    <message>
        <source>Task</source>
        <translation>Tarea</translation>
    </message>
    <message>
        <source>First vehicle, h</source>
        <translation>Primer vehículo, h</translation>
    </message>
    <message>
        <source>Each further one, h</source>
        <translation>Cada uno más, h</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Horas</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>Where the hours come from</source>
        <translation>De dónde vienen las horas</translation>
    </message>
    <message>
        <source>&amp;Back to the usual hours</source>
        <translation>&amp;Volver a las horas usuales</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>The usual hours are our own estimate for what is drawn: put in your own. Electrical work is for a licensed electrician.</source>
        <translation>Las horas usuales son estimación propia para lo dibujado: ponga las suyas. El trabajo eléctrico es para un electricista autorizado.</translation>
    </message>
    <message>
        <source>&amp;Add a task</source>
        <translation>&amp;Añadir tarea</translation>
    </message>
    <message>
        <source>Add a task</source>
        <translation>Añadir una tarea</translation>
    </message>
    <message>
        <source>Own task</source>
        <translation>Tarea propia</translation>
    </message>
    <message>
        <source>▲ labour rate not entered</source>
        <translation>▲ falta la tarifa de mano de obra</translation>
    </message>
    <message>
        <source>own task</source>
        <translation>tarea propia</translation>
    </message>
    <message>
        <source>own estimate, not looked at</source>
        <translation>estimación propia, sin revisar</translation>
    </message>
    <message>
        <source>entered</source>
        <translation>introducido</translation>
    </message>
    <message>
        <source>&amp;Remove the task</source>
        <translation>&amp;Quitar la tarea</translation>
    </message>
    <message>
        <source>A task has a name of up to 400 characters.</source>
        <translation>Una tarea tiene un nombre de hasta 400 caracteres.</translation>
    </message>
    <message>
        <source>Rename a task</source>
        <translation>Renombrar una tarea</translation>
    </message>
    <message>
        <source>Hours are a number such as 1.25.</source>
        <translation>Las horas son un número como 1,25.</translation>
    </message>
    <message>
        <source>Change the hours of a task</source>
        <translation>Cambiar las horas de una tarea</translation>
    </message>
    <message>
        <source>Back to the usual hours</source>
        <translation>Volver a las horas usuales</translation>
    </message>
</context>
<context>
    <name>siphonwright::photo</name>
    <message>
        <source>%1 × %2 pixels, %3 megapixels</source>
        <translation>%1 × %2 píxeles, %3 megapíxeles</translation>
    </message>
    <message>
        <source>Its header is damaged: it does not say how large the picture is.</source>
        <translation>Su encabezado está dañado: no dice el tamaño de la imagen.</translation>
    </message>
    <message>
        <source>Its header says %1: nothing can be seen on that.</source>
        <translation>Su encabezado dice %1: así no se ve nada.</translation>
    </message>
    <message>
        <source>Its header says %1. At most %2 megapixels are read: make it smaller first.</source>
        <translation>Su encabezado dice %1. Se leen como máximo %2 megapíxeles: redúzcala antes.</translation>
    </message>
    <message>
        <source>It is damaged before the picture&apos;s data begin.</source>
        <translation>Está dañada antes de que empiecen los datos de la imagen.</translation>
    </message>
    <message>
        <source>It is cut off: there are %1 bytes, and the picture does not end in them.</source>
        <translation>Está cortada: hay %1 bytes, y la imagen no termina en ellos.</translation>
    </message>
    <message>
        <source>It is a progressive JPEG of %1; of those at most %2 megapixels are read.</source>
        <translation>Es un JPEG progresivo de %1; de esos se leen como máximo %2 megapíxeles.</translation>
    </message>
    <message>
        <source>It is empty.</source>
        <translation>Está vacía.</translation>
    </message>
    <message>
        <source>It is larger than %1 MiB.</source>
        <translation>Supera los %1 MiB.</translation>
    </message>
    <message>
        <source>It is not a PNG, JPEG or WebP picture.</source>
        <translation>No es una imagen PNG, JPEG o WebP.</translation>
    </message>
    <message>
        <source>WebP is not read here: save it as PNG or JPEG, or install Qt&apos;s image formats.</source>
        <translation>WebP no se lee aquí: guárdela como PNG o JPEG, o instale los formatos de imagen de Qt.</translation>
    </message>
    <message>
        <source>Its picture data are damaged or cut off (%1).</source>
        <translation>Los datos de la imagen están dañados o cortados (%1).</translation>
    </message>
    <message>
        <source>It cannot be opened: %1.</source>
        <translation>No se puede abrir: %1.</translation>
    </message>
    <message>
        <source>The four points are not the corners of a rectangle seen at an angle: three of them lie in one line, or one lies between the others.</source>
        <translation>Los cuatro puntos no son las esquinas de un rectángulo visto en ángulo: tres están en una línea, o uno está entre los otros.</translation>
    </message>
    <message>
        <source>The four points do not lie in the picture.</source>
        <translation>Los cuatro puntos no están en la imagen.</translation>
    </message>
    <message>
        <source>The rectangle is too small in the picture.</source>
        <translation>El rectángulo es demasiado pequeño en la imagen.</translation>
    </message>
</context>
<context>
    <name>siphonwright::proposing</name>
    <message>
        <source>not priced</source>
        <translation>sin precio</translation>
    </message>
    <message>
        <source>%1, not priced: %2</source>
        <translation>%1, sin precio: %2</translation>
    </message>
    <message>
        <source>%1.  Bore %2: %3 + %4</source>
        <translation>%1.  Diámetro int. %2: %3 + %4</translation>
    </message>
    <message>
        <source>flow not computed</source>
        <translation>caudal sin calcular</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>▲ Not sound on every grade that is judged</source>
        <translation>▲ No es correcto en todas las pendientes evaluadas</translation>
    </message>
    <message>
        <source>Supply hose %1, return hose %2, %3 in all. Clips: %4. A valve at each port.</source>
        <translation>Manguera de alimentación %1, manguera de retorno %2, %3 en total. Soportes: %4. Una válvula en cada toma.</translation>
    </message>
    <message>
        <source>What is left:</source>
        <translation>Lo que queda:</translation>
    </message>
    <message>
        <source>– %1</source>
        <translation>– %1</translation>
    </message>
    <message>
        <source>Findings of advice that stay: %1.</source>
        <translation>Hallazgos de consejo que quedan: %1.</translation>
    </message>
    <message>
        <source>No layout mends: %1</source>
        <translation>Ninguna disposición corrige: %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::proposing::LayoutChoices</name>
    <message>
        <source>&amp;Draw area…</source>
        <translation>Di&amp;bujar zona…</translation>
    </message>
    <message>
        <source>Heater to propose for</source>
        <translation>Calentador para el que proponer</translation>
    </message>
    <message>
        <source>Where the heater may hang</source>
        <translation>Dónde puede colgar el calentador</translation>
    </message>
    <message>
        <source>Where it is drawn</source>
        <translation>Donde está dibujado</translation>
    </message>
    <message>
        <source>Anywhere under the engine</source>
        <translation>En cualquier lugar bajo el motor</translation>
    </message>
    <message>
        <source>In an area I draw</source>
        <translation>En una zona que dibujo</translation>
    </message>
    <message>
        <source>Drag a rectangle on the elevation, or click two opposite corners</source>
        <translation>Arrastre un rectángulo en el alzado, o haga clic en dos esquinas opuestas</translation>
    </message>
    <message>
        <source>What comes first</source>
        <translation>Qué va primero</translation>
    </message>
    <message>
        <source>Best of all three</source>
        <translation>Lo mejor de los tres</translation>
    </message>
    <message>
        <source>Shortest hoses</source>
        <translation>Mangueras más cortas</translation>
    </message>
    <message>
        <source>Most flow</source>
        <translation>Mayor caudal</translation>
    </message>
    <message>
        <source>Lowest price</source>
        <translation>Menor precio</translation>
    </message>
    <message>
        <source>Length of hose, price by bore and flow weighed in one figure</source>
        <translation>Longitud de manguera, precio por diámetro y caudal ponderados en una cifra</translation>
    </message>
    <message>
        <source>Heater</source>
        <translation>Calentador</translation>
    </message>
    <message>
        <source>It hangs</source>
        <translation>Cuelga</translation>
    </message>
    <message>
        <source>Bores, mm</source>
        <translation>Diámetros, mm</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Primero</translation>
    </message>
    <message>
        <source>Place a heater first.</source>
        <translation>Coloque antes un calentador.</translation>
    </message>
    <message>
        <source>Draw the area in which the heater may hang.</source>
        <translation>Dibuje la zona en que puede colgar el calentador.</translation>
    </message>
    <message>
        <source>Choose at least one bore of hose.</source>
        <translation>Elija al menos un diámetro de manguera.</translation>
    </message>
    <message>
        <source>Not drawn yet</source>
        <translation>Sin dibujar</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 por %2</translation>
    </message>
    <message>
        <source>&amp;Draw anew…</source>
        <translation>Di&amp;bujar otra…</translation>
    </message>
    <message>
        <source>Bores, in</source>
        <translation>Diámetros, in</translation>
    </message>
    <message>
        <source>Hose of this bore may be used</source>
        <translation>Se puede usar manguera de este diámetro</translation>
    </message>
    <message>
        <source>Hose of bore %1</source>
        <translation>Manguera de diámetro %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::proposing::LayoutsPanel</name>
    <message>
        <source>&amp;Propose</source>
        <translation>&amp;Proponer</translation>
    </message>
    <message>
        <source>S&amp;top</source>
        <translation>&amp;Detener</translation>
    </message>
    <message>
        <source>T&amp;ake this layout</source>
        <translation>&amp;Usar esta propuesta</translation>
    </message>
    <message>
        <source>Stopped. The drawing is as it was.</source>
        <translation>Detenido. El dibujo queda como estaba.</translation>
    </message>
    <message>
        <source>Look for layouts that break no rule</source>
        <translation>Buscar disposiciones que no infrinjan ninguna regla</translation>
    </message>
    <message>
        <source>Stop looking (Escape)</source>
        <translation>Detener la búsqueda (Esc)</translation>
    </message>
    <message>
        <source>Search for layouts</source>
        <translation>Buscar disposiciones</translation>
    </message>
    <message>
        <source>Proposed layouts</source>
        <translation>Disposiciones propuestas</translation>
    </message>
    <message>
        <source>What it changes and what is left</source>
        <translation>Qué cambia y qué queda</translation>
    </message>
    <message>
        <source>Looking for layouts: %1 of %2 places tried, %3 found…</source>
        <translation>Buscando disposiciones: %1 de %2 lugares probados, %3 halladas…</translation>
    </message>
    <message>
        <source>Press Enter to read the rule</source>
        <translation>Pulse Intro para leer la regla</translation>
    </message>
    <message>
        <source>The drawing was changed meanwhile. Propose again.</source>
        <translation>El dibujo cambió entretanto. Proponga de nuevo.</translation>
    </message>
    <message>
        <source>The choices were changed meanwhile. Propose again.</source>
        <translation>Las opciones cambiaron entretanto. Proponga de nuevo.</translation>
    </message>
    <message>
        <source>Take a layout: %1</source>
        <translation>Usar una disposición: %1</translation>
    </message>
    <message>
        <source>Looking for layouts…</source>
        <translation>Buscando disposiciones…</translation>
    </message>
    <message>
        <source>Proposes heater place, hoses, bore, valves and clips that break no rule, on every grade that is judged.</source>
        <translation>Propone lugar del calentador, mangueras, diámetro, válvulas y soportes que no infringen ninguna regla en todas las pendientes evaluadas.</translation>
    </message>
    <message>
        <source>Nothing can be proposed: %1.</source>
        <translation>No se puede proponer nada: %1.</translation>
    </message>
    <message>
        <source>Layout %1 was taken; one undo takes it back. Propose again for the drawing as it is now.</source>
        <translation>Se usó la disposición %1; un deshacer la revierte. Proponga de nuevo para el dibujo actual.</translation>
    </message>
    <message>
        <source>▲ This list is for an earlier drawing. Propose again to take one.</source>
        <translation>▲ Esta lista es de un dibujo anterior. Proponga de nuevo para usar una.</translation>
    </message>
    <message>
        <source>▲ This list is for other choices. Propose again to take one.</source>
        <translation>▲ Esta lista es de otras opciones. Proponga de nuevo para usar una.</translation>
    </message>
    <message>
        <source>Every layout breaks a rule. In the way of those that came farthest (Enter opens the rule):</source>
        <translation>Toda disposición infringe una regla. Estorba a las que más avanzaron (Intro abre la regla):</translation>
    </message>
    <message>
        <source>One layout breaks no rule.</source>
        <translation>Una disposición no infringe ninguna regla.</translation>
    </message>
    <message>
        <source>%1 layouts break no rule, the best first.</source>
        <translation>%1 disposiciones no infringen ninguna regla, la mejor primero.</translation>
    </message>
    <message>
        <source>&amp;Propose again</source>
        <translation>&amp;Proponer de nuevo</translation>
    </message>
    <message>
        <source>Draw it in place of the hoses there are (Enter). One undo takes it back.</source>
        <translation>Dibujarla en lugar de las mangueras existentes (Intro). Un deshacer la revierte.</translation>
    </message>
    <message>
        <source>The list has to be renewed first</source>
        <translation>Antes hay que renovar la lista</translation>
    </message>
    <message>
        <source>▲ No layout holds on every grade that is judged. These break no rule on the level:</source>
        <translation>▲ Ninguna disposición se sostiene en todas las pendientes que se juzgan. Estas no infringen ninguna regla en llano:</translation>
    </message>
</context>
<context>
    <name>siphonwright::rules</name>
    <message>
        <source>nothing moves</source>
        <translation>nada se mueve</translation>
    </message>
    <message>
        <source>element bare</source>
        <translation>al descubierto</translation>
    </message>
    <message>
        <source>a bleed at the crest</source>
        <translation>un purgador en la cresta</translation>
    </message>
    <message>
        <source>pushed, but not out</source>
        <translation>empujado, pero no fuera</translation>
    </message>
    <message>
        <source>cold minimum</source>
        <translation>mínimo en frío</translation>
    </message>
    <message>
        <source>Air closes the bore: it takes more head than there is.</source>
        <translation>El aire cierra el paso: resta más altura de la que hay.</translation>
    </message>
    <message>
        <source>No crest, no pocket: warm coolant rises, cold falls.</source>
        <translation>Sin cresta, sin bolsa: lo caliente sube, lo frío baja.</translation>
    </message>
    <message>
        <source>A small pocket takes part of the few millimetres.</source>
        <translation>Una bolsa pequeña resta parte de los pocos milímetros.</translation>
    </message>
    <message>
        <source>All of the head is left for the flow.</source>
        <translation>Toda la altura de presión queda para el caudal.</translation>
    </message>
    <message>
        <source>Air over the coolant: the element burns out.</source>
        <translation>Aire sobre el refrigerante: la resistencia se quema.</translation>
    </message>
    <message>
        <source>The chamber is full, the element covered.</source>
        <translation>La cámara está llena, la resistencia cubierta.</translation>
    </message>
    <message>
        <source>The engine&apos;s pump pushes the air and does not move it.</source>
        <translation>La bomba del motor empuja el aire y no lo mueve.</translation>
    </message>
    <message>
        <source>A bleed lets it out.</source>
        <translation>Un purgador lo deja salir.</translation>
    </message>
    <message>
        <source>In the cold the coolant shrinks under its minimum.</source>
        <translation>Con el frío el refrigerante baja de su mínimo.</translation>
    </message>
    <message>
        <source>Filled so that enough is left in the cold.</source>
        <translation>Llenado para que con el frío quede bastante.</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>cerrada</translation>
    </message>
    <message>
        <source>radiator</source>
        <translation>radiador</translation>
    </message>
    <message>
        <source>thermostat</source>
        <translation>termostato</translation>
    </message>
    <message>
        <source>cabin heater</source>
        <translation>calefacción</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierta</translation>
    </message>
    <message>
        <source>check valve</source>
        <translation>antirretorno</translation>
    </message>
    <message>
        <source>A hose ends in the open.</source>
        <translation>Una manguera termina al aire.</translation>
    </message>
    <message>
        <source>Every hose end is on a port or a nozzle.</source>
        <translation>Cada extremo está en una toma o una boquilla.</translation>
    </message>
    <message>
        <source>A hose from port to port, and the heater left out.</source>
        <translation>Manguera de toma a toma, sin pasar por el calentador.</translation>
    </message>
    <message>
        <source>Port, heater and port make one loop.</source>
        <translation>Toma, calentador y toma forman un circuito.</translation>
    </message>
    <message>
        <source>No valve where the loop leaves the engine.</source>
        <translation>Sin válvula donde el circuito sale del motor.</translation>
    </message>
    <message>
        <source>A valve near each of the engine&apos;s ports.</source>
        <translation>Una válvula cerca de cada toma del motor.</translation>
    </message>
    <message>
        <source>The heater is on and a valve is closed.</source>
        <translation>El calentador está encendido y una válvula cerrada.</translation>
    </message>
    <message>
        <source>Both valves are open while the heater is on.</source>
        <translation>Ambas válvulas abiertas con el calentador encendido.</translation>
    </message>
    <message>
        <source>Cold, the thermostat shuts between engine and supply.</source>
        <translation>En frío el termostato separa motor y alimentación.</translation>
    </message>
    <message>
        <source>The supply leaves the block itself.</source>
        <translation>La alimentación sale del propio bloque.</translation>
    </message>
    <message>
        <source>The cabin heater&apos;s line is open beside the loop.</source>
        <translation>La línea de calefacción está abierta junto al circuito.</translation>
    </message>
    <message>
        <source>The cabin heater&apos;s line is closed.</source>
        <translation>La línea de calefacción está cerrada.</translation>
    </message>
    <message>
        <source>A few millimetres of head do not open a check valve.</source>
        <translation>Unos milímetros no abren una válvula antirretorno.</translation>
    </message>
    <message>
        <source>Nothing in the loop has to be pushed open.</source>
        <translation>Nada del circuito hay que abrirlo empujando.</translation>
    </message>
    <message>
        <source>antifreeze</source>
        <translation>anticongelante</translation>
    </message>
    <message>
        <source>coolant freezes</source>
        <translation>se congela</translation>
    </message>
    <message>
        <source>kind: as the engine&apos;s</source>
        <translation>tipo: el del motor</translation>
    </message>
    <message>
        <source>kind: ?</source>
        <translation>tipo: ?</translation>
    </message>
    <message>
        <source>maker specifies</source>
        <translation>indica el fabricante</translation>
    </message>
    <message>
        <source>Nearly all antifreeze, hardly any water.</source>
        <translation>Casi todo anticongelante, apenas agua.</translation>
    </message>
    <message>
        <source>As much antifreeze as the cold asks for.</source>
        <translation>Tanto anticongelante como pide el frío.</translation>
    </message>
    <message>
        <source>The coldest night is colder than the coolant bears.</source>
        <translation>La noche más fría supera lo que aguanta el refrigerante.</translation>
    </message>
    <message>
        <source>The coolant freezes only well under the coldest night.</source>
        <translation>Se congela solo muy por debajo de la noche más fría.</translation>
    </message>
    <message>
        <source>Nobody has written down which antifreeze it is.</source>
        <translation>Nadie ha anotado qué anticongelante es.</translation>
    </message>
    <message>
        <source>The kind is known and is not mixed with others.</source>
        <translation>El tipo se conoce y no se mezcla con otros.</translation>
    </message>
    <message>
        <source>cold coolant lies here</source>
        <translation>refrigerante frío</translation>
    </message>
    <message>
        <source>does not drain</source>
        <translation>no se vacía</translation>
    </message>
    <message>
        <source>nearly level</source>
        <translation>casi a nivel</translation>
    </message>
    <message>
        <source>level</source>
        <translation>nivel</translation>
    </message>
    <message>
        <source>The supply climbs over a hump: air stays at its crest.</source>
        <translation>La alimentación pasa un lomo: queda aire en la cresta.</translation>
    </message>
    <message>
        <source>The supply falls all the way to the heater.</source>
        <translation>La alimentación baja todo el tiempo al calentador.</translation>
    </message>
    <message>
        <source>The return climbs over the port and comes down to it.</source>
        <translation>El retorno sube por encima de la toma y baja a ella.</translation>
    </message>
    <message>
        <source>The return rises to the port and not past it.</source>
        <translation>El retorno sube a la toma y no la rebasa.</translation>
    </message>
    <message>
        <source>The return dips on its way: warm coolant does not go down.</source>
        <translation>El retorno tiene un punto bajo: lo caliente no baja.</translation>
    </message>
    <message>
        <source>The return rises all the way.</source>
        <translation>El retorno sube todo el tiempo.</translation>
    </message>
    <message>
        <source>The supply lies lower than the heater&apos;s inlet.</source>
        <translation>La alimentación va más baja que la entrada.</translation>
    </message>
    <message>
        <source>The heater&apos;s inlet is the lowest place.</source>
        <translation>La entrada del calentador es el lugar más bajo.</translation>
    </message>
    <message>
        <source>The heater&apos;s inlet is higher than the supply port.</source>
        <translation>La entrada está más alta que la toma de alimentación.</translation>
    </message>
    <message>
        <source>The heater hangs under the supply port.</source>
        <translation>El calentador cuelga bajo la toma de alimentación.</translation>
    </message>
    <message>
        <source>A nearly level return: air stays where it is.</source>
        <translation>Un retorno casi a nivel: el aire se queda.</translation>
    </message>
    <message>
        <source>A rise all along: air finds its way to the engine.</source>
        <translation>Subida en todo el recorrido: el aire llega al motor.</translation>
    </message>
    <message>
        <source>A part of the loop stands above the coolant level.</source>
        <translation>Parte del circuito está sobre el nivel de refrigerante.</translation>
    </message>
    <message>
        <source>The whole loop lies under the coolant level.</source>
        <translation>Todo el circuito está bajo el nivel de refrigerante.</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>altura</translation>
    </message>
    <message>
        <source>little drop</source>
        <translation>poca altura</translation>
    </message>
    <message>
        <source>up</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>the manual: upright only</source>
        <translation>el manual: solo vertical</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>bastidor</translation>
    </message>
    <message>
        <source>The heater&apos;s top is hardly lower than the jacket.</source>
        <translation>El calentador apenas queda más bajo que la camisa.</translation>
    </message>
    <message>
        <source>The heater hangs well under the jacket&apos;s lowest point.</source>
        <translation>El calentador cuelga muy por debajo de la camisa.</translation>
    </message>
    <message>
        <source>The heater is far from under the return port.</source>
        <translation>El calentador está lejos de la toma de retorno.</translation>
    </message>
    <message>
        <source>The heater is right under the return port.</source>
        <translation>El calentador está justo bajo la toma de retorno.</translation>
    </message>
    <message>
        <source>The chamber reaches higher than its outlet: air stays.</source>
        <translation>La cámara supera su salida: queda aire.</translation>
    </message>
    <message>
        <source>The outlet is at the top: air leaves by itself.</source>
        <translation>La salida está en lo alto: el aire sale solo.</translation>
    </message>
    <message>
        <source>The heater lies where its manual wants it upright.</source>
        <translation>El calentador va tumbado y su manual lo pide vertical.</translation>
    </message>
    <message>
        <source>The heater stands as its manual says.</source>
        <translation>El calentador está como dice su manual.</translation>
    </message>
    <message>
        <source>The bracket is on the engine and shakes with it.</source>
        <translation>El soporte está en el motor y vibra con él.</translation>
    </message>
    <message>
        <source>The bracket is on the frame.</source>
        <translation>El soporte está en el bastidor.</translation>
    </message>
    <message>
        <source>nearly as wide</source>
        <translation>casi igual de ancho</translation>
    </message>
    <message>
        <source>narrow</source>
        <translation>estrecho</translation>
    </message>
    <message>
        <source>too short</source>
        <translation>muy corto</translation>
    </message>
    <message>
        <source>nothing holds it</source>
        <translation>nada lo sujeta</translation>
    </message>
    <message>
        <source>clearance</source>
        <translation>distancia</translation>
    </message>
    <message>
        <source>exhaust</source>
        <translation>escape</translation>
    </message>
    <message>
        <source>A thinner hose than the heater&apos;s manual asks for.</source>
        <translation>Una manguera más fina de lo que pide el manual.</translation>
    </message>
    <message>
        <source>The size that the manual asks for, all the way.</source>
        <translation>La medida que pide el manual, en todo el recorrido.</translation>
    </message>
    <message>
        <source>A part far narrower than the hose.</source>
        <translation>Una pieza mucho más estrecha que la manguera.</translation>
    </message>
    <message>
        <source>A part nearly as wide as the hose.</source>
        <translation>Una pieza casi tan ancha como la manguera.</translation>
    </message>
    <message>
        <source>Bent over a sharp corner, the hose kinks.</source>
        <translation>Doblada en una arista, la manguera se estrangula.</translation>
    </message>
    <message>
        <source>An open bend, or a moulded elbow.</source>
        <translation>Una curva abierta, o un codo moldeado.</translation>
    </message>
    <message>
        <source>Two bends need more length than lies between them.</source>
        <translation>Dos curvas necesitan más longitud de la que hay.</translation>
    </message>
    <message>
        <source>Each bend has the length that it needs.</source>
        <translation>Cada curva tiene la longitud que necesita.</translation>
    </message>
    <message>
        <source>The hose goes a long way round.</source>
        <translation>La manguera da un gran rodeo.</translation>
    </message>
    <message>
        <source>The hose goes the direct way.</source>
        <translation>La manguera va por el camino directo.</translation>
    </message>
    <message>
        <source>A long flat piece without a clip sags and chafes.</source>
        <translation>Un tramo largo y plano sin soporte se comba y roza.</translation>
    </message>
    <message>
        <source>Clips hold it to the frame along its way.</source>
        <translation>Los soportes la sujetan al bastidor en su recorrido.</translation>
    </message>
    <message>
        <source>Pulled straight: the engine tears at both ends.</source>
        <translation>Tirante: el motor tira de ambos extremos.</translation>
    </message>
    <message>
        <source>A bend gives when the engine moves.</source>
        <translation>Una curva cede cuando el motor se mueve.</translation>
    </message>
    <message>
        <source>The hose hangs where the road reaches it.</source>
        <translation>La manguera cuelga donde la alcanza el camino.</translation>
    </message>
    <message>
        <source>The hose stays clear of the ground.</source>
        <translation>La manguera queda lejos del suelo.</translation>
    </message>
    <message>
        <source>The hose touches something hot or moving.</source>
        <translation>La manguera toca algo caliente o en movimiento.</translation>
    </message>
    <message>
        <source>The hose keeps its distance.</source>
        <translation>La manguera guarda la distancia.</translation>
    </message>
    <message>
        <source>front</source>
        <translation>frente</translation>
    </message>
    <message>
        <source>stays cold</source>
        <translation>queda frío</translation>
    </message>
    <message>
        <source>sensor</source>
        <translation>sensor</translation>
    </message>
    <message>
        <source>another circuit</source>
        <translation>otro circuito</translation>
    </message>
    <message>
        <source>one bank</source>
        <translation>una bancada</translation>
    </message>
    <message>
        <source>the other</source>
        <translation>la otra</translation>
    </message>
    <message>
        <source>Coolant under the supply port never gets to the heater.</source>
        <translation>Lo que está bajo la toma no llega al calentador.</translation>
    </message>
    <message>
        <source>The supply is taken from the lowest port.</source>
        <translation>La alimentación sale de la toma más baja.</translation>
    </message>
    <message>
        <source>The return enters low: little height drives the flow.</source>
        <translation>El retorno entra bajo: poca altura impulsa el caudal.</translation>
    </message>
    <message>
        <source>The return enters high.</source>
        <translation>El retorno entra alto.</translation>
    </message>
    <message>
        <source>Both ports at the rear: the front stays cold.</source>
        <translation>Ambas tomas detrás: el frente queda frío.</translation>
    </message>
    <message>
        <source>The supply leaves at the front.</source>
        <translation>La alimentación sale delante.</translation>
    </message>
    <message>
        <source>Both ports at the front: the rear stays cold.</source>
        <translation>Ambas tomas delante: la parte trasera queda fría.</translation>
    </message>
    <message>
        <source>The return enters at the rear.</source>
        <translation>El retorno entra detrás.</translation>
    </message>
    <message>
        <source>Warm coolant goes straight back into the supply.</source>
        <translation>Lo caliente vuelve directo a la alimentación.</translation>
    </message>
    <message>
        <source>The whole engine lies between the ports.</source>
        <translation>Todo el motor queda entre las tomas.</translation>
    </message>
    <message>
        <source>Warm coolant enters at the thermostat and opens it.</source>
        <translation>Lo caliente entra en el termostato y lo abre.</translation>
    </message>
    <message>
        <source>Warm coolant enters far from the thermostat.</source>
        <translation>Lo caliente entra lejos del termostato.</translation>
    </message>
    <message>
        <source>The sensor feels what comes from the heater.</source>
        <translation>El sensor nota lo que viene del calentador.</translation>
    </message>
    <message>
        <source>The sensor feels the engine.</source>
        <translation>El sensor nota el motor.</translation>
    </message>
    <message>
        <source>Two circuits on one port share what it lets through.</source>
        <translation>Dos circuitos en una toma comparten lo que deja pasar.</translation>
    </message>
    <message>
        <source>Each circuit has a port of its own.</source>
        <translation>Cada circuito tiene su propia toma.</translation>
    </message>
    <message>
        <source>Both ports on one bank: the other stays colder.</source>
        <translation>Ambas tomas en una bancada: la otra queda más fría.</translation>
    </message>
    <message>
        <source>Out of one bank, into the other.</source>
        <translation>De una bancada a la otra.</translation>
    </message>
    <message>
        <source>backward</source>
        <translation>al revés</translation>
    </message>
    <message>
        <source>as wide as the hose</source>
        <translation>ancho como la manguera</translation>
    </message>
    <message>
        <source>takes a third of the head</source>
        <translation>consume un tercio de la altura</translation>
    </message>
    <message>
        <source>over 5 kW and no pump</source>
        <translation>más de 5 kW y sin bomba</translation>
    </message>
    <message>
        <source>warm</source>
        <translation>caliente</translation>
    </message>
    <message>
        <source>over 82 °C</source>
        <translation>más de 82 °C</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>margen</translation>
    </message>
    <message>
        <source>steam</source>
        <translation>vapor</translation>
    </message>
    <message>
        <source>one hour</source>
        <translation>una hora</translation>
    </message>
    <message>
        <source>power</source>
        <translation>potencia</translation>
    </message>
    <message>
        <source>target</source>
        <translation>objetivo</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>horas</translation>
    </message>
    <message>
        <source>The warm coolant stands no higher than the cold.</source>
        <translation>Lo caliente no está más alto que lo frío.</translation>
    </message>
    <message>
        <source>Warm coolant rises all the way, cold falls all the way.</source>
        <translation>Lo caliente sube todo el tiempo, lo frío baja.</translation>
    </message>
    <message>
        <source>The supply rises from the heater: warm coolant takes it.</source>
        <translation>La alimentación sube del calentador: lo caliente la toma.</translation>
    </message>
    <message>
        <source>The return rises from the outlet, the supply falls.</source>
        <translation>El retorno sube desde la salida, la alimentación baja.</translation>
    </message>
    <message>
        <source>One narrow part takes much of the few millimetres.</source>
        <translation>Una pieza estrecha consume mucho de los milímetros.</translation>
    </message>
    <message>
        <source>A part with a full bore takes little.</source>
        <translation>Una pieza de paso total consume poco.</translation>
    </message>
    <message>
        <source>More heat than a few millimetres of head carry away.</source>
        <translation>Más calor del que evacuan unos milímetros de altura.</translation>
    </message>
    <message>
        <source>As much power as the engine&apos;s size asks for.</source>
        <translation>Tanta potencia como pide el tamaño del motor.</translation>
    </message>
    <message>
        <source>Too little flows: what leaves is too hot.</source>
        <translation>Pasa muy poco: lo que sale está demasiado caliente.</translation>
    </message>
    <message>
        <source>Enough flows to carry the heat away.</source>
        <translation>Pasa lo suficiente para llevarse el calor.</translation>
    </message>
    <message>
        <source>Bubbles gather and steam bares the element.</source>
        <translation>Se juntan burbujas y el vapor descubre la resistencia.</translation>
    </message>
    <message>
        <source>The coolant stays well under its boiling point.</source>
        <translation>El refrigerante queda lejos de su punto de ebullición.</translation>
    </message>
    <message>
        <source>A hose too thin for this heater and these heights.</source>
        <translation>Manguera muy fina para este calentador y alturas.</translation>
    </message>
    <message>
        <source>A hose that lets enough through.</source>
        <translation>Una manguera que deja pasar lo suficiente.</translation>
    </message>
    <message>
        <source>The heater warms itself: on and off all the time.</source>
        <translation>Se calienta a sí mismo: enciende y apaga sin parar.</translation>
    </message>
    <message>
        <source>The heater warms the engine: few turns an hour.</source>
        <translation>Calienta el motor: pocos encendidos por hora.</translation>
    </message>
    <message>
        <source>The engine loses the heat before it is warm enough.</source>
        <translation>El motor pierde el calor antes de estar caliente.</translation>
    </message>
    <message>
        <source>The engine gets warm enough in the time given.</source>
        <translation>El motor se calienta lo suficiente a tiempo.</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Bien</translation>
    </message>
    <message>
        <source>Wrong</source>
        <translation>Mal</translation>
    </message>
    <message>
        <source>air</source>
        <translation>aire</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
    <message>
        <source>coldest night</source>
        <translation>noche más fría</translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation>Alzado</translation>
    </message>
    <message>
        <source>Heater</source>
        <translation>Calentador</translation>
    </message>
    <message>
        <source>Ports</source>
        <translation>Tomas</translation>
    </message>
    <message>
        <source>Hose</source>
        <translation>Manguera</translation>
    </message>
    <message>
        <source>Coolant</source>
        <translation>Refrigerante</translation>
    </message>
    <message>
        <source>Connections</source>
        <translation>Conexiones</translation>
    </message>
    <message>
        <source>Running</source>
        <translation>Funcionamiento</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Aire</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Otros</translation>
    </message>
    <message>
        <source>station 0</source>
        <translation>abscisa 0</translation>
    </message>
    <message>
        <source>rail</source>
        <translation>larguero</translation>
    </message>
</context>
<context>
    <name>siphonwright::rules::CaseView</name>
    <message>
        <source>Right: %1</source>
        <translation>Bien: %1</translation>
    </message>
    <message>
        <source>Wrong: %1</source>
        <translation>Mal: %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::rules::LimitForm</name>
    <message>
        <source>Judge this rule in this drawing</source>
        <translation>Evaluar esta regla en este dibujo</translation>
    </message>
    <message>
        <source>Keep for this drawing</source>
        <translation>Mantener en este dibujo</translation>
    </message>
    <message>
        <source>Back to the rule book&apos;s</source>
        <translation>Volver al libro de reglas</translation>
    </message>
    <message>
        <source>Advice over</source>
        <translation>Consejo si supera</translation>
    </message>
    <message>
        <source>Advice under</source>
        <translation>Consejo bajo</translation>
    </message>
    <message>
        <source>Caution over</source>
        <translation>Aviso si supera</translation>
    </message>
    <message>
        <source>Caution under</source>
        <translation>Aviso bajo</translation>
    </message>
    <message>
        <source>Stop over</source>
        <translation>Parada si supera</translation>
    </message>
    <message>
        <source>Stop under</source>
        <translation>Parada bajo</translation>
    </message>
    <message>
        <source>Judged yes or no, or by a figure from the manual: there is no limit to change.</source>
        <translation>Se evalúa con sí o no, o por una cifra del manual: no hay límite que cambiar.</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>for example: the heater&apos;s manual, page 7</source>
        <translation>por ejemplo: el manual del calentador, página 7</translation>
    </message>
    <message>
        <source>changed; rule book: %1</source>
        <translation>cambiado; libro de reglas: %1</translation>
    </message>
    <message>
        <source>as in the rule book</source>
        <translation>como en el libro de reglas</translation>
    </message>
    <message>
        <source>Write the reason too: the sheet states it.</source>
        <translation>Escriba también el motivo: la hoja lo indica.</translation>
    </message>
    <message>
        <source>Change a limit</source>
        <translation>Cambiar un límite</translation>
    </message>
    <message>
        <source>Back to the rule book</source>
        <translation>Volver al libro de reglas</translation>
    </message>
    <message>
        <source>Write the reason first, then switch it off: the sheet states it.</source>
        <translation>Escriba antes el motivo y luego desactívela: la hoja lo indica.</translation>
    </message>
    <message>
        <source>Judge a rule again</source>
        <translation>Evaluar de nuevo una regla</translation>
    </message>
    <message>
        <source>Switch a rule off</source>
        <translation>Desactivar una regla</translation>
    </message>
</context>
<context>
    <name>siphonwright::rules::RuleBrowser</name>
    <message>
        <source>Rules</source>
        <translation>Reglas</translation>
    </message>
    <message>
        <source>Search the rules</source>
        <translation>Buscar en las reglas</translation>
    </message>
</context>
<context>
    <name>siphonwright::rules::RuleList</name>
    <message>
        <source>off</source>
        <translation>desactivada</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>cambiada</translation>
    </message>
    <message>
        <source>not judged here</source>
        <translation>no se evalúa aquí</translation>
    </message>
    <message>
        <source>stops the job</source>
        <translation>detiene el trabajo</translation>
    </message>
    <message>
        <source>a caution</source>
        <translation>un aviso</translation>
    </message>
    <message>
        <source>an advice</source>
        <translation>un consejo</translation>
    </message>
</context>
<context>
    <name>siphonwright::rules::RulePage</name>
    <message>
        <source>Stop</source>
        <translation>Parada</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Aviso</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Consejo</translation>
    </message>
    <message>
        <source>Judged on the level; the grade does not change it.</source>
        <translation>Se evalúa a nivel; la pendiente no lo cambia.</translation>
    </message>
    <message>
        <source>Judged on the level and over the grades.</source>
        <translation>Se evalúa a nivel y en las pendientes.</translation>
    </message>
    <message>
        <source>Judged on the level and over the grades; it decides in which grades the loop is sound.</source>
        <translation>Se evalúa a nivel y en las pendientes; decide en qué pendientes es correcto el circuito.</translation>
    </message>
    <message>
        <source>In this drawing</source>
        <translation>En este dibujo</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Límites</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Qué hacer</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Fundamento</translation>
    </message>
    <message>
        <source>Not judged by choice: %1</source>
        <translation>Sin evaluar por decisión: %1</translation>
    </message>
    <message>
        <source>Not judged: %1.</source>
        <translation>Sin evaluar: %1.</translation>
    </message>
    <message>
        <source>Nothing to judge until hoses are drawn.</source>
        <translation>Nada que evaluar hasta dibujar mangueras.</translation>
    </message>
    <message>
        <source>Nothing found.</source>
        <translation>No se halló nada.</translation>
    </message>
</context>
<context>
    <name>siphonwright::sheet</name>
    <message>
        <source>End view</source>
        <translation>Vista de extremo</translation>
    </message>
    <message>
        <source>End view from the front</source>
        <translation>Vista de extremo desde delante</translation>
    </message>
    <message>
        <source>End view from the rear</source>
        <translation>Vista de extremo desde detrás</translation>
    </message>
    <message>
        <source>Views</source>
        <translation>Vistas</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>y %1 más</translation>
    </message>
    <message>
        <source>No end view: beside it the elevation would be too small on this paper. What lies across the engine is drawn in the program and counted in every length.</source>
        <translation>Sin vista de extremo: junto a ella el alzado sería demasiado pequeño en este papel. Lo que está a lo ancho del motor se dibuja en el programa y cuenta en cada longitud.</translation>
    </message>
    <message>
        <source>Layout sheet</source>
        <translation>Hoja de disposición</translation>
    </message>
    <message>
        <source>%1: a sheet is written as .pdf, .svg or .png.</source>
        <translation>%1: una hoja se escribe como .pdf, .svg o .png.</translation>
    </message>
    <message>
        <source>%1: the sheet could not be drawn.</source>
        <translation>%1: no se pudo dibujar la hoja.</translation>
    </message>
    <message>
        <source>Level hot</source>
        <translation>Nivel en caliente</translation>
    </message>
    <message>
        <source>Level cold full</source>
        <translation>Nivel lleno en frío</translation>
    </message>
    <message>
        <source>Level cold minimum</source>
        <translation>Nivel mínimo en frío</translation>
    </message>
    <message>
        <source>Jacket highest</source>
        <translation>Camisa, lo más alto</translation>
    </message>
    <message>
        <source>Jacket lowest</source>
        <translation>Camisa, lo más bajo</translation>
    </message>
    <message>
        <source>%1, top</source>
        <translation>%1, arriba</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>Suelo</translation>
    </message>
    <message>
        <source>Drop %1</source>
        <translation>Altura %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>flow %1</source>
        <translation>caudal %1</translation>
    </message>
    <message>
        <source>peak outlet %1, cycles in the worst hour %2</source>
        <translation>salida máxima %1, ciclos en la peor hora %2</translation>
    </message>
    <message>
        <source>Engine at %1 after %2</source>
        <translation>Motor a %1 tras %2</translation>
    </message>
    <message>
        <source>Engine does not get to %1 in %2</source>
        <translation>El motor no llega a %1 en %2</translation>
    </message>
    <message>
        <source>; %1 in %2</source>
        <translation>; %1 en %2</translation>
    </message>
    <message>
        <source>, from %1 ambient</source>
        <translation>, desde %1 de ambiente</translation>
    </message>
    <message>
        <source>Results</source>
        <translation>Resultados</translation>
    </message>
    <message>
        <source>Assumed otherwise than the book</source>
        <translation>Supuestos distintos del libro</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation>sin motivo indicado</translation>
    </message>
    <message>
        <source>%1: %2 instead of %3 (%4).</source>
        <translation>%1: %2 en lugar de %3 (%4).</translation>
    </message>
    <message>
        <source>Student sheet: side elevation 1:%1</source>
        <translation>Hoja del alumno: alzado lateral 1:%1</translation>
    </message>
    <message>
        <source>Side elevation 1:%1</source>
        <translation>Alzado lateral 1:%1</translation>
    </message>
    <message>
        <source>seen from the engine&apos;s left side</source>
        <translation>visto desde el lado izquierdo del motor</translation>
    </message>
    <message>
        <source>seen from the engine&apos;s right side</source>
        <translation>visto desde el lado derecho del motor</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Frente</translation>
    </message>
    <message>
        <source>Nothing is drawn yet.</source>
        <translation>Aún no hay nada dibujado.</translation>
    </message>
    <message>
        <source>Department</source>
        <translation>Departamento</translation>
    </message>
    <message>
        <source>Technical reference</source>
        <translation>Referencia técnica</translation>
    </message>
    <message>
        <source>Creator</source>
        <translation>Autor</translation>
    </message>
    <message>
        <source>Approver</source>
        <translation>Aprobado por</translation>
    </message>
    <message>
        <source>Legal owner</source>
        <translation>Propietario legal</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Título</translation>
    </message>
    <message>
        <source>Supplementary title</source>
        <translation>Título complementario</translation>
    </message>
    <message>
        <source>Document type</source>
        <translation>Tipo de documento</translation>
    </message>
    <message>
        <source>Identification number</source>
        <translation>Número de identificación</translation>
    </message>
    <message>
        <source>Vehicle</source>
        <translation>Vehículo</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Escala</translation>
    </message>
    <message>
        <source>Rev.</source>
        <translation>Rev.</translation>
    </message>
    <message>
        <source>Date of issue</source>
        <translation>Fecha de emisión</translation>
    </message>
    <message>
        <source>Lang.</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Hoja</translation>
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
        <translation>Escala 1:%1</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parada</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Aviso</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Consejo</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>sin dato</translation>
    </message>
    <message>
        <source>Not judged by choice: %1 (%2).</source>
        <translation>Sin evaluar por decisión: %1 (%2).</translation>
    </message>
    <message>
        <source>%1 instead of %2</source>
        <translation>%1 en lugar de %2</translation>
    </message>
    <message>
        <source>advice over %1</source>
        <translation>consejo si supera %1</translation>
    </message>
    <message>
        <source>advice under %1</source>
        <translation>consejo bajo %1</translation>
    </message>
    <message>
        <source>caution over %1</source>
        <translation>aviso si supera %1</translation>
    </message>
    <message>
        <source>caution under %1</source>
        <translation>aviso bajo %1</translation>
    </message>
    <message>
        <source>stop over %1</source>
        <translation>parada si supera %1</translation>
    </message>
    <message>
        <source>stop under %1</source>
        <translation>parada bajo %1</translation>
    </message>
    <message>
        <source>%1: %2 (%3).</source>
        <translation>%1: %2 (%3).</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>None in what was judged.</source>
        <translation>Ninguno en lo evaluado.</translation>
    </message>
    <message>
        <source>Not judged, for want of a fact</source>
        <translation>Sin evaluar, por falta de un dato</translation>
    </message>
    <message>
        <source>Margins</source>
        <translation>Márgenes</translation>
    </message>
    <message>
        <source>Judged on grades to %1 nose up and down, %2 left and right.</source>
        <translation>Evaluado en pendientes hasta %1 frente arriba y abajo, %2 a izquierda y derecha.</translation>
    </message>
    <message>
        <source>Not confirmed: %1.</source>
        <translation>Sin confirmar: %1.</translation>
    </message>
    <message>
        <source>Judged otherwise than the rule book</source>
        <translation>Evaluado de modo distinto al libro de reglas</translation>
    </message>
    <message>
        <source>Parts and cut lengths</source>
        <translation>Piezas y longitudes de corte</translation>
    </message>
    <message>
        <source>%1 x %2</source>
        <translation>%1 x %2</translation>
    </message>
    <message>
        <source>What is known</source>
        <translation>Lo que se sabe</translation>
    </message>
    <message>
        <source>To be answered</source>
        <translation>Por responder</translation>
    </message>
    <message>
        <source>Where does air stay when this is filled, and about how much?</source>
        <translation>¿Dónde queda aire al llenar esto, y cuánto más o menos?</translation>
    </message>
    <message>
        <source>Does it circulate, and which way?</source>
        <translation>¿Circula, y en qué sentido?</translation>
    </message>
    <message>
        <source>What would you change, and why?</source>
        <translation>¿Qué cambiaría usted, y por qué?</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>Qualified technicians only. Disconnect and lock out power while working; inhibit a generator&apos;s automatic start.</source>
        <translation>Solo técnicos cualificados. Desconecte y bloquee la electricidad mientras trabaja; anule el arranque automático de un generador.</translation>
    </message>
    <message>
        <source>Chock wheels, block air suspension; never work under an unsupported vehicle.</source>
        <translation>Calce las ruedas, bloquee la suspensión neumática; nunca bajo un vehículo sin apoyos.</translation>
    </message>
    <message>
        <source>Open the cap only cold: hot coolant under pressure.</source>
        <translation>Abra el tapón solo en frío: refrigerante caliente a presión.</translation>
    </message>
    <message>
        <source>Never energise without coolant in the chamber.</source>
        <translation>No energice nunca sin refrigerante en la cámara.</translation>
    </message>
    <message>
        <source>Heater off before a valve is closed: both closed is a sealed vessel.</source>
        <translation>Apague el calentador antes de cerrar una válvula: con ambas cerradas es un recipiente cerrado.</translation>
    </message>
    <message>
        <source>Run the engine outdoors or with extraction.</source>
        <translation>Haga funcionar el motor al aire libre o con extracción.</translation>
    </message>
    <message>
        <source>Grounded supply, local electrical code, licensed electrician.</source>
        <translation>Alimentación con puesta a tierra, código eléctrico local, electricista autorizado.</translation>
    </message>
    <message>
        <source>Antifreeze is poisonous: catch it and dispose of it properly.</source>
        <translation>El anticongelante es venenoso: recójalo y deséchelo debidamente.</translation>
    </message>
    <message>
        <source>The heater&apos;s and the engine&apos;s own manuals rule over this sheet; its figures are estimates from stated assumptions.</source>
        <translation>Los manuales del calentador y del motor mandan sobre esta hoja; sus cifras son estimaciones a partir de supuestos declarados.</translation>
    </message>
    <message>
        <source>%1: none of the pages asked for has anything on it.</source>
        <translation>%1: ninguna de las páginas pedidas tiene contenido.</translation>
    </message>
    <message>
        <source>Row %1 of %2, column %3 of %4. Trim at the marks and join.</source>
        <translation>Fila %1 de %2, columna %3 de %4. Cortar por las marcas y unir.</translation>
    </message>
    <message>
        <source>* not measured</source>
        <translation>* no medido</translation>
    </message>
    <message>
        <source>Measure me:</source>
        <translation>Mídeme:</translation>
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
        <translation>por lado, impreso al 100 %</translation>
    </message>
    <message>
        <source>Vehicle&apos;s serial number</source>
        <translation>N.º de serie del vehículo</translation>
    </message>
    <message>
        <source>Engine&apos;s serial number</source>
        <translation>N.º de serie del motor</translation>
    </message>
    <message>
        <source>Heater&apos;s serial number</source>
        <translation>N.º de serie del calentador</translation>
    </message>
    <message>
        <source>Changed in this revision</source>
        <translation>Cambiado en esta revisión</translation>
    </message>
    <message>
        <source>kind not known</source>
        <translation>tipo desconocido</translation>
    </message>
    <message>
        <source>plain water</source>
        <translation>agua sola</translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation>etilenglicol</translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation>propilenglicol</translation>
    </message>
    <message>
        <source>%1, strength not entered</source>
        <translation>%1, concentración sin indicar</translation>
    </message>
    <message>
        <source>Electrical load and coolant</source>
        <translation>Carga eléctrica y refrigerante</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>desconocido</translation>
    </message>
    <message>
        <source>All heaters %1, current %2, continuous load (125 %) %3.</source>
        <translation>Todos los calentadores %1, corriente %2, carga continua (125 %) %3.</translation>
    </message>
    <message>
        <source>Further sheets</source>
        <translation>Otras hojas</translation>
    </message>
    <message>
        <source>Sheet %1</source>
        <translation>Hoja %1</translation>
    </message>
    <message>
        <source>Sheets %1 to %2</source>
        <translation>Hojas %1 a %2</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>sheet 2</source>
        <translation>hoja 2</translation>
    </message>
    <message>
        <source>sheets 2 to %1</source>
        <translation>hojas 2 a %1</translation>
    </message>
    <message>
        <source>and %1 more on %2</source>
        <translation>y %1 más: %2</translation>
    </message>
    <message>
        <source>On %1: %2.</source>
        <translation>En %1: %2.</translation>
    </message>
    <message>
        <source>Continued from sheet 1</source>
        <translation>Continuación de la hoja 1</translation>
    </message>
    <message>
        <source>1, drawing: sheets 1 to %1</source>
        <translation>1, dibujo: hojas 1 a %1</translation>
    </message>
    <message>
        <source>1, drawing</source>
        <translation>1, dibujo</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Página</translation>
    </message>
    <message>
        <source>%1: the rest of page 1.</source>
        <translation>%1: el resto de la página 1.</translation>
    </message>
    <message>
        <source>%1: page %2, %3 (%4).</source>
        <translation>%1: página %2, %3 (%4).</translation>
    </message>
    <message>
        <source>None printed with this one; there are checklist, parts and estimate, and assumptions.</source>
        <translation>Ninguna impresa con esta; hay lista de comprobación, piezas y presupuesto, y supuestos.</translation>
    </message>
    <message>
        <source>Assumed, and what the figures depend on most: %1.</source>
        <translation>Lo supuesto de lo que más dependen las cifras: %1.</translation>
    </message>
    <message>
        <source>%1: bore %2, cut %3</source>
        <translation>%1: diámetro interior %2, cortar %3</translation>
    </message>
    <message>
        <source>%1; from A to B: %2</source>
        <translation>%1; de A a B: %2</translation>
    </message>
    <message>
        <source>bleed</source>
        <translation>purga</translation>
    </message>
    <message>
        <source>drain</source>
        <translation>drenaje</translation>
    </message>
    <message>
        <source>check valve</source>
        <translation>válvula antirretorno</translation>
    </message>
    <message>
        <source>reducer</source>
        <translation>reducción</translation>
    </message>
    <message>
        <source>elbow</source>
        <translation>codo</translation>
    </message>
    <message>
        <source>valve</source>
        <translation>válvula</translation>
    </message>
    <message>
        <source>New hoses and heaters hold about %1 of coolant: %2.</source>
        <translation>Las mangueras y los calentadores nuevos contienen unos %1 de refrigerante: %2.</translation>
    </message>
    <message>
        <source>%1, continued</source>
        <translation>%1, continuación</translation>
    </message>
    <message>
        <source>Ports %1 apart, level</source>
        <translation>Tomas a %1 en horizontal</translation>
    </message>
    <message>
        <source>, where it gets there</source>
        <translation>, cuando llega</translation>
    </message>
    <message>
        <source>%1: bore %2, cut %3 (%4 of it allowance)</source>
        <translation>%1: diámetro interior %2, cortar %3 (%4 de sobrante)</translation>
    </message>
    <message>
        <source>Air is what stays after filling.</source>
        <translation>Aire: lo que queda tras el llenado.</translation>
    </message>
    <message>
        <source>Crossed out: a hose whose bore is too small.</source>
        <translation>Tachada: una manguera de paso demasiado pequeño.</translation>
    </message>
    <message>
        <source>Slopes: rise over run, the way it flows.</source>
        <translation>Pendientes: altura por longitud, según fluye.</translation>
    </message>
    <message>
        <source>In a box: as it runs at that block temperature.</source>
        <translation>En el recuadro: a esa temperatura del bloque.</translation>
    </message>
    <message>
        <source>%1: all of page 1.</source>
        <translation>%1: toda la página 1.</translation>
    </message>
</context>
<context>
    <name>siphonwright::sizing::Entries</name>
    <message>
        <source>Phases</source>
        <translation>Fases</translation>
    </message>
    <message>
        <source>one</source>
        <translation>una</translation>
    </message>
    <message>
        <source>three</source>
        <translation>tres</translation>
    </message>
    <message>
        <source>Conductor</source>
        <translation>Conductor</translation>
    </message>
    <message>
        <source>Size of the conductors to the bay</source>
        <translation>Sección de los conductores hasta el puesto</translation>
    </message>
    <message>
        <source>%1 – not in the tables</source>
        <translation>%1 – no está en las tablas</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Objetivo</translation>
    </message>
    <message>
        <source>Wanted temperature of the engine block</source>
        <translation>Temperatura deseada del bloque motor</translation>
    </message>
    <message>
        <source>Usual ambient</source>
        <translation>Ambiente usual</translation>
    </message>
    <message>
        <source>Coldest ambient</source>
        <translation>Ambiente más frío</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Viento</translation>
    </message>
    <message>
        <source>Nothing entered counts as still air</source>
        <translation>Sin introducir cuenta como aire en calma</translation>
    </message>
    <message>
        <source>Time allowed</source>
        <translation>Tiempo permitido</translation>
    </message>
    <message>
        <source>From the start to the target</source>
        <translation>Del inicio al objetivo</translation>
    </message>
    <message>
        <source>Plugged in a night</source>
        <translation>Enchufado por noche</translation>
    </message>
    <message>
        <source>Price of a kWh</source>
        <translation>Precio de un kWh</translation>
    </message>
    <message>
        <source>In the currency of the quote</source>
        <translation>En la moneda del presupuesto</translation>
    </message>
    <message>
        <source>Voltage at the bay</source>
        <translation>Tensión en el puesto</translation>
    </message>
    <message>
        <source>Between conductors</source>
        <translation>Entre conductores</translation>
    </message>
    <message>
        <source>Metal</source>
        <translation>Metal</translation>
    </message>
    <message>
        <source>copper</source>
        <translation>cobre</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>aluminio</translation>
    </message>
    <message>
        <source>Length, one way</source>
        <translation>Longitud, solo ida</translation>
    </message>
    <message>
        <source>Of the run, from its start to the heater</source>
        <translation>De la línea, de su inicio al calentador</translation>
    </message>
    <message>
        <source>Antifreeze in it now</source>
        <translation>Anticongelante que hay ahora</translation>
    </message>
    <message>
        <source>none, plain water</source>
        <translation>ninguno, agua sola</translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation>etilenglicol</translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation>propilenglicol</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>desconocido</translation>
    </message>
    <message>
        <source>Its share now</source>
        <translation>Su proporción ahora</translation>
    </message>
    <message>
        <source>By volume, as a refractometer shows it</source>
        <translation>En volumen, como la muestra un refractómetro</translation>
    </message>
    <message>
        <source>Antifreeze to add</source>
        <translation>Anticongelante que añadir</translation>
    </message>
    <message>
        <source>Empty: the kind that is in it now; kinds are never mixed</source>
        <translation>Vacío: el tipo que hay ahora; nunca se mezclan tipos</translation>
    </message>
    <message>
        <source>Share wanted</source>
        <translation>Proporción deseada</translation>
    </message>
    <message>
        <source>By volume, 60 % at most</source>
        <translation>En volumen, 60 % como máximo</translation>
    </message>
    <message>
        <source>Whole system holds</source>
        <translation>Contenido del sistema</translation>
    </message>
    <message>
        <source>Radiator and cabin heater included; without it the engine alone counts</source>
        <translation>Con radiador y calefacción de cabina; sin él cuenta solo el motor</translation>
    </message>
    <message>
        <source>Runs out at once</source>
        <translation>Sale de una vez</translation>
    </message>
    <message>
        <source>What comes out at the drains</source>
        <translation>Lo que sale por los drenajes</translation>
    </message>
    <message>
        <source>Water to mix with</source>
        <translation>Agua para mezclar</translation>
    </message>
    <message>
        <source>Chloride</source>
        <translation>Cloruro</translation>
    </message>
    <message>
        <source>Sulphate</source>
        <translation>Sulfato</translation>
    </message>
    <message>
        <source>Hardness</source>
        <translation>Dureza</translation>
    </message>
    <message>
        <source>As calcium carbonate, CaCO3</source>
        <translation>Como carbonato de calcio, CaCO3</translation>
    </message>
    <message>
        <source>Total solids</source>
        <translation>Sólidos totales</translation>
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
        <translation>Clic para ver en el dibujo de dónde viene</translation>
    </message>
</context>
<context>
    <name>siphonwright::sizing::FigureText</name>
    <message>
        <source>%1, freezes at %2</source>
        <translation>%1, se congela a %2</translation>
    </message>
    <message>
        <source>%1, freezing point not known</source>
        <translation>%1, punto de congelación desconocido</translation>
    </message>
    <message>
        <source>▲ %1, %2 too warm for the coldest ambient</source>
        <translation>▲ %1, %2 insuficiente para el ambiente más frío</translation>
    </message>
    <message>
        <source>%1, %2 under the coldest ambient</source>
        <translation>%1, %2 por debajo del ambiente más frío</translation>
    </message>
    <message>
        <source>Freezing points are good to some 2 K</source>
        <translation>Los puntos de congelación tienen una precisión de unos 2 K</translation>
    </message>
    <message>
        <source>Drained, to be filled</source>
        <translation>Vaciado, por llenar</translation>
    </message>
    <message>
        <source>In it now</source>
        <translation>Contenido actual</translation>
    </message>
    <message>
        <source>%1, the engine alone</source>
        <translation>%1, solo el motor</translation>
    </message>
    <message>
        <source>Let out, to be filled again</source>
        <translation>Sacado, por rellenar</translation>
    </message>
    <message>
        <source>New parts take</source>
        <translation>Toman las piezas nuevas</translation>
    </message>
    <message>
        <source>%1 in hoses, %2 in chambers</source>
        <translation>%1 en mangueras, %2 en cámaras</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Ronda %1</translation>
    </message>
    <message>
        <source>drain %1, add %2 of %3: %4</source>
        <translation>vaciar %1, añadir %2 de %3: %4</translation>
    </message>
    <message>
        <source>antifreeze</source>
        <translation>anticongelante</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
    <message>
        <source>Drained in all, to be disposed of</source>
        <translation>Vaciado en total, para desechar</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Drenaje</translation>
    </message>
    <message>
        <source>Antifreeze to buy</source>
        <translation>Anticongelante que comprar</translation>
    </message>
    <message>
        <source>Distilled water to buy</source>
        <translation>Agua destilada que comprar</translation>
    </message>
    <message>
        <source>System then holds</source>
        <translation>El sistema contiene luego</translation>
    </message>
    <message>
        <source>Coolant</source>
        <translation>Refrigerante</translation>
    </message>
    <message>
        <source>figure</source>
        <translation>cifra</translation>
    </message>
    <message>
        <source>Mixture now</source>
        <translation>Mezcla actual</translation>
    </message>
    <message>
        <source>Mixture wanted</source>
        <translation>Mezcla deseada</translation>
    </message>
    <message>
        <source>No share is wanted yet: nothing is planned.</source>
        <translation>Aún no se desea ninguna proporción: no se planifica nada.</translation>
    </message>
    <message>
        <source>Mixture reached</source>
        <translation>Mezcla alcanzada</translation>
    </message>
    <message>
        <source>Least for the coldest ambient</source>
        <translation>Mínimo para el ambiente más frío</translation>
    </message>
    <message>
        <source>%1, with %2 to spare</source>
        <translation>%1, con %2 de margen</translation>
    </message>
    <message>
        <source>Not even %1 holds the coldest ambient with %2 to spare.</source>
        <translation>Ni siquiera %1 aguanta el ambiente más frío con %2 de margen.</translation>
    </message>
    <message>
        <source>The coldest ambient is not entered: no margin to freezing.</source>
        <translation>Falta el ambiente más frío: sin margen de congelación.</translation>
    </message>
    <message>
        <source>The whole system is not entered: radiator and cabin heater are not counted.</source>
        <translation>Falta el sistema completo: radiador y calefacción de cabina no se cuentan.</translation>
    </message>
    <message>
        <source>Never mix kinds of antifreeze; low-silicate antifreeze, deionised or distilled water. At most %1 by volume.</source>
        <translation>No mezcle nunca tipos de anticongelante; anticongelante bajo en silicatos, agua desionizada o destilada. Como máximo %1 en volumen.</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medido</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>límite</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>juicio</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>sin dato</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como máximo %1</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>sin evaluar</translation>
    </message>
    <message>
        <source>▲ do not use it</source>
        <translation>▲ no la use</translation>
    </message>
    <message>
        <source>good</source>
        <translation>buena</translation>
    </message>
    <message>
        <source>Limits: %1.</source>
        <translation>Límites: %1.</translation>
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
        <translation>▲ %1 hierve</translation>
    </message>
    <message>
        <source>▲ %1 trips</source>
        <translation>▲ %1 se dispara</translation>
    </message>
    <message>
        <source>▲ outlet over %1: too much for these hoses.</source>
        <translation>▲ salida sobre %1: demasiado para estas mangueras.</translation>
    </message>
    <message>
        <source>Boils: the heater&apos;s chamber reaches the boiling point.</source>
        <translation>Hierve: la cámara del calentador llega al punto de ebullición.</translation>
    </message>
    <message>
        <source>Trips: the cut-out opens.</source>
        <translation>Se dispara: el limitador abre.</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1 in all</source>
        <translation>%1 en total</translation>
    </message>
    <message>
        <source>● %1</source>
        <translation>● %1</translation>
    </message>
    <message>
        <source>▲ over %1</source>
        <translation>▲ más de %1</translation>
    </message>
    <message>
        <source>Heater</source>
        <translation>Calentador</translation>
    </message>
    <message>
        <source>To %1</source>
        <translation>Hasta %1</translation>
    </message>
    <message>
        <source>Block, %1</source>
        <translation>Bloque, %1</translation>
    </message>
    <message>
        <source>On for</source>
        <translation>Encendido</translation>
    </message>
    <message>
        <source>Peak outlet</source>
        <translation>Salida máxima</translation>
    </message>
    <message>
        <source>A night</source>
        <translation>Una noche</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Temporada</translation>
    </message>
    <message>
        <source>In the usual ambient, on the loops as drawn, thermostats and all; sizes are our own choice.</source>
        <translation>En el ambiente usual, con los circuitos dibujados, termostatos incluidos; los tamaños son elección propia.</translation>
    </message>
    <message>
        <source>No loop is closed yet: the engine as one lump, held where a usual thermostat would. Sizes are our own choice.</source>
        <translation>Aún no hay circuito cerrado: el motor como una sola masa, mantenida donde lo haría un termostato usual. Los tamaños son elección propia.</translation>
    </message>
    <message>
        <source>%1 is left out of the table: %2</source>
        <translation>%1 se deja fuera de la tabla: %2</translation>
    </message>
    <message>
        <source>● is what is drawn.</source>
        <translation>● es lo dibujado.</translation>
    </message>
    <message>
        <source>Cost of a night: hours plugged in are not entered.</source>
        <translation>Costo de una noche: faltan las horas enchufado.</translation>
    </message>
    <message>
        <source>Price of a kWh: not entered.</source>
        <translation>Precio de un kWh: falta.</translation>
    </message>
    <message>
        <source>Costs in %1.</source>
        <translation>Costos en %1.</translation>
    </message>
    <message>
        <source>Season: no nights are entered.</source>
        <translation>Temporada: faltan las noches.</translation>
    </message>
    <message>
        <source>Season: %1 nights.</source>
        <translation>Temporada: %1 noches.</translation>
    </message>
    <message>
        <source>– %1</source>
        <translation>– %1</translation>
    </message>
    <message>
        <source>▲ %1 too little</source>
        <translation>▲ faltan %1</translation>
    </message>
    <message>
        <source>nothing is needed</source>
        <translation>no hace falta nada</translation>
    </message>
    <message>
        <source>%1 over, %2</source>
        <translation>%1 de sobra, %2</translation>
    </message>
    <message>
        <source>To hold %1</source>
        <translation>Para mantener %1</translation>
    </message>
    <message>
        <source>nothing: the air is as warm</source>
        <translation>nada: el aire está igual de caliente</translation>
    </message>
    <message>
        <source>as the heat loss may be</source>
        <translation>según la pérdida de calor</translation>
    </message>
    <message>
        <source>With the engine&apos;s heat loss at either end of what is assumed of it</source>
        <translation>Con la pérdida de calor del motor en ambos extremos de lo supuesto</translation>
    </message>
    <message>
        <source>of it the engine</source>
        <translation>de ello, el motor</translation>
    </message>
    <message>
        <source>of it hoses and chambers</source>
        <translation>de ello, mangueras y cámaras</translation>
    </message>
    <message>
        <source>not drawn</source>
        <translation>sin dibujar</translation>
    </message>
    <message>
        <source>To reach it in %1</source>
        <translation>Para alcanzarla en %1</translation>
    </message>
    <message>
        <source>To reach it</source>
        <translation>Para alcanzarla</translation>
    </message>
    <message>
        <source>time allowed: not entered</source>
        <translation>tiempo permitido: falta</translation>
    </message>
    <message>
        <source>no heater drawn</source>
        <translation>ningún calentador dibujado</translation>
    </message>
    <message>
        <source>power: not entered</source>
        <translation>potencia: falta</translation>
    </message>
    <message>
        <source>Heaters as drawn</source>
        <translation>Calentadores dibujados</translation>
    </message>
    <message>
        <source>margin to hold</source>
        <translation>margen para mantener</translation>
    </message>
    <message>
        <source>margin to reach in time</source>
        <translation>margen para alcanzar a tiempo</translation>
    </message>
    <message>
        <source>%1 for %2 of displacement is %3 W a litre; %4 to %5 W a litre is common practice for diesel engines (no published source, from memory).</source>
        <translation>%1 para %2 de cilindrada son %3 W por litro; de %4 a %5 W por litro es práctica habitual en motores diésel (sin fuente publicada, de memoria).</translation>
    </message>
    <message>
        <source>Estimated from the engine&apos;s mass, coolant and outline as one lump of heat, thermostats left out.</source>
        <translation>Estimado a partir de la masa, el refrigerante y el contorno del motor como una sola masa de calor, sin termostatos.</translation>
    </message>
    <message>
        <source>No loop is closed yet: hoses and chambers are not counted.</source>
        <translation>Aún no hay circuito cerrado: mangueras y cámaras no se cuentan.</translation>
    </message>
    <message>
        <source>As drawn a loop does not circulate: the figures suppose that it will.</source>
        <translation>Tal como está dibujado, un circuito no circula: las cifras suponen que lo hará.</translation>
    </message>
    <message>
        <source>Wind is not entered: still air.</source>
        <translation>Falta el viento: aire en calma.</translation>
    </message>
    <message>
        <source>Power needed</source>
        <translation>Potencia necesaria</translation>
    </message>
    <message>
        <source>usual, %1</source>
        <translation>usual, %1</translation>
    </message>
    <message>
        <source>coldest, %1</source>
        <translation>más frío, %1</translation>
    </message>
    <message>
        <source>The coldest ambient is not entered.</source>
        <translation>Falta el ambiente más frío.</translation>
    </message>
    <message>
        <source>Conductor at %1</source>
        <translation>Conductor a %1</translation>
    </message>
    <message>
        <source>NEC chapter 9, table 8</source>
        <translation>NEC capítulo 9, tabla 8</translation>
    </message>
    <message>
        <source>IEC 60228, classes 1 and 2; flexible cord has up to 10 % more</source>
        <translation>IEC 60228, clases 1 y 2; el cable flexible tiene hasta un 10 % más</translation>
    </message>
    <message>
        <source>Voltage drop</source>
        <translation>Caída de tensión</translation>
    </message>
    <message>
        <source>not computed</source>
        <translation>sin calcular</translation>
    </message>
    <message>
        <source>Left at the heater</source>
        <translation>Queda en el calentador</translation>
    </message>
    <message>
        <source>No heater is drawn.</source>
        <translation>No hay ningún calentador dibujado.</translation>
    </message>
    <message>
        <source>Electrical load</source>
        <translation>Carga eléctrica</translation>
    </message>
    <message>
        <source>All heaters</source>
        <translation>Todos los calentadores</translation>
    </message>
    <message>
        <source>Current</source>
        <translation>Corriente</translation>
    </message>
    <message>
        <source>Power over √3 times the voltage</source>
        <translation>Potencia entre √3 veces la tensión</translation>
    </message>
    <message>
        <source>Power over voltage</source>
        <translation>Potencia entre tensión</translation>
    </message>
    <message>
        <source>Continuous load, 125 %</source>
        <translation>Carga continua, 125 %</translation>
    </message>
    <message>
        <source>A load figure after NEC 210.20(A) and 215.3</source>
        <translation>Una cifra de carga según NEC 210.20(A) y 215.3</translation>
    </message>
    <message>
        <source>Over %1 in all, consider a heater with a pump (our own limit).</source>
        <translation>Con más de %1 en total, considere un calentador con bomba (límite propio).</translation>
    </message>
</context>
<context>
    <name>siphonwright::sizing::SeasonEdit</name>
    <message>
        <source>Nights of a season</source>
        <translation>Noches de una temporada</translation>
    </message>
    <message>
        <source>Add nights</source>
        <translation>Añadir noches</translation>
    </message>
    <message>
        <source>Try a season (invented)</source>
        <translation>Probar una temporada (inventada)</translation>
    </message>
    <message>
        <source>150 nights from -30 to 0 °C: invented, no weather record</source>
        <translation>150 noches de -30 a 0 °C: inventadas, sin registro meteorológico</translation>
    </message>
    <message>
        <source>Try an invented season</source>
        <translation>Probar una temporada inventada</translation>
    </message>
    <message>
        <source>Change nights</source>
        <translation>Cambiar noches</translation>
    </message>
    <message>
        <source>Temperature of the nights</source>
        <translation>Temperatura de las noches</translation>
    </message>
    <message>
        <source>How many nights</source>
        <translation>Cuántas noches</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Remove nights</source>
        <translation>Quitar noches</translation>
    </message>
    <message>
        <source>nights at</source>
        <translation>noches a</translation>
    </message>
    <message>
        <source>none entered</source>
        <translation>ninguna introducida</translation>
    </message>
    <message>
        <source>%1 nights in all</source>
        <translation>%1 noches en total</translation>
    </message>
</context>
<context>
    <name>siphonwright::sizing::SizingPanel</name>
    <message>
        <source>Power needed</source>
        <translation>Potencia necesaria</translation>
    </message>
    <message>
        <source>By heater power</source>
        <translation>Por potencia</translation>
    </message>
    <message>
        <source>Electrical load</source>
        <translation>Carga eléctrica</translation>
    </message>
    <message>
        <source>Coolant</source>
        <translation>Refrigerante</translation>
    </message>
    <message>
        <source>Water to mix with</source>
        <translation>Agua para mezclar</translation>
    </message>
    <message>
        <source>Subject</source>
        <translation>Tema</translation>
    </message>
    <message>
        <source>Heater size</source>
        <translation>Tamaño del calentador</translation>
    </message>
    <message>
        <source>Electrical supply</source>
        <translation>Suministro eléctrico</translation>
    </message>
    <message>
        <source>Load figures only. A licensed electrician and the local electrical code decide on circuit, conductors, protection and grounding; the heater&apos;s manual rules. Disconnect and lock out before any work.</source>
        <translation>Solo cifras de carga. Un electricista autorizado y el código eléctrico local deciden circuito, conductores, protección y puesta a tierra; manda el manual del calentador. Desconecte y bloquee antes de cualquier trabajo.</translation>
    </message>
    <message>
        <source>Antifreeze is poisonous: catch and dispose of it properly. Open the cap only cold.</source>
        <translation>El anticongelante es venenoso: recójalo y deséchelo debidamente. Abra el tapón solo en frío.</translation>
    </message>
    <message>
        <source>Being computed; the table is of the drawing as it was.</source>
        <translation>Calculando; la tabla es del dibujo como estaba.</translation>
    </message>
    <message>
        <source>The table by heater power is being computed.</source>
        <translation>Calculando la tabla por potencia del calentador.</translation>
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
        <translation>Toma de datos antes de dibujar un calentador de refrigerante</translation>
    </message>
    <message>
        <source>Vehicle or set</source>
        <translation>Vehículo o grupo</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Por</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>How to measure</source>
        <translation>Cómo medir</translation>
    </message>
    <message>
        <source>Heights: tape held plumb, from the frame rail&apos;s upper edge (under it: minus) or from the floor. Tick which.</source>
        <translation>Alturas: cinta a plomo, desde el borde superior del larguero (debajo: menos) o desde el suelo. Marque cuál.</translation>
    </message>
    <message>
        <source>Station: along the frame rail from the block&apos;s front face, + to the engine&apos;s rear. Across: out from the crankshaft, + to the engine&apos;s right side.</source>
        <translation>Abscisa: por el larguero desde el frente del bloque, + hacia atrás. A lo ancho: desde el cigüeñal, + hacia la derecha del motor.</translation>
    </message>
    <message>
        <source>Slopes: inclinometer along the engine, in ° or %; + is higher at the engine&apos;s front.</source>
        <translation>Inclinaciones: inclinómetro a lo largo del motor, en ° o %; + es más alto delante.</translation>
    </message>
    <message>
        <source>What was not measured stays empty: an empty place is asked for again, a guess is not.</source>
        <translation>Lo no medido queda vacío: un hueco se vuelve a preguntar, una conjetura no.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>Engine cold: open the cap only cold. Hot surfaces; belts and fan may start.</source>
        <translation>Motor frío: abra el tapón solo en frío. Superficies calientes; correas y ventilador.</translation>
    </message>
    <message>
        <source>Wheels chocked, air suspension blocked, automatic start inhibited, key out. Never under an unsupported vehicle.</source>
        <translation>Ruedas calzadas, suspensión bloqueada, arranque automático anulado, llave fuera. Nunca bajo un vehículo sin apoyos.</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Measured from</source>
        <translation>Medido desde</translation>
    </message>
    <message>
        <source>Height, %1</source>
        <translation>Altura, %1</translation>
    </message>
    <message>
        <source>Station, %1</source>
        <translation>Abscisa, %1</translation>
    </message>
    <message>
        <source>Across, %1</source>
        <translation>A lo ancho, %1</translation>
    </message>
    <message>
        <source>rail</source>
        <translation>larguero</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>suelo</translation>
    </message>
    <message>
        <source>Supply port</source>
        <translation>Alimentación</translation>
    </message>
    <message>
        <source>Return port</source>
        <translation>Retorno</translation>
    </message>
    <message>
        <source>drain port</source>
        <translation>drenaje</translation>
    </message>
    <message>
        <source>core plug</source>
        <translation>tapón de expansión</translation>
    </message>
    <message>
        <source>lower hose tee</source>
        <translation>te inferior</translation>
    </message>
    <message>
        <source>head port</source>
        <translation>culata</translation>
    </message>
    <message>
        <source>cabin line</source>
        <translation>cabina</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Rosca</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Ø int.</translation>
    </message>
    <message>
        <source>Points to</source>
        <translation>Apunta a</translation>
    </message>
    <message>
        <source>front</source>
        <translation>delante</translation>
    </message>
    <message>
        <source>rear</source>
        <translation>atrás</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izq.</translation>
    </message>
    <message>
        <source>right</source>
        <translation>der.</translation>
    </message>
    <message>
        <source>up</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>down</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>tilt</source>
        <translation>incl.</translation>
    </message>
    <message>
        <source>Engine&apos;s thermostat on the</source>
        <translation>Termostato del motor en la</translation>
    </message>
    <message>
        <source>outlet side</source>
        <translation>salida</translation>
    </message>
    <message>
        <source>inlet side</source>
        <translation>entrada</translation>
    </message>
    <message>
        <source>Supply voltage at the bay</source>
        <translation>Tensión en el puesto</translation>
    </message>
    <message>
        <source>V</source>
        <translation>V</translation>
    </message>
    <message>
        <source>Coolant in it now</source>
        <translation>Refrigerante actual</translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation>etilenglicol</translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation>propilenglicol</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>desconocido</translation>
    </message>
    <message>
        <source>% by volume</source>
        <translation>% en volumen</translation>
    </message>
    <message>
        <source>colour</source>
        <translation>color</translation>
    </message>
    <message>
        <source>What is hot or moves nearby; notes</source>
        <translation>Lo caliente o móvil cercano; notas</translation>
    </message>
    <message>
        <source>The engine&apos;s and the heater&apos;s own manuals rule over this form.</source>
        <translation>Los manuales del motor y del calentador mandan sobre este formulario.</translation>
    </message>
    <message>
        <source>Survey form</source>
        <translation>Formulario de toma de datos</translation>
    </message>
    <message>
        <source>%1: the form could not be drawn.</source>
        <translation>%1: no se pudo dibujar el formulario.</translation>
    </message>
</context>
<context>
    <name>siphonwright::survey::LetterGrid</name>
    <message>
        <source>not drawn</source>
        <translation>sin dibujar</translation>
    </message>
    <message>
        <source>from the floor only with L</source>
        <translation>desde el suelo solo con L</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>sin medir</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Measured from</source>
        <translation>Medido desde</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Altura</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Abscisa</translation>
    </message>
    <message>
        <source>Across</source>
        <translation>A lo ancho</translation>
    </message>
    <message>
        <source>Drawn: height, station, across</source>
        <translation>Dibujado: altura, abscisa, a lo ancho</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Survey, %1</source>
        <translation>Toma de datos, %1</translation>
    </message>
    <message>
        <source>frame rail</source>
        <translation>larguero</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>suelo</translation>
    </message>
    <message>
        <source>%1: measured from</source>
        <translation>%1: medido desde</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>grados</translation>
    </message>
    <message>
        <source>percent</source>
        <translation>por ciento</translation>
    </message>
    <message>
        <source>%1: typed in</source>
        <translation>%1: escrito</translation>
    </message>
</context>
<context>
    <name>siphonwright::survey::SurveyText</name>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>drain port</source>
        <translation>toma de drenaje</translation>
    </message>
    <message>
        <source>core plug</source>
        <translation>tapón de expansión</translation>
    </message>
    <message>
        <source>lower hose tee</source>
        <translation>te manguera inferior</translation>
    </message>
    <message>
        <source>head or manifold port</source>
        <translation>toma de culata o colector</translation>
    </message>
    <message>
        <source>cabin heater line</source>
        <translation>línea de calefacción de cabina</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Rosca</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Diámetro interior</translation>
    </message>
    <message>
        <source>Points to</source>
        <translation>Apunta a</translation>
    </message>
    <message>
        <source>front</source>
        <translation>delante</translation>
    </message>
    <message>
        <source>rear</source>
        <translation>atrás</translation>
    </message>
    <message>
        <source>left side</source>
        <translation>lado izquierdo</translation>
    </message>
    <message>
        <source>right side</source>
        <translation>lado derecho</translation>
    </message>
    <message>
        <source>up</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>down</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>Tilted up by</source>
        <translation>Inclinado hacia arriba</translation>
    </message>
    <message>
        <source>Measured by</source>
        <translation>Medido por</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Supply port</source>
        <translation>Toma de alimentación</translation>
    </message>
    <message>
        <source>Return port</source>
        <translation>Toma de retorno</translation>
    </message>
    <message>
        <source>Engine and bay</source>
        <translation>Motor y puesto</translation>
    </message>
    <message>
        <source>Thermostat on the</source>
        <translation>Termostato en el</translation>
    </message>
    <message>
        <source>outlet side</source>
        <translation>lado de salida</translation>
    </message>
    <message>
        <source>inlet side</source>
        <translation>lado de entrada</translation>
    </message>
    <message>
        <source>Supply voltage</source>
        <translation>Tensión de suministro</translation>
    </message>
    <message>
        <source>Antifreeze in it now</source>
        <translation>Anticongelante que hay ahora</translation>
    </message>
    <message>
        <source>none, plain water</source>
        <translation>ninguno, agua sola</translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation>etilenglicol</translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation>propilenglicol</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>desconocido</translation>
    </message>
    <message>
        <source>By volume</source>
        <translation>En volumen</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Color</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
</context>
<context>
    <name>siphonwright::survey::SurveyWindow</name>
    <message>
        <source>Where the letters are on an engine in its frame</source>
        <translation>Dónde están las letras en un motor en su bastidor</translation>
    </message>
    <message>
        <source>Draw the engine from these</source>
        <translation>Dibujar el motor con estos</translation>
    </message>
    <message>
        <source>Survey</source>
        <translation>Toma de datos</translation>
    </message>
    <message>
        <source>What was not measured</source>
        <translation>Lo que no se midió</translation>
    </message>
    <message>
        <source>Make or update engine, tank and ports; one step to undo</source>
        <translation>Crear o actualizar motor, vaso y tomas; un paso para deshacer</translation>
    </message>
    <message>
        <source>Blank form as PDF…</source>
        <translation>Formulario en PDF…</translation>
    </message>
    <message>
        <source>Print blank form…</source>
        <translation>Imprimir formulario…</translation>
    </message>
    <message>
        <source>Stays typical or not known</source>
        <translation>Queda típico o desconocido</translation>
    </message>
    <message>
        <source>Draw the engine from the survey</source>
        <translation>Dibujar el motor según la toma de datos</translation>
    </message>
    <message>
        <source>There is no engine yet: an in-line 6 of typical shape will be drawn. For another, insert it first.</source>
        <translation>Aún no hay motor: se dibujará un 6 en línea de forma típica. Para otro, insértelo antes.</translation>
    </message>
</context>
<context>
    <name>siphonwright::warming</name>
    <message>
        <source>at %1</source>
        <translation>a %1</translation>
    </message>
    <message>
        <source>before</source>
        <translation>antes</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>objetivo %1</translation>
    </message>
    <message>
        <source>outlet&apos;s limit %1</source>
        <translation>límite de salida %1</translation>
    </message>
    <message>
        <source>peak, 9 of 10 cases</source>
        <translation>máximo, 9 de 10 casos</translation>
    </message>
    <message>
        <source>target reached, where it is</source>
        <translation>objetivo alcanzado, donde lo está</translation>
    </message>
    <message>
        <source>target reached, 9 of 10 cases</source>
        <translation>objetivo alcanzado, 9 de 10 casos</translation>
    </message>
    <message>
        <source>▲ %1, over %2</source>
        <translation>▲ %1, sobre %2</translation>
    </message>
    <message>
        <source>▲ %1, does not run forward</source>
        <translation>▲ %1, no va hacia delante</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>after %1</source>
        <translation>tras %1</translation>
    </message>
    <message>
        <source>▲ not in %1</source>
        <translation>▲ no en %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Warm-up: %1</source>
        <translation>Calentamiento: %1</translation>
    </message>
    <message>
        <source>%1: a warm-up is written as .csv, .png or .svg.</source>
        <translation>%1: un calentamiento se escribe como .csv, .png o .svg.</translation>
    </message>
    <message>
        <source>%1: the warm-up could not be written.</source>
        <translation>%1: no se pudo escribir el calentamiento.</translation>
    </message>
    <message>
        <source>outlet</source>
        <translation>salida</translation>
    </message>
    <message>
        <source>inlet</source>
        <translation>entrada</translation>
    </message>
    <message>
        <source>return at port</source>
        <translation>retorno en la toma</translation>
    </message>
    <message>
        <source>hose outside</source>
        <translation>exterior de manguera</translation>
    </message>
    <message>
        <source>block</source>
        <translation>bloque</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>caudal</translation>
    </message>
    <message>
        <source>power</source>
        <translation>potencia</translation>
    </message>
    <message>
        <source>No warm-up: at the start the coolant would be slush.</source>
        <translation>Sin calentamiento: al inicio el refrigerante sería granizado.</translation>
    </message>
    <message>
        <source>No warm-up: %1.</source>
        <translation>Sin calentamiento: %1.</translation>
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
        <translation>nunca encendido</translation>
    </message>
    <message>
        <source>peak %1</source>
        <translation>máximo %1</translation>
    </message>
    <message>
        <source>, over %1</source>
        <translation>, más de %1</translation>
    </message>
    <message>
        <source>, may exceed %1</source>
        <translation>, puede superar %1</translation>
    </message>
    <message>
        <source>1 cycle an hour</source>
        <translation>1 ciclo por hora</translation>
    </message>
    <message>
        <source>%1 cycles an hour</source>
        <translation>%1 ciclos por hora</translation>
    </message>
    <message>
        <source>, reached in fewer than 1 of 10 cases</source>
        <translation>, alcanzado en menos de 1 de 10 casos</translation>
    </message>
    <message>
        <source>, reached in %1 of 10 cases</source>
        <translation>, alcanzado en %1 de 10 casos</translation>
    </message>
    <message>
        <source>%1 just not reached in %2</source>
        <translation>%1 por poco no se alcanza en %2</translation>
    </message>
    <message>
        <source>%1 not reached in %2 (%3 then)</source>
        <translation>%1 no se alcanza en %2 (entonces %3)</translation>
    </message>
    <message>
        <source>%1 after %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>, may not be reached</source>
        <translation>, puede no alcanzarse</translation>
    </message>
    <message>
        <source>%1 kWh</source>
        <translation>%1 kWh</translation>
    </message>
    <message>
        <source>return warm after %1</source>
        <translation>retorno caliente tras %1</translation>
    </message>
    <message>
        <source>return never warm</source>
        <translation>retorno nunca caliente</translation>
    </message>
    <message>
        <source>cut-out trips after %1</source>
        <translation>el limitador se dispara tras %1</translation>
    </message>
    <message>
        <source>boils after %1</source>
        <translation>hierve tras %1</translation>
    </message>
    <message>
        <source>on the edge of stalling</source>
        <translation>al borde de detenerse</translation>
    </message>
    <message>
        <source>Hangs most on: %1</source>
        <translation>Depende sobre todo de: %1</translation>
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
        <translation>Diám. manguera</translation>
    </message>
    <message>
        <source>Flow, warm</source>
        <translation>Caudal, caliente</translation>
    </message>
    <message>
        <source>Outlet, warm</source>
        <translation>Salida, caliente</translation>
    </message>
    <message>
        <source>Peak outlet</source>
        <translation>Salida máxima</translation>
    </message>
    <message>
        <source>Cycles an hour</source>
        <translation>Ciclos por hora</translation>
    </message>
    <message>
        <source>Target reached</source>
        <translation>Objetivo en</translation>
    </message>
    <message>
        <source>Use this bore</source>
        <translation>Usar este</translation>
    </message>
    <message>
        <source>By bore of hose</source>
        <translation>Por diámetro de manguera</translation>
    </message>
    <message>
        <source>Put every hose on the selected bore, hose ends and in-line parts in proportion</source>
        <translation>Poner todas las mangueras al diámetro seleccionado, con espigas y piezas en línea en proporción</translation>
    </message>
    <message>
        <source>The table comes when a loop can be computed.</source>
        <translation>La tabla aparece cuando se puede calcular un circuito.</translation>
    </message>
    <message>
        <source>Every hose on one bore, hose ends and in-line parts with it</source>
        <translation>Todas las mangueras con un diámetro, y con ellas espigas y piezas en línea</translation>
    </message>
    <message>
        <source>of the drawing as it was</source>
        <translation>del dibujo como estaba</translation>
    </message>
    <message>
        <source>● %1, as drawn</source>
        <translation>● %1, como está dibujado</translation>
    </message>
    <message>
        <source>Double-click to use this bore</source>
        <translation>Doble clic para usar este diámetro</translation>
    </message>
    <message>
        <source>Use hose of %1</source>
        <translation>Usar manguera de %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::warming::ChartView</name>
    <message>
        <source>Warm-up over time; left and right read the values</source>
        <translation>Calentamiento en el tiempo; izquierda y derecha leen los valores</translation>
    </message>
    <message>
        <source>of the drawing as it was</source>
        <translation>del dibujo como estaba</translation>
    </message>
</context>
<context>
    <name>siphonwright::warming::GradeTable</name>
    <message>
        <source>Nose up %1</source>
        <translation>Frente arriba %1</translation>
    </message>
    <message>
        <source>Nose down %1</source>
        <translation>Frente abajo %1</translation>
    </message>
    <message>
        <source>Right side up %1</source>
        <translation>Derecha arriba %1</translation>
    </message>
    <message>
        <source>Left side up %1</source>
        <translation>Izquierda arriba %1</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>A nivel</translation>
    </message>
    <message>
        <source>Parked</source>
        <translation>Estacionado</translation>
    </message>
    <message>
        <source>Flow, warm</source>
        <translation>Caudal, caliente</translation>
    </message>
    <message>
        <source>Outlet, warm</source>
        <translation>Salida, caliente</translation>
    </message>
    <message>
        <source>Peak outlet</source>
        <translation>Salida máxima</translation>
    </message>
    <message>
        <source>Cycles an hour</source>
        <translation>Ciclos por hora</translation>
    </message>
    <message>
        <source>Target reached</source>
        <translation>Objetivo en</translation>
    </message>
    <message>
        <source>On grades</source>
        <translation>Por pendiente</translation>
    </message>
    <message>
        <source>The table comes when a warm-up can be computed.</source>
        <translation>La tabla aparece cuando se puede calcular un calentamiento.</translation>
    </message>
    <message>
        <source>Filled and turned on where it is parked, at the ends of the grades judged</source>
        <translation>Llenado y encendido donde está estacionado, en los extremos de las pendientes evaluadas</translation>
    </message>
    <message>
        <source>of the drawing as it was</source>
        <translation>del dibujo como estaba</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>Double-click to see the drawing parked like this</source>
        <translation>Doble clic para ver el dibujo estacionado así</translation>
    </message>
</context>
<context>
    <name>siphonwright::warming::PlanForm</name>
    <message>
        <source>Air</source>
        <translation>Aire</translation>
    </message>
    <message>
        <source>Temperature of the air around the engine</source>
        <translation>Temperatura del aire alrededor del motor</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Viento</translation>
    </message>
    <message>
        <source>Speed of the wind; nothing entered counts as still air</source>
        <translation>Velocidad del viento; sin introducir cuenta como aire en calma</translation>
    </message>
    <message>
        <source>still</source>
        <translation>en calma</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>Of engine and coolant; nothing entered: as cold as the air</source>
        <translation>De motor y refrigerante; sin introducir: tan fríos como el aire</translation>
    </message>
    <message>
        <source>as the air</source>
        <translation>como el aire</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Objetivo</translation>
    </message>
    <message>
        <source>Wanted temperature of the engine block</source>
        <translation>Temperatura deseada del bloque motor</translation>
    </message>
    <message>
        <source>Over</source>
        <translation>Durante</translation>
    </message>
    <message>
        <source>How long the warm-up is followed</source>
        <translation>Cuánto tiempo se sigue el calentamiento</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>Cambiar %1</translation>
    </message>
</context>
<context>
    <name>siphonwright::warming::WarmUpPanel</name>
    <message>
        <source>Heater</source>
        <translation>Calentador</translation>
    </message>
    <message>
        <source>Whose warm-up is shown</source>
        <translation>De quién es el calentamiento mostrado</translation>
    </message>
    <message>
        <source>Keep this curve</source>
        <translation>Conservar curva</translation>
    </message>
    <message>
        <source>Kept</source>
        <translation>Conservadas</translation>
    </message>
    <message>
        <source>Take kept curves away</source>
        <translation>Quitar conservadas</translation>
    </message>
    <message>
        <source>Export…</source>
        <translation>Exportar…</translation>
    </message>
    <message>
        <source>Write the warm-up as CSV, PNG or SVG</source>
        <translation>Escribir el calentamiento como CSV, PNG o SVG</translation>
    </message>
    <message>
        <source> · %1</source>
        <translation> · %1</translation>
    </message>
    <message>
        <source>Of the drawing as it was: %1</source>
        <translation>Del dibujo como estaba: %1</translation>
    </message>
    <message>
        <source> · bands follow</source>
        <translation> · siguen las bandas</translation>
    </message>
    <message>
        <source>The warm-up appears when a loop with a heater is drawn.</source>
        <translation>El calentamiento aparece al dibujar un circuito con calentador.</translation>
    </message>
    <message>
        <source>The warm-up is being computed.</source>
        <translation>Calculando el calentamiento.</translation>
    </message>
    <message>
        <source>Lay the curves as they are now under those to come</source>
        <translation>Dejar las curvas actuales bajo las que vengan</translation>
    </message>
    <message>
        <source>Three are kept: take one away first</source>
        <translation>Hay tres conservadas: quite antes una</translation>
    </message>
    <message>
        <source>never on</source>
        <translation>nunca encendido</translation>
    </message>
    <message>
        <source>Take away %1, peak %2</source>
        <translation>Quitar %1, máximo %2</translation>
    </message>
    <message>
        <source>Take all away</source>
        <translation>Quitar todas</translation>
    </message>
    <message>
        <source>There is no warm-up to write.</source>
        <translation>No hay calentamiento que escribir.</translation>
    </message>
</context>
</TS>
