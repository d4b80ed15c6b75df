<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>siphonwright::panels::DetailsPanel</name>
    <message numerus="yes">
        <source>%1, and %n more selected</source>
        <translation>
            <numerusform>%1, and %n more selected</numerusform>
            <numerusform>%1, and %n more selected</numerusform>
        </translation>
    </message>
</context>
</TS>
