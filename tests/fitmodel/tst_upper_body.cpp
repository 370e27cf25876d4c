// SPDX-License-Identifier: MIT
#include "support.h"

#include "base/two_link.h"

#include <QTest>

#include <nlopt.hpp>

#include <random>

using namespace tripoise;
using namespace tripoise::test;

namespace {

struct Case {
    UpperLimbs limbs;
    Point hip;
    Point grip;
    UpperWindows windows;
};

/// Riders of all sizes on grips about their own, `spreadMm` away.
class Cases {
public:
    explicit Cases(double spreadMm) : m_spreadMm(spreadMm) {}

    Case next()
    {
        const Sex sex = m_random() % 2 ? Sex::Male : Sex::Female;
        const double stature = (sex == Sex::Male ? 1756.0 : 1629.0) + 70.0 * m_standard(m_random);
        const Body body = bodyOf(sex, {{Quantity::Stature, {stature}, {}}});
        const Use use = allUses[m_random() % allUses.size()];
        const GripPlace place = allGripPlaces[m_random() % allGripPlaces.size()];
        const auto flexibility = static_cast<Flexibility>(m_random() % 3);
        Case c;
        c.windows = windowsFor(tables().comfort, use, place, flexibility);
        c.limbs = upperLimbs(body, 180.0 + static_cast<double>(m_random() % 120));
        c.hip = {-200.0 + 20.0 * m_standard(m_random), 780.0 + 40.0 * m_standard(m_random)};
        c.grip = comfortableGrip(c.limbs, c.hip, c.windows)
                 + m_spreadMm * Point(m_away(m_random), m_away(m_random));
        return c;
    }

private:
    std::mt19937 m_random{11};
    std::normal_distribution<double> m_standard;
    std::normal_distribution<double> m_away;
    double m_spreadMm;
};

double atElbow(const Case& c, double elbow)
{
    return costAtElbow(c.limbs, c.hip, c.grip, Angle::radians(elbow), c.windows);
}

/// The elbows with which the triangle closes.
std::pair<double, double> closingElbows(const Case& c)
{
    double low = 0.0, high = Angle::degrees(90.0).rad();
    const double distance = (c.grip - c.hip).norm();
    const auto arm = [&](double elbow) {
        const double flat =
            closingLength(c.limbs.upperArmMm, c.limbs.forearmMm, Angle::radians(elbow));
        return std::sqrt(flat * flat - c.limbs.splayMm * c.limbs.splayMm);
    };
    const auto bisect = [&](double wanted) {
        double a = 0.0, b = Angle::degrees(90.0).rad();
        for (int i = 0; i < 80; ++i)
            (arm(0.5 * (a + b)) > wanted ? a : b) = 0.5 * (a + b);
        return 0.5 * (a + b);
    };
    if (arm(low) > distance + c.limbs.trunkMm)
        low = bisect(distance + c.limbs.trunkMm);
    if (arm(high) < std::abs(distance - c.limbs.trunkMm))
        high = bisect(std::abs(distance - c.limbs.trunkMm));
    return {low, high};
}

} // namespace

class TestUpperBody : public QObject {
    Q_OBJECT

private slots:
    void shouldCostNothingAtTheComfortableGrip()
    {
        Cases cases(0.0);
        for (int i = 0; i < 200; ++i) {
            const Case c = cases.next();
            const UpperPosture posture = solveUpperBody(c.limbs, c.hip, c.grip, c.windows);
            QVERIFY(posture.cost < 1e-9);
            QVERIFY(std::abs((posture.trunk - c.windows.trunk.centre).deg()) < 1e-3);
            QVERIFY(std::abs((posture.armTrunk - c.windows.armTrunk.centre).deg()) < 1e-3);
            QVERIFY(std::abs((posture.elbow - c.windows.elbow.centre).deg()) < 1e-3);
        }
    }

