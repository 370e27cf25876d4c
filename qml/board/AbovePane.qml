// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// Seen from above: bar and cranks are turned, in the drawing or by the sliders under it.
Item {
    id: pane
    required property Session session
    readonly property alias topView: view

    component Turner: Row {
        id: turner
        property string name
        property string valueText
        property alias from: slide.from
        property alias to: slide.to
        property real value
        signal turned(real value)
        width: parent.width
        spacing: Look.smallGap
        InkText {
            id: words
            width: Math.round(turner.width * 0.42)
            anchors.verticalCenter: parent.verticalCenter
            font.pixelSize: Look.small
            text: turner.name + ": " + turner.valueText
            elide: Text.ElideRight
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
        Slide {
            id: slide
            objectName: turner.objectName + "Slide"
            width: turner.width - words.width - turner.spacing
            name: turner.name
            valueText: turner.valueText
            stepSize: 1
            value: turner.value
            onMoved: turner.turned(value)
        }
    }

    TopView {
        id: view
        objectName: "topView"
        anchors { left: parent.left; right: parent.right; top: parent.top; bottom: rule.top }
        session: pane.session
        night: Look.night
        letters: Look.small
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Drawing, %1").arg(description)
        Accessible.focusable: true

        InkText {
            visible: !view.drawn
            anchors.centerIn: parent
            width: Math.min(parent.width - 2 * Look.wideGap, 420 * Look.textScale)
            horizontalAlignment: Text.AlignHCenter
            color: Look.soft
            text: view.nothingText
        }
        FocusRing {
            target: view
            anchors.margins: 1
        }
    }
    Hairline {
        id: rule
        anchors { left: parent.left; right: parent.right; bottom: readout.top; bottomMargin: Look.smallGap }
    }
    Column {
        id: readout
        objectName: "aboveReadout"
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: Look.smallGap }
        spacing: Look.hairGap
        InkText {
            objectName: "toldText"
            width: parent.width
            text: view.toldText
        }
        Turner {
            objectName: "steer"
            name: qsTr("Bar")
            valueText: view.steerText
            from: -view.mostSteerDeg
            to: view.mostSteerDeg
            value: -view.steerDeg // as the bar is seen to turn: to the right is to the right
            onTurned: value => view.steerDeg = -value
        }
        Turner {
            objectName: "crank"
            name: qsTr("Right crank")
            valueText: view.crankText
            from: 0
            to: 360
            value: view.crankDeg
            onTurned: value => view.crankDeg = value
        }
        Item {
            width: parent.width
            height: Math.max(hint.height, nearest.height)
            InkText {
                id: hint
                anchors { left: parent.left; right: nearest.left; rightMargin: Look.smallGap; verticalCenter: parent.verticalCenter }
                text: qsTr("Pull at bar, wheel or shoe, or use the arrow keys. Dark is what meets at the height of the toe; dashed, all the room the wheel takes.")
                font.pixelSize: Look.small
                color: Look.soft
            }
            InkButton {
                id: nearest
                objectName: "toNearest"
                anchors { right: parent.right; verticalCenter: parent.verticalCenter }
                text: qsTr("Where they come nearest")
                enabled: view.turned
                onClicked: view.toNearest()
            }
        }
    }
}
