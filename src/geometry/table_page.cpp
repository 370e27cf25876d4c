// SPDX-License-Identifier: MIT
#include "geometry/table_page.h"

#include "document/frame_list.h"
#include "frame/candidates.h"
#include "session/library.h"
#include "session/store.h"
#include "shipped/tables.h"
#include "table/markup.h"
#include "text/encoding.h"
#include "wording/table_page_words.h"
#include "wording/table_words.h"

#include <QClipboard>
#include <QFileInfo>
#include <QGuiApplication>
#include <QMimeData>

#include <algorithm>

namespace tripoise {
namespace {

/// A field of text with more in it than this is slow to lay out.
constexpr qsizetype mostShown = 60'000;

const QString leaveOut = QStringLiteral("leave out");

/// What the clipboard holds. Browsers and spreadsheets put the cells as they are laid out beside
/// the plain text. Nothing in them is opened.
PageOrder clipboard()
{
    PageOrder order;
    order.readableOnly = true;
    const QMimeData* data = QGuiApplication::clipboard()->mimeData();
    if (!data)
        return order;
    if (const QString page = data->hasHtml() ? data->html() : QString();
        page.contains(QStringLiteral("<table"), Qt::CaseInsensitive)
        || page.contains(QStringLiteral("<div"), Qt::CaseInsensitive))
        order.page = page.toStdString();
    order.plain = data->text().toStdString();
    return order;
}

} // namespace

TablePage::TablePage(QObject* parent)
    : QObject(parent), m_reader([this](quint64 number, PageRead read) {
          QMetaObject::invokeMethod(
              this,
              [this, number, answer = std::move(read)]() mutable {
                  arrived(number, std::move(answer));
              },
              Qt::QueuedConnection);
      })
{
}

void TablePage::sessionSet()
{
    on(&Session::speechChanged, [this] {
        m_said.clear();
        show();
    });
    emit sessionChanged();
}

void TablePage::setText(const QString& text)
{
    std::string next = text.toStdString();
    if (next != m_work.text || reading())
        put(std::move(next));
}

void TablePage::put(std::string text)
{
    TableWork work = m_work;
    work.text = std::move(text);
    TableAnswer answer = workedOut(work);
    put(std::move(work), std::move(answer));
}

void TablePage::put(TableWork work, TableAnswer answer)
{
    letGo();
    const QString whole = QString::fromStdString(work.text);
    m_work = std::move(work);
    m_answer = std::move(answer);
    m_shownText = whole.left(mostShown);
    m_wholeShown = whole.size() <= mostShown;
    m_said.clear();
    show();
    emit textChanged();
}

/// Another table: what was said of the one before does not hold for it.
void TablePage::take(std::string text)
{
    m_work = {};
    put(std::move(text));
    emit taken();
}

/// A newer order takes the place of an older one.
void TablePage::read(PageOrder order)
{
    m_reading = m_reader.ask(std::move(order));
    m_said.clear();
    emit changed();
}

void TablePage::arrived(quint64 number, PageRead read)
{
    if (number != m_reading)
        return;
    if (!read.offered || read.answer.read.readable()) {
        put(std::move(read.work), std::move(read.answer));
    } else {
        letGo();
        emit changed();
    }
    if (read.isNew)
        emit taken();
}

void TablePage::letGo()
{
    if (std::exchange(m_reading, 0) != 0)
        m_reader.letGo();
}

bool TablePage::pasteLong(int from, int to, bool selected)
{
    PageOrder order = selected ? PageOrder() : clipboard();
    const QString plain = selected ? QGuiApplication::clipboard()->text(QClipboard::Selection)
                                   : QString::fromStdString(order.plain);
    const QString now = QString::fromStdString(m_work.text);
    if (order.page.empty() && now.size() - (to - from) + plain.size() <= mostShown)
        return false;
    if (order.page.empty()) {
        setText(now.left(from) + plain + now.mid(to));
        return true;
    }
    order.work = m_work;
    order.before = now.left(from).toStdString();
    order.behind = now.mid(to).toStdString();
    read(std::move(order));
    return true;
}

void TablePage::paste()
{
    PageOrder order = clipboard();
    if (!order.page.empty())
        read(std::move(order));
    else if (order.plain.empty())
        say(tr("There is no text in the clipboard."));
    else
        take(std::move(order.plain));
}

void TablePage::offerClipboard()
{
    if (!m_work.text.empty())
        return;
    PageOrder order = clipboard();
    order.offered = true;
    if (!order.page.empty())
        read(std::move(order));
    else if (order.plain.size() <= mostTableBytes
             && readGeometryTable(order.plain, shippedHeadings()).readable())
        take(std::move(order.plain));
}

void TablePage::openFile(const QUrl& file)
{
    if (!file.isLocalFile()) {
        say(tr("%1 is not a file on this computer.").arg(file.toDisplayString()));
        return;
    }
    const QString path = file.toLocalFile();
    const QString name = QFileInfo(path).fileName();
    const store::Read opened = store::read(path);
    if (opened.tooLarge)
        say(tr("%1 was not opened: it is too large to be a geometry table.").arg(name));
    else if (!opened.failure.isEmpty())
        say(tr("%1 was not opened: %2.").arg(name, opened.failure));
    else if (auto text = decoded({opened.bytes.constData(), std::size_t(opened.bytes.size())}))
        openText(std::move(*text));
    else
        say(tr("%1 was not opened: it holds no text.").arg(name));
}

void TablePage::openText(std::string text)
{
    if (!table::looksLikeMarkup(text))
        return take(std::move(text));
    PageOrder order;
    order.plain = text;
    order.page = std::move(text);
    read(std::move(order));
}

void TablePage::clear()
{
    take({});
}

void TablePage::workOut()
{
    m_answer = workedOut(m_work);
    m_said.clear();
    show();
}

void TablePage::show()
{
    m_lines.show(readable() ? tableLines(m_answer, m_work.ofChosen().asHeaded)
                            : std::vector<TableLine>(),
                 m_answer.read.sizes);
    std::vector<TableSizeRow> sizes;
    for (std::size_t i = 0; readable() && i < m_answer.closed.sizes.size(); ++i) {
        const ClosedSize& size = m_answer.closed.sizes[i];
        const bool able = frameOf(m_answer.geometry, m_answer.closed, i).has_value();
        sizes.push_back({QString::fromStdString(size.size), able,
                         able && !m_work.ofChosen().unticked.contains(size.size),
                         whyNoCandidate(size)});
    }
    m_sizes.show(std::move(sizes));
    m_notes.show(m_work.text.empty() ? std::vector<TableNote>()
                                     : tableNotes(m_answer, m_work.ofChosen().asHeaded));
    emit changed();
}

void TablePage::say(const QString& what)
{
    m_said = what;
    emit changed();
}

QString TablePage::modelName() const
{
    const auto& own = m_work.ofChosen().model;
    if (own || m_answer.models.size() < 2)
        return QString::fromStdString(own ? *own : m_answer.read.model.value_or(""));
    // Two of one name would take each other's place.
    return tableName(m_answer.models, m_work.chosen);
}

void TablePage::setModelName(const QString& name)
{
    if (name.simplified() == modelName())
        return;
    m_work.ofChosen().model = name.simplified().toStdString();
    emit changed();
}

QVariantList TablePage::models() const
{
    QVariantList list;
    for (std::size_t i = 0; i < m_answer.models.size() && m_answer.models.size() > 1; ++i)
        list << QVariantMap{{QStringLiteral("text"), tableName(m_answer.models, i)},
                            {QStringLiteral("value"), int(i)}};
    return list;
}

void TablePage::choose(int model)
{
    if (model < 0 || std::size_t(model) >= m_answer.models.size() || reading())
        return;
    m_work.chosen = std::size_t(model);
    workOut();
}

QString TablePage::summary() const
{
    return reading() ? tr("The table is being read…") : tableSummary(m_answer.read);
}

QVariantList TablePage::meanings(int line) const
{
    QVariantList list;
    const auto add = [&list](const QString& text, const QString& key) {
        list << QVariantMap{{QStringLiteral("text"), text}, {QStringLiteral("key"), key}};
    };
    if (line < 0 || line >= m_lines.count())
        return list;
    if (m_lines.lines()[std::size_t(line)].assigned)
        add(asHeadedText(), {});
    add(leaveOutText(), leaveOut);
    for (std::size_t i = 0; i < columnCount; ++i)
        if (const auto column = static_cast<Column>(i); !isSetAside(column))
            add(nameOf(column),
                QString::fromLatin1(keyOf(column).data(), qsizetype(keyOf(column).size())));
    return list;
}

void TablePage::assign(int line, const QString& key)
{
    if (line < 0 || line >= m_lines.count() || reading())
        return;
    const auto index = m_lines.lines()[std::size_t(line)].readColumn;
    if (!index)
        return;
    if (key.isEmpty()) {
        std::erase_if(m_work.ofChosen().assignments,
                      [assignment = assignmentOf(*index)](const Assignment& one) {
                          return one.column == assignment.column;
                      });
    } else {
        assignColumn(*index, key == leaveOut ? std::nullopt : columnFromKey(key.toStdString()));
    }
    workOut();
}

/// By its heading, if it has one of its own: then it holds while the text is typed on.
Assignment TablePage::assignmentOf(std::size_t index) const
{
    const auto& columns = m_answer.read.columns;
    const std::string heading = columns[index].heading;
    const bool own =
        !heading.empty()
        && std::count_if(columns.begin(), columns.end(), [&](const ReadColumn& column) {
               return column.heading == heading;
           }) == 1;
    Assignment next;
    if (own)
        next.column = heading;
    else
        next.column = index;
    return next;
}

void TablePage::assignColumn(std::size_t index, std::optional<Column> meaning)
{
    Assignment next = assignmentOf(index);
    next.meaning = meaning;
    std::erase_if(m_work.ofChosen().assignments,
                  [&](const Assignment& one) { return one.column == next.column; });
    m_work.ofChosen().assignments.push_back(std::move(next));
}

bool TablePage::actOn(int line, int size)
{
    if (line < 0 || line >= m_lines.count() || size < 0 || reading()
        || std::size_t(size) >= m_answer.geometry.sizes.size())
        return false;
    const TableLine& at = m_lines.lines()[std::size_t(line)];
    if (!at.column)
        return false;
    const auto place = std::size_t(size);
    if (const Correction* correction = correctionOf(place, *at.column, m_answer)) {
        leave(*correction);
        return true;
    }
    for (const TableNote& note : m_notes.notes())
        if (const auto* taking = std::get_if<TakeFigure>(&note.step))
            if (taking->correction.column == *at.column
                && taking->correction.size == m_answer.geometry.sizes[place].size) {
                correct(taking->correction);
                return true;
            }
    return false;
}

int TablePage::step(int note)
{
    if (note < 0 || note >= m_notes.count() || reading())
        return -1;
    const TableStep step = m_notes.notes()[std::size_t(note)].step;
    if (const auto* taking = std::get_if<TakeFigure>(&step)) {
        correct(taking->correction);
    } else if (const auto* leaving = std::get_if<LeaveFigure>(&step)) {
        leave(leaving->correction);
    } else if (const auto* reading = std::get_if<ReadAsHeaded>(&step)) {
        m_work.ofChosen().asHeaded = reading->asHeaded;
        workOut();
    } else if (const auto* confirming = std::get_if<ConfirmGuess>(&step)) {
        if (const auto column = confirming->readColumn)
            assignColumn(*column, m_answer.read.columns[*column].meaning);
        else
            m_work.ofChosen().sizesConfirmed = true;
        workOut();
    } else if (const auto* saying = std::get_if<SayMeaning>(&step)) {
        const auto& lines = m_lines.lines();
        for (std::size_t i = 0; i < lines.size(); ++i)
            if (lines[i].readColumn == saying->readColumn)
                return int(i);
    }
    return -1;
}

void TablePage::correct(const Correction& correction)
{
    m_work.ofChosen().corrections.push_back(correction);
    workOut();
}

void TablePage::leave(const Correction& correction)
{
    const Correction left = correction; // it may lie in the answer
    std::erase(m_work.ofChosen().corrections, left);
    workOut();
}

void TablePage::tick(int size, bool ticked)
{
    if (size < 0 || std::size_t(size) >= m_answer.read.sizes.size())
        return;
    const std::string& name = m_answer.read.sizes[std::size_t(size)];
    if (ticked)
        m_work.ofChosen().unticked.erase(name);
    else
        m_work.ofChosen().unticked.insert(name);
    show();
}

bool TablePage::canKeep() const
{
    return isSure() && !modelName().isEmpty() && !frames(false).empty();
}

void TablePage::setKeep(bool keep)
{
    m_keep = keep;
    emit changed();
}

/// Which size has which numbers: a guess is confirmed before it goes anywhere.
bool TablePage::isSure() const
{
    return !reading() && m_answer.read.sizesFrom != SizesFrom::Guessed;
}

bool TablePage::canAdd() const
{
    return isSure() && (keep() || !frames(true).empty());
}

QString TablePage::addText() const
{
    const std::vector<FrameSize> ticked = frames(true);
    const std::size_t replaced = session() ? replacedBy(ticked, fitting()) : 0;
    return addSizesText(int(ticked.size()), keep(), int(replaced));
}

std::vector<FrameSize> TablePage::frames(bool onlyTicked) const
{
    std::vector<FrameSize> result;
    for (FrameSize frame : framesOf(m_answer.geometry, m_answer.closed)) {
        if (onlyTicked && m_work.ofChosen().unticked.contains(frame.size))
            continue;
        frame.model = modelName().toStdString();
        result.push_back(std::move(frame));
    }
    return result;
}

bool TablePage::add()
{
    if (!session() || !canAdd())
        return false;
    const std::vector<FrameSize> ticked = frames(true);
    auto next = withFrames(fitting(), ticked);
    if (!next) {
        say(tooManySizes(mostFrames));
        return false;
    }
    if (keep()) {
        if (const auto failure = library::keep(modelName().toStdString(), frames(false))) {
            say(tr("The frame could not be kept: %1. Without keeping it, the sizes can be added.")
                    .arg(*failure));
            return false;
        }
    }
    if (!ticked.empty() && *next != fitting())
        edit(std::move(*next), addedStep(int(ticked.size()), modelName()));
    return true;
}

} // namespace tripoise
