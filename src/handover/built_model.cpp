// SPDX-License-Identifier: MIT
#include "handover/built_model.h"

#include "shipped/tables.h"
#include "wording/entry_words.h"
#include "wording/handover_words.h"

#include <QDate>

#include <array>

namespace tripoise {
namespace {

std::span<const EntryOf<AsBuilt>> entries()
{
    using A = AsBuilt;
    static const std::array list{entryFor("today_height", &A::saddleHeightMm),
                                 entryFor("today_nose", &A::noseSetbackMm),
                                 entryFor("today_below", &A::barBelowSaddleMm),
                                 entryFor("today_tape", &A::noseToBarMm),
                                 entryFor("built_stem", &A::stemMm),
                                 entryFor("built_stem_angle", &A::stemAngleDeg),
                                 entryFor("built_spacers", &A::spacersMm),
                                 entryFor("today_crank", &A::crankMm)};
    return list;
}

} // namespace

BuiltModel::BuiltModel(QObject* parent) : QObject(parent)
{
    m_form.emplace(
        entries(), this,
        [this](const EntryOf<AsBuilt>& entry, std::optional<double> value) {
            AsBuilt next = built();
            entry.write(next, value);
            put(next, builtStep(entryName(entry.key)),
                QStringLiteral("built ") + QLatin1String(entry.key));
        },
        [this] { sealStep(); }, Marked::AsTheBody);
}

void BuiltModel::sessionSet()
{
    on(&Session::fittingChanged, this, &BuiltModel::show);
    on(&Session::answerChanged, this, &BuiltModel::show);
    on(&Session::speechChanged, [this] {
        m_form->nameAgain();
        show();
    });
    show();
    emit sessionChanged();
}

/// Of the bicycle that was built, or that is about to be.
AsBuilt BuiltModel::built() const
{
    if (fitting().asBuilt || !session() || !session()->solution().advice.solved)
        return fitting().asBuilt.value_or(AsBuilt());
    AsBuilt built;
    const Solution& solution = session()->solution();
    if (const auto over = handedOver(fitting().choices, solution.fitting.riding, solution.advice,
                                     *solution.prepared, *solution.tables)) {
        const Candidate& candidate = solution.advice.candidates[over->candidate];
        const FrameSize& frame = solution.prepared->sizes[candidate.size].frame;
        built.model = frame.model;
        built.size = frame.size;
        built.date = QDate::currentDate().toString(Qt::ISODate).toStdString();
    }
    return built;
}

void BuiltModel::put(const AsBuilt& built, const QString& what, const QString& key)
{
    AsBuilt nothing;
    nothing.model = built.model;
    nothing.size = built.size;
    nothing.date = built.date;
    Fitting next = fitting();
    next.asBuilt = built == nothing ? std::nullopt : std::optional(built);
    if (built.size.empty() || next == fitting()) // nothing is decided, or it is as it was
        show();
    else
        edit(std::move(next), what, key);
}

void BuiltModel::setNotes(const QString& notes)
{
    AsBuilt next = built();
    next.notes = notes.trimmed().toStdString();
    put(next, builtNotesStep(), {});
}

void BuiltModel::clear()
{
    Fitting next = fitting();
    next.asBuilt.reset();
    edit(std::move(next), builtClearStep());
}

BuiltModel::Told BuiltModel::tell() const
{
    Told told;
    const AsBuilt is = built();
    told.ready = !is.size.empty();
    told.any = fitting().asBuilt.has_value();
    if (told.ready)
        told.of = builtOf(is);
    told.notes = QString::fromStdString(is.notes);
    if (!told.any || !session() || !session()->solution().advice.solved)
        return told;
    const Solution& solution = session()->solution();
    const auto built = finished(is, fitting().choices, solution.fitting.riding, solution.advice,
                                *solution.prepared, *solution.tables);
    if (!built) {
        told.summary = builtGone();
        return told;
    }
    for (const BuiltReading& reading : built->check->readings)
        (reading.off ? told.off : told.fine) << builtSentence(reading);
    told.effects = builtEffects(*built);
    told.summary = builtSummary(int(told.off.size()));
    return told;
}

void BuiltModel::show()
{
    m_form->show(fitting().asBuilt.value_or(AsBuilt()), shippedTables());
    Told told = tell();
    if (told == m_told)
        return;
    m_told = std::move(told);
    emit this->told();
}

} // namespace tripoise
