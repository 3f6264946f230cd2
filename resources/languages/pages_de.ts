<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>foldyard::PageColumn</name>
    <message>
        <source>The pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pages.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page %1 of %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>foldyard::PrintDialog</name>
    <message>
        <source>&amp;Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;DF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;VG…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;NG…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cop&amp;y the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clo&amp;se</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print the diagram</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print at 100 % (actual size), then check that the square on the first page measures 100 mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No printer is set up here: write a PDF and print that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written to %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer did not take the pages; see whether it is on, or write a PDF.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page %1 is on the clipboard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The page could not be copied; write it as PNG.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pages (*%1)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>foldyard::PrintForm</name>
    <message>
        <source>The cutting dia&amp;gram</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Compare the fold ways</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Portrait</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Landscape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 × %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pap&amp;er</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Or&amp;ientation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lengths in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pages of pa&amp;tterns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Te&amp;mplates in full size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;ages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>t&amp;o</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pages of patterns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Templates in full size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2: %3 pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tick the diagram or a template</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
