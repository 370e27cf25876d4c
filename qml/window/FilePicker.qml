// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Dialogs

// The dialog in which a file is chosen.
FileDialog {
    id: dialog
    signal picked(url file)
    signal left()

    readonly property string tables: qsTr("Geometry tables (*.csv *.tsv *.txt)")
    readonly property string everything: qsTr("All files (*)")
    onAccepted: picked(selectedFile)
    onRejected: left()

    function pick(purpose: string, folder: url, name: string) {
        fileMode = purpose === "save" ? FileDialog.SaveFile : FileDialog.OpenFile
        nameFilters = purpose === "table" ? [tables, everything]
            : purpose === "save" ? [qsTr("Fittings (*.json)"), everything]
            : [qsTr("Fittings and frames (*.json)"), tables, everything]
        defaultSuffix = purpose === "save" ? "json" : ""
        currentFolder = folder
        if (purpose === "save" && name)
            selectedFile = folder + "/" + encodeURIComponent(name)
        open()
    }
}