    // Against a general-purpose library: NLopt (Johnson), its global DIRECT and local Sbplx
    // methods.
    void shouldFindTheOptimumAGeneralOptimiserFinds()
    {
        Cases cases(45.0);
        int compared = 0;
        double worst = 0.0;
        while (compared < 500) {
            const Case c = cases.next();
            const UpperPosture posture = solveUpperBody(c.limbs, c.hip, c.grip, c.windows);
            if (posture.beyondMm > 0.0)
                continue;
            ++compared;
            const auto [low, high] = closingElbows(c);
            const auto objective = [](const std::vector<double>& x, std::vector<double>&,
                                      void* data) {
                return atElbow(*static_cast<const Case*>(data), x[0]);
            };
            std::vector<double> elbow{0.5 * (low + high)};
            double least = 0.0;
            for (const auto method : {nlopt::GN_DIRECT, nlopt::LN_SBPLX}) {
                nlopt::opt optimiser(method, 1);
                optimiser.set_lower_bounds(low);
                optimiser.set_upper_bounds(high);
                optimiser.set_min_objective(objective, const_cast<Case*>(&c));
                optimiser.set_xtol_abs(1e-9);
                optimiser.set_maxeval(method == nlopt::GN_DIRECT ? 300 : 2000);
                optimiser.optimize(elbow, least);
            }
            worst = std::max(worst, std::abs(posture.elbow.deg() - Angle::radians(elbow[0]).deg()));
            QVERIFY2(worst < 0.01, qPrintable(QString::number(worst)));
            QVERIFY(posture.cost < least + 1e-6);
        }
    }

    void shouldPutTheHandOnTheGrip()
    {
        Cases cases(60.0);
        for (int i = 0; i < 500; ++i) {
            const Case c = cases.next();
            const UpperPosture posture = solveUpperBody(c.limbs, c.hip, c.grip, c.windows);
            if (posture.beyondMm > 0.0)
                continue;
            const Point shoulder = c.hip + c.limbs.trunkMm * along(posture.trunk);
            const double arm = std::sqrt(
                std::pow(closingLength(c.limbs.upperArmMm, c.limbs.forearmMm, posture.elbow), 2)
                - c.limbs.splayMm * c.limbs.splayMm);
            const Point hand =
                shoulder + arm * along(posture.trunk + Angle::degrees(180.0) + posture.armTrunk);
            QVERIFY((hand - c.grip).norm() < 1e-6);
        }
    }

    void shouldDoubleTheStretchedSide()
    {
        // Derived: windows so wide for the others that one joint alone costs.
        Cases cases(0.0);
        Case c = cases.next();
        const Angle wide = Angle::radians(1e6);
        for (const double sign : {-1.0, 1.0}) {
            UpperWindows windows = c.windows;
            windows.armTrunk.halfWidth = wide;
            windows.trunk.centre =
                c.windows.trunk.centre + Angle::degrees(4.0 * sign); // trunk is 4 lower, 4 higher
            windows.trunk.halfWidth = Angle::degrees(4.0);
            const double cost =
                costAtElbow(c.limbs, c.hip, c.grip, c.windows.elbow.centre, windows);
            QVERIFY(std::abs(cost - (sign > 0.0 ? 2.0 : 1.0)) < 1e-6);
        }
    }

    void shouldGrowSteadilyOutOfReach()
    {
        Cases cases(0.0);
        for (int i = 0; i < 100; ++i) {
            const Case c = cases.next();
            const Point out = (c.grip - c.hip).normalized();
            double last = -1.0;
            bool reachedEnd = false;
            for (double further = 0.0; further < 900.0; further += 3.0) {
                const UpperPosture posture =
                    solveUpperBody(c.limbs, c.hip, c.grip + further * out, c.windows);
                QVERIFY(std::isfinite(posture.cost));
                QVERIFY(posture.cost > last);
                last = posture.cost;
                reachedEnd = reachedEnd || posture.beyondMm > 0.0;
            }
            QVERIFY(reachedEnd);
        }
    }

