// SPDX-License-Identifier: MIT
import QtQuick
import Tripoise

// How the sizes ride: what a rider feels, pictures of steadiness and weight, the figures behind.
Column {
    id: rideSection
    required property Session session
    required property MeaningStrip strip
    signal lookFromAbove()
    spacing: Look.smallGap

    RideModel { id: felt; session: rideSection.session }
    RideModel { id: figures; session: rideSection.session; figures: true }

    SetupGrid {
        objectName: "felt"
        name: qsTr("How it rides")
        table: felt
        strip: rideSection.strip
        width: parent.width
    }
    Tick {
        objectName: "toeTold"
        visible: felt.overlaps
        width: parent.width
        text: felt.acknowledge
        checked: felt.acknowledged
        onToggled: felt.acknowledged = checked
    }
    InkButton {
        objectName: "fromAbove"
        text: qsTr("Shoe and wheel from above")
        hint: qsTr("Turn bar and cranks, and see where they meet")
        onClicked: rideSection.lookFromAbove()
    }
    MeantTold {
        objectName: "remedies"
        section: felt.remedies
        strip: rideSection.strip
        width: parent.width
    }
    MeantTold {
        objectName: "otherRemedies"
        section: felt.otherRemedies
        strip: rideSection.strip
        width: parent.width
    }
    BalancePicture {
        id: balance
        objectName: "balance"
        session: rideSection.session
        night: Look.night
        letters: Look.small
        width: parent.width
        height: drawn ? Math.round(Math.min(0.8 * width, 24 * Look.small)) : 1
        Accessible.role: Accessible.Graphic
        Accessible.name: description
    }
    StabilityChart {
        id: chart
        objectName: "stability"
        session: rideSection.session
        night: Look.night
        letters: Look.small
        width: parent.width
        height: drawn ? Math.round(Math.min(0.6 * width + 3 * Look.small, 18 * Look.small)) : 1
        Accessible.role: Accessible.Chart
        Accessible.name: description
    }
    InkText {
        objectName: "rideCaution"
        visible: text
        width: parent.width
        text: felt.caution
        font.pixelSize: Look.small
        color: Look.soft
    }
    Fold {
        objectName: "foldFigures"
        title: qsTr("The figures behind it")
        summary: qsTr("Steering, clearances, loads")
        open: false
        width: parent.width
        SetupGrid {
            objectName: "figures"
            name: qsTr("The figures behind it")
            table: figures
            strip: rideSection.strip
            width: parent.width
        }
    }
}
