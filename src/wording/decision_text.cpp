// SPDX-License-Identifier: MIT
#include "wording/advice_text.h"

#include "wording/findings.h"
#include "wording/words.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace tripoise {
namespace {

constexpr qsizetype lineWidth = 98;
constexpr qsizetype labelWidth = 30;
constexpr qsizetype columnWidth = 30;

/// Text folded to the line width, every line after the first indented.
QString folded(const QString& text, const QString& first, const QString& rest)
{
    QString result;
    QString line = first;
    bool empty = true;
    for (const QString& word : text.split(QLatin1Char(' '))) {
        if (!empty && line.size() + 1 + word.size() > lineWidth) {
            result += line + QLatin1Char('\n');
            line = rest;
            empty = true;
        }
        line += (empty ? QString() : QStringLiteral(" ")) + word;
        empty = false;
    }
    return result + line + QLatin1Char('\n');
}

QString paragraph(const QString& text)
{
    return folded(text, {}, {});
}
QString item(const QString& text)
{
    return folded(text, QStringLiteral("  · "), QStringLiteral("    "));
}
QString heading(const QString& text)
{
    return QLatin1Char('\n') + text + QLatin1Char('\n');
}

struct Column {
    QString title;
    const AdvisedSetup* advised;
};

class DecisionWriter {
public:
    DecisionWriter(const Fitting& fitting, const Advice& advice, const Prepared& prepared)
        : m_fitting(fitting), m_advice(advice), m_prepared(prepared)
    {
    }

    QString write()
    {
        opening();
        if (!m_advice.solved) {
            limits();
            return m_text;
        }
        why();
        setups();
        uses();
        cranks();
        todaysBike();
        publishedRules();
        asked();
        limits();
        checks();
        cautions();
        return m_text;
    }

private:
    const FrameSize& frameOf(const Candidate& candidate) const
    {
        return m_prepared.sizes[candidate.size].frame;
    }
    QString sizeOf(const Candidate& candidate) const
    {
        return sizeName(frameOf(candidate), m_prepared);
    }
    const Candidate& named() const { return m_advice.candidates[m_advice.verdict.named]; }

    void items(const QStringList& sentences)
    {
        for (const QString& sentence : sentences)
            m_text += item(sentence);
    }

    void opening()
    {
        const QString label = QString::fromStdString(m_fitting.rider.label);
        const QString mix = nameOf(m_fitting.riding.mix);
        m_text += paragraph(label.isEmpty() ? Words::tr("For %1.").arg(mix)
                                            : Words::tr("%1: %2.").arg(label, mix));
        m_text +=
            QLatin1Char('\n') + paragraph(verdictSentence(m_advice, m_prepared, m_fitting.riding));
    }

    void why()
    {
        const Verdict& verdict = m_advice.verdict;
        const QStringList reasons = reasonSentences(m_advice, m_prepared);
        if (!verdict.other) {
            m_text += heading(Words::tr("How it sits"));
            items(reasons);
            return;
        }
        const QString size = sizeOf(named());
        if (!reasons.isEmpty()) {
            m_text += heading(verdict.kind == VerdictKind::Either
                                  ? Words::tr("What little speaks for %1").arg(size)
                                  : Words::tr("Why %1").arg(size));
            items(reasons);
        }
        const QStringList givenUp = givenUpSentences(m_advice, m_prepared);
        if (!givenUp.isEmpty()) {
            m_text += heading(Words::tr("What you give up"));
            items(givenUp);
        }
        m_text += heading(Words::tr("To see it"));
        m_text += item(contrastSentence(m_advice, m_prepared));
        tilts();
    }

    void tilts()
    {
        QStringList sentences;
        for (const Tilt& tilt : m_advice.verdict.tilts) {
            const QString towards = sizeOf(m_advice.candidates[tilt.towards]);
            const QString what = nameOf(tilt.consideration);
            sentences << (tilt.factor > 1.0
                              ? Words::tr("If %1 mattered twice as much, it would be %2.")
                              : Words::tr("If %1 mattered half as much, it would be %2."))
                             .arg(what, towards);
        }
        if (sentences.isEmpty())
            return;
        m_text += heading(Words::tr("What would change it"));
        items(sentences);
    }

    void row(const QString& label, const std::vector<Column>& columns,
             const std::function<QString(const AdvisedSetup&)>& cell)
    {
        QString line = QStringLiteral("  ") + label.leftJustified(labelWidth);
        for (const Column& column : columns)
            line += cell(*column.advised).leftJustified(columnWidth);
        m_text += line.trimmed().prepend(QStringLiteral("  ")) + QLatin1Char('\n');
    }

