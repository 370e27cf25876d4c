// SPDX-License-Identifier: MIT
#include "random_table.h"
#include "table_support.h"

#include "frame/adjustment.h"

#include <QTest>

#include <unsupported/Eigen/NonLinearOptimization>
#include <unsupported/Eigen/NumericalDiff>

using namespace tripoise;
using namespace tripoise::test;

namespace {

std::vector<Column> columnsWithEquations()
{
    std::vector<Column> columns;
    for (std::size_t i = 0; i < columnCount; ++i)
        if (hasEquation(static_cast<Column>(i)))
            columns.push_back(static_cast<Column>(i));
    return columns;
}

Unknowns unknownsOf(const TrueSize& size)
{
    Unknowns unknowns;
    for (int i = 0; i < unknownCount; ++i)
        unknowns(i) = size.of(columnOf(static_cast<Unknown>(i)));
    unknowns(indexOf(Unknown::ChainstayLong)) = size.of(Column::Chainstay) + 15.0;
    return unknowns;
}

/// The seven unknowns that ten columns determine, for a generic solver. What the columns read is
/// worked from the points of the frame (random_table.h), not by the equations under test.
struct TenColumns {
    using Scalar = double;
    using InputType = Eigen::VectorXd;
    using ValueType = Eigen::VectorXd;
    using JacobianType = Eigen::MatrixXd;
    enum { InputsAtCompileTime = Eigen::Dynamic, ValuesAtCompileTime = Eigen::Dynamic };

    static constexpr std::array unknowns{Column::Stack,     Column::Reach,  Column::SeatAngle,
                                         Column::HeadAngle, Column::BbDrop, Column::Chainstay,
                                         Column::ForkOffset};
    std::vector<Observation> rows;

    [[nodiscard]] int inputs() const { return static_cast<int>(unknowns.size()); }
    [[nodiscard]] int values() const { return static_cast<int>(rows.size()); }

    static TrueSize sizeAt(const Eigen::VectorXd& x)
    {
        TrueSize size;
        for (std::size_t i = 0; i < unknowns.size(); ++i)
            size.at(unknowns[i]) = x(static_cast<Eigen::Index>(i));
        size.at(Column::ForkLength) = 400.0; // plays no part in these columns
        size.at(Column::WheelRadius) = 350.0;
        measure(size);
        return size;
    }
    int operator()(const Eigen::VectorXd& x, Eigen::VectorXd& residual) const
    {
        const TrueSize size = sizeAt(x);
        for (std::size_t i = 0; i < rows.size(); ++i)
            residual(static_cast<Eigen::Index>(i)) =
                (rows[i].value - size.of(rows[i].column)) / rows[i].sd;
        return 0;
    }
};

} // namespace

class TestEquations : public QObject {
    Q_OBJECT

private slots:
    void shouldHaveTheDerivativesOfFiniteDifferences_data()
    {
        QTest::addColumn<int>("column");
        for (const Column column : columnsWithEquations())
            QTest::newRow(std::string(keyOf(column)).c_str()) << static_cast<int>(column);
    }
    void shouldHaveTheDerivativesOfFiniteDifferences()
    {
        QFETCH(int, column);
        Random random(1);
        for (int trial = 0; trial < 50; ++trial) {
            const Unknowns at = unknownsOf(randomRun(1, random).front());
            const Reading reading = readingOf(static_cast<Column>(column), at);
            for (int i = 0; i < unknownCount; ++i) {
                constexpr double step = 1e-4;
                Unknowns low = at;
                Unknowns high = at;
                low(i) -= step;
                high(i) += step;
                const double slope = (readingOf(static_cast<Column>(column), high).value
                                      - readingOf(static_cast<Column>(column), low).value)
                                     / (2.0 * step);
                // The third derivative over 6 times step squared, and cancellation: under 1e-7.
                QVERIFY2(std::abs(reading.gradient(i) - slope) < 1e-6,
                         qPrintable(QString::number(reading.gradient(i) - slope)));
            }
        }
    }

