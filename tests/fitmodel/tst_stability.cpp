// SPDX-License-Identifier: MIT
#include "benchmark_bicycle.h"
#include "samples.h"

#include <QTest>

#include <cmath>
#include <random>

using namespace tripoise;
using namespace tripoise::test;

namespace {

WhippleModel benchmarkModel()
{
    return *whippleModel(benchmarkBicycle());
}

/// Half of the last printed digit, and what six operations lose in double precision.
double printedTolerance(const QString& printed)
{
    const auto point = printed.indexOf(QLatin1Char('.'));
    const auto decimals = point < 0 ? 0 : printed.size() - point - 1;
    return 0.5 * std::pow(10.0, -static_cast<double>(decimals))
           + 6.0 * std::numeric_limits<double>::epsilon() * std::abs(printed.toDouble());
}

/// Bicycles around the benchmark, some of them odd.
class RandomBicycles {
public:
    WhippleBicycle next()
    {
        WhippleBicycle bicycle = benchmarkBicycle();
        const auto scale = [this](double& value) { value *= between(0.7, 1.4); };
        scale(bicycle.wheelbaseMm);
        bicycle.trailMm = between(-20.0, 150.0);
        bicycle.headAngle = Angle::degrees(between(62.0, 82.0));
        for (RollingWheel* wheel : {&bicycle.rearWheel, &bicycle.frontWheel}) {
            scale(wheel->radiusMm);
            scale(wheel->massKg);
            scale(wheel->spinKgMm2);
        }
        for (RigidBody* body : {&bicycle.rear, &bicycle.front}) {
            scale(body->massKg);
            scale(body->centre.x());
            scale(body->centre.y());
        }
        return bicycle;
    }
    double between(double low, double high)
    {
        return std::uniform_real_distribution<double>(low, high)(m_random);
    }

private:
    std::mt19937 m_random{7};
};

/// The real part, nearest to zero, of the roots that swing; empty where none do.
std::optional<double> swing(const WhippleModel& model, double speed)
{
    std::optional<double> nearest;
    for (const auto& root : rootsAt(model, speed))
        if (std::abs(root.imag()) > 1e-6
            && (!nearest || std::abs(root.real()) < std::abs(*nearest)))
            nearest = root.real();
    return nearest;
}
/// Whether some roots swing ever wider.
bool swingsWider(const WhippleModel& model, double speed)
{
    for (const auto& root : rootsAt(model, speed))
        if (std::abs(root.imag()) > 1e-6 && root.real() > 0.0)
            return true;
    return false;
}
double largestRealPart(const WhippleModel& model, double speed)
{
    return rootsAt(model, speed).front().real();
}

} // namespace

class TestStability : public QObject {
    Q_OBJECT

private slots:
    // Published: Meijaard et al. 2007, to the last printed digit.
    void shouldGiveTheBenchmarksMatrices_data()
    {
        QTest::addColumn<int>("row");
        QTest::addColumn<int>("column");
        for (int row = 1; row <= 2; ++row)
            for (int column = 1; column <= 2; ++column)
                QTest::addRow("%d%d", row, column) << row << column;
    }
    void shouldGiveTheBenchmarksMatrices()
    {
        QFETCH(int, row);
        QFETCH(int, column);
        const WhippleModel model = benchmarkModel();
        const auto agrees = [&](const char* name, const Eigen::Matrix2d& matrix, double unit) {
            const std::string entry = name + std::to_string(10 * row + column);
            const QString printed = benchmarkText(entry.c_str());
            const double off = std::abs(matrix(row - 1, column - 1) / unit - printed.toDouble());
            if (off > printedTolerance(printed))
                qWarning("%s is off by %g", entry.c_str(), off);
            return off <= printedTolerance(printed);
        };
        QVERIFY(agrees("M", model.mass, mm2PerM2));
        QVERIFY(agrees("C", model.damping, mmPerM));
        QVERIFY(agrees("K0", model.standing, mmPerM));
        QVERIFY(agrees("K2", model.travelling, 1.0));
    }

