// SPDX-License-Identifier: MIT
#include "support.h"

#include "brief/box.h"
#include "brief/part_entries.h"

#include <QAbstractItemModelTester>
#include <QTest>

using namespace tripoise;

namespace {

Stem stem(double length, double degrees, double clamp = 31.8)
{
    Stem made;
    made.lengthMm = length;
    made.angle = Angle::degrees(degrees);
    made.barClampMm = clamp;
    return made;
}

Bar bar(const char* name, double width, double clamp = 31.8)
{
    Bar made;
    made.name = name;
    made.widthMm = width;
    made.barClampMm = clamp;
    return made;
}

NumberField* field(PartsModel* parts, const char* key)
{
    for (QObject* one : parts->fields())
        if (one->objectName() == QLatin1String(key))
            return qobject_cast<NumberField*>(one);
    return nullptr;
}

QString textAt(const PartsModel* parts, int row)
{
    return parts->index(row).data(PartsModel::TextRole).toString();
}
bool tickedAt(const PartsModel* parts, int row)
{
    return parts->index(row).data(PartsModel::TickedRole).toBool();
}

struct Opened {
    Opened()
    {
        Fitting fitting;
        fitting.stock.stems = {stem(80, 6), stem(100, 6)};
        fitting.stock.bars = {bar("flat", 620)};
        fitting.stock.spacersMm = {5, 10};
        fitting.stock.cranksMm = {170};
        session.start(fitting);
        box.setSession(&session);
        Stock shop = fitting.stock;
        shop.bars.push_back(bar("wide", 680, 25.4));
        shop.spacersMm.push_back(10);
        box.setShop(shop);
    }
    [[nodiscard]] const Stock& stock() const { return session.fitting().stock; }

    Session session;
    Box box;
    QAbstractItemModelTester stems{box.stems(),
                                   QAbstractItemModelTester::FailureReportingMode::QtTest};
    QAbstractItemModelTester bars{box.bars(),
                                  QAbstractItemModelTester::FailureReportingMode::QtTest};
    QAbstractItemModelTester spacers{box.spacers(),
                                     QAbstractItemModelTester::FailureReportingMode::QtTest};
};

} // namespace

class TestBriefBox : public QObject {
    Q_OBJECT

private slots:
    void shouldTickOnePartAlone()
    {
        Opened opened;
        PartsModel* bars = opened.box.bars();
        QCOMPARE(bars->count(), 2);
        const int wide = textAt(bars, 0).contains(QLatin1String("wide")) ? 0 : 1;
        bars->setOnly(wide);
        QCOMPARE(opened.stock().bars.size(), 1UL);
        QCOMPARE(opened.stock().bars[0].name, std::string("wide"));
        QCOMPARE(bars->count(), 2); // the other stays in sight
        opened.session.undo();      // in one step
        QCOMPARE(opened.stock().bars[0].name, std::string("flat"));
        bars->setOnly(wide);
        bars->setOnly(wide); // again: all
        QCOMPARE(bars->tickedCount(), 2);

        PartsModel* stems = opened.box.stems(); // those that are out stay in the fitting, marked
        stems->setOnly(1);
        QCOMPARE(stems->tickedCount(), 1);
        QCOMPARE(opened.stock().stems.size(), 2UL);
        QVERIFY(!opened.stock().stems[0].inStock && opened.stock().stems[1].inStock);

        PartsModel* spacers = opened.box.spacers(); // pieces that are alike count one by one
        QCOMPARE(spacers->count(), 3);
        spacers->setOnly(2);
        QCOMPARE(opened.stock().spacersMm, std::vector<double>{10});
        spacers->setOnly(7);
        QCOMPARE(opened.stock().spacersMm, std::vector<double>{10});
    }

    void shouldSayWhichBarsAreOfAnotherKind()
    {
        Opened opened;
        const auto notes = [&] {
            QString all;
            for (int row = 0; row < opened.box.bars()->count(); ++row)
                all += opened.box.bars()->index(row).data(PartsModel::NoteRole).toString();
            return all;
        };
        QVERIFY(!notes().contains(QLatin1String("kind")));
        Fitting next = opened.session.fitting();
        next.bicycle.barKind = BarKind::Swept;
        opened.session.edit(next, QStringLiteral("bar"));
        QCOMPARE(notes().count(QLatin1String("Not the kind of bar wanted")), 2);
    }

    void shouldShowTheFittingsPartsAndTheShops()
    {
        Stock fitting;
        fitting.stems = {stem(90, 6), stem(70, 6)};
        fitting.stems[1].inStock = false;
        Stock shop;
        shop.stems = {stem(80, 6), stem(90, 6)};
        const auto lines = linesOf<Stems>(fitting, shop);
        QCOMPARE(lines.size(), 3u); // in the order of the shelf
        QCOMPARE(lines[0].part.lengthMm, 70.0);
        QVERIFY(!lines[0].ticked);
        QCOMPARE(lines[1].part.lengthMm, 80.0);
        QVERIFY(!lines[1].ticked);
        QCOMPARE(lines[2].part.lengthMm, 90.0);
        QVERIFY(lines[2].ticked);
    }

