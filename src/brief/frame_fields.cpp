// SPDX-License-Identifier: MIT
#include "brief/frame_fields.h"

#include "brief/keys.h"
#include "document/fitting.h"
#include "shipped/tables.h"
#include "text/encoding.h"
#include "wording/entry_words.h"
#include "wording/words.h"

namespace tripoise {
namespace {

/// A name on one line.
std::string nameFrom(const QString& text)
{
    return std::string(cutToBytes(text.simplified().toStdString(), longestName));
}

} // namespace

FrameFields::FrameFields(FrameSize frame, bool entered, Edited edited, std::function<void()> left,
                         QObject* parent)
    : QObject(parent), m_frame(std::move(frame)), m_entered(entered), m_edited(std::move(edited))
{
    const auto typed = [this](const EntryOf<FrameSize>& entry, std::optional<double> value) {
        FrameSize next = m_frame;
        entry.write(next, value);
        m_edited(*this, next, entryName(entry.key), QString::fromLatin1(entry.key));
    };
    for (const FrameGroup group : allFrameGroups)
        m_forms.emplace_back(frameEntries(group), this, typed, left);
    showForms();
}

void FrameFields::showForms() const
{
    for (const auto& form : m_forms)
        form.show(mountedOn(m_frame, m_bicycle), shippedTables());
}

void FrameFields::mount(const Bicycle& bicycle)
{
    if (bicycle == m_bicycle)
        return;
    m_bicycle = bicycle;
    showForms();
}

void FrameFields::show(const FrameSize& frame)
{
    m_frame = frame;
    showForms();
    emit changed();
}

void FrameFields::setEntered(bool entered)
{
    m_entered = entered;
    emit changed();
}

void FrameFields::say(const QString& sizeMessage, const QString& note)
{
    if (sizeMessage == m_sizeMessage && note == m_note)
        return;
    m_sizeMessage = sizeMessage;
    m_note = note;
    emit changed();
}

void FrameFields::speakAgain()
{
    for (const auto& form : m_forms)
        form.nameAgain();
    showForms();
    emit changed();
}

QString FrameFields::title() const
{
    return frameName(m_frame);
}

QString FrameFields::figures() const
{
    return frameFigures(m_frame.geometry);
}

QString FrameFields::material() const
{
    return keyOf(m_frame.headset.material);
}

void FrameFields::setModel(const QString& text)
{
    FrameSize next = m_frame;
    next.model = nameFrom(text);
    if (next.model != m_frame.model)
        m_edited(*this, next, Words::tr("Frame model"), {});
}

void FrameFields::setSize(const QString& text)
{
    FrameSize next = m_frame;
    next.size = nameFrom(text);
    m_edited(*this, next, Words::tr("Name of a size"), {});
}

void FrameFields::setMaterial(const QString& word)
{
    FrameSize next = m_frame;
    next.headset.material = materialFrom(word);
    if (next.headset.material == m_frame.headset.material)
        next.headset.material.reset();
    m_edited(*this, next, Words::tr("Steerer material"), {});
}

} // namespace tripoise
