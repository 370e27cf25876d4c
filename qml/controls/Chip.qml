// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Templates as T
import Tripoise

// Something that is on or off; on is filled and underlined.
T.Button {
    id: chip
    property string hint
    property string iconName

    checkable: true
    font.family: Look.family
    font.pixelSize: Look.small
    opacity: enabled ? 1 : 0.4
    leftPadding: Look.smallGap
    rightPadding: Look.smallGap
    implicitHeight: Math.round(Look.control * 0.86)
    implicitWidth: Math.max(implicitHeight, contentItem.implicitWidth + leftPadding + rightPadding)
    Accessible.role: checkable ? Accessible.CheckBox : Accessible.Button
    Accessible.name: text || hint
    Accessible.checkable: checkable
    Accessible.checked: checked
    Accessible.onToggleAction: chip.click()
    Accessible.onPressAction: chip.click()
    Keys.onReturnPressed: chip.click()
    Keys.onEnterPressed: chip.click()

    contentItem: Row {
        spacing: Look.hairGap
        Icon {
            visible: chip.iconName
            name: chip.iconName
            color: Look.ink
            width: Look.body
            height: Look.body
            anchors.verticalCenter: parent.verticalCenter
        }
        Text {
            visible: chip.text
            text: chip.text
            font: chip.font
            color: chip.checked ? Look.ink : Look.soft
            anchors.verticalCenter: parent.verticalCenter
        }
    }
    background: Rectangle {
        radius: Look.radius
        color: chip.checked || chip.hovered ? Look.tint : "transparent"
        border.width: 1
        border.color: chip.checked ? Look.ink : Look.edge
        Rectangle { // not by colour alone
            visible: chip.checked
            anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
            height: 3
            color: Look.ink
        }
        FocusRing { target: chip }
    }
    Hint {
        text: chip.hint
        visible: chip.hint && (chip.hovered || chip.visualFocus)
    }
}
