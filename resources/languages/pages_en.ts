<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>foldyard</name>
    <message numerus="yes">
        <source>%n roll(s)</source>
        <translation>
            <numerusform>%n roll</numerusform>
            <numerusform>%n rolls</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n length(s)</source>
        <translation>
            <numerusform>%n length</numerusform>
            <numerusform>%n lengths</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lay(s)</source>
        <comment>in so many lays</comment>
        <translation>
            <numerusform>%n lay</numerusform>
            <numerusform>%n lays</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n flaw(s) cost(s) %1.</source>
        <translation>
            <numerusform>%n flaw costs %1.</numerusform>
            <numerusform>%n flaws cost %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) on the four-point scale, %1 per 100 square yards</source>
        <translation>
            <numerusform>%n point on the four-point scale, %1 per 100 square yards</numerusform>
            <numerusform>%n points on the four-point scale, %1 per 100 square yards</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) on the four-point scale, %1 per 100 square metres</source>
        <translation>
            <numerusform>%n point on the four-point scale, %1 per 100 square metres</numerusform>
            <numerusform>%n points on the four-point scale, %1 per 100 square metres</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n ply(ies)</source>
        <translation>
            <numerusform>%n ply</numerusform>
            <numerusform>%n plies</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Pattern %1: %n length(s) of %2, in %3</source>
        <translation>
            <numerusform>Pattern %1: %n length of %2, in %3</numerusform>
            <numerusform>Pattern %1: %n lengths of %2, in %3</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cut all %n length(s) of the plan first: even the shortest roll has them. Then measure what is left, from the last cross-cut to the end of the roll. It is %1 to %2; if it is as much as below or more, cut what stands beside it.</source>
        <translation>
            <numerusform>Cut the length of the plan first: even the shortest roll has it. Then measure what is left, from the last cross-cut to the end of the roll. It is %1 to %2; if it is as much as below or more, cut what stands beside it.</numerusform>
            <numerusform>Cut all %n lengths of the plan first: even the shortest roll has them. Then measure what is left, from the last cross-cut to the end of the roll. It is %1 to %2; if it is as much as below or more, cut what stands beside it.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source> %1 of the roll, in %n place(s), are skipped so that lengths begin where the pattern lets them.</source>
        <translation>
            <numerusform> %1 of the roll, in one place, are skipped so that lengths begin where the pattern lets them.</numerusform>
            <numerusform> %1 of the roll, in %n places, are skipped so that lengths begin where the pattern lets them.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source> Of this panel %n go(es) into each %1.</source>
        <translation>
            <numerusform> Of this panel %n goes into each %1.</numerusform>
            <numerusform> Of this panel %n go into each %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The template stands on the next %1 pages, in %n row(s) by %2. Cut each page along the thin frame at its left and at its top, lay it over its neighbour up to the dashed line, so that crosses of the same name meet, and tape. Then cut along the full line.</source>
        <translation>
            <numerusform>The template stands on the next %1 pages, in %n row by %2. Cut each page along the thin frame at its left and at its top, lay it over its neighbour up to the dashed line, so that crosses of the same name meet, and tape. Then cut along the full line.</numerusform>
            <numerusform>The template stands on the next %1 pages, in %n rows by %2. Cut each page along the thin frame at its left and at its top, lay it over its neighbour up to the dashed line, so that crosses of the same name meet, and tape. Then cut along the full line.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n length(s) of %1</source>
        <translation>
            <numerusform>%n length of %1</numerusform>
            <numerusform>%n lengths of %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Under the blade lie at most %n ply(ies) of one length.</source>
        <translation>
            <numerusform>Under the blade lie at most %n ply of one length.</numerusform>
            <numerusform>Under the blade lie at most %n plies of one length.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Under the blade lie at most %n ply(ies) of one length, %1 of a lay of %2.</source>
        <translation>
            <numerusform>Under the blade lie at most %n ply of one length, %1 of a lay of %2.</numerusform>
            <numerusform>Under the blade lie at most %n plies of one length, %1 of a lay of %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lay(s) of %1</source>
        <translation>
            <numerusform>%n lay of %1</numerusform>
            <numerusform>%n lays of %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lay(s)</source>
        <translation>
            <numerusform>%n lay</numerusform>
            <numerusform>%n lays</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n cut(s)</source>
        <translation>
            <numerusform>%n cut</numerusform>
            <numerusform>%n cuts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Roll %1: %n flaw(s), %2.
</source>
        <translation>
            <numerusform>Roll %1: %n flaw, %2.
</numerusform>
            <numerusform>Roll %1: %n flaws, %2.
</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Drew templates for roll %1 on %n page(s) to %2. Print it at 100 %.
</source>
        <translation>
            <numerusform>Drew templates for roll %1 on %n page to %2. Print it at 100 %.
</numerusform>
            <numerusform>Drew templates for roll %1 on %n pages to %2. Print it at 100 %.
</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Drew roll %1, folded %2, on %n page(s) to %3. Print it at 100 %.
</source>
        <translation>
            <numerusform>Drew roll %1, folded %2, on %n page to %3. Print it at 100 %.
</numerusform>
            <numerusform>Drew roll %1, folded %2, on %n pages to %3. Print it at 100 %.
</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Pattern %1: %n length(s) of %2, in %3, %4
</source>
        <translation>
            <numerusform>Pattern %1: %n length of %2, in %3, %4
</numerusform>
            <numerusform>Pattern %1: %n lengths of %2, in %3, %4
</numerusform>
        </translation>
    </message>
</context>
</TS>
