// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import Tripoise

// The sizes to choose between.
Fold {
    id: section
    required property Session session
    required property Documents documents
    readonly property alias frames: frames
    signal tableAsked()
    signal keptAsked()
    signal filePicked(url file)

    title: qsTr("Candidate sizes")
    summary: frames.summary

    function openNew(at: int) {
        const row = rows.itemAt(at)
        if (row)
            row.nameIt()
    }
    function removeAt(at: int) {
        frames.remove(at)
        const row = rows.itemAt(Math.min(at, frames.count - 1))
        if (row)
            row.takeFocus()
        else
            addButton.forceActiveFocus(Qt.TabFocusReason)
    }

    FramesModel {
        id: frames
        session: section.session
    }
    Column {
        spacing: 0
        width: section.width // a layout gives none to what has no height yet
        Repeater {
            id: rows
            model: frames
            FrameRow {
                required property int index
                objectName: "frame_" + index
                session: section.session
                width: parent.width
                onCopyAsked: section.openNew(frames.duplicate(index))
                onRemoveAsked: section.removeAt(index)
            }
        }
    }
    InkButton {
        objectName: "lastFrames"
        visible: frames.count === 0 && section.documents.lastFrames
        strong: true
        text: qsTr("The last sizes again")
        hint: qsTr("Ctrl+Shift+K")
        onClicked: section.documents.takeLastFrames()
    }
    InkText {
        visible: frames.count === 0 && text
        text: section.documents.lastFrames
        font.pixelSize: Look.small
        color: Look.soft
        width: parent.width
    }
    Flow {
        spacing: Look.hairGap
        Layout.fillWidth: true
        InkButton {
            id: addButton
            objectName: "addFrame"
            iconName: "add"
            text: qsTr("Add a size")
            onClicked: section.openNew(frames.add())
        }
        InkButton {
            objectName: "frameTable"
            iconName: "copy"
            text: qsTr("From a table…")
            hint: qsTr("The maker's geometry table, copied off its page or out of a file (Ctrl+T)")
            onClicked: section.tableAsked()
        }
        InkButton {
            objectName: "frameKept"
            text: qsTr("Frames kept…")
            hint: qsTr("Frames read before (Ctrl+K)")
            onClicked: section.keptAsked()
        }
        InkButton {
            objectName: "frameFile"
            iconName: "file"
            text: qsTr("From a file…")
            hint: qsTr("A frame file or a table; it can be dropped on the window too")
            onClicked: {
                picker.active = true
                picker.item.pick(FolderModel.Open, section.documents.folderUrl, "")
            }
        }
    }
    Loader { // made when first wanted
        id: picker
        active: false
        visible: false
        source: "FilePicker.qml"
        Connections {
            target: picker.item
            function onPicked(url) {
                picker.item.finish()
                section.filePicked(url)
            }
        }
    }
}
