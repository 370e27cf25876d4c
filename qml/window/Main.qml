// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Tripoise

// The one window: left the brief, centre the board, right the decision.
T.ApplicationWindow {
    id: root
    property string startFile
    property bool closingForGood: false
    readonly property alias session: session
    readonly property alias documents: documents
    readonly property alias preferences: preferences
    readonly property alias keys: windowKeys

    width: 1280
    height: 800
    minimumWidth: 1024
    minimumHeight: 700
    visible: true
    color: Look.paper
    title: documents.title
    palette {
        window: Look.paper
        windowText: Look.ink
        base: Look.sheet
        text: Look.ink
        button: Look.paper
        buttonText: Look.ink
        highlight: Look.ink
        highlightedText: Look.paper
        placeholderText: Look.soft
        mid: Look.edge
        dark: Look.edge
        light: Look.sheet
    }

    Component.onCompleted: {
        preferences.restoreWindow(root)
        documents.begin(startFile)
        if (!documents.filePath && !documents.dirty)
            root.toTheName()
    }
    onClosing: close => {
        if (documents.dirty && !closingForGood) {
            close.accepted = false
            unsaved.ask(() => {
                root.closingForGood = true
                root.close()
            })
            return
        }
        preferences.rememberWindow(root)
        documents.end()
    }

    Session { id: session }
    Documents { id: documents; session: session }
    Preferences { id: preferences; session: session }
    Tidying { session: session }

    Binding { target: Look; property: "night"; value: preferences.night }
    Binding { target: Look; property: "textScale"; value: preferences.textScale }

    WindowKeys {
        id: windowKeys
        session: session
        preferences: preferences
        onNewAsked: unsaved.ask(() => root.beginAnew())
        onOpenAsked: root.showFittings()
        onSaveAsked: documents.save()
        onSaveAsAsked: root.exportFitting("")
        onSheetAsked: if (documents.canHandOver()) picker.pick(FolderModel.SaveSheet)
        onTableAsked: root.showTable()
        onKeptAsked: root.showKept()
        onLastFramesAsked: documents.takeLastFrames()
        onBriefAsked: columns.focusOn("brief")
        onBoardAsked: columns.focusOn("board")
        onDecisionAsked: columns.focusOn("decision")
        onRiderAsked: riderView.shown = !riderView.shown
        onWhyNotAsked: {
            columns.bring("decision")
            columns.decision.whyNot()
        }
        onWhatIfAsked: {
            columns.bring("brief")
            columns.brief.whatIf()
        }
        onCostAsked: {
            columns.bring("decision")
            columns.decision.whatItCosts()
        }
        onKeysAsked: keysSheet.open()
        onPresetAsked: index => columns.brief.applyPreset(index)
        onAdvisedAsked: columns.board.backToAdvised()
    }

    function beginAnew() {
        documents.newFitting()
        toTheName()
    }
    function toTheName() {
        columns.bring("brief")
        columns.brief.beginAnew()
    }
    function showTable() {
        tableSheet.active = true
        tableSheet.item.show()
    }
    function showKept() {
        librarySheet.active = true
        librarySheet.item.show()
    }
    function showFittings() {
        fittingsSheet.active = true
        fittingsSheet.item.show()
    }
    function exportFitting(path: string) {
        picker.exported = path
        picker.pick(FolderModel.Save)
    }

    ColumnLayout {
        id: page
        anchors.fill: parent
        spacing: 0
        enabled: !riderView.shown

        Header {
            objectName: "header"
            Layout.fillWidth: true
            session: session
            documents: documents
            preferences: preferences
            keys: windowKeys
            onDeleteAsked: deleteSheet.ask()
            onAboutAsked: aboutSheet.open()
        }
        Hairline { Layout.fillWidth: true }
        Notice {
            objectName: "notice"
            Layout.fillWidth: true
            documents: documents
        }
        Columns {
            id: columns
            available: root.width
            Layout.fillWidth: true
            Layout.fillHeight: true
            session: session
            documents: documents
            preferences: preferences
            onTableAsked: root.showTable()
            onKeptAsked: root.showKept()
            onSheetAsked: windowKeys.sheetAsked()
            onFilePicked: file => root.dropped(file)
        }
    }

    Loader {
        id: riderView
        property bool shown: false
        objectName: "riderView"
        anchors.fill: parent
        active: shown
        sourceComponent: RiderView {
            session: root.session
            onLeave: riderView.shown = false
        }
        onLoaded: item.forceActiveFocus()
        onShownChanged: if (!shown) columns.board.takeFocus()
    }

    DropArea {
        anchors.fill: parent
        onEntered: drag => drag.accepted = drag.hasUrls
        onDropped: drop => {
            if (drop.hasUrls)
                root.dropped(drop.urls[0])
        }
    }
    function dropped(url: url) {
        if (documents.isFrameFile(url)) {
            documents.drop(url)
        } else if (documents.isTableFile(url)) {
            tableSheet.active = true
            tableSheet.item.showFile(url)
        } else {
            unsaved.ask(() => documents.drop(url))
        }
    }

    Loader { // made when first wanted
        id: picker
        objectName: "picker"
        active: false
        source: "FilePicker.qml"
        property string exported // empty for what is on the screen
        function pick(what: int) {
            active = true
            item.pick(what, documents.folderUrl, what === FolderModel.SaveSheet ? documents.sheetName
                : exported ? exported.substring(exported.lastIndexOf("/") + 1) : documents.suggestedName)
        }
        Connections {
            target: picker.item
            function onPicked(url, replace) {
                if (picker.item.saving) {
                    root.saveAs(url, replace)
                    return
                }
                picker.item.finish()
                if (picker.item.folderWanted)
                    documents.chooseFolder(url)
                else
                    root.dropped(url)
            }
        }
    }
    function saveAs(url: url, replace: bool) {
        const moves = !picker.exported && documents.filePath && !documents.inLibrary && !documents.readOnly
        const outcome = picker.item.sheetWanted ? documents.writeSheet(url, preferences.paper, replace)
            : moves ? documents.saveAs(url, replace) : documents.exportTo(picker.exported, url, replace)
        if (outcome === Documents.Taken) {
            picker.item.askToReplace()
        } else if (outcome === Documents.Failed) {
            picker.item.said = documents.notice
        } else {
            picker.item.finish()
        }
    }
    Loader { // made when first wanted
        id: tableSheet
        active: false
        sourceComponent: TableSheet {
            session: root.session
            folder: root.documents.folderUrl
        }
    }
    Loader {
        id: librarySheet
        active: false
        sourceComponent: LibrarySheet {
            session: root.session
            onTableAsked: root.showTable()
        }
    }
    UnsavedSheet {
        id: unsaved
        documents: documents
    }
    Loader {
        id: fittingsSheet
        objectName: "fittingsLoader"
        active: false
        sourceComponent: FittingsSheet {
            documents: root.documents
            onOpenAsked: path => unsaved.ask(() => documents.openPath(path))
            onDuplicateAsked: path => unsaved.ask(() => documents.duplicateOf(path))
            onVersionAsked: (path, copy) => unsaved.ask(() => documents.openVersion(path, copy))
            onExportAsked: path => root.exportFitting(path)
            onImportAsked: picker.pick(FolderModel.Open)
            onFolderAsked: picker.pick(FolderModel.Folder)
            onDeleteAsked: path => deleteSheet.askAbout(path)
        }
    }
    DeleteSheet {
        id: deleteSheet
        documents: documents
    }
    AboutSheet { id: aboutSheet }
    KeysSheet {
        id: keysSheet
        keys: windowKeys
    }
}
