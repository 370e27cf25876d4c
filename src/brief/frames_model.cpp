// SPDX-License-Identifier: MIT
#include "brief/frames_model.h"

#include "document/frame_list.h"
#include "wording/entry_words.h"
#include "wording/words.h"

#include <algorithm>

namespace tripoise {
namespace {

QString nameOf(FrameNeed need)
{
    switch (need) {
    case FrameNeed::Name: return Words::tr("the size's name");
    case FrameNeed::Stack: return Words::tr("stack");
    case FrameNeed::Reach: return Words::tr("frame reach");
    case FrameNeed::HeadAngle: return Words::tr("head angle");
    case FrameNeed::SeatAngle: return Words::tr("seat angle or effective top tube");
    }
    return {};
}

QString needsText(const FrameSize& frame)
{
    QStringList names;
    for (const FrameNeed need : needsOf(frame))
        names << nameOf(need);
    return names.isEmpty() ? QString() : stillNeeded(names);
}

Fitting withFrame(Fitting fitting, std::size_t index, const FrameSize& frame)
{
    fitting = withFrameNamed(std::move(fitting), index, frame.model, frame.size);
    fitting.frames[index] = frame;
    return fitting;
}

} // namespace

void FramesModel::sessionSet()
{
    on(&Session::fittingChanged, this, &FramesModel::follow);
    on(&Session::speechChanged, [this] {
        for (FrameFields* fields : m_rows)
            fields->speakAgain();
        comment();
        emit summaryChanged();
    });
    follow();
    emit sessionChanged();
}

int FramesModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant FramesModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid))
        return {};
    FrameFields* fields = m_rows[std::size_t(index.row())];
    switch (role) {
    case FieldsRole: return QVariant::fromValue(fields);
    case Qt::DisplayRole:
    case TitleRole: return fields->title();
    case FiguresRole: return fields->figures();
    default: return {};
    }
}

QHash<int, QByteArray> FramesModel::roleNames() const
{
    return {{FieldsRole, "fields"}, {TitleRole, "title"}, {FiguresRole, "figures"}};
}

QString FramesModel::summary() const
{
    return framesSummary(fitting().frames);
}

FrameFields* FramesModel::fieldsAt(int row) const
{
    return row >= 0 && row < count() ? m_rows[std::size_t(row)] : nullptr;
}

int FramesModel::add()
{
    FrameSize frame;
    if (!m_rows.empty())
        frame.model = m_rows.back()->frame().model;
    return begin(frame);
}

int FramesModel::duplicate(int row)
{
    if (row < 0 || row >= count())
        return -1;
    FrameSize frame = m_rows[std::size_t(row)]->frame();
    frame.size.clear();
    return begin(frame);
}

int FramesModel::begin(const FrameSize& frame)
{
    if (!session() || m_rows.size() >= mostFrames)
        return -1;
    Fitting next = fitting();
    next.choices.unfinished.push_back(frame);
    edit(std::move(next), Words::tr("a size begun"));
    return count() - 1;
}

void FramesModel::remove(int row)
{
    if (row < 0 || row >= count())
        return;
    Fitting next = fitting();
    const auto at = std::size_t(row);
    if (at < next.frames.size())
        next = withoutFrame(std::move(next), at);
    else
        next.choices.unfinished.erase(next.choices.unfinished.begin()
                                      + std::ptrdiff_t(at - next.frames.size()));
    edit(std::move(next), Words::tr("%1 removed").arg(m_rows[at]->title()));
}

void FramesModel::insert(std::size_t row, const FrameSize& frame, bool entered)
{
    auto* fields = new FrameFields(
        frame, entered,
        [this](FrameFields& of, const FrameSize& next, const QString& what, const QString& key) {
            edited(of, next, what, key);
        },
        [this] { sealStep(); }, this);
    beginInsertRows({}, int(row), int(row));
    m_rows.insert(m_rows.begin() + std::ptrdiff_t(row), fields);
    endInsertRows();
    connect(fields, &FrameFields::changed, this, [this, fields] {
        const QModelIndex at = index(int(rowOf(*fields)));
        emit dataChanged(at, at, {TitleRole, FiguresRole, Qt::DisplayRole});
    });
    emit countChanged();
}

void FramesModel::drop(std::size_t row)
{
    beginRemoveRows({}, int(row), int(row));
    FrameFields* fields = m_rows[row];
    m_rows.erase(m_rows.begin() + std::ptrdiff_t(row));
    endRemoveRows();
    fields->disconnect(this);
    fields->deleteLater(); // it may be its own field that is speaking
    emit countChanged();
}

std::size_t FramesModel::rowOf(const FrameFields& fields) const
{
    return std::size_t(std::find(m_rows.begin(), m_rows.end(), &fields) - m_rows.begin());
}