    void shouldGiveTheBenchmarksRoots_data()
    {
        QTest::addColumn<int>("index");
        const auto rows = reference("benchmark_roots.csv");
        QCOMPARE(rows.size(), 11);
        for (int i = 0; i < rows.size(); ++i)
            QTest::addRow("%s m/s", qPrintable(rows[i].text("speed"))) << i;
    }
    void shouldGiveTheBenchmarksRoots()
    {
        QFETCH(int, index);
        const ReferenceRow row = reference("benchmark_roots.csv")[index];
        std::array<std::complex<double>, 4> expected{
            std::complex(row.number("castering"), 0.0), std::complex(row.number("capsize"), 0.0),
            std::complex(row.number("weave_re"), row.number("weave_im")),
            std::complex(row.number("weave_re_other"), -row.number("weave_im"))};
        const Roots found = rootsAt(benchmarkModel(), mmPerM * row.number("speed"));
        for (const auto& root : expected) {
            double nearest = std::numeric_limits<double>::infinity();
            for (const auto& candidate : found)
                nearest = std::min(nearest, std::abs(candidate - root));
            QVERIFY2(nearest < 1e-10, qPrintable(QString::number(nearest)));
        }
    }

    void shouldGiveTheBenchmarksSpeeds()
    {
        const WhippleModel model = benchmarkModel();
        const SelfStability found = selfStability(model);
        QVERIFY(found.swingBegins && found.weaveMmS && found.capsizeMmS && found.steady);
        const auto near = [](double value, const char* name, double unit) {
            return std::abs(value / unit - benchmark(name)) < 1e-10;
        };
        QVERIFY(near(found.swingBegins->speedMmS, "double_root_speed", mmPerM));
        QVERIFY(near(found.swingBegins->root, "double_root", 1.0));
        QVERIFY(near(*found.weaveMmS, "weave_speed", mmPerM));
        QVERIFY(near(*found.capsizeMmS, "capsize_speed", mmPerM));
        double frequency = 0.0;
        for (const auto& root : rootsAt(model, *found.weaveMmS))
            frequency = std::max(frequency, root.imag());
        QVERIFY(near(frequency, "weave_frequency", 1.0));
    }

    // The closed forms against Eigen's roots, two ways to the same fact.
    void shouldChangeSignAtItsLimitsOnAnyBicycle()
    {
        RandomBicycles bicycles;
        int weaves = 0, capsizes = 0, steady = 0, neither = 0;
        for (int i = 0; i < samples(1000); ++i) {
            const auto model = whippleModel(bicycles.next());
            QVERIFY(model);
            const SelfStability found = selfStability(*model);
            if (found.weaveMmS) {
                ++weaves;
                const auto below = swing(*model, 0.99999 * *found.weaveMmS);
                const auto above = swing(*model, 1.00001 * *found.weaveMmS);
                QVERIFY(below && above && *below > 0.0 && *above < 0.0);
            }
            if (found.capsizeMmS) {
                ++capsizes;
                const auto realRoot = [&](double speed) {
                    double nearest = std::numeric_limits<double>::infinity();
                    for (const auto& root : rootsAt(*model, speed))
                        if (root.imag() == 0.0 && std::abs(root.real()) < std::abs(nearest))
                            nearest = root.real();
                    return nearest;
                };
                QVERIFY(realRoot(0.99999 * *found.capsizeMmS) < 0.0
                        && realRoot(1.00001 * *found.capsizeMmS) > 0.0);
            }
            // Steady at some speed tried exactly when the band says so.
            bool someSteady = false;
            bool bandKept = true;
            for (double speed = 100.0; speed < 30'000.0; speed += 100.0) {
                const bool now = largestRealPart(*model, speed) < 0.0;
                someSteady = someSteady || now;
                if (found.steady) {
                    const bool inside =
                        speed > *found.weaveMmS && (!found.capsizeMmS || speed < *found.capsizeMmS);
                    bandKept = bandKept && now == inside;
                }
            }
            QVERIFY(bandKept);
            const bool seen = found.steady
                              && (!found.capsizeMmS || *found.capsizeMmS - *found.weaveMmS > 110.0)
                              && *found.weaveMmS < 29'000.0;
            if (seen)
                QVERIFY(someSteady);
            if (!found.steady)
                QVERIFY(!someSteady);
            steady += found.steady;
            neither += !found.weaveMmS && !found.capsizeMmS;
        }
        // The sample holds every kind, so the checks above have something to fail on.
        const int many = samples(200);
        QVERIFY(weaves > many && capsizes > many && steady > many && steady < samples(1000)
                && neither > samples(10));
    }

