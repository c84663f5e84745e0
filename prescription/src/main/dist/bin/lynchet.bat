@echo off
rem Starts Lynchet with the Java at JAVA_HOME, else the one on the PATH.
rem
rem   LYNCHET_JAVA_OPTS   more options for Java, for example -Xmx2g
rem   LYNCHET_NO_CDS      set to 1: no class-data archive
rem
rem The first run makes a class-data archive, a file from which Java starts faster, in
rem %LOCALAPPDATA%\lynchet. Where that cannot be, Lynchet runs without it.
rem
rem No blocks in parentheses around variables: a folder such as "Program Files (x86)" would end them.

setlocal DisableDelayedExpansion
for %%d in ("%~dp0..") do set "home=%%~fd"

if not defined JAVA_HOME goto on_path
set "java=%JAVA_HOME%\bin\java.exe"
if exist "%java%" goto found
>&2 echo lynchet: JAVA_HOME is "%JAVA_HOME%", and there is no bin\java.exe in it.
>&2 echo lynchet: Set JAVA_HOME to the folder of Java 17 or newer, or unset it to use the java on the PATH.
exit /b 1

:on_path
set "java="
for %%j in (java.exe) do set "java=%%~$PATH:j"
if defined java goto found
>&2 echo lynchet: Java was not found.
>&2 echo lynchet: Install Java 17 or newer, and set JAVA_HOME to its folder or put its java on the PATH.
exit /b 1

:found
rem The version: from the file "release" of a JDK, which is quicker than asking it, else asked.
set "version="
for %%d in ("%java%\..\..\release") do set "release=%%~fd"
if exist "%release%" for /f "usebackq tokens=2 delims==" %%v in (`findstr /b "JAVA_VERSION=" "%release%"`) do set "version=%%~v"
if not defined version for /f "usebackq tokens=3" %%v in (`call "%java%" -version 2^>^&1 ^| findstr /c:" version "`) do set "version=%%~v"
set "major=0"
for /f "tokens=1 delims=.-+_" %%m in ("%version%") do set "major=%%m"
if %major% geq 17 goto flags
>&2 echo lynchet: Lynchet needs Java 17 or newer; "%java%" is Java %version%.
>&2 echo lynchet: Install Java 17 or newer, and set JAVA_HOME to its folder.
exit /b 1

:flags
rem From 16 MB the heap grows as it is needed; by itself Java begins with a 64th of the memory.
set "flags=-XX:TieredStopAtLevel=1 -Xshare:auto -Xlog:disable -Xms16m"
rem Java takes one collector only.
set "collector=-XX:+UseSerialGC"
rem Guards stand on lines of their own: a substitution in a variable that is not defined leaves text
rem that is no command.
if not defined LYNCHET_JAVA_OPTS goto collected
set "options=%LYNCHET_JAVA_OPTS:"=%"
if not defined options goto collected
if not "%options:-XX:+Use=%"=="%options%" set "collector="
:collected
set "flags=%flags% %collector%"

rem The archive's name says what it was made from, so that it is never used for anything else: the
rem version of Java and the size and time of lynchet.jar. Java itself refuses an archive that was
rem made in another folder.
if "%LYNCHET_NO_CDS%"=="1" goto run
if not defined LOCALAPPDATA goto run
rem Where the path of a jar has a blank in it, Java 17 leaves its classes out of every archive; Java 25
rem takes them in.
if not "%home%"=="%home: =%" if %major% lss 25 goto run
for %%f in ("%home%\lynchet.jar") do set "stamp=%%~zf-%%~tf"
set "stamp=%stamp:/=%"
set "stamp=%stamp::=%"
set "stamp=%stamp:.=%"
set "stamp=%stamp: =%"
set "archive=%LOCALAPPDATA%\lynchet\lynchet-${project.version}-java-%version%-%stamp%.jsa"
if exist "%archive%" goto use_archive
if exist "%archive%.failed" goto run
if not exist "%home%\examples\sandhill-east\plan.yaml" goto run

rem Made of the classes that planning the example with its papers takes; the plan is thrown away. In two steps, as an
rem archive made in one (-XX:ArchiveClassesAtExit) leaves out libraries that were compiled for old
rem Java, picocli among them. Two runs may do this at once: each works in a folder of its own, and the
rem last to finish puts its archive in place.
set "making=%archive%.%RANDOM%%RANDOM%"
mkdir "%making%" >nul 2>&1
if not exist "%making%" goto run
"%java%" %flags% "-XX:DumpLoadedClassList=%making%\classes" -jar "%home%\lynchet.jar" plan "%home%\examples\sandhill-east\plan.yaml" --out "%making%\out" --papers --quiet <nul >nul 2>&1
if errorlevel 1 goto failed
"%java%" %flags% -Xshare:dump "-XX:SharedClassListFile=%making%\classes" "-XX:SharedArchiveFile=%making%\archive" -jar "%home%\lynchet.jar" <nul >nul 2>&1
if errorlevel 1 goto failed
move /y "%making%\archive" "%archive%" >nul 2>&1
if not exist "%archive%" goto failed
rmdir /s /q "%making%" >nul 2>&1
goto use_archive

:failed
rem Remembered, or every run would take the time to fail again.
rmdir /s /q "%making%" >nul 2>&1
type nul >"%archive%.failed" 2>nul
goto run

:use_archive
"%java%" %flags% "-XX:SharedArchiveFile=%archive%" %LYNCHET_JAVA_OPTS% -jar "%home%\lynchet.jar" %*
exit /b %ERRORLEVEL%

:run
"%java%" %flags% %LYNCHET_JAVA_OPTS% -jar "%home%\lynchet.jar" %*
exit /b %ERRORLEVEL%