    void shouldCountAlikePieces()
    {
        Stock fitting;
        fitting.spacersMm = {10, 5};
        Stock shop;
        shop.spacersMm = {5, 10, 10, 20};
        const auto lines = linesOf<Spacers>(fitting, shop);
        // 5 of both; one 10 of both and one of the shop's alone; 20 of the shop's alone.
        const std::vector<BoxLine<double>> expected{
            {5, true}, {10, true}, {10, false}, {20, false}};
        QVERIFY(lines == expected);
    }

    void shouldKeepAStemThatIsTickedOutInTheList()
    {
        Stock fitting;
        fitting.stems = {stem(90, 6)};
        const auto lines = linesOf<Stems>(fitting, {});
        const Stock without = withTick<Stems>(fitting, lines[0], false);
        QCOMPARE(without.stems.size(), 1u);
        QVERIFY(!without.stems[0].inStock);
        const auto out = linesOf<Stems>(without, {});
        QVERIFY(!out[0].ticked);
        QVERIFY(withTick<Stems>(without, out[0], true) == fitting);
    }

    void shouldTakeABarOutOfTheFitting()
    {
        Stock fitting;
        fitting.bars = {bar("one", 600), bar("two", 620)};
        const auto lines = linesOf<Bars>(fitting, {});
        const Stock without = withTick<Bars>(fitting, lines[0], false);
        QCOMPARE(without.bars.size(), 1u);
        QCOMPARE(without.bars[0].name, std::string("two"));
        Stock shop;
        shop.bars = {bar("one", 600)};
        const auto again = linesOf<Bars>(without, shop);
        QCOMPARE(again.size(), 2u);
        QVERIFY(!again[0].ticked);
        QCOMPARE(withTick<Bars>(without, again[0], true).bars.size(), 2u);
    }

    void shouldTickOnePieceOfTwoAlike()
    {
        Stock fitting;
        fitting.spacersMm = {10, 10, 5};
        const auto lines = linesOf<Spacers>(fitting, fitting);
        const Stock without = withTick<Spacers>(fitting, lines[2], false);
        QCOMPARE(without.spacersMm, (std::vector<double>{10, 5}));
    }

    void shouldChangeOnePart()
    {
        Stock fitting;
        fitting.stems = {stem(90, 6), stem(100, 6)};
        const Stock changed = withPartChanged<Stems>(fitting, stem(100, 6), stem(100, 17));
        QCOMPARE(changed.stems[1].angle.deg(), 17.0);
        QVERIFY(withPartChanged<Stems>(fitting, stem(40, 6), stem(50, 6)) == fitting);
        QCOMPARE(withoutPart<Stems>(fitting, stem(90, 6)).stems.size(), 1u);
    }

    void shouldSayWhatFitsNothing()
    {
        const PartDefaults& defaults = test::tables().parts; // 31.8 and 28.6 where not stated
        Stock fitting;
        fitting.stems = {stem(90, 6, 31.8)};
        fitting.bars = {bar("narrow clamp", 600, 25.4)};
        QVERIFY(clampsNoBar(fitting.stems[0], fitting, defaults));
        QVERIFY(clampedByNone(fitting.bars[0], fitting, defaults));
        QVERIFY(!fitsNoSteerer(fitting.stems[0], {Steerer{28.6, {}}, Steerer{31.8, {}}}, defaults));
        QVERIFY(fitsNoSteerer(fitting.stems[0], {Steerer{31.8, {}}}, defaults));
        QVERIFY(!fitsNoSteerer(fitting.stems[0], {Steerer{25.4, {}}}, defaults)); // with a shim
        QVERIFY(!fitsNoSteerer(fitting.stems[0], {}, defaults)); // no candidates, no complaint
        fitting.bars.push_back(bar("usual", 600));
        QVERIFY(!clampsNoBar(fitting.stems[0], fitting, defaults));
        fitting.stems[0].inStock = false;
        QVERIFY(!clampedByNone(fitting.bars[1], fitting, defaults));
    }

    void shouldReadBackEveryNumberOfAPart()
    {
        const auto check = [](auto whole, auto entries) {
            for (const auto& entry : entries) {
                const double middle =
                    std::round(0.5 * (entry.facts.limits.low + entry.facts.limits.high)) + 0.5;
                entry.write(whole, middle);
                QCOMPARE(entry.read(whole), std::optional(middle));
            }
            for (const auto& entry : entries) // none wrote where another did
                QCOMPARE(entry.read(whole),
                         std::optional(
                             std::round(0.5 * (entry.facts.limits.low + entry.facts.limits.high))
                             + 0.5));
        };
        check(Stem{}, stemEntries());
        for (const BarKind kind : {BarKind::Flat, BarKind::Swept, BarKind::Drop})
            check(Bar{}, barEntries(kind));
        check(0.0, spacerEntries());
        check(0.0, crankEntries());
        Bicycle guarded;
        guarded.mudguard = Mudguard{};
        for (const auto group : {BicycleGroup::Wheels, BicycleGroup::Guard, BicycleGroup::Parts})
            check(guarded, bicycleEntries(group));
    }

