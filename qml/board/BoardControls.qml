// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// What is drawn, where the two sizes stand, how near one looks.
Item {
    id: controls
    required property Board board
    required property Preferences preferences
    property bool above: false // seen from above, where there are no layers
    signal lookAsked(bool above)
    /// Room for every layer's name beside its picture, in one line with the rest.
    readonly property bool roomy: width > names.advanceWidth + layers.children.length * (Look.body + 2 * Look.smallGap + 2 * Look.hairGap)
                                  + 8 * Look.control + 5 * Look.gap

    implicitHeight: flow.implicitHeight + 2 * Look.hairGap

    component Layer: Chip {
        property string key
        property string name
        text: controls.roomy ? name : ""
        hint: name
        Accessible.name: name
        Component.onCompleted: {
            const kept = controls.preferences.value("board/" + key, controls.board[key])
            controls.board[key] = kept === true || kept === "true"
        }
        checked: controls.board[key]
        onToggled: {
            controls.board[key] = checked
            controls.preferences.remember("board/" + key, checked)
        }
    }

    TextMetrics {
        id: names
        font.family: Look.family
        font.pixelSize: Look.small
        text: {
            let all = ""
            for (let i = 0; i < layers.children.length; ++i)
                all += layers.children[i].name
            return all
        }
    }
    Flow {
        id: flow
        anchors { left: parent.left; right: parent.right; verticalCenter: parent.verticalCenter; margins: Look.smallGap }
        spacing: Look.gap

        Row {
            spacing: -1
            Accessible.role: Accessible.Grouping
            Accessible.name: qsTr("Seen")
            RadioChip {
                objectName: "fromSide"
                checked: !controls.above
                iconName: "fromside"
                hint: qsTr("From the side")
                onClicked: controls.lookAsked(false)
            }
            RadioChip {
                objectName: "fromAboveChip"
                checked: controls.above
                iconName: "fromabove"
                hint: qsTr("From above: shoe and front wheel")
                onClicked: controls.lookAsked(true)
            }
        }
        Row {
            id: layers
            visible: !controls.above
            spacing: Look.hairGap
            Accessible.role: Accessible.Grouping
            Accessible.name: qsTr("Drawn")
            Layer { objectName: "layerRider"; key: "rider"; name: qsTr("Rider"); iconName: "rider" }
            Layer { objectName: "layerAngles"; key: "angles"; name: qsTr("Angles"); iconName: "angles"; enabled: controls.board.rider }
            Layer { objectName: "layerDimensions"; key: "dimensions"; name: qsTr("Dimensions"); iconName: "dimensions" }
            Layer { objectName: "layerWheels"; key: "wheels"; name: qsTr("Wheels"); iconName: "wheels" }
            Layer { objectName: "layerGround"; key: "ground"; name: qsTr("Ground"); iconName: "ground" }
            Layer { objectName: "layerBeside"; key: "beside"; name: qsTr("Size beside"); iconName: "beside"; enabled: controls.board.hasBeside }
            Layer { objectName: "layerToday"; key: "today"; name: qsTr("Ridden today"); iconName: "today"; enabled: controls.board.hasToday }
        }
        Row {
            spacing: -1
            visible: !controls.above
            enabled: controls.board.hasBeside
            Accessible.role: Accessible.Grouping
            Accessible.name: qsTr("The two sizes stand")
            RadioChip {
                objectName: "onGround"
                checked: !controls.board.onContacts
                iconName: "onground"
                hint: qsTr("Both on one ground, rear wheels aligned")
                onClicked: controls.board.onContacts = false
            }
            RadioChip {
                objectName: "onContacts"
                checked: controls.board.onContacts
                iconName: "oncontacts"
                hint: qsTr("Both on the rider's contacts, bottom brackets together")
                onClicked: controls.board.onContacts = true
            }
        }
        Row {
            spacing: Look.hairGap
            Accessible.role: Accessible.Grouping
            visible: !controls.above
            Accessible.name: qsTr("View")
            Chip { objectName: "zoomOut"; checkable: false; iconName: "minus"; hint: qsTr("Further away"); onClicked: controls.board.zoomOut() }
            Chip { objectName: "zoomAll"; checkable: false; iconName: "whole"; hint: qsTr("All of it"); checked: controls.board.showsAll; onClicked: controls.board.fit() }
            Chip { objectName: "zoomIn"; checkable: false; iconName: "plus"; hint: qsTr("Nearer"); onClicked: controls.board.zoomIn() }
        }
    }
}
