// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// The shop's box of parts.
Fold {
    id: section
    required property Session session
    required property Documents documents
    readonly property alias box: box

    title: qsTr("Box of parts")
    summary: box.summary

    Box {
        id: box
        session: section.session
        documents: section.documents
    }
    Later {
        wanted: section.open
        width: section.width // a layout gives none to what has no height yet
        Column {
            spacing: Look.hairGap
            InkText {
                text: qsTr("What is ticked may be used. The box is remembered from one rider to the next.")
                font.pixelSize: Look.small
                color: Look.soft
                width: parent.width
            }
            PartsList {
                objectName: "stems"
                title: qsTr("Stems")
                addText: qsTr("Add a stem")
                parts: box.stems
                session: section.session
                stems: true
                open: true
                width: parent.width
            }
            PartsList {
                objectName: "bars"
                title: qsTr("Bars")
                addText: qsTr("Add a bar")
                parts: box.bars
                session: section.session
                bars: true
                width: parent.width
            }
            PartsList {
                objectName: "spacers"
                title: qsTr("Spacers")
                addText: qsTr("Add a spacer")
                parts: box.spacers
                session: section.session
                width: parent.width
            }
            PartsList {
                objectName: "cranks"
                title: qsTr("Cranks")
                addText: qsTr("Add a crank")
                parts: box.cranks
                session: section.session
                width: parent.width
            }
        }
    }
}