    void setupTable(const std::vector<Column>& columns)
    {
        QString titles(labelWidth + 2, QLatin1Char(' '));
        for (const Column& column : columns)
            titles += column.title.leftJustified(columnWidth);
        while (titles.endsWith(QLatin1Char(' ')))
            titles.chop(1);
        m_text += titles + QLatin1Char('\n');
        row(Words::tr("saddle height, BB to top"), columns,
            [](const AdvisedSetup& a) { return mm(a.setup.saddle.heightMm); });
        row(Words::tr("saddle setback, behind BB"), columns,
            [](const AdvisedSetup& a) { return mm(a.setup.saddle.setbackMm()); });
        row(Words::tr("saddle nose, behind BB"), columns, [this](const AdvisedSetup& a) {
            return mm(a.setup.saddle.setbackMm() - m_advice.saddleNoseAheadMm);
        });
        row(Words::tr("stem"), columns,
            [](const AdvisedSetup& a) { return stemName(a.setup.stem, a.setup.cockpit.flipped); });
        row(Words::tr("spacers under it"), columns,
            [](const AdvisedSetup& a) { return halfMm(a.setup.cockpit.spacersMm); });
        row(Words::tr("bar"), columns, [this](const AdvisedSetup& a) {
            return barName(m_prepared.stock.bars[a.setup.cockpit.bar]);
        });
        row(Words::tr("cranks"), columns,
            [](const AdvisedSetup& a) { return halfMm(a.setup.crankMm); });
        row(Words::tr("grip from BB, ahead and up"), columns, [](const AdvisedSetup& a) {
            return Words::tr("%1, %2").arg(mm(a.setup.grip.x()), mm(a.setup.grip.y()));
        });
        row(Words::tr("bar below saddle"), columns, [](const AdvisedSetup& a) {
            return mm(a.setup.saddle.point().y() - a.setup.grip.y());
        });
        row(Words::tr("steerer, crown to top"), columns,
            [](const AdvisedSetup& a) { return mm(a.setup.steererCutMm); });
        row(Words::tr("knee, lowest pedal"), columns, [](const AdvisedSetup& a) {
            return Words::tr("%1 riding, %2 foot level")
                .arg(degrees(a.leg.kneeBottom.deg()), degrees(a.leg.kneeBottomFootLevel.deg()));
        });
    }

    static QString backCell(const UsePosture& use)
    {
        return Words::tr("%1 (%2 is comfortable)")
            .arg(degrees(use.posture.trunk.deg()),
                 range(use.windows.trunk.low().deg(), use.windows.trunk.high().deg()));
    }

    void setups()
    {
        std::vector<Column> columns;
        for (const Candidate& candidate : m_advice.candidates)
            if (candidate.best && columns.size() < 2)
                columns.push_back({sizeOf(candidate), &*candidate.best});
        m_text += heading(Words::tr("Set it up"));
        setupTable(columns);
        for (std::size_t i = 0; i < named().best->uses.size(); ++i)
            row(Words::tr("back, %1").arg(nameOf(named().best->uses[i].use)), columns,
                [i](const AdvisedSetup& a) { return backCell(a.uses[i]); });
    }

    /// The stem question: one frame, a column a use.
    void uses()
    {
        const std::vector<UseSetup>& byUse = named().byUse;
        if (byUse.size() < 2)
            return;
        std::vector<UseSetup> shown = byUse;
        std::stable_sort(shown.begin(), shown.end(), [this](const UseSetup& a, const UseSetup& b) {
            return m_fitting.riding.mix.of(a.use) > m_fitting.riding.mix.of(b.use);
        });
        shown.resize(2);
        std::vector<Column> columns;
        for (const UseSetup& use : shown)
            columns.push_back({Words::tr("only %1").arg(nameOf(use.use)), &use.advised});
        m_text += heading(Words::tr("One kind of riding at a time, on %1").arg(sizeOf(named())));
        setupTable(columns);
        row(Words::tr("back"), columns,
            [](const AdvisedSetup& a) { return backCell(a.uses.front()); });
        const Point apart = shown[1].advised.setup.grip - shown[0].advised.setup.grip;
        const QString across = apart.x() < 0.0 ? Words::tr("%1 nearer") : Words::tr("%1 further");
        const QString up = apart.y() < 0.0 ? Words::tr("%1 lower") : Words::tr("%1 higher");
        m_text += item(Words::tr("At the hand, %1 is %2 and %3 than %4.")
                           .arg(nameOf(shown[1].use), across.arg(mm(std::abs(apart.x()))),
                                up.arg(mm(std::abs(apart.y()))), nameOf(shown[0].use)));
    }

