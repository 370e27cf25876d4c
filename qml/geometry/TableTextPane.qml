// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Tripoise

// The text of a table as it came; it can be typed in.
ColumnLayout {
    id: pane
    required property TablePage page
    signal fileAsked()
    spacing: Look.hairGap

    function takeFocus() { area.forceActiveFocus(Qt.TabFocusReason) }

    Flow {
        spacing: Look.hairGap
        Layout.fillWidth: true
        InkButton {
            objectName: "tablePaste"
            iconName: "copy"
            text: qsTr("Paste")
            hint: qsTr("In place of what stands here")
            onClicked: pane.page.paste()
        }
        InkButton {
            objectName: "tableFile"
            iconName: "file"
            text: qsTr("From a file…")
            onClicked: pane.fileAsked()
        }
        InkButton {
            objectName: "tableClear"
            visible: pane.page.shownText
            iconName: "remove"
            hint: qsTr("Away with this text")
            onClicked: {
                pane.page.clear()
                pane.takeFocus()
            }
        }
    }
    Rectangle {
        color: Look.sheet
        radius: Look.radius
        border.width: 1
        border.color: Look.edge
        Layout.fillWidth: true
        Layout.fillHeight: true
        FocusRing { target: area }

        Scroll {
            id: scroll
            anchors.fill: parent
            anchors.margins: 1
            contentWidth: Math.max(width, area.implicitWidth)
            contentHeight: Math.max(height, area.implicitHeight)
            flickableDirection: Flickable.AutoFlickDirection

            T.TextArea {
                id: area
                objectName: "tableText"
                width: scroll.contentWidth
                height: scroll.contentHeight
                padding: Look.smallGap
                font.family: "DejaVu Sans Mono"
                font.pixelSize: Look.small
                color: Look.ink
                selectionColor: Look.ink
                selectedTextColor: Look.paper
                selectByMouse: true
                textFormat: TextEdit.PlainText
                tabStopDistance: Math.round(64 * Look.textScale)
                readOnly: !pane.page.wholeShown || pane.page.reading
                Accessible.role: Accessible.EditableText
                Accessible.name: qsTr("The table's text")
                Keys.priority: Keys.BeforeItem // a tab that is typed would keep the keys here
                Keys.onTabPressed: nextItemInFocusChain(true).forceActiveFocus(Qt.TabFocusReason)
                Keys.onBacktabPressed: nextItemInFocusChain(false).forceActiveFocus(Qt.BacktabFocusReason)
                Keys.onPressed: event => {
                    if (event.matches(StandardKey.Paste) && !readOnly) // qmllint disable
                        event.accepted = pane.page.pasteLong(selectionStart, selectionEnd, false)
                }
                onTextChanged: if (pane.page.wholeShown && text !== pane.page.shownText) pane.page.setText(text)
                onCursorRectangleChanged: if (activeFocus) scroll.revealCursor(cursorRectangle)
                Component.onCompleted: text = pane.page.shownText

                MouseArea { // what is marked elsewhere
                    anchors.fill: parent
                    acceptedButtons: Qt.MiddleButton
                    enabled: !area.readOnly
                    onPressed: mouse => {
                        const at = area.positionAt(mouse.x, mouse.y)
                        mouse.accepted = pane.page.pasteLong(at, at, true)
                    }
                }
            }
            Connections {
                target: pane.page
                function onTextChanged() {
                    if (area.text !== pane.page.shownText)
                        area.text = pane.page.shownText
                }
            }
            function revealCursor(at: rect) {
                contentY = Math.max(Math.min(contentY, at.y - Look.smallGap), at.y + at.height + Look.smallGap - height, 0)
                contentX = Math.max(Math.min(contentX, at.x - Look.gap), at.x + Look.gap - width, 0)
            }
        }
        InkText {
            visible: !area.text
            anchors.fill: parent
            anchors.margins: Look.gap
            text: qsTr("Copy the geometry table off the maker's page, and paste it here. Sizes across or down, in any "
                       + "units, with headings in English, German, French, Italian, Spanish or Dutch.")
            color: Look.soft
            font.italic: true
            Accessible.ignored: true
        }
    }
    InkText {
        visible: !pane.page.wholeShown
        text: qsTr("Only the beginning is shown.")
        font.pixelSize: Look.small
        color: Look.soft
        Layout.fillWidth: true
    }
}
