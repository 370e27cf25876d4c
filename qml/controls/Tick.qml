// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Templates as T
import Tripoise

// Yes or no, with its words beside it.
T.CheckBox {
    id: tick
    property string hint

    font.family: Look.family
    font.pixelSize: Look.body
    spacing: Look.smallGap
    opacity: enabled ? 1 : 0.4
    implicitHeight: Math.max(Math.round(Look.control * 0.86), contentItem.implicitHeight)
    implicitWidth: box.width + spacing + words.implicitWidth
    Accessible.role: Accessible.CheckBox
    Accessible.name: text || hint
    Accessible.checkable: true
    Accessible.checked: checked
    Accessible.onToggleAction: Presser.toggle(tick)
    Keys.onReturnPressed: Presser.toggle(tick)
    Keys.onEnterPressed: Presser.toggle(tick)

    indicator: Rectangle {
        id: box
        width: Math.round(Look.body * 1.15)
        height: width
        y: (tick.height - height) / 2
        radius: Look.radius
        color: tick.hovered ? Look.tint : Look.sheet
        border.width: 1
        border.color: Look.edge
        Icon {
            visible: tick.checked
            anchors.fill: parent
            anchors.margins: 2
            name: "tick"
            color: Look.ink
        }
        FocusRing { target: tick }
    }
    contentItem: Text {
        id: words
        leftPadding: tick.text ? box.width + tick.spacing : 0
        text: tick.text
        font: tick.font
        color: Look.ink
        textFormat: Text.PlainText
        wrapMode: Text.Wrap
        verticalAlignment: Text.AlignVCenter
    }
    Hint {
        text: tick.hint
        visible: tick.hint && (tick.hovered || tick.visualFocus)
    }
}