    void cranks()
    {
        if (m_advice.otherCranks.empty())
            return;
        const AdvisedSetup& advised = *named().best;
        m_text += heading(Words::tr("Other cranks, against %1").arg(halfMm(advised.setup.crankMm)));
        for (const CrankChoice& other : m_advice.otherCranks) {
            const double leverage = 100.0 * (other.leverage - 1.0);
            const double hip = other.leg.hipTop.deg() - advised.leg.hipTop.deg();
            m_text +=
                item(Words::tr("%1: %2 % leverage, hip %3° at the top, toe %4 %5 the front wheel.")
                         .arg(halfMm(other.crankMm), signedPlain(leverage, 0), signedPlain(hip, 1),
                              halfMm(std::abs(other.toeRoomMm)),
                              other.toeRoomMm > 0.0 ? Words::tr("further from")
                                                    : Words::tr("nearer to")));
        }
    }

    void todaysBike()
    {
        const auto& today = m_fitting.current;
        if (!today)
            return;
        const Setup& setup = named().best->setup;
        QStringList moved;
        const auto tell = [&moved](const QString& what, double now,
                                   const std::optional<double>& then, const QString& more,
                                   const QString& less) {
            if (then && std::abs(now - *then) >= 1.0)
                moved << Words::tr("%1 %2 %3")
                             .arg(what, mm(std::abs(now - *then)), now > *then ? more : less);
        };
        tell(Words::tr("saddle"), setup.saddle.heightMm, today->saddleHeightMm, Words::tr("higher"),
             Words::tr("lower"));
        tell(Words::tr("saddle"), setup.saddle.setbackMm(), today->saddleSetbackMm,
             Words::tr("further back"), Words::tr("further forward"));
        tell(Words::tr("grips"), setup.grip.y(), today->gripHeightMm, Words::tr("higher"),
             Words::tr("lower"));
        tell(Words::tr("grips"), setup.grip.x(), today->gripReachMm, Words::tr("further away"),
             Words::tr("nearer"));
        if (moved.isEmpty())
            return;
        m_text += heading(Words::tr("Against the bike ridden today"));
        items(moved);
    }

    void publishedRules()
    {
        QStringList rules;
        for (const PublishedHeight& published : m_advice.publishedHeights)
            rules << Words::tr("%1 %2").arg(QString::fromStdString(published.name),
                                            mm(published.heightMm));
        m_text += heading(Words::tr("Saddle height by the published rules"));
        m_text +=
            item(Words::tr(
                     "%1; here %2. The rules know the inseam alone, or clipless shoes; here thigh, "
                     "shank, foot, shoe, pedal and crank count as well, so a centimetre apart is "
                     "ordinary.")
                     .arg(rules.join(Words::tr(", ", "between items of a list")),
                          mm(m_advice.target.saddle.heightMm)));
    }

    void asked()
    {
        const FrameAsked& asked = m_advice.asked;
        m_text += heading(Words::tr("The frame this rider asks for"));
        m_text +=
            item(Words::tr("Stack %1 mm and reach %2 mm, on up to %3 of spacers and the stems "
                           "usual for this riding.")
                     .arg(range(asked.stackMm.low, asked.stackMm.high),
                          range(asked.reachMm.low, asked.reachMm.high), mm(30.0)));
        if (const auto& part = m_advice.part)
            m_text += item(Words::tr("Worth buying: a %1 stem of %2. It brings the hands %3 nearer "
                                     "to their best place than anything in the box.")
                               .arg(mm(part->stem.lengthMm), degrees(part->stem.angle.deg()),
                                    mm(part->nearerMm)));
    }

    void limits()
    {
        for (const Candidate& candidate : m_advice.candidates) {
            if (candidate.limits.empty())
                continue;
            m_text += heading(Words::tr("What breaks on %1").arg(sizeOf(candidate)));
            for (const Finding& finding : candidate.limits)
                m_text += item(sentence(finding));
        }
    }

    void checks()
    {
        QStringList sentences;
        for (const Finding& finding : m_advice.riderFindings)
            sentences << sentence(finding);
        for (const Finding& finding : named().findings)
            sentences << sentence(finding);
        sentences.removeDuplicates();
        m_text += heading(Words::tr("Look at these"));
        items(sentences);
    }

    void cautions()
    {
        m_text += QLatin1Char('\n');
        m_text += paragraph(Words::tr(
            "A starting position, not a prescription: change one thing at a time by 5 mm or "
            "less, ride, adjust. Pain or numbness belongs with a health professional. Makers' "
            "limits and instructions rule over this advice, local regulations over both. "
            "After any change at the bar: hoses at full lock, torque, brakes, a loaded test "
            "ride."));
    }

    const Fitting& m_fitting;
    const Advice& m_advice;
    const Prepared& m_prepared;
    QString m_text;
};

} // namespace

QString decisionText(const Fitting& fitting, const Advice& advice, const Prepared& prepared)
{
    return DecisionWriter(fitting, advice, prepared).write();
}

} // namespace tripoise
