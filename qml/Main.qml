// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Tripoise

// The one window: left the brief, centre the board, right the decision.
T.ApplicationWindow {
    id: root
    property string startFile
    property alias session: session

    width: 1280
    height: 800
    minimumWidth: 1024
    minimumHeight: 700
    visible: true
    color: Look.paper
    title: "Tripoise"

    Session { id: session }

    InkText {
        anchors.centerIn: parent
        text: qsTr("Tripoise")
        font.pixelSize: Look.title
    }
}
