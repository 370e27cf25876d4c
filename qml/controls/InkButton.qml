// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Templates as T
import Tripoise

// A button: words, an icon, or both. `strong` marks the one thing to do next.
T.Button {
    id: button
    property string iconName
    property bool strong: false
    property bool bare: false // without an outline, in a row of its like
    property string hint
    readonly property color written: strong ? Look.paper : Look.ink

    font.family: Look.family
    font.pixelSize: Look.body
    opacity: enabled ? 1 : 0.4
    padding: Look.hairGap
    leftPadding: text ? Look.gap : Look.hairGap
    rightPadding: leftPadding
    implicitHeight: Look.control
    implicitWidth: Math.max(Look.control, contentItem.implicitWidth + leftPadding + rightPadding)
    Accessible.role: Accessible.Button
    Accessible.name: text || hint
    Accessible.onPressAction: Presser.press(button)
    Keys.onReturnPressed: Presser.press(button)
    Keys.onEnterPressed: Presser.press(button)

    contentItem: Row {
        spacing: Look.smallGap
        Icon {
            visible: button.iconName
            name: button.iconName
            color: button.written
            width: Look.large
            height: Look.large
            anchors.verticalCenter: parent.verticalCenter
        }
        Text {
            visible: button.text
            text: button.text
            textFormat: Text.PlainText
            font: button.font
            color: button.written
            anchors.verticalCenter: parent.verticalCenter
        }
    }
    background: Rectangle {
        radius: Look.radius
        color: button.strong ? Look.ink : button.down || button.hovered ? Look.tint : "transparent"
        border.width: button.bare || button.strong ? 0 : 1
        border.color: Look.edge
        FocusRing { target: button }
    }
    Hint {
        text: button.hint
        visible: button.hint && (button.hovered || button.visualFocus)
    }
}
