// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Templates as T
import Tripoise

// One of several chips of which one is on. Who owns them says which (`checked`), so that a press
// alone turns nothing. A radio button and no button with another role: the role of a button is its own.
T.RadioButton {
    id: chip
    property string hint
    property string iconName

    checkable: false
    autoExclusive: false
    font.family: Look.family
    font.pixelSize: Look.small
    opacity: enabled ? 1 : 0.4
    leftPadding: Look.smallGap
    rightPadding: Look.smallGap
    implicitHeight: Math.round(Look.control * 0.86)
    implicitWidth: Math.max(implicitHeight, contentItem.implicitWidth + leftPadding + rightPadding)
    Accessible.name: text || hint
    Accessible.checkable: true
    Accessible.checked: checked
    Accessible.onToggleAction: Presser.press(chip)
    Accessible.onPressAction: Presser.press(chip)
    Keys.onReturnPressed: Presser.press(chip)
    Keys.onEnterPressed: Presser.press(chip)

    contentItem: ChipFace { chip: chip; iconName: chip.iconName }
    background: ChipGround { chip: chip }
    Hint {
        text: chip.hint
        visible: chip.hint && (chip.hovered || chip.visualFocus)
    }
}
