// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Tripoise

// A maker's geometry table: pasted on the left, understood on the right, below what is to be said
// about it.
Sheet {
    id: sheet
    objectName: "tableSheet"
    required property Session session
    required property url folder // where a file is looked for
    readonly property alias page: page
    readonly property real lettersWide: width / Look.textScale
    readonly property bool sideBySide: lettersWide >= 860
    property string standing: "text" // of text and table, where they do not stand side by side

    width: parent ? parent.width - 2 * margins : 0
    height: parent ? parent.height - 2 * margins : 0
    margins: Look.gap
    padding: Look.gap
    closePolicy: T.Popup.CloseOnEscape

    function show() {
        page.offerClipboard()
        place()
        open()
    }
    function showFile(file: url) {
        page.openFile(file)
        place()
        open()
    }
    function place() { standing = page.readable ? "table" : "text" }
    function takeFocus() {
        if (sideBySide || standing === "text")
            text.takeFocus()
        else
            grid.takeFocus()
    }
    onOpened: takeFocus()

    TablePage {
        id: page
        session: sheet.session
        onTaken: sheet.place()
    }

    contentItem: ColumnLayout {
        spacing: Look.smallGap

        RowLayout {
            spacing: Look.gap
            Layout.fillWidth: true
            InkText {
                text: qsTr("Geometry table")
                font.pixelSize: Look.large
                wrapMode: Text.NoWrap
            }
            InkText {
                objectName: "tableSummary"
                text: page.summary
                color: Look.soft
                Layout.fillWidth: true
            }
            InkButton {
                objectName: "tableAway"
                iconName: "close"
                hint: qsTr("Back (Esc); the text stays here")
                onClicked: sheet.close()
            }
        }
        Choice {
            objectName: "tableStanding"
            visible: !sheet.sideBySide
            name: qsTr("what stands here")
            options: [{ text: qsTr("Text"), value: "text" }, { text: qsTr("Table"), value: "table" }]
            value: sheet.standing
            onChosen: name => sheet.standing = name
            Layout.fillWidth: true
        }
        RowLayout {
            spacing: Look.gap
            Layout.fillWidth: true
            Layout.fillHeight: true

            TableTextPane {
                id: text
                objectName: "tableTextPane"
                page: page
                visible: sheet.sideBySide || sheet.standing === "text"
                Layout.preferredWidth: sheet.sideBySide ? Math.round(sheet.width * 0.27) : -1
                Layout.fillWidth: !sheet.sideBySide
                Layout.fillHeight: true
                onFileAsked: {
                    picker.active = true
                    picker.item.pick(FolderModel.OpenTable, sheet.folder, "")
                }
            }
            ColumnLayout {
                spacing: Look.smallGap
                visible: sheet.sideBySide || sheet.standing === "table"
                Layout.fillWidth: true
                Layout.fillHeight: true
                Choice {
                    objectName: "tableModels"
                    visible: options.length > 0
                    name: qsTr("which model")
                    options: page.models
                    value: page.chosen
                    onChosen: model => page.choose(model)
                    Layout.fillWidth: true
                }
                TableGrid {
                    id: grid
                    objectName: "tableGrid"
                    page: page
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    Layout.minimumHeight: Math.min(implicitHeight, 120)
                    Layout.maximumHeight: implicitHeight
                }
                TableNotes {
                    objectName: "tableNotes"
                    page: page
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    Layout.minimumHeight: Math.min(implicitHeight, Math.round(sheet.height * 0.3))
                    Layout.preferredHeight: implicitHeight
                    onMeaningAsked: line => grid.ask(line)
                }
            }
        }
        Hairline { Layout.fillWidth: true }
        InkText {
            objectName: "tableSaid"
            visible: page.said
            text: page.said
            color: Look.hazardText
            Layout.fillWidth: true
            Accessible.role: Accessible.AlertMessage
        }
        GridLayout {
            columns: sheet.lettersWide >= 760 ? 3 : 1
            columnSpacing: Look.gap
            rowSpacing: Look.smallGap
            Layout.fillWidth: true
            NameEntry {
                objectName: "tableModel"
                session: sheet.session
                label: qsTr("Model")
                value: page.modelName
                onNamed: name => page.setModelName(name)
                Layout.preferredWidth: Math.round(200 * Look.textScale)
            }
            Tick {
                objectName: "tableKeep"
                text: qsTr("Keep the frame for other riders")
                hint: page.canKeep ? "" : qsTr("It is kept under its model's name")
                enabled: page.canKeep
                checked: page.keep
                Layout.fillWidth: true
                Layout.alignment: Qt.AlignBottom
                onClicked: {
                    page.setKeep(checked)
                    checked = Qt.binding(() => page.keep)
                }
            }
            InkButton {
                objectName: "tableAdd"
                Layout.alignment: Qt.AlignBottom
                strong: true
                enabled: page.canAdd
                text: page.addText
                onClicked: {
                    if (page.add())
                        sheet.close()
                }
            }
        }
    }
    Loader { // made when first wanted
        id: picker
        active: false
        source: "FilePicker.qml"
        Connections {
            target: picker.item
            function onPicked(url) {
                picker.item.finish()
                page.openFile(url)
            }
        }
    }
}
