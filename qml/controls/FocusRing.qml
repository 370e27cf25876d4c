// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// Shows which control the keys go to.
Rectangle {
    property Item target: parent
    anchors.fill: parent
    anchors.margins: -2
    visible: target.activeFocus
    color: "transparent"
    radius: Look.radius + 2
    border.width: 2
    border.color: Look.ink
}
