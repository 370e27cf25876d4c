// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
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

    RowLayout {
        anchors.fill: parent
        anchors.margins: Look.wideGap
        spacing: Look.wideGap

        ColumnLayout {
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredWidth: 64
            spacing: Look.gap

            Row {
                id: choices
                objectName: "riderChoices"
                spacing: Look.gap
                Accessible.role: Accessible.Grouping
                Accessible.name: qsTr("Which bicycle")
                Repeater {
                    model: drawing.choices
                    T.Button {
                        id: choice
                        required property var modelData
                        readonly property bool current: drawing.which === modelData.which
                        objectName: "rides" + modelData.which
                        text: modelData.name
                        font.family: Look.family
                        font.pixelSize: view.letters
                        font.bold: current
                        focusPolicy: Qt.NoFocus
                        padding: Look.hairGap
                        leftPadding: Look.wideGap
                        rightPadding: Look.wideGap
                        implicitWidth: contentItem.implicitWidth + leftPadding + rightPadding
                        implicitHeight: contentItem.implicitHeight + topPadding + bottomPadding
                        Accessible.role: Accessible.RadioButton
                        Accessible.name: text
                        Accessible.checkable: true
                        Accessible.checked: current
                        onClicked: drawing.which = modelData.which
                        contentItem: Text {
                            text: choice.text
                            font: choice.font
                            color: choice.current ? Look.ink : Look.soft
                        }
                        background: Rectangle {
                            color: choice.current || choice.hovered ? Look.tint : "transparent"
                            radius: Look.radius
                            border.width: 1
                            border.color: choice.current ? Look.ink : Look.edge
                            Rectangle {
                                visible: choice.current
                                anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
                                height: 4
                                color: Look.ink
                            }
                        }
                    }
                }
            }
            RiderBoard {
                id: drawing
                objectName: "riderDrawing"
                session: view.session
                night: Look.night
                Layout.fillWidth: true
                Layout.fillHeight: true
                Accessible.role: Accessible.Graphic
                Accessible.name: title
                Accessible.description: description
            }
            InkText {
                objectName: "riderTitle"
                text: drawing.title
                font.pixelSize: Math.round(1.35 * view.letters)
                font.bold: true
                Layout.fillWidth: true
            }
            InkText {
                objectName: "riderChange"
                text: drawing.change
                font.pixelSize: view.letters
                Layout.fillWidth: true
                Layout.preferredHeight: 2 * 1.25 * view.letters // as high with one line as with two
                verticalAlignment: Text.AlignTop
            }
        }

        ColumnLayout {
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredWidth: 36
            Layout.maximumWidth: 620
            spacing: Look.gap
            Repeater {
                model: drawing.reasons
                ColumnLayout {
                    id: reason
                    required property var modelData
                    required property int index
                    spacing: Look.hairGap
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    Vignette {
                        objectName: "vignette" + reason.index
                        board: drawing
                        kind: reason.modelData.kind
                        Layout.fillWidth: true
                        Layout.fillHeight: true
                        Accessible.role: Accessible.Graphic
                        Accessible.name: reason.modelData.title
                        Accessible.description: reason.modelData.text
                    }
                    InkText {
                        objectName: "reason" + reason.index
                        text: reason.modelData.text
                        font.pixelSize: view.letters
                        Layout.fillWidth: true
                    }
                }
            }
        }
    }

    InkButton {
        objectName: "leaveRider"
        bare: true
        iconName: "close"
        hint: qsTr("Back to the bench (Esc)")
        focusPolicy: Qt.NoFocus
        anchors { right: parent.right; top: parent.top; margins: Look.hairGap }
        onClicked: view.leave()
    }
}
