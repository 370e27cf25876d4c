// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Templates as T
import Tripoise

// The table as it is understood: one line a column of it, with what it means; a figure for each size, marked
// by what to think of it.
FocusScope {
    id: grid
    required property TablePage page
    readonly property int headWidth: Math.round(Math.min(width * 0.5, 370 * Look.textScale))
    readonly property int cellWidth: Math.round(66 * Look.textScale)
    readonly property int lineHeight: Math.round(Look.control * 0.9)
    property int currentSize: 0
    readonly property var currentFigure: list.currentItem ? list.currentItem.figures[currentSize] : undefined
    /// Of the figure that the keys are on, for those who do not see it.
    readonly property string currentTold: currentFigure ? [currentFigure.spoken, currentFigure.told].filter(t => t).join(". ") : ""

    implicitHeight: page.readable ? list.contentHeight : empty.height

    function takeFocus() { list.forceActiveFocus(Qt.TabFocusReason) }
    /// The list of meanings beside a line.
    function ask(line: int) {
        list.positionViewAtIndex(line, ListView.Contain)
        const item = list.itemAtIndex(line)
        if (item)
            meanings.ask(item.meaningItem, line)
    }

    InkText {
        id: empty
        visible: !grid.page.readable
        width: Math.min(parent.width, 420 * Look.textScale)
        text: qsTr("What is understood of the table stands here, with every figure as it is given, as it follows from "
                   + "the others, or as it contradicts them.")
        color: Look.soft
        font.italic: true
    }

    ListView {
        id: list
        objectName: "tableLines"
        anchors.fill: parent
        visible: grid.page.readable
        focus: true
        activeFocusOnTab: true
        clip: true
        model: grid.page.lines
        contentWidth: Math.max(width, grid.headWidth + grid.page.sizes.count * grid.cellWidth + Look.gap)
        flickableDirection: Flickable.AutoFlickDirection
        boundsBehavior: Flickable.StopAtBounds
        headerPositioning: ListView.OverlayHeader
        highlightMoveDuration: 0
        reuseItems: true
        Accessible.role: Accessible.Table
        Accessible.name: qsTr("Geometry table, %1").arg(grid.page.summary)
        Accessible.description: grid.currentTold

        Keys.onLeftPressed: grid.currentSize = Math.max(0, grid.currentSize - 1)
        Keys.onRightPressed: grid.currentSize = Math.min(grid.page.sizes.count - 1, grid.currentSize + 1)
        Keys.onReturnPressed: grid.actOrAsk()
        Keys.onEnterPressed: grid.actOrAsk()
        Keys.onSpacePressed: grid.actOrAsk()

        header: Rectangle { // a tick over each size
            z: 3
            width: list.contentWidth
            height: grid.lineHeight + Look.hairGap
            color: Look.paper
            Row {
                x: grid.headWidth
                Repeater {
                    model: grid.page.sizes
                    Tick {
                        required property int index
                        required property string name
                        required property bool able
                        required property bool ticked
                        required property string why
                        objectName: "tableSize_" + index
                        width: grid.cellWidth
                        height: grid.lineHeight
                        text: name
                        font.bold: true
                        hint: why || qsTr("becomes a candidate")
                        enabled: able
                        checked: ticked
                        onClicked: {
                            grid.page.tick(index, checked)
                            checked = Qt.binding(() => ticked)
                        }
                    }
                }
            }
            Rectangle {
                x: list.contentX
                width: grid.headWidth
                height: parent.height
                color: Look.paper
                InkText {
                    anchors.verticalCenter: parent.verticalCenter
                    text: qsTr("As printed · as understood")
                    font.pixelSize: Look.small
                    color: Look.soft
                    wrapMode: Text.NoWrap
                }
            }
            Hairline {
                anchors.bottom: parent.bottom
                width: parent.width
            }
        }

        delegate: Item {
            id: line
            required property int index
            required property string heading
            required property string meaning
            required property bool open
            required property bool setAside
            required property bool assigned
            required property bool printed
            required property var figures
            readonly property alias meaningItem: meaningButton
            readonly property bool current: ListView.isCurrentItem && list.activeFocus
            width: list.contentWidth
            height: grid.lineHeight

            Row {
                x: grid.headWidth
                Repeater {
                    model: line.figures
                    TableFigure {
                        required property int index
                        required property var modelData
                        objectName: "figure_" + line.index + "_" + index
                        figure: modelData
                        width: grid.cellWidth
                        height: grid.lineHeight
                        current: line.current && index === grid.currentSize
                        onActed: grid.act(line.index, index)
                    }
                }
            }
            Rectangle { // stays where the sizes move along
                x: list.contentX
                z: 2
                width: grid.headWidth
                height: parent.height - 1
                color: Look.paper
                InkText {
                    id: heading
                    anchors.verticalCenter: parent.verticalCenter
                    width: Math.round(parent.width * 0.36)
                    text: line.heading
                    color: line.setAside ? Look.soft : Look.ink
                    font.pixelSize: Look.small
                    elide: Text.ElideRight
                    wrapMode: Text.NoWrap
                    HoverHandler { id: over }
                    Hint {
                        text: line.heading
                        visible: over.hovered && heading.truncated
                    }
                }
                InkButton {
                    id: meaningButton
                    objectName: "meaning_" + line.index
                    x: heading.width + Look.hairGap
                    width: parent.width - x - Look.smallGap
                    height: parent.height - 2
                    anchors.verticalCenter: parent.verticalCenter
                    enabled: line.printed
                    bare: true
                    focusPolicy: Qt.NoFocus // Return on the line opens it
                    leftPadding: Look.hairGap
                    opacity: 1
                    Accessible.name: line.heading + ": " + said.text
                    hint: said.truncated ? said.text : line.printed ? qsTr("Say what this column is") : ""
                    contentItem: InkText {
                        id: said
                        text: line.open ? qsTr("not understood") : line.meaning || qsTr("left out")
                        font.pixelSize: Look.small
                        font.italic: !line.printed || line.setAside
                        font.underline: line.assigned
                        color: line.open ? Look.hazardText : line.setAside || !line.printed ? Look.soft : Look.ink
                        elide: Text.ElideRight
                        wrapMode: Text.NoWrap
                        verticalAlignment: Text.AlignVCenter
                    }
                    onClicked: meanings.ask(meaningButton, line.index)
                }
            }
            Hairline {
                anchors.bottom: parent.bottom
                width: parent.width
                opacity: 0.5
            }
        }
        footer: InkText {
            x: list.contentX
            width: list.width - Look.gap
            topPadding: Look.smallGap
            text: qsTr("≈ follows from the other figures · ? assumed · framed: contradicts its size, a click takes what "
                       + "would agree · underlined: the fault could be here as well · dotted: out of the run of sizes")
            font.pixelSize: Look.small
            color: Look.soft
        }
        T.ScrollBar.vertical: InkScrollBar {}
        T.ScrollBar.horizontal: InkScrollBar {}
    }
    MeaningMenu {
        id: meanings
        page: grid.page
        onClosed: list.forceActiveFocus(Qt.TabFocusReason)
    }

    function act(line: int, size: int) {
        list.currentIndex = line
        currentSize = size
        list.forceActiveFocus(Qt.MouseFocusReason)
        page.actOn(line, size)
    }
    function actOrAsk() {
        if (!page.actOn(list.currentIndex, currentSize) && list.currentItem && list.currentItem.printed)
            ask(list.currentIndex)
    }
}
