// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import Tripoise

// The drawing board: what is drawn is chosen above it, what a pull does is told below it.
FocusScope {
    id: pane
    required property Session session
    required property Preferences preferences
    readonly property alias board: board

    function takeFocus() { board.forceActiveFocus(Qt.TabFocusReason) }
    function backToAdvised() { board.backToAdvised() }

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Drawing board")

    component Layer: Chip {
        id: layer
        property string key
        property bool on
        signal changed(bool on)
        objectName: "layer_" + key
        checked: on
        onClicked: {
            changed(checked)
            pane.preferences.remember("layers/" + key, checked)
        }
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: 0

        Flow {
            id: strip
            Layout.fillWidth: true
            Layout.margins: Look.smallGap
            spacing: Look.hairGap
            Layer { key: "rider"; text: qsTr("rider"); on: board.rider; onChanged: on => board.rider = on }
            Layer { key: "angles"; text: qsTr("angles"); on: board.angles; onChanged: on => board.angles = on }
            Layer { key: "dimensions"; text: qsTr("dimensions"); on: board.dimensions; onChanged: on => board.dimensions = on }
            Layer { key: "wheels"; text: qsTr("wheels"); on: board.wheels; onChanged: on => board.wheels = on }
            Layer { key: "ground"; text: qsTr("ground"); on: board.ground; onChanged: on => board.ground = on }
            Layer { key: "beside"; text: qsTr("other size"); visible: board.hasBeside; on: board.beside; onChanged: on => board.beside = on }
            Layer { key: "today"; text: qsTr("today's bike"); visible: board.hasToday; on: board.today; onChanged: on => board.today = on }
            Choice {
                objectName: "registration"
                visible: board.hasBeside
                name: qsTr("the two sizes stand")
                options: [
                    { text: qsTr("side by side"), value: false, hint: qsTr("on the same ground, rear wheels one over the other") },
                    { text: qsTr("under the rider"), value: true, hint: qsTr("bottom brackets one over the other") }
                ]
                value: board.onContacts
                onChosen: value => board.onContacts = value
            }
            Row {
                spacing: -1
                InkButton { objectName: "zoomOut"; iconName: "minus"; hint: qsTr("Further away"); onClicked: board.zoomOut() }
                InkButton { objectName: "zoomFit"; iconName: "whole"; hint: qsTr("All of it"); enabled: !board.showsAll; onClicked: board.fit() }
                InkButton { objectName: "zoomIn"; iconName: "plus"; hint: qsTr("Nearer"); onClicked: board.zoomIn() }
            }
        }

        Item {
            Layout.fillWidth: true
            Layout.fillHeight: true
            clip: true
            Board {
                id: board
                objectName: "drawing"
                anchors.fill: parent
                focus: true
                activeFocusOnTab: true
                session: pane.session
                night: Look.night
                letters: Look.small
                Accessible.role: Accessible.Graphic
                Accessible.name: qsTr("Side view to scale")
                Accessible.description: board.description
                Accessible.focusable: true
                Component.onCompleted: {
                    rider = String(pane.preferences.value("layers/rider", true)) !== "false"
                    angles = String(pane.preferences.value("layers/angles", true)) !== "false"
                    dimensions = String(pane.preferences.value("layers/dimensions", false)) === "true"
                    wheels = String(pane.preferences.value("layers/wheels", true)) !== "false"
                    ground = String(pane.preferences.value("layers/ground", true)) !== "false"
                    beside = String(pane.preferences.value("layers/beside", true)) !== "false"
                    today = String(pane.preferences.value("layers/today", true)) !== "false"
                }
            }
            FocusRing { target: board; anchors.margins: 1; border.width: 1 }
            InkText {
                visible: !board.drawn
                anchors.centerIn: parent
                width: Math.min(parent.width - 2 * Look.wideGap, 360)
                horizontalAlignment: Text.AlignHCenter
                text: qsTr("The bicycle stands here as soon as there is a size.")
                color: Look.soft
            }
        }

        RowLayout {
            visible: board.drawn && board.rider
            Layout.fillWidth: true
            Layout.leftMargin: Look.gap
            Layout.rightMargin: Look.gap
            Layout.bottomMargin: Look.smallGap
            spacing: Look.smallGap
            InkText {
                text: qsTr("crank")
                color: Look.soft
                Accessible.ignored: true
            }
            Slide {
                objectName: "crank"
                name: qsTr("crank")
                valueText: board.crankText
                from: 0
                to: 360
                stepSize: 5
                value: board.crankDeg
                Layout.fillWidth: true
                Layout.maximumWidth: 300
                onMoved: board.crankDeg = value
            }
            InkText {
                text: board.crankText
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
            InkButton {
                objectName: "crankDown"
                visible: board.crankTurned
                bare: true
                text: qsTr("lowest")
                hint: qsTr("Back to where the leg is longest")
                onClicked: board.crankToBottom()
            }
            TurnChart {
                visible: board.crankTurned
                board: board
                Layout.preferredWidth: Math.round(130 * Look.textScale)
                Layout.preferredHeight: Math.round(44 * Look.textScale)
                Accessible.role: Accessible.Graphic
                Accessible.name: qsTr("knee and hip over a turn of the crank")
                Accessible.description: description
            }
            Item { Layout.fillWidth: true }
        }

        Hairline {
            visible: readout.visible
            Layout.fillWidth: true
        }
        RowLayout {
            id: readout
            objectName: "readout"
            visible: board.pulled
            Layout.fillWidth: true
            Layout.margins: Look.smallGap
            spacing: Look.gap
            ColumnLayout {
                spacing: Look.hairGap
                Layout.fillWidth: true
                InkText {
                    objectName: "pulled"
                    text: board.pulledText
                    font.bold: true
                    Layout.fillWidth: true
                }
                InkText {
                    objectName: "carry"
                    visible: text
                    text: [board.carryText, board.nearestText, board.steeringText].filter(t => t).join(" ")
                    font.pixelSize: Look.small
                    Layout.fillWidth: true
                }
                Flow {
                    spacing: Look.gap
                    Layout.fillWidth: true
                    Repeater {
                        model: board.joints
                        InkText {
                            required property var modelData
                            text: (modelData.outside ? "▲ " : modelData.nearEdge ? "◐ " : "● ") + modelData.label + " " + modelData.text + " (" + modelData.range + ")"
                            font.pixelSize: Look.small
                            font.bold: modelData.outside
                            color: modelData.outside ? Look.hazardText : Look.ink
                            wrapMode: Text.NoWrap
                            Accessible.name: modelData.label + " " + modelData.text + ", " + modelData.place
                        }
                    }
                }
                Repeater {
                    model: board.findings
                    InkText {
                        required property var modelData
                        text: (modelData.limit ? "▲ " : "· ") + modelData.text
                        font.pixelSize: Look.small
                        color: modelData.limit ? Look.hazardText : Look.ink
                        Layout.fillWidth: true
                    }
                }
            }
            InkButton {
                objectName: "backToAdvised"
                text: qsTr("Back to advised")
                Layout.alignment: Qt.AlignTop
                onClicked: board.backToAdvised()
            }
        }
    }
}