    void shouldReadAnAngleAsItWasTyped()
    {
        for (int tenths = -600; tenths <= 600; ++tenths) {
            Stem made;
            const double typed = tenths / 10.0;
            stemEntries()[1].write(made, typed);
            QCOMPARE(*stemEntries()[1].read(made), typed);
        }
    }

    void shouldTickInAndOut()
    {
        Opened opened;
        PartsModel* bars = opened.box.bars();
        QCOMPARE(bars->count(), 2);
        QCOMPARE(bars->tickedCount(), 1);
        QVERIFY(!bars->index(1).data(PartsModel::NoteRole).toString().isEmpty()); // 25.4
        bars->setTicked(1, true);
        QCOMPARE(opened.stock().bars.size(), 2u);
        bars->setTicked(0, false);
        QCOMPARE(opened.stock().bars.size(), 1u);
        QCOMPARE(bars->count(), 2); // still in the box
        opened.session.undo();
        QVERIFY(tickedAt(bars, 0));
        PartsModel* stems = opened.box.stems();
        stems->setTicked(1, false);
        QCOMPARE(opened.stock().stems.size(), 2u);
        QVERIFY(!opened.stock().stems[1].inStock);
        QVERIFY(opened.box.shop().stems[1].inStock); // the shop has it all the same
    }

    void shouldKeepEveryAlikePieceInSight()
    {
        Opened opened;
        PartsModel* spacers = opened.box.spacers();
        QCOMPARE(spacers->count(), 3);
        QCOMPARE(spacers->tickedCount(), 2);
        spacers->setTicked(2, true);
        QCOMPARE(spacers->tickedCount(), 3);
        QCOMPARE(opened.stock().spacersMm.size(), 3u);
        opened.box.setShop({}); // another shop's: what the fitting has stays
        QCOMPARE(spacers->count(), 3);
        spacers->setTicked(1, false);
        QCOMPARE(spacers->count(), 3);
        QCOMPARE(opened.stock().spacersMm.size(), 2u);
    }

    void shouldPutANewPartInTheBox()
    {
        Opened opened;
        PartsModel* stems = opened.box.stems();
        stems->add();
        QVERIFY(!stems->complete());
        field(stems, "stem_length")->commit(QStringLiteral("90"));
        field(stems, "stem_angle")->commit(QStringLiteral("17"));
        QVERIFY(stems->complete());
        QCOMPARE(opened.stock().stems.size(), 2u); // not before it is put in
        stems->putIn();
        QCOMPARE(opened.stock().stems.size(), 3u);
        QCOMPARE(opened.box.shop().stems.size(), 3u);
        QCOMPARE(textAt(stems, 2), QStringLiteral("90 mm, 17°"));
        QVERIFY(tickedAt(stems, 2));
        QVERIFY(stems->adding()); // ready for the next one, of the same angle
        QCOMPARE(field(stems, "stem_length")->text(), QString());
        QCOMPARE(field(stems, "stem_angle")->text(), QStringLiteral("17"));
        opened.session.undo();
        QVERIFY(!tickedAt(stems, 2)); // the shop keeps it
    }

    void shouldChangeAPartAndKeepItsRow()
    {
        Opened opened;
        PartsModel* stems = opened.box.stems();
        stems->edit(0);
        QCOMPARE(stems->benchRow(), 0);
        field(stems, "stem_length")->type(QStringLiteral("110"));
        QCOMPARE(stems->benchRow(), 1); // behind the one of 100 now
        QCOMPARE(textAt(stems, 1), QStringLiteral("110 mm, 6°"));
        QCOMPARE(opened.stock().stems.size(), 2u);
        QCOMPARE(opened.stock().stems[0].lengthMm, 110.0);
        QCOMPARE(opened.box.shop().stems[0].lengthMm, 110.0);
        stems->clearBench();
        QCOMPARE(stems->benchRow(), -1);
    }

    void shouldRemoveForGoodAndBringBack()
    {
        Opened opened;
        PartsModel* stems = opened.box.stems();
        stems->remove(0);
        QCOMPARE(stems->count(), 1);
        QCOMPARE(opened.box.shop().stems.size(), 1u);
        QVERIFY(!stems->removedText().isEmpty());
        opened.session.undo();
        QCOMPARE(stems->count(), 2);
        QCOMPARE(opened.box.shop().stems.size(), 2u);
        QVERIFY(stems->removedText().isEmpty());
        PartsModel* bars = opened.box.bars();
        bars->remove(1); // of the shop's alone: no step to undo
        QCOMPARE(bars->count(), 1);
        bars->putBack();
        QCOMPARE(bars->count(), 2);
        QVERIFY(!tickedAt(bars, 1));
    }
};

QTEST_GUILESS_MAIN(TestBriefBox)
#include "tst_brief_box.moc"
