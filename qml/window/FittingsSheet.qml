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
                text: sheet.listing ? qsTr("Fittings") : qsTr("Earlier versions")
                font.pixelSize: Look.title
                wrapMode: Text.NoWrap
            }
            InkText {
                objectName: "fittingsFolder"
                text: fittings.folder
                font.pixelSize: Look.small
                color: Look.soft
                elide: Text.ElideMiddle
                wrapMode: Text.NoWrap
                horizontalAlignment: Text.AlignRight
                Layout.fillWidth: true
                Layout.preferredWidth: 0
            }
            InkButton {
                objectName: "fittingsOtherFolder"
                bare: true
                text: qsTr("Another folder…")
                onClicked: sheet.folderAsked()
            }
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
            Layout.preferredHeight: sheet.parent ? sheet.parent.height - 320 * Math.min(1.4, Look.textScale) : 0
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
                        border.width: row.ListView.isCurrentItem ? 1 : 0
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
            InkButton {
                objectName: "fittingsDuplicate"
                visible: sheet.listing
                enabled: sheet.any
                text: qsTr("Duplicate")
                onClicked: {
                    const path = sheet.current.path
                    sheet.leaveTo(() => sheet.duplicateAsked(path))
                }
            }
            InkButton {
                objectName: "fittingsRename"
                visible: sheet.listing && !sheet.renaming
                enabled: sheet.any && sheet.current.readable
                text: qsTr("Rename…")
                onClicked: {
                    newName.text = sheet.current.named ? sheet.current.rider : ""
                    sheet.renaming = true
                    newName.forceActiveFocus(Qt.TabFocusReason)
                    newName.selectAll()
                }
            }
            InkButton {
                objectName: "fittingsVersions"
                visible: sheet.listing
                enabled: sheet.any
                text: qsTr("Earlier versions…")
                onClicked: {
                    sheet.selected = sheet.current.path
                    fittings.versionsOf = sheet.selected
                    list.forceActiveFocus(Qt.TabFocusReason)
                }
            }
            InkButton {
                objectName: "fittingsExport"
                visible: sheet.listing
                enabled: sheet.any
                text: qsTr("Export…")
                onClicked: sheet.exportAsked(sheet.current.path)
            }
            InkButton {
                objectName: "fittingsDelete"
                visible: sheet.listing
                enabled: sheet.any
                text: qsTr("Delete…")
                onClicked: sheet.deleteAsked(sheet.current.path)
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
