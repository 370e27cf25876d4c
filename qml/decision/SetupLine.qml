// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// One line of two set-ups.
MeantRow {
    id: line
    required property int index
    required property string label
    required property string first
    required property string second
    required property bool differs
    required meaning
    required spoken
    property bool paired
    property bool roomy
    property real labelWidth
    property real valueWidth
    readonly property real markWidth: Math.round(1.2 * Look.small)

    place: index
    objectName: "line_" + index
    implicitHeight: Math.max(title.height, values.y + values.height) + Look.smallGap

    InkText {
        id: title
        y: Look.hairGap
        width: line.labelWidth - Look.smallGap
        text: line.label
        font.pixelSize: line.roomy ? Look.body : Look.small
        color: Look.soft
        Accessible.ignored: true
    }
    Row {
        id: values
        x: line.roomy ? line.labelWidth : 0
        y: line.roomy ? Look.hairGap : title.y + title.height
        InkText {
            objectName: "first"
            width: line.paired ? line.valueWidth - line.markWidth : 2 * line.valueWidth
            text: line.first
            rightPadding: Look.hairGap
            font.bold: line.differs
            Accessible.ignored: true
        }
        InkText {
            id: mark
            visible: line.paired
            width: line.markWidth
            text: line.differs ? "≠" : ""
            horizontalAlignment: Text.AlignHCenter
            wrapMode: Text.NoWrap
            font.pixelSize: Look.small
            Accessible.ignored: true
        }
        InkText {
            objectName: "second"
            visible: line.paired
            width: line.valueWidth
            leftPadding: Look.hairGap
            text: line.second
            font.bold: line.differs
            color: line.differs ? Look.otherText : Look.soft
            Accessible.ignored: true
        }
    }
}
