// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Dialogs

// The dialog in which a file is chosen.
FileDialog {
    id: dialog
    signal picked(url file)
    signal left()

    nameFilters: [qsTr("Fittings and frames (*.json)"), qsTr("All files (*)")]
    onAccepted: picked(selectedFile)
    onRejected: left()

    function pick(purpose: string, folder: url, name: string) {
        fileMode = purpose === "save" ? FileDialog.SaveFile : FileDialog.OpenFile
        defaultSuffix = purpose === "save" ? "json" : ""
        currentFolder = folder
        if (purpose === "save" && name)
            selectedFile = folder + "/" + encodeURIComponent(name)
        open()
    }
}
