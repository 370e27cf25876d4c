// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Templates as T
import Tripoise

// What a column of a table can mean; typing goes to what begins so.
T.Popup {
    id: menu
    required property TablePage page
    property int line: -1
    property string typed

    function ask(beside: Item, of: int) {
        line = of
        list.model = page.meanings(of)
        list.currentIndex = 0
        typed = ""
        parent = beside
        y = beside.height
        open()
        list.forceActiveFocus(Qt.TabFocusReason)
    }
    function choose(key: string) {
        close()
        page.assign(line, key)
    }
    function seek(letter: string) {
        typed += letter.toLowerCase()
        still.restart()
        for (let i = 0; i < list.count; ++i) {
            if (!list.model[i].text.toLowerCase().startsWith(typed))
                continue
            list.currentIndex = i
            return
        }
    }

    objectName: "meaningMenu"
    focus: true
    margins: Look.hairGap
    padding: Look.hairGap
    implicitWidth: Math.round(260 * Look.textScale)
    implicitHeight: Math.min(list.contentHeight + topPadding + bottomPadding, 360 * Look.textScale)
    background: Rectangle {
        color: Look.sheet
        radius: Look.radius
        border.width: 1
        border.color: Look.edge
    }
    Timer {
        id: still
        interval: 800
        onTriggered: menu.typed = ""
    }
    contentItem: ListView {
        id: list
        objectName: "meanings"
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        highlightMoveDuration: 0
        Accessible.role: Accessible.PopupMenu
        Accessible.name: qsTr("What this column is")
        Keys.onReturnPressed: menu.choose(model[currentIndex].key)
        Keys.onEnterPressed: menu.choose(model[currentIndex].key)
        Keys.onPressed: event => {
            if (event.text > " " || (event.text === " " && menu.typed)) {
                menu.seek(event.text)
                event.accepted = true
            }
        }
        delegate: Rectangle {
            id: item
            required property int index
            required property var modelData
            objectName: "meaningOption_" + modelData.key
            width: list.width
            height: Look.control
            color: ListView.isCurrentItem || over.hovered ? Look.tint : "transparent"
            border.width: ListView.isCurrentItem ? 1 : 0
            border.color: Look.ink
            Accessible.role: Accessible.MenuItem
            Accessible.name: modelData.text
            Accessible.onPressAction: menu.choose(modelData.key)
            InkText {
                anchors.fill: parent
                anchors.leftMargin: Look.smallGap
                text: item.modelData.text
                verticalAlignment: Text.AlignVCenter
                wrapMode: Text.NoWrap
                elide: Text.ElideRight
            }
            HoverHandler { id: over }
            TapHandler { onTapped: menu.choose(item.modelData.key) }
        }
        T.ScrollBar.vertical: InkScrollBar {}
    }
}