QString FramesModel::keyOf(std::size_t row, const QString& key) const
{
    return key.isEmpty() ? QString() : QStringLiteral("frame %1 %2").arg(row).arg(key);
}

/// The rows at both ends that are as they were stay; between them rows are shown anew, and what is
/// too many or too few goes or comes.
void FramesModel::follow()
{
    const Fitting& fitting = this->fitting();
    const std::size_t entered = fitting.frames.size();
    const std::size_t after = entered + fitting.choices.unfinished.size();
    const std::size_t before = m_rows.size();
    const auto frameAt = [&](std::size_t row) -> const FrameSize& {
        return row < entered ? fitting.frames[row] : fitting.choices.unfinished[row - entered];
    };
    const auto stays = [&](std::size_t row, std::size_t to) {
        return m_rows[row]->frame() == frameAt(to) && m_rows[row]->entered() == (to < entered);
    };
    const std::size_t least = std::min(before, after);
    std::size_t head = 0;
    while (head < least && stays(head, head))
        ++head;
    std::size_t tail = 0;
    while (tail < least - head && stays(before - 1 - tail, after - 1 - tail))
        ++tail;
    const std::size_t shared = least - head - tail;
    for (std::size_t row = head; row < head + shared; ++row) {
        m_rows[row]->show(frameAt(row));
        m_rows[row]->setEntered(row < entered);
    }
    for (std::size_t row = before - tail; row-- > head + shared;)
        drop(row);
    for (std::size_t row = head + shared; row < after - tail; ++row)
        insert(row, frameAt(row), row < entered);
    for (FrameFields* fields : m_rows)
        fields->mount(fitting.bicycle);
    comment();
    emit summaryChanged();
}

void FramesModel::comment() const
{
    const auto& frames = fitting().frames;
    for (std::size_t row = 0; row < m_rows.size(); ++row) {
        const FrameSize& frame = m_rows[row]->frame();
        const bool taken = !frame.size.empty() && nameTaken(frames, row, frame.model, frame.size);
        QString note = needsText(frame);
        if (note.isEmpty() && wheelbaseContradicts(frame.geometry))
            note = frontCentreTooLong();
        m_rows[row]->say(taken ? nameTakenText(frame) : QString(), note);
    }
}

void FramesModel::edited(FrameFields& fields, const FrameSize& next, const QString& what,
                         const QString& key)
{
    if (fields.entered())
        editedEntered(fields, next, what, key);
    else
        editedDraft(fields, next, what, key);
}

void FramesModel::editedDraft(FrameFields& fields, const FrameSize& next, const QString& what,
                              const QString& key)
{
    Fitting fitting = this->fitting();
    const std::size_t row = rowOf(fields);
    const std::size_t to = fitting.frames.size();
    auto& unfinished = fitting.choices.unfinished;
    const auto own = unfinished.begin() + std::ptrdiff_t(row - to);
    if (!needsOf(next).empty() || nameTaken(fitting.frames, to, next.model, next.size)) {
        *own = next;
        edit(std::move(fitting), Words::tr("%1: %2", "size: what of it").arg(fields.title(), what),
             keyOf(row, key));
        comment();
        return;
    }
    // Behind those of the fitting, before the others that are still being typed.
    unfinished.erase(own);
    fitting.frames.push_back(next);
    unite(fitting);
    if (row != to) {
        beginMoveRows({}, int(row), int(row), {}, int(to));
        std::rotate(m_rows.begin() + std::ptrdiff_t(to), m_rows.begin() + std::ptrdiff_t(row),
                    m_rows.begin() + std::ptrdiff_t(row) + 1);
        endMoveRows();
    }
    fields.show(next);
    fields.setEntered(true);
    edit(std::move(fitting), Words::tr("%1 added").arg(fields.title()), keyOf(to, key));
}

void FramesModel::editedEntered(FrameFields& fields, const FrameSize& next, const QString& what,
                                const QString& key)
{
    const std::size_t row = rowOf(fields);
    const auto& frames = fitting().frames;
    const bool renamed = next.model != fields.frame().model || next.size != fields.frame().size;
    // What would leave the size without what it needs, or twice, is said and not done. A file may
    // have left it short already.
    if (needsOf(next).size() > needsOf(fields.frame()).size()) {
        fields.show(fields.frame());
        fields.say({}, needsText(next));
    } else if (renamed && nameTaken(frames, row, next.model, next.size)) {
        fields.say(nameTakenText(next), {});
    } else if (next == fields.frame()) {
        comment();
    } else {
        edit(withFrame(fitting(), row, next),
             Words::tr("%1: %2", "size: what of it").arg(fields.title(), what), keyOf(row, key));
    }
}

} // namespace tripoise
