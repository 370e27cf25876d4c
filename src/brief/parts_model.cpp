// SPDX-License-Identifier: MIT
#include "brief/parts_model.h"

#include "brief/keys.h"
#include "brief/part_lines.h"
#include "document/fitting.h"
#include "shipped/tables.h"
#include "text/encoding.h"
#include "wording/words.h"

namespace tripoise {

QHash<int, QByteArray> PartsModel::roleNames() const
{
    return {{TextRole, "text"}, {ClampsRole, "clamps"}, {NoteRole, "note"}, {TickedRole, "ticked"}};
}

namespace {

template <typename List> class PartsModelOf : public PartLines<List> {
    using Lines = PartLines<List>;
    using Lines::benchChanged;
    using Lines::dataChanged;
    using Lines::fieldsChanged;
    using Lines::index;
    using Lines::lineAt;
    using Lines::lineCount;
    using Lines::m_bench;
    using Lines::m_lines;
    using Lines::moveLines;
    using Lines::placeChanged;
    using Lines::removedChanged;
    using typename Lines::Line;
    using typename Lines::Part;

public:
    using Lines::Lines;

    void setTicked(int row, bool ticked) override
    {
        const Line* line = lineAt(row);
        if (!line || line->ticked == ticked)
            return;
        tick([&](std::size_t at) { return at == std::size_t(row) ? ticked : m_lines[at].ticked; },
             ticked ? Words::tr("%1 ticked in").arg(textOf(line->part))
                    : Words::tr("%1 ticked out").arg(textOf(line->part)));
    }

    void setOnly(int row) override
    {
        const Line* line = lineAt(row);
        if (!line)
            return;
        const bool already = line->ticked && this->tickedCount() == 1;
        tick([&](std::size_t at) { return already || at == std::size_t(row); },
             already ? Words::tr("all ticked in") : Words::tr("%1 alone").arg(textOf(line->part)));
    }

    void remove(int row) override
    {
        const Line* line = lineAt(row);
        if (!line)
            return;
        const Line gone = *line;
        if (benchRow() == row)
            clearBench();
        Stock shop = m_bench.shop();
        if (shopCount(gone.part) >= lineCount(gone.part))
            shop = withoutPart<List>(std::move(shop), gone.part);
        Stock fitting = m_bench.fitting();
        if (inFitting(gone))
            fitting = withoutPart<List>(std::move(fitting), gone.part);
        m_removed = gone;
        m_left = countIn<List>(fitting, gone.part);
        m_bench.put(std::move(fitting), std::move(shop),
                    Words::tr("%1 removed").arg(textOf(gone.part)), {});
        emit removedChanged();
    }

    void putBack() override
    {
        if (!m_removed)
            return;
        const Line line = *std::exchange(m_removed, std::nullopt);
        Stock fitting = m_bench.fitting();
        if (line.ticked)
            fitting = withPart<List>(std::move(fitting), line.part);
        m_bench.put(std::move(fitting), withPart<List>(m_bench.shop(), asInStock(line.part)),
                    Words::tr("%1 put back").arg(textOf(line.part)), {});
        emit removedChanged();
    }

    void edit(int row) override
    {
        const Line* line = lineAt(row);
        if (!line)
            return;
        m_adding = false;
        layOut(line->part);
    }
    void add() override
    {
        m_adding = true;
        layOut(nextAfter(m_lines.empty() ? Part{} : m_lines.back().part));
    }
    void putIn() override
    {
        if (!m_adding || !complete())
            return;
        const Part part = *m_onBench;
        m_bench.put(withPart<List>(m_bench.fitting(), part), withPart<List>(m_bench.shop(), part),
                    Words::tr("%1 added").arg(textOf(part)), {});
        layOut(nextAfter(part));
    }
    void clearBench() override
    {
        m_adding = false;
        m_onBench.reset();
        rebuildForm();
        emit benchChanged();
    }

    void setPartName(const QString& name) override
    {
        if constexpr (std::is_same_v<Part, Bar>) {
            if (!m_onBench)
                return;
            Bar next = *m_onBench;
            next.name = cutToBytes(name.simplified().toStdString(), longestName);
            change(next, {});
        }
    }
    void setBarKind(const QString& kind) override
    {
        if constexpr (std::is_same_v<Part, Bar>) {
            const auto value = barKindFrom(kind);
            if (!m_onBench || !value || *value == m_onBench->kind)
                return;
            Bar next; // what another kind measures is not this one's
            next.name = m_onBench->name;
            next.kind = *value;
            next.widthMm = m_onBench->widthMm;
            next.barClampMm = m_onBench->barClampMm;
            change(next, {});
            rebuildForm();
        }
    }
    void setReversible(bool reversible) override
    {
        if constexpr (std::is_same_v<Part, Stem>) {
            if (!m_onBench)
                return;
            Stem next = *m_onBench;
            next.reversible = reversible;
            change(next, {});
        }
    }

    int benchRow() const override
    {
        if (!m_onBench || m_adding)
            return -1;
        for (std::size_t row = 0; row < m_lines.size(); ++row)
            if (samePart(m_lines[row].part, *m_onBench))
                return int(row);
        return -1;
    }
    bool adding() const override { return m_adding; }
    bool complete() const override
    {
        if (!m_onBench)
            return false;
        for (const auto& entry : entriesOf(List(), *m_onBench))
            if (entry.facts.needed && !entry.read(*m_onBench))
                return false;
        return true;
    }
    QString partName() const override
    {
        if constexpr (std::is_same_v<Part, Bar>)
            return m_onBench ? QString::fromStdString(m_onBench->name) : QString();
        else
            return {};
    }
    QString barKind() const override
    {
        if constexpr (std::is_same_v<Part, Bar>)
            return m_onBench ? keyOf(m_onBench->kind) : QString();
        else
            return {};
    }
    bool reversible() const override
    {
        if constexpr (std::is_same_v<Part, Stem>)
            return m_onBench && m_onBench->reversible;
        else
            return false;
    }
    QList<QObject*> fields() const override
    {
        return m_form ? m_form->fields() : QList<QObject*>();
    }
    QString removedText() const override { return m_removed ? textOf(m_removed->part) : QString(); }

    void follow() override
    {
        // Undone: what was removed is in the fitting again, and so in the shop's box.
        if (m_removed && countIn<List>(m_bench.fitting(), m_removed->part) > m_left) {
            const Line line = *std::exchange(m_removed, std::nullopt);
            emit removedChanged();
            m_bench.put(m_bench.fitting(), withPart<List>(m_bench.shop(), asInStock(line.part)), {},
                        {});
            return; // which follows again
        }
        moveLines(linesOf<List>(m_bench.fitting(), m_bench.shop()));
        if (m_onBench && !m_adding && benchRow() < 0)
            clearBench(); // undone, or another fitting
    }
    void speakAgain() override
    {
        if (m_form) {
            m_form->nameAgain();
            m_form->show(*m_onBench, shippedTables());
        }
        if (!m_lines.empty())
            emit dataChanged(index(0), index(int(m_lines.size()) - 1));
        emit removedChanged();
    }

private:
    /// Each line as it is wanted, in one step.
    template <typename Wanted> void tick(const Wanted& wanted, const QString& what)
    {
        Stock shop = m_bench.shop();
        Stock fitting = m_bench.fitting();
        for (std::size_t at = 0; at < m_lines.size(); ++at) {
            const Line& line = m_lines[at];
            if (line.ticked == wanted(at))
                continue;
            for (auto n = countIn<List>(shop, line.part); n < lineCount(line.part); ++n)
                shop = withPart<List>(std::move(shop), asInStock(line.part)); // stays in sight
            fitting = withTick<List>(fitting, line, wanted(at));
        }
        m_bench.put(std::move(fitting), std::move(shop), what, {});
    }
    static Part asInStock(Part part)
    {
        if constexpr (std::is_same_v<Part, Stem>)
            part.inStock = true;
        return part;
    }
    std::size_t shopCount(const Part& part) const { return countIn<List>(m_bench.shop(), part); }
    /// A stem that is ticked out stays in the fitting; other parts leave it.
    bool inFitting(const Line& line) const
    {
        if constexpr (std::is_same_v<Part, Stem>)
            return holds<List>(m_bench.fitting(), line.part);
        else
            return line.ticked && holds<List>(m_bench.fitting(), line.part);
    }

    void layOut(const Part& part)
    {
        const bool sameForm =
            m_form && m_onBench
            && entriesOf(List(), part).data() == entriesOf(List(), *m_onBench).data();
        m_onBench = part;
        if (sameForm) // the keys stay where they are
            m_form->show(part, shippedTables());
        else
            rebuildForm();
        emit benchChanged();
    }
    void rebuildForm()
    {
        if (m_formOwner)
            m_formOwner.release()->deleteLater(); // its field may be the one that speaks
        m_form.reset();
        if (m_onBench) {
            m_formOwner = std::make_unique<QObject>();
            m_form.emplace(
                entriesOf(List(), *m_onBench), m_formOwner.get(),
                [this](const EntryOf<Part>& entry, std::optional<double> value) {
                    Part next = *m_onBench;
                    entry.write(next, value);
                    change(next, QString::fromLatin1(entry.key));
                },
                m_bench.seal);
            m_form->show(*m_onBench, shippedTables());
        }
        emit fieldsChanged();
    }

    /// The part on the bench becomes another; in the box too, when it came from there.
    void change(const Part& next, const QString& key)
    {
        const Part before = *m_onBench;
        const int row = benchRow();
        if (samePart(before, next))
            return;
        if (row >= 0) {
            const Line line = m_lines[std::size_t(row)];
            m_onBench = next;
            placeChanged(std::size_t(row), next);
            Stock fitting = m_bench.fitting();
            if (inFitting(line)) {
                Part inPlace = next;
                if constexpr (std::is_same_v<Part, Stem>)
                    inPlace.inStock = line.ticked;
                fitting = withPartChanged<List>(std::move(fitting), before, inPlace);
            }
            Stock shop = m_bench.shop();
            shop = shopCount(before) > 0
                       ? withPartChanged<List>(std::move(shop), before, asInStock(next))
                       : withPart<List>(std::move(shop), asInStock(next));
            m_bench.put(std::move(fitting), std::move(shop), stepName(List()),
                        key.isEmpty() ? QString() : QStringLiteral("box ") + key);
        } else {
            m_onBench = next;
        }
        if (m_form)
            m_form->show(next, shippedTables());
        emit benchChanged();
    }

    std::optional<Line> m_removed;
    std::size_t m_left = 0; ///< of such parts in the fitting, after it was removed
    bool m_adding = false;
    std::optional<Part> m_onBench;
    std::unique_ptr<QObject> m_formOwner;
    std::optional<FormOf<Part>> m_form;
};

} // namespace

template <typename List> std::unique_ptr<PartsModel> makeParts(PartsModel::Bench bench)
{
    return std::make_unique<PartsModelOf<List>>(std::move(bench));
}
template std::unique_ptr<PartsModel> makeParts<Stems>(PartsModel::Bench);
template std::unique_ptr<PartsModel> makeParts<Bars>(PartsModel::Bench);
template std::unique_ptr<PartsModel> makeParts<Spacers>(PartsModel::Bench);
template std::unique_ptr<PartsModel> makeParts<Cranks>(PartsModel::Bench);

} // namespace tripoise
