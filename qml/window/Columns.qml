// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Tripoise

// Brief, board and decision side by side. Where the letters leave no room for all three, the board and
// one beside it; where there is less, one at a time.
ColumnLayout {
    id: columns
    required property Session session
    required property Documents documents
    required property Preferences preferences
    readonly property alias brief: brief
    readonly property alias board: board
    readonly property alias decision: decision

    required property real available // the window's width, known before any layout
    readonly property real lettersWide: available / Look.textScale
    readonly property int standing: lettersWide >= 960 ? 3 : lettersWide >= 680 ? 2 : 1
    property string foremost: "board" // asked for last
    property string beside: "brief" // asked for last, of the two

    spacing: 0
    signal tableAsked()
    signal keptAsked()
    signal sheetAsked()
    signal filePicked(url file)

    function bring(name: string) {
        foremost = name
        if (name !== "board")
            beside = name
    }
    function focusOn(name: string) {
        bring(name)
        const pane = name === "brief" ? brief : name === "board" ? board : decision
        pane.takeFocus()
    }
    function stands(name: string): bool {
        return standing === 3 || (standing === 2 ? name === "board" || name === beside : name === foremost)
    }
    function columnWidth(share: real, least: real, most: real): real {
        const roomier = 1 + (standing === 2 ? 1 : 0.3) * (Look.textScale - 1)
        return Math.min(Math.max(share * available, least), most) * roomier
    }

    Choice {
        objectName: "standingChoice"
        visible: columns.standing < 3
        name: columns.standing === 2 ? qsTr("beside the drawing") : qsTr("what stands here")
        Layout.fillWidth: true
        Layout.margins: Look.hairGap
        Layout.leftMargin: Look.smallGap
        options: columns.standing === 2
            ? [{ text: qsTr("Brief"), value: "brief", hint: "F2" }, { text: qsTr("Decision"), value: "decision", hint: "F4" }]
            : [{ text: qsTr("Brief"), value: "brief", hint: "F2" }, { text: qsTr("Drawing"), value: "board", hint: "F3" },
               { text: qsTr("Decision"), value: "decision", hint: "F4" }]
        value: columns.standing === 2 ? columns.beside : columns.foremost
        onChosen: name => columns.bring(name)
    }
    Hairline {
        visible: columns.standing < 3
        Layout.fillWidth: true
    }
    T.SplitView {
        Layout.fillWidth: true
        Layout.fillHeight: true
        orientation: Qt.Horizontal
        handle: Rectangle {
            implicitWidth: 7
            color: T.SplitHandle.hovered || T.SplitHandle.pressed ? Look.tint : Look.paper
            Hairline {
                anchors.horizontalCenter: parent.horizontalCenter
                height: parent.height
            }
        }

        BriefPane {
            id: brief
            objectName: "brief"
            visible: columns.stands("brief")
            T.SplitView.fillWidth: columns.standing === 1
            T.SplitView.preferredWidth: columns.columnWidth(0.235, 280, 420)
            T.SplitView.minimumWidth: 240
            session: columns.session
            documents: columns.documents
            preferences: columns.preferences
            onTableAsked: columns.tableAsked()
            onKeptAsked: columns.keptAsked()
            onSheetAsked: columns.sheetAsked()
            onFilePicked: file => columns.filePicked(file)
        }
        BoardPane {
            id: board
            objectName: "board"
            visible: columns.stands("board")
            T.SplitView.fillWidth: columns.standing > 1
            T.SplitView.minimumWidth: 300
            session: columns.session
            preferences: columns.preferences
        }
        DecisionPane {
            id: decision
            objectName: "decision"
            visible: columns.stands("decision")
            T.SplitView.preferredWidth: columns.columnWidth(0.265, 310, 480)
            T.SplitView.minimumWidth: 260
            session: columns.session
            preferences: columns.preferences
            onLookFromAbove: {
                board.above = true
                columns.focusOn("board")
            }
        }
    }
}
