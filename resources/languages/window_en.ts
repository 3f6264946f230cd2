<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>foldyard</name>
    <message numerus="yes">
        <source>%1, timed %n time(s)</source>
        <translation>
            <numerusform>%1, timed once</numerusform>
            <numerusform>%1, median of %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n flaw(s)</source>
        <translation>
            <numerusform>%n flaw</numerusform>
            <numerusform>%n flaws</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation>
            <numerusform>%n piece</numerusform>
            <numerusform>%n pieces</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>foldyard::BatchFigures</name>
    <message numerus="yes">
        <source>lay(s)</source>
        <translation>
            <numerusform>lay</numerusform>
            <numerusform>lays</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>foldyard::CardDelegate</name>
    <message numerus="yes">
        <source>%n panel(s)</source>
        <translation>
            <numerusform>%n panel</numerusform>
            <numerusform>%n panels</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>foldyard::CutDialog</name>
    <message numerus="yes">
        <source>mark %n lay(s) as cut</source>
        <translation>
            <numerusform>mark a lay as cut</numerusform>
            <numerusform>mark %n lays as cut</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>foldyard::Figures</name>
    <message numerus="yes">
        <source>panel(s)</source>
        <translation>
            <numerusform>panel</numerusform>
            <numerusform>panels</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>foldyard::RangeLine</name>
    <message numerus="yes">
        <source>Cut the %n length(s) of the plan first: even the shortest roll has them.</source>
        <translation>
            <numerusform>Cut the length of the plan first: even the shortest roll has it.</numerusform>
            <numerusform>Cut the %n lengths of the plan first: even the shortest roll has them.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>foldyard::SideBySide</name>
    <message numerus="yes">
        <source>%n panel(s)</source>
        <translation>
            <numerusform>%n panel</numerusform>
            <numerusform>%n panels</numerusform>
        </translation>
    </message>
</context>
</TS>
