// SPDX-License-Identifier: MIT
//
// The constant tables as shipped, and what is said of damaged ones.
#include "support.h"

#include <QTest>

#include <Eigen/Eigenvalues>

#include <algorithm>
#include <cmath>
#include <map>

using namespace tripoise;

namespace {

using Texts = std::map<std::string, std::string>;

Texts shippedTexts()
{
    Texts texts;
    for (const char* name :
         {"anthropometry", "tape", "body", "comfort", "parts", "weights", "segments", "handling"})
        texts[name] =
            test::textOf(QStringLiteral(TRIPOISE_ASSETS "/%1.json").arg(QLatin1String(name)));
    return texts;
}

std::variant<Tables, Problems> read(const Texts& texts)
{
    return readTables({texts.at("anthropometry"), texts.at("tape"), texts.at("body"),
                       texts.at("comfort"), texts.at("parts"), texts.at("weights"),
                       texts.at("segments"), texts.at("handling")});
}

Problems problemsOf(const Texts& texts)
{
    auto result = read(texts);
    if (auto* problems = std::get_if<Problems>(&result))
        return std::move(*problems);
    return {};
}

/// Replaces the first occurrence, which must exist.
void damage(std::string& text, const QByteArray& from, const QByteArray& to)
{
    const auto at = text.find(from.toStdString());
    if (from.isEmpty() || at == std::string::npos)
        throw std::runtime_error("nothing to damage");
    text.replace(at, static_cast<std::size_t>(from.size()), to.toStdString());
}

const Population& populationNamed(const QString& name)
{
    const Populations& all = test::tables().populations;
    return name == "female" ? all.female : name == "male" ? all.male : all.balanced;
}

} // namespace

class TestTables : public QObject {
    Q_OBJECT

private slots:
    void shouldLoadAsShipped() { QVERIFY(std::holds_alternative<Tables>(read(shippedTexts()))); }

    void shouldHoldPublishedMeans_data()
    {
        // Published: ANSUR II (Gordon et al. 2014, NATICK/TR-15/007), stature and crotch height.
        QTest::addColumn<QString>("population");
        QTest::addColumn<double>("statureMm");
        QTest::addColumn<double>("inseamMm");
        QTest::newRow("male") << "male" << 1756.2 << 845.9;
        QTest::newRow("female") << "female" << 1628.5 << 782.3;
    }
    void shouldHoldPublishedMeans()
    {
        QFETCH(QString, population);
        QFETCH(double, statureMm);
        QFETCH(double, inseamMm);
        const BaseVector& mean = populationNamed(population).mean;
        QVERIFY(std::abs(mean(int(Quantity::Stature)) - statureMm) < 0.5);
        QVERIFY(std::abs(mean(int(Quantity::Inseam)) - inseamMm) < 0.5);
    }

    void shouldBalanceTheSexesAtEqualWeight()
    {
        // Derived: mean of the two means; covariance plus a quarter of the squared difference.
        const Populations& all = test::tables().populations;
        const BaseVector difference = all.male.mean - all.female.mean;
        const BaseMatrix expected = 0.5 * (all.male.covariance + all.female.covariance)
                                    + 0.25 * difference * difference.transpose();
        QVERIFY((all.balanced.mean - 0.5 * (all.male.mean + all.female.mean)).cwiseAbs().maxCoeff()
                < 0.01);
        QVERIFY((all.balanced.covariance - expected).cwiseAbs().maxCoeff() < 2.0);
    }

    void shouldHaveSoundCovariances_data()
    {
        QTest::addColumn<QString>("population");
        for (const char* name : {"female", "male", "balanced"})
            QTest::newRow(name) << name;
    }
    void shouldHaveSoundCovariances()
    {
        QFETCH(QString, population);
        const BaseMatrix& covariance = populationNamed(population).covariance;
        QCOMPARE(BaseMatrix(covariance.transpose()), covariance);
        QVERIFY(covariance.diagonal().minCoeff() > 1.0); // filled in to the last row
        const Eigen::SelfAdjointEigenSolver<BaseMatrix> eigen(covariance);
        QVERIFY(eigen.eigenvalues().minCoeff() >= -1e-6 * eigen.eigenvalues().maxCoeff());
    }

    void shouldGiveEveryQuantityAnOpenRangeAroundItsMean()
    {
        const Tables& tables = test::tables();
        for (int i = 0; i < quantityCount; ++i) {
            const auto quantity = static_cast<Quantity>(i);
            const TapeRow& row = tables.tape.of(quantity);
            for (const Population* of : {&tables.populations.female, &tables.populations.male}) {
                const double mean = rowOf(quantity).dot(of->mean);
                QVERIFY2(row.low < mean && mean < row.high, keyOf(quantity).data());
            }
            QVERIFY2(row.sd > 0.0, keyOf(quantity).data());
        }
    }

    void shouldTakeAnglesInDegrees()
    {
        const ComfortTable& comfort = test::tables().comfort;
        QVERIFY(std::abs(comfort.knee(Use::City).centre.deg() - 40.0) < 1e-9);
        QVERIFY(std::abs(comfort.stiffBelow.deg() - 60.0) < 1e-9);
        const auto& flat =
            comfort.calibrated[indexOf(Use::FastCommuting)][indexOf(GripPlace::Flat)];
        QVERIFY(flat);
        QVERIFY(flat->trunk.deg() > 30.0 && flat->trunk.deg() < 80.0);
        QVERIFY(!comfort.calibrated[indexOf(Use::City)][indexOf(GripPlace::Hoods)]);
    }

