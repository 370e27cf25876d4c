// SPDX-License-Identifier: MIT
#include "fittings/autosave.h"

#include "document/read.h"
#include "fittings/fittings_folder.h"

namespace tripoise {
namespace {

/// Where there is no file yet, one is made that nothing stood in.
SavedFitting saveUnder(Autosave::Order& order, const QByteArray& text)
{
    if (!order.path.isEmpty())
        return writeAndRead(order.path, text, order.over);
    fittings::makeFolder(order.folder);
    for (int number = 1;; ++number) {
        const QString path = fittings::FileNames::path(order.folder, order.stem, number);
        SavedFitting saved = writeAndRead(path, text, {});
        if (saved.file.state == store::Saved::State::Taken)
            continue;
        if (saved.file.state == store::Saved::State::Done)
            order.path = path;
        return saved;
    }
}

} // namespace

Autosave::Autosave(std::function<void()> done) : m_done(std::move(done))
{
    m_writer.setMaxThreadCount(1);
}

void Autosave::begin(Order order)
{
    m_busy = true;
    m_writer.start([this, order = std::move(order)]() mutable {
        QByteArray text = QByteArray::fromStdString(writeFitting(order.fitting));
        SavedFitting saved = saveUnder(order, text);
        {
            const std::lock_guard lock(m_mutex);
            m_written = {std::move(order), std::move(text), std::move(saved)};
        }
        m_done();
    });
}

std::optional<Autosave::Written> Autosave::take(bool wait)
{
    if (wait)
        m_writer.waitForDone();
    const std::lock_guard lock(m_mutex);
    if (m_written)
        m_busy = false;
    return std::exchange(m_written, std::nullopt);
}

} // namespace tripoise
