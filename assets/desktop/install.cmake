# SPDX-License-Identifier: MIT
# What `cmake --install` puts in place, and the Debian package that `cpack` makes of the same files.
include(GNUInstallDirs)
set(desktop ${CMAKE_CURRENT_LIST_DIR})
set(id org.tripoise.Tripoise)

install(TARGETS tripoise)
install(FILES ${PROJECT_SOURCE_DIR}/assets/licences.txt DESTINATION ${CMAKE_INSTALL_DOCDIR})
install(DIRECTORY ${PROJECT_SOURCE_DIR}/assets/demo/ DESTINATION ${CMAKE_INSTALL_DOCDIR}/examples)
install(FILES ${desktop}/tripoise.1 DESTINATION ${CMAKE_INSTALL_MANDIR}/man1)

# The zsh of Debian looks for what packages bring in a folder of its own.
set(zsh_folder site-functions)
if(EXISTS /etc/debian_version)
    set(zsh_folder vendor-completions)
endif()
install(FILES ${desktop}/tripoise.zsh RENAME _tripoise DESTINATION ${CMAKE_INSTALL_DATADIR}/zsh/${zsh_folder})
install(FILES ${desktop}/tripoise.bash RENAME tripoise
    DESTINATION ${CMAKE_INSTALL_DATADIR}/bash-completion/completions)

if(UNIX AND NOT APPLE)
    set(icons ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable)
    install(FILES ${desktop}/${id}.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
    install(FILES ${desktop}/${id}.metainfo.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)
    install(FILES ${desktop}/${id}.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/mime/packages)
    install(FILES ${desktop}/${id}.svg DESTINATION ${icons}/apps)
    install(FILES ${desktop}/${id}.svg RENAME application-vnd.tripoise.fitting+json.svg
        DESTINATION ${icons}/mimetypes)
endif()

# The shared libraries are found by dpkg-shlibdeps. QML modules and the font are loaded by name, so nothing finds them.
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_CONTACT "The Tripoise authors <tripoise@example.org>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "size and set-up of a bicycle for a rider")
set(CPACK_PACKAGE_DESCRIPTION
    "Takes a rider's measurements, what the bicycle will be ridden for, the frame
sizes on the table and the shop's box of parts. Tries every combination of the
parts that fits together, and answers with a size, a set-up, the reasons, what
the other size would do better, and a drawing to scale.")
set(CPACK_STRIP_FILES ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS
    OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
set(CPACK_PRE_BUILD_SCRIPTS ${desktop}/debian.cmake)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION misc)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_PACKAGE_DEPENDS "fonts-dejavu-core, qml6-module-qtquick, qml6-module-qtquick-layouts, \
qml6-module-qtquick-templates, qml6-module-qtqml-workerscript")
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "hicolor-icon-theme, qt6-wayland, shared-mime-info")
include(CPack)