    // Two roots are equal there to the square root of rounding, and apart on either side.
    void shouldBeginToSwingAtTheDoubleRoot()
    {
        RandomBicycles bicycles;
        int found = 0;
        for (int i = 0; i < samples(500); ++i) {
            const auto model = whippleModel(bicycles.next());
            const auto begins = selfStability(*model).swingBegins;
            if (!begins)
                continue;
            ++found;
            QVERIFY(!swingsWider(*model, 0.99 * begins->speedMmS));
            QVERIFY(swingsWider(*model, 1.01 * begins->speedMmS));
            double nearest = std::numeric_limits<double>::infinity();
            for (const auto& root : rootsAt(*model, begins->speedMmS))
                nearest = std::min(nearest, std::abs(root - begins->root));
            QVERIFY(nearest < 1e-4);
        }
        QVERIFY(found > samples(300));
    }

    // Derived: doubling every mass and inertia doubles both sides of the equation.
    void shouldNotDependOnTheScaleOfMass()
    {
        WhippleBicycle heavy = benchmarkBicycle();
        for (RollingWheel* wheel : {&heavy.rearWheel, &heavy.frontWheel}) {
            wheel->massKg *= 2.0;
            wheel->acrossKgMm2 *= 2.0;
            wheel->spinKgMm2 *= 2.0;
        }
        for (RigidBody* body : {&heavy.rear, &heavy.front}) {
            body->massKg *= 2.0;
            for (double* one :
                 {&body->inertia.xx, &body->inertia.yy, &body->inertia.zz, &body->inertia.xy})
                *one *= 2.0;
        }
        const SelfStability same = selfStability(*whippleModel(heavy));
        QVERIFY(std::abs(*same.weaveMmS - *selfStability(benchmarkModel()).weaveMmS) < 1e-6);
        QVERIFY(std::abs(*same.capsizeMmS - *selfStability(benchmarkModel()).capsizeMmS) < 1e-6);
    }

    void shouldRefuseWhatIsNoBicycle()
    {
        WhippleBicycle bicycle = benchmarkBicycle();
        bicycle.wheelbaseMm = 0.0;
        QVERIFY(!whippleModel(bicycle));
        bicycle = benchmarkBicycle();
        bicycle.frontWheel.radiusMm = 0.0;
        QVERIFY(!whippleModel(bicycle));
        bicycle = benchmarkBicycle();
        bicycle.rear.massKg = std::numeric_limits<double>::quiet_NaN();
        QVERIFY(!whippleModel(bicycle));
        QVERIFY(!whippleModel(WhippleBicycle()));
    }

    void shouldSweepFromStandingToTheEnd()
    {
        const auto sweep = rootsOver(benchmarkModel(), 10'000.0, 40);
        QCOMPARE(sweep.size(), std::size_t{41});
        QCOMPARE(sweep.front().speedMmS, 0.0);
        QCOMPARE(sweep.back().speedMmS, 10'000.0);
        QVERIFY(std::abs(sweep.back().roots.back().real() + 24.624596350174) < 1e-10);
        QCOMPARE(rootsOver(benchmarkModel(), 10'000.0, 0).size(), std::size_t{1});
    }
};

QTEST_APPLESS_MAIN(TestStability)
#include "tst_stability.moc"
