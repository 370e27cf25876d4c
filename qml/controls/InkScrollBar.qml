// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Templates as T
import Tripoise

// Shown while there is something to scroll to.
T.ScrollBar {
    id: bar
    visible: size < 1
    focusPolicy: Qt.NoFocus
    Accessible.ignored: true
    policy: size < 1 ? T.ScrollBar.AlwaysOn : T.ScrollBar.AlwaysOff
    implicitWidth: 8
    implicitHeight: 8
    padding: 1
    minimumSize: 0.08
    contentItem: Rectangle {
        radius: Look.radius
        color: bar.pressed || bar.hovered ? Look.ink : Look.edge
    }
}
