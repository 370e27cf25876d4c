// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Templates as T
import Tripoise

// What is written on a chip: its sign and its words.
Row {
    id: face
    required property T.AbstractButton chip
    property string iconName
    spacing: Look.hairGap
    Icon {
        visible: face.iconName
        name: face.iconName
        color: Look.ink
        width: Look.body
        height: Look.body
        anchors.verticalCenter: parent.verticalCenter
    }
    Text {
        visible: face.chip.text
        text: face.chip.text
        textFormat: Text.PlainText
        font: face.chip.font
        color: face.chip.checked ? Look.ink : Look.soft
        anchors.verticalCenter: parent.verticalCenter
    }
}
