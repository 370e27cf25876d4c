// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Tripoise

TestCase {
    id: journeys
    name: "Journeys"
    when: windowShown

    property var win: null

    Component {
        id: mainWindow
        Main {}
    }

    function init() {
        win = createTemporaryObject(mainWindow, null)
        verify(win, "Main.qml loads")
        win.requestActivate()
        tryCompare(win, "active", true)
        waitForRendering(win.contentItem)
        settle()
    }

    // -- what the tests do, as a builder would

    function find(name, from) {
        const item = findChild(from ?? win, name)
        verify(item, name + " exists")
        return item
    }
    function settle() {
        tryCompare(win.session, "settled", true)
        waitForRendering(win.contentItem)
    }
    function reveal(item) {
        item.forceActiveFocus(Qt.TabFocusReason)
        waitForRendering(win.contentItem)
    }
    function click(item) {
        reveal(item)
        mouseClick(item, item.width / 2, item.height / 2)
        waitForRendering(win.contentItem)
    }
    function typeInto(input, text) {
        reveal(input)
        input.selectAll()
        keyClick(Qt.Key_Delete)
        for (const letter of text)
            keyClick(letter)
    }
    function measure(quantity, text) {
        const input = find("input", find(quantity, find("brief")))
        typeInto(input, text)
        keyClick(Qt.Key_Tab)
        return input
    }
    function verdict() {
        return find("decision").decision
    }
    function holdsTheTruth() {
        settle()
        const told = truth.decide(win.session)
        verify(told.size, "the model decides")
        compare(verdict().state, DecisionModel.Decided)
        compare(verdict().sentence, told.sentence)
        compare(win.session.shownFrame, told.frame)
        return told
    }
    function addSize(index, values) {
        click(find("addFrame"))
        const row = find("frame_" + index, find("brief"))
        typeInto(find("input", find("size", row)), values.size)
        keyClick(Qt.Key_Tab)
        for (const key of ["stack", "reach", "head_angle", "seat_angle"]) {
            typeInto(find("input", find("field_" + key, row)), values[key])
            keyClick(Qt.Key_Tab)
        }
    }

    // -- the visits

    // Typed as one would beside the customer, with two slips: seven measures, a frame that was kept,
    // the shop's box. No pointer, and no key that is not pressed here.
    function test_0_a_visit_by_the_keys_alone_data() {
        return [{ tag: "English", language: "en", scale: 1 }, { tag: "German, twice as large", language: "de", scale: 2 }]
    }
    function test_0_a_visit_by_the_keys_alone(data) {
        win.preferences.language = data.language
        win.preferences.textScale = data.scale
        win.documents.newFitting()
        win.toTheName()
        waitForRendering(win.contentItem)
        verify(truth.keepFrame())
        let pressed = 0
        const type = text => {
            for (const letter of text) {
                keyClick(letter)
                ++pressed
            }
        }
        const press = (key, with_) => {
            keyClick(key, with_ ?? Qt.NoModifier)
            ++pressed
        }
        compare(truth.frames(win.session), 0)
        type("Ada")
        press(Qt.Key_Return)
        type("1790")
        press(Qt.Key_Return)
        type("8500") // a nought too many: told, and the keys are where they should be
        press(Qt.Key_Return)
        const inseam = find("input", find("inseam_mm", find("brief")))
        verify(!inseam.activeFocus)
        compare(truth.readings(win.session, "inseam_mm"), [])
        press(Qt.Key_Backtab, Qt.ShiftModifier)
        verify(inseam.activeFocus)
        press(Qt.Key_Backspace)
        press(Qt.Key_Return)
        type("1462?")
        press(Qt.Key_Return)
        type("680;684")
        press(Qt.Key_Tab) // as good
        type("395")
        press(Qt.Key_Return)
        type("26p") // the key beside the nought
        press(Qt.Key_Backspace)
        type("2")
        press(Qt.Key_Return)
        type("74")
        press(Qt.Key_Return)
        press(Qt.Key_2, Qt.ControlModifier)
        press(Qt.Key_K, Qt.ControlModifier)
        tryVerify(() => find("librarySheet").opened)
        press(Qt.Key_Return)
        tryVerify(() => !find("librarySheet").opened)
        compare(truth.frames(win.session), 2)
        const told = { stature_mm: [1790], inseam_mm: [850], sternal_notch_height_mm: [1462], arm_to_grip_mm: [680, 684],
                       biacromial_mm: [395], foot_mm: [262], mass_kg: [74] }
        for (const key in told)
            compare(truth.readings(win.session, key), told[key], key)
        holdsTheTruth()
        verify(pressed < 60, pressed + " keys")
        press(Qt.Key_F4)
        verify(find("decisionTitle").activeFocus)

        // The next customer wants the same frames.
        press(Qt.Key_N, Qt.ControlModifier)
        const leave = find("unsavedDrop") // asked, as long as nothing is saved
        if (leave.visible)
            click(leave)
        compare(truth.frames(win.session), 0)
        verify(find("riderLabel").activeFocus)
        press(Qt.Key_K, Qt.ControlModifier | Qt.ShiftModifier)
        compare(truth.frames(win.session), 2)
        compare(truth.readings(win.session, "stature_mm"), [])
        win.preferences.language = "en"
        win.preferences.textScale = 1
    }

    function test_1_two_sizes() {
        compare(verdict().state, DecisionModel.Lacking)
        addSize(0, { size: "M", stack: "585", reach: "396", head_angle: "71.5", seat_angle: "73.5" })
        addSize(1, { size: "L", stack: "61O", reach: "408", head_angle: "72", seat_angle: "73" })
        // The O for a zero: said beside the field, and nothing else is lost.
        compare(truth.frames(win.session), 1)
        const stack = find("field_stack", find("frame_1", find("brief")))
        verify(find("message", stack).visible)
        compare(find("input", stack).text, "61O")
        typeInto(find("input", stack), "610")
        keyClick(Qt.Key_Tab)
        compare(truth.frames(win.session), 2)

        measure("stature_mm", "179")
        measure("inseam_mm", "85 cm")
        compare(truth.readings(win.session, "stature_mm"), [1790])
        compare(truth.readings(win.session, "inseam_mm"), [850])
        holdsTheTruth()

        // The mix by a preset's key, then by a slider: the shares stay linked.
        keyClick(Qt.Key_3, Qt.ControlModifier)
        compare(truth.shares(win.session)[2], 1)
        const fast = holdsTheTruth()
        const touring = find("share3", find("brief"))
        reveal(touring)
        keyClick(Qt.Key_7)
        fuzzyCompare(truth.shares(win.session)[3], 0.7, 1e-9)
        fuzzyCompare(truth.shares(win.session).reduce((a, b) => a + b), 1, 1e-12)
        holdsTheTruth()

        // And back: every edit can be undone.
        keyClick(Qt.Key_Z, Qt.ControlModifier)
        compare(holdsTheTruth().sentence, fast.sentence)
    }

    function test_2_one_frame_two_bikes() {
        verify(win.documents.open(demoFolder + "one-frame-two-bikes.json"))
        const told = holdsTheTruth()
        verify(told.stemsByUse.length >= 2, "two uses")
        const fold = find("foldUses", find("decision"))
        if (!fold.open)
            click(find("heading", fold))
        const uses = find("uses", fold)
        verify(uses.visible)
        verify(find("hand", uses).text.length > 0)

        // A slip while typing: the fitting stays as it was, and the text stays to be mended.
        const before = truth.readings(win.session, "inseam_mm")
        const input = measure("inseam_mm", "8500")
        compare(truth.readings(win.session, "inseam_mm"), before)
        compare(input.text, "8500")
        reveal(input)
        keyClick(Qt.Key_Escape)
        holdsTheTruth()

        // The bar pulled 10 mm nearer by the keys; what comes of it can be read; and back.
        const drawing = find("drawing")
        reveal(drawing) // the first handle has the keys
        for (let i = 0; i < 10; ++i)
            keyClick(Qt.Key_Left)
        const trial = truth.trial(win.session)
        verify(trial.reach, "a set-up is being tried")
        for (const size of [[1024, 700], [1280, 800], [1920, 1080]]) {
            win.width = size[0]
            win.height = size[1]
            waitForRendering(win.contentItem)
            const told = find("pullTold")
            verify(told.visible && told.width > 20 * Look.small, "room for a line of it at " + size)
            verify(told.height > 2 * Look.small, "and for more than one")
            verify(!find("pulledText").truncated && find("pulledText").width > 10 * Look.small)
        }
        click(find("backToAdvised"))
        compare(truth.trial(win.session).reach, undefined)
    }

    function test_3_show_why() {
        verify(win.documents.open(demoFolder + "between-two-sizes.json"))
        holdsTheTruth()
        measure("arm_to_grip_mm", "armlong")
        holdsTheTruth() // the slip changed nothing
        keyClick(Qt.Key_F5)
        const view = find("riderView")
        tryVerify(() => view.item !== null)
        waitForRendering(win.contentItem)
        keyClick(Qt.Key_Right)
        waitForRendering(win.contentItem)
        keyClick(Qt.Key_Escape)
        tryVerify(() => view.item === null)
        compare(win.documents.dirty, false)
    }

    // The builder decides otherwise: by keys alone, with a reason; shown everywhere, and undone.
    function test_4_the_builders_word() {
        verify(win.documents.open(demoFolder + "between-two-sizes.json"))
        const told = holdsTheTruth()
        const before = verdict().sentence
        const other = told.size === "M" ? "L" : "M"
        const column = find("decision")
        const choice = find("choice", column)
        verify(!find("reason", choice).visible)
        reveal(find("chosen_none", choice))
        keyClick(Qt.Key_Right)
        if (truth.choice(win.session).size !== other)
            keyClick(Qt.Key_Right)
        waitForRendering(win.contentItem)
        compare(truth.choice(win.session).size, other)
        verify(find("choiceSentence", choice).text.indexOf("The builder chose the") === 0)
        verify(find("choiceCosts", choice).visible)
        compare(verdict().sentence, before) // never replaced
        const input = find("input", find("reason", choice))
        typeInto(input, "bags")
        keyClick(Qt.Key_Tab)
        compare(truth.choice(win.session).reason, "bags")
        verify(find("choiceSentence", choice).text.indexOf("“bags”") > 0)

        // A set-up of their own, pulled on the board that now shows the chosen size.
        reveal(find("drawing"))
        for (let i = 0; i < 5; ++i)
            keyClick(Qt.Key_Left)
        reveal(find("setupAdvised", choice))
        keyClick(Qt.Key_Right)
        compare(truth.choice(win.session).setup, true)
        verify(find("choiceMoves", choice).visible)
        keyClick(Qt.Key_F5)
        const view = find("riderView")
        tryVerify(() => view.item !== null)
        waitForRendering(win.contentItem)
        verify(find("riderChange", view.item).text.indexOf("Chosen with you") >= 0)
        keyClick(Qt.Key_Escape)
        tryVerify(() => view.item === null)
        compare(win.documents.saveAs(ownFolder + "chosen.json"), Documents.Saved)

        for (let i = 0; i < 20 && win.session.canUndo; ++i)
            win.session.undo()
        compare(truth.choice(win.session), { size: "", reason: "", setup: false })
        compare(win.session.shownFrame, told.frame)
        verify(!find("choiceSentence", choice).visible)

        verify(win.documents.open(ownFolder + "chosen.json"))
        settle()
        compare(truth.choice(win.session), { size: other, reason: "bags", setup: true })
    }

    // What a customer asks, each by one key.
    function test_4_the_customers_questions() {
        verify(win.documents.open(demoFolder + "between-two-sizes.json"))
        holdsTheTruth()
        keyClick(Qt.Key_F6)
        const ledger = find("foldLedger", find("decision"))
        verify(ledger.open && ledger.heading.activeFocus)
        keyClick(Qt.Key_F7)
        verify(find("share2", find("brief")).activeFocus) // the largest share
        keyClick(Qt.Key_Down)
        keyClick(Qt.Key_F8)
        verify(find("chosen_none", find("choice")).activeFocus)
        keyClick(Qt.Key_Right)
        verify(find("choiceSentence", find("choice")).visible)
    }

    function test_5_handed_over_and_seen_again() {
        verify(win.documents.open(demoFolder + "between-two-sizes.json"))
        holdsTheTruth()
        const before = verdict().sentence
        keyClick(Qt.Key_P, Qt.ControlModifier)
        const sheet = picker()
        saveUnder(sheet, ownPath("handed"))
        tryCompare(sheet, "opened", false)
        verify(find("noticeText").text.indexOf("handed.pdf") >= 0)
        click(find("noticeAway"))

        // The same place again is asked about, and taken by a second press.
        keyClick(Qt.Key_P, Qt.ControlModifier)
        saveUnder(picker(), ownPath("handed.pdf"))
        verify(picker().replacing)
        press(picker(), "fileTake")
        tryCompare(sheet, "opened", false)
        click(find("noticeAway"))

        // What the mechanic read off: a saddle too high by a slip of the tape.
        const built = find("builtSection", find("brief"))
        built.open = true
        tryVerify(() => findChild(built, "readings") !== null)
        settle()
        const height = find("input", find("field_today_height", built))
        typeInto(height, "77")
        keyClick(Qt.Key_Tab)
        verify(find("message", find("field_today_height", built)).visible) // centimetres
        typeInto(height, "770")
        keyClick(Qt.Key_Tab)
        verify(findChild(built, "builtOff").text.indexOf("770 mm instead of") > 0)
        verify(find("builtEffects", built).visible)
        compare(verdict().sentence, before)

        // Two visits: what was changed for the hands did not help.
        const visits = find("visitsSection", find("brief"))
        visits.open = true
        tryVerify(() => findChild(visits, "beginVisit") !== null)
        settle()
        click(find("beginVisit", visits))
        click(find("says_hands", visits))
        click(find("proposal_0", visits))
        verify(visits.visits.moved)
        click(find("beginVisit", visits))
        click(find("says_hands", visits))
        compare(visits.visits.history.length, 1)
        verify(visits.visits.first.some(line => line.indexOf("health professional") > 0))
        compare(win.documents.saveAs(ownFolder + "seen.json"), Documents.Saved)
        const told = visits.visits.history
        verify(win.documents.open(demoFolder + "between-two-sizes.json"))
        compare(visits.visits.history.length, 0)
        verify(win.documents.open(ownFolder + "seen.json"))
        settle()
        compare(visits.visits.history, told)
    }

    // -- bad input

    function test_a_damaged_file_is_told_and_nothing_is_lost() {
        verify(win.documents.open(demoFolder + "between-two-sizes.json"))
        const before = holdsTheTruth().sentence
        verify(!win.documents.open(demoFolder + "../comfort.json"))
        verify(find("noticeText").text.indexOf("comfort.json") >= 0)
        compare(holdsTheTruth().sentence, before)
        click(find("noticeAway"))
        compare(win.documents.notice, "")
        verify(!win.documents.open(ownFolder + "nowhere.json"))
        verify(find("noticeText").text.indexOf("nowhere.json") >= 0)
        compare(holdsTheTruth().sentence, before)
    }

    function test_a_fitting_saved_is_the_same_when_opened() {
        verify(win.documents.open(demoFolder + "short-rider-large-wheels.json"))
        measure("foot_mm", "231")
        compare(win.documents.dirty, true)
        const before = holdsTheTruth().sentence
        compare(win.documents.saveAs(ownFolder + "kept.json"), Documents.Saved)
        compare(win.documents.dirty, false)
        verify(win.documents.open(demoFolder + "between-two-sizes.json"))
        verify(win.documents.open(ownFolder + "kept.json"))
        compare(truth.readings(win.session, "foot_mm"), [231])
        compare(holdsTheTruth().sentence, before)
    }

    // The sheet in which a file is chosen, once it stands.
    function picker() {
        const loader = find("picker")
        tryVerify(() => loader.item !== null && loader.item.opened)
        return loader.item
    }
    function entry(sheet, name) { // delegates are nobody's children
        const list = find("folderList", sheet.contentItem)
        const named = () => Array.from(list.contentItem.children).find(item => item.objectName === "entry_" + name)
        tryVerify(() => named() !== undefined)
        return named()
    }
    function press(sheet, what) {
        const button = typeof what === "string" ? find(what, sheet.contentItem) : what
        mouseClick(button, button.width / 2, button.height / 2)
        waitForRendering(win.contentItem)
    }
    function ownPath(name) {
        return decodeURIComponent(String(ownFolder).replace("file://", "")) + name
    }
    function saveUnder(sheet, path) {
        const line = find("fileName", sheet.contentItem)
        typeInto(line, path)
        compare(find("fileTake", sheet.contentItem).text, "Save")
        keyClick(Qt.Key_Return)
    }

    // A fitting in a file elsewhere, with a change that was not saved.
    function changedElsewhere(name) {
        win.documents.newFitting()
        compare(win.documents.saveAs(ownFolder + name), Documents.Saved)
        measure("stature_mm", "1790")
        compare(win.documents.dirty, true)
    }
    function test_a_question_called_off_leaves_nothing_waiting() {
        changedElsewhere("later.json")
        keyClick(Qt.Key_N, Qt.ControlModifier)
        click(find("unsavedBack"))
        compare(truth.readings(win.session, "stature_mm"), [1790])
        // Saved later by itself, the new fitting that was called off does not come after all.
        keyClick(Qt.Key_S, Qt.ControlModifier)
        compare(win.documents.dirty, false)
        verify(win.documents.filePath.endsWith("later.json"))
        compare(truth.readings(win.session, "stature_mm"), [1790])
    }

    function test_a_save_that_fails_leaves_nothing_waiting() {
        changedElsewhere("pipe.json")
        const pipe = truth.pipe()
        keyClick(Qt.Key_N, Qt.ControlModifier)
        click(find("unsavedSave"))
        verify(find("noticeText").text.indexOf("pipe.json") >= 0)
        compare(win.documents.dirty, true)
        compare(truth.readings(win.session, "stature_mm"), [1790]) // the new fitting does not come
        keyClick(Qt.Key_S, Qt.ControlModifier | Qt.ShiftModifier)
        const sheet = picker()
        saveUnder(sheet, pipe)
        verify(sheet.opened, "another place can be chosen")
        verify(find("fileTold", sheet.contentItem).text.indexOf("pipe.json") >= 0)
        saveUnder(sheet, ownPath("elsewhere"))
        tryCompare(sheet, "opened", false)
        compare(win.documents.dirty, false)
        compare(truth.readings(win.session, "stature_mm"), [1790])
    }

    function test_a_fitting_gives_way_once_it_is_saved() {
        changedElsewhere("first.json")
        keyClick(Qt.Key_N, Qt.ControlModifier)
        click(find("unsavedSave"))
        tryVerify(() => truth.readings(win.session, "stature_mm").length === 0)
        verify(win.documents.open(ownFolder + "first.json"))
        compare(truth.readings(win.session, "stature_mm"), [1790])
    }

    function test_a_second_customer_does_not_replace_the_first() {
        measure("stature_mm", "1790")
        compare(win.documents.exportTo("", ownFolder + "customer.json"), Documents.Saved)
        win.documents.newFitting()
        measure("stature_mm", "1655")
        keyClick(Qt.Key_S, Qt.ControlModifier | Qt.ShiftModifier)
        const sheet = picker()
        const take = find("fileTake", sheet.contentItem)
        saveUnder(sheet, ownPath("customer"))
        verify(sheet.opened)
        compare(take.text, "Replace")
        keyClick(Qt.Key_Return) // on what is safe
        compare(take.text, "Save")
        verify(sheet.opened)
        keyClick(Qt.Key_Return)
        compare(take.text, "Replace")
        // Typed on, it is another name and asked anew.
        typeInto(find("fileName", sheet.contentItem), ownPath("customer2"))
        compare(take.text, "Save")
        typeInto(find("fileName", sheet.contentItem), ownPath("customer.json"))
        keyClick(Qt.Key_Return)
        compare(take.text, "Replace")
        press(sheet, "fileTake")
        tryCompare(sheet, "opened", false)
        verify(win.documents.notice.indexOf("history") >= 0) // where the first one is kept
        verify(win.documents.open(ownFolder + "customer.json"))
        compare(truth.readings(win.session, "stature_mm"), [1655])
    }

    function test_a_typed_name_stays_when_the_folder_changes() {
        truth.makeFolder("sub/below")
        win.documents.newFitting()
        compare(win.documents.saveAs(ownFolder + "here.json"), Documents.Saved)
        measure("stature_mm", "1790")
        keyClick(Qt.Key_S, Qt.ControlModifier | Qt.ShiftModifier)
        const sheet = picker()
        const line = find("fileName", sheet.contentItem)
        const told = find("fileTold", sheet.contentItem)
        typeInto(line, "mine")
        press(sheet, entry(sheet, "sub"))
        compare(line.text, "mine")
        compare(told.text, ownPath("sub/mine.json"))
        press(sheet, "folderUp")
        compare(line.text, "mine")
        compare(told.text, ownPath("mine.json"))
        // So does a path, from the folder or from the root.
        typeInto(line, "sub/below/mine")
        press(sheet, "folderUp")
        compare(line.text, "sub/below/mine")
        verify(!find("fileTake", sheet.contentItem).enabled) // not from there
        typeInto(line, ownPath("sub/below/mine"))
        press(sheet, "folderUp")
        compare(told.text, ownPath("sub/below/mine.json"))
        press(sheet, "fileTake")
        tryCompare(sheet, "opened", false)
        verify(win.documents.filePath.endsWith("sub/below/mine.json"))
    }

    // The page of the fittings, with its list.
    function fittingsPage() {
        keyClick(Qt.Key_O, Qt.ControlModifier)
        const loader = find("fittingsLoader")
        tryVerify(() => loader.item !== null && loader.item.opened)
        return loader.item
    }
    function fittings(sheet) {
        return find("fittingsList", sheet.contentItem)
    }
    function firstIs(sheet, rider) {
        const list = fittings(sheet)
        tryVerify(() => list.count > 0 && list.itemAtIndex(0) && list.itemAtIndex(0).rider === rider)
    }
    function typeText(text) {
        for (const letter of text)
            keyClick(letter)
    }
    function begin(rider, stature) { // a fitting made by typing alone
        if (win.documents.inLibrary)
            keyClick(Qt.Key_N, Qt.ControlModifier)
        else // what another test left is not asked about
            win.documents.newFitting()
        tryVerify(() => truth.readings(win.session, "stature_mm").length === 0)
        typeInto(find("riderLabel", find("brief")), rider)
        keyClick(Qt.Key_Tab)
        measure("stature_mm", stature)
    }
    function pressByKeys(sheet, name) {
        const button = find(name, sheet.contentItem)
        for (let i = 0; i < 20 && !button.activeFocus; ++i)
            keyClick(Qt.Key_Tab)
        verify(button.activeFocus, name + " is reached by the keys")
        keyClick(Qt.Key_Return)
    }

    function test_6_a_rider_comes_again() {
        begin("Anna", "1655")
        begin("Ben", "1820")
        let sheet = fittingsPage()
        firstIs(sheet, "Ben") // written just now
        typeText("ANN")
        compare(fittings(sheet).count, 1)
        keyClick(Qt.Key_Return)
        tryCompare(sheet, "opened", false)
        compare(truth.readings(win.session, "stature_mm"), [1655])
        measure("inseam_mm", "770")
        sheet = fittingsPage()
        firstIs(sheet, "Anna")
        keyClick(Qt.Key_Down)
        compare(fittings(sheet).currentItem.rider, "Ben")
        keyClick(Qt.Key_Escape)
        tryCompare(sheet, "opened", false)
        compare(truth.readings(win.session, "inseam_mm"), [770])

        // Renamed and duplicated, by the keys.
        sheet = fittingsPage()
        firstIs(sheet, "Anna")
        pressByKeys(sheet, "fittingsRename")
        typeText("Bea")
        keyClick(Qt.Key_Return)
        firstIs(sheet, "Bea")
        compare(sheet.opened, true)
        verify(win.documents.filePath.indexOf("bea-") > 0)
        pressByKeys(sheet, "fittingsDuplicate")
        tryCompare(sheet, "opened", false)
        verify(win.documents.filePath.endsWith("-2.json"))
        compare(truth.readings(win.session, "inseam_mm"), [770])

        // What it was before is looked at, and brought back.
        keyClick(Qt.Key_S, Qt.ControlModifier)
        measure("inseam_mm", "785")
        sheet = fittingsPage()
        firstIs(sheet, "Bea")
        pressByKeys(sheet, "fittingsVersions")
        tryVerify(() => fittings(sheet).count === 1)
        keyClick(Qt.Key_Return)
        tryCompare(sheet, "opened", false)
        compare(truth.readings(win.session, "inseam_mm"), [770])
        compare(win.documents.readOnly, true)
        click(find("bringBack"))
        compare(win.documents.readOnly, false)
        compare(truth.readings(win.session, "inseam_mm"), [770])
        verify(!find("bringBack").visible)
    }

    function test_a_fitting_is_deleted_from_the_page() {
        begin("Carl", "1700")
        begin("Dora", "1710")
        const sheet = fittingsPage()
        firstIs(sheet, "Dora")
        typeText("carl")
        tryVerify(() => fittings(sheet).count === 1)
        pressByKeys(sheet, "fittingsDelete")
        const asked = find("deleteSheet")
        tryCompare(asked, "opened", true)
        compare(asked.rider, "Carl")
        press(asked, "deleteForGood")
        tryVerify(() => fittings(sheet).count === 0)
        compare(truth.readings(win.session, "stature_mm"), [1710]) // what is on the screen stays
        keyClick(Qt.Key_Escape)
    }

    function test_a_file_elsewhere_is_imported() {
        win.documents.newFitting()
        measure("stature_mm", "1790")
        compare(win.documents.saveAs(ownFolder + "opened.json"), Documents.Saved)
        for (const byKeys of [true, false]) {
            win.documents.newFitting()
            press(fittingsPage(), "fittingsImport")
            const sheet = picker()
            if (byKeys) {
                typeInto(find("fileName", sheet.contentItem), ownPath("opened"))
                keyClick(Qt.Key_Return)
            } else {
                press(sheet, entry(sheet, "opened.json"))
                press(sheet, "fileTake")
            }
            tryCompare(sheet, "opened", false)
            compare(truth.readings(win.session, "stature_mm"), [1790])
            verify(win.documents.inLibrary)
            verify(!win.documents.filePath.endsWith("opened.json"))
        }
    }

    function test_another_folder_is_chosen() {
        truth.makeFolder("shelf")
        begin("Emil", "1800")
        const page = fittingsPage()
        const before = find("fittingsFolder", page.contentItem).text
        press(page, "fittingsOtherFolder")
        const sheet = picker()
        typeInto(find("fileName", sheet.contentItem), ownPath("shelf"))
        keyClick(Qt.Key_Return) // goes there
        press(sheet, "fileTake")
        tryCompare(sheet, "opened", false)
        compare(find("fittingsFolder", page.contentItem).text, ownPath("shelf"))
        tryVerify(() => find("fittingsTold", page.contentItem).text.length > 0) // empty, and says so
        keyClick(Qt.Key_Escape)
        begin("Fritz", "1810")
        verify(win.documents.settle())
        verify(win.documents.filePath.indexOf(ownPath("shelf")) === 0)
        verify(win.documents.chooseFolder("file://" + before))
    }

    function test_a_rider_is_deleted_when_that_is_meant() {
        measure("stature_mm", "1790")
        compare(win.documents.saveAs(ownFolder + "gone.json"), Documents.Saved)
        measure("stature_mm", "1795")
        compare(win.documents.save(), true)
        const sheet = find("deleteSheet")
        const ask = () => {
            click(find("fittingMenu"))
            const item = find("deleteRider")
            tryVerify(() => item.visible)
            mouseClick(item, item.width / 2, item.height / 2)
            tryCompare(sheet, "opened", true)
        }
        ask()
        verify(sheet.lines.join(" ").indexOf("gone.json") >= 0)
        verify(sheet.lines.join(" ").indexOf("1 earlier version") >= 0)
        keyClick(Qt.Key_Return) // on what is safe
        tryCompare(sheet, "opened", false)
        verify(win.documents.filePath.endsWith("gone.json"))
        ask()
        press(sheet, "deleteForGood")
        tryCompare(sheet, "opened", false)
        compare(win.documents.filePath, "")
        compare(truth.readings(win.session, "stature_mm"), [])
        verify(find("noticeText").text.indexOf("1 earlier version") >= 0)
        verify(!win.documents.open(ownFolder + "gone.json"))
    }

    // Every field of the brief with something half typed in it, which must not get into the next one.
    function test_another_fitting_gets_nothing_of_what_was_being_typed() {
        const brief = find("brief")
        const unfold = item => {
            if (item.visible && item.open === false)
                item.open = true
            for (const child of Array.from(item.children))
                unfold(child)
        }
        verify(win.documents.open(demoFolder + "between-two-sizes.json"))
        for (let i = 0; i < 3; ++i) {
            unfold(brief)
            waitForRendering(win.contentItem)
        }
        const entries = []
        const look = item => {
            if (!item.visible)
                return
            if (item.objectName === "input" || item.objectName === "riderLabel" || item.objectName === "notes")
                entries.push(item)
            for (const child of Array.from(item.children))
                look(child)
        }
        look(brief)
        verify(entries.length > 50, "every field of the brief: " + entries.length)
        const drawing = find("drawing")
        for (const entry of entries) {
            for (const [letter, leaves] of [["7", false], ["x", true]]) {
                entry.forceActiveFocus(Qt.TabFocusReason)
                keyClick(Qt.Key_End)
                keyClick(Qt.Key_Backspace)
                keyClick(letter)
                truth.startAnew(win.session) // another fitting, with the same numbers
                if (!leaves)
                    keyClick(Qt.Key_Escape)
                drawing.forceActiveFocus(Qt.TabFocusReason)
                verify(truth.untouched(win.session), entry.name + " “" + letter + "”")
            }
        }
    }

    function test_another_fitting_forgets_what_was_being_typed() {
        verify(win.documents.open(demoFolder + "between-two-sizes.json"))
        typeInto(find("input", find("stature_mm", find("brief"))), "1655")
        compare(truth.readings(win.session, "stature_mm"), [1655])
        verify(win.documents.open(demoFolder + "short-rider-large-wheels.json"))
        const own = truth.readings(win.session, "stature_mm")
        click(find("decisionTitle")) // the keys leave the field
        compare(truth.readings(win.session, "stature_mm"), own)
        compare(win.documents.dirty, false)
    }

    function test_a_long_note_is_read_from_its_beginning() {
        verify(win.documents.open(demoFolder + "between-two-sizes.json"))
        find("moreOfTheRider", find("brief")).open = true
        const notes = find("notes", find("brief"))
        compare(notes.cursorPosition, 0)
        reveal(notes)
        compare(notes.cursorPosition, notes.length) // to write on
        for (const letter of " and more of it than the line has room for")
            keyClick(letter)
        verify(notes.text.endsWith("has room for"))
        keyClick(Qt.Key_Tab)
        compare(notes.cursorPosition, 0)
    }

    function test_every_number_takes_any_text() {
        verify(win.documents.open(demoFolder + "between-two-sizes.json"))
        const before = holdsTheTruth().sentence
        const brief = find("brief")
        for (const key of ["stature_mm", "inseam_mm", "arm_to_grip_mm", "foot_mm"]) {
            const readings = truth.readings(win.session, key)
            for (const text of ["", "-1", "1e9", "½x", "\"", "ten", "0x10", ",,", "9999999999"]) {
                const input = find("input", find(key, brief))
                typeInto(input, text)
                if (text !== "")
                    keyClick(Qt.Key_Tab)
                reveal(input)
                keyClick(Qt.Key_Escape)
                compare(truth.readings(win.session, key), readings, key + " “" + text + "”")
            }
        }
        compare(holdsTheTruth().sentence, before)
    }
}
