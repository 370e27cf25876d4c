// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// The bicycle, whichever of its sizes is taken.
Fold {
    id: section
    required property Session session
    readonly property alias bicycle: bicycle
    readonly property var datum: (field, label) => bicycle.datumOf(field)

    title: qsTr("The bicycle")
    summary: bicycle.summary

    BicycleModel {
        id: bicycle
        session: section.session
    }
    Later {
        wanted: section.open
        width: section.width // a layout gives none to what has no height yet
        Column {
            spacing: Look.smallGap
            InkText { text: qsTr("kind of bar wanted"); width: parent.width }
            Choice {
                objectName: "barKind"
                name: qsTr("kind of bar wanted")
                options: [
                    { text: qsTr("Flat bar"), value: "flat" },
                    { text: qsTr("Swept"), value: "swept" },
                    { text: qsTr("Drop"), value: "drop" }
                ]
                value: bicycle.barKind
                onChosen: value => bicycle.setBarKind(value)
                width: parent.width
            }
            InkText {
                objectName: "wheelsDiffer"
                visible: bicycle.wheelsDiffer
                text: bicycle.wheelsDiffer
                width: parent.width
                Accessible.role: Accessible.AlertMessage
            }
            Choice {
                objectName: "whichWheels"
                visible: bicycle.wheelsDiffer
                name: qsTr("Wheels of the bicycle")
                options: bicycle.answers
                onChosen: value => bicycle.answer(value)
                width: parent.width
            }
            FieldList {
                objectName: "wheels"
                session: section.session
                fields: bicycle.wheels
                datumOf: section.datum
                width: parent.width
            }
            Tick {
                objectName: "mudguard"
                text: qsTr("Mudguards")
                checked: bicycle.mudguard
                onClicked: {
                    bicycle.setMudguard(checked)
                    checked = Qt.binding(() => bicycle.mudguard)
                }
                width: parent.width
            }
            FieldList {
                objectName: "guard"
                visible: bicycle.mudguard
                session: section.session
                fields: bicycle.guard
                datumOf: section.datum
                width: parent.width
            }
            Leaf {
                objectName: "parts"
                title: qsTr("Crank, pedals, saddle")
                width: parent.width
                FieldList {
                    session: section.session
                    fields: bicycle.parts
                    datumOf: section.datum
                    width: parent.width
                }
            }
            Leaf {
                id: standard
                objectName: "standard"
                title: qsTr("Sold under a safety standard")
                summary: bicycle.soldUnder ? bicycle.standardNames[bicycle.standards.indexOf(bicycle.soldUnder)] : qsTr("none")
                width: parent.width
                Flow {
                    spacing: Look.hairGap
                    width: parent.width
                    Repeater {
                        model: [""].concat(bicycle.standards)
                        Chip {
                            required property string modelData
                            required property int index
                            objectName: "standard" + modelData
                            text: bicycle.standardNames[index - 1] ?? qsTr("none")
                            checkable: false
                            checked: bicycle.soldUnder === modelData
                            onClicked: bicycle.soldUnder = modelData
                        }
                    }
                }
            }
        }
    }
}
