// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// What came of the sheet: readings off the finished bicycle, and what is off.
Fold {
    id: section
    required property Session session
    property var pictured: null // whether a place has a picture of how it is measured
    signal measuring(string quantity, string name, string datum, string howTo, Item beside)
    signal measured()
    signal sheetAsked()
    readonly property alias built: built

    title: qsTr("Handed over")
    summary: built.summary

    BuiltModel {
        id: built
        session: section.session
    }
    Later {
        wanted: section.open
        width: section.width
        Column {
            spacing: Look.smallGap
            InkButton {
                objectName: "writeSheet"
                text: qsTr("Write the set-up sheet…")
                enabled: built.ready
                onClicked: section.sheetAsked()
            }
            InkText {
                objectName: "builtOf"
                text: built.ready ? qsTr("As built: %1").arg(built.of) : qsTr("Nothing is decided yet that could be built.")
                color: Look.soft
                width: parent.width
            }
            FieldList {
                objectName: "readings"
                session: section.session
                fields: built.readings
                datumOf: (field, label) => built.datumOf(field)
                pictured: key => section.pictured(key)
                onMeasuring: (key, name, datum, beside) => section.measuring(key, name, datum, "", beside)
                onMeasured: section.measured()
                enabled: built.ready
                width: parent.width
            }
            NameEntry {
                objectName: "builtNotes"
                session: section.session
                label: qsTr("Remarks")
                value: built.notes
                enabled: built.ready
                onNamed: name => built.notes = name
                width: parent.width
            }
            Repeater {
                model: built.off
                HazardLine {
                    required property string modelData
                    objectName: "builtOff"
                    text: modelData
                    width: section.width
                }
            }
            ToldList {
                objectName: "builtEffects"
                items: built.effects
                width: parent.width
            }
            ToldList {
                objectName: "builtFine"
                items: built.fine
                width: parent.width
            }
            InkButton {
                objectName: "clearBuilt"
                visible: built.any
                bare: true
                iconName: "remove"
                text: qsTr("Clear")
                hint: qsTr("As if nothing had been read off")
                onClicked: built.clear()
            }
        }
    }
}
