// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// A sample of how a size is told: a bar of ink, or a hatched one in bluish green.
Item {
    id: swatch
    property bool beside: false
    implicitWidth: Look.wideGap
    implicitHeight: Math.round(Look.small * 0.7)
    Rectangle {
        visible: !swatch.beside
        anchors.fill: parent
        color: Look.ink
    }
    Hatch {
        visible: swatch.beside
        anchors.fill: parent
        color: Look.other
    }
}
