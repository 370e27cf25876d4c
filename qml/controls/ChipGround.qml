// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Templates as T
import Tripoise

// What a chip is written on; filled and underlined where it is on.
Rectangle {
    id: ground
    required property T.AbstractButton chip
    radius: Look.radius
    color: chip.checked || chip.hovered ? Look.tint : "transparent"
    border.width: 1
    border.color: chip.checked ? Look.ink : Look.edge
    Rectangle { // not by colour alone
        visible: ground.chip.checked
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        height: 3
        color: Look.ink
    }
    FocusRing { target: ground.chip }
}
