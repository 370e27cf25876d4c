// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// How much a consideration decides: from the middle towards the size it speaks for. With one size
// alone, from the left, what speaks against it.
Item {
    id: bar
    property bool paired: true
    property real forShown: 0 // shares of the room there is
    property real forBeside: 0
    property real against: 0
    readonly property real room: paired ? (width - 1) / 2 : width - 1

    implicitHeight: Math.round(Look.small * 0.7)

    Hairline { // as far as a bar can go
        width: parent.width
        anchors.verticalCenter: parent.verticalCenter
    }
    Rectangle { // where nothing decides
        x: bar.paired ? bar.room : 0
        width: 1
        height: parent.height
        color: Look.edge
    }
    Rectangle {
        objectName: "forShown"
        visible: bar.forShown > 0
        width: Math.max(2, Math.round(bar.forShown * bar.room))
        height: parent.height
        x: bar.room - width
        color: Look.ink
    }
    Rectangle {
        visible: beside.visible
        anchors.fill: beside
        color: Look.paper
    }
    Hatch {
        id: beside
        objectName: "forBeside"
        visible: bar.forBeside > 0
        width: Math.max(2, Math.round(bar.forBeside * bar.room))
        height: parent.height
        x: bar.room + 1
        color: Look.other
    }
    Rectangle {
        objectName: "against"
        visible: bar.against > 0
        width: Math.max(2, Math.round(bar.against * bar.room))
        height: parent.height
        x: 1
        color: Look.ink
    }
}