    void shouldLeaveTheLongestCrankBandOpen()
    {
        const auto& bands = test::tables().comfort.cranks;
        QCOMPARE(bands.size(), 5UL);
        QVERIFY(std::is_sorted(bands.begin(), bands.end(), [](const auto& a, const auto& b) {
            return a.belowInseamMm < b.belowInseamMm;
        }));
        QVERIFY(bands.back().belowInseamMm > 1e6);
        QCOMPARE(bands.back().lowMm, 175.0);
    }

    void shouldOfferEveryMarketStemOverAndUnder()
    {
        // Derived: ten lengths, three angles, both ways up.
        const auto& stems = test::tables().marketStems;
        QCOMPARE(stems.size(), 60UL);
        const auto up = std::count_if(stems.begin(), stems.end(), [](const Stem& stem) {
            return stem.lengthMm == 100.0 && stem.angle > Angle() && !stem.reversible;
        });
        const auto down = std::count_if(stems.begin(), stems.end(), [](const Stem& stem) {
            return stem.lengthMm == 100.0 && stem.angle < Angle() && !stem.reversible;
        });
        QCOMPARE(up, 3);
        QCOMPARE(down, 3);
    }

    void shouldReadWeights()
    {
        const WeightTable& weights = test::tables().weights;
        QCOMPARE(weights.points[indexOf(Consideration::Standover)], 0.5);
        QVERIFY(weights.unsourced[indexOf(Consideration::Standover)]);
        QVERIFY(!weights.unsourced[indexOf(Consideration::Posture)]);
        QVERIFY(std::abs(weights.naturalStem.middle(Use::Road, 1860.0) - 110.0) < 0.1);
        QCOMPARE(test::tables().leastPedalLeanDeg, 25.0); // published: 16 CFR 1512.17(c)
    }

    void shouldNameFileAndPathOfDamage_data()
    {
        QTest::addColumn<QString>("file");
        QTest::addColumn<QByteArray>("from");
        QTest::addColumn<QByteArray>("to");
        QTest::addColumn<QByteArray>("path");
        QTest::addColumn<int>("code");
        const auto row = [](const char* name, const char* file, const char* from, const char* to,
                            const char* path, ProblemCode code) {
            QTest::newRow(name) << file << QByteArray(from) << QByteArray(to) << QByteArray(path)
                                << int(code);
        };
        row("a renamed figure", "comfort", "\"half_width_deg\"", "\"halfwidth\"",
            "comfort.json/knee/half_width_deg", ProblemCode::Missing);
        row("a word for a number", "comfort", "\"fast_commuting\": 36", "\"fast_commuting\": \"x\"",
            "comfort.json/knee/bottom_deg/fast_commuting", ProblemCode::WrongType);
        row("an unknown use", "comfort", "\"use\": \"gravel\"", "\"use\": \"grave\"",
            "comfort.json/upper_body/centres/3/use", ProblemCode::NotOneOf);
        row("a figure without value", "parts", "\"tyre_mm\": { \"value\"", "\"tyre_mm\": { \"val\"",
            "parts.json/frame/tyre_mm/value", ProblemCode::Missing);
        row("no pedal lean", "parts", "least_pedal_lean_deg", "lean",
            "parts.json/least_pedal_lean_deg", ProblemCode::Missing);
        row("a range of one", "weights", "[200, 260]", "[200]",
            "weights.json/flat_bar_beyond_shoulders_mm", ProblemCode::TooFew);
        row("a word for a mark", "weights", "\"unsourced\": true", "\"unsourced\": 1",
            "weights.json/points/stem_length/unsourced", ProblemCode::WrongType);
        row("a quantity without row", "tape", "\"foot_mm\"", "\"feet_mm\"",
            "tape.json/rows/foot_mm", ProblemCode::Missing);
        row("a short row of covariances", "anthropometry", "[2420.8255, 1985.7347]", "[2420.8255]",
            "anthropometry.json/groups/female/covariance_lower/1", ProblemCode::TooFew);
        row("columns in another order", "anthropometry", "\"variables\": [\n  \"stature\"",
            "\"variables\": [\n  \"height\"", "anthropometry.json/variables/0",
            ProblemCode::NotOneOf);
        row("not JSON", "body", "{", "", "body.json", ProblemCode::NotJson);
    }
    void shouldNameFileAndPathOfDamage()
    {
        QFETCH(QString, file);
        QFETCH(QByteArray, from);
        QFETCH(QByteArray, to);
        QFETCH(QByteArray, path);
        QFETCH(int, code);
        Texts texts = shippedTexts();
        damage(texts[file.toStdString()], from, to);
        const Problems problems = problemsOf(texts);
        QCOMPARE(problems.size(), 1UL);
        QCOMPARE(QByteArray::fromStdString(problems[0].path), path);
        QCOMPARE(int(problems[0].code), code);
    }

    void shouldReportDamageOfSeveralFilesAtOnce()
    {
        Texts texts = shippedTexts();
        texts["tape"] = "[]";
        texts["body"] = "{}";
        const Problems problems = problemsOf(texts);
        QCOMPARE(problems.size(), 8UL); // the list, and seven figures of the body
        QCOMPARE(problems[0].path, std::string("tape.json"));
        QCOMPARE(problems[0].code, ProblemCode::WrongType);
        for (std::size_t i = 1; i < problems.size(); ++i) {
            QVERIFY(problems[i].path.starts_with("body.json/"));
            QCOMPARE(problems[i].code, ProblemCode::Missing);
        }
    }
};

QTEST_APPLESS_MAIN(TestTables)
#include "tst_tables.moc"
