// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Tripoise

// The fittings of the shop, last ones first: searched as one types, opened, and what else is done
// with them. Typing stays in the search while the arrows move through the list.
Sheet {
    id: sheet
    objectName: "fittingsSheet"
    required property Documents documents
    property string selected // path; empty for the first
    property bool renaming: false
    readonly property bool listing: !fittings.versionsOf // else the earlier versions of one
    property string whose // their rider
    readonly property Item current: list.currentItem
    readonly property bool any: current !== null
    signal openAsked(string path)
    signal duplicateAsked(string path)
    signal versionAsked(string path, string copy)
    signal exportAsked(string path)
    signal importAsked()
    signal folderAsked()
    signal deleteAsked(string path)

    closePolicy: listing && !renaming ? T.Popup.CloseOnEscape : T.Popup.NoAutoClose
    onOpened: line.forceActiveFocus(Qt.TabFocusReason)

    function show() {
        selected = ""
        line.text = ""
        fittings.search = ""
        toList()
        documents.keep()
        fittings.refresh()
        open()
    }
    function toList() {
        renaming = false
        fittings.versionsOf = ""
        line.forceActiveFocus(Qt.TabFocusReason)
    }
    function move(to: int) {
        list.currentIndex = Math.max(0, Math.min(list.count - 1, to))
        if (listing && any) // of a version it is that one whose list is come back to
            selected = current.path
    }
    function pressed(event: var) {
        const page = Math.max(1, Math.floor(list.height / (current ? current.height : list.height)) - 1)
        const steps = { [Qt.Key_Up]: -1, [Qt.Key_Down]: 1, [Qt.Key_PageUp]: -page, [Qt.Key_PageDown]: page }
        const step = steps[event.key]
        if (step === undefined)
            return
        move(list.currentIndex + step)
        event.accepted = true
    }
    function take() {
        if (!any)
            return
        const path = current.path
        if (listing)
            leaveTo(() => openAsked(path))
        else
            leaveTo(() => versionAsked(fittings.versionsOf, path))
    }
    function leaveTo(next: var) {
        close()
        next()
    }
    function askName() {
        newName.text = current.named ? current.rider : ""
        renaming = true
        newName.forceActiveFocus(Qt.TabFocusReason)
        newName.selectAll()
    }
    function showVersions(path: string) {
        whose = current.rider
        selected = path
        fittings.versionsOf = path
        list.forceActiveFocus(Qt.TabFocusReason)
    }
    function rename() {
        documents.rename(current.path, newName.text)
        selected = ""
        toList()
    }
    FittingsModel {
        id: fittings
        onListed: list.currentIndex = Math.min(count - 1, Math.max(0, sheet.listing ? rowOf(sheet.selected) : list.currentIndex))
    }
    Connections {
        target: sheet.documents
        enabled: sheet.opened
        function onFiled() { fittings.refresh() }
    }

    contentItem: ColumnLayout {
        spacing: Look.smallGap
        Keys.onEscapePressed: event => {
            event.accepted = !sheet.listing || sheet.renaming
            if (event.accepted)
                sheet.toList()
        }
        RowLayout {
            spacing: Look.gap
            InkText {
                text: sheet.listing ? qsTr("Fittings") : qsTr("Earlier versions of “%1”").arg(sheet.whose)
                font.pixelSize: Look.title
                wrapMode: Text.NoWrap
                elide: Text.ElideRight
                Layout.fillWidth: true
            }
            InkButton {
                objectName: "fittingsOtherFolder"
                visible: sheet.listing
                bare: true
                text: qsTr("Another folder…")
                onClicked: sheet.folderAsked()
            }
        }
        InkText {
            objectName: "fittingsFolder"
            visible: sheet.listing
            text: fittings.folder
            font.pixelSize: Look.small
            color: Look.soft
            wrapMode: Text.WrapAnywhere
            Layout.fillWidth: true
            Layout.preferredWidth: 0
        }
        TextEntry {
            id: line
            objectName: "fittingsSearch"
            visible: sheet.listing
            name: qsTr("Search by rider, frame or date")
            placeholderText: name
            Layout.fillWidth: true
            onTextEdited: {
                sheet.selected = ""
                fittings.search = text
            }
            Keys.onPressed: event => sheet.pressed(event)
            Keys.onReturnPressed: sheet.take()
            Keys.onEnterPressed: sheet.take()
        }
        Rectangle {
            color: Look.sheet
            border.width: 1
            border.color: Look.edge
            Layout.preferredWidth: Math.min(sheet.parent ? sheet.parent.width - 120 : 0, 860 * Look.textScale)
            Layout.preferredHeight: sheet.parent ? sheet.parent.height - 240 - 300 * (Look.textScale - 1) : 0
            Layout.minimumHeight: 3 * Look.control
            Layout.fillWidth: true
            InkText {
                objectName: "fittingsTold"
                anchors.fill: parent
                anchors.margins: Look.gap
                text: fittings.message
                color: fittings.wrong ? Look.hazardText : Look.soft
                Accessible.role: fittings.wrong ? Accessible.AlertMessage : Accessible.StaticText
            }
            ListView {
                id: list
                objectName: "fittingsList"
                anchors.fill: parent
                anchors.margins: 1
                clip: true
                model: fittings
                activeFocusOnTab: count > 0
                keyNavigationEnabled: false
                highlightMoveDuration: 0
                boundsBehavior: Flickable.StopAtBounds
                Accessible.role: Accessible.List
                Accessible.name: sheet.listing ? qsTr("fittings") : qsTr("earlier versions")
                T.ScrollBar.vertical: InkScrollBar {}
                Keys.onPressed: event => sheet.pressed(event)
                Keys.onReturnPressed: sheet.take()
                Keys.onEnterPressed: sheet.take()
                Keys.onDeletePressed: if (sheet.listing && sheet.any) sheet.deleteAsked(sheet.current.path)
                delegate: T.AbstractButton {
                    id: row
                    required property int index
                    required property string path
                    required property string rider
                    required property bool named
                    required property string frames
                    required property string verdict
                    required property string date
                    required property var points
                    required property bool readable
                    objectName: "fitting_" + index
                    focusPolicy: Qt.NoFocus // the list has the keys
                    width: list.width
                    implicitHeight: 66 * Look.textScale
                    leftPadding: Look.smallGap
                    rightPadding: Look.gap
                    Accessible.role: Accessible.ListItem
                    Accessible.name: [rider, frames, verdict, date].filter(text => text).join(", ")
                    Accessible.onPressAction: {
                        sheet.move(index)
                        sheet.take()
                    }
                    onClicked: sheet.move(index)
                    onDoubleClicked: sheet.take()
                    background: Rectangle {
                        color: row.ListView.isCurrentItem || row.hovered ? Look.tint : "transparent"
                        border.width: !row.ListView.isCurrentItem ? 0 : list.activeFocus ? 2 : 1
                        border.color: Look.ink
                    }
                    contentItem: RowLayout {
                        spacing: Look.gap
                        FramePicture {
                            points: row.points
                            night: Look.night
                            Layout.preferredWidth: 96 * Look.textScale
                            Layout.preferredHeight: 56 * Look.textScale
                        }
                        ColumnLayout {
                            spacing: 0
                            Layout.fillWidth: true
                            Layout.preferredWidth: 3
                            InkText {
                                text: row.rider
                                font.bold: row.named
                                color: row.named ? Look.ink : Look.soft
                                elide: Text.ElideRight
                                wrapMode: Text.NoWrap
                                Layout.fillWidth: true
                            }
                            InkText {
                                visible: text
                                text: row.frames
                                font.pixelSize: Look.small
                                color: Look.soft
                                elide: Text.ElideRight
                                wrapMode: Text.NoWrap
                                Layout.fillWidth: true
                            }
                        }
                        InkText {
                            text: row.verdict
                            color: row.readable ? Look.ink : Look.hazardText
                            elide: Text.ElideRight
                            maximumLineCount: 2
                            Layout.fillWidth: true
                            Layout.preferredWidth: 2
                        }
                        InkText {
                            text: row.date
                            font.pixelSize: Look.small
                            color: Look.soft
                            wrapMode: Text.NoWrap
                            horizontalAlignment: Text.AlignRight
                            Layout.minimumWidth: 80 * Look.textScale
                        }
                    }
                }
            }
        }
        RowLayout {
            visible: sheet.renaming
            spacing: Look.smallGap
            TextEntry {
                id: newName
                objectName: "fittingsNewName"
                name: qsTr("The rider's name")
                placeholderText: name
                Layout.fillWidth: true
                Keys.onReturnPressed: sheet.rename()
                Keys.onEnterPressed: sheet.rename()
            }
            InkButton {
                objectName: "fittingsRenamed"
                text: qsTr("Rename")
                onClicked: sheet.rename()
            }
        }
        Flow {
            spacing: Look.smallGap
            Layout.fillWidth: true
            InkButton {
                objectName: "fittingsTake"
                strong: true
                enabled: sheet.any
                text: sheet.listing ? qsTr("Open") : qsTr("Look at it")
                onClicked: sheet.take()
            }
            Repeater {
                model: [
                    { name: "Duplicate", text: qsTr("Duplicate"), does: path => sheet.leaveTo(() => sheet.duplicateAsked(path)) },
                    { name: "Rename", text: qsTr("Rename…"), does: () => sheet.askName() },
                    { name: "Versions", text: qsTr("Earlier versions…"), does: path => sheet.showVersions(path) },
                    { name: "Export", text: qsTr("Export…"), does: path => sheet.exportAsked(path) },
                    { name: "Delete", text: qsTr("Delete…"), does: path => sheet.deleteAsked(path) }
                ]
                InkButton {
                    required property var modelData
                    objectName: "fittings" + modelData.name
                    visible: sheet.listing
                    enabled: sheet.any
                    text: modelData.text
                    onClicked: modelData.does(sheet.current.path)
                }
            }
            InkButton {
                objectName: "fittingsImport"
                visible: sheet.listing
                text: qsTr("Import…")
                onClicked: sheet.leaveTo(() => sheet.importAsked())
            }
            InkButton {
                objectName: "fittingsAway"
                text: sheet.listing ? qsTr("Put away") : qsTr("Back to the list")
                onClicked: sheet.listing ? sheet.close() : sheet.toList()
            }
        }
    }
}