    void shouldStandOnAProvenFloor()
    {
        for (const double spread : {15.0, 60.0, 200.0, 500.0}) {
            Cases cases(spread);
            for (int i = 0; i < 3000; ++i) {
                const Case c = cases.next();
                const Point away = c.grip - comfortableGrip(c.limbs, c.hip, c.windows);
                const double floor = costFloor(c.limbs, c.windows).at(away.x(), away.y());
                const double cost = solveUpperBody(c.limbs, c.hip, c.grip, c.windows).cost;
                QVERIFY2(floor <= cost + 1e-9,
                         qPrintable(QStringLiteral("%1 > %2").arg(floor).arg(cost)));
            }
        }
    }

    // Derived: a floor is worth having only if it is not far below: near the comfortable grip,
    // where the joints move in proportion, at least two fifths (stretched joints cost double).
    void shouldHaveAFloorCloseBelowNearComfort()
    {
        Cases cases(4.0);
        for (int i = 0; i < 2000; ++i) {
            const Case c = cases.next();
            const Point away = c.grip - comfortableGrip(c.limbs, c.hip, c.windows);
            const double cost = solveUpperBody(c.limbs, c.hip, c.grip, c.windows).cost;
            QVERIFY(costFloor(c.limbs, c.windows).at(away.x(), away.y()) > 0.4 * cost - 1e-6);
        }
    }

    // Derivative check against central differences of the solved cost.
    void shouldKnowItsSlope()
    {
        Cases cases(40.0);
        for (int i = 0; i < 1000; ++i) {
            const Case c = cases.next();
            const UpperPosture posture = solveUpperBody(c.limbs, c.hip, c.grip, c.windows);
            if (posture.beyondMm > 0.0)
                continue;
            const Point slope = costSlope(c.limbs, c.hip, c.grip, posture, c.windows);
            const double h = 0.05;
            const auto cost = [&](double dx, double dy) {
                return solveUpperBody(c.limbs, c.hip, c.grip + Point(dx, dy), c.windows).cost;
            };
            const Point measured((cost(h, 0) - cost(-h, 0)) / (2 * h),
                                 (cost(0, h) - cost(0, -h)) / (2 * h));
            QVERIFY((slope - measured).norm() < 1e-3 * (1.0 + slope.norm()));
        }
    }

    void shouldMoveTheGripOutForLongerArms()
    {
        Cases cases(0.0);
        for (int i = 0; i < 500; ++i) {
            const Case c = cases.next();
            UpperLimbs longer = c.limbs;
            longer.upperArmMm += 6.0;
            longer.forearmMm += 6.0;
            const Point grip = comfortableGrip(longer, c.hip, c.windows);
            QVERIFY((grip - c.hip).norm() > (c.grip - c.hip).norm());
            QVERIFY(grip.x() > c.grip.x());
        }
    }

    void shouldShortenTheArmBySplay()
    {
        const UpperLimbs narrow = upperLimbs(averageMan(), 150.0);
        QCOMPARE(narrow.splayMm, 0.0);
        const UpperLimbs wide = upperLimbs(averageMan(), 245.0);
        QVERIFY(std::abs(wide.splayMm - (245.0 - averageMan().shoulderHalfBreadthMm())) < 1e-12);
    }

    void shouldDrawTheLimbsItSolved()
    {
        Cases cases(30.0);
        for (int i = 0; i < 200; ++i) {
            const Case c = cases.next();
            const UpperPosture posture = solveUpperBody(c.limbs, c.hip, c.grip, c.windows);
            if (posture.beyondMm > 0.0)
                continue;
            const UpperPoints points = upperPoints(c.limbs, c.hip, c.grip, posture);
            QVERIFY(std::abs((points.shoulder - c.hip).norm() - c.limbs.trunkMm) < 1e-9);
            QVERIFY(points.elbow.y() < points.shoulder.y());
            // Splay shortens both links alike, so their ratio stays.
            const double ratio =
                (points.elbow - points.shoulder).norm() / (points.grip - points.elbow).norm();
            QVERIFY(std::abs(ratio - c.limbs.upperArmMm / c.limbs.forearmMm) < 1e-6);
        }
    }
};

QTEST_APPLESS_MAIN(TestUpperBody)
#include "tst_upper_body.moc"