    // Derived: the same figures by vectors between the points of the frame.
    void shouldAgreeWithThePointsOfTheFrame()
    {
        Random random(2);
        for (int trial = 0; trial < 500; ++trial) {
            const TrueSize size = randomRun(1, random).front();
            const Unknowns at = unknownsOf(size);
            for (const Column column : columnsWithEquations())
                if (column != Column::ChainstayLong && column != Column::WheelbaseLong)
                    QVERIFY2(std::abs(readingOf(column, at).value - size.of(column)) < 1e-9,
                             std::string(keyOf(column)).c_str());
        }
    }

    void shouldGiveTheTrailTable()
    {
        for (const ReferenceRow& row : reference("trail.csv")) {
            Unknowns at = closureTable().ordinary.mean;
            at(indexOf(Unknown::HeadAngle)) = row.number("head");
            at(indexOf(Unknown::ForkOffset)) = row.number("offset");
            at(indexOf(Unknown::WheelRadius)) = 0.5 * row.number("bead_seat") + row.number("tyre");
            const double trail = readingOf(Column::Trail, at).value;
            QVERIFY2(std::abs(trail - row.number("trail")) <= 0.0051,
                     qPrintable(row.cells.join(u' ')));
        }
    }

    // The published gap tells the horizontal front centre: derived from the straight one and the
    // drop.
    void shouldTurnTheStraightFrontCentreHorizontal()
    {
        const Ordinary& ordinary = closureTable().ordinary;
        for (const ReferenceRow& row : reference("front_centre.csv")) {
            const double radius = row.number("radius");
            const double drop = row.number("drop");
            const std::vector<Observation> rows{
                {Column::FrontCentre, row.number("front_centre"), 0.01},
                {Column::BbDrop, drop, 0.01}};
            const Reckoned horizontal =
                reckon(Column::FrontCentreHorizontal, adjust(rows, ordinary));
            QVERIFY(horizontal.determined);
            const double gap =
                horizontal.value - row.number("crank") - std::sqrt(radius * radius - drop * drop);
            QVERIFY2(std::abs(gap - row.number("straight_gap")) <= 0.051,
                     qPrintable(row.cells.join(u' ')));
        }
    }

    void shouldAgreeWithAGenericSolver()
    {
        Random random(3);
        for (int trial = 0; trial < 200; ++trial) {
            const GeometryTable table = printed(randomRun(1, random), tenColumns());
            TenColumns problem;
            for (const Entry& entry : table.sizes.front().entries)
                problem.rows.push_back(
                    {entry.column, entry.value + between(-4.0, 4.0, random), 0.5 + entry.step});
            Eigen::VectorXd x(problem.inputs());
            for (int i = 0; i < problem.inputs(); ++i)
                for (const Observation& row : problem.rows)
                    if (row.column == TenColumns::unknowns[static_cast<std::size_t>(i)])
                        x(i) = row.value;
            Eigen::NumericalDiff<TenColumns, Eigen::Central> differentiated(problem);
            Eigen::LevenbergMarquardt<decltype(differentiated)> solver(differentiated);
            solver.parameters.ftol = solver.parameters.xtol = 1e-15;
            solver.parameters.maxfev = 10000;
            solver.minimize(x);
            const TrueSize generic = TenColumns::sizeAt(x);
            const Adjustment ours = adjust(problem.rows, closureTable().ordinary);
            QVERIFY(ours.converged);
            QCOMPARE(ours.freedom, 3);
            for (const Column column : tenColumns()) {
                const double away = reckon(column, ours).value - generic.of(column);
                QVERIFY2(std::abs(away) < 1e-6, qPrintable(QString::number(away)));
            }
        }
    }

    // Whatever is typed, the figures stay finite.
    void shouldStayFiniteOnAnything()
    {
        Random random(6);
        const auto columns = columnsWithEquations();
        for (int trial = 0; trial < 2000; ++trial) {
            std::vector<Observation> rows;
            for (const Column column : columns)
                if (random() % 3)
                    rows.push_back({column, between(-2000.0, 3000.0, random), 0.3});
            const Adjustment adjusted = adjust(rows, closureTable().ordinary);
            for (const Column column : columns) {
                const Reckoned reckoned = reckon(column, adjusted);
                QVERIFY(std::isfinite(reckoned.value) && std::isfinite(reckoned.sd));
            }
        }
    }
};

QTEST_APPLESS_MAIN(TestEquations)
#include "tst_equations.moc"
