// SPDX-License-Identifier: MIT
//
// What several tests need: the constant tables as shipped, text files, published values.
#pragma once

#include "document/read.h"
#include "posture/leg.h"
#include "posture/upper_body.h"

#include <QFile>
#include <QString>
#include <QStringList>

#include <array>
#include <cstdlib>
#include <stdexcept>

namespace tripoise::test {

inline std::string textOf(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        throw std::runtime_error("cannot read " + path.toStdString());
    return file.readAll().toStdString();
}

inline const Tables& tables()
{
    static const Tables loaded = [] {
        const auto text = [](const char* name) {
            return textOf(QStringLiteral(TRIPOISE_ASSETS "/%1.json").arg(QLatin1String(name)));
        };
        const std::array texts{text("anthropometry"), text("tape"),    text("body"),
                               text("comfort"),       text("parts"),   text("weights"),
                               text("segments"),      text("handling")};
        auto read = readTables(
            {texts[0], texts[1], texts[2], texts[3], texts[4], texts[5], texts[6], texts[7]});
        if (auto* problems = std::get_if<Problems>(&read))
            throw std::runtime_error("constant tables: " + problems->front().path);
        return std::get<Tables>(std::move(read));
    }();
    return loaded;
}

/// What is on a size's own wheels.
inline Mounting& mountingOn(FrameSize& frame)
{
    return frame.mounting ? *frame.mounting : frame.mounting.emplace();
}

/// Rows of a published table under tests/reference: by column name, comments and heading apart.
struct ReferenceRow {
    QStringList headings;
    QStringList cells;

    [[nodiscard]] QString text(const char* column) const
    {
        const auto i = headings.indexOf(QLatin1String(column));
        if (i < 0)
            throw std::runtime_error(std::string("no column ") + column);
        return cells.value(i);
    }
    [[nodiscard]] double number(const char* column) const
    {
        bool ok = false;
        const double value = text(column).toDouble(&ok);
        if (!ok)
            throw std::runtime_error(std::string("no number in column ") + column);
        return value;
    }
};

/// A demo fitting by its file's name.
inline Fitting demoFitting(const char* name = "between-two-sizes")
{
    return std::get<Fitting>(readFitting(
        textOf(QStringLiteral(TRIPOISE_ASSETS "/demo/%1.json").arg(QLatin1String(name))),
        tables()));
}

inline QList<ReferenceRow> reference(const char* file)
{
    const QString text = QString::fromStdString(
        textOf(QStringLiteral(TRIPOISE_REFERENCE "/%1").arg(QLatin1String(file))));
    QList<ReferenceRow> rows;
    QStringList headings;
    for (const QString& line : text.split(QLatin1Char('\n'))) {
        if (line.isEmpty() || line.startsWith(QLatin1Char('#')))
            continue;
        const QStringList cells = line.split(QLatin1Char(','));
        if (headings.isEmpty())
            headings = cells;
        else
            rows.append({headings, cells});
    }
    return rows;
}

/// The most probable body of someone of whom a few things are known.
inline Body bodyOf(Sex sex, const std::vector<Measurement>& measurements)
{
    return bodyFrom(infer(measurements, sex, tables().populations, tables().tape).mean,
                    tables().body);
}
inline Body averageMan()
{
    return bodyOf(Sex::Male, {{Quantity::Stature, {1756.0}, {}}, {Quantity::Inseam, {846.0}, {}}});
}
inline Body averageWoman()
{
    return bodyOf(Sex::Female,
                  {{Quantity::Stature, {1629.0}, {}}, {Quantity::Inseam, {782.0}, {}}});
}

/// The foot of the calibration: sole and pedal 30, heel level.
inline Foothold calibrationFoothold()
{
    return {30.0, tables().comfort.pitchBottom, tables().comfort.pitchForward};
}

} // namespace tripoise::test
