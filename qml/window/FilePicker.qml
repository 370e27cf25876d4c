// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Tripoise

// A file is chosen: to be opened, or to be saved. A name that is typed stays when the folder changes.
Sheet {
    id: sheet
    objectName: "filePicker"
    property int purpose: FolderModel.Open
    property bool replacing: false // asks whether the file that stands there may be replaced
    property bool done: false
    property string said // why it was not saved
    signal picked(url file, bool replace)
    signal left() // nothing was chosen

    readonly property bool folderWanted: purpose === FolderModel.Folder
    readonly property bool sheetWanted: purpose === FolderModel.SaveSheet
    readonly property bool saving: purpose === FolderModel.Save || sheetWanted
    closePolicy: T.Popup.CloseOnEscape
    onOpened: {
        line.forceActiveFocus(Qt.TabFocusReason)
        line.selectAll()
    }
    onClosed: if (!done) left()

    function pick(what: int, folder: url, suggested: string) {
        purpose = what
        done = false
        said = ""
        files.begin(what, folder, suggested)
        open()
    }
    function take() {
        if (!files.ready || files.enter())
            return
        const replace = replacing
        said = ""
        picked(files.url, replace)
    }
    function finish() {
        done = true
        close()
    }
    /// Another file stands there.
    function askToReplace() {
        replacing = true
        back.forceActiveFocus(Qt.TabFocusReason)
    }

    FolderModel {
        id: files
        onChanged: sheet.replacing = false
    }

    contentItem: ColumnLayout {
        spacing: Look.smallGap
        InkText {
            text: sheet.folderWanted ? qsTr("The folder of the fittings") : sheet.sheetWanted ? qsTr("Write the set-up sheet") : sheet.saving ? qsTr("Save the fitting") : sheet.purpose === FolderModel.OpenTable ? qsTr("Open a geometry table")
                : qsTr("Open a fitting, a frame file or a table")
            font.pixelSize: Look.large
            Layout.fillWidth: true
        }
        Flow {
            spacing: Look.hairGap
            Layout.fillWidth: true
            Repeater {
                model: sheet.visible ? files.places() : []
                InkButton {
                    required property string modelData
                    required property int index
                    objectName: "place_" + index
                    text: files.nameOf(modelData)
                    hint: modelData
                    onClicked: files.go(modelData)
                }
            }
        }
        RowLayout {
            spacing: Look.smallGap
            Layout.fillWidth: true
            InkButton {
                objectName: "folderUp"
                text: qsTr("Up")
                onClicked: files.goUp()
            }
            InkText {
                objectName: "folderPath"
                text: files.folder
                color: Look.soft
                wrapMode: Text.WrapAnywhere
                Layout.fillWidth: true
            }
        }
        Rectangle {
            color: Look.sheet
            border.width: 1
            border.color: Look.edge
            Layout.preferredWidth: Math.min(sheet.parent ? sheet.parent.width - 120 : 0, 560 * Look.textScale)
            Layout.preferredHeight: Math.min(sheet.parent ? sheet.parent.height - 420 * Look.textScale : 0, 300 * Look.textScale)
            Layout.minimumHeight: 3 * Look.control
            Layout.fillWidth: true
            ListView {
                id: list
                objectName: "folderList"
                anchors.fill: parent
                anchors.margins: 1
                clip: true
                model: files
                activeFocusOnTab: count > 0
                boundsBehavior: Flickable.StopAtBounds
                Accessible.role: Accessible.List
                Accessible.name: qsTr("files and folders")
                T.ScrollBar.vertical: InkScrollBar {}
                delegate: T.AbstractButton {
                    id: entry
                    required property string name
                    required property bool isFolder
                    required property int index
                    objectName: "entry_" + name
                    width: list.width
                    implicitHeight: Look.control
                    leftPadding: Look.smallGap
                    Accessible.role: Accessible.ListItem
                    Accessible.name: isFolder ? qsTr("folder %1").arg(name) : name
                    Accessible.onPressAction: list.choose(entry.name, entry.isFolder)
                    onClicked: {
                        list.currentIndex = index
                        list.choose(name, isFolder)
                    }
                    onDoubleClicked: if (!isFolder && !sheet.saving) sheet.take()
                    contentItem: Text {
                        text: entry.isFolder ? entry.name + "/" : entry.name
                        textFormat: Text.PlainText
                        font.family: Look.family
                        font.pixelSize: Look.body
                        font.bold: entry.isFolder
                        color: Look.ink
                        elide: Text.ElideMiddle
                        verticalAlignment: Text.AlignVCenter
                    }
                    background: Rectangle {
                        color: entry.hovered || (list.activeFocus && list.currentIndex === entry.index) ? Look.tint : "transparent"
                    }
                }
                Keys.onReturnPressed: if (currentItem) choose(currentItem.name, currentItem.isFolder)
                Keys.onEnterPressed: if (currentItem) choose(currentItem.name, currentItem.isFolder)

                function choose(what: string, isFolder: bool) {
                    if (isFolder) {
                        files.go(files.folder + "/" + what)
                        currentIndex = 0
                    } else {
                        files.typed = what
                    }
                }
            }
        }
        TextEntry {
            id: line
            objectName: "fileName"
            name: sheet.folderWanted ? qsTr("Another folder, or where it is") : sheet.saving ? qsTr("Name, or where to and name") : qsTr("Name, or where it is and name")
            placeholderText: name
            text: files.typed
            onTextEdited: files.typed = text
            Layout.fillWidth: true
            Keys.onReturnPressed: if (!sheet.replacing) sheet.take()
            Keys.onEnterPressed: if (!sheet.replacing) sheet.take()
            Keys.onDownPressed: list.forceActiveFocus(Qt.TabFocusReason)
        }
        InkText {
            objectName: "fileTold"
            readonly property bool wrong: sheet.replacing || sheet.said || !files.ready
            text: sheet.said ? sheet.said
                : sheet.replacing && sheet.sheetWanted ? qsTr("%1 is there already.").arg(files.message)
                : sheet.replacing ? qsTr("%1 is there already. What it holds is kept as an earlier version if you replace it.").arg(files.message)
                : files.message
            font.pixelSize: Look.small
            color: wrong ? Look.hazardText : Look.soft
            wrapMode: Text.Wrap
            Layout.fillWidth: true
            Layout.preferredWidth: 0
            Accessible.role: Accessible.AlertMessage
        }
        RowLayout {
            spacing: Look.smallGap
            InkButton {
                objectName: "fileTake"
                strong: true
                enabled: files.ready
                text: sheet.folderWanted ? qsTr("Take this folder") : sheet.replacing ? qsTr("Replace") : sheet.saving ? qsTr("Save") : qsTr("Open")
                onClicked: sheet.take()
            }
            InkButton {
                id: back
                objectName: "fileBack"
                text: sheet.replacing ? qsTr("Another name") : qsTr("Back")
                onClicked: {
                    if (sheet.replacing) {
                        sheet.replacing = false
                        line.forceActiveFocus(Qt.TabFocusReason)
                    } else {
                        sheet.close()
                    }
                }
            }
        }
    }
}
