// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// The window turned to the rider: one bicycle at a time, large, in the same place; three reasons,
// each with its picture. To be read from two metres.
FocusScope {
    id: view
    required property Session session
    signal leave()
    readonly property alias drawing: drawing
    /// The least letters, at 1280 x 800; larger windows, larger letters.
    readonly property int letters: Math.round(28 * Math.max(1, Math.min(width / 1280, height / 800)) * (1 + 0.25 * (Look.textScale - 1)))

    /// Of them, where words would not fit their place otherwise.
    readonly property real leastShare: 0.6

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("For the rider")
    Keys.onEscapePressed: view.leave()
    Keys.onLeftPressed: drawing.step(-1)
    Keys.onUpPressed: drawing.step(-1)
    Keys.onRightPressed: drawing.step(1)
    Keys.onDownPressed: drawing.step(1)
    Keys.onSpacePressed: drawing.turnOver()
    focus: true

    Rectangle {
        anchors.fill: parent
        color: Look.paper
        MouseArea { // nothing behind is pressed through it
            anchors.fill: parent
            acceptedButtons: Qt.AllButtons
            hoverEnabled: true
            onWheel: wheel => wheel.accepted = true
        }
    }

    Item {
        id: head
        anchors { left: parent.left; right: parent.right; top: parent.top; margins: Look.wideGap }
        height: Math.max(choices.height, leave.height)

        Row {
            id: choices
            objectName: "riderChoices"
            spacing: Look.gap
            Accessible.role: Accessible.Grouping
            Accessible.name: qsTr("Which bicycle")
            Repeater {
                model: drawing.choices
                RadioChip {
                    required property var modelData
                    objectName: "rides" + modelData.which
                    text: modelData.name
                    checked: drawing.which === modelData.which
                    font.pixelSize: view.letters
                    font.bold: checked
                    focusPolicy: Qt.NoFocus
                    padding: Look.hairGap
                    leftPadding: Look.wideGap
                    rightPadding: Look.wideGap
                    implicitHeight: contentItem.implicitHeight + topPadding + bottomPadding
                    onClicked: drawing.which = modelData.which
                }
            }
        }
        InkText {
            objectName: "riderTitle"
            anchors { left: choices.right; right: leave.left; margins: Look.wideGap; verticalCenter: parent.verticalCenter }
            text: drawing.title
            font.pixelSize: view.letters
            font.bold: true
            wrapMode: Text.NoWrap
            elide: Text.ElideRight
        }
        InkButton {
            id: leave
            objectName: "leaveRider"
            bare: true
            iconName: "close"
            hint: qsTr("Back to the bench (Esc)")
            focusPolicy: Qt.NoFocus
            anchors { right: parent.right; verticalCenter: parent.verticalCenter }
            onClicked: view.leave()
        }
    }

    Item {
        id: page
        anchors { left: parent.left; right: parent.right; top: head.bottom; bottom: parent.bottom; margins: Look.wideGap }

        Item {
            id: ride
            anchors { left: parent.left; top: parent.top; bottom: parent.bottom }
            width: Math.round(Math.min(0.54 * page.width, page.height))

            RiderBoard {
                id: drawing
                objectName: "riderDrawing"
                session: view.session
                night: Look.night
                anchors { left: parent.left; right: parent.right; top: parent.top; bottom: change.top; bottomMargin: Look.smallGap }
                Accessible.role: Accessible.Graphic
                Accessible.name: title
                Accessible.description: description
            }
            InkText {
                id: change
                objectName: "riderChange"
                anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
                height: Math.ceil(2 * 1.25 * view.letters) // as high with one line as with two
                text: drawing.change
                font.pixelSize: view.letters
                fontSizeMode: Text.Fit
                minimumPixelSize: Math.round(view.leastShare * view.letters)
                verticalAlignment: Text.AlignTop
            }
        }

        Column {
            id: reasons
            anchors { left: ride.right; right: parent.right; top: parent.top; bottom: parent.bottom; leftMargin: Look.wideGap }
            spacing: Look.wideGap
            readonly property real each: Math.floor((height - (count - 1) * spacing) / Math.max(1, count))
            readonly property int count: drawing.reasons.length
            Repeater {
                model: drawing.reasons
                Item {
                    id: reason
                    required property var modelData
                    required property int index
                    width: reasons.width
                    height: reasons.each

                    Vignette {
                        id: picture
                        objectName: "vignette" + reason.index
                        board: drawing
                        kind: reason.modelData.kind
                        letters: Math.round(Math.min(0.8 * view.letters, reason.height / 8))
                        anchors { left: parent.left; top: parent.top; bottom: parent.bottom }
                        width: Math.round(Math.min(1.3 * reason.height, 0.52 * reason.width))
                        Accessible.role: Accessible.Graphic
                        Accessible.name: reason.modelData.title
                        Accessible.description: reason.modelData.text
                    }
                    InkText {
                        objectName: "reason" + reason.index
                        anchors { left: picture.right; right: parent.right; top: parent.top; bottom: parent.bottom; leftMargin: Look.wideGap }
                        text: reason.modelData.text
                        font.pixelSize: view.letters
                        fontSizeMode: Text.Fit
                        minimumPixelSize: Math.round(view.leastShare * view.letters)
                        verticalAlignment: Text.AlignVCenter
                    }
                }
            }
        }
    }
}
