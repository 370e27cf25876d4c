// SPDX-License-Identifier: MIT
//
// What is said of a fitting's values is what reading its document would say: held against each
// other over fittings spoilt at random.
#include "random_brief.h"

#include "samples.h"

#include <QTest>

using namespace tripoise;

namespace {

/// Takes away, doubles or contradicts something, or leaves all as it is.
void spoil(Fitting& fitting, std::mt19937& random)
{
    const auto one = [&](auto& list) -> auto&
    {
        return list[random() % list.size()];
    };
    switch (random() % 24) {
    case 0: fitting.rider.measurements.erase(fitting.rider.measurements.begin()); break;
    case 1: one(fitting.rider.measurements).readings = {3.0}; break;
    case 2: one(fitting.rider.measurements).readings = {900.0, 9000.0}; break;
    case 3: one(fitting.rider.measurements).sd = 0.0; break;
    case 4: one(fitting.rider.measurements).readings = {}; break;
    case 5: fitting.riding.mix.share[0] += 0.25; break;
    case 6: fitting.riding.luggage.rearKg = -1.0; break;
    case 7: fitting.frames.clear(); break;
    case 8: fitting.frames.front().geometry.stackMm = 0.0; break;
    case 9: fitting.frames.back().geometry.reachMm = 39.0; break;
    case 10: fitting.frames.back().geometry.seatAngleDeg.reset(); break;
    case 11: fitting.frames.back().geometry.chainstayMm = Range{445, 425}; break;
    case 12:
        fitting.frames.back().geometry.wheelbaseMm = 700.0;
        fitting.frames.back().geometry.frontCentreMm = 800.0;
        break;
    case 13: fitting.frames.back().size = fitting.frames.front().size; break;
    case 14: fitting.frames.back().size.clear(); break;
    case 15: fitting.bicycle.tyreMm = 400.0; break;
    case 16: fitting.bicycle.barKind = static_cast<BarKind>(random() % 3); break;
    case 17: fitting.stock.stems.clear(); break;
    case 18: one(fitting.stock.stems).lengthMm = 0.0; break;
    case 19:
        for (Stem& stem : fitting.stock.stems)
            stem.inStock = false;
        break;
    case 20: fitting.stock.bars.clear(); break;
    case 21: fitting.stock.cranksMm.clear(); break;
    case 22:
        fitting.current = CurrentBike{};
        fitting.current->saddleHeightMm = 75.0;
        break;
    default: break;
    }
}

/// By path, code and value: a document says the same wherever it stands in the list.
std::vector<std::string> told(Problems problems)
{
    std::vector<std::string> lines;
    for (const Problem& problem : problems)
        lines.push_back(problem.path + ' ' + std::to_string(int(problem.code)) + ' '
                        + problem.value);
    std::sort(lines.begin(), lines.end());
    return lines;
}

} // namespace

class TestValidate : public QObject {
    Q_OBJECT

private slots:
    void shouldSayWhatReadingTheDocumentWouldSay()
    {
        test::RandomBriefs briefs(11);
        std::mt19937 random(12);
        const int count = test::samples(2000);
        int sound = 0;
        for (int i = 0; i < count; ++i) {
            Fitting fitting = test::fittingOf(briefs.next());
            fitting.stock.cranksMm.push_back(170.0);
            spoil(fitting, random);
            if (!fitting.frames.empty() && !fitting.rider.measurements.empty()
                && !fitting.stock.stems.empty())
                spoil(fitting, random);
            const std::string text = writeFitting(fitting);
            auto read = readFitting(text, test::tables());
            const auto* problems = std::get_if<Problems>(&read);
            sound += problems ? 0 : 1;
            const auto values = told(validate(fitting, test::tables()));
            const auto document = told(problems ? *problems : Problems{});
            if (values != document) {
                for (const std::string& line : values)
                    qWarning("of the values: %s", line.c_str());
                for (const std::string& line : document)
                    qWarning("of the document: %s", line.c_str());
                QFAIL(text.c_str());
            }
        }
        QVERIFY(sound > 0 && sound < count);
    }
};

QTEST_APPLESS_MAIN(TestValidate)
#include "tst_validate.moc"
