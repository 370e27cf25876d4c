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
    Accessible.onToggleAction: Presser.toggle(chip)
    Accessible.onPressAction: Presser.toggle(chip)
    Keys.onReturnPressed: Presser.toggle(chip)
    Keys.onEnterPressed: Presser.toggle(chip)

    contentItem: ChipFace { chip: chip; iconName: chip.iconName }
    background: ChipGround { chip: chip }
    Hint {
        text: chip.hint
        visible: chip.hint && (chip.hovered || chip.visualFocus)
    }
}
