// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// The part on the bench: a new one until it is put in the box, or one of the box being changed.
Row {
    id: bench
    required property PartsModel parts
    required property Session session
    property bool bars: false
    property bool stems: false
    signal closed()
    spacing: Look.smallGap

    function takeFocus() {
        if (bars)
            nameEntry.input.forceActiveFocus(Qt.TabFocusReason)
        else
            fields.takeFocus()
    }
    function done() {
        if (parts.adding && parts.complete) {
            parts.putIn()
            takeFocus()
        }
    }

    Rectangle {
        color: Look.ink
        width: 2
        height: form.height
    }
    Column {
        id: form
        spacing: Look.hairGap
        width: bench.width - 2 - bench.spacing
        NameEntry {
            id: nameEntry
            objectName: "partName"
            visible: bench.bars
            session: bench.session
            label: qsTr("Name")
            value: bench.parts.partName
            onNamed: name => bench.parts.setPartName(name)
            width: parent.width
        }
        Choice {
            objectName: "barKind"
            visible: bench.bars
            name: qsTr("Kind of bar")
            options: [
                { text: qsTr("Flat"), value: "flat" },
                { text: qsTr("Swept"), value: "swept" },
                { text: qsTr("Drop"), value: "drop" }
            ]
            value: bench.parts.barKind
            onChosen: value => bench.parts.setBarKind(value)
            width: parent.width
        }
        FieldList {
            id: fields
            session: bench.session
            fields: bench.parts.fields
            datumOf: (field, label) => bench.parts.datumOf(field)
            onEntered: bench.done()
            width: parent.width
        }
        Tick {
            objectName: "reversible"
            visible: bench.stems
            text: qsTr("Can be flipped")
            checked: bench.parts.reversible
            onClicked: {
                bench.parts.setReversible(checked)
                checked = Qt.binding(() => bench.parts.reversible)
            }
            width: parent.width
        }
        Flow {
            spacing: Look.hairGap
            width: parent.width
            InkButton {
                objectName: "putIn"
                visible: bench.parts.adding
                enabled: bench.parts.complete
                text: qsTr("Put in the box")
                onClicked: bench.done()
            }
            InkButton {
                objectName: "close"
                text: bench.parts.adding ? qsTr("Close") : qsTr("Done")
                onClicked: {
                    bench.closed()
                    bench.parts.clearBench()
                }
            }
        }
    }
}
