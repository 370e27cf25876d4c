<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en">
<context>
    <name>LedgerList</name>
    <message numerus="yes">
        <source>%n that decide nothing</source>
        <comment>lines of for and against</comment>
        <translation>
            <numerusform>%n that decides nothing</numerusform>
            <numerusform>%n that decide nothing</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Opening</name>
    <message numerus="yes">
        <source>%1 (and %n more)</source>
        <translation>
            <numerusform>%1 (and %n more)</numerusform>
            <numerusform>%1 (and %n more)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n size(s) from %1 added.</source>
        <translation>
            <numerusform>%n size from %1 added.</numerusform>
            <numerusform>%n sizes from %1 added.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Traces</name>
    <message numerus="yes">
        <source>%n earlier version(s)</source>
        <translation>
            <numerusform>%n earlier version</numerusform>
            <numerusform>%n earlier versions</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n draft(s) that were not saved</source>
        <translation>
            <numerusform>%n draft that was not saved</numerusform>
            <numerusform>%n drafts that were not saved</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n damaged file(s) set aside</source>
        <translation>
            <numerusform>%n damaged file set aside</numerusform>
            <numerusform>%n damaged files set aside</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message numerus="yes">
        <source>%n limit(s) broken</source>
        <translation>
            <numerusform>%n limit broken</numerusform>
            <numerusform>%n limits broken</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to look at</source>
        <translation>
            <numerusform>%n to look at</numerusform>
            <numerusform>%n to look at</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more</source>
        <comment>measurements</comment>
        <translation>
            <numerusform>%n more</numerusform>
            <numerusform>%n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1; %n in place of another of its name</source>
        <translation>
            <numerusform>%1; %n in place of another of its name</numerusform>
            <numerusform>%1; %n in place of others of their names</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Add %n size(s) and keep the frame</source>
        <translation>
            <numerusform>Add %n size and keep the frame</numerusform>
            <numerusform>Add %n sizes and keep the frame</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Add %n size(s)</source>
        <translation>
            <numerusform>Add %n size</numerusform>
            <numerusform>Add %n sizes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>… and %n more line(s) that are not understood</source>
        <translation>
            <numerusform>… and %n more line that is not understood</numerusform>
            <numerusform>… and %n more lines that are not understood</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n size(s)</source>
        <translation>
            <numerusform>%n size</numerusform>
            <numerusform>%n sizes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n heading(s) understood</source>
        <translation>
            <numerusform>%n heading understood</numerusform>
            <numerusform>%n headings understood</numerusform>
        </translation>
    </message>
</context>
</TS>
