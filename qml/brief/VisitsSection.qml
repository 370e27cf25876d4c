// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// The rider comes back: what they say, one change because of it, and what was changed before.
Fold {
    id: section
    required property Session session
    readonly property alias visits: visits

    title: qsTr("Visits")
    summary: visits.summary

    VisitsModel {
        id: visits
        session: section.session
    }
    Later {
        wanted: section.open
        width: section.width
        Column {
            spacing: Look.smallGap
            InkButton {
                objectName: "beginVisit"
                text: qsTr("The rider is here")
                hint: qsTr("A new visit, today")
                enabled: visits.ready
                onClicked: visits.begin()
            }
            InkText {
                visible: !visits.ready
                text: qsTr("Nothing is decided yet that could be built.")
                color: Look.soft
                width: parent.width
            }
            Column {
                visible: visits.any
                spacing: Look.smallGap
                width: parent.width
                InkText {
                    objectName: "visitTitle"
                    text: visits.title
                    font.bold: true
                    width: parent.width
                    Accessible.role: Accessible.Heading
                }
                InkText { text: qsTr("what the rider says"); width: parent.width }
                Flow {
                    spacing: Look.hairGap
                    width: parent.width
                    Repeater {
                        model: visits.complaints
                        Chip {
                            required property var modelData
                            objectName: "says_" + modelData.value
                            text: modelData.text
                            checked: modelData.on
                            onClicked: {
                                visits.toggle(modelData.value)
                                checked = Qt.binding(() => modelData.on)
                            }
                        }
                    }
                }
                Repeater {
                    model: visits.first
                    HazardLine {
                        required property string modelData
                        objectName: "first"
                        text: modelData
                        width: section.width
                    }
                }
                InkText {
                    objectName: "oneChange"
                    visible: visits.proposals.length > 0
                    text: visits.oneChange
                    color: Look.soft
                    width: parent.width
                }
                Repeater {
                    model: visits.proposals
                    Column {
                        id: proposal
                        required property var modelData
                        required property int index
                        spacing: 1
                        width: section.width
                        Tick {
                            objectName: "proposal_" + proposal.index
                            text: proposal.modelData.text
                            checked: proposal.modelData.taken
                            onClicked: {
                                visits.take(proposal.index)
                                checked = Qt.binding(() => proposal.modelData.taken)
                            }
                            width: parent.width
                        }
                        InkText {
                            x: Look.wideGap
                            text: (proposal.modelData.of ? [proposal.modelData.of + ": " + proposal.modelData.trust] : []).concat(proposal.modelData.effects).join("\n")
                            font.pixelSize: Look.small
                            color: Look.soft
                            width: parent.width - x
                        }
                    }
                }
                NameEntry {
                    objectName: "visitPart"
                    session: section.session
                    label: qsTr("Also changed, in your own words")
                    value: visits.part
                    width: parent.width
                    onNamed: name => visits.part = name
                }
                NameEntry {
                    objectName: "visitNotes"
                    session: section.session
                    label: qsTr("Remarks")
                    value: visits.notes
                    width: parent.width
                    onNamed: name => visits.notes = name
                }
                InkButton {
                    objectName: "removeVisit"
                    bare: true
                    iconName: "remove"
                    text: qsTr("Remove this visit")
                    onClicked: visits.remove()
                }
            }
            MovesPicture {
                objectName: "moves"
                visible: visits.moved
                visits: section.visits
                night: Look.night
                letters: Look.small
                width: parent.width
                height: Math.round(Math.min(width / 2, 150 * Look.textScale)) + 2 * Look.small
                Accessible.role: Accessible.Graphic
                Accessible.name: visits.changed
            }
            ToldList {
                objectName: "visitHistory"
                heading: qsTr("Before")
                items: visits.history
                width: parent.width
            }
        }
    }
}
